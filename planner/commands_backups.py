"""The command `backups`: lists the dated backups of a farm file, or puts one back.

Exit codes: 0 good, 1 it cannot be put back, 2 wrong usage.
"""

from __future__ import annotations

import argparse
import json
from pathlib import Path
from typing import Any, Final

from planner.bootstrap import FARM_SUFFIX

_GOOD: Final = 0


def add_backups(commands: Any) -> None:
    """Add the command to the parsers of the command line."""
    parser = commands.add_parser(
        "backups",
        help="list the backups of a farm, or put one back",
        description="Lists the dated backups beside a farm file, the latest first. With --restore one of "
        "them takes the place of the farm, which becomes a backup itself first; no program may have it open.",
    )
    parser.add_argument("file", type=Path, metavar="FILE", help=f"a farm file ({FARM_SUFFIX})")
    parser.add_argument("--restore", type=int, metavar="N", help="put back the N-th of the list, from 1")
    parser.add_argument("--json", action="store_true", help="as JSON")
    parser.set_defaults(run=run_backups)


def run_backups(parsed: argparse.Namespace) -> int:
    """List, or put one back."""
    from planner.bootstrap_backups import backup_lines, put_back
    from planner.cli_shared import WrongUsageError, told
    from planner.store.place import server_url

    if server_url(parsed.file) is not None:
        raise WrongUsageError(
            f"{told(parsed.file)} is on a database server; its backups are made there, "
            "by whoever looks after it."
        )
    lines = backup_lines(parsed.file)
    if parsed.restore is not None:
        if not 1 <= parsed.restore <= len(lines):
            raise WrongUsageError(f"--restore is {parsed.restore}, but must be 1 to {len(lines)}.")
        chosen = lines[parsed.restore - 1]
        put_back(chosen.path, parsed.file)
        print(f"{parsed.file} is as it was on {chosen.at.isoformat(' ', 'minutes')}.")
        return _GOOD
    if parsed.json:
        rows = [{"file": str(each.path), "at": each.at.isoformat(), "bytes": each.size} for each in lines]
        print(json.dumps({"backups": rows}, indent=2))
        return _GOOD
    for number, each in enumerate(lines, 1):
        print(f"{number:>3}  {each.at.isoformat(' ', 'minutes')}  {each.path.name}")
    if not lines:
        print(f"{parsed.file} has no backups yet; the window makes one when it opens or closes a farm.")
    return _GOOD
