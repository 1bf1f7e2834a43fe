"""Gathers what answers to "why?" say, from the tables of formulas and notes and from the modules that answer.

Read by collect_words.py, and by the test that nothing of it is missing in a language.
"""

from __future__ import annotations

import ast
import re
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Final

ROOT: Final = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from planner.catalogue.loading import shipped_catalogue  # noqa: E402 - found from the root only
from planner.desk.why.words import (  # noqa: E402
    NAME_FORMS,
    NO_FIGURE_FORMS,
    TITLE_FORMS,
    is_prose,
    readable,
    symbols_in,
)
from planner.farm.crops import Stage  # noqa: E402
from planner.forecast.pieces import PieceKind  # noqa: E402
from planner.forecast.values import Band, FlagKind  # noqa: E402
from planner.forecast.week import DueKind  # noqa: E402
from planner.forecast.why.formulas import Formula  # noqa: E402
from planner.forecast.why.values import SubjectKind  # noqa: E402
from planner.paper.reasons import FORMULA_WORDS, NOTE_WORDS, REASON_WORDS, TO_THE_END, UNTIL  # noqa: E402

_ROOMS: Final = ("forecast", "planning", "desk")
_ANSWERS: Final = "planner.forecast.why.values"
_NAME: Final = re.compile(r"^[a-z][a-z0-9_' -]{2,}$")
_JOINED: Final = re.compile(r"^[a-z]+(_[a-z0-9]+)+$")
_WORD_IN_UNIT: Final = re.compile("[a-z]{3,}")
_MAKERS: Final = frozenset({"worked", "entered", "counted"})
_UNIT_AT: Final = 2
_NAMED: Final = frozenset({"name", "as_name"})
_TABLE: Final = re.compile("TITLE|STAGES|LUCK")
_NO_NAMES: Final = frozenset({"get", "index", "removesuffix", "removeprefix", "getattr", "replace", "join"})
"""Calls whose texts are no names of numbers."""


def why_texts() -> Iterator[str]:
    """Yield every text that an answer or a reason can show, as the window looks it up."""
    yield from (*FORMULA_WORDS.values(), *NOTE_WORDS.values(), *REASON_WORDS.values(), UNTIL, TO_THE_END)
    yield from (*TITLE_FORMS, *NAME_FORMS, *NO_FIGURE_FORMS)
    for formula in Formula:
        yield from (readable(formula.value),) if is_prose(formula) else symbols_in(formula)
    yield from (f"{stage.value} days" for stage in Stage)
    for kinds in (Band, FlagKind, DueKind, PieceKind, SubjectKind, Stage):
        yield from (str(kind.value) for kind in kinds)
    yield from (unit for unit in _units() if _WORD_IN_UNIT.search(unit))
    for tree in _answering():
        yield from (readable(text) for text in _said_in(tree))


def _units() -> Iterator[str]:
    """Yield units of figures, and those of the numbers that answers are made of: the third of their parts."""
    yield from (figure.unit for figure in shipped_catalogue().figures.values())
    for tree in _answering():
        for node in ast.walk(tree):
            if isinstance(node, ast.Call) and getattr(node.func, "id", "") in _MAKERS:
                yield from (text for part in node.args[_UNIT_AT : _UNIT_AT + 1] for text in _texts(part))
            elif isinstance(node, ast.keyword) and node.arg == "unit":
                yield from _texts(node.value)


def _answering() -> Iterator[ast.Module]:
    """Yield the modules that make answers."""
    for path in sorted(path for room in _ROOMS for path in (ROOT / "planner" / room).rglob("*.py")):
        tree = ast.parse(path.read_text(encoding="utf-8"))
        if any(isinstance(node, ast.ImportFrom) and node.module == _ANSWERS for node in tree.body):
            yield tree


def _said_in(tree: ast.Module) -> Iterator[str]:
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            yield from _said_by(node)
        elif isinstance(node, ast.Assign | ast.AnnAssign) and node.value is not None:
            yield from _titles(node)
        elif isinstance(node, ast.Tuple | ast.List):
            yield from (text for text in _texts(node) if _JOINED.match(text))


def _said_by(call: ast.Call) -> Iterator[str]:
    """Yield titles, names of inputs and reasons that a call is given."""
    called = getattr(call.func, "id", getattr(call.func, "attr", ""))
    for keyword in call.keywords:
        if keyword.arg == "title":
            yield from _texts(keyword.value)
        elif keyword.arg in _NAMED:
            yield from (text for text in _texts(keyword.value) if _NAME.match(text))
    if called not in _NO_NAMES and not called.endswith("Error"):
        given = (one for one in call.args if isinstance(one, ast.Constant))
        yield from (text for one in given for text in _texts(one) if _NAME.match(text))


def _titles(assigned: ast.Assign | ast.AnnAssign) -> Iterator[str]:
    """Yield the values of a table whose name says that it holds titles."""
    targets = assigned.targets if isinstance(assigned, ast.Assign) else [assigned.target]
    if any(isinstance(one, ast.Name) and _TABLE.search(one.id) for one in targets):
        table = assigned.value
        parts = table.values if isinstance(table, ast.Dict) else [table]
        yield from (text for part in parts if part is not None for text in _texts(part))


def title_forms() -> Iterator[str]:
    """Yield every title that a module puts together, with a blank for each part that may differ."""
    for tree in _answering():
        for node in ast.walk(tree):
            if (
                isinstance(node, ast.keyword)
                and node.arg == "title"
                and isinstance(node.value, ast.JoinedStr)
            ):
                parts = node.value.values
                yield "".join(str(one.value) if isinstance(one, ast.Constant) else "{what}" for one in parts)


def _texts(node: ast.AST) -> Iterator[str]:
    if isinstance(node, ast.Constant) and isinstance(node.value, str) and node.value:
        yield node.value
    elif isinstance(node, ast.IfExp):
        yield from (*_texts(node.body), *_texts(node.orelse))
    elif isinstance(node, ast.Tuple | ast.List):
        yield from (text for part in node.elts for text in _texts(part))


if __name__ == "__main__":
    print("\n".join(sorted(set(why_texts()))))
