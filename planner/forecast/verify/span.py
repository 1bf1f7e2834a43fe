"""How far our figure of a case may lie by the ranges that the figures behind it have in the book.

As in the ranges of a forecast every figure is moved to its low and to its high, one at a time, and what each
changes is added in quadrature: upward what it adds, downward the factor it lowers by. What goes together is
moved together. Must not judge: a range that holds the published figure makes no case agree.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.errors import CatalogueError
from planner.catalogue.figure import Figure
from planner.forecast.ranges.changed import with_values

_STAGE: Final = "stage"


@dataclass(frozen=True, slots=True, kw_only=True)
class Span:
    """The least and the most of ours by the ranges of the figures, in the unit of the case."""

    low: float
    high: float

    def holds(self, published: float) -> bool:
        """Tell whether a published figure lies within."""
        return self.low <= published <= self.high


def span_of(
    low: float,
    high: float,
    *,
    ours: float,
    figures: Iterable[str],
    catalogue: Catalogue,
    worked: Callable[[Catalogue], float],
) -> Span | None:
    """Return the span of a case, None where no figure behind it has a range.

    `low` and `high` are the ends of ours over what is assumed, `ours` is likely; `worked` works the case
    again with another catalogue. A figure at whose end the case cannot be worked is left where it is.
    """
    moved = [
        [_at(catalogue, group, worked, at_low=end, otherwise=ours) for end in (True, False)]
        for group in _groups(catalogue, figures)
    ]
    if not moved:
        return None
    up = math.sqrt(sum((max(*ends, ours) - ours) ** 2 for ends in moved))
    if ours > 0.0 and all(min(ends) > 0.0 for ends in moved):
        down = low * math.exp(-math.sqrt(sum(math.log(min(*ends, ours) / ours) ** 2 for ends in moved)))
    else:
        down = low - math.sqrt(sum((ours - min(*ends, ours)) ** 2 for ends in moved))
    return Span(low=max(down, 0.0) if ours > 0.0 else down, high=high + up)


def _groups(catalogue: Catalogue, paths: Iterable[str]) -> Iterator[list[Figure]]:
    """Yield the figures that have a range; those of all stages of a fish are moved as one."""
    found: dict[tuple[str, ...], list[Figure]] = {}
    for path in paths:
        figure = catalogue.figures.get(path)
        if figure is not None and figure.low < figure.high:
            parts = path.split("/")
            key = (*parts[:2], parts[-1]) if _STAGE in parts else tuple(parts)
            found.setdefault(key, []).append(figure)
    yield from found.values()


def _at(
    catalogue: Catalogue,
    group: list[Figure],
    worked: Callable[[Catalogue], float],
    *,
    at_low: bool,
    otherwise: float,
) -> float:
    values = {figure.path: figure.low if at_low else figure.high for figure in group}
    try:
        return worked(with_values(catalogue, values))
    except (CatalogueError, LookupError, ValueError, ArithmeticError):
        return otherwise
