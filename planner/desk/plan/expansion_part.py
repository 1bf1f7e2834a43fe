"""Whether a loop can carry more beds: four verdicts with what limits, the figures, and the cautions."""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from threading import Event
from typing import Any, Final

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from planner.desk.book import BookShelf
from planner.desk.forms.editors import Choice, enum_choices, thing_choices
from planner.desk.pages import Fact
from planner.desk.places.place import PlaceNeeds
from planner.desk.plan.ask_form import AskForm
from planner.desk.plan.asks import ExpandAsk
from planner.desk.plan.expansion_words import (
    ANSWER_INKS,
    MATTER_WORDS,
    answer_words,
    headline,
    month_columns,
    month_rows,
    number_lines,
    question_of,
)
from planner.desk.plan.kit import (
    Beside,
    Card,
    Table,
    Words,
    Working,
    button,
    caution,
    column,
    emptied,
    heading,
    scrolled,
    stack,
)
from planner.desk.plan.part import Part
from planner.desk.plan.whys import Answered, asked_rows, expansion_facts, month_names, verdict_facts
from planner.desk.say import careful, tr
from planner.desk.why.cells import wish
from planner.desk.words import faults_words
from planner.farm.farm import Farm
from planner.farm.faults import FarmFaultError
from planner.farm.species import BedKind, CropGroup
from planner.forecast.engine import Forecaster
from planner.planning.answering import Whys
from planner.planning.expansion.ask import expansion
from planner.planning.expansion.verdicts import Expansion, Question, Verdict
from planner.planning.why_expansion import expansion_whys

_JOB: Final = "more beds"


def verdict_steps(
    question: Question, farm: Farm, forecaster: Forecaster, _stopped: Event
) -> Iterator[Answered]:
    """Yield the four verdicts, with what tells why; the forecaster stops it."""
    found = expansion(farm, forecaster, question)
    yield Answered(found, expansion_whys(farm, forecaster, question, found))


class ExpansionPart(Part):
    """The question on the left, the verdicts on the right."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._asked: Farm | None = None
        self._area_m2 = 0.0
        self.found: Expansion | None = None
        self._whys: Whys = {}
        self._facts: dict[QObject, tuple[Fact, ...]] = {}
        split = Beside(self.theme, self)
        split.addWidget(self._asking())
        split.addWidget(scrolled(self._finding(), self))
        split.setStretchFactor(1, 1)
        unit = self.theme.metrics.field_width
        split.setSizes([round(unit * 1.7), unit * 4])
        column(self, self.theme, margin=0).addWidget(split)
        self._show_found()

    def _asking(self) -> QWidget:
        theme, pane, inside = self.theme, QWidget(self), QWidget(self)
        none = (Choice(value="", words=tr("none")),)
        kinds = tuple(each for each in enum_choices(BedKind) if each.value is not BedKind.NURSERY)
        choices = {"loop": none, "crop": none, "kind": kinds, "crop_group": enum_choices(CropGroup)}
        self.form = AskForm(ExpandAsk, theme, self.needs.now().date(), inside, choices=choices)
        self.begin_it = button(tr("Ask"), pane, tip=tr("Ask whether the loop can carry these beds"))
        lines = column(inside, theme)
        empty = Words(
            tr("Leave empty what you do not know: the verdict says what it lacks."),
            theme,
            inside,
            ink="muted",
        )
        stack(lines, heading(tr("Beds to be added"), theme, inside), empty, self.form)
        lines.addStretch(1)
        whole = column(pane, theme, margin=0)
        whole.addWidget(scrolled(inside, pane), 1)
        whole.addWidget(self.begin_it)
        self.begin_it.clicked.connect(self._on_begin)
        return pane

    def _finding(self) -> QWidget:
        theme, inside = self.theme, QWidget(self)
        self.working = Working(theme, inside)
        self.state = Words("", theme, inside, ink="muted")
        self.stale = Words("", theme, inside, ink="notice").on_ground("notice_ground", theme)
        self.head = heading("", theme, inside, large=True)
        self.verdicts, self.cautions = QVBoxLayout(), QVBoxLayout()
        self.verdicts.setSpacing(theme.metrics.gap)
        self.cautions.setSpacing(theme.metrics.gap)
        self.months_head = heading(tr("Extra area that the feed carries, by month"), theme, inside)
        self.months = Table(month_columns(), tr("Extra area that the feed carries, by month"), theme, inside)
        lines = column(inside, theme)
        stack(lines, self.working, self.state, self.stale, self.head)
        lines.addLayout(self.verdicts)
        lines.addLayout(self.cautions)
        stack(lines, self.months_head, self.months)
        lines.addStretch(1)
        self.working.stopped.connect(self._on_stop)
        return inside

    def take_focus(self) -> None:
        self.form.editor("loop").setFocus()

    def refresh(self) -> None:
        assert self.behind is not None
        outlook = self.behind.outlook
        farm = outlook.farm
        first = not self.form.editor("loop").read()
        self.form.show_choices("loop", thing_choices(farm.loops, "name", none=not farm.loops))
        none = (Choice(value="", words=tr("none")),)
        self.form.show_choices("crop", none + tuple(BookShelf(outlook.catalogue)("crop")))
        if first:
            self._begin_with(farm)
        self.begin_it.setEnabled(bool(farm.loops) and not self.is_working)
        if not farm.loops:
            self.state.say(tr("There is no loop of water yet. Add one in the menu Set-up."))
        self._show_stale()

    def _begin_with(self, farm: Farm) -> None:
        """Begin with one bed more, like the first of the farm."""
        for bed in farm.beds:
            if bed.kind is not BedKind.NURSERY:
                self.form.show_value("area_m2", bed.area_m2)
                self.form.show_value("kind", bed.kind)
                self.form.show_value("depth_cm", bed.depth_cm)
                return

    def _show_stale(self) -> None:
        now = self.found is None or self.is_of_now(self._asked)
        self.stale.say("" if now else tr("The farm has changed since. Ask again."))

    def _show_found(self) -> None:
        found = self.found
        emptied(self.verdicts)
        self._facts.clear()
        emptied(self.cautions)
        for part in (self.head, self.months_head, self.months):
            part.setVisible(found is not None)
        self.stale.hide()
        if found is None or self.behind is None:
            self.state.say(
                tr("Four verdicts are given: nutrients; flow; filter and oxygen; light, power and structure.")
            )
            return
        self.state.say("")
        self.head.setText(headline(found, self._area_m2))
        for verdict in found.verdicts:
            self.verdicts.addWidget(self._card(verdict))
        catalogue = self.behind.outlook.catalogue
        for key in found.cautions:
            self.cautions.addWidget(caution(careful(catalogue.cautions[key].text), self.theme, self))
        rows = month_rows(found.area_by_month)
        self.months.show_rows(asked_rows(rows, month_names(rows), self._whys))

    def _card(self, verdict: Verdict) -> Card:
        theme, card = self.theme, Card(self.theme, self)
        said = Words(answer_words(verdict), theme, card, ink=ANSWER_INKS[verdict.answer])
        head = QHBoxLayout()
        head.addWidget(heading(tr(MATTER_WORDS[verdict.matter]), theme, card), 1)
        head.addWidget(self._why_button(verdict, card))
        card.lines.addLayout(head)
        card.lines.addWidget(said)
        grid = QGridLayout()
        grid.setHorizontalSpacing(theme.metrics.wide)
        for at, (label, value) in enumerate(number_lines(verdict)):
            named = Words(label, theme, card, ink="muted")
            given = QLabel(value, card)
            given.setAccessibleName(f"{label}: {value}")
            grid.addWidget(named, at, 0)
            grid.addWidget(given, at, 1)
        grid.setColumnStretch(0, 2)
        grid.setColumnStretch(1, 1)
        card.lines.addLayout(grid)
        return card

    def _why_button(self, verdict: Verdict, card: Card) -> QPushButton:
        why = button(tr("Why?"), card, tip=tr("Say where the figures of this verdict come from"))
        why.setAccessibleName(tr("Why: {matter}", matter=tr(MATTER_WORDS[verdict.matter])))
        why.clicked.connect(self._on_why)
        assert self.found is not None
        self._facts[why] = (*verdict_facts(verdict, self._whys), *expansion_facts(self.found, self._whys))
        why.setVisible(bool(self._facts[why]))
        return why

    def _on_why(self, _checked: bool) -> None:
        sender = self.sender()
        if sender in self._facts:
            wish(self, self._facts[sender], 0)

    def _on_begin(self, _checked: bool) -> None:
        ask = self.form.read()
        if ask is None or self.behind is None:
            return
        try:
            question = question_of(ask, self.behind.outlook.catalogue)
        except FarmFaultError as refused:
            self.form.show_faults(refused.faults)
            return
        self._asked, self._area_m2, self.found = self.behind.outlook.farm, ask.area_m2, None
        self._show_found()
        self.begin(partial(verdict_steps, question), self.behind, _JOB)
        self.begin_it.setEnabled(False)
        self.working.show_step(tr("Reckoning the loop with these beds…"))

    def on_told(self, found: Any) -> None:
        self.found, self._whys = found.found, found.whys
        self._show_found()

    def on_ended(self) -> None:
        self.working.hide()
        self.begin_it.setEnabled(True)

    def on_failed(self, fault: Exception) -> None:
        if not isinstance(fault, FarmFaultError):
            raise fault
        self.form.show_faults(fault.faults)
        self.state.say(tr("It could not be worked out: {why}", why=faults_words(fault.faults)))

    def _on_stop(self) -> None:
        self.give_up()
        self.state.say(tr("Stopped."))

    def leave(self) -> None:
        super().leave()
        self.found, self._asked = None, None
        self._show_found()
