"""Any number of a table can be asked why: by Ctrl+I, by the menu of the right button, and told on hover."""

from dataclasses import replace
from datetime import timedelta

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QContextMenuEvent
from PySide6.QtWidgets import QApplication, QMenu

from planner.desk.behind import Behind
from planner.desk.outlook import look_out
from planner.desk.pages import Entered, Fact, Shifted, Summed
from planner.desk.rows import ASK_ROLE, Column, Row, RowsModel
from planner.desk.why.answers import answer_of
from planner.desk.why.dialog import WhyDialog
from planner.desk.why.entered import MOST_LISTED, answer_to, counted, of_figure, totalled, typed
from planner.desk.words import number_words
from planner.farm.changes import Change, ChangeSet
from planner.farm.crops import Batch, Target, TargetUnit
from planner.farm.fields import NO_ID, Id, specs_of
from planner.farm.ids import new_id
from planner.farm.water import Quantity, Reading
from planner.forecast.why.arithmetic import recomputed
from planner.forecast.why.ground import NoSuchFigureError
from planner.forecast.why.values import Subject, SubjectKind
from tests.desk.helpers import NOW, TODAY

PLANTS, SEEDS, CROP = 6, 7, 1


@pytest.fixture
def behind(means, farm):
    return Behind(look_out(farm, means.forecaster), means.forecaster, TODAY)


@pytest.fixture
def table(qtbot, window):
    """The table of batches in front, with the keyboard."""
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.menus.actions["view.batches"].trigger()
    return window.workspace.table.view


def stand_on(view, column, row=0):
    view.setCurrentIndex(view.model().index(row, column))
    view.setFocus()
    return view.currentIndex()


def dialogs(window):
    return window.findChildren(WhyDialog)


def right_click(view, index):
    """Press the right button on a cell as the platform does: the press, then the wish for a menu."""
    at = view.visualRect(index).center()
    where = view.viewport().mapToGlobal(at)
    event = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, where)
    QApplication.sendEvent(view.viewport(), event)
    return next((menu for menu in view.findChildren(QMenu) if menu.actions()), None)


def test_that_the_key_asks_why_of_the_cell_in_hand(qtbot, window, table):
    index = stand_on(table, SEEDS)
    qtbot.keyClick(table, Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)
    (dialog,) = dialogs(window)
    assert dialog.answer.title.startswith("Seeds")
    assert dialog.answer.value.startswith(index.data())
    assert dialog.figure.currentText().startswith("Seeds")
    dialog.reject()


def test_that_the_other_numbers_of_the_row_are_offered_there(qtbot, window, table):
    stand_on(table, SEEDS)
    qtbot.keyClick(table, Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)
    (dialog,) = dialogs(window)
    offered = [dialog.figure.itemText(at) for at in range(dialog.figure.count())]
    at = next(at for at, words in enumerate(offered) if words.startswith("Plants"))
    dialog.figure.setFocus()
    dialog.figure.setCurrentIndex(at)
    assert dialog.answer.title.startswith("Plants in the bed")
    assert "entered" in dialog.answer.rows[0].texts[2]
    dialog.reject()


def test_that_a_cell_of_words_asks_for_the_first_number_of_its_row(qtbot, window, table):
    index = stand_on(table, CROP)
    assert index.data(ASK_ROLE) is None
    qtbot.keyClick(table, Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)
    (dialog,) = dialogs(window)
    assert dialog.figure.currentIndex() == 0
    dialog.reject()


@pytest.mark.qt_log_ignore("^This plugin does not support grabbing the (keyboard|mouse)")
def test_that_the_menu_of_the_right_button_asks_why(qtbot, window, table):
    index = stand_on(table, SEEDS)
    menu = right_click(table, index)
    action = menu.actions()[0]
    assert action.text() == f"Why {index.data()}?"
    assert action.isEnabled()
    qtbot.keyClick(menu, Qt.Key.Key_Down)
    qtbot.keyClick(menu, Qt.Key.Key_Return)
    (dialog,) = dialogs(window)
    assert dialog.answer.title.startswith("Seeds")
    dialog.reject()


@pytest.mark.qt_log_ignore("^This plugin does not support grabbing the (keyboard|mouse)")
def test_that_the_menu_offers_nothing_for_words(qtbot, window, table):
    menu = right_click(table, stand_on(table, CROP))
    assert menu.actions()[0].text() == "Why?"
    assert not menu.actions()[0].isEnabled()
    menu.close()


@pytest.mark.qt_log_ignore("^This plugin does not support grabbing the (keyboard|mouse)")
def test_that_the_menu_key_opens_the_same_menu(qtbot, window, table):
    stand_on(table, PLANTS)
    event = QContextMenuEvent(QContextMenuEvent.Reason.Keyboard, QPoint(), QPoint())
    QApplication.sendEvent(table, event)
    menu = next(menu for menu in table.findChildren(QMenu) if menu.actions())
    assert menu.actions()[0].text().startswith("Why ")
    menu.close()


def test_that_the_answer_to_the_sort_in_sight_is_of_the_row_in_sight(qtbot, window, table):
    table.sortByColumn(PLANTS, Qt.SortOrder.DescendingOrder)
    index = stand_on(table, SEEDS, row=1)
    qtbot.keyClick(table, Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)
    (dialog,) = dialogs(window)
    assert index.siblingAtColumn(0).data() in dialog.answer.title
    dialog.reject()


def test_that_without_a_number_in_hand_the_key_asks_about_the_side_panel(qtbot, window):
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    view = window.workspace.table.view
    window.menus.actions["view.batches"].trigger()
    window.workspace.table.search.setText("no batch has such a name")
    view.setFocus()
    qtbot.keyClick(view, Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)
    (dialog,) = dialogs(window)
    assert dialog.figure.itemText(0).startswith(window.workspace.side.page.askable[0].label)
    dialog.reject()


def test_that_a_number_says_on_hover_and_to_the_ear_that_it_can_be_asked(qtbot):
    model = RowsModel((Column(title="Batch"), Column(title="Seeds", numeric=True)))
    ask = Subject(kind=SubjectKind.SEEDS)
    model.set_rows([Row(id="1", texts=("A", "28"), sort=("A", 28), asks=(None, ask))])
    for role in (Qt.ItemDataRole.ToolTipRole, Qt.ItemDataRole.AccessibleDescriptionRole):
        assert model.index(0, 0).data(role) is None
        assert "Ctrl+I" in model.index(0, 1).data(role)
    assert model.index(0, 1).data(ASK_ROLE) == ask


def test_that_what_was_typed_is_told_with_its_field_its_limits_and_for_whom(behind, farm):
    batch = farm.batches[0]
    found = answer_to(behind, Entered(about=batch.id, field="plants"))
    answer = answer_of(found, behind.outlook.catalogue)
    assert answer.title == f"Plants in the bed · {batch.code}"
    assert answer.value == f"{batch.plants} plants"
    assert answer.rows[0].texts[2] == f"entered for {batch.code}"
    assert any(f"1 to {number_words(1e6)}" in note for note in answer.notes)
    assert recomputed(found) == found.value


@pytest.mark.parametrize(
    ("quantity", "value", "words", "limits"),
    [(Quantity.NITRATE_N_MG_PER_L, 31.0, "31 mg/L", (0, 3000)), (Quantity.PH, 6.8, "6.8", (2, 12))],
)
def test_that_a_reading_is_told_with_unit_and_limits_of_what_was_read(
    means, farm, quantity, value, words, limits
):
    reading = Reading(id=new_id(), loop=farm.loops[0].id, on=TODAY, quantity=quantity, value=value)
    changed = replace(farm, readings=(*farm.readings, reading))
    behind = Behind(look_out(changed, means.forecaster), means.forecaster, TODAY)
    found = answer_to(behind, Entered(about=reading.id, field="value"))
    answer = answer_of(found, behind.outlook.catalogue)
    assert answer.value == words
    low, high = map(number_words, limits)
    assert any(f"{low} to {high}" in note for note in answer.notes)


def test_that_an_amount_is_told_in_the_unit_that_is_chosen_beside_it(means, farm):
    wanted = Target(
        crop=farm.batches[0].crop, amount_per_week=3, unit=TargetUnit.KG, from_on=TODAY, id=new_id()
    )
    changed = replace(farm, targets=(wanted,))
    behind = Behind(look_out(changed, means.forecaster), means.forecaster, TODAY)
    assert answer_to(behind, Entered(about=wanted.id, field="amount_per_week")).unit == "kg"


def test_that_a_date_that_was_typed_is_told_as_the_date(behind, farm):
    batch = farm.batches[0]
    answer = answer_of(answer_to(behind, Entered(about=batch.id, field="sow_on")), behind.outlook.catalogue)
    assert str(batch.sow_on.year) in answer.value
    assert answer.title.startswith("Sow on")


def test_that_a_field_of_the_farm_itself_goes_by_no_id(behind, farm):
    found = answer_to(behind, Entered(about=NO_ID, field="plan_weeks"))
    assert found.value == farm.settings.plan_weeks


def test_that_what_is_not_there_any_more_says_so(qtbot, behind):
    with pytest.raises(NoSuchFigureError):
        answer_to(behind, Entered(about=Id("gone"), field="plants"))
    with pytest.raises(NoSuchFigureError):
        answer_to(behind, Entered(about=behind.outlook.farm.batches[0].id, field="no such field"))


def test_that_the_menu_asks_of_the_number_in_hand_and_of_nothing_out_of_sight(qtbot, window, table):
    stand_on(table, SEEDS)
    window.menus.actions["view.why"].trigger()
    (dialog,) = dialogs(window)
    assert "seeds" in dialog.answer.value
    dialog.reject()
    qtbot.waitUntil(lambda: dialogs(window) == [])
    window.menus.actions["view.records"].trigger()
    with qtbot.waitSignal(window.workspace.told) as told:
        window.menus.actions["view.why"].trigger()
    assert "No number is in hand" in told.args[0]
    assert dialogs(window) == []


def test_that_a_count_lists_what_was_counted(behind):
    found = counted("batches", ["A", "B", "C"], about="this week")
    assert found.value == recomputed(found) == 3
    assert [row.texts[0] for row in answer_of(found, behind.outlook.catalogue).rows] == ["A", "B", "C"]


def test_that_a_long_count_sums_the_rest_as_others():
    found = counted("batches", [str(at) for at in range(100)])
    assert len(found.inputs) == MOST_LISTED
    assert found.value == recomputed(found) == 100
    assert found.notes


def test_that_a_count_of_nothing_is_none():
    assert counted("batches", []).value == 0


def test_that_a_sum_leads_to_its_largest_parts(behind, farm):
    parts = tuple(
        (Subject(kind=SubjectKind.SEEDS, about=batch.id), float(behind.outlook.seeds(batch)))
        for batch in farm.batches
    )
    found = answer_to(behind, Summed(title="seeds", unit="seeds", parts=parts))
    assert found.value == sum(amount for _, amount in parts)
    assert recomputed(found) == pytest.approx(found.value)
    assert len(found.children) == min(len(parts), MOST_LISTED - 1)
    assert [child.value for child in found.children] == sorted((amount for _, amount in parts), reverse=True)[
        : len(found.children)
    ]


def test_that_days_between_two_days_lead_to_why_one_of_them_is_what_it_is(behind, farm):
    batch = farm.batches[0]
    old = batch.sow_on - timedelta(days=9)
    ask = Shifted(
        title="days moved", ask=Entered(about=batch.id, field="sow_on"), old_on=old, new_on=batch.sow_on
    )
    found = answer_to(behind, ask)
    assert found.value == recomputed(found) == 9
    assert found.children[0].on == batch.sow_on


def test_that_values_by_month_are_told_one_by_one(behind, farm):
    loop = farm.loops[0]
    found = answer_to(behind, Entered(about=loop.id, field="water_c"))
    assert [one.value for one in found.inputs] == list(loop.water_c)
    assert answer_of(found, behind.outlook.catalogue).value == "12 numbers"


def test_that_a_sum_of_amounts_by_name_lists_the_largest():
    found = totalled("places held", [(f"B{at}", float(at)) for at in range(40)], "places")
    assert found.value == recomputed(found) == sum(range(40))
    assert found.inputs[0].name == "B39"


def test_that_a_figure_of_the_catalogue_stands_for_itself(behind):
    basis = of_figure(behind.outlook.catalogue, "feed_rate/fao_leafy", "no/such/figure")
    assert [figure.path for figure in basis.figures] == ["feed_rate/fao_leafy"]
    assert of_figure(behind.outlook.catalogue, "no/such/figure") is None


def test_that_a_number_typed_into_a_form_needs_no_thing_of_the_farm():
    found = typed("Plants", 12, specs_of(Batch)["plants"], about="the new succession")
    assert (found.value, found.unit) == (12, "plants")
    assert found.inputs[0].about == "the new succession"


def test_that_a_number_that_was_altered_tells_when_and_by_which_act(qtbot, window, farm):
    batch = farm.batches[0]
    altered = replace(batch, plants=batch.plants + 4)
    window.conduct.act(ChangeSet(title="Alter the batch", changes=(Change(before=batch, after=altered),)))
    ask = Entered(about=batch.id, field="plants")
    window.workspace.asking.ask_why((Fact(label="Plants", value="", ask=ask),), 0)
    (dialog,) = dialogs(window)
    assert any("Alter the batch" in note and str(NOW.year) in note for note in dialog.answer.notes)
    dialog.reject()
