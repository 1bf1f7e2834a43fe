"""Codes, dates, limits and faults are put into words that cannot be misread."""

from datetime import date

import pytest

from planner.desk.field_words import CHOICE_WORDS, FIELD_LABELS
from planner.desk.forms.plans import FORM_WORDS
from planner.desk.words import (
    choice_words,
    day_words,
    fault_words,
    limit_words,
    number_words,
    refusal_words,
    week_span_words,
    week_words,
)
from planner.farm import crops, fish, site, species, water
from planner.farm.checks import thing_faults
from planner.farm.farm import kind_named
from planner.farm.fields import NO_ID, specs_of
from planner.farm.ids import new_id
from planner.planning.placement import RefusalKind


def test_that_a_date_has_its_weekday_and_the_name_of_its_month():
    assert day_words(date(2027, 1, 12)) == "Tue 12 Jan 2027"


def test_that_weeks_are_those_of_iso_8601():
    """ISO 8601: 1 January 2027 is a Friday and lies in week 53 of 2026."""
    assert week_words(date(2027, 1, 1)) == "W53 2026"
    assert week_span_words(date(2027, 1, 11)) == "W02 · Mon 11 Jan – Sun 17 Jan 2027"


@pytest.mark.parametrize(
    ("value", "said"),
    [(3500.0, "3500"), (0.05, "0.05"), (1_234_567.0, "1234570"), (28.0, "28"), (1e-4, "0.0001")],
)
def test_that_numbers_are_written_out_to_six_figures(value, said):
    assert number_words(value).replace(",", "") == said


def test_that_every_field_of_every_form_has_a_label():
    fields = {field for word in FORM_WORDS for field in specs_of(kind_named(word).owner)} - {"id"}
    assert fields - set(FIELD_LABELS) == set()


@pytest.mark.parametrize(
    "owner",
    [
        site.WeekStart,
        site.Units,
        site.FilterKind,
        species.BedKind,
        crops.Stage,
        crops.Phase,
        crops.TargetUnit,
        fish.Feeding,
        fish.FishEventKind,
        water.Quantity,
    ],
)
def test_that_every_choice_has_words_of_its_own(owner):
    assert all((owner.__name__, member.name) in CHOICE_WORDS for member in owner)
    assert len({choice_words(member) for member in owner}) == len(owner)


def test_that_a_fault_names_field_value_and_limit():
    batch = crops.Batch(id=new_id(), code="A", crop="basil", sow_on=date(2027, 1, 1), plants=0, bed=NO_ID)
    (fault,) = thing_faults(batch)
    said = fault_words(fault).replace(",", "")
    assert said == "Plants in the bed is 0; it must lie within 1 to 1000000 plants."


def test_that_limits_have_their_unit():
    assert limit_words(specs_of(crops.Batch)["bed_days"]) == "1 to 400 d"
    assert limit_words(specs_of(crops.Batch)["code"]) == ""


@pytest.mark.parametrize("kind", RefusalKind)
def test_that_every_refusal_is_put_into_words_of_its_own(kind):
    values = {
        "batch": "LET-1",
        "bed": "Raft",
        "unit": 2,
        "needed": 12,
        "free": 3,
        "from_on": date(2027, 1, 12),
        "until_on": date(2027, 2, 12),
        "blocking": ("BAS-1", "BAS-2"),
    }
    said = refusal_words(kind.value, values)
    assert "cannot be done here" not in said
    assert "LET-1" in said or "Raft" in said


def test_that_a_refusal_for_want_of_room_says_how_much_and_who_stands_there():
    said = refusal_words(
        "no free places",
        {
            "batch": "L",
            "bed": "Raft",
            "needed": 12,
            "free": 3,
            "from_on": date(2027, 1, 12),
            "blocking": ("B",),
        },
    )
    assert "12 places needed, 3 free" in said
    assert "Tue 12 Jan 2027" in said
    assert "B." in said


def test_that_a_long_list_of_batches_is_cut():
    said = refusal_words("no free places", {"blocking": tuple(f"B{number}" for number in range(30))})
    assert "B0, B1, B2, B3 and 26 more" in said
    assert "B4" not in said


def test_that_a_week_from_sunday_has_the_number_of_the_iso_week_it_lies_in():
    assert week_span_words(date(2027, 1, 10)) == "W02 · Sun 10 Jan – Sat 16 Jan 2027"
