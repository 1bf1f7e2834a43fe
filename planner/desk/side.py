"""Shows what is chosen, and why its numbers are what they are, as a page of text beside the lanes.

Turns a `Page` into HTML in the colours of the theme; knows nothing of farms or forecasts.
"""

from __future__ import annotations

from html import escape

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QTextBrowser, QVBoxLayout, QWidget

from planner.desk.book import FigureWords
from planner.desk.pages import Fact, Page, Section
from planner.desk.say import tr
from planner.desk.theme import Theme


def page_html(page: Page, theme: Theme) -> str:
    """Return a page as HTML; every text of the farm is escaped."""
    parts = [
        f"<p style='font-size:large; margin-bottom:0'><b>{escape(page.title)}</b></p>",
        f"<p style='color:{theme.muted.name()}; margin-top:2px'>{escape(page.subtitle)}</p>",
        *(_section_html(section, theme) for section in page.sections),
    ]
    return "".join(parts)


def _section_html(section: Section, theme: Theme) -> str:
    parts = []
    if section.title:
        parts.append(
            f"<p style='margin-top:14px; margin-bottom:3px; color:{theme.link.name()}'>"
            f"<b>{escape(section.title)}</b></p>"
        )
    parts.extend(
        f"<p style='color:{theme.wrong.name()}; margin-top:2px; margin-bottom:4px'>⚠ {escape(words)}</p>"
        for words in section.warnings
    )
    if section.facts:
        rows = "".join(_fact_html(fact, theme) for fact in section.facts)
        parts.append(f"<table width='100%' cellspacing='0' cellpadding='2'>{rows}</table>")
    parts.extend(_figure_html(figure, theme) for figure in section.figures)
    return "".join(parts)


def _fact_html(fact: Fact, theme: Theme) -> str:
    note = f"<br><small style='color:{theme.muted.name()}'>{escape(fact.note)}</small>" if fact.note else ""
    value = escape(fact.value).replace("\n", "<br>")
    if not fact.label:
        return f"<tr><td colspan='2'>{value}{note}</td></tr>"
    return (
        f"<tr><td style='color:{theme.muted.name()}; padding-right:8px'>{escape(fact.label)}</td>"
        f"<td>{value}{note}</td></tr>"
    )


def _figure_html(figure: FigureWords, theme: Theme) -> str:
    more = f"{figure.source}. {figure.conditions}" if figure.conditions else figure.source
    value = f"<b>{escape(figure.value)}</b>" if figure.own else escape(figure.value)
    return (
        f"<p style='margin-top:5px; margin-bottom:0'>{escape(figure.label)}: {value}</p>"
        f"<p style='margin-top:0; margin-bottom:0; color:{theme.muted.name()}'>"
        f"<small>{escape(more)}</small></p>"
    )


class SidePanel(QWidget):
    """The page, with buttons to alter or close what is chosen."""

    alter_wanted = Signal()
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
        foot = QHBoxLayout()
        foot.setContentsMargins(
            theme.metrics.margin, theme.metrics.gap, theme.metrics.margin, theme.metrics.gap
        )
        for button in (self.alter, self.week):
            button.setAccessibleName(button.text())
            foot.addWidget(button)
        foot.addStretch(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.text, 1)
        column.addLayout(foot)
        self.alter.clicked.connect(self._on_alter)
        self.week.clicked.connect(self._on_week)

    @property
    def page(self) -> Page | None:
        """The page shown."""
        return self._page

    def show_page(self, page: Page, *, of_thing: bool) -> None:
        """Show a page; the same page again changes nothing."""
        self.alter.setVisible(of_thing)
        self.week.setVisible(of_thing)
        if page == self._page:
            return
        same = self._page is not None and (page.title, page.subtitle) == (
            self._page.title,
            self._page.subtitle,
        )
        at = self.text.verticalScrollBar().value() if same else 0
        self._page = page
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
