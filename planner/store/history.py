"""The acts that are kept beside the farm: what can be undone, what can be redone."""

from __future__ import annotations

from collections.abc import Sequence

from sqlalchemy import Connection, delete, func, insert, select, update

from planner.farm.changes import ChangeSet
from planner.store.acts import KEPT_ACTS, ActEntry, ActKind, ActState, By
from planner.store.base import table
from planner.store.codec import change_set_from, change_set_text
from planner.store.convert import Row
from planner.store.records import ActRecord

_ACT = table(ActRecord)


def read_acts(connection: Connection) -> tuple[ActEntry, ...]:
    """Return all acts kept, oldest first."""
    query = select(_ACT.c.seq, _ACT.c.title, _ACT.c.at, _ACT.c.state, _ACT.c.who).order_by(_ACT.c.seq)
    return tuple(
        ActEntry(seq=seq, title=title, at=at, state=state, who=who)
        for seq, title, at, state, who in connection.execute(query)
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


def write_act(
    connection: Connection, change_set: ChangeSet, *, kind: ActKind, by: By, last: int | None = None
) -> None:
    """Note an act that is carried out, taken back, or done once more.

    `last` is the act to take back or to do once more, the newest or oldest there is when it is None.
    Raises `LookupError` when there is nothing to take back or to do once more.
    """
    if kind is ActKind.DO:
        _append(connection, change_set, by)
    elif kind is ActKind.UNDO:
        newest = select(func.max(_ACT.c.seq)).where(_ACT.c.state == ActState.DONE)
        _turn(connection, last or connection.execute(newest).scalar(), ActState.UNDONE)
    else:
        oldest = select(func.min(_ACT.c.seq)).where(_ACT.c.state == ActState.UNDONE)
        _turn(connection, last or connection.execute(oldest).scalar(), ActState.DONE)


def _append(connection: Connection, change_set: ChangeSet, by: By) -> None:
    """Add a new act after the last one done; what was undone can then no longer be redone.

    Where several people work on one farm, everybody's undone acts stay until they act anew themselves.
    """
    forgotten = delete(_ACT).where(_ACT.c.state == ActState.UNDONE)
    connection.execute(forgotten.where(_ACT.c.who == by.who) if by.shared else forgotten)
    last = connection.execute(select(func.max(_ACT.c.seq))).scalar() or 0
    connection.execute(delete(_ACT).where(_ACT.c.seq <= last + 1 - KEPT_ACTS))
    connection.execute(
        insert(_ACT).values(
            seq=last + 1,
            title=change_set.title,
            at=by.at,
            state=ActState.DONE,
            changes=change_set_text(change_set),
            who=by.who,
        )
    )


def _turn(connection: Connection, seq: int | None, state: ActState) -> None:
    if seq is None:
        raise LookupError(f"no act is there to become {state.value}")
    connection.execute(update(_ACT).where(_ACT.c.seq == seq).values(state=state))
