"""The command that brings a table in: readings or batches, all of it or, when asked, the good rows."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import FARM_SUFFIX, Means
from planner.cli_shared import WrongUsageError, check_name

if TYPE_CHECKING:
    from planner.farm.changes import ChangeSet
    from planner.farm.crops import Batch, Placement
    from planner.farm.farm import Farm
    from planner.store.csv_in.readings import RowFault
    from planner.store.csv_in.sheet import Sheet

GOOD: Final = 0
FAULTY: Final = 1
_DECIMALS: Final = ("point", "comma")
_ORDERS: Final = ("day-first", "month-first")


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
    from planner.store.csv_in.readings import MappingError
    from planner.store.csv_in.sheet import SheetError, read_sheet

    check_name(parsed.file, FARM_SUFFIX)
    try:
        sheet = read_sheet(parsed.csv.read_bytes())
        return _brought_in(parsed, sheet)
    except (SheetError, MappingError) as error:
        raise WrongUsageError(f"{parsed.csv}: {error}") from None


def _brought_in(parsed: argparse.Namespace, sheet: Sheet) -> int:
    from planner.store.store import FarmStore

    means = Means()
    with FarmStore.open(parsed.file) as store:
        session = means.session(store)
        read = _readings if parsed.what == "readings" else _batches
        change_set, count, faults, said = read(parsed, means, session.farm, sheet)
        for fault in faults:
            print(f"{parsed.csv}: {fault.sentence()}", file=sys.stderr)
        if faults and not parsed.only_good:
            print(
                f"{_rows(len({f.line for f in faults}))} cannot be taken; nothing was brought in.",
                file=sys.stderr,
            )
            return FAULTY
        if not parsed.dry_run and count:
            session.act(change_set)
    verb = "would be brought in" if parsed.dry_run else "brought in"
    print(f"{parsed.file}: {count} {parsed.what} {verb}{said}")
    return GOOD


def _rows(number: int) -> str:
    return f"{number} row{'' if number == 1 else 's'}"


def _readings(
    parsed: argparse.Namespace, means: Means, farm: Farm, sheet: Sheet
) -> tuple[ChangeSet, int, tuple[RowFault, ...], str]:
    from planner.actions.water import add_readings
    from planner.store.csv_in.cells import DayOrder, Decimal
    from planner.store.csv_in.readings import ReadingWish, guessed_roles, read_readings
    from planner.store.csv_in.units import unit_table

    loops = {loop.name: loop.id for loop in farm.loops}
    name = parsed.loop or (next(iter(loops)) if len(loops) == 1 else None)
    if name not in loops:
        known = ", ".join(loops)[:300]
        raise WrongUsageError(f"--loop: say which loop the readings are of. There are: {known or 'none'}.")
    if parsed.meter_factor is not None and not 0.3 <= parsed.meter_factor <= 1:
        raise WrongUsageError(
            f"--meter-factor: {parsed.meter_factor:g} must lie within 0.3 to 1 ppm per µS/cm."
        )
    said = pairs_of(parsed.map, option="--map")
    wish = ReadingWish(
        roles=_with_guesses(guessed_roles(sheet.headings), said),
        units=pairs_of(parsed.units, option="--units"),
        loop=loops[name],
        loops=loops,
        meter_factor=parsed.meter_factor,
        decimal=None if parsed.decimal is None else Decimal(parsed.decimal),
        day_order=None if parsed.dates is None else DayOrder(parsed.dates),
    )
    catalogue = means.catalogue
    units = unit_table(lambda path: catalogue.figure(path).value)
    found = read_readings(sheet, wish, units=units, known=farm.readings)
    doubles = f"; {found.known} were there already" if found.known else ""
    return add_readings(found.readings), len(found.readings), found.faults, doubles


def _batches(
    parsed: argparse.Namespace, means: Means, farm: Farm, sheet: Sheet
) -> tuple[ChangeSet, int, tuple[RowFault, ...], str]:
    from planner.actions.changing import addition
    from planner.farm.codes import Codes
    from planner.store.csv_in.batches import BatchWish, guessed_fields, read_batches
    from planner.store.csv_in.cells import DayOrder, Decimal

    catalogue = means.forecaster.catalogue_for(farm)
    codes = Codes(batch.code for batch in farm.batches)
    wish = BatchWish(
        roles=_with_guesses(guessed_fields(sheet.headings), pairs_of(parsed.map, option="--map")),
        crops={word.lower(): key for key, crop in catalogue.crops.items() for word in (crop.name, key)},
        give_code=lambda crop, on: codes.give(catalogue.crops[crop].code, on),
        decimal=None if parsed.decimal is None else Decimal(parsed.decimal),
        day_order=None if parsed.dates is None else DayOrder(parsed.dates),
    )
    found = read_batches(sheet, wish, farm)
    placements, unplaced = _placed(means, farm, found.batches)
    change_set = addition(f"Bring in {len(found.batches)} batches", *found.batches, *placements)
    notes = "".join(f"\nnote: {sentence}" for sentence in unplaced)
    return change_set, len(found.batches), found.faults, notes


def _placed(
    means: Means, farm: Farm, batches: tuple[Batch, ...]
) -> tuple[tuple[Placement, ...], tuple[str, ...]]:
    """Return places for batches in the beds they name, and a sentence for each that found none."""
    from planner.farm.farm import replace_things
    from planner.farm.ids import ManyIds
    from planner.paper.sentences import refusal_sentence
    from planner.planning.many import Rules, place_many

    after = replace_things(farm, "batch", (*farm.batches, *batches))
    forecast = means.forecaster.preview(after)
    found = place_many(batches, after, forecast, rules=Rules(keep_together=True), make_id=ManyIds())
    codes = {batch.id: batch.code for batch in batches}
    return found.placements, tuple(refusal_sentence(one, codes[one.batch]) for one in found.refusals)


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
