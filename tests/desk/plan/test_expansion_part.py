"""More beds: four verdicts with what limits, unknown where nothing was entered, cautions in sight."""

import pytest
from PySide6.QtWidgets import QLabel

from planner.desk.plan.asks import ExpandAsk
from planner.desk.plan.expansion_part import ExpansionPart
from planner.desk.plan.expansion_words import (
    ANSWER_INKS,
    ANSWER_SIGNS,
    ANSWER_WORDS,
    LIMIT_WORDS,
    MATTER_WORDS,
    answer_words,
    number_lines,
    question_of,
)
from planner.desk.theme import DARK, LIGHT
from planner.farm.faults import FarmFaultError
from planner.planning.expansion.verdicts import Answer, Limit, Matter, Verdict
from tests.desk.helpers import nameless_controls
from tests.desk.plan.hands import click, typed


def shown_words(widget):
    return "\n".join(label.text() for label in widget.findChildren(QLabel) if not label.isHidden())


@pytest.fixture
def more(stage, kitchen):
    return stage(ExpansionPart, kitchen)


@pytest.fixture
def asked(qtbot, more, rest):
    click(qtbot, more.part.begin_it)
    rest(more.part)
    return more


def test_that_every_code_has_words():
    assert set(MATTER_WORDS) == set(Matter)
    assert set(ANSWER_WORDS) == set(ANSWER_SIGNS) == set(ANSWER_INKS) == set(Answer)
    assert set(LIMIT_WORDS) == set(Limit)
    assert len(set(ANSWER_SIGNS.values())) == len(Answer)


def test_that_an_answer_names_what_limits():
    verdict = Verdict(matter=Matter.FLOW, answer=Answer.NO, limits=(Limit.HEAD,), numbers=())
    assert answer_words(verdict) == "✘ No: the pump does not lift so high"
    plain = Verdict(matter=Matter.FLOW, answer=Answer.YES, limits=(), numbers=())
    assert answer_words(plain) == "✔ Yes"


def test_that_figures_bear_their_unit_and_say_when_they_were_not_entered():
    numbers = (("flow needed L/h", 1234.5), ("months that carry it", 3.0), ("head with friction m", None))
    verdict = Verdict(matter=Matter.FLOW, answer=Answer.YES, limits=(), numbers=numbers)
    assert list(number_lines(verdict)) == [
        ("Flow needed", "1230 L/h"),
        ("Months that carry it", "3"),
        ("Head with friction", "not entered"),
    ]


@pytest.mark.parametrize(
    ("points", "words"),
    [("0:3000; lots", "no point"), ("0:3000", "2 points or more"), ("0:1000 1:2000", "must not rise")],
)
def test_that_a_pump_that_is_none_names_its_field(means, kitchen, points, words):
    ask = ExpandAsk(loop=kitchen.loops[0].id, area_m2=3.0, pump_points=points)
    with pytest.raises(FarmFaultError) as refused:
        question_of(ask, means.catalogue)
    assert refused.value.faults[0].field == "pump_points"
    assert words in refused.value.faults[0].message


def test_that_points_of_a_pump_are_read_in_any_order(means, kitchen):
    ask = ExpandAsk(loop=kitchen.loops[0].id, area_m2=3.0, pump_points="2:1500, 0:3000; 1:2400")
    assert question_of(ask, means.catalogue).pump.flow_at(1.5) == pytest.approx(1950.0)


def test_that_it_begins_with_one_bed_like_the_first(more, kitchen):
    first = next(bed for bed in kitchen.beds if bed.kind.name != "NURSERY")
    assert more.part.form.editor("area_m2").read() == pytest.approx(first.area_m2)


def test_that_four_verdicts_are_shown_and_what_was_not_entered_is_unknown(asked, kitchen):
    part = asked.part
    assert [verdict.matter for verdict in part.found.verdicts] == list(Matter)
    said = shown_words(part)
    assert all(words in said for words in MATTER_WORDS.values())
    assert "? Unknown: the height of the lift is not entered; the pump's curve is not entered" in said
    assert "What decides:" in part.head.text()
    assert asked.session.farm == kitchen


def test_that_cautions_for_electricity_load_and_local_codes_stand_there(asked, means):
    said = shown_words(asked.part)
    for key in ("electricity-near-water", "local-codes", "planning-aid"):
        assert means.catalogue.cautions[key].text in said


def test_that_a_typed_pump_decides_the_flow(qtbot, asked, rest):
    part = asked.part
    typed(qtbot, part.form, "head_m", "0.9")
    typed(qtbot, part.form, "pump_points", "0:3000; 0.5:10")
    click(qtbot, part.begin_it)
    rest(part)
    flow = next(verdict for verdict in part.found.verdicts if verdict.matter is Matter.FLOW)
    assert flow.answer is Answer.UNKNOWN
    assert "do not reach that head" in shown_words(part)
    typed(qtbot, part.form, "pump_points", "0:3000; 0.5:0")
    click(qtbot, part.begin_it)
    rest(part)
    assert "✘ No: the pump does not lift so high" in shown_words(part)
    assert part.head.text().startswith("No")


def test_that_wrong_figures_are_said_beside_their_field_and_kept(qtbot, more):
    part = more.part
    line = typed(qtbot, part.form, "pump_points", "strong")
    click(qtbot, part.begin_it)
    assert "no point" in part.form.rows["pump_points"].words
    assert line.text() == "strong"
    typed(qtbot, part.form, "pump_points", "")
    typed(qtbot, part.form, "area_m2", "-2")
    click(qtbot, part.begin_it)
    assert "within 0.01 to" in part.form.rows["area_m2"].words
    assert not part.is_working


def test_that_months_tell_the_extra_area(asked):
    rows = asked.part.months.model_of_rows.rows
    assert len(rows) == len(asked.part.found.area_by_month)
    assert rows[0].texts[1].endswith("m²")


def test_that_a_verdict_is_marked_once_the_farm_differs(qtbot, asked, kitchen):
    from planner.actions.plan import rename_farm

    asked.session.act(rename_farm(kitchen, "Other"))
    assert "Ask again" in asked.part.stale.text()
    asked.session.undo()
    assert asked.part.stale.isHidden()


def test_that_a_farm_without_water_cannot_ask(stage, kitchen, bare):
    import dataclasses

    part = stage(ExpansionPart, dataclasses.replace(bare, loops=())).part
    assert not part.begin_it.isEnabled()
    assert "no loop of water" in part.state.text()


def test_that_a_loop_without_fish_is_answered_with_no(qtbot, stage, bare, rest):
    part = stage(ExpansionPart, bare).part
    typed(qtbot, part.form, "area_m2", "3")
    click(qtbot, part.begin_it)
    rest(part)
    nutrients = part.found.verdicts[0]
    assert nutrients.answer is Answer.NO


def test_that_every_control_has_a_spoken_name_and_both_looks_can_be_worn(asked):
    assert nameless_controls(asked.part) == []
    asked.part.wear(DARK)
    asked.part.wear(LIGHT)
