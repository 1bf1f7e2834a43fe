"""The inside of the window once everything is read in: due list, lanes, table and side panel together.

Keeps what is chosen, asks for a new outlook after each act, and hands it to every part. Must know nothing
of how a farm is kept.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta
from functools import partial

from PySide6.QtCore import QByteArray, Qt, Signal
from PySide6.QtWidgets import QSplitter, QVBoxLayout, QWidget

from planner.desk.asking import PAPERED, Asking
from planner.desk.bars_of import RowKeeper
from planner.desk.batch_table import BatchTable
from planner.desk.behind import Behind
from planner.desk.due import DuePanel
from planner.desk.editing import Editing
from planner.desk.facts import page_of
from planner.desk.folding import DUE, SIDE, Panes
from planner.desk.frame import arrange, dressed_tabs
from planner.desk.gathering import GATHERED, Gathering
from planner.desk.lanes.lanes_view import LanesView
from planner.desk.late import LateWorker
from planner.desk.mover import DeskMover
from planner.desk.moves import Move, Moves, moves_page, strip_words
from planner.desk.moves_strip import MovesStrip
from planner.desk.outlook import Outlook, look_out
from planner.desk.places.listed import LISTED
from planner.desk.places.place import place_needs
from planner.desk.places.shelf import PlaceHolder, Shelf
from planner.desk.records.noting import noted_by
from planner.desk.say import careful, tr
from planner.desk.scene_of import scene_of
from planner.desk.services import WorkspaceNeeds
from planner.desk.session import Notice, Session
from planner.desk.side import SidePanel
from planner.desk.theme import Theme
from planner.desk.thing_words import thing_words
from planner.desk.troubles import trouble_with_farm
from planner.desk.ways import Ways
from planner.desk.why.lanes import LaneAsking
from planner.desk.wishes import Wishes
from planner.desk.words import faults_words
from planner.farm.crops import Batch
from planner.farm.farm import DAYS_PER_WEEK, Thing, things
from planner.farm.faults import Fault
from planner.farm.fields import NO_ID, Id
from planner.farm.mark import plan_mark
from planner.forecast.engine import Forecaster


class Workspace(QWidget):
    """Due this week, the weeks or the table, and what is chosen."""

    troubled = Signal(str)
    told = Signal(str)
    removed = Signal(str)
    why_wanted = Signal(object, int)
    chosen_changed = Signal()

    def __init__(self, needs: WorkspaceNeeds, *, forecaster: Forecaster) -> None:
        super().__init__(needs.parent)
        self._needs = needs
        self.theme = needs.theme
        self._today = needs.now().date()
        self._session: Session | None = None
        self._forecaster, self.book = forecaster, forecaster.book
        self.outlook: Outlook | None = None
        self._behind: Behind | None = None
        self._chosen: Id | None = None
        self._along: tuple[Id, ...] = ()
        self._day = self._today
        self._rows = RowKeeper()
        self.moves = Moves()
        self._table_is_stale = True
        self.mover = DeskMover(needs.conduct)
        self.editing = Editing(needs.conduct, needs.ask, needs.theme, self, noted=partial(noted_by, needs))
        self.gathering = Gathering(needs.conduct, self)
        self.asking = Asking(needs, self)
        self.ways = Ways(needs, self, forecaster.book)
        self.wishes = Wishes(self, self._today)
        self._build()
        self._connect()
        self._entries = self._make_entries()

    def _build(self) -> None:
        self.due = DuePanel(self.theme, self._today, self)
        self.late = LateWorker(self)
        self.lanes = LanesView(self.theme, self.mover, self)
        self.table = BatchTable(self.theme, self)
        self.side = SidePanel(self.theme, self)
        self.moves_strip = MovesStrip(self.theme, self)
        late = (PlaceHolder(listed, self) for listed in LISTED if listed.late)
        self.tabs = dressed_tabs((self.lanes, self.table, *late), self)
        self.shelf = Shelf(place_needs(self._needs, self._forecaster), self.tabs)
        self.split = QSplitter(Qt.Orientation.Horizontal, self)
        arrange(self.split, (self.due, self.tabs, self.side), self.theme)
        least_middle = self.theme.metrics.due_width * 3 // 2
        self.panes = Panes(self.split, (self.due, self.side), least_middle=least_middle)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.split, 1)
        self.lanes.set_today(self._today)

    def _connect(self) -> None:
        self.due.chosen.connect(self.choose)
        self.late.told.connect(self.due.show_late)
        self.due.week_changed.connect(self._on_week)
        self.lanes.selected.connect(self.take_chosen)
        self.lanes.opened.connect(self._on_opened)
        self.lanes.menu_asked.connect(self.wishes.show_menu)
        self.tabs.currentChanged.connect(self._show_table)
        self.table.chosen.connect(self.choose)
        self.table.opened.connect(self._on_opened)
        self.shelf.chosen.connect(self.choose)
        self.shelf.opened.connect(self._on_opened)
        self.shelf.new_wanted.connect(self.wishes.ask_new_within)
        self.shelf.run_wanted.connect(self.run)
        self.shelf.told.connect(self.told)
        self.shelf.troubled.connect(self.troubled)
        self.side.alter_wanted.connect(self.wishes.alter_chosen)
        self.side.week_wanted.connect(self.choose_nothing)
        for each in (self, self.shelf, self.side):
            each.why_wanted.connect(self.asking.ask_why)
        LaneAsking(self.lanes, self.asking)
        self.side.sure_wanted.connect(self.asking.ask_sure)
        self.asking.more_known.connect(self._show_chosen)
        self.asking.working.connect(self._show_working)
        self.editing.troubled.connect(self.troubled)
        self.editing.told.connect(self.told)
        self.editing.removed.connect(self.removed)
        self.asking.told.connect(self.told)
        self.moves_strip.list_wanted.connect(self.show_moves)
        self.gathering.troubled.connect(self.troubled)
        self.gathering.told.connect(self.told)
        self.gathering.made.connect(self.choose_many)
        self.editing.made.connect(self.choose)

    # The farm.

    def trouble_with(self, session: Session) -> str:
        """Return why a farm cannot be shown: it names what no catalogue has; empty when it can."""
        return trouble_with_farm(session.farm, self._forecaster)

    def show_session(self, session: Session) -> None:
        """Show a farm that has been opened."""
        self._session = session
        self._chosen = None
        self.moves.forget()
        self.moves_strip.say("")
        self.shelf.leave()
        self._refresh()
        self._go_to_today()

    def settle(self) -> None:
        """Show at once what would be worked out a moment later."""
        self.asking.settle()

    def on_notice(self, notice: Notice) -> None:
        """Show the farm as it is after an act, and say what that moved."""
        before = self.outlook
        self._refresh()
        if self.outlook is not None:
            moves = self.moves.note(before, self.outlook, notice.change_set)
            self.moves_strip.say(strip_words(moves) if moves else "")

    def show_moves(self) -> None:
        """Show in the side panel what the last act moved, and why."""
        if not self.moves.latest:
            self.told.emit(tr("The last act moved no dates."))
            return
        self.show_list_of(self.moves.title, self.moves.latest)

    def show_list_of(self, title: str, moves: tuple[Move, ...]) -> None:
        """Show in the side panel what an act moved, and why."""
        if not self.side.isVisible():
            self.panes.toggle(SIDE)
        self.side.show_page(moves_page(title, moves), of_thing=False, back=True)
        self.side.text.setFocus()

    def _refresh(self) -> None:
        if self._session is None:
            return
        self.outlook = look_out(self._session.farm, self._forecaster)
        self._behind = Behind(self.outlook, self._forecaster, self._today)
        if self._chosen is not None and self._chosen not in self.outlook.found:
            self._chosen = None
        self.mover.show(self.outlook, self._forecaster)
        self.editing.show(self.outlook, self._forecaster)
        self.gathering.show(self.outlook, self._forecaster)
        self.asking.show(self._behind)
        self.lanes.set_scene(scene_of(self.outlook, self._rows))
        self.due.show_outlook(self.outlook)
        self.late.start(self.outlook, self._forecaster, self._today)
        self._table_is_stale = True
        self._show_table()
        self.shelf.show(self._behind)
        self._show_chosen()

    def _show_table(self, *_anything: int) -> None:
        """Fill the table when it is seen and something has changed."""
        self.panes.make_room(wide=self.shelf.listed.wide)
        in_front = self.tabs.currentWidget() is self.table
        if self.outlook is not None and self._table_is_stale and in_front:
            self._table_is_stale = False
            self.table.show_outlook(self.outlook)
            self.table.choose(self._chosen or "")

    def things(self, word: str) -> tuple[Thing, ...]:
        """Return all things of a kind on the open farm."""
        return things(self.outlook.farm, word) if self.outlook else ()

    def words_for(self, faults: tuple[Fault, ...]) -> str:
        """Return faults in the words of the desk."""
        return faults_words(faults)

    def plan_words(self) -> str:
        """Return the mark of the plan as it stands."""
        return tr("Plan {mark}", mark=plan_mark(self.outlook.farm)) if self.outlook else ""

    def name_of(self, thing: Thing) -> str:
        """Return what tells a thing from the others of its kind."""
        return thing_words(thing, self.outlook.farm, self.outlook.catalogue) if self.outlook else ""

    def cautions(self) -> tuple[tuple[str, str], ...]:
        """Return topic and text of every caution of the catalogue."""
        if self.outlook is None:
            return ()
        found = self.outlook.catalogue.cautions
        return tuple((tr(each.topic), careful(each.text)) for each in found.values())

    # What is chosen.

    def chosen_thing(self) -> Thing | None:
        """Return what is chosen, None when nothing is."""
        if self.outlook is None or self._chosen is None:
            return None
        return self.outlook.found.get(self._chosen)

    def chosen_batches(self) -> tuple[Batch, ...]:
        """Return every batch that is chosen, in order of sowing."""
        found = self.outlook.found if self.outlook else {}
        chosen = (found.get(each) for each in (*self._along, self._chosen) if each is not None)
        return tuple(sorted((each for each in chosen if isinstance(each, Batch)), key=_sowing))

    def choose(self, thing_id: str) -> None:
        """Choose a thing by its id; everything shows it."""
        if thing_id == self._chosen:
            return
        self._chosen, self._along = Id(thing_id), ()
        self._show_chosen()
        thing = self.chosen_thing()
        if isinstance(thing, Batch):
            self.lanes.show_current()

    def choose_nothing(self) -> None:
        """Choose nothing: the side panel shows the week."""
        self._chosen, self._along = None, ()
        self._show_chosen()

    def _show_chosen(self) -> None:
        if self._behind is None:
            return
        thing = self.chosen_thing()
        batch = [thing.id] if isinstance(thing, Batch) else []
        chosen = tuple(each.id for each in self.chosen_batches())
        self.lanes.set_selected(chosen)
        self.mover.gather(chosen)
        self.table.choose(batch[0] if batch else "")
        self.shelf.show_chosen(thing.id if thing is not None else NO_ID)
        page = page_of(self._behind, thing, self._day, along=self.chosen_batches())
        many = len(chosen) > 1
        self.side.show_page(page, of_thing=thing is not None and not many, back=many)
        self.chosen_changed.emit()

    def choose_many(self, ids: list[str]) -> None:
        """Choose batches by their ids; everything shows them, and the lanes go there."""
        self.take_chosen(ids)
        self.lanes.show_current()

    def take_chosen(self, ids: list[str]) -> None:
        """Take over what was chosen by hand; what is in sight stays where it is, under the hand."""
        if not ids:
            self.choose_nothing()
            return
        self._chosen, self._along = Id(ids[-1]), tuple(Id(each) for each in ids[:-1])
        self._show_chosen()

    def _on_opened(self, thing_id: str) -> None:
        self.choose(thing_id)
        self.wishes.alter_chosen()

    def _on_week(self, monday: date) -> None:
        this_week = monday <= self._today < monday + timedelta(days=DAYS_PER_WEEK)
        self._day = self._today if this_week else monday
        if self.outlook is not None and self.outlook.covers(monday):
            self.lanes.go_to(monday)
        self._show_chosen()

    def _ask_sure(self) -> None:
        """Show the week, and work out how sure it is."""
        self.choose_nothing()
        self.asking.ask_sure()

    def _show_working(self, working: bool, share: float) -> None:
        self.side.show_working(working=working, share=share)

    # Wishes of the menus.

    def _make_entries(self) -> dict[str, Callable[[], object]]:
        return {
            "change.alter": self.wishes.alter_chosen,
            "change.lock": self.wishes.lock,
            "change.longer": partial(self.lanes.hands.stretch_by_days, DAYS_PER_WEEK),
            "change.shorter": partial(self.lanes.hands.stretch_by_days, -DAYS_PER_WEEK),
            "change.remove": self.wishes.remove,
            "setup.farm": self.wishes.alter_farm,
            "view.today": self._go_to_today,
            "view.previous": self.due.go_before,
            "view.next": self.due.go_after,
            "view.in": self.lanes.zoom_in,
            "view.out": self.lanes.zoom_out,
            "view.fit": self.lanes.fit,
            "view.weeks": self._show_weeks,
            "view.batches": self._show_batches,
            "view.due": partial(self.panes.toggle, DUE),
            "view.side": partial(self.panes.toggle, SIDE),
            "view.search": self.ways.ask_search,
            "change.history": self.ways.ask_history,
            "change.moved": self.show_moves,
            "view.why": self.ways.ask_why,
            "view.sure": self._ask_sure,
        }

    def run(self, key: str) -> None:
        """Do what an entry of the menus asks for; entries of others are left alone."""
        if self.outlook is None:
            return
        if key.startswith("new."):
            self.wishes.ask_new(key.partition(".")[2])
        elif key.partition(".")[2] in self.shelf.holders:
            self.shelf.go_to(key.partition(".")[2])
        elif key in GATHERED:
            self.gathering.run(key, self.chosen_batches())
        elif key in PAPERED:
            self.asking.run_paper(key, self._day, self.chosen_batches())
        elif key in self._entries:
            self._entries[key]()

    def _go_to_today(self) -> None:
        # Where the plan does not cover today, its day that lies nearest.
        day = self._today if self._behind is None else self._behind.shown_on
        self._day = day
        self.due.show_week(day)
        self.lanes.go_to(day)
        self._show_chosen()

    def _show_weeks(self) -> None:
        self.tabs.setCurrentWidget(self.lanes)
        self.lanes.setFocus()

    def _show_batches(self) -> None:
        self.tabs.setCurrentWidget(self.table)
        self.table.view.setFocus()

    def ask_print(self) -> None:
        """Show the seeding calendar as it will be printed."""
        self.asking.ask_print(self._day)

    # Looks.

    def wear(self, theme: Theme) -> None:
        """Wear the colours of a theme."""
        self.theme = theme
        self.editing.theme = self.asking.theme = theme
        self.due.wear(theme)
        self.side.wear(theme)
        self.moves_strip.wear(theme)
        self.shelf.wear(theme)
        self.lanes.set_theme(theme)

    def arrangement(self) -> QByteArray:
        """Return how the panes are arranged, to be restored another time."""
        return self.split.saveState()

    def restore(self, state: QByteArray) -> None:
        """Arrange the panes as they were."""
        if not state.isEmpty():
            self.split.restoreState(state)


def _sowing(batch: Batch) -> tuple[date, str]:
    return batch.sow_on, batch.code
