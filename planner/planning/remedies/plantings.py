"""Repairs by changing plantings: shift, hold, thin, place elsewhere, leave out."""

from __future__ import annotations

import dataclasses
import math
from collections.abc import Iterator
from datetime import timedelta
from typing import Final

from planner.farm.changes import Change, ChangeSet, with_places
from planner.farm.crops import Batch, Phase, Stage
from planner.farm.farm import DAYS_PER_WEEK, by_id
from planner.farm.site import Bed
from planner.farm.species import BedKind
from planner.forecast.values import STAGES
from planner.planning.remedies.case import Case, altered_batches
from planner.planning.remedies.values import Candidate, RemedyKind, SideEffect
from planner.planning.settling import settle_altered

_GERMINATION: Final = STAGES.index(Stage.GERMINATION)
_NURSERY: Final = STAGES.index(Stage.NURSERY)


def to_ease_demand(case: Case) -> Iterator[Candidate]:
    """Yield repairs that take demand out of the flagged weeks."""
    hungry = _hungry(case)
    most = round(case.advice("remedy_batches_most"))
    halves = sorted({max(most // 2, 1), most})
    for many in halves:
        yield from _shifts(case, [batch for batch in hungry if batch.sow_on >= case.from_on][:many])
        yield from _thinnings(case, [batch for batch in hungry if batch.sow_on >= case.from_on][:many])
    for many in halves:
        yield from _holds(case, _about_to_move(case)[:many])


def _hungry(case: Case) -> list[Batch]:
    """Return the batches that stand on most area in the flagged weeks, the largest first."""
    first, last = case.span.days.start, case.span.days.stop
    asked = []
    for row, batch in case.batches_of_loop():
        start, end = case.table.phase_days(row, Phase.BED)
        days = min(end, last) - max(start, first)
        if days > 0:
            asked.append((-days * float(case.table.area_m2[row]), row, batch))
    return [batch for _, _, batch in sorted(asked, key=lambda one: one[:2])]


def _about_to_move(case: Case) -> list[Batch]:
    """Return batches that go from the nursery to their bed in the flagged weeks or the weeks just before."""
    weeks = round(case.advice("remedy_shift_weeks_most"))
    first, last = case.span.days.start - weeks * DAYS_PER_WEEK, case.span.days.stop
    first = max(first, case.ruler.day_of(case.from_on))
    moving = []
    for row, batch in case.batches_of_loop():
        day = int(case.table.ends[row, _NURSERY])
        if first <= day < last and case.table.phase_days(row, Phase.BED)[0] == day:
            moving.append((day, row, batch))
    return [batch for _, _, batch in sorted(moving, key=lambda one: one[:2])]


def _shifts(case: Case, batches: list[Batch]) -> Iterator[Candidate]:
    for weeks in range(1, round(case.advice("remedy_shift_weeks_most")) + 1):
        later = [
            dataclasses.replace(batch, sow_on=batch.sow_on + timedelta(weeks=weeks)) for batch in batches
        ]
        changes = altered_batches(case, later) if later else None
        if changes:
            yield Candidate(
                kind=RemedyKind.SHIFT_SOWINGS,
                change_set=_set(f"Sow {_counted(batches)} {_weeks(weeks)} later", changes),
                details=(("batches", _codes(batches)), ("weeks", float(weeks))),
                side_effects=(SideEffect.LATER_HARVEST,),
            )


def _thinnings(case: Case, batches: list[Batch]) -> Iterator[Candidate]:
    for share in (case.advice("remedy_thin_share_least"), case.advice("remedy_thin_share_most")):
        fewer = [
            dataclasses.replace(batch, plants=max(math.ceil(batch.plants * (1.0 - share)), 1))
            for batch in batches
        ]
        fewer = [after for before, after in zip(batches, fewer, strict=True) if after.plants < before.plants]
        changes = altered_batches(case, fewer) if fewer else None
        if changes:
            left_out = sum(batch.plants for batch in batches) - sum(batch.plants for batch in fewer)
            yield Candidate(
                kind=RemedyKind.THIN_SOWINGS,
                change_set=_set(f"Sow fewer plants of {_counted(fewer)}", changes),
                details=(("batches", _codes(fewer)), ("share", share), ("plants", float(left_out))),
                side_effects=(SideEffect.SMALLER_HARVEST,),
            )


def _holds(case: Case, batches: list[Batch]) -> Iterator[Candidate]:
    """Yield repairs that keep seedlings in the nursery for some weeks more."""
    for weeks in range(1, round(case.advice("remedy_shift_weeks_most")) + 1):
        held = [_held(case, batch, weeks) for batch in batches]
        changes = altered_batches(case, held) if held else None
        if changes:
            yield Candidate(
                kind=RemedyKind.HOLD_TRANSPLANTS,
                change_set=_set(f"Hold {_counted(batches)} in the nursery {_weeks(weeks)} longer", changes),
                details=(("batches", _codes(batches)), ("weeks", float(weeks))),
                side_effects=(
                    SideEffect.OLDER_SEEDLINGS,
                    SideEffect.NURSERY_HELD_LONGER,
                    SideEffect.LATER_HARVEST,
                ),
            )


def _held(case: Case, batch: Batch, weeks: int) -> Batch:
    """Return the batch with a nursery stage so many weeks longer at the pace that it goes by."""
    row = case.table.row_of[batch.id]
    lasts = int(case.table.ends[row, _NURSERY]) - int(case.table.ends[row, _GERMINATION])
    own = batch.nursery_days
    book = case.catalogue.crops[batch.crop].nursery_days if own is None else own
    pace = book / lasts if lasts > 0 else 1.0
    return dataclasses.replace(batch, nursery_days=book + pace * weeks * DAYS_PER_WEEK)


def to_find_places(case: Case) -> Iterator[Candidate]:
    """Yield repairs for a batch that lacks places: another bed, other weeks, fewer plants, none."""
    batch: Batch = by_id(case.farm.batches)[case.flag.about]
    if batch.locked or batch.sow_on < case.from_on:
        return
    yield from _elsewhere(case, batch)
    weeks = round(case.advice("remedy_shift_weeks_most"))
    yield from _other_weeks(case, batch, [sign * n for n in range(1, weeks + 1) for sign in (1, -1)])
    yield from _as_many_as_fit(case, batch)
    yield from leave_out(case, batch)


def to_be_ripe(case: Case) -> Iterator[Candidate]:
    """Yield repairs for a batch whose season is too cold, hot or dark: other weeks, or none."""
    batch: Batch = by_id(case.farm.batches)[case.flag.about]
    if batch.locked or batch.sow_on < case.from_on:
        return
    most = round(case.advice("remedy_slow_shift_weeks_most"))
    yield from _other_weeks(case, batch, [sign * n for n in range(2, most + 1, 2) for sign in (1, -1)])
    yield from _elsewhere(case, batch)
    yield from leave_out(case, batch)


def _elsewhere(case: Case, batch: Batch) -> Iterator[Candidate]:
    kinds = case.catalogue.crops[batch.crop].beds
    beds: list[Bed] = [bed for bed in case.farm.beds if bed.loop == case.span.loop and bed.kind in kinds]
    for bed in beds:
        if bed.id == batch.bed or bed.kind is BedKind.NURSERY:
            continue
        changes = altered_batches(case, [dataclasses.replace(batch, bed=bed.id)])
        if changes:
            yield Candidate(
                kind=RemedyKind.OTHER_BED,
                change_set=_set(f"Place {batch.code} in {bed.name}", changes),
                details=(("batches", batch.code), ("bed", bed.name)),
            )


def _other_weeks(case: Case, batch: Batch, weeks: list[int]) -> Iterator[Candidate]:
    for many in weeks:
        sow_on = batch.sow_on + timedelta(weeks=many)
        if not case.from_on <= sow_on < case.farm.plan_until:
            continue
        changes = altered_batches(case, [dataclasses.replace(batch, sow_on=sow_on)])
        if changes:
            when = f"{_weeks(abs(many))} {'later' if many > 0 else 'earlier'}"
            yield Candidate(
                kind=RemedyKind.SHIFT_SOWINGS,
                change_set=_set(f"Sow {batch.code} {when}", changes),
                details=(("batches", batch.code), ("weeks", float(many))),
                side_effects=(SideEffect.LATER_HARVEST,) if many > 0 else (),
            )


def _as_many_as_fit(case: Case, batch: Batch) -> Iterator[Candidate]:
    held = sum(p.count for p in case.farm.placements if p.batch == batch.id and p.phase is Phase.BED)
    settled = settle_altered(case.farm, dataclasses.replace(batch, plants=batch.plants + 1), case.forecaster)
    free = [refusal.free for refusal in settled.refusals]
    most = min(max([held, *free]), batch.plants - 1)
    if most < 1:
        return
    changes = altered_batches(case, [dataclasses.replace(batch, plants=most)])
    if changes:
        yield Candidate(
            kind=RemedyKind.THIN_SOWINGS,
            change_set=_set(f"Sow {most} of {batch.plants} plants of {batch.code}", changes),
            details=(("batches", batch.code), ("plants", float(batch.plants - most))),
            side_effects=(SideEffect.SMALLER_HARVEST,),
        )


def leave_out(case: Case, batch: Batch) -> Iterator[Candidate]:
    """Yield the repair that does not sow a batch at all."""
    held = [placement for placement in case.farm.placements if placement.batch == batch.id]
    changes = (*(Change(before=placement) for placement in reversed(held)), Change(before=batch))
    yield Candidate(
        kind=RemedyKind.LEAVE_OUT,
        change_set=_set(f"Do not sow {batch.code}", with_places(case.farm, changes)),
        details=(("batches", batch.code), ("plants", float(batch.plants))),
        side_effects=(SideEffect.SMALLER_HARVEST,),
    )


def _set(title: str, changes: tuple[Change, ...]) -> ChangeSet:
    return ChangeSet(title=title, changes=changes)


def _weeks(weeks: int) -> str:
    return f"{weeks} week{'' if weeks == 1 else 's'}"


def _counted(batches: list[Batch]) -> str:
    return batches[0].code if len(batches) == 1 else f"{len(batches)} batches"


def _codes(batches: list[Batch]) -> str:
    return " ".join(batch.code for batch in batches)
