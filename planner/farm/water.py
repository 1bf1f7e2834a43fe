"""What is put into the water, what is read from it, what is made of its solids."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import Enum

from planner.farm import fields
from planner.farm.fields import NO_ID, Id


class Quantity(Enum):
    """What a reading measures, with its unit."""

    PH = "ph"
    WATER_C = "water °C"
    AIR_C = "air °C"
    EC_MS_PER_CM = "ec mS/cm"
    TDS_MG_PER_L = "tds mg/L"
    TAN_MG_PER_L = "tan mg/L"
    NITRITE_N_MG_PER_L = "nitrite-N mg/L"
    NITRATE_N_MG_PER_L = "nitrate-N mg/L"
    ALKALINITY_MG_PER_L = "alkalinity mg/L CaCO3"
    OXYGEN_MG_PER_L = "oxygen mg/L"
    P_MG_PER_L = "P mg/L"
    K_MG_PER_L = "K mg/L"
    CA_MG_PER_L = "Ca mg/L"
    MG_MG_PER_L = "Mg mg/L"
    FE_MG_PER_L = "Fe mg/L"
    TOP_UP_L = "top-up L"


READING_LIMITS: dict[Quantity, tuple[float, float]] = {
    Quantity.PH: (2, 12),
    Quantity.WATER_C: (-2, 50),
    Quantity.AIR_C: (-50, 60),
    Quantity.EC_MS_PER_CM: (0, 60),
    Quantity.TDS_MG_PER_L: (0, 60_000),
    Quantity.TAN_MG_PER_L: (0, 500),
    Quantity.NITRITE_N_MG_PER_L: (0, 500),
    Quantity.NITRATE_N_MG_PER_L: (0, 3000),
    Quantity.ALKALINITY_MG_PER_L: (0, 3000),
    Quantity.OXYGEN_MG_PER_L: (0, 40),
    Quantity.P_MG_PER_L: (0, 1000),
    Quantity.K_MG_PER_L: (0, 3000),
    Quantity.CA_MG_PER_L: (0, 3000),
    Quantity.MG_MG_PER_L: (0, 2000),
    Quantity.FE_MG_PER_L: (0, 200),
    Quantity.TOP_UP_L: (0, 10_000_000),
}


@dataclass(frozen=True, slots=True, kw_only=True)
class Dose:
    """A supplement or base given once, or every so many days until a date."""

    id: Id = fields.own_id()
    loop: Id = fields.reference("loop")
    supplement: str = fields.key("supplement")
    grams: float = fields.number(0.001, 1_000_000, "g")
    on: date = fields.day()
    every_days: int = fields.whole(0, 400, unit="d", default=0, meaning="0: once")
    until_on: date | None = fields.day(default=None)
    notes: str = fields.text()


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """One value read from a meter or a test kit, at a time of day when that was noted.

    `meter_factor` is the ppm per µS/cm a dissolved-solids meter works with; kept with the value
    because a ppm without it means nothing.
    """

    id: Id = fields.own_id()
    loop: Id = fields.reference("loop")
    on: date = fields.day()
    at: str = fields.text(length=5, meaning="time of day, as 07:30")
    quantity: Quantity = fields.choice()
    value: float = fields.number(-50, 10_000_000, "as the quantity says")
    meter: Id = fields.reference("meter", default=NO_ID, meaning="that it was read with")
    meter_factor: float | None = fields.number(0.3, 1, "ppm per µS/cm", default=None)
    notes: str = fields.text()


@dataclass(frozen=True, slots=True, kw_only=True)
class SolidsBatch:
    """Solids taken out of the water and kept apart to rot, until their liquor goes back.

    What the filters caught and what was siphoned from under the rafts over the `days` before
    `siphoned_on` goes in. Without `returned_on` nothing comes back.
    """

    id: Id = fields.own_id()
    code: str = fields.name()
    loop: Id = fields.reference("loop")
    siphoned_on: date = fields.day(meaning="day on which it was filled")
    days: int = fields.whole(1, 400, unit="d", meaning="solids of so many days before go in")
    aerated: bool = fields.yes_no(default=True, meaning="air is blown through it")
    returned_on: date | None = fields.day(default=None, meaning="day on which the liquor goes back")
    returned_share: float = fields.number(0, 1, "1", default=1.0, meaning="of the liquor, what goes back")
    notes: str = fields.text()
