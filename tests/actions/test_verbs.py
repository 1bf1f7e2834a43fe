"""Every intention of a grower becomes one act, with a title in the grower's words."""

import dataclasses
from datetime import date, timedelta
from types import SimpleNamespace

import numpy as np
import pytest

from planner.actions import batches, fish, layout, plan, water
from planner.actions.rooms import NoRoomError
from planner.farm.changes import applied
from planner.farm.crops import Phase
from planner.farm.farm import KINDS, things
from planner.farm.faults import FarmFaultError, FaultKind
from planner.farm.fields import NO_ID
from planner.farm.ids import new_id
from planner.farm.site import Filter, FilterKind
from planner.farm.water import Quantity, SolidsBatch
from planner.forecast.values import BatchTable, Ruler
from planner.planning.placement import Places, RefusalKind
from tests.actions.desk_of import in_memory
from tests.store.sample import (
    DAYS,
    DOSE,
    EVENT,
    FILTER,
    FIRST,
    FIRST_PLACES,
    GROUP,
    IN_TRAYS,
    LOOP,
    LOT,
    NURSERY,
    OWN,
    RAFTS,
    READING,
    SECOND,
    SECOND_PLACES,
    SITE,
    SOLIDS,
    START,
    TANK,
    TARGET,
    THIRD,
    TREATED,
    batch,
    placement,
    sample_farm,
)


def places_of(farm):
    """Return the places of a farm under the same plain rule of days as the holds."""
    ruler = Ruler(start_on=START, weeks=60)
    sow = np.array([ruler.day_of(one.sow_on) for one in farm.batches], dtype=np.int64)
    nursery, spacing, bed = DAYS[Phase.NURSERY][1], DAYS[Phase.SPACING][1], DAYS[Phase.BED][1]
    ends = np.array([(day, day + nursery, day + spacing, day + bed, day + bed, day + bed) for day in sow])
    said = {
        "ids": tuple(one.id for one in farm.batches),
        "row_of": {one.id: row for row, one in enumerate(farm.batches)},
        "sow_day": sow,
        "ends": ends,
    }
    # Columns that say nothing of days play no part here.
    unsaid = {field.name for field in dataclasses.fields(BatchTable)} - set(said)
    table = BatchTable(**said, **dict.fromkeys(unsaid, np.zeros(len(sow))))
    return Places(farm, SimpleNamespace(ruler=ruler, batches=table))


@pytest.fixture
def session():
    return in_memory()


def acted(session, change_set, title):
    """Carry an act out under its title and return the farm after it; undo must lead back."""
    before = session.farm
    session.act(change_set)
    assert session.undo_title == title
    after = session.farm
    session.undo()
    assert session.farm == before
    session.redo()
    return after


def named(farm, code):
    return next(one for one in farm.batches if one.code == code)


def runs_of(farm, owner):
    return [(p.phase, p.bed, p.unit, p.first, p.count) for p in batches.placements_of(farm, owner.id)]


def test_that_sowing_brings_a_batch_with_its_places(session):
    new = batch("BAS-26W11-A", week=1)
    run = placement(new, unit=2)
    after = acted(session, batches.sow_batch(new, (run,)), "Sow BAS-26W11-A")
    assert after.batches[-1] == new
    assert after.placements[-1] == run


@pytest.mark.parametrize(
    ("sow_on", "code"),
    [
        (date(2026, 3, 2), "BAS-26W10-C"),
        (date(2026, 3, 9), "BAS-26W11-A"),
        (date(2027, 1, 1), "BAS-26W53-A"),
        (date(2005, 1, 3), "BAS-05W01-A"),
    ],
)
def test_that_a_free_code_counts_up_within_its_iso_week(sow_on, code):
    assert batches.free_code(sample_farm(), crop_code="BAS", sow_on=sow_on) == code


def test_that_codes_go_on_after_z():
    farm = sample_farm()
    many = tuple(batch(f"BAS-26W12-{chr(65 + number)}") for number in range(26))
    farm = dataclasses.replace(farm, batches=many)
    assert batches.free_code(farm, crop_code="BAS", sow_on=date(2026, 3, 16)) == "BAS-26W12-AA"


@pytest.mark.parametrize(
    ("days", "title"),
    [
        (3, "Move BAS-26W18-A 3 days later"),
        (1, "Move BAS-26W18-A 1 day later"),
        (-2, "Move BAS-26W18-A 2 days earlier"),
    ],
)
def test_that_a_move_in_time_keeps_the_places(session, days, title):
    after = acted(session, batches.move_batch(session.farm, None, THIRD.id, by_days=days), title)
    assert named(after, THIRD.code).sow_on == THIRD.sow_on + timedelta(days=days)
    assert after.placements == sample_farm().placements


def test_that_a_move_beyond_all_dates_is_refused():
    for days in (10**6, -(10**9), 10**9, -(10**6)):
        with pytest.raises(FarmFaultError, match="sow_on"):
            batches.move_batch(sample_farm(), None, FIRST.id, by_days=days)


def test_that_a_move_to_another_raft_takes_the_places_along(session):
    move = batches.move_batch(session.farm, places_of(session.farm), FIRST.id, unit=2, by_days=7)
    after = acted(session, move, "Move BAS-26W10-A to Rafts 2 7 days later")
    assert runs_of(after, FIRST) == [
        (Phase.BED, RAFTS.id, 2, 1, 12),
        (Phase.NURSERY, NURSERY.id, 1, 1, 15),
    ]
    assert batches.placements_of(after, FIRST.id, Phase.BED)[0].id == FIRST_PLACES.id


def test_that_a_move_to_another_tray_moves_the_nursery_phase_only(session):
    move = batches.move_batch(session.farm, places_of(session.farm), FIRST.id, bed=NURSERY.id, unit=2)
    after = acted(session, move, "Move BAS-26W10-A to Trays 2")
    assert (Phase.NURSERY, NURSERY.id, 2, 1, 15) in runs_of(after, FIRST)
    assert named(after, FIRST.code).bed == RAFTS.id


def test_that_a_move_to_where_no_room_is_says_why():
    farm = sample_farm()
    full = dataclasses.replace(farm, placements=(*farm.placements, placement(THIRD, unit=2)))
    places = places_of(dataclasses.replace(full, placements=(placement(SECOND, unit=2, count=20),)))
    with pytest.raises(NoRoomError) as caught:
        batches.move_batch(farm, places, FIRST.id, unit=2)
    assert caught.value.refusal.kind is RefusalKind.NO_FREE_PLACES
    (fault,) = caught.value.faults
    assert fault.kind is FaultKind.NO_ROOM
    for part in (FIRST.code, SECOND.code, "12 places are needed", "4 are free", "Rafts", "2026-03-23"):
        assert part in fault.sentence()


def test_that_a_move_to_a_unit_that_is_not_there_says_so():
    with pytest.raises(NoRoomError, match='"Rafts" has no raft 9'):
        batches.move_batch(sample_farm(), places_of(sample_farm()), FIRST.id, unit=9)


def test_that_placing_gives_a_batch_as_many_places_as_plants(session):
    session.act(batches.unplace_batch(session.farm, FIRST.id))
    assert runs_of(session.farm, FIRST) == []
    place = batches.place_batch(
        session.farm, places_of(session.farm), FIRST.id, phase=Phase.BED, bed=RAFTS.id, unit=3
    )
    after = acted(session, place, "Place BAS-26W10-A in Rafts 3")
    assert runs_of(after, FIRST) == [(Phase.BED, RAFTS.id, 3, 1, 12)]


def test_that_a_phase_cannot_stand_in_an_unsuited_bed():
    with pytest.raises(NoRoomError, match="not a bed for that phase"):
        batches.place_batch(
            sample_farm(), places_of(sample_farm()), FIRST.id, phase=Phase.BED, bed=NURSERY.id
        )


def test_that_places_chosen_by_hand_replace_those_of_their_phase(session):
    chosen = [placement(FIRST, unit=2, first=3, count=5), placement(FIRST, unit=3, first=1, count=7)]
    put = batches.put_in_places(session.farm, FIRST.id, chosen, phase=Phase.BED)
    after = acted(session, put, "Place BAS-26W10-A")
    assert {run[2:] for run in runs_of(after, FIRST) if run[0] is Phase.BED} == {(2, 3, 5), (3, 1, 7)}
    fewer = batches.put_in_places(after, FIRST.id, [chosen[0]], phase=Phase.BED)
    assert len(runs_of(acted(session, fewer, "Place BAS-26W10-A"), FIRST)) == 2


def test_that_taking_out_one_phase_leaves_the_other(session):
    out = batches.unplace_batch(session.farm, FIRST.id, phase=Phase.NURSERY)
    after = acted(session, out, "Take BAS-26W10-A out of its places")
    assert batches.placements_of(after, FIRST.id) == (FIRST_PLACES,)


@pytest.mark.parametrize(("plants", "bed", "trays"), [(1, 1, 1), (5, 5, 6), (6, 6, 7), (11, 11, 13)])
def test_that_a_split_shares_plants_and_places(session, plants, bed, trays):
    split = batches.split_batch(session.farm, FIRST.id, plants=plants, code="PART")
    after = acted(session, split, "Split PART from BAS-26W10-A")
    rest, part = named(after, FIRST.code), named(after, "PART")
    assert (rest.plants, part.plants) == (12 - plants, plants)
    assert part.sow_on == FIRST.sow_on
    held = {
        (owner.code, phase): sum(p.count for p in batches.placements_of(after, owner.id, phase))
        for owner in (rest, part)
        for phase in (Phase.BED, Phase.NURSERY)
    }
    assert held["PART", Phase.BED] == bed
    assert held[FIRST.code, Phase.BED] == 12 - bed
    assert held["PART", Phase.NURSERY] == trays
    assert held[FIRST.code, Phase.NURSERY] == 15 - trays
    (run,) = batches.placements_of(after, part.id, Phase.BED)
    assert run.last == FIRST_PLACES.last


@pytest.mark.parametrize("plants", [0, 12, 13, -1])
def test_that_a_split_leaves_plants_on_both_sides(plants):
    with pytest.raises(FarmFaultError, match="plants"):
        batches.split_batch(sample_farm(), FIRST.id, plants=plants, code="PART")


def test_that_a_copy_is_sown_later_without_places(session):
    copy = batches.copy_batch(session.farm, FIRST.id, code="TWIN", by_days=7)
    after = acted(session, copy, "Copy BAS-26W10-A as TWIN")
    twin = named(after, "TWIN")
    assert twin.id != FIRST.id
    assert twin.sow_on == FIRST.sow_on + timedelta(days=7)
    assert batches.placements_of(after, twin.id) == ()


def test_that_removing_a_batch_lets_its_places_go_and_undo_puts_all_back_in_order(session):
    after = acted(session, batches.remove_batch(session.farm, FIRST.id), "Remove BAS-26W10-A")
    assert FIRST not in after.batches
    assert set(after.placements) == set(sample_farm().placements) - {FIRST_PLACES, IN_TRAYS}
    session.undo()
    assert session.farm == sample_farm()


@pytest.mark.parametrize(("locked", "title"), [(True, "Lock BAS-26W10-A"), (False, "Unlock BAS-26W10-A")])
def test_that_locking_says_so(locked, title):
    change_set = batches.lock_batch(sample_farm(), FIRST.id, locked=locked)
    assert change_set.title == title
    assert applied(sample_farm(), change_set).batches[0].locked is locked


REMOVALS = {
    "site": (layout.remove_site, SITE),
    "loop": (layout.remove_loop, LOOP),
    "tank": (layout.remove_tank, TANK),
    "bed": (layout.remove_bed, RAFTS),
    "seed lot": (plan.remove_seed_lot, LOT),
}


@pytest.mark.parametrize("word", REMOVALS)
def test_that_what_others_stand_on_is_removed_only_with_them(session, word):
    remove, thing = REMOVALS[word]
    with pytest.raises(FarmFaultError) as caught:
        remove(session.farm, thing.id)
    (fault,) = caught.value.faults
    assert fault.kind is FaultKind.IN_USE
    assert fault.value
    title = f"Remove {'seed lot ' if word == 'seed lot' else ''}{getattr(thing, 'name', LOT.code)}"
    after = acted(session, remove(session.farm, thing.id, with_dependants=True), title)
    assert thing.id not in {other.id for other in things(after, word)}
    session.undo()
    assert session.farm == sample_farm()


def test_that_the_refusal_to_remove_a_bed_names_its_batches():
    with pytest.raises(FarmFaultError, match=f'batch "{FIRST.code}".*batch "{SECOND.code}"'):
        layout.remove_bed(sample_farm(), RAFTS.id)


def test_that_removing_a_bed_leaves_its_batches_without_places(session):
    session.act(layout.remove_bed(session.farm, RAFTS.id, with_dependants=True))
    assert [one.code for one in session.farm.batches] == [one.code for one in sample_farm().batches]
    assert {one.bed for one in session.farm.batches} == {NO_ID}
    assert session.farm.placements == (IN_TRAYS,)


def test_that_removing_a_site_removes_all_that_is_on_it_but_the_batches(session):
    session.act(layout.remove_site(session.farm, SITE.id, with_dependants=True))
    left = {kind.word for kind in KINDS if things(session.farm, kind.word)}
    assert left == {"own entry", "seed lot", "batch", "target", "meter", "log entry"}


@pytest.mark.parametrize(
    "fields", [{"rows": 3}, {"columns": 2}, {"rows": 1, "columns": 12, "units": 3}], ids=str
)
def test_that_shrinking_a_bed_names_the_batches_it_would_strand(fields):
    with pytest.raises(FarmFaultError) as caught:
        layout.change_bed(sample_farm(), dataclasses.replace(RAFTS, **fields))
    assert all(fault.kind is FaultKind.NO_SUCH_PLACE for fault in caught.value.faults)
    assert f'batch "{SECOND.code}"' in {fault.where for fault in caught.value.faults}


def test_that_a_bed_can_be_renamed_and_grown(session):
    bigger = dataclasses.replace(RAFTS, name="Long rafts", units=9)
    after = acted(session, layout.change_bed(session.farm, bigger), "Change Long rafts")
    assert after.beds[1] == bigger


PARTS = {
    "site": (layout.add_site, layout.change_site, SITE),
    "loop": (layout.add_loop, layout.change_loop, LOOP),
    "tank": (layout.add_tank, layout.change_tank, TANK),
    "filter": (layout.add_filter, layout.change_filter, FILTER),
    "bed": (layout.add_bed, layout.change_bed, RAFTS),
}


@pytest.mark.parametrize("word", PARTS)
def test_that_parts_of_the_farm_are_added_and_changed(session, word):
    add, change, thing = PARTS[word]
    new = dataclasses.replace(thing, id=new_id(), name="New")
    after = acted(session, add(new), "Add New")
    assert things(after, word)[-1] == new
    after = acted(session, change(session.farm, dataclasses.replace(new, name="Newer")), "Change Newer")
    assert things(after, word)[-1].name == "Newer"


def test_that_a_filter_is_removed(session):
    session.act(layout.add_filter(Filter(id=new_id(), name="Drum", loop=LOOP.id, kind=FilterKind.SCREEN)))
    after = acted(session, layout.remove_filter(session.farm, FILTER.id), "Remove Settler")
    assert [one.name for one in after.filters] == ["Drum"]


def test_that_fish_are_stocked_changed_noted_and_removed(session):
    second = dataclasses.replace(GROUP, id=new_id(), name="Tilapia two")
    assert acted(session, fish.stock_group(second), "Stock Tilapia two").fish_groups[-1] == second
    more = dataclasses.replace(second, count=99)
    assert acted(session, fish.change_group(session.farm, more), "Change Tilapia two").fish_groups[-1] == more
    event = dataclasses.replace(EVENT, id=new_id(), group=second.id)
    title = "Weighed sample of Tilapia two, 2026-03-02"
    assert acted(session, fish.add_event(session.farm, event), title).fish_events[-1] == event
    heavier = dataclasses.replace(event, mean_weight_g=60.0)
    after = acted(session, fish.change_event(session.farm, heavier), f"Change: {title}")
    assert after.fish_events[-1] == heavier
    assert acted(session, fish.remove_event(session.farm, event.id), f"Remove: {title}").fish_events == (
        EVENT,
        TREATED,
    )


def test_that_a_group_goes_with_all_that_was_noted_of_it(session):
    after = acted(session, fish.remove_group(session.farm, GROUP.id), "Remove Tilapia one")
    assert (after.fish_groups, after.fish_events) == ((), ())


def test_that_the_plan_is_renamed_noted_and_given_another_span(session):
    assert (
        acted(session, plan.rename_farm(session.farm, "Hill"), "Rename the farm to Hill").settings.name
        == "Hill"
    )
    span = plan.change_span(session.farm, plan_from=date(2026, 5, 4), plan_weeks=30)
    after = acted(session, span, "Plan 30 weeks from 2026-05-04")
    assert (after.settings.plan_from, after.settings.plan_weeks) == (date(2026, 5, 4), 30)
    noted = acted(session, plan.change_notes(session.farm, "dry year"), "Change the farm's notes")
    assert noted.settings.notes == "dry year"


def test_that_targets_are_added_changed_and_removed(session):
    new = dataclasses.replace(TARGET, id=new_id(), crop="okra")
    assert acted(session, plan.add_target(new), "Add target for okra").targets[-1] == new
    more = dataclasses.replace(new, amount_per_week=3.0)
    assert (
        acted(session, plan.change_target(session.farm, more), "Change target for okra").targets[-1] == more
    )
    assert acted(session, plan.remove_target(session.farm, new.id), "Remove target for okra").targets == (
        TARGET,
    )


def test_that_seed_lots_are_added_changed_and_removed(session):
    new = dataclasses.replace(LOT, id=new_id(), code="LOT-2")
    assert acted(session, plan.add_seed_lot(new), "Add seed lot LOT-2").seed_lots[-1] == new
    less = dataclasses.replace(new, seeds_left=3)
    assert (
        acted(session, plan.change_seed_lot(session.farm, less), "Change seed lot LOT-2").seed_lots[-1]
        == less
    )
    after = acted(session, plan.remove_seed_lot(session.farm, new.id), "Remove seed lot LOT-2")
    assert after.seed_lots == (LOT,)


def test_that_own_entries_are_added_changed_and_removed(session):
    new = dataclasses.replace(OWN, id=new_id(), key="blue-basil", name="Blue basil")
    after = acted(session, plan.add_own_entry(new), "Add Blue basil to the catalogue")
    assert after.own_entries[-1] == new
    other = dataclasses.replace(new, values=(("bed_days", 20.0),))
    after = acted(session, plan.change_own_entry(session.farm, other), "Change Blue basil in the catalogue")
    assert after.own_entries[-1] == other
    after = acted(
        session, plan.remove_own_entry(session.farm, new.id), "Remove Blue basil from the catalogue"
    )
    assert after.own_entries == (OWN,)


def test_that_an_own_entry_in_use_neither_goes_nor_takes_another_key(session):
    session.act(batches.change_batch(session.farm, dataclasses.replace(FIRST, crop=OWN.key)))
    for attempt in (
        lambda: plan.remove_own_entry(session.farm, OWN.id),
        lambda: plan.change_own_entry(session.farm, dataclasses.replace(OWN, key="other")),
    ):
        with pytest.raises(FarmFaultError, match=f'used by batch "{FIRST.code}"'):
            attempt()
    session.act(plan.change_own_entry(session.farm, dataclasses.replace(OWN, name="Renamed")))


def test_that_an_own_entry_that_another_is_like_stays(session):
    child = dataclasses.replace(OWN, id=new_id(), key="deep-red", name="Deep red", like=OWN.key, values=())
    session.act(plan.add_own_entry(child))
    with pytest.raises(FarmFaultError, match='used by own entry "deep-red"'):
        plan.remove_own_entry(session.farm, OWN.id)


def test_that_doses_and_readings_are_added_changed_and_removed(session):
    dose = dataclasses.replace(DOSE, id=new_id(), grams=5.0)
    assert acted(session, water.add_dose(dose), "Add dose of KOH, 2026-03-02").doses[-1] == dose
    more = dataclasses.replace(dose, grams=6.0)
    assert (
        acted(session, water.change_dose(session.farm, more), "Change dose of KOH, 2026-03-02").doses[-1]
        == more
    )
    after = acted(session, water.remove_dose(session.farm, dose.id), "Remove dose of KOH, 2026-03-02")
    assert after.doses == (DOSE,)
    cold = dataclasses.replace(READING, id=new_id(), quantity=Quantity.WATER_C, value=18.0)
    title = "reading of water °C, 2026-03-02"
    assert acted(session, water.add_reading(cold), f"Add {title}").readings[-1] == cold
    warm = dataclasses.replace(cold, value=19.0)
    assert acted(session, water.change_reading(session.farm, warm), f"Change {title}").readings[-1] == warm
    assert acted(session, water.remove_reading(session.farm, cold.id), f"Remove {title}").readings == (
        READING,
    )
    many = tuple(dataclasses.replace(READING, id=new_id()) for _ in range(3))
    assert acted(session, water.add_readings(many), "Add 3 readings").readings == (READING, *many)


def test_that_solids_are_put_apart_and_their_liquor_is_returned(session):
    solids = SolidsBatch(id=new_id(), code="SOL-2", loop=LOOP.id, siphoned_on=START, days=7)
    added = acted(session, water.add_solids_batch(solids), "Add solids batch SOL-2")
    assert added.solids_batches[-1] == solids
    stirred = dataclasses.replace(solids, aerated=False)
    changed = acted(session, water.change_solids_batch(session.farm, stirred), "Change solids batch SOL-2")
    assert changed.solids_batches[-1] == stirred
    on = START + timedelta(days=28)
    given_back = water.return_liquor(session.farm, solids.id, on=on, share=0.5)
    after = acted(session, given_back, "Return liquor of SOL-2, 2026-03-30").solids_batches[-1]
    assert (after.returned_on, after.returned_share) == (on, 0.5)
    with pytest.raises(FarmFaultError, match="returned_on is 2026-03-01, before it starts on 2026-03-02"):
        water.return_liquor(session.farm, solids.id, on=START - timedelta(days=1))
    gone = acted(session, water.remove_solids_batch(session.farm, solids.id), "Remove solids batch SOL-2")
    assert gone.solids_batches == (SOLIDS,)


def test_that_what_is_gone_is_told_as_gone():
    with pytest.raises(FarmFaultError, match="not on the farm any more"):
        batches.remove_batch(sample_farm(), new_id())


def test_that_second_places_stay_when_the_first_batch_leaves(session):
    session.act(batches.unplace_batch(session.farm, FIRST.id))
    assert SECOND_PLACES in session.farm.placements
