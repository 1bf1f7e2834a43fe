"""Which typed values are doubtful: they are asked about, and kept when the grower says that they are right.

Pure: knows nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.say import tr
from planner.desk.water_words import quantity_value, quantity_words
from planner.desk.words import day_words, number_words
from planner.farm.farm import Farm, by_id
from planner.farm.log import Happening, LogEntry, Unit
from planner.farm.water import Quantity, Reading
from planner.forecast.water.readings import ReadingFigures, is_odd, reading_figures
from planner.forecast.water.targets import Level, TargetBand, target_bands

_SAME_WATER: Final = frozenset({Level.SAFE, Level.WATCH})


def doubts_of(farm: Farm, entries: Sequence[LogEntry], catalogue: Catalogue) -> Iterator[tuple[int, str]]:
    """Yield (number of an entry, question) for every typed value that is unlikely.

    A reading is doubted that stands alone among those around it, or that is suddenly far out of its band;
    heads are doubted that are more than were planted.
    """
    figures, bands = reading_figures(catalogue), target_bands(catalogue)
    batches = by_id(farm.batches)
    for number, entry in enumerate(entries):
        if entry.what is Happening.MEASURED:
            words = _read_words(farm, entries, entry, figures, bands.get(entry.quantity or Quantity.PH))
            if words:
                yield number, words
        elif entry.what is Happening.PICKED and entry.unit is Unit.HEADS and entry.batch in batches:
            planted = batches[entry.batch].plants
            if (entry.amount or 0.0) > planted:
                many = number_words(entry.amount or 0.0)
                yield number, tr("{many} heads of a batch of {plants}?", many=many, plants=planted)


def _read_words(
    farm: Farm,
    entries: Sequence[LogEntry],
    entry: LogEntry,
    figures: ReadingFigures,
    band: TargetBand | None,
) -> str:
    assert entry.quantity is not None
    found, place = _series(farm, entries, entry)
    value, day = quantity_value(entry.quantity, entry.amount or 0.0), day_words(entry.on)
    name = quantity_words(entry.quantity)
    if is_odd(found, place, figures):
        return tr("{name} {value} on {day} stands alone. Is it right?", name=name, value=value, day=day)
    if band is None or band.level(entry.amount or 0.0) in _SAME_WATER:
        return ""
    if place and band.level(found[place - 1].value) not in _SAME_WATER:
        return ""
    words = tr("{name} {value} on {day} is far out of its band.", name=name, value=value, day=day)
    return f"{words} {tr('Is it right?')}"


def _series(farm: Farm, entries: Sequence[LogEntry], entry: LogEntry) -> tuple[list[Reading], int]:
    """Return what was read of a quantity before and what is typed, by date, and the place of an entry."""
    before = [one for one in farm.readings if (one.loop, one.quantity) == (entry.loop, entry.quantity)]
    typed = [one for one in entries if (one.loop, one.quantity) == (entry.loop, entry.quantity)]
    mine = [(one.on, one.at, number, one) for number, one in enumerate(before)]
    mine += [(one.on, one.at, len(before) + number, _reading(one)) for number, one in enumerate(typed)]
    found = [each[3] for each in sorted(mine, key=_moment)]
    return found, next(at for at, one in enumerate(found) if one.id == entry.id)


def _moment(one: tuple[object, str, int, Reading]) -> tuple[object, str, int]:
    return one[:3]


def _reading(entry: LogEntry) -> Reading:
    assert entry.quantity is not None
    return Reading(
        id=entry.id,
        loop=entry.loop,
        on=entry.on,
        at=entry.at,
        quantity=entry.quantity,
        value=entry.amount or 0.0,
    )
