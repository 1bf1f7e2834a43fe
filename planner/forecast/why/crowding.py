"""Why a group weighs, eats and gains so much on a day by its number and weight, and how full a tank is."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from planner.farm.fields import Id
from planner.forecast.flags import is_small_tank
from planner.forecast.values import GroupForecast
from planner.forecast.why.fish import why_feed
from planner.forecast.why.fish_count import why_count
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, worked
from planner.forecast.why.growth import why_gain, why_weight
from planner.forecast.why.values import Explanation, Input, Note, NoteKind

_PER_THOUSAND: Final = 1000.0


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
        children=(why_count(ground, group, day), why_weight(ground, group, day)),
        on=ground.forecast.ruler.date_of(day),
    )


def with_fish(answer: Explanation, ground: Ground, group: GroupForecast, day: int) -> Explanation:
    """Return an answer for a day with what is behind number and weight of its fish, where it names them.

    Only what is asked itself goes down so far: each day of the growth before it would do so again.
    """
    names = {one.name for part in (answer, *answer.children) for one in part.inputs}
    behind = (
        *((why_count(ground, group, day),) if "count" in names else ()),
        *((why_weight(ground, group, day),) if "weight_g" in names else ()),
    )
    return replace(answer, children=(*answer.children, *behind))


def why_fed(ground: Ground, group: GroupForecast, day: int) -> Explanation:
    """Return why a group is fed so much on a day, with what is behind its fish."""
    return with_fish(why_feed(ground, group, day), ground, group, day)


def why_gained(ground: Ground, group: GroupForecast, day: int) -> Explanation:
    """Return why a group gains so much on a day, with what is behind its fish."""
    return with_fish(why_gain(ground, group, day), ground, group, day)
