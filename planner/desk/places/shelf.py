"""Keeps the tabs of the middle pane, makes a page when it is first seen, and fills it when it is stale.

Must know nothing of what any page shows.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QTabWidget, QVBoxLayout, QWidget

from planner.desk.behind import Behind
from planner.desk.places.empty_note import EmptyNote
from planner.desk.places.lacking import lack_of
from planner.desk.places.listed import BY_HAND, LISTED, Listed
from planner.desk.places.makers import MAKERS
from planner.desk.places.place import Place, PlaceNeeds
from planner.desk.plan.kit import Scrolling
from planner.desk.theme import Theme
from planner.farm.fields import NO_ID, Id

_PASSED_ON: Final = ("chosen", "opened", "new_wanted", "why_wanted", "run_wanted", "told", "troubled")


class PlaceHolder(QWidget):
    """An empty page until its place is asked for; a place that finds too little room is scrolled."""

    def __init__(self, listed: Listed, parent: QWidget) -> None:
        super().__init__(parent)
        self.listed = listed
        self.place: Place | None = None
        self.is_stale = True
        column = self._column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)

    def hold(self, place: Place) -> None:
        """Hold a page from now on."""
        self.place = place
        area = Scrolling(place, place.theme, self)
        self._column.addWidget(area)
        area.show()
        self.setFocusProxy(place)


class Shelf(QObject):
    """Every page that is made late, by its key, within the tabs they stand in."""

    chosen = Signal(str)
    opened = Signal(str)
    new_wanted = Signal(str, str)
    why_wanted = Signal(object, int)
    run_wanted = Signal(str)
    told = Signal(str)
    troubled = Signal(str)

    def __init__(self, needs: PlaceNeeds, tabs: QTabWidget) -> None:
        super().__init__(tabs)
        self._needs, self._tabs = needs, tabs
        self._theme = needs.theme
        self._behind: Behind | None = None
        self._chosen = NO_ID
        self.holders = {
            widget.listed.key: widget
            for widget in (tabs.widget(at) for at in range(tabs.count()))
            if isinstance(widget, PlaceHolder)
        }
        self.notes: dict[str, EmptyNote] = {}
        tabs.currentChanged.connect(self.fill)

    @property
    def by_hand(self) -> bool:
        """Whether the page in front holds what is dragged, so that nothing may move under the pointer."""
        return self.listed.key in BY_HAND

    @property
    def listed(self) -> Listed:
        """The row of the page that is seen."""
        return LISTED[max(self._tabs.currentIndex(), 0)]

    def place(self, key: str) -> Place:
        """Return a page, made when it is not there yet."""
        holder = self.holders[key]
        if holder.place is None:
            holder.hold(self._made(holder))
        assert holder.place is not None
        return holder.place

    def _made(self, holder: PlaceHolder) -> Place:
        place = MAKERS[holder.listed.key](self._needs, holder)
        for name in _PASSED_ON:
            getattr(place, name).connect(getattr(self, name))
        if self._theme is not self._needs.theme:
            place.wear(self._theme)
        return place

    def go_to(self, key: str) -> None:
        """Bring a page to the front and give it the keyboard."""
        self._tabs.setCurrentWidget(self.holders[key])
        note = self.notes.get(key)
        if note is not None and note.isVisible():
            note.setFocus()
        else:
            self.place(key).take_focus()

    def show(self, behind: Behind) -> None:
        """Show another outlook from now on; hidden pages are filled when they are seen."""
        self._behind = behind
        for holder in self.holders.values():
            holder.is_stale = True
        self.fill()

    def leave(self) -> None:
        """Let every page give up what runs beside the window."""
        for holder in self.holders.values():
            if holder.place is not None:
                holder.place.leave()

    def fill(self, *_anything: int) -> None:
        """Fill the page that is seen, when something has changed since."""
        holder = self._tabs.currentWidget()
        if self._behind is None:
            return
        if not isinstance(holder, PlaceHolder):
            self._show_lack(self.listed.key, holder)
            return
        place = self.place(holder.listed.key)
        self._show_lack(holder.listed.key, holder)
        if holder.is_stale:
            holder.is_stale = False
            place.show_behind(self._behind)
            place.show_chosen(self._chosen)

    def _show_lack(self, key: str, page: QWidget) -> None:
        """Cover a page that has nothing to show yet with what to begin with."""
        assert self._behind is not None
        lack = lack_of(key, self._behind.outlook.farm)
        note = self.notes.get(key)
        if note is None and lack is not None:
            note = self.notes[key] = EmptyNote(page, self._theme)
            note.wanted.connect(self.run_wanted)
        if note is not None:
            note.show_lack(lack)

    def show_chosen(self, thing_id: Id) -> None:
        """Show what is chosen on the page that is seen; the others are told when they are filled."""
        if thing_id == self._chosen:
            return
        self._chosen = thing_id
        for holder in self.holders.values():
            if holder.place is not None:
                holder.place.show_chosen(thing_id)

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self._theme = theme
        for note in self.notes.values():
            note.wear(theme)
        for holder in self.holders.values():
            if holder.place is not None:
                holder.place.wear(theme)
