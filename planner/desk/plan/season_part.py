"""A season worked out from the targets: what is wanted, the limits, and the proposal beside today's plan."""

from __future__ import annotations

from functools import partial
from threading import Event
from typing import Any, Final

from PySide6.QtWidgets import (
    QComboBox,
    QHBoxLayout,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from planner.actions.plan import remove_target
from planner.desk.forms.editors import enum_choices
from planner.desk.pages import Fact
from planner.desk.places.place import PlaceNeeds
from planner.desk.plan.ask_form import AskForm
from planner.desk.plan.asks import SeasonAsk, Weekday
from planner.desk.plan.chart import WeekChart
from planner.desk.plan.closed_days import ClosedDays
from planner.desk.plan.kit import Table, Words, button, column, heading, scrolled, stack
from planner.desk.plan.part import first_day
from planner.desk.plan.proposal_part import ProposalPart
from planner.desk.plan.season_rows import (
    adopt_words,
    amount_words,
    balance_chart,
    crop_chart,
    difference_columns,
    difference_rows,
    difference_words,
    headline,
    judged_lines,
    note_lines,
    step_words,
    week_columns,
    week_rows,
)
from planner.desk.plan.season_work import SeasonFound, season_steps
from planner.desk.plan.wants import work_of
from planner.desk.plan.whys import asked_rows, difference_names, plan_facts, season_names
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import NONE, day_words, faults_words
from planner.farm.changes import ChangeSet
from planner.farm.crops import Target
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.faults import FarmFaultError
from planner.farm.species import ELEMENTS
from planner.forecast.values import Ruler
from planner.planning.rhythm import WorkDays
from planner.planning.season_plan.job import PlanProgress
from planner.planning.season_plan.options import PlanOptions
from planner.planning.season_plan.plan import NOTHING_PLANNED

_JOB: Final = "season plan"
_EXACT_TIMES: Final = 6.0
"""The exact search goes on for so many times what the quick one takes."""


def options_of(ask: SeasonAsk, ruler: Ruler, work: WorkDays) -> PlanOptions:
    """Return what is asked of the engine; the day of sowing is counted from the first of the farm's week."""
    return PlanOptions(
        from_on=ask.from_on,
        weeks=ask.weeks,
        sow_weekday=(ask.sow_weekday.value - ruler.start_on.weekday()) % DAYS_PER_WEEK,
        work=work,
        lot_plants=ask.lot_plants,
        labour_min_per_week=ask.labour_min_per_week,
        seconds=ask.search_seconds,
        exact=ask.exact,
        exact_seconds=ask.search_seconds * _EXACT_TIMES,
    )


class SeasonPart(ProposalPart):
    """Asks, works out, shows the proposal, adopts it as one act or drops it."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._enough = Event()
        self._begun = False
        self.found: SeasonFound | None = None
        self.lay_out(stop=tr("Stop, keep the best"))

    # What is asked.

    def asking(self) -> QWidget:
        theme, pane, inside = self.theme, QWidget(self), QWidget(self)
        columns = (
            Column(title=tr("Crop")),
            Column(title=tr("Each week"), numeric=True),
            Column(title=tr("Until")),
        )
        self.targets = Table(columns, tr("Wanted each week"), theme, inside)
        self.no_targets = Words(
            tr("Nothing is wanted yet. Add a target: so much of a crop each week."),
            theme,
            inside,
            ink="muted",
        )
        self.add = button(tr("Add…"), inside, tip=tr("Add a target"))
        self.alter = button(tr("Alter…"), inside, tip=tr("Alter the chosen target"))
        self.remove = button(tr("Remove"), inside, tip=tr("Remove the chosen target"))
        buttons = QHBoxLayout()
        for each, slot in (
            (self.add, self._on_add),
            (self.alter, self._on_alter),
            (self.remove, self._on_remove),
        ):
            each.setAccessibleName(each.toolTip())
            each.clicked.connect(slot)
            buttons.addWidget(each)
        buttons.addStretch(1)
        self.form = AskForm(
            SeasonAsk,
            theme,
            self.needs.now().date(),
            inside,
            choices={"sow_weekday": enum_choices(Weekday)},
        )
        self.room = Words("", theme, inside, ink="muted")
        self.begin_it = button(tr("Work out"), pane, tip=tr("Work a season out from what is wanted"))
        lines = column(inside, theme)
        lines.addWidget(heading(tr("What is wanted"), theme, inside))
        lines.addWidget(self.no_targets)
        lines.addWidget(self.targets)
        lines.addLayout(buttons)
        lines.addWidget(heading(tr("Within these limits"), theme, inside))
        self.closed = ClosedDays(theme, inside)
        stack(lines, self.room, self.closed, self.form)
        lines.addStretch(1)
        whole = column(pane, theme, margin=0)
        whole.addWidget(scrolled(inside, pane), 1)
        whole.addWidget(self.begin_it)
        self.targets.doubleClicked.connect(self._on_alter)
        self.begin_it.clicked.connect(self._on_begin)
        return pane

    def fill_shown(self, lines: QVBoxLayout) -> None:
        self.judged = Words("", self.theme, self.shown)
        self.differs = Words("", self.theme, self.shown)
        stack(lines, self.judged, self.differs)
        lines.addLayout(self._charts())
        lines.addWidget(self._tables(), 1)

    def _charts(self) -> QVBoxLayout:
        self.crop, self.loop, self.element = (QComboBox(self.shown) for _ in range(3))
        self.crop.setAccessibleName(tr("Crop whose harvest is shown"))
        self.loop.setAccessibleName(tr("Loop whose balance is shown"))
        self.element.setAccessibleName(tr("Element whose balance is shown"))
        self.element.addItems([element.capitalize() for element in ELEMENTS])
        self.charts = (WeekChart(self.theme, self.shown), WeekChart(self.theme, self.shown))
        choose, drawn = QHBoxLayout(), QHBoxLayout()
        choose.addWidget(self.crop, 1)
        choose.addWidget(self.loop)
        choose.addWidget(self.element)
        for chart in self.charts:
            drawn.addWidget(chart, 1)
        lines = QVBoxLayout()
        lines.addLayout(choose)
        lines.addLayout(drawn)
        self.crop.currentIndexChanged.connect(self._show_courses)
        self.loop.currentIndexChanged.connect(self._show_courses)
        self.element.currentIndexChanged.connect(self._show_courses)
        return lines

    def _tables(self) -> QTabWidget:
        tabs = self.tabs = self.tables()
        self.weeks = Table(week_columns(), tr("Week by week"), self.theme, tabs)
        self.differences = Table(difference_columns(), tr("What differs from today's plan"), self.theme, tabs)
        tabs.addTab(self.weeks, tr("Week by week"))
        tabs.addTab(self.differences, tr("What differs"))
        self.notes = self.paragraph(tabs, tr("To know"))
        return tabs

    # What there is.

    def take_focus(self) -> None:
        self.targets.setFocus() if self.targets.model_of_rows.rows else self.add.setFocus()

    def refresh(self) -> None:
        assert self.behind is not None
        outlook = self.behind.outlook
        rows = tuple(_target_row(each, outlook.crop_name(each.crop)) for each in outlook.farm.targets)
        self.targets.show_rows(rows)
        for part in (self.targets, self.alter, self.remove):
            part.setVisible(bool(rows))
        self.no_targets.setVisible(not rows)
        self.room.say(room_words(outlook.farm))
        if rows and self.targets.current() is None:
            self.targets.selectRow(0)
        if not self._begun:
            self._begun = True
            self.form.show_value("from_on", first_day(self.needs.now().date(), outlook.farm))
        self.show_stale()

    def facts(self) -> tuple[Fact, ...]:
        return () if self.found is None else plan_facts(self.found.plan, self.found.whys)

    def waiting_words(self) -> str:
        return tr("A proposal is shown here beside today's plan. Nothing changes until you adopt it.")

    def has_changes(self) -> bool:
        return self.found is not None and self.found.plan.status not in NOTHING_PLANNED

    def show_proposal(self) -> None:
        found = self.found
        assert found is not None
        assert self.behind is not None
        outlook = self.behind.outlook
        self.head.setText(headline(found.plan))
        self.judged.say("\n".join(judged_lines(found.plan)))
        self.differs.say(difference_words(found))
        crops = [outlook.crop_name(course.crop) for course in found.crops]
        self._fill(self.crop, [tr("All crops"), *crops])
        self._fill(self.loop, [course.name for course in found.loops])
        planned = self.has_changes()
        for part in (self.crop, self.element, *self.charts, self.tabs, self.differs):
            part.setVisible(planned)
        self.loop.setVisible(planned and len(found.loops) > 1)
        differences = found.proposed.differences
        rows = difference_rows(differences, outlook.catalogue)
        names = difference_names(found.plan, differences)
        self.differences.show_rows(asked_rows(rows, names, found.whys))
        notes = tuple(note_lines(found, outlook.farm, outlook.catalogue))
        self.notes.setText("\n".join(notes) or tr("Nothing more is to be known of this proposal."))
        self.tabs.setTabText(2, tr("To know ({count})", count=len(notes)) if notes else tr("To know"))
        self._show_courses()

    def _fill(self, box: QComboBox, words: list[str]) -> None:
        if [box.itemText(at) for at in range(box.count())] != words:
            blocked = box.blockSignals(True)
            box.clear()
            box.addItems(words)
            box.blockSignals(blocked)

    def _show_courses(self, *_at: int) -> None:
        found = self.found
        if found is None or self.behind is None:
            return
        # The first entry stands for all crops: the table has them all, the chart shows the first.
        catalogue, crop = self.behind.outlook.catalogue, self.crop.currentIndex() - 1
        if found.crops and crop < len(found.crops):
            self.charts[0].show_chart(crop_chart(found, max(crop, 0), catalogue))
            rows = week_rows(found, crop, catalogue)
            names = season_names(rows, found.plan.model.ruler)
            self.weeks.show_rows(asked_rows(rows, names, found.whys))
        if 0 <= self.loop.currentIndex() < len(found.loops):
            self.charts[1].show_chart(
                balance_chart(found, self.loop.currentIndex(), self.element.currentIndex())
            )

    # What is done.

    def _on_add(self, _checked: bool) -> None:
        self.new_wanted.emit("target", "")

    def _on_alter(self, _what: object) -> None:
        row = self.targets.current()
        if row is not None:
            self.opened.emit(row.id)

    def _on_remove(self, _checked: bool) -> None:
        row = self.targets.current()
        if row is not None and self.behind is not None:
            act = remove_target(self.behind.outlook.farm, row.payload)
            self.act(
                ChangeSet(title=tr("Remove the target for {crop}", crop=row.texts[0]), changes=act.changes)
            )

    def _on_begin(self, _checked: bool) -> None:
        if self.behind is None:
            return
        ask = self.form.read()
        if ask is None or not self.closed.is_sound():
            return
        ruler = self.behind.outlook.forecast.ruler
        try:
            work = work_of(ask.holidays, self.closed.closed, today=self.needs.now().date())
            options = options_of(ask, ruler, work)
        except FarmFaultError as refused:
            self.form.show_faults(refused.faults)
            return
        self._enough = Event()
        self.asked_of(self.behind.outlook.farm)
        self.begin(partial(season_steps, options, self._enough), self.behind, _JOB)
        self.begin_it.setEnabled(False)
        self.working.show_step(tr("Reading the season…"))

    def on_stop(self) -> None:
        self._enough.set()
        self.working.show_step(tr("Keeping the best so far…"))

    def on_told(self, found: Any) -> None:
        if isinstance(found, PlanProgress):
            if not self._enough.is_set():
                self.working.show_step(step_words(found), done=found.done, total=found.total)
            return
        self.take_found(found)

    def on_ended(self) -> None:
        self.working.hide()
        self.begin_it.setEnabled(True)
        if self.found is None and self._enough.is_set():
            self.state.say(tr("Stopped before there was a plan. Nothing of the farm has changed."))

    def on_failed(self, fault: Exception) -> None:
        if not isinstance(fault, FarmFaultError):
            raise fault
        self.form.show_faults(fault.faults)
        self.state.say(tr("No plan could be made: {why}", why=faults_words(fault.faults)))

    def act_found(self) -> ChangeSet:
        assert self.found is not None
        return ChangeSet(title=adopt_words(self.found), changes=self.found.proposed.change_set.changes)

    def scenario_name(self) -> str:
        return tr("Season plan")

    def adopted_words(self) -> str:
        return tr("The season plan is adopted. Undo brings the old one back.")

    def leave(self) -> None:
        super().leave()
        self._begun = False

    def wear(self, theme: Theme) -> None:
        super().wear(theme)
        for chart in self.charts:
            chart.wear(theme)


def _target_row(target: Target, crop: str) -> Row:
    until = NONE if target.until_on is None else day_words(target.until_on)
    return Row(
        id=target.id,
        texts=(crop, amount_words(target.amount_per_week, target.unit), until),
        sort=(crop.casefold(), target.amount_per_week, until),
        payload=target.id,
    )


def room_words(farm: Farm) -> str:
    """Return the places there are, by kind of bed."""
    places: dict[str, int] = {}
    for bed in farm.beds:
        places[bed.kind.name] = places.get(bed.kind.name, 0) + bed.places
    if not places:
        return tr("There is no bed yet. Add one in the menu Set-up.")
    words = {
        "RAFT": tr("{count} holes in rafts"),
        "MEDIA": tr("{count} places in gravel"),
        "NURSERY": tr("{count} nursery cells"),
    }
    return " · ".join(words[kind].format(count=count) for kind, count in places.items())
