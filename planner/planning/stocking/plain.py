"""Stockings and start-ups as plain data of a documented, stable shape (docs/advice.md)."""

from __future__ import annotations

from typing import Any, Final

from planner.farm.farm import Farm, by_id
from planner.planning.stocking.harvests import HarvestOption
from planner.planning.stocking.options import StockingOption, StockingTable
from planner.planning.stocking.startup import StartUp

FORMAT: Final = "raftweek.stock/1"
Data = dict[str, Any]


def stocking_data(table: StockingTable, farm: Farm) -> Data:
    """Return a table of ways of stocking as dicts, lists, texts and numbers."""
    best = table.best
    return {
        "judged_from": table.judged_from_on.isoformat(),
        "judged_until": table.judged_until_on.isoformat(),
        "options": [_option(option, farm) for option in table.options],
        "impossible": [{"groups": groups, "share": share} for groups, share in table.impossible],
        "best": None if best is None else {"groups": best.groups, "share": best.share},
    }


def _option(option: StockingOption, farm: Farm) -> Data:
    tanks = by_id(farm.tanks)
    return {
        "groups": option.groups,
        "share": option.share,
        "apart_weeks": option.apart_weeks,
        "take_apart_weeks": option.take_apart_weeks or None,
        "score": option.score,
        "inside_share": option.inside_share,
        "variation": option.variation,
        "mean_feed_g_per_day": option.mean_feed_g_per_day,
        "deepest_share": option.deepest_share,
        "longest_weeks": option.longest_weeks,
        "peak_kg_per_m3": option.peak_density_kg_per_m3,
        "limit_kg_per_m3": option.density_limit_kg_per_m3,
        "holes": [
            {"on": hole.on.isoformat(), "depth_share": hole.depth_share, "weeks": hole.weeks}
            for hole in option.holes
        ],
        "stocked": [
            {
                "on": one.on.isoformat(),
                "tank": tanks[one.tank].name,
                "fish": one.count,
                "harvests": [{"on": take.on.isoformat(), "share": take.share} for take in one.takes],
            }
            for one in option.stocked
        ],
    }


def harvests_data(options: tuple[HarvestOption, ...]) -> list[Data]:
    """Return what comes of one harvest, all at once and in parts."""
    return [
        {
            "share": one.share,
            "takes": [{"on": on.isoformat(), "fish": count} for on, count in one.takes],
            "depth_share": one.hole.depth_share,
            "weeks": one.hole.weeks,
            "lowest_week": one.lowest_on.isoformat(),
            "lowest_feed_g_per_day": one.lowest_feed_g_per_day,
            "lowest_ratio": one.lowest_ratio,
            "peak_kg_per_m3": one.peak_kg_per_m3,
        }
        for one in options
    ]


def start_up_data(found: StartUp) -> Data:
    """Return when the crops of a new loop may go to their beds."""
    return {
        "first_fish": found.first_fish_on and found.first_fish_on.isoformat(),
        "first_by_crop": {crop: on and on.isoformat() for crop, on in found.first_on_by_crop.items()},
        "batches": [
            {
                "code": one.code,
                "crop": one.crop,
                "group": one.group.value,
                "area_m2": one.area_m2,
                "planned": one.planned_on.isoformat(),
                "carried": one.carried_on and one.carried_on.isoformat(),
                "settled": one.settled_on.isoformat(),
                "may": one.may_on and one.may_on.isoformat(),
                "wait_days": one.wait_days,
            }
            for one in found.batches
        ],
    }
