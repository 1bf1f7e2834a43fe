"""What is done with several chosen batches at once: kept to be pasted, sown again, one parted in two.

Turns each wish into one act and says what came of it. Must know nothing of the lanes.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import timedelta
from typing import Final

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from planner.actions.batches import free_code, split_batch
from planner.desk.conduct import Conduct
from planner.desk.gathering_dialogs import PartDialog, PasteDialog
from planner.desk.mover import codes_of, refusal_sentence
from planner.desk.outlook import Outlook
from planner.desk.say import tr
from planner.farm.changes import ChangeSet, applied
from planner.farm.crops import Batch
from planner.farm.farm import by_id
from planner.farm.faults import FarmFaultError
from planner.farm.fields import Id
from planner.forecast.engine import Forecaster
from planner.planning.gathered import parted, sown_again, weeks_spanned
from planner.planning.placement import Refusal

GATHERED: Final = {
    "change.copy": "Copy",
    "change.paste": "Paste some weeks later…",
    "change.again": "Same again next week",
    "change.split": "Split…",
}
"""Entries of the menus that act on all chosen batches, and their words in the menu of a bar."""


class Gathering(QObject):
    """Copies, pastes and splits over one window, on the farm that is open."""

    troubled = Signal(str)
    told = Signal(str)
    made = Signal(list)

    def __init__(self, conduct: Conduct, window: QWidget) -> None:
        super().__init__(window)
        self._conduct, self._window = conduct, window
        self._outlook: Outlook | None = None
        self._forecaster: Forecaster | None = None
        self._kept: tuple[Id, ...] = ()
        self._parted: Id | None = None
        self.dialog: PasteDialog | PartDialog | None = None

    def show(self, outlook: Outlook, forecaster: Forecaster) -> None:
        """Work on another outlook from now on."""
        self._outlook, self._forecaster = outlook, forecaster

    def run(self, key: str, batches: Sequence[Batch]) -> None:
        """Do what an entry asks for with the chosen batches."""
        if key == "change.copy":
            self.copy(batches)
        elif key == "change.paste":
            self.ask_paste()
        elif key == "change.again":
            self.again(batches)
        else:
            self.ask_part(batches)

    def copy(self, batches: Sequence[Batch]) -> None:
        """Keep batches in mind, to be pasted."""
        if not batches:
            self.troubled.emit(tr("Choose a batch first, or several with Ctrl and a click."))
            return
        self._kept = tuple(batch.id for batch in batches)
        self.told.emit(tr("Copied: {codes}. Paste sows them again, later.", codes=_codes(batches)))

    def ask_paste(self) -> None:
        """Ask how many weeks later what was copied is sown again."""
        batches = self._found(self._kept)
        if not batches or self._outlook is None:
            self.troubled.emit(tr("Nothing has been copied yet. Choose batches and copy them first."))
            return
        weeks = weeks_spanned(self._outlook.farm, self._kept)
        dialog = PasteDialog(batches, weeks, self._window)
        dialog.offered.connect(self._on_paste)
        self._open(dialog)

    def _on_paste(self, weeks: int) -> None:
        assert self.dialog is not None
        if self._sow_again(self._found(self._kept), weeks):
            self.dialog.accept()

    def again(self, batches: Sequence[Batch]) -> None:
        """Sow the same again next week."""
        if not batches:
            self.troubled.emit(tr("Choose a batch first, or several with Ctrl and a click."))
            return
        self._sow_again(batches, 1)

    def _sow_again(self, batches: Sequence[Batch], weeks: int) -> bool:
        if self._outlook is None or self._forecaster is None:
            return False
        days = timedelta(weeks=weeks).days
        settled = sown_again(self._outlook.farm, batches, days, self._forecaster)
        twins = [change.after for change in settled.changes if isinstance(change.after, Batch)]
        title = tr("Sow {codes} again", codes=_codes(batches))
        if not self._conduct.act(ChangeSet(title=title, changes=settled.changes)):
            return False
        self.made.emit([twin.id for twin in twins])
        said = [tr("Sown again: {codes}", codes=_codes(twins))]
        codes = codes_of(self._outlook.farm) | {twin.id: twin.code for twin in twins}
        said += [refusal_sentence(refusal, codes) for refusal in settled.refusals]
        self.told.emit("\n".join(said))
        return True

    def ask_part(self, batches: Sequence[Batch]) -> None:
        """Ask how many plants of a batch become a batch of their own, and how much later."""
        if len(batches) != 1:
            self.troubled.emit(tr("Choose one batch to split."))
            return
        (batch,) = batches
        if batch.plants == 1:
            self.troubled.emit(tr("{code} has 1 plant and cannot be split.", code=batch.code))
            return
        self._parted = batch.id
        dialog = PartDialog(batch, self._window)
        dialog.offered.connect(self._on_part)
        self._open(dialog)

    def _on_part(self, plants: int, days: int) -> None:
        dialog, batch = self.dialog, next(iter(self._found((self._parted or Id(""),))), None)
        if dialog is None or batch is None:
            self.troubled.emit(tr("The batch is no longer there."))
            return
        try:
            found = self._part(batch, plants, days)
        except FarmFaultError as refused:
            dialog.say_trouble(self._conduct.said(refused.faults))
            return
        if isinstance(found, str):
            dialog.say_trouble(found)
        elif self._conduct.act(found, quietly=True):
            dialog.accept()
        else:
            dialog.say_trouble(self._conduct.said(self._conduct.faults))

    def _part(self, batch: Batch, plants: int, days: int) -> ChangeSet | str:
        """Return the act that splits a batch, or why it cannot be."""
        assert self._outlook is not None
        assert self._forecaster is not None
        farm = self._outlook.farm
        crop = self._outlook.catalogue.crops[batch.crop].code
        code = free_code(farm, crop_code=crop, sow_on=batch.sow_on + timedelta(days=days))
        split = split_batch(farm, batch.id, plants=plants, code=code)
        (part,) = (each for each in applied(farm, split).batches if each.code == code)
        found = parted(farm, split, part.id, days, self._forecaster)
        if isinstance(found, Refusal):
            return refusal_sentence(found, codes_of(farm) | {part.id: code})
        return ChangeSet(title=tr("Split {code} from {batch}", code=code, batch=batch.code), changes=found)

    def _found(self, ids: Sequence[Id]) -> tuple[Batch, ...]:
        known = by_id(self._outlook.farm.batches) if self._outlook else {}
        return tuple(known[each] for each in ids if each in known)

    def _open(self, dialog: PasteDialog | PartDialog) -> None:
        if self.dialog is not None:
            self.dialog.raise_()
            dialog.deleteLater()
            return
        self.dialog = dialog
        dialog.destroyed.connect(self._on_gone)
        dialog.open()

    def _on_gone(self) -> None:
        self.dialog = None


_NAMED = 3


def _codes(batches: Sequence[Batch]) -> str:
    """Return the codes of a few batches, or how many there are."""
    if len(batches) > _NAMED:
        return tr("{many} batches", many=len(batches))
    return ", ".join(batch.code for batch in batches)
