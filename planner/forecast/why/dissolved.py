"""Why so much of an element is dissolved in the water, what of the demand it covers, and what plants lack."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.species import ELEMENTS
from planner.forecast.values import Floats, LoopForecast, PoolMiss
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, week_days, worked
from planner.forecast.why.plants import why_demand
from planner.forecast.why.supply import why_supply
from planner.forecast.why.values import Explanation, Input, Note, NoteKind
from planner.forecast.why.water_behind import why_left

_PER_THOUSAND: Final = 1000.0


@dataclass(frozen=True, slots=True, kw_only=True)
class _Since:
    """From where a stock is counted on: a day, the level on it, where that comes from, and days until."""

    start: Input
    notes: tuple[Note, ...]
    days: slice


def why_stock(ground: Ground, loop: LoopForecast, day: int, element: int) -> Explanation:
    """Return why so much of an element is dissolved when a day begins [mg/L]."""
    since, entry = _since(ground, loop, day, element), ground.loops[loop.loop]
    supplied, taken = _supplied(ground, loop, element, since.days), _taken(ground, loop, element, since.days)
    left = why_left(ground, loop, element, since.days)
    return Explanation(
        title="stock in the water",
        about=f"{ELEMENTS[element].capitalize()}, {loop.name}",
        value=float(loop.pool_mg_per_l[element, day]),
        unit="mg/L",
        formula=Formula.STOCK,
        inputs=(
            since.start,
            worked("supplied_g", supplied.value or 0.0, "g"),
            worked("taken_g", taken.value or 0.0, "g"),
            worked("left_g", left.value or 0.0, "g"),
            entered("water_l", loop.water_l, "L", entry.name),
        ),
        children=(supplied, taken, left) if since.days.stop > since.days.start else (),
        notes=since.notes,
        on=ground.forecast.ruler.date_of(day),
    )


def _since(ground: Ground, loop: LoopForecast, day: int, element: int) -> _Since:
    """Return the last test up to a day, else what the plan begins with."""
    ruler = ground.forecast.ruler
    tests = [miss for miss in loop.pool_misses if miss.element == element and miss.day <= day]
    if tests:
        return _since_test(ground, loop, max(tests, key=_day), day)
    level = float(loop.pool_mg_per_l[element, 0])
    if loop.pool_assumed[element, 0]:
        start = ground.figure("start_mg_per_l", f"solution/leafy/{ELEMENTS[element]}")
        return _Since(start=start, notes=(Note(kind=NoteKind.STOCK_ASSUMED),), days=slice(0, day))
    told = (("day", ruler.start_on.isoformat()),)
    return _Since(
        start=entered("start_mg_per_l", level, "mg/L", loop.name),
        notes=(Note(kind=NoteKind.STOCK_BEFORE, values=told),),
        days=slice(0, day),
    )


def _since_test(ground: Ground, loop: LoopForecast, test: PoolMiss, day: int) -> _Since:
    told = (
        ("day", ground.forecast.ruler.date_of(test.day).isoformat()),
        ("expected", test.expected_mg_per_l),
    )
    return _Since(
        start=entered("start_mg_per_l", test.read_mg_per_l, "mg/L", loop.name),
        notes=(Note(kind=NoteKind.STOCK_TESTED, values=told),),
        days=slice(test.day, day),
    )


def _day(test: PoolMiss) -> int:
    return test.day


def _sum(by_day: Floats, element: int, days: slice) -> float:
    return float(by_day[element, days].sum())


def _supplied(ground: Ground, loop: LoopForecast, element: int, days: slice) -> Explanation:
    """Return what was supplied in some days: the weeks that brought most, and all others together."""
    value = _sum(loop.supply_g, element, days)
    by_week = ground.forecast.ruler.weekly_sum(loop.supply_g)[element]
    kept = tuple(why_supply(ground, loop, week, element) for week in _most(by_week, days))
    rest = value - sum(one.value or 0.0 for one in kept)
    return Explanation(
        title="supplied since then",
        about=loop.name,
        value=value,
        unit="g",
        formula=Formula.SUM,
        inputs=(worked("others", rest, "g"),) if kept else (worked("in_these_days", value, "g"),),
        children=kept,
        on=ground.forecast.ruler.date_of(days.start),
    )


def _whole_weeks(days: slice) -> Iterator[int]:
    """Yield the weeks that lie wholly within some days."""
    first = -(-days.start // DAYS_PER_WEEK)
    yield from range(first, days.stop // DAYS_PER_WEEK)


def _taken(ground: Ground, loop: LoopForecast, element: int, days: slice) -> Explanation:
    wanted, lacking = _sum(loop.demand_g, element, days), _sum(loop.unmet_g, element, days)
    return Explanation(
        title="taken by plants since then",
        about=loop.name,
        value=wanted - lacking,
        unit="g",
        formula=Formula.TAKEN,
        inputs=(worked("wanted_g", wanted, "g"), worked("lacking_g", lacking, "g")),
        children=(_wanted(ground, loop, element, days, wanted),) if wanted else (),
    )


def _wanted(ground: Ground, loop: LoopForecast, element: int, days: slice, value: float) -> Explanation:
    """Return what plants wanted in some days: the weeks that want most, and all others together."""
    number, _ = ground.loop_forecast(loop.loop)
    by_week = ground.forecast.ruler.weekly_sum(loop.demand_g)[element]
    parts = tuple(why_demand(ground, number, week, element) for week in _most(by_week, days))
    rest = value - sum(part.value or 0.0 for part in parts)
    return Explanation(
        title="wanted by plants since then",
        about=loop.name,
        value=value,
        unit="g",
        formula=Formula.SUM,
        inputs=(worked("others", rest, "g"),),
        children=parts,
        on=ground.forecast.ruler.date_of(days.start),
    )


_MOST_WEEKS: Final = 4
"""Weeks of supply and demand that are told one by one; each goes down to fish and batches."""


def _most(by_week: Floats, days: slice) -> list[int]:
    """Return the whole weeks of some days that bring or take most."""
    return sorted(_whole_weeks(days), key=lambda week: (-float(by_week[week]), week))[:_MOST_WEEKS]


def why_covered(ground: Ground, loop: LoopForecast, week: int, element: int) -> Explanation:
    """Return how far a week's supply goes with what is dissolved when it begins."""
    verdict = ground.verdict(loop, week)
    number, _ = ground.loop_forecast(loop.loop)
    supply, demand = why_supply(ground, loop, week, element), why_demand(ground, number, week, element)
    stock = _stock_grams(ground, loop, week, element)
    covered = verdict.covered_ratio[element]
    return Explanation(
        title="supply and stock for the demand",
        about=f"{ELEMENTS[element].capitalize()}, {loop.name}",
        value=covered,
        unit="1",
        formula=Formula.COVERED,
        inputs=(
            worked("supply_g", supply.value or 0.0, "g"),
            worked("stock_g", stock.value or 0.0, "g"),
            worked("demand_g", demand.value or 0.0, "g"),
        ),
        children=(supply, stock, demand),
        notes=() if covered is not None else (Note(kind=NoteKind.NOTHING_WANTED),),
        on=ground.forecast.ruler.week_start(week),
    )


def _stock_grams(ground: Ground, loop: LoopForecast, week: int, element: int) -> Explanation:
    day, entry = week * DAYS_PER_WEEK, ground.loops[loop.loop]
    level = why_stock(ground, loop, day, element)
    return Explanation(
        title="grams in the water",
        about=loop.name,
        value=float(loop.pool_g[element, day]),
        unit="g",
        formula=Formula.HELD_GRAMS,
        inputs=(
            worked("level_mg_per_l", level.value or 0.0, "mg/L"),
            entered("water_l", loop.water_l, "L", entry.name),
        ),
        children=(level,),
        on=level.on,
    )


def why_lacking(ground: Ground, loop: LoopForecast, week: int, element: int) -> Explanation:
    """Return why plants lack so much of an element in a week: what is not in the water cannot be taken."""
    number, _ = ground.loop_forecast(loop.loop)
    demand = why_demand(ground, number, week, element)
    value = ground.verdict(loop, week).unmet_g[element]
    return Explanation(
        title="what plants lack",
        about=f"{ELEMENTS[element].capitalize()}, {loop.name}",
        value=value,
        unit="g",
        formula=Formula.LACKING,
        inputs=(
            worked("wanted_g", demand.value or 0.0, "g"),
            worked("taken_g", _taken(ground, loop, element, week_days(week)).value or 0.0, "g"),
        ),
        children=(
            demand,
            why_supply(ground, loop, week, element),
            why_stock(ground, loop, week * DAYS_PER_WEEK, element),
        ),
        notes=(Note(kind=NoteKind.DAY_BY_DAY),),
        on=ground.forecast.ruler.week_start(week),
    )
