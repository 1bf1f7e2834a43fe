"""The answer for a cell that tells several numbers of one thing, all typed by somebody."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import Any

from planner.desk.pages import Ask
from planner.desk.why.entered import typed
from planner.desk.words import field_words
from planner.farm.fields import specs_of
from planner.forecast.why.values import Input, Origin


def together(thing: Any, fields: tuple[str, ...], *, about: str) -> Ask | None:
    """Return the answer for fields of a thing that have a value; None when none has.

    The first of them is the figure; the others stand below it.
    """
    specs = specs_of(type(thing))
    found = {field: getattr(thing, field) for field in fields}
    told = {field: value for field, value in found.items() if isinstance(value, int | float)}
    if not told:
        return None
    first, *rest = told
    answer = typed(field_words(first), told[first], specs[first], about=about)
    more = tuple(
        Input(
            name=field_words(field),
            value=float(told[field]),
            unit=specs[field].unit,
            origin=Origin.ENTERED,
            about=about,
        )
        for field in rest
    )
    return replace(answer, inputs=(*answer.inputs, *more), on=_day(thing))


def _day(thing: Any) -> date | None:
    on = getattr(thing, "on", None)
    return on if isinstance(on, date) else None
