"""No figure is typed in the formulas: what a function reckons with is an argument, a row or a definition.

Numbers that say how something is reckoned, not how much, are let through: 0, 1, 2, powers, the base of a
logarithm, a hundred for a percent, places in a table. Anything else is a figure and belongs in resources/.
"""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOMS = ("science", "forecast")
PLAIN = frozenset({0, 1, 2})
PERCENT_AND_TEN = frozenset({10.0, 100.0})
Function = ast.FunctionDef | ast.AsyncFunctionDef | ast.Lambda

MODULE_WIDE = {
    "_BUFFER_PH": "range in which the formula holds",
    "_HIGHEST_ALTITUDE_M": "range in which the formula holds",
    "_HIGHEST_SALINITY": "range in which the formula holds",
    "_LEAST_METER_FACTOR": "range in which the formula holds",
    "_LOWEST_BICARBONATE_PH": "range in which the formula holds",
    "_LOWEST_C": "range in which the formula holds",
    "_LOWEST_METER_FACTOR": "range in which the formula holds",
    "_LOWEST_RATE_C": "range in which the formula holds",
    "_LOWEST_WATER_C": "range in which the formula holds",
    "LOWEST_C": "range in which the formula holds",
    "_HIGHEST_PH": "range in which the formula holds",
    "_ALTITUDE_M": "range in which the formula holds",
    "_OXYGEN_C": "range in which the formula holds",
    "RATE_C": "range in which the formula holds",
    "_DEGREES_POLE": "definition",
    "_CM_PER_INCH": "definition",
    "_G_PER_OUNCE": "definition",
    "_KG_PER_POUND": "definition",
    "_L_PER_GALLON": "definition",
    "KELVIN_AT_0_C": "definition",
    "KELVIN_IN_PENMAN": "part of the published equation (fao56 eq. 6), which rounds it",
    "_DAYS_PER_YEAR": "part of the published equation (fao56 eq. 23 and 24)",
    "_FARTHEST": "what a float can hold",
    "_WEIGHT_SPAN": "what a float can hold",
    "_AS_OWN": "nearness below which two are taken for one",
    "LEVELS_PERCENT": "levels of chance that are shown",
}
"""Numbers of whole modules, each with what it is; a new one needs its reason here or a row in resources/."""


def figures_in_functions(tree: ast.Module) -> Iterator[tuple[int, float]]:
    """Yield line and value of each number in a function that could be a figure."""
    for node in ast.walk(tree):
        if isinstance(node, Function):
            body = node.body if isinstance(node.body, list) else [node.body]
            defaults = [each for each in (*node.args.defaults, *node.args.kw_defaults) if each is not None]
            for part in (*body, *defaults):
                yield from _figures(part)


def _figures(node: ast.AST) -> Iterator[tuple[int, float]]:
    if isinstance(node, ast.Constant):
        value = node.value
        if isinstance(value, int | float) and not isinstance(value, bool) and value not in PLAIN:
            yield node.lineno, value
        return
    for name, child in ast.iter_fields(node):
        if _is_no_figure(node, name):
            continue
        for each in child if isinstance(child, list) else [child]:
            if isinstance(each, ast.AST) and not _is_percent_or_ten(each):
                yield from _figures(each)


def _is_no_figure(node: ast.AST, field: str) -> bool:
    """Return whether what stands in a field says where or how: an index, a power, a count of turns."""
    if isinstance(node, ast.Subscript):
        return field == "slice"
    if isinstance(node, ast.BinOp):
        return field == "right" and isinstance(node.op, ast.Pow)
    if isinstance(node, ast.comprehension) and field == "iter":
        numbers = [each.value for each in ast.walk(node.iter) if isinstance(each, ast.Constant)]
        return not any(isinstance(number, float) for number in numbers)
    return isinstance(node, ast.Call) and field == "args" and getattr(node.func, "id", "") == "range"


def _is_percent_or_ten(node: ast.AST) -> bool:
    return isinstance(node, ast.Constant) and isinstance(node.value, float) and node.value in PERCENT_AND_TEN


def module_numbers(tree: ast.Module) -> Iterator[tuple[int, str, float]]:
    """Yield line, name and value of each number of a whole module that could be a figure."""
    for node in tree.body:
        if isinstance(node, ast.Assign):
            targets = node.targets
        elif isinstance(node, ast.AnnAssign):
            targets = [node.target]
        else:
            continue
        name = next(each.id for target in targets for each in ast.walk(target) if isinstance(each, ast.Name))
        for part in ast.walk(node.value) if node.value is not None else ():
            if isinstance(part, ast.Constant) and isinstance(part.value, float) and not _is_how(part.value):
                yield part.lineno, name, part.value


def _is_how(value: float) -> bool:
    """Return whether a number is a power of ten, a half or a whole number of parts below ten."""
    plain_parts = {0.25, 0.5, 3.0, 4.0, 6.0}
    powers = {10.0**power for power in range(-12, 7)}
    seconds_and_hours = {24.0, 60.0, 1440.0, 3600.0, 86400.0}
    return value in PLAIN | plain_parts | powers | seconds_and_hours


def trees(root: Path) -> Iterator[tuple[str, ast.Module]]:
    """Yield the name and the tree of every module of the rooms that reckon."""
    for room in ROOMS:
        for path in sorted((root / "planner" / room).rglob("*.py")):
            name = path.relative_to(root).as_posix()
            yield name, ast.parse(path.read_text(encoding="utf-8"))


def test_that_no_function_holds_a_figure(root):
    found = [
        f"{name}:{line}: {value}" for name, tree in trees(root) for line, value in figures_in_functions(tree)
    ]
    assert found == []


def test_that_every_number_of_a_module_says_what_it_is(root):
    numbers = [
        (f"{file}:{line}", name) for file, tree in trees(root) for line, name, _ in module_numbers(tree)
    ]
    assert [f"{where}: {name}" for where, name in numbers if name not in MODULE_WIDE] == []
    assert set(MODULE_WIDE) - {name for _, name in numbers} == set()


@pytest.mark.parametrize(
    "code",
    [
        "def f(x): return 0.3 * x",
        "def f(x, ratio=0.61): return ratio * x",
        "def f(x): return x / 6.25",
        "f = lambda x: x * 92",
        "def f(x): return max(x, 7.14)",
        "def f(x): return [x * share for share in (0.3,)]",
        "def f(x):\n    limit = 500\n    return x < limit",
    ],
)
def test_that_a_typed_figure_is_seen(code):
    assert len(list(figures_in_functions(ast.parse(code)))) == 1


@pytest.mark.parametrize(
    "code",
    [
        "def f(x): return x ** 3 / 2.0",
        "def f(x): return x[3] + x[4:6].sum()",
        "def f(x): return 1.0 / (1.0 + 10.0 ** x)",
        "def f(x): return x * 100.0",
        "def f(x): return [x for _ in range(5)]",
        "def f(x): return [x[column] for column in (1, 2, 5)]",
        "def f(x): return 'weight 6.25'",
    ],
)
def test_that_how_it_is_reckoned_is_no_figure(code):
    assert list(figures_in_functions(ast.parse(code))) == []


def test_that_a_figure_of_a_module_is_seen_by_its_name():
    code = "_TAN = 0.092\n_HALF = 0.5\n_LIMITS: tuple = (18.0, 30.0)\n"
    assert [name for _, name, _ in module_numbers(ast.parse(code))] == ["_TAN", "_LIMITS", "_LIMITS"]
