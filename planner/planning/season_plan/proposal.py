"""Turns a plan into batches with codes and places, beside what is planned today, adopted in one step."""

from __future__ import annotations

import dataclasses
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from enum import Enum

from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.codes import codes_of
from planner.farm.crops import Batch, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import Id
from planner.farm.ids import new_id
from planner.forecast.engine import Forecaster
from planner.planning.many import PHASES, Rules, place_many
from planner.planning.placement import IdMaker, Refusal
from planner.planning.season_plan.fixed import is_open
from planner.planning.season_plan.plan import NOTHING_PLANNED, PlannedSowing, SeasonPlan
from planner.planning.season_plan.values import SeasonModel


class DifferenceKind(Enum):
    """What a plan does to a batch of today's."""

    ADDED = "added"
    REMOVED = "removed"
    CHANGED = "changed"


@dataclass(frozen=True, slots=True, kw_only=True)
class Difference:
    """One batch that the plan adds, removes or changes."""

    kind: DifferenceKind
    code: str
    crop: str
    before: Batch | None
    after: Batch | None


@dataclass(frozen=True, slots=True, kw_only=True)
class PlanProposal:
    """A plan as batches: what differs from today's, what found no place, and the one step that adopts it.

    Batches that stay as they are keep their places; `unchanged` counts them.
    """

    batches: tuple[Batch, ...]
    placements: tuple[Placement, ...]
    refusals: tuple[Refusal, ...]
    differences: tuple[Difference, ...]
    unchanged: int
    change_set: ChangeSet


def proposal(
    plan: SeasonPlan, farm: Farm, forecaster: Forecaster, *, make_id: IdMaker = new_id
) -> PlanProposal:
    """Return a plan as batches of the farm it was made for.

    A batch of today's that is of the same crop, sown in the same week and for the same kind of bed, keeps
    its code, variety and seed lot; its own figures for days and yield go, for the plan is made without them.
    """
    old = _open_batches(plan, farm)
    pairs = _paired(plan, old, farm, forecaster, make_id)
    gone = [batch for batch in old if batch.id not in {before.id for before, _ in pairs if before}]
    kept = {after.id for before, after in pairs if before == after}
    leaving = {batch.id for batch in old} - kept
    cleared = tuple(Change(before=place) for place in reversed(farm.placements) if place.batch in leaving)
    batches = (
        *(Change(before=batch) for batch in reversed(gone)),
        *(Change(before=before, after=after) for before, after in pairs if before and before != after),
        *(Change(after=after) for before, after in pairs if before is None),
    )
    new = tuple(after for _, after in pairs)
    placed = _placed(plan.model, farm, (*cleared, *batches), new, forecaster=forecaster, make_id=make_id)
    placements, refusals = placed
    changes = (*cleared, *batches, *(Change(after=place) for place in placements))
    first_on = plan.model.ruler.week_start(plan.model.first_week)
    return PlanProposal(
        batches=new,
        placements=placements,
        refusals=refusals,
        differences=tuple(_differences(gone, pairs)),
        unchanged=len(kept),
        change_set=ChangeSet(title=f"Adopt the season plan from {first_on.isoformat()}", changes=changes),
    )


def _open_batches(plan: SeasonPlan, farm: Farm) -> list[Batch]:
    """Return today's batches whose place the plan takes; none when there was nothing to plan."""
    model = plan.model
    if plan.status in NOTHING_PLANNED:
        return []
    until_on = model.ruler.week_start(model.first_week + model.weeks)
    crops = frozenset(model.crops)
    return [b for b in farm.batches if is_open(b, crops=crops, from_on=model.from_on, until_on=until_on)]


def _paired(
    plan: SeasonPlan, old: Sequence[Batch], farm: Farm, forecaster: Forecaster, make_id: IdMaker
) -> list[tuple[Batch | None, Batch]]:
    """Return each sowing as a batch, with the batch of today's that it goes on from, if there is one."""
    model = plan.model
    waiting: dict[tuple[str, int, int], list[Batch]] = {}
    for batch in old:
        waiting.setdefault(_key(model, batch), []).append(batch)
    codes = codes_of(farm)
    crops = forecaster.catalogue.crops
    pairs: list[tuple[Batch | None, Batch]] = []
    for sowing in plan.sowings:
        before = _taken(waiting.get((sowing.crop, sowing.ground, sowing.week), []), sowing)
        if before is None:
            code = codes.give(crops[sowing.crop].code, sowing.sow_on)
            pairs.append((None, _batch(model, sowing, id_=make_id(), code=code)))
        else:
            after = _batch(model, sowing, id_=before.id, code=before.code)
            after = dataclasses.replace(
                after, variety=before.variety, seed_lot=before.seed_lot, notes=before.notes
            )
            if before.bed in model.grounds[sowing.ground].beds:
                after = dataclasses.replace(after, bed=before.bed)
            pairs.append((before, after))
    return pairs


def _taken(waiting: list[Batch], sowing: PlannedSowing) -> Batch | None:
    """Take the batch nearest in plants out of those that are waiting, None when none is."""
    if not waiting:
        return None
    nearest = min(waiting, key=lambda batch: (abs(batch.plants - sowing.plants), batch.code))
    waiting.remove(nearest)
    return nearest


def _key(model: SeasonModel, batch: Batch) -> tuple[str, int, int]:
    ground = next((n for n, ground in enumerate(model.grounds) if batch.bed in ground.beds), -1)
    return batch.crop, ground, model.ruler.week_of(batch.sow_on) - model.first_week


def _batch(model: SeasonModel, sowing: PlannedSowing, *, id_: Id, code: str) -> Batch:
    return Batch(
        id=id_,
        code=code,
        crop=sowing.crop,
        sow_on=sowing.sow_on,
        plants=sowing.plants,
        nursery_days=sowing.own_days.nursery,
        spacing_days=sowing.own_days.spacing,
        bed_days=sowing.own_days.bed,
        bed=model.grounds[sowing.ground].beds[0],
    )


def _placed(
    model: SeasonModel,
    farm: Farm,
    changes: tuple[Change, ...],
    new: Sequence[Batch],
    *,
    forecaster: Forecaster,
    make_id: IdMaker,
) -> tuple[tuple[Placement, ...], tuple[Refusal, ...]]:
    """Return places for the new batches in the farm as it would be, and why some found none."""
    after = applied(farm, ChangeSet(title="", changes=changes))
    of_bed = {bed: ground.beds for ground in model.grounds for bed in ground.beds}
    beds = {batch.id: (batch.bed, *(bed for bed in of_bed[batch.bed] if bed != batch.bed)) for batch in new}
    standing = by_id(after.batches)
    found = place_many(
        [standing[batch.id] for batch in new],
        after,
        forecaster.preview(after),
        rules=Rules(
            keep_together=True,
            phases=PHASES,
            crops=forecaster.catalogue.crops,
            between=frozenset(bed for pool in model.pools for bed in pool.beds),
        ),
        beds=beds,
        make_id=make_id,
    )
    return found.placements, found.refusals


def _differences(gone: Sequence[Batch], pairs: Sequence[tuple[Batch | None, Batch]]) -> Iterator[Difference]:
    for before, after in pairs:
        if before is None:
            yield Difference(
                kind=DifferenceKind.ADDED, code=after.code, crop=after.crop, before=None, after=after
            )
        elif before != after:
            yield Difference(
                kind=DifferenceKind.CHANGED, code=after.code, crop=after.crop, before=before, after=after
            )
    for batch in gone:
        yield Difference(
            kind=DifferenceKind.REMOVED, code=batch.code, crop=batch.crop, before=batch, after=None
        )
