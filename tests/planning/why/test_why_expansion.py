"""Every figure of the four verdicts on more beds can be asked, and so can what decides."""

from __future__ import annotations

import dataclasses

import pytest

from planner.farm.ids import id_from
from planner.farm.site import AreaRule, Filter, FilterKind
from planner.farm.species import BedKind, CropGroup
from planner.forecast.engine import Forecaster
from planner.planning.expansion.ask import expansion
from planner.planning.expansion.pump import pump_curve
from planner.planning.expansion.verdicts import Question
from planner.planning.why_expansion import expansion_whys, month_name, number_name
from tests.farms import LOOP, batch_of, farm_of, group_of
from tests.planning.why.helpers import all_made

CURVE = pump_curve(((0.0, 9000.0), (1.0, 7000.0), (2.0, 4000.0), (3.0, 0.0)))
FILTER = Filter(
    id=id_from("filter"), loop=LOOP.id, name="Drum", kind=FilterKind.MOVING_BED, media_area_m2=60.0
)
FULL = {
    "depth_cm": 25.0,
    "head_m": 1.2,
    "pump": CURVE,
    "oxygen_g_per_h": 20.0,
    "light_mol_per_m2_d": 12.0,
    "light_wanted_mol_per_m2_d": 15.0,
    "lamps_w": 200.0,
    "pump_w": 40.0,
    "spare_w": 500.0,
    "load_allowed_kg_per_m2": 300.0,
    "dry_kg_per_m2": 20.0,
}


def asked(means, rule=AreaRule.FAO, **fields):
    group = group_of(count=100, mean_weight_g=150.0)
    loop = dataclasses.replace(LOOP, area_rule=rule)
    farm = farm_of(batches=(batch_of(plants=25),), fish_groups=(group,), filters=(FILTER,), loops=(loop,))
    question = Question(**({"loop": LOOP.id, "area_m2": 2.0} | fields))
    forecaster = Forecaster(means.catalogue)
    found = expansion(farm, forecaster, question)
    return found, all_made(expansion_whys(farm, forecaster, question, found))


@pytest.mark.parametrize("fields", [{}, FULL, FULL | {"friction_m": 0.3, "area_m2": 400.0}])
@pytest.mark.parametrize("kind", [BedKind.RAFT, BedKind.MEDIA])
@pytest.mark.parametrize("group", list(CropGroup))
@pytest.mark.parametrize("rule", list(AreaRule))
def test_that_every_figure_of_every_verdict_can_be_asked(means, fields, kind, group, rule):
    found, answers = asked(means, rule, **(fields | {"kind": kind, "group": group}))
    for verdict in found.verdicts:
        for name, value in verdict.numbers:
            if value is not None:
                assert answers[number_name(verdict, name)].value == value
        answer = answers[f"{verdict.matter.value} answer"]
        assert answer.about == verdict.answer.value
        assert len(answer.children) == sum(value is not None for _, value in verdict.numbers)
    for month in found.area_by_month:
        assert answers[month_name(month, "with-a-margin")].value == pytest.approx(month.cautious_m2)
        assert answers[month_name(month, "at-most")].value == pytest.approx(month.most_m2)
    assert answers["answer"].about == found.answer.value


def test_that_the_answer_says_what_decides(means):
    found, answers = asked(means, area_m2=4000.0, **FULL)
    said = {dict(note.values)["what"] for note in answers["answer"].notes}
    assert said == {found.limiting.limit.value}
