"""Growth and harvest batch by batch, where the forecast itself only counts them together."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np

from planner.forecast.paces import PaceBook
from planner.forecast.profiles import picks_by_day
from planner.forecast.values import BatchTable, Floats, Forecast, Ruler


def formed_per_plant(table: BatchTable, paces: PaceBook, ruler: Ruler, rows: Iterable[int]) -> Floats:
    """Return dry mass formed by one plant of each batch [g/d], shape (row asked for, day)."""
    kept: dict[tuple[int, int], Floats] = {}
    found = []
    for row in rows:
        key = (int(table.pace[row]), int(table.sow_day[row]))
        if key not in kept:
            kept[key] = _formed(paces, key, ruler)
        found.append(kept[key])
    return np.asarray(found, dtype=np.float64).reshape(len(found), ruler.days)


def _formed(paces: PaceBook, key: tuple[int, int], ruler: Ruler) -> Floats:
    pace, sow_day = paces.pace(key[0]), key[1]
    if not -pace.lead <= sow_day < ruler.days:
        return np.zeros(ruler.days)
    starts = np.zeros(pace.lead + ruler.days)
    starts[sow_day + pace.lead] = 1.0
    return pace.formed(starts)


def rows_alive(table: BatchTable, *, first_day: int, last_day: int) -> list[int]:
    """Return batches that may grow between a day and the day before `last_day`."""
    alive = (table.sow_day < last_day) & (np.maximum(table.ends[:, 4], table.ends[:, 3] + 1) >= first_day)
    return [int(row) for row in alive.nonzero()[0]]


def regrown_by_offset(forecast: Forecast, paces: PaceBook, row: int) -> Floats:
    """Return what each pick of a batch weighs against a full one, by days since the first, 1 at the first."""
    table = forecast.batches
    offsets = np.arange(picks_by_day(forecast.profiles[table.profile[row]]).size)
    again = paces.pace(int(table.pace[row])).regrown(offsets + int(table.ends[row, 3]))
    if again is None:
        return np.ones(offsets.size)
    again[0] = 1.0
    return again


def pick_size(forecast: Forecast, paces: PaceBook, row: int, *, first_day: int, last_day: int) -> float:
    """Return what a batch's picks between a day and the day before `last_day` weigh against full ones."""
    table = forecast.batches
    picks = picks_by_day(forecast.profiles[table.profile[row]])
    start = int(table.ends[row, 3])
    span = slice(max(first_day - start, 0), max(last_day - start, 0))
    share = float(picks[span].sum())
    if share <= 0.0:
        return 1.0
    return float((picks * regrown_by_offset(forecast, paces, row))[span].sum()) / share


def pick_share(forecast: Forecast, row: int, *, first_day: int, last_day: int) -> float:
    """Return the share of a batch's whole harvest between a day and the day before `last_day`."""
    table = forecast.batches
    if table.ripe[row] <= 0.0:
        return 0.0
    picks = picks_by_day(forecast.profiles[table.profile[row]])
    start = int(table.ends[row, 3])
    low, high = max(first_day - start, 0), max(last_day - start, 0)
    return float(picks[low:high].sum())
