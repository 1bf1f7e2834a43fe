"""Why so much ground is planted in a week: batch by batch, for the days it stands in its final place."""

from __future__ import annotations

from functools import partial

import numpy as np

from planner.farm.crops import Phase
from planner.farm.farm import DAYS_PER_WEEK, by_id
from planner.farm.fields import NO_ID, Id
from planner.farm.site import Bed
from planner.forecast.profiles import is_fruiting
from planner.forecast.values import Ints
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, week_days, worked
from planner.forecast.why.many import Part, told_sum
from planner.forecast.why.values import Explanation, Input, NoteKind

_SPACING_END, _PICKING_END = 2, 4


def why_group_area(ground: Ground, number: int, week: int, *, fruiting: bool) -> Explanation:
    """Return why leafy or fruiting crops of a loop, by its number, cover so much ground in a week [m²]."""
    table, profiles = ground.forecast.batches, ground.forecast.profiles
    rows = [
        row
        for row in _rows(ground, number, week)
        if is_fruiting(profiles[int(table.profile[row])]) is fruiting
    ]
    name = "fruiting crops" if fruiting else "leafy crops"
    return _sum(ground, rows, week, title=f"area of {name}", about=ground.forecast.loops[number].name)


def why_crop_area(ground: Ground, number: int, week: int, crop: str) -> Explanation:
    """Return why a crop covers so much ground in a loop, by its number, in a week [m²]."""
    forecast = ground.forecast
    if crop not in forecast.crops:
        raise NoSuchFigureError(f'"{crop}" is not grown; crops are {", ".join(forecast.crops)}.')
    wanted = forecast.crops.index(crop)
    rows = [row for row in _rows(ground, number, week) if forecast.batches.crop[row] == wanted]
    return _sum(ground, rows, week, title="area of a crop", about=ground.catalogue.crops[crop].name)


def _days_there(ground: Ground, week: int) -> Ints:
    """Return for how many days of a week each batch stands in its final place."""
    table, days = ground.forecast.batches, week_days(week)
    first, end = (np.clip(table.ends[:, at], days.start, days.stop) for at in (_SPACING_END, _PICKING_END))
    found: Ints = end - first
    return found


def _rows(ground: Ground, number: int, week: int) -> list[int]:
    inside = (ground.forecast.batches.loop == number) & (_days_there(ground, week) > 0)
    return [int(row) for row in inside.nonzero()[0]]


def _sum(ground: Ground, rows: list[int], week: int, *, title: str, about: str) -> Explanation:
    table, there = ground.forecast.batches, _days_there(ground, week)
    parts = [
        Part(
            value=float(table.area_m2[row] * there[row]) / DAYS_PER_WEEK,
            name=ground.farm.batches[row].code,
            explain=partial(_in_week, ground, row, week, int(there[row])),
        )
        for row in rows
    ]
    return told_sum(
        parts,
        title=title,
        about=about,
        value=sum(part.value for part in parts),
        unit="m²",
        on=ground.forecast.ruler.week_start(week),
        nothing=NoteKind.NOTHING_PLANTED,
    )


def _in_week(ground: Ground, row: int, week: int, days: int) -> Explanation:
    area = why_batch_area(ground, row)
    return Explanation(
        title="area of a batch in the week",
        about=area.about,
        value=(area.value or 0.0) * days / DAYS_PER_WEEK,
        unit="m²",
        formula=Formula.AREA_OF_DAYS,
        inputs=(worked("area_m2", area.value or 0.0, "m²"), worked("days", float(days), "d")),
        children=(area,),
        on=ground.forecast.ruler.week_start(week),
    )


def why_batch_area(ground: Ground, row: int) -> Explanation:
    """Return why a batch covers so much ground in its final places [m²].

    Places count with their bed's area, plants without one with the bed's they are meant for, else with the
    distance of the crop.
    """
    batch, beds = ground.farm.batches[row], by_id(ground.farm.beds)
    held: dict[Id, int] = {}
    for run in ground.farm.placements:
        if run.batch == batch.id and run.phase is Phase.BED:
            held[run.bed] = held.get(run.bed, 0) + run.count
    parts = tuple(_of_places(beds[bed], count) for bed, count in held.items())
    without = max(batch.plants - sum(held.values()), 0)
    room, children = _room_of_plant(ground, row, beds.get(batch.bed) if not held else None)
    return Explanation(
        title="area of a batch",
        about=batch.code,
        value=float(ground.forecast.batches.area_m2[row]),
        unit="m²",
        formula=Formula.BATCH_AREA,
        inputs=(
            worked("placed_m2", sum(part.value or 0.0 for part in parts), "m²"),
            worked("plants_without_place", float(without), "plants"),
            room,
        ),
        children=(*parts, *(children if without else ())),
    )


def _of_places(bed: Bed, count: int) -> Explanation:
    return Explanation(
        title="area of places",
        about=bed.name,
        value=count * bed.place_area_m2,
        unit="m²",
        formula=Formula.AREA_OF_PLACES,
        inputs=(
            entered("count", count, "places", bed.name),
            entered("bed_m2", bed.area_m2, "m²", bed.name),
            entered("bed_places", bed.places, "places", bed.name),
        ),
    )


def _room_of_plant(ground: Ground, row: int, bed: Bed | None) -> tuple[Input, tuple[Explanation, ...]]:
    """Return what one plant without a place covers, and why."""
    batch = ground.farm.batches[row]
    if bed is not None and batch.bed != NO_ID:
        part = _of_places(bed, 1)
    else:
        density = ground.figure("bed_density_per_m2", f"crop/{batch.crop}/bed_density_per_m2")
        part = Explanation(
            title="area of a plant",
            about=batch.code,
            value=1.0 / density.value,
            unit="m²",
            formula=Formula.ROOM_OF_PLANT,
            inputs=(density,),
        )
    return worked("m2_a_plant", part.value or 0.0, "m²"), (part,)
