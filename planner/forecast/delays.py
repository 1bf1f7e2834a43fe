"""By how many days a batch is later than the book, and whether warmth or light is to blame."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from planner.forecast.paces import PaceBook
from planner.forecast.values import BatchTable, Ints

_BED = 3


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


def _of_warmth(ends: Ints, paces: PaceBook, number: int, sow_day: int) -> DelayCause:
    """Tell cold from heat by the mean warmth while the batch grows."""
    mean_c = paces.mean_bed_c(number, sow_day, int(ends[_BED]))
    return DelayCause.HEAT if mean_c > paces.best_c(number) else DelayCause.COLD
