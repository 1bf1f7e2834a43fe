"""Subjects of `why` that ask how sure a figure is: its range, what draws make of it, a chance."""

from __future__ import annotations

import math
from collections.abc import Sequence
from typing import TYPE_CHECKING, Final

from planner.cli_shared import WrongUsageError

if TYPE_CHECKING:
    from planner.bootstrap import Means
    from planner.farm.farm import Farm
    from planner.forecast.values import Forecast
    from planner.forecast.why.sure import SureSubject
    from planner.forecast.why.values import Explanation, Subject

RANGE, DRAWS, CHANCE = "range", "draws", "chance"
SURE_SUBJECTS: Final = """\
how sure a figure is:
  ... range                             low and high of ELEMENT, supply, demand, feed, crop or first-pick
  ... draws                             what draws make of ELEMENT, feed or crop: the middle, 10th and 90th
  week WEEK crop KEY [plants|kg] chance AMOUNT  how likely at least so much is harvested"""


def is_sure(words: Sequence[str]) -> bool:
    """Tell whether words ask how sure a figure is."""
    return (len(words) > 1 and words[-1] in (RANGE, DRAWS)) or CHANCE in words[2:]


def figure_words(words: Sequence[str]) -> list[str]:
    """Return the words that name the figure itself."""
    at = list(words).index(CHANCE) if CHANCE in words[2:] else len(words) - 1
    return list(words[:at])


def sure_subject(words: Sequence[str], of: Subject) -> SureSubject:
    """Return what is asked of a figure; raises `WrongUsageError` for an amount that is none."""
    from planner.forecast.why.sure import SureKind, SureSubject

    if CHANCE not in words[2:]:
        return SureSubject(kind=SureKind(words[-1]), of=of)
    said = list(words)[list(words).index(CHANCE) + 1 :]
    amount = _amount(said[0]) if len(said) == 1 else math.nan
    if math.isnan(amount):
        raise WrongUsageError(f'"chance" takes one amount of 0 or more, such as 40, not "{" ".join(said)}".')
    return SureSubject(kind=SureKind.CHANCE, of=of, amount=amount)


def _amount(word: str) -> float:
    try:
        value = float(word)
    except ValueError:
        return math.nan
    return value if math.isfinite(value) and value >= 0.0 else math.nan


def sure_answer(
    asked: SureSubject, means: Means, farm: Farm, forecast: Forecast, *, seed: int | None
) -> Explanation:
    """Return the answer, with ranges or draws worked out for it."""
    from planner.forecast.why.ground import Ground
    from planner.forecast.why.sure import SureKind, needs_ranges, why_sure

    ground = Ground(farm=farm, forecast=forecast, forecaster=means.forecaster)
    if needs_ranges(asked):
        from planner.forecast.ranges.bands import ranges_of

        return why_sure(asked, ground, ranges=ranges_of(farm, forecast, means.forecaster))
    if asked.kind is SureKind.RANGE:
        return why_sure(asked, ground)
    from planner.forecast.chances.draw import SEED, chances_of

    drawn = chances_of(farm, forecast, means.forecaster, seed=SEED if seed is None else seed)
    return why_sure(asked, ground, chances=drawn)
