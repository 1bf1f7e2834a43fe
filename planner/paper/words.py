"""How dates, weeks and numbers are written on paper, so that nobody can misread them.

Months are always words: 01/02 means two days to two people. Must not know farms or layout.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, datetime, timedelta
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.site import WeekStart

EN_DASH: Final = "–"
NO_BREAK: Final = "\u00a0"

_DAYS: Final = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_MONTHS: Final = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
_LONG_MONTHS: Final = (
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
)
_MIDDLE_OF_WEEK: Final = DAYS_PER_WEEK // 2
_SUNDAY: Final = 6


def week_start(on: date, starts: WeekStart) -> date:
    """Return the first day of the week that holds `on`.

    >>> week_start(date(2027, 4, 8), WeekStart.MONDAY), week_start(date(2027, 4, 8), WeekStart.SUNDAY)
    (datetime.date(2027, 4, 5), datetime.date(2027, 4, 4))
    """
    first = _SUNDAY if starts is WeekStart.SUNDAY else 0
    return on - timedelta(days=(on.weekday() - first) % DAYS_PER_WEEK)


def week_number(on: date, starts: WeekStart) -> int:
    """Return the number of the week that holds `on`: the ISO 8601 week most of whose days are in it.

    So a week that begins on Sunday has the number of its Monday, and that of the batches sown in it.

    >>> week_number(date(2027, 1, 2), WeekStart.SUNDAY), week_number(date(2027, 1, 3), WeekStart.SUNDAY)
    (53, 1)
    """
    middle = week_start(on, starts) + timedelta(days=_MIDDLE_OF_WEEK)
    return middle.isocalendar().week


def week_name(on: date, starts: WeekStart) -> str:
    """Return the week as W and two digits.

    >>> week_name(date(2027, 4, 8), WeekStart.MONDAY)
    'W14'
    """
    return f"W{week_number(on, starts):02d}"


def day_words(on: date, *, beside: date | None = None) -> str:
    """Return weekday, day and month; the year too unless it is that of `beside`.

    >>> day_words(date(2027, 4, 5)), day_words(date(2027, 4, 5), beside=date(2027, 1, 1))
    ('Mon 5 Apr 2027', 'Mon 5 Apr')
    """
    year = "" if beside is not None and beside.year == on.year else f" {on.year}"
    return f"{_DAYS[on.weekday()]} {on.day} {_MONTHS[on.month - 1]}{year}"


def month_words(on: date) -> str:
    """Return a month and its year.

    >>> month_words(date(2027, 4, 5))
    'April 2027'
    """
    return f"{_LONG_MONTHS[on.month - 1]} {on.year}"


def short_day_words(on: date) -> str:
    """Return day and month, for where the weekday is told by what stands beside it.

    >>> short_day_words(date(2027, 4, 5)).replace(NO_BREAK, " ")
    '5 Apr'
    """
    return f"{on.day}{NO_BREAK}{_MONTHS[on.month - 1]}"


def span_words(first: date, last: date) -> str:
    """Return two days with a dash; the year once when it is the same.

    >>> span_words(date(2027, 4, 5), date(2027, 4, 11))
    'Mon 5 Apr – Sun 11 Apr 2027'
    """
    if first == last:
        return day_words(last)
    return f"{day_words(first, beside=last)} {EN_DASH} {day_words(last)}"


def moment_words(at: datetime) -> str:
    """Return a day and the time of day by the 24-hour clock.

    >>> moment_words(datetime(2027, 4, 1, 9, 5))
    'Thu 1 Apr 2027, 09:05'
    """
    return f"{day_words(at.date())}, {at:%H:%M}"


def count_words(number: int, one: str, many: str) -> str:
    """Return a count with the right form of its word.

    >>> count_words(1, "seed", "seeds"), count_words(1250, "seed", "seeds")
    ('1 seed', '1,250 seeds')
    """
    return f"{whole_words(number)} {one if number == 1 else many}"


def whole_words(number: int) -> str:
    """Return a whole number with thousands apart.

    >>> whole_words(12500)
    '12,500'
    """
    return f"{number:,}"


def range_words(first: int, last: int) -> str:
    """Return a run of numbers.

    >>> range_words(3, 3), range_words(3, 9)
    ('3', '3–9')
    """
    return f"{first}" if first == last else f"{first}{EN_DASH}{last}"


def percent_words(share: float) -> str:
    """Return a share as whole percent.

    >>> percent_words(0.925).replace(NO_BREAK, " ")
    '92 %'
    """
    return f"{share * 100:.0f}{NO_BREAK}%"


def list_words(many: Iterable[str]) -> str:
    """Return words with commas and a last "and".

    >>> list_words(["a"]), list_words(["a", "b", "c"])
    ('a', 'a, b and c')
    """
    words = list(many)
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} and {words[-1]}"
