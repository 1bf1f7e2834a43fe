"""The command `entries`: writes the own entries of a farm's catalogue as text, or takes some in.

Exit codes: 0 good, 1 there are faults or a file cannot be read, 2 wrong usage.
"""

from __future__ import annotations

import argparse
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import FARM_SUFFIX, TEXT_SUFFIX, Means
from planner.cli_shared import WrongUsageError, check_name, counted, write_farm

if TYPE_CHECKING:
    from planner.farm.farm import Farm

_GOOD: Final = 0


def add_entries(commands: Any) -> None:
    """Add the command to the parsers of the command line."""
    parser = commands.add_parser(
        "entries",
        help="write own catalogue entries as text, or take some in",
        description="Prints a farm's own crops, fish, feeds and supplements as text. With --take they are "
        "read from such a text and laid into the farm, which is written to OUT. FILE stays as it is.",
    )
    parser.add_argument(
        "file", type=Path, metavar="FILE", help=f"a farm file ({FARM_SUFFIX}) or farm text ({TEXT_SUFFIX})"
    )
    parser.add_argument("--write", type=Path, metavar="OUT", help="write the text to a new file")
    parser.add_argument("--take", type=Path, metavar="TEXT", help="take in the entries of a text")
    parser.add_argument("--adopt", type=Path, metavar="OUT", help="with --take: the farm with them in it")
    parser.set_defaults(run=run_entries)


def run_entries(parsed: argparse.Namespace) -> int:
    """Write entries, or take some in."""
    if (parsed.take is None) != (parsed.adopt is None):
        raise WrongUsageError("--take TEXT and --adopt OUT belong together.")
    if parsed.take is not None and parsed.write is not None:
        raise WrongUsageError("--write and --take are two different things; give one of them.")
    means = Means()
    farm = means.read(parsed.file).farm
    if parsed.take is not None:
        return _take(means, farm, parsed)
    return _write(farm, parsed.write)


def _write(farm: Farm, path: Path | None) -> int:
    from planner.store.text import write_own_entries

    text = write_own_entries(farm.own_entries)
    if path is None:
        sys.stdout.write(text)
        return _GOOD
    check_name(path, TEXT_SUFFIX)
    if path.exists():
        raise WrongUsageError(f"{path} is there already. Choose another name, or move it away first.")
    path.write_text(text, encoding="utf-8")
    print(f"{path}: {counted(len(farm.own_entries), 'entry', 'entries')}")
    return _GOOD


def _take(means: Means, farm: Farm, parsed: argparse.Namespace) -> int:
    from planner.actions.own_entries import taken_in
    from planner.farm.changes import applied
    from planner.store.text import read_own_entries_file

    change_set = taken_in(farm, read_own_entries_file(parsed.take), title="entries")
    after = means.checked(applied(farm, change_set))
    write_farm(means, after, parsed.adopt)
    replaced = sum(change.before is not None for change in change_set.changes)
    added = counted(len(change_set.changes) - replaced, "entry", "entries")
    print(f"{parsed.adopt}: {added} added, {replaced} replaced")
    return _GOOD
