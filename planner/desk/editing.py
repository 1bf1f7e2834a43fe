"""Opens forms for things of the farm and turns what comes back into acts.

The only place where a wish to sow, stock, alter, lock or remove becomes a change; every one is one act.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import date
from typing import Any, Final

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from planner.actions.audit import Noted, mend_reading, note_reading, take_out_reading
from planner.actions.batches import free_code, lock_batches
from planner.actions.changing import addition, alteration, removal
from planner.catalogue.catalogue import Catalogue
from planner.desk.book import BookShelf
from planner.desk.conduct import Conduct
from planner.desk.fitting import open_sized
from planner.desk.forms.editors import ListEditor
from planner.desk.forms.form import FormDialog, FormPlan
from planner.desk.forms.plans import PLANNED, form_plan, start_new, start_of
from planner.desk.messages import Ask, Question
from planner.desk.mover import codes_of, refusal_sentence
from planner.desk.outlook import Outlook
from planner.desk.say import careful, tr
from planner.desk.theme import Theme
from planner.desk.words import ended_words, kind_words
from planner.farm.changes import ChangeSet
from planner.farm.crops import Batch
from planner.farm.farm import Farm, Thing, kind_named, kind_of, label_of, things
from planner.farm.faults import FarmFaultError
from planner.farm.fields import Id
from planner.farm.fish import FishGroup
from planner.farm.merging import brought_up
from planner.farm.water import Reading
from planner.forecast.engine import Forecaster
from planner.planning.dating import Dater
from planner.planning.settling import Settled, settle_altered, settle_new

_CAUTIONED: Final = {
    "dose": ("dose sheet",),
    "fish group": ("species choice",),
    "fish event": ("fish log", "fish harvest"),
    "solids batch": ("mineraliser card",),
}
"""Where the cautions that a form carries are to be shown, in the catalogue's words."""


class Editing(QObject):
    """Forms over one window, on the farm that is open."""

    troubled = Signal(str)
    told = Signal(str)
    made = Signal(str)
    removed = Signal(str)

    def __init__(
        self, conduct: Conduct, ask: Ask, theme: Theme, window: QWidget, *, noted: Callable[[], Noted] = Noted
    ) -> None:
        super().__init__(window)
        self._conduct, self._ask, self._window, self._noted = conduct, ask, window, noted
        self.theme = theme
        self._outlook: Outlook | None = None
        self._forecaster: Forecaster | None = None
        self._dialog: FormDialog | None = None
        self._opened: Thing | None = None
        self._removing: Thing | None = None
        self._is_new = False

    def show(self, outlook: Outlook, forecaster: Forecaster) -> None:
        """Work on another outlook from now on."""
        self._outlook, self._forecaster = outlook, forecaster

    @property
    def dialog(self) -> FormDialog | None:
        """The form that is open, None when none is."""
        return self._dialog

    def ask_new(self, word: str, today: date, given: dict[str, Any] | None = None) -> None:
        """Open the form for a new thing."""
        outlook = self._outlook
        if outlook is None:
            return
        missing = _missing_for(word, outlook.farm)
        if missing:
            self.troubled.emit(
                tr(
                    "A {kind} needs a {missing} first. Add one in the menu Set-up.",
                    kind=kind_words(word).lower(),
                    missing=missing,
                )
            )
            return
        start = start_new(word, outlook.farm, BookShelf(outlook.catalogue), today, given)
        if word == "batch":
            start.values.setdefault("plants", 1)
            start.values["code"] = self._free_code(start.values["crop"], start.values["sow_on"])
        self._is_new = True
        plan = self._plan(word, new=True)
        if word in PLANNED and today >= outlook.farm.plan_until:
            plan = replace(plan, cautions=(ended_words(outlook.farm), *plan.cautions))
        self._open(FormDialog(plan, start, self.theme, self._window))
        self._follow_crop(word)

    def alter(self, thing: Thing, today: date) -> None:
        """Open the form of a thing that is there."""
        if self._outlook is None or kind_of(thing).word == "own entry":
            return
        self._opened = thing
        start = start_of(thing, self._outlook.farm, BookShelf(self._outlook.catalogue), today)
        plan = self._plan(kind_of(thing).word, new=False)
        self._is_new = False
        self._open(FormDialog(plan, start, self.theme, self._window))

    def _plan(self, word: str, *, new: bool) -> FormPlan:
        assert self._outlook is not None
        return form_plan(word, new=new, cautions=_cautions(word, self._outlook.catalogue))

    def _open(self, dialog: FormDialog) -> None:
        if self._dialog is not None:
            self._dialog.raise_()
            dialog.deleteLater()
            return
        self._dialog = dialog
        dialog.offered.connect(self._on_offered)
        dialog.destroyed.connect(self._on_gone)
        open_sized(dialog, dialog.sizeHint().expandedTo(dialog.inside_hint()))
        dialog.open()

    def _on_gone(self) -> None:
        self._dialog = None

    def _free_code(self, crop: str, day: date) -> str:
        assert self._outlook is not None
        entry = self._outlook.catalogue.crops.get(crop)
        code = entry.code if entry else crop[:3].upper()
        return free_code(self._outlook.farm, crop_code=code, sow_on=day)

    def _follow_crop(self, word: str) -> None:
        if self._dialog is None or word != "batch":
            return
        for field in ("crop", "sow_on"):
            self._dialog.rows[field].editor.touched.connect(self._on_crop)

    def _on_crop(self) -> None:
        """Give a new batch a code that fits its crop and week, as long as nobody typed another."""
        dialog = self._dialog
        if dialog is None or dialog.code_is_own:
            return
        crop, sown = dialog.rows["crop"].editor, dialog.rows["sow_on"].editor
        if not isinstance(crop, ListEditor):
            return
        try:
            day = sown.read()
        except ValueError:
            return
        dialog.rows["code"].editor.show_value(self._free_code(crop.read(), day))

    def _on_offered(self, thing: Any) -> None:
        dialog = self._dialog
        if dialog is None or self._outlook is None:
            return
        refusals: tuple[str, ...] = ()
        try:
            change_set, refusals = self._change_set(self._brought_up(thing))
        except FarmFaultError as refused:
            dialog.show_faults(refused.faults)
            return
        if self._conduct.act(change_set, quietly=True):
            dialog.accept()
            self.made.emit(_made(change_set, thing))
            if refusals:
                self.told.emit("\n".join(refusals))
        elif self._conduct.faults:
            dialog.show_faults(self._conduct.faults)
        else:
            dialog.show_trouble(tr("It could not be kept; see the message in the window."))

    def _brought_up(self, thing: Any) -> Any:
        """Return what was typed on top of what others made of the thing since its form was opened.

        Raises `ClashError` once where both changed a field: offered again, what was typed stands.
        """
        assert self._outlook is not None
        opened = None if self._is_new else self._opened
        now = self._outlook.found.get(thing.id, self._outlook.farm.settings)
        if opened is None or now.id != thing.id:
            return thing
        self._opened = now
        return brought_up(opened, thing, now)

    def _change_set(self, thing: Any) -> tuple[ChangeSet, tuple[str, ...]]:
        assert self._outlook is not None
        assert self._forecaster is not None
        farm = self._outlook.farm
        if isinstance(thing, Batch):
            if self._is_new:
                settled = settle_new(farm, thing, self._forecaster)
                title = tr("Sow {code}", code=thing.code)
            else:
                settled = settle_altered(farm, thing, self._forecaster)
                title = tr("Change {code}", code=thing.code)
            return ChangeSet(title=title, changes=settled.changes), self._refused(settled, thing)
        if isinstance(thing, Reading):
            noting = note_reading if self._is_new else mend_reading
            return noting(farm, thing, self._noted()), ()
        if not self._is_new:
            return alteration(farm, thing, title=tr("Change {name}", name=_spoken(thing))), ()
        words = tr("Stock {name}") if isinstance(thing, FishGroup) else tr("Add {name}")
        return addition(words.format(name=_spoken(thing)), thing), ()

    def _refused(self, settled: Settled, batch: Batch) -> tuple[str, ...]:
        assert self._outlook is not None
        codes = {**codes_of(self._outlook.farm), batch.id: batch.code}
        return tuple(refusal_sentence(refusal, codes) for refusal in settled.refusals)

    def lock(self, batches: Sequence[Batch], *, locked: bool) -> None:
        """Lock batches, or unlock them, in one act."""
        if self._outlook is not None:
            self._conduct.act(lock_batches(self._outlook.farm, batches, locked=locked))

    def ask_remove(self, thing: Thing) -> None:
        """Remove a thing; ask first when others go with it."""
        if self._outlook is None:
            return
        self._removing = thing
        change_set = self._removal(thing)
        along = [
            change
            for change in change_set.changes
            if change.id != thing.id and change.word not in ("placement", "log entry")
        ]
        if not along:
            self._on_remove(go_on=True)
            return
        names = ", ".join(dict.fromkeys(_spoken(change.thing) for change in along[:8]))
        question = Question(
            title=tr("Remove {name}", name=_spoken(thing)),
            text=tr(
                "This is taken out or let go along with it: {names}. Undo brings all of it back.", names=names
            ),
            go_on=tr("Remove all of it"),
        )
        self._ask(question, self._on_remove, self._window)

    def _removal(self, thing: Thing) -> ChangeSet:
        assert self._outlook is not None
        if isinstance(thing, Reading) and self._forecaster is not None:
            dater = Dater(self._forecaster, self._outlook.farm)
            return take_out_reading(self._outlook.farm, thing.id, self._noted(), dater)
        title = tr("Remove {name}", name=_spoken(thing))
        return removal(self._outlook.farm, thing, title=title, with_dependants=True)

    def _on_remove(self, go_on: bool) -> None:
        thing, self._removing = self._removing, None
        if go_on and thing is not None and self._outlook is not None:
            change_set = self._removal(thing)
            if self._conduct.act(change_set):
                self.removed.emit(change_set.title)


def _made(change_set: ChangeSet, thing: Thing) -> Id:
    """Return the id that a thing was kept under: a reading is known by the entry that tells of it."""
    kept = [change.id for change in change_set.changes if change.after and type(change.after) is type(thing)]
    return kept[-1] if isinstance(thing, Reading) and kept else thing.id


def _cautions(word: str, catalogue: Catalogue) -> tuple[str, ...]:
    """Return the cautions of the catalogue for where a thing of a kind is entered."""
    places = _CAUTIONED.get(word, ())
    return tuple(
        f"{tr(caution.topic)}. {careful(caution.text)}"
        for caution in catalogue.cautions.values()
        if set(places) & set(caution.where)
    )


def _spoken(thing: Thing) -> str:
    kind = kind_of(thing)
    return label_of(thing) if kind.label else kind_words(kind.word).lower()


def _missing_for(word: str, farm: Farm) -> str:
    """Return what kind of thing must be there before one of this kind can be; empty when nothing lacks."""
    from_kind = {"fish group": "tank", "fish event": "fish group", "tank": "loop", "bed": "loop"}
    from_kind |= {"dose": "loop", "reading": "loop", "solids batch": "loop", "filter": "loop", "loop": "site"}
    needed = from_kind.get(word)
    if needed is None or things(farm, kind_named(needed).word):
        return ""
    return kind_words(needed).lower()
