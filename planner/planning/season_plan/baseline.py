"""The rhythm a grower would write by hand: the same every week, sown a mean time before it is wanted.

What any plan is held against, and never falls behind. Looks at no element and at no season.
"""

from __future__ import annotations

import numpy as np

from planner.planning.season_plan.tally import Tally
from planner.planning.season_plan.values import Ints, Line, SeasonModel


def rhythm(model: SeasonModel) -> Ints:
    """Return lots of a constant rhythm for every target, week by week as far as there is room.

    A crop that is picked for weeks is sown again when its picking ends. What finds no room on the first
    ground goes to the next.
    """
    tally = Tally(model)
    due = [each for line in model.lines for each in _due(model, line)]
    for week, crop, plants in sorted(due):
        _sow(tally, np.flatnonzero((model.columns.week == week) & (model.columns.crop == crop)), plants)
    return tally.lots.copy()


def _due(model: SeasonModel, line: Line) -> list[tuple[int, int, float]]:
    """Return (week, crop, plants) of every sowing that a line asks for."""
    columns = model.columns
    own = np.flatnonzero(columns.crop == line.crop)
    if not own.size:
        return []
    picks = [columns.picks.of(column) for column in own.tolist()]
    first = np.asarray([weeks[0] for weeks, _ in picks])
    wait = round(float((first - columns.week[own]).mean()))
    lasts = max(round(float(np.median([weeks.size for weeks, _ in picks]))), 1)
    gives = float(np.mean([shares.sum() for _, shares in picks])) * line.per_plant
    asked = np.flatnonzero(line.wanted > 0)
    weeks = range(int(asked[0]) - wait, int(asked[-1]) - wait + 1, lasts)
    return [(week, line.crop, line.usual * lasts / gives) for week in weeks]


def _sow(tally: Tally, own: Ints, plants: float) -> None:
    for column in own.tolist():
        lots = int(np.ceil(plants / tally.model.columns.lot[column]))
        more = min(lots, tally.room_for(column))
        if more > 0:
            tally.change(column, more)
            plants -= more * int(tally.model.columns.lot[column])
        if plants <= 0:
            return
