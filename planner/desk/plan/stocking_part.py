"""Fish: ways of stocking compared, one harvest whole or in parts, and the start-up of a new loop."""

from __future__ import annotations

from functools import partial
from typing import Any, Final

from PySide6.QtCore import QModelIndex
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QTabWidget, QVBoxLayout, QWidget

from planner.desk.book import BookShelf
from planner.desk.forms.editors import Choice, enum_choices, thing_choices
from planner.desk.places.place import PlaceNeeds
from planner.desk.plan.ask_form import AskForm
from planner.desk.plan.asks import NeedBasis, StockAsk
from planner.desk.plan.chart import WeekChart
from planner.desk.plan.kit import (
    Beside,
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
from planner.desk.plan.part import Part, first_day
from planner.desk.plan.stocking_rows import (
    band_words,
    feed_chart,
    harvest_chart,
    harvest_columns,
    harvest_rows,
    hole_columns,
    hole_rows,
    judged_words,
    share_words,
    start_columns,
    start_lines,
    start_rows,
    stocked_columns,
    stocked_rows,
    way_act,
    way_columns,
    way_id,
    way_rows,
    way_words,
)
from planner.desk.plan.stocking_work import (
    HarvestsFound,
    WaysFound,
    harvest_steps,
    start_up_steps,
    ways_steps,
)
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.words import day_words, faults_words
from planner.farm.changes import ChangeSet
from planner.farm.farm import Farm, by_id
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import Id
from planner.farm.fish import FishEvent, FishEventKind, FishGroup
from planner.planning.stocking.options import StockingOption
from planner.planning.stocking.startup import StartUp

_JOB: Final = "stocking"


def whole_harvests(farm: Farm) -> tuple[FishEvent, ...]:
    """Return the planned harvests of whole groups within the plan, the earliest first."""
    found = [
        event
        for event in farm.fish_events
        if event.kind is FishEventKind.HARVEST
        and event.count is None
        and farm.settings.plan_from <= event.on < farm.plan_until
    ]
    return tuple(sorted(found, key=_on))


def _on(event: FishEvent) -> tuple[Any, str]:
    return event.on, event.id


class StockingPart(Part):
    """What is asked of the fish on the left; ways, harvests and start-up on the right."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._asked: dict[str, Farm] = {}
        self.ways: WaysFound | None = None
        self.harvests: HarvestsFound | None = None
        self.start: StartUp | None = None
        split = Beside(self.theme, self)
        split.addWidget(self._asking())
        split.addWidget(self._finding())
        split.setStretchFactor(1, 1)
        unit = self.theme.metrics.field_width
        split.setSizes([round(unit * 1.7), unit * 4])
        column(self, self.theme, margin=0).addWidget(split)
        self._show_ways()
        self._show_harvests()
        self._show_start()

    # What is asked.

    def _asking(self) -> QWidget:
        theme, pane, inside = self.theme, QWidget(self), QWidget(self)
        none = (Choice(value="", words=tr("none")),)
        choices = {"loop": none, "species": none, "feed": none, "basis": enum_choices(NeedBasis)}
        self.form = AskForm(StockAsk, theme, self.needs.now().date(), inside, choices=choices)
        self.form.show_value("from_on", self.needs.now().date())
        self.form.editor("species").touched.connect(self._show_cautions)
        self.form.editor("basis").touched.connect(self._show_basis)
        self.law = self.form.room_after("species")
        self.begin_it = button(tr("Compare ways of stocking"), pane)
        lines = column(inside, theme)
        lines.addWidget(heading(tr("Fish to be stocked"), theme, inside))
        lines.addWidget(self.form)
        lines.addStretch(1)
        whole = column(pane, theme, margin=0)
        whole.addWidget(scrolled(inside, pane), 1)
        whole.addWidget(self.begin_it)
        self.begin_it.clicked.connect(self._on_begin)
        self._show_basis()
        return pane

    def _show_basis(self) -> None:
        self.form.show_field("area_m2", shown=self.form.editor("basis").read() is NeedBasis.STEADY)

    def _show_cautions(self) -> None:
        """Show what the choice of a species asks for beside it, and the rest beside what is adopted."""
        emptied(self.law)
        emptied(self.care)
        if self.behind is None:
            return
        catalogue = self.behind.outlook.catalogue
        species = catalogue.fish.get(self.form.editor("species").read())
        for key in species.cautions if species else ():
            said = catalogue.cautions[key]
            beside = self.law if "species choice" in said.where else self.care
            beside.addWidget(caution(said.text, self.theme, self))

    def _finding(self) -> QWidget:
        pane = QWidget(self)
        self.working = Working(self.theme, pane)
        self.working.stopped.connect(self._on_stop)
        self.state = Words("", self.theme, pane, ink="wrong")
        self.state.hide()
        self.tabs = QTabWidget(pane)
        self.tabs.setAccessibleName(tr("Fish"))
        self.tabs.tabBar().setAccessibleName(tr("Fish"))
        self.tabs.addTab(scrolled(self._ways_tab(), self.tabs), tr("Ways of stocking"))
        self.tabs.addTab(scrolled(self._harvest_tab(), self.tabs), tr("One harvest"))
        self.tabs.addTab(scrolled(self._start_tab(), self.tabs), tr("Start-up"))
        lines = column(pane, self.theme, margin=0)
        stack(lines, self.working, self.state)
        lines.addWidget(self.tabs, 1)
        return pane

    def _ways_tab(self) -> QWidget:
        theme, tab = self.theme, QWidget(self)
        self.judged = Words("", theme, tab, ink="muted")
        self.ways_shown = QWidget(tab)
        self.ways_table = Table(way_columns(), tr("Ways of stocking"), theme, self.ways_shown)
        self.way = Words("", theme, self.ways_shown)
        self.adopt_way = button(
            tr("Adopt"), self.ways_shown, tip=tr("Stock in this way; one undo takes it back")
        )
        self.feed = WeekChart(theme, self.ways_shown)
        self.stocked = Table(stocked_columns(), tr("Groups of this way"), theme, self.ways_shown)
        self.holes = Table(hole_columns(), tr("Falls of the feed at each harvest"), theme, self.ways_shown)
        chosen, beside = QHBoxLayout(), QHBoxLayout()
        chosen.addWidget(self.way, 1)
        self.keep_way = button(
            tr("Keep to compare"), self.ways_shown, tip=tr("Keep this as a scenario under What if")
        )
        chosen.addWidget(self.adopt_way)
        chosen.addWidget(self.keep_way)
        beside.addWidget(self.stocked, 3)
        beside.addWidget(self.holes, 2)
        shown = column(self.ways_shown, theme, margin=0)
        shown.addWidget(self.ways_table, 2)
        shown.addLayout(chosen)
        shown.addWidget(self.feed, 1)
        shown.addLayout(beside, 1)
        self.care = QVBoxLayout()
        shown.addLayout(self.care)
        self.band = Words("", theme, tab, ink="wrong")
        lines = column(tab, theme)
        stack(lines, self.judged, self.band)
        lines.addWidget(self.ways_shown, 1)
        lines.addStretch(0)
        self.ways_table.selectionModel().currentRowChanged.connect(self._on_way)
        self.adopt_way.clicked.connect(self._on_adopt_way)
        self.keep_way.clicked.connect(self._on_keep_way)
        return tab

    def _harvest_tab(self) -> QWidget:
        theme, tab = self.theme, QWidget(self)
        self.harvest = QComboBox(tab)
        self.harvest.setAccessibleName(tr("Planned harvest"))
        self.compare = button(tr("Compare"), tab, tip=tr("Compare taking it all at once and in parts"))
        self.no_harvest = Words("", theme, tab, ink="muted")
        self.harvest_shown = QWidget(tab)
        self.harvest_table = Table(
            harvest_columns(), tr("Ways to take the harvest"), theme, self.harvest_shown
        )
        self.harvest_feed = WeekChart(theme, self.harvest_shown)
        self.adopt_harvest = button(tr("Adopt"), self.harvest_shown, tip=tr("Harvest in the chosen way"))
        top, foot = QHBoxLayout(), QHBoxLayout()
        top.addWidget(self.harvest, 1)
        top.addWidget(self.compare)
        foot.addStretch(1)
        foot.addWidget(self.adopt_harvest)
        shown = column(self.harvest_shown, theme, margin=0)
        shown.addWidget(self.harvest_table, 1)
        shown.addLayout(foot)
        shown.addWidget(self.harvest_feed, 1)
        lines = column(tab, theme)
        lines.addLayout(top)
        lines.addWidget(self.no_harvest)
        lines.addWidget(self.harvest_shown, 1)
        lines.addStretch(0)
        self.compare.clicked.connect(self._on_compare)
        self.adopt_harvest.clicked.connect(self._on_adopt_harvest)
        self.harvest_table.selectionModel().currentRowChanged.connect(self._on_harvest_row)
        return tab

    def _start_tab(self) -> QWidget:
        theme, tab = self.theme, QWidget(self)
        self.start_it = button(tr("Work out the start-up"), tab)
        self.adopt_start = button(tr("Adopt"), tab, tip=tr("Sow what has to wait so much later"))
        self.start_words = Words("", theme, tab)
        self.start_table = Table(start_columns(), tr("Batches of a loop that starts up"), theme, tab)
        top = QHBoxLayout()
        top.addWidget(self.start_it)
        top.addStretch(1)
        top.addWidget(self.adopt_start)
        lines = column(tab, theme)
        lines.addLayout(top)
        lines.addWidget(self.start_words)
        lines.addWidget(self.start_table, 1)
        lines.addStretch(0)
        self.start_it.clicked.connect(self._on_start)
        self.adopt_start.clicked.connect(self._on_adopt_start)
        return tab

    # What there is.

    def take_focus(self) -> None:
        self.form.editor("loop").setFocus()

    def refresh(self) -> None:
        assert self.behind is not None
        outlook = self.behind.outlook
        shelf, farm = BookShelf(outlook.catalogue), outlook.farm
        first = not self.form.editor("species").read()
        self.form.show_choices("loop", thing_choices(farm.loops, "name", none=not farm.loops))
        self.form.show_choices("species", shelf("fish"))
        self.form.show_choices("feed", shelf("feed"))
        if first:
            self._begin_with(farm)
        self._show_cautions()
        self._fill_harvests(farm)
        self._show_enabled()

    def _begin_with(self, farm: Farm) -> None:
        """Begin with fish like those stocked last."""
        like = max(farm.fish_groups, key=_stocked_on, default=None)
        self.form.show_value("from_on", first_day(self.needs.now().date(), farm))
        if like is not None:
            self.form.show_value("species", like.species)
            self.form.show_value("feed", like.feed)
            self.form.show_value("fingerling_g", like.mean_weight_g)

    def _fill_harvests(self, farm: Farm) -> None:
        groups, chosen = by_id(farm.fish_groups), self.harvest.currentData()
        self.harvest.clear()
        for event in whole_harvests(farm):
            words = tr("{group}, {day}", group=groups[event.group].name, day=day_words(event.on))
            self.harvest.addItem(words, event.id)
        self.harvest.setCurrentIndex(max(self.harvest.findData(chosen), 0))
        some = self.harvest.count() > 0
        self.harvest.setVisible(some)
        self.compare.setVisible(some)
        self.no_harvest.setVisible(self.harvests is None or not some)
        self.no_harvest.setText(
            tr("Choose a planned harvest: it is compared all at once and in parts.")
            if some
            else tr("No harvest of a whole group is planned. Plan one on the page of the fish.")
        )

    def _now(self, key: str) -> bool:
        return self.is_of_now(self._asked.get(key))

    def _show_enabled(self) -> None:
        working = self.is_working
        loops = self.behind is not None and bool(self.behind.outlook.farm.loops)
        for each in (self.begin_it, self.compare, self.start_it):
            each.setEnabled(loops and not working)
        self.keep_way.setEnabled(self._now("ways") and self._option() is not None)
        self.adopt_way.setEnabled(self._now("ways") and self._option() is not None)
        self.adopt_harvest.setEnabled(self._now("harvests") and self._harvest_changes() is not None)
        self.adopt_start.setEnabled(
            self._now("start") and self.start is not None and bool(self.start.change_set.changes)
        )

    def _show_ways(self) -> None:
        found = self.ways
        self.ways_shown.setVisible(found is not None and found.table.best is not None)
        self.judged.say(
            tr("Compared are 1, 2, 4 and 6 groups, harvested whole or in parts.")
            if found is None
            else judged_words(found)
        )
        self.band.say("" if found is None else band_words(found))
        if found is None:
            return
        self.ways_table.show_rows(way_rows(found))
        best = found.table.best
        if best is not None and not self.ways_table.choose(way_id(best)):
            self.ways_table.selectRow(0)
        self._on_way(QModelIndex(), QModelIndex())

    def _option(self) -> StockingOption | None:
        row = self.ways_table.current()
        if self.ways is None or row is None or row.payload < 0:
            return None
        option: StockingOption = self.ways.table.options[row.payload]
        return option

    def _on_way(self, _index: QModelIndex, _before: QModelIndex) -> None:
        option, row = self._option(), self.ways_table.current()
        if self.ways is None or self.behind is None or row is None:
            return
        if option is None:
            self.way.setText(row.spoken)
            self.stocked.show_rows(())
            self.holes.show_rows(())
        else:
            outlook = self.behind.outlook
            self.way.setText(way_words(option, best=option is self.ways.table.best))
            self.feed.show_chart(feed_chart(self.ways, row.payload, outlook.forecast.ruler))
            self.stocked.show_rows(stocked_rows(option, outlook.farm))
            self.holes.show_rows(hole_rows(option.holes))
        self._show_enabled()

    def _show_harvests(self) -> None:
        found = self.harvests
        self.harvest_shown.setVisible(found is not None)
        self.no_harvest.setVisible(found is None)
        if found is not None and self.behind is not None:
            self.harvest_table.show_rows(harvest_rows(found))
            self.harvest_feed.show_chart(harvest_chart(found, self.behind.outlook.forecast.ruler))
            self.harvest_table.selectRow(0)

    def _harvest_changes(self) -> ChangeSet | None:
        """Return the changes of the chosen way to harvest, None when it is as planned."""
        row = self.harvest_table.current()
        if self.harvests is None or row is None:
            return None
        option = self.harvests.options[row.payload]
        title = tr("Harvest {share}", share=share_words(option.share))
        return (
            ChangeSet(title=title, changes=option.change_set.changes) if option.change_set.changes else None
        )

    def _on_harvest_row(self, _index: QModelIndex, _before: QModelIndex) -> None:
        self._show_enabled()

    def _show_start(self) -> None:
        found = self.start
        self.start_table.setVisible(found is not None and bool(found.batches))
        if found is None or self.behind is None:
            self.start_words.say(
                tr("A new loop begins with leafy crops; fruiting ones wait until the feed carries them.")
            )
            return
        catalogue = self.behind.outlook.catalogue
        self.start_words.say("\n".join(start_lines(found, catalogue)))
        self.start_table.show_rows(start_rows(found, catalogue))

    # What is done.

    def _on_begin(self, _checked: bool) -> None:
        ask = self.form.read()
        if ask is None or self.behind is None:
            return
        if ask.basis is NeedBasis.STEADY and ask.area_m2 is None:
            empty = Fault(kind=FaultKind.MISSING, where="", field="area_m2", message="")
            self.form.show_faults((empty,))
            return
        self.tabs.setCurrentIndex(0)
        self.ways = None
        self._show_ways()
        self._work("ways", partial(ways_steps, ask), tr("Trying 12 ways, and bettering each…"))

    def _on_compare(self, _checked: bool) -> None:
        event = self.harvest.currentData()
        if self.behind is None or event is None:
            return
        farm = self.behind.outlook.farm
        group: FishGroup = by_id(farm.fish_groups)[by_id(farm.fish_events)[event].group]
        loop = Id(by_id(farm.tanks)[group.tank].loop)
        self.harvests = None
        self._show_harvests()
        self._work("harvests", partial(harvest_steps, event, loop), tr("Forecasting each way…"))

    def _on_start(self, _checked: bool) -> None:
        loop = self.form.editor("loop").read()
        self.start = None
        self._show_start()
        self._work("start", partial(start_up_steps, loop), tr("Taking batch after batch…"))

    def _work(self, key: str, work: Any, words: str) -> None:
        if self.behind is None:
            return
        self.state.say("")
        self._asked[key] = self.behind.outlook.farm
        self.begin(work, self.behind, _JOB)
        self.working.show_step(words)
        self._show_enabled()

    def on_told(self, found: Any) -> None:
        if isinstance(found, WaysFound):
            self.ways = found
            self._show_ways()
        elif isinstance(found, HarvestsFound):
            self.harvests = found
            self._show_harvests()
        else:
            self.start = found
            self._show_start()

    def on_ended(self) -> None:
        self.working.hide()
        self._show_enabled()

    def on_failed(self, fault: Exception) -> None:
        if isinstance(fault, ValueError) and not isinstance(fault, FarmFaultError):
            self.state.say(tr("⚠ {why}.", why=str(fault)))
            return
        if not isinstance(fault, FarmFaultError):
            raise fault
        self.form.show_faults(fault.faults)
        self.state.say(tr("⚠ It could not be worked out: {why}", why=faults_words(fault.faults)))

    def _on_stop(self) -> None:
        self.give_up()
        self.state.say(tr("Stopped. Nothing of the farm has changed."))

    def _on_adopt_way(self, _checked: bool) -> None:
        option = self._option()
        if option is not None and self._now("ways"):
            self._adopt(ChangeSet(title=way_act(option), changes=option.change_set.changes))

    def _on_keep_way(self, _checked: bool) -> None:
        option = self._option()
        if option is not None and self._now("ways"):
            self.scenario_offered.emit(way_act(option), option.change_set)

    def _on_adopt_harvest(self, _checked: bool) -> None:
        changes = self._harvest_changes()
        if changes is not None and self._now("harvests"):
            self._adopt(changes)

    def _on_adopt_start(self, _checked: bool) -> None:
        if self.start is not None and self._now("start"):
            self._adopt(
                ChangeSet(title=tr("Hold crops of the start-up"), changes=self.start.change_set.changes)
            )

    def _adopt(self, act: ChangeSet) -> None:
        if self.act(act):
            self.told.emit(tr("Done: {title}. Undo takes it back.", title=act.title))

    def leave(self) -> None:
        super().leave()
        self.ways, self.harvests, self.start = None, None, None
        self._asked.clear()
        self._show_ways()
        self._show_harvests()
        self._show_start()

    def wear(self, theme: Theme) -> None:
        super().wear(theme)
        for chart in (self.feed, self.harvest_feed):
            chart.wear(theme)


def _stocked_on(group: FishGroup) -> Any:
    return group.stocked_on, group.name
