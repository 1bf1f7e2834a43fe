"""Lines of text for ranges: how sure each week's balance is, and which figures are worth measuring."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any, Final

_WIDTHS: Final = (10, 10, 8, 8, 8)
_INDENT: Final = "  "
_NOTHING: Final = "-"

Data = Mapping[str, Any]


def ranges_lines(data: Data) -> Iterator[str]:
    """Yield for each loop the range of its least supplied element by week, and what matters most for it."""
    for loop in data["loops"]:
        yield ""
        yield f"{loop['loop']}: supply over demand by the ranges of the figures"
        yield _line(("week", "element", "low", "likely", "high"))
        scarce = [_scarcest(week) for week in loop["weeks"]]
        for week, symbol in zip(loop["weeks"], scarce, strict=True):
            three = week["elements"][symbol]["ratio"] if symbol else None
            cells = [_NOTHING] * 3 if three is None else [f"{value:.2f}" for value in three]
            yield _line((week["week"], symbol or _NOTHING, *cells))
        known = [symbol for symbol in scarce if symbol]
        if known:
            yield from _most(loop, max(dict.fromkeys(known), key=known.count))


def _scarcest(week: Data) -> str:
    """Return the element with the least likely ratio, empty where nothing is wanted."""
    ratios = {symbol: one["ratio"][1] for symbol, one in week["elements"].items() if one["ratio"]}
    return min(ratios, key=ratios.__getitem__) if ratios else ""


def _most(loop: Data, symbol: str) -> Iterator[str]:
    yield ""
    yield f"{loop['loop']}: what matters most for {symbol} over the plan"
    for one in loop["matters_most"][symbol]:
        low, likely, high = one["values"]
        at_low, _, at_high = one["ratios"]
        yield (
            f"{_INDENT}{one['figures'][0]} {likely:g} ({low:g} to {high:g} {one['unit']}): "
            f"ratio {at_low:.2f} to {at_high:.2f}"
        )


def _line(cells: Sequence[str]) -> str:
    return _INDENT + "".join(cell.rjust(width) for cell, width in zip(cells, _WIDTHS, strict=True))
