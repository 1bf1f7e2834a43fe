"""How far each batch and fish group may fall from what is likely."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.crops import Batch
from planner.farm.farm import Farm
from planner.forecast.profiles import Profile
from planner.forecast.values import Floats, Forecast

_DAYS: Final = ("germination_days", "nursery_days", "spacing_days", "bed_days")
_COEFFICIENT: Final = "coefficient/chances/"


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Spreads:
    """Standard deviations by batch: of shares [1], of days to the first pick [d], of yield over its mean.

    With `counted` plants come up and live one by one; without it a share of them does, to a fraction.
    """

    germination_sd: Floats
    nursery_sd: Floats
    bed_sd: Floats
    days_sd: Floats
    yield_cv: Floats
    shared_variance_share: float
    fish_growth_cv: float
    fish_death_cv: float
    counted: bool = True


def no_spreads(batches: int) -> Spreads:
    """Return spreads of nothing: every draw is what is likely."""
    nothing = np.zeros(batches)
    return Spreads(
        germination_sd=nothing,
        nursery_sd=nothing,
        bed_sd=nothing,
        days_sd=nothing,
        yield_cv=nothing,
        shared_variance_share=0.0,
        fish_growth_cv=0.0,
        fish_death_cv=0.0,
        counted=False,
    )


def spreads_of(farm: Farm, forecast: Forecast, catalogue: Catalogue) -> Spreads:
    """Return the spreads of a farm's batches, from the ranges of the figures they go by.

    A figure that the grower gave has no range; then the usual spread of such figures is taken.
    """
    measure = _Measure(catalogue)
    lots = {lot.id for lot in farm.seed_lots if lot.germination_share is not None}
    profiles = [forecast.profiles[number] for number in forecast.batches.profile]
    pairs = list(zip(farm.batches, profiles, strict=True))
    return Spreads(
        germination_sd=np.asarray(
            [measure.share_sd(one, "germination_share", own=one.seed_lot in lots) for one in farm.batches]
        ),
        nursery_sd=np.asarray([measure.share_sd(one, "nursery_survival_share") for one in farm.batches]),
        bed_sd=np.asarray([measure.share_sd(one, "bed_survival_share") for one in farm.batches]),
        days_sd=np.asarray([measure.days_sd(one, profile) for one, profile in pairs]),
        yield_cv=np.asarray([measure.yield_cv(one) for one in farm.batches]),
        shared_variance_share=measure.figure("shared_variance_share"),
        fish_growth_cv=measure.figure("fish_growth_cv"),
        fish_death_cv=measure.figure("fish_death_cv"),
    )


class _Measure:
    """Reads spreads out of the ranges of figures; asked once for each crop and figure."""

    def __init__(self, catalogue: Catalogue) -> None:
        self._catalogue = catalogue
        self._wide = self.figure("range_deviations")
        self._own_share = self.figure("own_share_sd")
        self._own_days = self.figure("own_days_cv")
        self._within_farm = self.figure("days_within_farm_share")
        self._own_yield = self.figure("own_yield_cv")
        self._kept: dict[str, float] = {}

    def figure(self, name: str) -> float:
        """Return a coefficient of chances."""
        return self._catalogue.figure(f"{_COEFFICIENT}{name}").value

    def _sd(self, path: str) -> float:
        if path not in self._kept:
            figure = self._catalogue.figure(path)
            self._kept[path] = (figure.high - figure.low) / self._wide
        return self._kept[path]

    def share_sd(self, batch: Batch, name: str, *, own: bool = False) -> float:
        """Return the deviation of a share of a batch."""
        if own or getattr(batch, name, None) is not None:
            return self._own_share
        return self._sd(f"crop/{batch.crop}/{name}")

    def days_sd(self, batch: Batch, profile: Profile) -> float:
        """Return the deviation of days to the first pick; stages vary each for itself."""
        variances = [
            (self._own_days * profile.stage_days[stage]) ** 2
            if getattr(batch, name) is not None
            else (self._within_farm * self._sd(f"crop/{batch.crop}/{name}")) ** 2
            for stage, name in enumerate(_DAYS)
            if profile.stage_days[stage] > 0
        ]
        return float(np.sqrt(sum(variances)))

    def yield_cv(self, batch: Batch) -> float:
        """Return the deviation of yield over its mean."""
        if batch.yield_g_per_plant is not None:
            return self._own_yield
        path = f"crop/{batch.crop}/yield_g_per_plant"
        return self._sd(path) / self._catalogue.figure(path).value
