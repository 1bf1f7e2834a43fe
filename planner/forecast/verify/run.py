"""Works through published cases and says of each how far the program is from print."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.errors import CatalogueError, known_words
from planner.farm.farm import Farm
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast
from planner.forecast.verify.cases import Area, Case, Held, Input, Reason
from planner.forecast.verify.computations import COMPUTATIONS, SYSTEM_COMPUTATIONS
from planner.forecast.verify.ledger import Inputs, Ledger, case_error

_NOISE: Final = 1e-9
"""Share of a figure that rounding in the machine may move it by."""


class Verdict(StrEnum):
    """What is said of a case."""

    WITHIN = "within"
    OUTSIDE = "outside"
    SHOWN = "shown from memory"


@dataclass(frozen=True, slots=True, kw_only=True)
class CaseResult:
    """A case and what the program makes of it.

    `figures` are the paths of the shipped figures that went in, in the order they were asked for.
    `difference` is ours less published and, like `tolerance`, in `unit`; `relative_difference` is its
    share of the published figure, None where that is 0. `within` is None for a figure from memory.
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

    @property
    def verdict(self) -> Verdict:
        """What is said of the case."""
        if self.within is None:
            return Verdict.SHOWN
        return Verdict.WITHIN if self.within else Verdict.OUTSIDE


@dataclass(frozen=True, slots=True, kw_only=True)
class Counts:
    """How many cases were judged and how; `cases` leaves out those from memory."""

    cases: int
    within: int
    outside: int
    from_memory: int


def farms_needed(areas: Sequence[Area]) -> tuple[str, ...]:
    """Return the names of the farm texts that whole-system cases are worked on."""
    return tuple(dict.fromkeys(case.farm for area in areas for case in area.cases if case.farm))


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
    forecasts = {name: forecaster.forecast(farm) for name, farm in farms.items()}
    return tuple(_result(case, catalogue, forecasts) for area in areas for case in area.cases)


def counts_of(results: Sequence[CaseResult]) -> Counts:
    """Return how many cases are within, outside and only shown."""
    verdicts = [result.verdict for result in results]
    within, outside, shown = (verdicts.count(verdict) for verdict in Verdict)
    return Counts(cases=within + outside, within=within, outside=outside, from_memory=shown)


def _result(case: Case, catalogue: Catalogue, forecasts: Mapping[str, Forecast]) -> CaseResult:
    ledger = Ledger(catalogue)
    ours = _computed(case, ledger, forecasts)
    difference = ours - case.published
    allowed = case.tolerance + _NOISE * abs(case.published)
    judged = case.confidence is not Held.MEMORY
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
        within=abs(difference) <= allowed if judged else None,
        source=case.source,
        publication=publication_line(catalogue, case.source),
        confidence=case.confidence,
        farm=case.farm,
    )


def publication_line(catalogue: Catalogue, source: str) -> str:
    """Return a publication on one line: authors, year, title, where."""
    found = catalogue.publications[source]
    return f"{found.authors} ({found.year}). {found.title}. {found.where}."


def _computed(case: Case, ledger: Ledger, forecasts: Mapping[str, Forecast]) -> float:
    inputs = Inputs(case)
    try:
        ours = _called(case, inputs, ledger, forecasts)
    except CatalogueError:
        raise
    except (LookupError, ValueError, ArithmeticError) as error:
        raise case_error(case, "formula", f"{case.formula}: {error}") from error
    inputs.refuse_unused()
    return ours


def _called(case: Case, inputs: Inputs, ledger: Ledger, forecasts: Mapping[str, Forecast]) -> float:
    known = SYSTEM_COMPUTATIONS if case.farm else COMPUTATIONS
    if case.formula not in known:
        words = known_words(case.formula, known)
        raise case_error(case, "formula", f"{case.formula!r} is no computation. {words}")
    if not case.farm:
        return COMPUTATIONS[case.formula](inputs, ledger)
    if case.farm not in forecasts:
        raise case_error(
            case, "farm", f"{case.farm!r} was not handed in. {known_words(case.farm, forecasts)}"
        )
    return SYSTEM_COMPUTATIONS[case.formula](inputs, forecasts[case.farm])
