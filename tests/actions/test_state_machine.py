"""Whatever is done in whatever order: undo leads back, redo leads forth, and no place is held twice."""

import dataclasses
import itertools
import sqlite3
import tempfile
from contextlib import closing
from datetime import timedelta
from pathlib import Path

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from planner.actions import batches, fish, layout, plan
from planner.farm.changes import Change
from planner.farm.checks import farm_faults
from planner.farm.crops import Phase, Placement
from planner.farm.faults import FarmFaultError, FaultKind
from planner.farm.ids import new_id
from planner.store.errors import HELD_PLACE
from planner.store.store import FarmStore
from tests.actions.desk_of import in_file, session_over
from tests.store.sample import EVENT, GROUP, START, batch, change_set, holds_of

PICK = st.integers(0, 30)
DAYS = st.integers(-30, 30)
INSERT = (
    "INSERT INTO placement (id, position, batch, phase, bed, unit, first, count, held_from, held_until) "
    "VALUES (?, 0, ?, 'bed', ?, ?, ?, ?, ?, ?)"
)


def shared(one, other):
    """Tell whether two holds share a place on a day."""
    return (
        (one.bed, one.unit) == (other.bed, other.unit)
        and one.first <= other.last
        and other.first <= one.last
        and one.from_on < other.until_on
        and other.from_on < one.until_on
    )


class Growing(RuleBasedStateMachine):
    """A grower who tries everything, and somebody who writes into the file past the program."""

    @initialize()
    def open_farm(self):
        self.folder = tempfile.TemporaryDirectory()
        self.path = Path(self.folder.name) / "grown.raftweek"
        self.session = in_file(self.path)
        self.start = self.session.farm
        self.number = 0

    def one_of(self, many, pick):
        return many[pick % len(many)]

    def tried(self, make):
        """Carry an act out; when it is refused, nothing may have changed, and for a good reason."""
        before = self.session.farm
        try:
            whole = make(before)
            expected = self.session.preview(whole)
            self.session.act(whole)
        except FarmFaultError as error:
            refused = error.faults
        else:
            assert self.session.farm == expected
            return ()
        assert self.session.farm is before
        assert all(fault.sentence() for fault in refused)
        return refused

    @rule(
        week=st.integers(0, 12), plants=st.integers(1, 24), unit=st.integers(1, 3), first=st.integers(1, 24)
    )
    def sow(self, week, plants, unit, first):
        self.number += 1
        new = batch(f"NEW-{self.number}", week=week, plants=plants)
        rafts = self.one_of(self.session.farm.beds, -1) if self.session.farm.beds else None
        if rafts is None:
            return
        new = dataclasses.replace(new, bed=rafts.id)
        run = Placement(
            id=new_id(), batch=new.id, phase=Phase.BED, bed=rafts.id, unit=unit, first=first, count=plants
        )
        self.tried(lambda farm: batches.sow_batch(new, (run,)))

    @precondition(lambda self: self.session.farm.batches)
    @rule(pick=PICK, days=DAYS)
    def move(self, pick, days):
        chosen = self.one_of(self.session.farm.batches, pick)
        self.tried(lambda farm: batches.move_batch(farm, None, chosen.id, by_days=days))

    @precondition(lambda self: self.session.farm.batches)
    @rule(pick=PICK, plants=st.integers(0, 30), code=st.sampled_from(["NEW-1", "PART", "BAS-26W10-A"]))
    def split(self, pick, plants, code):
        chosen = self.one_of(self.session.farm.batches, pick)
        self.tried(lambda farm: batches.split_batch(farm, chosen.id, plants=plants, code=code))

    @precondition(lambda self: self.session.farm.batches)
    @rule(pick=PICK, days=DAYS)
    def copy(self, pick, days):
        self.number += 1
        chosen = self.one_of(self.session.farm.batches, pick)
        code = f"COPY-{self.number}"
        self.tried(lambda farm: batches.copy_batch(farm, chosen.id, code=code, by_days=days))

    @precondition(lambda self: self.session.farm.batches)
    @rule(pick=PICK)
    def remove(self, pick):
        chosen = self.one_of(self.session.farm.batches, pick)
        assert self.tried(lambda farm: batches.remove_batch(farm, chosen.id)) == ()

    @precondition(lambda self: self.session.farm.placements)
    @rule(pick=PICK, unit=st.integers(1, 3), first=st.integers(1, 26))
    def shift_places(self, pick, unit, first):
        chosen = self.one_of(self.session.farm.placements, pick)
        after = dataclasses.replace(chosen, unit=unit, first=first)
        change = Change(before=chosen, after=after)
        clash = any(
            shared(one, other)
            for one, other in itertools.combinations(holds_of(self.session.preview(change_set(change))), 2)
        )
        faults = self.tried(lambda farm: change_set(change))
        if clash:
            assert faults
        assert clash or not any(fault.kind is FaultKind.HELD_PLACE for fault in faults)

    @precondition(lambda self: len(self.session.farm.placements) > 1)
    @rule(pick=PICK, other=PICK)
    def swap_places(self, pick, other):
        one, two = (self.one_of(self.session.farm.placements, at) for at in (pick, other))
        spot = ("bed", "unit", "first")
        there = {name: getattr(two, name) for name in spot}
        here = {name: getattr(one, name) for name in spot}
        if one.id != two.id:
            self.tried(
                lambda farm: change_set(
                    Change(before=one, after=dataclasses.replace(one, **there)),
                    Change(before=two, after=dataclasses.replace(two, **here)),
                )
            )

    @precondition(lambda self: self.session.farm.beds)
    @rule(pick=PICK, name=st.sampled_from(["Rafts", "Trays", "Third"]), units=st.integers(1, 3))
    def change_bed(self, pick, name, units):
        chosen = self.one_of(self.session.farm.beds, pick)
        self.tried(lambda farm: layout.change_bed(farm, dataclasses.replace(chosen, name=name, units=units)))

    @precondition(lambda self: self.session.farm.beds)
    @rule(pick=PICK, everything=st.booleans())
    def remove_bed(self, pick, everything):
        chosen = self.one_of(self.session.farm.beds, pick)
        self.tried(lambda farm: layout.remove_bed(farm, chosen.id, with_dependants=everything))

    @rule(name=st.text("ab ", max_size=3), weeks=st.integers(0, 600))
    def change_plan(self, name, weeks):
        self.tried(lambda farm: plan.rename_farm(farm, name))
        self.tried(lambda farm: plan.change_span(farm, plan_from=START, plan_weeks=weeks))

    @rule(days=DAYS)
    def note_fish(self, days):
        event = dataclasses.replace(EVENT, id=new_id(), on=START + timedelta(days=days))
        self.tried(lambda farm: fish.add_event(farm, event))

    @precondition(lambda self: self.session.farm.fish_groups)
    @rule()
    def remove_fish(self):
        assert self.tried(lambda farm: fish.remove_group(farm, GROUP.id)) == ()

    @rule()
    def undo(self):
        title = self.session.undo_title
        notice = self.session.undo()
        assert (notice is None) == (title is None)

    @rule()
    def redo(self):
        title = self.session.redo_title
        notice = self.session.redo()
        assert (notice is None) == (title is None)

    @rule()
    def reopen(self):
        self.session._store.close()
        self.session = session_over(FarmStore.open(self.path))

    @precondition(lambda self: self.session.farm.placements)
    @rule(pick=PICK, first=st.integers(-3, 3), day=st.integers(-40, 40), length=st.integers(1, 60))
    def write_past_the_program(self, pick, first, day, length):
        """Insert and move runs in raw SQL; whatever clashes must bounce, and all is taken back."""
        hold = self.one_of(holds_of(self.session.farm), pick)
        new = dataclasses.replace(
            hold,
            placement="past",
            first=max(1, hold.first + first),
            last=max(1, hold.first + first),
            from_on=hold.from_on + timedelta(days=day),
            until_on=hold.from_on + timedelta(days=day + length),
        )
        clash = any(shared(new, other) for other in holds_of(self.session.farm))
        days = (new.from_on.isoformat(), new.until_on.isoformat())
        with closing(sqlite3.connect(self.path, isolation_level=None)) as raw:
            raw.execute("BEGIN")
            raw.execute(INSERT, ("past", hold.batch, hold.bed, 77, 1, 1, *days))
            moves = [
                (INSERT, ("other", hold.batch, hold.bed, hold.unit, new.first, 1, *days)),
                ("UPDATE placement SET unit = ?, first = ? WHERE id = 'past'", (hold.unit, new.first)),
            ]
            for statement, values in moves:
                raw.execute("SAVEPOINT here")
                if clash:
                    with pytest.raises(sqlite3.IntegrityError, match=HELD_PLACE):
                        raw.execute(statement, values)
                else:
                    raw.execute(statement, values)
                raw.execute("ROLLBACK TO here")
            raw.execute("ROLLBACK")

    @invariant()
    def the_file_has_what_is_shown(self):
        store = self.session._store
        assert store.load() == self.session.farm
        assert set(store.held()) == set(holds_of(self.session.farm))
        assert [entry.title for entry in store.acts()] == [line.title for line in self.session.history[::-1]]

    @invariant()
    def the_farm_is_sound(self):
        assert farm_faults(self.session.farm) == ()
        holds = holds_of(self.session.farm)
        assert not any(shared(one, other) for one, other in itertools.combinations(holds, 2))

    def teardown(self):
        if not hasattr(self, "session"):
            return
        self.all_the_way()
        self.session._store.close()
        self.folder.cleanup()

    def all_the_way(self):
        """Redo everything, undo everything, redo everything."""
        while self.session.redo():
            pass
        end = self.session.farm
        while self.session.undo():
            self.the_file_has_what_is_shown()
        assert self.session.farm == self.start
        while self.session.redo():
            pass
        assert self.session.farm == end
        assert self.session._store.load() == end


TestGrowing = Growing.TestCase
TestGrowing.settings = settings(max_examples=25, stateful_step_count=20, deadline=None)
