"""What stands in each hole on a day, since when it is free, and what goes in next.

Made once from an outlook, then asked for any day. Must know nothing of Qt or pixels.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import TypeVar

from planner.desk.outlook import Outlook
from planner.farm.crops import PHASE_OF_STAGE, Placement, Stage
from planner.farm.fields import Id
from planner.farm.site import Bed
from planner.forecast.values import STAGES

T = TypeVar("T")


@dataclass(frozen=True, slots=True, kw_only=True)
class Stay:
    """A run of places held by a batch from day `start` until before day `end` of the ruler."""

    run: Placement
    row: int
    start: int
    end: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Along:
    """How far a batch is on a day: the stage, which day of it this is, and its days in all."""

    stage: Stage
    day: int
    days: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Span:
    """Neighbouring places of one unit with the same lot on a day.

    `now` stands there, `next` comes after the day, `before` stood there last.
    """

    first: int
    last: int
    now: Stay | None
    next: Stay | None
    before: Stay | None = None

    @property
    def free_since(self) -> int | None:
        """The first day without a plant; None when nothing stood there before, or something stands there."""
        return self.before.end if self.before is not None and self.now is None else None

    @property
    def count(self) -> int:
        """Number of places."""
        return self.last - self.first + 1


class Stays:
    """All runs of a farm with their days, by bed and unit."""

    def __init__(self, outlook: Outlook) -> None:
        self.outlook = outlook
        self._table = outlook.forecast.batches
        self._by_unit: dict[tuple[Id, int], list[Stay]] = {}
        self._spans: dict[tuple[Id, int], tuple[Span, ...]] = {}
        self._spans_of_day = -1
        for run in outlook.farm.placements:
            row = self._table.row_of[run.batch]
            start, end = self._table.phase_days(row, run.phase)
            stay = Stay(run=run, row=row, start=start, end=max(end, start + 1))
            self._by_unit.setdefault((run.bed, run.unit), []).append(stay)
        for many in self._by_unit.values():
            many.sort(key=_by_start)

    def spans(self, bed: Bed, unit: int, day: int) -> tuple[Span, ...]:
        """Return every place of a unit on a day of the ruler, neighbours of the same lot together."""
        if day != self._spans_of_day:
            self._spans_of_day = day
            self._spans.clear()
        found = self._spans.get((bed.id, unit))
        if found is None:
            stays = self._by_unit.get((bed.id, unit), [])
            found = self._spans[bed.id, unit] = _spans(stays, bed.places_per_unit, day)
        return found

    def span_at(self, bed: Bed, unit: int, place: int, day: int) -> Span:
        """Return what holds of one place of a unit on a day."""
        return next(span for span in self.spans(bed, unit, day) if span.first <= place <= span.last)

    def along(self, stay: Stay, day: int) -> Along:
        """Return how far the batch of a stay is on a day; kept within the stages of its phase."""
        before = int(self._table.sow_day[stay.row])
        found: Along | None = None
        for stage, end in zip(STAGES, self._table.ends[stay.row].tolist(), strict=True):
            if end > before and PHASE_OF_STAGE[stage] is stay.run.phase:
                found = Along(stage=stage, day=min(day, end - 1) - before + 1, days=end - before)
                if day < end:
                    break
            before = max(before, end)
        return found or Along(stage=FIRST_OF[stay.run.phase], day=1, days=1)

    def held_by_week(self, beds: Sequence[Bed]) -> tuple[float, ...]:
        """Return the share of the places of some beds that is held, by week of the ruler."""
        ruler = self.outlook.forecast.ruler
        places = sum(bed.places for bed in beds)
        steps = [0] * (ruler.days + 1)
        wanted = {bed.id for bed in beds}
        for (bed_id, _), stays in self._by_unit.items():
            for stay in stays if bed_id in wanted else ():
                first, end = (min(max(day, 0), ruler.days) for day in (stay.start, stay.end))
                steps[first] += stay.run.count
                steps[end] -= stay.run.count
        held, by_day = 0, []
        for step in steps[: ruler.days]:
            held += step
            by_day.append(held)
        week = ruler.days // ruler.weeks if ruler.weeks else 1
        return tuple(
            sum(by_day[at : at + week]) / (week * places) if places else 0.0
            for at in range(0, ruler.days, week)
        )

    def date_of(self, day: int) -> date:
        """Return the date of a day of the ruler."""
        return self.outlook.forecast.ruler.date_of(day)


FIRST_OF = {PHASE_OF_STAGE[stage]: stage for stage in reversed(STAGES)}


def _by_start(stay: Stay) -> tuple[int, int]:
    return stay.start, stay.run.first


def _by_end(stay: Stay) -> int:
    return stay.end


def _spans(stays: list[Stay], places: int, day: int) -> tuple[Span, ...]:
    now: list[Stay | None] = [None] * places
    later: list[Stay | None] = [None] * places
    before: list[Stay | None] = [None] * places
    for stay in reversed(stays):
        if stay.start > day:
            _fill(later, stay, stay)
    for stay in sorted(stays, key=_by_end):
        if stay.end <= day:
            _fill(before, stay, stay)
        elif stay.start <= day:
            _fill(now, stay, stay)
    found: list[Span] = []
    first = 0
    for at in range(1, places + 1):
        same_since = _since(before, at) == _since(before, first)
        if at < places and now[at] is now[first] and later[at] is later[first] and same_since:
            continue
        found.append(Span(first=first + 1, last=at, now=now[first], next=later[first], before=before[first]))
        first = at
    return tuple(found)


def _since(before: list[Stay | None], at: int) -> int | None:
    """Return since when a place is without what stood there last; None past the last place."""
    stay = before[at] if at < len(before) else None
    return stay.end if stay is not None else None


def _fill(row: list[T | None], stay: Stay, value: T) -> None:
    first, last = stay.run.first - 1, min(stay.run.last, len(row))
    row[first:last] = [value] * max(last - first, 0)
