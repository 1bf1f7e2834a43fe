"""Draws rafts, blocks and trays from above: each hole as a cell, or runs of holes where there are very many.

Must not know farms beyond a bed's numbers, nor layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Final

from planner.farm.site import Bed
from planner.paper.palette import letters, look
from planner.paper.places import PLACE_WORDS, UNIT_WORDS
from planner.paper.report import Drawing, DrawnLine, DrawnRect, DrawnText, Paragraph, Part
from planner.paper.shapes import Shape
from planner.paper.words import count_words, range_words

_ACROSS_MM: Final = 174.0
_MOST_CELL_MM: Final = 11.0
_LEAST_CELL_MM: Final = 4.2
_HEAD_MM: Final = 6.5
_GAP_MM: Final = 6.0
_HEAVY_PT: Final = 1.8
_LIGHT_PT: Final = 0.5
_LIGHT_MM: Final = 0.1
"""Half of a light rule: what is filled leaves the edges to be seen."""
_HEAD_PT: Final = 11.0
_MOST_CELLS: Final = 6000
_BAR_MM: Final = 9.0
_NUMBER_EM: Final = 1.55
"""Points of a letter for each millimetre of its cell."""
_MOST_UNITS: Final = 200
_MOST_DRAWN_EMPTY: Final = 12
"""Of a bed with more units than this the empty ones are told in words."""


@dataclass(frozen=True, slots=True, kw_only=True)
class UnitPlan:
    """One raft, block or tray: which batch each place has, by number; what comes there, and what goes."""

    standing: Mapping[int, int]
    coming: Mapping[int, int]
    going: frozenset[int]

    @property
    def all(self) -> Mapping[int, int]:
        """Places with the batch that is drawn there."""
        return {**self.standing, **self.coming}


_EMPTY: Final = UnitPlan(standing={}, coming={}, going=frozenset())


def unit_drawings(bed: Bed, plans: Mapping[int, UnitPlan]) -> Iterator[Part]:
    """Yield drawings of all units side by side, rows of them below each other.

    A bed with too many places for cells is drawn as bars; empty units of a large bed are told in words.
    """
    units = list(range(1, bed.units + 1))
    if bed.units > _MOST_DRAWN_EMPTY:
        units = sorted(plans)[:_MOST_UNITS]
        yield Paragraph(text=_others_words(bed, plans, units))
    wide = _ACROSS_MM / bed.columns
    if wide < _LEAST_CELL_MM or len(units) * bed.places_per_unit > _MOST_CELLS:
        for unit in units:
            yield _bar(bed, unit, plans.get(unit, _EMPTY))
        return
    cell = _cell_mm(bed)
    per_row = max(int((_ACROSS_MM + _GAP_MM) // (bed.columns * cell + _GAP_MM)), 1)
    for at in range(0, len(units), per_row):
        yield _row(bed, units[at : at + per_row], plans, cell)


def _cell_mm(bed: Bed) -> float:
    """Return the edge of a cell: as large as is useful, smaller so that several units stand side by side."""
    several = min(bed.units, 4 if bed.columns <= 8 else 2)
    room = (_ACROSS_MM - (several - 1) * _GAP_MM) / several
    return max(min(_MOST_CELL_MM, room / bed.columns), min(_LEAST_CELL_MM, _ACROSS_MM / bed.columns))


def _others_words(bed: Bed, plans: Mapping[int, UnitPlan], drawn: Sequence[int]) -> str:
    """Return which units are all free, and how many that are not have no room here."""
    many = UNIT_WORDS[bed.kind][1]
    free = [unit for unit in range(1, bed.units + 1) if unit not in plans]
    said = f"All free: {many} {', '.join(_unit_runs(free))}." if free else f"None of the {many} is all free."
    left = len(plans) - len(drawn)
    return f"{said} Not drawn: {left:,} more, which the list names." if left else said


def _unit_runs(units: Sequence[int]) -> Iterator[str]:
    """Yield runs of numbers.

    >>> list(_unit_runs([1, 2, 3, 7]))
    ['1–3', '7']
    """
    first = last = 0
    for unit in units:
        if last and unit == last + 1:
            last = unit
            continue
        if last:
            yield range_words(first, last)
        first = last = unit
    if last:
        yield range_words(first, last)


def _row(bed: Bed, units: Sequence[int], plans: Mapping[int, UnitPlan], cell: float) -> Drawing:
    shapes: list[Shape] = []
    pitch = bed.columns * cell + _GAP_MM
    for at, unit in enumerate(units):
        shapes.extend(_unit(bed, unit, plans.get(unit, _EMPTY), at * pitch, cell))
    return Drawing(
        width_mm=_ACROSS_MM,
        height_mm=_HEAD_MM + bed.rows * cell + _GAP_MM / 2,
        shapes=tuple(shapes),
        says=f"{UNIT_WORDS[bed.kind][1]} {range_words(units[0], units[-1])} from above",
    )


def _unit(bed: Bed, unit: int, plan: UnitPlan, left: float, cell: float) -> Iterator[Shape]:
    one, _ = UNIT_WORDS[bed.kind]
    free = bed.places_per_unit - len(plan.all)
    yield DrawnText(x_mm=left, y_mm=_HEAD_MM - 1.8, text=f"{one} {unit}: {free} free", pt=_HEAD_PT, bold=True)
    for place, number in plan.all.items():
        row, column = divmod(place - 1, bed.columns)
        x, y = left + column * cell, _HEAD_MM + row * cell
        yield from _held(number, x, y, cell, comes=place in plan.coming, goes=place in plan.going)
    yield from _grid(bed, left, cell)


def _grid(bed: Bed, left: float, cell: float) -> Iterator[Shape]:
    """Yield the edges of all holes; a free one is nothing but its edges."""
    wide, high = bed.columns * cell, bed.rows * cell
    for row in range(1, bed.rows):
        y = _HEAD_MM + row * cell
        yield DrawnLine(x1_mm=left, y1_mm=y, x2_mm=left + wide, y2_mm=y, rule_pt=_LIGHT_PT)
    for column in range(1, bed.columns):
        x = left + column * cell
        yield DrawnLine(x1_mm=x, y1_mm=_HEAD_MM, x2_mm=x, y2_mm=_HEAD_MM + high, rule_pt=_LIGHT_PT)
    yield DrawnRect(x_mm=left, y_mm=_HEAD_MM, width_mm=wide, height_mm=high, rule_pt=1.25)


def _held(number: int, x: float, y: float, cell: float, *, comes: bool, goes: bool) -> Iterator[Shape]:
    inset = 0.75 if comes else _LIGHT_MM
    shown = look(number)
    yield DrawnRect(
        x_mm=x + inset,
        y_mm=y + inset,
        width_mm=cell - 2 * inset,
        height_mm=cell - 2 * inset,
        tint=shown.tint,
        hatch=shown.hatch,
        rule_pt=_HEAVY_PT if comes else 0.0,
        label=letters(number),
        label_pt=cell * _NUMBER_EM * (0.7 if len(letters(number)) > 1 else 1.0),
    )
    if goes and not comes:
        yield DrawnLine(x1_mm=x, y1_mm=y + cell, x2_mm=x + cell, y2_mm=y, rule_pt=1.0)


def _bar(bed: Bed, unit: int, plan: UnitPlan) -> Drawing:
    """Return a unit as one bar, as long as all its places, with a piece for each run of a batch."""
    one, _ = UNIT_WORDS[bed.kind]
    free = bed.places_per_unit - len(plan.all)
    place_one, place_many = PLACE_WORDS[bed.kind]
    head = f"{one} {unit}: {count_words(bed.places_per_unit, place_one, place_many)}, {free:,} free"
    shapes: list[Shape] = [DrawnText(x_mm=0.0, y_mm=_HEAD_MM - 1.8, text=head, pt=_HEAD_PT, bold=True)]
    per_place = _ACROSS_MM / bed.places_per_unit
    for first, last, number in _runs(plan.all):
        shown = look(number)
        shapes.append(
            DrawnRect(
                x_mm=(first - 1) * per_place,
                y_mm=_HEAD_MM,
                width_mm=(last - first + 1) * per_place,
                height_mm=_BAR_MM,
                tint=shown.tint,
                hatch=shown.hatch,
                rule_pt=_HEAVY_PT if first in plan.coming else _LIGHT_PT,
                label=letters(number),
            )
        )
    shapes.append(DrawnRect(x_mm=0.0, y_mm=_HEAD_MM, width_mm=_ACROSS_MM, height_mm=_BAR_MM, rule_pt=1.25))
    return Drawing(
        width_mm=_ACROSS_MM, height_mm=_HEAD_MM + _BAR_MM + _GAP_MM / 2, shapes=tuple(shapes), says=head
    )


def _runs(held: Mapping[int, int]) -> Iterator[tuple[int, int, int]]:
    first = last = number = -1
    for place in sorted(held):
        if place == last + 1 and held[place] == number:
            last = place
            continue
        if number >= 0:
            yield first, last, number
        first, last, number = place, place, held[place]
    if number >= 0:
        yield first, last, number
