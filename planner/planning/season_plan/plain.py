"""A season plan as plain data for scripts; the form is told in docs/season-plan.md."""

from __future__ import annotations

from typing import Any, Final

from planner.farm.farm import Farm
from planner.farm.species import ELEMENTS
from planner.planning.season_plan.plan import PlanWeek, SeasonPlan
from planner.planning.season_plan.proposal import Difference, PlanProposal

FORMAT: Final = "raftweek.plan/1"
_DIGITS: Final = 6


def plan_data(plan: SeasonPlan, proposed: PlanProposal, farm: Farm) -> dict[str, Any]:
    """Return a plan, and what it changes on the farm it was made for, as plain data."""
    names = [loop.name for loop in farm.loops]
    return {
        "format": FORMAT,
        "farm": farm.settings.name,
        "status": plan.status.value,
        "gap": _rounded(plan.gap),
        "bound": _rounded(plan.bound),
        "objective": _rounded(plan.objective),
        "worth_of_all_targets": _rounded(plan.model.worth),
        "by_hand": _rounded(plan.by_hand),
        "missed": _rounded(plan.parts.missed),
        "wasted": _rounded(plan.parts.wasted),
        "imbalance": [
            {"loop": name, "short": _by_element(plan.parts.short[n]), "idle": _by_element(plan.parts.idle[n])}
            for n, name in enumerate(names)
        ],
        "unsupplied": [{"loop": names[loop], "element": key.capitalize()} for loop, key in plan.unsupplied],
        "too_slow": [
            {
                "crop": slow.crop,
                "bed_kind": plan.model.grounds[slow.ground].kind.value,
                "weeks": len(slow.weeks),
            }
            for slow in plan.too_slow
        ],
        "sowings": [
            {
                "crop": sowing.crop,
                "loop": names[plan.model.grounds[sowing.ground].loop],
                "bed_kind": sowing.bed_kind.value,
                "week": sowing.week_name,
                "sow_on": sowing.sow_on.isoformat(),
                "plants": sowing.plants,
            }
            for sowing in plan.sowings
        ],
        "weeks": [_week(week, names) for week in plan.weeks],
        "differences": [_difference(each) for each in proposed.differences],
        "unchanged": proposed.unchanged,
        "without_places": [
            {"bed": refusal.bed, "needed": refusal.needed, "free": refusal.free}
            for refusal in proposed.refusals
        ],
    }


def _rounded(value: float) -> float:
    return round(float(value), _DIGITS)


def _by_element(values: Any) -> dict[str, float]:
    return {key.capitalize(): _rounded(value) for key, value in zip(ELEMENTS, values, strict=True)}


def _week(week: PlanWeek, names: list[str]) -> dict[str, Any]:
    return {
        "week": week.name,
        "from": week.start_on.isoformat(),
        "crops": [
            {
                "crop": line.crop,
                "unit": line.unit.value,
                "wanted": _rounded(line.wanted),
                "harvest": _rounded(line.harvest),
            }
            for line in week.lines
        ],
        "beds": [
            {
                "loop": names[ground.loop],
                "bed_kind": ground.kind.value,
                "places": ground.places,
                "taken": ground.taken,
            }
            for ground in week.grounds
        ],
        "nurseries": [
            {"loop": names[cells.loop], "cells": cells.cells, "taken": cells.taken}
            for cells in week.nurseries
        ],
        "intermediate": [
            {"loop": names[pool.loop], "places": pool.places, "taken": pool.taken} for pool in week.pools
        ],
        "loops": [
            {
                "loop": names[loop.loop],
                "demand_g": _by_element(loop.demand_g),
                "supply_g": _by_element(loop.supply_g),
            }
            for loop in week.loops
        ],
        "work_min": _rounded(week.work_min),
    }


def _difference(each: Difference) -> dict[str, Any]:
    before, after = each.before, each.after
    return {
        "kind": each.kind.value,
        "code": each.code,
        "crop": each.crop,
        "plants_before": None if before is None else before.plants,
        "plants_after": None if after is None else after.plants,
        "sow_on_before": None if before is None else before.sow_on.isoformat(),
        "sow_on_after": None if after is None else after.sow_on.isoformat(),
    }
