"""Results as plain data of a documented, stable shape (docs/verify.md): what scripts read."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Final

from planner.forecast.verify.cases import Input, Reason
from planner.forecast.verify.run import CaseResult, LackingResult, counts_of

FORMAT: Final = "raftweek.verify/1"

_FIGURES: Final = ".10g"
"""Enough digits for any oracle, few enough to hide the last bits of the machine."""


def verify_data(results: Sequence[CaseResult], lacking: Sequence[LackingResult] = ()) -> dict[str, Any]:
    """Return results, and what cannot be worked out, as dicts, lists, texts and numbers."""
    counts = counts_of(results, lacking)
    return {
        "format": FORMAT,
        "cases": [_case_data(result) for result in results],
        "counts": {
            "cases": counts.cases,
            "within": counts.within,
            "outside": counts.outside,
            "from_memory": counts.from_memory,
            "independent": counts.independent,
            "independent_within": counts.independent_within,
            "formula_only": counts.formula_only,
            "own_source": counts.own_source,
            "assumed": counts.assumed,
            "not_computed": counts.not_computed,
            "outside_in_range": counts.outside_in_range,
        },
        "not_computed": [_lacking_data(each) for each in lacking],
    }


def _case_data(result: CaseResult) -> dict[str, Any]:
    relative = result.relative_difference
    return {
        "key": result.key,
        "area": result.area,
        "title": result.title,
        "note": result.note,
        "formula": result.formula,
        "farm": result.farm or None,
        "inputs": {name: _input_data(value) for name, value in result.inputs},
        "figures": list(result.figures),
        "unit": result.unit,
        "ours": short(result.ours),
        "published": short(result.published),
        "difference": short(result.difference),
        "relative_difference": None if relative is None else short(relative),
        "tolerance": short(result.tolerance),
        "tolerance_reason": result.reason.value,
        "within": result.within,
        "source": result.source,
        "publication": result.publication,
        "confidence": result.confidence.value,
        **_standing_data(result),
    }


def _standing_data(result: CaseResult) -> dict[str, Any]:
    """Return what tells how much a case says: what it leans on, and what is taken for granted."""
    assumed = result.assumed
    return {
        "independent": result.independent,
        "standing": result.standing.value,
        "own_figures": list(result.own_figures),
        "fitted": result.fitted or None,
        "judged_by": "order" if result.reason is Reason.ORDER else "difference",
        "against": result.against or None,
        "assumed": assumed.words if assumed else None,
        "assumed_ranges": {name: [low, high] for name, low, high in assumed.ranges} if assumed else {},
        "ours_low": short(result.ours_low),
        "ours_high": short(result.ours_high),
        "range_low": short(result.span.low) if result.span else None,
        "range_high": short(result.span.high) if result.span else None,
        "in_range": result.in_span if result.span else None,
    }


def _lacking_data(each: LackingResult) -> dict[str, Any]:
    return {
        "key": each.key,
        "area": each.area,
        "title": each.title,
        "published": each.published,
        "lacks": each.lacks,
        "source": each.source,
        "publication": each.publication,
        "confidence": each.confidence.value,
        "note": each.note,
    }


def short(number: float) -> float:
    """Return a number without the last bits of the machine."""
    return float(format(number, _FIGURES))


def _input_data(value: Input) -> float | str | list[float]:
    return list(value) if isinstance(value, tuple) else value
