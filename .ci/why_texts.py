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

from planner.desk.why.words import TITLE_FORMS, is_prose, readable, symbols_in  # noqa: E402 - found from the root only
from planner.farm.crops import Stage  # noqa: E402
from planner.forecast.values import Band  # noqa: E402
from planner.forecast.why.formulas import Formula  # noqa: E402
from planner.paper.reasons import FORMULA_WORDS, NOTE_WORDS, REASON_WORDS, TO_THE_END, UNTIL  # noqa: E402

_ROOMS: Final = ("forecast", "planning", "desk")
_ANSWERS: Final = "planner.forecast.why.values"
_NAME: Final = re.compile(r"^[a-z][a-z0-9_]{2,}$")
_NAMED: Final = frozenset({"name", "as_name"})
_NO_NAMES: Final = frozenset({"get", "index", "removesuffix", "removeprefix", "getattr", "replace"})
"""Calls whose first text is no name of a number."""


def why_texts() -> Iterator[str]:
    """Yield every text that an answer or a reason can show, as the window looks it up."""
    yield from (*FORMULA_WORDS.values(), *NOTE_WORDS.values(), *REASON_WORDS.values(), UNTIL, TO_THE_END)
    yield from TITLE_FORMS
    for formula in Formula:
        yield from (readable(formula.value),) if is_prose(formula) else symbols_in(formula)
    yield from (f"{stage.value} days" for stage in Stage)
    yield from (f"{end} end of the band" for end in ("low", "high"))
    yield from (band.value for band in Band)
    for path in sorted(path for room in _ROOMS for path in (ROOT / "planner" / room).rglob("*.py")):
        tree = ast.parse(path.read_text(encoding="utf-8"))
        if any(isinstance(node, ast.ImportFrom) and node.module == _ANSWERS for node in tree.body):
            yield from (readable(text) for text in _said_in(tree))


def _said_in(tree: ast.Module) -> Iterator[str]:
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            yield from _said_by(node)
        elif isinstance(node, ast.Assign | ast.AnnAssign) and node.value is not None:
            yield from _titles(node)


def _said_by(call: ast.Call) -> Iterator[str]:
    """Yield titles, names of inputs and reasons that a call is given."""
    called = getattr(call.func, "id", getattr(call.func, "attr", ""))
    for keyword in call.keywords:
        if keyword.arg == "title":
            yield from _texts(keyword.value)
        elif keyword.arg in _NAMED:
            yield from (text for text in _texts(keyword.value) if _NAME.match(text))
    first = call.args[0] if call.args else None
    if isinstance(first, ast.Constant) and called not in _NO_NAMES:
        yield from (text for text in _texts(first) if _NAME.match(text))


def _titles(assigned: ast.Assign | ast.AnnAssign) -> Iterator[str]:
    """Yield the values of a table whose name says that it holds titles."""
    targets = assigned.targets if isinstance(assigned, ast.Assign) else [assigned.target]
    if any(isinstance(one, ast.Name) and "TITLE" in one.id for one in targets):
        table = assigned.value
        parts = table.values if isinstance(table, ast.Dict) else [table]
        yield from (text for part in parts if part is not None for text in _texts(part))


def _texts(node: ast.AST) -> Iterator[str]:
    if isinstance(node, ast.Constant) and isinstance(node.value, str) and node.value:
        yield node.value
    elif isinstance(node, ast.IfExp):
        yield from (*_texts(node.body), *_texts(node.orelse))
    elif isinstance(node, ast.Tuple | ast.List):
        yield from (text for part in node.elts for text in _texts(part))


if __name__ == "__main__":
    print("\n".join(sorted(set(why_texts()))))
