"""What a grower wants: so much a week, so much on a day, or a rhythm; and what it comes to by week."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from enum import Enum

from planner.farm.crops import Target, TargetUnit
from planner.farm.farm import DAYS_PER_WEEK
from planner.forecast.values import Ruler
from planner.planning.rhythm import rule_days


@dataclass(frozen=True, slots=True, kw_only=True)
class Steady:
    """So much of a crop every week from one day to another, ready by a weekday (Monday is 0).

    Without a weekday it is ready by the last day of work in the week. Amounts are what is fit for sale.
    """

    crop: str
    amount_per_week: float
    unit: TargetUnit = TargetUnit.HEADS
    from_on: date
    until_on: date | None = None
    weekday: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Order:
    """So much of a crop by a day."""

    crop: str
    amount: float
    unit: TargetUnit = TargetUnit.HEADS
    on: date


class RhythmOf(Enum):
    """What a rhythm says the days of."""

    HARVEST = "harvest"
    SOWING = "sowing"


@dataclass(frozen=True, slots=True, kw_only=True)
class Rhythm:
    """So much of a crop on every day a rule falls on; of sowings, `amount` are plants in their last place."""

    crop: str
    amount: float
    unit: TargetUnit = TargetUnit.HEADS
    rule: str
    of: RhythmOf = RhythmOf.HARVEST
    from_on: date
    until_on: date


Want = Steady | Order | Rhythm


def wants_of(targets: tuple[Target, ...]) -> tuple[Want, ...]:
    """Return the targets of a farm as wants."""
    return tuple(
        Steady(
            crop=target.crop,
            amount_per_week=target.amount_per_week,
            unit=target.unit,
            from_on=target.from_on,
            until_on=target.until_on,
        )
        for target in targets
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Due:
    """An amount of one crop that is wanted in a week of the ruler, between two of its days."""

    crop: str
    unit: TargetUnit
    week: int
    amount: float
    first_day: int
    last_day: int


def dues_of(want: Want, ruler: Ruler) -> Iterator[Due]:
    """Yield what is wanted, week by week within the ruler; part of a week wants part of its amount."""
    if isinstance(want, Steady):
        yield from _steady_dues(want, ruler)
    elif isinstance(want, Order):
        yield from _due_on(want.on, want.amount, want, ruler)
    elif want.of is RhythmOf.HARVEST:
        for on in rule_days(want.rule, from_on=want.from_on, until_on=want.until_on):
            yield from _due_on(on, want.amount, want, ruler)


def _steady_dues(want: Steady, ruler: Ruler) -> Iterator[Due]:
    first = ruler.day_of(want.from_on)
    last = ruler.days - 1 if want.until_on is None else ruler.day_of(want.until_on)
    for week in range(ruler.weeks):
        start = week * DAYS_PER_WEEK
        from_day, to_day = max(start, first), min(start + DAYS_PER_WEEK - 1, last)
        if to_day < from_day:
            continue
        amount = want.amount_per_week * (to_day - from_day + 1) / DAYS_PER_WEEK
        if want.weekday is not None:
            ready = start + (want.weekday - ruler.start_on.weekday()) % DAYS_PER_WEEK
            if not from_day <= ready <= to_day:
                continue
            to_day, amount = ready, want.amount_per_week
        yield Due(crop=want.crop, unit=want.unit, week=week, amount=amount, first_day=start, last_day=to_day)


def _due_on(on: date, amount: float, want: Order | Rhythm, ruler: Ruler) -> Iterator[Due]:
    day = ruler.day_of(on)
    if 0 <= day < ruler.days:
        week = day // DAYS_PER_WEEK
        start = week * DAYS_PER_WEEK
        yield Due(crop=want.crop, unit=want.unit, week=week, amount=amount, first_day=start, last_day=day)


def sowing_days(want: Rhythm, ruler: Ruler) -> tuple[int, ...]:
    """Return the days of the ruler a rhythm of sowings falls on."""
    until_on = min(want.until_on, ruler.start_on + timedelta(days=ruler.days - 1))
    found = rule_days(want.rule, from_on=want.from_on, until_on=until_on)
    return tuple(ruler.day_of(on) for on in found)
