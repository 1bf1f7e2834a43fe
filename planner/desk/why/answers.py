"""Turns an answer to "why?" into words: value, formula, and a row for everything that goes in.

Pure: an explanation goes in, words come out. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.errors import UnknownFigureError
from planner.catalogue.figure import Figure
from planner.desk.book import figure_label, source_words, told_words, value_words
from planner.desk.conditions import condition_words
from planner.desk.pages import Basis, Fact
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.why.words import (
    formula_words,
    name_words,
    no_figure_words,
    note_words,
    symbol_words,
    title_text,
)
from planner.desk.words import NONE, day_words, number_words, unit_words
from planner.forecast.why.formulas import Formula
from planner.forecast.why.values import Explanation, Input, Origin

_FIGURES: Final = 5
_DEEPER: Final = "▸ "
_NO_SYMBOLS: Final = frozenset(
    {
        Formula.SUM,
        Formula.MEAN,
        Formula.LEAST,
        Formula.AS_ENTERED,
        Formula.NOTHING,
        Formula.COUNT,
        Formula.OF_BOOK,
        Formula.OWN_VALUE,
        Formula.CASE,
        Formula.PRINTED,
        Formula.TOLERANCE,
        Formula.COUNTED,
        Formula.MOST,
        Formula.VERDICT,
        Formula.SEARCHED,
        Formula.HIGH_END,
        Formula.CURVE,
        Formula.PERCENTILE,
    }
)
"""Formulas whose symbols say no more than their words."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """One answer in words; the payload of a row is the explanation behind it, or None."""

    title: str
    value: str
    formula: str
    symbols: str
    notes: tuple[str, ...]
    rows: tuple[Row, ...]


def answer_columns() -> tuple[Column, ...]:
    """Return the columns of the table of what goes in."""
    return (
        Column(title=tr("What goes in")),
        Column(title=tr("Value"), numeric=True),
        Column(title=tr("Where it comes from")),
    )


def answer_of(explanation: Explanation, catalogue: Catalogue) -> Answer:
    """Return an explanation in words."""
    formula = explanation.formula
    return Answer(
        title=title_words(explanation),
        value=_value_words(explanation),
        formula=formula_words(formula),
        symbols="" if formula in _NO_SYMBOLS else symbol_words(formula),
        notes=tuple(note_words(note) for note in explanation.notes),
        rows=tuple(_rows(explanation, catalogue)),
    )


def answer_of_basis(fact: Fact, basis: Basis, catalogue: Catalogue) -> Answer:
    """Return the figures that a fact stands on, where its sum is not kept."""
    return Answer(
        title=fact.label or fact.value,
        value=fact.value,
        formula=tr("worked out from these figures of the catalogue and what is entered for the farm"),
        symbols="",
        notes=(fact.note,) if fact.note else (),
        rows=tuple(
            _figure_row(figure.path, _spoken_path(figure), figure, catalogue) for figure in basis.figures
        ),
    )


def no_answer(fact: Fact, reason: str) -> Answer:
    """Return that nothing can be told of a fact, and why."""
    return Answer(
        title=fact.label or fact.value,
        value=fact.value,
        formula=tr("nothing is known of this number"),
        symbols="",
        notes=(no_figure_words(reason),),
        rows=(),
    )


def title_words(explanation: Explanation, *, within: str = "") -> str:
    """Return what an explanation is about, such as "Seeds · LET-12 · Tue 12 Jan 2027".

    `within` is what the answer around it is about, which is not said again.
    """
    title = title_text(explanation.title)
    parts = [title[:1].upper() + title[1:], explanation.about if explanation.about != within else ""]
    if explanation.on is not None:
        parts.append(day_words(explanation.on))
    return " · ".join(part for part in parts if part)


def _value_words(explanation: Explanation) -> str:
    """Return the value, or the day of an answer that is one, or what a verdict says."""
    if explanation.formula is Formula.VERDICT:
        return tr(explanation.about)
    if explanation.value is None and explanation.formula is Formula.AS_ENTERED and explanation.on:
        return day_words(explanation.on)
    if explanation.value is None and explanation.formula is Formula.AS_ENTERED and explanation.inputs:
        return tr("{many} numbers", many=number_words(len(explanation.inputs), digits=0))
    return amount_words(explanation.value, explanation.unit)


def amount_words(value: float | None, unit: str) -> str:
    """Return a value with its unit, to five figures."""
    if value is None:
        return tr("no figure")
    return f"{number_words(float(f'{value:.{_FIGURES}g}'))} {unit_words(unit)}".rstrip()


def _spoken_path(figure: Figure) -> str:
    return figure_label(figure.path.rpartition("/")[2])


def _rows(explanation: Explanation, catalogue: Catalogue) -> Iterator[Row]:
    """Yield inputs first, each with the explanation behind it, then parts that are no input."""
    left = list(explanation.children)
    for at, one in enumerate(explanation.inputs):
        behind = _behind(one, left)
        if behind is not None:
            left.remove(behind)
        yield _input_row(f"input {at}", one, behind, catalogue)
    for at, child in enumerate(left):
        name = title_words(child, within=explanation.about)
        origin = tr("entered") if _is_typed(child) else tr("worked out")
        texts = (_DEEPER + name, _value_words(child), origin)
        yield _row(f"part {at}", texts, value=child.value, payload=child)


def _is_typed(child: Explanation) -> bool:
    """Tell whether an answer is what somebody typed, and nothing else."""
    typed = all(one.origin is Origin.ENTERED for one in child.inputs)
    return child.formula is Formula.AS_ENTERED and typed


def _behind(one: Input, children: list[Explanation]) -> Explanation | None:
    """Return the only child that explains an input: it has its value and its unit."""
    if one.origin is not Origin.WORKED_OUT:
        return None
    same = [child for child in children if child.value == one.value and child.unit == one.unit]
    return same[0] if len(same) == 1 else None


def _input_row(key: str, one: Input, behind: Explanation | None, catalogue: Catalogue) -> Row:
    figure = _figure(one, catalogue)
    if figure is not None and one.value == figure.value:
        return _figure_row(key, name_words(one.name), figure, catalogue)
    said = one.name if one.origin is Origin.COUNTED else name_words(one.name)
    name = (_DEEPER if behind is not None else "") + said
    return _row(
        key,
        (name, amount_words(one.value, one.unit), _origin_words(one, figure, catalogue)),
        value=one.value,
        payload=behind,
    )


def _figure(one: Input, catalogue: Catalogue) -> Figure | None:
    if not one.path:
        return None
    try:
        return catalogue.figure(one.path)
    except UnknownFigureError:
        return None


def _origin_words(one: Input, figure: Figure | None, catalogue: Catalogue) -> str:
    if figure is not None:
        return source_words(figure, catalogue)
    if one.origin is Origin.FIGURE:
        return told_words(one.source, one.confidence, catalogue)
    if one.origin is Origin.ENTERED:
        return tr("entered for {about}", about=one.about) if one.about else tr("entered")
    if one.origin is Origin.COUNTED:
        return tr("counted")
    return tr("worked out")


def _figure_row(key: str, name: str, figure: Figure, catalogue: Catalogue) -> Row:
    source = source_words(figure, catalogue)
    said = f"{source}: {condition_words(figure.conditions)}" if figure.conditions else source
    return _row(key, (name, value_words(figure), said), value=figure.value, payload=None)


def _row(key: str, texts: tuple[str, str, str], *, value: float | None, payload: Explanation | None) -> Row:
    name = texts[0].removeprefix(_DEEPER)
    spoken = ", ".join((name, texts[1] or NONE, texts[2]))
    deeper = tr("{spoken}; Enter goes into it", spoken=spoken) if payload is not None else spoken
    return Row(id=key, texts=texts, sort=(name, value, texts[2]), spoken=deeper, payload=payload)
