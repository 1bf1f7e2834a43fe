"""What if: up to three scenarios beside the farm, compared, adopted as one act or dropped."""

from __future__ import annotations

from functools import partial
from typing import Any, Final

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QComboBox, QHBoxLayout, QWidget

from planner.desk.book import BookShelf
from planner.desk.forms.editors import Choice, thing_choices
from planner.desk.places.place import PlaceNeeds
from planner.desk.plan.ask_form import AskForm
from planner.desk.plan.asks import WhatAsk, WhatKind
from planner.desk.plan.chart import WeekChart
from planner.desk.plan.kit import Beside, Table, Words, Working, button, column, heading, scrolled, stack
from planner.desk.plan.part import Part, first_day
from planner.desk.plan.prices import PRICES, PriceTable, prices_of, prices_read, prices_text
from planner.desk.plan.whatif_rows import (
    balance_chart,
    compare_columns,
    compare_rows,
    difference_columns,
    difference_rows,
    difference_words,
    hold_words,
)
from planner.desk.plan.whatif_work import Compared, Recipe, compare_steps, fits, open_batches
from planner.desk.plan.whys import asked_rows, compare_names
from planner.desk.rows import Column
from planner.desk.say import tr
from planner.desk.tabs import Tabs
from planner.desk.theme import Theme
from planner.desk.words import faults_words
from planner.farm.changes import ChangeSet
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.planning.scenarios.sets import MOST, Scenario, Scenarios, adopted

_JOB: Final = "what if"
_KINDS: Final = {
    WhatKind.LOSE_FISH: "Lose all fish of a group",
    WhatKind.SWAP_CROP: "Grow another crop in its place",
    WhatKind.SHIFT: "Sow a crop later or earlier",
    WhatKind.SCALE: "Sow more or fewer of a crop",
    WhatKind.OTHER_FEED: "Give a group another feed",
}
_FIELDS: Final = {
    WhatKind.LOSE_FISH: ("scenario", "group", "from_on"),
    WhatKind.SWAP_CROP: ("scenario", "crop", "other_crop", "from_on"),
    WhatKind.SHIFT: ("scenario", "crop", "weeks_later", "from_on"),
    WhatKind.SCALE: ("scenario", "crop", "percent_of_plants", "from_on"),
    WhatKind.OTHER_FEED: ("scenario", "group", "feed"),
}


class WhatIfPart(Part):
    """Scenarios on the left, the comparison on the right."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._begun = False
        self.kept = Scenarios()
        self.found: Compared | None = None
        self._later = QTimer(self)
        self._later.setSingleShot(True)
        self._later.timeout.connect(self._compare)
        split = Beside(self.theme, self)
        split.addWidget(scrolled(self._asking(), self))
        split.addWidget(scrolled(self._finding(), self))
        split.setStretchFactor(1, 1)
        unit = self.theme.metrics.field_width
        split.setSizes([round(unit * 1.8), unit * 4])
        column(self, self.theme, margin=0).addWidget(split)
        if needs.memory is not None:
            self.prices.values = prices_read(needs.memory.get(PRICES))
        self._on_kind(0)
        self._show_kept()
        self._show_found()

    def _asking(self) -> QWidget:
        theme, inside = self.theme, QWidget(self)
        self.kind = QComboBox(inside)
        self.kind.setAccessibleName(tr("What is tried"))
        for kind in WhatKind:
            self.kind.addItem(tr(_KINDS[kind]), kind)
        none = (Choice(value="", words=tr("none")),)
        choices = {"group": none, "crop": none, "other_crop": none, "feed": none}
        self.form = AskForm(WhatAsk, theme, self.needs.now().date(), inside, choices=choices)
        self.form.show_value("scenario", tr("Scenario A"))
        self.add = button(
            tr("Add to the scenario"), inside, tip=tr("A scenario of that name goes on, another one begins")
        )
        self.prices = PriceTable(theme, inside)
        self.no_prices = Words(tr("Nothing on the farm has a price yet."), theme, inside, ink="muted")
        self.price_trouble = Words("", theme, inside, ink="wrong")
        self.price_trouble.hide()
        lines = column(inside, theme)
        stack(lines, heading(tr("Try a change"), theme, inside), self.kind, self.form, self.add)
        stack(lines, heading(tr("Prices"), theme, inside), self.no_prices, self.prices, self.price_trouble)
        lines.addStretch(1)
        self.kind.currentIndexChanged.connect(self._on_kind)
        self.add.clicked.connect(self._on_add)
        self.prices.priced.connect(self._on_priced)
        self.prices.wrong.connect(self.price_trouble.say)
        return inside

    def _finding(self) -> QWidget:
        theme, inside = self.theme, QWidget(self)
        self.working = Working(theme, inside)
        self.state = Words("", theme, inside, ink="muted")
        self.misfits = Words("", theme, inside, ink="notice").on_ground("notice_ground", theme)
        self.chosen = QComboBox(inside)
        self.chosen.setAccessibleName(tr("Scenario"))
        self.adopt = button(
            tr("Adopt"), inside, tip=tr("Make the farm what the scenario is; one undo takes it back")
        )
        self.drop = button(tr("Drop"), inside, tip=tr("Forget this scenario"))
        self.choosing = QWidget(inside)
        row = QHBoxLayout(self.choosing)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self.chosen, 1)
        row.addWidget(self.adopt)
        row.addWidget(self.drop)
        lines = column(inside, theme)
        stack(lines, self.working, self.state, self.choosing, self.misfits)
        lines.addWidget(self._shown(inside), 1)
        lines.addStretch(0)
        self.working.stopped.connect(self._on_stop)
        self.chosen.currentIndexChanged.connect(self._show_differences)
        self.adopt.clicked.connect(self._on_adopt)
        self.drop.clicked.connect(self._on_drop)
        return inside

    def _shown(self, inside: QWidget) -> QWidget:
        theme = self.theme
        self.shown = QWidget(inside)
        self.chart = WeekChart(theme, self.shown)
        self.hold = Words("", theme, self.shown, ink="wrong")
        self.tabs = Tabs(self.shown)
        self.tabs.setAccessibleName(tr("Comparison"))
        self.tabs.tabBar().setAccessibleName(tr("Comparison"))
        self.table = Table((Column(title=tr("What")),), tr("Scenarios compared"), theme, self.tabs)
        self.differences = Table(difference_columns(), tr("What differs"), theme, self.tabs)
        self.differs = Words("", theme, self.tabs, ink="muted")
        differing = QWidget(self.tabs)
        differing_lines = column(differing, theme, margin=0)
        differing_lines.addWidget(self.differs)
        differing_lines.addWidget(self.differences, 1)
        self.tabs.addTab(self.table, tr("Side by side"))
        self.tabs.addTab(differing, tr("What differs"))
        self.tabs.setMinimumHeight(theme.metrics.row * 11)
        lines = column(self.shown, theme, margin=0)
        lines.addWidget(self.hold)
        lines.addWidget(self.tabs, 2)
        lines.addWidget(self.chart, 1)
        return self.shown

    # What there is.

    def take_focus(self) -> None:
        self.kind.setFocus()

    def refresh(self) -> None:
        assert self.behind is not None
        outlook = self.behind.outlook
        farm, shelf = outlook.farm, BookShelf(outlook.catalogue)
        grown = tuple(dict.fromkeys(batch.crop for batch in farm.batches))
        none = (Choice(value="", words=tr("none")),)
        crops = tuple(Choice(value=key, words=outlook.crop_name(key)) for key in grown) or none
        self.form.show_choices("group", thing_choices(farm.fish_groups, "name", none=not farm.fish_groups))
        self.form.show_choices("crop", crops)
        others = tuple(Choice(value=each.value, words=each.words) for each in shelf("crop"))
        self.form.show_choices("other_crop", others)
        self.form.show_choices("feed", tuple(shelf("feed")))
        if not self._begun:
            self._begun = True
            self.form.show_value("from_on", first_day(self.needs.now().date(), farm))
        self.prices.show_farm(farm, outlook.catalogue)
        self.prices.setVisible(self.prices.rowCount() > 0)
        self.no_prices.setVisible(self.prices.rowCount() == 0)
        self._compare()

    def keep(self, name: str, change_set: ChangeSet) -> None:
        """Keep what was worked out elsewhere as a scenario, under a name that nobody has yet."""
        names = {one.name for one in self.kept.kept}
        free = next(
            one for one in (name, *(f"{name} {number}" for number in range(2, 9))) if one not in names
        )
        try:
            self.kept = self.kept.with_scenario(Scenario(name=free, change_sets=(change_set,)))
        except FarmFaultError:
            self.troubled.emit(
                tr("{count} scenarios are kept already. Adopt or drop one of them under What if.", count=MOST)
            )
            return
        self.told.emit(tr("Kept as the scenario {name}: see What if.", name=free))
        self._show_kept()
        if self.behind is not None:
            self._compare()

    def _show_kept(self) -> None:
        names, chosen = [one.name for one in self.kept.kept], self.chosen.currentText()
        blocked = self.chosen.blockSignals(True)
        self.chosen.clear()
        self.chosen.addItems(names)
        self.chosen.setCurrentIndex(max(self.chosen.findText(chosen), 0) if names else -1)
        self.chosen.blockSignals(blocked)
        self.choosing.setVisible(bool(names))
        self.state.say(
            ""
            if names
            else tr(
                "No scenario yet. Try a change on the left, or keep a proposal of another section to "
                "compare. The farm stays as it is until you adopt one."
            )
        )

    def _compare(self) -> None:
        if self.behind is None:
            return
        if not self.kept.kept:
            self.give_up()
            self.found = None
            self._show_found()
            return
        self._begin(None)

    def _begin(self, recipe: Recipe | None) -> None:
        assert self.behind is not None
        prices = prices_of(self.prices.values)
        self.begin(partial(compare_steps, self.kept, recipe, prices), self.behind, _JOB)
        self.working.show_step(tr("Forecasting the farm and its scenarios…"))

    def _show_found(self) -> None:
        found = self.found
        self.shown.setVisible(found is not None and bool(self.kept.kept))
        self.misfits.hide()
        if found is None or self.behind is None:
            return
        outlook = self.behind.outlook
        ruler = outlook.forecast.ruler
        self.table.show_columns(compare_columns(found.comparison))
        rows = compare_rows(found.comparison, outlook.catalogue, ruler)
        self.table.show_rows(asked_rows(rows, compare_names(found.comparison), found.whys))
        self.chart.show_chart(balance_chart(found.comparison, ruler))
        self.hold.say(hold_words(found))
        if found.misfits:
            self.misfits.say(
                tr(
                    "The farm has changed so that these can no longer be made of it: {names}. Drop them.",
                    names=", ".join(found.misfits),
                )
            )
        self._show_differences()

    def _show_differences(self, *_at: int) -> None:
        found, name = self.found, self.chosen.currentText()
        if found is None:
            return
        names = [one.name for one in found.comparison.columns]
        fitting = name in names[1:]
        self.adopt.setEnabled(fitting)
        differences = found.comparison.differences(names.index(name, 1)) if fitting else ()
        self.differs.setText(difference_words(differences))
        self.differences.show_rows(difference_rows(differences))

    # What is done.

    def _on_kind(self, _at: int) -> None:
        shown = _FIELDS[self.kind.currentData()]
        for field in self.form.rows:
            self.form.show_field(field, shown=field in shown)

    def _on_add(self, _checked: bool) -> None:
        ask = self.form.read()
        if ask is None or self.behind is None:
            return
        kind = self.kind.currentData()
        fault = self._fault(kind, ask)
        if fault is not None:
            self.form.show_faults((fault,))
            return
        self._begin(Recipe(kind=kind, ask=ask))

    def _fault(self, kind: WhatKind, ask: WhatAsk) -> Fault | None:
        """Return what makes a change impossible, by its field."""
        assert self.behind is not None
        farm = self.behind.outlook.farm
        shown = _FIELDS[kind]
        empty = next(
            (
                field
                for field in ("group", "crop", "other_crop", "feed")
                if field in shown and not getattr(ask, field)
            ),
            None,
        )
        if empty is not None:
            return Fault(kind=FaultKind.MISSING, where="", field=empty, message="")
        if "crop" in shown and not open_batches(farm, ask.crop, ask.from_on):
            words = tr("No batch of this crop is sown from that day on that is not locked.")
            return Fault(kind=FaultKind.OUT_OF_LIMITS, where="", field="crop", message=words)
        if kind is WhatKind.SWAP_CROP and ask.crop == ask.other_crop:
            words = tr("That is the same crop; choose another one.")
            return Fault(kind=FaultKind.OUT_OF_LIMITS, where="", field="other_crop", message=words)
        try:
            self.kept.with_scenario(Scenario(name=ask.scenario.strip()))
        except FarmFaultError:
            words = tr("{count} scenarios are kept already: adopt or drop one first.", count=MOST)
            return Fault(kind=FaultKind.TOO_LARGE, where="", field="scenario", message=words)
        return None

    def on_told(self, found: Any) -> None:
        if isinstance(found, Scenarios):
            before = {one.name for one in self.kept.kept}
            self.kept = found
            self._show_kept()
            new = [one.name for one in found.kept if one.name not in before]
            if new:
                self.chosen.setCurrentText(new[0])
            return
        self.found = found
        self._show_found()

    def on_ended(self) -> None:
        self.working.hide()

    def on_failed(self, fault: Exception) -> None:
        if isinstance(fault, KeyError):
            self.state.say(tr("The farm has changed so that this scenario no longer fits. Drop it."))
            return
        if not isinstance(fault, FarmFaultError):
            raise fault
        self.state.say(tr("It could not be worked out: {why}", why=faults_words(fault.faults)))

    def _on_stop(self) -> None:
        self.give_up()
        self.state.say(tr("Stopped. Nothing of the farm has changed."))

    def _on_priced(self) -> None:
        if self.needs.memory is not None:
            self.needs.memory.put(PRICES, prices_text(self.prices.values))
        self._later.start()

    def _on_adopt(self, _checked: bool) -> None:
        name = self.chosen.currentText()
        if self.behind is None or not name:
            return
        farm, scenario = self.behind.outlook.farm, self.kept.named(name)
        if not fits(scenario, farm):
            return
        act = ChangeSet(title=tr("Adopt {name}", name=name), changes=adopted(farm, scenario).changes)
        kept, self.kept = self.kept, self.kept.without(name)
        if self.act(act):
            self.told.emit(tr("{name} is the plan now. Undo brings the old one back.", name=name))
        else:
            self.kept = kept
        self._show_kept()
        self._compare()

    def _on_drop(self, _checked: bool) -> None:
        self.kept = self.kept.without(self.chosen.currentText())
        self._show_kept()
        self._compare()

    def leave(self) -> None:
        self._later.stop()
        super().leave()
        self._begun = False
        self.kept, self.found = Scenarios(), None
        self._show_kept()
        self._show_found()

    def wear(self, theme: Theme) -> None:
        super().wear(theme)
        self.chart.wear(theme)
        self.prices.wear(theme)
