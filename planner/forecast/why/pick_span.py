"""Why a batch may be picked some days sooner or later than is likely, by the ranges of its crop's figures.

The batch is foreseen alone, with each figure of days, warmth, light and germination at its low and at its
high value; what each changes is put together as in all ranges. Must know nothing of luck.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Final

from planner.farm.farm import Farm
from planner.forecast.engine import Forecaster
from planner.forecast.ranges.changed import with_values
from planner.forecast.ranges.swings import LIGHT_FIGURES
from planner.forecast.why.ground import Ground
from planner.forecast.why.spans import Moved, Span
from planner.forecast.why.values import Explanation

_FIRST_PICK: Final = 3
_OF_CROP: Final = (
    "germination_days",
    "nursery_days",
    "spacing_days",
    "bed_days",
    "base_c",
    "optimum_c",
    "ceiling_c",
    "germination_base_c",
    "germination_optimum_c",
    "germination_thermal_time_c_d",
    "light_target_mol_per_m2_d",
)
"""Figures of a crop that the days to its first pick hang on."""


def why_pick_span(ground: Ground, row: int) -> Explanation:
    """Return the days to the first pick of a batch: quick, likely and slow, and which figures do most."""
    span = pick_span(ground, row)
    return span.explained(ground, low=span.lowest, high=span.highest)


def pick_span(ground: Ground, row: int) -> Span:
    """Return the days to the first pick of a batch with every figure that was moved."""
    table, batch = ground.forecast.batches, ground.farm.batches[row]
    first = int(table.ends[row, _FIRST_PICK])
    return Span(
        title="days to the first pick",
        about=batch.code,
        unit="d",
        on=ground.forecast.ruler.date_of(first),
        likely=float(first - int(table.sow_day[row])),
        moved=tuple(_moved(ground, row)),
    )


def _moved(ground: Ground, row: int) -> Iterator[Moved]:
    batch = ground.farm.batches[row]
    alone = _alone(ground.farm, row)
    likely = _days(alone, Forecaster(ground.catalogue))
    paths = [f"crop/{batch.crop}/{name}" for name in _OF_CROP if getattr(batch, name, None) is None]
    paths += [f"coefficient/season/{name}" for name in LIGHT_FIGURES]
    for path in paths:
        figure = ground.catalogue.figure(path)
        if figure.low >= figure.high:
            continue
        low, high = (
            _days(alone, Forecaster(with_values(ground.catalogue, {path: end}))) - likely
            for end in (figure.low, figure.high)
        )
        yield Moved(paths=(path,), at_low=low, at_high=high)


def _alone(farm: Farm, row: int) -> Farm:
    """Return the farm with one batch and no fish, the places of the batch kept: its light hangs on them."""
    batch = farm.batches[row]
    return replace(
        farm,
        own_entries=(),
        batches=(batch,),
        placements=tuple(run for run in farm.placements if run.batch == batch.id),
        fish_groups=(),
        fish_events=(),
        doses=(),
        solids_batches=(),
    )


def _days(farm: Farm, forecaster: Forecaster) -> float:
    table = forecaster.preview(farm).batches
    return float(int(table.ends[0, _FIRST_PICK]) - int(table.sow_day[0]))
