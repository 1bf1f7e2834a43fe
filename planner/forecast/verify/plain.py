"""Results as plain data of a documented, stable shape (docs/verify.md): what scripts read."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any, Final

from planner.forecast.verify.cases import Input
from planner.forecast.verify.run import CaseResult, counts_of

FORMAT: Final = "raftweek.verify/1"

_FIGURES: Final = ".10g"
"""Enough digits for any oracle, few enough to hide the last bits of the machine."""


def verify_data(results: Sequence[CaseResult]) -> dict[str, Any]:
    """Return results as dicts, lists, texts and numbers."""
    counts = counts_of(results)
    return {
        "format": FORMAT,
        "cases": [_case_data(result) for result in results],
        "counts": {
            "cases": counts.cases,
            "within": counts.within,
            "outside": counts.outside,
            "from_memory": counts.from_memory,
        },
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
    }


def short(number: float) -> float:
    """Return a number without the last bits of the machine."""
    return float(format(number, _FIGURES))


def _input_data(value: Input) -> float | str | list[float]:
    return list(value) if isinstance(value, tuple) else value
