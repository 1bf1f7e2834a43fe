"""Lines of text for chances: what four weeks in five will give, and how likely a target is met."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any, Final

_PERCENT: Final = 100.0
_WIDTHS: Final = (10, 9, 9, 9, 9)
_INDENT: Final = "  "
_PER_UNIT: Final = {"heads": "plants", "kg": "kg"}
_NO_TARGET: Final = "-"

Data = Mapping[str, Any]


def chances_lines(data: Data) -> Iterator[str]:
    """Yield a short table for each target, or for each crop of a farm without targets."""
    yield ""
    yield f"chances by {data['draws']:,} draws (seed {data['seed']}); of ten draws one gives less than low,"
    yield "one more than high"
    if data["targets"]:
        for target in data["targets"]:
            yield from _target_lines(data, target)
        return
    for crop in dict.fromkeys(crop["crop"] for week in data["harvest"] for crop in week["crops"]):
        yield from _table(f"{crop}, heads", _harvest(data, crop, "plants"), chances={})


def _target_lines(data: Data, target: Data) -> Iterator[str]:
    head = f"{target['crop']}, at least {target['amount_per_week']:g} {target['unit']} a week"
    by_week = {week["week"]: week["chance"] for week in target["weeks"]}
    rows = _harvest(data, target["crop"], _PER_UNIT[target["unit"]])
    for week in by_week:
        rows.setdefault(week, [0.0] * len(data["percentiles"]))
    yield from _table(head, {week: rows[week] for week in sorted(by_week)}, chances=by_week)


def _harvest(data: Data, crop: str, unit: str) -> dict[str, Sequence[float]]:
    return {
        week["week"]: one[unit] for week in data["harvest"] for one in week["crops"] if one["crop"] == crop
    }


def _table(head: str, rows: Mapping[str, Sequence[float]], *, chances: Mapping[str, float]) -> Iterator[str]:
    yield ""
    yield head
    yield _line(("week", "low", "middle", "high", "chance"))
    for week, levels in rows.items():
        chance = f"{chances[week] * _PERCENT:.0f} %" if week in chances else _NO_TARGET
        yield _line((week, *(f"{value:.1f}" for value in levels), chance))


def _line(cells: Sequence[str]) -> str:
    return _INDENT + "".join(cell.rjust(width) for cell, width in zip(cells, _WIDTHS, strict=True))
