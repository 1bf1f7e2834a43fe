"""Works out what happens to several batches at once: sown again later, moved together, one made two.

Each is one set of changes, or a refusal of the whole. Must know nothing of widgets or words.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Iterable, Sequence
from datetime import date, timedelta

from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.codes import Codes, codes_of
from planner.farm.crops import Batch, Phase
from planner.farm.farm import Farm, by_id
from planner.farm.fields import Id
from planner.farm.ids import new_id
from planner.forecast.engine import Forecaster
from planner.planning.placement import Refusal, RefusalKind
from planner.planning.settling import Settled, Settler, Step, settle_new


def sown_again(farm: Farm, batches: Sequence[Batch], days: int, forecaster: Forecaster) -> Settled:
    """Return the changes that sow each of the batches once more, `days` later, with places of its own.

    A twin without room is sown all the same, without places, and the refusal says why.
    """
    codes = codes_of(farm)
    changes: list[Change] = []
    refusals: list[Refusal] = []
    for batch in batches:
        settled = settle_new(farm, _twin(farm, batch, days, codes, forecaster), forecaster)
        farm = applied(farm, ChangeSet(title="", changes=settled.changes))
        changes.extend(settled.changes)
        refusals.extend(settled.refusals)
    return Settled(changes=tuple(changes), refusals=tuple(refusals))


def _twin(farm: Farm, batch: Batch, days: int, codes: Codes, forecaster: Forecaster) -> Batch:
    """Return the same batch sown later, meant for the bed where the first one stands."""
    standing = (run.bed for run in farm.placements if run.batch == batch.id and run.phase is Phase.BED)
    sow_on = batch.sow_on + timedelta(days=days)
    return dataclasses.replace(
        batch,
        id=new_id(),
        code=codes.give(forecaster.catalogue.crops[batch.crop].code, sow_on),
        sow_on=sow_on,
        bed=next(standing, batch.bed),
        locked=False,
    )


def moved_together(
    farm: Farm, batches: Sequence[Batch], days: int, forecaster: Forecaster
) -> tuple[Change, ...] | Refusal:
    """Return the changes that move all of the batches by the same days, or why the first cannot go.

    All are sown later before any looks for places, so that none stands in the way of another one's past.
    """
    locked = next((batch for batch in batches if batch.locked), None)
    if locked is not None:
        return Refusal(kind=RefusalKind.LOCKED, batch=locked.id, bed="", needed=0)
    by = timedelta(days=days)
    sown = [Change(before=each, after=dataclasses.replace(each, sow_on=each.sow_on + by)) for each in batches]
    changes = list(sown)
    farm = applied(farm, ChangeSet(title="", changes=tuple(sown)))
    for batch in batches:
        found = Settler(farm, forecaster, batch.id).move(Step(batch=batch.id))
        if isinstance(found, Refusal):
            return found
        if found:
            farm = applied(farm, ChangeSet(title="", changes=found))
            changes.extend(found)
    return tuple(changes)


def parted(
    farm: Farm, split: ChangeSet, part: Id, days: int, forecaster: Forecaster
) -> tuple[Change, ...] | Refusal:
    """Return the changes of a split whose new batch goes `days` later, or why it cannot stand then."""
    if not days:
        return split.changes
    after = applied(farm, split)
    found = Settler(after, forecaster, part).move(Step(batch=part, days=days))
    return found if isinstance(found, Refusal) else folded((*split.changes, *found))


def folded(changes: Iterable[Change]) -> tuple[Change, ...]:
    """Return changes in which each thing is changed once, from what it was first to what it is last."""
    whole: dict[Id, Change] = {}
    for change in changes:
        before = whole.get(change.id)
        if before is None:
            whole[change.id] = change
        elif before.before is None and change.after is None:
            del whole[change.id]
        else:
            whole[change.id] = dataclasses.replace(before, after=change.after)
    return tuple(whole.values())


def weeks_spanned(farm: Farm, ids: Iterable[Id]) -> int:
    """Return how many weeks later a succession begins anew: from its first sowing to after its last."""
    known = by_id(farm.batches)
    days: list[date] = sorted(known[each].sow_on for each in ids if each in known)
    if not days:
        return 1
    first, last = (day - timedelta(days=day.weekday()) for day in (days[0], days[-1]))
    return (last - first).days // timedelta(weeks=1).days + 1
