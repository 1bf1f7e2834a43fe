"""The sample farms and a hand-made one with every way of feeding, each with its forecast."""

from __future__ import annotations

import dataclasses
from datetime import timedelta
from functools import lru_cache
from pathlib import Path

from planner.bootstrap import Means
from planner.farm.crops import SeedLot
from planner.farm.farm import Farm
from planner.farm.fish import Feeding, FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.farm.site import Bed
from planner.farm.species import BedKind
from planner.farm.water import Dose, SolidsBatch
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast
from tests.farms import LOOP, MONDAY, NURSERY, RAFT, SITE, batch_of, farm_of, group_of, weekly_batches

ROOT = Path(__file__).resolve().parents[2]
NAMES = ("school-kitchen", "backyard", "by-hand")


@lru_cache(maxsize=8)
def known(name: str) -> tuple[Farm, Forecast, Forecaster]:
    """Return a farm by name with its forecast and the forecaster that made it."""
    means = Means()
    farm = hand_made() if name == "by-hand" else means.read(ROOT / "sample_data" / f"{name}.toml").farm
    forecaster = means.forecaster
    return farm, forecaster.forecast(farm), forecaster


def hand_made() -> Farm:
    """Return a farm with book durations, own figures, every way of feeding, events, doses and a seed lot."""
    lot = SeedLot(id=id_from("lot"), code="LOT-1", crop="lettuce-butterhead", germination_share=0.8)
    groups = (
        group_of("By growth"),
        group_of("By percent", feeding=Feeding.PERCENT, feed_percent=2.0),
        group_of("Fixed", feeding=Feeding.FIXED, feed_g_per_day=150.0, fcr=1.6),
        group_of("By table", feeding=Feeding.TABLE, feeding_table="tilapia-weekly-chart"),
        group_of("Own growth", tgc=0.9, fcr=0.7, daily_death_share=0.001),
    )
    return farm_of(
        loops=(dataclasses.replace(LOOP, top_up_ca_mg_per_l=30.0),),
        seed_lots=(lot,),
        fish_groups=groups,
        fish_events=tuple(events(groups[0].id)),
        batches=(
            *weekly_batches(4, seed_lot=lot.id),
            batch_of("OWN", germination_share=0.7, yield_g_per_plant=120.0, nursery_days=20.4),
            batch_of("BAS", crop="basil", plants=10, bed_days=None, picking_days=60.0),
            batch_of("OKR", crop="okra", plants=6, bed_days=None),
        ),
        beds=(RAFT, NURSERY, GRAVEL),
        solids_batches=(
            solids_of("SB-1", siphoned=20, returned=45, aerated=True),
            solids_of("SB-2", siphoned=40, returned=80, aerated=False, returned_share=0.5),
        ),
        doses=(
            Dose(
                id=id_from("dose"),
                loop=LOOP.id,
                supplement="potassium-hydroxide",
                grams=40.0,
                on=MONDAY,
                every_days=10,
                until_on=MONDAY + timedelta(days=60),
            ),
        ),
    )


GRAVEL = Bed(
    id=id_from("gravel"), name="Gravel", loop=LOOP.id, kind=BedKind.MEDIA, rows=2, columns=5, area_m2=2.0
)


def solids_of(code, *, siphoned, returned, **fields):
    """Return a batch of ten days' solids."""
    return SolidsBatch(
        id=id_from("solids", code),
        code=code,
        loop=LOOP.id,
        siphoned_on=MONDAY + timedelta(days=siphoned),
        days=10,
        returned_on=MONDAY + timedelta(days=returned),
        **fields,
    )


def events(group):
    """Yield one event of every kind for a group."""

    def event(kind, day, **fields):
        on = MONDAY + timedelta(days=day)
        return FishEvent(id=id_from(kind.value, str(day)), group=group, on=on, kind=kind, **fields)

    yield event(FishEventKind.DEATHS, 5, count=8)
    yield event(FishEventKind.OFF_FEED, 10, days=3)
    yield event(FishEventKind.FEED_GIVEN, 20, days=7, feed_g_per_day=111.0)
    yield event(FishEventKind.SAMPLE, 30, mean_weight_g=160.0)
    yield event(FishEventKind.ADDED, 40, count=10, mean_weight_g=20.0)
    yield event(FishEventKind.HARVEST, 60, count=40)
    yield event(FishEventKind.HARVEST, 100)


def cold_site():
    """Return the site with a cool, dull year."""
    return dataclasses.replace(SITE, air_c=(14.0,) * 12, radiation_mj_per_m2_d=(9.0,) * 12)
