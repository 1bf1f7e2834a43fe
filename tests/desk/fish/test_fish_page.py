"""The fish page shows each group's course, what it is fed by week, meal and scoop, and what it asks for."""

import dataclasses

import numpy as np
import pytest
from PySide6.QtCore import Qt, QUrl

from planner.desk import settings
from planner.desk.behind import Behind
from planner.desk.fish.asked import week_facts
from planner.desk.fish.course import course_of_group
from planner.desk.fish.facts import fish_page
from planner.desk.fish.plots import density_plot, growth_plot
from planner.desk.fish.ration import SCOOPS_COLUMN, pellet_words, ration_rows, week_rations
from planner.desk.fish.weeks import Scoop
from planner.desk.forms.form import FormDialog
from planner.desk.outlook import look_out
from planner.desk.why.dialog import WhyDialog
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import id_from
from tests.desk.helpers import TODAY, nameless_controls


@pytest.fixture
def behind(means, farm):
    return Behind(look_out(farm, means.forecaster), means.forecaster, TODAY)


@pytest.fixture
def course(behind, farm):
    return course_of_group(behind, farm.fish_groups[0].id)


@pytest.fixture
def page(window):
    window.menus.actions["view.fish"].trigger()
    return window.workspace.shelf.place("fish")


def test_that_slow_growth_lies_below_and_quick_growth_above_what_is_likely(course):
    assert np.all(course.slow.weight_g <= course.likely.weight_g + 1e-9)
    assert np.all(course.likely.weight_g <= course.quick.weight_g + 1e-9)
    assert course.slow.weight_g[-1] < course.quick.weight_g[-1]


def test_that_a_growers_own_figure_leaves_no_span(means, farm):
    group = dataclasses.replace(farm.fish_groups[0], tgc=1.0)
    own = dataclasses.replace(farm, fish_groups=(group, *farm.fish_groups[1:]))
    behind = Behind(look_out(own, means.forecaster), means.forecaster, TODAY)
    assert course_of_group(behind, group.id).slow is None


def test_that_slow_and_quick_meet_where_fish_are_weighed(means, farm):
    group = farm.fish_groups[0]
    sample = FishEvent(
        id=id_from("weighed"), group=group.id, on=TODAY, kind=FishEventKind.SAMPLE, mean_weight_g=150.0
    )
    weighed = dataclasses.replace(farm, fish_events=(*farm.fish_events, sample))
    behind = Behind(look_out(weighed, means.forecaster), means.forecaster, TODAY)
    found = course_of_group(behind, group.id)
    assert found.slow.weight_g[found.day] == found.quick.weight_g[found.day] == 150.0
    marks = [mark for mark in growth_plot(found).marks if mark.day == TODAY.toordinal()]
    assert [mark.value for mark in marks] == [150.0]


def test_that_a_meal_is_the_days_feed_over_the_meals_and_scoops_the_meal_over_a_scoop(course, behind):
    rows = ration_rows(course, Scoop(meals=2, grams=25.0), behind.outlook.catalogue.feeds)
    feed = next(week_rations(course)).feed_g
    assert rows[0].sort[2] == pytest.approx(feed / 2)
    assert float(rows[0].texts[3]) == pytest.approx(feed / 2 / 25.0, abs=0.051)


def test_that_a_scoop_that_was_never_weighed_gives_no_number_of_scoops(course, behind):
    rows = ration_rows(course, Scoop(meals=2, grams=0.0), behind.outlook.catalogue.feeds)
    assert {row.texts[3] for row in rows} == {"–"}


def test_that_a_feed_too_coarse_for_the_fish_names_a_better_one(behind):
    feeds = behind.outlook.catalogue.feeds
    coarse = max(feeds.values(), key=lambda feed: feed.for_fish_from_g)
    assert "better" in pellet_words(coarse, coarse.for_fish_from_g - 1.0, feeds)
    assert pellet_words(coarse, coarse.for_fish_from_g, feeds) == coarse.pellet_mm


def test_that_the_limit_stands_in_the_plot_of_density(course):
    assert [level.value for level in density_plot(course).levels] == [course.density_limit]


def test_that_the_page_of_a_group_carries_its_cautions(behind, course):
    cautions = [words for section in fish_page(behind, course).sections for words in section.cautions]
    topics = {behind.outlook.catalogue.cautions[key].topic for key in ("species-law", "fish-medicine")}
    assert topics <= {words.partition(":")[0] for words in cautions}


def test_that_every_control_of_the_page_has_a_spoken_name(page):
    assert nameless_controls(page) == []


def test_that_scoops_are_told_once_the_scoop_is_weighed_and_remembered(qtbot, page, window):
    assert page.ration.isColumnHidden(SCOOPS_COLUMN)
    page.scoop.setFocus()
    page.scoop.selectAll()
    qtbot.keyClicks(page.scoop, "20")
    qtbot.keyClick(page.scoop, Qt.Key.Key_Return)
    assert not page.ration.isColumnHidden(SCOOPS_COLUMN)
    assert page.ration.model_of_rows.rows[0].texts[3] != "–"
    assert window.memory.get(settings.SCOOP_G) == 20.0


def test_that_enter_on_a_week_asks_why(qtbot, page, window):
    page.ration.setFocus()
    page.ration.selectRow(0)
    qtbot.keyClick(page.ration, Qt.Key.Key_Return)
    assert window.findChild(WhyDialog) is not None


def shown(value):
    """Return the number a text of a fact begins with."""
    return float(value.partition("\u00a0")[0].partition(" ")[0].replace(",", ""))


def test_that_every_answer_of_a_week_is_of_the_figure_it_is_asked_of(course, behind):
    for ration in week_rations(course):
        facts = week_facts(course, ration)
        assert len(facts) == 3
        for fact in facts:
            assert behind.why(fact.ask).value == pytest.approx(shown(fact.value), abs=0.51)
        assert behind.why(facts[2].ask).value == pytest.approx(ration.density)


def test_that_a_click_on_the_live_weight_asks_why(page, window):
    asked = [fact.label for fact in page.page.askable]
    page.text.anchorClicked.emit(QUrl(f"why:{asked.index('Live weight')}"))
    assert window.findChild(WhyDialog).answer.title.startswith("Mass of a group")


def test_that_an_event_is_added_to_the_group_shown(qtbot, page, window, farm):
    qtbot.mouseClick(page.new_event, Qt.MouseButton.LeftButton)
    dialog = window.findChild(FormDialog)
    assert dialog.rows["group"].editor.read() == farm.fish_groups[0].id
