"""What can be grown: crops, fish, feeds and supplements, as plain values.

The figures come from the catalogue or from the grower; this module only says which figures there
are, in which unit, and within which limits.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Final

from planner.farm import fields

ELEMENTS = ("n", "p", "k", "ca", "mg", "fe")
"""The six elements, in the order every array of elements has."""


class CropGroup(Enum):
    """Which published feed-rate band a crop belongs to."""

    LEAFY = "leafy"
    FRUITING = "fruiting"


class HarvestKind(Enum):
    """How a crop is harvested."""

    SINGLE = "single"
    CUT = "cut"
    PICKING = "picking"


class BedKind(Enum):
    """What sort of bed a place is in."""

    NURSERY = "nursery"
    RAFT = "raft"
    MEDIA = "media"


UNIT_WORDS: Final = {BedKind.NURSERY: "tray", BedKind.RAFT: "raft", BedKind.MEDIA: "block"}
"""What one unit of a bed is called, in texts and in messages."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Crop:
    """A crop or variety: days, spacing, yield, content, temperatures; likely values.

    Days run from sowing: germination, nursery, spacing (an intermediate distance, 0 when none),
    bed until the first pick, picking, clearing. Contents are per kg of whole-plant dry mass. The
    yield is that of a plant at `bed_density_per_m2`; `width_cm` is how wide one grows that has room.
    """

    key: str = fields.text(length=60)
    name: str = fields.name()
    botanical: str = fields.text(length=120)
    code: str = fields.text(length=8, meaning="three letters that stand for the crop in batch codes")
    group: CropGroup = fields.choice()
    harvest: HarvestKind = fields.choice()
    beds: tuple[BedKind, ...] = fields.choice()
    tall: bool = fields.yes_no(default=False)
    notes: str = fields.text()

    germination_days: float = fields.number(0, 120, "d")
    nursery_days: float = fields.number(0, 200, "d")
    spacing_days: float = fields.number(0, 200, "d")
    bed_days: float = fields.number(1, 400, "d")
    picking_days: float = fields.number(0, 400, "d")
    pick_interval_days: float = fields.number(0, 120, "d")
    first_pick_share: float = fields.number(0.01, 1, "g/g")
    pick_decline_share: float = fields.number(0, 1, "g/g")
    clearing_days: float = fields.number(0, 60, "d")

    nursery_density_per_m2: float = fields.number(1, 20000, "plants/m²")
    spacing_density_per_m2: float = fields.number(0.5, 2000, "plants/m²")
    bed_density_per_m2: float = fields.number(0.2, 500, "plants/m²")
    width_cm: float = fields.number(1, 1000, "cm")
    yield_g_per_plant: float = fields.number(1, 100000, "g")
    marketable_share: float = fields.number(0.05, 1, "g/g")
    dry_matter_share: float = fields.number(0.01, 0.9, "g/g")
    harvest_share: float = fields.number(0.05, 1, "g/g")

    n_g_per_kg: float = fields.number(0, 120, "g/kg DM")
    p_g_per_kg: float = fields.number(0, 40, "g/kg DM")
    k_g_per_kg: float = fields.number(0, 200, "g/kg DM")
    ca_g_per_kg: float = fields.number(0, 100, "g/kg DM")
    mg_g_per_kg: float = fields.number(0, 50, "g/kg DM")
    fe_mg_per_kg: float = fields.number(0, 5000, "mg/kg DM")

    germination_share: float = fields.number(0.05, 1, "1")
    nursery_survival_share: float = fields.number(0.05, 1, "1")
    bed_survival_share: float = fields.number(0.05, 1, "1")

    growth_midpoint: float = fields.number(0.05, 1.5, "1")
    growth_steepness: float = fields.number(0.5, 40, "1")
    base_c: float = fields.number(-5, 25, "°C")
    optimum_c: float = fields.number(5, 45, "°C")
    ceiling_c: float = fields.number(10, 60, "°C")
    germination_base_c: float = fields.number(-5, 25, "°C")
    germination_optimum_c: float = fields.number(5, 45, "°C")
    germination_ceiling_c: float = fields.number(10, 60, "°C")
    germination_thermal_time_c_d: float = fields.number(5, 1000, "°C·d")
    light_target_mol_per_m2_d: float = fields.number(1, 65, "mol/m²/d")


@dataclass(frozen=True, slots=True, kw_only=True)
class FishStage:
    """Growth and feed conversion of a fish up to a weight."""

    up_to_g: float = fields.number(0.1, 1_000_000, "g")
    tgc: float = fields.number(0.01, 10, "1000·g^⅓/(°C·d)")
    fcr: float = fields.number(0.3, 10, "g feed/g gain")


@dataclass(frozen=True, slots=True, kw_only=True)
class FishSpecies:
    """A fish: temperatures, growth by size, losses, body content per kg of live mass."""

    key: str = fields.text(length=60)
    name: str = fields.name()
    botanical: str = fields.text(length=120)
    ornamental: bool = fields.yes_no(default=False)
    cautions: tuple[str, ...] = fields.choice(default=())
    notes: str = fields.text()
    stages: tuple[FishStage, ...] = fields.choice(default=())

    base_c: float = fields.number(-2, 30, "°C")
    optimum_c: float = fields.number(5, 40, "°C")
    ceiling_c: float = fields.number(10, 50, "°C")
    lethal_low_c: float = fields.number(-2, 30, "°C")
    lethal_high_c: float = fields.number(10, 50, "°C")
    daily_death_share: float = fields.number(0, 0.2, "1/d")
    harvest_weight_g: float = fields.number(1, 100000, "g")
    density_limit_kg_per_m3: float = fields.number(0.1, 500, "kg/m³")
    density_limit_small_tank_kg_per_m3: float = fields.number(0.1, 500, "kg/m³")
    purge_days: float = fields.number(0, 60, "d")

    body_n_g_per_kg: float = fields.number(1, 100, "g/kg")
    body_p_g_per_kg: float = fields.number(0.1, 50, "g/kg")
    body_k_g_per_kg: float = fields.number(0.1, 50, "g/kg")
    body_ca_g_per_kg: float = fields.number(0.1, 80, "g/kg")
    body_mg_g_per_kg: float = fields.number(0.01, 10, "g/kg")
    body_fe_mg_per_kg: float = fields.number(0.1, 1000, "mg/kg")

    length_weight_a: float = fields.number(0.0001, 1, "g/cm^b")
    length_weight_b: float = fields.number(1, 5, "1")
    oxygen_low_mg_per_l: float = fields.number(0, 20, "mg/L")
    ph_low: float = fields.number(3, 10, "pH")
    ph_high: float = fields.number(4, 12, "pH")
    nh3_n_limit_mg_per_l: float = fields.number(0.001, 5, "mg/L")


@dataclass(frozen=True, slots=True, kw_only=True)
class Feed:
    """A fish feed by its analysis, per kg as fed."""

    key: str = fields.text(length=60)
    name: str = fields.name()
    pellet_mm: str = fields.text(length=40)
    notes: str = fields.text()

    for_fish_from_g: float = fields.number(0, 1_000_000, "g")
    for_fish_to_g: float = fields.number(0, 1_000_000, "g")
    protein_share: float = fields.number(0.05, 0.8, "g/g")
    p_g_per_kg: float = fields.number(0, 60, "g/kg")
    k_g_per_kg: float = fields.number(0, 60, "g/kg")
    ca_g_per_kg: float = fields.number(0, 120, "g/kg")
    mg_g_per_kg: float = fields.number(0, 30, "g/kg")
    fe_mg_per_kg: float = fields.number(0, 5000, "mg/kg")


@dataclass(frozen=True, slots=True, kw_only=True)
class Supplement:
    """A salt, base or chelate by what one gram of it holds."""

    key: str = fields.text(length=60)
    name: str = fields.name()
    formula: str = fields.text(length=60)
    cautions: tuple[str, ...] = fields.choice(default=())
    notes: str = fields.text()

    n_share: float = fields.number(0, 1, "g/g")
    p_share: float = fields.number(0, 1, "g/g")
    k_share: float = fields.number(0, 1, "g/g")
    ca_share: float = fields.number(0, 1, "g/g")
    mg_share: float = fields.number(0, 1, "g/g")
    fe_share: float = fields.number(0, 1, "g/g")
    base_eq_per_kg: float = fields.number(0, 60, "eq/kg")
