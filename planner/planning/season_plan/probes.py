"""Asks the forecast what every possible sowing would lead to, by trying a batch of each.

The forecast stays the only one to know how plants grow; nothing here knows a stage or a rate.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Collection, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.ids import id_from
from planner.forecast.engine import Forecaster
from planner.forecast.formed import formed_per_plant
from planner.forecast.paces import PaceBook
from planner.forecast.profiles import Profile, picks_by_day
from planner.forecast.values import BatchTable, Forecast, Ruler
from planner.planning.season_plan.values import (
    BOOK_DAYS,
    Floats,
    Ground,
    Ints,
    Nursery,
    OwnDays,
    Sparse,
)

_MANY_PLANTS: Final = 1_000_000
"""Plants of a trial batch, so many that the seeds for one of them come out unrounded."""
_NEXT_TO_NOTHING_G: Final = 1e-12


@dataclass(frozen=True, slots=True, kw_only=True)
class Trial:
    """One possible sowing."""

    crop: str
    ground: int
    week: int
    sow_on: date
    own: OwnDays = BOOK_DAYS


def trials_of(
    crops: Sequence[str],
    grounds: Sequence[Ground],
    *,
    days: Sequence[tuple[int, date]],
    catalogue: Catalogue,
) -> tuple[Trial, ...]:
    """Return a trial of every crop on every ground that suits it, for each (week, day of sowing)."""
    return tuple(
        Trial(crop=crop, ground=number, week=week, sow_on=on)
        for crop in crops
        for number, ground in enumerate(grounds)
        if ground.kind in catalogue.crops[crop].beds
        for week, on in days
    )


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Tried:
    """What the forecast says of trials, a row each in their order."""

    table: BatchTable
    profiles: tuple[Profile, ...]
    ruler: Ruler

    @property
    def seeds(self) -> Floats:
        """Seeds to sow for one plant."""
        return self.table.seeds / float(_MANY_PLANTS)

    def profile(self, row: int) -> Profile:
        """Return the profile of a row."""
        return self.profiles[int(self.table.profile[row])]


def tried(
    farm: Farm,
    trials: Sequence[Trial],
    *,
    forecaster: Forecaster,
    grounds: Sequence[Ground],
    nurseries: Sequence[Nursery],
) -> Tried:
    """Return what the forecast says of trials on a farm that grows nothing else."""
    pools = {nursery.loop: nursery for nursery in nurseries}
    batches, placements = [], []
    for trial in trials:
        ground = grounds[trial.ground]
        batch = _batch(trial, ground)
        batches.append(batch)
        pool = pools.get(ground.loop)
        if pool is not None:
            placements.append(_cell(batch, pool))
    probe = dataclasses.replace(farm, batches=tuple(batches), placements=tuple(placements))
    forecast: Forecast = forecaster.preview(probe)
    return Tried(table=forecast.batches, profiles=forecast.profiles, ruler=forecast.ruler)


def _batch(trial: Trial, ground: Ground) -> Batch:
    name = f"{trial.crop} {trial.ground} {trial.week}"
    return Batch(
        id=id_from("trial", name),
        code=name,
        crop=trial.crop,
        sow_on=trial.sow_on,
        plants=_MANY_PLANTS,
        bed=ground.beds[0],
        nursery_days=trial.own.nursery,
        spacing_days=trial.own.spacing,
        bed_days=trial.own.bed,
    )


def _cell(batch: Batch, nursery: Nursery) -> Placement:
    """Return a cell in the nursery, for its light decides how quickly seedlings grow."""
    return Placement(
        id=id_from("trial cell", batch.code),
        batch=batch.id,
        phase=Phase.NURSERY,
        bed=nursery.beds[0],
        unit=1,
        first=1,
        count=1,
    )


def sowing_days(ruler: Ruler, *, from_on: date, weeks: range, weekday: int) -> list[tuple[int, date]]:
    """Return (week of the plan, day of sowing) of every week of the ruler in `weeks`."""
    days = ((week - weeks.start, ruler.week_start(week) + timedelta(days=weekday)) for week in weeks)
    return [(week, on) for week, on in days if on >= from_on]


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekSpan:
    """Weeks of the ruler that a plan looks at."""

    first: int
    count: int

    def clipped(self, by_day: Floats) -> Floats:
        """Return sums by week of days that begin with the ruler; days beyond the weeks are left out."""
        whole = np.zeros((self.first + self.count) * DAYS_PER_WEEK)
        size = min(whole.size, by_day.size)
        whole[:size] = by_day[:size]
        found: Floats = whole.reshape(-1, DAYS_PER_WEEK).sum(axis=1)[self.first :]
        return found


def picks_of(
    found: Tried, rows: Ints, span: WeekSpan, *, paces: PaceBook, weighed: Collection[str] = ()
) -> Sparse:
    """Return the share of a plant harvested by week, for the rows asked for.

    Of crops to be `weighed` it is the share of a book plant's whole yield: by the room the plants have, and
    by what has grown since the last pick.
    """
    dense = np.zeros((rows.size, span.count))
    for number in np.unique(found.table.pace[rows]).tolist():
        profile = found.profiles[paces.profile_of(number)]
        own = np.flatnonzero(found.table.pace[rows] == number)
        shares = picks_by_day(profile) * profile.bed_survival_share
        again = None
        if profile.crop.key in weighed:
            shares = shares * (profile.yield_g_per_plant / profile.crop.yield_g_per_plant)
            again = paces.pace(number).regrown
        first_day = found.table.ends[rows[own], _BED]
        for after in np.flatnonzero(shares).tolist():
            day = first_day + after
            week = day // DAYS_PER_WEEK - span.first
            size = again(day) if again is not None and after else None
            given = np.full(day.size, shares[after]) if size is None else shares[after] * size
            inside = (week >= 0) & (week < span.count)
            dense[own[inside], week[inside]] += given[inside]
    return _packed_rows(dense)


def visits_of(found: Tried, rows: Ints, span: WeekSpan) -> Sparse:
    """Return how often a plant is picked from by week, for the rows asked for."""
    dense = np.zeros((rows.size, span.count))
    first_day = found.table.ends[rows, _BED]
    for number in np.unique(found.table.profile[rows]).tolist():
        profile = found.profiles[number]
        own = np.flatnonzero(found.table.profile[rows] == number)
        for after in np.flatnonzero(picks_by_day(profile)).tolist():
            week = (first_day[own] + after) // DAYS_PER_WEEK - span.first
            inside = (week >= 0) & (week < span.count)
            dense[own[inside], week[inside]] += 1.0
    return _packed_rows(dense)


def _packed_rows(dense: Floats) -> Sparse:
    row, week = np.nonzero(dense)
    start = np.zeros(dense.shape[0] + 1, dtype=np.int64)
    start[1:] = np.cumsum(np.bincount(row, minlength=dense.shape[0]))
    return Sparse(start=start, week=week.astype(np.int64), value=dense[row, week])


_BED: Final = 3


def once(days: Ints, span: WeekSpan) -> Sparse:
    """Return 1 in the week of a day, for each of many days."""
    week = days // DAYS_PER_WEEK - span.first
    inside = (week >= 0) & (week < span.count)
    start = np.zeros(days.size + 1, dtype=np.int64)
    start[1:] = np.cumsum(inside)
    return Sparse(start=start, week=week[inside], value=np.ones(int(inside.sum())))


def formed_of(found: Tried, rows: Ints, span: WeekSpan, *, forecaster: Forecaster) -> Sparse:
    """Return dry mass that one plant forms by week [g]."""
    keys: dict[tuple[int, int], int] = {}
    for row in rows.tolist():
        key = (int(found.table.pace[row]), int(found.table.sow_day[row]))
        keys.setdefault(key, row)
    by_day = formed_per_plant(found.table, forecaster.paces, found.ruler, keys.values())
    place = {key: number for number, key in enumerate(keys)}
    weekly = np.asarray([span.clipped(days) for days in by_day]).reshape(len(keys), span.count)
    weekly[weekly <= _NEXT_TO_NOTHING_G] = 0.0
    chosen = [
        place[pace, day]
        for pace, day in zip(found.table.pace[rows].tolist(), found.table.sow_day[rows].tolist(), strict=True)
    ]
    return _packed_rows(weekly).taken(np.asarray(chosen, dtype=np.int64))


def summed(parts: Sequence[tuple[float, Sparse]], *, weeks: int) -> Sparse:
    """Return a weighted sum of matrices of one shape."""
    count = parts[0][1].start.size - 1
    dense = np.zeros((count, weeks))
    for weight, part in parts:
        np.add.at(dense, (part.column, part.week), weight * part.value)
    return _packed_rows(dense)
