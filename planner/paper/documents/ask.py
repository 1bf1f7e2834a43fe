"""What a document is asked for: of which farm, from which day, how many weeks, printed when.

Must not know any single document.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.mark import plan_mark
from planner.farm.site import WeekStart
from planner.forecast.values import Forecast
from planner.forecast.week import DueTask, due_between
from planner.paper.report import Caution, Report, Section
from planner.paper.words import EN_DASH, day_words, span_words, week_name, week_start

MOST_WEEKS: Final = 520


@dataclass(frozen=True, slots=True, kw_only=True)
class Ask:
    """A wish for a document; `catalogue` has the farm's own entries laid over it.

    `large` sets what hangs on a wall for reading at a step and a half.
    """

    farm: Farm
    forecast: Forecast
    catalogue: Catalogue
    from_on: date
    weeks: int
    printed_on: datetime
    large: bool = False

    def __post_init__(self) -> None:
        """Refuse a span that is not 1 to 520 weeks."""
        if not 1 <= self.weeks <= MOST_WEEKS:
            raise ValueError(f"weeks: {self.weeks} must lie within 1 to {MOST_WEEKS}")

    @property
    def starts(self) -> WeekStart:
        """First day of a week, as the first site says."""
        return self.farm.sites[0].week_start if self.farm.sites else WeekStart.MONDAY

    @property
    def first(self) -> date:
        """First day of the week that holds `from_on`."""
        return week_start(self.from_on, self.starts)

    @property
    def last(self) -> date:
        """Last day of the last week."""
        return self.first + timedelta(days=self.weeks * DAYS_PER_WEEK - 1)

    @property
    def first_day(self) -> int:
        """Number of the first day in the forecast; negative before it."""
        return self.forecast.ruler.day_of(self.first)

    @property
    def end_day(self) -> int:
        """Number of the day after the last."""
        return self.first_day + self.weeks * DAYS_PER_WEEK

    @property
    def days_within(self) -> slice:
        """The days of the span that the forecast covers, perhaps none."""
        low = min(max(self.first_day, 0), self.forecast.ruler.days)
        return slice(low, max(min(self.end_day, self.forecast.ruler.days), low))

    @property
    def span_words(self) -> str:
        """The weeks covered, by number and by date."""
        first, last = week_name(self.first, self.starts), week_name(self.last, self.starts)
        names = first if self.weeks == 1 else f"{first}{EN_DASH}{last}"
        return f"{names}, {span_words(self.first, self.last)}"

    def due_by_week(self) -> dict[date, tuple[DueTask, ...]]:
        """Return what is due in the span, by the first day of its week."""
        tasks = due_between(
            self.farm, self.forecast, first_day=max(self.first_day, 0), last_day=max(self.end_day, 0)
        )
        found: dict[date, list[DueTask]] = {}
        for task in tasks:
            found.setdefault(week_start(task.on, self.starts), []).append(task)
        return {start: tuple(many) for start, many in found.items()}

    def week_starts(self) -> Iterator[date]:
        """Yield the first day of every week."""
        for week in range(self.weeks):
            yield self.first + timedelta(days=week * DAYS_PER_WEEK)

    def week_head(self, start: date) -> tuple[str, str]:
        """Return a week's number and its days."""
        return week_name(start, self.starts), span_words(start, start + timedelta(days=DAYS_PER_WEEK - 1))

    def week_day(self, day: int, *, beside: date | None = None) -> str:
        """Return a day of the forecast with its week before it, such as "W14 Mon 5 Apr 2027"."""
        on = self.forecast.ruler.date_of(day)
        return f"{week_name(on, self.starts)} {day_words(on, beside=beside)}"

    def cautions(self, *keys: str) -> tuple[Caution, ...]:
        """Return cautions of the catalogue by their keys."""
        found = (self.catalogue.cautions[key] for key in keys)
        return tuple(Caution(title=each.topic, text=each.text) for each in found)

    def report(
        self,
        title: str,
        sections: tuple[Section, ...],
        *,
        subtitle: str = "",
        header_lines: tuple[str, ...] = (),
        landscape: bool = False,
    ) -> Report:
        """Return a report of the farm that is asked about, with all that its head and foot say."""
        return Report(
            title=title,
            subtitle=subtitle,
            header_lines=(self.farm.settings.name, *header_lines),
            sections=sections,
            farm_name=self.farm.settings.name,
            plan_mark=plan_mark(self.farm),
            printed_on=self.printed_on,
            landscape=landscape,
            large=self.large,
        )
