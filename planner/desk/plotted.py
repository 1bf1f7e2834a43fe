"""What a chart of something over dates shows, as values: lines, spans, levels to keep, and marks.

Whoever makes them has worded everything. Must know nothing of farms nor of widgets.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Final

from planner.desk.pages import Ask

_LEAST_DAYS: Final = 7


class MarkForm(Enum):
    """How a mark is drawn, so that kinds are told apart without colour."""

    DOT = "dot"
    DOWN = "down"
    UP = "up"
    CROSS = "cross"


@dataclass(frozen=True, slots=True, kw_only=True)
class Strand:
    """Points (day as an ordinal, value) joined by a line, with the span low to high beside it, if any.

    `asks` has for each point what "why?" is asked about there; empty when nothing can be asked.
    """

    points: tuple[tuple[int, float], ...]
    span: tuple[tuple[int, float, float], ...] = ()
    colour: int = 0
    dashed: bool = False
    asks: tuple[Ask, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Level:
    """A value that is to be kept or reached, drawn dashed with its words."""

    value: float
    words: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Mark:
    """Something on one day at one height; its words are shown when the pointer rests on it."""

    day: int
    value: float
    words: str
    form: MarkForm = MarkForm.DOT
    ask: Ask | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Plot:
    """What the chart shows. `spoken` is all of it in a sentence; `empty` is said where nothing is."""

    title: str
    unit: str
    spoken: str
    empty: str
    strands: tuple[Strand, ...] = ()
    levels: tuple[Level, ...] = ()
    marks: tuple[Mark, ...] = ()
    today: int | None = None

    @property
    def days(self) -> tuple[int, int] | None:
        """First and last day shown, None when there is nothing."""
        found = [day for strand in self.strands for day, _ in strand.points]
        found += [mark.day for mark in self.marks]
        return (min(found), max(*found, min(found) + _LEAST_DAYS)) if found else None

    @property
    def drawn_days(self) -> tuple[int, ...]:
        """Every day that something is drawn on, in order."""
        found = {day for strand in self.strands for day, _ in strand.points}
        return tuple(sorted(found | {mark.day for mark in self.marks}))

    @property
    def highest(self) -> float:
        """The highest value of all."""
        found = [value for strand in self.strands for _, value in strand.points]
        found += [high for strand in self.strands for _, _, high in strand.span]
        found += [level.value for level in self.levels] + [mark.value for mark in self.marks]
        return max(found, default=0.0)
