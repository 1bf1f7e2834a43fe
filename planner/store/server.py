"""Farms on a database server: how their address is read, and how they are connected to.

The address is a URL such as postgresql+psycopg://ana@farm-host/lettuce?sslmode=verify-full; what stands
behind the question mark goes to the driver as it is, so every option of an encrypted connection works.
"""

from __future__ import annotations

from pathlib import Path
from typing import Any, Final

from sqlalchemy import URL, Engine, create_engine
from sqlalchemy.engine import make_url
from sqlalchemy.exc import ArgumentError, NoSuchModuleError

from planner.store.errors import NoSuchFarmError
from planner.store.place import server_url

CONNECT_SECONDS: Final = 5
"""How long a server may take to answer, unless the address says otherwise."""


def server_engine(where: str) -> Engine:
    """Return an engine for a farm on a database server; raises `NoSuchFarmError` for a wrong address."""
    url = read_url(where)
    options: dict[str, Any] = {}
    if "connect_timeout" not in url.query:
        options["connect_timeout"] = CONNECT_SECONDS
    try:
        return create_engine(url, pool_size=1, max_overflow=1, pool_pre_ping=True, connect_args=options)
    except ModuleNotFoundError as error:
        raise NoSuchFarmError(
            f"Farms on a database server need {error.name}, which is not installed here. Add it by "
            'pip install "psycopg[binary]".'
        ) from error
    except (ArgumentError, NoSuchModuleError) as error:
        raise NoSuchFarmError("The address of the database names a driver that is not known.") from error


def read_url(where: str) -> URL:
    """Return the parts of an address; raises `NoSuchFarmError` for one that is none or names no database."""
    try:
        url = make_url(where)
    except ArgumentError as error:
        raise NoSuchFarmError("The address of the database is not one that can be read.") from error
    if not url.database:
        raise NoSuchFarmError("The address of the database names no database: it ends in /NAME.")
    return url


def lacks_password(where: str) -> bool:
    """Tell whether an address names a user but no password."""
    url = read_url(where)
    return url.password is None and bool(url.username)


def with_this_password(where: str, password: str) -> str:
    """Return an address with a password in it."""
    return read_url(where).set(password=password).render_as_string(hide_password=False)


def keyring_name(where: str) -> str:
    """Return the name under which the password of an address is kept: user, host and database."""
    url = read_url(where)
    return f"{url.username or ''}@{url.host or 'localhost'}/{url.database or ''}"


def spoken(where: str | Path) -> str:
    """Return an address without its password and driver, a path as it is."""
    url = server_url(where)
    if url is None:
        return str(where)
    return read_url(url).set(drivername="postgresql").render_as_string(hide_password=True)
