"""What can be asked for on the page, as values that declare their fields; forms and checks go by them."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import Enum

from planner.farm import fields

_LONGEST_WEEKS = 520
_MOST_PLANTS = 100_000
_MOST_MINUTES = 10_080


class Weekday(Enum):
    """The days of the week, Monday first as dates count."""

    MONDAY = 0
    TUESDAY = 1
    WEDNESDAY = 2
    THURSDAY = 3
    FRIDAY = 4
    SATURDAY = 5
    SUNDAY = 6


@dataclass(frozen=True, slots=True, kw_only=True)
class SeasonAsk:
    """The limits a season plan keeps to."""

    from_on: date = fields.day(meaning="nothing that is sown before is touched")
    weeks: int | None = fields.whole(
        1, _LONGEST_WEEKS, unit="weeks", default=None, meaning="empty: to the end of the plan"
    )
    sow_weekday: Weekday = fields.choice(default=Weekday.MONDAY)
    lot_plants: int = fields.whole(1, _MOST_PLANTS, unit="plants", default=1)
    labour_min_per_week: float | None = fields.number(
        0,
        _MOST_MINUTES,
        "min",
        default=None,
        meaning="of sowing, moving and picking; empty: as much as it takes",
    )
    search_seconds: float = fields.number(1, 600, "s", default=5.0)
    exact: bool = fields.yes_no(default=False, meaning="takes longer, and may prove that nothing is better")
