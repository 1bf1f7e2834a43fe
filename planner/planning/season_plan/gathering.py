"""Brings sowings of one crop and week that lie on several grounds together where that costs nothing."""

from __future__ import annotations

import numpy as np

from planner.planning.season_plan.tally import Tally

_NOTHING = 1e-9


def gather(tally: Tally) -> None:
    """Move whole sowings to where more of the same is sown that week, the smallest first.

    A grower would rather sow one tray for one bed than three plants for another; only moves that leave the
    cost as it is are made.
    """
    columns = tally.model.columns
    sown = np.flatnonzero(tally.lots > 0)
    for column in sown[np.argsort(tally.lots[sown], kind="stable")].tolist():
        same = (columns.crop == columns.crop[column]) & (columns.week == columns.week[column])
        same[column] = False
        others = np.flatnonzero(same & (tally.lots >= tally.lots[column]))
        for other in others[np.argsort(-tally.lots[others], kind="stable")].tolist():
            if _moved(tally, column, other):
                break


def _moved(tally: Tally, column: int, other: int) -> bool:
    lots = int(tally.lots[column])
    change = tally.change_of(column, -lots)
    tally.change(column, -lots)
    if tally.room_for(other) >= lots and change + tally.change_of(other, lots) <= _NOTHING:
        tally.change(other, lots)
        return True
    tally.change(column, lots)
    return False
