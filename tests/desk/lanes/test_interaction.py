"""The drag as a machine: press, move, cancel, commit, and what the mover is told."""

import pytest

from planner.desk.lanes.interaction import Drag, DragState, Preview, step_by_days, step_to_rows
from planner.desk.lanes.scene import RowKey
from planner.farm.crops import Phase
from planner.farm.fields import Id
from tests.desk.lanes.demo import START, make_bar
from tests.desk.lanes.hands import NotingMover

HERE, THERE, NOWHERE = RowKey(bed=Id("b"), unit=1), RowKey(bed=Id("b"), unit=2), RowKey(bed=Id(""), unit=0)


def bar(*, locked=False):
    return make_bar(code="A", crop=0, sow=START, phase=Phase.BED, bed="b", unit=1, plants=9, locked=locked)


def pressed(mover, what=None) -> Drag:
    drag = Drag(mover)
    drag.press(what or bar(), HERE, x=100, y=50, day=START + 3.2)
    return drag


def test_that_a_press_and_release_asks_for_nothing():
    mover = NotingMover()
    drag = pressed(mover)
    assert not drag.move(x=102, y=51, day=START + 3.3, row=HERE)
    assert not drag.release()
    assert mover.calls == []
    assert drag.state is DragState.IDLE


def test_that_a_drag_and_release_asks_for_exactly_one_move():
    mover = NotingMover()
    drag = pressed(mover)
    assert drag.move(x=130, y=50, day=START + 7.0, row=HERE)
    assert drag.release()
    assert mover.calls == [("begin", "batch A"), ("preview", "batch A", bar().run, 4, "", 0), ("commit",)]


def test_that_an_unchanged_day_and_row_is_not_tried_again():
    mover = NotingMover()
    drag = pressed(mover)
    drag.move(x=130, y=50, day=START + 7.0, row=HERE)
    assert not drag.move(x=131, y=51, day=START + 7.1, row=HERE)
    assert len(mover.named("preview")) == 1


def test_that_another_row_is_named_with_its_bed_and_unit():
    mover = NotingMover()
    drag = pressed(mover)
    drag.move(x=100, y=90, day=START + 3.2, row=THERE)
    assert mover.calls[-1] == ("preview", "batch A", bar().run, 0, "b", 2)
    assert drag.changes_row
    drag.move(x=100, y=50, day=START + 3.2, row=HERE)
    assert mover.calls[-1] == ("preview", "batch A", bar().run, 0, "", 0)


def test_that_a_kept_row_and_a_pointer_outside_move_days_only():
    mover = NotingMover()
    drag = pressed(mover)
    drag.move(x=140, y=90, day=START + 8.2, row=THERE, keep_row=True)
    drag.move(x=150, y=900, day=START + 9.2, row=None)
    assert [call[3:] for call in mover.named("preview")] == [(5, "", 0), (6, "", 0)]


def test_that_escape_takes_everything_back():
    mover = NotingMover()
    drag = pressed(mover)
    drag.move(x=130, y=50, day=START + 7.0, row=HERE)
    assert drag.cancel()
    assert not drag.release()
    assert [call[0] for call in mover.calls] == ["begin", "preview", "cancel"]
    assert drag.bar is None
    assert not drag.cancel()


def test_that_a_bar_brought_back_to_its_place_is_not_moved():
    mover = NotingMover()
    drag = pressed(mover)
    drag.move(x=130, y=50, day=START + 7.0, row=HERE)
    drag.move(x=100, y=50, day=START + 3.2, row=HERE)
    assert not drag.release()
    assert [call[0] for call in mover.calls][-1] == "cancel"


def test_that_a_refused_place_is_not_asked_for():
    mover = NotingMover(lambda *_: Preview(allowed=False, reason="full"))
    drag = pressed(mover)
    drag.move(x=130, y=50, day=START + 7.0, row=HERE)
    assert drag.preview.reason == "full"
    assert not drag.release()
    assert mover.named("commit") == []
    assert len(mover.named("cancel")) == 1


def test_that_a_locked_batch_is_refused_without_asking():
    mover = NotingMover()
    drag = pressed(mover, bar(locked=True))
    assert drag.move(x=130, y=50, day=START + 7.0, row=HERE)
    assert drag.refused
    assert not drag.release()
    assert mover.calls == []


def test_that_a_bar_held_over_the_unplaced_ones_is_not_tried():
    mover = NotingMover()
    drag = pressed(mover)
    drag.move(x=100, y=190, day=START + 3.2, row=NOWHERE)
    assert drag.preview is None
    assert not drag.release()
    assert [call[0] for call in mover.calls] == ["begin", "cancel"]


def test_that_a_second_press_ends_the_first_drag():
    mover = NotingMover()
    drag = pressed(mover)
    drag.move(x=130, y=50, day=START + 7.0, row=HERE)
    drag.press(bar(), HERE, x=0, y=0, day=0)
    assert mover.calls[-1] == ("cancel",)
    assert drag.state is DragState.PRESSED


@pytest.mark.parametrize("days", [-7, -1, 1, 7])
def test_that_a_key_moves_the_whole_batch(days):
    mover = NotingMover()
    assert step_by_days(mover, bar(), days).moved
    assert mover.calls == [("begin", "batch A"), ("preview", "batch A", "", days, "", 0), ("commit",)]


def test_that_keys_go_on_to_the_first_unit_with_room():
    mover = NotingMover(
        lambda _b, _r, _d, _bed, unit: Preview(allowed=unit == 4, reason=f"unit {unit} is full")
    )
    rows = tuple(RowKey(bed=Id("b"), unit=unit) for unit in (2, 3, 4, 5))
    assert step_to_rows(mover, bar(), rows).moved
    assert [call[5] for call in mover.named("preview")] == [2, 3, 4]
    assert len(mover.named("commit")) == 1


def test_that_the_reason_of_the_nearest_unit_is_told_when_none_has_room():
    mover = NotingMover(lambda _b, _r, _d, _bed, unit: Preview(allowed=False, reason=f"unit {unit} is full"))
    rows = tuple(RowKey(bed=Id("b"), unit=unit) for unit in (2, 3))
    step = step_to_rows(mover, bar(), rows)
    assert not step.moved
    assert step.reason == "unit 2 is full"
    assert [call[0] for call in mover.calls][-1] == "cancel"
