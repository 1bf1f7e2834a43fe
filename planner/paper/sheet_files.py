"""Reads the words of sheets that ship with the program: steps, tasks, signs, and second languages.

They lie in resources/, where a person can read and mend them. Must not know reports.
"""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from functools import cache
from typing import Any, Final

from planner.catalogue.names import CODE_OF_LANGUAGE
from planner.paper.bilingual import SecondLanguage
from planner.paper.errors import PaperError
from planner.paper.linguist import sentences
from planner.shipped import shipped_path

_SHEETS: Final = "sheets"
_WORDS: Final = "words"
LANGUAGES: Final = ("filipino", "spanish")
"""Second languages there are words for."""


@cache
def sheet_file(name: str) -> Mapping[str, Any]:
    """Return the tables of a file of words for sheets, such as "symptoms".

    Raises:
        PaperError: the file is missing or is no TOML.
    """
    return _read(_SHEETS, name)


@cache
def second_language(name: str) -> SecondLanguage:
    """Return the words of a second language, such as "filipino".

    Raises:
        PaperError: the file is missing or is no TOML.
    """
    found = _read(_WORDS, name)
    return SecondLanguage(
        name=found["name"],
        reviewed=found["reviewed"],
        words=found["words"],
        sentences=sentences(CODE_OF_LANGUAGE[name]),
        texts=found["texts"],
    )


def _read(folder: str, name: str) -> Mapping[str, Any]:
    path = shipped_path("resources", folder, f"{name}.toml")
    try:
        return tomllib.loads(path.read_text(encoding="utf-8"))
    except (OSError, tomllib.TOMLDecodeError) as fault:
        raise PaperError(f"{path.name} that comes with the program could not be read: {fault}.") from fault
