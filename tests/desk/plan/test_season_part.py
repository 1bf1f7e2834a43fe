"""A season worked out on the page: shown beside today's plan, adopted as one act, or dropped."""

import dataclasses
from datetime import date
from threading import Event

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QImage

from planner.desk.plan.asks import SeasonAsk, Weekday
from planner.desk.plan.chart import EMPTY, Chart, Form, Strand, WeekChart, chart_words, week_tip
from planner.desk.plan.season_part import SeasonPart, options_of
from planner.desk.plan.season_rows import (
    DIFFERENCE_WORDS,
    STATUS_WORDS,
    STEP_WORDS,
    amount_words,
    gap_words,
    week_rows,
)
from planner.desk.plan.season_work import SeasonFound, season_steps
from planner.desk.theme import DARK, LIGHT
from planner.farm.crops import TargetUnit
from planner.forecast.engine import Forecaster
from planner.planning.rhythm import WorkDays
from planner.planning.season_plan.job import PlanStep
from planner.planning.season_plan.plan import PlanStatus
from planner.planning.season_plan.proposal import DifferenceKind
from tests.desk.helpers import TODAY, nameless_controls, put_away
from tests.desk.plan.hands import click


@pytest.fixture
def season(stage, kitchen):
    found = stage(SeasonPart, kitchen)
    found.part.form.show_value("search_seconds", 1)
    return found


@pytest.fixture
def worked_out(season, qtbot, rest):
    click(qtbot, season.part.begin_it)
    rest(season.part)
    return season


def test_that_every_code_has_words():
    assert set(STEP_WORDS) == set(PlanStep)
    assert set(STATUS_WORDS) == set(PlanStatus)
    assert set(DIFFERENCE_WORDS) == set(DifferenceKind)


def test_that_the_gap_is_said_in_percent_and_never_as_nothing_when_there_is_one():
    assert gap_words(0.0) == "Within 0.0 % of the best possible."
    assert gap_words(0.0001) == "Within 0.1 % of the best possible."
    assert gap_words(0.0081) == "Within 0.8 % of the best possible."
    assert gap_words(0.25) == "Within 25 % of the best possible."


def test_that_amounts_are_counted_in_their_unit():
    assert amount_words(22.4, TargetUnit.HEADS) == "22 heads"
    assert amount_words(0.44, TargetUnit.KG) == "0.4 kg"
    assert amount_words(0.0, TargetUnit.KG) == "–"


def test_that_the_day_of_sowing_is_counted_from_the_first_of_the_farms_week(means, kitchen):
    ruler = means.forecaster.preview(kitchen).ruler
    ask = SeasonAsk(from_on=TODAY, sow_weekday=Weekday.THURSDAY, exact=True, search_seconds=2.0)
    options = options_of(ask, ruler, WorkDays())
    sown = date.fromordinal(ruler.start_on.toordinal() + options.sow_weekday)
    assert sown.weekday() == Weekday.THURSDAY.value
    assert options.exact_seconds > options.seconds


def test_that_targets_and_places_are_shown_before_anything_is_asked(season, kitchen):
    part = season.part
    assert [row.id for row in part.targets.model_of_rows.rows] == [target.id for target in kitchen.targets]
    assert "holes in rafts" in part.room.text()
    assert "Nothing changes until you adopt it" in part.state.text()
    assert part.shown.isHidden()


def test_that_a_proposal_is_shown_and_the_farm_stays_as_it_is(worked_out, kitchen):
    part = worked_out.part
    assert worked_out.session.farm == kitchen
    assert part.head.text().startswith("Within ")
    assert "of the best possible" in part.head.text()
    assert part.differences.model_of_rows.rows
    assert part.charts[0].chart.weeks
    assert part.adopt.isEnabled()
    starts = [week.start_on for week in part.found.plan.weeks]
    rows = week_rows(part.found, 0, part.behind.outlook.catalogue)
    assert 0 < len(rows) <= len(starts)


def test_that_another_crop_and_element_are_shown_by_keys(qtbot, worked_out):
    part = worked_out.part
    first = [chart.chart for chart in part.charts]
    every = part.weeks.model_of_rows.rows
    assert len({row.texts[1] for row in every}) == len(part.found.crops)
    for box in (part.crop, part.crop, part.element):
        box.setFocus()
        qtbot.keyClick(box, Qt.Key.Key_Down)
    assert {row.texts[1] for row in part.weeks.model_of_rows.rows} == {part.crop.currentText()}
    assert [chart.chart for chart in part.charts] != first
    assert part.charts[0].chart.title != first[0].title


def test_that_the_charts_tell_what_the_forecast_of_the_adopted_farm_tells(qtbot, worked_out, means):
    from planner.planning.outcome import supply_by_week

    part = worked_out.part
    found = part.found
    click(qtbot, part.adopt)
    forecast = Forecaster(means.catalogue).preview(worked_out.session.farm)
    first, count = found.plan.model.first_week, found.plan.model.weeks
    for course in found.crops:
        share = means.catalogue.crops[course.crop].marketable_share
        comes = supply_by_week(forecast, course.crop, course.unit, share)[first : first + count]
        assert course.proposed == pytest.approx(tuple(comes))


def test_that_adopting_is_one_act_that_one_undo_takes_back(qtbot, worked_out, kitchen):
    part = worked_out.part
    told = []
    part.told.connect(told.append)
    part.adopt.setFocus()
    qtbot.keyClick(part.adopt, Qt.Key.Key_Space)
    assert worked_out.session.farm != kitchen
    assert worked_out.session.undo_title.startswith("Adopt the season plan from ")
    assert told
    assert part.shown.isHidden()
    worked_out.session.undo()
    assert worked_out.session.farm == kitchen


def test_that_dropping_forgets_the_proposal(qtbot, worked_out, kitchen):
    click(qtbot, worked_out.part.drop)
    assert worked_out.part.found is None
    assert worked_out.part.shown.isHidden()
    assert worked_out.session.farm == kitchen


def test_that_a_proposal_for_another_farm_cannot_be_adopted(qtbot, worked_out, kitchen):
    part = worked_out.part
    part.targets.selectRow(0)
    click(qtbot, part.remove)
    assert len(worked_out.session.farm.targets) == len(kitchen.targets) - 1
    assert not part.adopt.isEnabled()
    assert "has changed since" in part.stale.text()
    worked_out.session.undo()
    assert part.adopt.isEnabled()
    assert part.stale.isHidden()


def test_that_stopping_keeps_the_best_so_far(qtbot, season, rest):
    part = season.part
    part.form.show_value("search_seconds", 300)
    click(qtbot, part.begin_it)
    assert part.working.isVisible()
    assert not part.begin_it.isEnabled()
    qtbot.waitUntil(lambda: part.working.bar.value() >= 30, timeout=60_000)
    click(qtbot, part.working.stop)
    rest(part)
    assert part.found is not None
    assert part.found.plan.status is PlanStatus.STOPPED
    assert "You stopped the search" in part.judged.text()
    assert part.begin_it.isEnabled()


def test_that_stopping_at_once_leaves_nothing_and_says_so(means, kitchen):
    enough = Event()
    enough.set()
    ask = SeasonAsk(from_on=TODAY, exact=False)
    options = options_of(ask, means.forecaster.preview(kitchen).ruler, WorkDays())
    found = list(season_steps(options, enough, kitchen, Forecaster(means.catalogue), Event()))
    assert not any(isinstance(one, SeasonFound) for one in found)


def test_that_wrong_limits_are_said_beside_their_fields_and_nothing_begins(qtbot, season):
    part = season.part
    for field, text, wanted in (
        ("lot_plants", "half", "no whole number"),
        ("labour_min_per_week", "-5", "within 0 to"),
        ("weeks", "0", "within 1 to 520"),
        ("from_on", "soon", "is no date"),
    ):
        line = part.form.editor(field).focusProxy()
        before = line.text()
        line.setFocus()
        line.selectAll()
        qtbot.keyClicks(line, text)
        click(qtbot, part.begin_it)
        assert wanted in part.form.rows[field].words, field
        assert line.text() == text
        assert not part.is_working
        line.selectAll()
        qtbot.keyClicks(line, before) if before else qtbot.keyClick(line, Qt.Key.Key_Delete)


def test_that_nothing_is_sown_on_a_day_without_work(qtbot, season, rest):
    part = season.part
    qtbot.keyClick(part.closed.boxes[0], Qt.Key.Key_Space)
    click(qtbot, part.begin_it)
    rest(part)
    assert part.found.plan.sowings
    assert all(sowing.sow_on.weekday() != 0 for sowing in part.found.plan.sowings)


def test_that_a_holiday_that_is_no_date_is_said_beside_its_field(qtbot, season):
    part = season.part
    part.form.show_value("holidays", "Easter")
    click(qtbot, part.begin_it)
    assert "is no date" in part.form.rows["holidays"].words
    assert not part.is_working


def test_that_more_weeks_than_the_plan_holds_are_refused_in_words(qtbot, season, rest):
    part = season.part
    part.form.show_value("weeks", 500)
    click(qtbot, part.begin_it)
    rest(part)
    assert part.found is None
    assert "500" in part.state.text()


def test_that_a_farm_without_targets_is_told_to_add_one(qtbot, stage, bare, rest):
    found = stage(SeasonPart, bare)
    part = found.part
    assert "Nothing is wanted yet" in part.no_targets.text()
    assert part.targets.isHidden()
    assert "no bed" in part.room.text()
    wanted = []
    part.new_wanted.connect(lambda word, owner: wanted.append((word, owner)))
    click(qtbot, part.add)
    assert wanted == [("target", "")]
    click(qtbot, part.begin_it)
    rest(part)
    assert "nothing to plan" in part.head.text()
    assert part.tabs.isHidden()
    assert not part.adopt.isEnabled()


def test_that_a_target_is_opened_by_its_button(qtbot, season, kitchen):
    opened = []
    season.part.opened.connect(opened.append)
    season.part.targets.selectRow(1)
    click(qtbot, season.part.alter)
    assert opened == [kitchen.targets[1].id]


def test_that_a_farm_without_a_bed_is_told_so(qtbot, stage, bare, kitchen, rest):
    part = stage(SeasonPart, dataclasses.replace(bare, targets=kitchen.targets)).part
    click(qtbot, part.begin_it)
    rest(part)
    assert "no bed" in part.head.text()


def test_that_every_control_has_a_spoken_name_and_both_looks_can_be_worn(worked_out):
    part = worked_out.part
    assert nameless_controls(part) == []
    part.wear(DARK)
    assert all(chart.theme is DARK for chart in part.charts)
    part.wear(LIGHT)


# --- the chart -----------------------------------------------------------------------------------------

CHART = Chart(
    title="Harvest",
    unit="heads a week",
    weeks=("W01 2027", "W02 2027", "W03 2027"),
    strands=(
        Strand(label="proposal", values=(10.0, 0.0, 20.0), form=Form.BARS, colour=0),
        Strand(label="wanted", values=(15.0, 15.0, 15.0), form=Form.STEPS, colour=0),
    ),
)


@pytest.fixture
def chart(qtbot):
    found = WeekChart(LIGHT, None)
    found.resize(400, 200)
    found.show_chart(CHART)
    found.show()
    yield found
    put_away(found)


def test_that_a_chart_is_said_in_a_sentence():
    assert chart_words(CHART) == ("Harvest [heads a week]: proposal from 0 to 20; wanted from 15 to 15")
    assert "nothing to show" in chart_words(EMPTY)
    assert week_tip(CHART, 2).splitlines() == [
        "W03 2027",
        "proposal: 20 heads a week",
        "wanted: 15 heads a week",
    ]


def test_that_the_week_under_the_pointer_is_found(chart):
    chart.grab()
    plot = chart._plot
    at = [chart.week_at(plot.left() + plot.width() * share) for share in (0.01, 0.5, 0.99)]
    assert at == [0, 1, 2]
    assert chart.week_at(QPoint(0, 0).x()) == -1


@pytest.mark.parametrize("theme", [LIGHT, DARK])
def test_that_bars_stand_as_high_as_their_values(chart, theme):
    chart.wear(theme)
    image = QImage(400, 200, QImage.Format.Format_RGB32)
    chart.render(image)
    plot = chart._plot
    ground = theme.field.name()

    def height(week):
        x = round(plot.left() + plot.width() * (week + 0.5) / 3)
        rows = range(round(plot.top()) + 2, round(plot.bottom()) - 1)
        filled = [y for y in rows if image.pixelColor(x, y).name() not in (ground, theme.text.name())]
        return len(filled)

    assert height(2) == pytest.approx(2 * height(0), abs=8)
    assert height(1) < 8


def test_that_an_empty_chart_can_be_painted(chart):
    chart.show_chart(EMPTY)
    chart.grab()
    assert chart.week_at(100) == -1
