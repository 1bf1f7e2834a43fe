"""Why one farm of a comparison does better or worse than another: both answers, and the difference."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from functools import partial
from typing import Final

from planner.farm.farm import Farm
from planner.forecast.engine import Forecaster
from planner.forecast.flags import tank_density
from planner.forecast.values import FlagKind
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, worked
from planner.forecast.why.values import Explanation, Note, NoteKind
from planner.planning.answering import Maker, difference, summed
from planner.planning.scenarios.compare import BASE, Priced, Prices, cost_parts, income_parts
from planner.planning.scenarios.sets import Scenario
from planner.planning.why_farms import (
    days_of,
    ground_of,
    plan_weeks,
    why_counted,
    why_fed,
    why_fish_taken,
    why_fullest,
    why_grown,
    why_least,
    why_occupied,
    why_weeks_short,
)

_Figure = Callable[[Ground], Explanation]
_MONEY: Final = "money"


def scenario_whys(
    base: Farm, scenarios: Iterable[Scenario], forecaster: Forecaster, *, prices: Prices | None = None
) -> dict[str, Maker]:
    """Return why each figure of a comparison is what it is: of the base itself, of others against it."""
    known = prices or Prices()
    first = ground_of(base, forecaster)
    found: dict[str, Maker] = {
        scenario_name(BASE, what): partial(figure, first) for what, figure in _figures(first, known)
    }
    for one in scenarios:
        ground = ground_of(one.farm(base), forecaster)
        for what, figure in _figures(first, known, ground):
            found[scenario_name(one.name, what)] = partial(_against, figure, first, ground)
    return found


def scenario_name(column: str, what: str) -> str:
    """Return what a figure of a column is called, such as "base feed" or "base harvest basil"."""
    return f"{column} {what}"


def _against(figure: _Figure, base: Ground, ground: Ground) -> Explanation:
    before, after = figure(base), figure(ground)
    return difference(f"change of {after.title}", after.about, before, after)


def _figures(base: Ground, prices: Prices, *others: Ground) -> Iterator[tuple[str, _Figure]]:
    yield "least", _least
    yield "weeks-short", _weeks_short
    yield "planted", partial(why_occupied, highest=False)
    yield "planted-most", partial(why_occupied, highest=True)
    yield "unplaced", _unplaced
    yield "feed", why_fed
    yield "fish", why_fish_taken
    yield "fullest", _fullest
    yield "cost", partial(_cost, prices)
    yield "income", partial(_income, prices)
    crops = dict.fromkeys(batch.crop for ground in (base, *others) for batch in ground.farm.batches)
    for crop in crops:
        yield f"harvest {crop}", partial(why_grown, crop=crop)


def _least(ground: Ground) -> Explanation:
    return why_least(ground, range(len(ground.forecast.loops)), plan_weeks(ground))


def _weeks_short(ground: Ground) -> Explanation:
    return why_weeks_short(ground, range(len(ground.forecast.loops)), plan_weeks(ground))


def _unplaced(ground: Ground) -> Explanation:
    flags = {flag.about: flag.name for flag in ground.forecast.flags if flag.kind is FlagKind.UNPLACED}
    return why_counted("batches without places", "batches", flags.values())


def _fullest(ground: Ground) -> Explanation:
    groups = [group for loop in ground.forecast.loops for group in loop.groups]
    limits = {}
    for tank in ground.farm.tanks:
        found = tank_density(ground.farm, ground.catalogue, groups, tank, ground.forecast.ruler)
        if found is not None:
            limits[tank.id] = found[1]
    return why_fullest(ground, limits, days_of(plan_weeks(ground)), limits=limits)


def _cost(prices: Prices, ground: Ground) -> Explanation:
    return _money("cost", cost_parts(ground.farm, ground.forecast, prices))


def _income(prices: Prices, ground: Ground) -> Explanation:
    return _money("income", income_parts(ground.farm, ground.forecast, prices))


def _money(title: str, parts: tuple[Priced, ...]) -> Explanation:
    """Return a sum of money; a price that was not given leaves it unknown."""
    priced = [_of(one) for one in parts if one.price is not None]
    total = sum(one.value or 0.0 for one in priced)
    found = summed(title, "", total, _MONEY, priced)
    blank = [f"{one.what} {one.key}" for one in parts if one.price is None]
    if not blank:
        return found
    reason = f"no price of {', '.join(blank)}"
    return replace(
        found, value=None, notes=(*found.notes, Note(kind=NoteKind.NOT_KNOWN, values=(("reason", reason),)))
    )


def _of(one: Priced) -> Explanation:
    bare = Explanation(
        title=one.what,
        about=one.key,
        value=0.0,
        unit=_MONEY,
        formula=Formula.PRICED,
        inputs=(
            worked("amount", one.amount, one.unit),
            entered("price", one.price or 0.0, f"{_MONEY}/{one.unit}", one.key),
        ),
    )
    return figured(bare)
