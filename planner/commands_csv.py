"""The command that brings a table in: readings or batches, all of it or, when asked, the good rows."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import FARM_SUFFIX, Means
from planner.cli_shared import WrongUsageError, check_name, counted, told

if TYPE_CHECKING:
    from planner.bootstrap_csv import TableIn
    from planner.desk.csv_in.values import TableWish

GOOD: Final = 0
FAULTY: Final = 1
_DECIMALS: Final = ("point", "comma")
_ORDERS: Final = ("day-first", "month-first")
_ONE: Final = {"readings": "reading", "batches": "batch"}


def add_import_csv(commands: Any) -> None:
    """Add the command that brings a table in."""
    parser = commands.add_parser(
        "import-csv",
        help="bring readings or batches in from a table",
        description="Brings a table (CSV) of readings or batches into a farm file, as one step that can "
        "be undone. Rows that cannot be taken are listed with line and reason, and then nothing comes in "
        "unless --only-good is said. Readings the farm has already are passed over.",
    )
    parser.add_argument("what", choices=("readings", "batches"), help="what the rows are")
    parser.add_argument("csv", type=Path, metavar="CSV", help="the table")
    parser.add_argument("file", type=Path, metavar="FILE", help=f"the farm file ({FARM_SUFFIX})")
    parser.add_argument(
        "--map", default="", metavar="HEADING=WHAT,...", help="what columns are, where not clear"
    )
    parser.add_argument("--units", default="", metavar="HEADING=UNIT,...", help='such as "Temp=°F,EC=µS/cm"')
    parser.add_argument("--loop", metavar="NAME", help="loop the readings are of, when the farm has several")
    parser.add_argument(
        "--meter-factor", type=float, metavar="F", help="ppm per µS/cm of a ppm meter, 0.3 to 1"
    )
    parser.add_argument("--decimal", choices=_DECIMALS, help="mark before a fraction, where not clear")
    parser.add_argument("--dates", choices=_ORDERS, help="what comes first in 03/04/2027")
    parser.add_argument("--only-good", action="store_true", help="bring the good rows in, leave the others")
    parser.add_argument("--dry-run", action="store_true", help="only look; change nothing")
    parser.set_defaults(run=_import_csv)


def _import_csv(parsed: argparse.Namespace) -> int:
    from planner.farm.checks import limit_text
    from planner.farm.fields import specs_of
    from planner.farm.water import Reading
    from planner.store.csv_in.sheet import SheetError

    check_name(parsed.file, FARM_SUFFIX)
    factor, spec = parsed.meter_factor, specs_of(Reading)["meter_factor"]
    if factor is not None and not spec.low <= factor <= spec.high:
        raise WrongUsageError(f"--meter-factor: {factor:g} must lie within {limit_text(spec)}.")
    try:
        return _brought_in(parsed)
    except SheetError as error:
        raise WrongUsageError(f"{parsed.csv}: {error}") from None


def _brought_in(parsed: argparse.Namespace) -> int:
    from planner.bootstrap_csv import TableIn
    from planner.store.store import FarmStore

    means = Means()
    with FarmStore.open(parsed.file) as store:
        session = means.session(store)
        table = TableIn.read(means, lambda: session.farm, parsed.csv)
        found = table.look(_wish(parsed, table))
        if found.trouble:
            raise WrongUsageError(f"{parsed.csv}: {found.trouble}")
        for line, column, _, reason in found.faults:
            where = f"line {line}, {column}" if column else f"line {line}"
            print(f"{parsed.csv}: {where}: {reason}", file=sys.stderr)
        if found.faults and not parsed.only_good:
            rows = counted(len({line for line, *_ in found.faults}), "row", "rows")
            print(f"{rows} cannot be taken; nothing was brought in.", file=sys.stderr)
            return FAULTY
        if found.change_set is not None and found.count and not parsed.dry_run:
            session.act(found.change_set)
    verb = "would be brought in" if parsed.dry_run else "brought in"
    known = f"; {counted(found.known, 'was', 'were')} there already" if found.known else ""
    print(f"{told(parsed.file)}: {counted(found.count, _ONE[parsed.what], parsed.what)} {verb}{known}")
    for note in found.notes:
        print(f"note: {note}")
    return GOOD


def _wish(parsed: argparse.Namespace, table: TableIn) -> TableWish:
    from planner.desk.csv_in.values import TableWish

    return TableWish(
        what=parsed.what,
        roles=_with_guesses(table.guessed(parsed.what), pairs_of(parsed.map, option="--map")),
        units=pairs_of(parsed.units, option="--units"),
        loop=parsed.loop or "",
        meter_factor=parsed.meter_factor,
        decimal=parsed.decimal or "",
        day_order=parsed.dates or "",
    )


def _with_guesses(guessed: Mapping[str, str], said: Mapping[str, str]) -> dict[str, str]:
    """Return what columns are: as said, else as guessed, but nothing guessed that was said of another."""
    kept = {heading: role for heading, role in guessed.items() if role not in said.values()}
    return kept | dict(said)


def pairs_of(text: str, *, option: str) -> dict[str, str]:
    """Return heading -> word of a text such as "Temp=water_c,pH=ph".

    >>> pairs_of("Temp=water_c, pH = ph", option="--map")
    {'Temp': 'water_c', 'pH': 'ph'}
    """
    found: dict[str, str] = {}
    for part in text.split(",") if text.strip() else ():
        heading, mark, word = part.rpartition("=")
        if not mark or not heading.strip() or not word.strip():
            raise WrongUsageError(f'{option}: "{part[:60]}" is not written as HEADING=WORD.')
        found[heading.strip()] = word.strip()
    return found
