"""What every answer stands on: farm, forecast and catalogue, and how inputs are made of them."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Any

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import DAYS_PER_WEEK, Farm, by_id
from planner.farm.fields import Id
from planner.forecast.engine import Forecaster
from planner.forecast.figures import BandFigures, SupplyFigures, supply_figures
from planner.forecast.paces import PaceBook
from planner.forecast.seed_lots import LotShares, lot_shares
from planner.forecast.supply import FeedFate
from planner.forecast.values import Forecast, GroupForecast, LoopForecast, WeekVerdict
from planner.forecast.verdicts import week_verdicts
from planner.forecast.why.values import Input, Origin


class NoSuchFigureError(Exception):
    """The forecast has no such figure; the text says which, in a sentence."""


def worked(name: str, value: float, unit: str) -> Input:
    """Return an input that was worked out."""
    return Input(name=name, value=float(value), unit=unit, origin=Origin.WORKED_OUT)


def entered(name: str, value: float, unit: str, about: str) -> Input:
    """Return an input that the grower entered for something."""
    return Input(name=name, value=float(value), unit=unit, origin=Origin.ENTERED, about=about)


def figure_input(catalogue: Catalogue, name: str, path: str) -> Input:
    """Return a figure of a catalogue as an input."""
    figure = catalogue.figure(path)
    return Input(
        name=name,
        value=figure.value,
        unit=figure.unit,
        origin=Origin.FIGURE,
        path=path,
        low=figure.low,
        high=figure.high,
        source=figure.source,
        confidence=figure.confidence.value,
        conditions=figure.conditions,
    )


@dataclass(frozen=True)
class Ground:
    """A farm with its forecast; things are looked up once and kept."""

    farm: Farm
    forecast: Forecast
    forecaster: Forecaster

    @cached_property
    def catalogue(self) -> Catalogue:
        """The catalogue with the farm's own entries."""
        return self.forecaster.catalogue_for(self.farm)

    @cached_property
    def paces(self) -> PaceBook:
        """The paces the batches go by."""
        return self.forecaster.paces

    @cached_property
    def supply_figures(self) -> SupplyFigures:
        """The coefficients of supply."""
        return supply_figures(self.catalogue)

    @cached_property
    def bands(self) -> BandFigures:
        """The bands of verdicts."""
        return self.forecaster.bands

    @cached_property
    def tanks(self) -> dict[Id, Any]:
        """Tanks by id."""
        return by_id(self.farm.tanks)

    @cached_property
    def loops(self) -> dict[Id, Any]:
        """Loops by id."""
        return by_id(self.farm.loops)

    @cached_property
    def groups(self) -> dict[Id, Any]:
        """Fish groups by id."""
        return by_id(self.farm.fish_groups)

    @cached_property
    def fates(self) -> dict[Id, FeedFate]:
        """Where the elements of each group's feed go, as far as it was asked."""
        return {}

    @cached_property
    def _lives(self) -> dict[Id, GroupForecast]:
        return {}

    def life(self, group: Id) -> GroupForecast:
        """Return a fish group by days from its stocking, also those before the plan."""
        found = self._lives.get(group)
        if found is None:
            found = self._lives[group] = self.forecaster.life_of(self.farm, self.groups[group])
        return found

    @cached_property
    def lots(self) -> dict[Id, Any]:
        """Seed lots by id."""
        return by_id(self.farm.seed_lots)

    @cached_property
    def lot_shares(self) -> LotShares:
        """What is known of the germination of each seed lot."""
        return lot_shares(self.farm, self.catalogue)

    @cached_property
    def _verdicts(self) -> dict[Id, tuple[WeekVerdict, ...]]:
        return {}

    def verdict(self, loop: LoopForecast, week: int) -> WeekVerdict:
        """Return the verdict of a loop in a week."""
        found = self._verdicts.get(loop.loop)
        if found is None:
            found = self._verdicts[loop.loop] = week_verdicts(loop, self.forecast.ruler, self.bands)
        return found[week]

    def loop_forecast(self, about: Id) -> tuple[int, LoopForecast]:
        """Return number and forecast of a loop; raises `NoSuchFigureError` when there is none."""
        for number, loop in enumerate(self.forecast.loops):
            if loop.loop == about:
                return number, loop
        raise NoSuchFigureError(f"there is no loop {about}.")

    def row(self, about: Id) -> int:
        """Return the row of a batch; raises `NoSuchFigureError` when there is none."""
        found = self.forecast.batches.row_of.get(about)
        if found is None:
            raise NoSuchFigureError(f"there is no batch {about}.")
        return found

    def check_week(self, week: int) -> None:
        """Raise `NoSuchFigureError` for a week outside the plan."""
        weeks = self.forecast.ruler.weeks
        if not 0 <= week < weeks:
            raise NoSuchFigureError(f"week is {week}, but must lie within 0 to {weeks - 1}.")

    def check_day(self, day: int) -> None:
        """Raise `NoSuchFigureError` for a day outside the plan."""
        days = self.forecast.ruler.days
        if not 0 <= day < days:
            raise NoSuchFigureError(f"day is {day}, but must lie within 0 to {days - 1}.")

    def span(self, week: int, weeks: int) -> slice:
        """Return the days of some weeks, all to the end of the plan with 0; raises `NoSuchFigureError`."""
        self.check_week(week)
        last = self.forecast.ruler.weeks if weeks == 0 else week + weeks
        if not week < last <= self.forecast.ruler.weeks:
            left = self.forecast.ruler.weeks - week
            raise NoSuchFigureError(f"weeks is {weeks}, but must lie within 0 to {left} from week {week} on.")
        return slice(week * DAYS_PER_WEEK, last * DAYS_PER_WEEK)

    def figure(self, name: str, path: str) -> Input:
        """Return a figure of the catalogue as an input."""
        return figure_input(self.catalogue, name, path)

    def own_or_figure(self, name: str, own: float | None, path: str, *, about: str) -> Input:
        """Return the grower's own value when there is one, else the figure."""
        if own is None:
            return self.figure(name, path)
        return entered(name, own, self.catalogue.figure(path).unit, about)


def week_days(week: int) -> slice:
    """Return the days of a week on the ruler."""
    return slice(week * DAYS_PER_WEEK, (week + 1) * DAYS_PER_WEEK)
