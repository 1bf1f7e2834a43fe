"""Grams, kilograms and litres as they are weighed out: no finer than the scales at hand.

Must not know documents.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Final

from planner.paper.words import NO_BREAK, whole_words

_G_PER_KG: Final = 1000.0
_STEP_G: Final = 5
_FINE_BELOW_G: Final = 50.0
_WHOLE_GRAMS_FROM: Final = 10.0
_TENTHS: Final = 10
_WHOLE_FROM: Final = 100.0
_TENTHS_FROM: Final = 1.0


def ration_g(grams: float) -> float:
    """Return a day's feed as it is weighed: to 5 g, small rations to 1 g, those of fry to 0.1 g.

    The one rounding of feed that is given, on every sheet and page.

    >>> ration_g(318.9), ration_g(42.7), ration_g(3.44), ration_g(0.0)
    (320, 43, 3.4, 0)
    """
    return _weighed(grams, round)


def meal_g(grams_a_day: float, meals: float) -> float:
    """Return one of so many meals, rounded down: together they never come to more than the day's feed.

    >>> meal_g(220.0, 3.0), meal_g(4.0, 3.0)
    (70, 1.3)
    """
    return _weighed(grams_a_day / meals, math.floor)


def _weighed(grams: float, to_whole: Callable[[float], int]) -> float:
    if grams >= _FINE_BELOW_G:
        return to_whole(grams / _STEP_G) * _STEP_G
    if grams >= _WHOLE_GRAMS_FROM or grams <= 0.0:
        return to_whole(grams)
    return to_whole(grams * _TENTHS) / _TENTHS


def ration_number(grams: float) -> str:
    """Return a ration as a number.

    >>> ration_number(1318.9), ration_number(3.0)
    ('1,320', '3')
    """
    weighed = ration_g(grams)
    return weighed_words(weighed)


def weighed_words(grams: float) -> str:
    """Return grams that are weighed already, with a tenth only where there is one.

    >>> weighed_words(70), weighed_words(1.3)
    ('70', '1.3')
    """
    return whole_words(round(grams)) if grams == round(grams) else f"{grams:.1f}"


def ration_words(grams: float) -> str:
    """Return a ration with its unit.

    >>> ration_words(318.9).replace(NO_BREAK, " ")
    '320 g'
    """
    return f"{ration_number(grams)}{NO_BREAK}g"


def kg_words(grams: float) -> str:
    """Return a mass in kilograms, finer the smaller it is.

    >>> [kg_words(grams).replace(NO_BREAK, " ") for grams in (125_400.0, 12_540.0, 254.0)]
    ['125 kg', '12.5 kg', '0.25 kg']
    """
    return f"{number_words(grams / _G_PER_KG)}{NO_BREAK}kg"


def number_words(value: float) -> str:
    """Return a number with two decimals below 1, one below 100, else none.

    >>> number_words(0.254), number_words(12.54), number_words(1254.0), number_words(3.0)
    ('0.25', '12.5', '1,254', '3')
    """
    digits = 0 if abs(value) >= _WHOLE_FROM else 1 if abs(value) >= _TENTHS_FROM else 2
    text = f"{value:,.{digits}f}"
    return text.rstrip("0").rstrip(".") if "." in text else text
