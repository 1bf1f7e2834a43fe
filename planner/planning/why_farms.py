"""Why a farm comes off as it does in some weeks or over the plan: the figures that plans are compared by.

Each farm has a forecaster of its own here, for answers are made later, when others have been foreseen.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from typing import Final

import numpy as np

from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.fields import NO_ID, Id
from planner.forecast.engine import Forecaster
from planner.forecast.values import Floats, LoopForecast
from planner.forecast.verdicts import supply_ratios
from planner.forecast.why.balance import why_feed_ratio, why_ratio
from planner.forecast.why.crowding import why_density
from planner.forecast.why.feed_holes import why_feed_amount
from planner.forecast.why.fish_totals import why_fish_harvests
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, worked
from planner.forecast.why.many import MOST_PARTS, largest, others_note
from planner.forecast.why.sums import why_total
from planner.forecast.why.values import Explanation, Note, NoteKind

_NOTHING_M2: Final = 1e-6


def ground_of(farm: Farm, forecaster: Forecaster) -> Ground:
    """Return what answers about a farm stand on, with a forecaster of its own."""
    own = Forecaster(forecaster.catalogue_for(farm))
    bare = replace(farm, own_entries=())
    return Ground(farm=bare, forecast=own.forecast(bare), forecaster=own)


def ratios_of(ground: Ground, loop: LoopForecast) -> Floats:
    """Return supply over demand by (element, week), not a number without demand."""
    ruler = ground.forecast.ruler
    return supply_ratios(ruler.weekly_sum(loop.supply_g), ruler.weekly_sum(loop.demand_g))


def why_least(
    ground: Ground, loops: Iterable[int], weeks: slice, *, element: int | None = None
) -> Explanation:
    """Return why the least supply for its demand is so low, in some weeks of some loops; of any element."""
    found: list[tuple[float, int, int, int]] = []
    for number in loops:
        ratios = ratios_of(ground, ground.forecast.loops[number])[:, weeks]
        for row, week in np.argwhere(~np.isnan(ratios)).tolist():
            if element is None or row == element:
                found.append((float(ratios[row, week]), number, (weeks.start or 0) + week, row))
    if not found:
        return _none("ratio", "g/g", NoteKind.NOTHING_WANTED)
    _, number, week, row = min(found)
    return why_ratio(ground, number, week, row)


def why_weeks_short(ground: Ground, loops: Iterable[int], weeks: slice) -> Explanation:
    """Return in how many weeks an element is short, the worst first."""
    below = ground.bands.short_below
    found = []
    for number in loops:
        ratios = ratios_of(ground, ground.forecast.loops[number])
        least = np.where(np.isnan(ratios), np.inf, ratios)
        for week in range(*weeks.indices(ratios.shape[1])):
            row = int(least[:, week].argmin())
            if least[row, week] < below:
                found.append((float(least[row, week]), number, week, row))
    found.sort()
    parts = tuple(why_ratio(ground, number, week, row) for _, number, week, row in found[:MOST_PARTS])
    rest = len(found) - len(parts)
    return Explanation(
        title="weeks short",
        about="",
        value=float(len(found)),
        unit="weeks",
        formula=Formula.COUNTED,
        inputs=(
            *((worked("others", rest, "weeks"),) if rest else ()),
            ground.figure("short_below", "coefficient/verdict/short_below"),
        ),
        children=parts,
        notes=others_note(rest),
    )


def why_least_feed_ratio(ground: Ground, number: int, weeks: slice) -> Explanation:
    """Return why the least feed for a planted area is so little, in some weeks of a loop."""
    loop, ruler = ground.forecast.loops[number], ground.forecast.ruler
    feed = ruler.weekly_mean(loop.feed_g)
    area = ruler.weekly_mean(loop.planted_m2).sum(axis=0)
    planted = [week for week in range(*weeks.indices(ruler.weeks)) if area[week] > _NOTHING_M2]
    found = [(feed[week] / area[week], week) for week in planted]
    if not found:
        return _none("feed-rate ratio", "g/m²/d", NoteKind.NOTHING_PLANTED)
    return why_feed_ratio(ground, loop, int(min(found)[1]))


def why_fullest(
    ground: Ground, tanks: Iterable[Id], days: slice, *, limits: dict[Id, float] | None = None
) -> Explanation:
    """Return why the fullest tank is so full on its fullest day; with limits, that nearest to its own."""
    found = []
    groups = [group for loop in ground.forecast.loops for group in loop.groups]
    for tank in tanks:
        inside = [group.biomass_g for group in groups if group.tank == tank]
        if inside:
            mass = np.sum(inside, axis=0)[days] / ground.tanks[tank].volume_l
            full = mass / limits[tank] if limits else mass
            day = int(full.argmax())
            found.append((float(full[day]), (days.start or 0) + day, tank))
    if not found:
        return _none("density", "kg/m³", NoteKind.NO_FISH)
    _, day, tank = max(found)
    return why_density(ground, tank, day)


def why_grown(ground: Ground, crop: str = "") -> Explanation:
    """Return how much is harvested over the plan, of one crop or of all, in kilograms."""
    if crop and crop not in ground.forecast.crops:
        nothing = _none("harvest over the plan", "kg", NoteKind.NOTHING_PLANTED)
        return replace(nothing, about=ground.catalogue.crops[crop].name, value=0.0)
    found = why_total(ground, "kg", crop, days_of(plan_weeks(ground)))
    return replace(found, title="harvest over the plan")


def why_fed(ground: Ground) -> Explanation:
    """Return how much is fed over the plan, in kilograms."""
    found = why_feed_amount(ground, NO_ID, "", days_of(plan_weeks(ground)))
    return replace(found, title="feed over the plan")


def why_fish_taken(ground: Ground) -> Explanation:
    """Return how much fish is harvested over the plan, in kilograms."""
    found = why_fish_harvests(ground, NO_ID, days_of(plan_weeks(ground)))
    return replace(found, title="fish over the plan")


def why_occupied(ground: Ground, *, highest: bool) -> Explanation:
    """Return what share of the beds is planted, on average or in the fullest week."""
    forecast = ground.forecast
    beds = sum(loop.bed_m2 for loop in forecast.loops)
    planted: Floats = sum(
        (forecast.ruler.weekly_mean(loop.planted_m2).sum(axis=0) for loop in forecast.loops),
        start=np.zeros(forecast.ruler.weeks),
    )
    if beds <= 0.0:
        return _none("beds planted", "1", NoteKind.NOTHING_PLANTED)
    area = float(planted.max() if highest else planted.mean())
    on = forecast.ruler.week_start(int(planted.argmax())) if highest else None
    return Explanation(
        title="most of the beds planted" if highest else "beds planted",
        about="",
        value=area / beds,
        unit="1",
        formula=Formula.SHARE,
        inputs=(worked("part", area, "m²"), worked("whole", beds, "m²")),
        on=on,
    )


def why_counted(title: str, unit: str, codes: Iterable[str]) -> Explanation:
    """Return a count by what was counted."""
    parts = tuple(
        Explanation(
            title=title,
            about=code,
            value=1.0,
            unit=unit,
            formula=Formula.AS_ENTERED,
            inputs=(worked("value", 1.0, unit),),
        )
        for code in codes
    )
    kept, others, notes = largest(parts)
    return Explanation(
        title=title,
        about="",
        value=float(len(parts)),
        unit=unit,
        formula=Formula.COUNTED,
        inputs=(worked("others", others, unit),) if notes else (),
        children=kept,
        notes=notes,
    )


def plan_weeks(ground: Ground) -> slice:
    """Return all weeks of the plan."""
    return slice(0, ground.forecast.ruler.weeks)


def days_of(weeks: slice) -> slice:
    """Return the days of some weeks."""
    return slice(weeks.start * DAYS_PER_WEEK, weeks.stop * DAYS_PER_WEEK)


def _none(title: str, unit: str, kind: NoteKind) -> Explanation:
    return Explanation(
        title=title, about="", value=None, unit=unit, formula=Formula.NOTHING, notes=(Note(kind=kind),)
    )
