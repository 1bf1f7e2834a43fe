"""The larger dialogs of the workspace: what a new farm begins with, the calendar to print, and reasons.

Each is read in when it is asked for: paper and forms would keep the first sight of the farm waiting.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import date
from functools import partial
from typing import TYPE_CHECKING, Final

from PySide6.QtCore import QObject, Qt, QTimer, QTimeZone, Signal
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QWidget

from planner.desk.behind import Behind
from planner.desk.outlook import Outlook
from planner.desk.pages import Fact
from planner.desk.say import tr
from planner.desk.services import WorkspaceNeeds
from planner.desk.theme import Theme
from planner.farm.crops import Batch
from planner.farm.fields import Id
from planner.farm.site import AreaRule
from planner.planning.answers import Answers

if TYPE_CHECKING:
    from planner.catalogue.catalogue import Catalogue
    from planner.desk.doors.first import FirstDialog
    from planner.desk.jobs import Job
    from planner.desk.newfarm.dialog import NewFarmDialog
    from planner.desk.session import ActLine
    from planner.desk.sureness import Sureness, SureStep


OF_BATCHES: Final = {"paper.labels": "Labels and tags…", "paper.trace": "Trace…"}
"""Entries of the menus that put batches on paper, and their words in the menu of a bar."""
PAPERED: Final = (*OF_BATCHES, "paper.phone", "paper.message")
"""Entries of the menus that are asked of `run_paper`."""


class Asking(QObject):
    """Opens the dialogs over the workspace and hands on what comes of them."""

    told = Signal(str)
    more_known = Signal()
    working = Signal(bool, float)

    def __init__(self, needs: WorkspaceNeeds, window: QWidget) -> None:
        super().__init__(window)
        self._needs, self._window = needs, window
        self.theme: Theme = needs.theme
        self._outlook: Outlook | None = None
        self._behind: Behind | None = None
        self._first: FirstDialog | None = None
        self._job: Job | None = None
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.timeout.connect(self.settle)
        self._begin: Callable[[Answers], None] | None = None
        self._new_farm: NewFarmDialog | None = None
        self._made_for: tuple[Theme, Catalogue] | None = None

    @property
    def behind(self) -> Behind | None:
        """What stands behind the outlook that is worked on."""
        return self._behind

    def show(self, behind: Behind) -> None:
        """Work on another outlook from now on."""
        self._behind, self._outlook = behind, behind.outlook
        if self._first is not None:
            self._first.show_behind(behind)
        behind.waits = True
        self._later.start()
        self._give_up()

    def settle(self) -> None:
        """Let pages tell what takes time, now that the rest has been painted."""
        self._later.stop()
        if self._behind is not None:
            self._behind.waits = False
            self.more_known.emit()

    def _give_up(self) -> None:
        if self._job is not None:
            self._job.stop()
            self._job = None
            self.working.emit(False, 0.0)

    def ask_sure(self) -> None:
        """Work out in the background how sure the forecast is; stop it when it is being worked out."""
        if self._job is not None:
            self._give_up()
        elif self._behind is not None and not self._is_sure():
            self._begin_sure()

    def _begin_sure(self) -> None:
        assert self._behind is not None
        from planner.desk.sureness import sure_job

        outlook = self._behind.outlook
        self._job = sure_job(outlook.farm, outlook.catalogue, self)
        self._job.told.connect(self._on_sure)
        self._job.done.connect(self._give_up)
        self.working.emit(True, 0.0)

    def _is_sure(self) -> bool:
        """Tell whether everything is known for the farm as it stands; ranges come last."""
        known = self._behind.sure if self._behind is not None else None
        return known is not None and known.ranges is not None

    def _on_sure(self, found: Sureness | SureStep) -> None:
        from planner.desk.sureness import SureStep

        if isinstance(found, SureStep):
            self.working.emit(True, found.share)
        elif self._behind is not None:
            self._behind.sure = found
            self.more_known.emit()

    def ask_new_farm(self, begin: Callable[[Answers], None]) -> None:
        """Ask what a new farm begins with, and hand the answers on; those given up before stand there."""
        if self._outlook is None:
            return
        self._begin = begin
        made_for = (self.theme, self._outlook.catalogue)
        if self._new_farm is None or self._made_for != made_for:
            self._forget_answers()
            self._new_farm, self._made_for = self._new_farm_dialog(self._outlook), made_for
        self._new_farm.open()

    def _new_farm_dialog(self, outlook: Outlook) -> NewFarmDialog:
        from planner.catalogue.places import zone_places
        from planner.desk.book import BookShelf
        from planner.desk.newfarm.dialog import NewFarmDialog, NewFarmNeeds
        from planner.desk.newfarm.offers import climate_choices, laid_out_for, species_cautions

        shelf = BookShelf(outlook.catalogue)
        needs = NewFarmNeeds(
            crops=shelf("crop"),
            fish=shelf("fish"),
            theme=self.theme,
            today=self._needs.now().date(),
            lay_out=partial(laid_out_for, outlook.catalogue),
            climates=climate_choices(outlook.catalogue),
            zones=zone_places(),
            cautions=species_cautions(outlook.catalogue),
            time_zone=bytes(QTimeZone.systemTimeZoneId().data()).decode(),
        )
        dialog = NewFarmDialog(needs, self._window)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, on=False)
        dialog.answered.connect(self._on_answered)
        return dialog

    def ask_new_farm_again(self) -> None:
        """Show once more what was answered for a farm that was not made after all."""
        if self._new_farm is not None:
            self._new_farm.open()

    def _forget_answers(self) -> None:
        if self._new_farm is not None:
            self._new_farm.deleteLater()
            self._new_farm = None

    def show_first(self) -> None:
        """Show what the plan of a farm that was just begun comes to."""
        self._forget_answers()
        if self._behind is None:
            return
        from planner.desk.doors.first import FirstDialog

        dialog = FirstDialog(self._behind, self._needs.conduct, self.theme, self._window)
        dialog.print_wanted.connect(self._print_today)
        dialog.why_wanted.connect(self.ask_why)
        dialog.finished.connect(self._on_first_gone)
        self._first = dialog
        dialog.open()

    def _on_first_gone(self, _result: int) -> None:
        self._first = None

    def _print_today(self) -> None:
        self.ask_print(self._needs.now().date())

    def _on_answered(self, answers: Answers) -> None:
        if self._begin is not None:
            self._begin(replace(answers, area_rule=AreaRule(self._needs.memory.area_rule)))

    def ask_why(self, facts: Sequence[Fact], number: int) -> None:
        """Show why a fact is what it is; the others can be asked about there too."""
        behind = self._behind
        if behind is None:
            return
        from planner.desk.why.dialog import WhyDialog
        from planner.desk.why.entered import answer_to

        over = QApplication.activeModalWidget() or self._window
        catalogue = behind.outlook.catalogue
        dialog = WhyDialog(
            facts, partial(answer_to, behind, changed=self._last_change), catalogue, self.theme, over
        )
        dialog.show_fact(number)
        dialog.open()

    def _last_change(self, about: Id, field: str) -> ActLine | None:
        """Return the last act that changed a field; None when the acts cannot be read."""
        session = self._needs.conduct.session
        try:
            return None if session is None else session.last_change(about, field)
        except self._needs.conduct.troubles:
            return None

    def run_paper(self, key: str, day: date, batches: Sequence[Batch]) -> None:
        """Show labels, or the trace of a batch, as they will be printed; or tell a phone."""
        if self._outlook is None:
            return
        if key in ("paper.phone", "paper.message"):
            self._tell_phone(key, day)
            return
        from planner.desk.labels.asking import LabelAsking

        asking = LabelAsking(self._needs, self._outlook, self._window)
        asking.told.connect(self.told)
        if key == "paper.labels":
            asking.ask_labels(day, batches)
        else:
            asking.ask_trace(batches)

    def _tell_phone(self, key: str, day: date) -> None:
        """Write a phone's calendar, or put the week into the clipboard as one message."""
        outlook = self._outlook
        if outlook is None:
            return
        if key == "paper.phone":
            from planner.desk.phone import PhoneDialog

            dialog = PhoneDialog(outlook, self._needs, day, self._window)
            dialog.told.connect(self.told)
            dialog.open()
            return
        from planner.paper.week_message import week_message

        week = outlook.week_of(day)
        text = week_message(outlook.farm, outlook.forecast, outlook.catalogue, week=week)
        QGuiApplication.clipboard().setText(text)
        self.told.emit(tr("Copied, {n} letters: {words}", n=len(text), words=text))

    def ask_print(self, day: date) -> None:
        """Show what there is to print, from the week of a day on, as it will be printed."""
        if self._outlook is None:
            return
        from planner.desk.print_asking import PrintAsking

        asking = PrintAsking(self._needs, self._outlook, self._window)
        asking.told.connect(self.told)
        asking.open(day)
