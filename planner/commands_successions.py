"""The commands `successions` and `orders`: what to sow for what is wanted, and what to buy for the plan.

Exit codes: 0 good, 1 the farm has faults or cannot be read, 2 wrong usage.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Callable
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import FARM_SUFFIX, TEXT_SUFFIX, Means
from planner.commands_answers import add_why_option, print_answers
from planner.commands_wants import add_wants, add_work_days, wants_asked, work_days

if TYPE_CHECKING:
    from planner.catalogue.catalogue import Catalogue

_GOOD: Final = 0
_SPREADS: Final = ("together", "fewest", "never")


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
    add_wants(parser)
    add_work_days(parser)
    parser.add_argument(
        "--spread",
        choices=_SPREADS,
        default=_SPREADS[0],
        metavar="HOW",
        help="how a sowing may lie on rafts: together (another raft rather than several gaps), "
        "fewest (as few rafts in use as can be), or never (on no more rafts than it needs)",
    )
    parser.add_argument("--json", action="store_true", help="as JSON (docs/planning.md)")
    add_why_option(parser)
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
    from planner.planning.many import Rules
    from planner.planning.plain import proposal_data
    from planner.planning.succession_wish import SuccessionWish
    from planner.planning.successions import propose

    if parsed.adopt is not None:
        check_name(parsed.adopt, FARM_SUFFIX, TEXT_SUFFIX)
    work = work_days(parsed)
    means = Means()
    farm = means.read(parsed.file).farm
    forecast = means.forecaster.preview(farm)
    wants = wants_asked(parsed, farm, forecast.ruler)
    if not wants:
        raise WrongUsageError(
            f"{parsed.file} has no targets for these weeks and nothing was asked for with --weekly, "
            "--rhythm, --sow or --order, so there is nothing to plan for."
        )
    rules = Rules(split_allowed=parsed.spread != "never", keep_together=parsed.spread == "together")
    wish = SuccessionWish(from_on=parsed.from_on, work=work, rules=rules)
    proposal = propose(farm, means.forecaster, wants, wish=wish)
    data = proposal_data(farm, proposal, forecast.ruler)
    if parsed.adopt is not None:
        from planner.actions.plan import adopt
        from planner.farm.changes import applied

        write_farm(means, means.checked(applied(farm, adopt(farm, proposal))), parsed.adopt)
    if parsed.why is not None:
        from planner.planning.why_successions import succession_whys

        whys = succession_whys(farm, means.forecaster, wants, proposal)
        print_answers(whys, parsed.why, means, as_json=parsed.json)
    elif parsed.json:
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
    add_why_option(parser)
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
    if parsed.why is not None:
        from planner.planning.why_orders import order_whys

        days = {"first_day": span.first * DAYS_PER_WEEK, "last_day": span.last * DAYS_PER_WEEK}
        whys = order_whys(farm, forecast, means.forecaster, lines, **days)
        print_answers(whys, parsed.why, means, as_json=parsed.json)
    elif parsed.json:
        _print_json(orders_data(farm, lines))
    elif parsed.csv:
        print_csv(list(order_rows(lines)))
    else:
        print("\n".join(order_lines(lines)))
    return _GOOD
