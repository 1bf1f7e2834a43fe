"""What stands behind an outlook and is only worked out when somebody looks: water, delays, reasons, answers.

Made once for each outlook, so that nothing here is worked out again while the farm stays as it is, and
nothing while a batch is dragged. What it asks is read in when it is asked first, for the window must not
wait for it. Must know nothing of widgets or words.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from typing import TYPE_CHECKING

from planner.desk.outlook import Outlook
from planner.farm.fields import Id
from planner.farm.fish import FishGroup
from planner.forecast.delays import Delay, StageDelay, stage_delays
from planner.forecast.engine import Forecaster
from planner.forecast.paces import PaceBook
from planner.forecast.values import Forecast, GroupForecast, LoopForecast

if TYPE_CHECKING:
    from planner.desk.sureness import Sureness
    from planner.forecast.water.courses import Ahead
    from planner.forecast.water.side import LoopWater
    from planner.forecast.why.reasons import Reason
    from planner.forecast.why.values import Explanation, Subject


class Behind:
    """Looks up what the forecaster knows about one outlook on one day."""

    def __init__(self, outlook: Outlook, forecaster: Forecaster, today: date) -> None:
        """Keep what is asked about; nothing is worked out yet.

        `sure` is there once it was asked for. While it `waits`, pages leave out what takes time.

        They tell how things stand on `shown_on`: today, or the first day of a plan that is still to begin, or
        the last of one that is over. Water is looked at on `water_on`, which goes on after the plan: readings
        and doses are of their own days.
        """
        self.outlook = outlook
        self.today = today
        last = outlook.farm.plan_until - timedelta(days=1)
        self.is_over = today > last
        self.water_on = max(today, outlook.farm.settings.plan_from)
        self.shown_on = min(self.water_on, last)
        self.sure: Sureness | None = None
        self.waits = False
        self._forecaster = forecaster
        self._forecast = outlook.forecast
        self._asked = self._state()
        self._waters: dict[Id, LoopWater] = {}
        self._spans: dict[Id, tuple[GroupForecast, GroupForecast] | None] = {}

    def _state(self) -> tuple[PaceBook, int]:
        return self._forecaster.paces, self._forecaster.paces.version

    def _current(self) -> Forecast:
        """Return the forecast to ask about; made again when the forecaster saw another farm meanwhile."""
        if self._state() != self._asked:
            again = self._forecaster.preview(self.outlook.farm)
            self._forecast = replace(again, flags=self.outlook.forecast.flags)
            self._asked = self._state()
        return self._forecast

    def delay(self, row: int) -> Delay | None:
        """Return by how much and why a batch is later than by the book, None when it is not."""
        return self._forecaster.delay_of(self._current(), row)

    def stage_delays(self, row: int) -> tuple[StageDelay, ...]:
        """Return how the stages of a batch differ from the book."""
        return stage_delays(self._current().batches, self._forecaster.paces, row)

    def climate(self, row: int) -> tuple[bool, bool]:
        """Tell whether warmth and whether light at the places of a batch are known."""
        sky = self._forecaster.paces.sky_of(int(self._current().batches.pace[row]))
        if sky is None:
            return False, False
        return sky.bed_c is not None, sky.bed_mol is not None

    def stand_share(self, row: int) -> float:
        """Return the share of the tested germination that comes up at the warmth of the sowing day."""
        table = self._current().batches
        rows = slice(row, row + 1)
        return float(self._forecaster.paces.stand(table.pace[rows], table.sow_day[rows])[0])

    def water(self, loop: LoopForecast) -> LoopWater:
        """Return the water side of a loop on the day."""
        from planner.forecast.water.side import loop_water

        found = self._waters.get(loop.loop)
        if found is None:
            found = self._waters[loop.loop] = loop_water(
                self.outlook.farm,
                loop,
                ruler=self.outlook.forecast.ruler,
                catalogue=self.outlook.catalogue,
                today=self.water_on,
            )
        return found

    def alkalinity(self, loop: LoopForecast, *, weeks: int) -> tuple[Ahead, ...]:
        """Return alkalinity from its last reading to some weeks after the day; empty where not known."""
        from planner.forecast.water.side import alkalinity_of

        outlook = self.outlook
        return alkalinity_of(
            outlook.farm,
            self.water(loop).acid,
            ruler=outlook.forecast.ruler,
            catalogue=outlook.catalogue,
            today=self.water_on,
            weeks=weeks,
        )

    def growth_span(self, group: FishGroup) -> tuple[GroupForecast, GroupForecast] | None:
        """Return a group growing slowly and quickly; None where the grower's own figure rules."""
        from planner.forecast.growth_span import growth_span

        if group.id not in self._spans:
            self._current()
            farm, ruler = self.outlook.farm, self.outlook.forecast.ruler
            self._spans[group.id] = growth_span(group, farm, self._forecaster, ruler)
        return self._spans[group.id]

    def reasons(self, loop: Id, week: int) -> tuple[Reason, ...]:
        """Return why the limiting element is short in a week; empty when none is."""
        from planner.forecast.why.reasons import reasons

        forecast = self._current()
        return reasons(forecast, self.outlook.farm, loop=loop, week=week, forecaster=self._forecaster)

    def why_sure(self, of: Subject, at_least: float | None) -> Explanation:
        """Return why the range of a figure is so wide, or the chance of at least so much of it so large.

        Raises `NoSuchFigureError` where that has no range, or is not worked out.
        """
        from planner.forecast.why.ground import Ground
        from planner.forecast.why.sure import SureKind, SureSubject, why_sure

        ground = Ground(farm=self.outlook.farm, forecast=self._current(), forecaster=self._forecaster)
        kind = SureKind.RANGE if at_least is None else SureKind.CHANCE
        asked = SureSubject(kind=kind, of=of, amount=at_least or 0.0)
        known = self.sure
        return why_sure(
            asked,
            ground,
            ranges=known.ranges if known is not None else None,
            chances=known.chances if known is not None else None,
        )

    def why(self, subject: Subject) -> Explanation:
        """Return why a figure is what it is. Raises `NoSuchFigureError` for a figure that is not there."""
        from planner.forecast.why.ask import why

        return why(subject, self.outlook.farm, self._current(), self._forecaster)
