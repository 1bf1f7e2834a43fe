"""Carries one act out in the database: the net effect of a change set, kind by kind, then the holds.

Placements that move first let go of their days, so that two batches may swap places in one act; the
guard looks at each again when it takes its new days.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date
from types import MappingProxyType
from typing import Any, Final

from sqlalchemy import Connection, bindparam, delete, func, insert, select, update

from planner.farm.changes import Change, ChangeSet
from planner.farm.farm import KINDS, SETTINGS_KIND, Farm, OwnEntry, Thing, kind_named, things
from planner.farm.fields import NO_ID, Id
from planner.farm.holds import Hold
from planner.store.base import table
from planner.store.convert import Row, row_of, value_rows
from planner.store.ordering import STEP, Order
from planner.store.records import OwnValueRecord, PlacementRecord, table_of

_OWN_VALUE = table(OwnValueRecord)
_PLACEMENT = table(PlacementRecord)

_Days = Mapping[Id, tuple[date, date]]
NO_DAYS: Final[_Days] = MappingProxyType({})


@dataclass(slots=True)
class _Net:
    """What a change set comes to for one kind: rows taken out, put in and altered."""

    gone: list[Thing] = field(default_factory=list)
    come: list[tuple[Thing, int | None]] = field(default_factory=list)
    altered: list[tuple[Thing, int | None]] = field(default_factory=list)


def write_farm(connection: Connection, farm: Farm, holds: Iterable[Hold]) -> None:
    """Write a whole farm into empty tables."""
    _insert(connection, SETTINGS_KIND.word, [(farm.settings, None)])
    days = {hold.placement: (hold.from_on, hold.until_on) for hold in holds}
    for kind in KINDS:
        many = things(farm, kind.word)
        _insert(connection, kind.word, [(thing, at * STEP) for at, thing in enumerate(many)], days)


def write_changes(
    connection: Connection, change_set: ChangeSet, holds: Sequence[Hold], freed: Iterable[Id]
) -> None:
    """Carry out a change set and the days held after it.

    `holds` are those of every placement touched, `freed` the placements that hold nothing any more.
    """
    touched = {hold.placement for hold in holds} | set(freed) | change_set.ids(_PLACEMENT.name)
    _let_go(connection, touched)
    by_word: dict[str, list[Change]] = {}
    for change in change_set.changes:
        by_word.setdefault(change.word, []).append(change)
    for kind in (SETTINGS_KIND, *KINDS):
        if kind.word in by_word:
            _write_kind(connection, kind.word, by_word[kind.word])
    _take_days(connection, holds)


def _write_kind(connection: Connection, word: str, changes: list[Change]) -> None:
    order = _order_of(connection, word, changes)
    net = _net(changes, order)
    _step_aside(connection, word, changes)
    here = table_of(word)
    if net.gone:
        _executed(connection, delete(here).where(here.c.id == bindparam("_id")), _ids(net.gone))
    for thing, position in net.altered:
        row = row_of(thing) if position is None else {**row_of(thing), "position": position}
        connection.execute(update(here).where(here.c.id == thing.id).values(**row))
    _insert(connection, word, net.come)
    _write_values(connection, [thing for thing, _ in net.altered if isinstance(thing, OwnEntry)])
    if order is not None:
        _number(connection, word, order.anew())


def _order_of(connection: Connection, word: str, changes: list[Change]) -> Order | None:
    """Return the order of a kind if an act puts anything in; only then is it wanted."""
    if all(change.before is not None for change in changes):
        return None
    here = table_of(word)
    count, last = connection.execute(select(func.count(), func.max(here.c.position)).select_from(here)).one()
    if _only_at_end(changes, count):
        return Order([] if last is None else [(NO_ID, last)])
    places = select(here.c.id, here.c.position).order_by(here.c.position, here.c.id)
    return Order([(thing, position) for thing, position in connection.execute(places).all()])


def _only_at_end(changes: list[Change], count: int) -> bool:
    """Tell whether all that is put in goes last and nothing is taken out."""
    for change in changes:
        if change.before is None:
            if change.index is not None and change.index < count:
                return False
            count += 1
        elif change.after is None:
            return False
    return True


def _net(changes: list[Change], order: Order | None) -> _Net:
    first: dict[Id, Thing | None] = {}
    last: dict[Id, Thing | None] = {}
    positions: dict[Id, int | None] = {}
    for change in changes:
        first.setdefault(change.id, change.before)
        last[change.id] = change.after
        if change.before is None:
            assert order is not None
            positions[change.id] = order.put_in(change.id, change.index)
        elif change.after is None and order is not None:
            assert change.index is not None, "what is taken out says where it stood"
            order.take_out(change.index)
    net = _Net()
    for thing_id, after in last.items():
        before = first[thing_id]
        if before is not None and after is None:
            net.gone.append(before)
        elif before is None and after is not None:
            net.come.append((after, positions[thing_id]))
        elif after is not None and (before != after or thing_id in positions):
            net.altered.append((after, positions.get(thing_id)))
    return net


def _step_aside(connection: Connection, word: str, changes: list[Change]) -> None:
    """Take names that are given up in this act out of the way of those that take them over."""
    label = kind_named(word).label
    if word == SETTINGS_KIND.word or not label or len(changes) == 1:
        return
    leaving = [
        change.before
        for change in changes
        if change.before is not None
        and (change.after is None or getattr(change.after, label) != getattr(change.before, label))
    ]
    here = table_of(word)
    if leaving:
        statement = update(here).where(here.c.id == bindparam("_id")).values({label: here.c.id})
        _executed(connection, statement, _ids(leaving))


def _insert(
    connection: Connection, word: str, many: list[tuple[Thing, int | None]], days: _Days = NO_DAYS
) -> None:
    if not many:
        return
    rows: list[Row] = []
    for thing, position in many:
        row = row_of(thing)
        if position is not None:
            row["position"] = position
        if word == _PLACEMENT.name:
            row["held_from"], row["held_until"] = days.get(thing.id, (None, None))
        rows.append(row)
    connection.execute(insert(table_of(word)), rows)
    values = value_rows([thing for thing, _ in many if isinstance(thing, OwnEntry)])
    if values:
        connection.execute(insert(_OWN_VALUE), values)


def _write_values(connection: Connection, entries: list[OwnEntry]) -> None:
    for entry in entries:
        connection.execute(delete(_OWN_VALUE).where(_OWN_VALUE.c.entry == entry.id))
    values = value_rows(entries)
    if values:
        connection.execute(insert(_OWN_VALUE), values)


def _number(connection: Connection, word: str, places: list[tuple[Id, int]]) -> None:
    here = table_of(word)
    statement = update(here).where(here.c.id == bindparam("_id")).values(position=bindparam("_at"))
    _executed(connection, statement, [{"_id": thing, "_at": at} for thing, at in places])


def _let_go(connection: Connection, placements: Iterable[Id]) -> None:
    statement = (
        update(_PLACEMENT).where(_PLACEMENT.c.id == bindparam("_id")).values(held_from=None, held_until=None)
    )
    _executed(connection, statement, [{"_id": placement} for placement in sorted(placements)])


def _take_days(connection: Connection, holds: Iterable[Hold]) -> None:
    statement = (
        update(_PLACEMENT)
        .where(_PLACEMENT.c.id == bindparam("_id"))
        .values(held_from=bindparam("_from"), held_until=bindparam("_until"))
    )
    rows = [{"_id": hold.placement, "_from": hold.from_on, "_until": hold.until_on} for hold in holds]
    _executed(connection, statement, rows)


def _executed(connection: Connection, statement: Any, rows: list[Row]) -> None:
    if rows:
        connection.execute(statement, rows)


def _ids(many: Iterable[Thing]) -> list[Row]:
    return [{"_id": thing.id} for thing in many]
