"""Remedies as plain data of a documented, stable shape (docs/advice.md)."""

from __future__ import annotations

from typing import Any, Final

from planner.farm.species import ELEMENTS
from planner.forecast.plain import flag_data
from planner.forecast.values import Flag
from planner.planning.remedies.values import Effect, Remedy

FORMAT: Final = "raftweek.advise/1"
Data = dict[str, Any]


def advice_data(flag: Flag, remedies: tuple[Remedy, ...]) -> Data:
    """Return a flag with its remedies."""
    return {"flag": flag_data(flag), "remedies": [remedy_data(remedy) for remedy in remedies]}


def remedy_data(remedy: Remedy) -> Data:
    """Return one remedy with its effect."""
    return {
        "kind": remedy.kind.value,
        "title": remedy.change_set.title,
        "details": dict(remedy.details),
        "repairs": remedy.repairs,
        "severity_before": remedy.severity_before,
        "severity_after": remedy.severity_after,
        "harvest_change_g": remedy.harvest_change_g,
        "before": _effect(remedy.before),
        "after": _effect(remedy.after),
        "side_effects": [effect.value for effect in remedy.side_effects],
        "cautions": list(remedy.cautions),
    }


def _effect(effect: Effect) -> Data:
    return {
        "lowest_ratio": {
            element.capitalize(): ratio for element, ratio in zip(ELEMENTS, effect.lowest_ratio, strict=True)
        },
        "limiting": effect.limiting_symbol or None,
        "weeks_short": effect.weeks_short,
        "plan_weeks_short": effect.plan_weeks_short,
        "feed_ratio_g_per_m2_d": effect.feed_ratio_g_per_m2_d,
        "fall_share": effect.fall_share,
        "peak_kg_per_m3": effect.peak_kg_per_m3,
        "unplaced_plants": effect.unplaced_plants,
        "slow_batches": effect.slow_batches,
        "harvest_g": dict(effect.harvest_g),
        "fish_g": effect.fish_g,
        "feed_g": effect.feed_g,
    }
