"""What every preview of paper asks of the form at its left: a wish, and a word whenever it changes.

Must know nothing of what is wished for.
"""

from __future__ import annotations

from typing import Protocol

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget


class WishLike(Protocol):
    """What is wished: a document by its key, on a paper by its name."""

    @property
    def document(self) -> str:
        """Which document; a file is called after it."""

    @property
    def paper(self) -> str:
        """The name of the paper."""


class WishForm(QWidget):
    """Where wishes are typed; tells of every change."""

    changed = Signal()

    def wish(self) -> WishLike | None:
        """Return what is wished, None while a field cannot be read; that is said beside the field."""
        raise NotImplementedError
