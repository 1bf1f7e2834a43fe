"""What can be asked for on the page, as values that declare their fields; forms and checks go by them."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import Enum

from planner.farm import fields
from planner.farm.crops import TargetUnit
from planner.farm.fields import NO_ID, Id
from planner.farm.species import BedKind, CropGroup
from planner.planning.wanted import RhythmOf

_LONGEST_WEEKS = 520
_MOST_PLANTS = 100_000
_MOST_MINUTES = 10_080


class Weekday(Enum):
    """The days of the week, Monday first as dates count."""

    MONDAY = 0
    TUESDAY = 1
    WEDNESDAY = 2
    THURSDAY = 3
    FRIDAY = 4
    SATURDAY = 5
    SUNDAY = 6


@dataclass(frozen=True, slots=True, kw_only=True)
class SeasonAsk:
    """The limits a season plan keeps to."""

    from_on: date = fields.day(meaning="nothing that is sown before is touched")
    weeks: int | None = fields.whole(
        1, _LONGEST_WEEKS, unit="weeks", default=None, meaning="empty: to the end of the plan"
    )
    sow_weekday: Weekday = fields.choice(default=Weekday.MONDAY)
    holidays: str = fields.text(
        length=2000, meaning="days without work, parted by commas, such as 24 Dec 2027, 25 Dec 2027"
    )
    lot_plants: int = fields.whole(1, _MOST_PLANTS, unit="plants", default=1)
    labour_min_per_week: float | None = fields.number(
        0,
        _MOST_MINUTES,
        "min",
        default=None,
        meaning="of sowing, moving and picking; empty: as much as it takes",
    )
    search_seconds: float = fields.number(1, 600, "s", default=5.0)
    exact: bool = fields.yes_no(default=False, meaning="takes longer, and may prove that nothing is better")


class WantKind(Enum):
    """In which of the ways something is wanted."""

    STEADY = "steady"
    ORDER = "order"
    RHYTHM = "rhythm"


@dataclass(frozen=True, slots=True, kw_only=True)
class WantAsk:
    """Something that is wanted; which fields count hangs on the kind."""

    crop: str = fields.key("crop")
    amount: float = fields.number(0.01, 1_000_000, "")
    unit: TargetUnit = fields.choice(default=TargetUnit.HEADS)
    of: RhythmOf = fields.choice(default=RhythmOf.HARVEST)
    on: date | None = fields.day(default=None)
    every_weeks: int = fields.whole(1, 52, unit="weeks", default=1)
    ready_by: Weekday | None = fields.choice(default=None)
    from_on: date | None = fields.day(default=None)
    until_on: date | None = fields.day(default=None, meaning="empty: to the end of the plan")
    rule: str = fields.text(
        length=300, meaning="your own rule as calendars write it, such as FREQ=MONTHLY;BYDAY=1TH"
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class HowAsk:
    """How successions are planned."""

    sow_from: date = fields.day(meaning="nothing that is sown before is touched")
    holidays: str = fields.text(
        length=2000, meaning="days without work, parted by commas, such as 24 Dec 2027, 25 Dec 2027"
    )
    fill_trays: bool = fields.yes_no(default=False)
    replace_old: bool = fields.yes_no(
        default=True, meaning="batches of these crops that are neither locked nor sown yet make way"
    )


class NeedBasis(Enum):
    """By what the feed that fish are stocked for is judged."""

    AREA = "area"
    DEMAND = "demand"
    STEADY = "steady"


@dataclass(frozen=True, slots=True, kw_only=True)
class StockAsk:
    """Which fish are to be stocked, and for what."""

    loop: Id = fields.reference("loop")
    species: str = fields.key("fish")
    feed: str = fields.key("feed")
    fingerling_g: float = fields.number(0.1, 5_000, "g", meaning="weight of one fish when it is stocked")
    every_weeks: int = fields.whole(1, 52, unit="weeks", default=1, meaning="fingerlings can be had so often")
    from_on: date = fields.day()
    harvest_g: float | None = fields.number(
        1, 20_000, "g", default=None, meaning="empty: the weight the catalogue has"
    )
    density_limit_kg_per_m3: float | None = fields.number(
        0.1, 200, "kg/m³", default=None, meaning="empty: the limit of the species"
    )
    basis: NeedBasis = fields.choice(default=NeedBasis.AREA)
    area_m2: float | None = fields.number(
        0.1, 100_000, "m²", default=None, meaning="of leafy crops, planted all year"
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class ExpandAsk:
    """Beds that might be added, and what is known of pump, air, light, power and structure."""

    loop: Id = fields.reference("loop")
    area_m2: float = fields.number(0.01, 100_000, "m²")
    kind: BedKind = fields.choice(default=BedKind.RAFT)
    crop_group: CropGroup = fields.choice(default=CropGroup.LEAFY)
    crop: str = fields.key("crop", default="", meaning="says which light is wanted")
    depth_cm: float | None = fields.number(0, 300, "cm", default=None, meaning="of water or gravel")
    head_m: float | None = fields.number(
        0, 100, "m", default=None, meaning="height the water is lifted to the new beds"
    )
    friction_m: float | None = fields.number(
        0, 100, "m", default=None, meaning="head lost in pipes; empty: a stated allowance"
    )
    pump_points: str = fields.text(
        length=500, meaning="head in m and flow in L/h off its sheet, such as 0:3000; 1:2400; 2:1500"
    )
    oxygen_g_per_h: float | None = fields.number(
        0, 100_000, "g/h", default=None, meaning="that air pumps give the whole loop"
    )
    light_mol_per_m2_d: float | None = fields.number(
        0, 100, "mol/m²/d", default=None, meaning="that reaches the new beds"
    )
    lamps_w: float | None = fields.number(0, 1_000_000, "W", default=None, meaning="0 for none")
    pump_w: float | None = fields.number(0, 1_000_000, "W", default=None, meaning="0 for none")
    spare_w: float | None = fields.number(0, 1_000_000, "W", default=None)
    load_allowed_kg_per_m2: float | None = fields.number(
        0, 100_000, "kg/m²", default=None, meaning="that floor and frame may carry"
    )
    dry_kg_per_m2: float | None = fields.number(
        0, 10_000, "kg/m²", default=None, meaning="frame, liner and rafts without water"
    )


class WhatKind(Enum):
    """What a scenario tries."""

    LOSE_FISH = "lose fish"
    SWAP_CROP = "swap crop"
    SHIFT = "shift"
    SCALE = "scale"
    OTHER_FEED = "other feed"


@dataclass(frozen=True, slots=True, kw_only=True)
class WhatAsk:
    """One change of a scenario; which fields count hangs on the kind."""

    scenario: str = fields.name()
    group: Id = fields.reference("fish group", default=NO_ID)
    crop: str = fields.key("crop", default="")
    other_crop: str = fields.key("crop", default="")
    feed: str = fields.key("feed", default="")
    weeks_later: int = fields.whole(-52, 52, unit="weeks", default=2, meaning="below 0 for earlier")
    percent_of_plants: float = fields.number(1, 1000, "%", default=50.0, meaning="of today's number")
    from_on: date = fields.day(meaning="nothing that is sown before is touched")
