"""The command `advise`: what to do about flagged weeks.

Exit codes: 0 good, 1 the farm has faults or cannot be read, 2 wrong usage.
"""

from __future__ import annotations

import argparse
import json
import math
import sys
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import FARM_SUFFIX, TEXT_SUFFIX, Means
from planner.cli_shared import WrongUsageError, read_day
from planner.commands_answers import add_why_option, print_answers

if TYPE_CHECKING:
    from planner.catalogue.catalogue import Catalogue
    from planner.farm.farm import Farm
    from planner.farm.fields import Id
    from planner.forecast.values import Flag, Forecast
    from planner.planning.remedies.values import Remedy

_GOOD: Final = 0


def number_of(word: str) -> float:
    """Return the number that a word of the command line says."""
    try:
        value = float(word)
    except ValueError:
        value = math.nan
    if not math.isfinite(value):
        raise argparse.ArgumentTypeError(f'"{word}" is not a number such as 2.5')
    return value


def loop_named(farm: Farm, name: str | None) -> Id:
    """Return the loop of a name, the first when none is said; raises `WrongUsageError`."""
    if not farm.loops:
        raise WrongUsageError("the farm has no loop of water.")
    if name is None:
        return farm.loops[0].id
    for loop in farm.loops:
        if loop.name == name:
            return loop.id
    raise WrongUsageError(f'no loop is called "{name}". Loops are: {", ".join(x.name for x in farm.loops)}.')


def print_json(data: Mapping[str, Any]) -> None:
    """Print plain data."""
    json.dump(data, sys.stdout, indent=2, ensure_ascii=False)
    print()


def add_file(parser: argparse.ArgumentParser) -> None:
    """Add the farm that a command reads."""
    parser.add_argument(
        "file", type=Path, metavar="FILE", help=f"a farm file ({FARM_SUFFIX}) or farm text ({TEXT_SUFFIX})"
    )


# --- advise ------------------------------------------------------------------------------------------


def add_advise(commands: Any) -> None:
    """Add the command to the parsers of the command line."""
    parser = commands.add_parser(
        "advise",
        help="say what to do about flagged weeks",
        description="Lists what the forecast warns of, and for each up to five repairs, the cheapest first: "
        "plantings, feed, liquor, supplements, fish. What each does is worked out by forecasting the changed "
        "farm. The farm is not changed.",
    )
    add_file(parser)
    parser.add_argument("--week", metavar="WEEK", help="only what touches a week such as 2027-W18")
    parser.add_argument(
        "--today", type=read_day, metavar="DATE", help="change nothing before (default: the plan's first day)"
    )
    parser.add_argument("--json", action="store_true", help="as JSON (docs/advice.md)")
    add_why_option(parser)
    parser.set_defaults(run=run_advise)


def run_advise(parsed: argparse.Namespace) -> int:
    """Print flags with their remedies."""
    from planner.planning.remedies.ask import REPAIRABLE, remedies
    from planner.planning.remedies.plain import FORMAT, advice_data

    means = Means()
    farm = means.read(parsed.file).farm
    forecast = means.forecaster.forecast(farm)
    flags = [flag for flag in forecast.flags if flag.kind in REPAIRABLE]
    if parsed.week is not None:
        flags = [flag for flag in flags if _touches(flag, parsed.week, forecast)]
    found = [(flag, remedies(farm, means.forecaster, flag, today=parsed.today)) for flag in flags]
    if parsed.why is not None:
        from planner.planning.why_remedies import remedy_whys

        whys = {
            name: maker
            for flag, many in found
            for name, maker in remedy_whys(farm, means.forecaster, flag, many).items()
        }
        print_answers(whys, parsed.why, means, as_json=parsed.json)
    elif parsed.json:
        data = {"format": FORMAT, "farm": farm.settings.name}
        print_json(data | {"flags": [advice_data(flag, many) for flag, many in found]})
    else:
        print("\n".join(_advice_lines(found, means.forecaster.catalogue)))
    return _GOOD


def _touches(flag: Flag, word: str, forecast: Forecast) -> bool:
    from planner.commands_why_names import week_of

    ruler = forecast.ruler
    week = week_of(word, ruler)
    first = ruler.week_of(flag.on or ruler.start_on)
    return first <= week <= ruler.week_of(flag.until_on or flag.on or ruler.start_on)


def _advice_lines(found: list[tuple[Flag, tuple[Remedy, ...]]], catalogue: Catalogue) -> Iterator[str]:
    if not found:
        yield "Nothing is flagged that a change of the plan would repair."
    for flag, many in found:
        until = f" to {flag.until_on}" if flag.until_on and flag.until_on != flag.on else ""
        yield f"{flag.name}: {flag.kind.value}, {flag.on}{until}"
        if not many:
            yield "  no change of the plan was found that helps"
        for remedy in many:
            yield f"  - {remedy.change_set.title}"
            yield f"      {', '.join(_effect_words(remedy))}"
            if remedy.side_effects:
                yield f"      look out: {', '.join(effect.value for effect in remedy.side_effects)}"
    for key in dict.fromkeys(key for _, many in found for remedy in many for key in remedy.cautions):
        yield f"! {catalogue.cautions[key].text}"


def _effect_words(remedy: Remedy) -> Iterator[str]:
    """Yield what a remedy changes, before and after."""
    before, after = remedy.before, remedy.after
    if before.limiting is not None and after.limiting is not None:
        was, now = before.lowest_ratio[before.limiting], after.lowest_ratio[after.limiting]
        yield f"supply of {before.limiting_symbol} {was:.2f} to {after.limiting_symbol} {now:.2f} of demand"
    if before.weeks_short != after.weeks_short:
        yield f"weeks short {before.weeks_short} to {after.weeks_short}"
    if before.feed_ratio_g_per_m2_d is not None and after.feed_ratio_g_per_m2_d is not None:
        yield f"feed {before.feed_ratio_g_per_m2_d:.0f} to {after.feed_ratio_g_per_m2_d:.0f} g/m²/d"
    if abs(after.peak_kg_per_m3 - before.peak_kg_per_m3) > _SHOWN_KG_PER_M3:
        yield f"fullest tank {before.peak_kg_per_m3:.1f} to {after.peak_kg_per_m3:.1f} kg/m³"
    if before.unplaced_plants != after.unplaced_plants:
        yield f"plants without a place {before.unplaced_plants} to {after.unplaced_plants}"
    yield f"crops {remedy.harvest_change_g / _G_PER_KG:+.1f} kg over the plan"


_G_PER_KG: Final = 1000.0
_SHOWN_KG_PER_M3: Final = 0.05
