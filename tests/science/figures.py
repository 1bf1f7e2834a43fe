"""The coefficient rows as the tests read them."""

import csv
import tomllib
from functools import cache
from pathlib import Path
from typing import Any

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.loading import shipped_catalogue
from planner.science.water import OxygenCoefficients
from planner.shipped import shipped_path

COEFFICIENTS = shipped_path("resources", "coefficients")
PUBLISHED_DATA = Path(__file__).resolve().parents[1] / "published" / "data"


@cache
def rows() -> dict[str, dict[str, Any]]:
    """Every coefficient row by its key; a key may stand in one file only."""
    found: dict[str, dict[str, Any]] = {}
    for path in sorted(COEFFICIENTS.glob("*.toml")):
        for key, row in tomllib.loads(path.read_text(encoding="utf-8")).items():
            assert key not in found, f"{key} stands in two files"
            found[key] = row
    return found


def figure(key: str) -> float:
    """The likely value of a coefficient by its key, or of any figure of the catalogue by its path."""
    return shipped_book().figure(key).value if "/" in key else float(rows()[key]["value"])


@cache
def shipped_book() -> Catalogue:
    """The catalogue that ships."""
    return shipped_catalogue()


def atomic_masses() -> dict[str, float]:
    """Atomic masses by symbol [g/mol]."""
    head = "atomic_mass_"
    return {key.removeprefix(head).capitalize(): figure(key) for key in rows() if key.startswith(head)}


def ammonia() -> dict[str, float]:
    """The two coefficients of the ammonium pKa."""
    return {"intercept": figure("ammonia_pka_intercept"), "slope_k": figure("ammonia_pka_slope_k")}


def oxygen() -> OxygenCoefficients:
    """The coefficients of oxygen saturation."""
    return OxygenCoefficients(
        temperature_terms=tuple(figure(f"oxygen_temperature_{power}") for power in range(5)),
        salinity_terms=tuple(figure(f"oxygen_salinity_{power}") for power in range(3)),
    )


def published_table(name: str) -> list[dict[str, str]]:
    """The rows of a data file of a publication, the heading lines left out."""
    with (PUBLISHED_DATA / name).open(encoding="utf-8") as file:
        return list(csv.DictReader(line for line in file if not line.startswith("#")))
