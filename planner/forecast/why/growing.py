"""Why fish grow so much in a day, and what warmth that is: what feeding and growth both stand on."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from planner.farm.fish import FishGroup
from planner.farm.site import Loop
from planner.farm.species import FishSpecies
from planner.forecast.values import GroupForecast
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, worked
from planner.forecast.why.values import Explanation, Input, Note, NoteKind
from planner.science.fish import effective_temperature


@dataclass(frozen=True, slots=True, kw_only=True)
class Daily:
    """A figure of a group by day: its title, the series of `GroupForecast` that holds it, its unit."""

    title: str
    series: str
    unit: str


FED: Final = Daily(title="feed", series="feed_g", unit="g/d")
GAINED: Final = Daily(title="gain", series="gain_g", unit="g/d")
WEIGHS: Final = Daily(title="weight of a fish", series="weight_g", unit="g")


def told_on(
    what: Daily,
    ground: Ground,
    group: GroupForecast,
    day: int,
    formula: Formula,
    inputs: tuple[Input, ...] = (),
    *,
    children: tuple[Explanation, ...] = (),
    notes: tuple[Note, ...] = (),
) -> Explanation:
    """Return an answer for a figure of a group on a day, as the forecast has it."""
    return Explanation(
        title=what.title,
        about=group.name,
        value=float(getattr(group, what.series)[day]),
        unit=what.unit,
        formula=formula,
        inputs=inputs,
        children=children,
        notes=notes,
        on=ground.forecast.ruler.date_of(day),
    )


def stage_of(species: FishSpecies, weight_g: float) -> int:
    """Return the number of the stage that a weight falls in, from 1."""
    for number, stage in enumerate(species.stages, start=1):
        if weight_g <= stage.up_to_g:
            return number
    return len(species.stages)


def stage_input(ground: Ground, entry: FishGroup, group: GroupForecast, day: int, name: str) -> Input:
    """Return a figure of the stage that the fish are in on a day, or the grower's own for the group."""
    number = stage_of(ground.catalogue.fish[entry.species], float(group.weight_g[day]))
    path = f"fish/{entry.species}/stage/{number}/{name}"
    return ground.own_or_figure(name, getattr(entry, name), path, about=group.name)


def water_notes(ground: Ground, entry: FishGroup) -> tuple[Note, ...]:
    """Return a note where the water temperature is not known and the best one is assumed."""
    if loop_of_entry(ground, entry).water_c:
        return ()
    optimum = ground.catalogue.fish[entry.species].optimum_c
    return (Note(kind=NoteKind.ASSUMED_TEMPERATURE, values=(("assumed_c", optimum),)),)


def loop_of_entry(ground: Ground, entry: FishGroup) -> Loop:
    """Return the loop whose water a group lives in."""
    found: Loop = ground.loops[ground.tanks[entry.tank].loop]
    return found


def gain_by_growth(ground: Ground, entry: FishGroup, group: GroupForecast, day: int) -> Explanation:
    """Return why a group that is fed by growth gains so much on a day."""
    after = weight_after(ground, entry, group, day)
    return told_on(
        GAINED,
        ground,
        group,
        day,
        Formula.GAIN,
        (
            worked("count", group.count[day], "fish"),
            worked("weight_g", group.weight_g[day], "g"),
            worked("weight_after_g", after.value or 0.0, "g"),
        ),
        children=(after,),
    )


def weight_after(ground: Ground, entry: FishGroup, group: GroupForecast, day: int) -> Explanation:
    """Return why a fish would weigh so much after a day by its growth coefficient."""
    warmth = warmth_that_counts(ground, entry, day)
    bare = Explanation(
        title="weight after the day",
        about=group.name,
        value=0.0,
        unit="g",
        formula=Formula.WEIGHT_AFTER,
        inputs=(
            worked("weight_g", group.weight_g[day], "g"),
            stage_input(ground, entry, group, day, "tgc"),
            ground.figure("fry_g", "coefficient/fish/fry_weight_g"),
            worked("effective_c", warmth.value or 0.0, "°C"),
        ),
        children=(warmth,),
        on=ground.forecast.ruler.date_of(day),
    )
    return figured(bare)


def water_c_on(ground: Ground, entry: FishGroup, day: int) -> float:
    """Return the water temperature a group lives in on a day [°C]; its best where it is not known."""
    on = ground.forecast.ruler.date_of(day)
    series = ground.forecaster.water_c(loop_of_entry(ground, entry), start_on=on, days=1)
    return ground.catalogue.fish[entry.species].optimum_c if series is None else float(series[0])


def warmth_that_counts(ground: Ground, entry: FishGroup, day: int) -> Explanation:
    """Return why so much warmth counts for the growth of a group on a day."""
    path, water_c = f"fish/{entry.species}/", water_c_on(ground, entry, day)
    names = ("base_c", "optimum_c", "ceiling_c")
    bounds = tuple(ground.figure(name, f"{path}{name}") for name in names)
    base, optimum, ceiling = (one.value for one in bounds)
    known = bool(loop_of_entry(ground, entry).water_c)
    water = (
        entered("water_c", water_c, "°C", loop_of_entry(ground, entry).name)
        if known
        else worked("water_c", water_c, "°C")
    )
    return Explanation(
        title="warmth that counts",
        about=entry.name,
        value=float(effective_temperature(water_c, base_c=base, optimum_c=optimum, ceiling_c=ceiling)),
        unit="°C",
        formula=Formula.EFFECTIVE_TEMPERATURE,
        inputs=(water, *bounds),
        notes=water_notes(ground, entry),
        on=ground.forecast.ruler.date_of(day),
    )
