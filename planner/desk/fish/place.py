"""The page of the fish: groups on the left with what happens to them, the chosen one's course on the right.

Must know nothing of how growth or rations are worked out.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QModelIndex, Qt, QUrl
from PySide6.QtWidgets import (
    QDoubleSpinBox,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSpinBox,
    QSplitter,
    QStackedLayout,
    QTextBrowser,
    QVBoxLayout,
    QWidget,
)

from planner.desk import settings
from planner.desk.behind import Behind
from planner.desk.fish.asked import week_facts
from planner.desk.fish.course import GroupCourse, course_of_group
from planner.desk.fish.facts import fish_page
from planner.desk.fish.plots import density_plot, feed_plot, growth_plot
from planner.desk.fish.ration import (
    LEAST_SCOOP_G,
    MOST_MEALS,
    MOST_SCOOP_G,
    SCOOPS_COLUMN,
    ration_columns,
    ration_rows,
)
from planner.desk.fish.rows import event_columns, event_rows, group_columns, group_rows
from planner.desk.fish.weeks import Scoop, WeekRation
from planner.desk.flow import Flow
from planner.desk.pages import Page
from planner.desk.places.place import Place, PlaceNeeds
from planner.desk.plan.kit import Beside, Table, Words, button, heading
from planner.desk.plotted import Plot
from planner.desk.rows import ID_ROLE
from planner.desk.say import tr
from planner.desk.side import number_of, page_html
from planner.desk.theme import Theme
from planner.desk.timeplot import TimePlot
from planner.farm.fields import NO_ID, Id
from planner.farm.fish import FishEvent

_MEALS: Final = "coefficient/sheets/meals_per_day"
_LEFT_SHARE, _RIGHT_SHARE = 2, 3


class FishPlace(Place):
    """Groups, events, growth, ration and density of a farm's fish."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._behind: Behind | None = None
        self._page: Page | None = None
        self.course: GroupCourse | None = None
        theme = self.theme
        self.groups = Table(group_columns(), tr("Fish groups"), theme, self)
        self.events = Table(event_columns(), tr("What happens to the group"), theme, self)
        self.ration = Table(ration_columns(), tr("Feed by week"), theme, self)
        nothing = Plot(title="", unit="", spoken="", empty="")
        self.growth = TimePlot(nothing, theme, self, rows=7)
        self.feed = TimePlot(nothing, theme, self, rows=4)
        self.density = TimePlot(nothing, theme, self, rows=4)
        self.text = QTextBrowser(self)
        self.meals = QSpinBox(self)
        self.scoop = QDoubleSpinBox(self)
        self.new_group = button(tr("Stock fish…"), self)
        self.alter_group = button(tr("Alter the group…"), self)
        self.new_event = button(
            tr("Add an event…"), self, tip=tr("A weighed sample, harvest, deaths, days off feed, feed given")
        )
        self.alter_event = button(tr("Alter the event…"), self)
        self.empty_new = button(tr("Stock fish…"), self)
        self._make_parts()
        self._lay_out()
        self._connect()

    def _make_parts(self) -> None:
        self.text.setAccessibleName(tr("About the group"))
        self.text.setFrameShape(QFrame.Shape.NoFrame)
        self.text.setOpenLinks(False)
        self.text.setTabChangesFocus(True)
        self.text.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.text.document().setDocumentMargin(self.theme.metrics.margin)
        for table in (self.groups, self.events):
            table.setMinimumHeight(self.theme.metrics.row * 3)
        self.meals.setRange(1, MOST_MEALS)
        self.meals.setAccessibleName(tr("Meals a day"))
        self.scoop.setRange(LEAST_SCOOP_G, MOST_SCOOP_G)
        self.scoop.setDecimals(1)
        self.scoop.setSuffix(tr(" g"))
        self.scoop.setSpecialValueText(tr("not weighed"))
        self.scoop.setAccessibleName(tr("What a level scoop holds"))
        tip = tr("Weigh a level scoop of your feed; weigh it again with every new bag")
        self.scoop.setToolTip(tip)
        self.scoop.setAccessibleDescription(tip)
        catalogue = self.needs.forecaster.catalogue
        kept = self.needs.memory.get(settings.MEALS)
        self.meals.setValue(kept or round(catalogue.figure(_MEALS).value))
        self.scoop.setValue(self.needs.memory.get(settings.SCOOP_G))

    def _lay_out(self) -> None:
        self._stack = QStackedLayout(self)
        self._stack.addWidget(self._empty())
        self.split = Beside(self.theme, self)
        self.split.addWidget(self._left())
        self.split.addWidget(self._right())
        self.split.setStretchFactor(0, _LEFT_SHARE)
        self.split.setStretchFactor(1, _RIGHT_SHARE)
        side = self.theme.metrics.side_width
        self.split.setSizes([side * _LEFT_SHARE, side * _RIGHT_SHARE])
        self._stack.addWidget(self.split)

    def _empty(self) -> QWidget:
        page = QWidget(self)
        column = QVBoxLayout(page)
        column.setContentsMargins(*(self.theme.metrics.wide * 2,) * 4)
        self._empty_title = heading(tr("No fish yet"), self.theme, page, large=True)
        self._empty_words = Words(
            tr(
                "Stock a group and its growth, feed by week and meal, density and harvest stand here. "
                "Fish need a tank: add one in the menu Set-up if there is none."
            ),
            self.theme,
            page,
            ink="muted",
        )
        row = QHBoxLayout()
        row.addWidget(self.empty_new)
        row.addStretch(1)
        column.addWidget(self._empty_title)
        column.addWidget(self._empty_words)
        column.addLayout(row)
        column.addStretch(1)
        return page

    def _left(self) -> QWidget:
        part = QWidget(self)
        column = self._column(part)
        column.addLayout(self._row(self.new_group, self.alter_group))
        tables = QSplitter(Qt.Orientation.Vertical, part)
        tables.setChildrenCollapsible(False)
        tables.addWidget(self.groups)
        events = QWidget(part)
        inside = self._column(events)
        inside.addLayout(self._row(self.new_event, self.alter_event))
        inside.addWidget(self.events)
        tables.addWidget(events)
        tables.addWidget(self.text)
        row = self.theme.metrics.row
        tables.setSizes([row * 4, row * 5, row * 12])
        tables.setStretchFactor(2, 1)
        column.addWidget(tables, 1)
        return part

    def _right(self) -> QWidget:
        part = QWidget(self)
        column = self._column(part)
        charts = QHBoxLayout()
        charts.setSpacing(self.theme.metrics.hair)
        charts.addWidget(self.growth, 3)
        small = QVBoxLayout()
        small.setSpacing(self.theme.metrics.hair)
        small.addWidget(self.feed)
        small.addWidget(self.density)
        charts.addLayout(small, 2)
        column.addLayout(charts, 1)
        head = Flow(self.theme.metrics.gap)
        head.setContentsMargins(*(self.theme.metrics.gap,) * 4)
        for words, box in ((tr("&Meals a day"), self.meals), (tr("&A level scoop"), self.scoop)):
            label = QLabel(words, part)
            label.setBuddy(box)
            head.add(label, box)
        column.addLayout(head)
        column.addWidget(self.ration, 1)
        return part

    def _column(self, part: QWidget) -> QVBoxLayout:
        column = QVBoxLayout(part)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        return column

    def _row(self, *buttons: QPushButton) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setContentsMargins(*(self.theme.metrics.gap,) * 4)
        row.setSpacing(self.theme.metrics.gap)
        for each in buttons:
            row.addWidget(each)
        row.addStretch(1)
        return row

    def _connect(self) -> None:
        self.groups.selectionModel().currentRowChanged.connect(self._on_group)
        self.events.selectionModel().currentRowChanged.connect(self._on_event)
        self.groups.activated.connect(self._on_opened)
        self.events.activated.connect(self._on_opened)
        self.ration.activated.connect(self._on_week)
        self.text.anchorClicked.connect(self._on_anchor)
        self.meals.valueChanged.connect(self._on_meals)
        self.scoop.valueChanged.connect(self._on_scoop)
        self.new_group.clicked.connect(self._on_new_group)
        self.empty_new.clicked.connect(self._on_new_group)
        self.alter_group.clicked.connect(self._on_alter_group)
        self.new_event.clicked.connect(self._on_new_event)
        self.alter_event.clicked.connect(self._on_alter_event)

    # What is shown.

    def show_behind(self, behind: Behind) -> None:
        """Show the fish of a farm; the group that was chosen stays so."""
        chosen = self.group_id
        self._behind = behind
        rows = group_rows(behind)
        self._stack.setCurrentIndex(1 if rows else 0)
        self.groups.show_rows(rows)
        if not rows:
            self.course = None
        elif not self.groups.choose(chosen):
            self.groups.choose(rows[0].id)
        self._show_group()

    @property
    def group_id(self) -> Id:
        """The group shown; empty when the farm has none."""
        row = self.groups.current()
        return Id(row.id) if row is not None else NO_ID

    @property
    def page(self) -> Page | None:
        """What the text says of the group shown."""
        return self._page

    def show_chosen(self, thing_id: Id) -> None:
        """Show the group that is chosen elsewhere, or the one an event belongs to."""
        if self._behind is None:
            return
        thing = self._behind.outlook.found.get(thing_id)
        self.groups.choose(thing.group if isinstance(thing, FishEvent) else thing_id)
        if isinstance(thing, FishEvent):
            self.events.choose(thing_id)

    def take_focus(self) -> None:
        """Give the keyboard to the groups, or to the button that makes the first."""
        (self.groups if self._stack.currentIndex() else self.empty_new).setFocus()

    def _show_group(self) -> None:
        if self._behind is None or self.group_id == NO_ID:
            return
        self.course = course = course_of_group(self._behind, self.group_id)
        if course is None:
            return
        self.events.show_rows(event_rows(course.events, course.ruler))
        self.alter_event.setEnabled(self.events.current() is not None)
        self.growth.show_plot(growth_plot(course))
        self.feed.show_plot(feed_plot(course))
        self.density.show_plot(density_plot(course))
        self._show_ration()
        self._show_page(fish_page(self._behind, course))

    def _show_ration(self) -> None:
        if self.course is not None and self._behind is not None:
            scoop = Scoop(meals=self.meals.value(), grams=self.scoop.value())
            self.ration.setColumnHidden(SCOOPS_COLUMN, scoop.grams <= 0)
            self.ration.show_rows(ration_rows(self.course, scoop, self._behind.outlook.catalogue.feeds))

    def _show_page(self, page: Page) -> None:
        if page != self._page:
            same = self._page is not None and self._page.title == page.title
            at = self.text.verticalScrollBar().value() if same else 0
            self._page = page
            self.text.setHtml(page_html(page, self.theme))
            self.text.verticalScrollBar().setValue(at)

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        super().wear(theme)
        for plot in (self.growth, self.feed, self.density):
            plot.wear(theme)
        for words in (self._empty_title, self._empty_words):
            words.wear(theme)
        if self._page is not None:
            self.text.setHtml(page_html(self._page, theme))

    # What is wished.

    def _on_group(self, now: QModelIndex, _before: QModelIndex) -> None:
        self._show_group()
        if now.isValid():
            self.chosen.emit(now.data(ID_ROLE))

    def _on_event(self, now: QModelIndex, _before: QModelIndex) -> None:
        self.alter_event.setEnabled(now.isValid())

    def _on_opened(self, index: QModelIndex) -> None:
        self.opened.emit(index.data(ID_ROLE))

    def _on_week(self, _index: QModelIndex) -> None:
        row = self.ration.current()
        if row is None or self.course is None or not isinstance(row.payload, WeekRation):
            return
        self.why_wanted.emit(week_facts(self.course, row.payload), 0)

    def _on_anchor(self, link: QUrl) -> None:
        number = number_of(link.toString())
        if number >= 0 and self._page is not None:
            self.why_wanted.emit(self._page.askable, number)

    def _on_meals(self, value: int) -> None:
        self.needs.memory.put(settings.MEALS, value)
        self._show_ration()

    def _on_scoop(self, value: float) -> None:
        self.needs.memory.put(settings.SCOOP_G, value)
        self._show_ration()

    def _on_new_group(self, _checked: bool) -> None:
        self.run_wanted.emit("new.fish group")

    def _on_alter_group(self, _checked: bool) -> None:
        if self.group_id != NO_ID:
            self.opened.emit(self.group_id)

    def _on_new_event(self, _checked: bool) -> None:
        if self.group_id != NO_ID:
            self.new_wanted.emit("fish event", self.group_id)

    def _on_alter_event(self, _checked: bool) -> None:
        row = self.events.current()
        if row is not None:
            self.opened.emit(row.id)
