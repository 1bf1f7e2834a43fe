"""The rooms of the program import each other only along the arrows of the map in DEVELOPERS.md."""

import ast

import pytest

from tests.support import arrows
from tests.support.arrows import ROOMS, faults_in_calls, faults_in_imports, room


@pytest.mark.parametrize("name", ROOMS)
def test_that_a_room_keeps_to_its_arrows(root, name):
    assert arrows.faults_in_room(root, name) == []


def test_that_every_package_is_a_room_of_the_map(root):
    packages = {path.name for path in (root / "planner").iterdir() if any(path.glob("*.py"))}
    assert packages - set(ROOMS) == set()


def test_that_only_the_store_knows_the_database(root):
    strangers = arrows.importers_of(root, "sqlalchemy", "sqlite3", "psycopg")
    assert {name for name in strangers if not name.startswith("planner.store")} == set()


def test_that_paper_knows_qt_in_one_module_only(root):
    assert len(arrows.importers_of(root, arrows.QT, inside="paper")) <= 1


def test_that_the_map_has_no_way_back():
    def reach(name, seen):
        for other in ROOMS[name].rooms & set(ROOMS):
            assert other not in seen, f"{' -> '.join(seen)} -> {other}"
            reach(other, [*seen, other])

    for name in ROOMS:
        reach(name, [name])


RULE = room("farm", "numpy PySide6.QtCore", clock=False, files=False)


@pytest.mark.parametrize(
    "line",
    [
        "import planner.farm",
        "from planner import farm",
        "from planner.farm.place import Raft",
        "from planner.forecast.day import Day",
        "from .day import Day",
        "from . import day",
        "from planner import __version__",
        "import math, datetime",
        "import numpy as np",
        "from PySide6.QtCore import QObject",
    ],
)
def test_that_an_allowed_import_is_let_through(line):
    assert faults_in_imports(ast.parse(line), module="planner.forecast.week", rule=RULE) == []


@pytest.mark.parametrize(
    "line",
    [
        "import planner.store",
        "from planner import store",
        "from planner.store.files import open_farm",
        "from ..store import files",
        "from .. import store",
        "from planner import bootstrap",
        "import PySide6.QtWidgets",
        "from PySide6 import QtWidgets",
        "import sqlalchemy.orm",
        "import sqlite3",
        "def late():\n    import scipy",
        "from typing import TYPE_CHECKING\nif TYPE_CHECKING:\n    from planner.desk import window",
    ],
)
def test_that_a_forbidden_import_is_seen(line):
    assert len(faults_in_imports(ast.parse(line), module="planner.forecast.week", rule=RULE)) == 1


@pytest.mark.parametrize(
    "line",
    [
        "from datetime import date\nx = date.today()",
        "import datetime\nx = datetime.datetime.now()",
        "import time",
        "from time import monotonic",
        "x = open('a')",
        "from pathlib import Path",
        "import os.path",
        "import importlib\nimportlib.import_module('planner.store')",
        "exec('import planner.store')",
    ],
)
def test_that_the_clock_files_and_hidden_imports_are_seen(line):
    assert len(faults_in_calls(ast.parse(line), module="planner.forecast.week", rule=RULE)) == 1


def test_that_a_day_given_as_an_argument_is_no_clock():
    code = "from datetime import date\n\ndef week(day: date) -> int:\n    return day.isocalendar().week\n"
    assert faults_in_calls(ast.parse(code), module="planner.forecast.week", rule=RULE) == []


def test_that_a_menu_may_be_run():
    assert faults_in_calls(ast.parse("menu.exec(place)"), module="planner.desk.menu", rule=RULE) == []


def test_that_a_relative_import_in_a_package_head_is_resolved_from_the_package():
    tree = ast.parse("from .day import Day")
    (entry,) = arrows.imports(tree, module="planner.forecast", is_package=True)
    assert entry.name == "planner.forecast.day.Day"


def test_that_a_fault_in_a_real_file_is_found_and_named(tmp_path):
    folder = tmp_path / "planner" / "science"
    folder.mkdir(parents=True)
    (folder / "growth.py").write_text("import math\n\nimport PySide6\n", encoding="utf-8")
    assert arrows.faults_in_room(tmp_path, "science") == ["planner.science.growth:3 imports PySide6"]
