"""The command line: everything that needs no screen, and the window when nothing else is asked.

Exit codes: 0 good, 1 the farm has faults or cannot be read, 2 wrong usage. Errors go to stderr, each
in a sentence; a traceback is for those who ask for one.
"""

from __future__ import annotations

import errno
import os
import sys
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    # Read in where they are needed: the window comes through here too, and waits for none of them.
    import argparse

GOOD: Final = 0
FAULTY: Final = 1
WRONG_USAGE: Final = 2
INTERRUPTED: Final = 130

COMMANDS: Final = (
    "new",
    "check",
    "forecast",
    "week",
    "calendar",
    "import",
    "import-csv",
    "export",
    "advise",
    "backups",
    "compare",
    "entries",
    "expand",
    "labels",
    "length",
    "merge-log",
    "orders",
    "password",
    "plan",
    "print",
    "records",
    "stock",
    "successions",
    "tables",
    "trace",
    "verify",
    "water",
    "why",
)
TRACEBACK_ASKED_BY: Final = "RAFTWEEK_TRACEBACK"

_DATABASE_HEAD: Final = b"SQLite format 3\0"
_FARM_TEXT_MARK: Final = b"raftweek.farm/"
_HEAD_BYTES: Final = 4096
_SERVERS: Final = ("postgres:", "postgresql:", "postgresql+")
_DISK_WORDS: Final = {
    errno.ENOENT: "is not there, or its folder is not",
    errno.ENOTDIR: "cannot be there: part of its path is a file, not a folder",
    errno.EISDIR: "is a folder, not a file",
    errno.EACCES: "may not be read or written by you",
    errno.EPERM: "may not be read or written by you",
    errno.EROFS: "lies on a disk that cannot be written",
    errno.ENOSPC: "could not be written: the disk is full",
    errno.ENAMETOOLONG: "has too long a name",
}


def main(arguments: Sequence[str] | None = None) -> int:
    """Run one command, or open the window, and return the exit code."""
    words = list(sys.argv[1:] if arguments is None else arguments)
    try:
        code = _run(words)
        sys.stdout.flush()
    except SystemExit as stop:  # how argparse says that it has said enough
        return stop.code if isinstance(stop.code, int) else GOOD
    except BrokenPipeError:
        return _leave_pipe()
    except KeyboardInterrupt:
        return INTERRUPTED
    except Exception as error:  # noqa: BLE001 - whatever it is, the user gets a sentence
        return _tell_own_mistake(error)
    return code


def _run(words: Sequence[str]) -> int:
    if not words or (not words[0].startswith("-") and words[0] not in COMMANDS):
        return _open_window(words)
    from planner.cli_commands import parser

    parsed = parser().parse_args(words)
    return _open_window([]) if parsed.command is None else _guarded(parsed.run, parsed)


def _leave_pipe() -> int:
    """Stop in silence when the reader of our output has read enough, as `head` does."""
    # What is still in the buffer would raise once more when Python closes stdout.
    os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    return GOOD


def _tell_own_mistake(error: Exception) -> int:
    _say(
        f"Raftweek made a mistake of its own and stopped ({type(error).__name__}: {error}). "
        f"Your farm is as it was. Set {TRACEBACK_ASKED_BY}=1 and run it again to see where."
    )
    if os.environ.get(TRACEBACK_ASKED_BY):
        import traceback

        traceback.print_exception(error)
    return FAULTY


def _guarded(run: Callable[[argparse.Namespace], int], parsed: argparse.Namespace) -> int:
    """Run a command; say what is expected to go wrong in plain sentences on stderr."""
    from planner.cli_shared import WrongUsageError
    from planner.farm.faults import FarmFaultError
    from planner.paper.errors import PaperError
    from planner.store.errors import StoreError

    try:
        return run(parsed)
    except FarmFaultError as error:
        for fault in error.faults:
            _say(fault.sentence())
        count = len(error.faults)
        _say(f"{count} fault{'' if count == 1 else 's'} found.")
        return FAULTY
    except WrongUsageError as error:
        _say(f"raftweek {parsed.command}: {error}")
        return WRONG_USAGE
    except (StoreError, PaperError) as error:
        _say(str(error))
        return FAULTY
    except BrokenPipeError:
        raise
    except OSError as error:
        _say(_disk_sentence(error))
        return FAULTY


def _disk_sentence(error: OSError) -> str:
    words = _DISK_WORDS.get(error.errno or 0, error.strerror or str(error))
    return f"{error.filename or 'the file'} {words}."


def _say(sentence: str) -> None:
    print(sentence, file=sys.stderr)


# --- the window ----------------------------------------------------------------------------------------


def _open_window(words: Sequence[str]) -> int:
    if words and _is_meant_as_command(words[0]):
        _say(_unknown_command(words[0]))
        return WRONG_USAGE
    if len(words) > 1:
        _say(f"raftweek opens one farm at a time, but {len(words)} were named.")
        return WRONG_USAGE
    path = Path(words[0]) if words else None
    on_server = str(path).startswith(_SERVERS)
    refusal = None if path is None or on_server else refusal_to_open(path)
    if refusal is not None:
        _say(refusal)
        return FAULTY
    from planner.bootstrap_window import open_window

    return open_window(path)


def _is_meant_as_command(word: str) -> bool:
    """Tell whether a word that is no command looks like one rather than like a file."""
    path = Path(word)
    return path.name == word and not path.suffix and not path.exists()


def _unknown_command(word: str) -> str:
    from difflib import get_close_matches

    near = get_close_matches(word, COMMANDS, n=1)
    hint = f' Did you mean "{near[0]}"?' if near else ""
    return (
        f'raftweek: "{word}" is neither a command nor a file.{hint} Commands are {", ".join(COMMANDS)}; '
        '"raftweek --help" says more.'
    )


def refusal_to_open(path: Path) -> str | None:
    """Return why a path is certainly no farm, None when it may be one.

    Looks only at the first bytes, so that a wrong name is told before a window is made.
    """
    try:
        with path.open("rb") as file:
            head = file.read(_HEAD_BYTES)
    except OSError as error:
        return _disk_sentence(error)
    if not head:
        return f'{path} is empty. "raftweek new" starts a farm under a name that is not taken.'
    if path.suffix.lower() == ".toml":
        return f"{path} is not a farm text: it is no text at all." if b"\0" in head else None
    if head.startswith(_DATABASE_HEAD):
        return None
    if _FARM_TEXT_MARK in head:
        return f"{path} looks like a farm text; give it a name that ends in .toml."
    return f"{path} is not a farm file."
