"""Lets two windows edit one farm on a database server, and looks whether anything was lost.

    python benchmarks/shared_windows.py [--edits 300]

As shared_farm.py, but each desk is the whole window, drawn without a screen: an edit goes by the window's
own conduct with all that follows from it (forecast, lanes, due list, the page of records), news of the other
come by its own looking, and a clash is answered by "Put mine in". A server of its own is started on the
loopback. Prints counts and times.
"""

from __future__ import annotations

import argparse
import dataclasses
import json
import os
import random
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from typing import Any, Final

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from planner.actions.batches import change_batch
from planner.bootstrap import Means
from planner.bootstrap_window import application_made, services_for
from planner.desk.window import MainWindow
from planner.farm.mark import plan_mark
from planner.store.acts import KEPT_ACTS
from planner.store.store import FarmStore
from tests.postgres.server import a_database, a_server

ROOT: Final = Path(__file__).resolve().parent.parent
SAMPLE: Final = ROOT / "sample_data" / "backyard.toml"
_MS: Final = 1000.0
_BATCHES: Final = 12
_SETTLE_S: Final = 3.0


class Desk:
    """One window and the hand that edits in it."""

    def __init__(self, url: str, who: str) -> None:
        """Open the window on a farm; questions are answered by going on."""
        self.application = application_made()
        self.clashes = 0
        services = services_for(Path(url))._replace(ask=self._on_question)
        self.window: Any = MainWindow(services)
        self.who = who
        self.window.show()
        self._wait_for_farm()

    def _on_question(self, question: Any, answered: Any, parent: Any) -> None:  # noqa: ARG002 - as a box is asked
        self.clashes += 1
        answered(True)  # noqa: FBT003 - as a box answers

    def _wait_for_farm(self) -> None:
        until = time.monotonic() + 60.0
        while self.window.conduct.session is None and time.monotonic() < until:
            self.application.processEvents()
            time.sleep(0.01)
        self.window.menus.actions["view.records"].trigger()

    @property
    def session(self) -> Any:
        """The open farm."""
        return self.window.conduct.session

    def edit(self, edits: int) -> list[float]:
        """Make edits one after the other, the window doing what it has to in between; return their ms."""
        chance, times = random.Random(self.who), []
        for number in range(edits):
            batch = self.session.farm.batches[chance.randrange(_BATCHES)]
            wanted = change_batch(self.session.farm, dataclasses.replace(batch, notes=f"{self.who} {number}"))
            began = time.perf_counter()
            self.window.conduct.act(wanted)
            self.application.processEvents()
            times.append((time.perf_counter() - began) * _MS)
        return times

    def settle(self) -> None:
        """Look for news until there is time enough that the other has finished too."""
        until = time.monotonic() + _SETTLE_S
        while time.monotonic() < until:
            self.application.processEvents()
            time.sleep(0.02)


def run_desk(url: str, who: str, edits: int, done: Path) -> dict[str, Any]:
    """Edit in one window, wait until the other is done; return counts and what this window shows."""
    desk = Desk(url, who)
    times = desk.edit(edits)
    (done / who).touch()
    while len(list(done.iterdir())) < len(_DESKS):
        desk.settle()
    desk.settle()
    seen = desk.window.workspace.outlook.farm
    told = {"who": who, "edits": len(times), "clashes": desk.clashes, "median_ms": statistics.median(times)}
    return told | {"mark": plan_mark(seen), "notes": sorted(batch.notes for batch in seen.batches)}


_DESKS: Final = ("Ana", "Ben")


def run_both(url: str, edits: int) -> list[dict[str, Any]]:
    """Run two windows in processes of their own, each with a home of its own, and return what each says."""
    with tempfile.TemporaryDirectory() as folder:
        done = Path(folder) / "done"
        done.mkdir()
        desks = []
        for who in _DESKS:
            home = Path(folder) / who
            home.mkdir()
            command = [sys.executable, __file__, "--url", url, "--edits", str(edits), "--who", who]
            here = {**os.environ, "HOME": str(home), "QT_QPA_PLATFORM": "offscreen", "USER": who}
            desks.append(
                subprocess.Popen([*command, "--done", str(done)], stdout=subprocess.PIPE, text=True, env=here)
            )
        return [json.loads(desk.communicate()[0].splitlines()[-1]) for desk in desks]


def judged(url: str, told: list[dict[str, Any]], edits: int) -> int:
    """Compare what both windows show with what is kept; print, and return 1 when anything is missing."""
    for each in told:
        told_of = f"{each['clashes']} clashes asked, median {each['median_ms']:.0f} ms an edit"
        print(f"{each['who']}: {each['edits']} edits in the window, {told_of}")
    with FarmStore.open(url) as store:
        acts, kept = store.acts(), store.load()
    many = len(_DESKS) * edits
    whole = acts[-1].seq >= many and len(acts) == min(acts[-1].seq, KEPT_ACTS)
    same = all(each["notes"] == sorted(batch.notes for batch in kept.batches) for each in told)
    print(f"{acts[-1].seq} acts of {many} edits kept; both windows show the farm that is kept: {same}")
    return 0 if whole and same else 1


def main() -> int:
    """Run the two windows, or one of them when `--who` says so."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawTextHelpFormatter)
    parser.add_argument("--edits", type=int, default=300)
    for hidden in ("--url", "--who", "--done"):
        parser.add_argument(hidden, help=argparse.SUPPRESS)
    parsed = parser.parse_args()
    if parsed.who:
        print(json.dumps(run_desk(parsed.url, parsed.who, parsed.edits, Path(parsed.done))))
        sys.stdout.flush()
        os._exit(0)  # the window is not put away: its farm is on the server, and nothing is open here
    with a_server() as server, a_database(server, "farm_of_two_windows") as url:
        means = Means()
        farm = means.read(SAMPLE).farm
        FarmStore.create(url, farm, means.holds(farm)).close()
        return judged(url, run_both(url, parsed.edits), parsed.edits)


if __name__ == "__main__":
    sys.exit(main())
