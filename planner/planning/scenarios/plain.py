"""Comparisons as plain data of a documented, stable shape (docs/advice.md)."""

from __future__ import annotations

from typing import Any, Final

from planner.forecast.values import Ruler
from planner.planning.scenarios.compare import Column, Comparison, Money, WeekBalance
from planner.planning.scenarios.sets import Difference

FORMAT: Final = "raftweek.compare/1"
Data = dict[str, Any]


def comparison_data(found: Comparison, ruler: Ruler) -> Data:
    """Return a comparison; `ruler` names the weeks of the base."""
    return {
        "columns": [
            {
                **_column(column, ruler),
                "differences": [_difference(one) for one in found.differences(number)],
            }
            for number, column in enumerate(found.columns)
        ]
    }


def _column(column: Column, ruler: Ruler) -> Data:
    mean, peak = column.occupancy_share
    return {
        "name": column.name,
        "worst": None if column.worst is None else _week(column.worst, ruler),
        "weeks_short": column.weeks_short,
        "occupancy_mean_share": mean,
        "occupancy_peak_share": peak,
        "feed_kg": column.feed_kg,
        "fish_kg": column.fish_kg,
        "peak_kg_per_m3": column.peak_kg_per_m3,
        "limit_kg_per_m3": column.density_limit_kg_per_m3,
        "unplaced_batches": column.unplaced_batches,
        "harvest_g": dict(column.harvest_g),
        "harvest_plants": dict(column.harvest_plants),
        "cost": _money(column.cost),
        "income": _money(column.income),
        "balance": [_week(week, ruler) for week in column.balance],
    }


def _week(week: WeekBalance, ruler: Ruler) -> Data:
    return {
        "loop": week.loop,
        "week": ruler.week_name(week.week),
        "ratio": week.ratio,
        "element": week.element or None,
        "short": week.short,
    }


def _money(money: Money) -> Data:
    return {"total": money.total, "known": money.known, "blank": list(money.blank)}


def _difference(one: Difference) -> Data:
    return {
        "kind": one.kind,
        "where": one.where,
        "what": one.what,
        "fields": [{"field": name, "before": before, "after": after} for name, before, after in one.fields],
    }
