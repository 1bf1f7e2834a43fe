"""The codes of the water side in the words of a grower, and ranges without false decimals.

Must know nothing of widgets.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from datetime import date
from enum import Enum
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.say import careful, tr
from planner.desk.words import choice_words, day_words, number_words, unit_words
from planner.farm.water import Quantity
from planner.forecast.water.acid import Agreement
from planner.forecast.water.bases import BaseKind, Before
from planner.forecast.water.filters import FilterVerdict
from planner.forecast.water.iron import ChelateFit
from planner.forecast.water.limits import LimitDay, LimitWay
from planner.forecast.water.readings import Direction
from planner.forecast.water.spans import Span
from planner.forecast.water.targets import Level, NotKnown

_TELLING_DIGITS: Final = 2
_FEW: Final = 1e-12

_WORDS: Final[Mapping[Enum, str]] = {
    FilterVerdict.UNKNOWN: "not known: no filter has a surface entered",
    FilterVerdict.NO_LOAD: "nothing is fed",
    FilterVerdict.SHORT: "short",
    FilterVerdict.TIGHT: "tight",
    FilterVerdict.ENOUGH: "enough",
    Agreement.WITHIN: "the balance agrees with what was published",
    Agreement.BELOW: "the balance lies below what was published",
    Agreement.ABOVE: "the balance lies above what was published",
    Level.SAFE: "safe",
    Level.WATCH: "watch",
    Level.ACT: "act",
    Direction.RISING: "rising",
    Direction.FALLING: "falling",
    Direction.STEADY: "steady",
    LimitWay.ALKALINITY_BALANCE: "Alkalinity",
    LimitWay.PH_BALANCE: "pH, by the acid made",
    LimitWay.PH_TREND: "pH, by its trend",
    NotKnown.NO_AMMONIA: "no ammonia reading",
    NotKnown.NO_PH: "no pH reading near it",
    NotKnown.NO_TEMPERATURE: "no water temperature near it",
    NotKnown.NO_ALKALINITY: "no alkalinity reading",
    NotKnown.TOO_OLD: "the reading is too old",
    NotKnown.NO_TREND: "too few readings for a trend",
    NotKnown.NOT_FALLING: "no fall seen",
    BaseKind.BICARBONATE: "bicarbonate, gentle",
    BaseKind.CARBONATE: "carbonate",
    BaseKind.HYDROXIDE: "hydroxide, strong",
    BaseKind.SODIUM: "brings sodium: only as a last resort",
    Before.TEST_AMMONIA: "Test the ammonia first.",
    Before.AMMONIA_HIGH: "Ammonia is high: give no base until it has fallen, for at a higher pH "
    "more of it is poison.",
    Before.TEST_PH: "Test the pH first.",
    Before.PH_HIGH_ENOUGH: "pH is high enough: give no base now.",
    Before.TEST_ALKALINITY: "Test the alkalinity first.",
    ChelateFit.SUITED: "suited to this pH",
    ChelateFit.DOUBTFUL: "doubtful at this pH",
    ChelateFit.NOT_SUITED: "not suited to this pH",
    ChelateFit.UNKNOWN: "fit not known: no pH reading",
}
_SIGNS: Final = {Level.SAFE: "●", Level.WATCH: "▲", Level.ACT: "■"}
_ASSUMED: Final = {"ph": "pH", "alkalinity": "alkalinity"}


def water_words(code: Enum) -> str:
    """Return a code of the water side in words."""
    return tr(_WORDS[code])


def level_words(level: Level | None) -> str:
    """Return how a value stands as a sign and a word; empty when nothing is known."""
    return "" if level is None else f"{_SIGNS[level]} {water_words(level)}"


def span_words(span: Span, unit: str = "") -> str:
    """Return the likely value and its range, as fine as they can bear, such as "9 (7.5 to 11) g"."""
    digits = _digits(max(abs(span.low), abs(span.high)))
    low, likely, high = (
        number_words(_rounded(value, digits), digits=max(digits, 0))
        for value in (span.low, span.likely, span.high)
    )
    shown = likely if low == high else tr("{likely} ({low} to {high})", likely=likely, low=low, high=high)
    return f"{shown} {unit_words(unit)}".rstrip()


def rough_words(value: float, unit: str = "") -> str:
    """Return one number with as many figures as an estimate can bear."""
    digits = _digits(abs(value))
    return f"{number_words(_rounded(value, digits), digits=max(digits, 0))} {unit_words(unit)}".rstrip()


def _digits(largest: float) -> int:
    """Return decimals that leave two telling figures of the largest value; negative for whole tens."""
    if largest < _FEW:
        return 0
    return _TELLING_DIGITS - 1 - math.floor(math.log10(largest))


def _rounded(value: float, digits: int) -> float:
    return round(value, digits) + 0.0


def quantity_words(quantity: Quantity) -> str:
    """Return what a quantity is called, without its unit."""
    return choice_words(quantity).partition(" [")[0]


def quantity_unit(quantity: Quantity) -> str:
    """Return the unit of a quantity, empty for pH."""
    return choice_words(quantity).partition(" [")[2].rstrip("]")


def quantity_value(quantity: Quantity, value: float) -> str:
    """Return a value that was read, with its unit."""
    return f"{number_words(value)} {quantity_unit(quantity)}".rstrip()


def limit_words(limit: LimitDay) -> str:
    """Return when a limit is reached as a range of days, or why that is not known."""
    if limit.not_known is not None:
        return tr("not known: {why}", why=water_words(limit.not_known))
    if limit.already:
        return tr("reached already")
    if limit.earliest_on is None:
        return tr("not within the plan")
    if limit.latest_on is None:
        return tr("not before {day}, perhaps not within the plan", day=day_words(limit.earliest_on))
    return days_words(limit.earliest_on, limit.latest_on)


def days_words(first: date, last: date) -> str:
    """Return a range of days."""
    if first == last:
        return day_words(first)
    return tr("between {first} and {last}", first=day_words(first), last=day_words(last))


def assumed_words(names: Iterable[str]) -> str:
    """Return which readings had to be assumed."""
    return ", ".join(tr(_ASSUMED[name]) for name in names)


def supplement_words(key: str, catalogue: Catalogue) -> str:
    """Return what a supplement is called."""
    found = catalogue.supplements.get(key)
    return found.name if found else key


def caution_texts(keys: Iterable[str], catalogue: Catalogue) -> tuple[str, ...]:
    """Return the cautions of some keys in full, each once."""
    found = (catalogue.cautions[key] for key in dict.fromkeys(keys) if key in catalogue.cautions)
    return tuple(f"{tr(each.topic)}: {careful(each.text)}" for each in found)
