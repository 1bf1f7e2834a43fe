"""Shows what is chosen, and why its numbers are what they are, as a page of text beside the lanes.

Turns a `Page` into HTML in the colours of the theme; knows nothing of farms or forecasts.
"""

from __future__ import annotations

from collections.abc import Iterator
from html import escape
from itertools import count
from typing import Final

from PySide6.QtCore import QPoint, Qt, QUrl, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QFrame, QMenu, QPushButton, QTextBrowser, QVBoxLayout, QWidget

from planner.desk.book import FigureWords
from planner.desk.flow import Flow
from planner.desk.pages import Fact, Page, Section
from planner.desk.say import tr
from planner.desk.theme import Theme

_WHY: Final = "why:"


def page_html(page: Page, theme: Theme) -> str:
    """Return a page as HTML; every text of the farm is escaped."""
    numbers = count()
    parts = [
        f"<p style='font-size:large; margin-bottom:0'><b>{escape(page.title)}</b></p>",
        f"<p style='color:{theme.muted.name()}; margin-top:2px'>{escape(page.subtitle)}</p>",
        *(_section_html(section, theme, numbers) for section in page.sections),
    ]
    return "".join(parts)


def _section_html(section: Section, theme: Theme, numbers: Iterator[int]) -> str:
    parts = []
    if section.title:
        parts.append(
            f"<p style='margin-top:14px; margin-bottom:3px; color:{theme.link.name()}'>"
            f"<b>{escape(section.title)}</b></p>"
        )
    parts.extend(_warning_html(warning, theme, numbers) for warning in section.warnings)
    if section.facts:
        rows = "".join(_fact_html(fact, theme, numbers) for fact in section.facts)
        parts.append(f"<table width='100%' cellspacing='0' cellpadding='2'>{rows}</table>")
    parts.extend(_figure_html(figure, theme) for figure in section.figures)
    parts.extend(
        f"<p style='margin-top:6px; margin-bottom:0'><small>⚠ {escape(words)}</small></p>"
        for words in section.cautions
    )
    return "".join(parts)


def _warning_html(warning: Fact, theme: Theme, numbers: Iterator[int]) -> str:
    words, ink = escape(warning.value), theme.wrong.name()
    if warning.ask is not None:
        words = _link(words, ink, numbers)
    return f"<p style='color:{ink}; margin-top:2px; margin-bottom:4px'>⚠ {words}</p>"


def _fact_html(fact: Fact, theme: Theme, numbers: Iterator[int]) -> str:
    noted = escape(fact.note).replace("\n", "<br>")
    note = f"<br><small style='color:{theme.muted.name()}'>{noted}</small>" if noted else ""
    value = escape(fact.value).replace("\n", "<br>")
    if fact.ask is not None:
        value = _link(value, theme.link.name(), numbers)
    note += "".join(
        f"<br><small>{_link(escape(each.value), theme.link.name(), numbers)}</small>" for each in fact.more
    )
    if not fact.label:
        return f"<tr><td colspan='2'>{value}{note}</td></tr>"
    return (
        f"<tr><td style='color:{theme.muted.name()}; padding-right:8px'>{escape(fact.label)}</td>"
        f"<td>{value}{note}</td></tr>"
    )


def _link(html: str, ink: str, numbers: Iterator[int]) -> str:
    style = f"color:{ink}; text-decoration:none"
    return f"<a href='{_WHY}{next(numbers)}' style='{style}'>{html}</a>"


def _figure_html(figure: FigureWords, theme: Theme) -> str:
    more = f"{figure.source}. {figure.conditions}" if figure.conditions else figure.source
    value = f"<b>{escape(figure.value)}</b>" if figure.own else escape(figure.value)
    return (
        f"<p style='margin-top:5px; margin-bottom:0'>{escape(figure.label)}: {value}</p>"
        f"<p style='margin-top:0; margin-bottom:0; color:{theme.muted.name()}'>"
        f"<small>{escape(more)}</small></p>"
    )


class SidePanel(QWidget):
    """The page, with buttons to alter or close what is chosen, and to ask why a figure is what it is.

    Figures that can be asked about are links: a click, or Tab and Enter, asks.
    """

    alter_wanted = Signal()
    why_wanted = Signal(object, int)
    sure_wanted = Signal()
    week_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._page: Page | None = None
        self.text = QTextBrowser(self)
        self.text.setFrameShape(QFrame.Shape.NoFrame)
        self.text.setOpenLinks(False)
        self.text.setTabChangesFocus(True)
        self.text.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.text.document().setDocumentMargin(theme.metrics.margin)
        self.text.setAccessibleName(tr("What is chosen"))
        self.alter = QPushButton(tr("Alter…"), self)
        self.week = QPushButton(tr("Show the week"), self)
        self.why = QPushButton(tr("Why?"), self)
        self.why.setToolTip(tr("Why the figures shown here are what they are"))
        foot = Flow(theme.metrics.tight)
        foot.setContentsMargins(
            theme.metrics.margin, theme.metrics.gap, theme.metrics.margin, theme.metrics.gap
        )
        self.sure = QPushButton(tr("How sure?"), self)
        self.sure.setToolTip(tr("Work out low and high values, and the chance that each target is met"))
        for button in (self.alter, self.week, self.sure, self.why):
            button.setAccessibleName(button.text())
        foot.add(self.alter, self.week, self.sure, self.why)
        self.why.setAccessibleName(self.why.toolTip())
        self.sure.setAccessibleName(self.sure.toolTip())
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.text, 1)
        column.addLayout(foot)
        self.alter.clicked.connect(self._on_alter)
        self.week.clicked.connect(self._on_week)
        self.why.clicked.connect(self._on_why)
        self.sure.clicked.connect(self._on_sure)
        self.text.anchorClicked.connect(self._on_anchor)
        self.text.setContextMenuPolicy(Qt.ContextMenuPolicy.CustomContextMenu)
        self.text.customContextMenuRequested.connect(self._on_menu)

    @property
    def page(self) -> Page | None:
        """The page shown."""
        return self._page

    def show_page(self, page: Page, *, of_thing: bool, back: bool = False) -> None:
        """Show a page; the same page again changes nothing. `back` offers a way back to the week."""
        self.alter.setVisible(of_thing)
        self.week.setVisible(of_thing or back)
        self.sure.setVisible(not (of_thing or back))
        if page == self._page:
            return
        same = self._page is not None and (page.title, page.subtitle) == (
            self._page.title,
            self._page.subtitle,
        )
        at = self.text.verticalScrollBar().value() if same else 0
        self._page = page
        self.why.setVisible(bool(page.askable))
        self.text.setHtml(page_html(page, self._theme))
        self.text.verticalScrollBar().setValue(at)
        self.text.setAccessibleDescription(f"{page.title}, {page.subtitle}")

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self._theme = theme
        if self._page is not None:
            self.text.setHtml(page_html(self._page, theme))

    def _on_alter(self, _checked: bool) -> None:
        self.alter_wanted.emit()

    def _on_week(self, _checked: bool) -> None:
        self.week_wanted.emit()

    def _on_why(self, _checked: bool) -> None:
        """Ask about the figure the keyboard stands on, or about the first one."""
        self.ask_why(max(number_of(self.text.textCursor().charFormat().anchorHref()), 0))

    def ask_why(self, number: int = 0) -> None:
        """Ask why a figure of the page is what it is."""
        if self._page is not None and self._page.askable:
            self.why_wanted.emit(self._page.askable, number)

    def show_working(self, *, working: bool, share: float = 0.0) -> None:
        """Say that it is being worked out how sure the forecast is, and how far that is; or no longer.

        The button then stops it.
        """
        from planner.desk.sure_words import stop_words

        self.sure.setText(stop_words(share) if working else tr("How sure?"))
        self.sure.setAccessibleName(tr("Stop working out how sure it is") if working else self.sure.toolTip())

    def _on_sure(self, _checked: bool) -> None:
        self.sure_wanted.emit()

    def _on_anchor(self, link: QUrl) -> None:
        number = number_of(link.toString())
        if number >= 0:
            self.ask_why(number)

    def _on_menu(self, at: QPoint) -> None:
        number = number_of(self.text.anchorAt(at) or self.text.textCursor().charFormat().anchorHref())
        menu = QMenu(self)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        if number >= 0:
            why = menu.addAction(tr("Why?"))
            why.setData(number)
            why.triggered.connect(self._on_menu_why)
        copy = menu.addAction(tr("Copy"))
        copy.setEnabled(self.text.textCursor().hasSelection())
        copy.triggered.connect(self.text.copy)
        menu.addAction(tr("Select all")).triggered.connect(self.text.selectAll)
        menu.popup(self.text.viewport().mapToGlobal(at))

    def _on_menu_why(self) -> None:
        action = self.sender()
        if isinstance(action, QAction):
            self.ask_why(action.data())


def number_of(link: str) -> int:
    """Return the number of the askable fact a link stands for, -1 for another link."""
    return int(link.removeprefix(_WHY)) if link.startswith(_WHY) else -1
