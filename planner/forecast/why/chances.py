"""Why a chance is what it is: draws that met it, how wide each thing varies and on whose word, and how sure
the share itself is.

Which thing varies the harvest most is worked out by drawing again with that thing alone left to chance.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from planner.farm.crops import Target, TargetUnit
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.forecast.chances.draw import chances_of
from planner.forecast.chances.spreads import Spreads, no_spreads, spreads_of
from planner.forecast.chances.values import LEVELS_PERCENT, Chances
from planner.forecast.engine import Forecaster
from planner.forecast.verdicts import symbol_of
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, worked
from planner.forecast.why.spreads import LUCK, PATH, spreads_of_crops, spreads_of_fish, spreads_of_week
from planner.forecast.why.values import Explanation, Input, Note, NoteKind
from planner.science.chances import percentiles

_NEXT_TO_NOTHING: Final = 1e-9


@dataclass(frozen=True, slots=True, kw_only=True)
class Asked:
    """A chance: at least so much of a crop, in heads or kilograms, in a week of the ruler."""

    crop: str
    week: int
    amount: float
    unit: TargetUnit = TargetUnit.HEADS


def asked_of(target: Target, week: int) -> Asked:
    """Return the chance that a target is met in a week."""
    return Asked(crop=target.crop, week=week, amount=target.amount_per_week, unit=target.unit)


def why_chance(ground: Ground, chances: Chances, asked: Asked) -> Explanation:
    """Return why a chance is what it is; the forecast of `ground` is the one that was drawn around."""
    ground.check_week(asked.week)
    if asked.crop not in chances.crops:
        raise NoSuchFigureError(f'"{asked.crop}" is not grown; crops are {", ".join(chances.crops)}.')
    if not math.isfinite(asked.amount) or asked.amount < 0.0:
        raise NoSuchFigureError(f"the amount is {asked.amount:g}, but must be 0 or more.")
    drawn = chances.harvest(asked.crop, asked.unit)[:, asked.week]
    # Heads are whole: a hair below the number that rounding leaves is the number.
    met = float((drawn >= math.nextafter(asked.amount, 0.0)).sum())
    chance = met / chances.draws
    return Explanation(
        title="chance",
        about=ground.catalogue.crops[asked.crop].name,
        value=chance,
        unit="1",
        formula=Formula.CHANCE,
        inputs=(
            worked("draws_that_met", met, "draws"),
            worked("draws", chances.draws, "draws"),
            entered("at_least", asked.amount, asked.unit.value, ground.catalogue.crops[asked.crop].name),
            *_levels(drawn, asked.unit.value),
        ),
        children=(_error(chance, chances.draws), *_causes(ground, chances, asked)),
        notes=(_draws_note(chances), *_near_sure(chance, chances.draws)),
        on=chances.ruler.week_start(asked.week),
    )


def why_spread_of_harvest(
    ground: Ground, chances: Chances, crop: str, week: int, unit: TargetUnit = TargetUnit.HEADS
) -> Explanation:
    """Return the middle of what draws give of a crop in a week, and what spreads them."""
    ground.check_week(week)
    if crop not in chances.crops:
        raise NoSuchFigureError(f'"{crop}" is not grown; crops are {", ".join(chances.crops)}.')
    drawn = chances.harvest(crop, unit)[:, week]
    asked = Asked(crop=crop, week=week, amount=0.0, unit=unit)
    return _middle(
        "likely harvest by draws",
        ground.catalogue.crops[crop].name,
        drawn,
        unit.value,
        chances,
        week=week,
        children=_causes(ground, chances, asked),
    )


def why_spread_of_feed(ground: Ground, chances: Chances, loop: Id, week: int) -> Explanation:
    """Return the middle of what draws feed in a week, and what spreads them."""
    ground.check_week(week)
    found = next((one for one in chances.loops if one.loop == loop), None)
    if found is None:
        raise NoSuchFigureError(f"there is no loop {loop}.")
    drawn = found.feed_g_per_day[:, week]
    return _middle(
        "likely feed by draws", found.name, drawn, "g/d", chances, week=week, children=spreads_of_fish(ground)
    )


def why_spread_of_ratio(ground: Ground, chances: Chances, loop: Id, week: int, element: int) -> Explanation:
    """Return the middle of what draws give as supply over demand in a week, and what spreads them."""
    ground.check_week(week)
    found = next((one for one in chances.loops if one.loop == loop), None)
    drawn = np.zeros(0) if found is None else found.ratio[:, element, week]
    known = drawn[~np.isnan(drawn)]
    if not known.size:
        raise NoSuchFigureError(f"nothing of {symbol_of(element)} is wanted in that week.")
    children = (*spreads_of_fish(ground), *spreads_of_crops(ground, week))
    return _middle(
        "likely ratio by draws", symbol_of(element), known, "g/g", chances, week=week, children=children
    )


def _middle(
    title: str,
    about: str,
    drawn: np.ndarray,
    unit: str,
    chances: Chances,
    *,
    week: int,
    children: tuple[Explanation, ...],
) -> Explanation:
    levels = _levels(drawn, unit)
    return Explanation(
        title=title,
        about=about,
        value=levels[1].value,
        unit=unit,
        formula=Formula.PERCENTILE,
        inputs=levels,
        children=children,
        notes=(_draws_note(chances),),
        on=chances.ruler.week_start(week),
    )


def _levels(drawn: np.ndarray, unit: str) -> tuple[Input, ...]:
    found = percentiles(drawn, levels_percent=LEVELS_PERCENT)
    names = [f"percentile_{level:.0f}" for level in LEVELS_PERCENT]
    return tuple(worked(name, float(value), unit) for name, value in zip(names, found, strict=True))


def _draws_note(chances: Chances) -> Note:
    return Note(kind=NoteKind.DRAWS, values=(("draws", f"{chances.draws:,}"), ("seed", f"{chances.seed}")))


def _near_sure(chance: float, draws: int) -> tuple[Note, ...]:
    if 0.0 < chance < 1.0:
        return ()
    return (Note(kind=NoteKind.NEAR_SURE, values=(("draws", f"{draws:,}"),)),)


def _error(chance: float, draws: int) -> Explanation:
    bare = Explanation(
        title="sampling error of the chance",
        about="",
        value=0.0,
        unit="1",
        formula=Formula.SAMPLING_ERROR,
        inputs=(worked("chance", chance, "1"), worked("draws", draws, "draws")),
    )
    return figured(bare)


# --- what varies ---------------------------------------------------------------------------------------


def _causes(ground: Ground, chances: Chances, asked: Asked) -> tuple[Explanation, ...]:
    """Return what each thing left to chance does alone to the harvest of a week, the most first."""
    farm = _only_crop(ground.farm, asked.crop)
    forecaster = Forecaster(ground.catalogue)
    forecast = forecaster.preview(farm)
    whole = spreads_of(farm, forecast, ground.catalogue)
    found = []
    for name in LUCK:
        alone = chances_of(
            farm, forecast, forecaster, seed=chances.seed, draws=chances.draws, spreads=_alone(whole, name)
        )
        drawn = alone.harvest(asked.crop, asked.unit)[:, asked.week]
        if drawn.std() > _NEXT_TO_NOTHING:
            found.append((float(drawn.std()), name))
    found.sort(key=lambda one: (-one[0], one[1]))
    return tuple(_cause(ground, chances, asked, name, wide) for wide, name in found)


def _only_crop(farm: Farm, crop: str) -> Farm:
    """Return the farm with one crop and no fish: its harvest hangs on nothing else that is drawn."""
    batches = tuple(batch for batch in farm.batches if batch.crop == crop)
    ids = {batch.id for batch in batches}
    placements = tuple(run for run in farm.placements if run.batch in ids)
    return replace(
        farm,
        own_entries=(),
        batches=batches,
        placements=placements,
        fish_groups=(),
        fish_events=(),
        doses=(),
        solids_batches=(),
    )


def _alone(whole: Spreads, name: str) -> Spreads:
    """Return spreads in which all but one thing are sure."""
    nothing = no_spreads(whole.days_sd.size)
    if name == "counted":
        return replace(nothing, counted=True)
    changed = {name: getattr(whole, name)}
    return replace(nothing, shared_variance_share=whole.shared_variance_share, **changed)


def _cause(ground: Ground, chances: Chances, asked: Asked, name: str, wide: float) -> Explanation:
    unit = asked.unit.value
    return Explanation(
        title=LUCK[name],
        about=ground.catalogue.crops[asked.crop].name,
        value=wide,
        unit=unit,
        formula=Formula.ALONE,
        inputs=(
            (ground.figure("shared_variance_share", f"{PATH}shared_variance_share"),)
            if name in ("days_sd", "yield_cv")
            else ()
        ),
        children=spreads_of_week(ground, asked.crop, asked.week, name),
        notes=(Note(kind=NoteKind.ALL_VARY),),
        on=chances.ruler.week_start(asked.week),
    )
