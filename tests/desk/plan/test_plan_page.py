"""The page of the plan in the window: sections made when seen, by hand and by keys, and shared scenarios."""

import pytest
from PySide6.QtCore import Qt

from planner.desk.plan.help_pages import HelpPage, help_of
from planner.desk.plan.page import SECTIONS
from tests.desk.helpers import nameless_controls, put_away


@pytest.fixture
def plan(window):
    window.menus.actions["view.plan"].trigger()
    return window.workspace.shelf.place("plan")


def test_that_no_section_is_made_before_it_is_seen(plan):
    made = [key for key, held in plan.held.items() if held.part is not None]
    assert made == [SECTIONS[0].key]


def test_that_every_section_is_reached_by_keys_and_has_spoken_names(qtbot, plan):
    plan.rail.setFocus()
    for section in SECTIONS:
        assert SECTIONS[plan.stack.currentIndex()] is section
        assert plan.held[section.key].part.isVisible()
        qtbot.keyClick(plan.rail, Qt.Key.Key_Down)
    assert nameless_controls(plan) == []


def test_that_a_narrow_window_chooses_from_a_line_instead(qtbot, window, plan):
    window.resize(640, 500)
    qtbot.waitUntil(plan.rail.isHidden)
    assert not plan.line.isHidden()
    plan.line.setFocus()
    qtbot.keyClick(plan.line, Qt.Key.Key_Down)
    assert plan.stack.currentIndex() == 1
    window.resize(1280, 720)
    qtbot.waitUntil(plan.rail.isVisible)


def test_that_a_hidden_section_is_filled_only_when_it_is_seen(window, plan, farm):
    plan.go_to("season")
    plan.go_to("repairs")
    season = plan.part("season")
    before = season.behind
    window.workspace.choose(farm.batches[0].id)
    window.menus.actions["change.lock"].trigger()
    assert season.behind is before
    plan.go_to("season")
    assert season.behind is not before


def test_that_a_section_offers_a_scenario_to_what_if(window, plan, farm):
    from planner.actions.batches import lock_batch

    season = plan.part("season")
    season.scenario_offered.emit("Season plan", lock_batch(farm, farm.batches[0].id, locked=True))
    assert [one.name for one in plan.part("whatif").kept.kept] == ["Season plan"]


def test_that_leaving_gives_up_what_runs(qtbot, plan):
    plan.go_to("season")
    season = plan.part("season")
    qtbot.mouseClick(season.begin_it, Qt.MouseButton.LeftButton)
    assert season.is_working
    plan.leave()
    assert not season.is_working


def test_that_every_section_has_a_page_of_help(qtbot, plan):
    for section in SECTIONS:
        plan.go_to(section.key)
        held = plan.held[section.key]
        held.help.setFocus()
        qtbot.keyClick(held.help, Qt.Key.Key_Space)
        (dialog,) = held.findChildren(HelpPage)
        assert help_of(section.key)[0][0] in dialog.text.toPlainText()
        assert nameless_controls(dialog) == []
        dialog.reject()
        put_away(dialog)
