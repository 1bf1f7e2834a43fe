"""Opens the print dialog on a farm: what there is to print, and the sheets of what is wished.

Read in when it is asked for: paper would keep the first sight of the farm waiting. Must know nothing of
layout.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from threading import Event
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QLocale, QObject, Signal
from PySide6.QtWidgets import QWidget

from planner.catalogue.names import CODE_OF_LANGUAGE, named_beside
from planner.desk import settings
from planner.desk.labels.wish import LABEL_TITLES, LabelWish, label_wish_pages
from planner.desk.outlook import Outlook
from planner.desk.print_form import DocumentChoice, FormNeeds, PrintWish
from planner.desk.printing import PrintDialog, PrintNeeds
from planner.desk.say import tr
from planner.desk.services import WorkspaceNeeds
from planner.desk.sheets import (
    CHOICES,
    LONGEST_WEEKS,
    Sheets,
    document_sheets,
    load_type,
    paper_named,
)
from planner.paper.documents.ask import Ask
from planner.paper.errors import PaperError
from planner.paper.labels import LabelKind
from planner.paper.labels_grid import GridError
from planner.paper.labels_setting import NoRoomOnLabelError
from planner.paper.registry import DOCUMENTS, document_named
from planner.paper.style import style_for

if TYPE_CHECKING:
    from planner.desk.places.place import PlaceNeeds

CALENDAR: Final = DOCUMENTS[0].key
LABELS: Final = {"tray-labels": LabelKind.TRAY, "raft-tags": LabelKind.RAFT}
_LABEL_WEEKS: Final = 4
TROUBLES: Final = (PaperError, GridError, NoRoomOnLabelError, OSError)


class PrintAsking(QObject):
    """One dialog over one outlook; remembers how the calendar was printed last."""

    told = Signal(str)

    def __init__(self, needs: WorkspaceNeeds | PlaceNeeds, outlook: Outlook, window: QWidget) -> None:
        super().__init__(window)
        self._needs, self._outlook, self._window = needs, outlook, window

    def open(self, day: date, document: str = CALENDAR) -> None:
        """Show the dialog with a document chosen, from the week of a day on."""
        form = FormNeeds(
            documents=self._choices(day),
            papers=tuple(paper.name for paper in CHOICES),
            languages=(("filipino", tr("Filipino")), ("spanish", tr("Spanish"))),
            wish=replace(self._begun(day, document), second=self._spoken()),
            most_weeks=LONGEST_WEEKS,
            today=self._needs.now().date(),
        )
        needs = PrintNeeds(
            make=self._sheets,
            form=form,
            troubles=TROUBLES,
            folder=self._needs.home,
        )
        load_type()
        dialog = PrintDialog(needs, self._needs.theme, self._window)
        dialog.printed.connect(self._on_printed)
        dialog.finished.connect(self.deleteLater)
        dialog.open()

    def _choices(self, day: date) -> tuple[DocumentChoice, ...]:
        kept = self._remembered(day)
        pages = tuple(
            DocumentChoice(
                key=document.key,
                title=document.title,
                says=document.says,
                paper=kept.paper if document.key == CALENDAR else document.paper.name,
                from_on=document.begins_on(day, document.weeks),
                weeks=kept.weeks if document.key == CALENDAR else document.weeks,
            )
            for document in DOCUMENTS
        )
        return (*pages, *self._label_choices(day, kept.paper))

    def _begun(self, day: date, key: str) -> PrintWish:
        """Return what the dialog begins with."""
        if key == CALENDAR:
            return self._remembered(day)
        document = document_named(key)
        begins_on = document.begins_on(day, document.weeks)
        return PrintWish(document=key, paper=document.paper.name, from_on=begins_on, weeks=document.weeks)

    def _spoken(self) -> str:
        """Return the language of the window as a second language of the sheets; none for English."""
        chosen = self._needs.memory.get(settings.LANGUAGE) or QLocale.system().name()
        return next((word for word, code in CODE_OF_LANGUAGE.items() if code == chosen.partition("_")[0]), "")

    def _label_choices(self, day: date, paper: str) -> Iterator[DocumentChoice]:
        says = tr(
            "on plain paper, to be cut along the lines; for sheets of labels see Paper, Labels and tags"
        )
        for key, kind in LABELS.items():
            yield DocumentChoice(
                key=key,
                title=LABEL_TITLES[kind],
                says=says,
                paper=paper,
                from_on=day,
                weeks=_LABEL_WEEKS,
            )

    def _remembered(self, day: date) -> PrintWish:
        memory = self._needs.memory
        paper = paper_named(memory.get(settings.PAPER)) or CHOICES[0]
        weeks = min(max(memory.get(settings.CALENDAR_WEEKS), 1), LONGEST_WEEKS)
        return PrintWish(document=CALENDAR, paper=paper.name, from_on=day, weeks=weeks)

    def _sheets(self, wish: PrintWish, stopped: Event) -> Sheets:
        paper = paper_named(wish.paper) or CHOICES[0]
        second = CODE_OF_LANGUAGE.get(wish.second, "")
        ask = Ask(
            farm=self._outlook.farm,
            forecast=self._outlook.forecast,
            catalogue=named_beside(self._outlook.catalogue, second),
            from_on=wish.from_on,
            weeks=wish.weeks,
            printed_on=self._needs.now(),
        )
        if wish.document in LABELS:
            kind = LABELS[wish.document]
            labels = LabelWish(kind=kind, paper=paper.name, from_on=wish.from_on, weeks=wish.weeks)
            return label_wish_pages(labels, ask)
        document = document_named(wish.document)
        ask = replace(ask, large=document.is_large_on(paper))
        style = style_for(
            large_type=wish.large_type, black_and_white=wish.black_and_white, ink_saving=wish.ink_saving
        )
        return document_sheets(document, ask, paper, style=style, second=wish.second, stopped=stopped.is_set)

    def _on_printed(self, wish: PrintWish, words: str) -> None:
        if wish.document == CALENDAR:
            self._needs.memory.put(settings.PAPER, wish.paper)
            self._needs.memory.put(settings.CALENDAR_WEEKS, wish.weeks)
        self.told.emit(words)
