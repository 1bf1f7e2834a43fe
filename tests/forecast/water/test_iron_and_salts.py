"""Iron by level, interval and pH; salts that fill gaps and what they bring besides."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.farm.ids import id_from
from planner.farm.species import ELEMENTS
from planner.farm.water import Dose
from planner.forecast.water.iron import Chelate, ChelateFit, chelate_fit, iron_advice, iron_grams
from planner.forecast.water.supplements import fill_gap, gaps_by_element, salt_advice
from tests.farms import LOOP
from tests.forecast.water.loops import RULER, loop_of, on_day

CHELATES = ("iron-edta-13", "iron-eddha-6", "iron-dtpa-11")
SALTS = ("potassium-sulfate", "magnesium-sulfate", "calcium-chloride", "potassium-bicarbonate")


def iron_of(catalogue, *, ph=6.5, doses=(), owned=CHELATES, present=None, day=30):
    return iron_advice(
        loop=LOOP.id,
        water_l=1000.0,
        doses=doses,
        owned=owned,
        ph=ph,
        present_mg_per_l=present,
        today=on_day(day),
        catalogue=catalogue,
    )


def dose_of(key="iron-dtpa-11", *, day, every=0, until=None):
    return Dose(
        id=id_from("dose", key, str(day)),
        loop=LOOP.id,
        supplement=key,
        grams=10.0,
        on=on_day(day),
        every_days=every,
        until_on=None if until is None else on_day(until),
    )


@pytest.mark.parametrize(
    ("agent", "ph", "fit"),
    [
        (Chelate.DTPA, 6.8, ChelateFit.SUITED),
        (Chelate.DTPA, 7.2, ChelateFit.DOUBTFUL),
        (Chelate.DTPA, 7.8, ChelateFit.NOT_SUITED),
        (Chelate.EDDHA, 7.8, ChelateFit.SUITED),
        (Chelate.EDTA, 6.8, ChelateFit.NOT_SUITED),
        (Chelate.DTPA, None, ChelateFit.UNKNOWN),
        (None, 6.5, ChelateFit.UNKNOWN),
    ],
)
def test_that_a_chelate_is_held_against_the_ph(catalogue, agent, ph, fit):
    assert chelate_fit(agent, ph=ph, catalogue=catalogue) is fit


def test_that_the_chelate_for_the_water_comes_first_and_edta_last(catalogue):
    assert iron_of(catalogue, ph=6.5).products[0].supplement == "iron-dtpa-11"
    assert iron_of(catalogue, ph=7.8).products[0].supplement == "iron-eddha-6"
    assert iron_of(catalogue, ph=6.2).products[-1].agent is Chelate.EDTA


def test_that_iron_is_due_after_its_interval_and_at_once_when_never_given(catalogue):
    never = iron_of(catalogue)
    assert (never.last_on, never.due_on) == (None, on_day(30))
    given_once = iron_of(catalogue, doses=(dose_of(day=12), dose_of("potassium-sulfate", day=28)))
    assert (given_once.last_on, given_once.due_on) == (on_day(12), on_day(12 + 21))
    assert given_once.days_late == -3
    repeated = iron_of(catalogue, doses=(dose_of(day=2, every=21),))
    assert repeated.last_on == on_day(23)
    ended = iron_of(catalogue, doses=(dose_of(day=2, every=7, until=10),))
    assert ended.last_on == on_day(9)


def test_that_iron_in_the_water_is_counted(catalogue):
    ways = {"water_l": 1000.0, "catalogue": catalogue}
    full = iron_grams("iron-dtpa-11", present_mg_per_l=None, **ways)
    half = iron_grams("iron-dtpa-11", present_mg_per_l=1.0, **ways)
    assert half.likely == pytest.approx(full.likely / 2)
    assert iron_grams("iron-dtpa-11", present_mg_per_l=5.0, **ways).high == 0.0


@given(st.floats(10, 1e6), st.floats(0, 6), st.sampled_from(CHELATES))
def test_that_iron_grams_are_in_order_and_lift_the_water_to_the_target(catalogue, litres, present, key):
    grams = iron_grams(key, water_l=litres, present_mg_per_l=present, catalogue=catalogue)
    assert 0.0 <= grams.low <= grams.likely <= grams.high
    reached = present + grams.likely * catalogue.supplements[key].fe_share / litres * 1000.0
    assert reached == pytest.approx(max(present, 2.0))


@given(element=st.sampled_from(("k", "ca", "mg")), gap=st.floats(0, 500))
def test_that_a_filled_gap_is_as_large_as_the_gap(catalogue, element, gap):
    ways = fill_gap(element, gap, owned=SALTS, catalogue=catalogue)
    assert ways
    for way in ways:
        assert way.brings_g[ELEMENTS.index(element)] == pytest.approx(gap)
        assert way.grams.low <= way.grams.likely <= way.grams.high


def test_that_what_else_a_salt_brings_is_said(catalogue):
    epsom = fill_gap("mg", 10.0, owned=SALTS, catalogue=catalogue)[0]
    chloride = fill_gap("ca", 10.0, owned=SALTS, catalogue=catalogue)[0]
    # by atomic weights: 96.06/24.305 g sulfate per g Mg, 2 x 35.45/40.078 g chloride per g Ca
    assert epsom.ions_g["sulfate"] == pytest.approx(10.0 * 96.06 / 24.305, rel=1e-3)
    assert chloride.ions_g["chloride"] == pytest.approx(10.0 * 70.9 / 40.078, rel=1e-3)
    assert (epsom.ions_g["sodium"], epsom.base_eq) == (0.0, 0.0)


def test_that_a_salt_without_base_comes_before_a_base(catalogue):
    ways = fill_gap("k", 10.0, owned=SALTS, catalogue=catalogue)
    assert [way.supplement for way in ways] == ["potassium-sulfate", "potassium-bicarbonate"]
    assert ways[1].base_eq == pytest.approx(10.0 / 39.098, rel=1e-3)


def test_that_gaps_nothing_owned_fills_stay(catalogue):
    advice = salt_advice({"k": 20.0, "p": 3.0, "fe": 1.0}, owned=SALTS, catalogue=catalogue)
    assert [fill.supplement for fill in advice.fills] == ["potassium-sulfate"]
    assert advice.unfilled_g == pytest.approx((0.0, 3.0, 0.0, 0.0, 0.0, 1.0))


def test_that_a_gap_below_nothing_is_refused(catalogue):
    with pytest.raises(ValueError, match="gap of k is -1 g"):
        fill_gap("k", -1.0, owned=SALTS, catalogue=catalogue)


def test_that_gaps_are_what_crops_want_beyond_supply_in_the_coming_weeks():
    found = loop_of(plants_n_g=5.0)
    supply = float(found.supply_g[0, 0])
    gaps = gaps_by_element(found, RULER, first_week=2, weeks=4)
    assert gaps["n"] == pytest.approx(7 * (5.0 - supply))
    assert gaps["k"] == 0.0
    assert np.isfinite(list(gaps.values())).all()
