"""The acts that are kept beside the farm: what can be undone, what can be redone."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import datetime

from sqlalchemy import Connection, delete, func, insert, select, update

from planner.farm.changes import ChangeSet
from planner.store.acts import KEPT_ACTS, ActEntry, ActKind, ActState
from planner.store.base import table
from planner.store.codec import change_set_from, change_set_text
from planner.store.convert import Row
from planner.store.records import ActRecord

_ACT = table(ActRecord)


def read_acts(connection: Connection) -> tuple[ActEntry, ...]:
    """Return all acts kept, oldest first."""
    query = select(_ACT.c.seq, _ACT.c.title, _ACT.c.at, _ACT.c.state).order_by(_ACT.c.seq)
    return tuple(
        ActEntry(seq=seq, title=title, at=at, state=state)
        for seq, title, at, state in connection.execute(query)
    )


def read_change_set(connection: Connection, seq: int) -> ChangeSet:
    """Return what an act changed; raises `LookupError` when it is not kept."""
    row = connection.execute(select(_ACT.c.title, _ACT.c.changes).where(_ACT.c.seq == seq)).one_or_none()
    if row is None:
        raise LookupError(f"act {seq} is not kept")
    return change_set_from(row.changes, title=row.title)


def read_rows(connection: Connection) -> list[Row]:
    """Return all acts as rows, to be written into a copy."""
    return [dict(row) for row in connection.execute(select(_ACT).order_by(_ACT.c.seq)).mappings()]


def write_rows(connection: Connection, rows: Sequence[Row]) -> None:
    """Write acts into a copy that has none."""
    if rows:
        connection.execute(insert(_ACT), list(rows))


def write_act(connection: Connection, change_set: ChangeSet, *, kind: ActKind, at: datetime) -> None:
    """Note an act that is carried out, taken back, or done once more.

    Raises `LookupError` when there is nothing to take back or to do once more.
    """
    if kind is ActKind.DO:
        _append(connection, change_set, at)
    elif kind is ActKind.UNDO:
        newest = select(func.max(_ACT.c.seq)).where(_ACT.c.state == ActState.DONE)
        _turn(connection, connection.execute(newest).scalar(), ActState.UNDONE)
    else:
        oldest = select(func.min(_ACT.c.seq)).where(_ACT.c.state == ActState.UNDONE)
        _turn(connection, connection.execute(oldest).scalar(), ActState.DONE)


def _append(connection: Connection, change_set: ChangeSet, at: datetime) -> None:
    """Add a new act after the last one done; what was undone can then no longer be redone."""
    connection.execute(delete(_ACT).where(_ACT.c.state == ActState.UNDONE))
    last = connection.execute(select(func.max(_ACT.c.seq))).scalar() or 0
    connection.execute(delete(_ACT).where(_ACT.c.seq <= last + 1 - KEPT_ACTS))
    connection.execute(
        insert(_ACT).values(
            seq=last + 1,
            title=change_set.title,
            at=at,
            state=ActState.DONE,
            changes=change_set_text(change_set),
        )
    )


def _turn(connection: Connection, seq: int | None, state: ActState) -> None:
    if seq is None:
        raise LookupError(f"no act is there to become {state.value}")
    connection.execute(update(_ACT).where(_ACT.c.seq == seq).values(state=state))
