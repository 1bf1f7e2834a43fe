"""Passwords of farms on a database server: kept in the keyring of the system, never in a file of ours."""

from __future__ import annotations

from pathlib import Path
from typing import Final

SERVICE: Final = "Raftweek"
"""Under this name passwords are kept in the keyring."""


def place_of(path: Path) -> Path | str:
    """Return where a farm is: a path as it is, or the address of a database server with its password."""
    from planner.store.place import server_url

    url = server_url(path)
    return path if url is None else with_password(url)


def with_password(where: str) -> str:
    """Return an address with the password that the keyring has for it; as it is when it has none.

    Raises `NoSuchFarmError` for an address that is none.
    """
    from planner.store.server import keyring_name, lacks_password, with_this_password

    password = _kept(keyring_name(where)) if lacks_password(where) else None
    return where if password is None else with_this_password(where, password)


def keep_password(where: str, password: str) -> str:
    """Keep the password of an address in the keyring; return the name it is kept under.

    Raises `NoSuchFarmError` for an address that is none, or when there is no keyring to keep it in.
    """
    from planner.store.errors import NoSuchFarmError
    from planner.store.server import keyring_name

    name = keyring_name(where)
    try:
        import keyring
        from keyring.errors import KeyringError
    except ModuleNotFoundError as error:
        raise NoSuchFarmError("The library keyring is not installed here; no password is kept.") from error
    try:
        keyring.set_password(SERVICE, name, password)
    except KeyringError as error:
        raise NoSuchFarmError(f"The keyring of this system could not keep the password ({error}).") from error
    return name


def _kept(name: str) -> str | None:
    try:
        import keyring
        from keyring.errors import KeyringError
    except ModuleNotFoundError:
        return None
    try:
        return keyring.get_password(SERVICE, name)
    except KeyringError:
        # Locked or not there: the server is then asked without, and says itself what it lacks.
        return None
