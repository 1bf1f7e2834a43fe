"""What sections have in common that work a proposal out: shown beside today's plan, adopted, kept, dropped.

A proposal may be adopted only while the farm is as it was when it was asked for. Must know nothing of what
is proposed.
"""

from __future__ import annotations

from typing import Any, Final

from PySide6.QtWidgets import QHBoxLayout, QTabWidget, QVBoxLayout, QWidget

from planner.desk.pages import Fact
from planner.desk.places.place import PlaceNeeds
from planner.desk.plan.kit import Beside, Words, Working, button, column, heading, scrolled, stack
from planner.desk.plan.part import Part
from planner.desk.say import tr
from planner.desk.tabs import Tabs
from planner.desk.why.cells import wish
from planner.farm.changes import ChangeSet
from planner.farm.farm import Farm

_ASK_SHARE: Final = 1.8
_FIND_SHARE: Final = 4


class ProposalPart(Part):
    """Asking on the left, the proposal on the right; sections say how it is filled and adopted."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._asked: Farm | None = None
        self.found: Any = None

    # What a section says.

    def asking(self) -> QWidget:
        """Return the pane in which it is asked."""
        raise NotImplementedError

    def fill_shown(self, lines: QVBoxLayout) -> None:
        """Put what tells the proposal below its heading."""
        raise NotImplementedError

    def show_proposal(self) -> None:
        """Show the proposal that was found."""
        raise NotImplementedError

    def waiting_words(self) -> str:
        """Return what is said before anything was worked out."""
        raise NotImplementedError

    def act_found(self) -> ChangeSet:
        """Return the proposal as one act, under its words."""
        raise NotImplementedError

    def facts(self) -> tuple[Fact, ...]:
        """Return what the proposal can be asked as a whole; its tables are asked cell by cell."""
        return ()

    def has_changes(self) -> bool:
        """Tell whether there is anything to adopt."""
        raise NotImplementedError

    def scenario_name(self) -> str:
        """Return what the proposal is called among the scenarios."""
        raise NotImplementedError

    def adopted_words(self) -> str:
        """Return what is told once it is adopted."""
        raise NotImplementedError

    def on_stop(self) -> None:
        """Stop working it out."""
        self.give_up()
        self.state.say(tr("Stopped. Nothing of the farm has changed."))

    # What is common.

    def lay_out(self, *, stop: str = "") -> None:
        """Put both panes beside each other."""
        split = Beside(self.theme, self)
        split.addWidget(self.asking())
        split.addWidget(scrolled(self._finding(stop), self))
        split.setStretchFactor(1, 1)
        unit = self.theme.metrics.field_width
        split.setSizes([round(unit * _ASK_SHARE), unit * _FIND_SHARE])
        column(self, self.theme, margin=0).addWidget(split)
        self.show_found()

    def _finding(self, stop: str) -> QWidget:
        theme, inside = self.theme, QWidget(self)
        self.working = Working(theme, inside, stop=stop)
        self.state = Words("", theme, inside, ink="muted")
        self.shown = QWidget(inside)
        self.stale = Words("", theme, self.shown, ink="notice").on_ground("notice_ground", theme)
        proposal = column(self.shown, theme, margin=0)
        proposal.addLayout(self._heading())
        proposal.addWidget(self.stale)
        self.fill_shown(proposal)
        proposal.addStretch(0)
        lines = column(inside, theme)
        stack(lines, self.working, self.state)
        lines.addWidget(self.shown, 1)
        lines.addStretch(0)
        self.working.stopped.connect(self._on_stop)
        return inside

    def _heading(self) -> QHBoxLayout:
        self.head = heading("", self.theme, self.shown, large=True)
        self.adopt = button(tr("Adopt"), self.shown, tip=tr("Make this the plan; one undo takes it back"))
        self.keep = button(tr("Keep to compare"), self.shown, tip=tr("Keep this as a scenario under What if"))
        self.why = button(tr("Why?"), self.shown, tip=tr("Say how good this is, and what that is made of"))
        self.drop = button(tr("Drop"), self.shown, tip=tr("Forget this proposal"))
        row = QHBoxLayout()
        row.addWidget(self.head, 1)
        for each, slot in (
            (self.adopt, self._on_adopt),
            (self.keep, self._on_keep),
            (self.why, self._on_why),
            (self.drop, self._on_drop),
        ):
            each.clicked.connect(slot)
            row.addWidget(each)
        return row

    def tables(self) -> QTabWidget:
        """Return tabs for the tables of the proposal."""
        tabs = Tabs(self.shown)
        tabs.setAccessibleName(tr("The proposal in tables"))
        tabs.tabBar().setAccessibleName(tr("The proposal in tables"))
        tabs.setMinimumHeight(self.theme.metrics.row * 9)
        return tabs

    def paragraph(self, tabs: QTabWidget, title: str) -> Words:
        """Return a paragraph that fills a tab."""
        words = Words("", self.theme, tabs)
        words.setMargin(self.theme.metrics.margin)
        tabs.addTab(scrolled(words, tabs), title)
        return words

    def asked_of(self, farm: Farm) -> None:
        """Keep the farm that a proposal is being worked out for; the one before is forgotten."""
        self._asked, self.found = farm, None
        self.show_found()

    def take_found(self, found: Any) -> None:
        """Show what was worked out."""
        self.found = found
        self.show_found()

    def show_found(self) -> None:
        """Show the proposal, or that there is none yet."""
        self.shown.setVisible(self.found is not None)
        self.state.say("" if self.found is not None else self.waiting_words())
        if self.found is not None and self.behind is not None:
            self.show_proposal()
            self.show_stale()
            self.why.setVisible(bool(self.facts()))

    def show_stale(self) -> None:
        """Say whether the farm has changed since, for then the proposal cannot be adopted."""
        now = self.is_of_now(self._asked)
        able = now and self.found is not None and self.has_changes()
        self.keep.setEnabled(able)
        self.adopt.setEnabled(able)
        words = tr("The farm has changed since this was worked out. Work it out again to adopt it.")
        self.stale.say("" if now else words)

    def _on_stop(self) -> None:
        self.on_stop()

    def _on_adopt(self, _checked: bool) -> None:
        if self.found is None or not self.is_of_now(self._asked):
            return
        if self.act(self.act_found()):
            self.forget()
            self.told.emit(self.adopted_words())

    def _on_keep(self, _checked: bool) -> None:
        if self.found is not None and self.is_of_now(self._asked):
            self.scenario_offered.emit(self.scenario_name(), self.act_found())

    def _on_why(self, _checked: bool) -> None:
        wish(self, self.facts(), 0)

    def _on_drop(self, _checked: bool) -> None:
        self.forget()

    def forget(self) -> None:
        """Forget the proposal."""
        self.found, self._asked = None, None
        self.show_found()

    def leave(self) -> None:
        super().leave()
        self.forget()
