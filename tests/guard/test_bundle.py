"""The folder that runs without Python is given all that the program reads and imports."""

import ast
import importlib.util

import pytest


@pytest.fixture(scope="module")
def bundle(request):
    path = request.config.rootpath / ".ci" / "bundle.py"
    spec = importlib.util.spec_from_file_location("bundle", path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.fixture(scope="module")
def imported(request):
    """The first part of the name of every module that the program imports, early or late."""
    found = set()
    for path in (request.config.rootpath / "planner").rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.Import):
                found |= {alias.name.partition(".")[0] for alias in node.names}
            elif isinstance(node, ast.ImportFrom) and node.module:
                found.add(node.module.partition(".")[0])
    return found


def test_that_nothing_that_is_imported_is_left_out_on_purpose(bundle, imported):
    assert {"PySide6", "sqlalchemy", "numpy"} <= imported
    assert imported & set(bundle.UNWANTED) == set()


def test_that_steps_of_migration_are_taken_along(bundle, root):
    steps = sorted((root / "planner" / "store" / "migrations").glob("*.sql"))
    assert steps
    assert set(steps) <= set(bundle.no_source())


def test_that_nothing_else_lies_among_the_modules(bundle):
    """What the program reads belongs into the shipped folders, which are taken along whole."""
    assert {path.suffix for path in bundle.no_source()} <= {".sql", ".typed"}


def test_that_commands_that_are_tried_are_there_to_be_tried(bundle):
    from planner.cli import COMMANDS

    assert {words[0] for words in bundle._tries("farm.toml")} <= set(COMMANDS)
