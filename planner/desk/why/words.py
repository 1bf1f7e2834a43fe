"""Says in the language of the window what an answer to "why?" is built of: titles, names, formulas, notes.

The texts are those of the forecast and of paper; `.ci/why_texts.py` gathers them, so that none is forgotten.
Must know nothing of widgets.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import date
from typing import Final

from planner.desk.say import careful, tr
from planner.desk.words import day_words, number_words, short_day_words
from planner.forecast.why.formulas import Formula
from planner.forecast.why.reasons import Reason
from planner.forecast.why.values import Note, NoteKind
from planner.paper.linguist import form_pattern
from planner.paper.reasons import FORMULA_WORDS, NOTE_WORDS, REASON_WORDS, TO_THE_END, UNTIL

_FIGURES: Final = 4
_PERCENT: Final = 100.0
_UNIT_IN_NAME: Final = re.compile(
    r"_(g_per_m2_day|g_per_m2_d|mol_per_m2_d|g_per_day|g_per_plant|g_per_h|mg_per_l|ms_per_cm|kg_per_m3|m2_per_kg"
    r"|m2_per_m3|eq_per_kg|per_m2|per_day|m2|mol|kg|cm|eq|g|l|c|m)\b"
)
_SYMBOL: Final = re.compile(r"[A-Za-z][A-Za-z0-9_]*")
_PROSE: Final = re.compile(r"[a-z0-9'] [a-z]")
_DAY: Final = re.compile(r"\d{4}-\d\d-\d\d")
_OF_CARE: Final = frozenset({NoteKind.NEVER_ABOVE, NoteKind.TREATED_ON, NoteKind.BARRED})
"""Notes that what people eat hangs on."""
OPERATIONS: Final = frozenset({"max", "min", "round", "response", "ln"})
"""Words in formulas that mathematics has in every language."""
TITLE_FORMS: Final = (
    "range of {what}",
    "low end of {what}",
    "high end of {what}",
    "more {what}",
    "less {what}",
    "area of {what}",
    "change of {what}",
    "spread of {what}",
    "flag: {what}",
    "to {what}",
    "answer for {what}",
    "{what} a week",
    "{what} days",
    "{what} end of the band",
    "{what} later than by the book",
    "{what}s of some weeks",
    "{what}s of a batch",
)
"""Titles that are made of another title or of the name of a thing; one that is known whole goes before."""
NO_FIGURE_FORMS: Final = (
    "no alkalinity is foreseen for {day}.",
    "too few readings of alkalinity tell what acid there was.",
    "too few readings of {what} tell where it goes.",
    "no regular test of {what} was made yet.",
    "no filter of {name} has a surface entered.",
    "no temperature of the water of {name} is known.",
    "nothing of {element} is wanted in that week.",
    "the calibrations of {name} are not watched.",
    "the solids batch {name} was emptied before the plan began.",
    "{name} is not picked on that day.",
)
"""Why there is no figure that could be told of; what is not here is a fault of the question."""
NAME_FORMS: Final = ("unit {unit} places {first} to {last}",)
"""Names of inputs that are made of numbers."""


def readable(text: str) -> str:
    """Return names of a formula without their units, which stand beside the values.

    >>> readable("make_up_litres_per_day × iron_mg_per_l")
    'make up litres × iron'
    """
    return _UNIT_IN_NAME.sub("", text).replace("_", " ")


def is_prose(formula: Formula) -> bool:
    """Tell whether a formula is a sentence, to be translated as one, and not built of symbols."""
    return _PROSE.search(formula.value) is not None


def symbols_in(formula: Formula) -> tuple[str, ...]:
    """Return the names of a formula as they are read, each once."""
    found = dict.fromkeys(_SYMBOL.findall(formula.value))
    return tuple(readable(name) for name in found if name not in OPERATIONS and len(name) > 1)


def name_words(name: str) -> str:
    """Return what an input is called."""
    return by_form(readable(name), NAME_FORMS)


def symbol_words(formula: Formula) -> str:
    """Return a formula in symbols that are words."""
    if is_prose(formula):
        return tr(readable(formula.value))
    return _SYMBOL.sub(_symbol, formula.value)


def _symbol(match: re.Match[str]) -> str:
    return match[0] if match[0] in OPERATIONS else name_words(match[0])


def title_text(title: str) -> str:
    """Return a title; one that is made of another is translated part by part."""
    return by_form(readable(title), TITLE_FORMS)


def no_figure_words(reason: str) -> str:
    """Return why there is no figure."""
    return by_form(reason, NO_FIGURE_FORMS)


def by_form(text: str, forms: tuple[str, ...], *, part_words: Callable[[str], str] | None = None) -> str:
    """Return a text in translation: whole where it is known whole, else by the first form that fits.

    What stands in the blanks of a form is translated by `part_words`, without it by the same forms.
    """
    said = tr(text)
    if said != text:
        return said
    for form in forms:
        match = form_pattern(form).fullmatch(text)
        if match is not None:
            parts = match.groupdict().items()
            return tr(
                form,
                **{name: part_words(part) if part_words else by_form(part, forms) for name, part in parts},
            )
    return said


def note_words(note: Note) -> str:
    """Return what is to be borne in mind."""
    say = careful if note.kind in _OF_CARE else tr
    return say(NOTE_WORDS[note.kind], **{name: _value_words(value) for name, value in note.values})


def formula_words(formula: Formula) -> str:
    """Return what is done with the inputs, in words."""
    return (careful if formula is Formula.NOT_CLEARED else tr)(FORMULA_WORDS[formula])


def _value_words(value: float | str) -> str:
    if not isinstance(value, str):
        return number_words(float(f"{value:.{_FIGURES}g}"))
    return day_words(date.fromisoformat(value)) if _DAY.fullmatch(value) else tr(value)


def reason_words(reason: Reason, *, beside: date) -> str:
    """Return why an element is short, in one sentence; the year is left out of days in that of `beside`."""
    words = {name: _amount_words(name, value) for name, value in reason.values}
    until = reason.until_on
    words["about"] = reason.about
    words["on"] = _day_beside(reason.on, beside) if reason.on else ""
    words["span"] = tr(UNTIL, on=_day_beside(until, beside)) if until else tr(TO_THE_END)
    return tr(REASON_WORDS[reason.kind], **words)


def _amount_words(name: str, value: float | str) -> str:
    if isinstance(value, str):
        return value
    if name.endswith("_share"):
        return f"{number_words(value * _PERCENT, digits=0)}\u00a0%"
    return number_words(value, digits=0)


def _day_beside(on: date, beside: date) -> str:
    return short_day_words(on) if on.year == beside.year else day_words(on)
