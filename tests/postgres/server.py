"""A database server of our own on the loopback: made in a moment, and gone afterwards."""

import contextlib
import os
import pwd
import shutil
import socket
import subprocess
import tempfile
from pathlib import Path

from sqlalchemy import create_engine, text

_STARTED_WITHIN = 60


def binaries():
    """Return the folder of the server's commands; None where none is installed."""
    found = sorted(Path("/usr/lib/postgresql").glob("*/bin/initdb"))
    if found:
        return found[-1].parent
    here = shutil.which("initdb")
    return Path(here).resolve().parent if here else None


def _free_port():
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


def _account():
    """Return whom the server runs as: it refuses to run as root."""
    if os.geteuid() != 0:
        return None
    with contextlib.suppress(KeyError):
        return pwd.getpwnam("postgres")
    return pwd.getpwnam("nobody")


def _run(*command, account):
    as_user = {} if account is None else {"user": account.pw_uid, "group": account.pw_gid}
    # The server holds on to what it writes to: pipes would keep us waiting for its end.
    quiet = {"stdout": subprocess.DEVNULL, "stderr": subprocess.DEVNULL}
    subprocess.run(command, check=True, timeout=_STARTED_WITHIN, cwd="/", **quiet, **as_user)


@contextlib.contextmanager
def a_server():
    """Yield the address of a running server, without a database."""
    commands, account, port = binaries(), _account(), _free_port()
    folder = Path(tempfile.mkdtemp(prefix="farm-server-"))
    data, log = folder / "data", folder / "log"
    if account is not None:
        os.chown(folder, account.pw_uid, account.pw_gid)
    try:
        _run(commands / "initdb", "-D", data, "-U", "postgres", "-A", "trust", "-N", account=account)
        options = f"-p {port} -c listen_addresses=127.0.0.1 -c unix_socket_directories={folder} -c fsync=off"
        _run(commands / "pg_ctl", "-D", data, "-l", log, "-o", options, "-w", "start", account=account)
        yield f"postgresql+psycopg://postgres@127.0.0.1:{port}"
        _run(commands / "pg_ctl", "-D", data, "-m", "immediate", "-w", "stop", account=account)
    finally:
        shutil.rmtree(folder, ignore_errors=True)


@contextlib.contextmanager
def a_database(server, name):
    """Yield the address of an empty database of that name."""
    engine = create_engine(f"{server}/postgres", isolation_level="AUTOCOMMIT")
    with engine.connect() as connection:
        connection.execute(text(f"CREATE DATABASE {name}"))
    try:
        yield f"{server}/{name}"
    finally:
        with engine.connect() as connection:
            connection.execute(text(f"DROP DATABASE {name} WITH (FORCE)"))
        engine.dispose()
