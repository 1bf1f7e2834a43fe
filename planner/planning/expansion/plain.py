"""The four verdicts as plain data of a documented, stable shape (docs/advice.md)."""

from __future__ import annotations

from typing import Any, Final

from planner.planning.expansion.verdicts import Expansion, Verdict

FORMAT: Final = "raftweek.expand/1"
Data = dict[str, Any]


def expansion_data(found: Expansion) -> Data:
    """Return the verdicts and the largest extra area by month."""
    limiting = found.limiting
    return {
        "answer": found.answer.value,
        "limiting": limiting and limiting.matter.value,
        "verdicts": [_verdict(verdict) for verdict in found.verdicts],
        "area_by_month": [
            {
                "month": f"{one.year}-{one.month:02d}",
                "cautious_m2": one.cautious_m2,
                "most_m2": one.most_m2,
            }
            for one in found.area_by_month
        ],
        "cautions": list(found.cautions),
    }


def _verdict(verdict: Verdict) -> Data:
    return {
        "matter": verdict.matter.value,
        "answer": verdict.answer.value,
        "limits": [limit.value for limit in verdict.limits],
        "numbers": dict(verdict.numbers),
        "cautions": list(verdict.cautions),
        "basis": list(verdict.basis),
    }
