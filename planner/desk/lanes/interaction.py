"""Dragging a bar as a small machine: press, move, cancel, commit.

Knows bars, rows and a `Mover` that tries a move and carries it out; must know nothing of Qt, pixels of
the screen beyond distances, or storage.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Final, Protocol

from planner.desk.lanes.scene import NO_UNIT, BalanceScene, Bar, RowKey
from planner.farm.crops import Placement
from planner.farm.fields import NO_ID, Id

DRAG_PX: Final = 5.0
"""How far the pointer must go before a press becomes a drag."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Preview:
    """What a move would do: whether it may be, else why not in words, and what would then be seen.

    `runs` are all the runs of places that the batch would hold.
    """

    allowed: bool
    reason: str = ""
    balance: BalanceScene | None = None
    bars: tuple[Bar, ...] = ()
    runs: tuple[Placement, ...] = ()


class Mover(Protocol):
    """Tries moves of a batch and carries one out; given to the lanes by the window.

    Between `begin` and one of `commit` or `cancel` any number of `preview` may come. `days` always counts
    from where the batch stood at `begin`. `run` is the placement that is held, empty for the whole batch.
    An empty `bed` (with unit 0) leaves every run in its row. `stretch` is tried in place of `preview`
    where the window of picking is in the hand. `commit` carries out the last of either.
    """

    def begin(self, batch_id: Id) -> None:
        """Take up a batch."""
        ...

    def preview(self, batch_id: Id, run: Id, days: int, bed: Id, unit: int) -> Preview:
        """Return what moving it so many days, and a run to another unit, would do."""
        ...

    def stretch(self, batch_id: Id, days: int) -> Preview:
        """Return what picking it so many days longer would do."""
        ...

    def commit(self) -> None:
        """Carry out the last preview as one act."""
        ...

    def cancel(self) -> None:
        """Forget everything since `begin`."""
        ...


class DragState(Enum):
    """Where a drag stands."""

    IDLE = "idle"
    PRESSED = "pressed"
    DRAGGING = "dragging"
    REFUSED = "refused"


class Drag:
    """One drag after the other of a bar over rows and days.

    A locked bar, and a bar over rows that are no places, is refused with a reason from outside; the
    mover is then left alone.
    """

    def __init__(self, mover: Mover) -> None:
        self._mover = mover
        self.state = DragState.IDLE
        self.bar: Bar | None = None
        self.days = 0
        self.row: RowKey | None = None
        self.preview: Preview | None = None
        self._from_row: RowKey | None = None
        self._from = (0.0, 0.0, 0.0)

    @property
    def active(self) -> bool:
        """Tell whether something is being dragged, allowed or not."""
        return self.state in (DragState.DRAGGING, DragState.REFUSED)

    @property
    def refused(self) -> bool:
        """Tell whether the bar cannot be moved at all."""
        return self.state is DragState.REFUSED

    @property
    def changes_row(self) -> bool:
        """Tell whether the bar is held over another row than its own."""
        return self.row is not None and self.row != self._from_row

    def press(self, bar: Bar, row: RowKey, *, x: float, y: float, day: float) -> None:
        """Remember what was pressed, and where."""
        self.cancel()
        self.state = DragState.PRESSED
        self.bar, self.row, self._from_row = bar, row, row
        self._from = (x, y, day)
        self.days = 0

    def move(self, *, x: float, y: float, day: float, row: RowKey | None, keep_row: bool = False) -> bool:
        """Follow the pointer; return whether anything that is shown has changed.

        `row` is the row under the pointer, None outside of all; with `keep_row` only days change.
        """
        if self.bar is None or self.state is DragState.IDLE or not self._started(x, y):
            return False
        begun = self.state is DragState.PRESSED
        if begun and self.bar.locked:
            self.state = DragState.REFUSED
            return True
        if self.refused:
            return True
        if begun:
            self.state = DragState.DRAGGING
            self._mover.begin(self.bar.batch)
        days = round(day - self._from[2])
        over = self._from_row if keep_row or row is None else row
        if not begun and (days, over) == (self.days, self.row):
            return False
        self.days, self.row = days, over
        self._try()
        return True

    def _started(self, x: float, y: float) -> bool:
        return self.active or abs(x - self._from[0]) + abs(y - self._from[1]) >= DRAG_PX

    def _try(self) -> None:
        assert self.bar is not None
        assert self.row is not None
        if self.changes_row and self.row.unit == NO_UNIT:
            self.preview = None
            return
        bed, unit = (self.row.bed, self.row.unit) if self.changes_row else (NO_ID, NO_UNIT)
        self.preview = self._mover.preview(self.bar.batch, self.bar.run, self.days, bed, unit)

    def release(self) -> bool:
        """Let go; return whether the move was carried out."""
        moved = self.state is DragState.DRAGGING and (self.days != 0 or self.changes_row)
        if not moved or self.preview is None or not self.preview.allowed:
            self.cancel()
            return False
        self._forget()
        self._mover.commit()
        return True

    def cancel(self) -> bool:
        """Put everything back; return whether something was being dragged."""
        was = self.active
        begun = self.state is DragState.DRAGGING
        self._forget()
        if begun:
            self._mover.cancel()
        return was

    def _forget(self) -> None:
        self.state = DragState.IDLE
        self.bar = self.row = self._from_row = self.preview = None
        self.days = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """Outcome of a move by keys: whether it was made, else why not."""

    moved: bool
    reason: str = ""


def step_by_days(mover: Mover, bar: Bar, days: int) -> Step:
    """Move the whole batch of a bar by days, if it may be."""
    return _tried(mover, bar, days, ())


def step_to_rows(mover: Mover, bar: Bar, rows: tuple[RowKey, ...]) -> Step:
    """Move a run to the first of the rows where it fits; the reason is that of the nearest row."""
    return _tried(mover, bar, 0, rows)


def _tried(mover: Mover, bar: Bar, days: int, rows: tuple[RowKey, ...]) -> Step:
    reason: str | None = None
    mover.begin(bar.batch)
    places = [(row.bed, row.unit) for row in rows] or [(NO_ID, NO_UNIT)]
    run = bar.run if rows else NO_ID
    for bed, unit in places:
        found = mover.preview(bar.batch, run, days, bed, unit)
        if found.allowed:
            mover.commit()
            return Step(moved=True)
        reason = found.reason if reason is None else reason
    mover.cancel()
    return Step(moved=False, reason=reason or "")
