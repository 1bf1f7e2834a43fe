"""What is logged moves the plan in the same act, and undo takes both back; corrections erase nothing."""

import dataclasses
from datetime import timedelta

import pytest

from planner.actions import records
from planner.actions.session import Session
from planner.bootstrap import Means, utc_now
from planner.catalogue.own import laid_over
from planner.farm.changes import Change, ChangeSet
from planner.farm.crops import SeedLot
from planner.farm.faults import FarmFaultError
from planner.farm.fields import NO_ID
from planner.farm.fish import FishEventKind
from planner.farm.ids import new_id
from planner.farm.log import Happening, Unit, standing
from planner.farm.meters import Meter, MeterKind
from planner.farm.water import Quantity
from planner.planning.dating import Dater
from planner.store.store import FarmStore


@pytest.fixture(scope="module")
def means():
    return Means()


@pytest.fixture
def session(means, root, tmp_path):
    farm = means.read(root / "sample_data" / "backyard.toml").farm
    with FarmStore.create(tmp_path / "backyard.raftweek", farm, means.holds(farm)) as store:
        yield Session(
            store,
            means.catalogue,
            holds_of=means.holds,
            faults_of=means.faults,
            now=utc_now,
            laid_over=laid_over,
        )


@pytest.fixture
def noted(session, means):
    """Log one thing through the session."""

    def note(what, on, **given):
        entry = records.new_entry(what=what, on=on, **given)
        session.act(records.log(session.farm, entry, Dater(means.forecaster, session.farm)))
        return entry

    return note


def batch_of(session):
    return session.farm.batches[0]


def ends(session, means):
    return Dater(means.forecaster, session.farm).lengths(batch_of(session))


@pytest.mark.parametrize("late", [-1, 0, 3, 9])
def test_that_a_first_pick_moves_the_harvest_to_its_day(session, means, noted, late):
    batch = batch_of(session)
    day = ends(session, means)[3] + late
    noted(Happening.PICKED, batch.sow_on + timedelta(days=day), batch=batch.id, amount=5.0, unit=Unit.HEADS)
    assert ends(session, means)[3] == day
    session.undo()
    assert batch_of(session) == batch
    assert session.farm.log_entries == ()


def test_that_every_stage_ends_on_the_day_that_was_logged(session, means, noted):
    batch = batch_of(session)
    planned = ends(session, means)
    steps = (Happening.GERMINATED, 0, 2), (Happening.MOVED, 2, 4), (Happening.PICKED, 3, 7)
    for what, _stage, late in steps:
        day = planned[_stage] + late
        unit = Unit.HEADS if what is Happening.PICKED else Unit.PLANTS
        on = batch.sow_on + timedelta(days=day)
        noted(what, on, batch=batch.id, amount=float(batch.plants), unit=unit)
    assert [ends(session, means)[stage] - planned[stage] for _w, stage, _l in steps] == [2, 4, 7]


def test_that_a_count_of_seedlings_sets_the_germination(session, noted):
    batch = batch_of(session)
    noted(Happening.SOWN, batch.sow_on, batch=batch.id, amount=40.0, unit=Unit.SEEDS)
    three = batch.sow_on + timedelta(days=3)
    noted(Happening.GERMINATED, three, batch=batch.id, amount=30.0, unit=Unit.PLANTS)
    assert batch_of(session).germination_share == 0.75
    with pytest.raises(FarmFaultError, match="41 germinated, but there are only 40 seeds sown"):
        noted(Happening.GERMINATED, three, batch=batch.id, amount=41.0, unit=Unit.PLANTS)
    assert len(session.farm.log_entries) == 2


def test_that_fewer_plants_moved_let_the_last_places_go(session, means, noted):
    run = next(r for r in session.farm.placements if r.phase.value == "bed")
    batch = next(b for b in session.farm.batches if b.id == run.batch)
    day = Dater(means.forecaster, session.farm).lengths(batch)[2]
    noted(
        Happening.MOVED,
        batch.sow_on + timedelta(days=day),
        batch=batch.id,
        amount=batch.plants - 1.0,
        unit=Unit.PLANTS,
    )
    held = sum(r.count for r in session.farm.placements if r.batch == batch.id and r.phase.value == "bed")
    assert held <= batch.plants - 1
    assert session.faults == ()


def test_that_a_correction_keeps_the_old_entry_and_moves_what_it_wrote(session, means, noted):
    group = session.farm.fish_groups[0]
    day = group.stocked_on + timedelta(days=20)
    wrong = noted(Happening.DEATHS, day, group=group.id, amount=30.0, unit=Unit.FISH)
    (before,) = [e for e in session.farm.fish_events if e.kind is FishEventKind.DEATHS and e.on == day]
    right = records.new_entry(what=Happening.DEATHS, on=day, group=group.id, amount=3.0, unit=Unit.FISH)
    lengths = Dater(means.forecaster, session.farm)
    session.act(records.correct(session.farm, wrong.id, right, lengths))
    (after,) = [e for e in session.farm.fish_events if e.kind is FishEventKind.DEATHS and e.on == day]
    assert (before.id, after.count) == (after.id, 3)
    assert wrong in session.farm.log_entries
    assert [entry.code for entry in standing(session.farm.log_entries)] == [right.code]
    gone = records.new_entry(what=Happening.WITHDRAWN, on=day)
    session.act(records.withdraw(session.farm, session.farm.log_entries[-1].id, gone, lengths))
    assert after.id not in {event.id for event in session.farm.fish_events}
    assert len(session.farm.log_entries) == 3


def test_that_meals_of_a_day_are_added_up(session, noted):
    group = session.farm.fish_groups[0]
    day = group.stocked_on + timedelta(days=20)
    for grams in (100.0, 60.0):
        noted(Happening.FEED_GIVEN, day, group=group.id, amount=grams, unit=Unit.G)
    (event,) = [e for e in session.farm.fish_events if e.kind is FishEventKind.FEED_GIVEN and e.on == day]
    assert event.feed_g_per_day == 160.0


def test_that_solids_go_back_from_the_day_they_were_returned(session, noted):
    loop = session.farm.loops[0]
    had = len(session.farm.solids_batches)
    day = session.farm.settings.plan_from + timedelta(days=30)
    noted(Happening.SIPHONED, day, loop=loop.id, amount=20.0, unit=Unit.LITRES)
    assert len(session.farm.solids_batches) == had + 1
    waiting = sum(one.returned_on is None for one in session.farm.solids_batches)
    noted(Happening.RETURNED, day + timedelta(days=14), loop=loop.id)
    assert sum(one.returned_on is None for one in session.farm.solids_batches) == waiting - 1


def test_that_treated_fish_are_not_taken_until_they_are_cleared(session, noted):
    group = session.farm.fish_groups[0]
    day = group.stocked_on + timedelta(days=20)
    noted(Happening.TREATED, day, group=group.id, notes="bath")
    (treated,) = [e for e in session.farm.fish_events if e.kind is FishEventKind.TREATED]
    assert (treated.on, treated.cleared_on) == (day, None)
    taken = {"group": group.id, "amount": 1.0, "unit": Unit.FISH}
    with pytest.raises(FarmFaultError, match=r"treated with a medicine on .* must not be harvested"):
        noted(Happening.FISH_TAKEN, day + timedelta(days=9), **taken)
    noted(Happening.DEATHS, day + timedelta(days=9), **taken)
    noted(Happening.RELEASED, day + timedelta(days=21), group=group.id)
    with pytest.raises(FarmFaultError, match=r"cleared on"):
        noted(Happening.FISH_TAKEN, day + timedelta(days=20), **taken)
    noted(Happening.FISH_TAKEN, day + timedelta(days=21), **taken)
    assert session.farm.log_entries[-1].what is Happening.FISH_TAKEN


def test_that_withdrawing_the_clearing_bars_the_fish_again(session, means, noted):
    group = session.farm.fish_groups[0]
    day = group.stocked_on + timedelta(days=20)
    noted(Happening.TREATED, day, group=group.id)
    cleared = noted(Happening.RELEASED, day + timedelta(days=21), group=group.id)
    gone = records.new_entry(what=Happening.WITHDRAWN, on=day)
    session.act(records.withdraw(session.farm, cleared.id, gone, Dater(means.forecaster, session.farm)))
    assert [e.cleared_on for e in session.farm.fish_events if e.kind is FishEventKind.TREATED] == [None]


def test_that_sowing_and_testing_take_seeds_from_the_lot(session, means, noted):
    batch = batch_of(session)
    lot = SeedLot(id=new_id(), code="LOT-X", crop=batch.crop, variety=batch.variety, seeds_left=100)
    with_lot = dataclasses.replace(batch, seed_lot=lot.id)
    session.act(ChangeSet(title="lot", changes=(Change(after=lot), Change(before=batch, after=with_lot))))
    sown = noted(Happening.SOWN, batch.sow_on, batch=batch.id, amount=40.0, unit=Unit.SEEDS)
    noted(Happening.SEED_TESTED, batch.sow_on, seed_lot=lot.id, amount=9.0, out_of=10, unit=Unit.PLANTS)
    assert session.farm.seed_lots[-1].seeds_left == 50
    right = records.new_entry(
        what=Happening.SOWN, on=batch.sow_on, batch=batch.id, amount=30.0, unit=Unit.SEEDS
    )
    dater = Dater(means.forecaster, session.farm)
    session.act(records.correct(session.farm, sown.id, right, dater))
    assert session.farm.seed_lots[-1].seeds_left == 60
    noted(Happening.SOWN, batch.sow_on, batch=batch.id, amount=90.0, unit=Unit.SEEDS)
    assert session.farm.seed_lots[-1].seeds_left == 0


def test_that_a_reading_that_is_logged_is_a_reading_of_the_water(session, noted):
    loop = session.farm.loops[0]
    had = session.farm.readings
    meter = Meter(id=new_id(), name="Stick", kind=MeterKind.TDS, factor=0.64)
    session.act(ChangeSet(title="meter", changes=(Change(after=meter),)))
    day = session.farm.settings.plan_from
    read = {"loop": loop.id, "meter": meter.id, "quantity": Quantity.TDS_MG_PER_L, "amount": 480.0}
    noted(Happening.MEASURED, day, at="06:50", **read)
    (new,) = session.farm.readings[len(had) :]
    assert (new.value, new.at, new.meter, new.meter_factor) == (480.0, "06:50", meter.id, 0.64)
    with pytest.raises(FarmFaultError, match='meter "Stick" measures dissolved solids, not ph'):
        noted(Happening.MEASURED, day, **{**read, "quantity": Quantity.PH, "amount": 7.0})
    with pytest.raises(FarmFaultError, match="meter_factor is missing"):
        noted(Happening.MEASURED, day, **{**read, "meter": NO_ID})


def test_that_an_entry_about_nothing_is_refused_by_name(session):
    entry = records.new_entry(what=Happening.PICKED, on=session.farm.settings.plan_from)
    with pytest.raises(FarmFaultError, match="batch is missing") as refused:
        records.log(session.farm, entry, None)
    assert {fault.field for fault in refused.value.faults} == {"batch", "amount"}


def test_that_a_withdrawn_pick_gives_the_days_back_to_the_book(session, means, noted):
    batch = dataclasses.replace(batch_of(session))
    day = batch.sow_on + timedelta(days=ends(session, means)[3] + 9)
    wrong = noted(Happening.PICKED, day, batch=batch.id, amount=5.0, unit=Unit.HEADS)
    gone = records.new_entry(what=Happening.WITHDRAWN, on=day)
    session.act(records.withdraw(session.farm, wrong.id, gone, Dater(means.forecaster, session.farm)))
    assert batch_of(session).bed_days is None


def test_that_a_late_batch_keeps_its_places_and_the_next_one_is_to_be_placed_anew(session, means, noted):
    batch = batch_of(session)
    had = len(session.farm.placements)
    day = batch.sow_on + timedelta(days=ends(session, means)[3] + 9)
    noted(Happening.PICKED, day, batch=batch.id, amount=5.0, unit=Unit.HEADS)
    mine = [run for run in session.farm.placements if run.batch == batch.id]
    assert mine
    assert len(session.farm.placements) < had
    assert session.faults == ()
    session.undo()
    assert len(session.farm.placements) == had
