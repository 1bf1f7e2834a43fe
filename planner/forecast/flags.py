"""What the grower should be told about a forecast without having asked."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date, timedelta
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import DAYS_PER_WEEK, Farm, by_id
from planner.farm.fields import Id
from planner.farm.fish import Feeding, FishEventKind
from planner.farm.site import Tank
from planner.farm.species import FishSpecies
from planner.farm.withdrawal import barred_harvests
from planner.forecast.figures import BandFigures
from planner.forecast.values import (
    BatchTable,
    Flag,
    FlagKind,
    Floats,
    GroupForecast,
    LoopForecast,
    Ruler,
)
from planner.forecast.verdicts import supply_ratios, symbol_of

_G_PER_KG: Final = 1000.0
_L_PER_M3: Final = 1000.0


def slow_flags(farm: Farm, table: BatchTable, ruler: Ruler) -> Iterator[Flag]:
    """Yield a flag for every batch that is given up because its season is too cold, hot or dark."""
    slow = np.flatnonzero(table.ripe < 1.0)
    picked, sizes = table.ends[slow, _BED].tolist(), table.ripe[slow].tolist()
    for row, day, size in zip(slow.tolist(), picked, sizes, strict=True):
        batch = farm.batches[row]
        yield Flag(
            kind=FlagKind.GIVEN_UP,
            about=batch.id,
            name=batch.code,
            on=batch.sow_on,
            until_on=ruler.date_of(day),
            values=(("crop", batch.crop), ("size_share", size)),
        )


_BED: Final = 3


def climate_flags(
    farm: Farm, catalogue: Catalogue, ruler: Ruler, *, water_c: Mapping[Id, Floats | None]
) -> Iterator[Flag]:
    """Yield a flag where the climate is not known, and where fish are too cold or too warm.

    Light is known where the latitude is. `water_c` is the water of each loop by day [°C], None where it is
    not known.
    """
    for site in farm.sites:
        if not (site.air_c and (site.radiation_mj_per_m2_d or site.latitude_deg is not None)):
            yield Flag(kind=FlagKind.NO_CLIMATE, about=site.id, name=site.name)
    tanks = by_id(farm.tanks)
    loops = by_id(farm.loops)
    for group in farm.fish_groups:
        loop = loops[tanks[group.tank].loop]
        species = catalogue.fish[group.species]
        water = water_c[loop.id]
        if water is None:
            if group.feeding is Feeding.GROWTH:
                yield Flag(
                    kind=FlagKind.WATER_TEMPERATURE,
                    about=group.id,
                    name=group.name,
                    values=(("assumed_c", species.optimum_c),),
                )
        else:
            yield from _warmth_flags(group.id, group.name, species, water, ruler)


def _warmth_flags(
    about: Id, name: str, species: FishSpecies, water: np.ndarray, ruler: Ruler
) -> Iterator[Flag]:
    harmful = (water <= species.lethal_low_c) | (water >= species.lethal_high_c)
    for first, last in runs(harmful):
        worst = water[first : last + 1]
        yield Flag(
            kind=FlagKind.LETHAL_TEMPERATURE,
            about=about,
            name=name,
            on=ruler.date_of(first),
            until_on=ruler.date_of(last),
            values=(("lowest_c", float(worst.min())), ("highest_c", float(worst.max()))),
        )


def appetite_flags(
    farm: Farm, catalogue: Catalogue, loops: Sequence[LoopForecast], ruler: Ruler
) -> Iterator[Flag]:
    """Yield a flag for every week or more in which swimming fish are too cold or too warm to feed."""
    species_of = {group.id: catalogue.fish[group.species] for group in farm.fish_groups}
    for loop in loops:
        for group in loop.groups if loop.water_c is not None else ():
            species, water = species_of[group.group], np.asarray(loop.water_c)
            listless = (group.count > 0) & ((water <= species.base_c) | (water >= species.ceiling_c))
            for first, last in runs(listless):
                if last - first + 1 >= DAYS_PER_WEEK:
                    yield _listless_flag(group, species, water[first : last + 1], first, ruler)


def overfed_flags(
    farm: Farm, catalogue: Catalogue, loops: Sequence[LoopForecast], ruler: Ruler
) -> Iterator[Flag]:
    """Yield a flag for every span in which a group that feeds is given more than it can eat."""
    entered = {group.id: group for group in farm.fish_groups}
    for group in (group for loop in loops for group in loop.groups):
        entry = entered[group.group]
        species = catalogue.fish[entry.species]
        bounds = [stage.up_to_g for stage in species.stages[:-1]]
        stage = np.searchsorted(bounds, group.weight_g, side="left")
        fcr = np.asarray([each.fcr for each in species.stages])[stage] if entry.fcr is None else entry.fcr
        eaten = group.gain_g * fcr
        left = (group.gain_g > 0.0) & (group.feed_g > eaten * (1.0 + _LEFT_OVER))
        for first, last in runs(left):
            fed = group.feed_g[first : last + 1]
            yield Flag(
                kind=FlagKind.OVERFED,
                about=group.group,
                name=group.name,
                on=ruler.date_of(first),
                until_on=ruler.date_of(last),
                values=(
                    ("fed_g_per_day", float(fed.max())),
                    ("eaten_share", float((eaten[first : last + 1] / fed).min())),
                ),
            )


_LEFT_OVER: Final = 1e-6
"""Less than this of the feed is noise of the arithmetic, not feed left over."""


def treated_flags(farm: Farm) -> Iterator[Flag]:
    """Yield a flag for every treatment after which fish are not cleared yet, and for each harvest it bars."""
    names = {group.id: group.name for group in farm.fish_groups}
    barred = [harvest for harvest, _treatment in barred_harvests(farm.fish_events)]
    open_ends = (event for event in farm.fish_events if event.kind is FishEventKind.TREATED)
    for event in (*(each for each in open_ends if each.cleared_on is None), *barred):
        kind = FlagKind.TREATED if event.kind is FishEventKind.TREATED else FlagKind.HARVEST_BARRED
        yield Flag(kind=kind, about=event.group, name=names[event.group], on=event.on)


def _listless_flag(
    group: GroupForecast, species: FishSpecies, water: Floats, first: int, ruler: Ruler
) -> Flag:
    return Flag(
        kind=FlagKind.NO_APPETITE,
        about=group.group,
        name=group.name,
        on=ruler.date_of(first),
        until_on=ruler.date_of(first + water.size - 1),
        values=(
            ("lowest_c", float(water.min())),
            ("highest_c", float(water.max())),
            ("base_c", species.base_c),
            ("ceiling_c", species.ceiling_c),
        ),
    )


def runs(marked: np.ndarray) -> Iterator[tuple[int, int]]:
    """Yield first and last position of every unbroken run of true values."""
    edges = np.diff(np.asarray(marked, dtype=np.int8), prepend=0, append=0)
    yield from zip(np.flatnonzero(edges > 0).tolist(), (np.flatnonzero(edges < 0) - 1).tolist(), strict=True)


def is_small_tank(volume_l: float, catalogue: Catalogue) -> bool:
    """Tell whether a tank is so small that fish are stocked at half the density."""
    return volume_l < catalogue.figure("coefficient/fish/small_tank_l").value


def density_limit(species: FishSpecies, volume_l: float, catalogue: Catalogue) -> float:
    """Return the most fish of a species that a tank may hold [kg/m³]."""
    if is_small_tank(volume_l, catalogue):
        return species.density_limit_small_tank_kg_per_m3
    return species.density_limit_kg_per_m3


def tank_density(
    farm: Farm, catalogue: Catalogue, groups: Sequence[GroupForecast], tank: Tank, ruler: Ruler
) -> tuple[Floats, float] | None:
    """Return fish in a tank by day and the lowest limit of its species [kg/m³]; None for an empty tank."""
    inside = [group for group in groups if group.tank == tank.id]
    if not inside:
        return None
    entered = by_id(farm.fish_groups)
    kinds = [catalogue.fish[entered[group.group].species] for group in inside]
    limit = min(density_limit(kind, tank.volume_l, catalogue) for kind in kinds)
    mass_kg = sum((group.biomass_g for group in inside), start=np.zeros(ruler.days)) / _G_PER_KG
    return mass_kg / (tank.volume_l / _L_PER_M3), limit


def density_flags(
    farm: Farm, catalogue: Catalogue, groups: Sequence[GroupForecast], ruler: Ruler
) -> Iterator[Flag]:
    """Yield a flag for every span in which a tank holds more fish than its species' limit."""
    for tank in farm.tanks:
        found = tank_density(farm, catalogue, groups, tank, ruler)
        if found is None:
            continue
        density, limit = found
        for first, last in runs(density > limit):
            yield Flag(
                kind=FlagKind.DENSITY,
                about=tank.id,
                name=tank.name,
                on=ruler.date_of(first),
                until_on=ruler.date_of(last),
                values=(("highest_kg_per_m3", float(density[first : last + 1].max())), ("limit", limit)),
            )


def supply_flags(loops: Sequence[LoopForecast], ruler: Ruler, figures: BandFigures) -> Iterator[Flag]:
    """Yield a flag for every run of weeks in which an element is short, and for falls of the feed."""
    for loop in loops:
        supply, demand = ruler.weekly_sum(loop.supply_g), ruler.weekly_sum(loop.demand_g)
        ratios = supply_ratios(supply, demand)
        short = ratios < figures.short_below
        for first, last in runs(np.asarray(short.any(axis=0))):
            yield _short_flag(loop, ratios, short, first=first, last=last, ruler=ruler)
        yield from _fall_flags(loop, ruler)


def _short_flag(
    loop: LoopForecast, ratios: Floats, short: np.ndarray, *, first: int, last: int, ruler: Ruler
) -> Flag:
    weeks = slice(first, last + 1)
    elements = np.asarray(short[:, weeks].any(axis=1)).nonzero()[0]
    return Flag(
        kind=FlagKind.SHORT_SUPPLY,
        about=loop.loop,
        name=loop.name,
        on=ruler.week_start(first),
        until_on=ruler.week_start(last + 1) - timedelta(days=1),
        values=(
            ("elements", " ".join(symbol_of(int(number)) for number in elements)),
            ("lowest_ratio", float(np.nanmin(ratios[:, weeks]))),
        ),
    )


def _fall_flags(loop: LoopForecast, ruler: Ruler) -> Iterator[Flag]:
    """Yield a flag for every harvest of fish with the share by which the loop's feed falls."""
    for group in loop.groups:
        for day in group.harvest_count.nonzero()[0]:
            before, after = feed_around(loop.feed_g, int(day))
            if before > after:
                yield Flag(
                    kind=FlagKind.FEED_FALLS,
                    about=group.group,
                    name=group.name,
                    on=ruler.date_of(int(day)),
                    until_on=_recovered_on(loop.feed_g, int(day), before, ruler),
                    values=(
                        ("fish", float(group.harvest_count[day])),
                        ("fall_share", 1.0 - after / before),
                        ("loop", loop.name),
                    ),
                )


_WEEK: Final = 7
_MONTH: Final = 28


def feed_around(feed_g: np.ndarray, day: int) -> tuple[float, float]:
    """Return mean feed in the four weeks before a day and in the week from it [g/d]."""
    before = feed_g[max(day - _MONTH, 0) : day]
    after = feed_g[day : day + _WEEK]
    return (float(before.mean()) if before.size else 0.0), (float(after.mean()) if after.size else 0.0)


def _recovered_on(feed_g: np.ndarray, day: int, before: float, ruler: Ruler) -> date | None:
    """Return the first date on which the feed is back, None when it is not within the plan."""
    back = (feed_g[day:] >= before).nonzero()[0]
    return ruler.date_of(day + int(back[0])) if back.size else None
