"""The command `plan`: a season planned from the targets, how good it is, and what it changes.

Exit codes: 0 good, 1 the farm has faults or cannot be read, 2 wrong usage.
"""

from __future__ import annotations

import argparse
import json
import sys
import time
from collections.abc import Callable, Iterator, Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import FARM_SUFFIX, TEXT_SUFFIX, Means
from planner.commands_answers import add_why_option, print_answers
from planner.commands_wants import add_work_days, work_days

if TYPE_CHECKING:
    from planner.farm.farm import Farm
    from planner.forecast.values import Ruler
    from planner.planning.season_plan.job import PlanJob, PlanProgress
    from planner.planning.season_plan.options import PlanOptions
    from planner.planning.season_plan.plan import SeasonPlan
    from planner.planning.season_plan.proposal import PlanProposal

_GOOD: Final = 0
_WEEKDAYS: Final = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
_SEARCH_SECONDS: Final = 3.0
_EXACT_SECONDS: Final = 30.0
_PERCENT: Final = 100.0
_DIFFERENCES_SHOWN: Final = 20


def add_plan(commands: Any, *, day: Callable[[str], date], weeks: Callable[[str], int]) -> None:
    """Add the command to the parsers of the command line; `day` and `weeks` read their words."""
    parser = commands.add_parser(
        "plan",
        help="plan a season from the targets",
        description="Works out what to sow in which week so that targets are met, little is wasted and "
        "demand keeps to what the fish supply, within beds and nursery; says how near that is to the best "
        "possible. The farm is not changed; --adopt writes it with the plan to a new file. Ctrl-C keeps the "
        "best so far.",
    )
    parser.add_argument("file", type=Path, metavar="FILE", help="a farm file or farm text")
    parser.add_argument(
        "--from", dest="from_on", type=day, metavar="DATE", help="first day of sowing (default: the plan's)"
    )
    parser.add_argument(
        "--weeks", type=weeks, metavar="N", help="weeks that are planned (default: to the plan's end)"
    )
    parser.add_argument(
        "--seconds",
        type=_seconds,
        metavar="S",
        help=f"how long to search (default: {_SEARCH_SECONDS:g}, with --exact {_EXACT_SECONDS:g})",
    )
    parser.add_argument("--exact", action="store_true", help="let the exact solver go on from the search")
    parser.add_argument(
        "--sow-on",
        choices=_WEEKDAYS,
        metavar="DAY",
        help="weekday of sowing, such as mon (default: the week's first)",
    )
    add_work_days(parser)
    parser.add_argument("--lot", type=_count, default=1, metavar="N", help="sow in multiples of N plants")
    parser.add_argument(
        "--labour", type=_seconds, metavar="MIN", help="minutes a week there are to sow, move and pick"
    )
    parser.add_argument("--json", action="store_true", help="as JSON (docs/season-plan.md)")
    add_why_option(parser)
    parser.add_argument(
        "--adopt",
        type=Path,
        metavar="OUT",
        help=f"write the farm with the plan to a new {FARM_SUFFIX} or {TEXT_SUFFIX}",
    )
    parser.set_defaults(run=run_plan)


def _seconds(word: str) -> float:
    try:
        value = float(word)
    except ValueError:
        value = -1.0
    if not 0 <= value < float("inf"):
        raise argparse.ArgumentTypeError(f'"{word}" is not a number, 0 or more')
    return value


def _count(word: str) -> int:
    """Read a whole number from 1 on."""
    if not word.isdigit() or int(word) < 1:
        raise argparse.ArgumentTypeError(f'"{word}" is not a whole number, 1 or more')
    return int(word)


def run_plan(parsed: argparse.Namespace) -> int:
    """Print a plan; write the farm with it where that is asked for."""
    from planner.cli_shared import check_name, span_asked, write_farm
    from planner.farm.changes import applied
    from planner.planning.season_plan.job import PlanJob
    from planner.planning.season_plan.plain import plan_data
    from planner.planning.season_plan.proposal import proposal

    if parsed.adopt is not None:
        check_name(parsed.adopt, FARM_SUFFIX, TEXT_SUFFIX)
    means = Means()
    farm = means.read(parsed.file).farm
    forecast = means.forecaster.preview(farm)
    span_asked(parsed, forecast)
    options = _options(parsed, forecast.ruler)
    plan = _made(PlanJob(farm, means.forecaster, options, clock=time.perf_counter))
    proposed = proposal(plan, farm, means.forecaster)
    if parsed.why is not None:
        _print_whys(plan, farm, means, parsed)
    elif parsed.json:
        json.dump(plan_data(plan, proposed, farm), sys.stdout, indent=2, ensure_ascii=False)
        print()
    else:
        print("\n".join(_lines(plan, proposed, farm, means)))
    if parsed.adopt is not None:
        write_farm(means, applied(farm, proposed.change_set), parsed.adopt)
        print(f"{parsed.adopt}: written", file=sys.stderr)
    return _GOOD


def _print_whys(plan: SeasonPlan, farm: Farm, means: Means, parsed: argparse.Namespace) -> None:
    from planner.planning.why_farms import ground_of
    from planner.planning.why_season import season_whys

    whys = season_whys(plan, ground_of(farm, means.forecaster))
    print_answers(whys, parsed.why, means, as_json=parsed.json)


def _options(parsed: argparse.Namespace, ruler: Ruler) -> PlanOptions:
    from planner.planning.season_plan.options import PlanOptions

    seconds = parsed.seconds
    if seconds is None:
        seconds = _EXACT_SECONDS if parsed.exact else _SEARCH_SECONDS
    search = min(seconds, _SEARCH_SECONDS) if parsed.exact else seconds
    weekday = 0
    if parsed.sow_on is not None:
        weekday = (_WEEKDAYS.index(parsed.sow_on) - ruler.start_on.weekday()) % len(_WEEKDAYS)
    return PlanOptions(
        from_on=parsed.from_on,
        weeks=parsed.weeks,
        sow_weekday=weekday,
        work=work_days(parsed),
        lot_plants=parsed.lot,
        labour_min_per_week=parsed.labour,
        seconds=search,
        exact=parsed.exact,
        exact_seconds=max(seconds - search, 0.0),
    )


def _made(job: PlanJob) -> SeasonPlan:
    """Return the plan of a job; when it is interrupted, the best so far if there is any."""
    shown = _Progress()
    steps = job.steps()
    try:
        for step in steps:
            shown.show(step)
    except KeyboardInterrupt:
        steps.close()  # type: ignore[attr-defined]
        if job.plan is None:
            raise
        print("Stopped; this is the best so far.", file=sys.stderr)
    finally:
        shown.end()
    plan = job.plan
    assert plan is not None
    return plan


class _Progress:
    """One line on standard error that is written over, where that is a terminal."""

    def __init__(self) -> None:
        self._is_terminal = sys.stderr.isatty()
        self._last = ""

    def show(self, step: PlanProgress) -> None:
        """Show a step, unless it looks like the one before."""
        gap = "" if step.gap is None else f", within {step.gap * _PERCENT:.2f} % of the best possible"
        line = f"{step.done * int(_PERCENT) // step.total:3d} % {step.label.value}{gap}"
        if line == self._last:
            return
        if self._is_terminal:
            print(f"\r{line:<78}", end="", file=sys.stderr, flush=True)
        elif not self._last.endswith(step.label.value) and step.label.value not in self._last:
            print(line, file=sys.stderr)
        self._last = line

    def end(self) -> None:
        """Leave the line as it is."""
        if self._is_terminal and self._last:
            print(file=sys.stderr)


_NOTHING: Final = {
    "no targets": "No target asks for anything in these weeks, so there is nothing to plan.",
    "no beds": "There is no bed to grow in, so nothing can be planned.",
    "nothing grows": "Nothing that is wanted can be sown in these weeks and be picked before they end.",
}


def _lines(plan: SeasonPlan, proposed: PlanProposal, farm: Farm, means: Means) -> Iterator[str]:
    crops = means.forecaster.catalogue.crops
    names = [loop.name for loop in farm.loops]
    if plan.status.value in _NOTHING:
        yield _NOTHING[plan.status.value]
    yield from _judged(plan)
    rows = [("week", "sow on", "crop", "loop", "bed", "plants")]
    rows += [
        (
            sowing.week_name,
            sowing.sow_on.isoformat(),
            crops[sowing.crop].name,
            names[plan.model.grounds[sowing.ground].loop],
            sowing.bed_kind.value,
            str(sowing.plants),
        )
        for sowing in plan.sowings
    ]
    yield ""
    yield from _table(rows, right=(5,))
    yield ""
    for loop, element in plan.unsupplied:
        symbol, name = element.capitalize(), names[loop]
        yield f"note: nothing brings {symbol} to {name}, so it is left out of the balance."
    for slow in plan.too_slow:
        kind, weeks = plan.model.grounds[slow.ground].kind.value, len(slow.weeks)
        yield f"note: {crops[slow.crop].name} is too slow in {kind} beds in {weeks} weeks of sowing."
    for refusal in proposed.refusals:
        yield f"note: no room in {refusal.bed}: {refusal.needed} places needed, {refusal.free} free."
    yield from _differences(proposed)


def _judged(plan: SeasonPlan) -> Iterator[str]:
    """Say how good a plan is, as shares of all that is wanted."""
    worth = plan.model.worth
    if not worth:
        return
    wanted = worth / _PERCENT
    imbalance = float(plan.parts.short.sum() + plan.parts.idle.sum())
    yield (
        f"Worth {plan.objective / wanted:.1f} % of all that is wanted; no plan is worth more than "
        f"{plan.bound / wanted:.1f} %. Within {plan.gap * _PERCENT:.2f} % of the best possible."
    )
    yield (
        f"Missed {plan.parts.missed / wanted:.1f} %, wasted {plan.parts.wasted / wanted:.1f} %, "
        f"out of balance {imbalance / wanted:.1f} %. "
        f"The rhythm by hand is worth {plan.by_hand / wanted:.1f} %."
    )


def _differences(proposed: PlanProposal) -> Iterator[str]:
    counts: dict[str, int] = {}
    for each in proposed.differences:
        counts[each.kind.value] = counts.get(each.kind.value, 0) + 1
    said = ", ".join(f"{count} {kind}" for kind, count in counts.items()) or "no batch differs"
    yield f"Against today's plan: {said}, {proposed.unchanged} unchanged."
    for each in proposed.differences[:_DIFFERENCES_SHOWN]:
        before = "" if each.before is None else f"{each.before.plants} plants on {each.before.sow_on}"
        after = "" if each.after is None else f"{each.after.plants} plants on {each.after.sow_on}"
        yield f"  {each.kind.value} {each.code}: {' -> '.join(part for part in (before, after) if part)}"
    more = len(proposed.differences) - _DIFFERENCES_SHOWN
    if more > 0:
        yield f"  and {more} more (all of them with --json)"


def _table(rows: Sequence[Sequence[str]], *, right: tuple[int, ...]) -> Iterator[str]:
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    for row in rows:
        cells = [
            cell.rjust(width) if place in right else cell.ljust(width)
            for place, (cell, width) in enumerate(zip(row, widths, strict=True))
        ]
        yield f"  {'  '.join(cells)}".rstrip()
