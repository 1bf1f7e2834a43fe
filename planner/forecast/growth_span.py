"""How slow and how quick a fish group may grow, by the book's range of the figure that its growth goes by.

The walk is that of the forecast, once with the low and once with the high end. A weighed sample sets both
to what was weighed. Must know nothing of chances.
"""

from __future__ import annotations

from dataclasses import replace

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import Farm, by_id
from planner.farm.fish import Feeding, FishGroup
from planner.farm.species import FishSpecies
from planner.forecast.engine import Forecaster
from planner.forecast.fish import appetite_of, forecast_group
from planner.forecast.ration import table_ration
from planner.forecast.values import GroupForecast, Ruler


def growth_span(
    group: FishGroup, farm: Farm, forecaster: Forecaster, ruler: Ruler
) -> tuple[GroupForecast, GroupForecast] | None:
    """Return the group growing slowly and growing quickly; None where the grower's own figure rules.

    By growth it is the growth coefficient that goes from low to high; by any kind of ration it is the
    feed conversion, from high to low. `forecaster` has seen `farm` last.
    """
    by_warmth = group.feeding is Feeding.GROWTH
    if (group.tgc if by_warmth else group.fcr) is not None:
        return None
    catalogue = forecaster.catalogue
    loop = by_id(farm.loops)[by_id(farm.tanks)[group.tank].loop]
    days = max((ruler.date_of(ruler.days) - group.stocked_on).days, 0)
    water_c = forecaster.water_c(loop, start_on=group.stocked_on, days=days)
    by_table = group.feeding is Feeding.TABLE
    ration = table_ration(catalogue.feeding_tables[group.feeding_table]) if by_table else None
    events = [event for event in farm.fish_events if event.group == group.id]
    slow, quick = (
        forecast_group(
            group,
            events,
            species=_at_end(catalogue, group.species, by_warmth=by_warmth, quick=end),
            water_c=water_c,
            ration=ration,
            appetite=appetite_of(catalogue),
            ruler=ruler,
        )
        for end in (False, True)
    )
    return slow, quick


def _at_end(catalogue: Catalogue, key: str, *, by_warmth: bool, quick: bool) -> FishSpecies:
    """Return a species with growth coefficient or feed conversion at its slow or its quick end."""
    species = catalogue.fish[key]
    name = "tgc" if by_warmth else "fcr"
    figures = [
        catalogue.figure(f"fish/{key}/stage/{number}/{name}") for number in range(1, len(species.stages) + 1)
    ]
    ends = [figure.high if quick == by_warmth else figure.low for figure in figures]
    if by_warmth:
        stages = tuple(replace(stage, tgc=end) for stage, end in zip(species.stages, ends, strict=True))
    else:
        stages = tuple(replace(stage, fcr=end) for stage, end in zip(species.stages, ends, strict=True))
    return replace(species, stages=stages)
