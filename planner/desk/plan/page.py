"""The page of the plan: a list of its sections on the left, the one that is chosen beside it.

A section is made when it is first seen and filled when it is stale. Must know nothing of what they show.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QComboBox,
    QFrame,
    QHBoxLayout,
    QListWidget,
    QListWidgetItem,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from planner.desk.behind import Behind
from planner.desk.places.place import Place, PlaceNeeds
from planner.desk.plan.kit import Filled, Words, button, heading, scrolled, wear_words
from planner.desk.plan.part import Part
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.week_facts import over_words
from planner.farm.changes import ChangeSet

Maker = Callable[[PlaceNeeds, QWidget], Part]


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """One section: its key, what it is called, what it is for, and what makes it."""

    key: str
    title: str
    about: str
    make: Maker


def _remedies(needs: PlaceNeeds, parent: QWidget) -> Part:
    from planner.desk.plan.remedies_part import RemediesPart

    return RemediesPart(needs, parent)


def _season(needs: PlaceNeeds, parent: QWidget) -> Part:
    from planner.desk.plan.season_part import SeasonPart

    return SeasonPart(needs, parent)


def _successions(needs: PlaceNeeds, parent: QWidget) -> Part:
    from planner.desk.plan.succession_part import SuccessionPart

    return SuccessionPart(needs, parent)


def _stocking(needs: PlaceNeeds, parent: QWidget) -> Part:
    from planner.desk.plan.stocking_part import StockingPart

    return StockingPart(needs, parent)


def _expansion(needs: PlaceNeeds, parent: QWidget) -> Part:
    from planner.desk.plan.expansion_part import ExpansionPart

    return ExpansionPart(needs, parent)


def _what_if(needs: PlaceNeeds, parent: QWidget) -> Part:
    from planner.desk.plan.whatif_part import WhatIfPart

    return WhatIfPart(needs, parent)


def _orders(needs: PlaceNeeds, parent: QWidget) -> Part:
    from planner.desk.plan.orders_part import OrdersPart

    return OrdersPart(needs, parent)


SECTIONS: Final[tuple[Section, ...]] = (
    Section(
        key="repairs",
        title="Flagged weeks",
        about="What goes wrong from today on, and changes that repair it. Each is worked out on a forecast "
        "of the changed farm; the cheapest stands first.",
        make=_remedies,
    ),
    Section(
        key="season",
        title="Season",
        about="What to sow in which week so that the targets are met, little is wasted and plants take up "
        "what the fish supply. It says how near that is to the best possible.",
        make=_season,
    ),
    Section(
        key="successions",
        title="Successions",
        about="Say what you want and when; sowings are counted back from there through a season in which a "
        "crop does not take the same days all year, and get their places.",
        make=_successions,
    ),
    Section(
        key="stocking",
        title="Fish stocking",
        about="How many groups, when and how many fish, so that the feed stays within what the beds can use: "
        "how deep and how long it falls at each harvest. Fish are never fed above what they eat.",
        make=_stocking,
    ),
    Section(
        key="whatif",
        title="What if",
        about="Up to three scenarios beside today's plan: balance, harvest, occupancy, feed and cost. The "
        "farm stays as it is until you adopt one.",
        make=_what_if,
    ),
    Section(
        key="expansion",
        title="More beds",
        about="Can this loop carry another bed or layer? Nothing is guessed: what was not entered makes a "
        "verdict unknown.",
        make=_expansion,
    ),
    Section(
        key="orders",
        title="Orders",
        about="What the plan uses, month by month, in the month of its use: seed by lot, plugs, pots, feed "
        "by pellet size, base, iron and salts.",
        make=_orders,
    ),
)


class _Held(QWidget):
    """One section with its heading, empty until it is first seen."""

    def __init__(self, section: Section, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.section = section
        self.part: Part | None = None
        self.is_stale = True
        metrics = theme.metrics
        self.lines = QVBoxLayout(self)
        self.lines.setContentsMargins(metrics.margin, metrics.gap, metrics.margin, metrics.gap)
        self.lines.setSpacing(metrics.tight)
        self.theme = theme
        self.title = heading(tr(section.title), theme, self, large=True)
        self.help = button(tr("Help"), self, tip=tr("What this section does, and how to read it"))
        self.help.setAccessibleName(tr("Help: {title}", title=tr(section.title)))
        head = QHBoxLayout()
        head.addWidget(self.title, 1)
        head.addWidget(self.help)
        self.lines.addLayout(head)
        self.help.clicked.connect(self._on_help)
        self.lines.addWidget(Words(tr(section.about), theme, self, ink="muted"))
        self.over = Words("", theme, self, ink="notice").on_ground("notice_ground", theme)
        self.over.hide()
        self.lines.addWidget(self.over)

    def _on_help(self, _checked: bool) -> None:
        from planner.desk.plan.help_pages import HelpPage

        HelpPage(self.section.key, tr(self.section.title), self.theme, self).open()

    def hold(self, part: Part) -> None:
        """Hold a section from now on."""
        self.part = part
        self.lines.addWidget(part, 1)
        part.show()


class PlanPlace(Place):
    """The sections of the plan and the list to choose one from; in a narrow window a line to choose."""

    def __init__(self, needs: PlaceNeeds, parent: QWidget) -> None:
        super().__init__(needs, parent)
        self._behind: Behind | None = None
        self.rail = QListWidget(self)
        self.line = QComboBox(self)
        self.stack = QStackedWidget(self)
        self.held: dict[str, _Held] = {}
        self._make_choices()
        for section in SECTIONS:
            held = _Held(section, self.theme, self)
            self.held[section.key] = held
            self.stack.addWidget(scrolled(Filled(held, self), self))
        inside = QVBoxLayout()
        inside.setContentsMargins(0, 0, 0, 0)
        inside.setSpacing(0)
        inside.addWidget(self.line)
        inside.addWidget(self.stack, 1)
        across = QHBoxLayout(self)
        across.setContentsMargins(0, 0, 0, 0)
        across.setSpacing(0)
        across.addWidget(self.rail)
        across.addLayout(inside, 1)
        self.line.hide()
        self.rail.setCurrentRow(0)
        self.rail.currentRowChanged.connect(self._on_row)
        self.line.currentIndexChanged.connect(self._on_row)

    def _make_choices(self) -> None:
        metrics = self.theme.metrics
        for section in SECTIONS:
            item = QListWidgetItem(tr(section.title))
            item.setToolTip(tr(section.about))
            item.setSizeHint(QSize(0, metrics.row))
            self.rail.addItem(item)
            self.line.addItem(tr(section.title))
        self.rail.setAccessibleName(tr("Sections of the plan"))
        self.line.setAccessibleName(tr("Sections of the plan"))
        self.rail.setFrameShape(QFrame.Shape.NoFrame)
        self.rail.setSpacing(metrics.tight // 2)
        self.rail.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        widest = max(self.rail.fontMetrics().horizontalAdvance(tr(each.title)) for each in SECTIONS)
        self.rail.setFixedWidth(widest + metrics.wide * 2)

    def resizeEvent(self, event: QResizeEvent) -> None:
        narrow = self.width() < self.theme.metrics.field_width * 4
        self.rail.setVisible(not narrow)
        self.line.setVisible(narrow)
        super().resizeEvent(event)

    def _on_row(self, row: int) -> None:
        if row < 0:
            return
        self.stack.setCurrentIndex(row)
        self.rail.setCurrentRow(row)
        self.line.setCurrentIndex(row)
        self._fill()

    def go_to(self, key: str) -> None:
        """Show a section by its key."""
        self._on_row([section.key for section in SECTIONS].index(key))

    def part(self, key: str) -> Part:
        """Return a section, made when it is not there yet."""
        held = self.held[key]
        if held.part is None:
            part = held.section.make(self.needs, held)
            for name in ("told", "troubled", "opened", "new_wanted", "run_wanted"):
                getattr(part, name).connect(getattr(self, name))
            part.scenario_offered.connect(self._on_scenario)
            if self.theme is not self.needs.theme:
                part.wear(self.theme)
            held.hold(part)
        assert held.part is not None
        return held.part

    def _on_scenario(self, name: str, change_set: ChangeSet) -> None:
        """Keep what a section worked out among the scenarios."""
        from planner.desk.plan.whatif_part import WhatIfPart

        keeper = self.part("whatif")
        assert isinstance(keeper, WhatIfPart)
        keeper.keep(name, change_set)

    @property
    def _seen(self) -> _Held:
        return self.held[SECTIONS[self.stack.currentIndex()].key]

    def show_behind(self, behind: Behind) -> None:
        """Show a farm: the section that is seen now, the others when they are seen."""
        self._behind = behind
        for held in self.held.values():
            held.is_stale = True
        self._fill()

    def _fill(self) -> None:
        held = self._seen
        if self._behind is not None and held.is_stale:
            held.is_stale = False
            held.over.say(over_words(self._behind) if self._behind.is_over else "")
            self.part(held.section.key).show_behind(self._behind)

    def take_focus(self) -> None:
        """Give the keyboard to the section that is seen."""
        self.part(self._seen.section.key).take_focus()

    def leave(self) -> None:
        """Let every section give up what runs beside the window."""
        self._behind = None
        for held in self.held.values():
            if held.part is not None:
                held.part.leave()

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        super().wear(theme)
        wear_words(self, theme)
        for held in self.held.values():
            held.theme = theme
            if held.part is not None:
                held.part.wear(theme)
