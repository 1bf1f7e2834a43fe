"""What is written reads back exactly, and what is read is written the same way again."""

import dataclasses
from datetime import date

import pytest
from hypothesis import given

from planner.farm.checks import farm_faults
from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm, Settings
from planner.farm.faults import FarmFaultError
from planner.farm.ids import new_id
from planner.farm.mark import plan_mark
from planner.farm.site import Bed, Loop, Site
from planner.farm.species import BedKind
from planner.store.text import read_farm_text, write_farm_text
from tests.strategies import farms


@given(farms())
def test_that_the_strategy_makes_farms_without_faults(farm: Farm) -> None:
    assert farm_faults(farm) == ()


@given(farms())
def test_that_a_written_farm_reads_back_exactly(farm: Farm) -> None:
    again = read_farm_text(write_farm_text(farm))
    assert again == farm
    assert plan_mark(again) == plan_mark(farm)


@given(farms())
def test_that_writing_what_was_read_gives_the_same_text(farm: Farm) -> None:
    text = write_farm_text(farm)
    assert write_farm_text(read_farm_text(text)) == text


@given(farms())
def test_that_a_text_with_windows_line_ends_and_a_byte_order_mark_reads_the_same(farm: Farm) -> None:
    text = write_farm_text(farm)
    assert read_farm_text("\ufeff" + text.replace("\n", "\r\n")) == farm


def a_farm(**changes: object) -> Farm:
    site = Site(id=new_id(), name="North")
    loop = Loop(id=new_id(), name="Loop", site=site.id, water_l=9000)
    bed = Bed(id=new_id(), name="Raft", loop=loop.id, kind=BedKind.RAFT, rows=6, columns=12, area_m2=2.88)
    settings = Settings(id=new_id(), name="Farm", plan_from=date(2026, 3, 2))
    farm = Farm(settings=settings, sites=(site,), loops=(loop,), beds=(bed,))
    return dataclasses.replace(farm, **changes)  # type: ignore[arg-type]


def test_that_places_entered_out_of_the_order_of_their_batches_keep_their_order() -> None:
    farm = a_farm()
    one, two = (
        Batch(id=new_id(), code=code, crop="basil", sow_on=date(2026, 3, 2), plants=9) for code in ("A", "B")
    )
    runs = tuple(
        Placement(
            id=new_id(), batch=batch.id, phase=Phase.BED, bed=farm.beds[0].id, unit=1, first=first, count=2
        )
        for batch, first in ((two, 1), (one, 3), (two, 5), (one, 7))
    )
    farm = dataclasses.replace(farm, batches=(one, two), placements=runs)
    text = write_farm_text(farm)
    assert "order" in text
    assert read_farm_text(text).placements == runs


@pytest.mark.parametrize(
    "notes",
    [
        'say "well"', "C:\\farm", "two\nlines", "ends in quote\"\nx\"\"\"", "\r\n", "tab\there",
        "\x00\x1b\x7f",
        "\u202eright to left", "مزرعة", "🐟🌿", "'''", "# no comment", "\u2028", "\\u0041", "\n", " ",
        "\ufeff",
    ],
)  # fmt: skip
def test_that_notes_of_any_letters_read_back(notes: str) -> None:
    farm = a_farm()
    farm = dataclasses.replace(farm, settings=dataclasses.replace(farm.settings, notes=notes))
    assert read_farm_text(write_farm_text(farm)).settings.notes == notes


def test_that_signs_which_turn_the_text_round_are_never_written_bare() -> None:
    farm = a_farm()
    farm = dataclasses.replace(farm, settings=dataclasses.replace(farm.settings, notes="a\u202eb"))
    assert "\u202e" not in write_farm_text(farm)


@pytest.mark.parametrize("water_l", [3000.0, 3000.5, 0.1 + 0.2 + 10, 1e8 - 1e-8, 12345678.9])
def test_that_figures_read_back_to_the_last_digit(water_l: float) -> None:
    farm = a_farm()
    farm = dataclasses.replace(farm, loops=(dataclasses.replace(farm.loops[0], water_l=water_l),))
    assert read_farm_text(write_farm_text(farm)).loops[0].water_l == water_l


def test_that_a_farm_with_a_fault_is_not_written() -> None:
    farm = a_farm()
    with pytest.raises(FarmFaultError, match="water_l"):
        write_farm_text(dataclasses.replace(farm, loops=(dataclasses.replace(farm.loops[0], water_l=1.0),)))


def test_that_a_nought_with_a_minus_is_kept_for_the_mark_of_the_plan() -> None:
    farm = a_farm()
    farm = read_farm_text(
        write_farm_text(
            dataclasses.replace(farm, sites=(dataclasses.replace(farm.sites[0], altitude_m=-0.0),))
        )
    )
    assert str(farm.sites[0].altitude_m) == "-0.0"


def test_that_ids_made_from_names_are_left_out_of_the_text() -> None:
    text = write_farm_text(a_farm())
    plain = "\n".join(line for line in text.split("\n") if not line.startswith("id "))
    assert "\nid " not in write_farm_text(read_farm_text(plain))


def test_that_reading_twice_gives_the_same_farm() -> None:
    text = "\n".join(line for line in write_farm_text(a_farm()).split("\n") if not line.startswith("id "))
    assert read_farm_text(text) == read_farm_text(text)
