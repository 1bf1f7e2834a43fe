"""A database server of our own for the tests of shared farms: made once on the loopback, then gone."""

import contextlib
import glob
import os
import pwd
import shutil
import socket
import subprocess
import tempfile
from pathlib import Path

import pytest
from sqlalchemy import create_engine, text

from planner.bootstrap import Means
from planner.store.store import FarmStore
from tests.desk.helpers import sample_farm

_STARTED_WITHIN = 60


def _binaries():
    """Return the folder of the server's commands; None where none is installed."""
    if shutil.which("initdb"):
        return Path(shutil.which("initdb")).resolve().parent
    found = sorted(glob.glob("/usr/lib/postgresql/*/bin/initdb"))  # noqa: PTH207 - a pattern from the root
    return Path(found[-1]).parent if found else None


BINARIES = _binaries()


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
    subprocess.run(command, check=True, capture_output=True, timeout=_STARTED_WITHIN, cwd="/", **as_user)


@pytest.fixture(scope="session")
def server():
    """The address of a running server, without a database: postgresql+psycopg://postgres@127.0.0.1:PORT."""
    if BINARIES is None:
        pytest.skip("no PostgreSQL server is installed here")
    account, port = _account(), _free_port()
    folder = Path(tempfile.mkdtemp(prefix="farm-server-", dir="/tmp"))
    data, log = folder / "data", folder / "log"
    if account is not None:
        os.chown(folder, account.pw_uid, account.pw_gid)
    try:
        _run(BINARIES / "initdb", "-D", data, "-U", "postgres", "-A", "trust", "-N", account=account)
        options = f"-p {port} -c listen_addresses=127.0.0.1 -c unix_socket_directories={folder} -c fsync=off"
        _run(BINARIES / "pg_ctl", "-D", data, "-l", log, "-o", options, "-w", "start", account=account)
        yield f"postgresql+psycopg://postgres@127.0.0.1:{port}"
        _run(BINARIES / "pg_ctl", "-D", data, "-m", "immediate", "-w", "stop", account=account)
    finally:
        shutil.rmtree(folder, ignore_errors=True)


_NUMBERS = iter(range(1, 10_000))


@pytest.fixture
def url(server):
    """The address of an empty database of its own."""
    name = f"farm{next(_NUMBERS)}"
    engine = create_engine(f"{server}/postgres", isolation_level="AUTOCOMMIT")
    with engine.connect() as connection:
        connection.execute(text(f"CREATE DATABASE {name}"))
    yield f"{server}/{name}"
    with engine.connect() as connection:
        connection.execute(text(f"DROP DATABASE {name} WITH (FORCE)"))
    engine.dispose()


@pytest.fixture(scope="session")
def means():
    return Means()


@pytest.fixture(scope="session")
def farm(means):
    return sample_farm(means)


@pytest.fixture
def open_desk(url, means, farm):
    """Open the farm on the server once more, under a name."""
    FarmStore.create(url, farm, means.holds(farm)).close()
    stores = []

    def opened(who="", where=url):
        from planner.actions.session import Session
        from planner.bootstrap import utc_now
        from planner.catalogue.own import laid_over

        store = FarmStore.open(where)
        stores.append(store)
        return Session(
            store,
            means.catalogue,
            holds_of=means.holds,
            faults_of=means.faults,
            now=utc_now,
            laid_over=laid_over,
            who=who,
        )

    yield opened
    for store in stores:
        store.close()
