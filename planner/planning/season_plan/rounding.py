"""Makes whole lots of the shares of lots that the linear program speaks of, without losing any on the way."""

from __future__ import annotations

import numpy as np

from planner.planning.season_plan.tally import Tally
from planner.planning.season_plan.values import Bools, Floats, Ints

_HALF = 0.5
_NOISE = 1e-6


def round_into(tally: Tally, shares: Floats) -> None:
    """Sow whole lots near some shares of lots, as far as they fit.

    All shares are rounded down first. Then, week by week, what a crop has lost by that is
    made up as soon as it amounts to half a lot and there is room; what finds no room then is let go.
    """
    columns = tally.model.columns
    for column in by_week(tally, np.flatnonzero(shares >= 1.0 - _NOISE)):
        tally.change(column, min(int(shares[column] + _NOISE), tally.room_for(column)))
    owed: dict[int, float] = {}
    for week, crop in _crop_weeks(tally, shares > _NOISE):
        own = np.flatnonzero((columns.week == week) & (columns.crop == crop))
        owing = owed.get(crop, 0.0) + float(shares[own].sum()) - int(tally.lots[own].sum())
        wanted = int(owing + _HALF)
        for column in own[np.argsort(tally.lots[own] - shares[own], kind="stable")].tolist():
            more = min(wanted, tally.room_for(column)) if wanted > 0 else 0
            if more:
                tally.change(column, more)
                wanted -= more
                owing -= more
        owed[crop] = min(owing, _HALF)


def _crop_weeks(tally: Tally, chosen: Bools) -> list[tuple[int, int]]:
    """Return (week, crop) of some columns, each once, in order."""
    columns = tally.model.columns
    return sorted(set(zip(columns.week[chosen].tolist(), columns.crop[chosen].tolist(), strict=True)))


def by_week(tally: Tally, chosen: Ints) -> list[int]:
    """Return columns in the order of their weeks."""
    order: Ints = chosen[np.argsort(tally.model.columns.week[chosen], kind="stable")]
    found: list[int] = order.tolist()
    return found


def make_fit(tally: Tally) -> None:
    """Take lots out of a plan until everything has room, those first whose loss costs least."""
    crowded = _crowded(tally)
    while crowded.size:
        costs = [tally.change_of(int(column), -1) for column in crowded]
        tally.change(int(crowded[int(np.argmin(costs))]), -1)
        crowded = _crowded(tally)


def _crowded(tally: Tally) -> Ints:
    """Return sown columns that share the first place where there is no room; none when all fits."""
    columns, sown = tally.model.columns, tally.lots > 0
    for left, first, last in (
        (tally.bed_left, columns.bed_first, columns.bed_last),
        (tally.nursery_left, columns.nursery_first, columns.nursery_last),
        (tally.spacing_left, columns.spacing_first, columns.spacing_last),
    ):
        over = np.flatnonzero(left < 0)
        if over.size:
            return np.flatnonzero(sown & (first <= over[0]) & (last > over[0]))
    busy = np.zeros(0, dtype=np.int64)
    if tally.work_left is not None:
        over = np.flatnonzero(tally.work_left < -_NOISE)
        if over.size:
            inside = (columns.work.week == over[0]) & (columns.work.value > 0)
            busy = np.intersect1d(columns.work.column[inside], np.flatnonzero(sown))
    return busy
