"""Plants taken up on the map, held over other holes, and put down or left. Must know nothing of Qt."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Protocol

from planner.desk.beds.stays import Span
from planner.desk.beds.walking import Spot
from planner.desk.lanes.interaction import Preview
from planner.desk.say import tr
from planner.farm.crops import Placement
from planner.farm.fields import Id


class MapMover(Protocol):
    """Tries to put a run of places elsewhere, and does it."""

    def begin(self, batch_id: Id) -> None:
        """Take up a batch."""

    def preview(
        self, batch_id: Id, run: Id, days: int, bed: Id, unit: int, first: int | None = None
    ) -> Preview:
        """Return what moving a run to a place of a unit would do."""

    def commit(self) -> None:
        """Carry out the last preview as one act."""

    def cancel(self) -> None:
        """Forget everything since `begin`."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Held:
    """What is held: its run, which of its places the hand holds, and where it would stand.

    `would` are the runs it would have; where it may not stand, the places it was held over.
    """

    run: Placement
    offset: int
    would: tuple[Placement, ...]
    allowed: bool = True
    reason: str = ""


class Holding:
    """One run of plants in the hand, or none."""

    def __init__(self, mover: MapMover) -> None:
        self._mover = mover
        self.held: Held | None = None

    def take_up(self, span: Span, spot: Spot) -> bool:
        """Take up what stands in a hole, with all places of its run; tells whether anything does."""
        if span.now is None:
            return False
        run = span.now.run
        self._mover.begin(run.batch)
        self.held = Held(run=run, offset=spot.place - run.first, would=(run,))
        return True

    def carry(self, spot: Spot, places_there: int) -> None:
        """Hold the plants over a hole of a unit that has so many places."""
        held = self.held
        if held is None:
            return
        run = held.run
        first = max(spot.place - held.offset, 1)
        found = self._mover.preview(run.batch, run.id, 0, spot.bed, spot.unit, first)
        if found.allowed:
            would = tuple(each for each in found.runs if each.phase is run.phase) or (run,)
            self.held = replace(held, would=would, allowed=True, reason="")
            return
        count = min(run.count, places_there - first + 1)
        over = replace(run, bed=spot.bed, unit=spot.unit, first=first, count=count)
        reason = found.reason or tr("The plants cannot go here.")
        self.held = replace(held, would=(over,), allowed=False, reason=reason)

    def put_down(self) -> None:
        """Leave the plants where they are held, as one act; where they may not be, nothing happens."""
        held, self.held = self.held, None
        if held is not None and held.allowed:
            self._mover.commit()
        elif held is not None:
            self._mover.cancel()

    def cancel(self) -> bool:
        """Leave the plants where they were; tells whether any were held."""
        was, self.held = self.held is not None, None
        if was:
            self._mover.cancel()
        return was
