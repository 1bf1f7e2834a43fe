"""Small farms on which one thing is wrong, and the flag that says so."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

from planner.farm.farm import Farm
from planner.farm.fish import Feeding, FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.forecast.engine import Forecaster
from planner.forecast.values import Flag, FlagKind
from tests.farms import MONDAY, RAFT, SITE, batch_of, farm_of, group_of, places_of


def week(number: int):
    return MONDAY + timedelta(weeks=number)


def flag_of(farm: Farm, forecaster: Forecaster, kind: FlagKind) -> Flag:
    return next(flag for flag in forecaster.forecast(farm).flags if flag.kind is kind)


def hungry_farm(**parts) -> Farm:
    """Four rafts of lettuce on the feed of a few fish."""
    batches = tuple(batch_of(f"LTB-{n}", sow_on=week(n)) for n in range(8))
    given = {
        "batches": batches,
        "placements": tuple(places_of(batch, unit=n % 4 + 1) for n, batch in enumerate(batches)),
        "fish_groups": (group_of(count=25, mean_weight_g=80.0),),
    }
    return farm_of(**(given | parts))


def underfed_farm() -> Farm:
    """Fish that would eat far more than the fixed ration they get."""
    group = group_of(count=40, mean_weight_g=150.0, feeding=Feeding.FIXED, feed_g_per_day=20.0)
    return hungry_farm(fish_groups=(group,))


def harvest_of(group, on, count=None) -> FishEvent:
    return FishEvent(
        id=id_from("harvest", group.name, on.isoformat()),
        group=group.id,
        on=on,
        kind=FishEventKind.HARVEST,
        count=count,
    )


def falling_farm(**fields) -> Farm:
    """All fish of the larger of two groups are harvested in the tenth week."""
    old = group_of("Old", count=60, mean_weight_g=250.0, **fields)
    young = group_of("Young", count=60, mean_weight_g=40.0, stocked_on=week(8))
    return hungry_farm(fish_groups=(old, young), fish_events=(harvest_of(old, week(10)),))


def full_farm(**fields) -> Farm:
    """A tank that grows over its limit."""
    return farm_of(fish_groups=(group_of(count=260, mean_weight_g=150.0, **fields),))


def crowded_farm() -> Farm:
    """A batch that wants to stand where others stand; there is room some weeks later."""
    standing = tuple(batch_of(f"LTB-{n}", sow_on=MONDAY) for n in range(4))
    late = batch_of("LTB-9", sow_on=week(1), bed=RAFT.id, plants=20)
    return farm_of(
        batches=(*standing, late),
        placements=tuple(places_of(batch, unit=n + 1) for n, batch in enumerate(standing)),
        settings=dataclasses.replace(farm_of().settings, plan_weeks=30),
    )


def wave_farm() -> Farm:
    """Two rafts of lettuce sown on one day, for fish that feed fewer; there is room on other days."""
    wave = tuple(batch_of(f"LTB-{n}", sow_on=week(2), bed=RAFT.id) for n in range(2))
    later = tuple(batch_of(f"LTB-{n}", sow_on=week(6 + n), bed=RAFT.id) for n in range(2, 4))
    return farm_of(batches=(*wave, *later), fish_groups=(group_of(count=28, mean_weight_g=80.0),))


def winter_farm() -> Farm:
    """Basil sown in January under a cold, dark roof: it never gets to its size in time."""
    cold = dataclasses.replace(
        SITE,
        latitude_deg=48.0,
        air_c=(2.0, 3.0, 6.0, 10.0, 15.0, 18.0, 20.0, 19.0, 15.0, 10.0, 5.0, 2.0),
        nursery_c=(18.0,) * 12,
        radiation_mj_per_m2_d=(3.0, 6.0, 10.0, 15.0, 19.0, 21.0, 21.0, 18.0, 12.0, 7.0, 4.0, 2.5),
    )
    basil = batch_of(
        "BAS-1", crop="basil", plants=9, bed=RAFT.id, bed_days=None, nursery_days=None, germination_days=None
    )
    settings = dataclasses.replace(farm_of().settings, plan_weeks=60)
    return farm_of(sites=(cold,), batches=(basil,), settings=settings)
