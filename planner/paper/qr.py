"""A square code as marks: a text, and nothing but the text, that a camera reads (ISO/IEC 18004).

Never a Micro QR Code, which many readers do not know. Must not know labels or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

import segno

from planner.paper.marks import Fill

QUIET_MODULES: Final = 4
"""Empty modules that the standard wants on every side."""

LEAST_MODULE_MM: Final = 0.33
"""Smallest module that cheap readers take at arm's length (common practice, no source)."""

_OVERLAP: Final = 0.02
_BLACK: Final = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class SquareCode:
    """The modules of a code by rows, True where they are black."""

    text: str
    rows: tuple[tuple[bool, ...], ...]

    @property
    def modules(self) -> int:
        """Modules on one side, the empty ones around it too."""
        return len(self.rows) + 2 * QUIET_MODULES


def square_code(text: str) -> SquareCode:
    """Return the code of a text, as robust against dirt as its size allows.

    Raises `ValueError` for a text that is empty or too long for any code.

    >>> square_code("LTB-27W09-A").modules
    29
    """
    if not text:
        raise ValueError("text: an empty text has no code")
    made = segno.make_qr(text, error="m", boost_error=True)
    return SquareCode(text=text, rows=tuple(tuple(bool(cell) for cell in row) for row in made.matrix))


def code_marks(code: SquareCode, *, x_mm: float, y_mm: float, side_mm: float) -> Iterator[Fill]:
    """Yield the black runs of a code whose empty edge fills a square of `side_mm`.

    Runs overlap a hair with the next row, so that no viewer shows a white line between them.
    """
    module = side_mm / code.modules
    for row, cells in enumerate(code.rows):
        for first, length in _runs(cells):
            yield Fill(
                x_mm=x_mm + (first + QUIET_MODULES) * module,
                y_mm=y_mm + (row + QUIET_MODULES) * module,
                width_mm=length * module,
                height_mm=module * (1 + _OVERLAP),
                grey=_BLACK,
            )


def _runs(cells: tuple[bool, ...]) -> Iterator[tuple[int, int]]:
    """Yield first place and length of every black run of a row."""
    begun: int | None = None
    for place, black in enumerate((*cells, False)):
        if black and begun is None:
            begun = place
        elif not black and begun is not None:
            yield begun, place - begun
            begun = None
