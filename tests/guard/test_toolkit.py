"""The toolkit release is safe on this Python, and is refused where it would not be."""

import sys
from importlib import metadata

import pytest
from PySide6.QtWidgets import QLabel

from planner import platform_guard

CALLS = 2_000
ALLOWED_LOSS = 100


def test_that_calls_into_the_toolkit_lose_no_references_to_none(qtbot):
    label = QLabel()
    qtbot.addWidget(label)
    before = sys.getrefcount(None)
    for _ in range(CALLS):
        label.setText("a")
    assert before - sys.getrefcount(None) <= ALLOWED_LOSS


@pytest.mark.parametrize("toolkit", ["6.12.0", "6.12.0rc1", "6.13.2", "7.0"])
def test_that_an_unsafe_pair_is_refused_with_both_versions_named(toolkit):
    refusal = platform_guard.toolkit_refusal(toolkit=toolkit, python=(3, 11))
    assert refusal is not None
    assert toolkit in refusal
    assert "3.11" in refusal


@pytest.mark.parametrize(
    ("toolkit", "python"), [("6.11.3", (3, 11)), ("6.8.3", (3, 11)), ("6.12.0", (3, 12)), ("6.12.0", (3, 13))]
)
def test_that_a_safe_pair_is_let_through(toolkit, python):
    assert platform_guard.toolkit_refusal(toolkit=toolkit, python=python) is None


def test_that_this_machine_is_let_through():
    assert platform_guard.this_refusal() is None


def test_that_an_absent_toolkit_is_named_instead_of_ending_in_a_traceback(monkeypatch):
    monkeypatch.setattr(platform_guard, "TOOLKIT_PACKAGE", "no-such-package-anywhere")
    refusal = platform_guard.this_refusal()
    assert refusal is not None
    assert "not installed" in refusal


def test_that_the_quick_look_finds_the_release_that_the_library_finds(tmp_path):
    installed = metadata.version(platform_guard.TOOLKIT_PACKAGE)
    assert platform_guard.installed_version([str(tmp_path / "absent"), *sys.path]) == installed
    assert platform_guard.installed_version([str(tmp_path)]) == ""


def test_that_the_first_folder_on_the_path_decides(tmp_path):
    for folder, version in (("one", "6.12.0"), ("other", "6.11.3")):
        (tmp_path / folder / f"PySide6_Essentials-{version}.dist-info").mkdir(parents=True)
    assert platform_guard.installed_version([str(tmp_path / "one"), str(tmp_path / "other")]) == "6.12.0"


@pytest.mark.parametrize(
    ("settings", "system", "may_open"),
    [
        ({}, "linux", False),
        ({"DISPLAY": ""}, "linux", False),
        ({"DISPLAY": ":0"}, "linux", True),
        ({"WAYLAND_DISPLAY": "wayland-0"}, "linux", True),
        ({"QT_QPA_PLATFORM": "offscreen"}, "linux", True),
        ({}, "win32", True),
        ({}, "darwin", True),
    ],
)
def test_that_a_start_without_any_screen_is_refused_in_a_sentence(settings, system, may_open):
    refusal = platform_guard.screen_refusal(settings, system=system)
    assert (refusal is None) is may_open
    assert may_open or "no screen" in refusal
