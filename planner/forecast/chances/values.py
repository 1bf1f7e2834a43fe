"""What draws give: harvest, feed and balance of every draw by week, and what can be asked of them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.farm.crops import TargetUnit
from planner.farm.fields import Id
from planner.forecast.values import Floats, Ruler
from planner.science.chances import chance_of_reaching, percentiles

LEVELS_PERCENT: Final = (10.0, 50.0, 90.0)
"""Percentiles that are told: the middle, and the two that four draws in five lie between."""
_G_PER_KG: Final = 1000.0


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class LoopChances:
    """One loop: feed [g/d] by (draw, week), supply over demand by (draw, element, week).

    The ratio is not-a-number where nothing is wanted.
    """

    loop: Id
    name: str
    feed_g_per_day: Floats
    ratio: Floats


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Chances:
    """Harvest of every draw by (crop, draw, week), in plants and grams, and every loop."""

    seed: int
    draws: int
    ruler: Ruler
    crops: tuple[str, ...]
    harvest_plants: Floats
    harvest_g: Floats
    loops: tuple[LoopChances, ...]

    def harvest(self, crop: str, unit: TargetUnit = TargetUnit.HEADS) -> Floats:
        """Return the harvest of a crop in heads or kg, shape (draw, week); nothing for one not grown."""
        if crop not in self.crops:
            return np.zeros((self.draws, self.ruler.weeks))
        number = self.crops.index(crop)
        found: Floats = (
            self.harvest_plants[number] if unit is TargetUnit.HEADS else self.harvest_g[number] / _G_PER_KG
        )
        return found

    def chance_at_least(
        self, crop: str, week: int, *, amount: float, unit: TargetUnit = TargetUnit.HEADS
    ) -> float:
        """Return the share of draws in which at least an amount is harvested in a week, 0..1."""
        return float(chance_of_reaching(self.harvest(crop, unit)[:, week], target=amount))

    def harvest_percentiles(self, crop: str, unit: TargetUnit = TargetUnit.HEADS) -> Floats:
        """Return the percentiles of `LEVELS_PERCENT` of a crop's harvest, shape (level, week)."""
        return percentiles(self.harvest(crop, unit), levels_percent=LEVELS_PERCENT)
