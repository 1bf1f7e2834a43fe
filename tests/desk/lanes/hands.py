"""What the tests of the lanes share: a mover that writes everything down, and a view that is shown."""

from collections.abc import Callable
from datetime import date

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from planner.desk.lanes.interaction import Preview
from planner.desk.lanes.lanes_view import LanesView
from planner.desk.lanes.scene_index import SceneIndex, Spot
from planner.desk.theme import LIGHT
from planner.farm.crops import Phase
from tests.desk.lanes.demo import TODAY, demo_scene

LEFT = Qt.MouseButton.LeftButton
NONE = Qt.KeyboardModifier.NoModifier
WIDTH, HEIGHT = 1280, 900


def anywhere(*_: object) -> Preview:
    """Allow every move."""
    return Preview(allowed=True)


class NotingMover:
    """Notes every call; answers previews by a function of the call."""

    def __init__(self, answer: Callable[..., Preview] = anywhere) -> None:
        self.calls: list[tuple] = []
        self.answer = answer

    def begin(self, batch_id):
        self.calls.append(("begin", batch_id))

    def preview(self, batch_id, run, days, bed, unit):
        self.calls.append(("preview", batch_id, run, days, bed, unit))
        return self.answer(batch_id, run, days, bed, unit)

    def stretch(self, batch_id, days):
        self.calls.append(("stretch", batch_id, days))
        return self.answer(batch_id, "", days, "", 0)

    def commit(self):
        self.calls.append(("commit",))

    def cancel(self):
        self.calls.append(("cancel",))

    def named(self, name: str) -> list[tuple]:
        return [call for call in self.calls if call[0] == name]


def shown_view(qtbot, mover=None, scene=None, *, theme=LIGHT) -> LanesView:
    """Return a view on the demo farm, shown, with the focus."""
    view = LanesView(theme, mover or NotingMover(), None)
    qtbot.addWidget(view)
    view.resize(WIDTH, HEIGHT)
    view.set_scene(scene or demo_scene())
    view.set_today(TODAY)
    view.go_to(date(2026, 3, 1))
    view.show()
    qtbot.waitExposed(view)
    view.activateWindow()
    view.setFocus()
    QApplication.processEvents()
    return view


def spot_of(view: LanesView, code: str, phase: Phase = Phase.BED) -> Spot:
    """Return the bar of a batch by its code."""
    spots = SceneIndex(view.scene).spots(f"batch {code}")
    return next(spot for spot in spots if spot.bar.phase is phase)


def point_of(view: LanesView, code: str, phase: Phase = Phase.BED) -> QPoint:
    """Return a point of the beds lane that lies on a bar."""
    box = view.beds.rect_of(spot_of(view, code, phase))
    seen = box.intersected(view.beds.rect_f().adjusted(view.beds.frame_state.kit.names_px, 0, 0, 0))
    return QPoint(int(seen.left()) + 12, int(seen.center().y()))


def drag(view: LanesView, start: QPoint, *steps: QPoint, modifiers=NONE, release: bool = True) -> None:
    """Press at a point, move through others, and let go."""
    lane = view.beds.viewport()
    QTest.mousePress(lane, LEFT, modifiers, start)
    for step in steps:
        move(view, step, modifiers=modifiers)
    if release:
        QTest.mouseRelease(lane, LEFT, modifiers, steps[-1])


def move(view: LanesView, at: QPoint, *, modifiers=NONE) -> None:
    """Move the pressed mouse, with keys held."""

    lane = view.beds.viewport()
    event = QMouseEvent(
        QEvent.Type.MouseMove,
        QPointF(at),
        QPointF(lane.mapToGlobal(at)),
        Qt.MouseButton.NoButton,
        LEFT,
        modifiers,
    )
    QApplication.sendEvent(lane, event)


def wheel(lane, at: QPoint, *, up: int, modifiers=NONE) -> None:
    """Turn the wheel over a lane by so many clicks upwards."""
    event = QWheelEvent(
        QPointF(at),
        QPointF(lane.mapToGlobal(at)),
        QPoint(),
        QPoint(0, 120 * up),
        Qt.MouseButton.NoButton,
        modifiers,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(lane.viewport(), event)
