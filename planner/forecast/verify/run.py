"""Works through published cases and says of each how far the program is from print."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum
from itertools import product
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.errors import CatalogueError, known_words
from planner.farm.farm import Farm
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast
from planner.forecast.verify.cases import Area, Assumed, Case, Held, Input, Reason
from planner.forecast.verify.computations import COMPUTATIONS, SYSTEM_COMPUTATIONS
from planner.forecast.verify.ledger import MASSES, Inputs, Ledger, case_error
from planner.forecast.verify.on_systems import Scene
from planner.forecast.verify.span import Span, span_of

Systems = Mapping[str, tuple[Farm, Forecast]]

_NOISE: Final = 1e-9
"""Share of a figure that rounding in the machine may move it by."""


class Verdict(StrEnum):
    """What is said of a case."""

    WITHIN = "within"
    OUTSIDE = "outside"
    SHOWN = "shown from memory"
    ASSUMED = "rests on an assumption"


class Standing(StrEnum):
    """How much agreement of a case would prove."""

    INDEPENDENT = "independent"
    FORMULA = "formula only"
    OWN_SOURCE = "own source"


@dataclass(frozen=True, slots=True, kw_only=True)
class CaseResult:
    """A case and what the program makes of it.

    `figures` are the paths of the shipped figures that went in, in the order they were asked for;
    `own_figures` those of them that come from the publication itself. `difference` is ours less published
    and, like `tolerance`, in `unit`; `relative_difference` is its share of the published figure, None where
    that is 0. `ours_low` and `ours_high` are the ends of ours over all that is assumed, and equal to `ours`
    where nothing is. `within` is None for a figure that judges nothing: one from memory, or one that rests
    on an assumption whose range is not known. `span` is how far ours may lie by the ranges of `figures`: only
    told of what is outside, and no excuse.
    """

    key: str
    area: str
    title: str
    note: str
    formula: str
    inputs: tuple[tuple[str, Input], ...]
    figures: tuple[str, ...]
    unit: str
    ours: float
    published: float
    difference: float
    relative_difference: float | None
    tolerance: float
    reason: Reason
    within: bool | None
    source: str
    publication: str
    confidence: Held
    farm: str
    against: str
    own_figures: tuple[str, ...]
    fitted: str
    assumed: Assumed | None
    ours_low: float
    ours_high: float
    span: Span | None = None

    @property
    def in_span(self) -> bool:
        """Whether it is outside, but by the ranges of the figures behind it ours may be what is printed."""
        return self.span is not None and self.span.holds(self.published)

    @property
    def verdict(self) -> Verdict:
        """What is said of the case."""
        if self.within is None:
            return Verdict.SHOWN if self.confidence is Held.MEMORY else Verdict.ASSUMED
        return Verdict.WITHIN if self.within else Verdict.OUTSIDE

    @property
    def ranges(self) -> bool:
        """Whether ours is a range, over what is assumed."""
        return self.ours_low != self.ours_high

    @property
    def gap(self) -> float:
        """How far the nearest of ours lies from print, in `unit`; 0 where the range holds it."""
        return min(max(self.published, self.ours_low), self.ours_high) - self.published

    @property
    def standing(self) -> Standing:
        """How much agreement would prove.

        A case is independent when figures of the program went in, none of them drawn from the publication
        that judges it. Where none went in but atomic masses, it checks a formula and nothing that ships.
        """
        if self.own_figures or self.fitted:
            return Standing.OWN_SOURCE
        if self.farm or not all(path.startswith(MASSES) for path in self.figures):
            return Standing.INDEPENDENT
        return Standing.FORMULA

    @property
    def independent(self) -> bool:
        """Whether figures of the program went in, and none was drawn from the publication that judges it."""
        return self.standing is Standing.INDEPENDENT


@dataclass(frozen=True, slots=True, kw_only=True)
class LackingResult:
    """A published result that is not worked out, with its publication on one line."""

    key: str
    area: str
    title: str
    published: str
    lacks: str
    source: str
    publication: str
    confidence: Held
    note: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Counts:
    """How many cases were judged and how; `cases` leaves out those that judge nothing.

    `independent`, `formula_only` and `own_source` part the judged ones by `Standing`. `assumed` are shown
    for what they rest on, `not_computed` cannot be worked out. `outside_in_range` are outside all the same.
    """

    cases: int
    within: int
    outside: int
    from_memory: int
    independent: int = 0
    independent_within: int = 0
    formula_only: int = 0
    own_source: int = 0
    assumed: int = 0
    not_computed: int = 0
    outside_in_range: int = 0


def farms_needed(areas: Sequence[Area]) -> tuple[str, ...]:
    """Return the names of the farm texts that whole-system cases are worked on."""
    names = (name for area in areas for case in area.cases for name in (case.farm, case.against))
    return tuple(dict.fromkeys(name for name in names if name))


def verify_all(
    catalogue: Catalogue, areas: Sequence[Area], *, farms: Mapping[str, Farm]
) -> tuple[CaseResult, ...]:
    """Return the result of every case, in order.

    `farms` holds the farms of `farms_needed` by name.

    Raises:
        CatalogueError: a case names an unknown formula, input, figure or farm, or asks a formula for
            what lies outside its range.
    """
    forecaster = Forecaster(catalogue)
    systems = {name: (farm, forecaster.forecast(farm)) for name, farm in farms.items()}
    return tuple(_result(case, catalogue, systems) for area in areas for case in area.cases)


def lacking_of(catalogue: Catalogue, areas: Sequence[Area]) -> tuple[LackingResult, ...]:
    """Return what the program cannot work out, in order."""
    return tuple(
        LackingResult(
            key=each.key,
            area=each.area,
            title=each.title,
            published=each.published,
            lacks=each.lacks,
            source=each.source,
            publication=publication_line(catalogue, each.source),
            confidence=each.confidence,
            note=each.note,
        )
        for area in areas
        for each in area.lacking
    )


def counts_of(results: Sequence[CaseResult], lacking: Sequence[LackingResult] = ()) -> Counts:
    """Return how many cases are within, outside and only shown, and how many cannot be worked out."""
    verdicts = [result.verdict for result in results]
    within, outside, shown, assumed = (verdicts.count(verdict) for verdict in Verdict)
    judged = [result for result in results if result.within is not None]
    alone = [result for result in judged if result.independent]
    return Counts(
        cases=within + outside,
        within=within,
        outside=outside,
        from_memory=shown,
        independent=len(alone),
        independent_within=sum(bool(result.within) for result in alone),
        formula_only=sum(result.standing is Standing.FORMULA for result in judged),
        own_source=sum(result.standing is Standing.OWN_SOURCE for result in judged),
        assumed=assumed,
        not_computed=len(lacking),
        outside_in_range=sum(result.in_span for result in results),
    )


def _result(case: Case, catalogue: Catalogue, systems: Systems) -> CaseResult:
    ledger = Ledger(catalogue)
    ours = _computed(case, ledger, systems)
    ends = [ours, *(_computed(corner, ledger, systems) for corner in corners_of(case))]
    difference = ours - case.published
    within = _within(case, min(ends), max(ends))
    return CaseResult(
        key=case.key,
        area=case.area,
        title=case.title,
        note=case.note,
        formula=case.formula,
        inputs=case.inputs,
        figures=tuple(ledger.used),
        unit=case.unit,
        ours=ours,
        published=case.published,
        difference=difference,
        relative_difference=difference / abs(case.published) if case.published else None,
        tolerance=case.tolerance,
        reason=case.reason,
        within=within,
        source=case.source,
        publication=publication_line(catalogue, case.source),
        confidence=case.confidence,
        farm=case.farm,
        against=case.against,
        own_figures=ledger.drawn_from(case.source),
        fitted=case.fitted,
        assumed=case.assumed,
        ours_low=min(ends),
        ours_high=max(ends),
        span=_span(case, ours, ends, ledger, systems) if within is False else None,
    )


def _span(case: Case, ours: float, ends: Sequence[float], ledger: Ledger, systems: Systems) -> Span | None:
    """Return how far ours may lie by the ranges of the figures behind it; a ratio of two farms has none."""
    if case.reason is Reason.ORDER:
        return None

    def worked(changed: Catalogue) -> float:
        forecaster = Forecaster(changed)
        of_case = {
            name: (systems[name][0], forecaster.forecast(systems[name][0]))
            for name in (case.farm, case.against)
            if name
        }
        return _computed(case, Ledger(changed), of_case)

    return span_of(
        min(ends), max(ends), ours=ours, figures=ledger.used, catalogue=ledger.catalogue, worked=worked
    )


def _within(case: Case, low: float, high: float) -> bool | None:
    """Return whether ours agrees with print, for any value of what is assumed; None if nothing is judged."""
    if case.confidence is Held.MEMORY or (case.assumed is not None and not case.assumed.ranges):
        return None
    if case.reason is Reason.ORDER:
        return low < 1.0 if case.published < 1.0 else high > 1.0
    allowed = case.tolerance + _NOISE * abs(case.published)
    return low - allowed <= case.published <= high + allowed


def corners_of(case: Case) -> Iterator[Case]:
    """Yield the case with every way to put what is assumed at its low or high end."""
    if case.assumed is None or not case.assumed.ranges:
        return
    names = [name for name, _, _ in case.assumed.ranges]
    for ends in product(*((low, high) for _, low, high in case.assumed.ranges)):
        at = dict(zip(names, ends, strict=True))
        yield replace(case, inputs=tuple((name, at.get(name, value)) for name, value in case.inputs))


def publication_line(catalogue: Catalogue, source: str) -> str:
    """Return a publication on one line: authors, year, title, where."""
    found = catalogue.publications[source]
    return f"{found.authors} ({found.year}). {found.title}. {found.where}."


def _computed(case: Case, ledger: Ledger, systems: Systems) -> float:
    inputs = Inputs(case)
    try:
        ours = _called(case, inputs, ledger, systems)
    except CatalogueError:
        raise
    except (LookupError, ValueError, ArithmeticError) as error:
        raise case_error(case, "formula", f"{case.formula}: {error}") from error
    inputs.refuse_unused()
    return ours


def _called(case: Case, inputs: Inputs, ledger: Ledger, systems: Systems) -> float:
    known = SYSTEM_COMPUTATIONS if case.farm else COMPUTATIONS
    if case.formula not in known:
        words = known_words(case.formula, known)
        raise case_error(case, "formula", f"{case.formula!r} is no computation. {words}")
    if not case.farm:
        return COMPUTATIONS[case.formula](inputs, ledger)
    ours = _on_farm(case, "farm", case.farm, inputs, ledger, systems)
    if not case.against:
        return ours
    return ours / _on_farm(case, "against", case.against, inputs, ledger, systems)


def _on_farm(case: Case, field: str, name: str, inputs: Inputs, ledger: Ledger, systems: Systems) -> float:
    if name not in systems:
        raise case_error(case, field, f"{name!r} was not handed in. {known_words(name, systems)}")
    farm, forecast = systems[name]
    return SYSTEM_COMPUTATIONS[case.formula](inputs, Scene(farm=farm, forecast=forecast, ledger=ledger))
