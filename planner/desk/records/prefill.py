"""Lines of a sheet as it was printed: its days, what was to be picked, what was to be done. Pure."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.outlook import Outlook
from planner.desk.records.sheets import Sheet, SheetLine, TaskOfLine
from planner.desk.say import tr
from planner.desk.words import number_words, short_day_words
from planner.farm.log import Happening, Unit
from planner.farm.water import Quantity
from planner.forecast.week import DueKind, due_between
from planner.science.compounds import element_share

MOST_LINES: Final = 400
_SPARE_LINES: Final = 5
"""Empty lines below what was printed, for what came besides."""
_TASKS: Final = {
    DueKind.SOW: (Happening.SOWN, Unit.SEEDS, "Sow {many}: {code}"),
    DueKind.MOVE: (Happening.MOVED, Unit.PLANTS, "Move {many}: {code}"),
    DueKind.PICK: (Happening.PICKED, Unit.HEADS, "Pick {many}: {code}"),
    DueKind.CLEAR: (Happening.CLEARED, Unit.NONE, "Clear: {code}"),
}
_MASSES: Final = "coefficient/atomic_masses/atomic_mass_"
_IONS: Final = {Quantity.NITRITE_N_MG_PER_L: "NO2", Quantity.NITRATE_N_MG_PER_L: "NO3"}


def lines_of(
    sheet: Sheet, outlook: Outlook, first: date, last: date, *, every_days: int
) -> tuple[SheetLine, ...]:
    """Return the lines that a sheet was printed with from one day to another, both included."""
    if sheet in (Sheet.WATER, Sheet.FEED):
        days = min((last - first).days // every_days + 1, MOST_LINES)
        return tuple(_dated(first + timedelta(days=number * every_days)) for number in range(max(days, 0)))
    lines = tuple(_due(sheet, outlook, first, last))[:MOST_LINES]
    spare = _SPARE_LINES if sheet is Sheet.HARVEST else 0
    return (*lines, *(_dated(last) for _ in range(spare)))


def _dated(on: date) -> SheetLine:
    return SheetLine(texts={"date": _day(on)})


def _day(on: date) -> str:
    return f"{short_day_words(on)} {on.year}"


def _due(sheet: Sheet, outlook: Outlook, first: date, last: date) -> Iterator[SheetLine]:
    ruler = outlook.forecast.ruler
    days = {"first_day": max(ruler.day_of(first), 0), "last_day": min(ruler.day_of(last) + 1, ruler.days)}
    codes = {batch.id: batch.code for batch in outlook.farm.batches}
    wanted = (DueKind.PICK,) if sheet is Sheet.HARVEST else tuple(_TASKS)
    for task in due_between(outlook.farm, outlook.forecast, **days):
        if task.kind not in wanted:
            continue
        what, unit, words = _TASKS[task.kind]
        code, many = codes[task.about], round(task.many)
        told = TaskOfLine(what=what, batch=task.about, many=float(many), unit=unit)
        said = tr(words, many=number_words(many), code=code)
        yield SheetLine(texts={"date": _day(task.on), "batch": code, "task": said}, task=told)


def nitrogen_shares(catalogue: Catalogue) -> dict[Quantity, float]:
    """Return how much of a milligram of nitrite or nitrate, read as the ion, is nitrogen."""
    masses = {symbol.upper(): catalogue.figure(_MASSES + symbol).value for symbol in ("n", "o")}
    return {quantity: element_share(ion, element="N", atomic_mass=masses) for quantity, ion in _IONS.items()}
