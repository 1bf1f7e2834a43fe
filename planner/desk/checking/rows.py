"""Published cases as ready rows and details: sign and word of the verdict, our figure, the printed one.

Pure: results go in, words come out. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Final

from planner.desk.pages import Fact, Page, Section
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import NONE, number_words, with_unit
from planner.forecast.verify.cases import Held, Input, Reason
from planner.forecast.verify.run import CaseResult, Verdict, counts_of

_DIGITS: Final = 5
_PERCENT: Final = 100.0
_SIGNS: Final = {Verdict.OUTSIDE: "✗", Verdict.ASSUMED: "?", Verdict.SHOWN: "≈", Verdict.WITHIN: "✓"}
_ORDER: Final = tuple(_SIGNS)
_VERDICTS: Final = {
    Verdict.OUTSIDE: "outside",
    Verdict.ASSUMED: "assumed",
    Verdict.SHOWN: "from memory",
    Verdict.WITHIN: "within",
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
        Column(title=tr("Area")),
        Column(title=tr("Case")),
        Column(title=tr("Ours"), numeric=True),
        Column(title=tr("Published"), numeric=True),
        Column(title=tr("Difference"), numeric=True),
        Column(title=tr("Tolerance"), numeric=True),
        Column(title=tr("Source")),
    )


def case_rows(results: Sequence[CaseResult], titles: Mapping[str, str], theme: Theme) -> tuple[Row, ...]:
    """Return one row for each case; `titles` are those of the areas."""
    return tuple(_row(at, result, titles, theme) for at, result in enumerate(results))


def _row(at: int, result: CaseResult, titles: Mapping[str, str], theme: Theme) -> Row:
    area = titles.get(result.area, result.area)
    texts = (
        verdict_words(result.verdict),
        area,
        result.title,
        with_unit(_short(result.ours), result.unit),
        with_unit(_short(result.published), result.unit),
        difference_words(result),
        f"± {_figure(result.tolerance)}",
        result.source,
    )
    spoken = ", ".join(
        (
            tr(_VERDICTS[result.verdict]),
            result.title,
            tr("ours {ours}, published {published}", ours=texts[3], published=texts[4]),
        )
    )
    share = abs(result.relative_difference or 0.0)
    sort = (
        _ORDER.index(result.verdict) * _PLENTY + at,
        area,
        result.title,
        result.ours,
        result.published,
        share,
        result.tolerance,
        result.source,
    )
    inks = {Verdict.OUTSIDE: theme.wrong, Verdict.SHOWN: theme.muted}
    return Row(
        id=result.key, texts=texts, sort=sort, spoken=spoken, payload=result, ink=inks.get(result.verdict)
    )


_PLENTY: Final = 1_000_000
"""More than there are cases: verdicts are sorted first, then by place in the files."""


def verdict_words(verdict: Verdict) -> str:
    """Return a verdict as a sign and a word."""
    return f"{_SIGNS[verdict]} {tr(_VERDICTS[verdict])}"


def difference_words(result: CaseResult) -> str:
    """Return by how much our figure differs, in percent where the published one is not 0."""
    sign = "+" if result.difference > 0 else ""
    plain = sign + _figure(result.difference)
    if result.relative_difference is None:
        return plain
    percent = number_words(result.relative_difference * _PERCENT, digits=2)
    return f"{plain} ({sign}{percent} %)"


def _short(value: float) -> float:
    return float(f"{value:.{_DIGITS}g}")


def _figure(value: float) -> str:
    return number_words(_short(value))


def counts_words(results: Sequence[CaseResult]) -> str:
    """Say how many cases there are and how they came out."""
    counts = counts_of(results)
    return tr(
        "{cases} published figures worked out again: {within} within tolerance, {outside} outside; "
        "{memory} more are held from memory and only shown.",
        cases=counts.cases,
        within=counts.within,
        outside=counts.outside,
        memory=counts.from_memory,
    )


def case_page(result: CaseResult, area: str) -> Page:
    """Return everything about one case."""
    warnings = (tr("Outside the tolerance"),) if result.verdict is Verdict.OUTSIDE else ()
    return Page(
        title=result.title,
        subtitle=f"{area} · {verdict_words(result.verdict)}",
        sections=(
            Section(title="", warnings=warnings, facts=tuple(_facts(result))),
            *_list(tr("What went in"), tuple(_inputs(result))),
            *_list(
                tr("Figures of the catalogue used"),
                tuple(Fact(label="", value=path) for path in result.figures),
            ),
        ),
    )


def _list(title: str, facts: tuple[Fact, ...]) -> tuple[Section, ...]:
    return (Section(title=title, facts=facts),) if facts else ()


def _facts(result: CaseResult) -> Iterator[Fact]:
    yield Fact(label=tr("Ours"), value=with_unit(_short(result.ours), result.unit))
    yield Fact(
        label=tr("Published"),
        value=with_unit(_short(result.published), result.unit),
        note=tr(_HELD[result.confidence]),
    )
    yield Fact(label=tr("Difference"), value=difference_words(result))
    yield Fact(
        label=tr("Tolerance"), value=f"± {_figure(result.tolerance)}", note=tr(_REASONS[result.reason])
    )
    yield Fact(label=tr("Source"), value=result.publication)
    yield Fact(label=tr("Computation"), value=result.formula)
    if result.farm:
        yield Fact(label=tr("Farm"), value=result.farm)
    if result.note:
        yield Fact(label=tr("Note"), value=result.note)


def _inputs(result: CaseResult) -> Iterator[Fact]:
    for name, value in result.inputs:
        yield Fact(label=name.replace("_", " "), value=_said(value))


def _said(value: Input) -> str:
    if isinstance(value, tuple):
        return " / ".join(number_words(each) for each in value) or NONE
    return value if isinstance(value, str) else number_words(value)
