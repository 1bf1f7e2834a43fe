"""Why a batch of a new loop may go to its bed on its day: how long it has run, and what the feed carries."""

from __future__ import annotations

from dataclasses import dataclass
from functools import partial
from typing import Final

from planner.farm.crops import Phase
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.farm.species import CropGroup
from planner.forecast.why.area import why_batch_area
from planner.forecast.why.fish import why_feed_mean
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, worked
from planner.forecast.why.values import Explanation, Note, NoteKind
from planner.planning.answering import Maker
from planner.planning.stocking.startup import HeldBatch, StartUp
from planner.planning.why_bands import feed_asked

_ADVICE: Final = "coefficient/advice/"


def start_whys(found: StartUp, loop: Id, ground: Ground) -> dict[str, Maker]:
    """Return why each batch of a start-up may move when it may; `ground` is the farm it was made for."""
    whys: dict[str, Maker] = {}
    why = _StartUp(found, loop, ground)
    for one in found.batches:
        whys[start_name(one, "area")] = partial(why.area, one)
        whys[start_name(one, "may")] = partial(why.may, one)
        if one.wait_days is not None:
            whys[start_name(one, "waits")] = partial(why.waits, one)
    return whys


def start_name(one: HeldBatch, what: str) -> str:
    """Return what a figure of a batch is called: "area", "may" or "waits"."""
    return f"start {one.code} {what}"


@dataclass(frozen=True)
class _StartUp:
    """The batches of a new loop in their order."""

    found: StartUp
    loop: Id
    ground: Ground

    def area(self, one: HeldBatch) -> Explanation:
        """Return the area that a batch takes in its bed."""
        return why_batch_area(self.ground, self.ground.row(one.batch))

    def waits(self, one: HeldBatch) -> Explanation:
        """Return how many days a batch has to wait."""
        first_on = self.found.first_fish_on or one.planned_on
        may_on = one.may_on or one.planned_on
        return Explanation(
            title="days to wait",
            about=one.code,
            value=float(one.wait_days or 0),
            unit="d",
            formula=Formula.WAIT,
            inputs=(
                worked("may_day", (may_on - first_on).days, "d"),
                worked("planned_day", (one.planned_on - first_on).days, "d"),
            ),
            children=(self.may(one),),
            on=one.may_on,
        )

    def may(self, one: HeldBatch) -> Explanation:
        """Return from which day on a batch may go to its bed, in days after the first fish."""
        leafy = one.group is CropGroup.LEAFY
        name = "startup_leafy_after_days" if leafy else "startup_fruiting_after_days"
        first_on = self.found.first_fish_on
        settled = self.ground.figure("settled_after_days", f"{_ADVICE}{name}")
        days = [] if first_on is None else [worked("planned_day", (one.planned_on - first_on).days, "d")]
        if first_on is not None and one.carried_on is not None:
            days.append(worked("carried_day", (one.carried_on - first_on).days, "d"))
        value = None if one.may_on is None or first_on is None else float((one.may_on - first_on).days)
        notes = (Note(kind=NoteKind.NOT_IN_PLAN),) if one.may_on is None else ()
        return Explanation(
            title="days from the first fish to its bed",
            about=one.code,
            value=value,
            unit="d",
            formula=Formula.MAY_LEAFY if value == self._leafy_day(one) and leafy else Formula.MAY_FRUITING,
            inputs=(settled, *days),
            children=() if leafy else self._carried(one),
            notes=notes,
            on=one.may_on,
        )

    def _leafy_day(self, one: HeldBatch) -> float | None:
        first_on = self.found.first_fish_on
        return None if first_on is None else float((max(one.planned_on, one.settled_on) - first_on).days)

    def _carried(self, one: HeldBatch) -> tuple[Explanation, ...]:
        """Return feed, and what stands asks for with this batch, in the first week that it may move."""
        ground, ruler = self.ground, self.ground.forecast.ruler
        on = one.may_on or one.planned_on
        week = min(max(ruler.day_of(on), 0) // DAYS_PER_WEEK, ruler.weeks - 1)
        _, loop = ground.loop_forecast(self.loop)
        asked = feed_asked(
            ground,
            loop,
            self._standing(one),
            about=one.code,
            protein_share=float(ruler.weekly_mean(loop.protein_share)[week]),
            more=(ground.figure("weeks_in_a_row", f"{_ADVICE}startup_carried_weeks"),),
            on=ruler.week_start(week),
        )
        return why_feed_mean(ground, loop, week), asked

    def _standing(self, one: HeldBatch) -> tuple[float, float]:
        """Return leafy and fruiting area that stands when a batch moves, with its own."""
        table, ruler = self.ground.forecast.batches, self.ground.forecast.ruler
        day = ruler.day_of(one.may_on or one.planned_on)
        areas = {CropGroup.LEAFY: 0.0, CropGroup.FRUITING: 0.0}
        for each in self.found.batches:
            row = table.row_of[each.batch]
            start = ruler.day_of(each.may_on or each.planned_on)
            first, last = table.phase_days(row, Phase.BED)
            stays = last - first
            if each.batch == one.batch or (start <= day < start + stays and _before(each, one, self.found)):
                areas[each.group] += each.area_m2
        return areas[CropGroup.LEAFY], areas[CropGroup.FRUITING]


def _before(each: HeldBatch, one: HeldBatch, found: StartUp) -> bool:
    """Tell whether a batch was taken before another, in the order in which they are meant to move."""
    return found.batches.index(each) < found.batches.index(one)
