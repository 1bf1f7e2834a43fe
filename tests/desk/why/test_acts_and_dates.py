"""An entry of the log answers by which act it was kept; a date that would move by the plan that was tried."""

import dataclasses
from datetime import timedelta

import pytest

from planner.actions import records
from planner.desk.book_page.own_values import shifts
from planner.desk.book_page.shift_answers import shift_asks, with_tried
from planner.desk.pages import Fact
from planner.desk.records.answers import act_of, entry_answer, with_act
from planner.desk.why.answers import answer_of
from planner.desk.why.entered import typed
from planner.desk.words import day_words
from planner.farm.ids import new_id
from planner.farm.log import Happening, Unit
from planner.forecast.why.arithmetic import recomputed
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import worked
from planner.forecast.why.values import Explanation, NoteKind
from planner.planning.dating import Dater
from tests.desk.helpers import NOW


@pytest.fixture
def logged(means, session, farm):
    batch = farm.batches[0]
    entry = dataclasses.replace(
        records.new_entry(what=Happening.SOWN, on=batch.sow_on + timedelta(days=1)),
        batch=batch.id,
        amount=30.0,
        unit=Unit.SEEDS,
        who="Ines",
        noted_at=NOW.strftime("%Y-%m-%dT%H:%MZ"),
    )
    session.act(records.log(farm, entry, Dater(means.forecaster, farm)))
    return entry


def test_that_an_entry_tells_its_act_and_what_that_changed(logged, session):
    asked = with_act(Fact(label="", value="30", ask=entry_answer(logged, "")), (logged,), session)
    notes = {note.kind: dict(note.values) for note in asked.ask.notes}
    assert notes[NoteKind.NOTED]["who"] == "Ines"
    assert notes[NoteKind.BY_ACT]["act"] == session.history[0].title
    assert "Batch" in notes[NoteKind.ACT_CHANGED]["things"]


def test_that_an_entry_is_not_taken_for_one_whose_code_ends_alike(logged, session):
    other = dataclasses.replace(logged, id=new_id(), code=logged.code[-1])
    fact = Fact(label="", value="30", ask=entry_answer(logged, "Batch"))
    asked = with_act(fact, (other, logged), session)
    assert NoteKind.BY_ACT in {note.kind for note in asked.ask.notes}


def test_that_an_entry_that_came_with_the_farm_has_no_act(logged, session):
    session.undo()
    assert act_of(logged, session) is None
    assert act_of(logged, None) is None
    fact = Fact(label="", value="30", ask=entry_answer(logged, ""))
    assert with_act(fact, (logged,), session) is fact


def test_that_a_typed_day_behind_an_answer_is_told_as_that_day(means, farm):
    batch = farm.batches[0]
    day = typed("Sow on", batch.sow_on, about=batch.code)
    late = Explanation(
        title="days late", about="", value=7.0, unit="d", formula=Formula.DIFFERENCE, children=(day,)
    )
    (row,) = answer_of(late, means.catalogue).rows
    assert row.texts[1:] == (day_words(batch.sow_on), "entered")
    given = dataclasses.replace(day, value=7.0, unit="d", inputs=(worked("value", 7.0, "d"),))
    (row,) = answer_of(dataclasses.replace(late, children=(given,)), means.catalogue).rows
    assert row.texts[1:] == ("7 d", "worked out")


def test_that_a_date_that_would_come_is_answered_by_both_plans(means, farm):
    batch = farm.batches[0]
    tried = dataclasses.replace(farm, batches=(dataclasses.replace(batch, bed_days=60.0), *farm.batches[1:]))
    forecaster = means.forecaster
    (shift, *_) = shifts(farm, forecaster.preview(farm), forecaster.preview(tried))
    asks = shift_asks(shift, batch.sow_on)
    for ask in (asks[2], asks[5]):
        asked = with_tried(Fact(label="", value="", ask=ask), farm, tried, forecaster).ask
        assert recomputed(asked) == asked.value
        after, before = asked.children
        assert (after.value, before.value) == (asked.input("after").value, asked.input("before").value)
