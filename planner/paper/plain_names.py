"""Names that people typed, made fit for one line of a label, a calendar or a page."""

from __future__ import annotations

import unicodedata
from typing import Final

_OVERRIDES: Final = "\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"


def one_line(text: str) -> str:
    r"""Return a text that stays on its line: no control characters, nothing that turns writing round.

    >>> one_line("a\nb\u202ec")
    'a bc'
    """
    kept = "".join(letter for letter in text if letter not in _OVERRIDES)
    return " ".join("".join(" " if unicodedata.category(one) == "Cc" else one for one in kept).split())
