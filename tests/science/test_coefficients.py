"""The coefficient tables are whole: every row says what it is, where it holds and who says so."""

import tomllib

import pytest

from planner.shipped import shipped_path
from tests.science.figures import COEFFICIENTS, atomic_masses, rows

PUBLICATIONS = tomllib.loads(
    shipped_path("resources", "catalogue", "publications.toml").read_text(encoding="utf-8")
)
NEEDED = {"value", "unit", "conditions", "source", "confidence"}
ALLOWED = NEEDED | {"low", "high", "note"}


@pytest.mark.parametrize("key", sorted(rows()))
def test_that_a_row_says_value_unit_conditions_source_and_confidence(key: str) -> None:
    row = rows()[key]
    assert set(row) >= NEEDED
    assert set(row) <= ALLOWED
    assert isinstance(row["value"], (int, float))
    assert row["unit"]
    assert row["conditions"]
    assert row["confidence"] in {"read", "memory", "common practice"}


@pytest.mark.parametrize("key", sorted(rows()))
def test_that_a_range_holds_its_value(key: str) -> None:
    row = rows()[key]
    assert ("low" in row) == ("high" in row)
    assert row.get("low", row["value"]) <= row["value"] <= row.get("high", row["value"])


@pytest.mark.parametrize("key", sorted(rows()))
def test_that_a_figure_said_to_be_read_names_a_known_publication(key: str) -> None:
    row = rows()[key]
    assert row["source"] or row["confidence"] != "read"
    assert not row["source"] or row["source"] in PUBLICATIONS


def test_that_no_key_stands_in_two_files() -> None:
    counted = sum(
        len(tomllib.loads(path.read_text(encoding="utf-8"))) for path in COEFFICIENTS.glob("*.toml")
    )
    assert counted == len(rows())


def test_that_atomic_masses_carry_their_symbols() -> None:
    masses = atomic_masses()
    for symbol, mass in masses.items():
        assert f"symbol {symbol}" in rows()[f"atomic_mass_{symbol.lower()}"]["conditions"]
        assert mass > 1.0
