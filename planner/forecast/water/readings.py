"""What tests of the water say: the latest, the odd one out, the trend, and what is due.

A single value never speaks alone: test kits are noisy. Must not know fish, beds or what is on the shelf.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import Enum
from itertools import combinations
from statistics import median, quantiles
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.farm.water import Quantity, Reading
from planner.forecast.water.spans import Span

_CARE: Final = "coefficient/water_care/"
_RULES: Final = (
    "noise_share",
    "outlier_neighbours",
    "outlier_fewest",
    "outlier_window_days",
    "outlier_noises",
    "outlier_spreads",
    "trend_window_days",
    "trend_fewest",
)
_NOISE: Final = {
    Quantity.PH: "noise_ph",
    Quantity.WATER_C: "noise_water_c",
    Quantity.AIR_C: "noise_air_c",
    Quantity.EC_MS_PER_CM: "noise_ec_ms_per_cm",
    Quantity.TDS_MG_PER_L: "noise_tds_mg_per_l",
    Quantity.TAN_MG_PER_L: "noise_tan_mg_per_l",
    Quantity.NITRITE_N_MG_PER_L: "noise_nitrite_n_mg_per_l",
    Quantity.NITRATE_N_MG_PER_L: "noise_nitrate_n_mg_per_l",
    Quantity.ALKALINITY_MG_PER_L: "noise_alkalinity_mg_per_l",
    Quantity.OXYGEN_MG_PER_L: "noise_oxygen_mg_per_l",
    Quantity.P_MG_PER_L: "noise_p_mg_per_l",
    Quantity.K_MG_PER_L: "noise_k_mg_per_l",
    Quantity.CA_MG_PER_L: "noise_ca_mg_per_l",
    Quantity.MG_MG_PER_L: "noise_mg_mg_per_l",
    Quantity.FE_MG_PER_L: "noise_fe_mg_per_l",
}
_EVERY: Final = {
    Quantity.PH: "test_every_days_ph",
    Quantity.TAN_MG_PER_L: "test_every_days_tan",
    Quantity.NITRITE_N_MG_PER_L: "test_every_days_nitrite_n",
    Quantity.NITRATE_N_MG_PER_L: "test_every_days_nitrate_n",
    Quantity.WATER_C: "test_every_days_water_c",
    Quantity.EC_MS_PER_CM: "test_every_days_ec",
    Quantity.OXYGEN_MG_PER_L: "test_every_days_oxygen",
    Quantity.ALKALINITY_MG_PER_L: "test_every_days_alkalinity",
}
_SAME_TEST: Final = {Quantity.EC_MS_PER_CM: (Quantity.EC_MS_PER_CM, Quantity.TDS_MG_PER_L)}
_QUARTERS: Final = 4
_NO_TRUE_ZERO: Final = frozenset({Quantity.WATER_C, Quantity.AIR_C, Quantity.PH})
"""Scales whose nought means nothing: a share of the value is no noise there."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class ReadingFigures:
    """The rows that readings are looked at by: noise and days between tests by quantity, and the rules."""

    noise: Mapping[Quantity, Figure]
    every_days: Mapping[Quantity, Figure]
    rules: Mapping[str, Figure]

    def rule(self, name: str) -> float:
        """Return the value of a rule."""
        return self.rules[name].value

    @property
    def basis(self) -> tuple[Figure, ...]:
        """The rows, in order."""
        return (*self.rules.values(), *self.noise.values(), *self.every_days.values())


def reading_figures(catalogue: Catalogue) -> ReadingFigures:
    """Return the rows as the catalogue has them."""
    return ReadingFigures(
        noise={quantity: catalogue.figure(_CARE + name) for quantity, name in _NOISE.items()},
        every_days={quantity: catalogue.figure(_CARE + name) for quantity, name in _EVERY.items()},
        rules={name: catalogue.figure(_CARE + name) for name in _RULES},
    )


def series(
    readings: Iterable[Reading], quantity: Quantity, *, loop: Id, until_on: date | None = None
) -> tuple[Reading, ...]:
    """Return a loop's readings of a quantity by date, those of one day as entered."""
    found = (
        reading
        for reading in readings
        if reading.loop == loop
        and reading.quantity is quantity
        and (until_on is None or reading.on <= until_on)
    )
    return tuple(sorted(found, key=_on))


def _on(reading: Reading) -> date:
    return reading.on


def latest(
    readings: Iterable[Reading], quantity: Quantity, *, loop: Id, until_on: date | None = None
) -> Reading | None:
    """Return the last reading of a quantity, None when there is none."""
    found = series(readings, quantity, loop=loop, until_on=until_on)
    return found[-1] if found else None


def nearest(found: Sequence[Reading], *, on: date, within_days: float) -> Reading | None:
    """Return the reading nearest to a date, the later one when two are as near; None beyond the days."""
    near = [reading for reading in found if abs((reading.on - on).days) <= within_days]
    if not near:
        return None
    return min(reversed(near), key=_Away(on))


@dataclass(frozen=True, slots=True)
class _Away:
    """Days between a reading and a date."""

    on: date

    def __call__(self, reading: Reading) -> int:
        return abs((reading.on - self.on).days)


def noise_of(quantity: Quantity, value: float, figures: ReadingFigures) -> float:
    """Return how far apart two tests of the same water may be [unit of the quantity]; 0 if not known."""
    figure = figures.noise.get(quantity)
    if figure is None:
        return 0.0
    if quantity in _NO_TRUE_ZERO:
        return figure.value
    return max(figure.value, abs(value) * figures.rule("noise_share"))


def odd_readings(found: Sequence[Reading], figures: ReadingFigures) -> tuple[Reading, ...]:
    """Return the readings of a series that stand alone against the median of their neighbours.

    Such a reading asks for the test to be repeated and for nothing else. One that the reading before or
    after it agrees with is no outlier, nor one with too few neighbours.
    """
    return tuple(reading for place, reading in enumerate(found) if is_odd(found, place, figures))


def is_odd(found: Sequence[Reading], place: int, figures: ReadingFigures) -> bool:
    """Tell whether the reading at a place of a series is one of `odd_readings`."""
    neighbours = _neighbours(found, place, figures)
    if len(neighbours) < figures.rule("outlier_fewest"):
        return False
    value = found[place].value
    values = [reading.value for reading in neighbours]
    middle = median(values)
    spread = median(abs(value - middle) for value in values)
    noise = noise_of(found[place].quantity, middle, figures)
    bound = max(figures.rule("outlier_noises") * noise, figures.rule("outlier_spreads") * spread)
    beside = [each.value for each in (*found[max(place - 1, 0) : place], *found[place + 1 : place + 2])]
    return abs(value - middle) > bound and all(abs(value - other) > bound for other in beside)


def _neighbours(found: Sequence[Reading], place: int, figures: ReadingFigures) -> list[Reading]:
    """Return the nearest other readings by place in the series, within the days that count."""
    on, window = found[place].on, figures.rule("outlier_window_days")
    most = int(figures.rule("outlier_neighbours"))
    others = [
        (abs(other - place), other)
        for other in range(max(place - most, 0), min(place + most + 1, len(found)))
        if other != place and abs((found[other].on - on).days) <= window
    ]
    return [found[other] for _, other in sorted(others)[:most]]


class Direction(Enum):
    """Where readings go."""

    FALLING = "falling"
    STEADY = "steady"
    RISING = "rising"


@dataclass(frozen=True, slots=True, kw_only=True)
class Trend:
    """Change of a quantity [unit per week]: median of the slopes of all pairs, with their middle half.

    `direction` is steady when the change over the readings' span is within the noise of the test.
    """

    quantity: Quantity
    per_week: Span
    direction: Direction
    readings: int
    from_on: date
    until_on: date


def trend(found: Sequence[Reading], *, until_on: date, figures: ReadingFigures) -> Trend | None:
    """Return the trend of the last weeks of a series; None with too few days of readings.

    The median slope of all pairs does not follow a single odd reading.
    """
    first_on = until_on - timedelta(days=int(figures.rule("trend_window_days")))
    recent = [reading for reading in found if first_on <= reading.on <= until_on]
    if len({reading.on for reading in recent}) < figures.rule("trend_fewest"):
        return None
    slopes = _slopes(recent)
    low, likely, high = quantiles(slopes, n=_QUARTERS, method="inclusive")
    weeks = (recent[-1].on - recent[0].on).days / DAYS_PER_WEEK
    middle = median(reading.value for reading in recent)
    return Trend(
        quantity=recent[0].quantity,
        per_week=Span(low=low, likely=likely, high=high),
        direction=_direction(likely * weeks, noise_of(recent[0].quantity, middle, figures)),
        readings=len(recent),
        from_on=recent[0].on,
        until_on=recent[-1].on,
    )


def _slopes(found: Sequence[Reading]) -> list[float]:
    """Return the slope [1/week] of every pair of readings of different days."""
    return [
        (later.value - earlier.value) / (later.on - earlier.on).days * DAYS_PER_WEEK
        for earlier, later in combinations(found, 2)
        if later.on != earlier.on
    ]


def _direction(change: float, noise: float) -> Direction:
    if abs(change) <= noise:
        return Direction.STEADY
    return Direction.RISING if change > 0 else Direction.FALLING


@dataclass(frozen=True, slots=True, kw_only=True)
class DueTest:
    """When a test is due: at once when it was never made. `days_late` is negative before the day."""

    quantity: Quantity
    last_on: date | None
    due_on: date
    days_late: int


def due_tests(
    readings: Sequence[Reading], *, loop: Id, today: date, figures: ReadingFigures
) -> tuple[DueTest, ...]:
    """Return when each regular test is due, the latest first."""
    dues = [
        _due(quantity, readings, loop=loop, today=today, every=int(figure.value))
        for quantity, figure in figures.every_days.items()
    ]
    return tuple(sorted(dues, key=_lateness))


def overdue_tests(
    readings: Sequence[Reading], *, loop: Id, today: date, figures: ReadingFigures
) -> tuple[DueTest, ...]:
    """Return the tests whose day has passed or that were never made."""
    dues = due_tests(readings, loop=loop, today=today, figures=figures)
    return tuple(due for due in dues if due.days_late > 0 or due.last_on is None)


def _due(quantity: Quantity, readings: Sequence[Reading], *, loop: Id, today: date, every: int) -> DueTest:
    same = _SAME_TEST.get(quantity, (quantity,))
    lasts = [latest(readings, each, loop=loop, until_on=today) for each in same]
    ons = [reading.on for reading in lasts if reading is not None]
    last_on = max(ons) if ons else None
    due_on = today if last_on is None else last_on + timedelta(days=every)
    return DueTest(quantity=quantity, last_on=last_on, due_on=due_on, days_late=(today - due_on).days)


def _lateness(due: DueTest) -> tuple[bool, int]:
    return due.last_on is not None, -due.days_late
