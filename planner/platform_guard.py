"""Refuses a toolkit that would end the program in the middle of work, and a start without a screen.

PySide6 from 6.12.0 on drops one reference to None at nearly every call that returns nothing. Before
Python 3.12 None is counted like any other object, so after some thousand calls the interpreter aborts and
takes unsaved work with it. The figures are in docs/decisions/0001-hold-the-toolkit.md.

This module must not import Qt: it is asked before Qt is loaded.
"""

import sys
from collections.abc import Mapping, Sequence
from pathlib import Path

FIRST_UNSAFE_TOOLKIT = (6, 12)
FIRST_SAFE_PYTHON = (3, 12)
TOOLKIT_PACKAGE = "PySide6-Essentials"
_NOTES = ".dist-info"
# Besides the two kinds of screen: a choice of the toolkit's own, which may need neither.
_SCREEN_SETTINGS = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")


def release_numbers(version: str) -> tuple[int, ...]:
    """Return the leading numbers of a version.

    >>> release_numbers("6.11.3")
    (6, 11, 3)
    >>> release_numbers("6.12.0rc1")
    (6, 12)
    """
    numbers: list[int] = []
    for part in version.split("."):
        if not part.isdecimal():
            break
        numbers.append(int(part))
    return tuple(numbers)


def toolkit_refusal(*, toolkit: str, python: tuple[int, int]) -> str | None:
    """Return why this pair must not run, in one sentence, or None when it may.

    >>> toolkit_refusal(toolkit="6.11.3", python=(3, 11)) is None
    True
    """
    if python >= FIRST_SAFE_PYTHON or release_numbers(toolkit) < FIRST_UNSAFE_TOOLKIT:
        return None
    have = ".".join(str(number) for number in python)
    safe = ".".join(str(number) for number in FIRST_SAFE_PYTHON)
    return (
        f"PySide6 {toolkit} makes Python {have} stop without warning. "
        f"Install PySide6-Essentials 6.11.3, or use Python {safe} or newer."
    )


def installed_version(folders: Sequence[str]) -> str:
    """Return the version of the toolkit that lies in the first folder with one; empty when none has.

    Only the name of its folder of notes is read. The library for this, `importlib.metadata`, takes longer
    to read in than the toolkit's own core, and the window waits for the answer.
    """
    wanted = f"{TOOLKIT_PACKAGE.replace('-', '_').lower()}-"
    for folder in folders:
        try:
            names = [each.name for each in Path(folder).iterdir()]
        except OSError:
            continue
        for name in names:
            if name.lower().startswith(wanted) and name.endswith(_NOTES):
                return name[len(wanted) : -len(_NOTES)]
    return ""


def _version_by_the_library() -> str:
    """Return the version as the library finds it, as in an archive or a bundle; empty when it does not."""
    from importlib import metadata  # noqa: PLC0415 - only when the quick way found nothing

    try:
        return metadata.version(TOOLKIT_PACKAGE)
    except metadata.PackageNotFoundError:
        return ""


def screen_refusal(settings: Mapping[str, str], *, system: str) -> str | None:
    """Return why no window can be shown, in one sentence, or None; only Linux can lack a screen.

    >>> screen_refusal({"DISPLAY": ":0"}, system="linux") is None
    True
    """
    if system != "linux" or any(settings.get(name) for name in _SCREEN_SETTINGS):
        return None
    return (
        "There is no screen to open a window on: neither DISPLAY nor WAYLAND_DISPLAY is set. "
        "Start it on a desktop, or use a command that needs none: see --help."
    )


def this_refusal() -> str | None:
    """Return why the window must not open on this machine, or None when it may."""
    toolkit = installed_version(sys.path) or _version_by_the_library()
    if not toolkit:
        return "The window toolkit PySide6-Essentials is not installed. Start the program with run.py."
    return toolkit_refusal(toolkit=toolkit, python=sys.version_info[:2])
