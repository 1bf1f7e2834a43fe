"""Tables show ready rows, change only what changed, sort by value and not by words, and can be searched."""

import pytest
from PySide6.QtCore import QPersistentModelIndex, Qt

from planner.desk.batch_table import BatchTable, batch_columns, batch_rows
from planner.desk.outlook import look_out
from planner.desk.rows import ID_ROLE, Column, Row, RowsModel, Sieve
from planner.desk.theme import LIGHT
from tests.desk.helpers import put_away


@pytest.fixture(scope="session")
def outlook(means, farm):
    return look_out(farm, means.forecaster)


@pytest.fixture
def table(qtbot, outlook):
    table = BatchTable(LIGHT)
    table.resize(1000, 500)
    table.show_outlook(outlook)
    table.show()
    yield table
    put_away(table)


def rows(*numbers):
    return [Row(id=str(number), texts=(f"{number} kg",), sort=(number,)) for number in numbers]


def test_that_the_model_of_batches_behaves(qtmodeltester, qtbot, outlook):
    model = RowsModel(batch_columns())
    model.set_rows(batch_rows(outlook))
    qtmodeltester.check(model)


def test_that_a_row_has_a_text_and_a_value_to_sort_by_for_each_column(outlook):
    for row in batch_rows(outlook):
        assert len(row.texts) == len(row.sort) == len(batch_columns())


def test_that_the_same_rows_again_say_nothing(qtbot):
    model = RowsModel((Column(title="Mass"),))
    model.set_rows(rows(1, 2))
    with qtbot.assertNotEmitted(model.modelReset), qtbot.assertNotEmitted(model.dataChanged):
        model.set_rows(rows(1, 2))


def test_that_a_changed_row_is_told_alone(qtbot):
    model = RowsModel((Column(title="Mass"),))
    model.set_rows(rows(1, 2, 3))
    changed = rows(1, 2, 3)
    changed[1] = Row(id="2", texts=("5 kg",), sort=(5,))
    with (
        qtbot.assertNotEmitted(model.modelReset),
        qtbot.waitSignal(model.dataChanged) as told,
    ):
        model.set_rows(changed)
    assert told.args[0].row() == told.args[1].row() == 1


def test_that_batches_are_sorted_by_date_and_not_by_its_words(table, outlook):
    table.view.sortByColumn(2, Qt.SortOrder.AscendingOrder)
    shown = [table.sorted.index(at, 2).data() for at in range(table.sorted.rowCount())]
    in_order = [row.texts[2] for row in sorted(batch_rows(outlook), key=lambda row: row.sort[2])]
    assert shown == in_order
    assert shown != sorted(shown)


def shown_in(sieve):
    return [sieve.index(at, 0).data(ID_ROLE) for at in range(sieve.rowCount())]


@pytest.fixture
def sieve(qapp, qtmodeltester):
    model = RowsModel((Column(title="Mass"),))
    sieve = Sieve(model, model)
    model.set_rows(rows(30, 1, 200))
    yield sieve
    qtmodeltester.check(sieve)
    qtmodeltester.check(model)


@pytest.mark.parametrize(
    ("order", "wanted"),
    [(Qt.SortOrder.AscendingOrder, ["1", "30", "200"]), (Qt.SortOrder.DescendingOrder, ["200", "30", "1"])],
)
def test_that_rows_stand_in_order_and_stay_so_when_others_are_shown(sieve, order, wanted):
    sieve.sort(0, order)
    assert shown_in(sieve) == wanted
    model = sieve.sourceModel()
    model.set_rows(rows(7, *map(int, wanted)))
    assert shown_in(sieve) == sorted([*wanted, "7"], key=int, reverse=order is Qt.SortOrder.DescendingOrder)


def test_that_what_is_chosen_stays_chosen_when_its_row_moves(sieve):
    sieve.sort(0, Qt.SortOrder.AscendingOrder)
    kept = QPersistentModelIndex(sieve.index(0, 0))
    model = sieve.sourceModel()
    model.set_rows([Row(id="1", texts=("999 kg",), sort=(999,)), *rows(30, 200)])
    assert (kept.row(), kept.data()) == (2, "999 kg")
    assert shown_in(sieve) == ["30", "200", "1"]


def test_that_a_search_goes_on_while_rows_change_and_looks_into_each_column_by_itself(sieve):
    sieve.show_only("0 K")
    assert shown_in(sieve) == ["30", "200"]
    sieve.sourceModel().set_rows(rows(10, 1, 40))
    assert shown_in(sieve) == ["10", "40"]
    sieve.sourceModel().set_rows([Row(id="10", texts=("11 kg",), sort=(11,)), *rows(1, 40)])
    assert shown_in(sieve) == ["40"]
    sieve.show_only("")
    assert shown_in(sieve) == ["10", "1", "40"]


def test_that_the_search_leaves_what_fits_and_says_how_many(qtbot, table):
    qtbot.keyClicks(table.search, "basil")
    assert table.sorted.rowCount() == 1
    assert table.count.text() == f"1 of {len(table.model.rows)} batches"
    qtbot.keyClicks(table.search, "xyz")
    assert table.sorted.rowCount() == 0


def test_that_arrow_keys_choose_a_batch(qtbot, table):
    chosen = []
    table.chosen.connect(chosen.append)
    table.view.setFocus()
    table.view.selectRow(0)
    qtbot.keyClick(table.view, Qt.Key.Key_Down)
    assert chosen[-1] == table.sorted.index(1, 0).data(Qt.ItemDataRole.UserRole)


def test_that_a_choice_from_outside_is_shown_without_being_told_back(qtbot, table):
    wanted = table.model.rows[-1].id
    table.resize(600, 150)
    with qtbot.assertNotEmitted(table.chosen):
        table.choose(wanted)
    assert table.view.currentIndex().data(Qt.ItemDataRole.UserRole) == wanted
    seen = table.view.visualRect(table.view.currentIndex())
    assert table.view.viewport().rect().intersects(seen)
    table.choose("")
    assert not table.view.currentIndex().isValid()
