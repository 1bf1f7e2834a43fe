"""An explanation as plain data for scripts; described in docs/why.md."""

from __future__ import annotations

from typing import Any, Final

from planner.forecast.why.reasons import Reason
from planner.forecast.why.values import Explanation, Input, Note

FORMAT: Final = "raftweek.why/1"
_DIGITS: Final = 9
Data = dict[str, Any]


def why_data(explanation: Explanation, reasons: tuple[Reason, ...] = ()) -> Data:
    """Return an explanation with all that lies behind it, and the reasons of a shortage beside it."""
    return {
        "format": FORMAT,
        **_explanation(explanation),
        "reasons": [reason_data(reason) for reason in reasons],
    }


def _explanation(explanation: Explanation) -> Data:
    return {
        "title": explanation.title,
        "about": explanation.about,
        "on": explanation.on and explanation.on.isoformat(),
        "value": None if explanation.value is None else _plain(explanation.value),
        "unit": explanation.unit,
        "formula": explanation.formula.value,
        "inputs": [_input(one) for one in explanation.inputs],
        "notes": [_note(note) for note in explanation.notes],
        "parts": [_explanation(child) for child in explanation.children],
    }


def _plain(value: float | str) -> float | str:
    return value if isinstance(value, str) else round(float(value), _DIGITS)


def _input(one: Input) -> Data:
    found: Data = {
        "name": one.name,
        "value": _plain(one.value),
        "unit": one.unit,
        "from": one.origin.value,
        "about": one.about,
    }
    if one.path:
        found |= {
            "path": one.path,
            "low": one.low,
            "high": one.high,
            "source": one.source,
            "confidence": one.confidence,
            "conditions": one.conditions,
        }
    return found


def _note(note: Note) -> Data:
    return {"kind": note.kind.value, **{name: _plain(value) for name, value in note.values}}


def reason_data(reason: Reason) -> Data:
    """Return a reason as plain data."""
    return {
        "kind": reason.kind.value,
        "about": reason.about,
        "ratio_lost": _plain(reason.ratio_lost),
        "from": reason.on and reason.on.isoformat(),
        "until": reason.until_on and reason.until_on.isoformat(),
        **{name: _plain(value) for name, value in reason.values},
    }
