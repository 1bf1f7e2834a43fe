"""What is warned of can be asked why: in the side panel, on the pages of fish and water, in flagged weeks."""

from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QTextCursor

from planner.desk.behind import Behind
from planner.desk.facts import page_of
from planner.desk.fish.course import course_of_group
from planner.desk.fish.facts import fish_page
from planner.desk.outlook import look_out
from planner.desk.pages import Shifted
from planner.desk.side import page_html
from planner.desk.theme import LIGHT
from planner.desk.water_before import before_fact
from planner.desk.week_facts import flag_asked
from planner.desk.why.answers import answer_of
from planner.desk.why.dialog import WhyDialog
from planner.desk.why.entered import answer_to
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import id_from, new_id
from planner.farm.water import Quantity, Reading
from planner.forecast.water.bases import Before
from planner.forecast.why.values import Origin, Subject, SubjectKind
from planner.shipped import shipped_path
from tests.desk.helpers import TODAY

WHY = (Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)


@pytest.fixture(scope="module")
def kitchen(means):
    return means.read(shipped_path("sample_data", "school-kitchen.toml")).farm


def behind_of(means, farm, day=TODAY):
    return Behind(look_out(farm, means.forecaster), means.forecaster, day)


def warned(page):
    return [warning for section in page.sections for warning in section.warnings]


def answered(window):
    (dialog,) = [each for each in window.findChildren(WhyDialog) if each.isVisible()]
    found = dialog.answer
    dialog.reject()
    return found


def test_that_every_flag_is_shown_where_it_is_asked(means, kitchen):
    behind = behind_of(means, kitchen)
    ruler = behind.outlook.forecast.ruler
    shown = {
        warning.ask
        for week in range(ruler.weeks)
        for warning in warned(page_of(behind, None, ruler.week_start(week)))
        if isinstance(warning.ask, Subject) and warning.ask.kind is SubjectKind.FLAG
    }
    flags = behind.outlook.forecast.flags
    assert flags
    assert shown == {flag_asked(flag) for flag in flags}
    for flag in flags:
        found = behind.why(flag_asked(flag))
        assert found.on == flag.on
        assert answer_of(found, means.catalogue).title


def test_that_a_warning_is_a_link_before_the_facts(means, kitchen):
    behind = behind_of(means, kitchen)
    flag = next(flag for flag in behind.outlook.forecast.flags if flag.on is not None)
    page = page_of(behind, None, flag.on)
    html = page_html(page, LIGHT)
    for number, fact in enumerate(page.askable):
        assert html.count(f"href='why:{number}'") == 1, fact.label
    assert set(warned(page)) <= set(page.askable)


def test_that_a_warning_answers_by_its_link_and_by_the_key_that_stands_on_it(qtbot, window, means, kitchen):
    panel = window.workspace.side
    behind = behind_of(means, kitchen)
    flag = next(flag for flag in behind.outlook.forecast.flags if flag.on is not None)
    page = page_of(behind, None, flag.on)
    panel.show_page(page, of_thing=False)
    number = next(at for at, fact in enumerate(page.askable) if fact.ask == flag_asked(flag))
    with qtbot.waitSignal(panel.why_wanted) as asked:
        stand_on(panel.text, number)
        panel.why.click()
    assert asked.args[0][asked.args[1]].ask == flag_asked(flag)


def stand_on(text, number):
    """Put the cursor of the text into the link of a number."""
    cursor = QTextCursor(text.document())
    while cursor.charFormat().anchorHref() != f"why:{number}":
        assert cursor.movePosition(QTextCursor.MoveOperation.Right)
    text.setTextCursor(cursor)


def unweighed(means, farm, events):
    """Return what the fish page says of fish that were not weighed, and its answer."""
    behind = behind_of(means, replace(farm, fish_events=events), TODAY)
    page = fish_page(behind, course_of_group(behind, farm.fish_groups[0].id))
    (warning,) = [each for each in warned(page) if "weighed" in each.value]
    assert isinstance(warning.ask, Shifted)
    return warning, answer_to(behind, warning.ask)


def test_that_fish_not_weighed_answer_by_the_days_between(means, kitchen):
    group = kitchen.fish_groups[0]
    warning, found = unweighed(means, kitchen, ())
    assert found.value == (TODAY - group.stocked_on).days
    assert f"{found.value:.0f}" in warning.value
    assert found.children[0].on == group.stocked_on
    assert {each.inputs[0].path.rpartition("/")[2] for each in found.children[1:]} == {
        "sample_every_days",
        "sample_fewest_fish",
    }
    on = TODAY - timedelta(days=60)
    weighed = FishEvent(id=new_id(), group=group.id, on=on, kind=FishEventKind.SAMPLE, mean_weight_g=60.0)
    _, later = unweighed(means, kitchen, (weighed,))
    assert later.value == 60.0
    assert later.children[0].on == on


def test_that_water_that_is_too_high_answers_with_its_reading_and_the_limit(means, kitchen):
    loop = kitchen.loops[0]
    high = Reading(
        id=id_from("high"),
        loop=loop.id,
        quantity=Quantity.TAN_MG_PER_L,
        value=9.0,
        on=TODAY - timedelta(days=1),
    )
    behind = behind_of(means, replace(kitchen, readings=(*kitchen.readings, high)))
    water = behind.water(behind.outlook.forecast.loops[0])
    assert Before.AMMONIA_HIGH in water.advice.base.before
    found = before_fact(water, Before.AMMONIA_HIGH, means.catalogue).ask
    read, limit = found.inputs
    assert (read.value, read.origin) == (9.0, Origin.ENTERED)
    assert limit.path == "loop/tan_limit_mg_per_l"
    assert limit.value < read.value


def test_that_a_test_that_is_wanted_answers_how_late_it_is_once_there_was_one(means, kitchen):
    loop = kitchen.loops[0]
    none = behind_of(means, replace(kitchen, readings=()))
    water = none.water(none.outlook.forecast.loops[0])
    assert before_fact(water, Before.TEST_PH, means.catalogue).ask is None
    old = Reading(
        id=id_from("old"), loop=loop.id, quantity=Quantity.PH, value=6.8, on=TODAY - timedelta(days=200)
    )
    behind = behind_of(means, replace(kitchen, readings=(old,)))
    asked = before_fact(behind.water(behind.outlook.forecast.loops[0]), Before.TEST_PH, means.catalogue).ask
    assert asked.kind is SubjectKind.TEST_LATE
    assert behind.why(asked).value > 100.0


def test_that_a_plan_that_is_over_answers_by_its_first_day_and_its_weeks(means, kitchen):
    behind = behind_of(means, kitchen, kitchen.plan_until + timedelta(days=3))
    over = warned(page_of(behind, None, kitchen.plan_until - timedelta(days=1)))[0]
    found = answer_to(behind, over.ask)
    weeks = found.children[1]
    assert found.children[0].on == kitchen.settings.plan_from
    assert found.value == weeks.value * 7 == kitchen.settings.plan_weeks * 7


def test_that_a_flagged_week_of_the_plan_answers_for_its_flag(qtbot, window):
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.menus.actions["view.plan"].trigger()
    place = window.workspace.shelf.place("plan")
    place.go_to("repairs")
    table = place.part("repairs").table
    assert table.model().rowCount()
    table.selectRow(0)
    table.setFocus()
    qtbot.keyClick(table, *WHY)
    assert answered(window).title.startswith("Flag")
