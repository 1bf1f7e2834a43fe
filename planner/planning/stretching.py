"""Picks a batch for longer or shorter: its window of picking is changed where its places allow it.

Plants that are picked stay where they stand, so a window goes no further than the day on which another batch
is due in one of their places. Must know nothing of widgets or words.
"""

from __future__ import annotations

import dataclasses
from datetime import date
from typing import Final

from planner.farm.changes import Change
from planner.farm.crops import Batch, Phase
from planner.farm.farm import Farm
from planner.farm.fields import Id, specs_of
from planner.farm.species import HarvestKind
from planner.forecast.engine import Forecaster
from planner.forecast.values import Days
from planner.planning.placement import Places, Refusal, RefusalKind

_WINDOW: Final = specs_of(Batch)["picking_days"]


def _limits() -> tuple[float, float]:
    """Return the least and most days that a window may have."""
    least, most = _WINDOW.low, _WINDOW.high
    assert isinstance(least, int | float)
    assert isinstance(most, int | float)
    return least, most


class Stretcher:
    """Tries windows of picking for one batch among those of a farm; asked many times while it is held."""

    def __init__(self, farm: Farm, forecaster: Forecaster, batch: Id) -> None:
        self._farm, self._forecaster = farm, forecaster
        self._standing: Days = forecaster.days(farm)
        self._places = Places(farm, self._standing)
        self._beds = {bed.id: bed for bed in farm.beds}
        self.batch: Batch = next(each for each in farm.batches if each.id == batch)
        self._crop = forecaster.catalogue.crops[self.batch.crop]
        self.runs = tuple(run for run in farm.placements if run.batch == batch)

    @property
    def window_days(self) -> int:
        """Return how many days after the first pick the last one is, as it stands."""
        own = self.batch.picking_days
        return round(self._crop.picking_days if own is None else own)

    def stretch(self, days: int) -> tuple[Change, ...] | Refusal:
        """Return the change that picks the batch so many days longer, or why it cannot be."""
        refused = self._unfit(days)
        if refused is not None:
            return refused
        if not days:
            return ()
        longer = dataclasses.replace(self.batch, picking_days=float(self.window_days + days))
        refused = self._in_the_way(longer) if days > 0 else None
        return (Change(before=self.batch, after=longer),) if refused is None else refused

    def _unfit(self, days: int) -> Refusal | None:
        if self.batch.locked:
            return self._refusal(RefusalKind.LOCKED)
        if self._crop.harvest is HarvestKind.SINGLE:
            return self._refusal(RefusalKind.PICKED_ONCE)
        least, most = _limits()
        if not least <= self.window_days + days <= most:
            return self._refusal(RefusalKind.NO_SUCH_WINDOW, needed=self.window_days + days, free=round(most))
        return None

    def _in_the_way(self, longer: Batch) -> Refusal | None:
        """Return the refusal that names who is due in the places of the batch first, None when nobody is."""
        alone = dataclasses.replace(self._farm, batches=(longer,), placements=self.runs)
        table = self._forecaster.days_alone(alone).batches
        start, end = table.phase_days(0, Phase.BED)
        due: list[tuple[int, str, Id]] = []
        for run in self.runs:
            if run.phase is Phase.BED:
                found = self._places.others_in(run, start_day=start, end_day=end)
                due.extend((day, code, run.bed) for day, code in found)
        if not due:
            return None
        first, _, bed = min(due)
        codes = tuple(dict.fromkeys(code for day, code, _ in sorted(due) if day == first))
        return self._refusal(
            RefusalKind.NEEDED_NEXT, bed=bed, blocking=codes, from_on=self._standing.ruler.date_of(first)
        )

    def _refusal(
        self,
        kind: RefusalKind,
        *,
        bed: Id | None = None,
        blocking: tuple[str, ...] = (),
        from_on: date | None = None,
        needed: int = 0,
        free: int = 0,
    ) -> Refusal:
        name = self._beds[bed].name if bed is not None else ""
        return Refusal(
            kind=kind,
            batch=self.batch.id,
            bed=name,
            blocking=blocking,
            from_on=from_on,
            needed=needed,
            free=free,
        )
