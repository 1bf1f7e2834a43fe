"""Reads the files of Qt Linguist as they are, without Qt: what a text is in a language, and who has read it.

The window and the sheets take their sentences from the same files, so that a caution is worded once.
"""

from __future__ import annotations

import re
from functools import cache
from pathlib import Path
from typing import Final
from xml.etree import ElementTree as ET

from planner.shipped import shipped_path

_BLANK: Final = re.compile(r"[{](\w+)}")


def ts_path(language: str) -> Path:
    """Return the file that holds the translations into a language, such as "es"."""
    return shipped_path("resources", "words", f"desk_{language}.ts")


def key_of(text: str, apart: str = "") -> str:
    """Return a text as the files have it, with what tells it apart from the same letters elsewhere."""
    return f"{text} ({apart})" if apart else text


def read_ts(path: Path) -> dict[str, str]:
    """Return translation by text; empty when the file is not there or is none. Empty ones are left out."""
    return {source: said for source, (said, _) in messages(path).items() if said}


def messages(path: Path) -> dict[str, tuple[str, bool]]:
    """Return translation by text, each with whether a person has reviewed it."""
    try:
        root = ET.parse(path).getroot()
    except (OSError, ET.ParseError):
        return {}
    found = {}
    for message in root.iter("message"):
        source, translation = message.findtext("source"), message.find("translation")
        if source and translation is not None:
            found[source] = (translation.text or "", translation.get("type") != "unfinished")
    return found


@cache
def form_pattern(form: str) -> re.Pattern[str]:
    """Return what finds a text that a form makes, with a group for each blank.

    >>> form_pattern("every {n} weeks").fullmatch("every 4 weeks")["n"]
    '4'
    """
    plain = re.escape(form).replace(r"\{", "{").replace(r"\}", "}")
    return re.compile(_BLANK.sub(r"(?P<\1>.+)", plain))


@cache
def sentences(language: str) -> dict[str, str]:
    """Return what the window says in a language, by the English text; read once."""
    return read_ts(ts_path(language))
