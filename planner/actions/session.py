"""The one place where acts are carried out: checked, kept, and told, in that order.

Knows the farm as it is now. When anything is refused or cannot be kept, nothing has changed.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from datetime import datetime
from pathlib import Path
from typing import Any, Final

from planner.actions.checking import Shelves, ZonesOf, change_faults, clash_fault, stale_fault
from planner.actions.holding import HoldBook, HoldsOf, book_of, difference, new_clashes, next_book
from planner.actions.memory import Keeper
from planner.actions.notices import Listener, Listeners, Notice
from planner.actions.retracing import Trail, last_change, trail_to
from planner.actions.sharing import ELSEWHERE, acts_after, first_undone, last_done, news_title
from planner.actions.tidying import tidied
from planner.farm.changes import Change, ChangeSet, applied, with_places
from planner.farm.farm import Farm, OwnEntry
from planner.farm.faults import FarmFaultError, Fault
from planner.farm.fields import Id
from planner.farm.merging import differences, rebased
from planner.store.acts import ActEntry, ActKind, ActState, By
from planner.store.errors import ChangedElsewhereError

FaultsOf = Callable[[Farm], tuple[Fault, ...]]
LaidOver = Callable[[Any, tuple[OwnEntry, ...]], Any]
Clock = Callable[[], datetime]
_TURNS: Final = 4
"""How often an act is brought up to what others did, before they are made to wait."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HistoryLine:
    """One act as it is listed: its title, its moment, whether it stands, and who did it."""

    title: str
    at: datetime
    done: bool
    who: str = ""


def _line(entry: ActEntry) -> HistoryLine:
    return HistoryLine(title=entry.title, at=entry.at, done=entry.state is ActState.DONE, who=entry.who)


class Session:
    """A farm being worked on: the current value, its acts, and those who want to know of them."""

    def __init__(
        self,
        store: Keeper,
        catalogue: Shelves,
        *,
        holds_of: HoldsOf,
        faults_of: FaultsOf,
        now: Clock,
        laid_over: LaidOver | None = None,
        who: str = "",
        zones_of: ZonesOf = frozenset,
    ) -> None:
        """Load the farm from its store; `who` is the name of the person at the desk.

        `catalogue` is the book alone; `laid_over` lays the grower's own entries over it. `holds_of`
        tells how long places are held, `faults_of` all that is wrong with a farm, `now` the moment,
        with its time zone, `zones_of` the time zones that are known.
        """
        self._store = store
        self._catalogue = catalogue
        self._holds_of = holds_of
        self._faults_of = faults_of
        self._now = now
        self._who = who
        self._zones_of = zones_of
        self._listeners = Listeners()
        self._faults: tuple[Farm, tuple[Fault, ...]] | None = None
        self._laid_over = laid_over
        self._whole: tuple[tuple[OwnEntry, ...], Any] | None = None
        self._load()

    def _load(self) -> None:
        self._farm = self._store.load()
        self._kept_holds = {hold.placement: hold for hold in self._store.held()}
        self._book = book_of(self._holds_of(self._farm))
        self._acts: tuple[ActEntry, ...] = self._store.acts()

    @property
    def farm(self) -> Farm:
        """The farm as it is now."""
        return self._farm

    @property
    def catalogue(self) -> Any:
        """The book of crops, fish, feeds and figures, with the grower's own entries laid over it."""
        self._whole = self._whole_for(self._farm)
        return self._whole[1]

    @property
    def path(self) -> Path | None:
        """The file the farm is kept in; None when it is in no file."""
        return self._store.path

    @property
    def faults(self) -> tuple[Fault, ...]:
        """All that is wrong with the farm as it is now; worked out when first asked for."""
        if self._faults is None or self._faults[0] is not self._farm:
            self._faults = (self._farm, self._faults_of(self._farm))
        return self._faults[1]

    @property
    def undo_title(self) -> str | None:
        """Title of the act that undo takes back; None when there is none."""
        last = self._last_done()
        return None if last is None else last.title

    @property
    def redo_title(self) -> str | None:
        """Title of the act that redo does once more; None when there is none."""
        first = self._first_undone()
        return None if first is None else first.title

    @property
    def history(self) -> tuple[HistoryLine, ...]:
        """All acts, newest first."""
        return tuple(_line(entry) for entry in reversed(self._acts))

    def last_change(self, about: Id, field: str) -> HistoryLine | None:
        """Return the last act that gave a field of a thing its value, None when none is found.

        Raises `StoreError` when the acts cannot be read.
        """
        entry = last_change(self._acts, about, field, change_set=self._store.change_set)
        return None if entry is None else _line(entry)

    def trail(self, at: int) -> Trail:
        """Return the way back to an act by its place in `history`; raises `StoreError`."""
        return trail_to(
            self._farm,
            self._acts,
            len(self._acts) - 1 - at,
            change_set=self._store.change_set,
            shared=self._store.shared,
        )

    def subscribe(self, listener: Listener) -> None:
        """Tell `listener` of every act from now on; a bound method is let go with its object."""
        self._listeners.add(listener)

    def unsubscribe(self, listener: Listener) -> None:
        """Tell `listener` no longer."""
        self._listeners.remove(listener)

    def preview(self, change_set: ChangeSet) -> Farm:
        """Return the farm as it would be, unchecked and not kept; for showing what a drag would do."""
        return applied(self._farm, change_set)

    def act(self, change_set: ChangeSet, *, initiator: str = "") -> Notice:
        """Carry out a change: check it, keep it, tell everybody once.

        What somebody else changed meanwhile is brought in first, and told; nothing is kept or told when
        nothing changes.

        Raises:
            ClashError: somebody else changed the same field meanwhile; it holds both values.
            FarmFaultError: the farm would not be sound, or a place would be held twice on one day.
            StoreError: it could not be kept.
        """
        for _ in range(_TURNS):
            self.catch_up()
            try:
                return self._acted(rebased(self._farm, change_set), initiator)
            except ChangedElsewhereError:
                continue
        with self._store.alone():
            self.catch_up()
            return self._acted(rebased(self._farm, change_set), initiator)

    def catch_up(self) -> Notice | None:
        """Bring in what somebody else did since, and tell everybody; return None when nobody did anything.

        Raises `StoreError` when the farm cannot be read.
        """
        if self._listeners.telling or not self._store.is_stale():
            return None
        before, known = self._farm, self._acts
        self._load()
        change_set = differences(before, self._farm, news_title(known, self._acts))
        return self._tell(change_set, ActKind.DO, ELSEWHERE) if change_set.changes else None

    def _acted(self, change_set: ChangeSet, initiator: str) -> Notice:
        tidy = tidied(change_set)
        if not tidy.changes:
            return Notice(change_set=tidy, initiator=initiator)
        placed, after = self._placed(tidy)
        found = change_faults(after, placed, self._catalogue, zones_of=self._zones_of)
        if found:
            raise FarmFaultError(found)
        whole = self._whole_for(after)
        at = self._now()
        self._keep(placed, after, kind=ActKind.DO, at=at)
        self._whole = whole
        self._acts = acts_after(self._acts, placed.title, By(at=at, who=self._who, shared=self._store.shared))
        return self._tell(placed, ActKind.DO, initiator)

    def undo(self, *, initiator: str = "") -> Notice | None:
        """Take back the last act that stands; return None when there is none."""
        last = self._last_done()
        if last is None:
            return None
        turned = self._turned(last, undone=True)
        self._keep(turned, applied(self._farm, turned), kind=ActKind.UNDO, at=self._now(), seq=last.seq)
        self._mark(last, ActState.UNDONE)
        return self._tell(turned, ActKind.UNDO, initiator)

    def redo(self, *, initiator: str = "") -> Notice | None:
        """Do once more the act that was undone last; return None when there is none."""
        first = self._first_undone()
        if first is None:
            return None
        again = self._turned(first, undone=False)
        self._keep(again, applied(self._farm, again), kind=ActKind.REDO, at=self._now(), seq=first.seq)
        self._mark(first, ActState.DONE)
        return self._tell(again, ActKind.REDO, initiator)

    def _turned(self, entry: ActEntry, *, undone: bool) -> ChangeSet:
        """Return what an act changed, turned when it is to be undone, brought up to what others did since.

        Raises `ChangedElsewhereError` when the farm is not as it is shown here, and `ClashError` when
        somebody else has changed the same field since.
        """
        found = self._store.change_set(entry.seq)
        wanted = found.turned() if undone else found
        return rebased(self._farm, wanted) if self._store.shared else wanted

    def _placed(self, change_set: ChangeSet) -> tuple[ChangeSet, Farm]:
        """Return the set with positions, and the farm after it.

        Raises `FarmFaultError` for a thing that is not as the set expects it.
        """
        try:
            changes = with_places(self._farm, change_set.changes)
            placed = ChangeSet(title=change_set.title, changes=changes)
            return placed, applied(self._farm, placed)
        except (KeyError, ValueError):
            raise FarmFaultError((stale_fault(self._first_stale(change_set)),)) from None

    def _first_stale(self, change_set: ChangeSet) -> Change:
        """Return the first change that the farm cannot take."""
        before = self._farm
        for change in change_set.changes:
            try:
                before = applied(before, ChangeSet(title="", changes=(change,)))
            except (KeyError, ValueError):
                return change
        return change_set.changes[-1]

    def _whole_for(self, farm: Farm) -> tuple[tuple[OwnEntry, ...], Any]:
        """Return own entries and the book under them; raises `FarmFaultError` when they do not fit it."""
        own = farm.own_entries
        if self._whole is not None and self._whole[0] is own:
            return self._whole
        return own, self._catalogue if self._laid_over is None else self._laid_over(self._catalogue, own)

    def _keep(
        self, change_set: ChangeSet, after: Farm, *, kind: ActKind, at: datetime, seq: int | None = None
    ) -> None:
        """Keep an act in the store, then take its outcome over as the farm."""
        if self._listeners.telling:
            raise RuntimeError("an act was begun while another one was still being told")
        book = next_book(self._book, self._holds_of(after))
        self._refuse_clashes(after, book, change_set)
        wanted = book.guarded()
        changed, freed = difference(self._kept_holds, wanted)
        unsaid = change_set.ids("placement") - {hold.placement for hold in changed}
        changed += [wanted[key] for key in unsaid if key in wanted]
        self._store.apply(change_set, changed, kind=kind, at=at, freed=freed, who=self._who, seq=seq)
        self._kept_holds = wanted
        self._book = book
        self._farm = after

    def _refuse_clashes(self, after: Farm, book: HoldBook, change_set: ChangeSet) -> None:
        clashes = new_clashes(self._book, book)
        if clashes:
            touched: frozenset[Id] = change_set.ids("placement") | change_set.ids("batch")
            found = tuple(clash_fault(after, pair, touched) for pair in clashes)
            raise FarmFaultError(tuple(dict.fromkeys(found)))

    def _tell(self, change_set: ChangeSet, kind: ActKind, initiator: str) -> Notice:
        notice = Notice(change_set=change_set, kind=kind, initiator=initiator)
        self._listeners.tell(notice)
        return notice

    def _last_done(self) -> ActEntry | None:
        return last_done(self._acts, self._mine)

    def _first_undone(self) -> ActEntry | None:
        return first_undone(self._acts, self._mine)

    @property
    def _mine(self) -> str | None:
        """Whose acts undo and redo are about: one's own where others work on the farm too, else all."""
        return self._who if self._store.shared else None

    def _mark(self, entry: ActEntry, state: ActState) -> None:
        marked = replace(entry, state=state)
        self._acts = tuple(marked if known is entry else known for known in self._acts)
