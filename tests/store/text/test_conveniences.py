"""What a grower may say shortly: sizes instead of grids, repeats, places in words, names left out."""

from datetime import date

import pytest

from planner.farm.crops import Phase
from planner.farm.farm import Farm, Shelf
from planner.farm.faults import FarmFaultError, FaultKind
from planner.farm.fish import FishEventKind
from planner.farm.ids import id_from
from planner.farm.site import Bed
from planner.store.text import read_farm_text, write_farm_text

HEAD = """
format = "raftweek.farm/1"
[farm]
name = "F"
plan_from = 2026-03-02
[[site]]
name = "S"
[[loop]]
name = "L"
water_l = 9000
"""
RAFTS = """
[[raft_bed]]
name = "Rafts"
rafts = 4
rows = 6
columns = 12
area_m2 = 11.52
"""
TANKS = "".join(f'[[tank]]\nname = "{name}"\nvolume_l = 3000\n' for name in "ABCD")
GROUP = """
[[fish_group]]
name = "Tilapia"
species = "tilapia"
feed = "grower"
stocked_on = 2026-03-02
count = 200
mean_weight_g = 50
"""
BATCH = """
[[batch]]
crop = "basil"
sow_on = 2026-03-02
plants = 72
"""


def read(*parts: str) -> Farm:
    return read_farm_text("\n".join((HEAD, *parts)))


def bed(lines: str, table: str = "raft_bed") -> Bed:
    return read(f'[[{table}]]\nname = "B"\n{lines}').beds[0]


def refused(*parts: str) -> str:
    with pytest.raises(FarmFaultError) as caught:
        read(*parts)
    return str(caught.value)


def test_that_length_width_and_spacing_make_the_grid_and_the_area() -> None:
    found = bed("length_m = 2.4\nwidth_m = 1.2\nspacing_cm = 20")
    assert (found.columns, found.rows, found.area_m2) == (12, 6, 2.88)


def test_that_length_and_width_are_those_of_one_raft() -> None:
    found = bed("rafts = 4\nlength_m = 2.4\nwidth_m = 1.2\nspacing_cm = 20")
    assert (found.units, found.places, found.area_m2) == (4, 288, 11.52)


@pytest.mark.parametrize("spacing_cm", [5, 10, 15, 20, 24, 30, 40, 60])
def test_that_a_spacing_that_divides_the_raft_leaves_no_place_out(spacing_cm: int) -> None:
    found = bed(f"length_m = 2.4\nwidth_m = 1.2\nspacing_cm = {spacing_cm}")
    assert (found.columns, found.rows) == (240 // spacing_cm, 120 // spacing_cm)


def test_that_typed_rows_and_columns_overrule_the_spacing() -> None:
    found = bed("length_m = 2.4\nwidth_m = 1.2\nspacing_cm = 20\nrows = 5\ncolumns = 11")
    assert (found.rows, found.columns, found.area_m2) == (5, 11, 2.88)


def test_that_typed_rows_alone_leave_the_columns_to_the_spacing() -> None:
    found = bed("length_m = 2.4\nwidth_m = 1.2\nspacing_cm = 20\nrows = 5")
    assert (found.rows, found.columns) == (5, 12)


def test_that_a_typed_area_overrules_length_and_width() -> None:
    assert bed("length_m = 2.4\nwidth_m = 1.2\nspacing_cm = 20\narea_m2 = 2.5").area_m2 == 2.5


def test_that_places_make_a_single_row() -> None:
    found = bed("trays = 3\nplaces = 128\narea_m2 = 0.6", "nursery")
    assert (found.units, found.rows, found.columns, found.area_m2) == (3, 1, 128, 0.6)


def test_that_a_density_is_rounded_down_to_whole_places() -> None:
    found = bed("blocks = 2\narea_m2 = 3\ndensity_per_m2 = 8.5", "media_bed")
    assert (found.places_per_unit, found.units) == (12, 2)


def test_that_a_thin_density_leaves_one_place() -> None:
    assert bed("area_m2 = 0.5\ndensity_per_m2 = 1", "media_bed").places == 1


def test_that_a_density_of_more_places_than_a_row_holds_makes_a_grid() -> None:
    found = bed("area_m2 = 10\ndensity_per_m2 = 1000", "nursery")
    assert (found.rows, found.columns) == (100, 100)


def test_that_spacing_and_area_alone_make_places() -> None:
    assert bed("area_m2 = 2.88\nspacing_cm = 20").places == 72


def test_that_a_repeated_batch_without_a_code_gets_one_by_week() -> None:
    farm = read(RAFTS, BATCH, "repeat_every_days = 7\nrepeat_times = 3")
    assert [batch.code for batch in farm.batches] == ["BAS-26W10-A", "BAS-26W11-A", "BAS-26W12-A"]
    assert [batch.sow_on for batch in farm.batches] == [date(2026, 3, 2), date(2026, 3, 9), date(2026, 3, 16)]


def test_that_a_repeated_batch_with_a_code_is_numbered() -> None:
    farm = read(BATCH, 'code = "B"\nrepeat_every_days = 14\nrepeat_times = 2')
    assert [batch.code for batch in farm.batches] == ["B-1", "B-2"]


def test_that_two_batches_of_a_week_get_letters_of_their_own() -> None:
    taken = BATCH + 'code = "BAS-26W10-B"\n'
    farm = read(BATCH, BATCH, taken)
    assert [batch.code for batch in farm.batches] == ["BAS-26W10-A", "BAS-26W10-C", "BAS-26W10-B"]


def test_that_the_year_of_a_code_is_the_year_of_its_week() -> None:
    farm = read(BATCH.replace("2026-03-02", "2027-01-01"))
    assert farm.batches[0].code == "BAS-26W53-A"


def test_that_codes_take_the_letters_of_the_catalogue() -> None:
    farm = read_farm_text(HEAD + BATCH, crop_codes={"basil": "BSL"})
    assert farm.batches[0].code == "BSL-26W10-A"


def test_that_codes_take_the_letters_of_the_growers_own_crop() -> None:
    own = '[[crop]]\nkey = "holy"\nlike = "basil"\nname = "Holy basil"\ncode = "HLY"\n'
    farm = read(own, BATCH.replace('"basil"', '"holy"'))
    assert farm.batches[0].code == "HLY-26W10-A"


def test_that_a_batch_may_name_only_its_bed() -> None:
    farm = read(RAFTS, BATCH, 'bed = "Rafts"')
    assert (farm.batches[0].bed, farm.placements) == (farm.beds[0].id, ())


def test_that_places_are_read_run_by_run() -> None:
    farm = read(RAFTS, BATCH, '[[batch.place]]\nphase = "bed"\nraft = 2\nplaces = "1-6, 9-12"')
    runs = [(one.phase, one.unit, one.first, one.count) for one in farm.placements]
    assert runs == [(Phase.BED, 2, 1, 6), (Phase.BED, 2, 9, 4)]


def test_that_a_single_place_is_a_number() -> None:
    farm = read(RAFTS, BATCH, '[[batch.place]]\nphase = "bed"\nunit = 2\nplaces = 7')
    assert [(one.first, one.count) for one in farm.placements] == [(7, 1)]


def test_that_whole_rafts_are_taken_at_once() -> None:
    batch = BATCH.replace("72", "144")
    farm = read(RAFTS, batch, '[[batch.place]]\nphase = "bed"\nraft = "2-3"\nplaces = "all"')
    assert [(one.unit, one.first, one.count) for one in farm.placements] == [(2, 1, 72), (3, 1, 72)]


def test_that_the_only_raft_need_not_be_numbered() -> None:
    farm = read(RAFTS.replace("rafts = 4", ""), BATCH, '[[batch.place]]\nphase = "bed"\nplaces = "1-72"')
    assert [one.unit for one in farm.placements] == [1]


def test_that_a_place_finds_the_only_bed_for_its_phase() -> None:
    nursery = '[[nursery]]\nname = "Bench"\nplaces = 128\narea_m2 = 0.2\n'
    farm = read(RAFTS, nursery, BATCH, '[[batch.place]]\nphase = "nursery"\nplaces = "1-80"')
    assert farm.placements[0].bed == id_from("bed", "Bench")


def test_that_repeated_groups_take_the_tanks_in_turn() -> None:
    repeat = 'tanks = ["A", "B", "C", "D"]\nrepeat_every_days = 42\nrepeat_times = 5'
    farm = read(TANKS, GROUP, repeat)
    names = {tank.id: tank.name for tank in farm.tanks}
    assert [names[group.tank] for group in farm.fish_groups] == ["A", "B", "C", "D", "A"]
    assert [group.name for group in farm.fish_groups] == [f"Tilapia {number}" for number in range(1, 6)]
    assert farm.fish_groups[4].stocked_on == date(2026, 8, 17)


def test_that_a_harvest_is_planned_for_each_repeated_group() -> None:
    repeat = 'tanks = ["A", "B"]\nrepeat_every_days = 42\nrepeat_times = 2\nharvest_after_days = 168'
    farm = read(TANKS, GROUP, repeat)
    assert [(event.kind, event.on, event.count) for event in farm.fish_events] == [
        (FishEventKind.HARVEST, date(2026, 8, 17), None),
        (FishEventKind.HARVEST, date(2026, 9, 28), None),
    ]
    assert [event.group for event in farm.fish_events] == [group.id for group in farm.fish_groups]


def test_that_events_of_a_repeated_group_move_with_it() -> None:
    event = '[[fish_group.event]]\nkind = "off feed"\non = 2026-03-05\ndays = 2\n'
    farm = read(TANKS, GROUP, 'tank = "A"\nrepeat_every_days = 10\nrepeat_times = 2', event)
    assert [one.on for one in farm.fish_events] == [date(2026, 3, 5), date(2026, 3, 15)]


def test_that_one_number_stands_for_every_month() -> None:
    farm = read_farm_text(HEAD + "water_c = 24")
    assert farm.loops[0].water_c == (24.0,) * 12


def test_that_own_entries_hold_their_figures_sorted_by_name() -> None:
    farm = read(
        '[[crop]]\nkey = "mine"\nlike = "basil"\nname = "Mine"\nyield_g_per_plant = 90\nbed_days = 30'
    )
    entry = farm.own_entries[0]
    assert (entry.shelf, entry.values) == (Shelf.CROP, (("bed_days", 30.0), ("yield_g_per_plant", 90.0)))


def test_that_a_group_swims_in_the_only_tank() -> None:
    farm = read('[[tank]]\nname = "A"\nvolume_l = 3000', GROUP)
    assert farm.fish_groups[0].tank == farm.tanks[0].id


def test_that_every_fault_of_a_text_is_told_in_the_order_of_lines() -> None:
    text = refused(TANKS.replace("3000", "3", 1), GROUP.replace("200", "0"), BATCH.replace("72", '"x"'))
    for words in ("volume_l is 3", "tank is missing", "count is 0", 'plants is the text "x"'):
        assert words in text
    lines = [int(part.split(":")[0]) for part in text.split("\n")]
    assert lines == sorted(lines)
    assert len(lines) == 4


def test_that_a_faulty_tank_does_not_make_its_fish_faulty() -> None:
    text = refused('[[tank]]\nname = "A"\nvolume_l = "big"', GROUP)
    assert len(text.split("\n")) == 1


def test_that_what_was_said_shortly_is_written_in_full_and_stays_the_same() -> None:
    farm = read(TANKS, RAFTS, GROUP, 'tanks = ["A", "B"]\nrepeat_every_days = 42\nrepeat_times = 2', BATCH)
    assert read_farm_text(write_farm_text(farm)) == farm


def test_that_a_repeated_code_that_meets_another_is_told_once_with_its_line() -> None:
    other = BATCH + 'code = "B-2"\n'
    with pytest.raises(FarmFaultError) as caught:
        read(other, BATCH, 'code = "B"\nrepeat_every_days = 7\nrepeat_times = 2')
    (fault,) = caught.value.faults
    assert (fault.kind, fault.field, fault.value) == (FaultKind.DUPLICATE, "code", "B-2")
    assert fault.line > 0


def test_that_the_line_of_a_fault_is_that_of_its_key_even_after_a_note_of_many_lines() -> None:
    note = 'notes = """\n[[tank]]\nvolume_l = 3\n"""\n'
    with pytest.raises(FarmFaultError) as caught:
        read_farm_text(HEAD + note + '[[tank]]\nname = "A"\nvolume_l = 3\n')
    line = (HEAD + note).count("\n") + 3
    assert [fault.line for fault in caught.value.faults] == [line]


def test_that_things_written_inline_are_read_like_tables() -> None:
    places = 'place = [{phase = "bed", raft = 1, places = "1-18"}, {phase = "bed", raft = 2, places = 4}]'
    farm = read(RAFTS, BATCH, places)
    assert [(one.unit, one.first, one.count) for one in farm.placements] == [(1, 1, 18), (2, 4, 1)]


def test_that_a_repeat_past_the_last_day_there_is_is_a_fault() -> None:
    text = refused(BATCH.replace("2026-03-02", "2199-12-01"), "repeat_every_days = 400\nrepeat_times = 520")
    assert "sow_on" in text
