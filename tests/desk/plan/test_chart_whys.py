"""Charts of the page Plan are walked by keys, and a week answers with what is drawn in it."""

import pytest
from PySide6.QtCore import QPoint, Qt

from planner.desk.pages import Later
from planner.desk.plan.chart import Chart, Form, Strand, WeekChart
from planner.desk.plan.season_part import SeasonPart
from planner.desk.plan.stocking_part import StockingPart
from planner.desk.plan.succession_part import SuccessionPart
from planner.desk.theme import LIGHT
from planner.forecast.why.values import Subject
from tests.desk.plan.hands import click


def drawn_and_answered(chart, behind):
    """Yield for every point of a chart that can be asked what is drawn there, and what is answered."""
    for strand in chart.strands:
        for week, ask in enumerate(strand.asks):
            if ask is not None:
                found = ask.make() if isinstance(ask, Later) else behind.why(ask)
                assert isinstance(ask, Later | Subject)
                yield strand.values[week], found.value


def check(chart, behind):
    """Every answer is the number that is drawn, as exactly as it is kept."""
    told = list(drawn_and_answered(chart, behind))
    assert told
    for drawn, said in told:
        assert said == pytest.approx(drawn, rel=1e-6, abs=1e-9)


def asked_labels(chart):
    return {strand.label for strand in chart.strands if any(ask is not None for ask in strand.asks)}


@pytest.fixture
def walked(qtbot):
    chart = WeekChart(LIGHT, None)
    qtbot.addWidget(chart)
    values = (1.0, 2.0, 3.0, 4.0, 5.0)
    asks = tuple(Later(f"w{week}", lambda: None) for week in range(5))
    chart.show_chart(
        Chart(
            title="Feed",
            unit="g",
            weeks=tuple(f"W{week}" for week in range(5)),
            strands=(Strand(label="now", values=values, form=Form.BARS, colour=0, asks=asks),),
        )
    )
    chart.resize(500, 200)
    chart.show()
    chart.grab()
    return chart


def test_that_weeks_are_walked_by_keys_and_a_click(qtbot, walked):
    qtbot.keyClick(walked, Qt.Key.Key_End)
    assert walked.facts_at(None)[0].value == "5 g"
    qtbot.keyClick(walked, Qt.Key.Key_Left)
    (fact,) = walked.facts_at(None)
    assert (fact.value, fact.ask.name) == ("4 g", "w3")
    assert "W3" in walked.accessibleDescription()
    x = round(walked._plot.left() + walked._plot.width() * 0.3)
    qtbot.mouseClick(walked, Qt.MouseButton.LeftButton, pos=QPoint(x, 100))
    assert walked.facts_at(None)[0].ask.name == "w1"
    assert walked.facts_at(QPoint(x, 100))[0].ask.name == "w1"
    assert walked.facts_at(QPoint(0, 100)) == ()


def test_that_a_proposal_of_sowings_answers_for_what_is_drawn(stage, kitchen, qtbot, rest):
    part = stage(SuccessionPart, kitchen).part
    click(qtbot, part.take)
    click(qtbot, part.begin_it)
    rest(part)
    chart = part.chart.chart
    assert asked_labels(chart) == {"foreseen", "wanted"}
    check(chart, part.behind)


def test_that_a_season_answers_for_what_is_drawn(stage, kitchen, qtbot, rest):
    part = stage(SeasonPart, kitchen).part
    part.form.show_value("search_seconds", 1)
    click(qtbot, part.begin_it)
    rest(part)
    crop, balance = (each.chart for each in part.charts)
    assert asked_labels(crop) == {"proposal", "today", "wanted"}
    assert asked_labels(balance) == {"demand, today"}
    for chart in (crop, balance):
        check(chart, part.behind)


def test_that_stocking_answers_for_today_s_feed(stage, kitchen, qtbot, rest):
    part = stage(StockingPart, kitchen).part
    click(qtbot, part.begin_it)
    rest(part)
    chart = part.ways_tab.feed.chart
    assert asked_labels(chart) == {"today"}
    check(chart, part.behind)
