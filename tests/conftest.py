"""What every test stands on: no screen, our own typeface, nothing left behind, nothing skipped in secret.

The environment is set before Qt is imported anywhere; pytest reads this file first.
"""

import importlib.util
import os
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from hypothesis import settings

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

ROOT = Path(__file__).resolve().parent.parent
IN_CI = bool(os.environ.get("CI"))
QT_FIXTURES = {"qtbot", "qapp", "qtmodeltester"}
HASH_SEEDS = ("0", "4242")

SECOND_OPINIONS = {
    "phreeqpython": ("published/test_science_speciation.py", "published/test_water_speciation.py")
}
"""Files whose library ships as source only: the hashed lock cannot bring it, `pip install` can."""
LEFT_OUT = {name: files for name, files in SECOND_OPINIONS.items() if importlib.util.find_spec(name) is None}
collect_ignore = [file for files in LEFT_OUT.values() for file in files]

settings.register_profile("quick", deadline=None, max_examples=50)
settings.register_profile("ci", deadline=None, max_examples=100, derandomize=True, print_blob=True)
settings.register_profile("thorough", deadline=None, max_examples=2_000)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE") or ("ci" if IN_CI else "quick"))


def pytest_report_header() -> str:
    """Name what a failure may hang on."""
    seed = os.environ.get("PYTHONHASHSEED", "random")
    left_out = "".join(f"; without {name}: {', '.join(files)} left out" for name, files in LEFT_OUT.items())
    return f"screen: {os.environ['QT_QPA_PLATFORM']}; hash seed: {seed}; in CI: {IN_CI}{left_out}"


SLOW = (
    "actions/test_state_machine.py",
    "cli/",
    "desk/",
    "end_to_end/",
    "farm/test_changes.py",
    "forecast/chances/",
    "forecast/ranges/",
    "forecast/test_pools.py",
    "forecast/test_solids.py",
    "forecast/water/test_bases.py",
    "forecast/why/",
    "guard/",
    "paper/",
    "planning/",
    "published/test_verify.py",
    "store/test_farm_store.py",
    "store/text/test_hostile.py",
    "store/text/test_lines.py",
    "store/text/test_round_trip.py",
)
"""Folders and files that the fast set (`-m "not slow"`) leaves out."""


def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Mark what is slow, and leave the tests of a real window to the run that has one (run.py makes it)."""
    for item in items:
        if any(f"tests/{path}" in item.nodeid for path in SLOW):
            item.add_marker(pytest.mark.slow)
    if os.environ["QT_QPA_PLATFORM"] == "xcb":
        return
    needs_screen = [item for item in items if item.get_closest_marker("x11")]
    config.hook.pytest_deselected(items=needs_screen)
    items[:] = [item for item in items if item not in needs_screen]


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(item: pytest.Item) -> Iterator[None]:
    """Count a skipped test as failed in CI: there, everything that a test needs must be present."""
    report = yield
    if IN_CI and report.skipped and not hasattr(report, "wasxfail"):
        report.outcome = "failed"
        report.longrepr = f"{item.nodeid} was skipped, which CI does not allow: {report.longrepr}"
    return report


@pytest.hookimpl(wrapper=True)
def pytest_make_collect_report(collector: pytest.Collector) -> Iterator[None]:
    """Count a skipped test file as failed in CI for the same reason."""
    report = yield
    if IN_CI and report.skipped:
        report.outcome = "failed"
        report.longrepr = f"{collector.nodeid} was skipped, which CI does not allow: {report.longrepr}"
    return report


@pytest.fixture(scope="session")
def qapp(qapp):
    """The one application object, drawing with the shipped typeface so that pictures agree everywhere."""
    from PySide6.QtGui import QFont, QFontDatabase

    from planner.shipped import shipped_path

    for path in sorted(shipped_path("resources", "fonts").glob("*.ttf")):
        assert QFontDatabase.addApplicationFont(str(path)) >= 0, f"{path.name} could not be loaded"
    font = QFont("DejaVu Sans", 10)
    font.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    qapp.setFont(font)
    qapp.setStyle("Fusion")
    return qapp


@pytest.fixture(autouse=True)
def nothing_left_behind(request: pytest.FixtureRequest) -> Iterator[None]:
    """Fail a test with Qt that leaves a window standing or a thread running."""
    if not QT_FIXTURES & set(request.fixturenames):
        yield
        return
    request.getfixturevalue("qapp")
    from tests.support.leaks import LeakWatch

    watch = LeakWatch()
    yield
    left = watch.left_behind()
    if left:
        pytest.fail("left behind: " + "; ".join(left))


@pytest.fixture
def root() -> Path:
    """The folder of the checkout."""
    return ROOT


@pytest.fixture
def under_two_hash_seeds() -> Callable[[str], tuple[str, str]]:
    """Run a piece of Python under two hash seeds and return what each printed, to be compared."""

    def run(code: str) -> tuple[str, str]:
        first, second = (_printed(code, seed) for seed in HASH_SEEDS)
        return first, second

    return run


def _printed(code: str, seed: str) -> str:
    environment = {**os.environ, "PYTHONHASHSEED": seed, "PYTHONPATH": str(ROOT)}
    done = subprocess.run(
        [sys.executable, "-c", code], env=environment, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr
    return done.stdout
