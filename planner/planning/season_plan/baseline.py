"""The rhythm a grower would write by hand: always the same, sown a mean time before it is wanted.

What any plan is held against, and never falls behind. Looks at no element and at no season.
"""

from __future__ import annotations

from typing import Final

import numpy as np

from planner.planning.season_plan.tally import Tally
from planner.planning.season_plan.values import Ints, Line, SeasonModel

_HALF: Final = 0.5
_SHARES: Final = (1.0, 0.8)
"""Parts of the targets that a rhythm is tried for: who sees that not all fits sows less of everything."""


def rhythm(model: SeasonModel) -> Ints:
    """Return lots of the best of a few constant rhythms: for all of the targets or less of everything.

    A crop is sown every week, or whenever the picking of the last sowing ends, week by week as far as there
    is room. What finds no room on the first ground goes to the next.
    """
    tries = [_rhythm_for(model, share, weekly=weekly) for share in _SHARES for weekly in (True, False)]
    return min(tries, key=_cost).lots.copy()


def _cost(tally: Tally) -> float:
    return tally.parts().cost


def _rhythm_for(model: SeasonModel, share: float, *, weekly: bool) -> Tally:
    tally = Tally(model)
    due = [each for line in model.lines for each in _due(model, line, weekly=weekly)]
    owed = np.zeros(len(model.crops))
    for week, crop, plants in sorted(due):
        own = np.flatnonzero((model.columns.week == week) & (model.columns.crop == crop))
        owed[crop] += plants * share
        lot = model.columns.lot[own[0]] if own.size else 1
        lots = int(owed[crop] / lot + _HALF)
        owed[crop] -= lots * lot
        _sow(tally, own, lots)
    return tally


def _due(model: SeasonModel, line: Line, *, weekly: bool) -> list[tuple[int, int, float]]:
    """Return (week, crop, plants) of every sowing that a line asks for."""
    columns = model.columns
    own = np.flatnonzero(columns.crop == line.crop)
    if not own.size:
        return []
    picks = [columns.picks.of(column) for column in own.tolist()]
    first = np.asarray([weeks[0] for weeks, _ in picks])
    wait = round(float((first - columns.week[own]).mean()))
    window = round(float(np.median([weeks[-1] - weeks[0] + 1 for weeks, _ in picks])))
    every = 1 if weekly else window
    gives = float(np.median([shares.sum() for _, shares in picks])) * line.per_plant
    asked = np.flatnonzero(line.wanted > 0)
    weeks = range(int(asked[0]) - wait, int(asked[-1]) - wait + 1, every)
    return [(week, line.crop, line.usual * every / gives) for week in weeks]


def _sow(tally: Tally, own: Ints, lots: int) -> None:
    for column in own.tolist():
        more = min(lots, tally.room_for(column))
        if more > 0:
            tally.change(column, more)
            lots -= more
