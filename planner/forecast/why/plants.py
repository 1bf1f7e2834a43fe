"""Why so much of a crop is harvested in a week, and why the plants want so much of an element."""

from __future__ import annotations

from functools import partial
from typing import Final

from planner.farm.species import ELEMENTS
from planner.forecast.formed import formed_per_plant, pick_share, pick_size, rows_alive
from planner.forecast.profiles import Profile
from planner.forecast.values import Ints
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.batches import batch_input
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, week_days, worked
from planner.forecast.why.many import Part, largest, told_sum
from planner.forecast.why.values import Explanation, Input, Note, NoteKind

_IRON: Final = ELEMENTS.index("fe")
_SAME_SHARE: Final = 1e-9


def why_harvest(ground: Ground, crop: str, week: int, *, grams: bool) -> Explanation:
    """Return why so many plants, or grams, of a crop are harvested in a week."""
    forecast = ground.forecast
    if crop not in forecast.crops:
        raise NoSuchFigureError(f'"{crop}" is not grown; crops are {", ".join(forecast.crops)}.')
    number, days = forecast.crops.index(crop), week_days(week)
    by_day = forecast.harvest_g if grams else forecast.harvest_plants
    value = float(by_day[number, days].sum())
    table = forecast.batches
    parts = [
        _batch_harvest(ground, row, week, grams=grams)
        for row in range(len(table.ids))
        if table.crop[row] == number
        and pick_share(forecast, row, first_day=days.start, last_day=days.stop) > 0
    ]
    kept, others, notes = largest(parts)
    unit = "g" if grams else "plants"
    return Explanation(
        title="harvest",
        about=ground.catalogue.crops[crop].name,
        value=value,
        unit=unit,
        formula=Formula.SUM,
        inputs=(worked("others", others, unit),) if notes else (),
        children=kept,
        notes=notes,
        on=forecast.ruler.week_start(week),
    )


def _batch_harvest(ground: Ground, row: int, week: int, *, grams: bool) -> Explanation:
    forecast, batch = ground.forecast, ground.farm.batches[row]
    days = week_days(week)
    share = pick_share(forecast, row, first_day=days.start, last_day=days.stop)
    profile, ripe = _profile(ground, row), float(forecast.batches.ripe[row])
    again = pick_size(forecast, ground.paces, row, first_day=days.start, last_day=days.stop)
    size = ripe * again
    plants = batch.plants * profile.bed_survival_share * share
    inputs = [
        entered("plants", batch.plants, "plants", batch.code),
        batch_input(ground, batch, "bed_survival_share"),
        worked("pick_share", share, "1"),
    ]
    children: tuple[Explanation, ...] = ()
    if grams:
        of_yield, children = plant_yield(ground, row)
        inputs += [of_yield, worked("size_share", size, "1")]
    return Explanation(
        title="harvest of a batch",
        about=batch.code,
        value=plants * profile.yield_g_per_plant * size if grams else plants,
        unit="g" if grams else "plants",
        formula=Formula.BATCH_GRAMS if grams else Formula.BATCH_PLANTS,
        inputs=tuple(inputs),
        children=children,
        notes=(Note(kind=NoteKind.GIVEN_UP, values=(("size_share", ripe),)),) if ripe < 1.0 else (),
        on=forecast.ruler.date_of(int(forecast.batches.ends[row, 3])),
    )


def why_batch_harvest(ground: Ground, row: int) -> Explanation:
    """Return why so much of a batch is foreseen to be picked and sold, over all its picks."""
    batch, ripe = ground.farm.batches[row], float(ground.forecast.batches.ripe[row])
    of_yield, children = plant_yield(ground, row)
    inputs = (
        entered("plants", batch.plants, "plants", batch.code),
        batch_input(ground, batch, "bed_survival_share"),
        of_yield,
        worked("size_share", ripe, "1"),
        ground.figure("marketable_share", f"crop/{batch.crop}/marketable_share"),
    )
    bare = Explanation(
        title="harvest of a batch",
        about=batch.code,
        value=0.0,
        unit="kg",
        formula=Formula.BATCH_SOLD,
        inputs=inputs,
        children=children,
        notes=(Note(kind=NoteKind.GIVEN_UP, values=(("size_share", ripe),)),) if ripe < 1.0 else (),
    )
    return figured(bare)


def _profile(ground: Ground, row: int) -> Profile:
    return ground.forecast.profiles[int(ground.forecast.batches.profile[row])]


def plant_yield(ground: Ground, row: int) -> tuple[Input, tuple[Explanation, ...]]:
    """Return the yield of a plant, explained where other picking days or more or less room changed it."""
    batch, profile = ground.farm.batches[row], _profile(ground, row)
    book = profile.crop.yield_g_per_plant
    if batch.yield_g_per_plant is not None or _is_same(profile.yield_g_per_plant, book):
        return batch_input(ground, batch, "yield_g_per_plant"), ()
    child = Explanation(
        title="yield",
        about=batch.code,
        value=profile.yield_g_per_plant,
        unit="g",
        formula=Formula.WINDOW_YIELD,
        inputs=(
            ground.figure("book_yield_g_per_plant", f"crop/{batch.crop}/yield_g_per_plant"),
            worked("picks_factor", profile.yield_g_per_plant / book / profile.room_share, "1"),
            batch_input(ground, batch, "picking_days"),
            worked("room_share", profile.room_share, "1"),
            *_room(ground, profile),
        ),
    )
    return worked("yield_g_per_plant", profile.yield_g_per_plant, "g"), (child,)


def _room(ground: Ground, profile: Profile) -> tuple[Input, ...]:
    """Return the room of the plants, and what the share of it goes by; nothing at the crop's own distance."""
    if profile.density_per_m2 is None:
        return ()
    crop = f"crop/{profile.crop.key}"
    return (
        worked("density_per_m2", profile.density_per_m2, "plants/m²"),
        ground.figure("own_density_per_m2", f"{crop}/bed_density_per_m2"),
        ground.figure("width_cm", f"{crop}/width_cm"),
        ground.figure("closure_m2_per_kg", "coefficient/growth/spacing_closure_m2_per_kg"),
    )


def _is_same(one: float, other: float) -> bool:
    return abs(one - other) <= _SAME_SHARE * abs(other)


def why_demand(ground: Ground, loop: int, week: int, element: int) -> Explanation:
    """Return why the plants of a loop want so much of an element in a week."""
    forecast, days = ground.forecast, week_days(week)
    value = float(forecast.ruler.weekly_sum(forecast.loops[loop].demand_g)[element, week])
    table = forecast.batches
    alive = rows_alive(table, first_day=days.start, last_day=days.stop)
    rows = [row for row in alive if table.loop[row] == loop]
    dry = formed_per_plant(table, ground.paces, forecast.ruler, rows)[:, days].sum(axis=1)
    pairs = zip(rows, (float(one) for one in dry), strict=True)
    parts = [
        Part(
            value=_wanted_g(ground, row, grams, element),
            name=ground.farm.batches[row].code,
            explain=partial(batch_demand, ground, row, grams, week, element),
        )
        for row, grams in pairs
        if grams > 0
    ]
    return told_sum(
        parts,
        title="demand",
        about=forecast.loops[loop].name,
        value=value,
        unit="g",
        on=forecast.ruler.week_start(week),
        nothing=NoteKind.NOTHING_WANTED,
    )


def _wanted_g(ground: Ground, row: int, dry_g: float, element: int) -> float:
    """Return what a batch wants where a plant forms so much dry mass [g]."""
    crop, per = ground.catalogue.crops[ground.farm.batches[row].crop], _per(element)
    return float(ground.farm.batches[row].plants * dry_g * getattr(crop, content_name(element)) / per)


def _per(element: int) -> float:
    return _PER_MILLION if element == _IRON else _PER_THOUSAND


def batch_demand(ground: Ground, row: int, dry_g: float, week: int, element: int) -> Explanation:
    """Return why a batch wants so much of an element, where a plant forms so much dry mass in the week."""
    batch, name = ground.farm.batches[row], content_name(element)
    content = ground.figure("content", f"crop/{batch.crop}/{name}")
    return Explanation(
        title="demand of a batch",
        about=batch.code,
        value=_wanted_g(ground, row, dry_g, element),
        unit="g",
        formula=Formula.BATCH_DEMAND_IRON if element == _IRON else Formula.BATCH_DEMAND,
        inputs=(
            entered("plants", batch.plants, "plants", batch.code),
            worked("dry_mass_g", dry_g, "g DM/plant"),
            content,
        ),
        children=(_dry_in_week(ground, row, dry_g, week),),
        on=ground.forecast.ruler.week_start(week),
    )


_PER_THOUSAND: Final = 1000.0
_PER_MILLION: Final = 1_000_000.0


def content_name(element: int) -> str:
    """Return the field of a crop that holds its content of an element."""
    return f"{ELEMENTS[element]}_{'mg' if element == _IRON else 'g'}_per_kg"


def _dry_in_week(ground: Ground, row: int, dry_g: float, week: int) -> Explanation:
    batch, whole = ground.farm.batches[row], _profile(ground, row).dry_mass_g
    path = f"crop/{batch.crop}/growth_"
    return Explanation(
        title="dry mass formed in the week",
        about=batch.code,
        value=dry_g,
        unit="g DM/plant",
        formula=Formula.DRY_MASS_IN_WEEK,
        inputs=(
            worked("whole_dry_mass_g", whole, "g DM/plant"),
            worked("growth_share", dry_g / whole, "1"),
            ground.figure("midpoint", f"{path}midpoint"),
            ground.figure("steepness", f"{path}steepness"),
            worked("age_days", _age(ground.forecast.batches.sow_day, row, week), "d"),
        ),
        children=(_whole_dry(ground, row),),
    )


def _age(sow_day: Ints, row: int, week: int) -> float:
    return float(week_days(week).start - sow_day[row])


def _whole_dry(ground: Ground, row: int) -> Explanation:
    batch, profile = ground.farm.batches[row], _profile(ground, row)
    crop = profile.crop
    of_yield, children = plant_yield(ground, row)
    plain = profile.yield_g_per_plant * crop.dry_matter_share / crop.harvest_share
    return Explanation(
        title="dry mass of a whole plant",
        about=batch.code,
        value=profile.dry_mass_g,
        unit="g DM/plant",
        formula=Formula.WHOLE_DRY_MASS,
        inputs=(
            of_yield,
            ground.figure("dry_matter_share", f"crop/{batch.crop}/dry_matter_share"),
            ground.figure("harvest_share", f"crop/{batch.crop}/harvest_share"),
            worked("picking_factor", profile.dry_mass_g / plain, "1"),
        ),
        children=children,
    )
