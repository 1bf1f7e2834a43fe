"""Says under which conditions a figure of the catalogue holds, in the language of the window.

Conditions are short notes of the trade, hundreds of them, made of the same few parts with other numbers:
so the parts are translated, in `resources/words/conditions_*.toml`, with # for each number. Where one part
has no translation all of the text stays as it is and is marked as English. Must know nothing of widgets.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from functools import cache
from typing import Final

from PySide6.QtCore import QLocale

from planner.desk.say import tr
from planner.shipped import shipped_path

LANGUAGE_CODE: Final = "Code of this language"
"""Its translation is the code in ISO 639."""
MARK: Final = "[en] {text}"
_BETWEEN: Final = re.compile(r"([;,:] )")
_NUMBER: Final = re.compile(r"[+±≤≥<>]?\d+(?:[.,]\d+)*(?:\s?[-–±/]\s?\d+(?:[.,]\d+)*)?")
_WORD: Final = re.compile(r"[^\W\d_]+[²³]?")
_NO_WORDS: Final = (
    " C degC d h cm mm m m² g kg mg L mol ppm mS FAO UVI pH R² N NH NO CaCO Na K Ca Mg Fe P S O H "
)
"""Units, signs of elements and names of two sources, which are the same in every language."""


def condition_words(text: str) -> str:
    """Return conditions in the language of the window, or marked as English.

    >>> condition_words("pods, field")
    'pods, field'
    """
    code = tr(LANGUAGE_CODE)
    if code == LANGUAGE_CODE or not text:
        return text
    said = in_language(text, parts_in(code))
    return MARK.format(text=text) if said is None else said


def in_language(text: str, known: Mapping[str, str]) -> str | None:
    """Return a text whose parts are all known or need no translation; None where one is neither."""
    found = []
    for piece in _BETWEEN.split(text):
        said = piece if _BETWEEN.fullmatch(piece) else _piece(piece, known)
        if said is None:
            return None
        found.append(said)
    return "".join(found)


def bare(piece: str) -> str:
    """Return a part with # in the place of each number, as the files have it.

    >>> bare("97 % at 25 °C")
    '# % at # °C'
    """
    return _NUMBER.sub("#", piece).strip()


def is_plain(piece: str) -> bool:
    """Tell whether a part has no words at all."""
    return all(f" {word} " in _NO_WORDS for word in _WORD.findall(piece))


def _piece(piece: str, known: Mapping[str, str]) -> str | None:
    numbers = [_by_locale(number) for number in _NUMBER.findall(piece)]
    said = known.get(bare(piece), piece if is_plain(piece) else None)
    if said is None:
        return None
    form = _NUMBER.sub("#", said) if said is piece else said
    for number in numbers:
        form = form.replace("#", number, 1)
    return form


def _by_locale(number: str) -> str:
    return number.replace(".", QLocale().decimalPoint())


@cache
def parts_in(code: str) -> Mapping[str, str]:
    """Return the parts of conditions in a language by the English ones; empty when there is no file."""
    path = shipped_path("resources", "words", f"conditions_{code}.toml")
    if not path.is_file():
        return {}
    found: Mapping[str, str] = tomllib.loads(path.read_text(encoding="utf-8"))["parts"]
    return found
