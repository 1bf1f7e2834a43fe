"""Uptake, water and work against published cases."""

import numpy as np
import pytest

from planner.science import labour, schedule, uptake


def test_that_a_lettuce_head_holds_and_drinks_what_is_published() -> None:
    """Langenfeld and others 2022: 150 g, 4 % dry, 4.5 % N: 0.27 g N, 2.0 L at 3 g/L (1.5 to 4 L seen)."""
    dry = uptake.dry_mass_g(150.0, dry_share=0.04)
    assert uptake.element_uptake_g(dry, tissue_g_per_g=0.045) == pytest.approx(0.27)
    drunk = uptake.water_for_dry_mass_l(dry, water_use_g_per_l=3.0)
    assert drunk == pytest.approx(2.0)
    per_head = uptake.water_for_yield_l(150.0, water_l_per_kg=20.0)
    assert per_head == pytest.approx(3.0)
    assert 1.5 <= min(drunk, per_head) <= max(drunk, per_head) <= 4.0


def test_that_balanced_solutions_are_those_of_the_paper() -> None:
    """Langenfeld and others 2022: N 4 %, K 6 %, P 0.6 %, Ca 1 %, Mg 0.4 % at 3 and 6 g/L; exact."""
    tissue = np.array([0.04, 0.06, 0.006, 0.01, 0.004])
    dry_air = uptake.balanced_concentration_mg_per_l(tissue, water_use_g_per_l=3.0)
    humid_air = uptake.balanced_concentration_mg_per_l(tissue, water_use_g_per_l=6.0)
    assert dry_air == pytest.approx([120.0, 180.0, 18.0, 30.0, 12.0])
    assert humid_air == pytest.approx([240.0, 360.0, 36.0, 60.0, 24.0])


def test_that_one_plant_stands_behind_all_its_nutrients() -> None:
    """Beninni and others: mg per plant over g per kg gives 12.97 g dry for six elements; spread 0.5 %."""
    per_plant_mg = np.array([581.1, 110.6, 1135.8, 133.8, 43.0, 30.1])
    g_per_kg = np.array([44.80, 8.54, 87.42, 10.29, 3.31, 2.32])
    dry = uptake.dry_mass_behind_uptake_g(per_plant_mg / 1000.0, tissue_g_per_g=g_per_kg / 1000.0)
    assert dry == pytest.approx(np.full(6, 12.97), rel=0.005)


def test_that_arizona_lettuce_draws_its_published_water() -> None:
    """Barbosa and others 2015: 41 kg/m2/year at 20 L/kg is 820 L, 2.25 L/m2/d; exact."""
    yearly = uptake.water_for_yield_l(41_000.0, water_l_per_kg=20.0)
    assert [yearly, yearly / 365.0] == pytest.approx([820.0, 2.25], rel=0.005)


def test_that_tomato_beds_remove_their_published_nutrients() -> None:
    """Graber and Junge 2009: 0.43 N, 0.07 P, 0.40 K g/m2/d on 100 m2 for 100 d: 4.3, 0.7, 4.0 kg; exact."""
    rates = np.array([0.43, 0.07, 0.40])
    found = uptake.removal_g(np.full(3, 100.0), rate_g_per_m2_day=rates, days=100.0)
    assert found / 1000.0 == pytest.approx([4.3, 0.7, 4.0])


def test_that_leafy_raft_uptake_lies_in_the_published_envelope() -> None:
    """Lettuce of 25/m2, 200 g, 5 % dry, 28 d tissue of Seawright 1998: P 0.094, K 0.94 g/m2/d; 2 %."""
    dry_per_day = uptake.dry_mass_g(200.0 * 25.0 / 28.0, dry_share=0.05)
    assert dry_per_day == pytest.approx(8.9, abs=0.05)
    found = uptake.element_uptake_g(
        np.full(4, dry_per_day), tissue_g_per_g=np.array([0.0105, 0.105, 0.020, 0.0032])
    )
    assert found == pytest.approx([0.094, 0.94, 0.18, 0.029], rel=0.02)


def test_that_a_transplanting_line_has_its_published_pace() -> None:
    """Bartok 2017: 1200 flats by 4 people in 8 h: 37.5 an hour, 1.6 min and 26.7 cents each; exact."""
    pace = labour.units_per_person_hour(1200.0, people=4, hours=8.0)
    assert pace == pytest.approx(37.5)
    assert labour.minutes_for(1.0, units_per_hour=pace) == pytest.approx(1.6)
    assert labour.cost_per_unit(10.0, units_per_hour=pace) == pytest.approx(0.267, abs=0.0005)


def test_that_seed_counts_turn_metric() -> None:
    """Seed lists: 8100 broccoli seeds an ounce are 285.7 a gram; 0.1."""
    assert labour.seeds_per_gram(8100.0) == pytest.approx(285.7, abs=0.1)


def test_that_staged_spacing_needs_the_area_of_each_stage() -> None:
    """Cornell CEA handbook spacing (97 then 38 plants a m2, 10 and 14 days; densities from memory)."""
    area = schedule.area_over_stages_m2(700.0, stage_days=(10, 14), densities_per_m2=(97.0, 38.0))
    assert area == pytest.approx(100.0 * (10 / 97 + 14 / 38))
    crowded = schedule.area_over_stages_m2(700.0, stage_days=(24,), densities_per_m2=(38.0,))
    assert area < crowded
