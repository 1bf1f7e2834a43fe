"""The strict rules of the test run bite: each sin below fails the test that commits it."""

import os
import subprocess
import sys
import xml.etree.ElementTree as ET

import pytest

SINS = """
import threading
import warnings

import pytest
from PySide6.QtCore import qWarning
from PySide6.QtWidgets import QWidget

kept = []


def test_clean(qtbot):
    window = QWidget()
    qtbot.addWidget(window)


def test_window(qtbot):
    kept.append(QWidget())


def test_qt_warning(qtbot):
    qWarning("the toolkit complains")


def test_warning():
    warnings.warn("old way", DeprecationWarning)


def test_slot(qtbot):
    window = QWidget()
    qtbot.addWidget(window)
    window.windowTitleChanged.connect(lambda title: 1 / 0)
    window.setWindowTitle("x")


def test_skipped():
    pytest.skip("no printer here")


@pytest.mark.xfail(reason="known", strict=True)
def test_known():
    assert False
"""
ABSENT = "import pytest\n\nabsent = pytest.importorskip('no_such_library_anywhere')\n"


def outcomes(folder, root, *, in_ci):
    """Run the sins under the project's own settings; return how each test ended."""
    (folder / "test_sins.py").write_text(SINS, encoding="utf-8")
    (folder / "test_absent.py").write_text(ABSENT, encoding="utf-8")
    report = folder / "report.xml"
    environment = {name: value for name, value in os.environ.items() if name != "CI"}
    environment |= {"PYTHONPATH": str(root), "QT_QPA_PLATFORM": "offscreen"} | (
        {"CI": "true"} if in_ci else {}
    )
    command = [
        *(sys.executable, "-m", "pytest", "-q", "-p", "tests.conftest", "-p", "no:cacheprovider"),
        *("-c", str(root / "pyproject.toml"), "--rootdir", str(folder), f"--junitxml={report}"),
        *("--continue-on-collection-errors", str(folder)),
    ]
    subprocess.run(command, cwd=folder, env=environment, capture_output=True, check=False)
    ended = {}
    for case in ET.parse(report).iter("testcase"):
        bad = case.find("failure") is not None or case.find("error") is not None
        ended[case.get("name")] = (
            "failed" if bad else "skipped" if case.find("skipped") is not None else "passed"
        )
    return ended


@pytest.fixture(scope="module")
def in_ci(tmp_path_factory, request):
    return outcomes(tmp_path_factory.mktemp("ci"), request.config.rootpath, in_ci=True)


@pytest.fixture(scope="module")
def at_home(tmp_path_factory, request):
    return outcomes(tmp_path_factory.mktemp("home"), request.config.rootpath, in_ci=False)


@pytest.mark.parametrize("sin", ["test_window", "test_qt_warning", "test_warning", "test_slot"])
def test_that_a_leak_a_warning_and_a_fault_in_a_slot_fail_the_test(at_home, sin):
    assert at_home[sin] == "failed"


def test_that_a_clean_test_passes_and_a_known_failure_is_told_apart(in_ci, at_home):
    assert at_home["test_clean"] == in_ci["test_clean"] == "passed"
    assert at_home["test_known"] == in_ci["test_known"] == "skipped"


def test_that_a_skipped_test_is_a_failed_one_in_ci_only(in_ci, at_home):
    assert at_home["test_skipped"] == "skipped"
    assert in_ci["test_skipped"] == "failed"


def test_that_a_skipped_file_is_a_failed_one_in_ci_only(in_ci, at_home):
    assert {at_home[name] for name in at_home if "absent" in name} == {"skipped"}
    assert {in_ci[name] for name in in_ci if "absent" in name} == {"failed"}
