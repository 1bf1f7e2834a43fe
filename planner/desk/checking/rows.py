"""Published cases as ready rows and details: sign and word of the verdict, our figure, the printed one.

Pure: results go in, words come out. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from enum import Enum
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.checking.answers import case_asks, difference, ours, published, tolerance
from planner.desk.pages import Fact, Page, Section
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import NONE, number_words, with_unit
from planner.forecast.verify.cases import Held, Input, Reason
from planner.forecast.verify.run import CaseResult, LackingResult, Verdict, counts_of
from planner.forecast.verify.run import Standing as Proof

Payload = CaseResult | LackingResult

_DIGITS: Final = 5
_RANGE_DIGITS: Final = 3
_PERCENT: Final = 100.0


class Standing(Enum):
    """What a row says of the program, the gravest first."""

    OUTSIDE = "outside"
    LACKING = "not computed"
    ASSUMED = "assumed"
    MEMORY = "from memory"
    ALONE = "within"
    FORMULA = "formula only"
    OWN = "own source"


_SIGNS: Final = {
    Standing.OUTSIDE: "✗",
    Standing.LACKING: "–",
    Standing.ASSUMED: "?",
    Standing.MEMORY: "≈",
    Standing.ALONE: "✓",
    Standing.FORMULA: "✓",
    Standing.OWN: "✓",
}
_ORDER: Final = tuple(Standing)
_STANDINGS: Final = {
    Verdict.OUTSIDE: Standing.OUTSIDE,
    Verdict.ASSUMED: Standing.ASSUMED,
    Verdict.SHOWN: Standing.MEMORY,
}
_WITHIN: Final = {
    Proof.INDEPENDENT: Standing.ALONE,
    Proof.FORMULA: Standing.FORMULA,
    Proof.OWN_SOURCE: Standing.OWN,
}
_WORDS: Final = {
    Standing.OUTSIDE: "outside",
    Standing.LACKING: "not computed",
    Standing.ASSUMED: "assumed",
    Standing.MEMORY: "from memory",
    Standing.ALONE: "within",
    Standing.FORMULA: "formula only",
    Standing.OWN: "own source",
}
_MEANINGS: Final = {
    Standing.OUTSIDE: "Further from the published figure than the tolerance allows",
    Standing.LACKING: "The program has no means to work it out; what is lacking is said",
    Standing.ASSUMED: "The publication is silent on something that counts; shown, but judges nothing",
    Standing.MEMORY: "The published figure is held from memory; shown, but judges nothing",
    Standing.ALONE: "Within the tolerance, and no figure of the program comes from this publication",
    Standing.FORMULA: "Within the tolerance, but no figure of the program went in: only a formula is checked",
    Standing.OWN: "Within the tolerance, but a figure of the program comes from this very publication",
}
_REASONS: Final = {
    Reason.ROUNDING: "rounding of the print",
    Reason.ARITHMETIC: "exact arithmetic",
    Reason.STATED: "stated by the source",
    Reason.SPREAD: "spread the source gives",
    Reason.PHYSICS: "physics",
    Reason.FIELD: "field conditions",
    Reason.AIM: "aim of the check",
    Reason.ORDER: "order only",
}
_HELD: Final = {
    Held.READ: "read in the source",
    Held.DERIVED: "worked out from what was read in the source",
    Held.MEMORY: "from memory: shown, but judges nothing",
}


def case_columns() -> tuple[Column, ...]:
    """Return the columns of the table of cases."""
    return (
        Column(title=tr("Verdict")),
        Column(title=tr("Case")),
        Column(title=tr("Ours"), numeric=True),
        Column(title=tr("Published"), numeric=True),
        Column(title=tr("Difference"), numeric=True),
        Column(title=tr("Tolerance"), numeric=True),
    )


def standing_of(payload: Payload) -> Standing:
    """Return what a case, or a result that is not computed, says of the program."""
    if isinstance(payload, LackingResult):
        return Standing.LACKING
    return _STANDINGS.get(payload.verdict, _WITHIN[payload.standing])


def case_rows(payloads: Sequence[Payload], theme: Theme, book: Catalogue | None = None) -> tuple[Row, ...]:
    """Return one row for each case and each result that is not computed; `book` has the figures used."""
    return tuple(_row(at, payload, theme, book) for at, payload in enumerate(payloads))


def _row(at: int, payload: Payload, theme: Theme, book: Catalogue | None) -> Row:
    standing = standing_of(payload)
    if isinstance(payload, LackingResult):
        texts: tuple[str, ...] = (payload.title, NONE, payload.published, NONE, NONE)
        sort: tuple[object, ...] = (payload.title, _NOWHERE, _NOWHERE, _NOWHERE, _NOWHERE)
    else:
        texts, sort = _figures(payload)
    heard = tr("ours {ours}, published {published}", ours=texts[1], published=texts[2])
    return Row(
        id=payload.key,
        texts=(standing_words(standing), *texts),
        sort=(_ORDER.index(standing) * _PLENTY + at, *sort),
        spoken=", ".join((tr(_WORDS[standing]), payload.title, heard)),
        payload=payload,
        ink={Standing.OUTSIDE: theme.wrong, Standing.ALONE: None}.get(standing, theme.muted),
        asks=case_asks(payload, book) if isinstance(payload, CaseResult) else (),
    )


def _figures(result: CaseResult) -> tuple[tuple[str, ...], tuple[object, ...]]:
    """Return title, ours, published, difference and tolerance as texts, and what each is sorted by."""
    texts = (
        result.title,
        ours_words(result),
        with_unit(_short(result.published), result.unit),
        _difference_short(result),
        tolerance_words(result),
    )
    share = abs(result.gap / result.published) if result.published else 0.0
    return texts, (result.title, result.ours, result.published, share, result.tolerance)


_PLENTY: Final = 1_000_000
"""More than there are cases: verdicts are sorted first, then by place in the files."""
_NOWHERE: Final = float("-inf")
"""Where a row without a figure is sorted: below all that have one."""


def standing_words(standing: Standing) -> str:
    """Return what a row says of the program as a sign and a word."""
    return f"{_SIGNS[standing]} {tr(_WORDS[standing])}"


def standing_meaning(standing: Standing) -> str:
    """Return in a sentence what a standing means."""
    return tr(_MEANINGS[standing])


def ours_words(result: CaseResult) -> str:
    """Return our figure with its unit, or its range over what is assumed."""
    if not result.ranges:
        return with_unit(_short(result.ours), result.unit)
    low, high = (float(f"{value:.{_RANGE_DIGITS}g}") for value in (result.ours_low, result.ours_high))
    return tr("{low} to {high}", low=number_words(low), high=with_unit(high, result.unit))


def difference_words(result: CaseResult) -> str:
    """Return by how much our figure, or the nearest of a range, differs; in percent too where it can be."""
    plain = _signed(_short(result.gap))
    return f"{plain} ({_difference_short(result, digits=2)})" if result.published else plain


def _difference_short(result: CaseResult, *, digits: int = 1) -> str:
    """Return the difference in percent alone, or in its unit where the published figure is 0."""
    if not result.published:
        return _signed(_short(result.gap))
    return f"{_signed(result.gap / abs(result.published) * _PERCENT, digits=digits)} %"


def _signed(value: float, *, digits: int | None = None) -> str:
    """Return a number with its sign, and without one where it is nought as it is shown."""
    shown = value if digits is None else round(value, digits) + 0.0
    words = number_words(shown) if digits is None else number_words(shown, digits=digits)
    return f"+{words}" if shown > 0 else words


def tolerance_words(result: CaseResult) -> str:
    """Return how far ours may be from the published figure."""
    return tr(_REASONS[Reason.ORDER]) if result.reason is Reason.ORDER else f"± {_figure(result.tolerance)}"


def _short(value: float) -> float:
    return float(f"{value:.{_DIGITS}g}")


def _figure(value: float) -> str:
    return number_words(_short(value))


def counts_words(results: Sequence[CaseResult]) -> str:
    """Say how many cases were judged and how they came out."""
    counts = counts_of(results)
    return tr(
        "{cases} published figures worked out again: {within} within tolerance, {outside} outside.",
        cases=number_words(counts.cases),
        within=number_words(counts.within),
        outside=number_words(counts.outside),
    )


def proof_words(results: Sequence[CaseResult], lacking: Sequence[LackingResult]) -> str:
    """Say how much the judged cases prove, and what is shown but judges nothing."""
    counts = counts_of(results, lacking)
    return tr(
        "{alone} of them are independent, {good} of these within; {plain} check a formula only; {own} lean "
        "on a figure from the very publication that judges them. Shown only: {memory} from memory, {assumed} "
        "resting on an assumption, {lacking} that the program cannot work out.",
        alone=number_words(counts.independent),
        good=number_words(counts.independent_within),
        plain=number_words(counts.formula_only),
        own=number_words(counts.own_source),
        memory=number_words(counts.from_memory),
        assumed=number_words(counts.assumed),
        lacking=number_words(counts.not_computed),
    )


def searched_words(payload: Payload) -> str:
    """Return everything of a row that a search looks through, in small letters."""
    parts = [payload.key, payload.title, payload.source, payload.publication, payload.note, payload.area]
    if isinstance(payload, CaseResult):
        parts += [payload.formula, payload.farm, *(f"{name} {value}" for name, value in payload.inputs)]
    else:
        parts += [payload.published, payload.lacks]
    return " ".join((standing_words(standing_of(payload)), *parts)).lower()


def case_page(payload: Payload, area: str, book: Catalogue | None = None) -> Page:
    """Return everything about one case."""
    subtitle = f"{area} · {standing_words(standing_of(payload))}"
    sections = (
        _lacking_sections(payload)
        if isinstance(payload, LackingResult)
        else tuple(_case_sections(payload, book))
    )
    return Page(title=payload.title, subtitle=subtitle, sections=sections)


def _lacking_sections(each: LackingResult) -> tuple[Section, ...]:
    facts = [
        Fact(label=tr("Not computed"), value=each.lacks),
        Fact(label=tr("Published"), value=each.published, note=tr(_HELD[each.confidence])),
        *_noted(tr("Note"), each.note),
        Fact(label=tr("Source"), value=each.publication),
    ]
    return (Section(title="", facts=tuple(facts)),)


def _case_sections(result: CaseResult, book: Catalogue | None) -> Iterator[Section]:
    """Yield first why it is outside, then figures and source, how much it proves, and what went in."""
    outside = result.verdict is Verdict.OUTSIDE
    why = result.note.removeprefix("OUTSIDE as shipped. ")
    words = tr("Outside the tolerance. {why}", why=why).strip()
    warning = Fact(label="", value=words, ask=difference(result, book))
    yield Section(title="", warnings=(warning,) if outside else (), facts=tuple(_facts(result, book)))
    yield from _list(tr("How much it proves"), tuple(_proof(result)))
    yield from _list(tr("What went in"), tuple(_inputs(result)))
    figures = tuple(Fact(label="", value=path) for path in result.figures)
    yield from _list(tr("Figures of the catalogue used"), figures)


def _list(title: str, facts: tuple[Fact, ...]) -> tuple[Section, ...]:
    return (Section(title=title, facts=facts),) if facts else ()


def _facts(result: CaseResult, book: Catalogue | None) -> Iterator[Fact]:
    yield Fact(
        label=tr("Ours"), value=ours_words(result), note=_between_words(result), ask=ours(result, book)
    )
    yield Fact(
        label=tr("Published"),
        value=with_unit(_short(result.published), result.unit),
        note=tr(_HELD[result.confidence]),
        ask=published(result),
    )
    yield Fact(label=tr("Difference"), value=difference_words(result), ask=difference(result, book))
    yield Fact(
        label=tr("Tolerance"),
        value=tolerance_words(result),
        note=_reason_words(result),
        ask=tolerance(result),
    )
    if result.span:
        yield Fact(label=tr("Our range"), value=_reach_words(result), note=_reached_words(result))
    if result.verdict is not Verdict.OUTSIDE:
        yield from _noted(tr("Note"), result.note)
    yield Fact(label=tr("Source"), value=result.publication)


def _reach_words(result: CaseResult) -> str:
    """Return how far ours may lie by the ranges of the figures behind it."""
    assert result.span is not None
    low, high = (float(f"{value:.{_RANGE_DIGITS}g}") for value in (result.span.low, result.span.high))
    return tr("{low} to {high}", low=number_words(low), high=with_unit(high, result.unit))


def _reached_words(result: CaseResult) -> str:
    if result.in_span:
        return tr(
            "by the low and high of the figures behind it: it holds what is published, yet counts as outside"
        )
    return tr("by the low and high of the figures behind it: what is published lies beyond")


def _reason_words(result: CaseResult) -> str:
    if result.reason is Reason.ORDER:
        return tr("on the same side of 1 as the published ratio")
    return tr(_REASONS[result.reason])


def _between_words(result: CaseResult) -> str:
    if not result.ranges:
        return ""
    likely = with_unit(_short(result.ours), result.unit)
    return tr("over what is assumed, {likely} in between; agreement anywhere counts", likely=likely)


def _proof(result: CaseResult) -> Iterator[Fact]:
    if result.standing is Proof.INDEPENDENT:
        alone = tr("No figure of the program that went in comes from this publication.")
        yield Fact(label=tr("Independent"), value=alone)
    elif result.standing is Proof.FORMULA:
        plain = tr("No figure of the program went in: only the formula is checked.")
        yield Fact(label=tr("Formula only"), value=plain)
    else:
        own = "\n".join((*((result.fitted,) if result.fitted else ()), *result.own_figures))
        label = tr("Own source")
        yield Fact(label=label, value=own, note=tr("drawn from this publication; it shows care, not truth"))
    if result.assumed:
        yield Fact(label=tr("Assumed"), value=result.assumed.words)
        for name, low, high in result.assumed.ranges:
            between = tr("{low} to {high}", low=number_words(low), high=number_words(high))
            yield Fact(label=name.replace("_", " "), value=between)


def _noted(label: str, note: str) -> tuple[Fact, ...]:
    return (Fact(label=label, value=note),) if note else ()


def _inputs(result: CaseResult) -> Iterator[Fact]:
    for name, value in result.inputs:
        yield Fact(label=name.replace("_", " "), value=_said(value))
    yield Fact(label=tr("Computation"), value=result.formula)
    yield from _noted(tr("Farm"), result.farm)
    yield from _noted(tr("Against"), result.against)


def _said(value: Input) -> str:
    if isinstance(value, tuple):
        return " / ".join(number_words(each) for each in value) or NONE
    return value if isinstance(value, str) else number_words(value)
