"""Lays a value of the grower over a figure of the book, takes it off again, and tells what moves by it.

Pure: must know nothing of widgets.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import date
from typing import Final

import numpy as np

from planner.actions.changing import addition, alteration, removal
from planner.desk.say import tr
from planner.desk.words import number_words
from planner.farm.changes import ChangeSet, applied
from planner.farm.farm import Farm, OwnEntry, Shelf
from planner.farm.fields import Id
from planner.farm.ids import new_id
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast
from planner.planning.moved import in_both

_FIRST_PICK, _OVER = 3, 4
_PERCENT: Final = 100.0
_LEAST_PERCENT: Final = 0.05


@dataclass(frozen=True, slots=True, kw_only=True)
class Place:
    """One figure of one entry: its shelf, the key and name of the entry, and the name of the field."""

    shelf: Shelf
    key: str
    name: str
    field: str


def own_entry(farm: Farm, place: Place) -> OwnEntry | None:
    """Return the grower's entry of that key, None when the book's own stands."""
    return next((own for own in farm.own_entries if own.shelf is place.shelf and own.key == place.key), None)


def has_own_value(farm: Farm, place: Place) -> bool:
    """Tell whether the grower has laid a value of their own over a figure."""
    own = own_entry(farm, place)
    return own is not None and place.field in dict(own.values)


def laid(farm: Farm, place: Place, value: float, label: str) -> ChangeSet:
    """Return the act that lays a value over a figure."""
    title = tr("Own value: {name}, {label}", name=place.name, label=label)
    own = own_entry(farm, place)
    if own is None:
        entry = OwnEntry(
            id=new_id(),
            shelf=place.shelf,
            key=place.key,
            like=place.key,
            name=place.name,
            values=((place.field, value),),
        )
        return addition(title, entry)
    values = tuple(sorted({**dict(own.values), place.field: value}.items()))
    return alteration(farm, replace(own, values=values), title=title)


def taken_off(farm: Farm, place: Place, label: str) -> ChangeSet:
    """Return the act that goes back to the book; raises `LookupError` when no own value stands."""
    own = own_entry(farm, place)
    if own is None or place.field not in dict(own.values):
        raise LookupError(f"{place.field} of {place.key} has no value of the grower's own")
    title = tr("Back to the book: {name}, {label}", name=place.name, label=label)
    values = tuple((field, value) for field, value in own.values if field != place.field)
    if not values and own.key == own.like:
        return removal(farm, own, title=title)
    return alteration(farm, replace(own, values=values), title=title)


def what_moves(farm: Farm, now: Forecast, change_set: ChangeSet, forecaster: Forecaster) -> tuple[str, ...]:
    """Return what an act would move, a sentence each. Raises `FarmFaultError` when it cannot be taken."""
    return moved_words(now, forecaster.preview(applied(farm, change_set)))


@dataclass(frozen=True, slots=True, kw_only=True)
class Shift:
    """One batch whose days move: first harvest and end, as they are and as they would be."""

    batch: Id
    code: str
    picked_on: tuple[date, date]
    over_on: tuple[date, date]


def shifts(farm: Farm, now: Forecast, then: Forecast) -> tuple[Shift, ...]:
    """Return every batch whose days differ in two forecasts of the same batches, in order of its harvest."""
    codes = {batch.id: batch.code for batch in farm.batches}
    both, day = in_both(now, then), now.ruler.date_of
    moves = both.later_days[:, (_FIRST_PICK, _OVER)].any(axis=1)
    old, new = now.batches.ends[both.old[moves]], then.batches.ends[both.new[moves]]
    found = (
        Shift(
            batch=now.batches.ids[row],
            code=codes[now.batches.ids[row]],
            picked_on=(day(was[_FIRST_PICK]), day(will[_FIRST_PICK])),
            over_on=(day(was[_OVER]), day(will[_OVER])),
        )
        for row, was, will in zip(both.old[moves].tolist(), old.tolist(), new.tolist(), strict=True)
    )
    return tuple(sorted(found, key=_by_pick))


def _by_pick(shift: Shift) -> tuple[date, str]:
    return shift.picked_on[0], shift.code


def moved_words(now: Forecast, then: Forecast) -> tuple[str, ...]:
    """Return how harvests and feed of one forecast differ from those of another of the same batches."""
    shift = then.batches.ends[:, _FIRST_PICK] - now.batches.ends[:, _FIRST_PICK]
    said = [
        words
        for words in (
            _moved(shift[shift > 0], tr("later")),
            _moved(-shift[shift < 0], tr("earlier")),
            _changed(now.harvest_g, then.harvest_g, tr("harvest of crops")),
            _changed(_feed(now), _feed(then), tr("feed of the fish")),
            _changed(_demand(now), _demand(then), tr("food the crops take up")),
        )
        if words
    ]
    return tuple(said) or (tr("Nothing in the plan moves by it."),)


def _moved(days: np.ndarray, way: str) -> str:
    if not days.size:
        return ""
    low, high = int(days.min()), int(days.max())
    span = str(low) if low == high else tr("{low} to {high}", low=low, high=high)
    if days.size == 1:
        return tr("1 batch: harvest {span} days {way}", span=span, way=way)
    return tr("{count} batches: harvest {span} days {way}", count=int(days.size), span=span, way=way)


def _feed(forecast: Forecast) -> np.ndarray:
    return np.array([loop.feed_g.sum() for loop in forecast.loops])


def _demand(forecast: Forecast) -> np.ndarray:
    return np.array([loop.demand_g[0].sum() for loop in forecast.loops])


def _changed(now: np.ndarray, then: np.ndarray, name: str) -> str:
    before, after = float(np.sum(now)), float(np.sum(then))
    if before <= 0:
        return ""
    percent = (after / before - 1.0) * _PERCENT
    if abs(percent) < _LEAST_PERCENT:
        return ""
    sign = "+" if percent > 0 else "−"
    return tr(
        "{name} over the plan: {sign}{percent} %",
        name=name[:1].upper() + name[1:],
        sign=sign,
        percent=number_words(abs(percent), digits=1),
    )
