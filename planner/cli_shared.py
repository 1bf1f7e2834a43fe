"""What the commands of the command line share: reading days and weeks, spans of the plan, writing farms."""

from __future__ import annotations

import argparse
import csv
import sys
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

from planner.bootstrap import FARM_SUFFIX, Means, is_text, local_today

if TYPE_CHECKING:
    from planner.farm.farm import Farm
    from planner.forecast.plain import WeekSpan
    from planner.forecast.values import Forecast, Ruler


class WrongUsageError(Exception):
    """What was asked for makes no sense; the text is a sentence for the user."""


def read_day(word: str) -> date:
    """Return the date a word names."""
    try:
        return date.fromisoformat(word)
    except ValueError:
        raise argparse.ArgumentTypeError(f'"{word}" is not a date such as 2027-04-08') from None


def read_weeks(word: str) -> int:
    """Return the number of weeks a word says."""
    if not word.isdigit() or int(word) < 1:
        raise argparse.ArgumentTypeError(f'"{word}" is not a number of weeks, 1 or more')
    return int(word)


def add_span(parser: argparse.ArgumentParser) -> None:
    """Add the options for weeks of the plan."""
    parser.add_argument(
        "--from", dest="from_on", type=read_day, metavar="DATE", help="first day (default: the plan's)"
    )
    parser.add_argument(
        "--weeks", type=read_weeks, metavar="N", help="number of weeks (default: to the plan's end)"
    )


def span_asked(parsed: argparse.Namespace, forecast: Forecast) -> WeekSpan:
    """Return the weeks asked for; raises `WrongUsageError` when the plan does not hold them."""
    from planner.forecast.plain import WeekSpan

    ruler = forecast.ruler
    first = 0 if parsed.from_on is None else ruler.week_of(parsed.from_on)
    last = ruler.weeks if parsed.weeks is None else first + parsed.weeks
    if not 0 <= first < ruler.weeks:
        raise outside_plan(f"--from {parsed.from_on}", ruler)
    if last > ruler.weeks:
        raise outside_plan(f"--weeks {parsed.weeks}", ruler)
    return WeekSpan(first=first, last=last)


def day_asked(asked_on: date | None, ruler: Ruler) -> tuple[date, int]:
    """Return the day asked for, else today, and its week; raises `WrongUsageError` outside the plan."""
    on = asked_on or local_today()
    week = ruler.week_of(on)
    if not 0 <= week < ruler.weeks:
        raise outside_plan(f"--date {on}" if asked_on else f"today, {on},", ruler)
    return on, week


def outside_plan(what: str, ruler: Ruler) -> WrongUsageError:
    """Return the error for a day or span that the plan does not cover."""
    until_on = ruler.date_of(ruler.days - 1)
    return WrongUsageError(
        f"{what} reaches outside the plan, which covers {ruler.weeks} weeks from "
        f"{ruler.start_on.isoformat()} to {until_on.isoformat()}. Ask for days inside it, or have the plan "
        "of the farm begin earlier (plan_from) or last longer (plan_weeks)."
    )


def counted(number: int, one: str, many: str) -> str:
    """Return a number and the word for one thing or for many."""
    return f"{number} {one if number == 1 else many}"


def told(where: Path) -> str:
    """Return how the place of a farm is told: a path as it is, an address without its password."""
    from planner.store.place import server_url

    if server_url(where) is None:
        return str(where)
    from planner.store.server import spoken

    return spoken(where)


def two_digits(value: float) -> str:
    """Return a number with the two digits that are known of it, never with an exponent.

    >>> two_digits(1234.5), two_digits(0.0871)
    ('1,200', '0.087')
    """
    return f"{float(f'{value:.2g}'):,.10g}"


def check_name(path: Path, *suffixes: str) -> None:
    """Raise `WrongUsageError` unless a file that is to be written says in its name what it is."""
    from planner.store.place import server_url

    on_server = FARM_SUFFIX in suffixes and server_url(path) is not None
    if not on_server and path.suffix.lower() not in suffixes:
        raise WrongUsageError(f"{path}: the name must end in {' or '.join(suffixes)}.")


def write_farm(means: Means, farm: Farm, path: Path) -> None:
    """Write a farm as text or file, never over what is there."""
    if path.exists():
        raise WrongUsageError(f"{path} is there already. Choose another name, or move it away first.")
    if is_text(path):
        from planner.store.text import write_farm_text

        path.write_text(write_farm_text(farm), encoding="utf-8")
    else:
        means.create_store(path, farm).close()


def print_csv(rows: list[dict[str, Any]]) -> None:
    """Print rows as comma-separated values."""
    if rows:
        writer = csv.DictWriter(sys.stdout, fieldnames=list(rows[0]), lineterminator="\n")
        writer.writeheader()
        writer.writerows(rows)
