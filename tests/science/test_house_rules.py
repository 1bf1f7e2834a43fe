"""The room keeps its own rules: no typed-in coefficients, known sources, an example for every formula."""

import ast
import inspect
import re
import tomllib
from pathlib import Path

import pytest

import planner.science
from planner.shipped import shipped_path

ROOM = Path(planner.science.__file__).parent
MODULES = sorted(ROOM.glob("*.py"))
ALLOWED = {0, 1, 2, 10, 100}
"""Plain arithmetic: nothing, one, two, the base of decimal powers, percent."""
PUBLICATIONS = set(
    tomllib.loads(shipped_path("resources", "catalogue", "publications.toml").read_text(encoding="utf-8"))
)


def _functions(path: Path) -> list[ast.FunctionDef]:
    tree = ast.parse(path.read_text(encoding="utf-8"))
    return [node for node in ast.walk(tree) if isinstance(node, ast.FunctionDef)]


def typed_in_numbers(function: ast.FunctionDef) -> set[float]:
    """Numbers in the statements of a function that are more than plain arithmetic."""
    found = set()
    for statement in function.body:
        for node in ast.walk(statement):
            if (
                isinstance(node, ast.Constant)
                and type(node.value) in {int, float}
                and node.value not in ALLOWED
            ):
                found.add(node.value)
    return found


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.stem)
def test_that_no_coefficient_is_typed_into_a_formula(path: Path) -> None:
    assert {f.name: typed_in_numbers(f) for f in _functions(path) if typed_in_numbers(f)} == {}


def test_that_a_typed_in_coefficient_would_be_seen() -> None:
    bad = ast.parse("def tan(feed):\n    return feed * 0.092\n").body[0]
    assert isinstance(bad, ast.FunctionDef)
    assert typed_in_numbers(bad) == {0.092}


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.stem)
def test_that_every_source_named_is_a_known_publication(path: Path) -> None:
    named = set()
    for function in _functions(path):
        for said in re.findall(r"Source: ([^.]*)", ast.get_docstring(function) or ""):
            without_remarks = re.sub(r"\([^)]*\)", "", said)
            named |= {part.split()[0] for part in without_remarks.split(",") if part.strip()}
    keys = {word for word in named if re.fullmatch(r"[a-z][a-z0-9-]+", word)}
    assert keys <= PUBLICATIONS


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.stem)
def test_that_every_public_formula_says_its_unit_or_shows_an_example(path: Path) -> None:
    for function in _functions(path):
        if function.name.startswith("_"):
            continue
        text = inspect.cleandoc(ast.get_docstring(function) or "")
        assert text, f"{function.name} says nothing"
        assert ">>>" in text or "[" in text, f"{function.name} has neither example nor unit"


def test_that_the_room_holds_short_files() -> None:
    too_long = {path.name: lines for path in MODULES if (lines := len(path.read_text().splitlines())) > 400}
    assert too_long == {}
