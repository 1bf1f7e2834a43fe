"""How a sum of very many parts is told: the largest are explained, the others only summed."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import date
from typing import Final

from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import worked
from planner.forecast.why.values import Explanation, Note, NoteKind

MOST_PARTS: Final = 12
"""As many parts are told one by one."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """One part of a sum: its value, its name, and who explains it when it is among the largest."""

    value: float
    name: str
    explain: Callable[[], Explanation]


def told_sum(
    parts: Iterable[Part],
    *,
    title: str,
    about: str,
    value: float,
    unit: str,
    on: date | None,
    nothing: NoteKind | None = None,
) -> Explanation:
    """Return a sum with its largest parts; `nothing` is noted where there are none at all."""
    ordered = sorted(parts, key=_size)
    kept, rest = ordered[:MOST_PARTS], ordered[MOST_PARTS:]
    notes = others_note(len(rest))
    if not ordered and nothing is not None:
        notes = (Note(kind=nothing),)
    return Explanation(
        title=title,
        about=about,
        value=value,
        unit=unit,
        formula=Formula.SUM,
        inputs=(worked("others", sum(part.value for part in rest), unit),) if rest else (),
        children=tuple(part.explain() for part in kept),
        notes=notes,
        on=on,
    )


def _size(part: Part) -> tuple[float, str]:
    return -part.value, part.name


def largest(parts: Iterable[Explanation]) -> tuple[tuple[Explanation, ...], float, tuple[Note, ...]]:
    """Return the largest of few answers in order, the sum of the others, and a note of how many those are."""
    ordered = sorted(parts, key=_told_size)
    kept, rest = ordered[:MOST_PARTS], ordered[MOST_PARTS:]
    return tuple(kept), sum(one.value or 0.0 for one in rest), others_note(len(rest))


def _told_size(part: Explanation) -> tuple[float, str]:
    return -(part.value or 0.0), part.about


def others_note(many: int) -> tuple[Note, ...]:
    """Return the note of how many parts are left out, none where all are told."""
    return (Note(kind=NoteKind.OTHERS, values=(("many", float(many)),)),) if many else ()
