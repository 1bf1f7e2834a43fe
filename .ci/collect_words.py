"""Collects every text of the desk into the files that Qt Linguist opens: python .ci/collect_words.py

The usual collector looks for calls of a method of each class; ours are calls of one function, `tr`, and
tables of texts that are translated when they are shown, among them the cautions and the help in resources,
the titles of what can be printed and what answers to "why?" say.
Translations that are there stay, with their mark of whether a person reviewed them; a text that is new is
marked unfinished, one that is gone is dropped.
"""

from __future__ import annotations

import ast
import re
import sys
import tomllib
from collections.abc import Iterator
from pathlib import Path
from typing import Any, Final
from xml.sax.saxutils import escape, quoteattr

ROOT: Final = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from why_texts import why_texts  # noqa: E402 - beside this file

from planner.catalogue.loading import shipped_catalogue  # noqa: E402 - found from the root only
from planner.catalogue.names import SHELVES  # noqa: E402
from planner.desk.field_words import CHOICE_WORDS  # noqa: E402
from planner.desk.languages import LANGUAGES  # noqa: E402
from planner.desk.say import CONTEXT  # noqa: E402
from planner.farm.log import Happening, Reason, Unit  # noqa: E402
from planner.farm.species import HarvestKind  # noqa: E402
from planner.paper.linguist import key_of, messages, read_ts, ts_path  # noqa: E402
from planner.paper.registry import DOCUMENTS  # noqa: E402

DESK: Final = ROOT / "planner" / "desk"
_CHOSEN: Final = (Happening, Reason, Unit, HarvestKind)
_TEXT: Final = re.compile(r"^&?[A-ZÁÉÍÓÚ¿¡{][^_]*$")
"""What in a table is a text for people: it begins with a capital letter and holds no underscore."""
_NO_TABLES: Final = frozenset({"theme.py", "languages.py", "say.py"})
"""Modules whose tables hold no words for people: colours, files, names of languages in themselves."""
_SMALL: Final = re.compile(r"^[a-zé][^_./#]+$")
_KEYS: Final = re.compile(r"^((Ctrl|Shift|Alt|Meta)\+|F\d+|[A-Z]+$)")


def said_in(tree: ast.Module, *, tables: bool = True) -> Iterator[str]:
    """Yield the texts of a module: what `tr` and `translate` are called with, and what its tables say."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "tr" and node.args:
            yield from _constants(node.args[0])
        elif isinstance(node, ast.Call) and getattr(node.func, "attr", "") == "translate":
            yield from _told_apart([list(_constants(given)) for given in node.args])
    for node in tree.body if tables else ():
        if isinstance(node, ast.Assign | ast.AnnAssign) and node.value is not None:
            yield from (text for text in _constants(node.value, keys=False) if _is_text(text))
            yield from (text for text in _small_words(node.value) if _SMALL.match(text))


def _told_apart(given: list[list[str]]) -> Iterator[str]:
    """Yield the text of a call with its context before it, and after it perhaps what tells it apart."""
    if len(given) > 1 and len(given[0]) == 1:
        yield from (key_of(text, *given[2][:1]) for text in given[1]) if len(given) > 2 else given[1]


def _small_words(table: ast.AST) -> Iterator[str]:
    """Yield what keys stand for in a table or in pairs, where that begins with a small letter."""
    for each in ast.walk(table):
        if isinstance(each, ast.Tuple):
            pairs = (part for part in each.elts if isinstance(part, ast.Tuple))
            for pair in pairs:
                of_kind = bool(pair.elts) and isinstance(pair.elts[0], ast.Attribute)
                yield from (text for text in _constants(pair) if of_kind or " " in text)
        if isinstance(each, ast.Dict):
            yield from (
                v.value for v in each.values if isinstance(v, ast.Constant) and isinstance(v.value, str)
            )


def _constants(node: ast.AST, *, keys: bool = True) -> Iterator[str]:
    """Yield every string below a node; without `keys` none that is a part of a key of a table."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        yield node.value
    for below in ast.iter_child_nodes(node):
        if keys or not (isinstance(node, ast.Dict) and isinstance(below, ast.Tuple) and below in node.keys):
            yield from _constants(below, keys=keys)


def _is_text(text: str) -> bool:
    return bool(_TEXT.match(text)) and not _KEYS.match(text) and any(letter.islower() for letter in text)


def said_in_resources() -> Iterator[str]:
    """Yield meanings of fields, cautions, notes, headings and paragraphs of the help, and what is printed."""
    for room in ("farm", "planning", "desk"):
        for path in sorted((ROOT / "planner" / room).rglob("*.py")):
            yield from _meanings(ast.parse(path.read_text(encoding="utf-8")))
    for document in DOCUMENTS:
        yield from (document.title, document.says)
    for caution in _table(ROOT / "resources" / "catalogue" / "cautions.toml").values():
        yield from (caution["topic"], caution["text"])
    yield from _notes()
    yield from _choices()
    for path in sorted((ROOT / "resources" / "help").glob("*.toml")):
        for parts in _table(path).values():
            for part in parts:
                yield from (part["heading"], *part["paragraphs"])


def _notes() -> Iterator[str]:
    """Yield what the catalogue notes of its entries."""
    catalogue = shipped_catalogue()
    for shelf in SHELVES:
        yield from (getattr(entry, "notes", "") for entry in getattr(catalogue, shelf).values())


def _choices() -> Iterator[str]:
    """Yield what a grower chooses from where it goes by its own value."""
    for kind in _CHOSEN:
        yield from (
            str(one.value) for one in kind if (kind.__name__, one.name) not in CHOICE_WORDS and one.value
        )


def _meanings(tree: ast.Module) -> Iterator[str]:
    """Yield what a module says that its fields mean; a form shows it below the field."""
    for node in ast.walk(tree):
        if isinstance(node, ast.keyword) and node.arg == "meaning":
            yield from _constants(node.value)


def _table(path: Path) -> dict[str, Any]:
    return tomllib.loads(path.read_text(encoding="utf-8"))


def collected() -> tuple[str, ...]:
    """Return every text of the desk once, sorted."""
    found: set[str] = set()
    for path in sorted(DESK.rglob("*.py")):
        tree = ast.parse(path.read_text(encoding="utf-8"))
        found.update(said_in(tree, tables=path.name not in _NO_TABLES))
    found.update(said_in_resources())
    found.update(why_texts())
    return tuple(sorted(text for text in found if text.strip()))


def ts_text(language: str, texts: tuple[str, ...]) -> str:
    """Return the file of a language with all texts in it, translations kept."""
    known = messages(ts_path(language))
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>"]
    lines.append(f'<TS version="2.1" language={quoteattr(language)} sourcelanguage="en">')
    lines += ["<context>", f"    <name>{CONTEXT}</name>"]
    for text in texts:
        said, reviewed = known.get(text, ("", False))
        mark = "" if reviewed else ' type="unfinished"'
        lines.append("    <message>")
        lines.append(f"        <source>{escape(text)}</source>")
        lines.append(f"        <translation{mark}>{escape(said)}</translation>")
        lines.append("    </message>")
    return "\n".join([*lines, "</context>", "</TS>", ""])


def main() -> int:
    """Write the files, and say how much of each is translated."""
    texts = collected()
    for language in LANGUAGES:
        if language == "en":
            continue
        path = ts_path(language)
        content = ts_text(language, texts)
        path.write_text(content, encoding="utf-8")
        done = sum(1 for text in texts if read_ts(path).get(text))
        reviewed = sum(1 for _, by_person in messages(path).values() if by_person)
        print(f"{path.name}: {done} of {len(texts)} texts translated, {reviewed} reviewed")
    return 0


if __name__ == "__main__":
    sys.exit(main())
