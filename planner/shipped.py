"""Finds the files that ship with the program: resources/ and sample_data/.

From a checkout they lie beside the package, where a person can read and mend them; in an installed wheel they
lie inside it. This module must know nothing of what is in them.
"""

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parent
_INSIDE_THE_WHEEL = _PACKAGE / "_shipped"
SHIPPED_FOLDERS = ("resources", "sample_data")


def shipped_root() -> Path:
    """Return the folder that holds resources/ and sample_data/."""
    return _INSIDE_THE_WHEEL if _INSIDE_THE_WHEEL.is_dir() else _PACKAGE.parent


def shipped_path(*parts: str) -> Path:
    """Return the path of a shipped file or folder, named from the root down.

    >>> shipped_path("resources", "fonts").name
    'fonts'

    Raises:
        ValueError: the first part is no shipped folder, or a part would lead out of it.
    """
    if not parts or parts[0] not in SHIPPED_FOLDERS:
        raise ValueError(f"folder: {'/'.join(parts)!r} is none of {', '.join(SHIPPED_FOLDERS)}")
    if any(part == ".." or Path(part).is_absolute() for part in parts):
        raise ValueError(f"path: {'/'.join(parts)!r} leads out of the shipped files")
    return shipped_root().joinpath(*parts)
