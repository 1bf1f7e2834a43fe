"""A list of repairs for what is flagged in a week: worked out beside the window, each to be applied.

Stands on the page of the plan and wherever else a flagged week is shown. Must know nothing of how a remedy
is found.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date
from functools import partial
from threading import Event
from typing import Any, Final

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from planner.catalogue.catalogue import Catalogue
from planner.desk.behind import Behind
from planner.desk.conduct import Conduct
from planner.desk.pages import Fact
from planner.desk.plan.kit import Card, Words, Working, button, caution, column, emptied, heading, scrolled
from planner.desk.plan.part import Worker
from planner.desk.plan.remedy_words import (
    act_of,
    effect_lines,
    remedy_words,
    side_effect_words,
    verdict_words,
)
from planner.desk.plan.whys import remedy_facts
from planner.desk.say import careful, tr
from planner.desk.theme import Theme
from planner.desk.week_facts import flag_words
from planner.desk.why.cells import wish
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.forecast.engine import Forecaster
from planner.forecast.values import Flag
from planner.planning.answering import Whys
from planner.planning.remedies.ask import REPAIRABLE, Soundness, remedies
from planner.planning.remedies.effects import loop_of_flag
from planner.planning.remedies.values import Remedy
from planner.planning.why_remedies import remedy_whys

_JOB: Final = "remedies"


@dataclass(frozen=True, slots=True, kw_only=True)
class Repairs:
    """What was found for one flag, and why each repair does what it does."""

    flag: Flag
    remedies: tuple[Remedy, ...]
    whys: Whys


def repairs_of(
    flags: Sequence[Flag], today: date, farm: Farm, forecaster: Forecaster, stopped: Event
) -> Iterator[Repairs]:
    """Yield the repairs of each flag; nothing more once `stopped` is set."""
    soundness = Soundness(farm, forecaster) if flags else None
    for flag in flags:
        if stopped.is_set():
            return
        found = remedies(farm, forecaster, flag, today=today, soundness=soundness)
        yield Repairs(flag=flag, remedies=found, whys=remedy_whys(farm, forecaster, flag, found))


def repairable_flags(behind: Behind) -> tuple[Flag, ...]:
    """Return the flags there may be repairs for that reach to today or beyond, the earliest first."""
    flags = [
        flag
        for flag in behind.outlook.forecast.flags
        if flag.kind in REPAIRABLE and (flag.until_on or flag.on or behind.today) >= behind.today
    ]
    return tuple(sorted(flags, key=_by_day))


def _by_day(flag: Flag) -> tuple[date, str]:
    return flag.on or date.min, flag.name


def flags_in(behind: Behind, loop: Id, week: int) -> tuple[Flag, ...]:
    """Return the flags there may be repairs for, of a loop, that touch a week of the ruler."""
    ruler, farm = behind.outlook.forecast.ruler, behind.outlook.farm
    found = []
    for flag in repairable_flags(behind):
        first = ruler.week_of(flag.on or ruler.start_on)
        last = ruler.week_of(flag.until_on or flag.on or ruler.start_on)
        if first <= week <= last and loop_of_flag(farm, flag) == loop:
            found.append(flag)
    return tuple(found)


class RemedyList(Worker):
    """Cards of repairs, the cheapest first; `applied` carries the words of one that was taken."""

    applied = Signal(str)

    def __init__(self, theme: Theme, conduct: Conduct, parent: QWidget) -> None:
        super().__init__(parent)
        self._theme, self._conduct = theme, conduct
        self._behind: Behind | None = None
        self._flags: tuple[Flag, ...] = ()
        self._found: list[Repairs] = []
        self.buttons: list[QPushButton] = []
        self._offered: list[Remedy] = []
        self._facts: dict[QObject, tuple[Fact, ...]] = {}
        self.state = Words("", theme, self, ink="muted")
        self.working = Working(theme, self)
        inside = QWidget(self)
        self._cards = QVBoxLayout()
        self._cards.setSpacing(theme.metrics.gap)
        lines = column(inside, theme)
        lines.addWidget(self.state)
        lines.addWidget(self.working)
        lines.addLayout(self._cards)
        lines.addStretch(1)
        whole = column(self, theme, margin=0)
        whole.addWidget(scrolled(inside, self))
        self.working.stopped.connect(self._on_stop)
        self.clear()

    def clear(self, words: str = "") -> None:
        """Show nothing but a sentence."""
        self.give_up()
        self._found, self._flags = [], ()
        self._show_cards()
        self.state.say(words or tr("Choose a flagged week to see what would repair it."))

    def ask(self, behind: Behind, loop: Id, week: int) -> None:
        """Look for repairs of everything flagged in a week of a loop."""
        flags = flags_in(behind, loop, week)
        if flags:
            self.ask_flags(behind, flags)
        else:
            self.clear(tr("Nothing in this week asks for a repair."))

    def ask_flags(self, behind: Behind, flags: tuple[Flag, ...]) -> None:
        """Look for repairs of some flags; what was found before goes."""
        self._behind, self._flags, self._found = behind, flags, []
        self._show_cards()
        self.state.say("")
        self.begin(partial(repairs_of, flags, behind.today), behind, _JOB)
        self.working.show_step(tr("Trying repairs; each one is forecast before it is offered…"))

    def on_told(self, found: Any) -> None:
        self._found.append(found)
        self._show_cards()

    def on_ended(self) -> None:
        self.working.hide()

    def _on_stop(self) -> None:
        self.give_up()
        if not self._found:
            self.state.say(tr("Stopped before a repair was found."))

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self._theme = theme
        for words in self.findChildren(Words):
            words.wear(theme)

    def _show_cards(self) -> None:
        emptied(self._cards)
        self.buttons, self._offered = [], []
        self._facts.clear()
        if self._behind is None:
            return
        catalogue = self._behind.outlook.catalogue
        for repairs in self._found:
            self._cards.addWidget(heading(flag_words(repairs.flag), self._theme, self))
            if not repairs.remedies:
                none = tr("No change of the plan was found that helps. Look at it in the lanes.")
                self._cards.addWidget(Words(none, self._theme, self, ink="muted"))
            for remedy in repairs.remedies:
                self._cards.addWidget(self._card(remedy, repairs, catalogue))
            for key in dict.fromkeys(key for remedy in repairs.remedies for key in remedy.cautions):
                self._cards.addWidget(caution(careful(catalogue.cautions[key].text), self._theme, self))

    def _card(self, remedy: Remedy, repairs: Repairs, catalogue: Catalogue) -> Card:
        card = Card(self._theme, self)
        words = remedy_words(remedy, catalogue)
        head = QHBoxLayout()
        head.addWidget(heading(words, self._theme, card), 1)
        apply = button(tr("Apply"), card, tip=tr("Do this; one undo takes it back"))
        apply.setAccessibleName(tr("Apply: {words}", words=words))
        apply.clicked.connect(self._on_apply)
        why = button(tr("Why?"), card, tip=tr("Say how each figure changes, and why"))
        why.setAccessibleName(tr("Why: {words}", words=words))
        why.clicked.connect(self._on_why)
        self._facts[why] = remedy_facts(repairs.flag, remedy, repairs.whys)
        head.addWidget(why, 0, Qt.AlignmentFlag.AlignTop)
        head.addWidget(apply, 0, Qt.AlignmentFlag.AlignTop)
        card.lines.addLayout(head)
        how = Words(verdict_words(remedy), self._theme, card, ink="good" if remedy.repairs else "muted")
        card.lines.addWidget(how)
        effect = " · ".join(effect_lines(remedy, repairs.flag.kind))
        card.lines.addWidget(Words(effect, self._theme, card))
        said = side_effect_words(remedy)
        if said:
            card.lines.addWidget(Words(said, self._theme, card, ink="wrong"))
        self.buttons.append(apply)
        self._offered.append(remedy)
        return card

    def _on_why(self, _checked: bool) -> None:
        sender = self.sender()
        if sender in self._facts:
            wish(self, self._facts[sender], 0)

    def _on_apply(self, _checked: bool) -> None:
        sender = self.sender()
        if self._behind is None or sender not in self.buttons:
            return
        session = self._conduct.session
        if session is None or session.farm != self._behind.outlook.farm:
            self.clear(tr("The farm has changed since these repairs were tried. Choose the week again."))
            return
        change_set = act_of(self._offered[self.buttons.index(sender)], self._behind.outlook.catalogue)
        if self._conduct.act(change_set):
            self.applied.emit(change_set.title)
