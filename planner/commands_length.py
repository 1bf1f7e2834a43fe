"""The command `length`: what fish of a length weigh, for a farm that is stocked by the inch.

Exit codes: 0 good, 2 wrong usage.
"""

from __future__ import annotations

import argparse
from difflib import get_close_matches
from typing import Any, Final

from planner.bootstrap import Means

_GOOD: Final = 0


def add_length(commands: Any) -> None:
    """Add the command to the parsers of the command line."""
    parser = commands.add_parser(
        "length",
        help="say what fish of a length weigh",
        description="Says what fish of a total length weigh on the mean, low to high, for mean_weight_g of a "
        "fish group. A weighed sample is always better.",
    )
    parser.add_argument("fish", metavar="FISH", help="a fish of the catalogue, such as nile-tilapia")
    parser.add_argument("length_cm", metavar="CM", type=_length, help="total length in centimetres")
    parser.set_defaults(run=run_length)


def _length(word: str) -> float:
    try:
        length_cm = float(word)
    except ValueError:
        length_cm = -1.0
    if not 0.0 < length_cm <= _LONGEST_CM:
        raise argparse.ArgumentTypeError(
            f'"{word}" is not a length in cm, above 0 and at most {_LONGEST_CM:g}'
        )
    return length_cm


_LONGEST_CM: Final = 200.0


def run_length(parsed: argparse.Namespace) -> int:
    """Print the weight and where it is from."""
    from planner.cli_shared import WrongUsageError, two_digits
    from planner.forecast.lengths import weight_of_length

    catalogue = Means().catalogue
    if parsed.fish not in catalogue.fish:
        near = get_close_matches(parsed.fish, catalogue.fish, n=1)
        hint = f" Did you mean {near[0]}?" if near else ""
        raise WrongUsageError(
            f'"{parsed.fish}" is no fish of the catalogue.{hint} Known are {", ".join(catalogue.fish)}.'
        )
    try:
        found = weight_of_length(catalogue, parsed.fish, length_cm=parsed.length_cm)
    except ValueError as error:
        raise WrongUsageError(f"{error}.") from error
    figure = found.factor
    low, likely, high = (two_digits(grams) for grams in (found.low_g, found.likely_g, found.high_g))
    print(
        f"{catalogue.fish[parsed.fish].name} of {parsed.length_cm:g} cm: about {likely} g ({low} to {high} g)"
    )
    print(f"{figure.conditions}; {figure.source or 'no source'}, {figure.confidence.value}. Weigh a sample.")
    return _GOOD
