"""A farm at fault is told so: which thing, which field, which value, which limit."""

import dataclasses
from datetime import date
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.farm.checks import checked, farm_faults, limit_text, thing_faults, where_of
from planner.farm.crops import Batch, Phase, Placement, Target
from planner.farm.farm import Farm, Settings, Thing
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import FieldKind, Id, specs_of
from planner.farm.fish import Feeding, FishEvent, FishEventKind, FishGroup
from planner.farm.ids import new_id
from planner.farm.site import Bed, Loop, Site, Tank
from planner.farm.species import BedKind
from planner.farm.water import READING_LIMITS, Dose, Quantity, Reading, SolidsBatch
from tests.strategies import farms

DAY = date(2026, 3, 2)
SITE = Site(id=new_id(), name="S")
LOOP = Loop(id=new_id(), name="L", site=SITE.id, water_l=9000)
TANK = Tank(id=new_id(), name="T", loop=LOOP.id, volume_l=3000)
RAFTS = Bed(id=new_id(), name="R", loop=LOOP.id, kind=BedKind.RAFT, units=2, rows=6, columns=12, area_m2=5.76)
BENCH = Bed(id=new_id(), name="N", loop=LOOP.id, kind=BedKind.NURSERY, rows=1, columns=128, area_m2=0.2)
GROUP = FishGroup(
    id=new_id(), name="G", tank=TANK.id, species="a", feed="b", stocked_on=DAY, count=100, mean_weight_g=50
)
BATCH = Batch(id=new_id(), code="B", crop="basil", sow_on=DAY, plants=18)
PLACE = Placement(id=new_id(), batch=BATCH.id, phase=Phase.BED, bed=RAFTS.id, unit=1, first=1, count=18)
FARM = Farm(
    settings=Settings(id=new_id(), name="F", plan_from=DAY),
    sites=(SITE,),
    loops=(LOOP,),
    tanks=(TANK,),
    beds=(RAFTS, BENCH),
    fish_groups=(GROUP,),
    batches=(BATCH,),
    placements=(PLACE,),
)


def alter(thing: Any, **changes: Any) -> Any:
    return dataclasses.replace(thing, **changes)


def only(faults: Any) -> Fault:
    (fault,) = faults
    assert isinstance(fault, Fault)
    return fault


def test_that_a_sound_farm_has_no_faults() -> None:
    assert farm_faults(FARM) == ()


@pytest.mark.parametrize(
    ("field", "value", "limit"),
    [("volume_l", 9.99, "10 to 10000000 L"), ("volume_l", 10_000_000.5, "10 to 10000000 L")],
)
def test_that_a_value_outside_its_limits_is_told_with_them(field: str, value: float, limit: str) -> None:
    fault = only(thing_faults(alter(TANK, **{field: value})))
    assert (fault.kind, fault.where, fault.field, fault.limit) == (
        FaultKind.OUT_OF_LIMITS,
        'tank "T"',
        field,
        limit,
    )
    assert f"{value}" in fault.message


@pytest.mark.parametrize("value", [float("nan"), float("inf"), float("-inf")])
def test_that_a_number_without_an_end_is_outside_every_limit(value: float) -> None:
    assert only(thing_faults(alter(TANK, volume_l=value))).kind is FaultKind.OUT_OF_LIMITS


@given(farms(), st.data())
def test_that_each_number_may_reach_its_limits_but_not_pass_them(farm: Farm, data: st.DataObject) -> None:
    thing: Thing = data.draw(
        st.sampled_from((*farm.sites, *farm.loops, *farm.tanks, *farm.beds, *farm.batches))
    )
    numbers = [
        (name, spec)
        for name, spec in specs_of(type(thing)).items()
        if spec.kind in (FieldKind.NUMBER, FieldKind.WHOLE)
    ]
    name, spec = data.draw(st.sampled_from(numbers)) if numbers else ("", None)
    if spec is None:
        return
    assert isinstance(spec.low, (int, float))
    assert isinstance(spec.high, (int, float))
    for good in (spec.low, spec.high):
        assert not list(thing_faults(alter(thing, **{name: good})))
    for bad in (spec.low - 1, spec.high + 1):
        assert [fault.field for fault in thing_faults(alter(thing, **{name: bad}))] == [name]


def test_that_an_empty_name_is_missing() -> None:
    assert only(thing_faults(alter(TANK, name="  "))).kind is FaultKind.MISSING


def test_that_a_name_over_two_lines_is_refused_but_a_note_is_not() -> None:
    assert only(thing_faults(alter(TANK, name="a\nb"))).field == "name"
    assert not list(thing_faults(alter(TANK, notes="a\nb")))


def test_that_a_text_too_long_is_told_with_its_length() -> None:
    fault = only(thing_faults(alter(TANK, notes="x" * 4001)))
    assert (fault.kind, fault.value, fault.limit) == (
        FaultKind.TOO_LARGE,
        "4001 characters",
        "4000 characters",
    )


def test_that_months_are_twelve_or_none() -> None:
    assert not list(thing_faults(alter(LOOP, water_c=(20.0,) * 12)))
    assert only(thing_faults(alter(LOOP, water_c=(20.0,) * 11))).kind is FaultKind.WRONG_TYPE


def test_that_the_month_at_fault_is_named() -> None:
    months = (20.0,) * 7 + (95.0,) + (20.0,) * 4
    assert only(thing_faults(alter(LOOP, water_c=months))).field == "water_c[8]"


@pytest.mark.parametrize(
    ("feeding", "field"),
    [
        (Feeding.TABLE, "feeding_table"),
        (Feeding.PERCENT, "feed_percent"),
        (Feeding.FIXED, "feed_g_per_day"),
    ],
)
def test_that_each_way_of_feeding_needs_its_figure(feeding: Feeding, field: str) -> None:
    fault = only(thing_faults(alter(GROUP, feeding=feeding)))
    assert (fault.kind, fault.field) == (FaultKind.MISSING, field)


@pytest.mark.parametrize(
    ("kind", "fields"),
    [
        (FishEventKind.HARVEST, []),
        (FishEventKind.DEATHS, ["count"]),
        (FishEventKind.ADDED, ["count", "mean_weight_g"]),
        (FishEventKind.SAMPLE, ["mean_weight_g"]),
        (FishEventKind.OFF_FEED, ["days"]),
        (FishEventKind.FEED_GIVEN, ["days", "feed_g_per_day"]),
    ],
)
def test_that_each_event_needs_its_figures(kind: FishEventKind, fields: list[str]) -> None:
    event = FishEvent(id=new_id(), group=GROUP.id, on=DAY, kind=kind)
    assert [fault.field for fault in thing_faults(event)] == fields


@pytest.mark.parametrize("quantity", list(Quantity))
def test_that_a_reading_stays_on_the_scale_of_its_quantity(quantity: Quantity) -> None:
    low, high = READING_LIMITS[quantity]
    reading = Reading(id=new_id(), loop=LOOP.id, on=DAY, quantity=quantity, value=low, meter_factor=0.5)
    assert not list(thing_faults(reading))
    assert not list(thing_faults(alter(reading, value=high)))
    assert "value" in {fault.field for fault in thing_faults(alter(reading, value=low - 1))}
    assert "value" in {fault.field for fault in thing_faults(alter(reading, value=high + 1))}


def test_that_nothing_ends_before_it_starts() -> None:
    before = date(2026, 3, 1)
    dose = Dose(id=new_id(), loop=LOOP.id, supplement="a", grams=5, on=DAY, until_on=before)
    target = Target(id=new_id(), crop="basil", amount_per_week=5, from_on=DAY, until_on=before)
    for thing in (dose, target):
        assert only(thing_faults(thing)).kind is FaultKind.WRONG_ORDER
        assert not list(thing_faults(alter(thing, until_on=DAY)))


def test_that_liquor_does_not_go_back_before_its_solids_were_taken_out() -> None:
    solids = SolidsBatch(id=new_id(), code="S", loop=LOOP.id, siphoned_on=DAY, days=2)
    early = alter(solids, returned_on=date(2026, 3, 1))
    fault = only(thing_faults(early))
    assert (fault.kind, fault.field) == (FaultKind.WRONG_ORDER, "returned_on")
    assert not list(thing_faults(alter(solids, returned_on=DAY)))


def test_that_two_things_of_a_kind_do_not_share_a_name_or_an_id() -> None:
    twin = alter(TANK, id=new_id())
    fault = only(farm_faults(alter(FARM, tanks=(TANK, twin))))
    assert (fault.kind, fault.field, fault.value) == (FaultKind.DUPLICATE, "name", "T")
    same = alter(TANK, name="U")
    assert only(farm_faults(alter(FARM, tanks=(TANK, same)))).field == "id"


def test_that_a_reference_to_nothing_is_told() -> None:
    fault = only(farm_faults(alter(FARM, tanks=(alter(TANK, loop=Id("gone")),))))
    assert (fault.kind, fault.field, fault.value) == (FaultKind.UNKNOWN_NAME, "loop", "gone")


def test_that_an_open_reference_is_a_fault_only_where_one_is_needed() -> None:
    assert farm_faults(alter(FARM, batches=(alter(BATCH, bed=Id("")),))) == ()
    assert only(farm_faults(alter(FARM, tanks=(alter(TANK, loop=Id("")),)))).field == "loop"


@pytest.mark.parametrize(
    ("changes", "kind", "field"),
    [
        ({"unit": 3}, FaultKind.NO_SUCH_PLACE, "unit"),
        ({"first": 60}, FaultKind.NO_SUCH_PLACE, "first"),
        ({"bed": BENCH.id}, FaultKind.NOT_SUITED, "bed"),
        ({"phase": Phase.NURSERY}, FaultKind.NOT_SUITED, "bed"),
        ({"count": 19}, FaultKind.OUT_OF_LIMITS, "places"),
    ],
)
def test_that_places_must_be_there_suit_the_phase_and_have_plants(
    changes: dict[str, Any], kind: FaultKind, field: str
) -> None:
    fault = only(farm_faults(alter(FARM, placements=(alter(PLACE, **changes),))))
    assert (fault.kind, fault.where, fault.field) == (kind, 'batch "B"', field)


@pytest.mark.parametrize("bed", [RAFTS, BENCH], ids=["raft", "nursery"])
def test_that_the_spacing_phase_may_stand_on_any_bed(bed: Bed) -> None:
    assert farm_faults(alter(FARM, placements=(alter(PLACE, phase=Phase.SPACING, bed=bed.id),))) == ()


def test_that_nothing_happens_to_fish_before_they_are_stocked() -> None:
    event = FishEvent(id=new_id(), group=GROUP.id, on=date(2026, 3, 1), kind=FishEventKind.HARVEST)
    fault = only(farm_faults(alter(FARM, fish_events=(event,))))
    assert (fault.kind, fault.field, fault.value) == (FaultKind.WRONG_ORDER, "on", "2026-03-01")


def test_that_every_fault_is_found_at_once() -> None:
    farm = alter(FARM, tanks=(alter(TANK, volume_l=1),), batches=(alter(BATCH, plants=0),))
    assert {fault.field for fault in farm_faults(farm)} == {"volume_l", "plants"}


def test_that_a_changed_thing_is_given_back_only_when_sound() -> None:
    assert checked(TANK, volume_l=500).volume_l == 500
    with pytest.raises(FarmFaultError, match="volume_l is 5, but must lie within 10 to 10000000 L"):
        checked(TANK, volume_l=5)


def test_that_limits_are_written_as_people_write_numbers() -> None:
    assert limit_text(specs_of(Batch)["plants"]) == "1 to 1000000 plants"
    assert limit_text(specs_of(Site)["roof_transmission"]) == "0.05 to 1"
    assert limit_text(specs_of(Batch)["sow_on"]) == "1990-01-01 to 2199-12-31"


def test_that_things_without_a_name_are_called_by_their_kind() -> None:
    assert where_of(PLACE) == "placement"
    assert where_of(BATCH) == 'batch "B"'


def test_that_a_fault_reads_as_place_matter_and_remedy() -> None:
    fault = Fault(
        kind=FaultKind.MISSING,
        where="tank 2",
        message="x is missing.",
        remedy="Add it.",
        file="f.toml",
        line=7,
    )
    assert fault.sentence() == "f.toml:7: tank 2: x is missing. Add it."
    assert str(FarmFaultError((fault, fault))).count("\n") == 1


def test_that_a_number_of_a_hundred_digits_is_told_shortly() -> None:
    fault = only(thing_faults(alter(LOOP, water_l=1e99)))
    assert "water_l is 1e+99, but must lie within 10 to 100000000 L" in fault.message


SPOILED: dict[str, dict[str, Any]] = {
    "a value": {"tanks": (alter(TANK, volume_l=1),)},
    "two of a name": {"tanks": (TANK, alter(TANK, id=new_id()))},
    "a loop taken out": {"loops": ()},
    "a bed taken out": {"beds": (BENCH,)},
    "a batch taken out": {"batches": ()},
    "a smaller bed": {"beds": (alter(RAFTS, rows=1), BENCH)},
    "fewer plants": {"batches": (alter(BATCH, plants=17),)},
    "another place": {"placements": (alter(PLACE, unit=3),)},
    "later fish": {
        "fish_groups": (alter(GROUP, stocked_on=date(2026, 4, 1)),),
        "fish_events": (FishEvent(id=new_id(), group=GROUP.id, on=DAY, kind=FishEventKind.OFF_FEED),),
    },
    "nothing": {},
}


@pytest.mark.parametrize("what", SPOILED)
def test_that_looking_only_at_what_has_changed_since_a_sound_farm_finds_the_same(what: str) -> None:
    farm = alter(FARM, **SPOILED[what])
    found = farm_faults(farm)
    assert bool(found) == bool(SPOILED[what])
    assert farm_faults(farm, sound=FARM) == found
