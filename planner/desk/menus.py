"""The menus and the tool bar as tables: what each entry is called, its keys and its picture.

Builds the actions; what they do is connected by the window. Must know nothing of farms.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QObject, QSize, Qt
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu, QSizePolicy, QToolBar, QWidget

from planner.desk.places.listed import LISTED
from planner.desk.say import tr
from planner.desk.shade import ShadeChoice
from planner.desk.theme import ICON_SIZES, Theme, icon


@dataclass(frozen=True, slots=True, kw_only=True)
class Entry:
    """One entry: its key in the program, its words, keys of the keyboard, picture, and long words.

    Several ways to press it are parted by a blank.
    """

    key: str
    text: str
    keys: str = ""
    picture: str = ""
    tip: str = ""
    ticks: bool = False
    submenu: bool = False


_LINE: Final = None

_FARM: Final = (
    Entry(key="farm.begin", text="&Begin…", tip="The sample farm, a new one, or one that is kept already"),
    Entry(key="farm.new", text="&New…", keys="Ctrl+N", picture="new", tip="Begin a new farm"),
    Entry(key="farm.open", text="&Open…", keys="Ctrl+O", picture="open", tip="Open a farm file"),
    Entry(key="farm.recent", text="Open &recent", submenu=True),
    _LINE,
    Entry(key="farm.copy", text="Save a &copy…", keys="Ctrl+Shift+S", picture="save-copy"),
    Entry(key="farm.text", text="&Export as text…"),
    Entry(key="farm.table", text="Bring &in a table…", tip="Readings or batches from a table (CSV)"),
    Entry(key="farm.backups", text="Go back to a &backup…", tip="Put the farm back as it was on a day"),
    _LINE,
    Entry(key="farm.quit", text="&Quit", keys="Ctrl+Q"),
)
_CHANGE: Final = (
    Entry(key="change.undo", text="&Undo", keys="Ctrl+Z", picture="undo"),
    Entry(key="change.redo", text="&Redo", keys="Ctrl+Shift+Z", picture="redo"),
    Entry(key="change.history", text="&History…", keys="Ctrl+H", tip="Every act, and a way back to it"),
    Entry(
        key="change.moved",
        text="What &moved, and why",
        keys="Ctrl+M",
        tip="Every batch whose dates the last act moved",
    ),
    _LINE,
    Entry(
        key="new.batch", text="&Sow a batch…", keys="Ctrl+B", picture="sow", tip="Plan a new batch of plants"
    ),
    Entry(
        key="new.fish group", text="S&tock fish…", keys="Ctrl+F", picture="fish", tip="Plan a new fish group"
    ),
    Entry(key="new.fish event", text="Fish &event…", tip="Harvest, deaths, a weighed sample, days off feed"),
    Entry(key="new.target", text="Weekly t&arget…"),
    Entry(key="new.dose", text="&Dose…"),
    Entry(key="new.reading", text="&Water reading…"),
    Entry(
        key="new.solids batch", text="Sol&ids batch…", tip="Solids kept apart until their liquor goes back"
    ),
    _LINE,
    Entry(key="change.alter", text="Alter what is &chosen…", keys="Ctrl+Return"),
    Entry(key="change.lock", text="&Lock the chosen batch", keys="Ctrl+L", picture="lock", ticks=True),
    _LINE,
    Entry(
        key="change.copy", text="&Copy chosen batches", keys="Ctrl+C", tip="Keep them, to be sown again later"
    ),
    Entry(
        key="change.paste", text="&Paste some weeks later…", keys="Ctrl+V", tip="Sow again what was copied"
    ),
    Entry(
        key="change.again",
        text="Same agai&n next week",
        keys="Ctrl+D",
        tip="Sow the chosen batches once more",
    ),
    Entry(
        key="change.split",
        text="Spl&it the chosen batch…",
        keys="Ctrl+Shift+D",
        tip="Make some of its plants a batch of their own",
    ),
    _LINE,
    Entry(key="change.remove", text="Re&move what is chosen…", keys="Ctrl+Backspace", picture="remove"),
)
_SETUP: Final = (
    Entry(key="setup.farm", text="&Plan and name…"),
    Entry(key="setup.site", text="&Sites", submenu=True),
    Entry(key="setup.loop", text="&Loops of water", submenu=True),
    Entry(key="setup.tank", text="Fish &tanks", submenu=True),
    Entry(key="setup.filter", text="&Filters", submenu=True),
    Entry(key="setup.bed", text="&Beds", submenu=True),
    _LINE,
    Entry(key="setup.fish group", text="Fish &groups", submenu=True),
    Entry(key="setup.fish event", text="Fish e&vents", submenu=True),
    Entry(key="setup.target", text="Weekly t&argets", submenu=True),
    Entry(key="setup.seed lot", text="Seed l&ots", submenu=True),
    Entry(key="setup.dose", text="&Doses", submenu=True),
    Entry(key="setup.meter", text="&Meters", submenu=True),
    Entry(key="setup.reading", text="Water &readings", submenu=True),
    Entry(key="setup.solids batch", text="Sol&ids batches", submenu=True),
)
_PAPER: Final = (
    Entry(
        key="farm.print",
        text="&Print…",
        keys="Ctrl+P",
        picture="print",
        tip="Print or save as PDF: calendars, task sheets, maps, logs, cards, reports",
    ),
    Entry(
        key="paper.labels",
        text="&Labels and tags…",
        keys="Ctrl+Shift+L",
        tip="Labels for trays, tags for rafts, on plain paper or a sheet of labels",
    ),
    Entry(
        key="paper.trace",
        text="&Trace a batch or lot…",
        keys="Ctrl+Shift+T",
        tip="From the seed lot to the places, the harvest and the water, on one page",
    ),
    _LINE,
    Entry(
        key="paper.phone",
        text="&Calendar for a phone…",
        tip="Tasks as a calendar file, by who does them, with reminders",
    ),
    Entry(
        key="paper.message",
        text="Copy the week's &message",
        keys="Ctrl+Shift+M",
        tip="What is due in the week in at most 160 letters, for any phone",
    ),
)
_VIEW: Final = (
    Entry(key="view.search", text="S&earch everything…", keys="Ctrl+K", tip="Find anything by its name"),
    Entry(key="view.today", text="Go to &today", keys="Ctrl+T", picture="today"),
    Entry(key="view.previous", text="&Previous week", keys="Ctrl+PgUp"),
    Entry(key="view.next", text="&Next week", keys="Ctrl+PgDown"),
    _LINE,
    Entry(key="view.in", text="Zoom &in", keys="Ctrl++ Ctrl+=", picture="zoom-in"),
    Entry(key="view.out", text="Zoom &out", keys="Ctrl+-", picture="zoom-out"),
    Entry(key="view.fit", text="&Fit the whole plan", keys="Ctrl+0"),
    _LINE,
    *(Entry(key=f"view.{page.key}", text=page.title, keys=page.keys, tip=page.tip) for page in LISTED),
    _LINE,
    Entry(key="view.due", text="&Due this week", keys="F7", ticks=True),
    Entry(key="view.side", text="What is &chosen", keys="F8", ticks=True),
    Entry(
        key="view.why",
        text="Wh&y these figures…",
        keys="Ctrl+I",
        tip="Why the number in hand, or the figures of what is chosen, are what they are",
    ),
    Entry(
        key="view.sure",
        text="How s&ure is the week",
        keys="Ctrl+U",
        tip="Work out low and high values, and the chance that each target is met",
    ),
    _LINE,
    Entry(key="shade.light", text="&Light", ticks=True),
    Entry(key="shade.dark", text="Dar&k", ticks=True),
    Entry(key="shade.system", text="Like the &system", ticks=True),
    _LINE,
    Entry(key="language.en", text="English"),
    Entry(key="language.fil", text="Filipino"),
    Entry(key="language.es", text="Español"),
)
_HELP: Final = (
    Entry(key="help.page", text="&Help to this page", keys="F1", picture="info"),
    Entry(key="help.glossary", text="&Words used here"),
    Entry(
        key="help.meaning",
        text="&Meaning of what is in hand",
        keys="Shift+F1",
        tip="Tell what the words mean of the part that has the keyboard; hovering tells it too",
    ),
    Entry(
        key="help.check",
        text="&Check the arithmetic…",
        tip="Work published figures out again and see how far the program is from print",
    ),
    Entry(key="help.about", text="&About and cautions"),
)

MENUS: Final = (
    ("&Farm", _FARM),
    ("&Change", _CHANGE),
    ("&Set-up", _SETUP),
    ("&Paper", _PAPER),
    ("&View", _VIEW),
    ("&Help", _HELP),
)
BAR: Final = (
    ("new.batch", True),
    ("new.fish group", True),
    _LINE,
    ("change.undo", False),
    ("change.redo", False),
    _LINE,
    ("view.today", True),
    ("view.out", False),
    ("view.in", False),
    ("view.fit", True),
    ("", False),
    ("farm.print", True),
)
_SHORT: Final = {
    "new.batch": "Sow",
    "new.fish group": "Stock",
    "view.today": "Today",
    "view.fit": "Fit",
    "farm.print": "Print",
}
NEEDS_FARM: Final = frozenset(
    entry.key
    for _, entries in MENUS
    for entry in entries
    if entry is not None
    and entry.key not in {"farm.begin", "farm.new", "farm.open", "farm.recent", "farm.quit"}
    and not entry.key.startswith(("shade.", "language.", "help."))
)


class Menus(QObject):
    """All actions of the window by their key, and the submenus that are filled later."""

    def __init__(self, window: QMainWindow, theme: Theme) -> None:
        super().__init__(window)
        self.actions: dict[str, QAction] = {}
        self.submenus: dict[str, QMenu] = {}
        self._pictures: dict[str, str] = {}
        for title, entries in MENUS:
            self._fill(window.menuBar().addMenu(tr(title)), entries)
        self._shades = QActionGroup(self)
        for choice in ShadeChoice:
            self._shades.addAction(self.actions[f"shade.{choice.value}"])
        self.bar = self._tool_bar(window, theme)
        self._theme = theme
        self._tint((round(theme.metrics.icon * window.devicePixelRatioF()),))

    def _fill(self, menu: QMenu, entries: tuple[Entry | None, ...]) -> None:
        menu.setToolTipsVisible(True)
        for entry in entries:
            if entry is None:
                menu.addSeparator()
            elif entry.submenu:
                self.submenus[entry.key] = menu.addMenu(tr(entry.text))
                self.actions[entry.key] = self.submenus[entry.key].menuAction()
            else:
                self.actions[entry.key] = self._action(menu, entry)

    def _action(self, menu: QMenu, entry: Entry) -> QAction:
        action = menu.addAction(tr(entry.text))
        action.setCheckable(entry.ticks)
        action.setShortcuts([QKeySequence(keys) for keys in entry.keys.split()])
        action.setData(entry.key)
        action.setIconText(tr(_SHORT.get(entry.key, entry.text)).replace("&", ""))
        plain = tr(entry.tip or entry.text).replace("&", "").rstrip("…")
        action.setToolTip(f"{plain} ({entry.keys.split()[0]})" if entry.keys else plain)
        if entry.picture:
            self._pictures[entry.key] = entry.picture
        return action

    def _tool_bar(self, window: QMainWindow, theme: Theme) -> QToolBar:
        bar = window.addToolBar(tr("Tools"))
        bar.setObjectName("tools")
        bar.setMovable(False)
        bar.setIconSize(QSize(theme.metrics.icon, theme.metrics.icon))
        for entry in BAR:
            if entry is None:
                bar.addSeparator()
            elif not entry[0]:
                gap = QWidget(bar)
                gap.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Preferred)
                bar.addWidget(gap)
            else:
                self._button(bar, entry[0], worded=entry[1])
        return bar

    def _button(self, bar: QToolBar, key: str, *, worded: bool) -> None:
        action = self.actions[key]
        bar.addAction(action)
        button = bar.widgetForAction(action)
        button.setFocusPolicy(Qt.FocusPolicy.TabFocus)
        button.setAccessibleName(action.toolTip())
        style = Qt.ToolButtonStyle
        shown = style.ToolButtonTextBesideIcon if worded else style.ToolButtonIconOnly
        button.setProperty("toolButtonStyle", shown)

    def wear(self, theme: Theme) -> None:
        """Tint every picture for a theme."""
        self._theme = theme
        self.sharpen()

    def sharpen(self) -> None:
        """Draw every picture in all sizes; at first there is only the one that the tool bar shows."""
        self._tint(ICON_SIZES)

    def _tint(self, sizes: tuple[int, ...]) -> None:
        for key, picture in self._pictures.items():
            self.actions[key].setIcon(icon(picture, self._theme, sizes))

    def show_shade(self, choice: ShadeChoice) -> None:
        """Tick the look in use."""
        self.actions[f"shade.{choice.value}"].setChecked(True)

    def allow_farm(self, *, there: bool) -> None:
        """Let what needs an open farm be chosen, or not."""
        for key in NEEDS_FARM:
            self.actions[key].setEnabled(there)

    def show_chosen(self, thing: object | None) -> None:
        """Offer what can be done with what is chosen, if anything is."""
        for key in ("change.alter", "change.remove"):
            self.actions[key].setEnabled(thing is not None)
        lock = self.actions["change.lock"]
        lock.setEnabled(thing is not None and hasattr(thing, "locked"))
        lock.setChecked(bool(getattr(thing, "locked", False)))

    def show_undo(self, undo: str, redo: str) -> None:
        """Show in menu and tool tip what undo and redo would do."""
        for key, words, title in (("change.undo", tr("Undo"), undo), ("change.redo", tr("Redo"), redo)):
            action = self.actions[key]
            full = f"{words}: {title}" if title else words
            action.setText(full.replace("&", "&&"))
            action.setIconText(words)
            action.setToolTip(f"{full} ({action.shortcut().toString()})")
            action.setEnabled(bool(title))
            button = self.bar.widgetForAction(action)
            button.setAccessibleName(full)
