"""Works out what to say when a batch finds no place: the tightest day, what is missing, what would make room.

Told only for what was refused, so that packing itself need not keep names. Must know nothing of words.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

import numpy as np

from planner.farm.crops import Batch
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.site import Bed
from planner.forecast.values import Forecast, Ints
from planner.planning.placement import Freeing, Refusal, RefusalKind


class Standing:
    """Everything that holds places in the beds of a farm, as it was packed."""

    def __init__(self, farm: Farm, forecast: Forecast) -> None:
        """Begin with nothing; batches of the farm are known by their codes."""
        self._batches: tuple[Batch, ...] = farm.batches
        self._row_of = forecast.batches.row_of
        self.ruler = forecast.ruler
        self._number = {bed.id: number for number, bed in enumerate(farm.beds)}
        self._held: list[tuple[int, int, int, int, int, bool]] = []
        self._array: Ints | None = None

    def add(self, batch: Id, bed: Id, count: int, *, days: tuple[int, int], fixed: bool) -> None:
        """Take up places that a batch holds from the first of `days` to the day before the second."""
        self._held.append((self._row_of[batch], self._number[bed], count, *days, fixed))
        self._array = None

    def among(self, beds: Sequence[Bed], days: tuple[int, int]) -> Ints:
        """Return rows (batch, bed, count, start, end, fixed) that were in the way of what came on a day.

        What was packed later than that day was not; what is fixed was, even when it comes later.
        """
        if self._array is None:
            self._array = np.asarray(self._held, dtype=np.int64).reshape(-1, 6)
        held = self._array
        here = np.isin(held[:, 1], [self._number[bed.id] for bed in beds])
        near = (held[:, 3] < days[1]) & (held[:, 4] > days[0])
        there = (held[:, 3] <= days[0]) | (held[:, 5] > 0)
        found: Ints = held[here & near & there]
        return found

    def row_of(self, batch: Id) -> int:
        """Return the row of a batch."""
        return self._row_of[batch]

    def batch(self, row: int) -> Batch:
        """Return a batch by its row."""
        return self._batches[row]


def full_refusal(
    standing: Standing, *, batch: Id, beds: Sequence[Bed], days: tuple[int, int], needed: int, free: int
) -> Refusal:
    """Return the refusal of a batch for which too few places are free."""
    held = standing.among(beds, days)
    held = held[held[:, 0] != standing.row_of(batch)]
    ruler = standing.ruler
    return Refusal(
        kind=RefusalKind.NO_FREE_PLACES,
        batch=batch,
        bed=", ".join(bed.name for bed in beds),
        needed=needed,
        free=free,
        from_on=ruler.date_of(days[0]),
        until_on=ruler.date_of(days[1] - 1),
        blocking=tuple(sorted({standing.batch(int(row)).code for row in np.unique(held[:, 0])})),
        tight_on=ruler.date_of(_tightest(held, days)),
        freeing=tuple(_freeing(standing, held, needed - free)),
    )


def _tightest(held: Ints, days: tuple[int, int]) -> int:
    """Return the first day of a span on which most places are held."""
    starts = np.unique(np.clip(held[:, 3], days[0], None))
    if not starts.size:
        return days[0]
    on = (held[:, 3] <= starts[:, None]) & (held[:, 4] > starts[:, None])
    return int(starts[np.argmax((on * held[:, 2]).sum(axis=1))])


def _freeing(standing: Standing, held: Ints, short: int) -> Iterator[Freeing]:
    """Yield whose places would make up for what is missing: those that leave soonest first, a batch once."""
    places: dict[tuple[int, int], int] = {}
    for row, _, count, _, end, _ in held.tolist():
        places[end, row] = places.get((end, row), 0) + count
    for (end, row), count in sorted(places.items()):
        if short <= 0:
            return
        short -= count
        batch = standing.batch(row)
        until_on = standing.ruler.date_of(end)
        yield Freeing(code=batch.code, places=count, until_on=until_on, locked=batch.locked)
