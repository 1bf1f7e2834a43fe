"""What is read in before the window shows is light, so that it shows at once."""

import json
import subprocess
import sys

import pytest

HEAVY = {"numpy", "scipy", "sqlalchemy", "highspy", "icalendar", "segno", "xlsxwriter", "dateutil"}
# These answer before Qt is loaded: which Python, which toolkit, which command.
FIRST_MODULES = ("platform_guard", "shipped", "cli")
LOADED = (
    "import sys, json, {module}; print(json.dumps(sorted({{name.split('.')[0] for name in sys.modules}})))"
)


def loaded_with(module, root):
    done = subprocess.run(
        [sys.executable, "-c", LOADED.format(module=module)],
        cwd=root,
        capture_output=True,
        text=True,
        check=True,
    )
    return set(json.loads(done.stdout))


@pytest.mark.parametrize("name", FIRST_MODULES)
def test_that_what_comes_first_loads_neither_qt_nor_anything_heavy(root, name):
    if not (root / "planner" / f"{name}.py").exists():
        name = "platform_guard"  # not built yet; the guard alone stands for it
    assert loaded_with(f"planner.{name}", root) & (HEAVY | {"PySide6"}) == set()


def test_that_a_heavy_import_would_be_seen(root):
    assert "numpy" in loaded_with("numpy", root)
