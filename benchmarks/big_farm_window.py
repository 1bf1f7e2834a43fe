"""Times scrolling, zooming and dragging in the real window on the big farm: from the event to the picture.

Run as `python benchmarks/big_farm_window.py [--batches N] [--rafts N] [--years N]`. The farm is that of
`sample_data/make_big_farm.py`, in memory; the window, its lanes and its mover are the program's own. Each
event is sent to the lane as the mouse sends it, and the clock stops when everything it led to has been
painted: for a drag the bar under the hand, the words beside the pointer and the balance of all weeks.

Round the bar that is dragged a few batches are taken out of the farm first, for it is full, and a drag that
is refused everywhere has no balance to show; the last column says how many of the moves were allowed.

*processor* is what the frame cost on a quiet machine; where others work on it, the clock says more than
that. Two floors are measured in the same run: one picture as large as the window laid
onto it, which every frame must at least do; and the bare look ahead with one batch moved, which a drag must.
"""

from __future__ import annotations

import argparse
import gc
import os
import statistics
import sys
import tempfile
import time
from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from typing import Final

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from PySide6.QtCore import QEvent, QPoint, QPointF, QSettings, Qt
from PySide6.QtGui import QColor, QMouseEvent, QPainter, QPaintEvent, QPixmap, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from planner.actions.memory import MemoryKeeper
from planner.actions.session import Session
from planner.bootstrap import Means
from planner.desk.conduct import Conduct
from planner.desk.grounds import load_font
from planner.desk.services import WorkspaceNeeds
from planner.desk.settings import Memory
from planner.desk.theme import LIGHT, dress, load_bold
from planner.desk.workspace import Workspace
from planner.farm.crops import Phase
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.fields import Id
from planner.forecast.values import Forecast
from sample_data.make_big_farm import DEFAULT_BATCHES, DEFAULT_RAFTS, DEFAULT_YEARS, big_farm

WIDTH, HEIGHT = 1280, 800
FRAMES: Final = 150
_MS: Final = 1000.0
_PERCENTILE: Final = 0.99
_UNIT: Final = 20
_ROWS_OF_ROOM: Final = 2
_DAYS_OF_ROOM: Final = 14
_TURNS: Final = 12
WANTED_MEDIAN_MS, WANTED_P99_MS, WANTED_FRAME_MS = 16.0, 33.0, 8.0
_MIDDLE_WEEKS: Final = 104
"""The days shown: after this many weeks the farm is full of batches."""


class Blank(QWidget):
    """A window that shows one ready picture; the least that any frame can be."""

    def __init__(self) -> None:
        super().__init__()
        self.resize(WIDTH, HEIGHT)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self._picture = QPixmap(WIDTH, HEIGHT)
        self._picture.fill(QColor("white"))

    def paintEvent(self, event: QPaintEvent) -> None:  # noqa: ARG002, N802
        """Lay the picture down."""
        painter = QPainter(self)
        painter.drawPixmap(0, 0, self._picture)
        painter.end()


def timed(act: Callable[[int], None], frames: int = FRAMES) -> tuple[list[float], list[float]]:
    """Return the milliseconds of many calls by the clock and by the processor, each in order of size."""
    for number in range(10):
        act(number)
    gc.collect()
    times, work = [], []
    for number in range(frames):
        start, started = time.perf_counter(), time.process_time()
        act(number)
        times.append((time.perf_counter() - start) * _MS)
        work.append((time.process_time() - started) * _MS)
    return sorted(times), sorted(work)


@dataclass(frozen=True, slots=True, kw_only=True)
class Timed:
    """Milliseconds as `timed` tells them, and the share of drags that were allowed."""

    times: tuple[list[float], list[float]]
    allowed: float


def with_room(farm: Farm, forecast: Forecast) -> tuple[Farm, Id]:
    """Return the farm with room round one batch that stands in the middle of the plan, and that batch."""
    table = forecast.batches
    middle = _MIDDLE_WEEKS * DAYS_PER_WEEK
    bed = next(run.bed for run in reversed(farm.placements) if run.phase is Phase.BED)
    standing = [
        (run, *table.phase_days(table.row_of[run.batch], Phase.BED))
        for run in farm.placements
        if run.phase is Phase.BED and run.bed == bed and abs(run.unit - _UNIT) <= _ROWS_OF_ROOM
    ]
    held, start, end = next(each for each in standing if each[0].unit == _UNIT and each[1] > middle)
    near = {run.batch for run, first, last in standing if first < end + _DAYS_OF_ROOM and last > start - 1}
    gone = near - {held.batch}
    kept = replace(
        farm,
        batches=tuple(each for each in farm.batches if each.id not in gone),
        placements=tuple(each for each in farm.placements if each.batch not in gone),
    )
    return kept, held.batch


class Bench:
    """The workspace of the program on a farm, and the events that are sent to it."""

    def __init__(self, farm: Farm, folder: Path) -> None:
        means = self._means = Means()
        farm, self._held = with_room(farm, means.forecaster.preview(farm))
        self.middle = farm.settings.plan_from + timedelta(weeks=_MIDDLE_WEEKS)
        now = datetime.combine(self.middle, datetime.min.time(), UTC)
        conduct = Conduct()
        self._host = QWidget()
        self.workspace = Workspace(
            WorkspaceNeeds(
                theme=LIGHT,
                conduct=conduct,
                now=lambda: now,
                ask=lambda *_: None,
                memory=Memory(QSettings(str(folder / "desk.ini"), QSettings.Format.IniFormat)),
                home=folder,
                parent=self._host,
            ),
            forecaster=means.forecaster,
        )
        session = Session(
            MemoryKeeper(farm), means.catalogue, holds_of=means.holds, faults_of=means.faults, now=lambda: now
        )
        conduct.take(session)
        self.conduct, self.session = conduct, session
        self._host.resize(WIDTH, HEIGHT)
        self.workspace.resize(WIDTH, HEIGHT)
        self._host.show()
        self.workspace.show_session(session)
        QApplication.processEvents()
        self.lanes = self.workspace.lanes
        self.blank = Blank()
        self.blank.show()
        QApplication.processEvents()
        gc.freeze()  # as the program does once a farm is there

    def floor_picture(self) -> tuple[list[float], list[float]]:
        """Time one picture as large as the window."""

        def act(_: int) -> None:
            self.blank.update()
            QApplication.processEvents()

        return timed(act)

    def floor_forecast(self) -> tuple[list[float], list[float]]:
        """Time the bare look ahead with one batch moved."""
        farm, forecaster = self.session.farm, self._means.forecaster
        rows = len(farm.batches)

        def act(number: int) -> None:
            at = (number * 7919) % rows
            moved = farm.batches[at]
            late = replace(moved, sow_on=moved.sow_on + timedelta(days=1))
            forecaster.preview(replace(farm, batches=(*farm.batches[:at], late, *farm.batches[at + 1 :])))

        return timed(act, 60)

    def wheel(self, *, across: bool = False, zoom: bool = False) -> tuple[list[float], list[float]]:
        """Time turns of the wheel over the beds: down the rows, along the days, or closer and back."""
        lane = self.lanes.beds.viewport()
        at = QPointF(lane.width() * 0.6, lane.height() * 0.5)
        held = Qt.KeyboardModifier.ControlModifier if zoom else Qt.KeyboardModifier.NoModifier
        if across:
            held = Qt.KeyboardModifier.ShiftModifier

        def act(number: int) -> None:
            turn = 120 if (number % 2 if zoom else number // _TURNS % 2) else -120
            event = QWheelEvent(
                at,
                QPointF(lane.mapToGlobal(at.toPoint())),
                QPoint(),
                QPoint(0, turn),
                Qt.MouseButton.NoButton,
                held,
                Qt.ScrollPhase.NoScrollPhase,
                False,  # noqa: FBT003
            )
            QApplication.sendEvent(lane, event)
            QApplication.processEvents()

        return timed(act)

    def frames(self, name: str, floor: float) -> list[str]:
        """Return lines on three kinds of frames, with the days that are shown now."""
        QApplication.processEvents()
        return [
            line(f"{name}wheel down the rows", self.wheel(), floor),
            line(f"{name}wheel along the days", self.wheel(across=True), floor),
            line(f"{name}wheel to zoom", self.wheel(zoom=True), floor),
        ]

    def drag(self, *, over_rows: bool) -> Timed:
        """Time moves of the mouse that drag a bar by days, and over rows if wanted."""
        lanes = self.lanes
        lane = lanes.beds
        strip = next(
            each for each in lane.layout_now.strips if each.row is not None and each.row.unit == _UNIT
        )
        assert strip.row is not None
        bar = next(each for each in strip.row.bars if each.batch == self._held)
        lane.verticalScrollBar().setValue(round(strip.top - lane.viewport().height() / 2))
        lanes.go_to(date.fromordinal(bar.start))
        QApplication.processEvents()
        scale = lane.frame_state.scale
        start = QPoint(round(scale.x_of(bar.start)) + 20, round(strip.top + strip.height / 2) - lane.down_px)
        QTest.mousePress(lane.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, start)
        allowed = [0, 0]

        def act(number: int) -> None:
            across = round(scale.px_per_day) * (1 + number % 12)
            down = round(strip.height) * (number % 5 - 2) if over_rows else 0
            self._move(start + QPoint(across, down))
            QApplication.processEvents()
            allowed[0] += 1
            allowed[1] += lanes.balance.shown is not lanes.scene.balances[0]

        found = timed(act)
        QTest.keyClick(lanes, Qt.Key.Key_Escape)
        QTest.mouseRelease(lane.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, start)
        QApplication.processEvents()
        return Timed(times=found, allowed=allowed[1] / allowed[0])

    def _move(self, at: QPoint) -> None:
        lane = self.lanes.beds.viewport()
        event = QMouseEvent(
            QEvent.Type.MouseMove,
            QPointF(at),
            QPointF(lane.mapToGlobal(at)),
            Qt.MouseButton.NoButton,
            Qt.MouseButton.LeftButton,
            Qt.KeyboardModifier.NoModifier,
        )
        QApplication.sendEvent(lane, event)


def line(name: str, found: tuple[list[float], list[float]] | Timed, floor: float) -> str:
    """Return one line of the table."""
    times, work = found.times if isinstance(found, Timed) else found
    share = f"{found.allowed:>10.0%}" if isinstance(found, Timed) else ""
    median, worked = statistics.median(times), statistics.median(work)
    high, worked_high = (each[min(int(len(each) * _PERCENTILE), len(each) - 1)] for each in (times, work))
    clock, own = f"{median:>10.2f}{high:>9.2f}", f"{worked:>11.2f}{worked_high:>9.2f}"
    return f"{name:<34}{clock}{own}{median / floor:>9.1f}{share}"


def main() -> int:
    """Measure and print."""
    parser = argparse.ArgumentParser(description="Times the lanes in the real window on the big farm.")
    parser.add_argument("--batches", type=int, default=DEFAULT_BATCHES)
    parser.add_argument("--rafts", type=int, default=DEFAULT_RAFTS)
    parser.add_argument("--years", type=int, default=DEFAULT_YEARS)
    asked = parser.parse_args()
    application = QApplication(sys.argv[:1])
    load_font()
    load_bold()
    dress(application, LIGHT)
    farm = big_farm(batches=asked.batches, rafts=asked.rafts, years=asked.years)
    with tempfile.TemporaryDirectory() as folder:
        bench = Bench(farm, Path(folder))
        picture = bench.floor_picture()
        forecast = bench.floor_forecast()
        floor, look = statistics.median(picture[0]), statistics.median(forecast[0])
        lines = [
            line("floor: a picture of the window", picture, floor),
            line("floor: look ahead, one moved", forecast, look),
        ]
        bench.lanes.go_to(bench.middle)
        lines += bench.frames("", floor)
        lines.append(line("drag in time", bench.drag(over_rows=False), look))
        lines.append(line("drag in time and place", bench.drag(over_rows=True), look))
        bench.lanes.fit()
        bench.lanes.zoom_in()
        lines += bench.frames("five years: ", floor)
    print(
        f"{'':<34}{'median ms':>10}{'p99 ms':>9}{'processor':>11}{'p99 ms':>9}{'× floor':>9}{'allowed':>10}"
    )
    print("\n".join(lines))
    print(f"wanted: frames {WANTED_FRAME_MS:.0f}, drag {WANTED_MEDIAN_MS:.0f} and {WANTED_P99_MS:.0f} ms")
    return 0


if __name__ == "__main__":
    sys.exit(main())
