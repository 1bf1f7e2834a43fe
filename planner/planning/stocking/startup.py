"""Starting a new loop: leafy crops first, fruiting crops held until the feed carries them.

No fruiting batch is moved to its bed before the feed meets its demand at the fruiting band beside what
already stands. Must know nothing of screens.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

import numpy as np

from planner.farm.changes import Change, ChangeSet, applied, with_places
from planner.farm.crops import Batch, Phase
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.fields import Id
from planner.farm.species import CropGroup
from planner.forecast.engine import Forecaster
from planner.forecast.values import Floats
from planner.planning.settling import settle_altered

_ADVICE: Final = "coefficient/advice/"


@dataclass(frozen=True, slots=True, kw_only=True)
class HeldBatch:
    """A batch of a new loop: the day it is meant to go to its bed, and the first day it may.

    `carried_on` is the first day from which the feed carries it, `settled_on` the first day that a loop so
    new should take its kind of crop; `may_on` is the later of the two, None when the feed does not carry it
    within the plan. `area_m2` is its own. A leafy batch needs no feed to begin with.
    """

    batch: Id
    code: str
    crop: str
    group: CropGroup
    area_m2: float
    planned_on: date
    carried_on: date | None
    settled_on: date
    may_on: date | None

    @property
    def wait_days(self) -> int | None:
        """Days it has to wait, 0 for none; None when it has to wait beyond the plan."""
        return None if self.may_on is None else max((self.may_on - self.planned_on).days, 0)


@dataclass(frozen=True, slots=True, kw_only=True)
class StartUp:
    """The batches of a new loop by day, and the first day for each crop.

    `change_set` sows what has to wait so much later; what the feed never carries is left as it is.
    """

    first_fish_on: date | None
    batches: tuple[HeldBatch, ...]
    change_set: ChangeSet

    @property
    def first_on_by_crop(self) -> dict[str, date | None]:
        """The first day on which each crop may go to its bed, None when not within the plan."""
        found: dict[str, date | None] = {}
        for batch in self.batches:
            known = found.get(batch.crop)
            if batch.crop not in found or (
                batch.may_on is not None and (known is None or batch.may_on < known)
            ):
                found[batch.crop] = batch.may_on
        return found


def start_up(farm: Farm, forecaster: Forecaster, loop: Id) -> StartUp:
    """Return when each batch of a loop may go to its bed, taking them in the order they are meant to.

    Leafy area counts at the low end of its published band, fruiting area at the low end of its own, both
    turned to the protein of the feed (source: fao589), or by UVI's one band where the loop goes by that.
    A fruiting batch is carried from the first week
    from which the feed is enough for the stated number of weeks in a row. Batches that are locked or grow
    already count as area and are not moved.
    """
    return _StartUp(farm, forecaster, loop).found()


class _StartUp:
    """Takes the batches of a loop one after another, with the area that already stands."""

    def __init__(self, farm: Farm, forecaster: Forecaster, loop: Id) -> None:
        self._farm, self._forecaster = farm, forecaster
        self._catalogue = forecaster.catalogue_for(farm)
        self._forecast = forecaster.preview(farm)
        self._loop = next(one for one in self._forecast.loops if one.loop == loop)
        self._bands = forecaster.bands
        self._first_fish_on = _first_fish(farm, loop)
        self._leafy_m2 = np.zeros(self._forecast.ruler.days)
        self._fruiting_m2 = np.zeros(self._forecast.ruler.days)

    def found(self) -> StartUp:
        held = [self._taken(batch, row) for batch, row in self._in_order()]
        title = "Hold fruiting crops until the feed carries them"
        waiting = {one.batch: one.wait_days for one in held if one.wait_days}
        changes = sown_later(self._farm, waiting, self._forecaster)
        return StartUp(
            first_fish_on=self._first_fish_on,
            batches=tuple(held),
            change_set=ChangeSet(title=title, changes=changes),
        )

    def _in_order(self) -> Sequence[tuple[Batch, int]]:
        table, number = self._forecast.batches, self._number()
        rows = [row for row in range(len(self._farm.batches)) if table.loop[row] == number]
        rows.sort(key=lambda row: (table.phase_days(row, Phase.BED)[0], row))
        return [(self._farm.batches[row], row) for row in rows]

    def _number(self) -> int:
        return [one.loop for one in self._forecast.loops].index(self._loop.loop)

    def _taken(self, batch: Batch, row: int) -> HeldBatch:
        """Return when a batch may go to its bed, and let its area stand from then on."""
        table, ruler = self._forecast.batches, self._forecast.ruler
        start, end = table.phase_days(row, Phase.BED)
        area, group = float(table.area_m2[row]), self._catalogue.crops[batch.crop].group
        settled_on = self._settled_on(group, planned_on=ruler.date_of(start))
        first = max(start, ruler.day_of(settled_on))
        may, carried = self._days(group, area, start=start, first=first, locked=batch.locked)
        self._stand(group, area, start if may is None else may, end - start)
        return HeldBatch(
            batch=batch.id,
            code=batch.code,
            crop=batch.crop,
            group=group,
            area_m2=area,
            planned_on=ruler.date_of(start),
            carried_on=None if carried is None else ruler.date_of(carried),
            settled_on=settled_on,
            may_on=None if may is None else ruler.date_of(may),
        )

    def _days(
        self, group: CropGroup, area: float, *, start: int, first: int, locked: bool
    ) -> tuple[int | None, int | None]:
        """Return the day a batch may move, and the day from which the feed carries it."""
        if locked or start < 0:
            return start, start
        if group is CropGroup.LEAFY:
            return first, start
        carried = self._carried(area, start)
        may = self._carried(area, first)
        return may, carried

    def _settled_on(self, group: CropGroup, *, planned_on: date) -> date:
        if self._first_fish_on is None:
            return planned_on
        name = "startup_leafy_after_days" if group is CropGroup.LEAFY else "startup_fruiting_after_days"
        days = round(self._catalogue.figure(_ADVICE + name).value)
        return self._first_fish_on + timedelta(days=days)

    def _carried(self, area: float, start: int) -> int | None:
        """Return the first day, `start` or whole weeks later, from which feed is enough for long enough.

        Weeks are held against each other, not days: a day or two without feed starve no plant.
        """
        weeks = round(self._catalogue.figure(f"{_ADVICE}startup_carried_weeks").value)
        spare = self._loop.feed_g - self._asked(self._fruiting_m2 + area)
        first = max(start, 0)
        by_week = spare[first : first + (spare.size - first) // DAYS_PER_WEEK * DAYS_PER_WEEK]
        enough = by_week.reshape(-1, DAYS_PER_WEEK).mean(axis=1) >= 0.0
        for week in range(enough.size - weeks + 1):
            if enough[week : week + weeks].all():
                return first + week * DAYS_PER_WEEK
        return None

    def _asked(self, fruiting_m2: Floats) -> Floats:
        """Return the least feed that what stands asks for [g/d] by day."""
        rule, bands = self._loop.area_rule, self._bands
        leafy, fruiting = bands.of_rule(rule)
        by_the_band = self._leafy_m2 * leafy[0] + fruiting_m2 * fruiting[0]
        asked: Floats = by_the_band / bands.protein_ratio(rule, self._loop.protein_share)
        return asked

    def _stand(self, group: CropGroup, area: float, start: int, days: int) -> None:
        standing = self._leafy_m2 if group is CropGroup.LEAFY else self._fruiting_m2
        standing[max(start, 0) : max(start + days, 0)] += area


def sown_later(farm: Farm, days_by_batch: Mapping[Id, int], forecaster: Forecaster) -> tuple[Change, ...]:
    """Return the changes that sow batches so many days later, with places where there are any then."""
    now = farm
    changes: list[Change] = []
    for batch in farm.batches:
        days = days_by_batch.get(batch.id)
        if days is None:
            continue
        later = dataclasses.replace(batch, sow_on=batch.sow_on + timedelta(days=days))
        made = with_places(now, settle_altered(now, later, forecaster).changes)
        now = applied(now, ChangeSet(title="", changes=made))
        changes.extend(made)
    forecaster.preview(farm)  # so that questions about the last forecast are about the farm again
    return tuple(changes)


def _first_fish(farm: Farm, loop: Id) -> date | None:
    tanks = {tank.id for tank in farm.tanks if tank.loop == loop}
    return min((group.stocked_on for group in farm.fish_groups if group.tank in tanks), default=None)
