"""The window: puts its parts together and passes wishes on, nothing more.

It paints before anything heavy is read in; the workspace with lanes, lists and figures comes with the
first moment after that, through the loader that was handed in. Must know nothing of how a farm is kept.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeVar

from PySide6.QtCore import QSize, Qt, QTimer
from PySide6.QtGui import QAction, QCloseEvent, QKeyEvent, QPaintEvent
from PySide6.QtWidgets import QApplication, QLabel, QMainWindow, QVBoxLayout, QWidget

from planner.desk import settings
from planner.desk.conduct import Conduct
from planner.desk.first_look import first_look, keep_look
from planner.desk.menus import Menus
from planner.desk.say import tr
from planner.desk.services import DeskServices, Rooms, WorkspaceNeeds
from planner.desk.session import Session
from planner.desk.theme import ShadeChoice, dress, load_bold, load_font, theme_of

if TYPE_CHECKING:
    from planner.desk.crash import CrashWatch
    from planner.desk.files import Files
    from planner.desk.glance_view import GlanceView
    from planner.desk.messages import MessageBar
    from planner.desk.workspace import Workspace

_WIDTH, _HEIGHT = 1280, 720
W = TypeVar("W", bound=QWidget)
_LISTED = 25
"""How many things of a kind a submenu lists, the latest ones."""


class MainWindow(QMainWindow):
    """Menu bar, tool bar, workspace, message bar and status bar around one open farm."""

    def __init__(self, services: DeskServices) -> None:
        super().__init__()
        self._services = services
        self.memory = settings.Memory(services.settings)
        load_font()
        self.theme = theme_of(self.memory.shade)
        self._dress()
        self.conduct = Conduct(self)
        self.menus = Menus(self, self.theme)
        self.rooms: Rooms | None = None
        self.files: Files | None = None
        self.workspace: Workspace | None = None
        self.glance_view: GlanceView | None = None
        self._painted = False
        self._build()
        self._connect()
        self._restore()

    @cached_property
    def messages(self) -> MessageBar:
        """The bar of messages; made when first something may be said, for at the first paint nothing is."""
        from planner.desk.messages import MessageBar

        bar = MessageBar(self.theme, self)
        column = self._middle.layout()
        assert column is not None
        column.addWidget(bar)
        bar.undo_wanted.connect(self.conduct.undo)
        return bar

    @cached_property
    def crash(self) -> CrashWatch:
        """What catches faults of the program; made when the farm is read in."""
        from planner.desk.crash import CrashWatch

        return CrashWatch(self.theme, self._services.version, self)

    def _build(self) -> None:
        self.setWindowTitle("Raftweek")
        self.setObjectName("raftweek")
        self._middle = QWidget(self)
        column = QVBoxLayout(self._middle)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        waiting = QLabel(tr("Opening the farm…"), self._middle)
        waiting.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._waiting: QWidget = waiting
        column.addWidget(waiting, 1)
        self.setCentralWidget(self._middle)
        self._name, self._saved, self._mark = QLabel(self), QLabel(self), QLabel(self)
        bar = self.statusBar()
        for label in (self._name, self._saved, self._mark):
            label.setContentsMargins(self.theme.metrics.gap, 0, self.theme.metrics.gap, 0)
        bar.addWidget(self._name)
        bar.addWidget(self._saved, 1)
        bar.addPermanentWidget(self._mark)
        self.menus.allow_farm(there=False)
        self.menus.show_undo("", "")
        self.menus.show_shade(self.memory.shade)

    def _connect(self) -> None:
        self.conduct.opened.connect(self._on_opened)
        self.conduct.changed.connect(self._on_changed)
        self.conduct.acted.connect(self._on_acted)
        self.conduct.troubled.connect(self.trouble)
        self.conduct.closed.connect(self._on_closed)
        for action in self.menus.actions.values():
            action.triggered.connect(self._on_entry)
        for submenu in self.menus.submenus.values():
            submenu.aboutToShow.connect(self._on_submenu)
            submenu.triggered.connect(self._on_submenu_entry)
        QApplication.styleHints().colorSchemeChanged.connect(self._on_system_shade)

    def _restore(self) -> None:
        self.resize(QSize(_WIDTH, _HEIGHT).boundedTo(self.screen().availableSize()))
        self.restoreGeometry(self.memory.get(settings.GEOMETRY))

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if not self._painted:
            self._painted = True
            QTimer.singleShot(0, self, self._look_and_load)

    def _look_and_load(self) -> None:
        """Show what was last seen of the farm, if that still holds, and read in everything behind it."""
        load_bold()
        try:
            view = first_look(self._services, self.memory, self.theme, self._middle)
            if view is not None:
                self._name.setText(view.name)
                self._saved.setText(tr("Opening…"))
                self._waiting = self.glance_view = self._put(view)
                view.show()
                QApplication.sendPostedEvents()  # laid out, and painted: reading in leaves no time for it
                view.repaint()
        finally:
            QTimer.singleShot(0, self, self.load)

    def _put(self, widget: W) -> W:
        """Put a widget in the middle, in the place of what stands there till now."""
        layout, self.glance_view = self._middle.layout(), None
        assert layout is not None
        layout.replaceWidget(self._waiting, widget)
        self._waiting.deleteLater()
        layout.activate()
        return widget

    def load(self) -> None:
        """Read in what is heavy, build the workspace, and open a farm."""
        if self.rooms is not None:
            return
        from planner.desk.files import Files

        self.crash.begin()
        self.menus.sharpen()
        self.rooms = self._services.load()
        workspace = self._put_workspace(self.rooms)
        self.conduct.expect(self.rooms.troubles, workspace.words_for)
        self.files = Files(
            rooms=self.rooms,
            conduct=self.conduct,
            memory=self.memory,
            ask=self._services.ask,
            home=self._services.home,
            trouble_with=workspace.trouble_with,
            window=self,
        )
        self.files.troubled.connect(self.trouble)
        self.files.told.connect(self.tell)
        self.files.open_first(self._services.start_with)

    def _put_workspace(self, rooms: Rooms) -> Workspace:
        needs = WorkspaceNeeds(
            theme=self.theme,
            conduct=self.conduct,
            now=self._services.now,
            ask=self._services.ask,
            memory=self.memory,
            home=self._services.home,
            parent=self._middle,
        )
        workspace = self.workspace = self._put(rooms.make_workspace(needs))
        workspace.troubled.connect(self.trouble)
        workspace.told.connect(self.tell)
        workspace.removed.connect(self._on_removed)
        workspace.chosen_changed.connect(self._show_chosen)
        workspace.restore(self.memory.get(settings.ARRANGEMENT))
        self._show_panes()
        return workspace

    # What the conduct tells.

    def _on_opened(self, session: Session) -> None:
        self.messages.clear()
        self.menus.allow_farm(there=True)
        if self.workspace is not None:
            self.workspace.show_session(session)
        self._show_state()
        self._show_chosen()

    def _on_changed(self, notice: Any) -> None:
        if self.workspace is not None:
            self.workspace.on_notice(notice)
        self._show_state()
        self._show_chosen()

    def _on_acted(self, title: str) -> None:
        self.messages.clear()
        self._saved.setText(tr("{title} – saved", title=title))

    def _on_closed(self) -> None:
        self.menus.allow_farm(there=False)
        self.menus.show_undo("", "")

    def _show_state(self) -> None:
        session = self.conduct.session
        if session is None:
            return
        farm = session.farm
        path = self.rooms.where(session) if self.rooms else None
        self.setWindowTitle(f"{farm.settings.name} – Raftweek")
        self._name.setText(farm.settings.name)
        self._name.setToolTip(str(path or ""))
        self._saved.setText(tr("All saved"))
        self._mark.setText(self.workspace.plan_words() if self.workspace else "")
        self._mark.setToolTip(tr("Changes whenever anything in the farm changes; printed on every sheet."))
        self.menus.show_undo(self.conduct.undo_title, self.conduct.redo_title)

    def _show_chosen(self) -> None:
        thing = self.workspace.chosen_thing() if self.workspace else None
        for key in ("change.alter", "change.remove", "change.lock"):
            self.menus.actions[key].setEnabled(thing is not None)
        lock = self.menus.actions["change.lock"]
        lock.setEnabled(thing is not None and hasattr(thing, "locked"))
        lock.setChecked(bool(getattr(thing, "locked", False)))

    def tell(self, words: str) -> None:
        """Say small news in the message bar."""
        self.messages.tell(words)

    def _on_removed(self, title: str) -> None:
        self.messages.tell(tr("Done: {title}", title=title), undo=True)

    def trouble(self, words: str) -> None:
        """Say expected trouble in the message bar."""
        self.messages.warn(words)

    # Wishes.

    def _on_entry(self, _checked: bool = False) -> None:
        action = self.sender()
        key = action.data() if isinstance(action, QAction) else None
        if not isinstance(key, str):
            return
        own = self._own_entries().get(key)
        if own is not None:
            own()
        elif key.startswith("shade."):
            self.set_shade(ShadeChoice(key.partition(".")[2]))
        elif self.workspace is not None:
            self.workspace.run(key)
            self._show_panes()

    def _own_entries(self) -> dict[str, Callable[[], object]]:
        entries: dict[str, Callable[[], object]] = {
            "farm.quit": self.close,
            "change.undo": self.conduct.undo,
            "change.redo": self.conduct.redo,
            "help.glossary": self.show_glossary,
            "help.about": self.show_about,
            "help.check": self.show_check,
        }
        if self.files is not None:
            entries["farm.open"] = self.files.ask_open
            entries["farm.copy"] = self.files.ask_copy
            entries["farm.text"] = self.files.ask_text
            entries["farm.new"] = self.show_new_farm
            entries["farm.print"] = self.show_print
        return entries

    def show_new_farm(self) -> None:
        """Ask what a new farm begins with."""
        if self.workspace is not None and self.files is not None:
            self.workspace.ask_new_farm(self.files.ask_begin)

    def show_print(self) -> None:
        """Show the seeding calendar as it will be printed."""
        if self.workspace is not None:
            self.workspace.ask_print()

    def show_glossary(self) -> None:
        """Show what the words mean."""
        from planner.desk.help import GlossaryDialog

        GlossaryDialog(self.theme, self).open()

    def show_about(self) -> None:
        """Show what the program is, and its cautions."""
        from planner.desk.help import AboutDialog

        cautions = self.workspace.cautions() if self.workspace else ()
        AboutDialog(self._services.version, cautions, self.theme, self).open()

    def show_check(self) -> None:
        """Work the published cases again and show how they come out."""
        if self.rooms is not None:
            from planner.desk.checking.dialog import CheckDialog

            CheckDialog(self.rooms.check, self.theme, self).open()

    def _on_submenu(self) -> None:
        for key, submenu in self.menus.submenus.items():
            if submenu is not self.sender():
                continue
            submenu.clear()
            if key == "farm.recent":
                self._fill_recent()
            else:
                self._fill_things(key.partition(".")[2])

    def _fill_recent(self) -> None:
        submenu = self.menus.submenus["farm.recent"]
        for path in self.memory.recent:
            submenu.addAction(path.name).setData(path)
            submenu.actions()[-1].setToolTip(str(path))
        submenu.addSeparator()
        submenu.addAction(tr("Empty this list…")).setData("forget")

    def _fill_things(self, word: str) -> None:
        submenu = self.menus.submenus[f"setup.{word}"]
        if self.workspace is None:
            return
        for thing in self.workspace.things(word)[-_LISTED:]:
            submenu.addAction(tr("{name}…", name=self.workspace.name_of(thing))).setData(thing)
        submenu.addSeparator()
        submenu.addAction(tr("New…")).setData(f"new.{word}")

    def _on_submenu_entry(self, action: QAction) -> None:
        wish = action.data()
        if isinstance(wish, Path) and self.files is not None:
            self.files.open(wish)
        elif wish == "forget" and self.files is not None:
            self.files.ask_forget()
        elif isinstance(wish, str) and wish.startswith("new.") and self.workspace is not None:
            self.workspace.run(wish)
        elif wish is not None and self.workspace is not None and hasattr(wish, "id"):
            self.workspace.alter(wish)

    # Looks.

    def _dress(self) -> None:
        application = QApplication.instance()
        if isinstance(application, QApplication):
            dress(application, self.theme)

    def set_shade(self, choice: ShadeChoice) -> None:
        """Draw everything light, dark, or as the system is."""
        self.memory.put(settings.SHADE, choice.value)
        self.menus.show_shade(choice)
        theme = theme_of(choice)
        if theme is self.theme:
            return
        self.theme = theme
        self._dress()
        self.menus.wear(theme)
        self.messages.paint_in(theme)
        if self.workspace is not None:
            self.workspace.wear(theme)

    def _on_system_shade(self, _scheme: Qt.ColorScheme) -> None:
        if self.memory.shade is ShadeChoice.SYSTEM:
            self.set_shade(ShadeChoice.SYSTEM)

    def _show_panes(self) -> None:
        if self.workspace is not None:
            due, side = self.workspace.panes_shown()
            self.menus.actions["view.due"].setChecked(due)
            self.menus.actions["view.side"].setChecked(side)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.messages.words:
            self.messages.clear()
            return
        super().keyPressEvent(event)

    def closeEvent(self, event: QCloseEvent) -> None:
        self.memory.put(settings.GEOMETRY, self.saveGeometry())
        if self.workspace is not None:
            self.memory.put(settings.ARRANGEMENT, self.workspace.arrangement())
        self.memory.save()
        self.crash.end()
        session = self.conduct.let_go()
        if session is not None and self.rooms is not None:
            path = self.rooms.where(session)
            self.rooms.close(session)
            if path is not None and self.workspace is not None:
                keep_look(self._services, self.workspace, path)
        super().closeEvent(event)
