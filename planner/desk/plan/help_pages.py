"""The help to each section of the page, shown beside the window; its words lie in `resources/help`."""

from __future__ import annotations

import tomllib
from typing import Final

from PySide6.QtCore import QSize
from PySide6.QtWidgets import QDialog, QFrame, QTextBrowser, QWidget

from planner.desk.fitting import open_sized
from planner.desk.help import close_box
from planner.desk.pages import Fact, Page, Section
from planner.desk.plan.kit import column
from planner.desk.say import tr
from planner.desk.side import page_html
from planner.desk.theme import Theme
from planner.shipped import shipped_path

_EVERY: Final = ("every", "pages.toml")
Help = tuple[tuple[str, tuple[str, ...]], ...]
"""Headings with their paragraphs."""


def help_of(key: str, file: str = "plan.toml") -> Help:
    """Return the help to a section or page, by its key; raises `KeyError` for a key that has none."""
    read = tomllib.loads(shipped_path("resources", "help", file).read_text("utf-8"))
    return tuple((part["heading"], tuple(part["paragraphs"])) for part in read[key])


def help_page(key: str, title: str, file: str = "plan.toml") -> Page:
    """Return the help to a section, or to a page from another file, and below it what holds on every page."""
    return Page(
        title=title,
        subtitle=tr("Help"),
        sections=tuple(
            Section(title=tr(heading), facts=tuple(Fact(label="", value=tr(words)) for words in paragraphs))
            for heading, paragraphs in (*help_of(key, file), *help_of(*_EVERY))
        ),
    )


class HelpPage(QDialog):
    """Shows the help to a section beside the window, so that both can be read."""

    def __init__(self, key: str, title: str, theme: Theme, parent: QWidget) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Help: {title}", title=title))
        self.text = QTextBrowser(self)
        self.text.setFrameShape(QFrame.Shape.NoFrame)
        self.text.setAccessibleName(self.windowTitle())
        self.text.setTabChangesFocus(True)
        self.text.document().setDocumentMargin(theme.metrics.margin)
        self.text.setHtml(page_html(help_page(key, title), theme))
        lines = column(self, theme)
        lines.addWidget(self.text, 1)
        lines.addWidget(close_box(self))
        open_sized(self, QSize(theme.metrics.side_width * 3 // 2, theme.metrics.row * 16))
        self.finished.connect(self.deleteLater)
