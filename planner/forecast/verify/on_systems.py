"""Computations on whole farms: figures of a year read off the forecast."""

from __future__ import annotations

from collections.abc import Callable, Collection, Mapping
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.species import ELEMENTS
from planner.forecast.values import Floats, Forecast, LoopForecast
from planner.forecast.verify.ledger import Inputs, Ledger

_PERCENT: Final = 100.0
_G_PER_KG: Final = 1000.0
_G_PER_T: Final = 1_000_000.0
_GROWTH_OF_FISH: Final = ("tgc", "fcr", "daily_death_share")
_YIELD_OF_CROP: Final = (
    "bed_density_per_m2",
    "yield_g_per_plant",
    "bed_days",
    "picking_days",
    "bed_survival_share",
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Scene:
    """A farm, what is foreseen of it, and the shipped figures that are written down as they go in."""

    farm: Farm
    forecast: Forecast
    ledger: Ledger

    def note_fish(self, fields: Collection[str] = _GROWTH_OF_FISH) -> None:
        """Write down that the growth of the farm's fish went in."""
        for species in dict.fromkeys(group.species for group in self.farm.fish_groups):
            self.ledger.note_shelf(f"fish/{species}", fields)

    def note_crop(self, key: str, fields: Collection[str] = _YIELD_OF_CROP) -> None:
        """Write down that the yield of a crop went in."""
        self.ledger.note_shelf(f"crop/{key}", fields)


SystemComputation = Callable[[Inputs, Scene], float]


def _span(inputs: Inputs) -> slice:
    """Return the days of the weeks asked for, the first week of the plan being week 1."""
    first = (inputs.whole("from_week") - 1) * DAYS_PER_WEEK
    return slice(first, first + inputs.whole("weeks") * DAYS_PER_WEEK)


def _feed_g(forecast: Forecast) -> Floats:
    total: Floats = sum((loop.feed_g for loop in forecast.loops), forecast.loops[0].feed_g * 0.0)
    return total


def system_fish(inputs: Inputs, scene: Scene) -> float:
    """Fish harvested in the weeks [t]."""
    scene.note_fish()
    forecast = scene.forecast
    days = _span(inputs)
    groups = (group for loop in forecast.loops for group in loop.groups)
    return float(sum(group.harvest_g[days].sum() for group in groups)) / _G_PER_T


def system_feed(inputs: Inputs, scene: Scene) -> float:
    """Mean feed a day in the weeks [kg/d]."""
    scene.note_fish()
    forecast = scene.forecast
    return float(_feed_g(forecast)[_span(inputs)].mean()) / _G_PER_KG


def system_ratio(inputs: Inputs, scene: Scene) -> float:
    """Mean feed over the area of all beds in the weeks [g/m²/d]."""
    scene.note_fish()
    forecast = scene.forecast
    area = sum(loop.bed_m2 for loop in forecast.loops)
    return float(_feed_g(forecast)[_span(inputs)].mean()) / area


def system_conversion(inputs: Inputs, scene: Scene) -> float:
    """Feed over gain in the weeks."""
    scene.note_fish()
    forecast = scene.forecast
    days = _span(inputs)
    groups = [group for loop in forecast.loops for group in loop.groups]
    fed, gained = (
        sum(float(series[days].sum()) for series in serieses)
        for serieses in ([g.feed_g for g in groups], [g.gain_g for g in groups])
    )
    return fed / gained


def system_harvest_weight(inputs: Inputs, scene: Scene) -> float:
    """Mean weight of the fish harvested in the weeks [g]."""
    scene.note_fish()
    forecast = scene.forecast
    days = _span(inputs)
    groups = [group for loop in forecast.loops for group in loop.groups]
    grams = sum(float(group.harvest_g[days].sum()) for group in groups)
    return grams / sum(float(group.harvest_count[days].sum()) for group in groups)


def system_crop(inputs: Inputs, scene: Scene) -> float:
    """Fresh mass of a crop harvested in the weeks [t]."""
    crop, forecast = inputs.text("crop"), scene.forecast
    scene.note_crop(crop)
    row = forecast.crops.index(crop)
    return float(forecast.harvest_g[row, _span(inputs)].sum()) / _G_PER_T


def system_heads(inputs: Inputs, scene: Scene) -> float:
    """Plants of a crop harvested a week, as a mean over the weeks."""
    forecast = scene.forecast
    row = forecast.crops.index(inputs.text("crop"))
    return float(forecast.harvest_plants[row, _span(inputs)].sum()) / inputs.number("weeks")


def system_planted(inputs: Inputs, scene: Scene) -> float:
    """Mean area under plants in the weeks [m²]."""
    days = _span(inputs)
    return float(sum(loop.planted_m2[:, days].sum(axis=0).mean() for loop in scene.forecast.loops))


def system_gain(inputs: Inputs, scene: Scene) -> float:
    """Gain of all fish in the weeks [kg]."""
    scene.note_fish()
    days = _span(inputs)
    groups = (group for loop in scene.forecast.loops for group in loop.groups)
    return float(sum(group.gain_g[days].sum() for group in groups)) / _G_PER_KG


def system_grown(inputs: Inputs, scene: Scene) -> float:
    """Share of all that the plants of a loop take up which they have taken up by a day of the plan."""
    row, day = ELEMENTS.index("n"), inputs.whole("day")
    taken = sum((loop.demand_g[row] for loop in scene.forecast.loops), np.zeros(1))
    return float(taken[:day].sum() / taken.sum())


def system_days(inputs: Inputs, scene: Scene) -> float:
    """Days from sowing to the first pick of a batch [d]."""
    del inputs
    batch = scene.farm.batches[0]
    fields = ("germination_days", "nursery_days", "spacing_days", "bed_days")
    scene.note_crop(batch.crop, fields)
    table = scene.forecast.batches
    return float(table.pick_days(0)[0] - table.sow_day[0])


def system_head(inputs: Inputs, scene: Scene) -> float:
    """Mean fresh mass of one harvested plant of a crop [g]."""
    crop, forecast = inputs.text("crop"), scene.forecast
    scene.note_crop(crop, ("yield_g_per_plant", "bed_density_per_m2"))
    row = forecast.crops.index(crop)
    return float(forecast.harvest_g[row].sum() / forecast.harvest_plants[row].sum())


def system_gap(inputs: Inputs, scene: Scene) -> float:
    """Days between the first picks of two batches, the second sown later, over the days between sowings."""
    table = scene.forecast.batches
    first, second = inputs.whole("first_batch"), inputs.whole("second_batch")
    apart = table.pick_days(second)[0] - table.pick_days(first)[0]
    return apart / float(table.sow_day[second] - table.sow_day[first])


_PARTS: Final[Mapping[str, Callable[[LoopForecast], Floats]]] = {
    "fish": lambda loop: loop.fish_g,
    "plants": lambda loop: loop.demand_g,
    "gas": lambda loop: loop.gas_g,
    "whole": lambda loop: loop.fish_g + loop.solids_g + loop.gas_g + loop.dissolved_g,
}


def system_share(inputs: Inputs, scene: Scene) -> float:
    """Part of an element of the feed that fish keep, plants want, or gas takes, or all of it [%]."""
    element, days, forecast = inputs.text("element"), _span(inputs), scene.forecast
    scene.ledger.note_shelf(f"element/{element}", ("solids_share", "gas_loss_share"))
    scene.note_fish((f"body_{element}_g_per_kg", "fcr"))
    row, part = ELEMENTS.index(element), _PARTS[inputs.text("part")]
    found = sum(float(part(loop)[row, days].sum()) for loop in forecast.loops)
    return _PERCENT * found / sum(float(loop.content_g[row, days].sum()) for loop in forecast.loops)


SYSTEMS: Final[dict[str, SystemComputation]] = {
    each.__name__: each
    for each in (
        system_fish,
        system_feed,
        system_ratio,
        system_conversion,
        system_harvest_weight,
        system_crop,
        system_heads,
        system_planted,
        system_gain,
        system_grown,
        system_gap,
        system_days,
        system_head,
        system_share,
    )
}
