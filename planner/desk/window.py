"""The window: puts its parts together and passes wishes on, nothing more.

It paints before anything heavy is read in: a picture of the farm taken when it was closed last, if that
still holds, else its bones. The workspace with lanes, lists and figures comes with the first moment after
that, through the loader that was handed in. Must know nothing of how a farm is kept.

What the first paint can do without is read in where it is used: every name taken from the toolkit costs the
making of its classes, and `Qt` alone has a hundred.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, datetime
from functools import cached_property
from typing import TYPE_CHECKING, Any, TypeVar

from PySide6.QtWidgets import QApplication, QWidget

from planner.desk import settings
from planner.desk.front import FrontWindow
from planner.desk.say import tr
from planner.desk.shade import ShadeChoice

if TYPE_CHECKING:
    from PySide6.QtCore import Qt
    from PySide6.QtGui import QCloseEvent, QKeyEvent, QPixmap

    from planner.desk.conduct import Conduct
    from planner.desk.crash import CrashWatch
    from planner.desk.doors.doors import Doors
    from planner.desk.files import Files
    from planner.desk.messages import MessageBar
    from planner.desk.services import Rooms
    from planner.desk.session import Session
    from planner.desk.term_tips import TermTips
    from planner.desk.window_dialogs import WindowDialogs
    from planner.desk.workspace import Workspace

W = TypeVar("W", bound=QWidget)


class MainWindow(FrontWindow):
    """Menu bar, tool bar, workspace, message bar and status bar around one open farm."""

    rooms: Rooms | None = None
    files: Files | None = None
    workspace: Workspace | None = None

    @cached_property
    def conduct(self) -> Conduct:
        """What keeps the open farm; made when first somebody listens to it."""
        from planner.desk.conduct import Conduct

        return Conduct(self)

    @cached_property
    def messages(self) -> MessageBar:
        """The bar of messages; made when first something may be said, for at the first paint nothing is."""
        from planner.desk.messages import MessageBar

        bar = MessageBar(self.theme, self._middle)
        column = self._middle.layout()
        assert column is not None
        column.addWidget(bar.room)
        bar.undo_wanted.connect(self.conduct.undo)
        return bar

    @cached_property
    def doors(self) -> Doors:
        """The doors a grower may begin by."""
        from planner.desk.doors.doors import DoorActs, Doors

        assert self.files is not None
        acts = DoorActs(new=self.dialogs.new_farm, sample=self.files.open_sample, kept=self.files.ask_open)
        return Doors(acts, self.theme, self._middle, self)

    @cached_property
    def tips(self) -> TermTips:
        """What tells the meaning of words, on hover and by a key."""
        from planner.desk.term_tips import TermTips

        return TermTips(self)

    @cached_property
    def crash(self) -> CrashWatch:
        """What catches faults of the program; made when the farm is read in."""
        from planner.desk.crash import CrashWatch

        return CrashWatch(self.theme, self._services.version, self)

    @cached_property
    def dialogs(self) -> WindowDialogs:
        """The dialogs of the window; made when first one may be asked for."""
        from planner.desk.window_dialogs import WindowDialogs

        return WindowDialogs(self, home=self._services.home, version=self._services.version)

    def _furnish(self) -> None:
        """Put in menus, tool bar and status bar, in the look that was asked for."""
        from planner.desk.grounds import load_font
        from planner.desk.menus import Menus
        from planner.desk.theme import theme_of

        load_font()
        self.theme = theme_of(self.memory.shade)
        self._dress()
        self.menus = Menus(self, self.theme)
        self._build()
        self._connect()

    def _build(self) -> None:
        from PySide6.QtCore import Qt
        from PySide6.QtWidgets import QLabel, QVBoxLayout

        from planner.desk.foot import Foot

        self._middle = QWidget(self)
        column = QVBoxLayout(self._middle)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        waiting = QLabel(tr("Opening the farm…"), self._middle)
        waiting.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._held: QWidget = waiting
        column.addWidget(waiting, 1)
        self.setCentralWidget(self._middle)
        self.foot = Foot(self.theme.metrics.gap, self)
        self.setStatusBar(self.foot)
        self.menus.allow_farm(there=False)
        self.menus.show_undo("", "")
        self.menus.show_shade(self.memory.shade)

    def _connect(self) -> None:
        from planner.desk.submenus import Submenus

        self.conduct.opened.connect(self._on_opened)
        self.conduct.changed.connect(self._on_changed)
        self.conduct.acted.connect(self._on_acted)
        self.conduct.troubled.connect(self.trouble)
        self.conduct.closed.connect(self._on_closed)
        for action in self.menus.actions.values():
            action.triggered.connect(self._on_entry)
        Submenus(self)
        hints = QApplication.styleHints()
        hints.colorSchemeChanged.connect(self._on_system_shade)
        hints.accessibility().contrastPreferenceChanged.connect(self._on_system_contrast)

    def _put(self, widget: W) -> W:
        """Put a widget in the middle, in the place of what stands there till now."""
        layout = self._middle.layout()
        assert layout is not None
        layout.replaceWidget(self._held, widget)
        self._held.hide()  # or it shines through what now lies over it, until it is deleted
        self._held.deleteLater()
        self._held = widget
        layout.activate()
        return widget

    def load(self) -> None:
        """Read in what is heavy, build the workspace, and open a farm."""
        if self.rooms is not None:
            return
        from planner.desk.files import Files
        from planner.desk.focus_ring import FocusRings
        from planner.desk.later import Later, spare_steps
        from planner.desk.theme import load_bold

        self.see_furnished()
        load_bold()
        self.focus_rings = FocusRings(self)
        self.crash.begin()
        self.rooms = self._services.load()
        workspace = self._put_workspace(self.rooms, self._services.now)
        self.conduct.expect(self.rooms.troubles, workspace.words_for)
        self.files = Files(
            rooms=self.rooms,
            conduct=self.conduct,
            memory=self.memory,
            ask=self._services.ask,
            home=self._services.home,
            now=self._services.now,
            trouble_with=workspace.trouble_with,
            window=self,
        )
        self.files.troubled.connect(self.trouble)
        self.files.told.connect(self.tell)
        self.files.sample_shown.connect(self.doors.show_strip)
        self.conduct.opened.connect(self.doors.put_away)
        self.files.begun.connect(workspace.asking.show_first)
        self.files.not_begun.connect(workspace.asking.ask_new_farm_again)
        self.files.open_first(self._services.start_with)
        self.ready.connect(Later(spare_steps(self), self).begin)

    def _put_workspace(self, rooms: Rooms, now: Callable[[], datetime]) -> Workspace:
        from planner.desk.services import WorkspaceNeeds

        needs = WorkspaceNeeds(
            theme=self.theme,
            conduct=self.conduct,
            now=now,
            ask=self._services.ask,
            memory=self.memory,
            home=self._services.home,
            parent=self._middle,
            library=rooms.library,
        )
        workspace = self.workspace = self._put(rooms.make_workspace(needs))
        workspace.troubled.connect(self.trouble)
        workspace.told.connect(self.tell)
        workspace.removed.connect(self._on_removed)
        workspace.chosen_changed.connect(self._show_chosen)
        workspace.panes.changed.connect(self._show_panes)
        workspace.tabs.currentChanged.connect(self._lay_messages)
        self.foot.hold(workspace.moves_strip)
        self._lay_messages()
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
        self._look_holds = False
        if self.workspace is not None:
            self.workspace.on_notice(notice)
        self._show_state()
        self._show_chosen()

    def _on_acted(self, title: str) -> None:
        self.messages.clear()
        self.foot.saved.setText(tr("{title} – saved", title=title))

    def _on_closed(self) -> None:
        self.menus.allow_farm(there=False)
        self.menus.show_undo("", "")

    def _show_state(self) -> None:
        session = self.conduct.session
        if session is None:
            return
        name, path = session.farm.settings.name, self.rooms.where(session) if self.rooms else None
        self.setWindowTitle(f"{name} – Raftweek")
        self.foot.show_farm(name, str(path or ""), self.workspace.plan_words() if self.workspace else "")
        self.menus.show_undo(self.conduct.undo_title, self.conduct.redo_title)

    def _show_chosen(self) -> None:
        thing = self.workspace.chosen_thing() if self.workspace else None
        many = len(self.workspace.chosen_batches()) if self.workspace else 0
        self.foot.show_chosen(many)
        self.menus.show_chosen(thing)

    def tell(self, words: str) -> None:
        """Say small news in the message bar."""
        self.messages.tell(words)

    def _on_removed(self, title: str) -> None:
        self.messages.tell(tr("Done: {title}", title=title), undo=True)

    def _lay_messages(self, _at: int = 0) -> None:
        if self.workspace is not None:
            self.messages.lie_on(self.workspace.tabs if self.workspace.shelf.by_hand else None)

    def trouble(self, words: str) -> None:
        """Say expected trouble in the message bar."""
        self.messages.warn(words)

    # Wishes.

    def _on_entry(self, _checked: bool = False) -> None:
        from PySide6.QtGui import QAction

        action = self.sender()
        key = action.data() if isinstance(action, QAction) else None
        if not isinstance(key, str):
            return
        own = self._own_entries().get(key)
        if own is not None:
            own()
        elif key.startswith("language."):
            self.memory.put(settings.LANGUAGE, key.partition(".")[2])
            self.tell(tr("The language changes when the program is started again."))
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
            "help.page": self.dialogs.page_help,
            "help.glossary": self.dialogs.glossary,
            "help.meaning": self.tips.tell,
            "help.about": self.dialogs.about,
            "help.check": self.dialogs.check,
        }
        if self.files is not None:
            entries["farm.begin"] = self.doors.show
            entries["farm.open"] = self.files.ask_open
            entries["farm.copy"] = self.files.ask_copy
            entries["farm.backups"] = self.files.ask_backup
            entries["farm.text"] = self.files.ask_text
            entries["farm.table"] = self.dialogs.table_in
            entries["farm.new"] = self.dialogs.new_farm
            entries["farm.print"] = self.dialogs.print_sheets
        return entries

    # Looks.

    def _dress(self) -> None:
        from planner.desk.theme import dress

        application = QApplication.instance()
        if isinstance(application, QApplication):
            dress(application, self.theme)

    def set_shade(self, choice: ShadeChoice) -> None:
        """Draw everything light, dark, or as the system is."""
        from planner.desk.theme import theme_of

        self._look_holds = False
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
        if "doors" in self.__dict__:
            self.doors.wear(theme)

    def _on_system_shade(self, _scheme: Qt.ColorScheme) -> None:
        if self.memory.shade is ShadeChoice.SYSTEM:
            self.set_shade(ShadeChoice.SYSTEM)

    def _on_system_contrast(self, _preference: Qt.ContrastPreference) -> None:
        self.set_shade(self.memory.shade)

    def _show_panes(self) -> None:
        if self.workspace is not None:
            due, side = self.workspace.panes.wanted
            self.menus.actions["view.due"].setChecked(due)
            self.menus.actions["view.side"].setChecked(side)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        from PySide6.QtCore import Qt

        if event.key() == Qt.Key.Key_Escape and self.messages.words:
            self.messages.clear()
            return
        super().keyPressEvent(event)

    def closeEvent(self, event: QCloseEvent) -> None:
        self.memory.put(settings.GEOMETRY, self.saveGeometry())
        if self.workspace is not None:
            self._put_by(settings.ARRANGEMENT, self.workspace.arrangement())
        self.memory.save()
        if self.rooms is not None:
            self.crash.end()
        pictures = self._pictures() if self._wants_pictures else {}
        session = self.conduct.let_go()
        if session is not None and self.rooms is not None:
            path = self.rooms.where(session)
            self.rooms.close(session)
            if path is not None:
                self._keep(path, pictures)
        super().closeEvent(event)

    def _pictures(self) -> dict[date, QPixmap]:
        if self.rooms is None or self.conduct.session is None:
            return {}
        from planner.desk.rehearsal import rehearse

        return rehearse(self, self._services.now())

    def act_start(self, moment: datetime, *, first: bool = False) -> None:
        """Look as a start at that moment would, with the farm that is open; for pictures, not for hands."""
        assert self.rooms is not None
        assert self.conduct.session is not None
        if not first:
            self.doors.put_away()  # the strip over the sample is shown only the first time
        workspace = self._put_workspace(self.rooms, lambda: moment)
        self._on_opened(self.conduct.session)
        workspace.settle()
        self.foot.saved.setText(tr("Opening…"))
