"""Why solids give back so much of an element: where they lie in beds, and as liquor of solids batches."""

from __future__ import annotations

from typing import Final

from planner.farm.farm import by_id
from planner.farm.species import ELEMENTS
from planner.farm.water import SolidsBatch
from planner.forecast.solids import solids_figures, solids_setup
from planner.forecast.values import Floats, LoopForecast, SolidsBatchForecast
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.fates import why_solids_of_fish
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, week_days, worked
from planner.forecast.why.values import Explanation, Input

_NITROGEN: Final = ELEMENTS.index("n")
_STILL_LIMIT: Final = "coefficient/solids/still_limit_share_"


def why_mineralised(ground: Ground, loop: LoopForecast, week: int, element: int) -> Explanation:
    """Return why solids that lie in beds give back so much of an element in a week."""
    solids, days, symbol = loop.solids, week_days(week), ELEMENTS[element]
    laid = float((solids.settled_g + solids.in_gravel_g)[element, days].sum())
    return Explanation(
        title="from solids in beds",
        about=loop.name,
        value=_week_sum(solids.mineralised_g, element, days),
        unit="g",
        formula=Formula.MINERALISED,
        inputs=(
            worked("lying_g", _lying_before(solids.lying_g, element, days), "g"),
            worked("laid_down_g", laid, "g"),
            ground.figure("limit_in_gravel", f"element/{symbol}/mineral_limit_share"),
            ground.figure("limit_under_rafts", f"{_STILL_LIMIT}{symbol}"),
            ground.figure("rate_per_day", f"element/{symbol}/mineral_rate_per_day"),
            ground.figure("rate_share_under_rafts", "coefficient/solids/settled_rate_share"),
        ),
        children=(_laid_down(ground, loop, element, days=days, value=laid),),
        on=ground.forecast.ruler.week_start(week),
    )


def _week_sum(by_day: Floats, element: int, days: slice) -> float:
    return float(by_day[element, days].sum())


def _lying_before(lying_g: Floats, element: int, days: slice) -> float:
    """Return what lies in beds as the week begins [g]; what lay there before the plan is not known."""
    return float(lying_g[element, days.start - 1]) if days.start else 0.0


def _laid_down(ground: Ground, loop: LoopForecast, element: int, *, days: slice, value: float) -> Explanation:
    return Explanation(
        title="solids that pass the filters",
        about=loop.name,
        value=value,
        unit="g",
        formula=Formula.LAID_DOWN,
        inputs=(
            worked("solids_g", _week_sum(loop.solids_g, element, days), "g"),
            _captured(ground, loop),
        ),
        children=(why_solids_of_fish(ground, loop, element, days),),
    )


def _captured(ground: Ground, loop: LoopForecast) -> Input:
    """Return what the filters take out: the usual share unless the grower gave one for a filter."""
    filters = [one for one in ground.farm.filters if one.loop == loop.loop]
    if all(one.solids_captured_share is None for one in filters):
        return ground.figure("captured_share", "loop/solids_captured_share")
    entry = ground.loops[loop.loop]
    figures, ruler = solids_figures(ground.catalogue), ground.forecast.ruler
    setup = solids_setup(ground.farm, entry, figures, ruler)
    return entered("captured_share", setup.captured_share, "1", loop.name)


def why_liquor(ground: Ground, loop: LoopForecast, week: int, element: int) -> Explanation:
    """Return why solids batches bring so much of an element in a week: those that go back in it."""
    days, entries = week_days(week), by_id(ground.farm.solids_batches)
    parts = [
        liquor_of_batch(ground, entries[one.batch], one, element)
        for one in loop.solids.batches
        if _goes_back(ground, entries[one.batch], days)
    ]
    return Explanation(
        title="from solids batches",
        about=loop.name,
        value=_week_sum(loop.solids.liquor_g, element, days),
        unit="g",
        formula=Formula.SUM,
        children=tuple(parts),
        on=ground.forecast.ruler.week_start(week),
    )


def _goes_back(ground: Ground, batch: SolidsBatch, days: slice) -> bool:
    on = batch.returned_on
    return on is not None and days.start <= ground.forecast.ruler.day_of(on) < days.stop


def liquor_of_batch(
    ground: Ground, batch: SolidsBatch, found: SolidsBatchForecast, element: int
) -> Explanation:
    """Return why a solids batch that goes back brings so much of an element."""
    assert batch.returned_on is not None
    symbol = ELEMENTS[element]
    limit = f"element/{symbol}/mineral_limit_share" if batch.aerated else f"{_STILL_LIMIT}{symbol}"
    lost = worked("lost_share", 0.0, "g/g")
    if not batch.aerated and element == _NITROGEN:
        lost = ground.figure("lost_share", "coefficient/solids/still_nitrogen_lost_share")
    bare = Explanation(
        title="liquor of a solids batch",
        about=batch.code,
        value=0.0,
        unit="g",
        formula=Formula.LIQUOR,
        inputs=(
            worked("gathered_g", found.gathered_g[element], "g"),
            ground.figure("limit", limit),
            ground.figure("rate_per_day", f"element/{symbol}/mineral_rate_per_day"),
            worked("days", float((batch.returned_on - batch.siphoned_on).days), "d"),
            lost,
            entered("returned_share", batch.returned_share, "1", batch.code),
        ),
        on=batch.returned_on,
    )
    return figured(bare)
