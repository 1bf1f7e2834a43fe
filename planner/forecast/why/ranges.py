"""Why the low and the high end of a range lie where they do: which figures were moved, and what each does.

Ranges are made by `planner.forecast.ranges`; here they are only taken apart again. What matters most comes
first, the rest is put together under "others" by the rule that puts all together.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Final

from planner.farm.fields import Id
from planner.forecast.ranges.values import Range, Ranges, Swing
from planner.forecast.verdicts import symbol_of
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, worked
from planner.forecast.why.values import Explanation, Input, Note, NoteKind

_MOST_PARTS: Final = 8
_MOST_FIGURES: Final = 4
_GONE: Final = 1e-6
"""A factor below this is taken as nothing, as the ranges take it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Place:
    """One number of an outcome: which array, and where in it; told by `title`, of what, in which unit."""

    name: str
    at: tuple[int, ...]
    title: str
    about: str
    unit: str
    on: date

    def likely(self, ranges: Ranges) -> float:
        return float(getattr(ranges.likely, self.name)[self.at])

    def changes(self, swing: Swing) -> tuple[float, float]:
        """Return what the number changes by with a figure at its low and at its high value."""
        low, high = (getattr(end, self.name)[self.at] for end in (swing.at_low, swing.at_high))
        return float(low), float(high)


def why_range_of_harvest(ground: Ground, ranges: Ranges, crop: str, week: int, *, grams: bool) -> Explanation:
    """Return why the harvest of a crop in a week may be so much less or more."""
    if crop not in ranges.crops:
        raise NoSuchFigureError(f'"{crop}" is not grown; crops are {", ".join(ranges.crops)}.')
    band = ranges.harvest_g if grams else ranges.harvest_plants
    place = _Place(
        name="harvest_g" if grams else "harvest_plants",
        at=(ranges.crops.index(crop), week),
        title="harvest",
        about=ground.catalogue.crops[crop].name,
        unit="g" if grams else "plants",
        on=ranges.ruler.week_start(week),
    )
    return _range(ground, ranges, place, band, place.at)


def why_range_of_supply(ground: Ground, ranges: Ranges, loop: Id, week: int, element: int) -> Explanation:
    """Return why the supply of an element in a week may be so much less or more."""
    number = _number(ranges, loop)
    place = _of_element(ranges, "supply_g", number, element, week, title="supply")
    return _range(ground, ranges, place, ranges.loops[number].supply_g, (element, week))


def why_range_of_demand(ground: Ground, ranges: Ranges, loop: Id, week: int, element: int) -> Explanation:
    """Return why the demand for an element in a week may be so much less or more."""
    number = _number(ranges, loop)
    place = _of_element(ranges, "demand_g", number, element, week, title="demand")
    return _range(ground, ranges, place, ranges.loops[number].demand_g, (element, week))


def why_range_of_feed(ground: Ground, ranges: Ranges, loop: Id, week: int) -> Explanation:
    """Return why the feed of a loop in a week may be so much less or more."""
    number = _number(ranges, loop)
    place = _Place(
        name="feed_g_per_day",
        at=(number, week),
        title="mean feed",
        about=ranges.loops[number].name,
        unit="g/d",
        on=ranges.ruler.week_start(week),
    )
    return _range(ground, ranges, place, ranges.loops[number].feed_g_per_day, (week,))


def why_range_of_ratio(ground: Ground, ranges: Ranges, loop: Id, week: int, element: int) -> Explanation:
    """Return why supply over demand of an element in a week may be so much less or more."""
    number = _number(ranges, loop)
    band, at = ranges.loops[number].ratio, (element, week)
    if math.isnan(band.likely[at]):
        raise NoSuchFigureError(f"nothing of {symbol_of(element)} is wanted in that week.")
    supply, demand = (
        _of_element(ranges, name, number, element, week, title=name.removesuffix("_g"))
        for name in ("supply_g", "demand_g")
    )
    of_ratio = _Ratio(ground, ranges, supply, demand)
    ends = [of_ratio.end(high=high, value=_at(band, at, high=high)) for high in (False, True)]
    return _three(supply, band, at, title="range of ratio", unit="g/g", children=tuple(ends))


def _number(ranges: Ranges, loop: Id) -> int:
    for number, one in enumerate(ranges.loops):
        if one.loop == loop:
            return number
    raise NoSuchFigureError(f"there is no loop {loop}.")


def _of_element(ranges: Ranges, name: str, loop: int, element: int, week: int, *, title: str) -> _Place:
    return _Place(
        name=name,
        at=(loop, element, week),
        title=title,
        about=symbol_of(element),
        unit="g",
        on=ranges.ruler.week_start(week),
    )


def _at(band: Range, at: tuple[int, ...], *, high: bool) -> float:
    return float((band.high if high else band.low)[at])


def _three(
    place: _Place,
    band: Range,
    at: tuple[int, ...],
    *,
    title: str,
    unit: str,
    children: tuple[Explanation, ...],
) -> Explanation:
    """Return a range with its three numbers, and behind it why its ends lie where they do."""
    low, likely, high = (float(end[at]) for end in (band.low, band.likely, band.high))
    return Explanation(
        title=title,
        about=place.about,
        value=likely,
        unit=unit,
        formula=Formula.RANGE,
        inputs=(worked("low", low, unit), worked("likely", likely, unit), worked("high", high, unit)),
        children=children,
        on=place.on,
    )


def _range(ground: Ground, ranges: Ranges, place: _Place, band: Range, at: tuple[int, ...]) -> Explanation:
    ends = (
        _low(ground, ranges, place, value=_at(band, at, high=False)),
        _high(ground, ranges, place, value=_at(band, at, high=True)),
    )
    return _three(place, band, at, title=f"range of {place.title}", unit=place.unit, children=ends)


# --- one end -------------------------------------------------------------------------------------------


def _high(ground: Ground, ranges: Ranges, place: _Place, *, value: float) -> Explanation:
    """Return why the high end lies so high: what each figure can add."""
    raised = [(max(0.0, *place.changes(swing)), swing) for swing in ranges.swings]
    kept, rest = _split(raised, nothing=0.0)
    parts = tuple(_raised(ground, place, swing, amount) for amount, swing in kept)
    others = math.sqrt(sum(amount**2 for amount, _ in rest))
    return Explanation(
        title=f"high end of {place.title}",
        about=place.about,
        value=value,
        unit=place.unit,
        formula=Formula.RANGE_HIGH,
        inputs=(
            worked("likely", place.likely(ranges), place.unit),
            *((worked("others", others, place.unit),) if rest else ()),
        ),
        children=parts,
        notes=_end_notes(ranges, rest),
        on=place.on,
    )


def _low(ground: Ground, ranges: Ranges, place: _Place, *, value: float) -> Explanation:
    """Return why the low end lies so low: the factor that each figure can lower it by."""
    likely = place.likely(ranges)
    factors = _factors(ranges, place)
    gone = [swing for factor, swing in factors if factor < _GONE]
    if likely <= 0.0 or gone:
        about = gone[0].paths[0] if gone else ""
        note = (Note(kind=NoteKind.VANISHES, values=(("figure", about),)),) if gone else ()
        return _nothing(place, note)
    kept, rest = _split(factors, nothing=1.0)
    return Explanation(
        title=f"low end of {place.title}",
        about=place.about,
        value=value,
        unit=place.unit,
        formula=Formula.RANGE_LOW,
        inputs=(worked("likely", likely, place.unit), *_others(rest)),
        children=tuple(_factor(ground, place, swing, factor, likely) for factor, swing in kept),
        notes=_end_notes(ranges, rest),
        on=place.on,
    )


Sized = tuple[float, Swing]


def _factors(ranges: Ranges, place: _Place) -> list[Sized]:
    """Return the factor that each figure can lower something by, 1 where it lowers nothing."""
    likely = place.likely(ranges)
    if likely <= 0.0:
        return []
    return [(1.0 + min(0.0, *place.changes(swing)) / likely, swing) for swing in ranges.swings]


def _split(sized: Sequence[Sized], *, nothing: float) -> tuple[list[Sized], list[Sized]]:
    """Return the swings that do most, and the others; those that do nothing are left out."""

    def least_first(one: Sized) -> tuple[float, tuple[str, ...]]:
        return -abs(one[0] - nothing), one[1].paths

    ordered = sorted((one for one in sized if one[0] != nothing), key=least_first)
    return ordered[:_MOST_PARTS], ordered[_MOST_PARTS:]


def _others(rest: Sequence[Sized]) -> tuple[Input, ...]:
    """Return the factor that all others make together, none where there are no others."""
    if not rest:
        return ()
    return (worked("others", math.exp(-math.sqrt(sum(math.log(one) ** 2 for one, _ in rest))), "1"),)


def _end_notes(ranges: Ranges, rest: Sequence[Sized]) -> tuple[Note, ...]:
    independent = Note(kind=NoteKind.INDEPENDENT, values=(("many", float(len(ranges.swings))),))
    others = (Note(kind=NoteKind.OTHERS, values=(("many", float(len(rest))),)),) if rest else ()
    return (independent, *others)


def _nothing(place: _Place, notes: tuple[Note, ...]) -> Explanation:
    return Explanation(
        title=f"low end of {place.title}",
        about=place.about,
        value=0.0,
        unit=place.unit,
        formula=Formula.NOTHING,
        notes=notes,
        on=place.on,
    )


# --- one figure ----------------------------------------------------------------------------------------


def _raised(ground: Ground, place: _Place, swing: Swing, amount: float) -> Explanation:
    return _moved(ground, place, swing, value=amount, formula=Formula.RAISED)


def _factor(ground: Ground, place: _Place, swing: Swing, factor: float, likely: float) -> Explanation:
    found = _moved(ground, place, swing, value=factor, formula=Formula.FACTOR)
    return replace(found, unit="1", inputs=(*found.inputs, worked("likely", likely, place.unit)))


def _moved(ground: Ground, place: _Place, swing: Swing, *, value: float, formula: Formula) -> Explanation:
    """Return what moving one figure does, with the figure itself: its value, its ends, its source."""
    low, high = place.changes(swing)
    figures = tuple(
        ground.figure(path.rpartition("/")[2] if number == 0 else f"also_{number}", path)
        for number, path in enumerate(swing.paths[:_MOST_FIGURES])
    )
    together = (Note(kind=NoteKind.MOVED_TOGETHER, values=(("many", float(len(swing.paths))),)),)
    return Explanation(
        title="moved figure",
        about=swing.paths[0],
        value=value,
        unit=place.unit,
        formula=formula,
        inputs=(
            *figures,
            worked("change_at_low", low, place.unit),
            worked("change_at_high", high, place.unit),
        ),
        notes=together if len(swing.paths) > 1 else (),
        on=place.on,
    )


# --- supply over demand --------------------------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class _Ratio:
    """What the ends of a ratio are put together from: supply, demand and the factors of both."""

    ground: Ground
    ranges: Ranges
    supply: _Place
    demand: _Place

    def end(self, *, high: bool, value: float) -> Explanation:
        """Return why one end of the ratio lies where it does."""
        title = f"{'high' if high else 'low'} end of ratio"
        if high and self.supply.likely(self.ranges) <= 0.0:
            return self._of_what_may_come(title, value)
        if not high and value <= 0.0:
            return replace(_nothing(self.supply, ()), title=title, unit="g/g")
        up, down = (self.supply, self.demand) if high else (self.demand, self.supply)
        parts = {up.name: self._more(up), down.name: self._less(down)}
        supply, demand = parts[self.supply.name], parts[self.demand.name]
        likely = self.supply.likely(self.ranges) / self.demand.likely(self.ranges)
        return Explanation(
            title=title,
            about=self.supply.about,
            value=value,
            unit="g/g",
            formula=Formula.RATIO_HIGH if high else Formula.RATIO_LOW,
            inputs=(
                worked("likely", likely, "g/g"),
                worked("supply_times", supply.value or 1.0, "1"),
                worked("demand_times", demand.value or 1.0, "1"),
            ),
            children=(supply, demand),
            on=self.supply.on,
        )

    def _more(self, place: _Place) -> Explanation:
        """Return how many times as much of something there may be, by its own high end."""
        likely, raised = place.likely(self.ranges), self._raised(place)
        return Explanation(
            title=f"more {place.title}",
            about=place.about,
            value=max(1.0, raised / likely),
            unit="1",
            formula=Formula.TIMES,
            inputs=(worked("high", raised, place.unit), worked("likely", likely, place.unit)),
            children=(_high(self.ground, self.ranges, place, value=raised),),
            on=place.on,
        )

    def _raised(self, place: _Place) -> float:
        squares = sum(max(0.0, *place.changes(swing)) ** 2 for swing in self.ranges.swings)
        return place.likely(self.ranges) + math.sqrt(squares)

    def _less(self, place: _Place) -> Explanation:
        """Return how many times less there may be, figures that alone leave nothing left out."""
        likely = place.likely(self.ranges)
        factors = [one for one in _factors(self.ranges, place) if one[0] >= _GONE]
        kept, rest = _split(factors, nothing=1.0)
        all_of = math.sqrt(sum(math.log(factor) ** 2 for factor, _ in factors))
        return Explanation(
            title=f"less {place.title}",
            about=place.about,
            value=math.exp(all_of),
            unit="1",
            formula=Formula.FACTORS,
            inputs=_others(rest),
            children=tuple(_factor(self.ground, place, swing, factor, likely) for factor, swing in kept),
            notes=_end_notes(self.ranges, rest),
            on=place.on,
        )

    def _of_what_may_come(self, title: str, value: float) -> Explanation:
        """Return the high end where nothing is supplied likely: what may come over what is wanted."""
        raised = self._raised(self.supply)
        return Explanation(
            title=title,
            about=self.supply.about,
            value=value,
            unit="g/g",
            formula=Formula.RATIO,
            inputs=(
                worked("supply_g", raised, "g"),
                worked("demand_g", self.demand.likely(self.ranges), "g"),
            ),
            children=(_high(self.ground, self.ranges, self.supply, value=raised),),
            on=self.supply.on,
        )
