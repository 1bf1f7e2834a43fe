"""What the planning commands are asked for in words: days without work, orders, weekly amounts, rhythms.

Every word that cannot be read is named with what would be right.
"""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from datetime import date
from typing import TYPE_CHECKING, Final

from planner.cli_shared import WrongUsageError, outside_plan, read_day

if TYPE_CHECKING:
    from planner.farm.crops import TargetUnit
    from planner.farm.farm import Farm
    from planner.forecast.values import Ruler
    from planner.planning.rhythm import WorkDays
    from planner.planning.wanted import Order, Rhythm, RhythmOf, Steady, Want

_KG: Final = "kg"
_LETTERS: Final = 3
_MOST: Final = 1_000_000.0
_AMOUNT: Final = f"with an amount above 0 and at most {_MOST:,.0f}"


def add_work_days(parser: argparse.ArgumentParser) -> None:
    """Add the options for days without work."""
    parser.add_argument(
        "--no-work",
        nargs="+",
        default=[],
        metavar="DAY",
        help="weekdays without sowing and moving, such as sat",
    )
    parser.add_argument(
        "--holiday", nargs="+", type=read_day, default=[], metavar="DATE", help="days without work"
    )


def work_days(parsed: argparse.Namespace) -> WorkDays:
    """Return the days of work that the options leave."""
    from planner.planning.rhythm import WorkDays

    return WorkDays(
        closed_weekdays=frozenset(weekday_of(word, "--no-work") for word in parsed.no_work),
        closed_on=frozenset(parsed.holiday),
    )


def weekday_of(word: str, option: str) -> int:
    """Return the day of the week a word names, Monday 0; three letters are enough."""
    from planner.planning.rhythm import WEEKDAYS

    for number, name in enumerate(WEEKDAYS):
        if len(word) >= _LETTERS and name.startswith(word.lower()):
            return number
    raise WrongUsageError(f'{option} "{word}" is no day of the week; say {", ".join(WEEKDAYS)}.')


def add_wants(parser: argparse.ArgumentParser) -> None:
    """Add the options for what is wanted beside the targets of the farm."""
    parser.add_argument(
        "--weekly",
        action="append",
        default=[],
        metavar="CROP=AMOUNT@DAY[,FROM[,UNTIL]]",
        help="so much by a weekday of every week, instead of the farm's targets for that crop, such as "
        "lettuce-leaf=40@thu,2027-03-01,2027-11-30",
    )
    parser.add_argument(
        "--rhythm",
        action="append",
        default=[],
        metavar="CROP=AMOUNT@RULE",
        help="so much on every day of a rule of RFC 5545, such as "
        "pak-choi=30@FREQ=WEEKLY;INTERVAL=2;BYDAY=FR",
    )
    parser.add_argument(
        "--sow",
        action="append",
        default=[],
        metavar="CROP=PLANTS@RULE",
        help="sow for so many plants on every day of a rule",
    )
    parser.add_argument(
        "--order",
        action="append",
        default=[],
        metavar="CROP=AMOUNT@DATE",
        help="so much by a day, such as basil=2kg@2027-12-24",
    )


def wants_asked(parsed: argparse.Namespace, farm: Farm, ruler: Ruler) -> list[Want]:
    """Return targets, cut to the weeks asked for, weekly amounts, rhythms and orders."""
    from planner.planning.wanted import RhythmOf

    first_on, last_on = _span(parsed, farm, ruler)
    weekly = [_weekly(word, first_on, last_on, ruler) for word in parsed.weekly]
    rhythms = [_rhythm(word, first_on, last_on, of=RhythmOf.HARVEST) for word in parsed.rhythm]
    sown = [_rhythm(word, first_on, last_on, of=RhythmOf.SOWING) for word in parsed.sow]
    wanted: list[Want] = [*weekly, *rhythms, *sown]
    said = {want.crop for want in wanted}
    targets = [want for want in _targets(farm, first_on, last_on) if want.crop not in said]
    return [*targets, *wanted, *(_order(word, ruler) for word in parsed.order)]


def _span(parsed: argparse.Namespace, farm: Farm, ruler: Ruler) -> tuple[date, date]:
    """Return first and last day of the weeks asked for."""
    from_on = parsed.from_on or farm.settings.plan_from
    if not 0 <= ruler.week_of(from_on) < ruler.weeks:
        raise outside_plan(f"--from {parsed.from_on}", ruler)
    if parsed.weeks is None:
        return from_on, ruler.date_of(ruler.days - 1)
    until_on = ruler.date_of(ruler.day_of(from_on) + 7 * parsed.weeks - 1)
    if ruler.week_of(until_on) >= ruler.weeks:
        raise outside_plan(f"--weeks {parsed.weeks}", ruler)
    return from_on, until_on


def _targets(farm: Farm, first_on: date, last_on: date) -> Iterator[Steady]:
    from planner.planning.wanted import Steady

    for target in farm.targets:
        until_on = last_on if target.until_on is None else min(target.until_on, last_on)
        if until_on >= max(target.from_on, first_on):
            yield Steady(
                crop=target.crop,
                amount_per_week=target.amount_per_week,
                unit=target.unit,
                from_on=max(target.from_on, first_on),
                until_on=until_on,
            )


def _weekly(word: str, first_on: date, last_on: date, ruler: Ruler) -> Steady:
    from planner.planning.wanted import Steady

    like = "crop=amount@day or crop=amount@day,from,until, such as lettuce-leaf=40@thu,2027-03-01,2027-11-30"
    crop, many, unit, rest = _parts(word, "--weekly", like)
    day, *span = rest.split(",")
    weekday = weekday_of(day, f"--weekly {word}:")
    try:
        from_on, until_on = [date.fromisoformat(part) for part in span] + [first_on, last_on][len(span) :]
    except ValueError:
        raise _unread("--weekly", word, like) from None
    for on in (from_on, until_on):
        if not 0 <= ruler.day_of(on) < ruler.days:
            raise outside_plan(f"--weekly {word}", ruler)
    if until_on < from_on:
        raise WrongUsageError(f'--weekly "{word}": the last day is {until_on}, before the first, {from_on}.')
    return Steady(
        crop=crop,
        amount_per_week=many,
        unit=unit,
        from_on=max(from_on, first_on),
        until_on=min(until_on, last_on),
        weekday=weekday,
    )


def _rhythm(word: str, first_on: date, last_on: date, *, of: RhythmOf) -> Rhythm:
    from planner.farm.crops import TargetUnit
    from planner.planning.rhythm import rule_days
    from planner.planning.wanted import Rhythm, RhythmOf

    option = "--sow" if of is RhythmOf.SOWING else "--rhythm"
    like = "crop=amount@rule, such as pak-choi=30@FREQ=WEEKLY;BYDAY=FR"
    crop, many, unit, rule = _parts(word, option, like)
    if of is RhythmOf.SOWING and (unit is TargetUnit.KG or many != int(many)):
        raise WrongUsageError(f'--sow "{word}": say a whole number of plants.')
    rule_days(rule, from_on=first_on, until_on=last_on)
    return Rhythm(crop=crop, amount=many, unit=unit, rule=rule, of=of, from_on=first_on, until_on=last_on)


def _order(word: str, ruler: Ruler) -> Order:
    """Return what an --order says."""
    from planner.planning.wanted import Order

    like = "crop=amount@date, such as basil=2kg@2027-12-24"
    crop, many, unit, rest = _parts(word, "--order", like)
    try:
        on = date.fromisoformat(rest)
    except ValueError:
        raise _unread("--order", word, like) from None
    if not 0 <= ruler.day_of(on) < ruler.days:
        raise outside_plan(f"--order {word}", ruler)
    return Order(crop=crop, amount=many, unit=unit, on=on)


def _parts(word: str, option: str, like: str) -> tuple[str, float, TargetUnit, str]:
    """Return crop, amount, unit and what comes after the @."""
    from planner.farm.crops import TargetUnit

    crop, _, rest = word.partition("=")
    amount, _, after = rest.partition("@")
    unit = TargetUnit.KG if amount.lower().endswith(_KG) else TargetUnit.HEADS
    try:
        many = float(amount.lower().removesuffix(_KG))
    except ValueError:
        many = 0.0
    if not 0 < many <= _MOST or not crop or not after:
        raise _unread(option, word, like)
    return crop, many, unit, after


def _unread(option: str, word: str, like: str) -> WrongUsageError:
    return WrongUsageError(f'{option} "{word}" cannot be read; say {like}, {_AMOUNT}.')
