"""Builds the season of a farm: every possible sowing, what is free for it, and what is wanted of it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

import numpy as np

from planner.farm.crops import TargetUnit
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.forecast.engine import Forecaster
from planner.planning.rhythm import WorkDays
from planner.planning.season_plan.asked import elements_of, lines_of
from planner.planning.season_plan.fixed import bed_holds, nursery_holds
from planner.planning.season_plan.frame import Frame, frame_of
from planner.planning.season_plan.options import PlanOptions
from planner.planning.season_plan.probes import (
    Trial,
    Tried,
    formed_of,
    once,
    picks_of,
    sowing_days,
    summed,
    trials_of,
    tried,
    visits_of,
)
from planner.planning.season_plan.spans import Spans, spans_of
from planner.planning.season_plan.values import (
    Columns,
    Floats,
    Ints,
    Line,
    Rows,
    SeasonModel,
    Sparse,
    TooSlow,
)
from planner.planning.season_plan.work_days import on_days_of_work

_NURSERY_END: Final = 1
_SPACING_END: Final = 2
_CLEARED: Final = 5
_FULL_SIZE: Final = 1.0
_NEVER: Final = -DAYS_PER_WEEK * 10_000
"""A day before all weeks, for a move that there is not."""


def build_model(farm: Farm, forecaster: Forecaster, options: PlanOptions) -> SeasonModel:
    """Return the season of a farm; raises `FarmFaultError` when the plan does not hold the weeks asked for.

    The forecast must be able to read the farm: check it first with `planner.forecast.checks`.
    """
    frame = frame_of(farm, forecaster, options)
    weeks = range(frame.span.first, frame.span.first + frame.span.count)
    days = sowing_days(frame.ruler, from_on=frame.from_on, weeks=weeks, weekday=options.sow_weekday)
    trials = trials_of(frame.crops, frame.grounds, days=days, catalogue=forecaster.catalogue)
    if options.work != WorkDays():
        trials = on_days_of_work(frame, trials)
    found = tried(farm, trials, forecaster=forecaster, grounds=frame.grounds, nurseries=frame.nurseries)
    full = found.table.ripe >= _FULL_SIZE
    lines = lines_of(frame)
    weighed = _only_by_weight(frame, lines)
    picks = picks_of(found, np.arange(len(trials)), frame.span, paces=forecaster.paces, weighed=weighed)
    rows = np.flatnonzero(full & (np.diff(picks.start) > 0))
    kept = [trials[row] for row in rows.tolist()]
    columns, room = _columns(frame, kept, found, rows, picks=picks.taken(rows))
    return SeasonModel(
        ruler=frame.ruler,
        from_on=frame.from_on,
        first_week=frame.span.first,
        weeks=frame.span.count,
        crops=frame.crops,
        grounds=frame.grounds,
        nurseries=frame.nurseries,
        pools=frame.pools,
        lines=lines,
        columns=columns,
        rows=room,
        elements=elements_of(frame),
        weights=frame.weights,
        too_slow=_too_slow([trials[row] for row in np.flatnonzero(~full).tolist()]),
    )


def _only_by_weight(frame: Frame, lines: Sequence[Line]) -> frozenset[str]:
    """Return the crops that are wanted by weight and never by number."""
    by_number = {line.crop for line in lines if line.unit is TargetUnit.HEADS}
    return frozenset(frame.crops[line.crop] for line in lines if line.crop not in by_number)


def _too_slow(trials: Sequence[Trial]) -> tuple[TooSlow, ...]:
    weeks: dict[tuple[str, int], list[int]] = {}
    for trial in trials:
        weeks.setdefault((trial.crop, trial.ground), []).append(trial.week)
    return tuple(
        TooSlow(crop=crop, ground=ground, weeks=tuple(many)) for (crop, ground), many in weeks.items()
    )


def _columns(
    frame: Frame, trials: Sequence[Trial], found: Tried, rows: Ints, *, picks: Sparse
) -> tuple[Columns, Rows]:
    ground = np.asarray([trial.ground for trial in trials], dtype=np.int64)
    loop = np.asarray([each.loop for each in frame.grounds], dtype=np.int64)[ground]
    numbers = {key: number for number, key in enumerate(frame.crops)}
    lots = np.asarray([frame.options.lot_of(trial.crop) for trial in trials], dtype=np.int64)
    beds = _bed_room(frame, found, rows, ground)
    middle = _spacing_room(frame, found, rows, loop)
    cells = _nursery_room(frame, found, rows, loop)
    columns = Columns(
        crop=np.asarray([numbers[trial.crop] for trial in trials], dtype=np.int64),
        ground=ground,
        week=np.asarray([trial.week for trial in trials], dtype=np.int64),
        loop=loop,
        sow_day=found.table.sow_day[rows],
        lot=lots,
        seeds=found.seeds[rows],
        bed_first=beds.first,
        bed_last=beds.last,
        nursery_first=cells.first,
        nursery_last=cells.last,
        spacing_first=middle.first,
        spacing_last=middle.last,
        picks=picks,
        formed=formed_of(found, rows, frame.span, forecaster=frame.forecaster),
        work=_work(frame, found, rows),
        own_days=tuple(trial.own for trial in trials),
    )
    room = Rows(
        bed_free=beds.free,
        bed_start=beds.start,
        bed_ground=beds.group,
        nursery_free=cells.free,
        nursery_start=cells.start,
        nursery_pool=cells.group,
        spacing_free=middle.free,
        spacing_start=middle.start,
        spacing_pool=middle.group,
        work_free=_work_free(frame),
    )
    return columns, room


# --- room ----------------------------------------------------------------------------------------------


class _Room:
    """Spans of several groups of places, one after the other."""

    def __init__(self, columns: int) -> None:
        self._start: list[Ints] = []
        self._free: list[Ints] = []
        self._group: list[Ints] = []
        self._rows = 0
        self.first = np.zeros(columns, dtype=np.int64)
        self.last = np.zeros(columns, dtype=np.int64)

    def add(self, group: int, inside: Ints, spans: Spans) -> None:
        """Add the spans of one group, whose sowings stand at `inside` among the columns."""
        self.first[inside] = spans.first + self._rows
        self.last[inside] = spans.last + self._rows
        self._start.append(spans.start)
        self._free.append(spans.free)
        self._group.append(np.full(spans.start.size, group, dtype=np.int64))
        self._rows += spans.start.size

    @property
    def start(self) -> Ints:
        """First day of each span."""
        return _joined(self._start)

    @property
    def free(self) -> Ints:
        """What is free in each span."""
        return _joined(self._free)

    @property
    def group(self) -> Ints:
        """The group of each span."""
        return _joined(self._group)


def _joined(parts: list[Ints]) -> Ints:
    return np.concatenate(parts) if parts else np.zeros(0, dtype=np.int64)


def _bed_room(frame: Frame, found: Tried, rows: Ints, ground: Ints) -> _Room:
    ends = found.table.ends[rows]
    held = bed_holds(frame.stays, frame.fixed, frame.grounds, days=_days(frame, ends))
    room = _Room(rows.size)
    pooled = {pool.loop for pool in frame.pools}
    for number, each in enumerate(frame.grounds):
        inside = np.flatnonzero(ground == number)
        # Without beds of their own, plants stand in the ground at the intermediate distance as well.
        from_stage = _SPACING_END if each.loop in pooled else _NURSERY_END
        come, leave = ends[inside, from_stage], ends[inside, _CLEARED]
        room.add(number, inside, spans_of(come, leave, held=held[number], places=each.places))
    return room


def _spacing_room(frame: Frame, found: Tried, rows: Ints, loop: Ints) -> _Room:
    ends = found.table.ends[rows]
    held = bed_holds(frame.stays, frame.fixed, frame.pools, days=_days(frame, ends))
    room = _Room(rows.size)
    for number, each in enumerate(frame.pools):
        spaced = ends[:, _SPACING_END] > ends[:, _NURSERY_END]
        inside = np.flatnonzero((loop == each.loop) & spaced)
        come, leave = ends[inside, _NURSERY_END], ends[inside, _SPACING_END]
        room.add(number, inside, spans_of(come, leave, held=held[number], places=each.places))
    return room


def _nursery_room(frame: Frame, found: Tried, rows: Ints, loop: Ints) -> _Room:
    ends, sown = found.table.ends[rows], found.table.sow_day[rows]
    held = nursery_holds(frame.stays, frame.fixed, frame.nurseries, days=_days(frame, ends))
    room = _Room(rows.size)
    for number, each in enumerate(frame.nurseries):
        inside = np.flatnonzero(loop == each.loop)
        come = sown[inside]
        leave = np.maximum(ends[inside, _NURSERY_END], come + 1)
        room.add(number, inside, spans_of(come, leave, held=held[number], places=each.cells))
    return room


def _days(frame: Frame, ends: Ints) -> int:
    """Return the days from the start of the ruler on which something may still stand."""
    return max(frame.ruler.days, int(ends[:, _CLEARED].max(initial=0))) + 1


# --- work ----------------------------------------------------------------------------------------------


def _work(frame: Frame, found: Tried, rows: Ints) -> Sparse:
    """Return the minutes that one plant takes by week."""
    weights, span, ends = frame.weights, frame.span, found.table.ends[rows]
    spaced = ends[:, _SPACING_END] > ends[:, _NURSERY_END]
    parts = [
        (weights.sowing_min, once(found.table.sow_day[rows], span)),
        (weights.moving_min, once(ends[:, _SPACING_END], span)),
        (weights.moving_min, once(np.where(spaced, ends[:, _NURSERY_END], _NEVER), span)),
        (weights.picking_min, visits_of(found, rows, span)),
    ]
    return summed(parts, weeks=span.count)


def _work_free(frame: Frame) -> Floats | None:
    """Return the minutes by week that what stands already leaves, None when there is no limit."""
    limit = frame.options.labour_min_per_week
    if limit is None:
        return None
    standing = Tried(table=frame.fixed.batches, profiles=frame.fixed.profiles, ruler=frame.ruler)
    rows = np.arange(len(frame.fixed.batches.ids))
    taken = np.zeros(frame.span.count)
    if rows.size:
        work = _work(frame, standing, rows)
        np.add.at(taken, work.week, work.value * frame.fixed.batches.plants[work.column])
    return np.maximum(limit - taken, 0.0)
