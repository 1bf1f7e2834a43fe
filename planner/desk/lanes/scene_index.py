"""Finds bars of a scene: by batch, under a point, and next to another one for the arrow keys.

Pure look-ups on a scene and its layout; must know nothing of Qt.
"""

from __future__ import annotations

from enum import Enum
from typing import Final, NamedTuple

from planner.desk.lanes.rows_layout import ROW_PAD, RowsLayout
from planner.desk.lanes.scene import NO_UNIT, Bar, Row, RowGroup, RowKey, Scene
from planner.farm.fields import Id

_TINY: Final = 1e-6
_FEW: Final = 12


class Spot(NamedTuple):
    """A bar with the row it lies in."""

    row: RowKey
    bar: Bar


class Way(Enum):
    """Where an arrow key leads."""

    EARLIER = "earlier"
    LATER = "later"
    UP = "up"
    DOWN = "down"


class SceneIndex:
    """Bars of one scene by batch, and rows by their keys.

    A scene is made after every act, but only a few batches of it are asked for: those are searched one by
    one; the table of all is made when many are.
    """

    def __init__(self, scene: Scene) -> None:
        self._rows: dict[RowKey, tuple[RowGroup, Row]] = {
            row.key: (group, row) for group in scene.groups for row in group.rows
        }
        self._few: dict[Id, tuple[Spot, ...]] = {}
        self._all: dict[Id, list[Spot]] | None = None

    def spots(self, batch: Id) -> tuple[Spot, ...]:
        """Return all bars of a batch."""
        found = self._few.get(batch)
        if found is None:
            found = self._search(batch) if len(self._few) < _FEW else tuple(self._table().get(batch, ()))
            self._few[batch] = found
        return found

    def _search(self, batch: Id) -> tuple[Spot, ...]:
        return tuple(
            Spot(key, bar) for key, (_, row) in self._rows.items() for bar in row.bars if bar.batch == batch
        )

    def _table(self) -> dict[Id, list[Spot]]:
        if self._all is None:
            self._all = {}
            for key, (_, row) in self._rows.items():
                for bar in row.bars:
                    self._all.setdefault(bar.batch, []).append(Spot(key, bar))
        return self._all

    def row(self, key: RowKey) -> tuple[RowGroup, Row] | None:
        """Return a row with its group."""
        return self._rows.get(key)

    def again(self, bar: Bar | None) -> Spot | None:
        """Return the bar as it is now: the same run, else the same phase, else any bar of the batch."""
        if bar is None:
            return None
        spots = self.spots(bar.batch)
        same_run = (spot for spot in spots if spot.bar.key == bar.key)
        same_phase = (spot for spot in spots if spot.bar.phase is bar.phase)
        return next(same_run, None) or next(same_phase, None) or next(iter(spots), None)

    def rows_from(self, key: RowKey, step: int) -> tuple[RowKey, ...]:
        """Return the rows of places below (`step` 1) or above (-1) a row, nearest first."""
        keys = list(self._rows)
        if key not in self._rows:
            return ()
        at = keys.index(key)
        found = keys[at + 1 :] if step > 0 else keys[:at][::-1]
        return tuple(each for each in found if each.unit != NO_UNIT)


def spot_at(layout: RowsLayout, y: float, day: float) -> Spot | None:
    """Return the bar at a height in the lane and a day, None where there is none."""
    strip = layout.strip_at(y)
    if strip is None or strip.row is None:
        return None
    line = (y - strip.top - ROW_PAD) / layout.line_px
    on = int(day // 1)
    for bar in reversed(strip.row.seen(on, on + 1)):
        if bar.start <= day < bar.end and bar.top - _TINY <= line <= bar.top + bar.lines + _TINY:
            return Spot(strip.row.key, bar)
    return None


def neighbour(layout: RowsLayout, spot: Spot, way: Way) -> Spot | None:
    """Return the bar that an arrow key leads to from another one."""
    position = layout.position_of.get(spot.row)
    if position is None:
        return None
    row = layout.strips[position].row
    assert row is not None
    if way in (Way.EARLIER, Way.LATER):
        return _beside(row, spot.bar, 1 if way is Way.LATER else -1)
    return _in_row(row, spot.bar, way) or _in_other_row(layout, position, spot.bar, way)


def _beside(row: Row, bar: Bar, step: int) -> Spot | None:
    at = next((at for at, each in enumerate(row.bars) if each.key == bar.key), None)
    if at is None or not 0 <= at + step < len(row.bars):
        return None
    return Spot(row.key, row.bars[at + step])


def _in_row(row: Row, bar: Bar, way: Way) -> Spot | None:
    """Return the next bar above or below within the row that shares days with this one."""
    others = [each for each in row.seen(bar.start, bar.end) if each.end > bar.start and each.key != bar.key]
    if way is Way.DOWN:
        found = min((each for each in others if each.top > bar.top), key=_top, default=None)
    else:
        found = max((each for each in others if each.top < bar.top), key=_top, default=None)
    return Spot(row.key, found) if found is not None else None


def _top(bar: Bar) -> float:
    return bar.top


def _in_other_row(layout: RowsLayout, position: int, bar: Bar, way: Way) -> Spot | None:
    step = 1 if way is Way.DOWN else -1
    middle = (bar.start + bar.end) / 2
    at = position + step
    while 0 <= at < len(layout.strips):
        row = layout.strips[at].row
        if row is not None and row.bars:
            return Spot(row.key, min(row.bars, key=lambda each: (_distance(each, middle), step * each.top)))
        at += step
    return None


def _distance(bar: Bar, day: float) -> float:
    return max(bar.start - day, day - bar.end, 0.0)


def first_spot(layout: RowsLayout, day: int) -> Spot | None:
    """Return a bar to begin with: in the topmost row that has any, the one nearest to a day."""
    for strip in layout.strips:
        if strip.row is not None and strip.row.bars:
            return Spot(strip.row.key, min(strip.row.bars, key=lambda each: _distance(each, day)))
    return None
