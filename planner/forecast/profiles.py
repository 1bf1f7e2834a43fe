"""How one batch runs through its life: whole days of each stage, picks, and shares of growth.

A profile is a crop with whatever the grower has overruled for a batch; most batches of a crop share
one. Days are whole because a grower works in days.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Final

import numpy as np
from numpy.typing import NDArray

from planner.farm.crops import Batch
from planner.farm.species import ELEMENTS, Crop, CropGroup, HarvestKind
from planner.forecast.room import OWN_ROOM, room_of
from planner.science.growth import daily_increments, logistic_share, regrown_share

Floats = NDArray[np.float64]

_G_PER_KG: Final = 1000.0
_MG_PER_KG: Final = 1_000_000.0
_IRON: Final = "fe"
_BEFORE_PICKING: Final = 4

BATCH_FIGURES: Final = (
    "germination_days",
    "nursery_days",
    "spacing_days",
    "bed_days",
    "picking_days",
    "clearing_days",
    "germination_share",
    "bed_survival_share",
    "yield_g_per_plant",
)
"""Figures of a crop that a batch may overrule, in the order of a profile's key."""

ProfileKey = tuple[float | str | None, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Profile:
    """Days, yield, growth and survival that a batch of a crop goes by.

    `stage_days` are whole days of germination, nursery, spacing, bed, picking, clearing. A crop
    harvested once is picked on one day unless the grower gives its batch days of picking.
    `dry_mass_g` is the whole-plant dry mass formed in a life, roots and what is left lying included;
    `first_pick_share` is the part of it that stands at the first pick. `density_per_m2` is the room it
    has where that is not the crop's own, and `room_share` what it makes of the yield.
    """

    crop: Crop
    stage_days: tuple[int, ...]
    germination_share: float
    bed_survival_share: float
    yield_g_per_plant: float
    dry_mass_g: float
    first_pick_share: float
    density_per_m2: float | None = None
    room_share: float = 1.0

    @property
    def first_pick_day(self) -> int:
        """Days from sowing to the first pick."""
        return sum(self.stage_days[:_BEFORE_PICKING])

    @property
    def picking_window(self) -> int:
        """Days from the first pick to the day after the last, at least one."""
        return max(self.stage_days[_BEFORE_PICKING], 1)

    @property
    def life_days(self) -> int:
        """Days from sowing until the last pick is over."""
        return self.first_pick_day + self.picking_window

    @property
    def survival_share(self) -> float:
        """Share of the seedlings that come up and reach the final place."""
        return self.crop.nursery_survival_share


def profile_key(
    batch: Batch, lot_share: float | None = None, density_per_m2: float | None = None
) -> ProfileKey:
    """Return what tells one profile from another; a seed lot's test stands in for the book's share.

    `density_per_m2` is the room the batch has, None at the crop's own; a grower's own yield is had as it is.
    """
    return (
        batch.crop,
        batch.germination_days,
        batch.nursery_days,
        batch.spacing_days,
        batch.bed_days,
        batch.picking_days,
        batch.clearing_days,
        lot_share if batch.germination_share is None else batch.germination_share,
        batch.bed_survival_share,
        batch.yield_g_per_plant,
        density_per_m2 if batch.yield_g_per_plant is None else None,
    )


def profile_of(key: ProfileKey, crop: Crop, *, closure_m2_per_kg: float = 0.0) -> Profile:
    """Return the profile of a crop with a batch's own figures laid over it.

    A crop that is picked for a shorter or longer time than the book says gives fewer or more picks
    and forms less or more after the first; what stands at the first pick stays the same. The room it
    has scales both. A grower's own yield scales the dry mass with it.
    """
    *figures, density = key[1:]
    own = dict(zip(BATCH_FIGURES, figures, strict=True))
    days = _stage_days(own, crop)
    window = max(days[_BEFORE_PICKING], 1)
    book_window = 1 if crop.harvest is HarvestKind.SINGLE else round(crop.picking_days) + 1
    book_yield = crop.yield_g_per_plant * _picks_weight(crop, window) / _picks_weight(crop, book_window)
    own_yield = own["yield_g_per_plant"]
    book_mass = crop.yield_g_per_plant * crop.dry_matter_share / crop.harvest_share
    first = book_mass * (1.0 if crop.harvest is HarvestKind.SINGLE else crop.first_pick_share)
    room = OWN_ROOM
    if density is not None:
        room = room_of(crop, float(density), first_g=first, closure_m2_per_kg=closure_m2_per_kg)
    first, later = first * room.size, (book_mass - first) * window / book_window * room.later
    mass = first + later
    yield_g = book_yield * room.of_yield if own_yield is None else float(own_yield)
    return Profile(
        crop=crop,
        stage_days=days,
        germination_share=_figure(own, crop, "germination_share"),
        bed_survival_share=_figure(own, crop, "bed_survival_share"),
        yield_g_per_plant=yield_g,
        dry_mass_g=mass if own_yield is None else mass * yield_g / book_yield,
        first_pick_share=first / mass,
        density_per_m2=None if density is None else float(density),
        room_share=room.of_yield,
    )


def _stage_days(own: dict[str, float | str | None], crop: Crop) -> tuple[int, ...]:
    """Return whole days of every stage; picking from the first pick to the last takes a day more."""
    picking = own["picking_days"]
    if crop.harvest is HarvestKind.SINGLE:
        picking = picking or 0.0
    else:
        picking = float(crop.picking_days if picking is None else picking) + 1.0
    days = [_figure(own, crop, name) for name in BATCH_FIGURES[:_BEFORE_PICKING]]
    days += [float(picking), _figure(own, crop, "clearing_days")]
    return tuple(round(value) for value in days)


def _figure(own: dict[str, float | str | None], crop: Crop, name: str) -> float:
    value = own[name]
    return float(getattr(crop, name) if value is None else value)


def _pick_weights(crop: Crop, window: int) -> Floats:
    """Return what each day of a window gives against the first pick, shape (window,)."""
    interval = round(crop.pick_interval_days)
    if crop.harvest is HarvestKind.SINGLE or interval == 0:
        return np.full(window, 1.0 / window)
    weights = np.zeros(window)
    picks = np.arange(0, window, interval)
    weights[picks] = (1.0 - crop.pick_decline_share) ** np.arange(picks.size)
    return weights


def _picks_weight(crop: Crop, window: int) -> float:
    return float(_pick_weights(crop, window).sum())


def contents(crop: Crop) -> Floats:
    """Return content of the six elements [g per g of whole-plant dry mass], in their order."""
    per_kg = [
        getattr(crop, f"{element}_mg_per_kg") / _MG_PER_KG
        if element == _IRON
        else getattr(crop, f"{element}_g_per_kg") / _G_PER_KG
        for element in ELEMENTS
    ]
    return np.asarray(per_kg, dtype=np.float64)


@lru_cache(maxsize=4096)
def growth_by_day(profile: Profile) -> Floats:
    """Return dry mass formed on each day of a life [g/d], shape (life_days,); sums to `dry_mass_g`.

    Up to the first pick along the crop's logistic curve, then as `after_first_pick` says.
    """
    crop, first = profile.crop, float(profile.first_pick_day)
    days = np.arange(profile.life_days + 1, dtype=np.float64)
    share = logistic_share(
        np.minimum(days / first, 1.0), midpoint=crop.growth_midpoint, steepness=crop.growth_steepness
    )
    if profile.first_pick_share < 1.0:
        later = np.zeros_like(days)
        later[profile.first_pick_day :] = after_first_pick(profile)
        share = profile.first_pick_share * share + (1.0 - profile.first_pick_share) * later
    formed: Floats = daily_increments(share) * profile.dry_mass_g
    formed.flags.writeable = False
    return formed


@lru_cache(maxsize=4096)
def after_first_pick(profile: Profile) -> Floats:
    """Return the share formed after the first pick by days since it, shape (picking_window + 1,), 0 to 1.

    A crop that is cut and grows again follows the logistic curve anew from each cut to the next; one
    that is picked all the time grows evenly.
    """
    window, interval = profile.picking_window, round(profile.crop.pick_interval_days)
    cuts = np.arange(interval, window, interval) if interval else np.arange(0)
    if profile.crop.harvest is HarvestKind.CUT and cuts.size:
        weights = _pick_weights(profile.crop, window)[cuts]
        share = regrown_share(
            np.arange(window + 1, dtype=np.float64),
            cut_days=cuts.astype(np.float64),
            cut_shares=weights / weights.sum(),
            midpoint=profile.crop.growth_midpoint,
            steepness=profile.crop.growth_steepness,
        )
    else:
        share = np.arange(window + 1) / window
    share.flags.writeable = False
    return share


@lru_cache(maxsize=4096)
def picks_by_day(profile: Profile) -> Floats:
    """Return share of the life's harvest on each day from the first pick on; sums to 1.

    One day for a crop harvested once, evenly over the window when its batch is given picking days;
    else a pick every interval, each smaller than the one before by the crop's decline.
    """
    shares = _pick_weights(profile.crop, profile.picking_window)
    shares /= shares.sum()
    shares.flags.writeable = False
    return shares


def is_fruiting(profile: Profile) -> bool:
    """Tell whether the crop counts among the fruiting ones in the feed-rate bands."""
    return profile.crop.group is CropGroup.FRUITING
