"""Fish: ways of stocking compared, one harvest whole or in parts, and the start-up of a new loop."""

from __future__ import annotations

from functools import partial
from typing import Any, Final

from PySide6.QtWidgets import QWidget

from planner.desk.book import BookShelf
from planner.desk.forms.editors import Choice, enum_choices, thing_choices
from planner.desk.outlook import Outlook
from planner.desk.places.place import PlaceNeeds
from planner.desk.plan.ask_form import AskForm
from planner.desk.plan.asks import NeedBasis, StockAsk
from planner.desk.plan.kit import (
    Beside,
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
from planner.desk.plan.stocking_rows import way_act
from planner.desk.plan.stocking_tabs import HarvestTab, StartTab, WaysTab
from planner.desk.plan.stocking_work import (
    HarvestsFound,
    WaysFound,
    harvest_steps,
    start_up_steps,
    ways_steps,
)
from planner.desk.say import careful, tr
from planner.desk.tabs import Tabs
from planner.desk.theme import Theme
from planner.desk.words import faults_words
from planner.farm.changes import ChangeSet
from planner.farm.farm import Farm, by_id
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import Id
from planner.farm.fish import FishGroup
from planner.planning.answering import Whys
from planner.planning.stocking.startup import StartUp

_JOB: Final = "stocking"


class StockingPart(Part):
    """What is asked of the fish on the left; ways, harvests and start-up on the right."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._asked: dict[str, Farm] = {}
        self.ways: WaysFound | None = None
        self.harvests: HarvestsFound | None = None
        self.start: StartUp | None = None
        self._start_whys: Whys = {}
        split = Beside(self.theme, self)
        split.addWidget(self._asking())
        split.addWidget(self._finding())
        split.setStretchFactor(1, 1)
        unit = self.theme.metrics.field_width
        split.setSizes([round(unit * 1.7), unit * 4])
        column(self, self.theme, margin=0).addWidget(split)

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
        emptied(self.ways_tab.care)
        if self.behind is None:
            return
        catalogue = self.behind.outlook.catalogue
        species = catalogue.fish.get(self.form.editor("species").read())
        for key in species.cautions if species else ():
            said = catalogue.cautions[key]
            beside = self.law if "species choice" in said.where else self.ways_tab.care
            beside.addWidget(caution(careful(said.text), self.theme, self))

    def _finding(self) -> QWidget:
        pane = QWidget(self)
        self.working = Working(self.theme, pane)
        self.working.stopped.connect(self._on_stop)
        self.state = Words("", self.theme, pane, ink="wrong")
        self.state.hide()
        self.tabs = Tabs(pane)
        self.ways_tab = WaysTab(self.theme, self.tabs)
        self.harvest_tab = HarvestTab(self.theme, self.tabs)
        self.start_tab = StartTab(self.theme, self.tabs)
        self.tabs.setAccessibleName(tr("Fish"))
        self.tabs.tabBar().setAccessibleName(tr("Fish"))
        self.tabs.addTab(scrolled(self.ways_tab, self.tabs), tr("Ways of stocking"))
        self.tabs.addTab(scrolled(self.harvest_tab, self.tabs), tr("One harvest"))
        self.tabs.addTab(scrolled(self.start_tab, self.tabs), tr("Start-up"))
        lines = column(pane, self.theme, margin=0)
        stack(lines, self.working, self.state)
        lines.addWidget(self.tabs, 1)
        self._connect()
        return pane

    def _connect(self) -> None:
        ways, harvest, start = self.ways_tab, self.harvest_tab, self.start_tab
        ways.chosen.connect(self._show_enabled)
        harvest.chosen.connect(self._show_enabled)
        ways.adopt.clicked.connect(self._on_adopt_way)
        ways.keep.clicked.connect(self._on_keep_way)
        harvest.compare.clicked.connect(self._on_compare)
        harvest.adopt.clicked.connect(self._on_adopt_harvest)
        start.begin_it.clicked.connect(self._on_start)
        start.adopt.clicked.connect(self._on_adopt_start)

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
        self.harvest_tab.show_farm(farm)
        self._show_enabled()

    def _begin_with(self, farm: Farm) -> None:
        """Begin with fish like those stocked last."""
        like = max(farm.fish_groups, key=_stocked_on, default=None)
        self.form.show_value("from_on", first_day(self.needs.now().date(), farm))
        if like is not None:
            self.form.show_value("species", like.species)
            self.form.show_value("feed", like.feed)
            self.form.show_value("fingerling_g", like.mean_weight_g)

    def _now(self, key: str) -> bool:
        return self.is_of_now(self._asked.get(key))

    def _show_enabled(self) -> None:
        working = self.is_working
        loops = self.behind is not None and bool(self.behind.outlook.farm.loops)
        ways, harvest, start = self.ways_tab, self.harvest_tab, self.start_tab
        for each in (self.begin_it, harvest.compare, start.begin_it):
            each.setEnabled(loops and not working)
        for each in (ways.keep, ways.adopt):
            each.setEnabled(self._now("ways") and ways.option is not None)
        harvest.adopt.setEnabled(self._now("harvests") and harvest.changes() is not None)
        found = self.start
        start.adopt.setEnabled(self._now("start") and found is not None and bool(found.change_set.changes))

    @property
    def _outlook(self) -> Outlook | None:
        return None if self.behind is None else self.behind.outlook

    def _show_ways(self) -> None:
        self.ways_tab.show_found(self.ways, self._outlook)

    def _show_harvests(self) -> None:
        self.harvest_tab.show_found(self.harvests, self._outlook)

    def _show_start(self) -> None:
        self.start_tab.show_found(self.start, self._outlook, self._start_whys)

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
        event = self.harvest_tab.harvest.currentData()
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
            self.start, self._start_whys = found.start, found.whys
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
        option = self.ways_tab.option
        if option is not None and self._now("ways"):
            self._adopt(ChangeSet(title=way_act(option), changes=option.change_set.changes))

    def _on_keep_way(self, _checked: bool) -> None:
        option = self.ways_tab.option
        if option is not None and self._now("ways"):
            self.scenario_offered.emit(way_act(option), option.change_set)

    def _on_adopt_harvest(self, _checked: bool) -> None:
        changes = self.harvest_tab.changes()
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
        for chart in (self.ways_tab.feed, self.harvest_tab.feed):
            chart.wear(theme)


def _stocked_on(group: FishGroup) -> Any:
    return group.stocked_on, group.name
