"""Every number of the page can be asked: each cell of its tables, each card, and the plan as a whole."""

import re

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QPushButton

from planner.desk.pages import Later
from planner.desk.plan.expansion_part import ExpansionPart
from planner.desk.plan.orders_part import OrdersPart
from planner.desk.plan.remedies_part import RemediesPart
from planner.desk.plan.season_part import SeasonPart
from planner.desk.plan.stocking_part import StockingPart
from planner.desk.plan.succession_part import SuccessionPart
from planner.desk.plan.whatif_part import WhatIfPart
from planner.desk.rows import ASK_ROLE
from planner.desk.words import NONE
from planner.forecast.why.arithmetic import recomputed
from tests.desk.plan.hands import click

_DIGIT = re.compile(r"\d")
_FEW = 400
"""Answers that are made in one test; more of a kind tell nothing new."""
IN_HEADINGS = {"Groups", "Harvested", "Days"}
"""Columns that say what a row is about: what was asked, not what came out."""


def figures(table):
    """Yield text and ask of every cell of a table under a heading of numbers."""
    model = table.model_of_rows
    for at in range(model.columnCount()):
        title = model.headerData(at, Qt.Orientation.Horizontal)
        if not model._columns[at].numeric or title in IN_HEADINGS:
            continue
        for row in range(model.rowCount()):
            index = model.index(row, at)
            yield title, index.data(), index.data(ASK_ROLE)


def check(*tables):
    """Every number under such a heading has an answer, and the answer can be worked out again."""
    made = 0
    for table in tables:
        told = list(figures(table))
        assert told
        for title, text, ask in told:
            assert (ask is not None) or text == NONE or not _DIGIT.search(text), (title, text)
            if ask is None or made > _FEW:
                continue
            made += 1
            answer = ask.make()
            again = recomputed(answer)
            assert again is None or again == pytest.approx(answer.value), (ask.name, answer.title)
    return made


@pytest.fixture
def wished(qtbot):
    """Tells what is asked of a widget without a page around it."""

    def listen(part):
        asked = []
        part.why_wanted = type("Wish", (), {"emit": staticmethod(lambda *words: asked.append(words))})()
        return asked

    return listen


def test_that_every_amount_of_the_order_list_can_be_asked(stage, kitchen, rest):
    part = stage(OrdersPart, kitchen).part
    rest(part)
    part.months.setCurrentIndex(1)
    assert check(part.table) > 50


def test_that_a_season_can_be_asked_by_week_by_difference_and_whole(qtbot, stage, kitchen, rest, wished):
    part = stage(SeasonPart, kitchen).part
    part.form.show_value("search_seconds", 1)
    click(qtbot, part.begin_it)
    rest(part)
    assert check(part.weeks) > 100
    after = [row for row in part.differences.model_of_rows.rows if row.texts[-1] != NONE]
    assert after
    assert all(isinstance(row.asks[-1], Later) for row in after)
    asked = wished(part)
    click(qtbot, part.why)
    ((facts, number),) = asked
    assert number == 0
    assert facts[0].ask.make().value == part.found.plan.gap


def test_that_successions_can_be_asked(qtbot, stage, kitchen, rest):
    part = stage(SuccessionPart, kitchen).part
    click(qtbot, part.take)
    click(qtbot, part.begin_it)
    rest(part)
    assert check(part.sowings, part.supply) > 100
    days = [row.asks for row in part.sowings.model_of_rows.rows]
    # The days of sowing, of moving, of the first and of the last pick.
    assert all(asks[at] is not None for asks in days for at in (0, 6, 7, 8))
    row = part.sowings.model_of_rows.rows[0]
    assert row.asks[0].make().on == row.payload.sow_on


def test_that_ways_of_stocking_a_harvest_and_a_start_up_can_be_asked(qtbot, stage, kitchen, rest):
    part = stage(StockingPart, kitchen).part
    click(qtbot, part.begin_it)
    rest(part)
    tab = part.ways_tab
    assert check(tab.table, tab.stocked, tab.holes) > 50
    part.tabs.setCurrentIndex(1)
    click(qtbot, part.harvest_tab.compare)
    rest(part)
    assert check(part.harvest_tab.table) > 10
    part.tabs.setCurrentIndex(2)
    click(qtbot, part.start_tab.begin_it)
    rest(part)
    assert check(part.start_tab.table) > 50


def test_that_scenarios_can_be_asked_against_the_farm(qtbot, stage, kitchen, rest):
    part = stage(WhatIfPart, kitchen).part
    click(qtbot, part.add)
    rest(part)
    rows = part.table.model_of_rows.rows
    for row in rows:
        for text, ask in zip(row.texts[1:], row.asks[1:], strict=True):
            assert ask is not None, row.texts
            answer = ask.make()
            assert answer.value is not None or "unknown" in text or text == NONE


def test_that_each_verdict_on_more_beds_can_be_asked(qtbot, stage, kitchen, rest, wished):
    part = stage(ExpansionPart, kitchen).part
    click(qtbot, part.begin_it)
    rest(part)
    assert check(part.months) > 10
    asked = wished(part)
    buttons = [each for each in part.findChildren(QPushButton) if each.text() == "Why?"]
    assert len(buttons) == len(part.found.verdicts)
    for each in buttons:
        click(qtbot, each)
    for (facts, _), verdict in zip(asked, part.found.verdicts, strict=True):
        known = [value for _, value in verdict.numbers if value is not None]
        told = [fact.ask.make() for fact in facts]
        assert told[0].about == verdict.answer.value
        assert [one.value for one in told[1:-1]] == known
        assert told[-1].about == part.found.answer.value


def test_that_each_repair_can_be_asked(qtbot, stage, kitchen, rest, wished):
    part = stage(RemediesPart, kitchen).part
    qtbot.waitUntil(lambda: bool(part.list.buttons) and not part.list.is_working, timeout=20_000)
    asked = wished(part)
    buttons = [each for each in part.list.findChildren(QPushButton) if each.text() == "Why?"]
    assert len(buttons) == len(part.list.buttons)
    for each in buttons:
        click(qtbot, each)
    assert len(asked) == len(buttons)
    for facts, _ in asked:
        assert any(fact.label == "Harvest of crops" for fact in facts)
        for fact in facts:
            answer = fact.ask.make()
            assert recomputed(answer) == pytest.approx(answer.value)
