"""Keeps count of what a plan of whole lots takes and gives while it is changed lot by lot.

Knows what each single change costs or saves, so that a search need never count everything again.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.planning.season_plan.program import least_free
from planner.planning.season_plan.values import Bools, Floats, Ints, SeasonModel, summed_at

_NOISE: Final = 1e-9


def cells_for(plants: Ints, seeds: Floats) -> Ints:
    """Return nursery cells for some plants, a cell for each whole seed."""
    wanted = plants * seeds
    return np.ceil(wanted - _NOISE * np.maximum(1.0, wanted)).astype(np.int64)


@dataclass(frozen=True, slots=True, kw_only=True)
class Parts:
    """What a plan's cost is made of, in crop-weeks; elements by (loop, element)."""

    missed: float
    wasted: float
    short: Floats
    idle: Floats

    @property
    def cost(self) -> float:
        """The whole cost."""
        return self.missed + self.wasted + float(self.short.sum() + self.idle.sum())


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Near:
    """Some columns of one crop with what a lot of each gives in a run of weeks, a row each."""

    crop: int
    columns: Ints
    weeks: slice
    picks: Floats
    formed: Floats
    by_loop: tuple[tuple[int, Ints], ...]


def near(model: SeasonModel, chosen: Ints) -> Near:
    """Return columns of one crop laid out for a quick look."""
    columns = model.columns
    parts = [(columns.picks.of(int(j)), columns.formed.of(int(j))) for j in chosen]
    seen = np.concatenate([weeks for pair in parts for weeks, _ in pair])
    first, last = int(seen.min()), int(seen.max()) + 1
    picks, formed = np.zeros((2, chosen.size, last - first))
    for row, ((pick_weeks, shares), (form_weeks, grams)) in enumerate(parts):
        lot = columns.lot[chosen[row]]
        picks[row, pick_weeks - first] = shares * lot
        formed[row, form_weeks - first] = grams * lot
    loops = columns.loop[chosen]
    return Near(
        crop=int(columns.crop[chosen[0]]),
        columns=chosen,
        weeks=slice(first, last),
        picks=picks,
        formed=formed,
        by_loop=tuple((int(loop), np.flatnonzero(loops == loop)) for loop in np.unique(loops)),
    )


class Tally:
    """A plan and what it comes to. Starts with nothing sown."""

    def __init__(self, model: SeasonModel) -> None:
        """Count what stands already."""
        self.model = model
        columns = model.columns
        self.lots = np.zeros(columns.count, dtype=np.int64)
        self.missing = np.asarray([line.wanted - line.fixed for line in model.lines]).reshape(-1, model.weeks)
        self.demand = model.elements.fixed.copy()
        self.bed_left = model.rows.bed_free.copy()
        self.nursery_left = model.rows.nursery_free.copy()
        self.spacing_left = model.rows.spacing_free.copy()
        self.work_left = None if model.rows.work_free is None else model.rows.work_free.copy()
        usual = model.elements.usual
        self._counted = usual > 0
        safe = np.where(self._counted, usual, 1.0)
        self._short_price = np.where(self._counted, model.weights.short_element / safe, 0.0)[:, :, None]
        self._idle_price = np.where(self._counted, model.weights.idle_element / safe, 0.0)[:, :, None]
        self._missed_price = np.asarray([model.weights.missed / line.usual for line in model.lines])
        self._wasted_price = np.asarray([model.weights.wasted / line.usual for line in model.lines])
        self._lines_of = [
            [number for number, line in enumerate(model.lines) if line.crop == crop]
            for crop in range(len(model.crops))
        ]
        self._flat_kept: _Flat | None = None
        self._stale = set(range(len(model.crops)))
        self._harvest_gain = np.zeros(columns.count)
        self._element_gain = np.zeros(columns.count)
        self._price = np.zeros(0)

    @property
    def _flat(self) -> _Flat:
        if self._flat_kept is None:
            self._flat_kept = _Flat(self.model)
        return self._flat_kept

    @property
    def plants(self) -> Ints:
        """Plants of each column."""
        plants: Ints = self.lots * self.model.columns.lot
        return plants

    def put(self, lots: Ints) -> None:
        """Change to another plan, lot by lot of those that differ."""
        for column in np.flatnonzero(lots != self.lots).tolist():
            self.change(column, int(lots[column] - self.lots[column]))

    def change(self, column: int, by: int) -> None:
        """Sow so many lots more, or fewer, whether they fit or not."""
        columns, model = self.model.columns, self.model
        plants = by * int(columns.lot[column])
        crop, loop = int(columns.crop[column]), int(columns.loop[column])
        weeks, shares = columns.picks.of(column)
        for line in self._lines_of[crop]:
            self.missing[line, weeks] -= plants * model.lines[line].per_plant * shares
        weeks, grams = columns.formed.of(column)
        self.demand[loop][:, weeks] += plants * model.elements.content[crop][:, None] * grams
        self.bed_left[columns.bed_first[column] : columns.bed_last[column]] -= plants
        self.nursery_left[columns.nursery_first[column] : columns.nursery_last[column]] -= self._cells(
            column, by
        )
        self.spacing_left[columns.spacing_first[column] : columns.spacing_last[column]] -= plants
        if self.work_left is not None:
            weeks, minutes = columns.work.of(column)
            self.work_left[weeks] -= plants * minutes
        self.lots[column] += by
        self._stale.add(crop)

    def _cells(self, column: int, by: int) -> int:
        lot, seeds = int(self.model.columns.lot[column]), self.model.columns.seeds[column]
        before = int(self.lots[column]) * lot
        both = cells_for(np.asarray([before, before + by * lot]), seeds)
        return int(both[1] - both[0])

    def room_for(self, column: int) -> int:
        """Return how many lots more of a column have room."""
        columns, lot = self.model.columns, int(self.model.columns.lot[column])
        left = self.bed_left[columns.bed_first[column] : columns.bed_last[column]]
        between = self.spacing_left[columns.spacing_first[column] : columns.spacing_last[column]]
        most = max(min(int(left.min()), int(between.min(initial=left.min()))) // lot, 0)
        cells = self.nursery_left[columns.nursery_first[column] : columns.nursery_last[column]]
        if cells.size:
            free = int(cells.min())
            seeds = lot * float(columns.seeds[column])
            most = min(most, max(int(free / seeds), 0))
            while most > 0 and self._cells(column, most) > free:
                most -= 1
        if self.work_left is not None:
            weeks, minutes = columns.work.of(column)
            allowed = (self.work_left[weeks] + _NOISE) / (minutes * lot)
            most = min(most, max(int(allowed.min(initial=most)), 0))
        return most

    def parts(self) -> Parts:
        """Return what the plan costs."""
        elements = self.model.elements
        over, under = self.demand - elements.high, elements.low - self.demand
        return Parts(
            missed=float((np.maximum(self.missing, 0.0).sum(axis=1) * self._missed_price).sum()),
            wasted=float((np.maximum(-self.missing, 0.0).sum(axis=1) * self._wasted_price).sum()),
            short=(np.maximum(over, 0.0) * self._short_price).sum(axis=2),
            idle=(np.maximum(under, 0.0) * self._idle_price).sum(axis=2),
        )

    def fits(self, chosen: Ints) -> Bools:
        """Tell of some columns whether one lot more has room."""
        columns = self.model.columns
        lot = columns.lot[chosen]
        room: Bools = least_free(self.bed_left, columns.bed_first[chosen], columns.bed_last[chosen]) >= lot
        inside = np.flatnonzero(columns.spacing_last[chosen] > columns.spacing_first[chosen])
        if inside.size:
            first, last = columns.spacing_first[chosen[inside]], columns.spacing_last[chosen[inside]]
            room[inside] &= least_free(self.spacing_left, first, last) >= lot[inside]
        inside = np.flatnonzero(columns.nursery_last[chosen] > columns.nursery_first[chosen])
        if inside.size:
            own = chosen[inside]
            plants, seeds = self.lots[own] * columns.lot[own], columns.seeds[own]
            more = cells_for(plants + columns.lot[own], seeds) - cells_for(plants, seeds)
            room[inside] &= (
                least_free(self.nursery_left, columns.nursery_first[own], columns.nursery_last[own]) >= more
            )
        if self.work_left is not None:
            for place in np.flatnonzero(room).tolist():
                room[place] = self.room_for(int(chosen[place])) > 0
        return room

    def gain_of_each(self) -> Floats:
        """Return for each column what one lot more changes the cost by; a little too hopeful.

        Elements count at the price of the first gram, which no further gram undercuts. Only what has
        changed since the last time is reckoned again.
        """
        for crop in self._stale:
            self._reckon_harvest(crop)
        self._stale.clear()
        price = self._price_now()
        if not np.array_equal(price, self._price):
            self._price = price
            by_crop = np.einsum("ce,lew->lcw", self.model.elements.content, price).ravel()
            weights = self._flat.formed_g * by_crop[self._flat.formed_cell]
            self._element_gain = summed_at(self._flat.formed_column, weights, size=self.lots.size)
        return self._harvest_gain + self._element_gain

    def _reckon_harvest(self, crop: int) -> None:
        found = np.zeros(self.lots.size)
        for line in self._lines_of[crop]:
            column, week, amount = self._flat.harvest[line]
            missing = self.missing[line, week]
            after = missing - amount
            change = self._missed_price[line] * (np.maximum(after, 0.0) - np.maximum(missing, 0.0))
            change += self._wasted_price[line] * (np.maximum(-after, 0.0) - np.maximum(-missing, 0.0))
            found += summed_at(column, change, size=found.size)
        own = self._flat.columns_of[crop]
        self._harvest_gain[own] = found[own]

    def _price_now(self) -> Floats:
        """Return what one gram more of each element costs, by (loop, element, week)."""
        elements = self.model.elements
        dear = np.where(self.demand >= elements.high, self._short_price, 0.0)
        price: Floats = np.where(self.demand < elements.low, -self._idle_price, dear)
        return price

    def gain_among(self, near: Near) -> Floats:
        """Return for a few columns of one crop what one lot more changes the cost by, as `gain_of_each`."""
        found = np.zeros(near.columns.size)
        for line in self._lines_of[near.crop]:
            missing = self.missing[line, near.weeks]
            after = missing - near.picks * self.model.lines[line].per_plant
            change = self._missed_price[line] * np.maximum(after, 0.0)
            change += self._wasted_price[line] * np.maximum(-after, 0.0)
            at_least = self._missed_price[line] * np.maximum(missing, 0.0)
            at_least += self._wasted_price[line] * np.maximum(-missing, 0.0)
            found += change.sum(axis=1) - at_least.sum()
        elements = self.model.elements
        for loop, inside in near.by_loop:
            demand = self.demand[loop][:, near.weeks]
            price = np.where(demand >= elements.high[loop][:, near.weeks], self._short_price[loop], 0.0)
            price = np.where(demand < elements.low[loop][:, near.weeks], -self._idle_price[loop], price)
            found[inside] += near.formed[inside] @ (elements.content[near.crop] @ price)
        return found

    def change_of(self, column: int, by: int) -> float:
        """Return by how much some lots more, or fewer, change the cost; exact."""
        columns, model = self.model.columns, self.model
        plants = by * int(columns.lot[column])
        crop, loop = int(columns.crop[column]), int(columns.loop[column])
        weeks, shares = columns.picks.of(column)
        total = 0.0
        for line in self._lines_of[crop]:
            before = self.missing[line, weeks]
            after = before - plants * model.lines[line].per_plant * shares
            total += self._missed_price[line] * float((np.maximum(after, 0) - np.maximum(before, 0)).sum())
            total += self._wasted_price[line] * float((np.maximum(-after, 0) - np.maximum(-before, 0)).sum())
        weeks, grams = columns.formed.of(column)
        demand = self.demand[loop][:, weeks]
        more = demand + plants * model.elements.content[crop][:, None] * grams
        high, low = model.elements.high[loop][:, weeks], model.elements.low[loop][:, weeks]
        short = (np.maximum(more - high, 0) - np.maximum(demand - high, 0)) * self._short_price[loop]
        idle = (np.maximum(low - more, 0) - np.maximum(low - demand, 0)) * self._idle_price[loop]
        return total + float(short.sum() + idle.sum())


class _Flat:
    """The numbers of all columns laid end to end, ready to be counted at once."""

    def __init__(self, model: SeasonModel) -> None:
        columns = model.columns
        by = columns.picks.column
        amount = columns.picks.value * columns.lot[by]
        self.harvest: list[tuple[Ints, Ints, Floats]] = []
        for line in model.lines:
            own = columns.crop[by] == line.crop
            self.harvest.append((by[own], columns.picks.week[own], amount[own] * line.per_plant))
        formed = columns.formed
        self.formed_column = formed.column
        self.formed_g = formed.value * columns.lot[self.formed_column]
        of_loop = columns.loop[self.formed_column] * len(model.crops) + columns.crop[self.formed_column]
        self.formed_cell = of_loop * model.weeks + formed.week
        self.columns_of = [np.flatnonzero(columns.crop == crop) for crop in range(len(model.crops))]
