"""Translates the texts of the desk, all in one context. Imports nothing but Qt, so that it is there first."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QCoreApplication

CONTEXT: Final = "Desk"


def tr(text: str, **values: object) -> str:
    """Return the translation of a text of the desk with its values put in."""
    said = QCoreApplication.translate(CONTEXT, text)
    return said.format(**values) if values else said
