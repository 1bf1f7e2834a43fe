"""Everything about the water of one loop, put together for whoever shows it.

The day comes from outside; this room has no clock.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.farm.farm import DAYS_PER_WEEK, Farm, by_id
from planner.farm.fields import Id
from planner.farm.site import Loop
from planner.farm.water import Quantity, Reading
from planner.forecast.values import Floats, LoopForecast, Ruler
from planner.forecast.water.acid import (
    AcidForecast,
    WeekAcid,
    acid_forecast,
    base_eq_by_day,
    top_up_eq_per_day,
    week_acids,
)
from planner.forecast.water.bases import BaseAdvice, base_advice
from planner.forecast.water.courses import Ahead, alkalinity_ahead
from planner.forecast.water.dosing import WaterNow
from planner.forecast.water.filters import filter_figures
from planner.forecast.water.iron import IronAdvice, iron_advice
from planner.forecast.water.limits import LimitDay, ObservedAcid, limit_days, observed_acid
from planner.forecast.water.load import LoadForecast, WeekLoad, load_forecast, week_loads
from planner.forecast.water.meters import MeterBook, meter_book, trend_readings
from planner.forecast.water.readings import (
    DueTest,
    ReadingFigures,
    Trend,
    due_tests,
    is_odd,
    latest,
    reading_figures,
    series,
    trend,
)
from planner.forecast.water.supplements import SaltAdvice, gaps_by_element, salt_advice
from planner.forecast.water.targets import (
    FreeAmmonia,
    Level,
    SaltReading,
    TargetBand,
    WaterByDay,
    free_ammonia,
    salt_reading,
    target_bands,
)

_CARE: Final = "coefficient/water_care/"


@dataclass(frozen=True, slots=True, kw_only=True)
class QuantityView:
    """One quantity: its last reading, how it stands, whether to repeat the test, where it goes.

    `level` is None without a reading or a band. With `repeat_test` it should not be acted on. `doubtful` is
    a reading whose meter was overdue for calibration; `trend_from` the calibration that the trend begins
    with, None when none lies among the readings.
    """

    quantity: Quantity
    reading: Reading | None
    band: TargetBand | None
    level: Level | None
    repeat_test: bool
    trend: Trend | None
    due: DueTest | None
    doubtful: bool = False
    trend_from: date | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class WaterReadings:
    """What tests say of a loop on a day.

    `salts` is the last conductivity or dissolved-solids reading, `salts_level` how its likely conductivity
    stands to the band.
    """

    quantities: tuple[QuantityView, ...]
    salts: SaltReading | None
    salts_level: Level | None
    free_ammonia: FreeAmmonia
    due: tuple[DueTest, ...]
    basis: tuple[Figure, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class WaterAdvice:
    """What to put into the water in a week. `dosed_eq` is base that the plan's doses bring that week."""

    week: int
    gaps_g: Mapping[str, float]
    base: BaseAdvice
    dosed_eq: float
    iron: IronAdvice
    salts: SaltAdvice


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class LoopWater:
    """The water side of one loop on a day."""

    loop: Id
    name: str
    today: date
    load: LoadForecast
    week_loads: tuple[WeekLoad, ...]
    acid: AcidForecast
    week_acids: tuple[WeekAcid, ...]
    readings: WaterReadings
    limits: tuple[LimitDay, ...]
    observed: ObservedAcid | None
    advice: WaterAdvice

    @property
    def basis(self) -> tuple[Figure, ...]:
        """Every row of the catalogue behind the forecast and the advice, each once."""
        rows = (
            *self.load.basis,
            *self.acid.basis,
            *self.readings.basis,
            *(figure for limit in self.limits for figure in limit.basis),
            *self.advice.base.basis,
            *self.advice.iron.basis,
        )
        return tuple({figure.path: figure for figure in rows}.values())


def loop_water(
    farm: Farm,
    found: LoopForecast,
    *,
    ruler: Ruler,
    catalogue: Catalogue,
    today: date,
    owned: Iterable[str] | None = None,
    plant_n_g: Floats | None = None,
    gaps_g: Mapping[str, float] | None = None,
) -> LoopWater:
    """Return the water side of a loop.

    owned are the supplements on the shelf; without them, those the farm has doses of. plant_n_g [g/d] is
    nitrogen really taken, gaps_g [g/week] what crops want beyond supply; without them both are taken from
    the loop's forecast. The catalogue is that with the farm's own entries laid over it.
    """
    loop: Loop = by_id(farm.loops)[found.loop]
    load = _load(farm, found, loop, ruler, catalogue)
    acid = acid_forecast(found, water_l=loop.water_l, catalogue=catalogue, plant_n_g=plant_n_g)
    top_up = top_up_eq_per_day(loop, caco3_g_per_eq=acid.caco3_g_per_eq, catalogue=catalogue)
    undosed = np.full(ruler.days, top_up)
    doses = base_eq_by_day(farm.doses, loop=loop.id, supplements=catalogue.supplements, ruler=ruler)
    weeks = week_acids(acid, ruler)
    week = min(max(ruler.week_of(today), 0), ruler.weeks - 1)
    in_trend = trend_readings(farm, loop=loop.id, until_on=today)
    return LoopWater(
        loop=loop.id,
        name=loop.name,
        today=today,
        load=load,
        week_loads=week_loads(load, ruler=ruler, figures=filter_figures(catalogue)),
        acid=acid,
        week_acids=weeks,
        readings=water_readings(
            farm,
            loop,
            today=today,
            catalogue=catalogue,
            water=WaterByDay(start_on=ruler.start_on, by_day=found.water_c, monthly=loop.water_c),
        ),
        limits=limit_days(
            acid, readings=in_trend, today=today, ruler=ruler, catalogue=catalogue, base_eq=undosed
        ),
        observed=observed_acid(
            acid,
            readings=in_trend,
            base_eq=doses + undosed,
            today=today,
            ruler=ruler,
            catalogue=catalogue,
        ),
        advice=_advice(
            farm,
            loop,
            weeks[week],
            base_eq=doses + undosed,
            gaps_g=_gaps(found, ruler, week, catalogue) if gaps_g is None else gaps_g,
            shelf=_shelf(farm) if owned is None else tuple(owned),
            today=today,
            catalogue=catalogue,
        ),
    )


def alkalinity_of(
    farm: Farm, acid: AcidForecast, *, ruler: Ruler, catalogue: Catalogue, today: date, weeks: int
) -> tuple[Ahead, ...]:
    """Return alkalinity of a loop from its last reading on, with the base of the plan's doses and make-up."""
    loop: Loop = by_id(farm.loops)[acid.loop]
    top_up = top_up_eq_per_day(loop, caco3_g_per_eq=acid.caco3_g_per_eq, catalogue=catalogue)
    doses = base_eq_by_day(farm.doses, loop=loop.id, supplements=catalogue.supplements, ruler=ruler)
    return alkalinity_ahead(
        acid,
        readings=farm.readings,
        base_eq=doses + top_up,
        today=today,
        ruler=ruler,
        catalogue=catalogue,
        weeks=weeks,
    )


def _gaps(found: LoopForecast, ruler: Ruler, week: int, catalogue: Catalogue) -> dict[str, float]:
    ahead = int(catalogue.figure(f"{_CARE}gap_weeks").value)
    return gaps_by_element(found, ruler, first_week=week, weeks=ahead)


def _shelf(farm: Farm) -> tuple[str, ...]:
    """Return the supplements a farm has doses of."""
    return tuple(dict.fromkeys(dose.supplement for dose in farm.doses))


def _load(farm: Farm, found: LoopForecast, loop: Loop, ruler: Ruler, catalogue: Catalogue) -> LoadForecast:
    return load_forecast(
        found,
        loop=loop,
        altitude_m=by_id(farm.sites)[loop.site].altitude_m,
        filters=farm.filters,
        beds=farm.beds,
        ruler=ruler,
        catalogue=catalogue,
    )


def water_readings(
    farm: Farm, loop: Loop, *, today: date, catalogue: Catalogue, water: WaterByDay
) -> WaterReadings:
    """Return what tests say of a loop's water on a day; `water` is its temperature by day."""
    figures, bands = reading_figures(catalogue), target_bands(catalogue)
    due = due_tests(farm.readings, loop=loop.id, today=today, figures=figures)
    meters = meter_book(farm)
    salts = _salts(farm, loop, today, catalogue)
    due_by = {each.quantity: each for each in due}
    ammonia = free_ammonia(
        farm.readings,
        loop=loop.id,
        species=_species(farm, loop),
        today=today,
        catalogue=catalogue,
        water=water,
    )
    return WaterReadings(
        quantities=tuple(
            _view(
                series(farm.readings, quantity, loop=loop.id, until_on=today),
                quantity,
                today,
                bands.get(quantity),
                due_by.get(quantity),
                figures,
                meters,
            )
            for quantity in figures.noise
        ),
        salts=salts,
        salts_level=None if salts is None else bands[Quantity.EC_MS_PER_CM].level(salts.ec_ms_per_cm.likely),
        free_ammonia=ammonia,
        due=due,
        basis=(*figures.basis, *_band_rows(bands), *ammonia.basis, *(() if salts is None else salts.basis)),
    )


def _band_rows(bands: Mapping[Quantity, TargetBand]) -> tuple[Figure, ...]:
    return tuple(figure for band in bands.values() for figure in band.basis)


def _species(farm: Farm, loop: Loop) -> tuple[str, ...]:
    tanks = {tank.id for tank in farm.tanks if tank.loop == loop.id}
    return tuple(dict.fromkeys(group.species for group in farm.fish_groups if group.tank in tanks))


def _view(
    found: tuple[Reading, ...],
    quantity: Quantity,
    today: date,
    band: TargetBand | None,
    due: DueTest | None,
    figures: ReadingFigures,
    meters: MeterBook,
) -> QuantityView:
    marks = meters.marks(found)
    last = found[-1] if found else None
    return QuantityView(
        quantity=quantity,
        reading=last,
        band=band,
        level=band.level(last.value) if band is not None and last is not None else None,
        repeat_test=last is not None and is_odd(found, len(found) - 1, figures),
        trend=trend(meters.in_one_trend(found), until_on=today, figures=figures),
        due=due,
        doubtful=last is not None and meters.is_doubtful(last),
        trend_from=marks[-1] if marks else None,
    )


def _salts(farm: Farm, loop: Loop, today: date, catalogue: Catalogue) -> SaltReading | None:
    """Return the last reading of salts, of conductivity when both were read on a day."""
    both = [
        latest(farm.readings, quantity, loop=loop.id, until_on=today)
        for quantity in (Quantity.EC_MS_PER_CM, Quantity.TDS_MG_PER_L)
    ]
    there = [reading for reading in both if reading is not None]
    return salt_reading(max(there, key=_on), catalogue) if there else None


def _on(reading: Reading) -> date:
    return reading.on


def water_now(farm: Farm, loop: Loop, *, today: date, catalogue: Catalogue) -> WaterNow:
    """Return the water as last tested, without readings too old to count."""
    counts = catalogue.figure(f"{_CARE}reading_counts_days").value
    slow = catalogue.figure(f"{_CARE}limit_reading_days").value
    return WaterNow(
        water_l=loop.water_l,
        ph=_fresh(farm, Quantity.PH, loop, today, counts),
        alkalinity_mg_per_l=_fresh(farm, Quantity.ALKALINITY_MG_PER_L, loop, today, slow),
        tan_mg_per_l=_fresh(farm, Quantity.TAN_MG_PER_L, loop, today, counts),
    )


def _fresh(farm: Farm, quantity: Quantity, loop: Loop, today: date, days: float) -> float | None:
    found = latest(farm.readings, quantity, loop=loop.id, until_on=today)
    return found.value if found is not None and (today - found.on).days <= days else None


def _advice(
    farm: Farm,
    loop: Loop,
    week: WeekAcid,
    *,
    base_eq: Floats,
    gaps_g: Mapping[str, float],
    shelf: tuple[str, ...],
    today: date,
    catalogue: Catalogue,
) -> WaterAdvice:
    water = water_now(farm, loop, today=today, catalogue=catalogue)
    base = base_advice(week.planned_eq, owned=shelf, gaps_g=gaps_g, water=water, catalogue=catalogue)
    days = slice(week.week * DAYS_PER_WEEK, (week.week + 1) * DAYS_PER_WEEK)
    slow = catalogue.figure(f"{_CARE}limit_reading_days").value
    return WaterAdvice(
        week=week.week,
        gaps_g=gaps_g,
        base=base,
        dosed_eq=float(base_eq[days].sum()),
        iron=iron_advice(
            loop=loop.id,
            water_l=loop.water_l,
            doses=farm.doses,
            owned=shelf,
            ph=water.ph,
            present_mg_per_l=_fresh(farm, Quantity.FE_MG_PER_L, loop, today, slow),
            today=today,
            catalogue=catalogue,
        ),
        salts=salt_advice(base.unfilled_by_element, owned=shelf, catalogue=catalogue),
    )
