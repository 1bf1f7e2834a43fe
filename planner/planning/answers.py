"""The few answers a new farm begins with, as plain values. Must know nothing of widgets or figures."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from planner.farm.crops import TargetUnit
from planner.farm.site import AreaRule, Units, WeekStart
from planner.farm.species import BedKind
from planner.planning.climates import ClimateClass


@dataclass(frozen=True, slots=True, kw_only=True)
class BedWish:
    """One bed: its kind and its length and width, or the number of its holes (0: reckon it)."""

    name: str
    kind: BedKind
    length_m: float
    width_m: float
    holes: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class CropWish:
    """So much of a crop each week."""

    crop: str
    amount_per_week: float
    unit: TargetUnit = TargetUnit.HEADS


@dataclass(frozen=True, slots=True, kw_only=True)
class Answers:
    """Everything that is asked before a new farm is drafted; `site_notes` is kept with the site as it is."""

    name: str
    place: str
    latitude_deg: float | None
    tank_l: float
    species: str
    fish_count: int
    mean_weight_g: float
    beds: tuple[BedWish, ...]
    crops: tuple[CropWish, ...]
    plan_from: date
    units: Units = Units.METRIC
    week_start: WeekStart = WeekStart.MONDAY
    longitude_deg: float | None = None
    altitude_m: float = 0.0
    time_zone: str = "UTC"
    climate: ClimateClass = ClimateClass.UNKNOWN
    site_notes: str = ""
    area_rule: AreaRule = AreaRule.FAO
