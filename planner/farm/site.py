"""Where the growing happens: sites, loops of water, tanks, filters and beds with their places."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from planner.farm import fields
from planner.farm.fields import Id
from planner.farm.species import BedKind


class WeekStart(Enum):
    """First day of a week; ISO 8601 weeks begin on Monday."""

    MONDAY = "monday"
    SUNDAY = "sunday"


class Units(Enum):
    """What the user reads; stored quantities are metric whatever is chosen."""

    METRIC = "metric"
    US = "us"


class AreaRule(Enum):
    """Whose feed-rate ratio tells what area the feed carries: FAO's by kind of crop, or UVI's for rafts."""

    FAO = "fao"
    UVI = "uvi"


class FilterKind(Enum):
    """What a filter does with the water that passes it."""

    SETTLER = "settler"
    SCREEN = "screen"
    STATIC = "static"
    MOVING_BED = "moving bed"
    TRICKLING = "trickling"
    MINERALISER = "mineraliser"
    DEGASSING = "degassing"


@dataclass(frozen=True, slots=True, kw_only=True)
class Site:
    """A place with its climate by month.

    Monthly means are twelve numbers, January first, or empty when not known: book durations then
    apply. `radiation_mj_per_m2_d` is outside, on the level. `rain_mm` is what falls in the whole month.
    """

    id: Id = fields.own_id()
    name: str = fields.name()
    place: str = fields.text(length=120, meaning="nearest town, region or country, as the grower says it")
    latitude_deg: float | None = fields.number(-90, 90, "°", default=None)
    longitude_deg: float | None = fields.number(-180, 180, "°", default=None)
    altitude_m: float = fields.number(-430, 6000, "m", default=0.0)
    time_zone: str = fields.text(default="UTC", length=60, meaning="IANA name such as Asia/Manila")
    week_start: WeekStart = fields.choice(default=WeekStart.MONDAY)
    units: Units = fields.choice(default=Units.METRIC)
    air_c: tuple[float, ...] = fields.twelve(-40, 50, "°C", meaning="air at the beds")
    nursery_c: tuple[float, ...] = fields.twelve(-40, 50, "°C", meaning="air at the nursery")
    radiation_mj_per_m2_d: tuple[float, ...] = fields.twelve(0, 45, "MJ/m²/d", meaning="sunshine outside")
    rain_mm: tuple[float, ...] = fields.twelve(0, 4000, "mm", meaning="rain in the month")
    roof_transmission: float = fields.number(0.05, 1, "1", default=1.0, meaning="share of light let through")
    notes: str = fields.text()


@dataclass(frozen=True, slots=True, kw_only=True)
class Loop:
    """One body of water that goes round: fish tanks, filters and beds share what is dissolved in it.

    `water_l` is all the water that circulates. `water_c` are twelve monthly means, or empty.
    Make-up water brings what its analysis says, in mg/L.
    """

    id: Id = fields.own_id()
    name: str = fields.name()
    site: Id = fields.reference("site")
    water_l: float = fields.number(10, 100_000_000, "L")
    water_c: tuple[float, ...] = fields.twelve(0, 45, "°C")
    top_up_l_per_day: float | None = fields.number(0, 10_000_000, "L/d", default=None)
    top_up_n_mg_per_l: float = fields.number(0, 500, "mg/L", default=0.0)
    top_up_p_mg_per_l: float = fields.number(0, 500, "mg/L", default=0.0)
    top_up_k_mg_per_l: float = fields.number(0, 1000, "mg/L", default=0.0)
    top_up_ca_mg_per_l: float = fields.number(0, 2000, "mg/L", default=0.0)
    top_up_mg_mg_per_l: float = fields.number(0, 1000, "mg/L", default=0.0)
    top_up_fe_mg_per_l: float = fields.number(0, 50, "mg/L", default=0.0)
    top_up_alkalinity_mg_per_l: float | None = fields.number(
        0, 3000, "mg/L", default=None, meaning="as CaCO3"
    )
    gas_loss_share: float | None = fields.number(
        0, 1, "1", default=None, meaning="of the nitrogen in the feed; as in the catalogue when not said"
    )
    solids_settled_siphoned_every_days: int | None = fields.whole(
        1, 400, unit="d", default=None, meaning="under the rafts; what settles stays there when not said"
    )
    area_rule: AreaRule = fields.choice(
        default=AreaRule.FAO, meaning="whose feed-rate ratio tells what area the feed carries"
    )
    notes: str = fields.text()


@dataclass(frozen=True, slots=True, kw_only=True)
class Tank:
    """A fish tank."""

    id: Id = fields.own_id()
    name: str = fields.name()
    loop: Id = fields.reference("loop")
    volume_l: float = fields.number(10, 10_000_000, "L")
    notes: str = fields.text()


@dataclass(frozen=True, slots=True, kw_only=True)
class Filter:
    """A stage of water treatment; `solids_captured_share` is what it takes out of the solids."""

    id: Id = fields.own_id()
    name: str = fields.name()
    loop: Id = fields.reference("loop")
    kind: FilterKind = fields.choice()
    volume_l: float | None = fields.number(1, 10_000_000, "L", default=None)
    media_area_m2: float | None = fields.number(0, 10_000_000, "m²", default=None)
    solids_captured_share: float | None = fields.number(0, 1, "1", default=None)
    notes: str = fields.text()


@dataclass(frozen=True, slots=True, kw_only=True)
class Bed:
    """Rafts, media-bed blocks or nursery trays that lie together.

    `units` says how many rafts, blocks or trays there are; each has `rows` × `columns` places,
    numbered from 1 along the rows. `area_m2` is the growing area of the whole bed.
    """

    id: Id = fields.own_id()
    name: str = fields.name()
    loop: Id = fields.reference("loop")
    kind: BedKind = fields.choice()
    units: int = fields.whole(1, 5000, unit="rafts, blocks or trays", default=1)
    rows: int = fields.whole(1, 2000, unit="places")
    columns: int = fields.whole(1, 2000, unit="places")
    area_m2: float = fields.number(0.01, 1_000_000, "m²")
    layer: int = fields.whole(0, 20, unit="layers above the ground", default=0)
    depth_cm: float | None = fields.number(1, 300, "cm", default=None)
    light_share: float = fields.number(
        0, 1, "1", default=1.0, meaning="of the light under the roof, what the layers above let through"
    )
    lamp_mol_per_m2_d: float = fields.number(0, 60, "mol/m²/d", default=0.0, meaning="light that lamps add")
    notes: str = fields.text()

    @property
    def places_per_unit(self) -> int:
        """Number of places on one raft, block or tray."""
        return self.rows * self.columns

    @property
    def places(self) -> int:
        """Number of places in the whole bed."""
        return self.units * self.places_per_unit

    @property
    def place_area_m2(self) -> float:
        """Growing area of one place [m²]."""
        return self.area_m2 / self.places
