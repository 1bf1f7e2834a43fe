"""The window of F1: help to the page in front, and the glossary on a second tab; knows no farm."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QDialog, QFrame, QTextBrowser, QVBoxLayout, QWidget

from planner.desk.fitting import open_sized
from planner.desk.help import GlossaryPane, close_box
from planner.desk.places.listed import Listed
from planner.desk.plan.help_pages import help_page
from planner.desk.say import tr
from planner.desk.side import page_html
from planner.desk.tabs import Tabs
from planner.desk.theme import Theme

PAGES = "pages.toml"
"""The file of the words, in `resources/help`."""


class PageHelpDialog(QDialog):
    """Shows the help to a page of the window beside it; Ctrl+Tab goes to the glossary."""

    def __init__(self, listed: Listed, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        title = tr(listed.title)
        self.setWindowTitle(tr("Help: {title}", title=title))
        self.text = QTextBrowser(self)
        self.text.setFrameShape(QFrame.Shape.NoFrame)
        self.text.setAccessibleName(self.windowTitle())
        self.text.setTabChangesFocus(True)
        self.text.document().setDocumentMargin(theme.metrics.margin)
        self.text.setHtml(page_html(help_page(listed.key, title, PAGES), theme))
        self.words = GlossaryPane(theme, self)
        self.tabs = Tabs(self)
        self.tabs.setAccessibleName(tr("Help"))
        self.tabs.addTab(self.text, tr("This page"))
        self.tabs.addTab(self.words, tr("Words used here"))
        lines = QVBoxLayout(self)
        lines.setContentsMargins(*(theme.metrics.margin,) * 4)
        lines.addWidget(self.tabs, 1)
        lines.addWidget(close_box(self))
        open_sized(self, QSize(theme.metrics.side_width * 2, theme.metrics.row * 18))
        self.finished.connect(self.deleteLater)
