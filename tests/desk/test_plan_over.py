"""A plan that is over says so on every page that foretells, and gives no figure of its end for today's."""

import dataclasses
from datetime import timedelta

import pytest
from PySide6.QtWidgets import QLabel

from planner.desk.behind import Behind
from planner.desk.book import BookShelf
from planner.desk.facts import page_of
from planner.desk.fish.course import course_of_group
from planner.desk.fish.facts import fish_page
from planner.desk.fish.rows import group_rows
from planner.desk.forms.plans import PLANNED, start_new
from planner.desk.outlook import look_out
from planner.desk.plan.page import SECTIONS
from planner.desk.plan.remedies_part import RemediesPart
from planner.desk.water.doses import Advised
from planner.desk.week_facts import over_words
from planner.desk.words import ended_words
from tests.desk.helpers import TODAY, sample_farm

ENDED = "The plan is over"


@pytest.fixture
def farm(means):
    """The sample farm with a plan of so few weeks that its last day lies before today."""
    farm = sample_farm(means)
    weeks = (TODAY - farm.settings.plan_from).days // 7
    assert weeks > 0
    return dataclasses.replace(farm, settings=dataclasses.replace(farm.settings, plan_weeks=weeks))


@pytest.fixture
def rooms(rooms, farm):
    rooms.farm = farm
    return rooms


def behind_on(means, farm, day):
    return Behind(look_out(farm, means.forecaster), means.forecaster, day)


def test_that_a_plan_is_over_on_the_day_after_its_last_and_not_before(means, farm):
    last = farm.plan_until - timedelta(days=1)
    assert not behind_on(means, farm, last).is_over
    after = behind_on(means, farm, farm.plan_until)
    assert after.is_over
    assert after.shown_on == last
    assert after.water_on == farm.plan_until


def test_that_the_fish_are_told_as_they_stood_when_the_plan_ended(means, farm):
    over = behind_on(means, farm, TODAY)
    last = behind_on(means, farm, over.shown_on)
    page = fish_page(over, course_of_group(over, farm.fish_groups[0].id))
    titles = [section.title for section in page.sections]
    assert titles[0] == ENDED
    assert "When the plan ended" in titles
    assert "Today" not in titles
    assert [row.texts for row in group_rows(over)] == [row.texts for row in group_rows(last)]


def test_that_the_week_says_when_the_plan_ended_and_what_to_do(means, farm):
    page = page_of(behind_on(means, farm, TODAY), None, TODAY)
    assert page.sections[0].title == ENDED
    (over,) = page.sections[0].warnings
    assert "Plan and name" in over.value
    going_on = page_of(behind_on(means, farm, farm.settings.plan_from), None, TODAY)
    assert all(section.title != ENDED for section in going_on.sections)


def test_that_no_dose_is_advised_after_the_plan(window):
    window.menus.actions["view.water"].trigger()
    tab = window.workspace.shelf.place("water").tab
    text = tab.text.toPlainText()
    assert ENDED in text
    assert "What to give" not in text
    assert not any(isinstance(row.payload, Advised) for row in tab.doses.table.model_of_rows.rows)


@pytest.mark.parametrize("key", [section.key for section in SECTIONS])
def test_that_every_section_of_the_plan_says_that_it_is_over(window, means, farm, key):
    window.menus.actions["view.plan"].trigger()
    place = window.workspace.shelf.place("plan")
    place.go_to(key)
    over = place.held[key].over
    assert over.isVisible()
    assert over.text() == over_words(behind_on(means, farm, TODAY))


def test_that_the_plan_page_does_not_call_a_plan_that_is_over_good(window):
    window.menus.actions["view.plan"].trigger()
    part = window.workspace.shelf.place("plan").findChild(RemediesPart)
    assert not part.count.text()
    assert not part.count.isVisible()


def test_that_a_plan_that_is_over_opens_at_its_last_week_and_today_leads_back_there(window, farm):
    workspace = window.workspace
    last_monday = farm.plan_until - timedelta(days=7)
    assert workspace.due.monday == last_monday
    workspace.due.show_week(farm.settings.plan_from)
    window.menus.actions["view.today"].trigger()
    assert workspace.due.monday == last_monday


@pytest.mark.parametrize("word", sorted(PLANNED))
def test_that_a_form_for_what_is_planned_says_that_the_plan_is_over(window, farm, word):
    window.workspace.wishes.ask_new(word)
    dialog = window.workspace.editing.dialog
    said = " ".join(label.text() for label in dialog.findChildren(QLabel))
    assert ended_words(farm) in said
    dialog.reject()


@pytest.mark.parametrize("word", ["reading", "solids batch", "seed lot"])
def test_that_a_form_for_what_is_done_says_nothing_of_the_plan(window, farm, word):
    window.workspace.wishes.ask_new(word)
    dialog = window.workspace.editing.dialog
    assert ended_words(farm) not in " ".join(label.text() for label in dialog.findChildren(QLabel))
    dialog.reject()


FIRST_DAYS = {
    "batch": "sow_on",
    "fish group": "stocked_on",
    "fish event": "on",
    "target": "from_on",
    "dose": "on",
}


@pytest.mark.parametrize(("word", "field"), FIRST_DAYS.items())
@pytest.mark.parametrize("days", [-30, 0, 30])
def test_that_what_is_planned_begins_today_but_not_before_the_plan(means, word, field, days):
    farm = sample_farm(means)
    today = farm.settings.plan_from + timedelta(days=days)
    shelf = BookShelf(means.catalogue)
    assert start_new(word, farm, shelf, today).values[field] == max(today, farm.settings.plan_from)


def test_that_what_is_read_or_siphoned_is_of_today_also_before_the_plan(means):
    farm = sample_farm(means)
    today = farm.settings.plan_from - timedelta(days=30)
    shelf = BookShelf(means.catalogue)
    assert start_new("reading", farm, shelf, today).values["on"] == today
    assert start_new("solids batch", farm, shelf, today).values["siphoned_on"] == today


def test_that_nothing_happens_to_fish_before_they_are_stocked(means):
    farm = sample_farm(means)
    later = dataclasses.replace(farm.fish_groups[0], stocked_on=farm.settings.plan_from + timedelta(days=90))
    farm = dataclasses.replace(farm, fish_groups=(later, *farm.fish_groups[1:]))
    start = start_new(
        "fish event", farm, BookShelf(means.catalogue), farm.settings.plan_from, {"group": later.id}
    )
    assert start.values["on"] == later.stocked_on
