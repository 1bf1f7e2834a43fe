"""Works out the grid and area of a bed from what a grower has measured: length, spacing, density."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any, Final

from planner.farm.faults import FaultKind
from planner.farm.fields import specs_of
from planner.farm.site import Bed
from planner.store.text.findings import UnfitError

_CM_PER_M: Final = 100
_DECIMALS_OF_AREA: Final = 6
_HAIR: Final = 1e-9
"""Keeps 2.4 m at 0.2 m at twelve places, whatever binary fractions make of it."""


class BedError(Exception):
    """Raised with the field that is at fault."""

    def __init__(self, field: str, fault: UnfitError) -> None:
        """Keep both."""
        super().__init__(fault.message)
        self.field = field
        self.fault = fault


@dataclass(frozen=True, slots=True, kw_only=True)
class Grid:
    """What a bed needs to know of its places."""

    rows: int
    columns: int
    area_m2: float


def grid_of(values: dict[str, Any], aids: dict[str, Any]) -> Grid:
    """Return rows, columns and the area of the whole bed [m²].

    Rows and columns that are typed overrule places, places overrule density, density overrules
    spacing; a typed area overrules length × width. Raises `BedError` when something is missing.
    """
    units: int = values.get("units", 1)
    area = _area(values, aids, units)
    rows, columns = values.get("rows"), values.get("columns")
    if rows is None or columns is None:
        across, along = _worked_out(values, aids, area / units)
        rows = across if rows is None else rows
        columns = along if columns is None else columns
    elif aids.get("places") not in (None, rows * columns):
        raise BedError(
            "places",
            UnfitError(
                FaultKind.NOT_SUITED,
                f"is {aids['places']}, but rows × columns makes {rows * columns}.",
                value=str(aids["places"]),
                limit=str(rows * columns),
                remedy="Leave places out.",
            ),
        )
    return Grid(rows=rows, columns=columns, area_m2=area)


def _area(values: dict[str, Any], aids: dict[str, Any], units: int) -> float:
    typed = values.get("area_m2")
    if typed is not None:
        return float(typed)
    length, width = aids.get("length_m"), aids.get("width_m")
    if length is None or width is None:
        raise _missing("area_m2", "Give area_m2 of the whole bed, or length_m and width_m of one unit of it.")
    return round(float(length * width * units), _DECIMALS_OF_AREA)


def _worked_out(values: dict[str, Any], aids: dict[str, Any], unit_area_m2: float) -> tuple[int, int]:
    if aids.get("places") is not None:
        return _exact_grid(aids["places"])
    if aids.get("density_per_m2") is not None:
        return _near_grid(math.floor(unit_area_m2 * aids["density_per_m2"] + _HAIR))
    if aids.get("spacing_cm") is not None:
        return _spaced(aids, unit_area_m2)
    field = "columns" if values.get("rows") is not None else "rows"
    raise _missing(
        field, "Give rows and columns of one unit of the bed, or spacing_cm, places or density_per_m2."
    )


def _missing(field: str, remedy: str) -> BedError:
    return BedError(field, UnfitError(FaultKind.MISSING, "is missing.", remedy=remedy))


def _exact_grid(places: int) -> tuple[int, int]:
    """Return one row of so many places; more than a row may hold need a grid that is typed."""
    most = _most_columns()
    if places > most:
        fault = UnfitError(
            FaultKind.OUT_OF_LIMITS,
            f"is {places}, but a single row holds at most {most}.",
            value=str(places),
            limit=str(most),
            remedy="Give rows and columns instead.",
        )
        raise BedError("places", fault)
    return 1, places


def _near_grid(places: int) -> tuple[int, int]:
    """Return one row of about so many places, or a square when that is too long for one row."""
    if places <= _most_columns():
        return 1, max(1, places)
    rows = math.isqrt(places)
    return rows, places // rows


def _spaced(aids: dict[str, Any], unit_area_m2: float) -> tuple[int, int]:
    """Return rows across the width and columns along the length at a square spacing."""
    spacing_m = aids["spacing_cm"] / _CM_PER_M
    length, width = aids.get("length_m"), aids.get("width_m")
    if length is None or width is None:
        return _near_grid(math.floor(unit_area_m2 / spacing_m**2 + _HAIR))
    rows, columns = math.floor(width / spacing_m + _HAIR), math.floor(length / spacing_m + _HAIR)
    if rows < 1 or columns < 1:
        fault = UnfitError(
            FaultKind.OUT_OF_LIMITS,
            f"is {aids['spacing_cm']:g}, which leaves no place on {length:g} × {width:g} m.",
            value=f"{aids['spacing_cm']:g}",
            limit=f"at most {min(length, width) * _CM_PER_M:g} cm",
        )
        raise BedError("spacing_cm", fault)
    return rows, columns


def _most_columns() -> int:
    return int(specs_of(Bed)["columns"].high)  # type: ignore[arg-type]
