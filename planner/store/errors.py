"""What can go wrong with the place a farm is kept in, each in a plain sentence for its user.

These are troubles of the surroundings (disk, rights, another program), not of the farm itself.
"""

from __future__ import annotations

import errno
import sqlite3
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Final


class StoreError(Exception):
    """A farm could not be read or kept; the text is a sentence that can be shown as it is."""


class NoSuchFarmError(StoreError):
    """There is no file, or no database, where the farm should be."""


class NotAFarmError(StoreError):
    """The file is something else than a farm."""


class NewerFarmError(StoreError):
    """The farm was kept by a newer version of this program."""


class DamagedFarmError(StoreError):
    """The file is a farm, but parts of it cannot be read or do not fit together."""


class ReadOnlyFarmError(StoreError):
    """The farm may be read but not written."""


class DiskFullError(StoreError):
    """No room is left where the farm is kept."""


class FarmInUseError(StoreError):
    """Another program holds the farm."""


class ChangedElsewhereError(StoreError):
    """Somebody else changed the farm since it was read here."""


class LostFarmError(StoreError):
    """The database server cannot be reached, or the connection to it broke off."""


class FarmThereAlreadyError(StoreError):
    """A new farm would overwrite something."""


class RefusedError(StoreError):
    """The database itself refused a change that breaks a rule of the farm."""


class HeldPlaceError(RefusedError):
    """The database refused to give one place to two batches at a time."""


HELD_PLACE: Final = "held place"
"""First words of the refusal that the guard in the database gives."""

_BY_CODE: Final[dict[int, tuple[type[StoreError], str]]] = {
    sqlite3.SQLITE_BUSY: (
        FarmInUseError,
        "{where} is locked by another program. Close it there, then try again.",
    ),
    sqlite3.SQLITE_LOCKED: (FarmInUseError, "{where} is in use. Wait a moment, then try again."),
    sqlite3.SQLITE_READONLY: (
        ReadOnlyFarmError,
        "{where} cannot be written. Save a copy somewhere you may write, and go on there.",
    ),
    sqlite3.SQLITE_PERM: (
        ReadOnlyFarmError,
        "{where} may not be opened by you. Ask for the right to write it.",
    ),
    sqlite3.SQLITE_FULL: (
        DiskFullError,
        "There is no room left on the disk for {where}. Nothing was changed; make room, then try again.",
    ),
    sqlite3.SQLITE_CORRUPT: (DamagedFarmError, "{where} is damaged. Open the latest backup instead."),
    sqlite3.SQLITE_NOTADB: (NotAFarmError, "{where} is not a farm file."),
    sqlite3.SQLITE_CANTOPEN: (
        NoSuchFarmError,
        "{where} could not be opened. See that the folder is there and that you may write in it.",
    ),
    sqlite3.SQLITE_IOERR: (
        StoreError,
        "The disk could not read or write {where}. Save a copy on another disk.",
    ),
}
PRIMARY_CODE: Final = 0xFF
"""Takes the plain result code out of an extended one of SQLite."""
_EXCLUSION_STATE: Final = "23P01"
_NO_RIGHT_STATE: Final = "42501"
_LOST_CLASSES: Final = ("08", "57")
_INTEGRITY_CLASS: Final = "23"


@contextmanager
def told(where: str) -> Iterator[None]:
    """Turn whatever the database or the disk says inside the block into a `StoreError`."""
    try:
        yield
    except sqlite3.Error as error:
        raise _of_database(error, where) from error
    except UnicodeDecodeError as error:
        # Even what SQLite says of a damaged file may quote letters that are none.
        raise DamagedFarmError(f"{where} is damaged. Open the latest backup instead.") from error
    except OSError as error:
        raise _of_disk(error, where) from error
    except Exception as error:
        found = _of_library(error, where)
        if found is None:
            raise
        raise found from error


def _of_library(error: Exception, where: str) -> StoreError | None:
    """Return what an error of the library of the mappings means; None for any other.

    The library is not read in for this: while it is not there, none of its errors can be either.
    """
    library = sys.modules.get("sqlalchemy.exc")
    if library is None or not isinstance(error, library.SQLAlchemyError):
        return None
    if isinstance(error, library.DBAPIError):
        return _of_database(error.orig, where)
    return StoreError(f"{where} could not be reached: {_first_line(error)}.")


def _of_database(error: BaseException | None, where: str) -> StoreError:
    text = str(error)
    if HELD_PLACE in text or getattr(error, "sqlstate", None) == _EXCLUSION_STATE:
        return HeldPlaceError(f"{where} was not changed: a place would be held by two batches at a time.")
    state = str(getattr(error, "sqlstate", None) or "")
    if state == _NO_RIGHT_STATE:
        return ReadOnlyFarmError(
            f"{where} may be read but not changed with the name it was opened under. Nothing was changed."
        )
    if _is_lost(error, state):
        return LostFarmError(
            f"{where} cannot be reached ({_first_line(error)}). Nothing was changed; see to the connection."
        )
    code = getattr(error, "sqlite_errorcode", None)
    primary = code & PRIMARY_CODE if isinstance(code, int) else None
    if primary in _BY_CODE:
        kind, sentence = _BY_CODE[primary]
        return kind(sentence.format(where=where))
    if primary == sqlite3.SQLITE_CONSTRAINT or state.startswith(_INTEGRITY_CLASS):
        return RefusedError(
            f"{where} was not changed: the change breaks a rule of the file ({_first_line(error)})."
        )
    return StoreError(f"{where} could not be read or written ({_first_line(error)}).")


def _is_lost(error: BaseException | None, state: str) -> bool:
    """Tell whether a database server is out of reach; a driver names no state before it is connected."""
    from_server = error is not None and not isinstance(error, sqlite3.Error)
    return from_server and (state.startswith(_LOST_CLASSES) or type(error).__name__ == "OperationalError")


def _of_disk(error: OSError, where: str) -> StoreError:
    if error.errno in (errno.ENOSPC, errno.EDQUOT):
        return DiskFullError(_BY_CODE[sqlite3.SQLITE_FULL][1].format(where=where))
    if error.errno in (errno.EACCES, errno.EPERM, errno.EROFS):
        return ReadOnlyFarmError(_BY_CODE[sqlite3.SQLITE_READONLY][1].format(where=where))
    if error.errno in (errno.ENOENT, errno.ENOTDIR):
        return NoSuchFarmError(f"{where} is not there.")
    return StoreError(f"{where} could not be read or written ({error.strerror or 'unknown trouble'}).")


def _first_line(error: BaseException | None) -> str:
    lines = str(error).splitlines()
    return lines[0] if lines else "no reason given"
