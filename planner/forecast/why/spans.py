"""A span between a low and a high end, taken apart by the figures that were moved one at a time.

Upward it is what figures add that is put together in squares, downward the logarithms of the factors they
lower by. What does most comes first, the rest stands under "others". Must know nothing of what is foreseen.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Final

from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, worked
from planner.forecast.why.many import others_note
from planner.forecast.why.values import Explanation, Input, Note, NoteKind

_MOST_PARTS: Final = 8
_MOST_FIGURES: Final = 4
_GONE: Final = 1e-6
"""A factor below this is taken as nothing, as the ranges take it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Moved:
    """Figures moved together, and what a number changes by with them at their low and at their high value."""

    paths: tuple[str, ...]
    at_low: float
    at_high: float

    @property
    def raised(self) -> float:
        """The most that the number is raised by."""
        return max(0.0, self.at_low, self.at_high)

    def factor(self, likely: float) -> float:
        """Return the factor that the number is lowered by, 1 when it is not."""
        return 1.0 + min(0.0, self.at_low, self.at_high) / likely


Sized = tuple[float, Moved]


@dataclass(frozen=True, slots=True, kw_only=True)
class Span:
    """A number with every figure that was moved, `title` as in "high end of supply"."""

    title: str
    about: str
    unit: str
    on: date
    likely: float
    moved: tuple[Moved, ...]

    @property
    def highest(self) -> float:
        """The high end."""
        return self.likely + math.sqrt(sum(one.raised**2 for one in self.moved))

    @property
    def lowest(self) -> float:
        """The low end."""
        factors = self._factors()
        if self.likely <= 0.0 or any(factor < _GONE for factor, _ in factors):
            return 0.0
        return self.likely * math.exp(-_logs(factors))

    def _factors(self) -> list[Sized]:
        return [(one.factor(self.likely), one) for one in self.moved] if self.likely > 0.0 else []

    def explained(self, ground: Ground, *, low: float, high: float) -> Explanation:
        """Return the span with its three numbers, and behind it why its ends lie where they do."""
        ends = (self.low_end(ground, value=low), self.high_end(ground, value=high))
        return three(self, low, self.likely, high, title=f"range of {self.title}", children=ends)

    def high_end(self, ground: Ground, *, value: float) -> Explanation:
        """Return why the high end lies so high: what each figure can add."""
        kept, rest = _split([(one.raised, one) for one in self.moved], nothing=0.0)
        others = math.sqrt(sum(amount**2 for amount, _ in rest))
        return Explanation(
            title=f"high end of {self.title}",
            about=self.about,
            value=value,
            unit=self.unit,
            formula=Formula.RANGE_HIGH,
            inputs=(
                worked("likely", self.likely, self.unit),
                *((worked("others", others, self.unit),) if rest else ()),
            ),
            children=tuple(self._part(ground, one, amount, Formula.RAISED) for amount, one in kept),
            notes=self._notes(rest),
            on=self.on,
        )

    def low_end(self, ground: Ground, *, value: float) -> Explanation:
        """Return why the low end lies so low: the factor that each figure can lower it by."""
        factors = self._factors()
        gone = [one for factor, one in factors if factor < _GONE]
        if self.likely <= 0.0 or gone:
            notes = tuple(
                Note(kind=NoteKind.VANISHES, values=(("figure", figure_name(ground, one.paths[0])),))
                for one in gone[:1]
            )
            return self.nothing(notes)
        kept, rest = _split(factors, nothing=1.0)
        return Explanation(
            title=f"low end of {self.title}",
            about=self.about,
            value=value,
            unit=self.unit,
            formula=Formula.RANGE_LOW,
            inputs=(worked("likely", self.likely, self.unit), *_others(rest)),
            children=tuple(self._part(ground, one, factor, Formula.FACTOR) for factor, one in kept),
            notes=self._notes(rest),
            on=self.on,
        )

    def nothing(self, notes: tuple[Note, ...] = ()) -> Explanation:
        """Return a low end at nothing."""
        return Explanation(
            title=f"low end of {self.title}",
            about=self.about,
            value=0.0,
            unit=self.unit,
            formula=Formula.NOTHING,
            notes=notes,
            on=self.on,
        )

    def more(self, ground: Ground) -> Explanation:
        """Return how many times as much there may be."""
        return Explanation(
            title=f"more {self.title}",
            about=self.about,
            value=max(1.0, self.highest / self.likely),
            unit="1",
            formula=Formula.TIMES,
            inputs=(worked("high", self.highest, self.unit), worked("likely", self.likely, self.unit)),
            children=(self.high_end(ground, value=self.highest),),
            on=self.on,
        )

    def less(self, ground: Ground) -> Explanation:
        """Return how many times less there may be; figures that alone leave nothing are left out."""
        factors = [one for one in self._factors() if one[0] >= _GONE]
        kept, rest = _split(factors, nothing=1.0)
        return Explanation(
            title=f"less {self.title}",
            about=self.about,
            value=math.exp(_logs(factors)),
            unit="1",
            formula=Formula.FACTORS,
            inputs=_others(rest),
            children=tuple(self._part(ground, one, factor, Formula.FACTOR) for factor, one in kept),
            notes=self._notes(rest),
            on=self.on,
        )

    def _notes(self, rest: Sequence[Sized]) -> tuple[Note, ...]:
        independent = Note(kind=NoteKind.INDEPENDENT, values=(("many", float(len(self.moved))),))
        return (independent, *others_note(len(rest)))

    def _part(self, ground: Ground, moved: Moved, value: float, formula: Formula) -> Explanation:
        """Return what moving one figure does, with the figure itself: its value, its ends, its source."""
        figures = tuple(
            ground.figure(path.rpartition("/")[2] if number == 0 else f"also_{number}", path)
            for number, path in enumerate(moved.paths[:_MOST_FIGURES])
        )
        changes = (
            worked("change_at_low", moved.at_low, self.unit),
            worked("change_at_high", moved.at_high, self.unit),
        )
        many = len(moved.paths)
        together = (Note(kind=NoteKind.MOVED_TOGETHER, values=(("many", float(many)),)),)
        part = Explanation(
            title="moved figure",
            about=figure_name(ground, moved.paths[0]),
            value=value,
            unit=self.unit,
            formula=formula,
            inputs=(*figures, *changes),
            notes=together if many > 1 else (),
            on=self.on,
        )
        if formula is not Formula.FACTOR:
            return part
        return replace(part, unit="1", inputs=(*part.inputs, worked("likely", self.likely, self.unit)))


def three(
    span: Span,
    low: float,
    likely: float,
    high: float,
    *,
    title: str,
    unit: str = "",
    children: tuple[Explanation, ...],
) -> Explanation:
    """Return low, likely and high as one answer."""
    of = unit or span.unit
    return Explanation(
        title=title,
        about=span.about,
        value=likely,
        unit=of,
        formula=Formula.RANGE,
        inputs=(worked("low", low, of), worked("likely", likely, of), worked("high", high, of)),
        children=children,
        on=span.on,
    )


def _split(sized: Sequence[Sized], *, nothing: float) -> tuple[list[Sized], list[Sized]]:
    """Return what does most, and the others; what does nothing is left out."""

    def most_first(one: Sized) -> tuple[float, tuple[str, ...]]:
        return -abs(one[0] - nothing), one[1].paths

    ordered = sorted((one for one in sized if one[0] != nothing), key=most_first)
    return ordered[:_MOST_PARTS], ordered[_MOST_PARTS:]


def _others(rest: Sequence[Sized]) -> tuple[Input, ...]:
    """Return the factor that all others make together, none where there are no others."""
    return (worked("others", math.exp(-_logs(rest)), "1"),) if rest else ()


def _logs(factors: Sequence[Sized]) -> float:
    return math.sqrt(sum(math.log(factor) ** 2 for factor, _ in factors))


_SHELVES: Final = {"crop": "crops", "fish": "fish", "feed": "feeds", "supplement": "supplements"}


def figure_name(ground: Ground, path: str) -> str:
    """Return how a figure is told: the entry by its name, and the field, as in "Nile tilapia: tgc"."""
    shelf, *rest = path.split("/")
    field = rest[-1].replace("_", " ")
    if shelf not in _SHELVES:
        return f"{rest[0].capitalize()}: {field}" if len(rest) > 1 and shelf == "element" else field
    entry = getattr(ground.catalogue, _SHELVES[shelf]).get(rest[0])
    return f"{entry.name if entry is not None else rest[0]}: {field}"
