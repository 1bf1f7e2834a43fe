"""The commands of the command line: what each one takes, and what it does.

Everything here runs without a screen. What is heavy is imported by the command that needs it.
"""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner import __version__
from planner.bootstrap import FARM_SUFFIX, TEXT_SUFFIX, Means, local_today
from planner.cli import COMMANDS
from planner.cli_shared import (
    WrongUsageError,
    add_span,
    check_name,
    counted,
    print_csv,
    read_day,
    read_weeks,
    span_asked,
    told,
    write_farm,
)
from planner.commands_advice import add_advise
from planner.commands_backups import add_backups
from planner.commands_csv import add_import_csv
from planner.commands_entries import add_entries
from planner.commands_exchange import add_labels, add_phone_options, add_trace, write_phone_calendar
from planner.commands_length import add_length
from planner.commands_merge import add_merge_log
from planner.commands_plan import add_plan
from planner.commands_print import add_print
from planner.commands_records import add_records
from planner.commands_server import add_password
from planner.commands_stock import add_stock
from planner.commands_successions import add_orders, add_successions
from planner.commands_tables import add_tables
from planner.commands_uncertainty import add_uncertainty_options, uncertainty_asked
from planner.commands_verify import add_verify
from planner.commands_water import add_water
from planner.commands_week import add_week
from planner.commands_whatif import add_compare, add_expand
from planner.commands_why import add_why

if TYPE_CHECKING:
    from planner.farm.farm import Farm
    from planner.forecast.values import Forecast

GOOD: Final = 0

_DESCRIPTION: Final = """\
Plans small coupled aquaponic loops: what to sow, move and pick each week, in step with the fish feed.

Without a command the window opens, on FILE or on the sample farm. FILE is a farm file (.raftweek); where it
is only read it may be a farm text (.toml) as well."""

_EPILOG: Final = """\
examples:
  raftweek                                            open the window
  raftweek school.raftweek                            open the window on a farm
  raftweek check school.toml                          look for faults
  raftweek forecast school.toml --weeks 12 --json     what will happen, for a script
  raftweek week school.raftweek --date 2027-04-08     what is due in the week of a day
  raftweek calendar school.raftweek --pdf out.pdf --paper A3 --weeks 13
  raftweek import school.toml school.raftweek         make a farm file of a text
  raftweek export school.raftweek school.toml         write a farm file as text
  raftweek successions school.toml --no-work sat sun  what to sow for what is wanted
  raftweek orders school.toml --csv                   what to buy, month by month
  raftweek advise school.toml --week 2027-W18         what to do about a flagged week
  raftweek stock school.toml --fingerling 35          how many fish groups, and when
  raftweek compare school.toml other.toml             one farm beside another
  raftweek expand school.toml --area 2.9              whether it can carry another bed
  raftweek water school.raftweek                      what the water needs today
  raftweek plan school.toml --seconds 10              plan a season from the targets
  raftweek verify --area water                        hold the arithmetic against print
  raftweek why school.toml week 2027-W18 N            how a figure came about

exit codes: 0 good, 1 the farm has faults or cannot be read, 2 wrong usage"""


class _Help(argparse.RawDescriptionHelpFormatter):
    """Leaves the longest command room on the line of its help."""

    def __init__(self, prog: str) -> None:
        super().__init__(prog)
        # Commands stand two columns further in than the formatter reckons with.
        self._action_max_length = len(max(COMMANDS, key=len)) + 2 * self._indent_increment


def parser() -> argparse.ArgumentParser:
    """Return what reads the words of the command line; `run` of what it finds is the command."""
    whole = argparse.ArgumentParser(
        prog="raftweek",
        usage="raftweek [FILE]\n       raftweek COMMAND ...",
        description=_DESCRIPTION,
        epilog=_EPILOG,
        formatter_class=_Help,
    )
    whole.add_argument("--version", action="version", version=f"raftweek {__version__}")
    commands = whole.add_subparsers(dest="command", metavar="COMMAND", prog="raftweek")
    _add_new(commands)
    _add_check(commands)
    _add_forecast(commands)
    add_week(commands)
    _add_calendar(commands)
    _add_import(commands)
    add_import_csv(commands)
    _add_export(commands)
    add_advise(commands)
    add_backups(commands)
    add_compare(commands)
    add_entries(commands)
    add_expand(commands)
    add_labels(commands)
    add_length(commands)
    add_merge_log(commands)
    add_password(commands)
    add_orders(commands, add_span=add_span)
    add_stock(commands)
    add_plan(commands, day=read_day, weeks=read_weeks)
    add_print(commands)
    add_successions(commands, day=read_day, weeks=read_weeks)
    add_tables(commands)
    add_trace(commands)
    add_verify(commands)
    add_records(commands, day=read_day)
    add_water(commands, day=read_day)
    add_why(commands)
    return whole


def _add_file(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "file", type=Path, metavar="FILE", help=f"a farm file ({FARM_SUFFIX}) or farm text ({TEXT_SUFFIX})"
    )


# --- new ---------------------------------------------------------------------------------------------


def _add_new(commands: Any) -> None:
    parser = commands.add_parser(
        "new",
        help="start a farm",
        description="Starts a farm with one site, one loop of water and one tank, ready to be filled in. "
        "Never writes over a file.",
    )
    parser.add_argument(
        "file", type=Path, metavar="FILE", help=f"the new {FARM_SUFFIX} or {TEXT_SUFFIX} file"
    )
    parser.add_argument("--name", default="New farm", help="what the farm is called")
    parser.add_argument(
        "--from", dest="from_on", type=read_day, metavar="DATE", help="first day of the plan (default: today)"
    )
    parser.set_defaults(run=_new)


def _new(parsed: argparse.Namespace) -> int:
    from planner.planning.starter import starter_farm

    check_name(parsed.file, FARM_SUFFIX, TEXT_SUFFIX)
    means = Means()
    farm = means.checked(starter_farm(name=parsed.name, plan_from=parsed.from_on or local_today()))
    write_farm(means, farm, parsed.file)
    print(f"{parsed.file}: {farm.settings.name}, planned from {farm.settings.plan_from.isoformat()}")
    return GOOD


# --- check -------------------------------------------------------------------------------------------


def _add_check(commands: Any) -> None:
    parser = commands.add_parser(
        "check",
        help="look for faults",
        description="Reads a farm and lists every fault with its place, value and limit, on stderr; exit "
        "code 1. A farm without faults is summed up in a line, with notes on the first batches "
        "that found no place and how many more there are.",
    )
    _add_file(parser)
    parser.set_defaults(run=_check)


def _check(parsed: argparse.Namespace) -> int:

    means = Means()
    found = means.read(parsed.file)
    farm = found.farm
    print(
        f"{told(parsed.file)}: no faults. {counted(len(farm.beds), 'bed', 'beds')}, "
        f"{counted(len(farm.batches), 'batch', 'batches')}, "
        f"{counted(len(farm.fish_groups), 'fish group', 'fish groups')}, "
        f"{counted(farm.settings.plan_weeks, 'week', 'weeks')} from {farm.settings.plan_from.isoformat()}."
    )
    from planner.paper.sentences import refusals_lines

    for line in refusals_lines(found.refusals, {batch.id: batch.code for batch in farm.batches}):
        print(f"note: {line}")
    return GOOD


# --- forecast ----------------------------------------------------------------------------------------


def _add_forecast(commands: Any) -> None:
    parser = commands.add_parser(
        "forecast",
        help="say what will happen week by week",
        description="Forecasts by week, loop by loop: feed, fish, planted area, the feed-rate ratio "
        "beside its published band, supply against demand of six elements, and harvest.",
    )
    _add_file(parser)
    add_span(parser)
    form = parser.add_mutually_exclusive_group()
    form.add_argument("--json", action="store_true", help="as JSON (docs/forecast-json.md)")
    form.add_argument("--csv", action="store_true", help="as comma-separated values, a row a loop and week")
    add_uncertainty_options(parser)
    parser.set_defaults(run=_forecast)


def _forecast(parsed: argparse.Namespace) -> int:
    from planner.forecast.plain import forecast_data, forecast_rows

    means = Means()
    farm = means.read(parsed.file).farm
    forecast = means.forecaster.forecast(farm)
    span = span_asked(parsed, forecast)
    data = forecast_data(farm, forecast, means.forecaster.bands, span=span)
    data |= uncertainty_asked(parsed, means, farm, forecast=forecast, span=span)
    if parsed.json:
        json.dump(data, sys.stdout, indent=2, ensure_ascii=False)
        print()
    elif parsed.csv:
        print_csv(list(forecast_rows(data)))
    else:
        from planner.paper.sentences import forecast_lines

        print("\n".join(forecast_lines(data)))
    return GOOD


# --- calendar ----------------------------------------------------------------------------------------


def _add_calendar(commands: Any) -> None:
    parser = commands.add_parser(
        "calendar",
        help="print the seeding calendar, or make one for the phone",
        description="Writes the seeding calendar as a PDF: what to sow, move and pick week by week, to "
        "hang up by the bench; or what is due as a calendar for the phone, from this week on. "
        "Written to the same name again, the phone's calendar updates instead of doubling.",
    )
    _add_file(parser)
    parser.add_argument("--pdf", type=Path, metavar="OUT", help="the PDF to write")
    add_phone_options(parser)
    add_span(parser)
    parser.add_argument(
        "--paper",
        default="A4",
        choices=("A4", "Letter", "A3", "Tabloid"),
        help="default: A4, for the bench; A3 is for the wall",
    )
    parser.set_defaults(run=_calendar)


def _calendar(parsed: argparse.Namespace) -> int:
    if parsed.pdf is None and parsed.ics is None:
        raise WrongUsageError("say what to write: --pdf OUT for paper, --ics OUT for the phone.")
    means = Means()
    farm = means.read(parsed.file).farm
    forecast = means.forecaster.preview(farm)
    if parsed.pdf is not None:
        _print_calendar(parsed, means, farm, forecast)
    if parsed.ics is not None:
        write_phone_calendar(parsed, means, farm, forecast)
    return GOOD


def _print_calendar(parsed: argparse.Namespace, means: Means, farm: Farm, forecast: Forecast) -> None:
    from planner.bootstrap_paper import calendar_report, write_report
    from planner.paper.style import paper_named

    span = span_asked(parsed, forecast)
    paper = paper_named(parsed.paper, landscape=True)
    report = calendar_report(
        farm,
        forecast,
        means.forecaster.catalogue,
        from_on=forecast.ruler.week_start(span.first),
        weeks=span.last - span.first,
        paper=paper,
    )
    pages = write_report(report, parsed.pdf, paper)
    print(f"{parsed.pdf}: {pages} page{'' if pages == 1 else 's'}")


# --- import and export -------------------------------------------------------------------------------


def _add_import(commands: Any) -> None:
    parser = commands.add_parser(
        "import",
        help="make a farm file of a text",
        description="Makes a farm file of a farm text. Batches that only name a bed are given places. Never "
        "writes over a file.",
    )
    parser.add_argument("text", type=Path, metavar="TEXT", help=f"a farm text ({TEXT_SUFFIX})")
    parser.add_argument("file", type=Path, metavar="FILE", help=f"the farm file to make ({FARM_SUFFIX})")
    parser.set_defaults(run=_import)


def _import(parsed: argparse.Namespace) -> int:
    check_name(parsed.text, TEXT_SUFFIX)
    check_name(parsed.file, FARM_SUFFIX)
    means = Means()
    found = means.read(parsed.text)
    write_farm(means, found.farm, parsed.file)
    batches = counted(len(found.farm.batches), "batch", "batches")
    print(f"{told(parsed.file)}: {found.farm.settings.name}, {batches}")
    return GOOD


def _add_export(commands: Any) -> None:
    parser = commands.add_parser(
        "export",
        help="write a farm as text",
        description="Writes a farm as a farm text, to read, mail or compare; import makes a farm "
        "file of it again. Never writes over a file.",
    )
    _add_file(parser)
    parser.add_argument("text", type=Path, metavar="TEXT", help=f"the text to write ({TEXT_SUFFIX})")
    parser.set_defaults(run=_export)


def _export(parsed: argparse.Namespace) -> int:
    check_name(parsed.text, TEXT_SUFFIX)
    means = Means()
    write_farm(means, means.read(parsed.file).farm, parsed.text)
    print(f"{parsed.text}: written")
    return GOOD
