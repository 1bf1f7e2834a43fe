"""Sizing, harvests and schedules against published cases."""

import datetime as dt

import numpy as np
import pytest

from planner.science import schedule, stock
from planner.science.fish import feed_conversion_ratio, ration_for_gain
from planner.science.water import share_replaced_per_day
from tests.science.figures import figure

UVI_AREA_M2, UVI_TANK_M3 = 214.0, 7.8


def test_that_the_manual_chain_from_heads_to_fish_comes_out() -> None:
    """FAO 589 section 8.1.1: 25 heads a week, 4 weeks, 25 a m2, 50 g/m2/d. Ratios read; exact arithmetic."""
    plants = schedule.places_in_use(25 / 7, days_in_place=28)
    area = plants / 25.0
    feed = schedule.feed_for_area_g_per_day(area, ratio_g_per_m2_day=50.0)
    assert plants == pytest.approx(100.0)
    assert area == pytest.approx(4.0)
    assert feed == pytest.approx(200.0)
    fish = [schedule.fish_for_feed_kg(feed, ration_share_per_day=share) for share in (0.02, 0.01)]
    assert fish == pytest.approx([10.0, 20.0])
    assert [schedule.tank_volume_m3(kg, density_kg_per_m3=20.0) for kg in fish] == pytest.approx([0.5, 1.0])
    assert schedule.tank_volume_m3(20.0, density_kg_per_m3=10.0) == pytest.approx(2.0)


def test_that_four_plots_give_25_heads_each_week_from_the_fifth() -> None:
    """FAO 589 section 8.1.1, the weekly bed plan (held from memory, logic only)."""
    present = schedule.plants_present(np.full(8, 25.0), periods_in_place=4)
    assert present.tolist() == [25.0, 50.0, 75.0, 100.0, 100.0, 100.0, 100.0, 100.0]
    planted = schedule.cohort_start_days(first_day=0, interval_days=7, count=8)
    assert (planted + 28)[0] // 7 + 1 == 5


def test_that_the_two_way_feed_rate_ratio_agrees_with_the_guidelines() -> None:
    """Rakocy 2007: 1000 g/d at 60 g/m2/d is 16.7 m2; 200 m2 at 100 g/m2/d is 20 kg/d."""
    assert schedule.area_for_feed_m2(1000.0, ratio_g_per_m2_day=60.0) == pytest.approx(16.7, abs=0.05)
    assert schedule.feed_for_area_g_per_day(200.0, ratio_g_per_m2_day=100.0) == pytest.approx(20_000.0)


@pytest.mark.parametrize(
    ("per_m3", "survival", "weight_g", "density", "per_harvest_kg", "per_year_t"),
    [(77.0, 0.983, 813.8, 61.5, 480.5, 4.16), (154.0, 0.899, 512.5, 70.7, 553.4, 4.78)],
)
def test_that_tank_harvests_give_the_published_year(
    per_m3: float, survival: float, weight_g: float, density: float, per_harvest_kg: float, per_year_t: float
) -> None:
    """Rakocy and others 2004 (update): Nile and red tilapia at UVI, one tank every 6 weeks. 0.5 %."""
    stocked = per_m3 * UVI_TANK_M3
    share = stock.daily_death_share(survival=survival, days=168.0)
    alive = stock.survivors(stocked, death_share_per_day=share, days=168.0)
    harvest = stock.biomass_kg(alive, weight_g=weight_g)
    harvests = schedule.steady_harvests_per_year(interval_days=42.0, days_per_year=364.0)
    assert harvest == pytest.approx(per_harvest_kg, rel=0.005)
    assert stock.stocking_density(harvest, volume_m3=UVI_TANK_M3) == pytest.approx(density, rel=0.005)
    assert harvest * harvests / 1000.0 == pytest.approx(per_year_t, rel=0.005)


@pytest.mark.parametrize(
    ("stocked", "harvest_kg", "start_g", "fcr", "kg_per_day", "ratio", "tolerance"),
    [
        (600.6, 480.5, 79.2, 1.7, 17.5, 81.4, 0.02),
        (1201.2, 553.4, 58.8, 1.8, 20.7, 96.7, 0.01),
    ],
)
def test_that_the_mean_feed_follows_from_growth_and_conversion(
    stocked: float,
    harvest_kg: float,
    start_g: float,
    fcr: float,
    kg_per_day: float,
    ratio: float,
    tolerance: float,
) -> None:
    """Rakocy and others 2004 (basil): 81.4 g/m2/d in the batch trial. Start weights held from memory."""
    gain = harvest_kg - stock.biomass_kg(stocked, weight_g=start_g)
    feed_kg = ration_for_gain(gain, feed_conversion=fcr) / 42.0
    assert feed_kg == pytest.approx(kg_per_day, rel=0.01)
    found = schedule.feed_rate_ratio(feed_kg * 1000.0, area_m2=UVI_AREA_M2)
    assert found == pytest.approx(ratio, rel=tolerance)


def test_that_basil_trials_give_the_published_feed_and_year() -> None:
    """Rakocy and others 2004 (basil, update): weeks a crop, tonnes and feed of both patterns. 0.5 %."""
    for per_year, per_crop, tonnes, weeks in ((25.0, 2.0, 5.34, 4.16), (23.4, 1.8, 5.01, 4.0)):
        interval = schedule.crop_interval_days(per_year, yield_kg_per_m2=per_crop, days_per_year=364.0)
        assert interval / 7.0 == pytest.approx(weeks, rel=0.005)
        found = schedule.yearly_yield_kg(
            per_crop, area_m2=UVI_AREA_M2, interval_days=interval, days_per_year=364.0
        )
        assert found / 1000.0 == pytest.approx(tonnes, rel=0.005)
    for ratio, kg_per_day in ((81.4, 17.4), (99.6, 21.3)):
        feed = schedule.feed_for_area_g_per_day(UVI_AREA_M2, ratio_g_per_m2_day=ratio)
        assert feed / 1000.0 == pytest.approx(kg_per_day, abs=0.05)


def test_that_four_tanks_a_cycle_give_a_harvest_each_sixth_week() -> None:
    """Rakocy 2007: four tanks, 24 weeks, stocked every 6 weeks: harvests in weeks 24, 30, 36, 42, 48."""
    starts = schedule.cohort_start_days(first_day=0, interval_days=42, count=12)
    harvest_weeks = (starts + 168) // 7
    assert harvest_weeks[:5].tolist() == [24, 30, 36, 42, 48]
    assert int((harvest_weeks <= 52).sum()) == 5
    assert schedule.cohort_ages_days(200, start_days=starts, life_days=168).tolist() == [158, 116, 74, 32]
    yearly = schedule.steady_harvests_per_year(interval_days=42, days_per_year=364.0)
    assert yearly == pytest.approx(8.67, abs=0.005)


def test_that_water_levels_follow_from_ration_and_density() -> None:
    """Tellbuscher and others 2024: 1 kg feed at 2 % and 50 kg/m3 is 1000 L; 10 L a kg feed is 1 % a day."""
    fish = schedule.fish_for_feed_kg(1000.0, ration_share_per_day=0.02)
    volume = schedule.tank_volume_m3(fish, density_kg_per_m3=50.0)
    assert volume == pytest.approx(1.0)
    shares = [share_replaced_per_day(litres, volume_m3=volume) for litres in (10.0, 100.0, 1000.0)]
    assert shares == pytest.approx([0.01, 0.1, 1.0])


def test_that_the_unit_of_the_manual_keeps_its_ratios() -> None:
    """FAO 589 appendix 7 (inputs other than the area held from memory): 50 g/m2/d, FCR 2.25, 1.5 % a day."""
    feed = 4500.0 / 30.0
    assert schedule.feed_rate_ratio(feed, area_m2=3.0) == pytest.approx(50.0, rel=0.02)
    assert feed_conversion_ratio(54.0, gain=24.0) == pytest.approx(2.25, rel=0.02)
    assert share_replaced_per_day(450.0 / 30.0, volume_m3=1.0) == pytest.approx(0.015, rel=0.02)


def test_that_a_lower_protein_feed_may_be_fed_at_a_higher_rate() -> None:
    """FAO 589 states the direction; the reference protein is 32 %."""
    reference = figure("ratio_reference_protein_share")
    lean = schedule.ratio_for_protein(50.0, protein_share=0.28, reference_protein_share=reference)
    assert lean > 50.0
    same = schedule.ratio_for_protein(50.0, protein_share=0.32, reference_protein_share=reference)
    assert same == pytest.approx(50.0)


def test_that_seeds_follow_both_rules_of_the_trade() -> None:
    """Market growers' worksheets (x1.2, then / germination) and the division rule; exact, rounded up."""
    assert schedule.seeds_to_sow(200, germination=0.95, survival=0.97) == 218
    assert schedule.seeds_by_allowance(100, allowance_factor=1.2, germination=0.80) == 150
    assert schedule.seeds_to_sow(100, germination=0.12) == 834


def test_that_the_two_loss_rules_differ_as_the_farm_example_shows() -> None:
    """ATTRA-style farm example: 250 heads with 25 % loss is 313 by adding, 334 by dividing."""
    assert schedule.seeds_by_allowance(250, allowance_factor=1.25) == 313
    assert schedule.seeds_to_sow(250, germination=1.0, survival=0.75) == 334


@pytest.mark.parametrize(
    ("spacing_cm", "square", "hexagonal"),
    [(15, 44.4, 51.3), (20, 25.0, 28.9), (25, 16.0, 18.5), (30, 11.1, 12.8)],
)
def test_that_spacing_gives_plants_a_square_metre(spacing_cm: float, square: float, hexagonal: float) -> None:
    """Geometry; growers quote a gain of 13 % for the triangle, bed edges take the rest of 15 %."""
    assert schedule.square_density_per_m2(spacing_cm) == pytest.approx(square, abs=0.1)
    assert schedule.hexagonal_density_per_m2(spacing_cm) == pytest.approx(hexagonal, abs=0.1)
    assert schedule.square_spacing_cm(schedule.square_density_per_m2(spacing_cm)) == pytest.approx(spacing_cm)


def test_that_a_head_is_scheduled_back_from_its_harvest() -> None:
    """Cornell CEA handbook stages (11, 10, 14 d) counted back from Friday 14 March 2025; exact."""
    harvest = dt.date(2025, 3, 14)
    starts = schedule.stage_start_days(0, stage_days=(11, 10, 14))
    dates = [harvest + dt.timedelta(days=int(day)) for day in starts]
    assert dates == [dt.date(2025, 2, 7), dt.date(2025, 2, 18), dt.date(2025, 2, 28)]


def test_that_the_last_sowing_before_short_days_is_found() -> None:
    """UC Master Gardeners of Sonoma County: 60 days, 14 added, ten-hour days end 18 November 2024."""
    start = schedule.stage_start_days(0, stage_days=(60, 14))[0]
    assert dt.date(2024, 11, 18) + dt.timedelta(days=int(start)) == dt.date(2024, 9, 5)


def test_that_the_cropping_year_of_basil_matches_the_trial() -> None:
    """Rakocy and others 2004 (update): 1.8 kg/m2 each 28.1 d on 214 m2: 5.01 t; okra each 83 d. 0.5 %."""
    found = schedule.yearly_yield_kg(1.8, area_m2=UVI_AREA_M2, interval_days=28.1, days_per_year=365.0)
    assert found == pytest.approx(5010.0, rel=0.005)
    okra = schedule.crop_interval_days(13.37, yield_kg_per_m2=3.04, days_per_year=365.0)
    assert okra == pytest.approx(83.0, rel=0.005)
