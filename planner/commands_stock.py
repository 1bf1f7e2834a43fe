"""The command `stock`: which fish to stock and when, how to take one harvest, when a new loop's crops begin.

Exit codes: 0 good, 1 the farm has faults or cannot be read, 2 wrong usage.
"""

from __future__ import annotations

import argparse
from collections.abc import Iterator
from datetime import date, timedelta
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import FARM_SUFFIX, TEXT_SUFFIX, Means
from planner.cli_shared import WrongUsageError, check_name, read_day, read_weeks, write_farm
from planner.commands_advice import add_file, loop_named, number_of, print_json
from planner.commands_answers import add_why_option, print_answers

if TYPE_CHECKING:
    from planner.farm.farm import Farm
    from planner.farm.fields import Id
    from planner.farm.fish import FishGroup
    from planner.planning.stocking.need import FeedNeed
    from planner.planning.stocking.options import StockingOption, StockingTable
    from planner.planning.stocking.startup import StartUp
    from planner.planning.stocking.wish import StockingWish

_GOOD: Final = 0
_ROUNDS: Final = 200
_TEN_YEARS: Final = timedelta(weeks=520)
_GROUPS: Final = (1, 2, 4, 6)
_SHARES: Final = (1.0, 0.5, 0.3)


def add_stock(commands: Any) -> None:
    """Add the command to the parsers of the command line."""
    parser = commands.add_parser(
        "stock",
        help="say how many fish groups to stock, and when",
        description="Compares stocking in 1, 2, 4 and 6 groups, harvested whole or in parts: how deep and "
        "how long the feed falls at a harvest, how even it is, how much of the time it lies inside the band "
        "that the beds need. The farm is not changed; --adopt writes it with the best to a new file.",
    )
    add_file(parser)
    parser.add_argument("--loop", metavar="NAME", help="which loop of water (default: the first)")
    parser.add_argument("--species", metavar="KEY", help="fish (default: as stocked last)")
    parser.add_argument("--feed", metavar="KEY", help="their feed (default: as stocked last)")
    parser.add_argument(
        "--fingerling", type=number_of, metavar="G", help="weight when stocked (default: as stocked last)"
    )
    parser.add_argument("--harvest", type=number_of, metavar="G", help="weight from which fish are harvested")
    parser.add_argument("--density", type=number_of, metavar="KG", help="most fish in a m³ of tank")
    parser.add_argument("--tank", nargs="+", default=[], metavar="NAME", help="tanks to stock (default: all)")
    parser.add_argument(
        "--every", type=read_weeks, default=1, metavar="N", help="fingerlings can be had every N weeks"
    )
    parser.add_argument(
        "--on", nargs="+", type=read_day, default=[], metavar="DATE", help="or on these days of every year"
    )
    parser.add_argument("--from", dest="from_on", type=read_day, metavar="DATE", help="first day of stocking")
    parser.add_argument(
        "--groups", nargs="+", type=read_weeks, default=list(_GROUPS), metavar="N", help="numbers of groups"
    )
    parser.add_argument(
        "--shares",
        nargs="+",
        type=number_of,
        default=list(_SHARES),
        metavar="S",
        help="shares taken at a harvest, 1 for whole groups",
    )
    parser.add_argument(
        "--area", type=number_of, metavar="M2", help="leafy area to be fed all year, not what is planted"
    )
    parser.add_argument("--by-demand", action="store_true", help="go by nitrogen taken up, not by area")
    parser.add_argument(
        "--rounds", type=int, default=_ROUNDS, metavar="N", help="how long to look for better"
    )
    parser.add_argument("--seed", type=int, default=1, metavar="N", help="where the search begins")
    parser.add_argument(
        "--harvest-of", metavar="GROUP", help="only compare ways of taking this group's planned harvest"
    )
    parser.add_argument("--start-up", action="store_true", help="say when crops of a new loop may begin")
    parser.add_argument("--json", action="store_true", help="as JSON (docs/advice.md)")
    add_why_option(parser)
    parser.add_argument(
        "--adopt",
        type=Path,
        metavar="OUT",
        help=f"write the farm with the best, or the start-up, to a new {FARM_SUFFIX} or {TEXT_SUFFIX}",
    )
    parser.set_defaults(run=run_stock)


def run_stock(parsed: argparse.Namespace) -> int:
    """Print the table of ways of stocking, or the start-up of a loop."""
    if parsed.adopt is not None:
        check_name(parsed.adopt, FARM_SUFFIX, TEXT_SUFFIX)
    means = Means()
    farm = means.read(parsed.file).farm
    loop = loop_named(farm, parsed.loop)
    if parsed.harvest_of is not None:
        return _harvests(parsed, means, farm)
    return _start_up(parsed, means, farm, loop) if parsed.start_up else _stock(parsed, means, farm, loop)


def _harvests(parsed: argparse.Namespace, means: Means, farm: Farm) -> int:
    from planner.planning.stocking.harvests import harvest_options, whole_harvest_of
    from planner.planning.stocking.plain import FORMAT, harvests_data

    if parsed.adopt is not None:
        raise WrongUsageError("--adopt goes with stocking or --start-up, not with --harvest-of.")
    event = whole_harvest_of(farm, parsed.harvest_of)
    found = harvest_options(farm, means.forecaster, event.id, shares=tuple(parsed.shares))
    if parsed.why is not None:
        from planner.planning.why_stocking import harvest_whys

        whys = harvest_whys(found, event.group, farm, means.forecaster)
        print_answers(whys, parsed.why, means, as_json=parsed.json)
        return _GOOD
    if parsed.json:
        print_json({"format": FORMAT, "farm": farm.settings.name, "harvests": harvests_data(found)})
        return _GOOD
    print(f"harvest of {parsed.harvest_of}, {event.on}; a fall is against the month before")
    for one in found:
        weeks = (
            "not back within the plan" if one.hole.weeks is None else f"back after {one.hole.weeks:.1f} weeks"
        )
        ratio = "" if one.lowest_ratio is None else f", least supply {one.lowest_ratio:.2f} of demand"
        print(
            f"  {one.share:.0%} at a time: feed falls {one.hole.depth_share:.0%}, {weeks}; lowest "
            f"{one.lowest_feed_g_per_day:.0f} g/d in the week from {one.lowest_on}{ratio}; "
            f"tank {one.peak_kg_per_m3:.1f} kg/m³ at most"
        )
    return _GOOD


def _start_up(parsed: argparse.Namespace, means: Means, farm: Farm, loop: Id) -> int:
    from planner.farm.changes import applied
    from planner.planning.stocking.plain import FORMAT, start_up_data
    from planner.planning.stocking.startup import start_up

    found = start_up(farm, means.forecaster, loop)
    if parsed.adopt is not None:
        write_farm(means, means.checked(applied(farm, found.change_set)), parsed.adopt)
    if parsed.why is not None:
        from planner.planning.why_farms import ground_of
        from planner.planning.why_startup import start_whys

        whys = start_whys(found, loop, ground_of(farm, means.forecaster))
        print_answers(whys, parsed.why, means, as_json=parsed.json)
    elif parsed.json:
        print_json({"format": FORMAT, "farm": farm.settings.name, "start_up": start_up_data(found)})
    else:
        print("\n".join(_start_up_lines(found)))
    return _GOOD


def _start_up_lines(found: StartUp) -> Iterator[str]:
    yield f"first fish: {found.first_fish_on or 'none'}"
    for crop, on in sorted(found.first_on_by_crop.items(), key=_by_day):
        yield f"  {crop}: {f'to its bed from {on}' if on else 'not carried by the feed within the plan'}"
    waiting = [one for one in found.batches if one.wait_days]
    for one in waiting:
        yield f"  {one.code} waits {one.wait_days} days: {one.planned_on} to {one.may_on}"


def _by_day(entry: tuple[str, date | None]) -> tuple[bool, str, str]:
    crop, on = entry
    return on is None, on.isoformat() if on else "", crop


def _stock(parsed: argparse.Namespace, means: Means, farm: Farm, loop: Id) -> int:
    from planner.farm.changes import applied
    from planner.planning.stocking.options import Search
    from planner.planning.stocking.plain import FORMAT, stocking_data
    from planner.planning.stocking.propose import stocking_table

    wish, need = _wish(parsed, farm, loop), _need(parsed, means, farm, loop)
    search = Search(rounds=max(parsed.rounds, 0), seed=abs(parsed.seed))
    table = stocking_table(farm, means.forecaster, wish, need=need, search=search)
    if parsed.adopt is not None:
        if table.best is None:
            raise WrongUsageError("no way of stocking is possible, so there is nothing to adopt.")
        write_farm(means, means.checked(applied(farm, table.best.change_set)), parsed.adopt)
    if parsed.why is not None:
        from planner.planning.why_farms import ground_of
        from planner.planning.why_stocking import stocking_whys

        whys = stocking_whys(table, ground_of(farm, means.forecaster))
        print_answers(whys, parsed.why, means, as_json=parsed.json)
        return _GOOD
    if parsed.json:
        print_json({"format": FORMAT, "farm": farm.settings.name, "stocking": stocking_data(table, farm)})
    else:
        print("\n".join(_stock_lines(table, farm)))
    cautions = means.forecaster.catalogue.fish[wish.species].cautions
    for key in () if parsed.json else cautions:
        print(f"! {means.forecaster.catalogue.cautions[key].text}")
    return _GOOD


def _wish(parsed: argparse.Namespace, farm: Farm, loop: Id) -> StockingWish:
    from planner.planning.stocking.wish import StockingWish, dates_every

    tanks = {tank.name: tank.id for tank in farm.tanks if tank.loop == loop}
    strange = [name for name in parsed.tank if name not in tanks]
    if strange:
        raise WrongUsageError(f'no tank of the loop is called "{strange[0]}". Tanks are: {", ".join(tanks)}.')
    groups = [group for group in farm.fish_groups if group.tank in tanks.values()]
    like = max(groups, key=_stocked_on, default=None)
    first_on = parsed.from_on or farm.settings.plan_from
    dates = tuple(sorted(parsed.on)) or dates_every(
        parsed.every, first_on=first_on, until_on=first_on + _TEN_YEARS
    )
    return StockingWish(
        loop=loop,
        species=_said(parsed.species, like and like.species, "--species"),
        feed=_said(parsed.feed, like and like.feed, "--feed"),
        fingerling_g=_said(parsed.fingerling, like and like.mean_weight_g, "--fingerling"),
        dates=tuple(on for on in dates if on >= first_on),
        tanks=tuple(tanks[name] for name in parsed.tank),
        harvest_g=parsed.harvest,
        density_limit_kg_per_m3=parsed.density,
        groups=tuple(parsed.groups),
        shares=tuple(parsed.shares),
    )


def _stocked_on(group: FishGroup) -> date:
    return group.stocked_on


def _said(asked: Any, usual: Any, option: str) -> Any:
    found = usual if asked is None else asked
    if found is None:
        raise WrongUsageError(f"no fish are stocked in this loop yet: say {option}.")
    return found


def _need(parsed: argparse.Namespace, means: Means, farm: Farm, loop: Id) -> FeedNeed | None:
    """Return the feed asked for, None for that of the planted area."""
    from planner.farm.farm import by_id
    from planner.planning.stocking.need import brought_per_feed, need_by_demand, need_by_ratio

    if parsed.area is not None:
        if not parsed.area > 0.0:
            raise WrongUsageError(f"--area is {parsed.area:g}, but must be above 0 m².")
        means.forecaster.catalogue_for(farm)
        weeks = farm.settings.plan_weeks
        leafy, _ = means.forecaster.bands.of_rule(by_id(farm.loops)[loop].area_rule)
        return need_by_ratio(parsed.area, band=leafy, weeks=weeks)
    if not parsed.by_demand:
        return None
    forecast = means.forecaster.preview(farm)
    found = next(one for one in forecast.loops if one.loop == loop)
    try:
        brought = brought_per_feed(found)
    except ValueError as error:
        raise WrongUsageError(f"{error}.") from None
    return need_by_demand(found, forecast.ruler, means.forecaster.bands, brought_g_per_g=brought)


_HEAD: Final = "groups taken  apart  worst fall  longest  variation  in band  fullest kg/m³  feed g/d   score"


def _stock_lines(table: StockingTable, farm: Farm) -> Iterator[str]:
    yield f"judged from {table.judged_from_on} to {table.judged_until_on}; a fall is against the month before"
    yield _HEAD
    for option in table.options:
        yield _option_line(option) + ("   <- best" if option is table.best else "")
    for groups, share in table.impossible:
        yield f"{groups:6d} {share:5.0%}  the tanks have no room for it"
    if table.best is None:
        return
    yield "best, within the plan:"
    names = {tank.id: tank.name for tank in farm.tanks}
    for one in table.best.stocked:
        if one.on < farm.plan_until:
            harvests = ", ".join(take.on.isoformat() for take in one.takes) or "after the plan"
            yield f"  {one.on}: {one.count} fish into {names[one.tank]}, harvest {harvests}"


def _option_line(option: StockingOption) -> str:
    longest = "   not over" if option.longest_weeks is None else f"{option.longest_weeks:6.1f} wk"
    return (
        f"{option.groups:6d} {option.share:5.0%} {option.apart_weeks:4.1f} w {option.deepest_share:11.0%} "
        f"{longest:>9} {option.variation:10.0%} {option.inside_share:8.0%} "
        f"{option.peak_density_kg_per_m3:8.1f} of {option.density_limit_kg_per_m3:<4.0f} "
        f"{option.mean_feed_g_per_day:8.0f} {option.score:8.3f}"
    )
