"""By how many days a batch is later than the book, and whether warmth or light is to blame."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Final

import numpy as np

from planner.farm.crops import Stage
from planner.forecast.paces import PaceBook
from planner.forecast.values import STAGES, BatchTable, Floats, Ints

_BED: Final = 3
_IN_NURSERY: Final = frozenset({Stage.GERMINATION, Stage.NURSERY})


class DelayCause(Enum):
    """What slows a batch most."""

    LITTLE_LIGHT = "little light"
    COLD = "cold"
    HEAT = "heat"


@dataclass(frozen=True, slots=True, kw_only=True)
class Delay:
    """Days that the first pick is later than by the book; `by_light` and `by_warmth` each alone."""

    days: int
    by_light: int
    by_warmth: int
    cause: DelayCause


def delay_of(table: BatchTable, paces: PaceBook, row: int) -> Delay | None:
    """Return how late a batch is, None when it is not later than by the book.

    Each cause is worked out with the other left aside, so the two need not add up.
    """
    number, sow_day = int(table.pace[row]), int(table.sow_day[row])
    book = paces.late(number, sow_day, by_warmth=False, by_light=False)
    days = int(table.ends[row, _BED]) - book
    if days <= 0:
        return None
    by_light = paces.late(number, sow_day, by_warmth=False, by_light=True) - book
    by_warmth = paces.late(number, sow_day, by_warmth=True, by_light=False) - book
    cause = (
        DelayCause.LITTLE_LIGHT
        if by_light >= by_warmth
        else _of_warmth(table.ends[row], paces, number, sow_day)
    )
    return Delay(days=days, by_light=by_light, by_warmth=by_warmth, cause=cause)


@dataclass(frozen=True, slots=True, kw_only=True)
class StageDelay:
    """Days that a stage lasts beyond the book, negative for fewer; `cause` is None unless it is slower."""

    stage: Stage
    days: int
    cause: DelayCause | None


def stage_delays(table: BatchTable, paces: PaceBook, row: int) -> tuple[StageDelay, ...]:
    """Return how the stages of a batch up to its first pick differ from the book; only those that do.

    The cause is the one that would stretch the stage more with the other left aside.
    """
    number, sow_day = int(table.pace[row]), int(table.sow_day[row])
    seen, book, light, warmth = (
        _lengths(sow_day, ends)
        for ends in (
            table.ends[row],
            paces.ends_by(number, sow_day, by_warmth=False, by_light=False),
            paces.ends_by(number, sow_day, by_warmth=False, by_light=True),
            paces.ends_by(number, sow_day, by_warmth=True, by_light=False),
        )
    )
    found = []
    for column, stage in enumerate(STAGES[: _BED + 1]):
        days = int(seen[column] - book[column])
        dark = light[column] >= warmth[column] and light[column] > book[column]
        if days:
            cause = DelayCause.LITTLE_LIGHT if dark else _stage_warmth(table, paces, row, column)
            found.append(StageDelay(stage=stage, days=days, cause=cause if days > 0 else None))
    return tuple(found)


def _lengths(sow_day: int, ends: Ints) -> Ints:
    lengths: Ints = np.diff(ends[: _BED + 1], prepend=sow_day)
    return lengths


def _stage_warmth(table: BatchTable, paces: PaceBook, row: int, column: int) -> DelayCause | None:
    """Tell cold from heat by the mean warmth where the stage is spent; None where that is not known."""
    number, ends = int(table.pace[row]), table.ends[row]
    sky = paces.sky_of(number)
    air: Floats | None = None
    if sky is not None:
        air = sky.nursery_c if STAGES[column] in _IN_NURSERY else sky.bed_c
    if sky is None or air is None:
        return None
    start = int(table.sow_day[row] if column == 0 else ends[column - 1]) - sky.first_day
    days = slice(max(start, 0), max(int(ends[column]) - sky.first_day, start + 1, 1))
    return DelayCause.HEAT if float(air[days].mean()) > paces.best_c(number) else DelayCause.COLD


def _of_warmth(ends: Ints, paces: PaceBook, number: int, sow_day: int) -> DelayCause:
    """Tell cold from heat by the mean warmth while the batch grows."""
    mean_c = paces.mean_bed_c(number, sow_day, int(ends[_BED]))
    return DelayCause.HEAT if mean_c > paces.best_c(number) else DelayCause.COLD
