"""Makes the pictures of the README: starts the program on the sample farm and looks at what it draws.

    .venv/bin/python -m docs.pictures.make_pictures [FOLDER]

Nothing is drawn for the occasion: the window, the drag and the printed page are those that a user gets, on
a screen that is only in memory. The clock stands still and the typeface is the shipped one, so that the same
program gives the same pictures.
"""

from __future__ import annotations

import os
import sys
import tempfile
from datetime import UTC, datetime
from pathlib import Path
from typing import Final

import numpy as np
from PySide6.QtCore import QEvent, QPoint, QPointF, QSettings, Qt
from PySide6.QtGui import QFont, QFontDatabase, QImage, QMouseEvent, QPixmap
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from planner import __version__
from planner.bootstrap import Means
from planner.bootstrap_window import Wiring
from planner.desk.given import DeskServices
from planner.desk.lanes.lanes_view import LanesView
from planner.desk.lanes.scene_index import SceneIndex
from planner.desk.shade import ShadeChoice
from planner.desk.window import MainWindow
from planner.farm.crops import Phase
from planner.farm.fields import Id
from planner.paper.qt_writer import page_images
from planner.paper.seeding_calendar import seeding_calendar
from planner.paper.style import A4
from planner.shipped import shipped_path

NOW: Final = datetime(2027, 3, 17, 9, 30, tzinfo=UTC)
SIZE: Final = (1280, 800)
DRAGGED, DAYS_MOVED = "LTL-27W09-A", 10
DOTS_PER_INCH: Final = 96
CALENDAR_WEEKS: Final = 8
COLOURS: Final = 200
PAGES: Final = ("beds", "balance", "fish", "plan")
_WAIT_MS: Final = 9000
"""How long a page may work beside the window before it is looked at."""
_MOMENT_MS: Final = 50
_STEPS: Final = 4
_GRIP_PX: Final = 12
_SMALLEST: Final = 0


def main(folder: Path) -> None:
    """Write every picture into a folder."""
    os.environ["QT_QPA_PLATFORM"] = "offscreen"
    application = QApplication(sys.argv[:1])
    _use_the_shipped_typeface(application)
    with tempfile.TemporaryDirectory() as home:
        window = _opened(Path(home))
        _kept(window.grab(), folder / "window.png")
        _take_in_hand(_lanes_of(window))
        _kept(window.grab(), folder / "drag.png")
        QTest.keyClick(_lanes_of(window), Qt.Key.Key_Escape)
        for page in PAGES:
            window.menus.actions[f"view.{page}"].trigger()
            QTest.qWait(_WAIT_MS)
            _kept(window.grab(), folder / f"page-{page}.png")
        window.menus.actions["view.weeks"].trigger()
        window.set_shade(ShadeChoice.DARK)
        QApplication.processEvents()
        _kept(window.grab(), folder / "window-dark.png")
        window.close()
    _kept(QPixmap.fromImage(_calendar_page()), folder / "calendar.png")


def _use_the_shipped_typeface(application: QApplication) -> None:
    for path in sorted(shipped_path("resources", "fonts").glob("*.ttf")):
        QFontDatabase.addApplicationFont(str(path))
    application.setFont(QFont("DejaVu Sans", 10))


def _opened(home: Path) -> MainWindow:
    """Return the window as it is after a first start."""
    settings = QSettings(str(home / "settings.ini"), QSettings.Format.IniFormat)
    services = DeskServices(
        load=Wiring(home).rooms,
        settings=settings,
        now=lambda: NOW,
        ask=lambda question, answered, parent: None,  # noqa: ARG005 - nothing is asked on the way
        home=home,
        version=__version__,
    )
    window = MainWindow(services)
    window.see_furnished()
    window.set_shade(ShadeChoice.LIGHT)
    window.resize(*SIZE)
    window.show()
    while window.cover is not None or window.conduct.session is None:
        QTest.qWait(_MOMENT_MS)
    window.messages.hide()
    for _ in range(_STEPS):
        QApplication.processEvents()
    return window


def _lanes_of(window: MainWindow) -> LanesView:
    lanes: LanesView | None = window.findChild(LanesView)
    if lanes is None:
        raise SystemExit("The window shows no lanes; was the farm opened?")
    return lanes


def _take_in_hand(lanes: LanesView) -> None:
    """Drag a batch to a later week and hold it there, so that the balance can be seen to move."""
    spots = SceneIndex(lanes.scene).spots(_id_of(lanes, DRAGGED))
    spot = next(each for each in spots if each.bar.phase is Phase.BED)
    lanes.hands.go_to_spot(spot)
    box, lane = lanes.beds.rect_of(spot), lanes.beds.viewport()
    if box is not None:
        lanes.beds.verticalScrollBar().setValue(int(box.center().y()) - lane.height() // 2)
        QTest.qWait(_MOMENT_MS)
        box = lanes.beds.rect_of(spot)
    if box is None:
        raise SystemExit(f"The bar of {DRAGGED} is not in sight.")
    start = QPoint(int(box.left()) + _GRIP_PX, int(box.center().y()))
    far = box.width() / (spot.bar.end - spot.bar.start) * DAYS_MOVED
    QTest.mousePress(lane, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, start)
    for step in range(1, _STEPS + 1):
        _move(lane, QPointF(start) + QPointF(far * step / _STEPS, 0))
    QApplication.processEvents()


def _id_of(lanes: LanesView, code: str) -> Id:
    for bar in lanes.scene.bars():
        if bar.code == code:
            return bar.batch
    raise SystemExit(f"The sample farm has no batch {code}; choose another one to drag.")


def _move(lane: QWidget, at: QPointF) -> None:
    """Move the mouse with its button held, which `QTest.mouseMove` does not."""
    left, none = Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
    event = QMouseEvent(
        QEvent.Type.MouseMove, at, lane.mapToGlobal(at), none, left, Qt.KeyboardModifier.NoModifier
    )
    QApplication.sendEvent(lane, event)


def _calendar_page() -> QImage:
    """Return the first page of the seeding calendar, as it would be printed."""
    means = Means()
    farm = means.read(shipped_path("sample_data", "school-kitchen.toml")).farm
    forecaster = means.forecaster
    report = seeding_calendar(
        farm,
        forecaster.forecast(farm),
        forecaster.catalogue_for(farm),
        from_on=NOW.date(),
        weeks=CALENDAR_WEEKS,
        printed_on=NOW,
        large=False,
    )
    return page_images(report, A4.turned(landscape=True), dpi=DOTS_PER_INCH)[0]


def _kept(picture: QPixmap, path: Path) -> None:
    """Write a picture with its commonest colours alone, which is hard to see and keeps it small."""
    image = picture.toImage().convertToFormat(QImage.Format.Format_RGB32)
    image = image.convertToFormat(
        QImage.Format.Format_Indexed8, _common_colours(image), Qt.ImageConversionFlag.AvoidDither
    )
    if not image.save(str(path), quality=_SMALLEST):
        raise SystemExit(f"{path} could not be written.")
    sys.stdout.write(f"{path.name}: {image.width()} x {image.height()}, {path.stat().st_size} bytes\n")


def _common_colours(image: QImage) -> list[int]:
    pixels = np.frombuffer(image.constBits(), dtype=np.uint32)
    colours, counts = np.unique(pixels, return_counts=True)
    return [int(colour) for colour in colours[np.argsort(-counts)][:COLOURS]]


if __name__ == "__main__":
    main(Path(sys.argv[1]) if sys.argv[1:] else Path(__file__).resolve().parent)
