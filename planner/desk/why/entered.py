"""Answers to "why?" for numbers that nothing was worked out for: typed in, counted, or from the catalogue.

`entered` makes the answer for a field of a thing of the farm, `typed` for a number typed into a form of
the plan, `counted` for a count of listed things, `of_figure` what stands behind a figure of the catalogue.
Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from typing import TYPE_CHECKING, Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.errors import UnknownFigureError
from planner.desk.pages import Basis, Entered
from planner.desk.thing_words import thing_words
from planner.desk.words import choice_words, field_words
from planner.farm.farm import Thing
from planner.farm.fields import FieldSpec, specs_of
from planner.farm.water import Reading
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import NoSuchFigureError
from planner.forecast.why.values import Explanation, Input, Note, NoteKind, Origin, Subject

if TYPE_CHECKING:
    from planner.desk.behind import Behind

MOST_LISTED: Final = 12
"""Things that a count lists by name; the others are one number."""


def answer_to(behind: Behind, ask: Subject | Entered) -> Explanation:
    """Return the answer to what is asked. Raises `NoSuchFigureError` for what is not there (any more)."""
    if not isinstance(ask, Entered):
        return behind.why(ask)
    outlook = behind.outlook
    thing = outlook.farm.settings if not ask.about else outlook.found.get(ask.about)
    spec = specs_of(type(thing)).get(ask.field) if thing is not None else None
    if thing is None or spec is None:
        raise NoSuchFigureError(f"There is no {ask.field} to tell of.")
    about = thing_words(thing, outlook.farm, outlook.catalogue)
    return typed(_title(thing, ask.field), getattr(thing, ask.field), spec, about=about)


def _title(thing: Thing, field: str) -> str:
    """Return what a field is called; the value of a reading goes by what was read."""
    if isinstance(thing, Reading) and field == "value":
        return choice_words(thing.quantity)
    return field_words(field)


def typed(
    title: str, value: float | date | None, spec: FieldSpec | None = None, *, about: str
) -> Explanation:
    """Return the answer for what somebody typed: as entered, for whom, and the limits of the field.

    A date has no value; it is the day the answer stands for. `spec` gives unit and limits.
    """
    number = None if value is None or isinstance(value, date) else float(value)
    unit = spec.unit if spec is not None else ""
    one = Input(name="value", value=number or 0.0, unit=unit, origin=Origin.ENTERED, about=about)
    return Explanation(
        title=title,
        about=about,
        value=number,
        unit=unit,
        formula=Formula.AS_ENTERED,
        inputs=(one,) if number is not None else (),
        notes=_limits(spec),
        on=value if isinstance(value, date) else None,
    )


def _limits(spec: FieldSpec | None) -> tuple[Note, ...]:
    if spec is None or isinstance(spec.low, date) or spec.low is None or spec.high is None:
        return ()
    assert not isinstance(spec.high, date)
    values = (("low", float(spec.low)), ("high", float(spec.high)), ("unit", _unit(spec.unit)))
    return (Note(kind=NoteKind.FIELD_LIMITS, values=values),)


def _unit(unit: str) -> str:
    return "" if unit == "1" else f" {unit}"


def counted(title: str, names: Iterable[str], unit: str = "", *, about: str = "") -> Explanation:
    """Return the answer for a count: the things that were counted, the rest of many as one number."""
    found = tuple(names)
    listed = found if len(found) <= MOST_LISTED else found[: MOST_LISTED - 1]
    inputs = [Input(name=name, value=1.0, unit="", origin=Origin.COUNTED, about=about) for name in listed]
    rest = len(found) - len(listed)
    notes: tuple[Note, ...] = ()
    if rest:
        inputs.append(Input(name="others", value=float(rest), unit="", origin=Origin.COUNTED, about=about))
        notes = (Note(kind=NoteKind.OTHERS, values=(("many", float(rest)),)),)
    return Explanation(
        title=title,
        about=about,
        value=float(len(found)),
        unit=unit,
        formula=Formula.COUNT,
        inputs=tuple(inputs),
        notes=notes,
    )


def of_figure(catalogue: Catalogue, *paths: str) -> Basis | None:
    """Return what stands behind a number that is a figure of the catalogue; None when there is none."""
    found = []
    for path in paths:
        try:
            found.append(catalogue.figure(path))
        except UnknownFigureError:
            continue
    return Basis(figures=tuple(found)) if found else None
