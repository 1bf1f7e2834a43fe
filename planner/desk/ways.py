"""Ways about the window: search and history, and word of a farm that was not closed properly.

Each dialog is read in when it is asked for. Must know nothing of what is found or how it is kept.
"""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, Any, Final

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QApplication

from planner.desk import settings
from planner.desk.say import tr
from planner.desk.services import WorkspaceNeeds
from planner.desk.words import time_words
from planner.farm.farm import kind_of
from planner.farm.fields import Id

if TYPE_CHECKING:
    from planner.catalogue.catalogue import Catalogue
    from planner.desk.outlook import Outlook
    from planner.desk.past_moves import PastMoves
    from planner.desk.search.index import Find, Index
    from planner.desk.session import Session
    from planner.desk.workspace import Workspace

_PAGE_OF_KIND: Final = {
    "batch": "weeks",
    "bed": "beds",
    "fish group": "fish",
    "reading": "water",
    "solids batch": "water",
}


class Ways(QObject):
    """Opens search and history over a workspace, and goes where a find leads."""

    def __init__(self, needs: WorkspaceNeeds, workspace: Workspace, book: Catalogue) -> None:
        super().__init__(workspace)
        self._needs, self._workspace, self._book = needs, workspace, book
        self._index: tuple[Outlook, Index] | None = None
        self._path = ""
        self._past: PastMoves | None = None
        needs.conduct.opened.connect(self._on_opened)
        needs.conduct.closed.connect(self._on_closed)

    def ask_history(self) -> None:
        """Show the list of acts."""
        from planner.desk.history.dialog import HistoryDialog
        from planner.desk.past_moves import PastMoves

        workspace, conduct = self._workspace, self._needs.conduct
        if self._past is None:
            self._past = PastMoves(conduct, self._book, self)
        dialog = HistoryDialog(conduct, workspace.theme, workspace, self._past)
        dialog.list_wanted.connect(workspace.show_list_of)
        dialog.open()

    def ask_search(self) -> None:
        """Ask what is searched, and go there."""
        from planner.desk.search.dialog import SearchDialog

        index = self._index_now()
        if index is not None:
            dialog = SearchDialog(index, self._workspace.theme, self._workspace)
            dialog.picked.connect(self.go)
            dialog.open()

    def ask_why(self) -> None:
        """Ask why of the number in hand; where there is none, of what is chosen if that is in sight."""
        from planner.desk.why.cells import WhyAsking, wish

        focus, direct = QApplication.focusWidget(), Qt.FindChildOption.FindDirectChildrenOnly
        asking = focus.findChild(WhyAsking, options=direct) if focus is not None else None
        facts, number = asking.at_cursor() if asking is not None else ((), -1)
        if focus is not None and facts:
            wish(focus, facts, number)
        elif self._workspace.shelf.listed.wide:
            self._workspace.told.emit(
                tr("No number is in hand: choose one in a table or a chart and ask again.")
            )
        else:
            self._workspace.side.ask_why()

    def _index_now(self) -> Index | None:
        from planner.desk.search.index import index_of

        outlook = self._workspace.outlook
        if outlook is None:
            return None
        if self._index is None or self._index[0] is not outlook:
            self._index = (outlook, index_of(outlook, self._needs.now().date()))
        return self._index[1]

    def go(self, find: Find) -> None:
        """Go where a find leads."""
        {
            "week": self._go_to_week,
            "thing": self._go_to_thing,
            "batch": self._go_to_thing,
            "crop": self._sow,
            "entry": self._trigger,
            "word": self._show_word,
        }[find.target.value](find.key)

    def _go_to_week(self, monday: str) -> None:
        day = date.fromisoformat(monday)
        self._workspace.run("view.weeks")
        self._workspace.choose_nothing()
        self._workspace.due.show_week(day)
        self._workspace.due.week_changed.emit(day)

    def _go_to_thing(self, thing_id: str) -> None:
        outlook = self._workspace.outlook
        thing = outlook.found.get(Id(thing_id)) if outlook else None
        if thing is None:
            return
        page = _PAGE_OF_KIND.get(kind_of(thing).word)
        if page is None:
            self._workspace.wishes.alter(thing)
            return
        known = page == "weeks" or page in self._workspace.shelf.holders
        self._workspace.run(f"view.{page if known else 'weeks'}")
        self._workspace.choose(thing_id)

    def _sow(self, crop: str) -> None:
        self._workspace.editing.ask_new("batch", self._needs.now().date(), {"crop": crop})

    def _trigger(self, key: str) -> None:
        menus: Any = getattr(self._workspace.window(), "menus", None)
        if menus is not None:
            menus.actions[key].trigger()

    def _show_word(self, word: str) -> None:
        from planner.desk.help import GlossaryDialog

        dialog = GlossaryDialog(self._workspace.theme, self._workspace)
        dialog.search.setText(tr(word))
        dialog.open()

    # A farm that is open is marked; a mark that is still there at the next opening tells of a bad end.

    def _on_opened(self, session: Session) -> None:
        if self._past is not None:
            self._past.give_up()
            self._past = None
        path = getattr(session, "path", None)
        self._path = str(path) if path is not None else ""
        if not self._path:
            return
        marked = self._needs.memory.get(settings.OPEN)
        if self._path in marked:
            self._workspace.told.emit(kept_words(session))
            return
        self._needs.memory.put(settings.OPEN, [*marked, self._path])
        self._needs.memory.save()

    def _on_closed(self) -> None:
        memory = self._needs.memory
        if self._path:
            memory.put(settings.OPEN, [each for each in memory.get(settings.OPEN) if each != self._path])
            memory.save()
            self._path = ""


def kept_words(session: Session) -> str:
    """Return what was kept of a farm that was not closed properly."""
    last = next((line for line in session.history if line.done), None)
    if last is None:
        return tr("This farm was not closed properly last time, or is open elsewhere. Nothing is lost.")
    return tr(
        "This farm was not closed properly last time, or is open elsewhere. Everything is kept up to "
        "“{title}” of {time}.",
        title=last.title,
        time=time_words(last.at),
    )
