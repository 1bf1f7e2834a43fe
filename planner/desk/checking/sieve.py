"""Keeps of the published cases those of one subject and one standing that hold what is searched for.

Looks words up that were made once for each row. Must know nothing of how a case is worked out.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QSortFilterProxyModel, Qt
from PySide6.QtWidgets import QWidget

from planner.desk.checking.rows import Payload, searched_words, standing_of
from planner.desk.rows import SORT_ROLE, RowsModel

ALL: Final = ""


class CaseSieve(QSortFilterProxyModel):
    """The rows that are shown, sorted by value."""

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._standing = ALL
        self._area = ALL
        self._words: tuple[str, ...] = ()
        self._searched: dict[str, str] = {}
        self.setSortRole(SORT_ROLE)
        self.setFilterCaseSensitivity(Qt.CaseSensitivity.CaseInsensitive)

    def keep_standing(self, standing: str) -> None:
        """Keep the rows of a standing, or all."""
        self.beginFilterChange()
        self._standing = standing
        self.endFilterChange()

    def keep_area(self, area: str) -> None:
        """Keep the rows of a subject, or all."""
        self.beginFilterChange()
        self._area = area
        self.endFilterChange()

    def seek(self, text: str) -> None:
        """Keep the rows in which every one of some words is found."""
        self.beginFilterChange()
        self._words = tuple(text.lower().split())
        self.endFilterChange()

    def payloads(self) -> tuple[Payload, ...]:
        """Return what is shown, in the order it is shown in."""
        rows = self._model().rows
        at = (self.mapToSource(self.index(place, 0)).row() for place in range(self.rowCount()))
        return tuple(rows[row].payload for row in at)

    def filterAcceptsRow(self, row: int, parent: QModelIndex | QPersistentModelIndex) -> bool:
        del parent
        payload: Payload = self._model().rows[row].payload
        if self._area not in (ALL, payload.area):
            return False
        if self._standing not in (ALL, standing_of(payload).value):
            return False
        return not self._words or self._holds(payload)

    def _holds(self, payload: Payload) -> bool:
        if payload.key not in self._searched:
            self._searched[payload.key] = searched_words(payload)
        return all(word in self._searched[payload.key] for word in self._words)

    def _model(self) -> RowsModel:
        model = self.sourceModel()
        assert isinstance(model, RowsModel)
        return model
