"""Why a group of fish is fed so much on a day, and why a tank is so full."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import Final

import numpy as np

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.farm.fish import Feeding, FishEvent, FishEventKind, FishGroup
from planner.farm.site import Loop
from planner.farm.species import FishSpecies
from planner.forecast.fish import share_of_table
from planner.forecast.flags import is_small_tank
from planner.forecast.ration import table_ration
from planner.forecast.values import GroupForecast, LoopForecast
from planner.forecast.why.arithmetic import recomputed
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, week_days, worked
from planner.forecast.why.values import Explanation, Input, Note, NoteKind, Origin
from planner.science.fish import effective_temperature

_CUBE_ROOT: Final = 1.0 / 3.0
_PER_THOUSAND: Final = 1000.0
_PERCENT: Final = 100.0


def group_named(ground: Ground, about: Id) -> GroupForecast:
    """Return the forecast of a group by its id; raises `NoSuchFigureError` when there is none."""
    for loop in ground.forecast.loops:
        for group in loop.groups:
            if group.group == about:
                return group
    raise NoSuchFigureError(f"there is no fish group {about}.")


def why_feed(ground: Ground, group: GroupForecast, day: int) -> Explanation:
    """Return why a group is fed so much on a day."""
    entry: FishGroup = ground.groups[group.group]
    reason = given_feed_note(ground, entry, group, day)
    if reason is not None:
        given = reason.kind is NoteKind.FEED_GIVEN
        inputs = (entered("value", group.feed_g[day], "g/d", group.name),) if given else ()
        return _feed(
            ground, group, day, Formula.AS_ENTERED if given else Formula.NOTHING, inputs, notes=(reason,)
        )
    match entry.feeding:
        case Feeding.GROWTH:
            return _by_growth(ground, entry, group, day)
        case Feeding.FIXED:
            value = entered("value", entry.feed_g_per_day or 0.0, "g/d", group.name)
            return _feed(ground, group, day, Formula.AS_ENTERED, (value,))
        case Feeding.PERCENT | Feeding.TABLE:
            return _by_percent(ground, entry, group, day)


def _feed(
    ground: Ground,
    group: GroupForecast,
    day: int,
    formula: Formula,
    inputs: tuple[Input, ...],
    *,
    children: tuple[Explanation, ...] = (),
    notes: tuple[Note, ...] = (),
) -> Explanation:
    return Explanation(
        title="feed",
        about=group.name,
        value=float(group.feed_g[day]),
        unit="g/d",
        formula=formula,
        inputs=inputs,
        children=children,
        notes=notes,
        on=ground.forecast.ruler.date_of(day),
    )


def given_feed_note(ground: Ground, entry: FishGroup, group: GroupForecast, day: int) -> Note | None:
    """Return the note of a day on which feed does not go by the group's own rule, else None."""
    if group.count[day] <= 0:
        return Note(kind=NoteKind.NO_FISH)
    events = [event for event in ground.farm.fish_events if event.group == group.group]
    fasting = _latest(ground, events, FishEventKind.OFF_FEED, day)
    if fasting is not None:
        return Note(kind=NoteKind.OFF_FEED, values=(("from", fasting.on.isoformat()),))
    purge = round(ground.catalogue.fish[entry.species].purge_days)
    on = ground.forecast.ruler.date_of(day)
    for event in events:
        whole = event.kind is FishEventKind.HARVEST and event.count is None
        if whole and event.on - timedelta(days=purge) <= on < event.on:
            return Note(
                kind=NoteKind.PURGED, values=(("harvest", event.on.isoformat()), ("days", float(purge)))
            )
    given = _latest(ground, events, FishEventKind.FEED_GIVEN, day)
    if given is not None:
        return Note(kind=NoteKind.FEED_GIVEN, values=(("from", given.on.isoformat()),))
    return _appetite_note(ground, entry, day)


def _appetite_note(ground: Ground, entry: FishGroup, day: int) -> Note | None:
    """Return the note of a day on which a ration stops because of the water, else None."""
    species, water_c = ground.catalogue.fish[entry.species], water_c_on(ground, entry, day)
    rationed = entry.feeding in {Feeding.PERCENT, Feeding.TABLE}
    if not rationed or species.base_c < water_c < species.ceiling_c:
        return None
    told = (("water_c", water_c), ("base_c", species.base_c), ("ceiling_c", species.ceiling_c))
    return Note(kind=NoteKind.NO_APPETITE, values=told)


def _latest(ground: Ground, events: list[FishEvent], kind: FishEventKind, day: int) -> FishEvent | None:
    """Return the last event of a kind up to a day, when it still holds on that day."""
    on = ground.forecast.ruler.date_of(day)
    before = [event for event in events if event.kind is kind and event.on <= on]
    last = max(before, key=_on, default=None)
    if last is None or on >= last.on + timedelta(days=last.days or 0):
        return None
    return last


def _on(event: FishEvent) -> int:
    return event.on.toordinal()


def stage_of(species: FishSpecies, weight_g: float) -> int:
    """Return the number of the stage that a weight falls in, from 1."""
    for number, stage in enumerate(species.stages, start=1):
        if weight_g <= stage.up_to_g:
            return number
    return len(species.stages)


def _stage_input(ground: Ground, entry: FishGroup, group: GroupForecast, day: int, name: str) -> Input:
    number = stage_of(ground.catalogue.fish[entry.species], float(group.weight_g[day]))
    path = f"fish/{entry.species}/stage/{number}/{name}"
    return ground.own_or_figure(name, getattr(entry, name), path, about=group.name)


def _by_growth(ground: Ground, entry: FishGroup, group: GroupForecast, day: int) -> Explanation:
    gain = _gain(ground, entry, group, day)
    return _feed(
        ground,
        group,
        day,
        Formula.FEED_BY_GAIN,
        (worked("gain_g", gain.value or 0.0, "g/d"), _stage_input(ground, entry, group, day, "fcr")),
        children=(gain,),
        notes=_water_notes(ground, entry),
    )


def _water_notes(ground: Ground, entry: FishGroup) -> tuple[Note, ...]:
    if _loop(ground, entry).water_c:
        return ()
    optimum = ground.catalogue.fish[entry.species].optimum_c
    return (Note(kind=NoteKind.ASSUMED_TEMPERATURE, values=(("assumed_c", optimum),)),)


def _loop(ground: Ground, entry: FishGroup) -> Loop:
    found: Loop = ground.loops[ground.tanks[entry.tank].loop]
    return found


def _gain(ground: Ground, entry: FishGroup, group: GroupForecast, day: int) -> Explanation:
    after = _weight_after(ground, entry, group, day)
    return Explanation(
        title="gain",
        about=group.name,
        value=float(group.gain_g[day]),
        unit="g/d",
        formula=Formula.GAIN,
        inputs=(
            worked("count", group.count[day], "fish"),
            worked("weight_g", group.weight_g[day], "g"),
            worked("weight_after_g", after.value or 0.0, "g"),
        ),
        children=(after,),
        on=ground.forecast.ruler.date_of(day),
    )


def _weight_after(ground: Ground, entry: FishGroup, group: GroupForecast, day: int) -> Explanation:
    warmth = _warmth(ground, entry, day)
    bare = Explanation(
        title="weight after the day",
        about=group.name,
        value=0.0,
        unit="g",
        formula=Formula.WEIGHT_AFTER,
        inputs=(
            worked("weight_g", group.weight_g[day], "g"),
            _stage_input(ground, entry, group, day, "tgc"),
            ground.figure("fry_g", "coefficient/fish/fry_weight_g"),
            worked("effective_c", warmth.value or 0.0, "°C"),
        ),
        children=(warmth,),
        on=ground.forecast.ruler.date_of(day),
    )
    return replace(bare, value=recomputed(bare))


def water_c_on(ground: Ground, entry: FishGroup, day: int) -> float:
    """Return the water temperature a group lives in on a day [°C]; its best where it is not known."""
    on = ground.forecast.ruler.date_of(day)
    series = ground.forecaster.water_c(_loop(ground, entry), start_on=on, days=1)
    return ground.catalogue.fish[entry.species].optimum_c if series is None else float(series[0])


def _warmth(ground: Ground, entry: FishGroup, day: int) -> Explanation:
    path, water_c = f"fish/{entry.species}/", water_c_on(ground, entry, day)
    names = ("base_c", "optimum_c", "ceiling_c")
    bounds = tuple(ground.figure(name, f"{path}{name}") for name in names)
    base, optimum, ceiling = (one.value for one in bounds)
    known = bool(_loop(ground, entry).water_c)
    water = (
        entered("water_c", water_c, "°C", _loop(ground, entry).name)
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
        notes=_water_notes(ground, entry),
        on=ground.forecast.ruler.date_of(day),
    )


def _by_percent(ground: Ground, entry: FishGroup, group: GroupForecast, day: int) -> Explanation:
    share = 1.0
    children: tuple[Explanation, ...] = ()
    if entry.feeding is Feeding.PERCENT:
        percent = entered("percent", entry.feed_percent or 0.0, "% of body weight a day", group.name)
    else:
        table = ground.catalogue.feeding_tables[entry.feeding_table]
        warmth = _warmth(ground, entry, day)
        ration, species = table_ration(table), ground.catalogue.fish[entry.species]
        eaten = share_of_table(ration, np.asarray([warmth.value or 0.0]), species)
        if eaten is not None:
            share, children = float(eaten[0]), (warmth,)
        percent = Input(
            name="percent",
            value=ration(float(group.weight_g[day]), water_c_on(ground, entry, day)),
            unit="% of body weight a day",
            origin=Origin.FIGURE,
            about=table.name,
            path=f"feeding table/{table.key}",
            source=table.source,
            confidence=table.confidence.value,
            conditions=table.conditions,
        )
    inputs = (
        worked("count", group.count[day], "fish"),
        worked("weight_g", group.weight_g[day], "g"),
        percent,
    )
    notes = _water_notes(ground, entry) if entry.feeding is Feeding.TABLE else ()
    if not children:
        return _feed(ground, group, day, Formula.FEED_BY_PERCENT, inputs, notes=notes)
    eats = worked("appetite_share", share, "1")
    return _feed(ground, group, day, Formula.FEED_BY_TABLE, (*inputs, eats), children=children, notes=notes)


def why_feed_mean(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return why a loop's fish are fed so much a day in a week."""
    value = float(ground.forecast.ruler.weekly_mean(loop.feed_g)[week])
    return Explanation(
        title="feed a day in the week",
        about=loop.name,
        value=value,
        unit="g/d",
        formula=Formula.SUM,
        children=tuple(why_group_mean(ground, group, week) for group in loop.groups),
        notes=() if loop.groups else (Note(kind=NoteKind.NO_FISH),),
        on=ground.forecast.ruler.week_start(week),
    )


def why_group_mean(ground: Ground, group: GroupForecast, week: int) -> Explanation:
    """Return why a group is fed so much a day in a week: its seven days."""
    days = week_days(week)
    return Explanation(
        title="feed of a group in the week",
        about=group.name,
        value=float(group.feed_g[days].sum() / DAYS_PER_WEEK),
        unit="g/d",
        formula=Formula.MEAN,
        children=tuple(why_feed(ground, group, day) for day in range(days.start, days.stop)),
        on=ground.forecast.ruler.week_start(week),
    )


def why_density(ground: Ground, tank_id: Id, day: int) -> Explanation:
    """Return why a tank holds so many kilograms of fish a cubic metre on a day."""
    tank = ground.tanks.get(tank_id)
    if tank is None:
        raise NoSuchFigureError(f"there is no tank {tank_id}.")
    inside = [group for loop in ground.forecast.loops for group in loop.groups if group.tank == tank_id]
    masses = tuple(why_mass(ground, group, day) for group in inside)
    mass_kg = sum(float(group.biomass_g[day]) for group in inside) / _PER_THOUSAND
    limits = _limits(ground, inside, volume_l=tank.volume_l)
    value = mass_kg / (tank.volume_l / _PER_THOUSAND)
    over = bool(limits) and value > min(limit.value for limit in limits)
    return Explanation(
        title="density",
        about=tank.name,
        value=value,
        unit="kg/m³",
        formula=Formula.DENSITY,
        inputs=(
            worked("mass_kg", mass_kg, "kg"),
            entered("volume_l", tank.volume_l, "L", tank.name),
            *limits,
        ),
        children=masses,
        notes=(Note(kind=NoteKind.OVER_LIMIT),) if over else (),
        on=ground.forecast.ruler.date_of(day),
    )


def _limits(ground: Ground, inside: list[GroupForecast], *, volume_l: float) -> tuple[Input, ...]:
    small = is_small_tank(volume_l, ground.catalogue)
    name = "density_limit_" + ("small_tank_" if small else "") + "kg_per_m3"
    keys = dict.fromkeys(ground.groups[group.group].species for group in inside)
    return tuple(ground.figure("limit", f"fish/{key}/{name}") for key in keys)


def why_mass(ground: Ground, group: GroupForecast, day: int) -> Explanation:
    """Return why a group weighs so much on a day: its fish, times what each weighs."""
    return Explanation(
        title="mass of a group",
        about=group.name,
        value=float(group.biomass_g[day]) / _PER_THOUSAND,
        unit="kg",
        formula=Formula.GROUP_MASS,
        inputs=(worked("count", group.count[day], "fish"), worked("weight_g", group.weight_g[day], "g")),
        on=ground.forecast.ruler.date_of(day),
    )
