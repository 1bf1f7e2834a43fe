"""What the batches want and give, by day: growth, elements taken up, area planted, harvest."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from planner.farm.species import ELEMENTS
from planner.forecast.paces import PaceBook
from planner.forecast.profiles import Profile, contents, is_fruiting, picks_by_day
from planner.forecast.values import BatchTable, Bools, Floats, Ruler

_GROUPS = 2
_BED, _PICKING = 3, 4
_SPACING = 2


def demand_g(
    table: BatchTable, profiles: Sequence[Profile], paces: PaceBook, ruler: Ruler, *, loop: int
) -> Floats:
    """Return what the plants of a loop take up [g/d], shape (element, day).

    Plants of one pace and sowing day take up alike, so starts are counted and the counts are folded
    with the growth of one plant: the cost does not grow with the number of batches.
    """
    wanted = np.zeros((len(ELEMENTS), ruler.days))
    inside = table.loop == loop
    met = np.flatnonzero(np.bincount(table.pace[inside])).tolist()
    lead = max((paces.pace(number).lead for number in met), default=0)
    starts = _starts(table, inside, lead=lead, days=ruler.days)
    for number in met:
        pace = paces.pace(number)
        formed = pace.formed(starts[number, lead - pace.lead :])
        wanted += contents(profiles[paces.profile_of(number)].crop)[:, None] * formed
    return wanted


def _starts(table: BatchTable, inside: Bools, *, lead: int, days: int) -> Floats:
    """Return plants of some batches by pace and day of sowing, from `lead` days before the ruler on."""
    counted = inside & (table.sow_day >= -lead) & (table.sow_day < days)
    pace, width = table.pace[counted], lead + days
    paces = int(table.pace.max()) + 1 if table.pace.size else 0
    counts = np.bincount(
        pace * width + table.sow_day[counted] + lead, weights=table.plants[counted], minlength=paces * width
    )
    return counts.reshape(paces, width).astype(np.float64, copy=False)


def planted_m2(table: BatchTable, profiles: Sequence[Profile], ruler: Ruler, *, loop: int) -> Floats:
    """Return the area under plants in their final places [m²], rows leafy and fruiting."""
    fruiting = np.asarray([is_fruiting(profile) for profile in profiles], dtype=np.int64)
    inside = table.loop == loop
    group = fruiting[table.profile[inside]] if len(profiles) else table.profile[inside]
    width = ruler.days + 1
    change = np.zeros(_GROUPS * width)
    for column, sign in ((_SPACING, 1.0), (_PICKING, -1.0)):
        day = np.clip(table.ends[inside, column], 0, ruler.days)
        change += sign * np.bincount(
            group * width + day, weights=table.area_m2[inside], minlength=_GROUPS * width
        )
    area: Floats = np.cumsum(change.reshape(_GROUPS, width), axis=1)[:, : ruler.days]
    return np.maximum(area, 0.0)


def harvests(
    table: BatchTable, profiles: Sequence[Profile], paces: PaceBook, ruler: Ruler, *, crops: int
) -> tuple[Floats, Floats]:
    """Return plants harvested and fresh mass [g], each by (crop, day).

    Plants are those moved to their final place less losses there; a plant that is picked many times
    counts by the share of its life's harvest. What is picked again weighs what has grown since the last
    pick; seed that never came up gives no plants.
    """
    plants = np.zeros((crops, ruler.days))
    grams = np.zeros((crops, ruler.days))
    lead = max((profile.picking_window for profile in profiles), default=0)
    first = table.ends[:, _BED]
    inside = (first >= -lead) & (first < ruler.days)
    width = lead + ruler.days
    crop_of = _crop_of_pace(table)
    size = width * (max(crop_of, default=-1) + 1)
    cell = table.pace[inside] * width + first[inside] + lead
    up = table.ripe[inside] > 0.0
    counts = np.bincount(cell, weights=table.plants[inside] * up, minlength=size)
    sizes = counts
    if (table.ripe[inside] < 1.0).any():
        sizes = np.bincount(cell, weights=table.plants[inside] * table.ripe[inside], minlength=size)
    days = np.arange(ruler.days)
    for number, crop in crop_of.items():
        profile, span = profiles[paces.profile_of(number)], slice(number * width, (number + 1) * width)
        picks = picks_by_day(profile) * profile.bed_survival_share
        picked = np.convolve(counts[span], picks)[lead:width]
        plants[crop] += picked
        weighed = picked if sizes is counts else np.convolve(sizes[span], picks)[lead:width]
        again = paces.pace(number).regrown(days) if picks.size > 1 else None
        if again is not None:
            first_picks = sizes[span][lead:width] * picks[0]
            weighed = first_picks + (weighed - first_picks) * again
        grams[crop] += weighed * profile.yield_g_per_plant
    return plants, grams


def _crop_of_pace(table: BatchTable) -> dict[int, int]:
    """Return the crop of every pace that a batch has."""
    if not table.pace.size:
        return {}
    crops = np.full(int(table.pace.max()) + 1, -1)
    crops[table.pace] = table.crop
    return {number: crop for number, crop in enumerate(crops.tolist()) if crop >= 0}
