"""Works out in the background how sure a forecast is: chances first, then ranges.

Takes seconds, so it runs beside the window, for the farm as it was when asked, and is given up when the
farm changes. Must know nothing of words.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from queue import Empty, SimpleQueue
from threading import Event, Thread
from typing import Final

from PySide6.QtCore import QObject, QTimer, Signal

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import Farm
from planner.forecast.chances.draw import chances_of
from planner.forecast.chances.values import Chances
from planner.forecast.engine import Forecaster
from planner.forecast.ranges.bands import ranges_from, swings_of
from planner.forecast.ranges.values import Ranges

_LOOK_EVERY_MS: Final = 50


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Sureness:
    """How sure a forecast is; `ranges` come later than `chances`."""

    chances: Chances
    ranges: Ranges | None


def sureness_of(farm: Farm, catalogue: Catalogue, stopped: Event) -> Iterator[Sureness]:
    """Yield chances, then chances and ranges; nothing more once `stopped` is set.

    `catalogue` has the farm's own entries in it already.
    """
    bare = replace(farm, own_entries=())
    forecaster = Forecaster(catalogue)
    forecast = forecaster.preview(bare)
    chances = chances_of(bare, forecast, forecaster)
    yield Sureness(chances=chances, ranges=None)
    swings = []
    for swing in swings_of(bare, forecast, forecaster):
        if stopped.is_set():
            return
        swings.append(swing)
    yield Sureness(chances=chances, ranges=ranges_from(swings, forecast))


class SureJob(QObject):
    """One such working out; tells each part as it comes, and when it is done."""

    told = Signal(object)
    done = Signal()

    def __init__(self, farm: Farm, catalogue: Catalogue, parent: QObject) -> None:
        super().__init__(parent)
        self._found: SimpleQueue[Sureness | Exception | None] = SimpleQueue()
        self._stopped = Event()
        self._timer = QTimer(self)
        self._timer.timeout.connect(self._look)
        self._timer.start(_LOOK_EVERY_MS)
        arguments = (farm, catalogue, self._stopped, self._found)
        Thread(target=_work, args=arguments, name="sureness", daemon=True).start()

    def stop(self) -> None:
        """Give up; nothing is told any more."""
        self._stopped.set()
        self._timer.stop()
        self.deleteLater()

    def _look(self) -> None:
        try:
            found = self._found.get_nowait()
        except Empty:
            return
        if isinstance(found, Sureness):
            self.told.emit(found)
            return
        self._timer.stop()
        self.done.emit()
        if isinstance(found, Exception):
            raise found


def _work(
    farm: Farm, catalogue: Catalogue, stopped: Event, found: SimpleQueue[Sureness | Exception | None]
) -> None:
    """Put each part in the queue, and None or what went wrong at the end."""
    try:
        for part in sureness_of(farm, catalogue, stopped):
            found.put(part)
    except Exception as fault:  # noqa: BLE001 - raised again in the window's own thread
        found.put(fault)
    else:
        found.put(None)
