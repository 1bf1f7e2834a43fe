"""Why the low and the high end of what is foreseen lie where they do.

Ranges are made by `planner.forecast.ranges`; here they are only taken apart again.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from planner.farm.fields import Id
from planner.forecast.ranges.values import Range, Ranges
from planner.forecast.verdicts import symbol_of
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, worked
from planner.forecast.why.spans import Moved, Span, three
from planner.forecast.why.values import Explanation

_At = tuple[int, ...]


def why_range_of_harvest(ground: Ground, ranges: Ranges, crop: str, week: int, *, grams: bool) -> Explanation:
    """Return why the harvest of a crop in a week may be so much less or more."""
    if crop not in ranges.crops:
        raise NoSuchFigureError(f'"{crop}" is not grown; crops are {", ".join(ranges.crops)}.')
    ground.check_week(week)
    band, at = ranges.harvest_g if grams else ranges.harvest_plants, (ranges.crops.index(crop), week)
    span = _span(
        ranges,
        "harvest_g" if grams else "harvest_plants",
        at,
        title="harvest",
        about=ground.catalogue.crops[crop].name,
        unit="g" if grams else "plants",
    )
    return _explained(ground, span, band, at)


def why_range_of_supply(ground: Ground, ranges: Ranges, loop: Id, week: int, element: int) -> Explanation:
    """Return why the supply of an element in a week may be so much less or more."""
    number = _number(ground, ranges, loop, week)
    span = _of_element(ranges, "supply", number, element, week)
    return _explained(ground, span, ranges.loops[number].supply_g, (element, week))


def why_range_of_demand(ground: Ground, ranges: Ranges, loop: Id, week: int, element: int) -> Explanation:
    """Return why the demand for an element in a week may be so much less or more."""
    number = _number(ground, ranges, loop, week)
    span = _of_element(ranges, "demand", number, element, week)
    return _explained(ground, span, ranges.loops[number].demand_g, (element, week))


def why_range_of_feed(ground: Ground, ranges: Ranges, loop: Id, week: int) -> Explanation:
    """Return why the feed of a loop in a week may be so much less or more."""
    number = _number(ground, ranges, loop, week)
    about, at = ranges.loops[number].name, (number, week)
    span = _span(ranges, "feed_g_per_day", at, title="mean feed", about=about, unit="g/d")
    return _explained(ground, span, ranges.loops[number].feed_g_per_day, (week,))


def why_range_of_ratio(ground: Ground, ranges: Ranges, loop: Id, week: int, element: int) -> Explanation:
    """Return why supply over demand of an element in a week may be so much less or more."""
    number = _number(ground, ranges, loop, week)
    band, at = ranges.loops[number].ratio, (element, week)
    low, likely, high = _ends(band, at)
    if math.isnan(likely):
        raise NoSuchFigureError(f"nothing of {symbol_of(element)} is wanted in that week.")
    ratio = _Ratio(
        ground,
        _of_element(ranges, "supply", number, element, week),
        _of_element(ranges, "demand", number, element, week),
    )
    ends = (ratio.end(high=False, value=low), ratio.end(high=True, value=high))
    return three(ratio.supply, low, likely, high, title="range of ratio", unit="g/g", children=ends)


def _number(ground: Ground, ranges: Ranges, loop: Id, week: int) -> int:
    ground.check_week(week)
    for number, one in enumerate(ranges.loops):
        if one.loop == loop:
            return number
    raise NoSuchFigureError(f"there is no loop {loop}.")


def _of_element(ranges: Ranges, title: str, loop: int, element: int, week: int) -> Span:
    at = (loop, element, week)
    return _span(ranges, f"{title}_g", at, title=title, about=symbol_of(element), unit="g")


def _span(ranges: Ranges, name: str, at: _At, *, title: str, about: str, unit: str) -> Span:
    """Return one number of what is foreseen, `at` a place of the array `name`, with all swings of it."""
    return Span(
        title=title,
        about=about,
        unit=unit,
        on=ranges.ruler.week_start(at[-1]),
        likely=float(getattr(ranges.likely, name)[at]),
        moved=tuple(
            Moved(
                paths=swing.paths,
                at_low=float(getattr(swing.at_low, name)[at]),
                at_high=float(getattr(swing.at_high, name)[at]),
            )
            for swing in ranges.swings
        ),
    )


def _ends(band: Range, at: _At) -> tuple[float, float, float]:
    return float(band.low[at]), float(band.likely[at]), float(band.high[at])


def _explained(ground: Ground, span: Span, band: Range, at: _At) -> Explanation:
    low, _, high = _ends(band, at)
    return span.explained(ground, low=low, high=high)


@dataclass(frozen=True, slots=True)
class _Ratio:
    """What the ends of a ratio are put together from: no figure has to do with both of its sides."""

    ground: Ground
    supply: Span
    demand: Span

    def end(self, *, high: bool, value: float) -> Explanation:
        """Return why one end of the ratio lies where it does."""
        title = f"{'high' if high else 'low'} end of ratio"
        if high and self.supply.likely <= 0.0:
            return self._of_what_may_come(title, value)
        if not high and value <= 0.0:
            return replace(self.supply.nothing(), title=title, unit="g/g")
        supply = self.supply.more(self.ground) if high else self.supply.less(self.ground)
        demand = self.demand.less(self.ground) if high else self.demand.more(self.ground)
        return Explanation(
            title=title,
            about=self.supply.about,
            value=value,
            unit="g/g",
            formula=Formula.RATIO_HIGH if high else Formula.RATIO_LOW,
            inputs=(
                worked("likely", self.supply.likely / self.demand.likely, "g/g"),
                worked("supply_times", supply.value or 1.0, "1"),
                worked("demand_times", demand.value or 1.0, "1"),
            ),
            children=(supply, demand),
            on=self.supply.on,
        )

    def _of_what_may_come(self, title: str, value: float) -> Explanation:
        """Return the high end where likely nothing is supplied: what may come over what is wanted."""
        highest = self.supply.highest
        return Explanation(
            title=title,
            about=self.supply.about,
            value=value,
            unit="g/g",
            formula=Formula.RATIO,
            inputs=(worked("supply_g", highest, "g"), worked("demand_g", self.demand.likely, "g")),
            children=(self.supply.high_end(self.ground, value=highest),),
            on=self.supply.on,
        )
