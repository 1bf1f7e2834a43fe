"""Panes, lanes and rows of controls in a window too small for all of them."""

import pytest
from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtWidgets import QApplication, QPushButton, QSizePolicy, QSplitter, QWidget

from planner.desk.flow import Flow
from planner.desk.folding import DUE, SIDE, Panes
from planner.desk.lanes.folding import fold_lanes
from tests.desk.helpers import put_away


@pytest.fixture
def row(qtbot):
    split = QSplitter(Qt.Orientation.Horizontal)
    due, middle, side = (QWidget(split) for _ in range(3))
    for part in (due, middle, side):
        split.addWidget(part)
    due.setMinimumWidth(100)
    side.setMinimumWidth(200)
    split.panes = Panes(split, (due, side), least_middle=300)
    split.resize(1000, 200)
    split.show()
    yield split
    put_away(split)


def seen(row):
    return [not row.widget(at).isHidden() for at in (0, 2)]


def test_that_both_panes_fold_away_in_a_narrow_window_and_come_back_in_a_broad_one(row):
    assert seen(row) == [True, True]
    row.resize(599, 200)
    assert seen(row) == [False, False]
    row.resize(600, 200)
    assert seen(row) == [True, True]


def test_that_the_panes_become_narrower_before_they_fold(row):
    row.setSizes([300, 300, 400])
    row.resize(700, 200)
    QApplication.processEvents()
    due, middle, side = row.sizes()
    assert middle >= 300
    assert due >= 100
    assert side >= 200


def test_that_in_a_narrow_window_one_pane_is_shown_at_a_time(row):
    row.resize(500, 200)
    row.panes.toggle(DUE)
    assert seen(row) == [True, False]
    row.panes.toggle(SIDE)
    assert seen(row) == [False, True]
    row.panes.toggle(SIDE)
    assert seen(row) == [False, False]
    row.resize(1000, 200)
    assert seen(row) == [True, True]


def test_that_a_wide_page_hides_both_and_what_was_wanted_comes_back(row):
    row.panes.toggle(DUE)
    row.panes.make_room(wide=True)
    assert seen(row) == [False, False]
    row.panes.make_room(wide=False)
    assert seen(row) == [False, True]


def test_that_the_fish_fold_first_then_the_balance_and_the_beds_never(qtbot):
    split = QSplitter(Qt.Orientation.Vertical)
    split.setHandleWidth(10)
    for _ in range(3):
        lane = _Fixed(QSize(50, 100))
        split.addWidget(lane)
    shown = {}
    for height in (320, 319, 210, 209, 5):
        fold_lanes(split, height)
        shown[height] = [not split.widget(at).isHidden() for at in range(3)]
    assert shown == {
        320: [True, True, True],
        319: [False, True, True],
        210: [False, True, True],
        209: [False, True, False],
        5: [False, True, False],
    }
    put_away(split)


class _Fixed(QWidget):
    """A widget that asks for one size."""

    def __init__(self, size):
        super().__init__()
        self._size = size

    def minimumSizeHint(self):
        return self._size

    def sizeHint(self):
        return self._size


@pytest.fixture
def flow(qtbot):
    owner = QWidget()
    layout = Flow(10, owner)
    layout.add(*(_Fixed(QSize(100, 20)) for _ in range(3)))
    owner.show()
    yield layout
    put_away(owner)


def places(flow):
    return [flow.itemAt(at).geometry() for at in range(flow.count())]


def test_that_parts_that_fit_stand_in_one_line(flow):
    flow.setGeometry(QRect(0, 0, 320, 20))
    assert [place.topLeft().toTuple() for place in places(flow)] == [(0, 0), (110, 0), (220, 0)]
    assert flow.heightForWidth(320) == 20


def test_that_what_does_not_fit_goes_to_the_next_line(flow):
    flow.setGeometry(QRect(0, 0, 319, 50))
    assert [place.topLeft().toTuple() for place in places(flow)] == [(0, 0), (110, 0), (0, 30)]
    assert flow.heightForWidth(319) == 50
    assert flow.heightForWidth(100) == 80
    assert flow.minimumSize() == QSize(100, 20)
    assert flow.sizeHint() == QSize(320, 20)


def test_that_a_part_that_expands_takes_what_is_left_and_a_hidden_one_nothing(flow):
    first, second, _ = (flow.itemAt(at).widget() for at in range(3))
    first.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
    second.hide()
    flow.setGeometry(QRect(0, 0, 400, 20))
    assert first.width() == 290
    assert flow.sizeHint() == QSize(210, 20)


def test_that_the_margins_stay_free(flow):
    flow.setContentsMargins(5, 6, 7, 8)
    assert flow.sizeHint() == QSize(332, 34)
    flow.setGeometry(QRect(0, 0, 331, 64))
    assert [place.topLeft().toTuple() for place in places(flow)] == [(5, 6), (115, 6), (5, 36)]
    assert flow.heightForWidth(331) == 64
    assert flow.heightForWidth(332) == 34


def test_that_no_part_is_wider_than_the_row(qtbot):
    owner = QWidget()
    layout = Flow(4, owner)
    layout.add(QPushButton("A long word on a button that stands alone in its line", owner))
    layout.setGeometry(QRect(0, 0, 60, 30))
    assert layout.itemAt(0).geometry().width() == 60
    put_away(owner)
