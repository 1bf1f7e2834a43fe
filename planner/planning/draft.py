"""Drafts a farm from a handful of answers: loop, tank, beds, fish, targets, and a year of sowings.

A first plan that a grower can see and change at once; everything in it stands open. Must know nothing of
widgets, files or the clock.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import timedelta
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.farm.codes import codes_of
from planner.farm.crops import Batch, Target, TargetUnit
from planner.farm.farm import DAYS_PER_WEEK, Farm, Settings
from planner.farm.fields import NO_ID, Id
from planner.farm.fish import FishGroup
from planner.farm.ids import new_id
from planner.farm.site import Bed, Loop, Site, Tank
from planner.farm.species import BedKind, Crop, HarvestKind
from planner.forecast.engine import Forecaster
from planner.planning.answers import Answers, BedWish, CropWish
from planner.planning.climates import monthly_air
from planner.planning.wishes import place_wishes

G_PER_KG: Final = 1000.0
L_PER_M3: Final = 1000.0
_NURSERY_COLUMNS: Final = 12


@dataclass(frozen=True, slots=True, kw_only=True)
class Draft:
    """A drafted farm, and how many sowings found no place."""

    farm: Farm
    unplaced: int


def drafted(answers: Answers, forecaster: Forecaster) -> Draft:
    """Return the farm that the answers lead to, with places given to every sowing that fits."""
    catalogue = forecaster.catalogue
    site = _site(answers, catalogue)
    loop = Loop(
        id=new_id(),
        name="Loop 1",
        site=site.id,
        water_l=_water_l(answers, catalogue),
        area_rule=answers.area_rule,
    )
    tank = Tank(id=new_id(), name="Fish tank 1", loop=loop.id, volume_l=answers.tank_l)
    crops = [catalogue.crops[wish.crop] for wish in answers.crops]
    beds = tuple(laid_out(wish, loop.id, crops) for wish in answers.beds)
    settings = Settings(id=new_id(), name=answers.name, plan_from=answers.plan_from)
    farm = Farm(
        settings=settings,
        sites=(site,),
        loops=(loop,),
        tanks=(tank,),
        beds=beds,
        fish_groups=_fish(answers, tank.id, catalogue),
        targets=tuple(_target(wish, answers) for wish in answers.crops),
    )
    farm = replace(farm, batches=tuple(_sowings(farm, catalogue)))
    farm = replace(farm, beds=(*beds, *_nursery(farm, forecaster, loop.id)))
    placed = place_wishes(farm, forecaster.preview(farm))
    return Draft(farm=placed.farm, unplaced=len(placed.refusals))


def _site(answers: Answers, catalogue: Catalogue) -> Site:
    return Site(
        id=new_id(),
        name=answers.name,
        place=answers.place,
        latitude_deg=answers.latitude_deg,
        longitude_deg=answers.longitude_deg,
        altitude_m=answers.altitude_m,
        time_zone=answers.time_zone,
        air_c=monthly_air(
            answers.climate,
            latitude_deg=answers.latitude_deg,
            altitude_m=answers.altitude_m,
            catalogue=catalogue,
        ),
        notes=answers.site_notes,
        units=answers.units,
        week_start=answers.week_start,
    )


def _water_l(answers: Answers, catalogue: Catalogue) -> float:
    """Return a first guess at all the water that goes round: the tank's, and what the beds hold [L]."""

    def metres(name: str) -> float:
        return catalogue.figure(f"coefficient/sizing/{name}").value

    held = {
        BedKind.RAFT: metres("raft_water_depth"),
        BedKind.MEDIA: metres("media_bed_depth") * metres("media_void_share"),
        BedKind.NURSERY: 0.0,
    }
    in_beds = sum(wish.length_m * wish.width_m * held[wish.kind] for wish in answers.beds)
    return round(answers.tank_l + in_beds * L_PER_M3)


def _fish(answers: Answers, tank: Id, catalogue: Catalogue) -> tuple[FishGroup, ...]:
    if answers.fish_count < 1:
        return ()
    return (
        FishGroup(
            id=new_id(),
            name="Fish 1",
            tank=tank,
            species=answers.species,
            feed=feed_for(answers.mean_weight_g, catalogue),
            stocked_on=answers.plan_from,
            count=answers.fish_count,
            mean_weight_g=answers.mean_weight_g,
        ),
    )


def feed_for(weight_g: float, catalogue: Catalogue) -> str:
    """Return the key of a feed made for fish of a weight; the first of all when none is."""
    for key, feed in catalogue.feeds.items():
        if feed.for_fish_from_g <= weight_g < feed.for_fish_to_g:
            return key
    return next(iter(catalogue.feeds))


def laid_out(wish: BedWish, loop: Id, crops: Sequence[Crop]) -> Bed:
    """Return a bed; its places are laid out at the closest distance any of its crops asks for."""
    density = max((crop.bed_density_per_m2 for crop in crops if wish.kind in crop.beds), default=1.0)
    area = wish.length_m * wish.width_m or wish.holes / density
    distance = 1 / math.sqrt(density)
    if wish.holes:
        rows, columns = _rows_of(wish)
    else:
        rows = max(math.floor(wish.width_m / distance), 1)
        columns = max(math.floor(wish.length_m / distance), 1)
    return Bed(
        id=new_id(), name=wish.name, loop=loop, kind=wish.kind, rows=rows, columns=columns, area_m2=area
    )


def _rows_of(wish: BedWish) -> tuple[int, int]:
    """Return rows and columns that make up the holes and come nearest to the shape of the bed.

    >>> _rows_of(BedWish(name="Raft", kind=BedKind.RAFT, length_m=0, width_m=0, holes=72))
    (8, 9)
    """
    shape = wish.length_m / wish.width_m if wish.length_m and wish.width_m else 1.0
    pairs = [(rows, wish.holes // rows) for rows in range(1, wish.holes + 1) if wish.holes % rows == 0]
    return min(pairs, key=lambda pair: (abs(math.log(pair[1] / pair[0] / shape)), pair[0]))


def _target(wish: CropWish, answers: Answers) -> Target:
    return Target(
        id=new_id(),
        crop=wish.crop,
        amount_per_week=wish.amount_per_week,
        unit=wish.unit,
        from_on=answers.plan_from,
    )


def weeks_between_sowings(crop: Crop) -> int:
    """Return after how many weeks a crop is sown again: each week, or when its picking ends.

    A crop that is picked from for ten weeks is sown every ten weeks, so that one sowing takes over from
    the other.
    """
    if crop.harvest is HarvestKind.SINGLE:
        return 1
    return max(int(crop.picking_days // DAYS_PER_WEEK), 1)


def plants_per_sowing(target: Target, crop: Crop) -> int:
    """Return the plants that give what is wanted each week until the next sowing takes over.

    Heads are plants that are harvested or picked from; kilograms are the yield of a plant over its life.
    """
    wanted = target.amount_per_week
    if target.unit is TargetUnit.KG:
        grams = crop.yield_g_per_plant * crop.marketable_share
        wanted = wanted * weeks_between_sowings(crop) * G_PER_KG / grams
    elif crop.harvest is HarvestKind.SINGLE:
        wanted = wanted / crop.marketable_share
    return max(math.ceil(wanted / crop.bed_survival_share), 1)


def _sowings(farm: Farm, catalogue: Catalogue) -> Iterator[Batch]:
    codes = codes_of(farm)
    for target in farm.targets:
        crop = catalogue.crops[target.crop]
        bed = _bed_for(crop, farm)
        for week in range(0, farm.settings.plan_weeks, weeks_between_sowings(crop)):
            day = farm.settings.plan_from + timedelta(days=week * DAYS_PER_WEEK)
            yield Batch(
                id=new_id(),
                code=codes.give(crop.code, day),
                crop=target.crop,
                sow_on=day,
                plants=plants_per_sowing(target, crop),
                bed=bed,
            )


def _bed_for(crop: Crop, farm: Farm) -> Id:
    for kind in crop.beds:
        for bed in farm.beds:
            if bed.kind is kind:
                return bed.id
    return NO_ID


def _nursery(farm: Farm, forecaster: Forecaster, loop: Id) -> tuple[Bed, ...]:
    """Return one nursery large enough for all seedlings that stand at a time, none when none do."""
    table = forecaster.preview(farm).batches
    if not table.ids:
        return ()
    starts, ends = table.sow_day, table.ends[:, 1]
    most = max(int(table.seeds[(starts <= day) & (ends > day)].sum()) for day in set(starts.tolist()))
    crops = [forecaster.catalogue.crops[batch.crop] for batch in farm.batches]
    if most < 1:
        return ()
    rows = math.ceil(most / _NURSERY_COLUMNS)
    area = rows * _NURSERY_COLUMNS / min(crop.nursery_density_per_m2 for crop in crops)
    return (
        Bed(
            id=new_id(),
            name="Nursery",
            loop=loop,
            kind=BedKind.NURSERY,
            rows=rows,
            columns=_NURSERY_COLUMNS,
            area_m2=area,
        ),
    )
