"""The commands `successions` and `orders`: what to sow for what is wanted, and what to buy for the plan.

Exit codes: 0 good, 1 the farm has faults or cannot be read, 2 wrong usage.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Callable, Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import FARM_SUFFIX, TEXT_SUFFIX, Means

if TYPE_CHECKING:
    from planner.catalogue.catalogue import Catalogue
    from planner.farm.farm import Farm
    from planner.forecast.values import Ruler
    from planner.planning.wanted import Order, Want

_GOOD: Final = 0
_KG: Final = "kg"
_LETTERS: Final = 3


def add_successions(commands: Any, *, day: Callable[[str], date], weeks: Callable[[str], int]) -> None:
    """Add the command to the parsers of the command line; `day` and `weeks` read their words."""
    parser = commands.add_parser(
        "successions",
        help="say what to sow for what is wanted",
        description="Proposes sowings for the farm's targets and for orders, counted back from the weeks of "
        "harvest: when, how many seeds, where. Locked batches and what is sown before --from stay. The farm "
        "is not changed; --adopt writes it with the proposal to a new file.",
    )
    parser.add_argument("file", type=Path, metavar="FILE", help="a farm file or farm text")
    parser.add_argument(
        "--from", dest="from_on", type=day, metavar="DATE", help="first day of sowing (default: the plan's)"
    )
    parser.add_argument(
        "--weeks",
        type=weeks,
        metavar="N",
        help="weeks from then that are planned (default: to the plan's end)",
    )
    parser.add_argument(
        "--order",
        action="append",
        default=[],
        metavar="CROP=AMOUNT@DATE",
        help="so much by a day, such as basil=2kg@2027-12-24",
    )
    parser.add_argument(
        "--no-work",
        nargs="+",
        default=[],
        metavar="DAY",
        help="weekdays without sowing and moving, such as sat",
    )
    parser.add_argument(
        "--holiday", nargs="+", type=day, default=[], metavar="DATE", help="days without work"
    )
    parser.add_argument("--json", action="store_true", help="as JSON (docs/planning.md)")
    parser.add_argument(
        "--adopt",
        type=Path,
        metavar="OUT",
        help=f"write the farm with it to a new {FARM_SUFFIX} or {TEXT_SUFFIX}",
    )
    parser.set_defaults(run=run_successions)


def run_successions(parsed: argparse.Namespace) -> int:
    """Print a proposal; write the farm with it where that is asked for."""
    from planner.cli_shared import WrongUsageError, check_name, write_farm
    from planner.paper.plan_sentences import proposal_lines
    from planner.planning.plain import proposal_data
    from planner.planning.rhythm import WorkDays
    from planner.planning.succession_wish import SuccessionWish
    from planner.planning.successions import propose

    if parsed.adopt is not None:
        check_name(parsed.adopt, FARM_SUFFIX, TEXT_SUFFIX)
    work = WorkDays(
        closed_weekdays=frozenset(_weekday(word) for word in parsed.no_work),
        closed_on=frozenset(parsed.holiday),
    )
    means = Means()
    farm = means.read(parsed.file).farm
    forecast = means.forecaster.preview(farm)
    wants = _wants(parsed, farm, forecast.ruler)
    if not wants:
        raise WrongUsageError(
            f"{parsed.file} has no targets and no --order was given, so there is nothing to plan for."
        )
    wish = SuccessionWish(from_on=parsed.from_on, work=work)
    proposal = propose(farm, means.forecaster, wants, wish=wish)
    data = proposal_data(farm, proposal, forecast.ruler)
    if parsed.adopt is not None:
        from planner.actions.plan import adopt
        from planner.farm.changes import applied

        write_farm(means, means.checked(applied(farm, adopt(farm, proposal))), parsed.adopt)
    if parsed.json:
        _print_json(data)
    else:
        print("\n".join(proposal_lines(data, crop_names=_crop_names(means.forecaster.catalogue))))
        if parsed.adopt is not None:
            print(f"{parsed.adopt}: written")
    return _GOOD


def _print_json(data: dict[str, Any]) -> None:
    json.dump(data, sys.stdout, indent=2, ensure_ascii=False)
    print()


def _crop_names(catalogue: Catalogue) -> dict[str, str]:
    return {key: crop.name for key, crop in catalogue.crops.items()}


def _weekday(word: str) -> int:
    from planner.cli_shared import WrongUsageError
    from planner.planning.rhythm import WEEKDAYS

    for number, name in enumerate(WEEKDAYS):
        if len(word) >= _LETTERS and name.startswith(word.lower()):
            return number
    raise WrongUsageError(f'--no-work "{word}" is no day of the week; say {", ".join(WEEKDAYS)}.')


def _wants(parsed: argparse.Namespace, farm: Farm, ruler: Ruler) -> Sequence[Want]:
    """Return targets and orders, cut to the weeks asked for."""
    import dataclasses
    from datetime import timedelta

    from planner.cli_shared import outside_plan
    from planner.planning.wanted import Steady, wants_of

    from_on = parsed.from_on or farm.settings.plan_from
    if not 0 <= ruler.week_of(from_on) < ruler.weeks:
        raise outside_plan(f"--from {parsed.from_on}", ruler)
    until_on = None
    if parsed.weeks is not None:
        until_on = from_on + timedelta(weeks=parsed.weeks, days=-1)
        if ruler.week_of(until_on) >= ruler.weeks:
            raise outside_plan(f"--weeks {parsed.weeks}", ruler)
    wants: list[Want] = []
    for want in wants_of(farm.targets):
        assert isinstance(want, Steady)
        last = min((on for on in (want.until_on, until_on) if on is not None), default=None)
        first = max(want.from_on, from_on)
        if last is None or last >= first:
            wants.append(dataclasses.replace(want, from_on=first, until_on=last))
    return [*wants, *(_order(word, ruler) for word in parsed.order)]


def _order(word: str, ruler: Ruler) -> Order:
    """Return what an --order says."""
    from planner.cli_shared import WrongUsageError, outside_plan
    from planner.farm.crops import TargetUnit
    from planner.planning.wanted import Order

    crop, _, rest = word.partition("=")
    amount, _, day = rest.partition("@")
    unit = TargetUnit.KG if amount.lower().endswith(_KG) else TargetUnit.HEADS
    try:
        many = float(amount.lower().removesuffix(_KG))
        on = date.fromisoformat(day)
    except ValueError:
        many, on = 0.0, date.min
    if not 0 < many <= _MOST or not crop or on == date.min:
        raise WrongUsageError(
            f'--order "{word}" cannot be read; say crop=amount@date, such as basil=2kg@2027-12-24, with an '
            f"amount above 0 and at most {_MOST:,.0f}."
        )
    if not 0 <= ruler.day_of(on) < ruler.days:
        raise outside_plan(f"--order {word}", ruler)
    return Order(crop=crop, amount=many, unit=unit, on=on)


_MOST: Final = 1_000_000.0


def add_orders(commands: Any, *, add_span: Callable[[argparse.ArgumentParser], None]) -> None:
    """Add the command to the parsers of the command line; `add_span` adds the options for weeks."""
    parser = commands.add_parser(
        "orders",
        help="list what to buy month by month",
        description="Lists by month what the plan uses: seeds by crop and lot, plugs and net pots, feed by "
        "pellet size, base, iron and salts.",
    )
    parser.add_argument("file", type=Path, metavar="FILE", help="a farm file or farm text")
    add_span(parser)
    form = parser.add_mutually_exclusive_group()
    form.add_argument("--json", action="store_true", help="as JSON (docs/planning.md)")
    form.add_argument("--csv", action="store_true", help="as comma-separated values, a row a thing and month")
    parser.set_defaults(run=run_orders)


def run_orders(parsed: argparse.Namespace) -> int:
    """Print the order list."""
    from planner.cli_shared import print_csv, span_asked
    from planner.farm.farm import DAYS_PER_WEEK
    from planner.paper.plan_sentences import order_lines
    from planner.planning.orders import order_list
    from planner.planning.plain import order_rows, orders_data

    means = Means()
    farm = means.read(parsed.file).farm
    forecast = means.forecaster.preview(farm)
    span = span_asked(parsed, forecast)
    lines = order_list(
        farm,
        forecast,
        means.forecaster.catalogue,
        first_day=span.first * DAYS_PER_WEEK,
        last_day=span.last * DAYS_PER_WEEK,
    )
    if parsed.json:
        _print_json(orders_data(farm, lines))
    elif parsed.csv:
        print_csv(list(order_rows(lines)))
    else:
        print("\n".join(order_lines(lines)))
    return _GOOD
