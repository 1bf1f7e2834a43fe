"""The command `water`: filter, oxygen, acid, tests and doses of a farm's loops on a day.

Exit codes: 0 good, 1 the farm has faults or cannot be read, 2 wrong usage.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Callable, Iterator, Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import Means
from planner.cli_shared import day_asked, two_digits

if TYPE_CHECKING:
    from planner.catalogue.catalogue import Catalogue

FORMAT: Final = "raftweek.water/1"
_GOOD: Final = 0


def add_water(commands: Any, *, day: Callable[[str], date]) -> None:
    """Add the command to the parsers of the command line; `day` reads a date."""
    parser = commands.add_parser(
        "water",
        help="say what the water needs",
        description="Says of each loop on a day: ammonia load against the filter, oxygen asked for, acid and "
        "alkalinity, tests that are due, and grams of base, iron and salts the farm already uses.",
    )
    parser.add_argument("file", type=Path, metavar="FILE", help="a farm file or a farm text")
    parser.add_argument("--date", dest="on", type=day, metavar="DATE", help="the day (default: today)")
    parser.add_argument("--json", action="store_true", help="as JSON (docs/water.md)")
    parser.set_defaults(run=run_water)


def run_water(parsed: argparse.Namespace) -> int:
    """Print the water side of every loop."""
    from planner.forecast.water.plain import loop_water_data
    from planner.forecast.water.side import loop_water

    means = Means()
    farm = means.read(parsed.file).farm
    forecast = means.forecaster.forecast(farm)
    on, week = day_asked(parsed.on, forecast.ruler)
    catalogue = means.forecaster.catalogue
    loops = [
        loop_water_data(
            loop_water(farm, found, ruler=forecast.ruler, catalogue=catalogue, today=on),
            forecast.ruler,
            weeks=[week],
        )
        for found in forecast.loops
    ]
    if parsed.json:
        data = {"format": FORMAT, "farm": farm.settings.name, "today": on.isoformat(), "loops": loops}
        json.dump(data, sys.stdout, indent=2, ensure_ascii=False)
        print()
    else:
        print("\n".join(line for loop in loops for line in _lines(loop, catalogue)))
    return _GOOD


def _lines(loop: dict[str, Any], catalogue: Catalogue) -> Iterator[str]:
    """Yield the sheet of one loop for people."""
    week = loop["weeks"][0]
    yield f"{loop['loop']}, {loop['today']} (week {week['week']})"
    yield f"  ammonia nitrogen: {_range(week['tan_g_per_day'])} g a day"
    filter_m2 = loop["filter"]["area_m2"]
    yield (
        f"  filter: {_range(week['filter_need_m2'])} m² of surface needed, "
        f"{'not entered' if filter_m2 is None else f'{filter_m2:g} m² entered'}: {week['filter_verdict']}"
    )
    yield f"  oxygen asked for: {_range(week['oxygen_g_per_h'])} g an hour"
    yield f"  acid: {_range(week['acid_planned_eq'])} equivalents a week"
    for limit in loop["limits"]:
        yield f"  {limit['way']} reaches {limit['limit']:g}: {_limit_words(limit)}"
    ammonia = loop["readings"]["free_ammonia"]
    yield f"  un-ionised ammonia: {ammonia['not_known'] or _ammonia_words(ammonia)}"
    due = [test["quantity"] for test in loop["readings"]["due"] if test["days_late"] >= 0]
    yield f"  tests due: {', '.join(due) or 'none'}"
    yield from _advice_lines(loop["advice"], catalogue)


def _range(three: Sequence[float]) -> str:
    """Return low to high with the likely value between; two digits are all that is known."""
    low, likely, high = (two_digits(value) for value in three)
    return f"{likely} ({low} to {high})"


def _limit_words(limit: dict[str, Any]) -> str:
    if limit["not_known"]:
        return f"not known, {limit['not_known']}"
    if limit["already"]:
        return "reached already"
    earliest, latest = limit["earliest_on"], limit["latest_on"]
    if earliest is None:
        return "not within the plan"
    return f"between {earliest} and {latest or 'perhaps never within the plan'}"


def _ammonia_words(ammonia: dict[str, Any]) -> str:
    return f"{ammonia['nh3_n_mg_per_l']:.3f} mg/L as nitrogen, {ammonia['level']}"


def _advice_lines(advice: dict[str, Any], catalogue: Catalogue) -> Iterator[str]:
    base = advice["base"]
    if base["hold"]:
        yield "  base: hold it back"
    for first in base["before"]:
        yield f"  before any base: {first}"
    cautions: list[str] = []
    for one in base["bases"]:
        yield (
            f"  base: {_range(one['grams_per_week'])} g of {one['supplement']} a week, "
            f"at most {one['most_grams_per_dose']:.0f} g at once"
        )
        cautions += one["cautions"]
    iron = advice["iron"]
    for product in iron["products"] if iron else ():
        yield (
            f"  iron: {_range(product['grams'])} g of {product['supplement']} every "
            f"{iron['interval_days']} days, next on {iron['due_on']} ({product['fit']})"
        )
    for salt in advice["salts"]:
        cautions += salt["cautions"]
        yield (
            f"  salt: {_range(salt['grams_per_week'])} g of {salt['supplement']} a week "
            f"fills the gap of {salt['element'].capitalize()}"
        )
    for key in dict.fromkeys(cautions):
        yield f"  ! {catalogue.cautions[key].text}"
