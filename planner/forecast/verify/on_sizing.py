"""Computations on counts, spacing, sizing and cohorts."""

from __future__ import annotations

from typing import Final

import numpy as np

from planner.forecast.values import Floats
from planner.forecast.verify.ledger import Computation, Inputs, Ledger
from planner.science import fish, growth, schedule, spacing, stock

_G_PER_KG: Final = 1000.0
_KG_PER_T: Final = 1000.0
_DAYS_PER_WEEK: Final = 7
_PERCENT: Final = 100.0


def plants_in_bed(inputs: Inputs, ledger: Ledger) -> float:
    """Plants that stand in a bed when a number is cut each week."""
    del ledger
    per_day = inputs.number("heads_per_week") / _DAYS_PER_WEEK
    return schedule.places_in_use(per_day, days_in_place=inputs.number("days_in_bed"))


def bed_area(inputs: Inputs, ledger: Ledger) -> float:
    """Area of the bed of that chain."""
    return plants_in_bed(inputs, ledger) / inputs.number("plants_per_m2")


def chain_feed(inputs: Inputs, ledger: Ledger) -> float:
    """Daily feed that the bed of that chain asks for."""
    ratio = inputs.number("ratio_g_per_m2_day")
    return schedule.feed_for_area_g_per_day(bed_area(inputs, ledger), ratio_g_per_m2_day=ratio)


def chain_fish(inputs: Inputs, ledger: Ledger) -> float:
    """Fish that eat the feed of that chain."""
    feed = chain_feed(inputs, ledger)
    return schedule.fish_for_feed_kg(feed, ration_share_per_day=inputs.number("ration_share_per_day"))


def chain_tank(inputs: Inputs, ledger: Ledger) -> float:
    """Tank for the fish of that chain at the shipped limit of density."""
    density = ledger.value(f"fish/{inputs.text('fish')}/{inputs.text('limit')}")
    return schedule.tank_volume_m3(chain_fish(inputs, ledger), density_kg_per_m3=density)


def plants_present(inputs: Inputs, ledger: Ledger) -> float:
    """Plants in the bed in a week when the same number is planted every week."""
    del ledger
    week = inputs.whole("week")
    planted = np.full(week, inputs.number("planted_per_week"))
    return float(schedule.plants_present(planted, periods_in_place=inputs.whole("weeks_in_bed"))[-1])


def area_for_feed(inputs: Inputs, ledger: Ledger) -> float:
    """Bed that a feed carries at the shipped ratio of a kind of system."""
    ratio = ledger.coefficient(f"sizing/feed_rate_ratio_{inputs.text('system')}")
    return schedule.area_for_feed_m2(inputs.number("feed_g_per_day"), ratio_g_per_m2_day=ratio)


def feed_for_area(inputs: Inputs, ledger: Ledger) -> float:
    """Feed that a bed asks for at a ratio."""
    del ledger
    return schedule.feed_for_area_g_per_day(
        inputs.number("area_m2"), ratio_g_per_m2_day=inputs.number("ratio_g_per_m2_day")
    )


def ratio_of_feed(inputs: Inputs, ledger: Ledger) -> float:
    """Feed-rate ratio of a feed and an area."""
    del ledger
    return schedule.feed_rate_ratio(inputs.number("feed_g_per_day"), area_m2=inputs.number("area_m2"))


def band_edge(inputs: Inputs, ledger: Ledger) -> float:
    """Edge of a published feed-rate band as it is shipped."""
    path = f"feed_rate/{inputs.text('band')}"
    ledger.value(path)
    figure = ledger.catalogue.figure(path)
    return figure.low if inputs.text("edge") == "low" else figure.high


def water_of_feed(inputs: Inputs, ledger: Ledger) -> float:
    """Water that the fish of a feed stand in."""
    del ledger
    kg = schedule.fish_for_feed_kg(
        inputs.number("feed_g_per_day"), ration_share_per_day=inputs.number("ration_share_per_day")
    )
    return schedule.tank_volume_m3(kg, density_kg_per_m3=inputs.number("density_kg_per_m3"))


def tank_harvest(inputs: Inputs, ledger: Ledger) -> float:
    """Fish that one tank gives at harvest [kg]."""
    del ledger
    days = inputs.number("days")
    share = stock.daily_death_share(survival=inputs.number("survival"), days=days)
    stocked = inputs.number("fish_per_m3") * inputs.number("tank_m3")
    alive = stock.survivors(stocked, death_share_per_day=share, days=days)
    return stock.biomass_kg(alive, weight_g=inputs.number("weight_g"))


def harvest_density(inputs: Inputs, ledger: Ledger) -> float:
    """Density of one tank at harvest."""
    return stock.stocking_density(tank_harvest(inputs, ledger), volume_m3=inputs.number("tank_m3"))


def yearly_fish(inputs: Inputs, ledger: Ledger) -> float:
    """Fish of a year of staggered tanks [t]."""
    return tank_harvest(inputs, ledger) * _harvests(inputs) / _KG_PER_T


def harvests_a_year(inputs: Inputs, ledger: Ledger) -> float:
    """Harvests of a year of staggered tanks."""
    del ledger
    return _harvests(inputs)


def _harvests(inputs: Inputs) -> float:
    return schedule.steady_harvests_per_year(
        interval_days=inputs.number("interval_days"), days_per_year=inputs.number("days_per_year")
    )


def ratio_of_tanks(inputs: Inputs, ledger: Ledger) -> float:
    """Mean feed-rate ratio of staggered tanks, from growth and feed conversion."""
    stocked = inputs.number("fish_per_m3") * inputs.number("tank_m3")
    start_kg = stock.biomass_kg(stocked, weight_g=inputs.number("start_g"))
    feed_kg = fish.ration_for_gain(
        tank_harvest(inputs, ledger) - start_kg, feed_conversion=inputs.number("feed_conversion")
    )
    per_day = feed_kg * _G_PER_KG / inputs.number("interval_days")
    return schedule.feed_rate_ratio(per_day, area_m2=inputs.number("area_m2"))


def harvest_week(inputs: Inputs, ledger: Ledger) -> float:
    """Week of a harvest of tanks stocked in turn."""
    del ledger
    starts = schedule.cohort_start_days(
        first_day=0, interval_days=inputs.whole("interval_days"), count=inputs.whole("harvest")
    )
    return float(starts[-1] + inputs.whole("life_days")) / _DAYS_PER_WEEK


def cohort_age(inputs: Inputs, ledger: Ledger) -> float:
    """Age on a day of one of the cohorts present, the oldest first."""
    del ledger
    starts = schedule.cohort_start_days(
        first_day=0, interval_days=inputs.whole("interval_days"), count=inputs.whole("stockings")
    )
    ages = schedule.cohort_ages_days(
        inputs.whole("day"), start_days=starts, life_days=inputs.whole("life_days")
    )
    return inputs.pick(ages.astype(np.float64), "cohort")


def feed_steadiness(inputs: Inputs, ledger: Ledger) -> float:
    """Lowest over highest weekly feed of staggered cohorts, by the chart of the catalogue."""
    total = _weekly_feed(inputs, ledger)
    return float(total.min() / total.max())


def _weekly_feed(inputs: Inputs, ledger: Ledger) -> Floats:
    """Feed of staggered cohorts in each week from one harvest to the next, by the chart of the catalogue."""
    first, weeks, cohorts = (inputs.whole(name) for name in ("first_week", "weeks", "cohorts"))
    chart = ledger.feeding_table(inputs.text("table"))
    grams = np.asarray(chart.weights_g) * np.asarray(chart.percent_per_day[0])
    life = grams[first - 1 : first - 1 + weeks]
    total: Floats = life.reshape(cohorts, weeks // cohorts).sum(axis=0)
    return total


def feed_drop(inputs: Inputs, ledger: Ledger) -> float:
    """Share by which the feed of staggered cohorts falls when one is harvested [%]."""
    total = _weekly_feed(inputs, ledger)
    return _PERCENT * float(1.0 - total[0] / total[-1])


def feed_variation(inputs: Inputs, ledger: Ledger) -> float:
    """Standard deviation over mean of the weekly feed of staggered cohorts [%]."""
    total = _weekly_feed(inputs, ledger)
    return _PERCENT * float(total.std() / total.mean())


def crop_interval_weeks(inputs: Inputs, ledger: Ledger) -> float:
    """Weeks from one crop to the next, from yields a crop and a year."""
    del ledger
    days = schedule.crop_interval_days(
        inputs.number("yearly_kg_per_m2"),
        yield_kg_per_m2=inputs.number("crop_kg_per_m2"),
        days_per_year=inputs.number("days_per_year"),
    )
    return days / _DAYS_PER_WEEK


def yearly_crop(inputs: Inputs, ledger: Ledger) -> float:
    """Yield of a year from the yield of a crop [kg]."""
    del ledger
    return schedule.yearly_yield_kg(
        inputs.number("crop_kg_per_m2"),
        area_m2=inputs.number("area_m2"),
        interval_days=inputs.number("interval_days"),
        days_per_year=inputs.number("days_per_year"),
    )


def shipped_yearly_crop(inputs: Inputs, ledger: Ledger) -> float:
    """Yield of a year on a square metre by the durations of a crop of the catalogue [kg/m²]."""
    crop = ledger.crop(
        inputs.text("crop"),
        "bed_density_per_m2",
        "yield_g_per_plant",
        "bed_days",
        "picking_days",
        "clearing_days",
    )
    return schedule.yearly_yield_kg(
        crop.bed_density_per_m2 * crop.yield_g_per_plant / _G_PER_KG,
        area_m2=1.0,
        interval_days=crop.bed_days + crop.picking_days + crop.clearing_days,
        days_per_year=inputs.number("days_per_year"),
    )


def shipped_yearly_basil(inputs: Inputs, ledger: Ledger) -> float:
    """The same against one of the cropping patterns of a trial, which is only named."""
    inputs.text("pattern")
    return shipped_yearly_crop(inputs, ledger)


def shipped_plant_yield(inputs: Inputs, ledger: Ledger) -> float:
    """Fresh mass that the catalogue says one plant gives [g]; a pH, where one is named, changes nothing."""
    if inputs.has("ph"):
        inputs.number("ph")
    return ledger.crop(inputs.text("crop"), "yield_g_per_plant").yield_g_per_plant


def shipped_bed_yield(inputs: Inputs, ledger: Ledger) -> float:
    """Fresh mass of a crop that is cut once on a square metre at a density, neighbours counted [kg/m²]."""
    key, density = inputs.text("crop"), inputs.number("plants_per_m2")
    crop = ledger.crop(key, "yield_g_per_plant", "dry_matter_share", "harvest_share", "bed_density_per_m2")
    size = spacing.size_by_room(
        density,
        own_density=crop.bed_density_per_m2,
        own_mass_kg=crop.yield_g_per_plant * crop.dry_matter_share / crop.harvest_share / _G_PER_KG,
        closure_m2_per_kg=ledger.coefficient("growth/spacing_closure_m2_per_kg"),
    )
    return size * crop.yield_g_per_plant * density / _G_PER_KG


def shipped_daily_yield(inputs: Inputs, ledger: Ledger) -> float:
    """Fresh mass a day on a square metre, over picking and a share of the days before it [g/m²/d]."""
    crop = ledger.crop(inputs.text("crop"), "yield_g_per_plant", "bed_days", "picking_days")
    days = crop.picking_days + inputs.number("growing_days_share") * crop.bed_days
    return crop.yield_g_per_plant * inputs.number("plants_per_m2") / days


def seeds_by_division(inputs: Inputs, ledger: Ledger) -> float:
    """Seeds for plants, losses divided out."""
    del ledger
    return float(
        schedule.seeds_to_sow(
            inputs.number("plants"),
            germination=inputs.number("germination"),
            survival=inputs.number("survival"),
        )
    )


def seeds_by_allowance(inputs: Inputs, ledger: Ledger) -> float:
    """Seeds for plants, with an allowance added."""
    del ledger
    return float(
        schedule.seeds_by_allowance(
            inputs.number("plants"),
            allowance_factor=inputs.number("allowance_factor"),
            germination=inputs.number("germination"),
        )
    )


def square_density(inputs: Inputs, ledger: Ledger) -> float:
    """Plants on a square metre, in squares."""
    del ledger
    return schedule.square_density_per_m2(inputs.number("spacing_cm"))


def triangle_density(inputs: Inputs, ledger: Ledger) -> float:
    """Plants on a square metre, in triangles."""
    del ledger
    return schedule.hexagonal_density_per_m2(inputs.number("spacing_cm"))


def days_before_harvest(inputs: Inputs, ledger: Ledger) -> float:
    """Days before harvest on which a stage begins."""
    del ledger
    starts = schedule.stage_start_days(0, stage_days=[int(days) for days in inputs.numbers("stage_days")])
    return -inputs.pick(starts.astype(np.float64), "stage")


def demand_peak(inputs: Inputs, ledger: Ledger) -> float:
    """Highest over mean weekly demand of cohorts of a crop of the catalogue, a week apart or all at once."""
    crop = ledger.crop(inputs.text("crop"), "growth_midpoint", "growth_steepness")
    weeks = inputs.whole("weeks_in_bed")
    nodes = np.arange(weeks * _DAYS_PER_WEEK + 1) / (weeks * _DAYS_PER_WEEK)
    share = growth.logistic_share(nodes, midpoint=crop.growth_midpoint, steepness=crop.growth_steepness)
    one = growth.daily_increments(share).reshape(weeks, _DAYS_PER_WEEK).sum(axis=1)
    weekly = _staggered(one, inputs.whole("cohorts"))
    return float(weekly.max() / weekly.mean())


def _staggered(one: Floats, cohorts: int) -> Floats:
    total: Floats = np.sum([np.roll(one, week) for week in range(cohorts)], axis=0)
    return total


SIZING: Final[dict[str, Computation]] = {
    each.__name__: each
    for each in (
        plants_in_bed,
        bed_area,
        chain_feed,
        chain_fish,
        chain_tank,
        plants_present,
        area_for_feed,
        feed_for_area,
        ratio_of_feed,
        band_edge,
        water_of_feed,
        tank_harvest,
        harvest_density,
        yearly_fish,
        harvests_a_year,
        ratio_of_tanks,
        harvest_week,
        cohort_age,
        feed_steadiness,
        feed_drop,
        feed_variation,
        crop_interval_weeks,
        yearly_crop,
        shipped_yearly_crop,
        shipped_yearly_basil,
        shipped_plant_yield,
        shipped_bed_yield,
        shipped_daily_yield,
        seeds_by_division,
        seeds_by_allowance,
        square_density,
        triangle_density,
        days_before_harvest,
        demand_peak,
    )
}
