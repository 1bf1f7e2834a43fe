"""Four verdicts on more beds: bisection agrees, the curve is read, nothing unknown becomes a yes."""

from __future__ import annotations

import dataclasses

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.farm.faults import FarmFaultError
from planner.farm.ids import id_from
from planner.farm.site import AreaRule, Filter, FilterKind
from planner.farm.species import BedKind, CropGroup
from planner.forecast.verdicts import week_verdicts
from planner.planning.expansion.area import extra_area_by_week
from planner.planning.expansion.ask import expansion
from planner.planning.expansion.pump import pump_curve
from planner.planning.expansion.surroundings import water_kg_per_m2
from planner.planning.expansion.verdicts import Answer, Limit, Matter, Question, worst
from tests.farms import LOOP, batch_of, farm_of, group_of
from tests.planning.stocking.farms import school_farm

CURVE = pump_curve(((0.0, 9000.0), (1.0, 7000.0), (2.0, 4000.0), (3.0, 0.0)))


def fed_farm(*, fish=100, weight_g=150.0, **parts):
    group = group_of(count=fish, mean_weight_g=weight_g)
    return farm_of(**({"batches": (batch_of(plants=25),), "fish_groups": (group,)} | parts))


def going_by(rule, farm):
    """A farm whose loops go by a rule."""
    return dataclasses.replace(
        farm, loops=tuple(dataclasses.replace(loop, area_rule=rule) for loop in farm.loops)
    )


def question(**fields):
    return Question(**({"loop": LOOP.id, "area_m2": 2.0} | fields))


def verdict_of(means, farm, matter, **fields):
    found = expansion(farm, means.forecaster, question(**fields))
    return next(one for one in found.verdicts if one.matter is matter)


def numbers(verdict):
    return dict(verdict.numbers)


# --- nutrients ---


@pytest.mark.parametrize("group", list(CropGroup))
@pytest.mark.parametrize("high_end", [False, True])
@pytest.mark.parametrize("rule", list(AreaRule))
def test_that_the_largest_extra_area_is_what_bisection_finds(means, group, high_end, rule):
    """The forecast's own verdicts are asked with more area until the feed-rate ratio leaves the band."""
    farm = going_by(rule, school_farm(means))
    forecast = means.forecaster.forecast(farm)
    loop, ruler, bands = forecast.loops[0], forecast.ruler, means.forecaster.bands
    found = extra_area_by_week(loop, ruler, bands, group=group, high_end=high_end)
    row = 0 if group is CropGroup.LEAFY else 1

    def carried(area):
        more = loop.planted_m2.copy()
        more[row] += np.repeat(area, 7)
        verdicts = week_verdicts(dataclasses.replace(loop, planted_m2=more), ruler, bands)
        return np.array([v.feed_ratio_g_per_m2_d >= v.rule_band[1 if high_end else 0] for v in verdicts])

    low, high = np.full(ruler.weeks, 1e-6), np.full(ruler.weeks, 1000.0)
    for _ in range(60):
        middle = (low + high) / 2.0
        fits = carried(middle)
        low, high = np.where(fits, middle, low), np.where(fits, high, middle)
    assert found == pytest.approx(low, abs=1e-5)


def test_that_by_the_raft_systems_ratio_feed_over_it_is_the_area_and_the_source_is_named(means):
    """A bare loop carries feed over the low end of the band, whatever protein the feed has."""
    farm = going_by(AreaRule.UVI, fed_farm(batches=()))
    forecast = means.forecaster.forecast(farm)
    loop, ruler, bands = forecast.loops[0], forecast.ruler, means.forecaster.bands
    found = extra_area_by_week(loop, ruler, bands, group=CropGroup.FRUITING, high_end=False)
    low, _ = bands.uvi_raft
    assert found == pytest.approx(ruler.weekly_mean(loop.feed_g) / low)
    assert verdict_of(means, farm, Matter.NUTRIENTS).basis == ("feed_rate/uvi_raft",)


def test_that_a_month_carries_what_its_leanest_week_carries(means):
    farm = school_farm(means)
    found = expansion(farm, means.forecaster, Question(loop=farm.loops[0].id, area_m2=1.0))
    forecast = means.forecaster.forecast(farm)
    weeks = extra_area_by_week(
        forecast.loops[0], forecast.ruler, means.forecaster.bands, group=CropGroup.LEAFY, high_end=False
    )
    assert [(one.year, one.month) for one in found.area_by_month][:3] == [(2027, 1), (2027, 2), (2027, 3)]
    assert min(one.most_m2 for one in found.area_by_month) == pytest.approx(weeks.min())
    assert all(one.cautious_m2 <= one.most_m2 for one in found.area_by_month)


def test_that_feed_decides_between_yes_yes_with_and_no(means):
    farm = fed_farm()
    months = expansion(farm, means.forecaster, question()).area_by_month
    careful, most = min(m.cautious_m2 for m in months), min(m.most_m2 for m in months)
    best = max(m.most_m2 for m in months)
    assert 0.0 < careful < most < best
    for area, answer, limit in (
        (careful * 0.99, Answer.YES, None),
        ((careful + most) / 2.0, Answer.YES_WITH, Limit.THIN_FEED),
        ((most + best) / 2.0, Answer.YES_WITH, Limit.FEED_IN_SOME_MONTHS),
        (best * 1.01, Answer.NO, Limit.FEED),
    ):
        found = verdict_of(means, farm, Matter.NUTRIENTS, area_m2=area)
        assert (found.answer, found.limit) == (answer, limit)


# --- flow ---


def test_that_flow_is_read_between_the_points_of_the_curve():
    assert CURVE.flow_at(0.5) == pytest.approx(8000.0)
    assert CURVE.flow_at(2.5) == pytest.approx(2000.0)
    assert CURVE.flow_at(4.0) == 0.0
    assert pump_curve(((0.0, 9000.0), (1.0, 7000.0))).flow_at(1.5) is None


@given(
    st.lists(
        st.tuples(st.floats(0, 10), st.floats(0, 20_000)), min_size=2, max_size=8, unique_by=lambda p: p[0]
    ),
    st.floats(0, 12),
    st.floats(0, 12),
)
def test_that_no_pump_gives_more_at_a_greater_head(points, one, other):
    heads = sorted(head for head, _ in points)
    flows = sorted((flow for _, flow in points), reverse=True)
    curve = pump_curve(tuple(zip(heads, flows, strict=True)))
    low, high = (curve.flow_at(head) for head in sorted((one, other)))
    if low is not None and high is not None:
        assert low >= high - 1e-6


@pytest.mark.parametrize(
    "points",
    [
        ((0.0, 100.0),),
        ((0.0, 100.0), (0.0, 90.0)),
        ((0.0, 100.0), (1.0, 120.0)),
        ((0.0, -1.0), (1.0, -2.0)),
        ((0.0, float("nan")), (1.0, 1.0)),
    ],
)
def test_that_a_curve_that_is_none_is_refused(points):
    with pytest.raises(FarmFaultError, match="pump"):
        pump_curve(points)


def test_that_the_flow_needed_is_turnover_of_tanks_and_beds_at_the_head_with_friction(means):
    """3 m3 of tank once an hour, 4 m2 and 2 m2 of raft 25 cm deep half an hour: 3000 + 500 + 250 L/h."""
    found = verdict_of(means, fed_farm(), Matter.FLOW, depth_cm=25.0, head_m=1.0, pump=CURVE)
    said = numbers(found)
    assert said["flow needed L/h"] == pytest.approx(3750.0)
    assert said["flow needed with reserve L/h"] == pytest.approx(3750.0 * 1.25)
    assert said["head with friction m"] == pytest.approx(1.2)
    assert said["flow of the pump at that head L/h"] == pytest.approx(6400.0)
    assert found.answer is Answer.YES
    assert "electricity-near-water" in found.cautions


@pytest.mark.parametrize(
    ("fields", "answer", "limit"),
    [
        ({"head_m": 1.7, "friction_m": 0.1, "pump": CURVE}, Answer.YES_WITH, Limit.NO_RESERVE),
        ({"head_m": 1.9, "friction_m": 0.5, "pump": CURVE}, Answer.NO, Limit.FLOW),
        ({"head_m": 3.5, "friction_m": 0.0, "pump": CURVE}, Answer.NO, Limit.HEAD),
        ({"head_m": 1.0}, Answer.UNKNOWN, Limit.NO_PUMP),
        ({"pump": CURVE}, Answer.UNKNOWN, Limit.NO_HEAD),
        (
            {"head_m": 2.0, "pump": pump_curve(((0.0, 9000.0), (1.0, 7000.0)))},
            Answer.UNKNOWN,
            Limit.CURVE_TOO_SHORT,
        ),
    ],
)
def test_that_the_flow_verdict_names_its_limit(means, fields, answer, limit):
    found = verdict_of(means, fed_farm(), Matter.FLOW, depth_cm=25.0, **fields)
    assert (found.answer, found.limit) == (answer, limit)


# --- filter and oxygen ---


def filtered(area_m2):
    filter_ = Filter(
        id=id_from("filter"),
        name="Moving bed",
        loop=LOOP.id,
        kind=FilterKind.MOVING_BED,
        media_area_m2=area_m2,
    )
    return fed_farm(filters=(filter_,))


@pytest.mark.parametrize(
    ("area_m2", "answer"), [(1.0, Answer.NO), (5000.0, Answer.YES), (None, Answer.UNKNOWN)]
)
def test_that_the_filter_is_held_against_the_load(means, area_m2, answer):
    found = verdict_of(means, filtered(area_m2), Matter.FILTER_AND_OXYGEN, oxygen_g_per_h=10_000.0)
    assert found.answer is answer


@pytest.mark.parametrize(
    ("oxygen", "answer", "limit"),
    [
        (None, Answer.UNKNOWN, Limit.NO_OXYGEN),
        (0.1, Answer.NO, Limit.OXYGEN),
        (10_000.0, Answer.YES, None),
    ],
)
def test_that_oxygen_is_held_against_the_hour_after_feeding(means, oxygen, answer, limit):
    found = verdict_of(means, filtered(5000.0), Matter.FILTER_AND_OXYGEN, oxygen_g_per_h=oxygen)
    assert (found.answer, found.limit) == (answer, limit)


def test_that_beds_that_need_more_feed_load_the_filter_with_it(means):
    small, large = (
        verdict_of(means, filtered(5000.0), Matter.FILTER_AND_OXYGEN, area_m2=area) for area in (0.1, 60.0)
    )
    assert numbers(small)["feed that has to be added g/d"] == 0.0
    assert numbers(large)["feed that has to be added g/d"] > 0.0
    need = "filter surface needed m²"
    assert numbers(large)[need] > numbers(small)[need]


# --- light, power, structure ---

ENTERED = {
    "depth_cm": 25.0,
    "light_mol_per_m2_d": 14.0,
    "light_wanted_mol_per_m2_d": 12.0,
    "lamps_w": 0.0,
    "pump_w": 60.0,
    "spare_w": 200.0,
    "load_allowed_kg_per_m2": 400.0,
    "dry_kg_per_m2": 40.0,
}


def test_that_a_layer_of_three_square_metres_a_quarter_deep_weighs_three_quarters_of_a_tonne(means):
    found = verdict_of(means, fed_farm(), Matter.LIGHT_POWER_STRUCTURE, **(ENTERED | {"area_m2": 3.0}))
    assert numbers(found)["water kg"] == pytest.approx(750.0)
    assert found.answer is Answer.YES
    assert {"electricity-near-water", "local-codes"} <= set(found.cautions)


@pytest.mark.parametrize(
    ("fields", "answer", "limit"),
    [
        ({"light_mol_per_m2_d": 5.0}, Answer.NO, Limit.LIGHT),
        ({"light_mol_per_m2_d": 5.0, "lamps_w": 100.0}, Answer.YES_WITH, Limit.LAMPS),
        ({"light_mol_per_m2_d": None}, Answer.UNKNOWN, Limit.NO_LIGHT),
        ({"spare_w": 10.0}, Answer.NO, Limit.POWER),
        ({"spare_w": None}, Answer.UNKNOWN, Limit.NO_POWER),
        ({"load_allowed_kg_per_m2": 200.0}, Answer.NO, Limit.STRUCTURE),
        ({"load_allowed_kg_per_m2": None}, Answer.UNKNOWN, Limit.NO_STRUCTURE),
        ({"dry_kg_per_m2": None}, Answer.UNKNOWN, Limit.NO_STRUCTURE),
        ({"dry_kg_per_m2": None, "load_allowed_kg_per_m2": 200.0}, Answer.NO, Limit.STRUCTURE),
        ({"depth_cm": None}, Answer.UNKNOWN, Limit.NO_DEPTH),
        ({"kind": BedKind.MEDIA}, Answer.UNKNOWN, Limit.NO_DEPTH),
    ],
)
def test_that_what_surrounds_the_bed_is_judged_by_what_was_entered(means, fields, answer, limit):
    found = verdict_of(means, fed_farm(), Matter.LIGHT_POWER_STRUCTURE, **(ENTERED | fields))
    assert (found.answer, found.limit) == (answer, limit)
    assert water_kg_per_m2(question(depth_cm=30.0)) == pytest.approx(300.0)


# --- all together ---


def test_that_without_any_figures_entered_all_but_the_nutrients_are_unknown(means):
    found = expansion(fed_farm(), means.forecaster, question(area_m2=0.5))
    answers = {one.matter: one.answer for one in found.verdicts}
    assert answers.pop(Matter.NUTRIENTS) is Answer.YES
    assert set(answers.values()) == {Answer.UNKNOWN}
    assert found.answer is Answer.UNKNOWN


@given(st.lists(st.sampled_from(list(Answer)), min_size=1))
def test_that_one_no_decides_and_nothing_unknown_becomes_a_yes(answers):
    found = worst(tuple(answers))
    assert (found is Answer.NO) == (Answer.NO in answers)
    assert found is not Answer.YES or set(answers) == {Answer.YES}
    assert found not in (Answer.YES, Answer.YES_WITH) or Answer.UNKNOWN not in answers


def test_that_the_verdict_that_decides_is_named_with_its_cautions(means):
    given_all = ENTERED | {"area_m2": 0.5, "head_m": 3.5, "friction_m": 0.0, "pump": CURVE}
    found = expansion(filtered(5000.0), means.forecaster, question(**given_all, oxygen_g_per_h=10_000.0))
    assert found.answer is Answer.NO
    assert found.limiting.matter is Matter.FLOW
    assert set(found.cautions) <= set(means.catalogue.cautions)
    assert {"electricity-near-water", "local-codes"} <= set(found.cautions)


@pytest.mark.parametrize(
    ("fields", "word"),
    [
        ({"area_m2": 0.0}, "area_m2"),
        ({"area_m2": float("nan")}, "area_m2"),
        ({"loop": id_from("elsewhere")}, "loop"),
        ({"kind": BedKind.NURSERY}, "kind"),
        ({"depth_cm": -1.0}, "depth_cm"),
    ],
)
def test_that_a_question_that_makes_no_sense_is_refused_by_its_field(means, fields, word):
    with pytest.raises(FarmFaultError, match=word):
        expansion(fed_farm(), means.forecaster, question(**fields))
