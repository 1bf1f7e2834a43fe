"""The map of each bed in a week: every hole with colour, pattern and letter, what comes, goes, and is free.

Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import DAYS_PER_WEEK, by_id
from planner.farm.fields import Id
from planner.farm.site import Bed
from planner.paper.documents.ask import Ask
from planner.paper.documents.bed_drawing import UnitPlan, unit_drawings
from planner.paper.documents.columns import BENCH_SIZE, TICK, says, ticked, told
from planner.paper.palette import letters, look
from planner.paper.places import PLACE_WORDS, UNIT_WORDS, bed_words
from planner.paper.report import Cell, Drawing, DrawnRect, Paragraph, Report, RowGroup, Section, Table, Tone
from planner.paper.words import count_words, day_words

TITLE: Final = "Bed map"
_SWATCH_MM: Final = (16.0, 8.0)
_KEY: Final = (
    "Each hole has the letter, pattern and colour of its batch; an empty frame is free. A heavy frame "
    "comes in this "
    "week, perhaps in the place of another; a hole crossed out is cleared this week and then free."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Stay:
    """A run of places that a batch holds, from one day to the day before another."""

    placement: Placement
    batch: Batch
    from_on: date
    until_on: date


def bed_map(ask: Ask) -> Report:
    """Return a page or more for each bed and week."""
    stays = _stays(ask)
    sections: list[Section] = []
    for start in ask.week_starts():
        for bed in ask.farm.beds:
            found = _Map(ask, bed, start, stays.get(bed.id, ()))
            sections.extend(found.sections(new_page=bool(sections)))
    if not sections:
        sections.append(Section(parts=(Paragraph(text="There are no beds on this farm."),)))
    return ask.report(TITLE, tuple(sections), subtitle=ask.span_words, header_lines=(_KEY,))


def _stays(ask: Ask) -> Mapping[Id, Sequence[Stay]]:
    """Return by bed what stands there at some time of the weeks asked for."""
    table, ruler = ask.forecast.batches, ask.forecast.ruler
    batches: dict[Id, Batch] = by_id(ask.farm.batches)
    found: dict[Id, list[Stay]] = {}
    for placement in ask.farm.placements:
        first, end = table.phase_days(table.row_of[placement.batch], placement.phase)
        if end <= ask.first_day or first >= ask.end_day or end <= first:
            continue
        stay = Stay(
            placement=placement,
            batch=batches[placement.batch],
            from_on=ruler.date_of(first),
            until_on=ruler.date_of(end),
        )
        found.setdefault(placement.bed, []).append(stay)
    return found


class _Map:
    """One bed in one week."""

    def __init__(self, ask: Ask, bed: Bed, start: date, stays: Sequence[Stay]) -> None:
        self._ask, self._bed, self._start = ask, bed, start
        self._end = start + timedelta(days=DAYS_PER_WEEK)
        self._stays = [stay for stay in stays if stay.from_on < self._end and stay.until_on > start]
        order = sorted(self._stays, key=_by_arrival)
        self._batches = tuple({stay.batch.id: stay.batch for stay in order}.values())
        self._number = {batch.id: at for at, batch in enumerate(self._batches)}

    def sections(self, *, new_page: bool) -> Iterator[Section]:
        """Yield the drawing, then what the letters mean."""
        name, days = self._ask.week_head(self._start)
        drawings = tuple(unit_drawings(self._bed, self._plans()))
        yield Section(
            heading=f"{self._bed.name}, {name}, {days}",
            parts=(Paragraph(text=self._summary(), tone=Tone.STRONG), *drawings),
            new_page=new_page,
        )
        if self._batches:
            yield Section(parts=(self._legend(),))

    def _plans(self) -> Mapping[int, UnitPlan]:
        """Return by unit which batch each hole has: what stands there, and what comes in its place."""
        standing: dict[int, dict[int, int]] = {}
        coming: dict[int, dict[int, int]] = {}
        going: dict[int, set[int]] = {}
        for stay in self._stays:
            run, number = stay.placement, self._number[stay.batch.id]
            places = range(run.first, run.last + 1)
            if stay.from_on > self._start:
                coming.setdefault(run.unit, {}).update(dict.fromkeys(places, number))
            else:
                standing.setdefault(run.unit, {}).update(dict.fromkeys(places, number))
            if stay.until_on < self._end:
                going.setdefault(run.unit, set()).update(places)
        return {
            unit: UnitPlan(
                standing=standing.get(unit, {}),
                coming=coming.get(unit, {}),
                going=frozenset(going.get(unit, ())),
            )
            for unit in {*standing, *coming}
        }

    def _summary(self) -> str:
        bed = self._bed
        start_free = bed.places - self._held(self._start)
        end_free = bed.places - self._held(self._end - timedelta(days=1))
        one, many = PLACE_WORDS[bed.kind]
        return (
            f"{count_words(bed.units, *UNIT_WORDS[bed.kind])} of "
            f"{count_words(bed.places_per_unit, one, many)}. "
            f"Free when the week begins: {count_words(start_free, one, many)}; when it ends: "
            f"{count_words(end_free, one, many)}."
        )

    def _held(self, on: date) -> int:
        return sum(s.placement.count for s in self._stays if s.from_on <= on < s.until_on)

    def _legend(self) -> Table:
        columns = (
            told("letter", "Batch", mm=20.0, share=0.01),
            told("crop", "Crop", mm=42.0, share=2.0, main=BENCH_SIZE),
            told("where", "Where", mm=44.0, share=2.0),
            told("what", "This week", mm=40.0, share=1.5),
            ticked(),
        )
        rows = tuple(self._legend_row(batch) for batch in self._batches)
        return Table(name=f"Batches in {self._bed.name}", columns=columns, groups=(RowGroup(rows=rows),))

    def _legend_row(self, batch: Batch) -> tuple[Cell, ...]:
        stays = [stay for stay in self._stays if stay.batch.id == batch.id]
        number = self._number[batch.id]
        crop = self._ask.catalogue.crops[batch.crop].name
        return (
            Cell(picture=_swatch(number)),
            says(f"{crop}, {batch.variety}" if batch.variety else crop, batch.code, tone=Tone.MAIN),
            says(
                bed_words(self._bed, [stay.placement for stay in stays]).removeprefix(f"{self._bed.name}: ")
            ),
            says(*self._acts(stays)),
            TICK,
        )

    def _acts(self, stays: Sequence[Stay]) -> Iterator[str]:
        comes = min(stay.from_on for stay in stays)
        goes = max(stay.until_on for stay in stays)
        if comes >= self._start:
            verb = "is sown" if stays[0].placement.phase is Phase.NURSERY else "comes in"
            yield f"{verb} {day_words(comes, beside=self._start)}"
        if goes < self._end:
            yield f"free again {day_words(goes, beside=self._start)}"
        elif comes < self._start:
            yield f"stays until {day_words(goes - timedelta(days=1), beside=self._start)}"


def _by_arrival(stay: Stay) -> tuple[int, int, date, str]:
    return stay.placement.unit, stay.placement.first, stay.from_on, stay.batch.code


def _swatch(number: int) -> Drawing:
    wide, high = _SWATCH_MM
    shown = look(number)
    frame = DrawnRect(
        x_mm=0.4, y_mm=0.6, width_mm=wide, height_mm=high, tint=shown.tint, hatch=shown.hatch,
        label=letters(number), label_pt=14.0,
    )  # fmt: skip
    return Drawing(
        width_mm=wide + 0.8, height_mm=high + 1.2, shapes=(frame,), says=f"letter {letters(number)}"
    )
