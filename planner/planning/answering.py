"""Figures of a plan by name, each with what tells why it is what it is, made when somebody asks.

Names are words such as "sowing LET-27W10-A plants"; the command line finds figures by them, the window
looks up those of a table's cells.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import replace

from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import worked
from planner.forecast.why.many import largest
from planner.forecast.why.values import Explanation, Input, Note

Maker = Callable[[], Explanation]
Whys = Mapping[str, Maker]


def stated(
    title: str,
    about: str,
    given: Input,
    *,
    notes: tuple[Note, ...] = (),
    children: tuple[Explanation, ...] = (),
) -> Explanation:
    """Return an answer that is one number as it was given or worked out elsewhere."""
    named = replace(given, name="value")
    return Explanation(
        title=title,
        about=about,
        value=given.value,
        unit=given.unit,
        formula=Formula.AS_ENTERED,
        inputs=(named,),
        notes=notes,
        children=children,
    )


def difference(title: str, about: str, before: Explanation, after: Explanation) -> Explanation:
    """Return by how much a figure changes, with both answers behind it.

    None where one of the two has no figure.
    """
    bare = Explanation(
        title=title,
        about=about,
        value=None,
        unit=after.unit,
        formula=Formula.DIFFERENCE,
        children=(before, after),
    )
    if before.value is None or after.value is None:
        return bare
    inputs = (worked("after", after.value, after.unit), worked("before", before.value, before.unit))
    return replace(bare, value=after.value - before.value, inputs=inputs)


def summed(
    title: str,
    about: str,
    value: float,
    unit: str,
    parts: Iterable[Explanation],
    *,
    notes: tuple[Note, ...] = (),
) -> Explanation:
    """Return a sum with its largest parts, the rest put together as others."""
    kept, others, more = largest(parts)
    return Explanation(
        title=title,
        about=about,
        value=value,
        unit=unit,
        formula=Formula.SUM,
        inputs=(worked("others", others, unit),) if more else (),
        children=kept,
        notes=(*notes, *more),
    )
