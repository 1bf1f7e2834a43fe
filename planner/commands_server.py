"""The command `password`: keeps the password of a farm on a database server in the keyring of the system.

Exit codes: 0 good, 1 it could not be kept, 2 wrong usage.
"""

from __future__ import annotations

import argparse
import sys
from getpass import getpass
from typing import Any, Final

_GOOD: Final = 0


def add_password(commands: Any) -> None:
    """Add the command to the parsers of the command line."""
    parser = commands.add_parser(
        "password",
        help="keep the password of a farm on a database server",
        description="Asks for the password of a farm on a database server and keeps it in the keyring of the "
        "system, so that it stands in no file and no address. Reads one line where there is no terminal.",
    )
    parser.add_argument("url", metavar="URL", help="such as postgresql://ana@farm-host/lettuce")
    parser.set_defaults(run=run_password)


def run_password(parsed: argparse.Namespace) -> int:
    """Ask for the password, keep it, and say under what name."""
    from planner.bootstrap_server import keep_password
    from planner.cli_shared import WrongUsageError
    from planner.store.place import server_url

    url = server_url(parsed.url)
    if url is None:
        raise WrongUsageError(f"{parsed.url} is not the address of a database server (postgresql://...).")
    password = getpass("Password: ") if sys.stdin.isatty() else sys.stdin.readline().rstrip("\n")
    if not password:
        raise WrongUsageError("No password was given; nothing was kept.")
    print(f"Kept for {keep_password(url, password)}.")
    return _GOOD
