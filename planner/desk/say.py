"""Translates the texts of the desk, all in one context. Imports nothing but Qt, so that it is there first."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QCoreApplication

CONTEXT: Final = "Desk"
REVIEWED: Final = "Reviewed"
"""Asked for in this context, a text is given in translation only where a person has reviewed it."""


def tr(text: str, **values: object) -> str:
    """Return the translation of a text of the desk with its values put in."""
    said = QCoreApplication.translate(CONTEXT, text)
    return said.format(**values) if values else said


def careful(text: str, **values: object) -> str:
    """Return a text that people's safety hangs on in translation, with the English behind it.

    Nobody shall rely on words that nobody who knows the trade and the language has read: the English is left
    out only once they have been reviewed.

    >>> careful("Switch off before hands go into the water.")
    'Switch off before hands go into the water.'
    """
    said = QCoreApplication.translate(CONTEXT, text)
    if said != text and QCoreApplication.translate(REVIEWED, text) != said:
        said = f"{said} [{text}]"
    return said.format(**values) if values else said
