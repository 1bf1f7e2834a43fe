"""What a published case answers when it is asked why: ours, the print, how far apart, how far allowed.

Pure: results go in, answers come out. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.pages import Ask, Fact
from planner.desk.say import tr
from planner.desk.words import number_words
from planner.forecast.verify.cases import Held
from planner.forecast.verify.run import CaseResult, LackingResult, Verdict, counts_of
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import figure_input
from planner.forecast.why.values import Explanation, Input, Note, NoteKind, Origin

_PERCENT: Final = 100.0
_SURE: Final = {Held.READ: "read", Held.DERIVED: "read", Held.MEMORY: "memory"}
"""How the catalogue calls what a case calls otherwise."""


def case_asks(result: CaseResult, book: Catalogue | None = None) -> tuple[Ask | None, ...]:
    """Return what the columns of the table of cases can be asked, in their order.

    `book` has the figures of the program that went in.
    """
    return None, None, ours(result, book), published(result), difference(result, book), tolerance(result)


def ours(result: CaseResult, book: Catalogue | None = None) -> Explanation:
    """Return what our figure was worked out from: what the print gives, and figures of the catalogue."""
    given = tuple(_given(result, name, value) for name, value in _numbers(result))
    notes = [Note(kind=NoteKind.COMPUTED_BY, values=(("formula", result.formula),))]
    if result.ranges:
        spread = (("low", result.ours_low), ("high", result.ours_high))
        notes.append(Note(kind=NoteKind.SPREAD, values=spread))
    return Explanation(
        title="our figure",
        about=result.title,
        value=result.ours,
        unit=result.unit,
        formula=Formula.CASE,
        inputs=(*given, *_used(result, book)),
        notes=tuple(notes),
    )


def _used(result: CaseResult, book: Catalogue | None) -> tuple[Input, ...]:
    """Return the figures of the program that went in, each under its name."""
    if book is None:
        return ()
    return tuple(
        figure_input(book, path.rpartition("/")[2], path) for path in result.figures if path in book.figures
    )


def _numbers(result: CaseResult) -> tuple[tuple[str, float], ...]:
    """Return the numbers that were given, those of a row one by one; words are left out."""
    found: list[tuple[str, float]] = []
    for name, value in result.inputs:
        if isinstance(value, tuple):
            found.extend((f"{name} {at}", float(each)) for at, each in enumerate(value, start=1))
        elif not isinstance(value, str):
            found.append((name, float(value)))
    return tuple(found)


def _given(result: CaseResult, name: str, value: float) -> Input:
    return Input(
        name=name,
        value=value,
        unit="",
        origin=Origin.FIGURE,
        source=result.source,
        confidence=_SURE[result.confidence],
    )


def subject_answer(title: str, cases: Sequence[CaseResult | LackingResult]) -> Explanation:
    """Return how many cases a subject has, and how they came out."""
    results = [each for each in cases if isinstance(each, CaseResult)]
    inputs = [
        Input(name=verdict.value, value=float(many), unit="", origin=Origin.COUNTED)
        for verdict in Verdict
        if (many := sum(each.verdict is verdict for each in results))
    ]
    lacking = len(cases) - len(results)
    if lacking:
        inputs.append(Input(name="not computed", value=float(lacking), unit="", origin=Origin.COUNTED))
    return Explanation(
        title="published cases",
        about=title,
        value=float(len(cases)),
        unit="",
        formula=Formula.SUM,
        inputs=tuple(inputs),
    )


def summary_facts(results: Sequence[CaseResult], lacking: Sequence[LackingResult]) -> tuple[Fact, ...]:
    """Return what is counted on top: how cases came out, how much they prove, what judges nothing."""
    counts = counts_of(results, lacking)
    came_out = ((tr("within"), counts.within), (tr("outside"), counts.outside))
    proof = (
        (tr("Independent"), counts.independent),
        (tr("Formula only"), counts.formula_only),
        (tr("Own source"), counts.own_source),
    )
    shown = (
        (tr("from memory"), counts.from_memory),
        (tr("assumed"), counts.assumed),
        (tr("not computed"), counts.not_computed),
    )
    return (
        _sum_fact(tr("Verdict"), came_out),
        _sum_fact(tr("How much it proves"), proof),
        _sum_fact(tr("Shown only"), shown),
    )


def _sum_fact(label: str, parts: Sequence[tuple[str, int]]) -> Fact:
    inputs = tuple(
        Input(name=name, value=float(many), unit="", origin=Origin.COUNTED) for name, many in parts
    )
    total = sum(many for _, many in parts)
    answer = Explanation(
        title="published cases",
        about=label,
        value=float(total),
        unit="",
        formula=Formula.SUM,
        inputs=inputs,
    )
    return Fact(label=label, value=number_words(total), ask=answer)


def published(result: CaseResult) -> Explanation:
    """Return the figure that somebody else printed, and where."""
    return Explanation(
        title="published figure",
        about=result.title,
        value=result.published,
        unit=result.unit,
        formula=Formula.PRINTED,
        inputs=(_given(result, "value", result.published),),
        notes=(Note(kind=NoteKind.PUBLISHED, values=(("line", result.publication),)),),
    )


def difference(result: CaseResult, book: Catalogue | None = None) -> Explanation:
    """Return by how much ours differs: in percent, or in its unit where the print is 0."""
    plain = not result.published
    gap = result.ours - result.published
    return Explanation(
        title="difference from print",
        about=result.title,
        value=gap if plain else gap / abs(result.published) * _PERCENT,
        unit=result.unit if plain else "%",
        formula=Formula.FROM_PRINT if plain else Formula.FROM_PRINT_PERCENT,
        inputs=(
            Input(name="ours", value=result.ours, unit=result.unit, origin=Origin.WORKED_OUT),
            _given(result, "published", result.published),
        ),
        children=(ours(result, book), published(result)),
    )


def tolerance(result: CaseResult) -> Explanation:
    """Return how far ours may be from the print, and what says so."""
    said = (("reason", result.reason.value),)
    return Explanation(
        title="tolerance",
        about=result.title,
        value=result.tolerance,
        unit=result.unit,
        formula=Formula.TOLERANCE,
        notes=(Note(kind=NoteKind.TOLERATED_FOR, values=said),),
    )
