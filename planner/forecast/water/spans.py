"""Low, likely and high held together, and the figures of the catalogue behind a result.

Must not know what is spanned.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, fields
from typing import Any, Final, TypeVar

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.forecast.values import Floats, Ruler

_NOISE: Final = 1e-9
"""Relative slack for rounding when order is checked."""

F = TypeVar("F")


@dataclass(frozen=True, slots=True, kw_only=True)
class Span:
    """A likely value between a low and a high one.

    >>> Span(low=1.0, likely=2.0, high=4.0).minus(Span(low=0.0, likely=1.0, high=3.0))
    Span(low=-2.0, likely=1.0, high=4.0)
    """

    low: float
    likely: float
    high: float

    def __post_init__(self) -> None:
        """Refuse values out of order."""
        slack = _NOISE * max(abs(self.low), abs(self.likely), abs(self.high))
        if not self.low - slack <= self.likely <= self.high + slack:
            raise ValueError(f"span {self.low:g} to {self.high:g} does not hold its likely {self.likely:g}")

    def times(self, factor: float) -> Span:
        """Return the span times a plain number; a negative one turns it over."""
        low, high = sorted((self.low * factor, self.high * factor))
        return Span(low=low, likely=self.likely * factor, high=high)

    def plus(self, other: Span) -> Span:
        """Return the sum: lows with lows, highs with highs."""
        return Span(low=self.low + other.low, likely=self.likely + other.likely, high=self.high + other.high)

    def minus(self, other: Span) -> Span:
        """Return the difference: low less the other's high, high less its low."""
        return self.plus(other.times(-1.0))

    def at_least(self, floor: float) -> Span:
        """Return the span with nothing below a floor."""
        return Span(low=max(self.low, floor), likely=max(self.likely, floor), high=max(self.high, floor))


def exactly(value: float) -> Span:
    """Return a span without any width."""
    return Span(low=value, likely=value, high=value)


def span_of(figure: Figure) -> Span:
    """Return a figure of the catalogue as a span."""
    return Span(low=figure.low, likely=figure.value, high=figure.high)


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class DaySpan:
    """Low, likely and high by day, each of shape (day,)."""

    low: Floats
    likely: Floats
    high: Floats

    def __post_init__(self) -> None:
        """Refuse values out of order."""
        slack = _NOISE * np.maximum(np.abs(self.low), np.abs(self.high))
        if np.any(self.low > self.likely + slack) or np.any(self.likely > self.high + slack):
            raise ValueError("values by day: a likely value lies outside its low and high")

    @property
    def days(self) -> int:
        """Number of days."""
        return int(self.likely.size)

    def at(self, day: int) -> Span:
        """Return one day."""
        return Span(low=float(self.low[day]), likely=float(self.likely[day]), high=float(self.high[day]))

    def plus(self, other: DaySpan) -> DaySpan:
        """Return the sum day by day."""
        return DaySpan(
            low=self.low + other.low, likely=self.likely + other.likely, high=self.high + other.high
        )

    def times(self, factor: float) -> DaySpan:
        """Return the values times a plain number of at least 0."""
        return DaySpan(low=self.low * factor, likely=self.likely * factor, high=self.high * factor)

    def weekly_mean(self, ruler: Ruler) -> tuple[Span, ...]:
        """Return the mean of every week."""
        low, likely, high = (ruler.weekly_mean(part) for part in (self.low, self.likely, self.high))
        return tuple(
            Span(low=float(low[week]), likely=float(likely[week]), high=float(high[week]))
            for week in range(ruler.weeks)
        )

    def mean(self, first: int, last: int) -> Span:
        """Return the mean of the days from `first` to the one before `last`."""
        low, likely, high = (float(part[first:last].mean()) for part in (self.low, self.likely, self.high))
        return Span(low=low, likely=likely, high=high)


def by_day(values: Floats, span: Span) -> DaySpan:
    """Return values by day (at least 0) times a span."""
    return DaySpan(low=values * span.low, likely=values * span.likely, high=values * span.high)


def figures_from(catalogue: Catalogue, kind: type[F], paths: Mapping[str, str]) -> F:
    """Return a dataclass of figures, each field taken from its path in the catalogue."""
    taken: dict[str, Any] = {name: catalogue.figure(path) for name, path in paths.items()}
    return kind(**taken)


def basis_of(figures: Any) -> tuple[Figure, ...]:
    """Return the figures that a dataclass of figures holds, in order, single or in mappings."""
    found: list[Figure] = []
    for field in fields(figures):
        value = getattr(figures, field.name)
        if isinstance(value, Figure):
            found.append(value)
        elif isinstance(value, Mapping):
            found.extend(each for each in value.values() if isinstance(each, Figure))
    return tuple(found)


def source_keys(basis: Iterable[Figure]) -> tuple[str, ...]:
    """Return the publications behind figures, each once."""
    return tuple(dict.fromkeys(figure.source for figure in basis if figure.source))
