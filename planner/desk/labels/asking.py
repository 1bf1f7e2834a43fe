"""Opens the previews of labels and of a trace over a farm, and remembers the sheet that was used.

Read in when it is asked for. Must know nothing of layout.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import date
from threading import Event
from typing import TYPE_CHECKING, Any, Final

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from planner.desk import settings
from planner.desk.labels.form import LabelForm, LabelFormNeeds
from planner.desk.labels.trace_form import TraceForm, TraceWish
from planner.desk.labels.wish import LabelWish, grid_of, grid_words, label_wish_pages, plain_grid
from planner.desk.outlook import Outlook
from planner.desk.printing import PreviewDialog, PreviewNeeds
from planner.desk.say import tr
from planner.desk.services import WorkspaceNeeds
from planner.desk.sheets import LONGEST_WEEKS, Sheets, load_type, paper_named, report_sheets
from planner.desk.words import day_words
from planner.farm.crops import Batch
from planner.paper.documents.ask import Ask
from planner.paper.errors import PaperError
from planner.paper.labels import LabelKind
from planner.paper.labels_grid import GridError, pair_of
from planner.paper.labels_setting import NoRoomOnLabelError
from planner.paper.style import A4, ALL_PAPERS, Paper
from planner.paper.trace import NothingTracedError, trace_of, trace_report

if TYPE_CHECKING:
    from planner.desk.places.place import PlaceNeeds

_WEEKS: Final = 4
_SHEETS: Final = {LabelKind.TRAY: settings.TRAY_SHEET, LabelKind.RAFT: settings.RAFT_SHEET}
_TROUBLES: Final = (PaperError, GridError, NoRoomOnLabelError, OSError)


class LabelAsking(QObject):
    """The dialogs of labels and traces over one outlook."""

    told = Signal(str)

    def __init__(self, needs: WorkspaceNeeds | PlaceNeeds, outlook: Outlook, window: QWidget) -> None:
        super().__init__(window)
        self._needs, self._outlook, self._window = needs, outlook, window

    def ask_labels(self, day: date, batches: Sequence[Batch]) -> None:
        """Show the labels of the chosen batches, else of the weeks from a day on."""
        paper = self._paper()
        form = LabelForm(
            LabelFormNeeds(
                papers=tuple(each.name for each in ALL_PAPERS),
                paper=paper.name,
                kind=LabelKind.TRAY,
                from_on=day,
                weeks=_WEEKS,
                most_weeks=LONGEST_WEEKS,
                codes=tuple(batch.code for batch in batches),
                grids={kind: grid_of(self._needs.memory.get(setting)) for kind, setting in _SHEETS.items()},
                plain={kind: plain_grid(kind, paper) for kind in LabelKind},
                shift_mm=self._shift(),
            ),
            self._needs.theme,
        )
        dialog = self._dialog(tr("Labels and tags"), self._labels, form)
        dialog.printed.connect(self._on_labels)

    def ask_trace(self, batches: Sequence[Batch]) -> None:
        """Show the way of a batch or lot on a page, beginning with a chosen batch."""
        farm, names = self._outlook.farm, self._outlook.catalogue.crops
        sown = [(each.code, f"{names[each.crop].name}, {day_words(each.sow_on)}") for each in farm.batches]
        lots = [(lot.code, tr("seed lot")) for lot in farm.seed_lots]
        first = batches[-1].code if batches else next((code for code, _ in sown), "")
        wish = TraceWish(code=first, paper=self._paper().name)
        papers = tuple(each.name for each in ALL_PAPERS)
        form = TraceForm((*sown, *lots), papers, wish, self._needs.theme)
        self._dialog(tr("Trace"), self._trace, form).printed.connect(self._on_printed)

    def _dialog(
        self, title: str, make: Callable[[Any, Event], Sheets], form: LabelForm | TraceForm
    ) -> PreviewDialog:
        needs = PreviewNeeds(title=title, make=make, troubles=_TROUBLES, folder=self._needs.home)
        load_type()
        dialog = PreviewDialog(needs, form, self._needs.theme, self._window)
        dialog.finished.connect(self.deleteLater)
        dialog.open()
        return dialog

    def _paper(self) -> Paper:
        return paper_named(self._needs.memory.get(settings.LABEL_PAPER)) or A4

    def _shift(self) -> tuple[float, float]:
        try:
            return pair_of(self._needs.memory.get(settings.LABEL_SHIFT), field="shift")
        except GridError:
            return 0.0, 0.0

    def _labels(self, wish: LabelWish, _stopped: Event) -> Sheets:
        return label_wish_pages(
            wish,
            Ask(
                farm=self._outlook.farm,
                forecast=self._outlook.forecast,
                catalogue=self._outlook.catalogue,
                from_on=wish.from_on,
                weeks=wish.weeks,
                printed_on=self._needs.now(),
            ),
        )

    def _trace(self, wish: TraceWish, _stopped: Event) -> Sheets:
        farm = self._outlook.farm
        try:
            trace = trace_of(farm, self._outlook.forecast, wish.code)
        except NothingTracedError:
            why = tr("No batch and no seed lot has the code “{code}”.", code=wish.code)
            raise PaperError(why) from None
        report = trace_report(trace, farm, self._outlook.catalogue, printed_on=self._needs.now())
        return report_sheets(report, paper_named(wish.paper) or A4)

    def _on_labels(self, wish: LabelWish, words: str) -> None:
        """Remember the sheet and the shift; they belong to a packet of labels and to a printer."""
        memory = self._needs.memory
        memory.put(settings.LABEL_PAPER, wish.paper)
        memory.put(settings.LABEL_SHIFT, f"{wish.shift_mm[0]:g}x{wish.shift_mm[1]:g}")
        memory.put(_SHEETS[wish.kind], "" if wish.grid is None else grid_words(wish.grid))
        self.told.emit(words)

    def _on_printed(self, _wish: TraceWish, words: str) -> None:
        self.told.emit(words)
