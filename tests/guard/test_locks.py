"""The lock files are whole, hashed, and free of addresses."""

import re
import tomllib

import pytest

import run

LOCKS = (run.RUNTIME_LOCK, run.TEST_LOCK)
PIN = re.compile(r"^([A-Za-z0-9._-]+)==([^\s;]+)", re.MULTILINE)


def read(root, name):
    return (root / name).read_text(encoding="utf-8")


def pins(text):
    return dict(PIN.findall(text))


@pytest.mark.parametrize("name", LOCKS)
def test_that_a_lock_names_no_address(root, name):
    text = read(root, name)
    assert "://" not in text
    assert "index-url" not in text


@pytest.mark.parametrize("name", LOCKS)
def test_that_every_pin_carries_a_hash(root, name):
    entries = re.split(r"\n(?=\S)", read(root, name).strip())
    assert len(entries) > 5
    assert [entry for entry in entries if "--hash=sha256:" not in entry] == []


def test_that_the_test_lock_holds_the_runtime_lock_whole(root):
    runtime, everything = pins(read(root, run.RUNTIME_LOCK)), pins(read(root, run.TEST_LOCK))
    assert runtime.items() <= everything.items()
    assert "pytest" in everything.keys() - runtime.keys()


def test_that_every_declared_library_is_in_the_lock(root):
    project = tomllib.loads(read(root, "pyproject.toml"))["project"]
    for declared, name in (
        (project["dependencies"], run.RUNTIME_LOCK),
        (project["optional-dependencies"]["test"], run.TEST_LOCK),
    ):
        wanted = {re.split(r"[<>=!~;\[ ]", line)[0].lower() for line in declared}
        assert wanted <= pins(read(root, name)).keys()


def test_that_the_toolkit_is_held_at_one_release(root):
    project = tomllib.loads(read(root, "pyproject.toml"))["project"]
    held = [line for line in project["dependencies"] if line.startswith("PySide6")]
    assert held == ["PySide6-Essentials==6.11.3"]
    assert pins(read(root, run.RUNTIME_LOCK))["pyside6-essentials"] == "6.11.3"
