"""What is said of a case: within, outside, or only shown; and what a case may not ask."""

from __future__ import annotations

from dataclasses import replace
from types import MappingProxyType

import pytest

from planner.bootstrap import Means
from planner.catalogue.case_files import shipped_system_path
from planner.catalogue.errors import CatalogueError
from planner.forecast.verify.cases import areas_taken
from planner.forecast.verify.run import Standing, Verdict, counts_of, farms_needed, lacking_of, verify_all

FACTOR = "coefficient/feed_split/tan_share_of_feed_protein"


@pytest.fixture
def lit_farms():
    """Two of the shipped farms, fed unlike."""
    means = Means()
    return {name: means.read(shipped_system_path(name)).farm for name in ("feed-100", "feed-120")}


def results(catalogue, *cases, farms=None, kind="case"):
    areas = areas_taken({"feed": {"title": "Feed", kind: list(cases)}}, sources=catalogue.publications)
    return verify_all(catalogue, areas, farms=farms or {})


def test_that_a_result_shows_everything_the_reader_needs(catalogue, case):
    (found,) = results(catalogue, case)
    assert found.ours == pytest.approx(58.88)
    assert found.difference == pytest.approx(-0.02)
    assert found.relative_difference == pytest.approx(-0.02 / 58.9)
    assert found.within is True
    assert found.verdict is Verdict.WITHIN
    assert found.figures == (FACTOR,)
    assert found.inputs == (("feed_g", 2000.0), ("protein_share", 0.32))
    assert found.publication.startswith(catalogue.publications["ksu2021"].authors)


def test_that_one_step_past_the_tolerance_is_outside(catalogue, case):
    inside, outside = results(
        catalogue, case | {"tolerance": 0.0201}, case | {"key": "other", "tolerance": 0.0199}
    )
    assert (inside.within, outside.within) == (True, False)
    assert outside.verdict is Verdict.OUTSIDE


def test_that_what_is_outside_tells_how_far_the_range_of_its_figure_reaches(catalogue, case):
    """The factor is 0.063 to 0.092: 2 kg of 32 % feed give 40.3 to 58.9 g."""
    inside, below, beyond = results(
        catalogue,
        case,
        case | {"key": "below", "published": 45.0},
        case | {"key": "beyond", "published": 70.0},
    )
    assert inside.span is None
    assert (below.span.low, below.span.high) == pytest.approx((640 * 0.063, 640 * 0.092))
    assert (below.in_span, beyond.in_span) == (True, False)
    counts = counts_of((inside, below, beyond))
    assert (counts.within, counts.outside, counts.outside_in_range) == (1, 2, 1)


def test_that_ranges_of_several_figures_are_added_in_quadrature(catalogue, case):
    crop = "pak-choi"
    days = case | {"formula": "days_from_seed", "inputs": {"crop": crop}, "unit": "d", "published": 200.0}
    (found,) = results(catalogue, days)
    figures = [catalogue.figure(path) for path in found.figures]
    up = sum((one.high - one.value) ** 2 for one in figures) ** 0.5
    assert found.span.high == pytest.approx(found.ours + up)
    assert found.span.low < found.ours


def test_that_a_figure_from_memory_is_never_passed(catalogue, case):
    (found,) = results(catalogue, case | {"confidence": "from memory"})
    assert found.within is None
    assert found.verdict is Verdict.SHOWN
    counts = counts_of((found,))
    assert (counts.cases, counts.within, counts.outside, counts.from_memory) == (0, 0, 0, 1)


def test_that_counts_tell_within_from_outside(catalogue, case):
    found = results(catalogue, case, case | {"key": "far", "published": 70})
    counts = counts_of(found)
    assert (counts.cases, counts.within, counts.outside) == (2, 1, 1)


def test_that_the_shipped_figures_are_what_is_checked(catalogue, case):
    row = catalogue.figure(FACTOR)
    spoiled = replace(
        catalogue, figures=MappingProxyType({**catalogue.figures, FACTOR: replace(row, value=0.08)})
    )
    (found,) = results(spoiled, case)
    assert found.within is False


def test_that_a_published_nought_has_no_relative_difference(catalogue, case):
    (found,) = results(catalogue, case | {"published": 0, "tolerance": 100})
    assert found.relative_difference is None


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"formula": "ammonia_of_fed"}, "formula: 'ammonia_of_fed' is no computation. Did you mean"),
        ({"inputs": {"feed_g": 2000}}, "inputs.protein_share: is missing"),
        ({"inputs": {"feed_g": "much", "protein_share": 0.32}}, "inputs.feed_g: is 'much'"),
        (
            {"inputs": {"feed_g": 1, "protein_share": 0.32, "ph": 7}},
            "inputs.ph: is not used by ammonia_of_feed",
        ),
        (
            {"inputs": {"feed_g": 1, "protein_share": 32}},
            "formula: ammonia_of_feed: protein share is 32",
        ),
        (
            {"formula": "shipped_figure", "inputs": {"figure": "coefficient/feed_split/tan"}},
            "formula: shipped_figure: no figure coefficient/feed_split/tan",
        ),
        (
            {"formula": "shipped_length_weight", "inputs": {"fish": "tench", "length_cm": 10}},
            "formula: shipped_length_weight: no fish tench",
        ),
        (
            {
                "formula": "raceway_ammonia",
                "inputs": {"feed_lb_per_day": [1], "flow_gpm": 1, "raceways_before": 1},
            },
            "inputs.raceways_before: is 1, but must be within 0 to 0",
        ),
    ],
)
def test_that_a_case_that_asks_for_too_much_is_refused_by_name(catalogue, case, change, said):
    with pytest.raises(CatalogueError, match=f"verify/feed.toml: tan: {said}"):
        results(catalogue, case | change)


def test_that_a_system_needs_its_farm(catalogue, case):
    system = case | {"farm": "island", "formula": "system_feed", "inputs": {"from_week": 1, "weeks": 1}}
    areas = areas_taken({"feed": {"title": "Feed", "system": [system]}}, sources=catalogue.publications)
    assert farms_needed(areas) == ("island",)
    with pytest.raises(CatalogueError, match="tan: farm: 'island' was not handed in"):
        verify_all(catalogue, areas, farms={})


def test_that_a_case_that_leans_on_its_own_publication_does_not_stand_alone(catalogue, case):
    own, alone = results(catalogue, case, case | {"key": "other", "source": "piper1982"})
    assert (own.own_figures, own.independent) == ((FACTOR,), False)
    assert (alone.own_figures, alone.independent) == ((), True)
    counts = counts_of((own, alone))
    assert (counts.cases, counts.independent, counts.independent_within, counts.own_source) == (2, 1, 1, 1)


def test_that_a_case_into_which_no_figure_went_checks_a_formula_only(catalogue, case):
    case |= {"formula": "stock_feed", "inputs": {"fish_count": 100, "weight_g": 10, "percent_per_day": 7}}
    (found,) = results(catalogue, case | {"unit": "kg/d", "published": 0.07, "source": "fao-new1987"})
    assert found.standing is Standing.FORMULA
    assert (found.within, found.independent) == (True, False)
    assert counts_of((found,)).formula_only == 1


def test_that_atomic_masses_are_no_figures_that_could_be_wrong(catalogue, case):
    inputs = {"amount": 1, "of": "P2O5", "as_form": "P", "element": "P"}
    case |= {"formula": "conversion", "inputs": inputs, "published": 0.4364, "source": "newengland-vegetable"}
    (found,) = results(catalogue, case)
    assert found.figures
    assert found.standing is Standing.FORMULA


def test_that_a_case_said_to_be_fitted_does_not_stand_alone(catalogue, case):
    (found,) = results(catalogue, case | {"source": "piper1982", "fitted": "Drawn from it."})
    assert found.independent is False


def test_that_an_assumption_without_a_range_judges_nothing(catalogue, case):
    (found,) = results(catalogue, case | {"assumed": "Protein is not told."})
    assert found.within is None
    assert found.verdict is Verdict.ASSUMED
    assert counts_of((found,)).assumed == 1


@pytest.mark.parametrize(("published", "within"), [(58.9, True), (51, True), (74.1, True), (76, False)])
def test_that_any_value_of_an_assumed_range_may_agree(catalogue, case, published, within):
    assumed = {"assumed": "Protein is not told.", "assumed_ranges": {"protein_share": [0.28, 0.4]}}
    (found,) = results(catalogue, case | assumed | {"published": published, "tolerance": 1})
    assert (found.ours_low, found.ours, found.ours_high) == pytest.approx((51.52, 58.88, 73.6))
    assert found.within is within


@pytest.mark.parametrize(("published", "gap"), [(60, 0), (50, 1.52), (80, -6.4)])
def test_that_the_gap_is_that_of_the_nearest_end_of_a_range(catalogue, case, published, gap):
    assumed = {"assumed": "Protein is not told.", "assumed_ranges": {"protein_share": [0.28, 0.4]}}
    (found,) = results(catalogue, case | assumed | {"published": published})
    assert found.ranges
    assert found.gap == pytest.approx(gap)
    assert found.difference == pytest.approx(58.88 - published)


@pytest.mark.parametrize(("published", "within"), [(0.8, True), (1.3, False)])
def test_that_an_order_is_judged_by_the_side_of_one(catalogue, case, published, within):
    del case["tolerance"]
    case |= {"formula": "shipped_figure", "inputs": {"figure": FACTOR}, "reason": "order only"}
    (found,) = results(catalogue, case | {"published": published})
    assert found.within is within


def test_that_a_system_may_be_held_against_another(catalogue, case, lit_farms):
    del case["tolerance"]
    case |= {"formula": "system_gain", "inputs": {"from_week": 1, "weeks": 4}, "reason": "order only"}
    more = case | {"farm": "feed-120", "against": "feed-100", "published": 1.1}
    (found,) = results(catalogue, more, farms=lit_farms, kind="system")
    assert found.ours == pytest.approx(1.2)
    assert found.against == "feed-100"
    assert any(path.endswith("/fcr") for path in found.figures)


def test_that_what_is_lacking_has_its_publication(catalogue, lacking):
    areas = areas_taken(
        {"feed": {"title": "Feed", "not_computed": [lacking]}}, sources=catalogue.publications
    )
    (found,) = lacking_of(catalogue, areas)
    assert found.publication.startswith(catalogue.publications["ksu2021"].authors)
