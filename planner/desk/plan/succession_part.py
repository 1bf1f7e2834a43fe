"""Successions: wishes in a list, how to plan, and the sowings that come of it, adopted as one act."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import date
from functools import partial
from threading import Event
from typing import Any, Final

from PySide6.QtCore import QModelIndex
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QTabWidget, QVBoxLayout, QWidget

from planner.actions.plan import adopt
from planner.desk.book import BookShelf
from planner.desk.forms.editors import Choice, enum_choices
from planner.desk.pages import Fact
from planner.desk.places.place import PlaceNeeds
from planner.desk.plan.ask_form import AskForm
from planner.desk.plan.asks import HowAsk, WantAsk, WantKind, Weekday
from planner.desk.plan.chart import WeekChart
from planner.desk.plan.closed_days import ClosedDays
from planner.desk.plan.kit import Table, Words, button, column, heading, scrolled, stack
from planner.desk.plan.part import first_day
from planner.desk.plan.proposal_part import ProposalPart
from planner.desk.plan.succession_rows import (
    headline,
    seed_lines,
    seed_words,
    sowing_columns,
    sowing_rows,
    summary_lines,
    supply_chart,
    supply_columns,
    supply_rows,
    unfit_lines,
    unfit_words,
)
from planner.desk.plan.wants import FIELDS_OF, want_of, want_words, wish_of
from planner.desk.plan.whys import Answered, asked_rows, sowing_names, succession_facts, supply_names
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import faults_words, number_words
from planner.farm.changes import ChangeSet
from planner.farm.crops import TargetUnit
from planner.farm.farm import Farm
from planner.farm.faults import FarmFaultError
from planner.forecast.engine import Forecaster
from planner.planning.answering import Whys
from planner.planning.proposal import Proposal
from planner.planning.succession_wish import SuccessionWish
from planner.planning.successions import propose
from planner.planning.wanted import RhythmOf, Want, wants_of
from planner.planning.why_successions import succession_whys

_JOB: Final = "successions"
_KINDS: Final = {
    WantKind.STEADY: "So much every week",
    WantKind.ORDER: "An order by a day",
    WantKind.RHYTHM: "In a rhythm of its own",
}


def proposal_steps(
    wants: tuple[Want, ...], wish: SuccessionWish, farm: Farm, forecaster: Forecaster, _stopped: Event
) -> Iterator[Answered]:
    """Yield what would be sown, with what tells why; the forecaster stops it."""
    found = propose(farm, forecaster, wants, wish=wish)
    yield Answered(found, succession_whys(farm, forecaster, wants, found))


class SuccessionPart(ProposalPart):
    """Wishes, limits, preview, adopt."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._begun = False
        self.wants: list[Want] = []
        self.found: Proposal | None = None
        self._whys: Whys = {}
        self.lay_out()
        self._on_kind(0)
        self._show_wants()

    # What is asked.

    def asking(self) -> QWidget:
        theme, pane, inside = self.theme, QWidget(self), QWidget(self)
        self._make_want(inside)
        self._make_list(inside)
        self.how = AskForm(HowAsk, theme, self._today, inside)
        self.closed = ClosedDays(theme, inside)
        self.begin_it = button(tr("Work out"), pane, tip=tr("Work out what to sow for the list"))
        buttons = QHBoxLayout()
        buttons.addWidget(self.take)
        buttons.addWidget(self.remove)
        buttons.addStretch(1)
        lines = column(inside, theme)
        stack(lines, heading(tr("Wanted"), theme, inside), self.kind, self.want, self.add)
        stack(lines, heading(tr("On the list"), theme, inside), self.no_wants, self.table)
        lines.addLayout(buttons)
        stack(lines, heading(tr("How"), theme, inside), self.closed, self.how)
        lines.addStretch(1)
        whole = column(pane, theme, margin=0)
        whole.addWidget(scrolled(inside, pane), 1)
        whole.addWidget(self.begin_it)
        self.begin_it.clicked.connect(self._on_begin)
        return pane

    @property
    def _today(self) -> date:
        return self.needs.now().date()

    def _make_want(self, inside: QWidget) -> None:
        self.kind = QComboBox(inside)
        self.kind.setAccessibleName(tr("In which way it is wanted"))
        for kind in WantKind:
            self.kind.addItem(tr(_KINDS[kind]), kind)
        days = (Choice(value=None, words=tr("any day of the week")), *enum_choices(Weekday))
        choices = {
            "crop": (Choice(value="", words=tr("none")),),
            "unit": enum_choices(TargetUnit),
            "of": enum_choices(RhythmOf),
            "ready_by": days,
        }
        self.want = AskForm(WantAsk, self.theme, self._today, inside, choices=choices)
        self.add = button(tr("Add to the list"), inside)
        self.kind.currentIndexChanged.connect(self._on_kind)
        self.add.clicked.connect(self._on_add)

    def _make_list(self, inside: QWidget) -> None:
        theme = self.theme
        self.table = Table((Column(title=tr("Wanted")),), tr("What is wanted"), theme, inside)
        self.no_wants = Words(
            tr("The list is empty. Add what you want, or take the farm's targets."),
            theme,
            inside,
            ink="muted",
        )
        self.remove = button(tr("Remove"), inside, tip=tr("Take the chosen one off the list"))
        self.take = button(tr("Take the targets"), inside, tip=tr("Put the farm's targets on the list"))
        self.remove.clicked.connect(self._on_remove)
        self.take.clicked.connect(self._on_take)

    def fill_shown(self, lines: QVBoxLayout) -> None:
        self.summary = Words("", self.theme, self.shown)
        self.unfit = Words("", self.theme, self.shown, ink="wrong")
        stack(lines, self.summary, self.unfit)
        lines.addWidget(self._tables(), 1)

    def _tables(self) -> QTabWidget:
        tabs = self.tabs = self.tables()
        self.sowings = Table(sowing_columns(), tr("Sowings"), self.theme, tabs)
        self.seeds = Words("", self.theme, tabs, ink="muted")
        sown = QWidget(tabs)
        lines = column(sown, self.theme, margin=0)
        lines.addWidget(self.sowings, 1)
        lines.addWidget(self.seeds)
        tabs.addTab(sown, tr("Sowings"))
        tabs.addTab(self._weeks(tabs), tr("Week by week"))
        self.rules = self.paragraph(tabs, tr("Seeds"))
        self.misfits = self.paragraph(tabs, tr("What fits"))
        self.sowings.selectionModel().currentRowChanged.connect(self._on_sowing)
        return tabs

    def _weeks(self, tabs: QWidget) -> QWidget:
        weeks = QWidget(tabs)
        self.crop = QComboBox(weeks)
        self.crop.setAccessibleName(tr("Crop whose harvest is shown"))
        self.chart = WeekChart(self.theme, weeks)
        self.supply = Table(supply_columns(), tr("Week by week"), self.theme, weeks)
        lines = column(weeks, self.theme, margin=0)
        stack(lines, self.crop, self.chart)
        lines.addWidget(self.supply, 1)
        self.crop.currentIndexChanged.connect(self._show_course)
        return weeks

    # What there is.

    def take_focus(self) -> None:
        self.kind.setFocus()

    def refresh(self) -> None:
        assert self.behind is not None
        outlook = self.behind.outlook
        crops = BookShelf(outlook.catalogue)("crop")
        self.want.show_choices(
            "crop", tuple(replace(each, note=each.note.partition("\n")[0]) for each in crops)
        )
        self.take.setEnabled(bool(outlook.farm.targets))
        if not self._begun:
            self._begun = True
            first_on = first_day(self._today, outlook.farm)
            self.how.show_value("sow_from", first_on)
            self.want.show_value("from_on", first_on)
        self._show_wants()
        self.show_stale()

    def _show_wants(self) -> None:
        rows: list[Row] = []
        if self.behind is not None:
            catalogue = self.behind.outlook.catalogue
            words = [want_words(want, catalogue) for want in self.wants]
            rows = [Row(id=str(at), texts=(said,), sort=(at,)) for at, said in enumerate(words)]
        self.table.show_rows(rows)
        self.table.setVisible(bool(rows))
        self.no_wants.setVisible(not rows)
        self.remove.setVisible(bool(rows))
        self.begin_it.setEnabled(bool(rows) and not self.is_working)

    def facts(self) -> tuple[Fact, ...]:
        if self.found is None or self.behind is None:
            return ()
        return succession_facts(self.found, self.behind.outlook.catalogue, self._whys)

    def waiting_words(self) -> str:
        return tr("The sowings for your list are shown here. Nothing changes until you adopt them.")

    def has_changes(self) -> bool:
        return self.found is not None and bool(self.found.batches)

    def show_proposal(self) -> None:
        found = self.found
        assert found is not None
        assert self.behind is not None
        outlook = self.behind.outlook
        ruler = outlook.forecast.ruler
        self.head.setText(headline(found))
        self.summary.say("\n".join(summary_lines(found, outlook.farm, outlook.catalogue, ruler)))
        unfit = tuple(unfit_lines(found, outlook.catalogue))
        self.unfit.say(unfit_words(found))
        self.misfits.setText(
            "\n\n".join(unfit) or tr("Everything that is wanted has its sowing and its room.")
        )
        self.tabs.setTabText(
            3, tr("What does not fit ({count})", count=len(unfit)) if unfit else tr("What fits")
        )
        rows = sowing_rows(found, outlook.farm, outlook.catalogue)
        self.sowings.show_rows(asked_rows(rows, sowing_names(found), self._whys))
        rows = supply_rows(found, outlook.catalogue, ruler)
        self.supply.show_rows(asked_rows(rows, supply_names(found, ruler), self._whys))
        self.rules.setText("\n\n".join(seed_lines(found, outlook.catalogue)))
        self.seeds.setText(tr("Choose a sowing to see how its seeds are counted."))
        blocked = self.crop.blockSignals(True)
        self.crop.clear()
        for key in dict.fromkeys(week.crop for week in found.weeks):
            self.crop.addItem(outlook.crop_name(key), key)
        self.crop.blockSignals(blocked)
        self._show_course()

    def _show_course(self, *_at: int) -> None:
        key = self.crop.currentData()
        if self.found is not None and self.behind is not None and key:
            outlook = self.behind.outlook
            self.chart.show_chart(
                supply_chart(self.found, key, outlook.catalogue, outlook.forecast.ruler, self._whys)
            )

    def _on_sowing(self, _index: QModelIndex, _before: QModelIndex) -> None:
        row = self.sowings.current()
        if row is not None:
            self.seeds.setText(f"{row.texts[1]}: {seed_words(row.payload.seeding)}.")

    # What is done.

    def _on_kind(self, _at: int) -> None:
        shown = FIELDS_OF[self.kind.currentData()]
        for field in self.want.rows:
            self.want.show_field(field, shown=field in shown)

    def _on_add(self, _checked: bool) -> None:
        ask = self.want.read()
        if ask is None or self.behind is None:
            return
        farm = self.behind.outlook.farm
        try:
            want = want_of(self.kind.currentData(), ask, today=self._today, last_on=farm.plan_until)
        except FarmFaultError as refused:
            self.want.show_faults(refused.faults)
            return
        self.wants.append(want)
        self._show_wants()

    def _on_remove(self, _checked: bool) -> None:
        row = self.table.current()
        at = int(row.id) if row is not None else len(self.wants) - 1
        del self.wants[at : at + 1]
        self._show_wants()

    def _on_take(self, _checked: bool) -> None:
        if self.behind is not None:
            new = [want for want in wants_of(self.behind.outlook.farm.targets) if want not in self.wants]
            self.wants.extend(new)
            self._show_wants()

    def _on_begin(self, _checked: bool) -> None:
        ask = self.how.read()
        if ask is None or self.behind is None or not self.closed.is_sound():
            return
        try:
            wish = wish_of(ask, self.closed.closed, today=self._today)
        except FarmFaultError as refused:
            self.how.show_faults(refused.faults)
            return
        self.asked_of(self.behind.outlook.farm)
        self.begin(partial(proposal_steps, tuple(self.wants), wish), self.behind, _JOB)
        self.begin_it.setEnabled(False)
        self.working.show_step(
            tr(
                "Counting back from {count} wishes, and placing the sowings…",
                count=number_words(len(self.wants)),
            )
        )

    def on_told(self, found: Any) -> None:
        self._whys = found.whys
        self.take_found(found.found)

    def on_ended(self) -> None:
        self.working.hide()
        self.begin_it.setEnabled(bool(self.wants))

    def on_failed(self, fault: Exception) -> None:
        if not isinstance(fault, FarmFaultError):
            raise fault
        self.state.say(tr("No sowings could be worked out: {why}", why=faults_words(fault.faults)))

    def act_found(self) -> ChangeSet:
        assert self.found is not None
        assert self.behind is not None
        count = len(self.found.batches)
        title = tr("Adopt 1 sowing") if count == 1 else tr("Adopt {count} sowings", count=number_words(count))
        return ChangeSet(title=title, changes=adopt(self.behind.outlook.farm, self.found).changes)

    def scenario_name(self) -> str:
        return tr("Successions")

    def adopted_words(self) -> str:
        return tr("The sowings are in the plan. Undo takes them out again.")

    def leave(self) -> None:
        super().leave()
        self._begun = False
        self.wants.clear()
        self._show_wants()

    def wear(self, theme: Theme) -> None:
        super().wear(theme)
        self.chart.wear(theme)
