"""Fish on the page: ways of stocking compared and adopted, one harvest in parts, a start-up."""

import dataclasses
from datetime import date

import pytest
from PySide6.QtCore import Qt

from planner.desk.plan.asks import NeedBasis
from planner.desk.plan.stocking_part import StockingPart
from planner.desk.plan.stocking_rows import hole_words, share_words, way_columns, way_rows, way_words
from planner.desk.plan.stocking_tabs import whole_harvests
from planner.desk.rows import RowsModel
from planner.desk.theme import DARK, LIGHT
from planner.farm.fish import FishEventKind
from tests.desk.helpers import nameless_controls
from tests.desk.plan.hands import click

WAYS = 12


@pytest.fixture
def stocking(stage, kitchen):
    return stage(StockingPart, kitchen)


@pytest.fixture
def compared(qtbot, stocking, rest):
    click(qtbot, stocking.part.begin_it)
    rest(stocking.part)
    return stocking


@pytest.fixture
def harvested(qtbot, stocking, rest):
    stocking.part.tabs.setCurrentIndex(1)
    click(qtbot, stocking.part.harvest_tab.compare)
    rest(stocking.part)
    return stocking


def test_that_shares_and_holes_are_said_in_words():
    assert share_words(1.0) == "all at once"
    assert share_words(0.3) == "30 % at a time"
    assert hole_words(None) == "not back"
    assert hole_words(1.2) == "1 week"


def test_that_it_begins_with_fish_like_those_stocked_last(stocking, kitchen):
    last = max(kitchen.fish_groups, key=lambda group: group.stocked_on)
    form = stocking.part.form
    assert form.editor("species").read() == last.species
    assert form.editor("feed").read() == last.feed
    assert form.editor("fingerling_g").read() == last.mean_weight_g


def test_that_the_licence_stands_beside_the_species_and_care_beside_adopting(stocking, means):
    part = stocking.part
    species = means.catalogue.fish[part.form.editor("species").read()]
    shown = [
        layout.itemAt(at).widget().text()
        for layout in (part.law, part.ways_tab.care)
        for at in range(layout.count())
    ]
    assert len(shown) == len(species.cautions)
    assert "permit" in part.law.itemAt(0).widget().text()


def test_that_every_way_is_a_row_and_the_best_is_chosen(compared):
    part = compared.part
    table = part.ways.table
    assert len(table.options) + len(table.impossible) == WAYS
    assert len(part.ways_tab.table.model_of_rows.rows) == WAYS
    assert part.ways_tab.option is table.best
    starred = [row for row in part.ways_tab.table.model_of_rows.rows if row.texts[0].startswith("★")]
    assert len(starred) == 1
    assert part.ways_tab.way.text() == way_words(table.best, best=True)
    assert part.ways_tab.holes.model_of_rows.rows
    assert part.ways_tab.feed.chart.weeks


def test_that_the_model_of_ways_behaves(qtmodeltester, compared):
    model = RowsModel(way_columns())
    model.set_rows(way_rows(compared.part.ways))
    qtmodeltester.check(model)


def test_that_another_way_is_chosen_by_keys_and_tells_its_own_groups(qtbot, compared):
    part = compared.part
    part.ways_tab.table.selectRow(0)
    first = part.ways_tab.way.text()
    part.ways_tab.table.setFocus()
    qtbot.keyClick(part.ways_tab.table, Qt.Key.Key_Down)
    assert part.ways_tab.way.text() != first


def test_that_adopting_stocks_the_groups_as_one_act(qtbot, compared, kitchen):
    part = compared.part
    option = part.ways_tab.option
    part.ways_tab.adopt.setFocus()
    qtbot.keyClick(part.ways_tab.adopt, Qt.Key.Key_Space)
    farm = compared.session.farm
    new = [group for group in farm.fish_groups if group not in kitchen.fish_groups]
    assert {group.stocked_on for group in new} == {
        one.on for one in option.stocked if one.on < kitchen.plan_until
    }
    assert compared.session.undo_title.startswith("Stock in ")
    assert not part.ways_tab.adopt.isEnabled()
    compared.session.undo()
    assert compared.session.farm == kitchen
    assert part.ways_tab.adopt.isEnabled()


def test_that_an_area_has_to_be_said_when_it_is_judged_by_one(qtbot, stocking):
    part = stocking.part
    basis = part.form.editor("basis")
    assert part.form.rows["area_m2"].isHidden()
    basis.box.setFocus()
    qtbot.keyClick(basis.box, Qt.Key.Key_End)
    assert basis.read() is NeedBasis.STEADY
    basis.touched.emit()
    assert not part.form.rows["area_m2"].isHidden()
    click(qtbot, part.begin_it)
    assert "is empty" in part.form.rows["area_m2"].words
    assert not part.is_working


def test_that_a_fingerling_heavier_than_a_harvest_is_refused_beside_its_field(qtbot, stocking, rest):
    part = stocking.part
    line = part.form.editor("fingerling_g").focusProxy()
    line.setFocus()
    line.selectAll()
    qtbot.keyClicks(line, "4000")
    click(qtbot, part.begin_it)
    rest(part)
    assert "below the harvest weight" in part.form.rows["fingerling_g"].words
    assert line.text() == "4000"
    assert "could not be worked out" in part.state.text()


def test_that_stopping_leaves_the_farm_as_it_is(qtbot, stocking, kitchen):
    part = stocking.part
    click(qtbot, part.begin_it)
    assert part.working.isVisible()
    click(qtbot, part.working.stop)
    assert not part.is_working
    assert part.begin_it.isEnabled()
    assert "Stopped" in part.state.text()
    assert stocking.session.farm == kitchen


def test_that_only_whole_harvests_within_the_plan_are_offered(stocking, kitchen):
    part = stocking.part
    offered = [part.harvest_tab.harvest.itemData(at) for at in range(part.harvest_tab.harvest.count())]
    assert offered == [event.id for event in whole_harvests(kitchen)]
    late = dataclasses.replace(
        kitchen,
        fish_events=tuple(
            dataclasses.replace(event, on=date(2035, 1, 1))
            for event in kitchen.fish_events
            if event.kind is FishEventKind.HARVEST
        ),
    )
    assert whole_harvests(late) == ()


def test_that_a_harvest_in_parts_is_plotted_beside_all_at_once(harvested):
    part = harvested.part
    rows = part.harvest_tab.table.model_of_rows.rows
    assert [row.texts[0] for row in rows] == ["all at once", "50 % at a time", "30 % at a time"]
    assert len(part.harvest_tab.feed.chart.strands) == 3
    depths = [one.hole.depth_share for one in part.harvests.options]
    assert depths[0] == max(depths)
    assert not part.harvest_tab.adopt.isEnabled()


def test_that_a_harvest_in_parts_is_adopted_as_one_act(qtbot, harvested, kitchen):
    part = harvested.part
    part.harvest_tab.table.setFocus()
    qtbot.keyClick(part.harvest_tab.table, Qt.Key.Key_Down)
    assert part.harvest_tab.adopt.isEnabled()
    click(qtbot, part.harvest_tab.adopt)
    assert len(harvested.session.farm.fish_events) == len(kitchen.fish_events) + 1
    assert harvested.session.undo_title == "Harvest 50 % at a time"
    harvested.session.undo()
    assert harvested.session.farm == kitchen


def test_that_a_chosen_way_stays_while_a_harvest_is_compared(qtbot, compared, rest):
    part = compared.part
    part.ways_tab.table.selectRow(0)
    chosen = part.ways_tab.option
    part.tabs.setCurrentIndex(1)
    click(qtbot, part.harvest_tab.compare)
    rest(part)
    assert part.ways_tab.option is chosen


def test_that_a_start_up_tells_when_crops_may_begin(qtbot, stocking, rest):
    part = stocking.part
    part.tabs.setCurrentIndex(2)
    click(qtbot, part.start_tab.begin_it)
    rest(part)
    assert "First fish on" in part.start_tab.words.text()
    assert len(part.start_tab.table.model_of_rows.rows) == len(part.start.batches)


def test_that_a_bare_farm_is_told_what_lacks(qtbot, stage, bare, rest):
    part = stage(StockingPart, bare).part
    assert "No harvest of a whole group" in part.harvest_tab.none.text()
    part.form.show_value("fingerling_g", 20)
    click(qtbot, part.begin_it)
    rest(part)
    assert "no tank" in part.state.text()
    part.tabs.setCurrentIndex(2)
    click(qtbot, part.start_tab.begin_it)
    rest(part)
    assert "No fish are stocked" in part.start_tab.words.text()


def test_that_every_control_has_a_spoken_name_and_both_looks_can_be_worn(compared):
    assert nameless_controls(compared.part) == []
    compared.part.wear(DARK)
    assert compared.part.ways_tab.feed.theme is DARK
    compared.part.wear(LIGHT)
