"""Bases: shared so that gaps are filled first, in doses that do not shake the fish."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise, product

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import linprog

from planner.catalogue.catalogue import Catalogue
from planner.forecast.water.bases import (
    BaseKind,
    Before,
    base_advice,
    base_kind,
    base_to_raise_alkalinity_g,
    before_base,
    carbon_dioxide_used,
    owned_bases,
)
from planner.forecast.water.chemistry import chemistry_of, dose_for_ph_step_eq_per_l
from planner.forecast.water.dosing import DosePart, WaterNow, dose_figures, dose_plan
from planner.forecast.water.mixing import MixProblem, fill_gaps
from planner.forecast.water.spans import Span, exactly

WATER = WaterNow(water_l=4000.0, ph=6.5, alkalinity_mg_per_l=50.0, tan_mg_per_l=0.2)
ALL_BASES = (
    "potassium-hydroxide",
    "calcium-hydroxide",
    "potassium-carbonate",
    "potassium-bicarbonate",
    "calcium-carbonate",
    "dolomite",
    "magnesium-hydroxide",
)
shelves = st.lists(st.sampled_from(ALL_BASES), min_size=1, max_size=7, unique=True)
TIE = 1.001e-3
"""Aims nearer than a thousandth are a tie."""
grams_wanted = st.one_of(st.just(0.0), st.floats(0.5, 300.0))


def advice_of(catalogue, *owned, need=2.0, k=0.0, ca=0.0, mg=0.0, water=WATER):
    need_eq = need if isinstance(need, Span) else exactly(need)
    return base_advice(
        need_eq, owned=owned, gaps_g={"k": k, "ca": ca, "mg": mg}, water=water, catalogue=catalogue
    )


def with_soda(catalogue) -> Catalogue:
    soda = replace(
        catalogue.supplements["potassium-bicarbonate"],
        key="soda",
        formula="NaHCO3",
        k_share=0.0,
        base_eq_per_kg=11.904,
    )
    rows = dict(catalogue.figures)
    rows["supplement/soda/base_eq_per_kg"] = replace(
        rows["supplement/potassium-bicarbonate/base_eq_per_kg"], value=11.904, low=11.904, high=11.904
    )
    return replace(catalogue, supplements={**catalogue.supplements, "soda": soda}, figures=rows)


# Grams of potassium, calcium and magnesium per equivalent, by atomic weights (IUPAC 2021).
PER_EQUIVALENT = {
    "potassium": (39.098, 0.0, 0.0),
    "calcium": (0.0, 40.078 / 2, 0.0),
    "magnesium": (0.0, 0.0, 24.305 / 2),
    "dolomite": (0.0, 40.078 / 4, 24.305 / 4),
}


def problem_of(catalogue, keys, equivalents, gaps):
    bases = owned_bases(keys, catalogue)
    eq_per_g = np.array([base.base_eq_per_kg / 1000.0 for base in bases])
    contents = np.array([PER_EQUIVALENT[base.key.split("-")[0]] for base in bases])
    return MixProblem(
        equivalents=equivalents,
        eq_per_g=eq_per_g,
        harsh=np.array([float(base_kind(base) is BaseKind.HYDROXIDE) for base in bases]),
        content=contents.T * eq_per_g,
        gap_g=np.array(gaps),
        rank=(0, 0, 1),
    )


def unfilled_share(problem, grams, elements=(0, 1)):
    brought = problem.content @ grams
    return sum(
        max(1.0 - brought[element] / problem.gap_g[element], 0.0)
        for element in elements
        if problem.gap_g[element] > 0.0
    )


def solved_by_steps(problem):
    """The same aims, one after the other, by a general solver: each aim is held while the next is sought."""
    wanted = np.flatnonzero(problem.gap_g > 0.0)
    products = problem.eq_per_g.size
    weights = np.zeros((4, products + wanted.size))
    for place, element in enumerate(wanted):
        weights[0 if problem.rank[element] == 0 else 2, products + place] = 1.0
    weights[1, :products] = problem.harsh
    weights[3, :products] = 1.0
    share = problem.content[wanted] / problem.eq_per_g * problem.equivalents / problem.gap_g[wanted][:, None]
    above = [np.concatenate((np.ones(products), np.zeros(wanted.size)))]
    bounds = [1.0]
    for place in range(wanted.size):
        above.append(-np.concatenate((share[place], np.eye(wanted.size)[place])))
        bounds.append(-1.0)
    reached = []
    for aim in weights:
        found = linprog(aim, A_ub=np.array(above), b_ub=np.array(bounds), method="highs")
        assert found.success
        reached.append(found.fun)
        above.append(aim)
        bounds.append(found.fun + 1e-6)
    return reached


@given(keys=shelves, need=st.floats(0.1, 20.0), gaps=st.tuples(grams_wanted, grams_wanted, grams_wanted))
def test_that_the_corners_reach_what_a_general_solver_reaches(catalogue, keys, need, gaps):
    problem = problem_of(catalogue, keys, need, gaps)
    grams = fill_gaps(problem)
    assert np.all(grams >= 0.0)
    assert float(grams @ problem.eq_per_g) <= need * (1 + 1e-6)
    if not any(gaps):
        assert not grams.any()
        return
    first, harsh, last, _ = solved_by_steps(problem)
    ours = unfilled_share(problem, grams), float((grams * problem.eq_per_g) @ problem.harsh) / need
    assert first - 1e-6 <= ours[0] <= first + TIE
    assert ours[1] <= harsh + TIE
    if ours == pytest.approx((first, harsh), abs=1e-4):
        assert unfilled_share(problem, grams, (2,)) <= last + 2 * TIE


@pytest.mark.parametrize("gaps", [(30.0, 0.0, 0.0), (30.0, 20.0, 0.0), (300.0, 200.0, 5.0), (5.0, 60.0, 9.0)])
def test_that_no_mix_on_a_fine_grid_fills_more(catalogue, gaps):
    keys = ("potassium-hydroxide", "calcium-hydroxide", "potassium-bicarbonate")
    problem = problem_of(catalogue, keys, 2.0, gaps)
    best = unfilled_share(problem, fill_gaps(problem))
    steps = np.linspace(0.0, 1.0, 41)
    tried = [
        unfilled_share(problem, np.array(shares) * problem.equivalents / problem.eq_per_g)
        for shares in product(steps, repeat=3)
        if sum(shares) <= 1.0 + 1e-12
    ]
    assert len(tried) > 10_000
    assert best <= min(tried) + TIE


@given(
    keys=shelves,
    low=st.floats(0, 3),
    more=st.floats(0, 5),
    most=st.floats(0, 5),
    k=grams_wanted,
    ca=grams_wanted,
)
def test_that_grams_close_to_the_equivalents_and_to_the_gaps(catalogue, keys, low, more, most, k, ca):
    need = Span(low=low, likely=low + more, high=low + more + most)
    advice = advice_of(catalogue, *keys, need=need, k=k, ca=ca)
    for bound in ("low", "likely", "high"):
        given_eq = sum(getattr(share.eq_per_week, bound) for share in advice.bases)
        assert given_eq == pytest.approx(getattr(need, bound), rel=1e-6, abs=1e-9)
    for place, gap in ((2, k), (3, ca)):
        brought = sum(share.brings_g[place] for share in advice.bases)
        assert advice.unfilled_g[place] == pytest.approx(max(gap - brought, 0.0), abs=1e-9)
    for share in advice.bases:
        assert 0.0 <= share.grams_per_week.low <= share.grams_per_week.likely <= share.grams_per_week.high
        content = catalogue.supplements[share.supplement].base_eq_per_kg / 1000.0
        assert share.eq_per_week.likely == pytest.approx(share.grams_per_week.likely * content)


@given(keys=shelves, need=st.floats(0.05, 30), k=grams_wanted, ca=grams_wanted)
def test_that_doses_and_what_did_not_fit_are_the_need_and_no_dose_passes_its_cap(
    catalogue, keys, need, k, ca
):
    advice = advice_of(catalogue, *keys, need=need, k=k, ca=ca)
    caps = {share.supplement: share.cap_g for share in advice.bases}
    assert sum(dose.eq for dose in advice.doses) + advice.left_over_eq == pytest.approx(need, rel=1e-6)
    assert all(0.0 < dose.grams <= caps[dose.supplement] * (1 + 1e-9) for dose in advice.doses)
    days = [dose.day for dose in advice.doses]
    assert len(set(days)) == len(days)
    assert all(0 <= day <= 6 for day in days)


def test_that_potassium_is_filled_before_the_rest_is_shared(catalogue):
    owned = ("potassium-bicarbonate", "calcium-hydroxide")
    advice = advice_of(catalogue, *owned, need=2.0, k=50.0)
    by_key = {share.supplement: share for share in advice.bases}
    # 50 g K is 1.279 eq as bicarbonate; the 0.721 eq left are shared half and half
    assert advice.unfilled_g[2] == 0.0
    assert by_key["potassium-bicarbonate"].eq_per_week.likely == pytest.approx(1.279 + 0.3606, abs=0.001)
    assert by_key["calcium-hydroxide"].eq_per_week.likely == pytest.approx(0.3606, abs=0.001)


def test_that_without_gaps_potassium_and_calcium_take_turns(catalogue):
    advice = advice_of(catalogue, "potassium-hydroxide", "calcium-hydroxide", need=3.0)
    halves = {share.supplement: share.eq_per_week.likely for share in advice.bases}
    assert halves == pytest.approx({"potassium-hydroxide": 1.5, "calcium-hydroxide": 1.5})
    in_turn = [dose.supplement for dose in advice.doses]
    assert all(one != other for one, other in pairwise(in_turn))


def test_that_gentle_bases_come_before_harsh_ones(catalogue):
    owned = ("potassium-hydroxide", "potassium-bicarbonate", "calcium-hydroxide", "calcium-carbonate")
    advice = advice_of(catalogue, *owned, need=2.0, k=20.0, ca=10.0)
    assert {share.supplement for share in advice.bases} == {"potassium-bicarbonate", "calcium-carbonate"}


def test_that_a_harsh_base_is_used_and_its_caution_said_when_only_it_fills_the_gap(catalogue):
    advice = advice_of(catalogue, "potassium-bicarbonate", "calcium-hydroxide", need=2.0, ca=10.0)
    lime = next(share for share in advice.bases if share.supplement == "calcium-hydroxide")
    assert lime.brings_g[3] >= 10.0
    assert lime.cautions == ("caustic-bases",)


def test_that_chalk_waits_for_acid_water(catalogue):
    owned = ("calcium-carbonate", "calcium-hydroxide")
    neutral = replace(WATER, ph=7.1)
    assert [s.supplement for s in advice_of(catalogue, *owned, water=neutral).bases] == ["calcium-hydroxide"]
    alone = advice_of(catalogue, "calcium-carbonate", water=neutral).bases
    assert [(share.supplement, share.slow) for share in alone] == [("calcium-carbonate", True)]


def test_that_sodium_is_given_only_when_nothing_else_is_owned(catalogue):
    book = with_soda(catalogue)
    both = advice_of(book, "soda", "potassium-hydroxide")
    assert [share.supplement for share in both.bases] == ["potassium-hydroxide"]
    alone = advice_of(book, "soda")
    assert [share.kind for share in alone.bases] == [BaseKind.SODIUM]


def test_that_with_no_base_owned_all_of_the_need_is_left_over(catalogue):
    advice = advice_of(catalogue, "magnesium-sulfate", need=2.0, k=5.0)
    assert (advice.bases, advice.doses, advice.left_over_eq) == ((), (), 2.0)
    assert advice.unfilled_g[2] == 5.0


@pytest.mark.parametrize(
    ("change", "before", "hold"),
    [
        ({}, (), False),
        ({"tan_mg_per_l": 2.0}, (Before.AMMONIA_HIGH,), True),
        ({"tan_mg_per_l": None}, (Before.TEST_AMMONIA,), False),
        ({"ph": 7.2}, (Before.PH_HIGH_ENOUGH,), True),
        ({"ph": None, "alkalinity_mg_per_l": None}, (Before.TEST_PH, Before.TEST_ALKALINITY), False),
    ],
)
def test_that_the_water_is_looked_at_before_base_is_given(catalogue, change, before, hold):
    water = replace(WATER, **change)
    assert before_base(water, catalogue) == before
    advice = advice_of(catalogue, "potassium-bicarbonate", water=water)
    assert (advice.before, advice.hold) == (before, hold)


def test_that_untested_water_gets_smaller_doses_and_says_what_was_assumed(catalogue):
    tested = advice_of(catalogue, "calcium-hydroxide", need=5.0)
    untested = advice_of(catalogue, "calcium-hydroxide", need=5.0, water=WaterNow(water_l=4000.0))
    assert untested.assumed == ("ph", "alkalinity")
    assert untested.bases[0].cap_g < tested.bases[0].cap_g


@given(
    alkalinity=st.floats(0.0002, 0.004),
    ph=st.floats(5.5, 8.0),
    step=st.floats(0.05, 0.5),
    used=st.sampled_from([0.0, 0.5, 1.0]),
)
def test_that_the_largest_dose_moves_ph_by_the_step_and_no_more(alkalinity, ph, step, used):
    pk1 = 6.352
    dose = dose_for_ph_step_eq_per_l(alkalinity, ph=ph, step=step, pk1=pk1, carbon_dioxide_used=used)
    gas = alkalinity * 10 ** (pk1 - ph)
    after = pk1 + np.log10((alkalinity + dose) / (gas - used * dose))
    assert after == pytest.approx(ph + step, abs=1e-6)


def test_that_gentleness_is_told_by_the_formula(catalogue):
    kinds = {key: base_kind(catalogue.supplements[key]) for key in ALL_BASES}
    assert kinds["potassium-bicarbonate"] is BaseKind.BICARBONATE
    assert kinds["dolomite"] is kinds["potassium-carbonate"] is BaseKind.CARBONATE
    assert kinds["calcium-hydroxide"] is kinds["magnesium-hydroxide"] is BaseKind.HYDROXIDE
    used = [
        carbon_dioxide_used(catalogue.supplements[f"potassium-{end}"])
        for end in ("bicarbonate", "carbonate", "hydroxide")
    ]
    assert used == [0.0, 0.5, 1.0]


def test_that_a_salt_cannot_raise_alkalinity(catalogue):
    salt = catalogue.supplements["magnesium-sulfate"]
    with pytest.raises(ValueError, match="magnesium-sulfate holds no base"):
        base_to_raise_alkalinity_g(10.0, water_l=1000.0, supplement=salt, chemistry=chemistry_of(catalogue))


def test_that_a_product_not_in_the_catalogue_is_refused(catalogue):
    with pytest.raises(KeyError, match="moon-dust"):
        advice_of(catalogue, "moon-dust")


@given(st.lists(st.tuples(st.floats(0.0, 500.0), st.floats(1.0, 100.0)), min_size=1, max_size=4))
def test_that_a_weeks_doses_are_never_more_than_the_week_has_days(catalogue, parts):
    named = [
        DosePart(supplement=f"base {place}", eq=grams * 0.02, grams=grams, cap_g=cap)
        for place, (grams, cap) in enumerate(parts)
    ]
    doses, left = dose_plan(named, figures=dose_figures(catalogue))
    assert len(doses) <= 7
    assert left >= 0.0
    assert [dose.day for dose in doses] == sorted({dose.day for dose in doses})
