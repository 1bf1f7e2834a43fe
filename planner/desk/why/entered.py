"""Answers to "why?" for numbers that nothing was worked out for: typed in, counted, or from the catalogue.

`entered` makes the answer for a field of a thing of the farm, `typed` for a number typed into a form of
the plan, `counted` for a count of listed things, `of_figure` what stands behind a figure of the catalogue.
Must know nothing of widgets.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import replace
from datetime import date
from typing import TYPE_CHECKING, Final, TypeVar

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.errors import UnknownFigureError
from planner.desk.pages import Basis, Entered, LateAsk, Shifted, Summed, Unsure
from planner.desk.thing_words import thing_words
from planner.desk.words import choice_words, field_words
from planner.farm.crops import Target
from planner.farm.farm import Thing
from planner.farm.fields import FieldSpec, Id, specs_of
from planner.farm.log import LogEntry
from planner.farm.water import READING_LIMITS, Reading
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import NoSuchFigureError, worked
from planner.forecast.why.many import others_note
from planner.forecast.why.trends import unit_of
from planner.forecast.why.values import Explanation, Input, Note, NoteKind, Origin, Subject

if TYPE_CHECKING:
    from planner.desk.behind import Behind
    from planner.desk.session import ActLine

T = TypeVar("T")

MOST_LISTED: Final = 12
"""Things that a count lists by name; the others are one number."""


Typed = float | date | tuple[float, ...] | None
"""What somebody can type that is asked why: a number, a day, or a number for each month."""


LastChange = Callable[[Id, str], "ActLine | None"]
"""Gives the last act that changed a field of a thing."""


def answer_to(behind: Behind, ask: LateAsk, *, changed: LastChange | None = None) -> Explanation:
    """Return the answer to what is asked. Raises `NoSuchFigureError` for what is not there (any more).

    `changed` tells when and by whom a field was typed last, where that is known.
    """
    if isinstance(ask, Entered):
        found = _of_field(behind, ask)
        act = changed(ask.about, ask.field) if changed is not None else None
        return found if act is None else replace(found, notes=(*found.notes, _change_note(act)))
    if isinstance(ask, Summed):
        return _sum(behind, ask)
    if isinstance(ask, Shifted):
        return _shift(behind, ask)
    if isinstance(ask, Unsure):
        return behind.why_sure(ask.of, ask.at_least)
    return behind.why(ask)


def _sum(behind: Behind, ask: Summed) -> Explanation:
    """Return the largest parts of a sum with their answers, the others as one number."""
    listed, rest = _listed(sorted(ask.parts, key=_size))
    others = math.fsum(amount for _, amount in rest)
    return Explanation(
        title=ask.title,
        about=ask.about,
        value=math.fsum(amount for _, amount in ask.parts),
        unit=ask.unit,
        formula=Formula.SUM,
        inputs=(worked("others", others, ask.unit),) if rest else (),
        children=tuple(answer_to(behind, part) for part, _ in listed),
        notes=others_note(len(rest)),
    )


def _size(part: tuple[Subject | Entered, float]) -> float:
    return -abs(part[1])


def _listed(parts: Sequence[T]) -> tuple[Sequence[T], Sequence[T]]:
    """Return the parts that are listed, and the rest, which is one line of its own."""
    at = len(parts) if len(parts) <= MOST_LISTED else MOST_LISTED - 1
    return parts[:at], parts[at:]


def _shift(behind: Behind, ask: Shifted) -> Explanation:
    """Return how many days lie between two days, counted from the first of the plan, and why the later."""
    ruler = behind.outlook.forecast.ruler
    before, after = (float(ruler.day_of(on)) for on in (ask.old_on, ask.new_on))
    why_new = answer_to(behind, ask.ask)
    days = (("from", ask.old_on.isoformat()), ("until", ask.new_on.isoformat()))
    return Explanation(
        title=ask.title,
        about=why_new.about,
        value=after - before,
        unit="d",
        formula=Formula.DIFFERENCE,
        inputs=(worked("before", before, "d"), worked("after", after, "d")),
        children=(*((why_new,) if _is_of(why_new, ask) else ()), *ask.beside),
        notes=(Note(kind=NoteKind.FROM_TO, values=days),),
    )


def _is_of(found: Explanation, ask: Shifted) -> bool:
    """Tell whether an answer is of one of two days, or the day beside it; a farm may have changed since."""
    return found.on is not None and any(abs((found.on - on).days) <= 1 for on in (ask.old_on, ask.new_on))


def _change_note(act: ActLine) -> Note:
    values = (("on", act.at.astimezone().date().isoformat()), ("act", act.title))
    if act.who:
        return Note(kind=NoteKind.CHANGED_BY, values=(*values, ("who", act.who)))
    return Note(kind=NoteKind.CHANGED, values=values)


def _of_field(behind: Behind, ask: Entered) -> Explanation:
    outlook = behind.outlook
    thing = outlook.farm.settings if not ask.about else outlook.found.get(ask.about)
    spec = _spec(thing, ask.field) if thing is not None else None
    if thing is None or spec is None:
        raise NoSuchFigureError(f"There is no {ask.field} to tell of.")
    about = thing_words(thing, outlook.farm, outlook.catalogue)
    return typed(_title(thing, ask.field), getattr(thing, ask.field), spec, about=about)


def _spec(thing: Thing, field: str) -> FieldSpec | None:
    """Return unit and limits of a field; an amount has the unit that is chosen beside it."""
    spec = specs_of(type(thing)).get(field)
    if spec is None:
        return None
    if isinstance(thing, Reading) and field == "value":
        low, high = READING_LIMITS[thing.quantity]
        return replace(spec, unit=unit_of(thing.quantity), low=low, high=high)
    if (isinstance(thing, LogEntry) and field == "amount") or (
        isinstance(thing, Target) and field == "amount_per_week"
    ):
        return replace(spec, unit=thing.unit.value or "1")
    return spec


def _title(thing: Thing, field: str) -> str:
    """Return what a field is called; the value of a reading goes by what was read."""
    if isinstance(thing, Reading) and field == "value":
        return choice_words(thing.quantity)
    return field_words(field)


def typed(title: str, value: Typed, spec: FieldSpec | None = None, *, about: str) -> Explanation:
    """Return the answer for what somebody typed: as entered, for whom, and the limits of the field.

    A date has no value; it is the day the answer stands for. A value by month has twelve inputs. `spec` gives
    unit and limits.
    """
    unit = spec.unit if spec is not None else ""
    number = None if value is None or isinstance(value, (date, tuple)) else float(value)
    if isinstance(value, tuple):
        named = [(f"{at:02d}", float(each)) for at, each in enumerate(value, start=1)]
    else:
        named = [] if number is None else [("value", number)]
    return Explanation(
        title=title,
        about=about,
        value=number,
        unit=unit,
        formula=Formula.AS_ENTERED,
        inputs=tuple(
            Input(name=name, value=each, unit=unit, origin=Origin.ENTERED, about=about)
            for name, each in named
        ),
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
    found = [(name, 1.0) for name in names]
    return replace(_by_name(title, found, "", about=about), unit=unit, formula=Formula.COUNT)


def totalled(title: str, parts: Iterable[tuple[str, float]], unit: str, *, about: str = "") -> Explanation:
    """Return the answer for a sum of amounts by name, such as places by batch; many small ones as others."""
    return _by_name(title, sorted(parts, key=_amount), unit, about=about)


def _by_name(title: str, parts: Sequence[tuple[str, float]], unit: str, *, about: str) -> Explanation:
    """Return a sum of amounts in their order, each under its name."""
    listed, rest = _listed(parts)
    inputs = [
        Input(name=name, value=float(amount), unit=unit, origin=Origin.COUNTED, about=about)
        for name, amount in listed
    ]
    if rest:
        inputs.append(worked("others", math.fsum(amount for _, amount in rest), unit))
    return Explanation(
        title=title,
        about=about,
        value=math.fsum(one.value for one in inputs),
        unit=unit,
        formula=Formula.SUM,
        inputs=tuple(inputs),
        notes=others_note(len(rest)),
    )


def _amount(part: tuple[str, float]) -> tuple[float, str]:
    return -abs(part[1]), part[0]


def of_figure(catalogue: Catalogue, *paths: str) -> Basis | None:
    """Return what stands behind a number that is a figure of the catalogue; None when there is none."""
    found = []
    for path in paths:
        try:
            found.append(catalogue.figure(path))
        except UnknownFigureError:
            continue
    return Basis(figures=tuple(found)) if found else None
