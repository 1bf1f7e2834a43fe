"""Days on which work is done, and days that a written rule falls on.

Rules are those of calendars (RFC 5545), such as "FREQ=WEEKLY;BYDAY=TH". Must not know crops or farms, nor
what day it is.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import MAXYEAR, date, datetime, time, timedelta
from itertools import takewhile
from typing import Final

from dateutil.rrule import rrulestr

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.faults import FarmFaultError, Fault, FaultKind

WEEKDAYS: Final = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
"""Names of the days of the week, Monday first as `date.weekday` counts."""
MOST_DAYS: Final = 5000
"""A rule that falls on more days than this within a span is refused."""

_FREQUENCY: Final = re.compile(r"FREQ=(DAILY|WEEKLY|MONTHLY|YEARLY)(;|$)")
_NEVER: Final = re.compile(r"INTERVAL=[+-]?0*(;|$)|INTERVAL=-")
_SHAPE: Final = re.compile(r"(RRULE:)?[A-Z]+=[A-Z0-9,+-]+(;[A-Z]+=[A-Z0-9,+-]+)*")


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkDays:
    """Days on which plants are sown and moved: all but some weekdays (Monday is 0) and single days."""

    closed_weekdays: frozenset[int] = frozenset()
    closed_on: frozenset[date] = frozenset()

    def __post_init__(self) -> None:
        """Refuse a week without a day of work."""
        if len(self.closed_weekdays & set(range(DAYS_PER_WEEK))) == DAYS_PER_WEEK:
            raise FarmFaultError((_fault("no-work days", "all seven", "at least one day of work a week"),))

    def is_open(self, on: date) -> bool:
        """Tell whether there is work on a day."""
        return on.weekday() not in self.closed_weekdays and on not in self.closed_on

    def on_or_before(self, on: date, *, at_most_days: int) -> date | None:
        """Return the last day of work on or before a day, None when there is none so many days back.

        >>> rest = WorkDays(closed_weekdays=frozenset({5, 6}))
        >>> rest.on_or_before(date(2027, 1, 10), at_most_days=7)
        datetime.date(2027, 1, 8)
        """
        for back in range(at_most_days + 1):
            day = on - timedelta(days=back)
            if self.is_open(day):
                return day
        return None


def rule_days(rule: str, *, from_on: date, until_on: date) -> tuple[date, ...]:
    """Return the days from one date to another, both included, that a rule falls on.

    A rule without a day of its own counts from `from_on`. Raises `FarmFaultError` for a rule that cannot be
    read, that falls on times of a day, or on more than `MOST_DAYS` days.

    >>> april = dict(from_on=date(2027, 4, 1), until_on=date(2027, 4, 20))
    >>> [day.day for day in rule_days("FREQ=WEEKLY;BYDAY=TH", **april)]
    [1, 8, 15]
    """
    text = rule.strip().upper()
    if not _SHAPE.fullmatch(text):
        raise FarmFaultError((_fault("rule", rule, 'one line such as "FREQ=WEEKLY;BYDAY=TH"'),))
    if not _FREQUENCY.search(text):
        raise FarmFaultError((_fault("rule", rule, "FREQ of DAILY, WEEKLY, MONTHLY or YEARLY"),))
    if _NEVER.search(text):
        raise FarmFaultError((_fault("rule", rule, "an INTERVAL of 1 or more"),))
    last = datetime.combine(min(until_on, date(MAXYEAR, 1, 1)), time())
    found: list[date] = []
    try:
        for moment in takewhile(last.__ge__, rrulestr(text, dtstart=datetime.combine(from_on, time()))):
            found.append(moment.date())
            if len(found) > MOST_DAYS:
                raise FarmFaultError((_fault("rule", rule, f"at most {MOST_DAYS} days in the span"),))
    except (ValueError, TypeError, KeyError) as error:
        raise FarmFaultError((_fault("rule", rule, f"a rule of RFC 5545 ({error})"),)) from error
    return tuple(dict.fromkeys(found))


def _fault(field: str, value: str, limit: str) -> Fault:
    return Fault(
        kind=FaultKind.OUT_OF_LIMITS,
        where="successions",
        field=field,
        value=value,
        limit=limit,
        message=f'{field} is "{value}", but must be {limit}.',
    )
