"""Times the start of the window on the sample farm, from the start of the process to the first paint.

    python benchmarks/window_start.py [--runs N]

Beside it stands the floor: an empty window of the same toolkit. Runs of all kinds are taken in turn: a later
start, which shows a glance of the farm before the farm itself; the same without a glance; and the very first,
in an empty home, which also writes the sample farm. All use one folder of compiled modules, filled before, as
an installed program has it. Without a screen set `QT_QPA_PLATFORM=offscreen`.
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
from typing import Final

import numpy as np

ROOT: Final = Path(__file__).resolve().parent.parent
_MS: Final = 1000.0
_MOST_SECONDS: Final = 45
FIRST_PAINT, GLANCE_PAINTED, FARM_PAINTED = "first-paint", "glance-painted", "farm-painted"
MOMENTS: Final = (FIRST_PAINT, GLANCE_PAINTED, FARM_PAINTED)
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
        print(f"first-paint {time.time():.6f}", file=sys.stderr, flush=True)
        QApplication.quit()

application = QApplication(sys.argv)
window = Window()
window.resize(1200, 800)
window.show()
sys.exit(application.exec())
"""


def started(command: list[str], home: Path, compiled: Path) -> dict[str, float]:
    """Run a command until it ends; return milliseconds from its start to each paint it told of."""
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
    begin = time.time()
    done = subprocess.run(
        command, env=environment, cwd=home, capture_output=True, text=True, check=False, timeout=_MOST_SECONDS
    )
    found = {}
    for line in done.stderr.splitlines():
        name, _, moment = line.partition(" ")
        if name in MOMENTS:
            found[name] = (float(moment) - begin) * _MS
    if done.returncode != 0 or FIRST_PAINT not in found:
        raise SystemExit(f"the window did not come up (exit code {done.returncode}):\n{done.stderr}")
    return found


def measure(runs: int) -> dict[str, list[float]]:
    """Return milliseconds by kind of start, the kinds taken in turn."""
    planner = [sys.executable, "-m", "planner"]
    empty = [sys.executable, "-c", EMPTY_WINDOW]
    found: dict[str, list[float]] = {}
    with tempfile.TemporaryDirectory() as folder:
        used, compiled = Path(folder) / "home", Path(folder) / "compiled"
        used.mkdir()
        for command in (empty, planner, planner):
            started(command, used, compiled)
        for _ in range(runs):
            found.setdefault("empty window", []).append(started(empty, used, compiled)[FIRST_PAINT])
            for name in ("window", "window, no glance", "window, very first start"):
                with tempfile.TemporaryDirectory() as fresh:
                    if name.endswith("no glance"):
                        shutil.rmtree(used / _CACHE, ignore_errors=True)
                    times = started(planner, Path(fresh) if name.endswith("start") else used, compiled)
                for what in (each for each in MOMENTS if each in times):
                    found.setdefault(f"{name}: {what}", []).append(times[what])
    return found


def table_lines(found: dict[str, list[float]]) -> list[str]:
    """Return a table of medians, 90th percentiles and ratios to the empty window."""
    least = statistics.median(found["empty window"])
    lines = [f"{'':40}{'median ms':>11}{'p90 ms':>11}{'× empty':>10}"]
    for name, values in found.items():
        median, p90 = statistics.median(values), float(np.percentile(values, 90))
        lines.append(f"{name:40}{median:11.0f}{p90:11.0f}{median / least:10.2f}")
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
