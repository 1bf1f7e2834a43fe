"""Times the start of the window on the sample farm, from the start of the process to the first paint.

    python benchmarks/window_start.py [--runs N]

Beside it stands the floor: an empty window of the same toolkit. Runs of all kinds are taken in turn: a later
start, which shows a glance of the farm before the farm itself; the same without a glance; the very first in a
home that the set-up has prepared; and the very first in an empty home, which also writes the sample farm. All
use one folder of compiled modules, filled before, as an installed program has it. Beside the time that passed
stands the time of the processor, which says more where other work goes on. Without a screen set
`QT_QPA_PLATFORM=offscreen`.
"""

from __future__ import annotations

import argparse
import os
import shutil
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from typing import Final, NamedTuple

import numpy as np

ROOT: Final = Path(__file__).resolve().parent.parent
_MS: Final = 1000.0
_MOST_SECONDS: Final = 45
FIRST_PAINT, GLANCE_PAINTED, FARM_PAINTED = "first-paint", "glance-painted", "farm-painted"
MOMENTS: Final = (FIRST_PAINT, GLANCE_PAINTED, FARM_PAINTED)
LATER, NO_GLANCE = "window", "window, no glance"
PREPARED, VERY_FIRST = "window, first start after set-up", "window, very first start"
_CACHE: Final = "cache"

EMPTY_WINDOW: Final = """
import sys, time
from PySide6.QtCore import QEvent, QTimer
from PySide6.QtWidgets import QApplication, QMainWindow

class Window(QMainWindow):
    def paintEvent(self, event):
        super().paintEvent(event)
        QTimer.singleShot(0, self.painted)

    def painted(self):
        print(f"first-paint {time.time():.6f} {time.process_time():.6f}", file=sys.stderr, flush=True)
        QApplication.quit()

application = QApplication(sys.argv)
window = Window()
window.resize(1200, 800)
window.show()
sys.exit(application.exec())
"""


class Moment(NamedTuple):
    """Milliseconds from the start of a process: passed, and used of the processor."""

    passed: float
    used: float


def settings_for(home: Path, compiled: Path) -> dict[str, str]:
    """Return the environment of a process that lives in a home."""
    places = {name: str(home) for name in ("HOME", "USERPROFILE", "XDG_CONFIG_HOME", "XDG_DATA_HOME")}
    environment = {
        **os.environ,
        **places,
        "XDG_CACHE_HOME": str(home / _CACHE),
        "RAFTWEEK_TIMING": "1",
        "PYTHONPATH": str(ROOT),
        "PYTHONPYCACHEPREFIX": str(compiled),
    }
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    return environment


def started(command: list[str], home: Path, compiled: Path) -> dict[str, Moment]:
    """Run a command until it ends; return the moment of each paint it told of."""
    environment = settings_for(home, compiled)
    begin = time.time()
    done = subprocess.run(
        command, env=environment, cwd=home, capture_output=True, text=True, check=False, timeout=_MOST_SECONDS
    )
    found = {}
    for line in done.stderr.splitlines():
        name, *moment = line.split(" ")
        if name in MOMENTS:
            found[name] = Moment((float(moment[0]) - begin) * _MS, float(moment[1]) * _MS)
    if done.returncode != 0 or FIRST_PAINT not in found:
        raise SystemExit(f"the window did not come up (exit code {done.returncode}):\n{done.stderr}")
    return found


def prepared(home: Path, compiled: Path) -> None:
    """Let a home be as the set-up leaves it."""
    command = [sys.executable, "-m", "planner.bootstrap_first"]
    subprocess.run(command, env=settings_for(home, compiled), cwd=home, capture_output=True, check=True)


def measure(runs: int) -> dict[str, list[Moment]]:
    """Return moments by kind of start, the kinds taken in turn."""
    planner = [sys.executable, "-m", "planner"]
    empty = [sys.executable, "-c", EMPTY_WINDOW]
    found: dict[str, list[Moment]] = {}
    with tempfile.TemporaryDirectory() as folder:
        used, compiled = Path(folder) / "home", Path(folder) / "compiled"
        used.mkdir()
        for command in (empty, planner, planner):
            started(command, used, compiled)
        for _ in range(runs):
            found.setdefault("empty window", []).append(started(empty, used, compiled)[FIRST_PAINT])
            for name in (LATER, NO_GLANCE, PREPARED, VERY_FIRST):
                with tempfile.TemporaryDirectory() as fresh:
                    home = used if name in (LATER, NO_GLANCE) else Path(fresh)
                    if name == NO_GLANCE:
                        shutil.rmtree(used / _CACHE, ignore_errors=True)
                    if name == PREPARED:
                        prepared(home, compiled)
                    times = started(planner, home, compiled)
                for what in (each for each in MOMENTS if each in times):
                    found.setdefault(f"{name}: {what}", []).append(times[what])
    return found


def table_lines(found: dict[str, list[Moment]]) -> list[str]:
    """Return a table of medians, 90th percentiles and ratios to the empty window."""
    least = Moment(*(statistics.median(each) for each in zip(*found["empty window"], strict=True)))
    head = f"{'':48}{'median ms':>11}{'p90 ms':>9}{'× empty':>9}{'processor ms':>14}{'× empty':>9}"
    lines = [head]
    for name, moments in found.items():
        passed, used = (list(each) for each in zip(*moments, strict=True))
        median, p90, work = (
            statistics.median(passed),
            float(np.percentile(passed, 90)),
            statistics.median(used),
        )
        clock = f"{median:11.0f}{p90:9.0f}{median / least.passed:9.2f}"
        lines.append(f"{name:48}{clock}{work:14.0f}{work / least.used:9.2f}")
    return lines


def main() -> int:
    """Measure and print."""
    parser = argparse.ArgumentParser(description="Times the start of the window.")
    parser.add_argument("--runs", type=int, default=15)
    asked = parser.parse_args()
    print("\n".join(table_lines(measure(asked.runs))))
    return 0


if __name__ == "__main__":
    sys.exit(main())
