"""Successions against worked examples in print; each test names its publication."""

from __future__ import annotations

import dataclasses
from datetime import date, timedelta

import numpy as np
import pytest

from planner.catalogue.loading import shipped_catalogue
from planner.farm.crops import Phase
from planner.farm.farm import Farm, OwnEntry, Settings, Shelf
from planner.farm.ids import id_from
from planner.forecast.engine import Forecaster
from planner.planning.cover import Margin, cover
from planner.planning.proposal import Proposal
from planner.planning.seeding import LossRule, SeedRule, SeedWish, plants_of, seeding_for
from planner.planning.succession_wish import SuccessionWish
from planner.planning.successions import propose
from planner.planning.timing import Timer
from planner.planning.wanted import Order, Steady, Want
from planner.science.schedule import area_over_stages_m2, feed_for_area_g_per_day, sowings_for_window
from tests.farms import NURSERY, RAFT, SITE, batch_of, farm_of

FORECASTER = Forecaster(shipped_catalogue())
CROP = "printed-lettuce"
WHOLE = {
    "germination_share": 1.0,
    "nursery_survival_share": 1.0,
    "bed_survival_share": 1.0,
    "marketable_share": 1.0,
    "clearing_days": 0.0,
}
"""A lettuce of which nothing is lost, as worked examples have it."""


def farm_with(first: date, *, weeks: int = 40, **figures: float) -> Farm:
    """Return a farm without a climate, where book days hold, and a lettuce with the printed figures."""
    values = tuple(sorted({**WHOLE, **figures}.items()))
    own = OwnEntry(
        id=id_from("own"),
        shelf=Shelf.CROP,
        key=CROP,
        like="lettuce-butterhead",
        name="Lettuce",
        values=values,
    )
    settings = Settings(id=id_from("settings"), name="Printed", plan_from=first, plan_weeks=weeks)
    beds = (dataclasses.replace(RAFT, units=40), dataclasses.replace(NURSERY, units=20))
    return farm_of(settings=settings, beds=beds, own_entries=(own,))


def planned(farm: Farm, *wants: Want, wish: SuccessionWish | None = None) -> Proposal:
    return propose(farm, FORECASTER, wants, wish=wish)


def test_that_a_head_of_35_days_is_counted_back_from_its_harvest() -> None:
    """Cornell CEA handbook (2013): transplant on day 11, re-space on day 21, harvest on day 35; exact."""
    farm = farm_with(
        date(2025, 1, 6), germination_days=3.0, nursery_days=8.0, spacing_days=10.0, bed_days=14.0
    )
    (sowing,) = planned(farm, Order(crop=CROP, amount=25, on=date(2025, 3, 14))).sowings
    assert sowing.sow_on == date(2025, 2, 7)
    assert sowing.space_on == date(2025, 2, 18)
    assert sowing.move_on == date(2025, 2, 28)
    assert sowing.first_pick_on == date(2025, 3, 14)


def test_that_the_last_sowing_before_short_days_is_found() -> None:
    """UC Master Gardeners of Sonoma County: 60 and 14 days before 18 November 2024: 5 September; exact."""
    farm = farm_with(
        date(2024, 7, 1), germination_days=6.0, nursery_days=20.0, spacing_days=0.0, bed_days=48.0
    )
    (sowing,) = planned(farm, Order(crop=CROP, amount=10, on=date(2024, 11, 18))).sowings
    assert sowing.sow_on == date(2024, 9, 5)


def test_that_the_farm_example_of_250_heads_comes_out_with_its_rule_stated() -> None:
    """Market-growing worksheet: 250 heads in the week of 10 June, 45 d from transplant, 2.5 weeks of nursery.

    Seeded in the week of 7 April, 315 for a quarter lost: it multiplies and rounds to fives; dividing gives
    334. Exact.
    """
    farm = farm_with(
        date(2024, 3, 4), germination_days=3.0, nursery_days=15.0, spacing_days=0.0, bed_days=45.0
    )
    wish = SuccessionWish(seeds=SeedWish(rule=LossRule.ADD, allowance=1.25, per_pot=5))
    (sowing,) = planned(farm, Order(crop=CROP, amount=250, on=date(2024, 6, 10)), wish=wish).sowings
    assert date(2024, 4, 7) <= sowing.sow_on < date(2024, 4, 14)
    assert sowing.seeding.rule.rule is LossRule.ADD
    assert (sowing.seeding.plants, sowing.seeding.seeds_needed, sowing.seeding.seeds) == (250, 313, 315)
    assert seeding_for(250, SeedRule(germination=1.0, survival=0.75)).seeds == 334


def test_that_25_heads_a_week_take_four_plots_of_25_and_a_harvest_from_the_fifth_week() -> None:
    """FAO 589 section 8.1.1: 25 heads a week, 4 weeks, 25 plants and 50 g a m2: 100, 4 m2, 200 g."""
    first = date(2027, 1, 4)
    farm = farm_with(first, germination_days=0.0, nursery_days=0.0, spacing_days=0.0, bed_days=28.0)
    proposal = planned(farm, Steady(crop=CROP, amount_per_week=25, from_on=first, weekday=0))
    assert {sowing.batch.plants for sowing in proposal.sowings} == {25}
    assert proposal.sowings[0].first_pick_on == first + timedelta(weeks=4)
    gaps = {(b.sow_on - a.sow_on).days for a, b in zip(proposal.sowings, proposal.sowings[1:], strict=False)}
    assert gaps == {7}
    in_use = {(run.bed, run.unit) for run in proposal.placements if run.phase is Phase.BED}
    area = len(in_use) * RAFT.area_m2 / RAFT.units
    assert len(in_use) * RAFT.places_per_unit == 100
    assert area == pytest.approx(4.0)
    assert feed_for_area_g_per_day(area, ratio_g_per_m2_day=50.0) == pytest.approx(200.0)
    steady = [week for week in proposal.weeks if week.week >= 4]
    assert {week.foreseen for week in steady} == {25.0}


def test_that_seeds_follow_both_rules_of_the_trade() -> None:
    """Market growers' worksheet: 100 plants x 1.2 / 0.80 is 150; by division 200 / 0.95 / 0.97 is 218."""
    added = SeedRule(germination=0.80, survival=1.0, rule=LossRule.ADD, allowance=1.2)
    assert seeding_for(100, added).seeds == 150
    assert seeding_for(200, SeedRule(germination=0.95, survival=0.97)).seeds == 218


def test_that_hot_seed_beds_take_eight_times_the_seed() -> None:
    """Harrington and Minges 1954: 12 % normal lettuce seedlings at 30 degC: 834 for 100 plants; exact."""
    assert seeding_for(100, SeedRule(germination=0.12, survival=1.0)).seeds == 834


def test_that_1200_seeds_give_960_transplants() -> None:
    """Rutgers University (rutgers-lettuce): of 1,200 sown 960 are moved on; exact."""
    rule = SeedRule(germination=1.0, survival=0.8)
    assert plants_of(1200, rule) == 960
    assert seeding_for(960, rule).seeds == 1200


def test_that_two_spacings_save_a_quarter_of_the_area() -> None:
    """Rutgers University (rutgers-lettuce): 81 plants a m2 for 10 d, 28 for 14 d. Geometry, 1 %."""
    weekly = 70.0
    first = area_over_stages_m2(weekly, stage_days=(10,), densities_per_m2=(81.0,))
    both = area_over_stages_m2(weekly, stage_days=(10, 14), densities_per_m2=(81.0, 28.0))
    single = area_over_stages_m2(weekly, stage_days=(24,), densities_per_m2=(28.0,))
    assert first == pytest.approx(1.23, rel=0.01)
    assert both == pytest.approx(6.2, rel=0.01)
    assert single == pytest.approx(8.6, rel=0.01)
    assert 1.0 - both / single == pytest.approx(0.27, abs=0.01)


@pytest.mark.parametrize(("period_weeks", "window_weeks"), [(9, 1), (30, 10), (26, 6), (13, 13)])
def test_that_sowings_are_the_supply_period_over_the_harvest_window(
    period_weeks: int, window_weeks: int
) -> None:
    """ATTRA 2008: number of plantings is the supply period over the harvest window, rounded up; exact."""

    @dataclasses.dataclass(frozen=True)
    class Sown:
        per_plant: np.ndarray

    def offers(week: int) -> list[Sown]:
        weeks = np.arange(period_weeks)
        return [Sown(((weeks >= week) & (weeks < week + window_weeks)).astype(np.float64))]

    wanted, nothing = np.full(period_weeks, 20.0), np.zeros(period_weeks)
    found = cover(wanted, nothing, offers=offers, margin=Margin(headroom=0.0, most_over=0.0))
    assert len(found.sown) == sowings_for_window(period_weeks * 7.0, harvest_window_days=window_weeks * 7.0)


def test_that_spring_sowings_ripen_closer_together_than_they_are_sown_and_autumn_ones_further_apart() -> None:
    """ATTRA 2008: spring sowings two weeks apart ripen closer; late in the year two days become weeks.

    Only the direction is held against print: the examples are of fields elsewhere.
    """
    site = dataclasses.replace(
        SITE,
        latitude_deg=38.0,
        air_c=(8.0, 9.0, 11.0, 14.0, 18.0, 22.0, 24.0, 24.0, 21.0, 16.0, 11.0, 8.0),
    )
    timer = Timer(farm_of(sites=(site,)), FORECASTER)
    course = timer.course(batch_of())

    def ripen_apart(on: date) -> int:
        day = timer.ruler.day_of(on)
        return course.first_pick(day + 14) - course.first_pick(day)

    assert ripen_apart(date(2027, 3, 1)) < 14
    assert ripen_apart(date(2026, 9, 10)) > 14
