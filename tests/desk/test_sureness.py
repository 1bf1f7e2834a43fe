"""How sure a week is: worked out beside the window, shown as ranges and chances, dropped after a change."""

import dataclasses
from threading import Event

import numpy as np
import pytest
from PySide6.QtCore import QObject, Qt

from planner.desk.behind import Behind
from planner.desk.facts import page_of
from planner.desk.outlook import look_out
from planner.desk.pages import Unsure
from planner.desk.sure_words import element_range_words, harvest_range_words, target_sections
from planner.desk.sureness import Sureness, SureStep, sure_job, sureness_of
from planner.farm.crops import Target, TargetUnit
from planner.farm.ids import id_from
from planner.forecast.chances.draw import chances_of
from planner.forecast.engine import Forecaster
from planner.forecast.ranges.bands import ranges_of
from tests.desk.helpers import TODAY, put_away


@pytest.fixture(scope="session")
def small(farm):
    """The first batches of the sample, with a target, so that a working out is short."""
    batches = farm.batches[:4]
    kept = {batch.id for batch in batches}
    target = Target(
        id=id_from("target"),
        crop=batches[0].crop,
        amount_per_week=10.0,
        unit=TargetUnit.HEADS,
        from_on=farm.settings.plan_from,
    )
    places = tuple(run for run in farm.placements if run.batch in kept)
    return dataclasses.replace(farm, batches=batches, placements=places, targets=(target,))


@pytest.fixture(scope="session")
def sure(means, small):
    forecaster = means.forecaster
    parts = sureness_of(small, forecaster.catalogue_for(small), Event())
    return tuple(part for part in parts if not isinstance(part, SureStep))


@pytest.fixture
def behind(means, small, sure):
    forecaster = Forecaster(means.catalogue)
    found = Behind(look_out(small, forecaster), forecaster, TODAY)
    found.sure = sure[-1]
    return found


@pytest.fixture
def pick_week(behind):
    """A week in which the first crop is harvested."""
    forecast = behind.outlook.forecast
    return int(forecast.ruler.weekly_sum(forecast.harvest_g)[0].argmax())


def test_that_chances_come_first_and_ranges_after(sure):
    assert [part.ranges is None for part in sure] == [True, False]
    assert sure[0].chances is sure[1].chances


def test_that_what_is_shown_is_what_the_forecast_gives(means, small, sure):
    forecaster = Forecaster(means.catalogue)
    forecast = forecaster.forecast(small)
    ranges = ranges_of(small, forecast, forecaster)
    chances = chances_of(small, forecast, forecaster)
    assert sure[1].ranges.crops == ranges.crops
    np.testing.assert_allclose(sure[1].ranges.harvest_g.high, ranges.harvest_g.high)
    np.testing.assert_allclose(sure[1].chances.harvest_plants, chances.harvest_plants)


def test_that_a_stopped_working_out_gives_no_ranges(means, small):
    stopped = Event()
    stopped.set()
    parts = list(sureness_of(small, means.forecaster.catalogue_for(small), stopped))
    assert [part.ranges for part in parts] == [None]


def test_that_harvest_and_elements_carry_low_and_high(behind, pick_week):
    forecast = behind.outlook.forecast
    words = harvest_range_words(behind.sure, forecast.crops[0], pick_week)
    low, high = (float(word) for word in words.removesuffix(" kg").split(" to "))
    assert low < high
    said = element_range_words(behind.sure, forecast.loops[0].loop, 0, pick_week)
    assert said.startswith("supplied ")
    assert "wanted " in said
    assert said.endswith("%")


def test_that_nothing_is_said_of_ranges_before_they_are_there(behind, pick_week):
    loop = behind.outlook.forecast.loops[0].loop
    early = Sureness(chances=behind.sure.chances, ranges=None)
    for sure in (None, early):
        assert harvest_range_words(sure, behind.outlook.forecast.crops[0], pick_week) == ""
        assert element_range_words(sure, loop, 0, pick_week) == ""


def test_that_each_target_says_how_likely_it_is_met(behind, small, pick_week):
    (section,) = target_sections(behind, pick_week)
    (fact,) = section.facts
    chance = behind.sure.chances.chance_at_least(small.targets[0].crop, pick_week, amount=9.999)
    assert fact.value == f"{round(chance * 100)} %"
    assert fact.note == "at least 10 heads; of 1000 draws"
    behind.sure = None
    assert target_sections(behind, pick_week) == ()


def test_that_the_page_of_the_week_shows_both(behind, pick_week):
    monday = behind.outlook.forecast.ruler.week_start(pick_week)
    page = page_of(behind, None, monday)
    assert "Chance that targets are met" in [section.title for section in page.sections]
    ranges = [each for section in page.sections for fact in section.facts for each in fact.more]
    assert any("supplied " in each.value and " to " in each.value for each in ranges)
    asked = [fact.ask for fact in page.askable if isinstance(fact.ask, Unsure)]
    assert {ask.at_least is None for ask in asked} == {True, False}
    for ask in asked:
        assert behind.why_sure(ask.of, ask.at_least).value is not None


def test_that_a_job_tells_its_parts_and_ends(qtbot, means, small):
    keeper, parts = QObject(), []
    job = sure_job(small, means.forecaster.catalogue_for(small), keeper)
    job.told.connect(parts.append)
    with qtbot.waitSignal(job.done, timeout=30_000):
        pass
    shares = [part.share for part in parts if isinstance(part, SureStep)]
    assert shares == sorted(shares)
    assert shares[-1] == 1
    assert [part.ranges is None for part in parts if not isinstance(part, SureStep)] == [True, False]


def test_that_what_goes_wrong_in_a_job_is_raised_in_the_window(qtbot, means, small):
    keeper = QObject()
    broken = dataclasses.replace(small, batches=(dataclasses.replace(small.batches[0], crop="no-such-crop"),))
    with qtbot.captureExceptions() as caught:
        job = sure_job(broken, means.catalogue, keeper)
        with qtbot.waitSignal(job.done, timeout=30_000):
            pass
        qtbot.waitUntil(lambda: caught != [])
    assert caught[0][0] is KeyError


@pytest.fixture
def small_window(qtbot, rooms, small, ask, tmp_path):
    from planner.desk.window import MainWindow
    from tests.desk.helpers import services

    rooms.farm = small
    window = MainWindow(services(rooms, tmp_path, ask))
    window.show()
    qtbot.waitUntil(lambda: window.conduct.session is not None)
    yield window
    put_away(window)


def test_that_a_click_works_out_how_sure_the_week_is(qtbot, small_window):
    side = small_window.workspace.side
    qtbot.mouseClick(side.sure, Qt.MouseButton.LeftButton)
    assert side.sure.text() == "Stop"
    qtbot.waitUntil(lambda: "%" in side.sure.text(), timeout=30_000)
    qtbot.waitUntil(lambda: side.sure.text() == "How sure?", timeout=30_000)
    assert "supplied " in side.text.toPlainText()


def test_that_a_change_of_the_farm_gives_the_working_out_up(qtbot, small_window):
    workspace = small_window.workspace
    workspace.choose(workspace.outlook.farm.batches[0].id)
    small_window.menus.actions["view.sure"].trigger()
    assert workspace.chosen_thing() is None
    assert workspace.side.sure.text() == "Stop"
    workspace.choose(workspace.outlook.farm.batches[0].id)
    small_window.menus.actions["change.lock"].trigger()
    assert workspace.side.sure.text() == "How sure?"
    assert "Chance" not in workspace.side.text.toPlainText()


def test_that_a_second_click_stops_it_and_a_third_begins_anew(qtbot, small_window):
    side, workspace = small_window.workspace.side, small_window.workspace
    qtbot.mouseClick(side.sure, Qt.MouseButton.LeftButton)
    assert side.sure.accessibleName() == "Stop working out how sure it is"
    qtbot.mouseClick(side.sure, Qt.MouseButton.LeftButton)
    assert side.sure.text() == "How sure?"
    assert workspace._behind.sure is None
    qtbot.mouseClick(side.sure, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: side.sure.text() == "How sure?", timeout=30_000)
    assert workspace._behind.sure.ranges is not None
