"""The start-up file decides rightly what is missing, what to install and what to say."""

import importlib.util
import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

import run

BOOKWORM = {"ID": "debian", "VERSION_ID": "12"}
TRIXIE = {"ID": "debian", "VERSION_ID": "13"}
JAMMY = {"ID": "ubuntu", "ID_LIKE": "debian", "VERSION_ID": "22.04"}
NOBLE = {"ID": "ubuntu", "ID_LIKE": "debian", "VERSION_ID": "24.04"}
MINT = {"ID": "linuxmint", "ID_LIKE": "ubuntu debian", "VERSION_ID": "22"}
SID = {"ID": "debian"}
FEDORA = {"ID": "fedora", "VERSION_ID": "43"}
GLIB = run.SystemPart("libglib-2.0.so.0", "libglib2.0-0")
EGL = run.SystemPart("libEGL.so.1", "libegl1")
TEXT = run.SystemPart("pdftotext", "poppler-utils", is_command=True)
IMAGE = run.SystemPart("pdftoppm", "poppler-utils", is_command=True)


def test_that_an_old_python_is_refused_in_a_sentence_with_both_versions():
    assert run.version_refusal((3, 10)) == "Raftweek needs Python 3.11 or newer; this is Python 3.10."


@pytest.mark.parametrize("version", [(3, 11), (3, 13), (4, 0)])
def test_that_a_new_enough_python_is_let_through(version):
    assert run.version_refusal(version) is None


def test_that_the_oldest_python_is_the_one_the_project_declares(root):
    declared = ".".join(str(part) for part in run.OLDEST_PYTHON)
    assert f'requires-python = ">={declared}"' in (root / "pyproject.toml").read_text(encoding="utf-8")


def test_that_a_release_file_is_read_without_its_quotes_and_remarks():
    text = "# remark\nID=debian\nVERSION_ID=\"12\"\nNAME='Debian = fine'\n\nnonsense\n"
    assert run.read_release(text) == {"ID": "debian", "VERSION_ID": "12", "NAME": "Debian = fine"}


@pytest.mark.parametrize(
    ("release", "name"),
    [
        (BOOKWORM, "libglib2.0-0"),
        (JAMMY, "libglib2.0-0"),
        (MINT, "libglib2.0-0"),
        (TRIXIE, "libglib2.0-0t64"),
        (NOBLE, "libglib2.0-0t64"),
        (SID, "libglib2.0-0t64"),
    ],
)
def test_that_a_package_goes_by_its_name_in_that_release(release, name):
    assert run.package_names([GLIB], release) == [name]


def test_that_a_package_holding_two_missing_parts_is_named_once():
    assert run.package_names([TEXT, IMAGE, EGL], BOOKWORM) == ["libegl1", "poppler-utils"]


def test_that_only_what_is_absent_is_missing():
    assert run.missing_parts([GLIB, EGL], present=lambda part: part is GLIB) == (EGL,)


def test_that_a_library_nobody_has_is_absent_and_python_itself_is_present():
    assert not run.is_present(run.SystemPart("libnothing-at-all.so.77", "none"))
    assert not run.is_present(run.SystemPart("nothing-at-all-77", "none", is_command=True))
    assert run.is_present(run.SystemPart(sys.executable, "python3", is_command=True))


@pytest.mark.parametrize(("release", "yes"), [(BOOKWORM, True), (MINT, True), (FEDORA, False), ({}, False)])
def test_that_a_debian_like_system_is_known_by_its_family(release, yes):
    assert run.is_debian_like(release) is yes


def test_that_the_advice_on_debian_is_one_command_to_copy():
    assert run.advice([EGL, GLIB], TRIXIE) == (
        "Missing from this system: libEGL.so.1, libglib-2.0.so.0. "
        "Add them with: sudo apt-get install -y libegl1 libglib2.0-0t64"
    )


def test_that_the_advice_elsewhere_names_what_is_missing_and_no_foreign_command():
    line = run.advice([EGL], FEDORA)
    assert "libEGL.so.1" in line
    assert "apt-get" not in line


def test_that_nothing_is_installed_or_said_when_nothing_is_missing(monkeypatch):
    monkeypatch.setattr(run, "apt_install", lambda packages: pytest.fail(f"installs {packages}"))
    assert run.see_to_parts([EGL, GLIB], present=lambda _part: True) is None


def test_that_root_on_debian_gets_the_missing_package_installed_and_checked_again(monkeypatch):
    added: list[str] = []
    monkeypatch.setattr(run, "this_release", lambda: BOOKWORM)
    monkeypatch.setattr(run, "may_install", lambda _release: True)
    monkeypatch.setattr(run, "apt_install", added.extend)
    assert run.see_to_parts([EGL], present=lambda part: part.package in added) is None
    assert added == ["libegl1"]


def test_that_anyone_else_is_told_the_command_and_nothing_is_installed(monkeypatch):
    monkeypatch.setattr(run, "this_release", lambda: BOOKWORM)
    monkeypatch.setattr(run, "may_install", lambda _release: False)
    monkeypatch.setattr(run, "apt_install", lambda packages: pytest.fail(f"installs {packages}"))
    line = run.see_to_parts([EGL], present=lambda _part: False)
    assert line is not None
    assert line.endswith("sudo apt-get install -y libegl1")


def test_that_a_failed_installation_leaves_the_advice(monkeypatch):
    monkeypatch.setattr(run, "this_release", lambda: BOOKWORM)
    monkeypatch.setattr(run, "may_install", lambda _release: True)
    monkeypatch.setattr(run, "apt_install", lambda _packages: False)
    assert run.see_to_parts([EGL], present=lambda _part: False) is not None


def test_that_the_interpreter_lies_where_each_system_puts_it():
    assert run.environment_python(Path("e"), windows=True) == Path("e/Scripts/python.exe")
    assert run.environment_python(Path("e"), windows=False) == Path("e/bin/python")


@pytest.mark.parametrize(("version", "fits"), [((3, 11), True), ((3, 12), False), ((3, 1), False)])
def test_that_an_environment_of_another_python_is_made_anew(version, fits):
    settings = "home = /usr/bin\nversion = 3.11.7\nprompt = '.venv'\n"
    assert run.environment_fits(settings, version) is fits


def test_that_a_broken_environment_is_made_anew():
    assert run.environment_fits("", (3, 11)) is False


@pytest.fixture
def lock(tmp_path):
    path = tmp_path / "requirements.lock"
    path.write_text("one==1\n", encoding="utf-8")
    return path


def test_that_a_lock_counts_as_installed_only_with_its_own_stamp(tmp_path, lock):
    stamp = tmp_path / "stamp.json"
    assert not run.is_installed(stamp, lock)
    stamp.write_text(run.stamp_text([lock]), encoding="utf-8")
    assert run.is_installed(stamp, lock)


def test_that_a_changed_lock_is_installed_again(tmp_path, lock):
    stamp = tmp_path / "stamp.json"
    stamp.write_text(run.stamp_text([lock]), encoding="utf-8")
    lock.write_text("one==2\n", encoding="utf-8")
    assert not run.is_installed(stamp, lock)


@pytest.mark.parametrize("text", ["", "{", "[]", "3", json.dumps({"other.lock": "x"})])
def test_that_an_unreadable_stamp_means_install_again(tmp_path, lock, text):
    stamp = tmp_path / "stamp.json"
    stamp.write_text(text, encoding="utf-8")
    assert not run.is_installed(stamp, lock)


def test_that_line_ends_do_not_change_the_fingerprint(tmp_path, lock):
    other = tmp_path / "other.lock"
    other.write_bytes(b"one==1\r\n")
    assert run.digest(other) == run.digest(lock)


def test_that_the_whole_test_command_ends_with_the_full_run_of_pytest():
    names = [step.name for step in run.test_steps(Path("python"), has_screen_server=True)]
    assert names == ["style", "format", "types", "tests in a real window", "tests"]
    without = [step.name for step in run.test_steps(Path("python"), has_screen_server=False)]
    assert without == ["style", "format", "types", "tests"]


def test_that_every_step_runs_after_a_failed_one_and_the_whole_fails(capsys):
    steps = [run.Step("style", ["a"], {}), run.Step("types", ["b"], {}), run.Step("tests", ["c"], {})]
    codes = {"style": 0, "types": 2, "tests": 0}
    ran: list[str] = []

    def call(step):
        ran.append(step.name)
        return codes[step.name]

    assert run.run_steps(steps, call=call) == 2
    assert ran == ["style", "types", "tests"]
    assert capsys.readouterr().err.splitlines()[-1] == "style: passed; types: FAILED; tests: passed"


def test_that_a_step_ended_by_a_signal_fails_the_whole():
    assert run.run_steps([run.Step("tests", ["c"], {})], call=lambda _step: -11) != 0


def test_that_all_steps_passing_is_success():
    assert run.run_steps([run.Step("tests", ["c"], {})], call=lambda _step: 0) == 0


@pytest.fixture
def source(tmp_path):
    path = tmp_path / "planner" / "room" / "part.py"
    path.parent.mkdir(parents=True)
    path.write_text("A = 1\n")
    os.utime(path, ns=(10**18, 10**18))
    return path


def test_that_sources_are_compiled_ahead_even_where_python_is_told_not_to(source, tmp_path, monkeypatch):
    monkeypatch.setenv("PYTHONDONTWRITEBYTECODE", "1")
    run.compile_ahead(Path(sys.executable), tmp_path / "planner", tmp_path / "stamp")
    assert Path(importlib.util.cache_from_source(str(source))).is_file()


def test_that_sources_are_compiled_again_only_once_they_have_changed(source, tmp_path, monkeypatch):
    compiled = []
    monkeypatch.setattr(run.subprocess, "call", lambda command: compiled.append(command[-1]))
    for _ in range(2):
        run.compile_ahead(Path(sys.executable), tmp_path / "planner", tmp_path / "stamp")
    assert compiled == [str(tmp_path / "planner")]
    os.utime(source, ns=(2 * 10**18, 2 * 10**18))  # the clock of a disk may lag behind
    run.compile_ahead(Path(sys.executable), tmp_path / "planner", tmp_path / "stamp")
    assert compiled == [str(tmp_path / "planner")] * 2


def test_that_a_source_that_is_no_python_and_a_stamp_that_cannot_be_set_stop_nothing(source, tmp_path, capfd):
    source.write_text("not python (")
    run.compile_ahead(Path(sys.executable), tmp_path / "planner", tmp_path / "nowhere" / "stamp")
    assert capfd.readouterr() == ("", "")


@pytest.fixture
def begun(monkeypatch):
    """Commands that would have been run."""
    commands = []
    monkeypatch.setattr(run.subprocess, "run", lambda command, **_rest: commands.append(command))
    return commands


def test_that_the_first_view_is_prepared_once_and_told_in_one_line(begun, tmp_path, capsys):
    for _ in range(2):
        run.see_to_first_view(Path("python"), tmp_path / "stamp")
    assert begun == [["python", "-P", "-m", "planner.bootstrap_first"]]
    assert capsys.readouterr().err.count("\n") == 1


@pytest.mark.parametrize("trouble", [OSError("no"), subprocess.TimeoutExpired("python", 60)])
def test_that_a_first_view_that_cannot_be_had_stops_nothing_and_is_not_tried_again(
    trouble, tmp_path, monkeypatch
):
    def fail(*_command, **_rest):
        raise trouble

    monkeypatch.setattr(run.subprocess, "run", fail)
    run.see_to_first_view(Path("python"), tmp_path / "stamp")
    assert (tmp_path / "stamp").exists()
    run.see_to_first_view(Path("python"), tmp_path / "nowhere" / "stamp")


@pytest.mark.parametrize(
    ("settings", "system", "there"),
    [
        ({}, "linux", False),
        ({"DISPLAY": ""}, "linux", False),
        ({"DISPLAY": ":0"}, "linux", True),
        ({"WAYLAND_DISPLAY": "wayland-0"}, "linux", True),
        ({}, "darwin", True),
        ({}, "win32", True),
    ],
)
def test_that_only_linux_can_lack_a_screen(settings, system, there):
    assert run.has_screen(settings, system=system) is there


def test_that_the_planner_is_found_from_any_folder_without_losing_the_persons_own_path(monkeypatch):
    monkeypatch.setenv("PYTHONPATH", "mine")
    path = run.child_settings({"X": "1"})
    assert path["PYTHONPATH"].split(run.os.pathsep) == [str(run.ROOT), "mine"]
    assert path["X"] == "1"


def test_that_the_word_test_is_told_apart_from_a_command_of_the_planner(monkeypatch):
    monkeypatch.setattr(run, "run_tests", lambda arguments: ("tests", arguments))
    monkeypatch.setattr(run, "open_planner", lambda arguments: ("planner", arguments))
    assert run.main(["test", "-q"]) == ("tests", ["-q"])
    assert run.main(["check", "test"]) == ("planner", ["check", "test"])
    assert run.main([]) == ("planner", [])
