"""What room a batch has: plants on the ground it stands on, and what that makes of their size.

A place of a bed is taken to be planted, so its area is the room of a plant. Must not know beds or dates.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from planner.farm.species import Crop, HarvestKind
from planner.science.spacing import gain_by_room, size_by_room

_CM2_PER_M2: Final = 10_000.0
_G_PER_KG: Final = 1000.0
_AS_OWN: Final = 0.005
_DIGITS: Final = 3


def density_by_room(place_m2: float, crop: Crop) -> float | None:
    """Return the density that growth goes by [plants/m²], None where plants stand at their own distance.

    `place_m2` is the ground of one plant, 0 where it is not known.

    Wider apart than it grows wide a plant wins no more light. A tall crop is not planted in every hole of
    a raft for salad: it is never taken to stand closer than at its own distance.
    """
    own = crop.bed_density_per_m2
    if place_m2 <= 0.0:
        return None
    density = max(1.0 / place_m2, min(own, _CM2_PER_M2 / crop.width_cm**2))
    if crop.tall:
        density = min(density, own)
    if abs(density / own - 1.0) <= _AS_OWN:
        return None
    return float(f"{density:.{_DIGITS}g}")


@dataclass(frozen=True, slots=True, kw_only=True)
class Room:
    """Size at the first pick, gain after it and yield of a plant, each against those at its own distance."""

    size: float = 1.0
    later: float = 1.0
    of_yield: float = 1.0


OWN_ROOM: Final = Room()
"""What a plant has at its own distance."""


def room_of(crop: Crop, density: float | None, *, first_g: float, closure_m2_per_kg: float) -> Room:
    """Return what a density makes of a plant; `first_g` is its dry mass at the first pick at its own [g].

    What is cut and grows again comes to its size anew each time; what is picked all the time keeps its
    leaves.
    """
    if density is None:
        return OWN_ROOM
    own = crop.bed_density_per_m2
    of = {
        "own_density": own,
        "own_mass_kg": first_g / _G_PER_KG,
        "closure_m2_per_kg": closure_m2_per_kg,
    }
    size = size_by_room(density, **of)
    later = gain_by_room(density, **of) if crop.harvest is HarvestKind.PICKING else size
    return Room(size=size, later=later, of_yield=later)
