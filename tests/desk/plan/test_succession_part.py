"""Successions on the page: wishes typed and listed, sowings shown with their seeds, adopted as one act."""

import dataclasses
from datetime import date, timedelta

import pytest
from PySide6.QtCore import Qt

from planner.desk.plan.asks import HowAsk, WantAsk, WantKind, Weekday
from planner.desk.plan.succession_part import SuccessionPart
from planner.desk.plan.succession_rows import (
    NOTE_WORDS,
    note_words,
    seed_words,
    shortage_words,
    sowing_columns,
    sowing_rows,
)
from planner.desk.plan.wants import FIELDS_OF, want_of, want_words, wish_of
from planner.desk.rows import RowsModel
from planner.desk.theme import DARK, LIGHT
from planner.farm.crops import TargetUnit
from planner.farm.faults import FarmFaultError
from planner.planning.placement import Freeing, Refusal, RefusalKind
from planner.planning.proposal import Note, NoteKind
from planner.planning.seeding import SeedRule, seeding_for
from planner.planning.wanted import Order, Rhythm, RhythmOf, Steady
from tests.desk.helpers import TODAY, nameless_controls
from tests.desk.plan.hands import click, typed

LETTUCE = "lettuce-butterhead"
LAST = date(2027, 12, 31)


@pytest.fixture
def successions(stage, kitchen):
    return stage(SuccessionPart, kitchen)


@pytest.fixture
def asked(qtbot, successions):
    """Ten heads of lettuce every Thursday until November, on the list."""
    part = successions.part
    part.want.show_value("crop", LETTUCE)
    typed(qtbot, part.want, "amount", "10")
    part.want.show_value("ready_by", Weekday.THURSDAY)
    typed(qtbot, part.want, "until_on", "2027-11-30")
    click(qtbot, part.add)
    return successions


@pytest.fixture
def worked_out(qtbot, asked, rest):
    click(qtbot, asked.part.begin_it)
    rest(asked.part)
    return asked


def want(kind, **values):
    ask = WantAsk(**{"crop": LETTUCE, "amount": 40.0, **values})
    return want_of(kind, ask, today=TODAY, last_on=LAST)


def test_that_each_kind_of_wish_becomes_its_want():
    assert want(WantKind.STEADY, ready_by=Weekday.THURSDAY) == Steady(
        crop=LETTUCE, amount_per_week=40.0, from_on=TODAY, weekday=3
    )
    assert want(WantKind.ORDER, on=date(2027, 12, 24), amount=80.0) == Order(
        crop=LETTUCE, amount=80.0, on=date(2027, 12, 24)
    )
    assert want(WantKind.RHYTHM, every_weeks=2, ready_by=Weekday.MONDAY) == Rhythm(
        crop=LETTUCE,
        amount=40.0,
        rule="FREQ=WEEKLY;INTERVAL=2;BYDAY=MO",
        from_on=TODAY,
        until_on=LAST,
    )


def test_that_a_rhythm_of_sowings_counts_plants():
    found = want(WantKind.RHYTHM, of=RhythmOf.SOWING, unit=TargetUnit.KG)
    assert found.of is RhythmOf.SOWING
    assert found.unit is TargetUnit.HEADS


@pytest.mark.parametrize(
    ("kind", "values", "field"),
    [
        (WantKind.ORDER, {}, "on"),
        (WantKind.STEADY, {"until_on": TODAY - timedelta(days=1)}, "until_on"),
        (WantKind.RHYTHM, {"rule": "every blue moon"}, "rule"),
        (WantKind.RHYTHM, {"rule": "FREQ=YEARLY;BYMONTH=1;BYMONTHDAY=1"}, "rule"),
    ],
)
def test_that_what_does_not_fit_names_its_field(kind, values, field):
    with pytest.raises(FarmFaultError) as refused:
        want(kind, **values)
    assert refused.value.faults[0].field == field


def test_that_wants_are_said_in_a_sentence(means):
    said = [
        want_words(one, means.catalogue)
        for one in (
            want(WantKind.STEADY, ready_by=Weekday.THURSDAY),
            want(WantKind.STEADY, until_on=date(2027, 11, 30)),
            want(WantKind.ORDER, on=date(2027, 12, 24)),
            want(WantKind.RHYTHM, of=RhythmOf.SOWING),
        )
    ]
    assert said[0] == "Butterhead lettuce: 40 heads every Thursday from Wed 10 Mar 2027"
    assert said[1].endswith("every week from Wed 10 Mar 2027 to Tue 30 Nov 2027")
    assert said[2] == "Butterhead lettuce: 40 heads by Fri 24 Dec 2027"
    assert "sow 40 plants on FREQ=WEEKLY" in said[3]


def test_that_holidays_are_read_and_a_wrong_one_is_named():
    ask = HowAsk(sow_from=TODAY, holidays="2027-12-24, Sat 25 Dec 2027; ")
    wish = wish_of(ask, frozenset({6}), today=TODAY)
    assert wish.work.closed_on == {date(2027, 12, 24), date(2027, 12, 25)}
    assert wish.work.closed_weekdays == {6}
    with pytest.raises(FarmFaultError) as refused:
        wish_of(dataclasses.replace(ask, holidays="Christmas"), frozenset(), today=TODAY)
    assert refused.value.faults[0].field == "holidays"


def test_that_every_note_has_words(means):
    assert set(NOTE_WORDS) == set(NoteKind)
    values = (("amount", 12.0), ("days", 3.0), ("ripe_share", 0.5), ("stand_share", 0.25))
    for kind in NoteKind:
        said = note_words(Note(kind=kind, crop=LETTUCE, on=TODAY, values=values), means.catalogue)
        assert said.startswith("Butterhead lettuce: ")


def test_that_seeds_are_counted_in_front_of_the_grower():
    found = seeding_for(200, SeedRule(germination=0.95, survival=0.97, per_pot=4, per_tray=72))
    assert seed_words(found) == (
        "200 plants ÷ 0.95 that come up ÷ 0.97 that live = 218 seeds; in 55 pots: 220 seeds, "
        "trays of 72: 1, cells left empty: 17"
    )


def test_that_a_shortage_says_what_is_missing_and_what_would_free_it(kitchen):
    refusal = Refusal(
        kind=RefusalKind.NO_FREE_PLACES,
        batch=kitchen.batches[0].id,
        bed="Raft A",
        needed=40,
        free=28,
        tight_on=date(2027, 4, 7),
        freeing=(Freeing(code="LTB-1", places=12, until_on=date(2027, 4, 20), locked=True),),
    )
    said = shortage_words(kitchen.batches[0], refusal)
    assert "12 places too few in Raft A (40 needed, 28 free), tightest on Wed 7 Apr 2027" in said
    assert "LTB-1 (12 places, leaves Tue 20 Apr), locked" in said


def test_that_only_the_fields_of_a_kind_are_shown(qtbot, successions):
    part = successions.part
    part.kind.setFocus()
    for kind in WantKind:
        shown = {field for field, row in part.want.rows.items() if not row.isHidden()}
        assert part.kind.currentData() is kind
        assert shown == set(FIELDS_OF[kind])
        qtbot.keyClick(part.kind, Qt.Key.Key_Down)


def test_that_wrong_wishes_are_said_by_the_field_and_nothing_is_lost(qtbot, successions):
    part = successions.part
    line = typed(qtbot, part.want, "amount", "plenty")
    click(qtbot, part.add)
    assert "no number" in part.want.rows["amount"].words
    assert line.text() == "plenty"
    typed(qtbot, part.want, "amount", "0")
    click(qtbot, part.add)
    assert "within 0.01 to" in part.want.rows["amount"].words
    typed(qtbot, part.want, "amount", "5")
    typed(qtbot, part.want, "until_on", "2026-01-01")
    click(qtbot, part.add)
    assert "before it begins" in part.want.rows["until_on"].words
    assert part.wants == []


def test_that_a_wish_is_listed_and_can_be_taken_off(qtbot, asked):
    part = asked.part
    assert part.begin_it.isEnabled()
    assert part.table.model_of_rows.rows[0].texts[0].startswith("Butterhead lettuce: 10 heads every Thursday")
    part.table.selectRow(0)
    click(qtbot, part.remove)
    assert part.wants == []
    assert not part.begin_it.isEnabled()
    assert not part.no_wants.isHidden()


def test_that_the_targets_are_taken_once(qtbot, successions, kitchen):
    part = successions.part
    click(qtbot, part.take)
    click(qtbot, part.take)
    assert len(part.wants) == len(kitchen.targets)


def test_that_sowings_are_shown_with_seeds_and_the_farm_stays(qtbot, worked_out, kitchen):
    part = worked_out.part
    assert worked_out.session.farm == kitchen
    assert "sowings" in part.head.text()
    rows = part.sowings.model_of_rows.rows
    assert len(rows) == len(part.found.sowings) > 10
    part.sowings.setFocus()
    part.sowings.selectRow(0)
    qtbot.keyClick(part.sowings, Qt.Key.Key_Down)
    assert "÷" in part.seeds.text()
    assert "÷" in part.rules.text()
    assert part.chart.chart.weeks


def test_that_every_sowing_comes_on_or_before_its_thursday(worked_out):
    ready = {one.batch.id: one.first_pick_on for one in worked_out.part.found.sowings}
    assert all(on <= date(2027, 11, 30) for on in ready.values())


def test_that_the_model_of_sowings_behaves(qtmodeltester, worked_out, kitchen, means):
    model = RowsModel(sowing_columns())
    model.set_rows(sowing_rows(worked_out.part.found, kitchen, means.catalogue))
    qtmodeltester.check(model)


def test_that_adopting_is_one_act_that_one_undo_takes_back(qtbot, worked_out, kitchen):
    part = worked_out.part
    count = len(part.found.batches)
    part.adopt.setFocus()
    qtbot.keyClick(part.adopt, Qt.Key.Key_Space)
    assert worked_out.session.undo_title == f"Adopt {count} sowings"
    assert len(worked_out.session.farm.batches) != len(kitchen.batches)
    worked_out.session.undo()
    assert worked_out.session.farm == kitchen


def test_that_a_proposal_for_another_farm_cannot_be_adopted(qtbot, worked_out, kitchen):
    from planner.actions.batches import lock_batch

    batch = next(one for one in kitchen.batches if not one.locked)
    worked_out.session.act(lock_batch(kitchen, batch.id, locked=True))
    assert not worked_out.part.adopt.isEnabled()
    assert "has changed since" in worked_out.part.stale.text()


def test_that_dropping_forgets_the_sowings(qtbot, worked_out):
    click(qtbot, worked_out.part.drop)
    assert worked_out.part.found is None
    assert worked_out.part.shown.isHidden()


def test_that_a_week_without_work_is_refused_beside_its_boxes(qtbot, asked):
    part = asked.part
    for box in part.closed.boxes:
        box.setFocus()
        qtbot.keyClick(box, Qt.Key.Key_Space)
    click(qtbot, part.begin_it)
    assert not part.is_working
    assert "at least one" in part.closed.trouble.text()


def test_that_nothing_is_sown_or_moved_on_a_day_without_work(qtbot, asked, rest):
    part = asked.part
    for day in (5, 6):
        qtbot.keyClick(part.closed.boxes[day], Qt.Key.Key_Space)
    click(qtbot, part.begin_it)
    rest(part)
    assert part.found.sowings
    assert all(one.sow_on.weekday() < 5 for one in part.found.sowings)
    assert all(one.move_on.weekday() < 5 for one in part.found.sowings if one.move_on)


def test_that_stopping_leaves_the_farm_as_it_is(qtbot, asked, kitchen):
    part = asked.part
    click(qtbot, part.begin_it)
    assert part.working.isVisible()
    click(qtbot, part.working.stop)
    assert not part.is_working
    assert "Stopped" in part.state.text()
    assert asked.session.farm == kitchen


def test_that_a_crop_in_two_units_is_refused_in_words(qtbot, asked, rest):
    part = asked.part
    part.want.show_value("unit", TargetUnit.KG)
    click(qtbot, part.add)
    click(qtbot, part.begin_it)
    rest(part)
    assert part.found is None
    assert "No sowings could be worked out" in part.state.text()


def test_that_a_farm_without_a_bed_is_told_so(qtbot, stage, bare, rest):
    part = stage(SuccessionPart, bare).part
    assert not part.take.isEnabled()
    part.want.show_value("crop", LETTUCE)
    typed(qtbot, part.want, "amount", "10")
    click(qtbot, part.add)
    click(qtbot, part.begin_it)
    rest(part)
    assert "Nothing is to be sown" in part.head.text()
    assert "no bed" in part.misfits.text()
    assert not part.adopt.isEnabled()


def test_that_every_control_has_a_spoken_name_and_both_looks_can_be_worn(worked_out):
    assert nameless_controls(worked_out.part) == []
    worked_out.part.wear(DARK)
    worked_out.part.wear(LIGHT)
