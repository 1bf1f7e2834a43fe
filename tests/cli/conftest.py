"""A command run in this process: its exit code, and what it said where."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

import pytest

from planner.cli import main


class Said(NamedTuple):
    code: int
    out: str
    err: str


@pytest.fixture(autouse=True)
def toolkit(qapp: object) -> None:
    """Have the toolkit there with windows: a command that prints would start it without, for good."""


@pytest.fixture
def run(capsys: pytest.CaptureFixture[str]) -> Callable[..., Said]:
    def command(*words: object) -> Said:
        code = main([str(word) for word in words])
        out, err = capsys.readouterr()
        assert "Traceback" not in out + err
        return Said(code, out, err)

    return command


@pytest.fixture
def yard(root: Path) -> Path:
    """The small sample farm as text."""
    return root / "sample_data" / "backyard.toml"


@pytest.fixture
def kitchen(root: Path) -> Path:
    """The large sample farm as text."""
    return root / "sample_data" / "school-kitchen.toml"
