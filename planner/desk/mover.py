"""Answers the lanes while a bar is dragged, and carries the move out as one act.

Everything that does not change during a drag is made ready when the bar is taken up, so that each answer
comes within the frame.
"""

from __future__ import annotations

import dataclasses
from typing import Any

from planner.desk.bars_of import BarMaker, crop_colours
from planner.desk.conduct import Conduct
from planner.desk.lanes.interaction import Preview
from planner.desk.lanes.scene import BalanceScene, Bar
from planner.desk.outlook import Outlook
from planner.desk.say import tr
from planner.desk.scene_of import balance_of
from planner.desk.words import refusal_words
from planner.farm.changes import Change, ChangeSet, applied
from planner.farm.crops import Batch, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import NO_ID, Id
from planner.forecast.engine import Forecaster
from planner.forecast.values import Forecast
from planner.planning.gathered import moved_together
from planner.planning.placement import Refusal, RefusalKind
from planner.planning.settling import Settler, Step
from planner.planning.stretching import Stretcher


def refusal_sentence(refusal: Refusal, codes: dict[Id, str]) -> str:
    """Return why a batch cannot stand somewhere."""
    values: dict[str, Any] = {
        field.name: getattr(refusal, field.name) for field in dataclasses.fields(refusal)
    }
    values["batch"] = codes.get(refusal.batch, "")
    if refusal.kind is RefusalKind.NO_FREE_PLACES and refusal.unit:
        # What counts is the room on that one raft or tray, not in the whole bed.
        values["bed"] = f"{refusal.bed} {refusal.unit}"
    return refusal_words(refusal.kind.value, values)


def codes_of(farm: Farm) -> dict[Id, str]:
    """Return batch id -> code."""
    return {batch.id: batch.code for batch in farm.batches}


def _moved(days: int) -> str:
    """Return how far a batch is moved, such as "7 days later"."""
    many = tr("1 day") if abs(days) == 1 else tr("{days} days", days=abs(days))
    return tr("{many} later", many=many) if days > 0 else tr("{many} earlier", many=many)


def _stretched(days: int) -> str:
    """Return how much longer a batch is picked, such as "7 days longer"."""
    many = tr("1 day") if abs(days) == 1 else tr("{days} days", days=abs(days))
    return tr("{many} longer", many=many) if days >= 0 else tr("{many} shorter", many=many)


def _many_moved(many: tuple[Batch, ...], days: int) -> str:
    """Return the title of a move of several batches."""
    return tr("Move {many} batches {moved}", many=len(many), moved=_moved(days))


class DeskMover:
    """The `Mover` of the lanes, on the farm that is open."""

    def __init__(self, conduct: Conduct) -> None:
        self._conduct = conduct
        self._outlook: Outlook | None = None
        self._forecaster: Forecaster | None = None
        self._settler: Settler | None = None
        self._stretcher: Stretcher | None = None
        self._change_set: ChangeSet | None = None
        self._colours: dict[str, int] = {}
        self._gathered: tuple[Id, ...] = ()
        self._many: tuple[Batch, ...] = ()
        self._runs: tuple[Placement, ...] = ()

    def show(self, outlook: Outlook, forecaster: Forecaster) -> None:
        """Work on another outlook from now on."""
        self.cancel()
        self._outlook, self._forecaster = outlook, forecaster

    def gather(self, batches: tuple[Id, ...]) -> None:
        """Move these along whenever one of them is moved by days."""
        self._gathered = batches

    def begin(self, batch_id: Id) -> None:
        """Take up a batch."""
        self.cancel()
        outlook, forecaster = self._outlook, self._forecaster
        if outlook is None or forecaster is None:
            return
        if batch_id in outlook.forecast.batches.row_of:
            self._colours = crop_colours(outlook.farm)
            self._settler = Settler(outlook.farm, forecaster, batch_id)
            if batch_id in self._gathered:
                known = by_id(outlook.farm.batches)
                self._many = tuple(known[each] for each in self._gathered if each in known)
            held = {batch_id, *(batch.id for batch in self._many)}
            self._runs = tuple(run for run in outlook.farm.placements if run.batch in held)

    def preview(
        self, batch_id: Id, run: Id, days: int, bed: Id, unit: int, first: int | None = None
    ) -> Preview:
        """Return what moving it so many days, and a run to another unit or place, would do."""
        self._change_set = None
        outlook, forecaster, settler = self._outlook, self._forecaster, self._settler
        if outlook is None or forecaster is None or settler is None or settler.batch.id != batch_id:
            return Preview(allowed=False)
        many = self._many if len(self._many) > 1 and not bed else ()
        if many:
            found = moved_together(outlook.farm, many, days, forecaster)
        else:
            found = settler.move(Step(batch=batch_id, run=run, days=days, bed=bed, unit=unit, first=first))
        if isinstance(found, Refusal):
            return Preview(allowed=False, reason=refusal_sentence(found, codes_of(outlook.farm)))
        title = _many_moved(many, days) if many else self._title(settler.batch, days, bed)
        self._change_set = ChangeSet(title=title, changes=found)
        farm = applied(outlook.farm, self._change_set)
        forecast = forecaster.preview(farm)
        going = {each.id for each in many or (settler.batch,)}
        runs = tuple(run for run in _runs_after(self._runs, found) if run.batch in going)
        return Preview(
            allowed=True,
            balance=self._balance(forecast, settler.batch, bed),
            bars=self._bars(farm, forecast, runs),
            runs=tuple(run for run in runs if run.batch == batch_id),
        )

    def stretch(self, batch_id: Id, days: int) -> Preview:
        """Return what picking a batch so many days longer would do."""
        self._change_set = None
        outlook, forecaster = self._outlook, self._forecaster
        if outlook is None or forecaster is None or batch_id not in outlook.forecast.batches.row_of:
            return Preview(allowed=False)
        if self._stretcher is None or self._stretcher.batch.id != batch_id:
            self._stretcher = Stretcher(outlook.farm, forecaster, batch_id)
        stretcher = self._stretcher
        found = stretcher.stretch(days)
        if isinstance(found, Refusal):
            return Preview(allowed=False, reason=refusal_sentence(found, codes_of(outlook.farm)))
        title = tr("Pick {code} {stretched}", code=stretcher.batch.code, stretched=_stretched(days))
        self._change_set = ChangeSet(title=title, changes=found)
        farm = applied(outlook.farm, self._change_set)
        forecast = forecaster.preview(farm)
        return Preview(
            allowed=True,
            balance=self._balance(forecast, stretcher.batch, NO_ID),
            bars=self._bars(farm, forecast, stretcher.runs),
            runs=stretcher.runs,
        )

    def commit(self) -> None:
        """Carry out the last preview as one act."""
        change_set, self._change_set = self._change_set, None
        self._settler = self._stretcher = None
        self._many = ()
        if change_set is not None and change_set.changes:
            self._conduct.act(change_set)

    def cancel(self) -> None:
        """Forget everything since `begin`."""
        self._settler = self._stretcher = None
        self._change_set = None
        self._many = ()

    def _title(self, batch: Batch, days: int, bed: Id) -> str:
        names = {each.id: each.name for each in self._outlook.farm.beds} if self._outlook else {}
        if bed and days:
            return tr("Move {code} to {bed}, {moved}", code=batch.code, bed=names[bed], moved=_moved(days))
        if bed:
            return tr("Move {code} to {bed}", code=batch.code, bed=names[bed])
        return tr("Move {code} {moved}", code=batch.code, moved=_moved(days))

    def _balance(self, forecast: Forecast, batch: Batch, bed: Id) -> BalanceScene | None:
        assert self._forecaster is not None
        assert self._outlook is not None
        beds = by_id(self._outlook.farm.beds)
        target = bed or batch.bed
        loop_id = beds[target].loop if target in beds else NO_ID
        if not loop_id:
            position = int(forecast.batches.loop[forecast.batches.row_of[batch.id]])
            loop_id = forecast.loops[position].loop if 0 <= position < len(forecast.loops) else NO_ID
        loop = next((each for each in forecast.loops if each.loop == loop_id), None)
        if loop is None:
            return None
        return balance_of(forecast, loop, self._forecaster.bands)

    def _bars(self, farm: Farm, forecast: Forecast, runs: tuple[Placement, ...]) -> tuple[Bar, ...]:
        assert self._outlook is not None
        maker = BarMaker(forecast, self._outlook.catalogue.crops, self._colours)
        row_of = forecast.batches.row_of
        return tuple(maker.bar(farm.batches[row_of[run.batch]], run.phase, run, run.count) for run in runs)


def _runs_after(runs: tuple[Placement, ...], changes: tuple[Change, ...]) -> tuple[Placement, ...]:
    """Return the runs of places of the batches that are moved, as they are after the changes."""
    left = {run.id: run for run in runs}
    for change in changes:
        if isinstance(change.after, Placement):
            left[change.id] = change.after
        elif isinstance(change.before, Placement):
            left.pop(change.id, None)
    return tuple(left.values())
