"""Moves the figures a farm uses one at a time, and forecasts again what they have to do with.

Only sums are foreseen, so what one crop, or one element, changes can be told apart from what another
changes in the same run: the figures of all crops are moved at once, and those of all six elements.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.farm.farm import Farm
from planner.farm.species import ELEMENTS
from planner.forecast.crops import demand_g
from planner.forecast.engine import Forecaster
from planner.forecast.profiles import Profile
from planner.forecast.ranges.changed import with_values
from planner.forecast.ranges.values import Outcome, Swing
from planner.forecast.values import Floats, Forecast

CROP_FIGURES: Final = (
    "germination_days",
    "nursery_days",
    "spacing_days",
    "bed_days",
    "picking_days",
    "pick_interval_days",
    "first_pick_share",
    "pick_decline_share",
    "yield_g_per_plant",
    "dry_matter_share",
    "harvest_share",
    "width_cm",
    "bed_survival_share",
    "growth_midpoint",
    "growth_steepness",
    "base_c",
    "optimum_c",
    "ceiling_c",
    "germination_base_c",
    "germination_optimum_c",
    "germination_thermal_time_c_d",
    "light_target_mol_per_m2_d",
)
"""Figures of a crop that demand and harvest hang on, contents aside."""
LIGHT_FIGURES: Final = ("light_half_rate_mol", "light_mol_per_mj", "clearness_unknown_sky")
FISH_FIGURES: Final = ("base_c", "optimum_c", "ceiling_c", "daily_death_share")
ELEMENT_FIGURES: Final = ("solids_share", "gas_loss_share", "mineral_limit_share", "mineral_rate_per_day")
LOOP_FIGURES: Final = (
    "loop/top_up_share_per_day",
    "loop/solids_captured_share",
    "coefficient/solids/settled_rate_share",
    "coefficient/solids/still_nitrogen_lost_share",
)
_IRON: Final = "fe"
_CONTENTS: Final = tuple(f"{one}_{'mg' if one == _IRON else 'g'}_per_kg" for one in ELEMENTS)
_MINERALS: Final = ("protein_share", *_CONTENTS[1:])


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """Figures that one swing moves together, and the crop or element that it shows in; -1: in all."""

    figures: tuple[Figure, ...]
    crop: int = -1
    element: int = -1


Run = tuple[Part, ...]
"""Parts that are moved in one forecast because what they change can be told apart."""


def crop_runs(catalogue: Catalogue, crops: Sequence[str]) -> Iterator[Run]:
    """Yield the runs of figures that crops go by."""
    for name in CROP_FIGURES:
        yield tuple(
            Part(figures=(catalogue.figure(f"crop/{crop}/{name}"),), crop=number)
            for number, crop in enumerate(crops)
        )
    yield tuple(
        Part(figures=(catalogue.figure(f"crop/{crop}/{content}"),), crop=number, element=element)
        for number, crop in enumerate(crops)
        for element, content in enumerate(_CONTENTS)
    )
    for name in LIGHT_FIGURES:
        yield (Part(figures=(catalogue.figure(f"coefficient/season/{name}"),)),)
    yield (Part(figures=(catalogue.figure("coefficient/growth/spacing_closure_m2_per_kg"),)),)


def fish_runs(catalogue: Catalogue, farm: Farm) -> Iterator[Run]:
    """Yield the runs of figures that supply goes by; the same growth and conversion hold at all sizes."""
    for key in dict.fromkeys(group.species for group in farm.fish_groups):
        stages = range(1, len(catalogue.fish[key].stages) + 1)
        for name in ("tgc", "fcr"):
            paths = [f"fish/{key}/stage/{stage}/{name}" for stage in stages]
            yield (Part(figures=tuple(catalogue.figure(path) for path in paths)),)
        for name in FISH_FIGURES:
            yield (Part(figures=(catalogue.figure(f"fish/{key}/{name}"),)),)
        yield _by_element(catalogue, [f"fish/{key}/body_{content}" for content in _CONTENTS])
    for key in dict.fromkeys(group.feed for group in farm.fish_groups):
        yield _by_element(catalogue, [f"feed/{key}/{content}" for content in _MINERALS])
    for name in ELEMENT_FIGURES:
        yield _by_element(catalogue, [f"element/{element}/{name}" for element in ELEMENTS])
    for path in LOOP_FIGURES:
        yield (Part(figures=(catalogue.figure(path),)),)


def _by_element(catalogue: Catalogue, paths: Iterable[str]) -> Run:
    return tuple(
        Part(figures=(catalogue.figure(path),), element=element) for element, path in enumerate(paths)
    )


class Swinger:
    """Makes swings of one side of a farm: of its crops, or of its fish and water."""

    def __init__(self, farm: Farm, catalogue: Catalogue, *, crops: tuple[str, ...]) -> None:
        """Take the farm of that side, the catalogue with the farm's own entries in it, and all crops."""
        self._farm = replace(farm, own_entries=())
        self._crops = crops
        self._catalogue = catalogue
        self._likely = self._outcomes(catalogue)

    def swings(self, runs: Iterable[Run]) -> Iterator[Swing]:
        """Yield the swing of every part that has a range."""
        for run in runs:
            moved = tuple(part for part in run if any(one.low < one.high for one in part.figures))
            if moved:
                low, high = self._at(moved, low=True), self._at(moved, low=False)
                yield from (self._swing(part, low, high) for part in moved)

    def _at(self, run: Run, *, low: bool) -> Sequence[Outcome]:
        figures = [one for part in run for one in part.figures]
        return self._outcomes(
            with_values(self._catalogue, {one.path: one.low if low else one.high for one in figures})
        )

    def _outcomes(self, catalogue: Catalogue) -> Sequence[Outcome]:
        """Return what is foreseen for each crop, and last for what no crop has to do with."""
        forecaster = Forecaster(catalogue)
        return tuple(outcomes_by_crop(forecaster.preview(self._farm), forecaster, crops=self._crops))

    def _swing(self, part: Part, low: Sequence[Outcome], high: Sequence[Outcome]) -> Swing:
        first = part.figures[0]
        return Swing(
            paths=tuple(one.path for one in part.figures),
            unit=first.unit,
            low=first.low,
            likely=first.value,
            high=first.high,
            at_low=_change(part, low, self._likely),
            at_high=_change(part, high, self._likely),
        )


def _change(part: Part, now: Sequence[Outcome], likely: Sequence[Outcome]) -> Outcome:
    chosen = slice(None) if part.crop < 0 else slice(part.crop, part.crop + 1)
    pairs = list(zip(now[chosen], likely[chosen], strict=True))

    def change(name: str) -> Floats:
        total: Floats = sum(
            (getattr(one, name) - getattr(other, name) for one, other in pairs),
            start=np.zeros_like(getattr(likely[0], name)),
        )
        return total

    return Outcome(
        supply_g=_of_element(change("supply_g"), part.element),
        demand_g=_of_element(change("demand_g"), part.element),
        feed_g_per_day=change("feed_g_per_day"),
        harvest_plants=change("harvest_plants"),
        harvest_g=change("harvest_g"),
    )


def _of_element(change: Floats, element: int) -> Floats:
    """Return a change with all elements but one set to nothing; all are kept for -1."""
    if element < 0:
        return change
    kept = np.zeros_like(change)
    kept[:, element] = change[:, element]
    return kept


def outcomes_by_crop(
    forecast: Forecast, forecaster: Forecaster, *, crops: tuple[str, ...]
) -> Iterator[Outcome]:
    """Yield what each of some crops wants and gives, then what fish, water and doses bring."""
    whole = outcome_of(forecast, crops=crops)
    nothing = Outcome(**{name: np.zeros_like(getattr(whole, name)) for name in Outcome.__slots__})
    for number, crop in enumerate(crops):
        plants, grams = (np.zeros_like(array) for array in (whole.harvest_plants, whole.harvest_g))
        plants[number], grams[number] = whole.harvest_plants[number], whole.harvest_g[number]
        wanted = nothing.demand_g
        if crop in forecast.crops:
            wanted = _demand_of_crop(forecast, forecaster, forecast.crops.index(crop))
        yield replace(nothing, demand_g=wanted, harvest_plants=plants, harvest_g=grams)
    yield replace(nothing, supply_g=whole.supply_g, feed_g_per_day=whole.feed_g_per_day)


def _demand_of_crop(forecast: Forecast, forecaster: Forecaster, crop: int) -> Floats:
    table, ruler = forecast.batches, forecast.ruler
    profiles: tuple[Profile, ...] = forecast.profiles
    of_crop = replace(table, loop=np.where(table.crop == crop, table.loop, -1))
    found = [
        ruler.weekly_sum(demand_g(of_crop, profiles, forecaster.paces, ruler, loop=number))
        for number, _ in enumerate(forecast.loops)
    ]
    return np.asarray(found).reshape(len(forecast.loops), len(ELEMENTS), ruler.weeks)


def outcome_of(forecast: Forecast, *, crops: tuple[str, ...]) -> Outcome:
    """Return what a forecast says by week; harvest has a row for each of some crops."""
    ruler, loops = forecast.ruler, forecast.loops
    by_element = (len(loops), len(ELEMENTS), ruler.weeks)
    feed = np.asarray([ruler.weekly_mean(loop.feed_g) for loop in loops])
    return Outcome(
        supply_g=np.asarray([ruler.weekly_sum(loop.supply_g) for loop in loops]).reshape(by_element),
        demand_g=np.asarray([ruler.weekly_sum(loop.demand_g) for loop in loops]).reshape(by_element),
        feed_g_per_day=feed.reshape(len(loops), ruler.weeks),
        harvest_plants=_by_crop(forecast, ruler.weekly_sum(forecast.harvest_plants), crops),
        harvest_g=_by_crop(forecast, ruler.weekly_sum(forecast.harvest_g), crops),
    )


def _by_crop(forecast: Forecast, by_week: Floats, crops: tuple[str, ...]) -> Floats:
    """Return the rows of some crops, nothing for one that the forecast does not know."""
    found = np.zeros((len(crops), forecast.ruler.weeks))
    for number, crop in enumerate(crops):
        if crop in forecast.crops:
            found[number] = by_week[forecast.crops.index(crop)]
    return found
