"""Bands that readings are held against, free ammonia, and what a salt meter's figure means.

Must not know feed, beds or what is on the shelf.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from enum import Enum
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.farm.fields import Id
from planner.farm.water import Quantity, Reading
from planner.forecast.climate import daily_series
from planner.forecast.values import Floats
from planner.forecast.water.chemistry import Chemistry, chemistry_of
from planner.forecast.water.readings import latest, nearest, series
from planner.forecast.water.spans import Span, exactly, span_of
from planner.science.water import conductivity, dissolved_solids

_CARE: Final = "coefficient/water_care/"
_BANDS: Final = {
    Quantity.PH: ("loop/ph_low", "loop/ph_high"),
    Quantity.WATER_C: ("loop/water_low_c", "loop/water_high_c"),
    Quantity.TAN_MG_PER_L: (None, "loop/tan_limit_mg_per_l"),
    Quantity.NITRITE_N_MG_PER_L: (None, "loop/nitrite_n_limit_mg_per_l"),
    Quantity.NITRATE_N_MG_PER_L: ("loop/nitrate_n_low_mg_per_l", "loop/nitrate_n_high_mg_per_l"),
    Quantity.OXYGEN_MG_PER_L: ("loop/oxygen_low_mg_per_l", None),
    Quantity.ALKALINITY_MG_PER_L: (f"{_CARE}alkalinity_low_mg_per_l", None),
    Quantity.EC_MS_PER_CM: (f"{_CARE}ec_low_ms_per_cm", f"{_CARE}ec_high_ms_per_cm"),
    Quantity.P_MG_PER_L: ("solution/leafy/p", None),
    Quantity.K_MG_PER_L: ("solution/leafy/k", None),
    Quantity.CA_MG_PER_L: ("solution/leafy/ca", None),
    Quantity.MG_MG_PER_L: ("solution/leafy/mg", None),
    Quantity.FE_MG_PER_L: (f"{_CARE}fe_low_mg_per_l", f"{_CARE}fe_high_mg_per_l"),
}
_LEAST_METER_FACTOR: Final = 0.4
"""Below it no meter works (planner.science.water); such a factor is taken as not given."""
_US_PER_MS: Final = 1000.0
LOWEST_C, HIGHEST_C = 0.0, 50.0
"""Range of the ammonia formula (planner.science.water)."""


class Level(Enum):
    """How urgent a value is."""

    SAFE = "safe"
    WATCH = "watch"
    ACT = "act"


@dataclass(frozen=True, slots=True, kw_only=True)
class TargetBand:
    """Bounds of a quantity; each bound is a figure whose far end says where watching turns to acting."""

    quantity: Quantity
    low: Figure | None
    high: Figure | None

    def level(self, value: float) -> Level:
        """Return how a value stands: within the likely bounds, within their spread, or beyond."""
        if self.low is not None and value < self.low.value:
            return Level.WATCH if value >= self.low.low and self.low.low < self.low.value else Level.ACT
        if self.high is not None and value > self.high.value:
            return Level.WATCH if value <= self.high.high and self.high.high > self.high.value else Level.ACT
        return Level.SAFE

    @property
    def basis(self) -> tuple[Figure, ...]:
        """The bounds there are."""
        return tuple(bound for bound in (self.low, self.high) if bound is not None)


def target_bands(catalogue: Catalogue) -> Mapping[Quantity, TargetBand]:
    """Return the bands by quantity; quantities without one have no entry."""
    return {
        quantity: TargetBand(
            quantity=quantity,
            low=None if low is None else catalogue.figure(low),
            high=None if high is None else catalogue.figure(high),
        )
        for quantity, (low, high) in _BANDS.items()
    }


class NotKnown(Enum):
    """Why something cannot be said."""

    NO_AMMONIA = "no ammonia reading"
    NO_PH = "no pH near it"
    NO_TEMPERATURE = "no water temperature near it"
    NO_ALKALINITY = "no alkalinity reading"
    TOO_OLD = "reading too old"
    NO_TREND = "too few readings for a trend"
    NOT_FALLING = "no fall seen"


@dataclass(frozen=True, slots=True, kw_only=True)
class FreeAmmonia:
    """Un-ionised ammonia from readings, or why it is not known.

    `within_days` is how far pH and temperature may lie from the ammonia reading. `water_c_on` is None
    when the temperature is that of the loop's forecast. `level` is None when no fish limit is known.
    """

    not_known: NotKnown | None
    within_days: int
    on: date | None = None
    tan_mg_per_l: float | None = None
    ph: float | None = None
    ph_on: date | None = None
    water_c: float | None = None
    water_c_on: date | None = None
    nh3_n_mg_per_l: float | None = None
    limit: Figure | None = None
    level: Level | None = None
    basis: tuple[Figure, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class WaterByDay:
    """The water's temperature: by day from `start_on` as the forecast has it, else by monthly means [°C]."""

    start_on: date
    by_day: Floats | None
    monthly: tuple[float, ...]

    def on(self, day: date) -> float | None:
        """Return the temperature of a day, None where it is not known."""
        number = (day - self.start_on).days
        if self.by_day is not None and 0 <= number < self.by_day.size:
            return float(self.by_day[number])
        found = daily_series(self.monthly, start_on=day, days=1, floor=0.0)
        return None if found is None else float(found[0])


NO_WATER: Final = WaterByDay(start_on=date.min, by_day=None, monthly=())


def ammonia_limit(species: Iterable[str], catalogue: Catalogue) -> Figure | None:
    """Return the lowest limit of free ammonia of some species, None without fish."""
    found = [catalogue.figure(f"fish/{key}/nh3_n_limit_mg_per_l") for key in sorted(set(species))]
    return min(found, key=_value) if found else None


def _value(figure: Figure) -> float:
    return figure.value


def ammonia_level(nh3_n_mg_per_l: float, *, limit_mg_per_l: float, watch_share: float) -> Level:
    """Return how free ammonia stands to a limit.

    >>> ammonia_level(0.04, limit_mg_per_l=0.06, watch_share=0.5).value
    'watch'
    """
    if nh3_n_mg_per_l >= limit_mg_per_l:
        return Level.ACT
    return Level.WATCH if nh3_n_mg_per_l >= limit_mg_per_l * watch_share else Level.SAFE


def free_ammonia(
    readings: Sequence[Reading],
    *,
    loop: Id,
    species: Iterable[str],
    today: date,
    catalogue: Catalogue,
    water: WaterByDay = NO_WATER,
) -> FreeAmmonia:
    """Return free ammonia of the last ammonia reading, with pH and temperature nearest to it.

    The water as the loop's forecast has it stands in where no temperature was read near it.
    """
    days = catalogue.figure(f"{_CARE}nearest_reading_days")
    within = int(days.value)
    tan = latest(readings, Quantity.TAN_MG_PER_L, loop=loop, until_on=today)
    if tan is None:
        return FreeAmmonia(not_known=NotKnown.NO_AMMONIA, within_days=within)
    ph, warmth = (
        nearest(series(readings, each, loop=loop, until_on=today), on=tan.on, within_days=within)
        for each in (Quantity.PH, Quantity.WATER_C)
    )
    lacking = FreeAmmonia(not_known=NotKnown.NO_PH, within_days=within, on=tan.on, tan_mg_per_l=tan.value)
    if ph is None:
        return lacking
    water_c = warmth.value if warmth is not None else water.on(tan.on)
    if water_c is None:
        return replace(lacking, not_known=NotKnown.NO_TEMPERATURE, ph=ph.value, ph_on=ph.on)
    return _known_ammonia(
        tan, ph, water_c, warmth, limit=ammonia_limit(species, catalogue), within=days, catalogue=catalogue
    )


def _known_ammonia(
    tan: Reading,
    ph: Reading,
    water_c: float,
    warmth: Reading | None,
    *,
    limit: Figure | None,
    within: Figure,
    catalogue: Catalogue,
) -> FreeAmmonia:
    chemistry: Chemistry = chemistry_of(catalogue)
    watch = catalogue.figure(f"{_CARE}nh3_watch_share")
    held = min(max(water_c, LOWEST_C), HIGHEST_C)
    nh3 = chemistry.free_ammonia_n(tan.value, ph=ph.value, water_c=held)
    rows = (*chemistry.of("ammonia_"), watch, within, *(() if limit is None else (limit,)))
    return FreeAmmonia(
        not_known=None,
        within_days=int(within.value),
        on=tan.on,
        tan_mg_per_l=tan.value,
        ph=ph.value,
        ph_on=ph.on,
        water_c=water_c,
        water_c_on=None if warmth is None else warmth.on,
        nh3_n_mg_per_l=nh3,
        limit=limit,
        level=None
        if limit is None
        else ammonia_level(nh3, limit_mg_per_l=limit.value, watch_share=watch.value),
        basis=rows,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class SaltReading:
    """A reading of conductivity or dissolved solids, both ways.

    `factor` [mg/L per µS/cm] is the meter's own, or, when it was not noted, the usual one with its
    spread and `factor_assumed`.
    """

    on: date
    ec_ms_per_cm: Span
    tds_mg_per_l: Span
    factor: Span
    factor_assumed: bool
    basis: tuple[Figure, ...]


def salt_reading(reading: Reading, catalogue: Catalogue) -> SaltReading:
    """Return what a conductivity or dissolved-solids reading says in both units (source: instrument-manual).

    Raises `ValueError` for a reading of anything else.
    """
    if reading.quantity not in {Quantity.EC_MS_PER_CM, Quantity.TDS_MG_PER_L}:
        raise ValueError(f"reading of {reading.quantity.value} is none of conductivity or dissolved solids")
    usual = catalogue.figure("loop/tds_per_ec")
    given = reading.meter_factor
    assumed = given is None or given < _LEAST_METER_FACTOR
    factor = span_of(usual) if given is None or assumed else exactly(given)
    if reading.quantity is Quantity.EC_MS_PER_CM:
        ec, tds = exactly(reading.value), _solids(reading.value * _US_PER_MS, factor)
    else:
        ec, tds = _conductivity_ms(reading.value, factor), exactly(reading.value)
    return SaltReading(
        on=reading.on,
        ec_ms_per_cm=ec,
        tds_mg_per_l=tds,
        factor=factor,
        factor_assumed=assumed,
        basis=(usual,) if assumed else (),
    )


def _solids(ec_us_per_cm: float, factor: Span) -> Span:
    low, likely, high = (
        dissolved_solids(ec_us_per_cm, meter_factor=each) for each in (factor.low, factor.likely, factor.high)
    )
    return Span(low=low, likely=likely, high=high)


def _conductivity_ms(tds_mg_per_l: float, factor: Span) -> Span:
    low, likely, high = (
        conductivity(tds_mg_per_l, meter_factor=each) / _US_PER_MS
        for each in (factor.high, factor.likely, factor.low)
    )
    return Span(low=low, likely=likely, high=high)
