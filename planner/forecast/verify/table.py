"""Results as one table of texts, for a spreadsheet: a row for every case and for all that is not computed.

The words are those of the command line and the files of cases, numbers have a point, so that any
spreadsheet and any script reads them alike. Must not know where the table goes.
"""

from __future__ import annotations

import csv
from collections.abc import Iterator, Sequence
from typing import Final

from planner.forecast.verify.cases import Input, Reason
from planner.forecast.verify.plain import short
from planner.forecast.verify.run import CaseResult, LackingResult

HEADS: Final = (
    "verdict",
    "standing",
    "area",
    "key",
    "title",
    "inputs",
    "unit",
    "ours",
    "ours_low",
    "ours_high",
    "published",
    "difference",
    "difference_percent",
    "tolerance",
    "tolerance_reason",
    "confidence",
    "source",
    "publication",
    "leans_on",
    "assumed",
    "note",
    "range_low",
    "range_high",
)
_PERCENT: Final = 100.0
_NOT_COMPUTED: Final = "not computed"


class _Lines(list[str]):
    """Takes the lines of the csv writer."""

    def write(self, line: str) -> None:
        """Keep a line."""
        self.append(line)


def verify_rows(
    results: Sequence[CaseResult], lacking: Sequence[LackingResult] = ()
) -> Iterator[tuple[str, ...]]:
    """Yield the heads and a row of texts for each case, then for each result that is not computed."""
    yield HEADS
    yield from map(_row, results)
    yield from map(_lacking_row, lacking)


def verify_csv(results: Sequence[CaseResult], lacking: Sequence[LackingResult] = ()) -> str:
    """Return the table as CSV: commas, quotes where needed, lines ended as RFC 4180 says."""
    lines = _Lines()
    csv.writer(lines).writerows(verify_rows(results, lacking))
    return "".join(lines)


def _row(result: CaseResult) -> tuple[str, ...]:
    relative = result.relative_difference
    by_order = result.reason is Reason.ORDER
    return (
        result.verdict.value,
        result.standing.value,
        result.area,
        result.key,
        result.title,
        "; ".join(f"{name} {_said(value)}" for name, value in result.inputs),
        result.unit,
        *(_number(value) for value in (result.ours, result.ours_low, result.ours_high, result.published)),
        _number(result.difference),
        "" if relative is None else _number(relative * _PERCENT),
        "" if by_order else _number(result.tolerance),
        result.reason.value,
        result.confidence.value,
        result.source,
        result.publication,
        "; ".join((*result.own_figures, *((result.fitted,) if result.fitted else ()))),
        result.assumed.words if result.assumed else "",
        result.note,
        *((_number(result.span.low), _number(result.span.high)) if result.span else ("", "")),
    )


def _lacking_row(each: LackingResult) -> tuple[str, ...]:
    found = {
        "verdict": _NOT_COMPUTED,
        "area": each.area,
        "key": each.key,
        "title": each.title,
        "published": each.published,
        "confidence": each.confidence.value,
        "source": each.source,
        "publication": each.publication,
        "note": f"{each.lacks} {each.note}".strip(),
    }
    return tuple(found.get(head, "") for head in HEADS)


def _number(value: float) -> str:
    return f"{short(value):g}" if short(value) == float(f"{short(value):g}") else repr(short(value))


def _said(value: Input) -> str:
    if isinstance(value, tuple):
        return "/".join(f"{number:g}" for number in value)
    return value if isinstance(value, str) else f"{value:g}"
