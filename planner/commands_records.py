"""The command `records`: the log of a farm, planned against actual, what was learned, what is late.

Exit codes: 0 good, 1 the farm has faults or cannot be read, 2 wrong usage.
"""

from __future__ import annotations

import argparse
import dataclasses
import json
import sys
from collections.abc import Callable
from datetime import date
from enum import Enum
from pathlib import Path
from typing import Any, Final

from planner.bootstrap import Means, local_today
from planner.planning.dating import Dater
from planner.planning.learning import learned, outcomes
from planner.planning.late import carried_over

FORMAT: Final = "raftweek.records/1"


def add_records(commands: Any, *, day: Callable[[str], date]) -> None:
    """Add the command to the parsers of the command line; `day` reads a date."""
    parser = commands.add_parser(
        "records",
        help="say what really happened",
        description="Lists the log with its corrections, planned against actual days by batch and stage, "
        "what was learned from them, and sowings that are late with the weeks that fall short.",
    )
    parser.add_argument("file", type=Path, metavar="FILE", help="a farm file or a farm text")
    parser.add_argument("--date", dest="on", type=day, metavar="DATE", help="the day (default: today)")
    parser.add_argument("--json", action="store_true", help="as JSON")
    parser.set_defaults(run=run_records)


def run_records(parsed: argparse.Namespace) -> int:
    """Print all that the log leads to."""
    data = _data(parsed.file, parsed.on or local_today())
    if parsed.json:
        json.dump(data, sys.stdout, ensure_ascii=False, indent=2)
        sys.stdout.write("\n")
    else:
        sys.stdout.writelines(f"{line}\n" for line in _lines(data))
    return 0


def _data(path: Path, today: date) -> dict[str, Any]:
    means = Means()
    farm = means.read(path).farm
    found = outcomes(farm, Dater(means.forecaster, farm).lengths, today)
    catalogue = means.forecaster.catalogue_for(farm)
    codes = {batch.id: batch.code for batch in farm.batches}
    late = carried_over(farm, means.forecaster, today)
    return {
        "format": FORMAT,
        "date": today.isoformat(),
        "entries": [_plain(entry) for entry in farm.log_entries],
        "outcomes": [_plain(one) | {"batch": codes[one.batch]} for one in found],
        "learned": [_plain(one) for one in learned(farm, found, catalogue)],
        "late": [_plain(one) | {"batch": codes[one.batch]} for one in late],
    }


def _plain(value: Any) -> Any:
    """Return a value as JSON can hold it."""
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, date):
        return value.isoformat()
    if isinstance(value, tuple):
        return [_plain(one) for one in value]
    if dataclasses.is_dataclass(value):
        return {field.name: _plain(getattr(value, field.name)) for field in dataclasses.fields(value)}
    return value


def _lines(data: dict[str, Any]) -> list[str]:
    lines = [
        f"{one['on']}  {one['what']}  {one['amount'] or ''} {one['unit']}  {one['code']}"
        for one in data["entries"]
    ]
    for one in data["outcomes"]:
        actual = f"{one['so_far_days']} d so far" if one["actual_days"] is None else f"{one['actual_days']} d"
        lines.append(f"{one['batch']}  {one['stage']}: planned {one['planned_days']} d, actual {actual}")
    for one in data["learned"]:
        found = one["estimate"]
        said = f"book {found['book']:.4g}, learned {found['value']:.4g} (n {found['n']})"
        lines.append(f"{one['crop']} {one['variety']} {one['field']}: {said}")
    lines.extend(f"{one['batch']}: to be sown {one['late_days']} days ago" for one in data["late"])
    return lines or ["Nothing has been logged."]
