"""Computations on germination, warmth, growth curves and the lettuce canopy."""

from __future__ import annotations

from typing import Final

import numpy as np

from planner.catalogue.catalogue import Emergence
from planner.forecast.season import emergence_rate
from planner.forecast.values import Floats
from planner.forecast.verify.ledger import Computation, Inputs, Ledger
from planner.science import canopy, degree_days, germination, growth, schedule

_SECONDS_A_DAY: Final = 86_400
_G_PER_KG: Final = 1000.0
_HALF: Final = 2
_PERCENT: Final = 100.0


def emergence_foreseen(inputs: Inputs, ledger: Ledger) -> float:
    """Days to emergence as the forecast has them: by the crop's table, else by its thermal time."""
    key = inputs.text("crop")
    crop = ledger.crop(key, "germination_base_c", "germination_thermal_time_c_d", "germination_optimum_c")
    table = ledger.emergence(key) if key in ledger.catalogue.emergence else None
    rate = emergence_rate(crop, table, np.asarray([inputs.number("temperature_c")]))
    return float(1.0 / rate[0])


def emergence_by_warmth(inputs: Inputs, ledger: Ledger) -> float:
    """Days to emergence from the base and thermal time of a crop of the catalogue."""
    crop = ledger.crop(inputs.text("crop"), "germination_base_c", "germination_thermal_time_c_d")
    return germination.germination_days(
        inputs.number("temperature_c"),
        base_c=crop.germination_base_c,
        thermal_time_c_days=crop.germination_thermal_time_c_d,
    )


def germination_time(inputs: Inputs, ledger: Ledger) -> float:
    """Days to germination from a base and a thermal time."""
    del ledger
    return germination.germination_days(
        inputs.number("temperature_c"),
        base_c=inputs.number("base_c"),
        thermal_time_c_days=inputs.number("thermal_time_c_d"),
    )


def germination_progress(inputs: Inputs, ledger: Ledger) -> float:
    """Share of germination that is done after days of changing warmth."""
    del ledger
    rates = germination.germination_rate(
        np.repeat(inputs.numbers("temperatures_c"), inputs.numbers("days_each").astype(np.int64)),
        base_c=inputs.number("base_c"),
        thermal_time_c_days=inputs.number("thermal_time_c_d"),
    )
    return float(rates.sum())


def emergence_by_table(inputs: Inputs, ledger: Ledger) -> float:
    """Days to emergence read off the table of the catalogue."""
    nodes = _nodes(ledger.emergence(inputs.text("crop")), "days")
    return germination.emergence_days_from_table(
        inputs.number("temperature_c"), table_c=nodes[:, 0], table_days=nodes[:, 1]
    )


def _stand_share(inputs: Inputs, ledger: Ledger) -> float:
    nodes = _nodes(ledger.emergence(inputs.text("crop")), "normal_percent")
    return germination.stand_share_from_table(
        inputs.number("temperature_c"), table_c=nodes[:, 0], table_share=nodes[:, 1] / _PERCENT
    )


def _nodes(table: Emergence, field: str) -> Floats:
    return np.asarray(getattr(table, field), dtype=np.float64)


def stand_percent(inputs: Inputs, ledger: Ledger) -> float:
    """Percentage of normal seedlings read off the table of the catalogue."""
    return _PERCENT * _stand_share(inputs, ledger)


def seeds_at_temperature(inputs: Inputs, ledger: Ledger) -> float:
    """Seeds for a number of plants at the stand of a temperature."""
    return float(schedule.seeds_to_sow(inputs.number("plants"), germination=_stand_share(inputs, ledger)))


def mean_emergence_miss(inputs: Inputs, ledger: Ledger) -> float:
    """Mean miss of the thermal times against all printed days of the catalogue between two temperatures."""
    low, high = inputs.number("from_c"), inputs.number("to_c")
    misses = [
        abs(_thermal_days(crop, at, ledger) - days)
        for crop in inputs.text("crops").split()
        for at, days in ledger.emergence(crop).days
        if low <= at <= high
    ]
    return float(np.mean(misses))


def _thermal_days(key: str, temperature_c: float, ledger: Ledger) -> float:
    crop = ledger.crop(key, "germination_base_c", "germination_thermal_time_c_d")
    return germination.germination_days(
        temperature_c,
        base_c=crop.germination_base_c,
        thermal_time_c_days=crop.germination_thermal_time_c_d,
    )


def _fit(inputs: Inputs, ledger: Ledger) -> tuple[float, float]:
    low, high = inputs.number("from_c"), inputs.number("to_c")
    nodes = _nodes(ledger.emergence(inputs.text("crop")), "days")
    used = nodes[(nodes[:, 0] >= low) & (nodes[:, 0] <= high)]
    return germination.fit_thermal_time(used[:, 0], days=used[:, 1])


def fitted_base(inputs: Inputs, ledger: Ledger) -> float:
    """Base temperature that fits the emergence table of the catalogue."""
    return _fit(inputs, ledger)[0]


def fitted_thermal_time(inputs: Inputs, ledger: Ledger) -> float:
    """Thermal time that fits the emergence table of the catalogue."""
    return _fit(inputs, ledger)[1]


_DEGREE_DAYS: Final = {
    "mean": degree_days.degree_days_mean,
    "clipped": degree_days.degree_days_clipped,
    "sine": degree_days.degree_days_sine,
    "four-cases": degree_days.degree_days_four_cases,
}


def degree_day_sum(inputs: Inputs, ledger: Ledger) -> float:
    """Degree-days of a day, summed one of four ways."""
    del ledger
    way = _DEGREE_DAYS[inputs.text("way")]
    return way(
        inputs.number("maximum_c"), minimum_c=inputs.number("minimum_c"), base_c=inputs.number("base_c")
    )


def capped_degree_days(inputs: Inputs, ledger: Ledger) -> float:
    """Degree-days of a day with the extremes cut to a cap."""
    del ledger
    return degree_days.degree_days_clipped(
        inputs.number("maximum_c"),
        minimum_c=inputs.number("minimum_c"),
        base_c=inputs.number("base_c"),
        cap_c=inputs.number("cap_c"),
    )


def heat_units(inputs: Inputs, ledger: Ledger) -> float:
    """Heat units of the maximum, folded back above a ceiling."""
    del ledger
    return degree_days.heat_units_of_maximum(
        inputs.number("maximum_f"), base=inputs.number("base_f"), ceiling=inputs.number("ceiling_f")
    )


def days_from_seed(inputs: Inputs, ledger: Ledger) -> float:
    """Days from sowing to the first pick of a crop, as the catalogue has them."""
    fields = ("germination_days", "nursery_days", "spacing_days", "bed_days")
    crop = ledger.crop(inputs.text("crop"), *fields)
    return float(sum(getattr(crop, name) for name in fields))


def shipped_days_in_bed(inputs: Inputs, ledger: Ledger) -> float:
    """Days from moving to the bed to the first pick of a crop, as the catalogue has them."""
    return ledger.crop(inputs.text("crop"), "bed_days").bed_days


def logistic_weight(inputs: Inputs, ledger: Ledger) -> float:
    """Weight on a logistic curve."""
    del ledger
    return growth.logistic_mass(
        inputs.number("day"),
        final=inputs.number("final_g"),
        rate_per_day=inputs.number("rate_per_day"),
        midpoint_day=inputs.number("midpoint_day"),
    )


def logistic_peak(inputs: Inputs, ledger: Ledger) -> float:
    """Fastest growth of a logistic curve."""
    del ledger
    return growth.logistic_peak_rate(
        final=inputs.number("final_g"), rate_per_day=inputs.number("rate_per_day")
    )


def expolinear_weight(inputs: Inputs, ledger: Ledger) -> float:
    """Mass on an expolinear curve."""
    del ledger
    return growth.expolinear_mass(
        inputs.number("day"),
        linear_rate=inputs.number("linear_rate_g_per_m2_d"),
        relative_rate_per_day=inputs.number("relative_rate_per_day"),
        lost_time_days=inputs.number("lost_time_days"),
    )


def gain_share_of_crop(inputs: Inputs, ledger: Ledger) -> float:
    """Weight on a raft day when a crop of the catalogue gains between two weighings as its curve says."""
    crop = ledger.crop(inputs.text("crop"), "growth_midpoint", "growth_steepness")
    nursery, last = inputs.number("nursery_days"), inputs.number("last_day")
    days = np.asarray([inputs.number("first_day"), inputs.number("day"), last])
    share = growth.logistic_share(
        (nursery + days) / (nursery + last), midpoint=crop.growth_midpoint, steepness=crop.growth_steepness
    )
    gained = (share[1] - share[0]) / (share[-1] - share[0])
    first = inputs.number("first_g")
    return first + float(gained) * (inputs.number("last_g") - first)


def _lettuce(ledger: Ledger) -> canopy.LettuceCanopy:
    def row(name: str) -> float:
        return ledger.coefficient(f"growth/canopy_{name}")

    return canopy.LettuceCanopy(
        yield_factor=row("yield_factor"),
        respiration_per_s=row("respiration_per_s"),
        respiration_doubling_per_c=row("respiration_doubling_per_c"),
        respiration_offset=row("respiration_offset"),
        leaf_closure_m2_per_kg=row("leaf_closure_m2_per_kg"),
        light_use_kg_per_j=row("light_use_kg_per_j"),
        conductance_quadratic=row("conductance_quadratic"),
        conductance_linear=row("conductance_linear"),
        conductance_constant=row("conductance_constant"),
        co2_compensation_kg_per_m3=row("co2_compensation_kg_per_m3"),
    )


def canopy_photosynthesis(inputs: Inputs, ledger: Ledger) -> float:
    """Carbon dioxide that a lettuce canopy fixes."""
    return canopy.canopy_photosynthesis(
        inputs.number("dry_kg_per_m2"), canopy=_lettuce(ledger), **_weather(inputs)
    )


def canopy_growth(inputs: Inputs, ledger: Ledger) -> float:
    """Growth of a lettuce canopy."""
    return canopy.canopy_growth(inputs.number("dry_kg_per_m2"), canopy=_lettuce(ledger), **_weather(inputs))


def _weather(inputs: Inputs) -> dict[str, float]:
    return {name: inputs.number(name) for name in ("radiation_w_per_m2", "temperature_c", "co2_kg_per_m3")}


def canopy_after_days(inputs: Inputs, ledger: Ledger) -> float:
    """Dry mass of a lettuce canopy after days of twelve hours of steady sun [g/m²]."""
    step_s, days = inputs.whole("step_s"), inputs.whole("days")
    steps = _SECONDS_A_DAY // step_s
    sunny = np.tile(np.arange(steps) < steps // _HALF, days)
    mass = canopy.canopy_series(
        inputs.number("start_kg_per_m2"),
        radiation_w_per_m2=np.where(sunny, inputs.number("sun_w_per_m2"), 0.0),
        temperature_c=np.where(sunny, inputs.number("day_c"), inputs.number("night_c")),
        co2_kg_per_m3=inputs.number("co2_kg_per_m3"),
        step_s=float(step_s),
        canopy=_lettuce(ledger),
    )
    return float(mass[-1]) * _G_PER_KG


CROPS: Final[dict[str, Computation]] = {
    each.__name__: each
    for each in (
        emergence_by_warmth,
        emergence_foreseen,
        germination_time,
        germination_progress,
        emergence_by_table,
        stand_percent,
        seeds_at_temperature,
        mean_emergence_miss,
        fitted_base,
        fitted_thermal_time,
        degree_day_sum,
        capped_degree_days,
        heat_units,
        days_from_seed,
        shipped_days_in_bed,
        logistic_weight,
        logistic_peak,
        expolinear_weight,
        gain_share_of_crop,
        canopy_photosynthesis,
        canopy_growth,
        canopy_after_days,
    )
}
