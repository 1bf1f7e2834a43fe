"""A raft farm like the one of the Virgin Islands: four tanks, a turn of 24 weeks, water at 28 degrees."""

from __future__ import annotations

import dataclasses
import itertools
from datetime import date, timedelta

from planner.farm.farm import Farm
from planner.farm.ids import id_from
from planner.farm.site import Tank
from planner.planning.stocking.need import FeedNeed, need_by_ratio
from planner.planning.stocking.wish import StockingWish, dates_every
from planner.science.fish import effective_temperature, thermal_growth_coefficient
from planner.shipped import shipped_path
from tests.farms import LOOP, MONDAY, farm_of

START_G, HARVEST_G, TURN_DAYS, WATER_C = 79.2, 813.8, 168, 28.0
RAFT_M2, RATIO_BAND = 214.0, (60.0, 100.0)
TANK_L, FISH_PER_M3 = 7800.0, 77.0


def raft_farm(*, tanks: int = 4, weeks: int = 52) -> Farm:
    loop = dataclasses.replace(LOOP, water_l=110_000.0, water_c=(WATER_C,) * 12)
    settings = dataclasses.replace(farm_of().settings, plan_weeks=weeks)
    return farm_of(
        settings=settings,
        loops=(loop,),
        tanks=tuple(
            Tank(id=id_from("raft tank", str(n)), name=f"Tank {n}", loop=loop.id, volume_l=TANK_L)
            for n in range(1, tanks + 1)
        ),
    )


def raft_need(weeks: int = 52) -> FeedNeed:
    return need_by_ratio(RAFT_M2, band=RATIO_BAND, weeks=weeks)


def raft_wish(species, **fields) -> StockingWish:
    """Fish that get from start to harvest weight in the turn, less the days without feed at its end."""
    warmth = effective_temperature(
        WATER_C, base_c=species.base_c, optimum_c=species.optimum_c, ceiling_c=species.ceiling_c
    )
    days = TURN_DAYS - round(species.purge_days)
    tgc = thermal_growth_coefficient(START_G, end_g=HARVEST_G, degree_days=days * warmth)
    given = {
        "loop": LOOP.id,
        "species": species.key,
        "feed": "tilapia-grow-out-32",
        "fingerling_g": START_G,
        "harvest_g": HARVEST_G - 0.01,
        "dates": dates_every(1, first_on=MONDAY, until_on=date(2032, 1, 1)),
        "density_limit_kg_per_m3": 62.0,
        "groups": (4,),
        "shares": (1.0,),
        "tgc": float(tgc),
        "fcr": 1.7,
    }
    return StockingWish(**(given | fields))


def weeks_between(days: list[date]) -> list[float]:
    return [(later - day) / timedelta(weeks=1) for day, later in itertools.pairwise(days)]


def school_farm(means) -> Farm:
    """The large sample farm."""
    return means.read(shipped_path("sample_data", "school-kitchen.toml")).farm
