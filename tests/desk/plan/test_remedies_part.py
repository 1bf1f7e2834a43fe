"""Flagged weeks with their repairs: what is told of each, and that applying one is one act."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel

from planner.desk.plan.remedies_part import RemediesPart, flag_rows
from planner.desk.plan.remedy_list import RemedyList, flags_in, repairable_flags
from planner.desk.plan.remedy_words import _WORDS, SIDE_EFFECT_WORDS, act_of, remedy_words
from planner.desk.rows import RowsModel
from planner.desk.theme import DARK, LIGHT
from planner.planning.remedies.values import RemedyKind, SideEffect
from tests.desk.helpers import TODAY, nameless_controls, put_away
from tests.desk.plan.hands import click


def shown_words(widget):
    return "\n".join(label.text() for label in widget.findChildren(QLabel) if not label.isHidden())


@pytest.fixture
def repairs(stage, kitchen, qtbot, rest):
    found = stage(RemediesPart, kitchen)
    qtbot.waitUntil(lambda: bool(found.part.list.buttons), timeout=60_000)
    rest(found.part.list)
    return found


def test_that_every_kind_of_remedy_and_side_effect_has_words():
    assert set(_WORDS) == set(RemedyKind)
    assert set(SIDE_EFFECT_WORDS) == set(SideEffect)


def test_that_flagged_weeks_stand_in_order_and_none_is_over(behind_of, kitchen):
    flags = repairable_flags(behind_of(kitchen))
    assert flags
    assert [flag.on for flag in flags] == sorted(flag.on for flag in flags)
    assert all((flag.until_on or flag.on) >= TODAY for flag in flags)


def test_that_the_model_of_flagged_weeks_behaves(qtmodeltester, behind_of, kitchen, repairs):
    behind = behind_of(kitchen)
    model = RowsModel([*repairs.part.table.model_of_rows._columns])
    model.set_rows(flag_rows(repairable_flags(behind), behind.outlook.forecast.ruler))
    qtmodeltester.check(model)


def test_that_a_flagged_week_shows_repairs_with_their_effect(repairs):
    said = shown_words(repairs.part.list)
    assert 2 <= len(repairs.part.list.buttons) <= 5
    assert "→" in said
    assert "Look out:" in said
    assert "⚠ " in said


def test_that_the_caution_of_a_repair_stands_beside_it(repairs):
    behind, part = repairs.part.behind, repairs.part.list
    keys = {key for remedy in part._offered for key in remedy.cautions}
    assert keys
    said = shown_words(part)
    assert all(behind.outlook.catalogue.cautions[key].text in said for key in keys)


def test_that_applying_a_repair_is_one_act_that_one_undo_takes_back(qtbot, repairs, kitchen, rest):
    remedy = repairs.part.list._offered[0]
    words = remedy_words(remedy, repairs.part.behind.outlook.catalogue)
    told = []
    repairs.part.told.connect(told.append)
    button = repairs.part.list.buttons[0]
    button.setFocus()
    qtbot.keyClick(button, Qt.Key.Key_Space)
    assert repairs.session.farm != kitchen
    assert repairs.session.undo_title == words
    assert words in told[0]
    repairs.session.undo()
    assert repairs.session.farm == kitchen


def test_that_a_repair_for_another_farm_is_not_applied(qtbot, repairs, kitchen, rest):
    from planner.actions.plan import rename_farm

    behind, conduct = repairs.part.behind, repairs.part.needs.conduct
    found = RemedyList(LIGHT, conduct, None)
    found.ask_flags(behind, repairable_flags(behind)[:1])
    rest(found)
    repairs.session.act(rename_farm(kitchen, "Other"))
    changed = repairs.session.farm
    click(qtbot, found.buttons[0])
    assert repairs.session.farm is changed
    assert "has changed since" in found.state.text()
    put_away(found)


def test_that_another_week_can_be_chosen_by_keys(qtbot, repairs, rest):
    table = repairs.part.table
    table.setFocus()
    before = table.current().id
    qtbot.keyClick(table, Qt.Key.Key_Down)
    assert table.current().id != before
    qtbot.waitUntil(lambda: repairs.part.list.is_working)
    rest(repairs.part.list)


def test_that_the_search_can_be_stopped(qtbot, stage, kitchen):
    part = stage(RemediesPart, kitchen).part
    qtbot.waitUntil(lambda: part.list.is_working)
    assert part.list.working.isVisible()
    qtbot.mouseClick(part.list.working.stop, Qt.MouseButton.LeftButton)
    assert not part.list.is_working
    assert part.list.working.isHidden()
    assert "Stopped" in part.list.state.text()


def test_that_a_bare_farm_is_told_that_nothing_is_flagged(stage, bare):
    part = stage(RemediesPart, bare).part
    assert part.table.isHidden()
    assert "No week from today on is flagged" in part.count.text()


def test_that_a_list_elsewhere_can_ask_for_a_week_of_a_loop(qtbot, repairs, kitchen, rest):
    behind = repairs.part.behind
    flag = repairable_flags(behind)[0]
    week = behind.outlook.forecast.ruler.week_of(flag.on)
    loop = kitchen.loops[0].id
    assert flag in flags_in(behind, loop, week)
    found = RemedyList(LIGHT, repairs.part.needs.conduct, repairs.part)
    found.ask(behind, loop, 0)
    assert "Nothing in this week" in found.state.text()
    found.ask(behind, loop, week)
    rest(found)
    assert found.buttons


def test_that_the_act_bears_the_words_that_are_shown(repairs):
    behind = repairs.part.behind
    for remedy in repairs.part.list._offered:
        act = act_of(remedy, behind.outlook.catalogue)
        assert act.title == remedy_words(remedy, behind.outlook.catalogue)
        assert act.changes == remedy.change_set.changes


def test_that_every_control_has_a_spoken_name_and_both_looks_can_be_worn(repairs):
    assert nameless_controls(repairs.part) == []
    repairs.part.wear(DARK)
    repairs.part.wear(LIGHT)
