"""The options of `forecast` that say how sure it is: ranges of the figures, and chances."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from planner.bootstrap import Means
    from planner.farm.farm import Farm
    from planner.forecast.plain import WeekSpan
    from planner.forecast.values import Forecast


def add_uncertainty_options(parser: argparse.ArgumentParser) -> None:
    """Add the options to the parser of `forecast`."""
    parser.add_argument(
        "--ranges", action="store_true", help="add low and high by the ranges of the figures; takes a while"
    )
    parser.add_argument(
        "--chances", action="store_true", help="add how likely harvest, feed and targets are, by draws"
    )
    parser.add_argument(
        "--seed",
        type=seed_number,
        metavar="N",
        help="with --chances: which draws (default: the same ones always)",
    )


def seed_number(word: str) -> int:
    """Read the number that says which draws."""
    if not word.isdigit():
        raise argparse.ArgumentTypeError(f'"{word}" is not a whole number, 0 or more')
    return int(word)


def uncertainty_asked(
    parsed: argparse.Namespace, means: Means, farm: Farm, *, forecast: Forecast, span: WeekSpan
) -> dict[str, Any]:
    """Return ranges and chances as data, each under its own name, as far as they were asked for.

    Raises `WrongUsageError` for a seed without chances, and for either in a table of values.
    """
    from planner.cli_shared import WrongUsageError

    if parsed.seed is not None and not parsed.chances:
        raise WrongUsageError("--seed goes with --chances.")
    asked = [f"--{name}" for name in ("ranges", "chances") if getattr(parsed, name)]
    if asked and parsed.csv:
        raise WrongUsageError(f"{asked[0]} does not go with --csv; ask for --json.")
    found = {}
    if parsed.ranges:
        from planner.forecast.ranges.bands import ranges_of
        from planner.forecast.ranges.plain import ranges_data

        found["ranges"] = ranges_data(ranges_of(farm, forecast, means.forecaster), span=span)
    if parsed.chances:
        from planner.forecast.chances.draw import SEED, chances_of
        from planner.forecast.chances.plain import chances_data

        seed = SEED if parsed.seed is None else parsed.seed
        drawn = chances_of(farm, forecast, means.forecaster, seed=seed)
        found["chances"] = chances_data(farm, drawn, span=span)
    return found
