"""Makes scenarios out of what is asked, and holds them against the farm; the farm itself is never touched.

Must know nothing of words or widgets.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, timedelta
from threading import Event

from planner.desk.plan.asks import WhatAsk, WhatKind
from planner.farm.changes import Change, ChangeSet, applied, with_places
from planner.farm.crops import Batch
from planner.farm.farm import Farm, by_id
from planner.farm.fields import NO_ID
from planner.farm.fish import FishGroup
from planner.forecast.engine import Forecaster
from planner.planning.answering import Whys
from planner.planning.scenarios.compare import Comparison, Prices, compare, plantings_to_hold
from planner.planning.scenarios.sets import Scenario, Scenarios, group_lost
from planner.planning.settling import settle_altered
from planner.planning.why_scenarios import scenario_whys

_PERCENT = 100.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Recipe:
    """One change that is to go into a scenario."""

    kind: WhatKind
    ask: WhatAsk


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Compared:
    """The farm beside the scenarios that still fit it; `misfits` are the names of the others.

    `to_hold` are codes of plantings to hold back, by scenario.
    """

    comparison: Comparison
    misfits: tuple[str, ...]
    to_hold: tuple[tuple[str, ...], ...]
    whys: Whys


def compare_steps(
    kept: Scenarios,
    recipe: Recipe | None,
    prices: Prices,
    farm: Farm,
    forecaster: Forecaster,
    _stopped: Event,
) -> Iterator[Scenarios | Compared]:
    """Yield the scenarios with what is new in them, then the comparison; the forecaster stops it."""
    if recipe is not None:
        kept = with_recipe(kept, recipe, farm, forecaster)
        yield kept
    fitting = [one for one in kept.kept if fits(one, farm)]
    yield Compared(
        comparison=compare(farm, fitting, forecaster, prices=prices),
        misfits=tuple(one.name for one in kept.kept if one not in fitting),
        to_hold=tuple(_to_hold(farm, one, forecaster) for one in fitting),
        whys=scenario_whys(farm, fitting, forecaster, prices=prices),
    )


def fits(scenario: Scenario, farm: Farm) -> bool:
    """Tell whether a scenario can still be made of a farm."""
    try:
        scenario.farm(farm)
    except KeyError:
        return False
    return True


def _to_hold(farm: Farm, scenario: Scenario, forecaster: Forecaster) -> tuple[str, ...]:
    codes = [
        code for loop in farm.loops for code in plantings_to_hold(farm, scenario, forecaster, loop=loop.id)
    ]
    return tuple(dict.fromkeys(codes))


def with_recipe(kept: Scenarios, recipe: Recipe, farm: Farm, forecaster: Forecaster) -> Scenarios:
    """Return the scenarios with one more change in the one that is named, which is new or goes on."""
    name = recipe.ask.scenario.strip()
    known = next((one for one in kept.kept if one.name == name), Scenario(name=name))
    change_set = change_of(recipe, known.farm(farm), forecaster)
    return kept.with_scenario(known.with_change(change_set))


def change_of(recipe: Recipe, farm: Farm, forecaster: Forecaster) -> ChangeSet:
    """Return what a recipe changes on a farm."""
    ask, name = recipe.ask, recipe.ask.scenario
    if recipe.kind is WhatKind.LOSE_FISH:
        return group_lost(farm, ask.group, on=ask.from_on)
    if recipe.kind is WhatKind.OTHER_FEED:
        group: FishGroup = by_id(farm.fish_groups)[ask.group]
        changed = replace(group, feed=ask.feed)
        changes = (Change(before=group, after=changed),) if changed != group else ()
        return ChangeSet(title=name, changes=changes)
    after = [_altered(batch, recipe.kind, ask) for batch in open_batches(farm, ask.crop, ask.from_on)]
    return ChangeSet(title=name, changes=_settled(farm, after, forecaster))


def open_batches(farm: Farm, crop: str, from_on: date) -> tuple[Batch, ...]:
    """Return the batches of a crop that may still be changed."""
    return tuple(b for b in farm.batches if b.crop == crop and b.sow_on >= from_on and not b.locked)


def _altered(batch: Batch, kind: WhatKind, ask: WhatAsk) -> Batch:
    if kind is WhatKind.SHIFT:
        return replace(batch, sow_on=batch.sow_on + timedelta(weeks=ask.weeks_later))
    if kind is WhatKind.SCALE:
        return replace(batch, plants=max(math.ceil(batch.plants * ask.percent_of_plants / _PERCENT), 1))
    # The same places go on to the other crop, with the days and the yield that the book has for it.
    return Batch(
        id=batch.id,
        code=batch.code,
        crop=ask.other_crop,
        sow_on=batch.sow_on,
        plants=batch.plants,
        bed=batch.bed or NO_ID,
        notes=batch.notes,
    )


def _settled(farm: Farm, after: list[Batch], forecaster: Forecaster) -> tuple[Change, ...]:
    """Return the changes to batches with their places; what finds none is left without."""
    now = farm
    changes: list[Change] = []
    for batch in after:
        settled = settle_altered(now, batch, forecaster)
        made = with_places(now, settled.changes)
        now = applied(now, ChangeSet(title="", changes=made))
        changes.extend(made)
    return tuple(changes)
