"""Writes a season down as a linear program, as tightly and with as few numbers as it goes.

What stands in beds is carried from one span of days to the next, so that a sowing has two numbers there
however long it stands; uptake goes through the dry mass a crop forms in a week, so that six elements cost
no more than one. Nothing needs a large constant. Must know no solver.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from planner.planning.season_plan.values import Floats, Ints, SeasonModel, summed_at

_INFINITE = float("inf")


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Program:
    """Least `cost @ v` with `lower <= v <= upper` and `row_lower <= A v <= row_upper`; A is given by rows.

    Every variable has a highest value that the best plan does not go beyond.

    The first `sowings` variables are lots of the season's columns. Worth less the cost is what a plan is
    good for.
    """

    sowings: int
    cost: Floats
    lower: Floats
    upper: Floats
    row_lower: Floats
    row_upper: Floats
    start: Ints
    index: Ints
    value: Floats


class _Writer:
    """Collects variables, rows and numbers."""

    def __init__(self) -> None:
        self._cost: list[Floats] = []
        self._upper: list[Floats] = []
        self._row_lower: list[Floats] = []
        self._row_upper: list[Floats] = []
        self._numbers: list[tuple[Ints, Ints, Floats]] = []
        self.variables = 0
        self.rows = 0

    def add_variables(self, count: int, *, cost: Floats | float = 0.0, upper: Floats | float) -> Ints:
        """Add variables that are at least 0; return their numbers."""
        self._cost.append(np.broadcast_to(np.asarray(cost, dtype=np.float64), (count,)))
        self._upper.append(np.broadcast_to(np.asarray(upper, dtype=np.float64), (count,)))
        found = np.arange(self.variables, self.variables + count)
        self.variables += count
        return found

    def add_rows(self, lower: Floats, upper: Floats) -> Ints:
        """Add rows with their limits; return their numbers."""
        self._row_lower.append(lower)
        self._row_upper.append(upper)
        found = np.arange(self.rows, self.rows + lower.size)
        self.rows += lower.size
        return found

    def put(self, rows: Ints, variables: Ints, values: Floats | float) -> None:
        """Put numbers into the matrix."""
        self._numbers.append(
            (rows, variables, np.broadcast_to(np.asarray(values, dtype=np.float64), rows.shape))
        )

    def program(self, sowings: int) -> Program:
        """Return all that was collected."""
        rows, variables, values = (np.concatenate(part) for part in zip(*self._numbers, strict=True))
        order = np.argsort(rows, kind="stable")
        start = np.zeros(self.rows + 1, dtype=np.int64)
        start[1:] = np.cumsum(np.bincount(rows, minlength=self.rows))
        return Program(
            sowings=sowings,
            cost=np.concatenate(self._cost),
            lower=np.zeros(self.variables),
            upper=np.concatenate(self._upper),
            row_lower=np.concatenate(self._row_lower),
            row_upper=np.concatenate(self._row_upper),
            start=start,
            index=variables[order],
            value=values[order],
        )


def program_of(model: SeasonModel) -> Program:
    """Return the linear program of a season."""
    writer = _Writer()
    columns, rows = model.columns, model.rows
    most = most_lots(model).astype(np.float64)
    lots = writer.add_variables(columns.count, upper=most)
    plants = columns.lot.astype(np.float64)
    seeds = plants * columns.seeds
    _carry(
        writer,
        lots,
        plants,
        spans=(columns.bed_first, columns.bed_last),
        free=rows.bed_free,
        group=rows.bed_ground,
    )
    standing = columns.nursery_first, columns.nursery_last
    _carry(writer, lots, seeds, spans=standing, free=rows.nursery_free, group=rows.nursery_pool)
    between = columns.spacing_first, columns.spacing_last
    _carry(writer, lots, plants, spans=between, free=rows.spacing_free, group=rows.spacing_pool)
    _harvest(writer, model, lots, most=most)
    _uptake(writer, model, lots, most=most)
    _work(writer, model, lots)
    return writer.program(columns.count)


def most_lots(model: SeasonModel) -> Ints:
    """Return the most lots of each column that room alone allows."""
    columns, rows = model.columns, model.rows
    most = least_free(rows.bed_free, columns.bed_first, columns.bed_last) // columns.lot
    between = columns.spacing_last > columns.spacing_first
    if between.any():
        first, last = columns.spacing_first[between], columns.spacing_last[between]
        least = least_free(rows.spacing_free, first, last) // columns.lot[between]
        most[between] = np.minimum(most[between], least)
    in_nursery = columns.nursery_last > columns.nursery_first
    if in_nursery.any():
        first, last = columns.nursery_first[in_nursery], columns.nursery_last[in_nursery]
        cells = least_free(rows.nursery_free, first, last)
        seeds = columns.seeds[in_nursery] * columns.lot[in_nursery]
        most[in_nursery] = np.minimum(most[in_nursery], np.floor(cells / seeds).astype(np.int64))
    return most


def least_free(free: Ints, first: Ints, last: Ints) -> Ints:
    """Return the least of `free` from each `first` to before `last`."""
    if not first.size:
        return np.zeros(0, dtype=np.int64)
    # Pairs of edges make reduceat answer each span at its even places.
    edges = np.column_stack((first, last)).ravel()
    padded = np.append(free, free[-1:])
    found: Ints = np.minimum.reduceat(padded, edges)[::2]
    return found


def _carry(
    writer: _Writer, lots: Ints, amount: Floats, *, spans: tuple[Ints, Ints], free: Ints, group: Ints
) -> None:
    """Keep what stands in each span within what is free, carried over from the span before."""
    first, last = spans
    held = last > first
    if not free.size:
        return
    standing = writer.add_variables(free.size, upper=free.astype(np.float64))
    rows = writer.add_rows(np.zeros(free.size), np.zeros(free.size))
    writer.put(rows, standing, 1.0)
    same = np.flatnonzero(group[1:] == group[:-1]) + 1
    writer.put(rows[same], standing[same - 1], -1.0)
    writer.put(rows[first[held]], lots[held], -amount[held])
    leaves = held & (last < free.size)
    leaves[leaves] = group[last[leaves]] == group[first[leaves]]
    writer.put(rows[last[leaves]], lots[leaves], amount[leaves])


def _harvest(writer: _Writer, model: SeasonModel, lots: Ints, *, most: Floats) -> None:
    columns, weights = model.columns, model.weights
    picks = columns.picks
    by = picks.column
    plants = picks.value * columns.lot[by]
    for line in model.lines:
        own = columns.crop[by] == line.crop
        week, column, amount = picks.week[own], by[own], plants[own] * line.per_plant
        missing = line.wanted - line.fixed
        highest = summed_at(week, amount * most[column], size=model.weeks)
        rows = writer.add_rows(missing, missing)
        short = writer.add_variables(
            model.weeks, cost=weights.missed / line.usual, upper=np.maximum(missing, 0.0)
        )
        over = writer.add_variables(
            model.weeks, cost=weights.wasted / line.usual, upper=np.maximum(highest - missing, 0.0)
        )
        writer.put(rows, short, 1.0)
        writer.put(rows, over, -1.0)
        writer.put(rows[week], lots[column], amount)


def _uptake(writer: _Writer, model: SeasonModel, lots: Ints, *, most: Floats) -> None:
    elements, weights = model.elements, model.weights
    counted = elements.usual > 0
    for loop in np.flatnonzero(counted.any(axis=1)).tolist():
        mass, highest = _mass(writer, model, lots, most=most, loop=loop)
        for element in np.flatnonzero(counted[loop]).tolist():
            fixed, usual = elements.fixed[loop, element], elements.usual[loop, element]
            low, high = elements.low[loop, element] - fixed, elements.high[loop, element] - fixed
            content = elements.content[:, element]
            rows = writer.add_rows(low, high)
            short = writer.add_variables(
                model.weeks,
                cost=weights.short_element / usual,
                upper=np.maximum(content @ highest - high, 0.0),
            )
            idle = writer.add_variables(
                model.weeks, cost=weights.idle_element / usual, upper=np.maximum(low, 0.0)
            )
            writer.put(rows, short, -1.0)
            writer.put(rows, idle, 1.0)
            for crop in range(len(model.crops)):
                writer.put(rows, mass[crop], content[crop])


def _mass(writer: _Writer, model: SeasonModel, lots: Ints, *, most: Floats, loop: int) -> tuple[Ints, Floats]:
    """Add the dry mass that each crop forms in each week.

    Return its variables, and the most it can be [g], both of shape (crop, week).
    """
    columns, formed = model.columns, model.columns.formed
    shape = (len(model.crops), model.weeks)
    size = shape[0] * shape[1]
    by = formed.column
    own = columns.loop[by] == loop
    column, grams = by[own], formed.value[own] * columns.lot[by[own]]
    cell = columns.crop[column] * model.weeks + formed.week[own]
    highest = summed_at(cell, grams * most[column], size=size)
    mass = writer.add_variables(size, upper=highest)
    rows = writer.add_rows(np.zeros(size), np.zeros(size))
    writer.put(rows, mass, 1.0)
    writer.put(rows[cell], lots[column], -grams)
    return mass.reshape(shape), highest.reshape(shape)


def _work(writer: _Writer, model: SeasonModel, lots: Ints) -> None:
    free, work = model.rows.work_free, model.columns.work
    if free is None:
        return
    rows = writer.add_rows(np.full(free.size, -_INFINITE), free)
    by = work.column
    writer.put(rows[work.week], lots[by], work.value * model.columns.lot[by])
