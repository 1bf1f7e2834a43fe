"""What a season is built within: the farm, its weeks, its beds and the crops that are wanted."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Final

from planner.farm.farm import Farm
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.forecast.engine import Forecaster, ruler_of
from planner.forecast.values import Forecast, Ruler
from planner.planning.grounds import beds_between
from planner.planning.season_plan.fixed import fixed_part, wanted_crops
from planner.planning.season_plan.grounds import grounds_of, nurseries_by_loop, pools_of
from planner.planning.season_plan.options import PlanOptions, Weights, weights_of
from planner.planning.season_plan.probes import WeekSpan
from planner.planning.season_plan.values import Ground, Nursery, Pool

_WHERE: Final = "season plan"


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Frame:
    """What a season is built within; `stays` is what the plan may not change, `fixed` its forecast."""

    farm: Farm
    options: PlanOptions
    forecaster: Forecaster
    weights: Weights
    ruler: Ruler
    span: WeekSpan
    from_on: date
    grounds: tuple[Ground, ...]
    nurseries: tuple[Nursery, ...]
    pools: tuple[Pool, ...]
    crops: tuple[str, ...]
    stays: Farm
    fixed: Forecast


def frame_of(farm: Farm, forecaster: Forecaster, options: PlanOptions) -> Frame:
    """Return the frame of a farm; raises `FarmFaultError` when the plan does not hold the weeks asked for."""
    ruler = ruler_of(farm)
    from_on = farm.settings.plan_from if options.from_on is None else options.from_on
    span = _span(ruler, from_on, options.weeks)
    until_on = ruler.week_start(span.first + span.count)
    stays = fixed_part(farm, from_on=from_on, until_on=until_on)
    catalogue = forecaster.catalogue_for(farm)
    crops = wanted_crops(farm, from_on=from_on, until_on=until_on)
    between = beds_between(farm, (catalogue.crops[key] for key in crops))
    return Frame(
        farm=farm,
        options=options,
        forecaster=forecaster,
        weights=weights_of(catalogue),
        ruler=ruler,
        span=span,
        from_on=from_on,
        grounds=grounds_of(farm, between=between),
        nurseries=nurseries_by_loop(farm),
        pools=pools_of(farm, between=between),
        crops=crops,
        stays=stays,
        fixed=forecaster.preview(stays),
    )


def _span(ruler: Ruler, from_on: date, weeks: int | None) -> WeekSpan:
    first = ruler.week_of(from_on)
    if not 0 <= first < ruler.weeks:
        last_on = ruler.date_of(ruler.days - 1)
        raise _outside("from", from_on.isoformat(), f"{ruler.start_on.isoformat()} to {last_on.isoformat()}")
    most = ruler.weeks - first
    if weeks is not None and weeks > most:
        raise _outside("weeks", str(weeks), f"at most {most} from {from_on.isoformat()} on")
    return WeekSpan(first=first, count=most if weeks is None else weeks)


def _outside(field: str, value: str, limit: str) -> FarmFaultError:
    fault = Fault(
        kind=FaultKind.OUT_OF_LIMITS,
        where=_WHERE,
        field=field,
        value=value,
        limit=limit,
        message=f"{field} is {value}, but the farm's plan allows {limit}.",
        remedy="Ask for weeks within the plan, or make the plan longer.",
    )
    return FarmFaultError((fault,))
