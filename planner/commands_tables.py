"""The command that writes the tables of a plan for a spreadsheet."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path
from typing import Any, Final

from planner.bootstrap import FARM_SUFFIX, TEXT_SUFFIX, Means
from planner.cli_shared import WrongUsageError, check_name
from planner.commands_files import write_new

GOOD: Final = 0
ALL: Final = "all"


def add_tables(commands: Any) -> None:
    """Add the command that writes tables."""
    parser = commands.add_parser(
        "tables",
        help="write tables for a spreadsheet",
        description="Writes tables of a farm and its forecast as comma-separated values or as a workbook: "
        "what was entered and what is foreseen. Without --csv, --xlsx and --json it prints one table as CSV. "
        "Never writes over a file.",
    )
    parser.add_argument(
        "file", type=Path, metavar="FILE", help=f"a farm file ({FARM_SUFFIX}) or farm text ({TEXT_SUFFIX})"
    )
    parser.add_argument("--table", default=ALL, metavar="NAME", help="one table, or all (default)")
    parser.add_argument(
        "--csv", type=Path, metavar="FOLDER", help="write each table as NAME.csv into a folder"
    )
    parser.add_argument("--xlsx", type=Path, metavar="OUT", help="write a workbook with a sheet each")
    parser.add_argument("--json", type=Path, metavar="OUT", help="write all of them as one JSON file")
    parser.add_argument("--list", action="store_true", help="only say which tables there are")
    parser.set_defaults(run=_tables)


def _tables(parsed: argparse.Namespace) -> int:
    from planner.paper.sheets_files import csv_bytes, json_bytes, table_csv, workbook_bytes
    from planner.paper.sheets_out import TABLES, TableGround, table_of

    if parsed.list:
        print("\n".join(TABLES))
        return GOOD
    names = TABLES if parsed.table == ALL else (parsed.table,)
    _refuse_nonsense(parsed, names, TABLES)
    means = Means()
    farm = means.read(parsed.file).farm
    ground = TableGround(
        farm=farm,
        forecast=means.forecaster.forecast(farm),
        catalogue=means.forecaster.catalogue_for(farm),
        bands=means.forecaster.bands,
    )
    tables = [table_of(name, ground) for name in names]
    if not _is_said_where(parsed):
        sys.stdout.write(table_csv(tables[0]))
        return GOOD
    files: dict[Path, bytes] = {}
    if parsed.csv is not None:
        files |= {parsed.csv / f"{table.name.replace(' ', '-')}.csv": csv_bytes(table) for table in tables}
    if parsed.xlsx is not None:
        files[parsed.xlsx] = workbook_bytes(tables)
    if parsed.json is not None:
        files[parsed.json] = json_bytes(tables)
    write_new(files)
    for path in files:
        print(path)
    return GOOD


def _refuse_nonsense(parsed: argparse.Namespace, names: tuple[str, ...], known: tuple[str, ...]) -> None:
    if names[0] not in known:
        raise WrongUsageError(f'--table: "{names[0][:40]}" is none of {", ".join(known)}.')
    if parsed.xlsx is not None:
        check_name(parsed.xlsx, ".xlsx")
    if parsed.json is not None:
        check_name(parsed.json, ".json")
    if parsed.csv is not None and not parsed.csv.is_dir():
        raise WrongUsageError(f"--csv: {parsed.csv} is not a folder that is there.")
    if not _is_said_where(parsed) and len(names) > 1:
        said = "say where to: --csv FOLDER, --xlsx OUT or --json OUT, or one table by --table NAME."
        raise WrongUsageError(said)


def _is_said_where(parsed: argparse.Namespace) -> bool:
    return any(where is not None for where in (parsed.csv, parsed.xlsx, parsed.json))
