"""Why the forecast warns of something: the figure, the limit it passes and its source, and until when."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from datetime import date
from typing import Final

import numpy as np

from planner.farm.crops import Phase
from planner.farm.farm import DAYS_PER_WEEK, by_id
from planner.farm.fields import Id
from planner.farm.fish import FishGroup
from planner.farm.withdrawal import treatment_barring
from planner.forecast.flags import tank_density
from planner.forecast.values import Flag, FlagKind
from planner.forecast.verdicts import symbol_of
from planner.forecast.why.balance import why_ratio
from planner.forecast.why.batches import why_first_pick
from planner.forecast.why.crowding import why_density
from planner.forecast.why.feed_holes import why_fall
from planner.forecast.why.fish import group_named, why_feed
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, worked
from planner.forecast.why.growing import stage_input
from planner.forecast.why.growth import why_gain
from planner.forecast.why.values import Explanation, Input, Note, NoteKind

_PERCENT: Final = 100.0


def why_flag(ground: Ground, part: str, about: Id, on: date | None) -> Explanation:
    """Return why there is a flag; `part` is its `FlagKind` by value, without a day the first of its kind.

    Raises `NoSuchFigureError` when the forecast has no such flag.
    """
    there = [flag for flag in ground.forecast.flags if flag.about == about]
    found = [flag for flag in there if flag.kind.value == part and on in (None, flag.on)]
    if not found:
        known = dict.fromkeys(_told(flag) for flag in there)
        flags = f"its flags are {', '.join(known)}" if known else "it has none"
        when = "" if on is None else f" on {on.isoformat()}"
        raise NoSuchFigureError(f'there is no flag "{part}"{when}; {flags}.')
    flag = found[0]
    answer = _ANSWERS[flag.kind](ground, flag)
    return replace(answer, notes=(*answer.notes, *_span_note(flag)), on=flag.on)


def _told(flag: Flag) -> str:
    return flag.kind.value if flag.on is None else f"{flag.kind.value} ({flag.on.isoformat()})"


def _span_note(flag: Flag) -> tuple[Note, ...]:
    if flag.on is None or flag.until_on is None or flag.kind is FlagKind.FEED_FALLS:
        return ()
    told = (("from", flag.on.isoformat()), ("until", flag.until_on.isoformat()))
    return (Note(kind=NoteKind.FLAG_SPAN, values=told),)


def _flag(
    flag: Flag,
    value: float | None,
    unit: str,
    formula: Formula,
    inputs: tuple[Input, ...] = (),
    *,
    children: tuple[Explanation, ...] = (),
    notes: tuple[Note, ...] = (),
) -> Explanation:
    return Explanation(
        title=f"flag: {flag.kind.value}",
        about=flag.name,
        value=value,
        unit=unit,
        formula=formula,
        inputs=inputs,
        children=children,
        notes=notes,
    )


def _no_climate(ground: Ground, flag: Flag) -> Explanation:
    site = by_id(ground.farm.sites)[flag.about]
    missing = [
        *(() if site.air_c else ("the air temperature of the months",)),
        *(
            ()
            if site.radiation_mj_per_m2_d or site.latitude_deg is not None
            else ("latitude or radiation, which tell the light",)
        ),
    ]
    notes = tuple(Note(kind=NoteKind.NOT_ENTERED, values=(("what", what),)) for what in missing)
    return _flag(flag, None, "", Formula.MISSING, notes=notes)


def _unplaced(ground: Ground, flag: Flag) -> Explanation:
    batch = ground.farm.batches[ground.row(flag.about)]
    placed = sum(
        run.count for run in ground.farm.placements if run.batch == batch.id and run.phase is Phase.BED
    )
    return _flag(
        flag,
        float(dict(flag.values)["plants"]),
        "plants",
        Formula.UNPLACED,
        (
            entered("plants", batch.plants, "plants", batch.code),
            entered("placed", placed, "places", batch.code),
        ),
    )


def _not_suited(ground: Ground, flag: Flag) -> Explanation:
    values = dict(flag.values)
    crop = ground.catalogue.crops[str(values["crop"])]
    told = (
        ("crop", crop.name),
        ("bed", str(values["bed"])),
        ("kind", str(values["bed kind"])),
        ("suited", ", ".join(kind.value for kind in crop.beds)),
    )
    return _flag(flag, None, "", Formula.MISSING, notes=(Note(kind=NoteKind.NOT_SUITED, values=told),))


def _density(ground: Ground, flag: Flag) -> Explanation:
    groups = [group for loop in ground.forecast.loops for group in loop.groups]
    ruler = ground.forecast.ruler
    found = tank_density(ground.farm, ground.catalogue, groups, ground.tanks[flag.about], ruler)
    assert found is not None
    worst = why_density(ground, flag.about, _worst(ground, flag, found[0]))
    limits = tuple(one for one in worst.inputs if one.name == "limit")
    return _flag(flag, worst.value, "kg/m³", Formula.MOST, limits, children=(worst,))


def _days(ground: Ground, flag: Flag) -> slice:
    assert flag.on is not None
    assert flag.until_on is not None
    day_of = ground.forecast.ruler.day_of
    return slice(day_of(flag.on), day_of(flag.until_on) + 1)


def _worst(ground: Ground, flag: Flag, by_day: np.ndarray) -> int:
    """Return the day of a flag on which a figure is highest."""
    days = _days(ground, flag)
    worst: int = days.start + int(np.argmax(by_day[days]))
    return worst


def _feed_falls(ground: Ground, flag: Flag) -> Explanation:
    assert flag.on is not None
    return why_fall(ground, group_named(ground, flag.about), ground.forecast.ruler.day_of(flag.on))


def _short_supply(ground: Ground, flag: Flag) -> Explanation:
    number, loop = ground.loop_forecast(flag.about)
    days = _days(ground, flag)
    weeks = range(days.start // DAYS_PER_WEEK, days.stop // DAYS_PER_WEEK)
    ratios = {
        (ratio, week, element)
        for week in weeks
        for element, ratio in enumerate(ground.verdict(loop, week).ratio)
        if ratio is not None
    }
    lowest, week, element = min(ratios)
    told = (("elements", str(dict(flag.values)["elements"])), ("element", symbol_of(element)))
    return _flag(
        flag,
        lowest,
        "g/g",
        Formula.LEAST,
        (ground.figure("short_below", "coefficient/verdict/short_below"),),
        children=(why_ratio(ground, number, week, element),),
        notes=(Note(kind=NoteKind.SHORT_OF, values=told),),
    )


def _water_temperature(ground: Ground, flag: Flag) -> Explanation:
    entry: FishGroup = ground.groups[flag.about]
    best = ground.figure("optimum_c", f"fish/{entry.species}/optimum_c")
    note = Note(kind=NoteKind.ASSUMED_TEMPERATURE, values=(("assumed_c", best.value),))
    return _flag(flag, best.value, "°C", Formula.ASSUMED_BEST, (best,), notes=(note,))


def _beyond(ground: Ground, flag: Flag, low: str, high: str) -> Explanation:
    """Explain water that is colder or warmer than two figures of the fish."""
    entry: FishGroup = ground.groups[flag.about]
    values, path = dict(flag.values), f"fish/{entry.species}/"
    lowest, highest = float(values["lowest_c"]), float(values["highest_c"])
    least = ground.figure("low_limit_c", f"{path}{low}")
    return _flag(
        flag,
        lowest if lowest <= least.value else highest,
        "°C",
        Formula.BEYOND,
        (
            worked("lowest_c", lowest, "°C"),
            worked("highest_c", highest, "°C"),
            least,
            ground.figure("high_limit_c", f"{path}{high}"),
        ),
    )


def _lethal(ground: Ground, flag: Flag) -> Explanation:
    return _beyond(ground, flag, "lethal_low_c", "lethal_high_c")


def _no_appetite(ground: Ground, flag: Flag) -> Explanation:
    return _beyond(ground, flag, "base_c", "ceiling_c")


def _overfed(ground: Ground, flag: Flag) -> Explanation:
    """Explain the day on which the least of the feed is eaten."""
    group, entry = group_named(ground, flag.about), ground.groups[flag.about]
    share = float(dict(flag.values)["eaten_share"])
    days = _days(ground, flag)
    fed = group.feed_g[days]
    fcr = np.asarray(
        [stage_input(ground, entry, group, day, "fcr").value for day in range(days.start, days.stop)]
    )
    day = days.start + int((group.gain_g[days] * fcr / fed).argmin())
    return _flag(
        flag,
        share * _PERCENT,
        "%",
        Formula.EATEN,
        (
            worked("gain_g", group.gain_g[day], "g/d"),
            stage_input(ground, entry, group, day, "fcr"),
            worked("feed_g", group.feed_g[day], "g/d"),
        ),
        children=(why_gain(ground, group, day), why_feed(ground, group, day)),
        notes=(Note(kind=NoteKind.NEVER_ABOVE),),
    )


def _given_up(ground: Ground, flag: Flag) -> Explanation:
    size = float(dict(flag.values)["size_share"])
    return _flag(
        flag,
        size,
        "1",
        Formula.SIZE_REACHED,
        (
            worked("size_share", size, "1"),
            ground.figure("longest_stretch", "coefficient/season/longest_stretch"),
        ),
        children=(why_first_pick(ground, ground.row(flag.about)),),
    )


def _treated(_ground: Ground, flag: Flag) -> Explanation:
    on = "" if flag.on is None else flag.on.isoformat()
    note = Note(kind=NoteKind.TREATED_ON, values=(("on", on),))
    return _flag(flag, None, "", Formula.NOT_CLEARED, notes=(note,))


def _barred(ground: Ground, flag: Flag) -> Explanation:
    assert flag.on is not None
    treatment = treatment_barring(flag.about, flag.on, ground.farm.fish_events)
    assert treatment is not None
    cleared = treatment.cleared_on
    told = (
        ("harvest", flag.on.isoformat()),
        ("on", treatment.on.isoformat()),
        ("cleared", "not entered yet" if cleared is None else cleared.isoformat()),
    )
    return _flag(flag, None, "", Formula.NOT_CLEARED, notes=(Note(kind=NoteKind.BARRED, values=told),))


_ANSWERS: Final[Mapping[FlagKind, Callable[[Ground, Flag], Explanation]]] = {
    FlagKind.NO_CLIMATE: _no_climate,
    FlagKind.UNPLACED: _unplaced,
    FlagKind.NOT_SUITED: _not_suited,
    FlagKind.DENSITY: _density,
    FlagKind.FEED_FALLS: _feed_falls,
    FlagKind.SHORT_SUPPLY: _short_supply,
    FlagKind.WATER_TEMPERATURE: _water_temperature,
    FlagKind.LETHAL_TEMPERATURE: _lethal,
    FlagKind.NO_APPETITE: _no_appetite,
    FlagKind.OVERFED: _overfed,
    FlagKind.GIVEN_UP: _given_up,
    FlagKind.TREATED: _treated,
    FlagKind.HARVEST_BARRED: _barred,
}
"""Who answers for each kind; places that are short are told by planning, not by the forecast."""
