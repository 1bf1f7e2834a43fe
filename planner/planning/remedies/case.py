"""What a search for remedies goes by: the farm and its forecast, the flag, its weeks, and from when on."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

from planner.catalogue.catalogue import Catalogue
from planner.farm.changes import Change, ChangeSet, applied, with_places
from planner.farm.crops import Batch
from planner.farm.farm import Farm, by_id
from planner.farm.fields import Id
from planner.farm.fish import FishGroup
from planner.farm.ids import id_from
from planner.farm.site import Loop
from planner.forecast.engine import Forecaster
from planner.forecast.values import BatchTable, Flag, Forecast, GroupForecast, LoopForecast, Ruler
from planner.planning.remedies.effects import Span
from planner.planning.settling import settle_altered


@dataclass(frozen=True, slots=True, kw_only=True)
class Case:
    """One flag of a farm, whose version `mark` tells. Nothing before `from_on` is changed: it is done."""

    farm: Farm
    forecaster: Forecaster
    forecast: Forecast
    flag: Flag
    span: Span
    from_on: date
    mark: str

    def new_id(self, *parts: str) -> Id:
        """Return the id of a thing that a remedy adds, the same whenever the same farm is asked about."""
        return id_from("remedy", self.mark, self.span.loop, self.first_on.isoformat(), *parts)

    @property
    def catalogue(self) -> Catalogue:
        """The catalogue with the farm's own entries."""
        return self.forecaster.catalogue

    @property
    def ruler(self) -> Ruler:
        """The weeks of the forecast."""
        return self.forecast.ruler

    @property
    def table(self) -> BatchTable:
        """The dates of all batches."""
        return self.forecast.batches

    @property
    def loop(self) -> Loop:
        """The loop that the flag is about."""
        found: Loop = by_id(self.farm.loops)[self.span.loop]
        return found

    @property
    def water(self) -> LoopForecast:
        """The forecast of that loop."""
        return next(one for one in self.forecast.loops if one.loop == self.span.loop)

    @property
    def first_on(self) -> date:
        """First day of the flagged weeks, or the first that can still be changed."""
        return max(self.ruler.week_start(self.span.first), self.from_on)

    @property
    def last_on(self) -> date:
        """Last day of the flagged weeks."""
        return self.ruler.date_of(self.span.days.stop - 1)

    def advice(self, name: str) -> float:
        """Return a figure that advice goes by."""
        return self.catalogue.figure(f"coefficient/advice/{name}").value

    def groups(self) -> list[tuple[FishGroup, GroupForecast]]:
        """Return the fish groups of the loop with their forecasts."""
        entered = by_id(self.farm.fish_groups)
        return [(entered[one.group], one) for one in self.water.groups]

    def batches_of_loop(self) -> list[tuple[int, Batch]]:
        """Return row and batch of everything in the loop that may be changed."""
        number = [one.loop for one in self.forecast.loops].index(self.span.loop)
        return [
            (row, batch)
            for row, batch in enumerate(self.farm.batches)
            if self.table.loop[row] == number and not batch.locked
        ]


def altered_batches(case: Case, after: list[Batch]) -> tuple[Change, ...] | None:
    """Return the changes to several batches with their places, None when one of them finds none."""
    now = case.farm
    changes: list[Change] = []
    for batch in after:
        settled = settle_altered(now, batch, case.forecaster)
        if settled.refusals:
            return None
        made = with_places(now, settled.changes)
        now = applied(now, ChangeSet(title="", changes=made))
        changes.extend(made)
    return tuple(changes)
