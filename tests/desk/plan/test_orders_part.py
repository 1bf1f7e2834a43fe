"""The order list: by month, copied for a spreadsheet, printed as the shopping list."""

import csv
import io

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication

from planner.desk.plan.orders_part import OrdersPart
from planner.desk.plan.orders_rows import (
    KIND_WORDS,
    UNIT_WORDS,
    age_words,
    amount_words,
    months_of,
    order_columns,
    order_rows,
    rows_text,
)
from planner.desk.printing import PrintDialog
from planner.desk.rows import Row, RowsModel
from planner.planning.orders import OrderKind, OrderLine, OrderUnit, order_list
from tests.desk.helpers import TODAY, nameless_controls


@pytest.fixture
def lines(behind_of, kitchen):
    outlook = behind_of(kitchen).outlook
    return order_list(outlook.farm, outlook.forecast, outlook.catalogue)


@pytest.fixture
def orders(stage, kitchen, rest):
    found = stage(OrdersPart, kitchen)
    rest(found.part)
    return found


def test_that_every_kind_and_unit_has_words():
    assert set(KIND_WORDS) == set(OrderKind)
    assert set(UNIT_WORDS) == set(OrderUnit)


def test_that_amounts_and_ages_are_said_as_people_say_them():
    assert amount_words(12.34, OrderUnit.KG) == "12.3 kg"
    assert amount_words(240.0, OrderUnit.SEEDS) == "240 seeds"
    assert amount_words(0.0, OrderUnit.G) == "–"
    assert age_words(1) == "lot 1 day old"
    assert age_words(200) == "lot 200 days old"
    assert age_words(730) == "lot 2.0 years old"


def test_that_fish_too_heavy_for_their_pellets_are_told():
    line = OrderLine(
        month="2027-03",
        kind=OrderKind.FEED,
        key="x",
        name="Starter",
        detail="2",
        amount=3.0,
        unit=OrderUnit.KG,
        fish_g=(20.0, 180.0),
        made_for_g=(5.0, 60.0),
    )
    (row,) = order_rows([line])
    assert row.texts[2] == "Starter, pellets of 2 mm"
    assert "made for fish of 5 to 60 g, eaten by fish of 20 to 180 g" in row.texts[6]


def test_that_the_model_of_orders_behaves(qtmodeltester, qtbot, lines):
    model = RowsModel(order_columns())
    model.set_rows(order_rows(lines))
    qtmodeltester.check(model)


def test_that_it_begins_with_this_month_and_any_other_can_be_chosen_by_keys(qtbot, orders, lines):
    part, now = orders.part, TODAY.strftime("%Y-%m")
    shown = [row.payload.month for row in part.table.model_of_rows.rows]
    assert shown == [line.month for line in lines if line.month >= now]
    assert min(months_of(lines)) < now
    part.months.setFocus()
    qtbot.keyClick(part.months, Qt.Key.Key_Down)
    assert len(part.table.model_of_rows.rows) == len(lines)
    qtbot.keyClick(part.months, Qt.Key.Key_Down)
    assert {row.payload.month for row in part.table.model_of_rows.rows} == {months_of(lines)[0]}


def test_that_the_rows_are_copied_as_they_stand(qtbot, orders):
    part, told = orders.part, []
    part.told.connect(told.append)
    part.copy.setFocus()
    qtbot.keyClick(part.copy, Qt.Key.Key_Space)
    read = list(csv.reader(io.StringIO(QGuiApplication.clipboard().text())))
    assert read[0] == [column.title for column in order_columns()]
    assert len(read) == len(part.table.model_of_rows.rows) + 1
    assert "clipboard" in told[0]


def test_that_a_formula_is_copied_as_text():
    row = Row(id="1", texts=("March", "Seed", "=1+1", "–", "", "", ""), sort=())
    assert "'=1+1" in rows_text(order_columns(), [row])


def test_that_printing_opens_the_shopping_list(qtbot, window):
    window.menus.actions["view.plan"].trigger()
    plan = window.workspace.shelf.place("plan")
    plan.go_to("orders")
    part = plan.part("orders")
    qtbot.waitUntil(part.print.isEnabled)
    qtbot.mouseClick(part.print, Qt.MouseButton.LeftButton)
    (dialog,) = window.findChildren(PrintDialog)
    assert dialog.form.documents.currentItem().text() == "Shopping list"
    dialog.reject()


def test_that_a_bare_farm_needs_nothing(stage, bare, rest):
    part = stage(OrdersPart, bare).part
    rest(part)
    assert part.table.isHidden()
    assert "Nothing is needed" in part.empty.text()
    assert not part.copy.isEnabled()


def test_that_it_says_that_it_is_counting(stage, kitchen):
    part = stage(OrdersPart, kitchen).part
    assert part.working.isVisible()
    assert not part.copy.isEnabled()


def test_that_every_control_has_a_spoken_name(orders):
    assert nameless_controls(orders.part) == []
