"""The command that takes the log of another copy of a farm into a farm file."""

from __future__ import annotations

import argparse
import sys
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import FARM_SUFFIX, TEXT_SUFFIX, Means
from planner.cli_shared import check_name, counted, told

if TYPE_CHECKING:
    from planner.actions.log_merging import Merged, NotTaken

GOOD: Final = 0
FAULTY: Final = 1


def add_merge_log(commands: Any) -> None:
    """Add the command to the parsers of the command line."""
    parser = commands.add_parser(
        "merge-log",
        help="take in the log of another copy of a farm",
        description="Takes the entries of another copy's log into a farm file, as one step that can be "
        "undone: what both have is there once, what is new comes in with all it changes. Where the two "
        "say different things under one code, ours stands unless --clashes theirs is said; then theirs "
        "corrects ours.",
    )
    parser.add_argument("file", type=Path, metavar="FILE", help=f"the farm file ({FARM_SUFFIX})")
    parser.add_argument(
        "other", type=Path, metavar="OTHER", help=f"the other copy ({FARM_SUFFIX}, or {TEXT_SUFFIX})"
    )
    parser.add_argument("--clashes", choices=("ours", "theirs"), default="ours", help="default: ours")
    parser.add_argument("--dry-run", action="store_true", help="only look; change nothing")
    parser.set_defaults(run=_merge_log)


def _merge_log(parsed: argparse.Namespace) -> int:
    from planner.actions.log_merging import merge_log
    from planner.planning.dating import Dater
    from planner.store.store import FarmStore

    check_name(parsed.file, FARM_SUFFIX)
    means = Means()
    other = means.read(parsed.other).farm
    with FarmStore.open(parsed.file) as store:
        session = means.session(store)
        theirs = parsed.clashes == "theirs"
        dating = partial(Dater, means.forecaster)
        found = merge_log(session.farm, other, dating, theirs_stand=theirs)
        if found.taken and not parsed.dry_run:
            session.act(found.act)
    return _told(parsed, found)


def _told(parsed: argparse.Namespace, found: Merged) -> int:
    verb = "would be taken in" if parsed.dry_run else "taken in"
    taken = f"{counted(len(found.taken), 'entry', 'entries')} {verb}"
    print(f"{told(parsed.file)}: {taken}, {counted(found.common, 'was', 'were')} there already")
    for one in found.left_out:
        print(f"left out: {_left_words(one)}", file=sys.stderr)
    return FAULTY if found.left_out else GOOD


def _left_words(one: NotTaken) -> str:
    """Return an entry that was left out, why, and what stands against it."""
    entry = one.entry
    amount = "" if entry.amount is None else f" {entry.amount:g} {entry.unit.value}".rstrip()
    said = f'"{entry.code}" ({entry.what.value}{amount}, {entry.on.isoformat()}) {one.why.value}'
    if one.ours is not None:
        ours = one.ours
        mine = "" if ours.amount is None else f" {ours.amount:g} {ours.unit.value}".rstrip()
        said += f': "{ours.code}" ({ours.what.value}{mine}, {ours.on.isoformat()})'
    return "; ".join((said, *(fault.sentence() for fault in one.faults)))
