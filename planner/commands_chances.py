"""The options of `forecast` that add chances to it."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from planner.bootstrap import Means
    from planner.farm.farm import Farm
    from planner.forecast.plain import WeekSpan
    from planner.forecast.values import Forecast


def add_chances_options(parser: argparse.ArgumentParser) -> None:
    """Add the options to the parser of `forecast`."""
    parser.add_argument(
        "--chances", action="store_true", help="add how likely harvest, feed and targets are, by draws"
    )
    parser.add_argument(
        "--seed", type=_seed, metavar="N", help="with --chances: which draws (default: the same ones always)"
    )


def _seed(word: str) -> int:
    if not word.isdigit():
        raise argparse.ArgumentTypeError(f'"{word}" is not a whole number, 0 or more')
    return int(word)


def chances_asked(
    parsed: argparse.Namespace, means: Means, farm: Farm, *, forecast: Forecast, span: WeekSpan
) -> dict[str, Any]:
    """Return the chances as data under their own name; nothing unless asked for.

    Raises `WrongUsageError` for a seed without chances, and for chances in a table of values.
    """
    from planner.cli_commands import WrongUsageError

    if not parsed.chances:
        if parsed.seed is not None:
            raise WrongUsageError("--seed goes with --chances.")
        return {}
    if parsed.csv:
        raise WrongUsageError("--chances does not go with --csv; ask for --json.")
    from planner.forecast.chances.draw import SEED, chances_of
    from planner.forecast.chances.plain import chances_data

    seed = SEED if parsed.seed is None else parsed.seed
    found = chances_of(farm, forecast, means.forecaster, seed=seed)
    return {"chances": chances_data(farm, found, span=span)}
