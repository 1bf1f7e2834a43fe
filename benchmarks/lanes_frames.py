"""Measures how long a frame of the lanes takes on a very large farm: 20,000 bars in 500 rows.

Run as `python benchmarks/lanes_frames.py`. Every kind of frame is timed many times; the floor beside it
is what the bare toolkit needs, in the same run and on the same screen, to fill as many rectangles and set
as many short texts as that frame shows. Prints one line a kind: floor, median and 99th percentile in ms.
"""

from __future__ import annotations

import gc
import os
import statistics
import sys
import time
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
sys.path.insert(0, str(Path(__file__).resolve().parent.parent))


from PySide6.QtCore import QPoint, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPixmap, QStaticText
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from planner.desk.grounds import load_font
from planner.desk.lanes.interaction import Preview
from planner.desk.lanes.lanes_view import LanesView
from planner.desk.theme import LIGHT, dress, load_bold
from planner.farm.fields import Id
from tests.desk.lanes.demo import big_scene, demo_balance
from tests.desk.lanes.hands import move

WIDTH, HEIGHT = 1400, 900
FRAMES = 120
WARM_UP = 10
PERCENTILE = 0.99
MS_PER_S = 1000.0
STAGES_A_BAR = 2


class ReadyMover:
    """Answers every preview at once with a balance made before."""

    def __init__(self) -> None:
        self._balances = [demo_balance(extra=float(step)) for step in range(8)]
        self._asked = 0

    def begin(self, batch_id: Id) -> None:
        """Nothing to take up."""

    def preview(self, batch_id: Id, run: Id, days: int, bed: Id, unit: int) -> Preview:  # noqa: ARG002
        """Return another balance each time."""
        self._asked += 1
        return Preview(allowed=True, balance=self._balances[self._asked % len(self._balances)])

    def stretch(self, batch_id: Id, days: int) -> Preview:
        """Return another balance each time."""
        return self.preview(batch_id, batch_id, days, batch_id, 0)

    def commit(self) -> None:
        """Nothing to carry out."""

    def cancel(self) -> None:
        """Nothing to forget."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Timed:
    """Times of one kind of frame [ms]."""

    name: str
    median_ms: float
    high_ms: float
    floor_ms: float
    bars: int


def timed(act: Callable[[int], None]) -> tuple[float, float]:
    """Return median and 99th percentile of many calls [ms]."""
    for number in range(WARM_UP):
        act(number)
    gc.collect()
    times = []
    for number in range(FRAMES):
        start = time.perf_counter()
        act(number)
        times.append((time.perf_counter() - start) * MS_PER_S)
    times.sort()
    return statistics.median(times), times[min(int(FRAMES * PERCENTILE), FRAMES - 1)]


def floor_ms(bars: int, width: int, height: int) -> float:
    """Return what bare rectangles and texts cost, as many as so many bars have."""
    picture = QPixmap(width, height)
    texts = [QStaticText(f"LET-{number:04d} · 24") for number in range(max(bars, 1))]
    columns = max(width // 100, 1)
    places = [
        QRectF(100 * (number % columns), 24 * (number // columns) % height, 90, 20) for number in range(bars)
    ]
    halves = [QRectF(place.x(), place.y(), place.width() / STAGES_A_BAR, 20) for place in places]

    def draw(_: int) -> None:
        painter = QPainter(picture)
        painter.fillRect(picture.rect(), QColor("white"))
        painter.setPen(Qt.PenStyle.NoPen)
        for colour in ("#88ccbb", "#eecc88"):
            painter.setBrush(QColor(colour))
            painter.drawRects(places)
            painter.drawRects(halves)
        painter.setPen(QColor("black"))
        for place, text in zip(places, texts, strict=False):
            painter.drawStaticText(QPointF(place.x() + 4, place.y() + 2), text)
        painter.end()

    return timed(draw)[0]


class Bench:
    """One view on the big farm, and the frames that are timed on it."""

    def __init__(self) -> None:
        self.view = LanesView(LIGHT, ReadyMover(), None)
        self.view.resize(WIDTH, HEIGHT)
        self.view.set_scene(big_scene())
        self.view.set_today(date(2026, 4, 1))
        self.view.show()
        QApplication.processEvents()

    def _painted(self) -> None:
        QApplication.processEvents()

    def _result(self, name: str, act: Callable[[int], None]) -> Timed:
        median, high = timed(act)
        bars = self.view.beds.bars_painted
        size = self.view.beds.viewport().size()
        floor = floor_ms(bars, size.width(), size.height())
        return Timed(name=name, median_ms=median, high_ms=high, floor_ms=floor, bars=bars)

    def whole(self, name: str) -> Timed:
        """Time painting all three lanes anew, as after an act."""

        def act(_: int) -> None:
            for lane in (self.view.fish, self.view.beds, self.view.balance):
                lane.refresh()
            self._painted()

        return self._result(name, act)

    def rows(self) -> Timed:
        """Time scrolling down by one row."""
        bar = self.view.beds.verticalScrollBar()

        def act(number: int) -> None:
            bar.setValue(200 + 27 * number)
            self._painted()

        return self._result("scroll a row", act)

    def days(self) -> Timed:
        """Time scrolling sideways by a few days in all lanes."""

        def act(number: int) -> None:
            self.view.time.scroll_px(37 if number % 2 else -37)
            self._painted()

        return self._result("scroll days", act)

    def zoom(self) -> Timed:
        """Time a step closer and back, as the wheel does."""

        def act(number: int) -> None:
            self.view.time.zoom(closer=bool(number % 2))
            self._painted()

        found = self._result("zoom", act)
        self.view.beds.sharpen()
        return found

    def drag(self) -> Timed:
        """Time a frame in which a bar, its label and the balance follow the hand."""
        lane = self.view.beds
        strip = next(strip for strip in lane.layout_now.strips if strip.row and strip.row.unit == 3)
        assert strip.row is not None
        bar = strip.row.bars[8]
        self.view.go_to(date.fromordinal(bar.start))
        lane.verticalScrollBar().setValue(0)
        self._painted()
        y = round(strip.top + strip.height / 2)
        start = QPoint(round(lane.frame_state.scale.x_of(bar.start)) + 20, y)
        QTest.mousePress(lane.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, start)

        def act(number: int) -> None:
            step = round(lane.frame_state.scale.px_per_day)
            move(self.view, start + QPoint(10 + step * (number % 25), 0))
            self._painted()

        found = self._result("drag a bar", act)
        QTest.keyClick(self.view, Qt.Key.Key_Escape)
        return found


def say(line: str) -> None:
    """Write one line."""
    sys.stdout.write(f"{line}\n")


def main() -> int:
    """Print a table; return 0."""
    application = QApplication(sys.argv[:1])
    load_font()
    load_bold()
    dress(application, LIGHT)
    bench = Bench()
    view = bench.view
    view.go_to(date(2027, 6, 1))
    found = [bench.whole("near, all anew"), bench.rows(), bench.days(), bench.zoom(), bench.drag()]
    view.fit()
    found += [bench.whole("five years, all anew"), bench.rows(), bench.days(), bench.zoom()]
    say(f"{'frame':<22}{'bars':>7}{'floor ms':>10}{'median ms':>11}{'p99 ms':>9}{'× floor':>9}")
    for each in found:
        times = each.median_ms / each.floor_ms
        say(
            f"{each.name:<22}{each.bars:>7}{each.floor_ms:>10.2f}{each.median_ms:>11.2f}"
            f"{each.high_ms:>9.2f}{times:>9.1f}"
        )
    return 0


if __name__ == "__main__":
    sys.exit(main())
