"""What if: scenarios beside the farm, which stays untouched until one is adopted as one act."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLineEdit

from planner.desk.plan.asks import WhatAsk, WhatKind
from planner.desk.plan.prices import prices_of, prices_read, prices_text
from planner.desk.plan.whatif_part import WhatIfPart
from planner.desk.plan.whatif_rows import (
    compare_columns,
    compare_rows,
    difference_rows,
    money_words,
)
from planner.desk.plan.whatif_work import Recipe, change_of, fits, open_batches, with_recipe
from planner.desk.rows import RowsModel
from planner.desk.theme import DARK, LIGHT
from planner.farm.changes import applied
from planner.farm.farm import by_id
from planner.forecast.engine import Forecaster
from planner.planning.scenarios.compare import Money
from planner.planning.scenarios.sets import Scenarios
from tests.desk.helpers import TODAY, nameless_controls
from tests.desk.plan.hands import click

LETTUCE = "lettuce-butterhead"


def cells(part, row):
    return part.table.model_of_rows.rows[row].texts


@pytest.fixture
def what(stage, kitchen):
    return stage(WhatIfPart, kitchen)


@pytest.fixture
def lost(qtbot, what, rest):
    """A scenario in which the first group of fish is lost."""
    click(qtbot, what.part.add)
    rest(what.part)
    return what


def add(qtbot, part, rest, kind, name, **values):
    part.kind.setCurrentIndex(list(WhatKind).index(kind))
    part.form.show_value("scenario", name)
    for field, value in values.items():
        part.form.show_value(field, value)
    click(qtbot, part.add)
    rest(part)


def recipe(kind, **values):
    return Recipe(kind=kind, ask=WhatAsk(**{"scenario": "A", "from_on": TODAY, **values}))


def test_that_another_crop_takes_the_same_plants_and_places(means, kitchen):
    made = change_of(
        recipe(WhatKind.SWAP_CROP, crop=LETTUCE, other_crop="basil"), kitchen, Forecaster(means.catalogue)
    )
    after = applied(kitchen, made)
    swapped = {batch.id for batch in open_batches(kitchen, LETTUCE, TODAY)}
    now = by_id(after.batches)
    assert swapped
    assert all(now[key].crop == "basil" for key in swapped)
    assert sum(batch.plants for batch in after.batches) == sum(batch.plants for batch in kitchen.batches)
    assert not open_batches(after, LETTUCE, TODAY)


def test_that_sowings_are_shifted_and_scaled_only_from_the_day_on(means, kitchen):
    forecaster = Forecaster(means.catalogue)
    later = applied(
        kitchen, change_of(recipe(WhatKind.SHIFT, crop=LETTUCE, weeks_later=3), kitchen, forecaster)
    )
    fewer = applied(
        kitchen, change_of(recipe(WhatKind.SCALE, crop=LETTUCE, percent_of_plants=50.0), kitchen, forecaster)
    )
    for batch in kitchen.batches:
        open_one = batch.crop == LETTUCE and batch.sow_on >= TODAY and not batch.locked
        moved = by_id(later.batches)[batch.id].sow_on - batch.sow_on
        assert moved.days == (21 if open_one else 0)
        plants = by_id(fewer.batches)[batch.id].plants
        assert plants == (-(-batch.plants // 2) if open_one else batch.plants)


def test_that_changes_of_one_name_go_into_one_scenario(means, kitchen):
    forecaster = Forecaster(means.catalogue)
    first = with_recipe(Scenarios(), recipe(WhatKind.SHIFT, crop=LETTUCE), kitchen, forecaster)
    second = with_recipe(first, recipe(WhatKind.SCALE, crop=LETTUCE), kitchen, forecaster)
    assert [one.name for one in second.kept] == ["A"]
    assert len(second.kept[0].change_sets) == 2
    assert fits(second.kept[0], kitchen)


def test_that_money_without_a_price_is_unknown_and_never_nothing():
    assert money_words(Money(total=None, known=0.0, blank=("feed x",))) == "unknown: 1 price missing"
    assert money_words(Money(total=None, known=3.0, blank=("a", "b"))) == "unknown: 2 prices missing"
    assert money_words(Money(total=12.5, known=12.5, blank=())) == "12.50"


def test_that_prices_are_remembered_and_nonsense_is_left_out():
    values = {("crop_per_kg", "basil"): 9.0, ("seed_per_thousand", "basil"): 3.5}
    assert prices_read(prices_text(values)) == values
    assert prices_read("{") == {}
    assert prices_read('[["x", "y", 1], ["crop_per_kg", "basil", "dear"]]') == {}
    assert prices_of(values).crop_per_kg == {"basil": 9.0}


def test_that_only_the_fields_of_a_change_are_shown(qtbot, what):
    part = what.part
    part.kind.setFocus()
    seen = set()
    for _ in WhatKind:
        seen.add(tuple(field for field, row in part.form.rows.items() if not row.isHidden()))
        qtbot.keyClick(part.kind, Qt.Key.Key_Down)
    assert len(seen) == len(WhatKind)


def test_that_a_scenario_stands_beside_the_farm_which_stays(lost, kitchen):
    part = lost.part
    assert lost.session.farm == kitchen
    assert part.chosen.currentText() == "Scenario A"
    assert [one.name for one in part.found.comparison.columns] == ["base", "Scenario A"]
    feed = next(row for row in part.table.model_of_rows.rows if row.texts[0].startswith("Feed"))
    assert feed.sort[2] < feed.sort[1]
    assert "(−" in feed.texts[2]
    assert len(part.chart.chart.strands) == 2


def test_that_the_model_of_the_comparison_behaves(qtmodeltester, lost):
    found, behind = lost.part.found, lost.part.behind
    model = RowsModel(compare_columns(found.comparison))
    model.set_rows(compare_rows(found.comparison, behind.outlook.catalogue, behind.outlook.forecast.ruler))
    qtmodeltester.check(model)


def test_that_what_differs_is_listed_without_places(qtbot, lost, rest):
    part = lost.part
    rows = difference_rows(part.found.comparison.differences(1))
    assert rows
    assert part.differences.model_of_rows.rows == rows
    add(qtbot, part, rest, WhatKind.SHIFT, "Later", crop=LETTUCE)
    said = [row.texts for row in part.differences.model_of_rows.rows]
    assert all("Sow on:" in how for _, _, _, how in said)


def test_that_three_scenarios_are_kept_and_a_fourth_is_refused_by_its_name(qtbot, lost, rest):
    part = lost.part
    for name in ("Scenario B", "Scenario C"):
        add(qtbot, part, rest, WhatKind.SHIFT, name, crop=LETTUCE)
    assert part.chosen.count() == 3
    add(qtbot, part, rest, WhatKind.SHIFT, "Scenario D", crop=LETTUCE)
    assert part.chosen.count() == 3
    assert "3 scenarios are kept already" in part.form.rows["scenario"].words


def test_that_a_scenario_needs_a_name_and_a_swap_another_crop(qtbot, what, rest):
    part = what.part
    add(qtbot, part, rest, WhatKind.SWAP_CROP, "", crop=LETTUCE, other_crop="basil")
    assert part.form.rows["scenario"].words
    add(qtbot, part, rest, WhatKind.SWAP_CROP, "A", crop=LETTUCE, other_crop=LETTUCE)
    assert "same crop" in part.form.rows["other_crop"].words
    add(qtbot, part, rest, WhatKind.SHIFT, "A", crop=LETTUCE, from_on=part.behind.outlook.farm.plan_until)
    assert "No batch of this crop" in part.form.rows["crop"].words
    assert part.kept == Scenarios()


def test_that_adopting_is_one_act_that_one_undo_takes_back(qtbot, lost, kitchen, rest):
    part = lost.part
    part.adopt.setFocus()
    qtbot.keyClick(part.adopt, Qt.Key.Key_Space)
    assert lost.session.undo_title == "Adopt Scenario A"
    assert lost.session.farm != kitchen
    assert part.kept == Scenarios()
    assert part.shown.isHidden()
    lost.session.undo()
    assert lost.session.farm == kitchen


def test_that_dropping_forgets_a_scenario(qtbot, lost, kitchen):
    click(qtbot, lost.part.drop)
    assert lost.part.kept == Scenarios()
    assert lost.part.choosing.isHidden()
    assert "No scenario yet" in lost.part.state.text()
    assert lost.session.farm == kitchen


def test_that_a_scenario_that_no_longer_fits_is_named_and_cannot_be_adopted(qtbot, lost, kitchen, rest):
    from planner.actions.changing import removal

    part = lost.part
    group = kitchen.fish_groups[0]
    lost.session.act(removal(kitchen, group, title="Gone", with_dependants=True))
    rest(part)
    assert "Scenario A" in part.misfits.text()
    assert not part.misfits.isHidden()
    assert not part.adopt.isEnabled()


def test_that_a_price_is_typed_and_counts(qtbot, lost, rest):
    part = lost.part
    part.prices.setFocus()
    for row in range(part.prices.rowCount()):
        part.prices.setCurrentCell(row, 1)
        qtbot.keyClick(part.prices, Qt.Key.Key_F2)
        editor = part.prices.findChildren(QLineEdit)[-1]
        qtbot.keyClicks(editor, "2")
        qtbot.keyClick(editor, Qt.Key.Key_Return)
        qtbot.waitUntil(lambda: not part.prices.findChildren(QLineEdit))
    qtbot.waitUntil(lambda: part.is_working)
    rest(part)
    cost = next(row for row in part.table.model_of_rows.rows if row.texts[0] == "Cost")
    assert "unknown" not in cost.texts[1]


def test_that_what_is_no_price_is_said_and_stays_where_it_was_typed(qtbot, what):
    part = what.part
    part.prices.setCurrentCell(0, 1)
    for text in ("dear", "-3"):
        part.prices.item(0, 1).setText(text)
        assert f"“{text}” is no price" in part.price_trouble.text()
        assert part.prices.item(0, 1).text() == text
        assert part.prices.values == {}
    part.prices.item(0, 1).setText("4.5")
    assert part.price_trouble.isHidden()
    assert list(part.prices.values.values()) == [4.5]


def test_that_a_proposal_from_elsewhere_is_kept_under_a_free_name(qtbot, lost, kitchen, means, rest):
    part, told = lost.part, []
    part.told.connect(told.append)
    made = change_of(recipe(WhatKind.SHIFT, crop=LETTUCE), kitchen, Forecaster(means.catalogue))
    part.keep("Season plan", made)
    part.keep("Season plan", made)
    rest(part)
    assert [one.name for one in part.kept.kept] == ["Scenario A", "Season plan", "Season plan 2"]
    troubled = []
    part.troubled.connect(troubled.append)
    part.keep("Season plan", made)
    assert len(part.kept.kept) == 3
    assert "3 scenarios are kept already" in troubled[0]


def test_that_stopping_leaves_the_farm_as_it_is(qtbot, what, kitchen):
    click(qtbot, what.part.add)
    assert what.part.working.isVisible()
    click(qtbot, what.part.working.stop)
    assert not what.part.is_working
    assert what.session.farm == kitchen


def test_that_a_bare_farm_is_told_what_lacks(qtbot, stage, bare):
    part = stage(WhatIfPart, bare).part
    assert not part.no_prices.isHidden()
    click(qtbot, part.add)
    assert "is empty" in part.form.rows["group"].words


def test_that_every_control_has_a_spoken_name_and_both_looks_can_be_worn(lost):
    assert nameless_controls(lost.part) == []
    lost.part.wear(DARK)
    lost.part.wear(LIGHT)
