"""From what is wanted to what to sow: on days of work, without clashes, and with what was asked for."""

from __future__ import annotations

import dataclasses
from datetime import date, timedelta
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.actions.plan import adopt
from planner.catalogue.loading import shipped_catalogue
from planner.farm.changes import applied
from planner.farm.checks import farm_faults
from planner.farm.crops import Phase, Target, TargetUnit
from planner.farm.farm import OwnEntry, Settings, Shelf
from planner.farm.faults import FarmFaultError
from planner.farm.ids import id_from
from planner.farm.species import BedKind
from planner.forecast.checks import all_faults
from planner.forecast.engine import Forecaster
from planner.forecast.occupancy import clashes, holds
from planner.planning.proposal import NoteKind, steady_share
from planner.planning.rhythm import WorkDays
from planner.planning.seeding import SeedWish
from planner.planning.succession_wish import SuccessionWish
from planner.planning.successions import propose
from planner.planning.wanted import Order, Rhythm, RhythmOf, Steady
from tests.farms import MONDAY, NURSERY, RAFT, SITE, batch_of, farm_of, places_of

FORECASTER = Forecaster(shipped_catalogue())
WET = dataclasses.replace(
    SITE,
    latitude_deg=14.5,
    roof_transmission=0.5,
    air_c=(25.0, 25.5, 27.0, 28.5, 29.0, 28.5, 27.5, 27.0, 27.0, 27.0, 26.5, 25.5),
    radiation_mj_per_m2_d=(17.0, 19.0, 21.5, 22.5, 20.0, 16.0, 12.0, 10.0, 10.5, 12.0, 14.0, 15.0),
)
"""A warm place whose months from July to October are half as bright as April."""
WIDE = dataclasses.replace(RAFT, units=300, area_m2=300.0)
BENCH = dataclasses.replace(NURSERY, units=100, area_m2=15.0)
FIRST_WANTED = date(2027, 6, 7)
WEEKDAYS_ONLY = WorkDays(closed_weekdays=frozenset({5, 6}), closed_on=frozenset({date(2027, 4, 1)}))
STEADY = [
    ("lettuce-butterhead", 40, "heads"),
    ("lettuce-leaf", 25, "heads"),
    ("pak-choi", 30, "heads"),
    ("coriander", 2, "kg"),
    ("basil", 3, "kg"),
    ("chard", 5, "kg"),
    ("kale", 4, "kg"),
    ("rocket", 2, "kg"),
    ("water-spinach", 4, "kg"),
    ("okra", 6, "kg"),
    ("tomato", 30, "kg"),
]


def wet_farm(**parts):
    long = Settings(id=id_from("settings"), name="Wet farm", plan_from=MONDAY, plan_weeks=70)
    return farm_of(**({"settings": long, "sites": (WET,), "beds": (WIDE, BENCH)} | parts))


def steady(crop="lettuce-butterhead", amount=40.0, unit=TargetUnit.HEADS, **given):
    return Steady(
        **({"crop": crop, "amount_per_week": amount, "unit": unit, "from_on": FIRST_WANTED} | given)
    )


def adopted(farm, proposal):
    return applied(farm, adopt(farm, proposal))


@pytest.mark.parametrize(("crop", "amount", "unit"), STEADY)
@pytest.mark.parametrize("work", [WorkDays(), WEEKDAYS_ONLY], ids=["every day", "weekdays"])
def test_that_a_steady_target_is_met_through_a_dark_wet_season(crop, amount, unit, work):
    farm = wet_farm()
    want = steady(crop, float(amount), TargetUnit(unit))
    proposal = propose(farm, FORECASTER, [want], wish=SuccessionWish(work=work))
    assert proposal.refused == ()
    assert len(proposal.weeks) == 48
    assert steady_share(proposal.weeks, within=0.2) >= 0.9


def test_that_what_is_foreseen_is_what_the_forecast_of_the_adopted_farm_says():
    farm = wet_farm()
    proposal = propose(farm, FORECASTER, [steady()])
    after = adopted(farm, proposal)
    forecast = FORECASTER.preview(after)
    crop = forecast.crops.index("lettuce-butterhead")
    share = FORECASTER.catalogue.crops["lettuce-butterhead"].marketable_share
    heads = forecast.ruler.weekly_sum(forecast.harvest_plants[crop]) * share
    assert [week.foreseen for week in proposal.weeks] == pytest.approx(
        [heads[w.week] for w in proposal.weeks]
    )
    assert all(week.foreseen >= week.wanted for week in proposal.weeks)


def test_that_sowings_of_a_steady_target_lie_unevenly_through_the_seasons():
    sowings = propose(wet_farm(), FORECASTER, [steady()]).sowings
    gaps = [(later.sow_on - one.sow_on).days for one, later in pairwise(sowings)]
    assert min(gaps) < 7 < max(gaps)
    stays = [(sowing.first_pick_on - sowing.sow_on).days for sowing in sowings]
    assert max(stays) > min(stays) + 7


def test_that_sown_a_day_later_it_would_be_too_late():
    farm = wet_farm()
    for sowing in propose(farm, FORECASTER, [steady(weekday=3)]).sowings:
        late = dataclasses.replace(
            sowing.batch, id=id_from("late"), code="LATE", sow_on=sowing.sow_on + timedelta(1)
        )
        table = FORECASTER.preview(dataclasses.replace(farm, batches=(late,))).batches
        pick = MONDAY + timedelta(days=int(table.ends[0, 3]))
        thursday = sowing.first_pick_on + timedelta(days=(3 - sowing.first_pick_on.weekday()) % 7)
        assert sowing.first_pick_on <= thursday < pick


@settings(max_examples=12)
@given(
    closed=st.frozensets(st.integers(0, 6), max_size=5),
    holidays=st.frozensets(st.dates(date(2027, 2, 1), date(2027, 12, 31)), max_size=20),
    crop=st.sampled_from(["lettuce-butterhead", "pak-choi", "basil", "chard"]),
)
def test_that_nothing_is_sown_or_moved_on_a_day_without_work(closed, holidays, crop):
    work = WorkDays(closed_weekdays=closed, closed_on=holidays)
    unit = TargetUnit.HEADS if crop in ("lettuce-butterhead", "pak-choi") else TargetUnit.KG
    proposal = propose(wet_farm(), FORECASTER, [steady(crop, 5.0, unit)], wish=SuccessionWish(work=work))
    # from two open days a week no sowing may lead to the other: then that is said, and nothing else
    assert proposal.sowings or NoteKind.NO_WORK_DAY in {note.kind for note in proposal.notes}
    for sowing in proposal.sowings:
        assert work.is_open(sowing.sow_on)
        assert sowing.move_on is not None
        assert work.is_open(sowing.move_on)
        assert sowing.sown_early_days >= 0


def test_that_with_one_day_of_work_a_week_moves_come_earlier_and_growth_stays_as_long():
    farm = wet_farm()
    want = Rhythm(
        crop="lettuce-butterhead",
        amount=30,
        rule="FREQ=WEEKLY",
        of=RhythmOf.SOWING,
        from_on=date(2027, 3, 1),
        until_on=date(2027, 9, 1),
    )
    wish = SuccessionWish(work=WorkDays(closed_weekdays=frozenset({0, 1, 2, 4, 5, 6})))
    proposal = propose(farm, FORECASTER, [want], wish=wish)
    assert {sowing.sow_on.weekday() for sowing in proposal.sowings} == {3}
    assert {sowing.move_on.weekday() for sowing in proposal.sowings} == {3}
    assert any(sowing.moved_early_days for sowing in proposal.sowings)
    for sowing in proposal.sowings:
        if sowing.moved_early_days:
            batch, crop = sowing.batch, FORECASTER.catalogue.crops[sowing.batch.crop]
            assert batch.nursery_days + batch.bed_days == crop.nursery_days + crop.bed_days


def test_that_with_an_intermediate_distance_both_moves_keep_to_days_of_work():
    own = OwnEntry(
        id=id_from("own"),
        shelf=Shelf.CROP,
        key="spaced-lettuce",
        like="lettuce-butterhead",
        name="Spaced lettuce",
        values=(("bed_days", 18.0), ("spacing_days", 10.0)),
    )
    farm = wet_farm(own_entries=(own,))
    wish = SuccessionWish(work=WEEKDAYS_ONLY)
    proposal = propose(farm, FORECASTER, [steady("spaced-lettuce")], wish=wish)
    assert proposal.sowings
    for sowing in proposal.sowings:
        assert sowing.space_on is not None
        assert sowing.sow_on < sowing.space_on < sowing.move_on
        assert all(WEEKDAYS_ONLY.is_open(on) for on in (sowing.sow_on, sowing.space_on, sowing.move_on))
        held = {run.phase for run in proposal.placements if run.batch == sowing.batch.id}
        assert Phase.SPACING in held
    assert steady_share(proposal.weeks, within=0.2) >= 0.9


@settings(max_examples=15)
@given(
    heads=st.integers(1, 60),
    kilos=st.floats(0.1, 3.0),
    rafts=st.integers(1, 12),
    trays=st.integers(1, 3),
    locked=st.integers(0, 4),
    weekday=st.sampled_from([None, 0, 3]),
)
def test_that_adopting_never_clashes_and_leaves_what_is_locked(heads, kilos, rafts, trays, locked, weekday):
    stands = tuple(
        batch_of(f"OLD-{n}", sow_on=MONDAY + timedelta(days=40 * n), plants=20, locked=True, bed=RAFT.id)
        for n in range(locked)
    )
    loose = batch_of("LOOSE", sow_on=MONDAY + timedelta(days=70), bed=RAFT.id)
    farm = wet_farm(
        beds=(dataclasses.replace(RAFT, units=max(rafts, 4)), dataclasses.replace(NURSERY, units=trays)),
        batches=(*stands, loose),
        placements=tuple(places_of(batch, unit=1 + n) for n, batch in enumerate(stands)),
    )
    wants = [steady(amount=float(heads), weekday=weekday), steady("basil", kilos, TargetUnit.KG)]
    proposal = propose(farm, FORECASTER, wants)
    after = adopted(farm, proposal)
    assert list(clashes(holds(after, FORECASTER.preview(after)))) == []
    assert farm_faults(after) == ()
    assert set(stands) <= set(after.batches)
    assert set(farm.placements) <= set(after.placements)
    assert proposal.removed == (loose.id,)
    assert loose not in after.batches
    assert all(one.free >= 0 for one in proposal.nursery)


def test_that_what_is_sown_before_the_first_day_stays_and_counts():
    farm = wet_farm()
    first = propose(farm, FORECASTER, [steady()])
    after = adopted(farm, first)
    from_on = date(2027, 8, 1)
    again = propose(after, FORECASTER, [steady()], wish=SuccessionWish(from_on=from_on))
    before = {batch.id for batch in first.batches if batch.sow_on < from_on}
    assert before
    assert not before & set(again.removed)
    assert all(batch.sow_on >= from_on for batch in again.batches)
    assert steady_share(again.weeks, within=0.2) == 1.0
    assert sum(week.foreseen for week in again.weeks) == pytest.approx(
        sum(week.foreseen for week in first.weeks)
    )


def test_that_the_same_farm_gives_the_same_plan():
    def plan():
        return [
            (s.batch.code, s.sow_on, s.batch.plants)
            for s in propose(wet_farm(), FORECASTER, [steady()]).sowings
        ]

    assert plan() == plan()


def test_that_targets_of_the_farm_are_planned_when_nothing_else_is_said():
    target = Target(id=id_from("t"), crop="pak-choi", amount_per_week=9.0, from_on=FIRST_WANTED)
    proposal = propose(wet_farm(targets=(target,)), FORECASTER)
    assert {batch.crop for batch in proposal.batches} == {"pak-choi"}


def test_that_an_order_is_ready_on_its_day_and_no_sooner_than_it_must():
    on = date(2027, 12, 24)
    proposal = propose(wet_farm(), FORECASTER, [Order(crop="lettuce-butterhead", amount=80, on=on)])
    (sowing,) = proposal.sowings
    assert on - timedelta(days=2) <= sowing.first_pick_on <= on
    assert proposal.weeks[0].foreseen >= 80


def test_that_an_order_alone_comes_on_top_of_what_is_planned():
    farm = wet_farm(batches=(batch_of(sow_on=date(2027, 10, 25), bed=WIDE.id),))
    order = Order(crop="lettuce-butterhead", amount=30, on=date(2027, 12, 20))
    proposal = propose(farm, FORECASTER, [order])
    assert proposal.removed == ()
    assert proposal.weeks[0].foreseen >= 30
    assert sum(batch.plants for batch in proposal.batches) > 30
    with_target = propose(farm, FORECASTER, [order, steady()])
    assert with_target.removed == (farm.batches[0].id,)


def test_that_too_large_an_order_is_filled_as_far_as_any_bed_holds():
    gravel = dataclasses.replace(RAFT, id=id_from("gravel"), name="Gravel", kind=BedKind.MEDIA, units=1)
    farm = wet_farm(beds=(RAFT, gravel, BENCH))
    order = Order(crop="pak-choi", amount=5000, on=date(2027, 12, 20))
    proposal = propose(farm, FORECASTER, [order])
    assert [batch.plants for batch in proposal.batches] == [RAFT.places]
    (refused,) = proposal.refused
    assert refused[1].short > 0
    assert [note.kind for note in proposal.notes] == [NoteKind.LESS]


def test_that_a_rhythm_of_harvests_is_ready_by_each_of_its_days():
    rule = Rhythm(
        crop="pak-choi",
        amount=20,
        rule="FREQ=WEEKLY;INTERVAL=2;BYDAY=TH",
        from_on=FIRST_WANTED,
        until_on=date(2027, 8, 31),
    )
    proposal = propose(wet_farm(), FORECASTER, [rule])
    assert [week.wanted for week in proposal.weeks] == [20.0] * 6
    assert all(week.foreseen >= 20 for week in proposal.weeks)
    assert all(sowing.first_pick_on.weekday() <= 3 for sowing in proposal.sowings)


def test_that_what_can_no_longer_be_sown_in_time_is_told():
    proposal = propose(wet_farm(), FORECASTER, [steady(from_on=MONDAY)])
    soon = [note for note in proposal.notes if note.kind is NoteKind.TOO_SOON]
    assert soon
    assert soon[0].week == "2027-W01"
    assert min(sowing.sow_on for sowing in proposal.sowings) >= MONDAY


def test_that_a_full_nursery_refuses_with_its_week_and_numbers():
    farm = wet_farm(beds=(WIDE, dataclasses.replace(NURSERY, units=1)))
    proposal = propose(farm, FORECASTER, [steady("pak-choi")])
    batch, refusal = proposal.refused[0]
    assert refusal.bed == NURSERY.name
    assert refusal.short > 0
    assert refusal.tight_on is not None
    assert refusal.freeing
    assert batch.id not in {placement.batch for placement in proposal.placements}
    less = [dict(note.values) for note in proposal.notes if note.kind is NoteKind.LESS]
    assert less
    assert all(0 < values["sown"] < values["wanted"] for values in less)
    assert max(one.held for one in proposal.nursery) <= 72


def test_that_as_much_is_sown_as_a_full_bed_holds():
    farm = wet_farm(beds=(dataclasses.replace(RAFT, units=3), BENCH))
    proposal = propose(farm, FORECASTER, [steady()])
    assert proposal.refused
    after = adopted(farm, proposal)
    held = [hold for hold in holds(after, FORECASTER.preview(after)) if hold.bed == RAFT.id]
    assert list(clashes(held)) == []
    summer = [date(2027, 7, 1) + timedelta(days=day) for day in range(60)]
    full = [sum(h.last - h.first + 1 for h in held if h.from_on <= day < h.until_on) for day in summer]
    assert max(full) == 3 * RAFT.places_per_unit


def test_that_seed_sown_in_heat_is_told():
    notes = propose(wet_farm(), FORECASTER, [steady()]).notes
    (poor,) = [dict(note.values) for note in notes if note.kind is NoteKind.POOR_STAND]
    assert poor["stand_share"] < 0.7
    assert poor["sowings"] >= 1


def test_that_a_bed_of_other_light_is_tried_next_and_timed_anew():
    shade = dataclasses.replace(WIDE, id=id_from("shade"), name="Shade", light_share=0.5)
    sunny = dataclasses.replace(RAFT, units=4)
    proposal = propose(wet_farm(beds=(sunny, shade, BENCH)), FORECASTER, [steady()])
    by_bed = {}
    for sowing in proposal.sowings:
        by_bed.setdefault(sowing.batch.bed, []).append((sowing.first_pick_on - sowing.sow_on).days)
    assert set(by_bed) == {sunny.id, shade.id}
    assert min(by_bed[shade.id]) > min(by_bed[sunny.id])
    assert proposal.refused == ()
    assert steady_share(proposal.weeks, within=0.2) >= 0.9


def test_that_a_crop_without_a_bed_is_told():
    farm = wet_farm(beds=(BENCH,))
    proposal = propose(farm, FORECASTER, [steady()])
    assert [note.kind for note in proposal.notes] == [NoteKind.NO_BED]
    assert proposal.batches == ()


def test_that_trays_are_filled_when_that_is_wanted():
    wish = SuccessionWish(seeds=SeedWish(fill_trays=True))
    proposal = propose(wet_farm(), FORECASTER, [steady()], wish=wish)
    for sowing in proposal.sowings:
        assert sowing.seeding.seeds % BENCH.places_per_unit == 0
        assert sowing.batch.plants >= sowing.seeding.plants


def test_that_places_are_given_for_nursery_and_bed_with_a_cell_a_seed():
    farm = wet_farm()
    proposal = propose(farm, FORECASTER, [steady()])
    kinds = {bed.id: bed.kind for bed in farm.beds}
    for sowing in proposal.sowings:
        held = [run for run in proposal.placements if run.batch == sowing.batch.id]
        cells = sum(run.count for run in held if kinds[run.bed] is BedKind.NURSERY)
        assert cells == sowing.seeding.seeds_needed
        assert sum(run.count for run in held if run.phase is Phase.BED) == sowing.batch.plants


def test_that_an_adopted_plan_has_no_faults_and_goes_back_in_one_step():
    farm = wet_farm(batches=(batch_of(sow_on=FIRST_WANTED, bed=WIDE.id),))
    change = adopt(farm, propose(farm, FORECASTER, [steady()]))
    after = applied(farm, change)
    assert all_faults(after, FORECASTER) == ()
    assert applied(after, change.turned()) == farm


def test_that_a_plan_is_not_adopted_on_a_farm_that_has_changed_since():
    farm = wet_farm(batches=(batch_of(sow_on=FIRST_WANTED, bed=WIDE.id),))
    proposal = propose(farm, FORECASTER, [steady()])
    locked = dataclasses.replace(farm, batches=(dataclasses.replace(farm.batches[0], locked=True),))
    for changed in (locked, dataclasses.replace(farm, batches=())):
        with pytest.raises(FarmFaultError, match="has changed since"):
            adopt(changed, proposal)


@pytest.mark.parametrize(
    ("wants", "told"),
    [
        ([steady("cabbage")], 'crop is "cabbage"'),
        ([steady("basil"), steady("basil", unit=TargetUnit.KG)], "one unit"),
        ([steady(amount=0.0)], "above 0"),
        ([steady(amount=float("nan"))], "above 0"),
    ],
)
def test_that_wants_that_make_no_sense_are_named(wants, told):
    with pytest.raises(FarmFaultError, match=told):
        propose(wet_farm(), FORECASTER, wants)
