"""Reads which room imports what, without importing anything, and says where a rule of the map is broken.

The map itself is `ROOMS`: one entry per package under planner/. An import counts wherever it stands, inside a
function or under TYPE_CHECKING too: the arrows are about what a person must know to read a file.
"""

import ast
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

PACKAGE = "planner"
QT = "PySide6"
# The version, and nothing else, may be read by everybody.
OPEN_TO_ALL = frozenset({""})


@dataclass(frozen=True, slots=True, kw_only=True)
class Room:
    """What one package may import: rooms beside it, and libraries from outside the standard one."""

    rooms: frozenset[str]
    libraries: frozenset[str]
    clock: bool = True
    files: bool = True


def room(rooms: str = "", libraries: str = "", *, clock: bool = True, files: bool = True) -> Room:
    """Write a room's rule as two lists of words."""
    return Room(
        rooms=frozenset(rooms.split()), libraries=frozenset(libraries.split()), clock=clock, files=files
    )


ROOMS = {
    "farm": room(clock=False, files=False),
    "science": room("", "numpy", clock=False, files=False),
    "catalogue": room("farm shipped"),
    "forecast": room("farm science catalogue", "numpy", clock=False, files=False),
    "planning": room("farm science catalogue forecast", "numpy dateutil highspy", clock=False, files=False),
    "store": room("farm catalogue shipped", "sqlalchemy sqlite3 psycopg"),
    "actions": room("farm store planning", "PySide6.QtCore PySide6.QtGui"),
    "paper": room(
        "farm forecast planning catalogue shipped", "PySide6 numpy dateutil icalendar segno xlsxwriter"
    ),
    "desk": room("farm science catalogue forecast planning actions paper shipped", "PySide6 numpy dateutil"),
}
CLOCK_CALLS = frozenset({"today", "now", "utcnow"})
CLOCK_MODULES = frozenset({"time"})
FILE_MODULES = frozenset({"io", "os", "pathlib", "shutil", "sqlite3", "tempfile"})
FILE_CALLS = frozenset({"open"})
HIDDEN_IMPORTS = frozenset({"import_module"})
# Only as plain names: a menu or a dialog has a method exec, too.
HIDDEN_BUILTINS = frozenset({"__import__", "exec", "eval"})


@dataclass(frozen=True, slots=True, kw_only=True)
class Import:
    """One imported name and the line it stands on."""

    name: str
    line: int


def imports(tree: ast.AST, *, module: str, is_package: bool = False) -> Iterator[Import]:
    """Yield every import of a module, each name in full, relative ones resolved."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            yield from (Import(name=alias.name, line=node.lineno) for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            base = _base(node, module=module, is_package=is_package)
            yield from (Import(name=f"{base}.{alias.name}", line=node.lineno) for alias in node.names)


def _base(node: ast.ImportFrom, *, module: str, is_package: bool) -> str:
    if node.level == 0:
        return node.module or ""
    drop = node.level - (1 if is_package else 0)
    parts = module.split(".")
    above = parts[: len(parts) - drop]
    return ".".join([*above, *([node.module] if node.module else [])])


def faults_in_imports(tree: ast.AST, *, module: str, rule: Room, is_package: bool = False) -> list[str]:
    """Return one line for each import that the room's rule does not allow."""
    own = module.split(".")[1]
    found = []
    for entry in imports(tree, module=module, is_package=is_package):
        top, _, rest = entry.name.partition(".")
        if top == PACKAGE:
            allowed = rest.split(".")[0] in {own, "__version__"} | rule.rooms | OPEN_TO_ALL
        else:
            allowed = top in sys.stdlib_module_names - {"sqlite3"} or _is_allowed_library(entry.name, rule)
        if not allowed:
            found.append(f"{module}:{entry.line} imports {entry.name}")
    return found


def _is_allowed_library(name: str, rule: Room) -> bool:
    return any(name == library or name.startswith(library + ".") for library in rule.libraries)


def faults_in_calls(tree: ast.AST, *, module: str, rule: Room) -> list[str]:
    """Return one line for each use of the clock, of files or of a hidden import that is not allowed."""
    found = [f"{module}:{line} calls {name}" for name, line in _calls(tree) if name in HIDDEN_IMPORTS]
    found += [f"{module}:{line} calls {name}" for name, line in _plain_calls(tree) if name in HIDDEN_BUILTINS]
    if not rule.clock:
        found += [f"{module}:{line} reads the clock by {n}()" for n, line in _calls(tree) if n in CLOCK_CALLS]
        found += _module_uses(tree, module=module, banned=CLOCK_MODULES)
    if not rule.files:
        found += [f"{module}:{line} reads files by {n}()" for n, line in _calls(tree) if n in FILE_CALLS]
        found += _module_uses(tree, module=module, banned=FILE_MODULES)
    return found


def _calls(tree: ast.AST) -> Iterator[tuple[str, int]]:
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            name = getattr(node.func, "attr", None) or getattr(node.func, "id", None)
            if name:
                yield name, node.lineno


def _plain_calls(tree: ast.AST) -> Iterator[tuple[str, int]]:
    for node in ast.walk(tree):
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name):
            yield node.func.id, node.lineno


def _module_uses(tree: ast.AST, *, module: str, banned: frozenset[str]) -> list[str]:
    return [
        f"{module}:{entry.line} imports {entry.name}"
        for entry in imports(tree, module=module)
        if entry.name.split(".")[0] in banned
    ]


def modules(root: Path, inside: str = "") -> Iterator[tuple[str, ast.Module, bool]]:
    """Yield every module under planner/ (or under one room of it): its name, its tree, is it a package."""
    folder = root / PACKAGE / inside
    for path in sorted(folder.rglob("*.py")):
        if "_shipped" in path.parts:
            continue
        parts = path.relative_to(root).with_suffix("").parts
        is_package = parts[-1] == "__init__"
        name = ".".join(parts[:-1] if is_package else parts)
        yield name, ast.parse(path.read_text(encoding="utf-8"), str(path)), is_package


def faults_in_room(root: Path, name: str) -> list[str]:
    """Return one line for each place where a room breaks its rule; a room not built yet breaks none."""
    rule = ROOMS[name]
    found: list[str] = []
    for module, tree, is_package in modules(root, name):
        found += faults_in_imports(tree, module=module, rule=rule, is_package=is_package)
        found += faults_in_calls(tree, module=module, rule=rule)
    return found


def importers_of(root: Path, *libraries: str, inside: str = "") -> set[str]:
    """Return the names of the modules that import any of these libraries."""
    return {
        module
        for module, tree, is_package in modules(root, inside)
        for entry in imports(tree, module=module, is_package=is_package)
        if entry.name.split(".")[0] in libraries
    }
