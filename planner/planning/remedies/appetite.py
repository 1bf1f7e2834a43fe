"""What fish eat: the ration that their growth asks for, which no advice may go above.

A group fed by table eats what the table says; every other group what its growth at this weight and warmth
asks for at its feed conversion.
"""

from __future__ import annotations

from typing import Final

import numpy as np

from planner.farm.farm import Farm, by_id
from planner.farm.fish import Feeding, FishGroup
from planner.farm.species import FishSpecies
from planner.forecast.engine import Forecaster
from planner.forecast.fish import share_of_table
from planner.forecast.ration import table_ration
from planner.forecast.values import Floats, Forecast, GroupForecast
from planner.science.fish import effective_temperature, weight_after_day

_PERCENT: Final = 100.0
_SLACK: Final = 1e-6


def appetite_g(
    group: FishGroup, found: GroupForecast, *, species: FishSpecies, water_c: Floats, forecaster: Forecaster
) -> Floats:
    """Return the most a group eats on each day of its forecast [g/d]; water_c [°C] is of the same days."""
    warmth = effective_temperature(
        water_c, base_c=species.base_c, optimum_c=species.optimum_c, ceiling_c=species.ceiling_c
    )
    if group.feeding is Feeding.TABLE:
        ration = table_ration(forecaster.catalogue.feeding_tables[group.feeding_table])
        percent = [
            ration(float(w), float(c)) if w > 0.0 else 0.0
            for w, c in zip(found.weight_g, water_c, strict=True)
        ]
        share = share_of_table(ration, warmth, species)
        by_table: Floats = found.biomass_g * np.asarray(percent) / _PERCENT
        return by_table if share is None else by_table * share
    tgc = _by_weight(species, "tgc", found.weight_g) if group.tgc is None else group.tgc
    fcr = _by_weight(species, "fcr", found.weight_g) if group.fcr is None else group.fcr
    grown = weight_after_day(
        found.weight_g,
        tgc=tgc,
        effective_temperature_c=warmth,
        fry_weight_g=forecaster.catalogue.figure("coefficient/fish/fry_weight_g").value,
    )
    eaten: Floats = found.count * (grown - found.weight_g) * fcr
    return eaten


def _by_weight(species: FishSpecies, name: str, weight_g: Floats) -> Floats:
    """Return a figure of the stage that each weight is in."""
    bounds = np.asarray([stage.up_to_g for stage in species.stages])
    values = np.asarray([float(getattr(stage, name)) for stage in species.stages])
    found: Floats = values[np.minimum(np.searchsorted(bounds, weight_g, side="left"), values.size - 1)]
    return found


def overfed(before: Forecast, farm: Farm, after: Forecast, forecaster: Forecaster) -> bool:
    """Tell whether a changed farm feeds any group above what it eats where the farm before did not.

    `farm` is the one of `after`. Each group is held against its own appetite on every day.
    """
    known = {group.group: group for loop in before.loops for group in loop.groups}
    entered, tanks, loops = by_id(farm.fish_groups), by_id(farm.tanks), by_id(farm.loops)
    for loop in after.loops:
        for group in loop.groups:
            was = known.get(group.group)
            if was is not None and np.array_equal(was.feed_g, group.feed_g):
                continue
            wanted = entered[group.group]
            species = forecaster.catalogue.fish[wanted.species]
            water = forecaster.water_c(
                loops[tanks[wanted.tank].loop], start_on=after.ruler.start_on, days=after.ruler.days
            )
            water = np.full(after.ruler.days, species.optimum_c) if water is None else water
            most = appetite_g(wanted, group, species=species, water_c=water, forecaster=forecaster)
            allowed = most if was is None else np.maximum(most, was.feed_g)
            if np.any(group.feed_g > allowed * (1.0 + _SLACK) + _SLACK):
                return True
    return False
