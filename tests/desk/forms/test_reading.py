"""What is typed becomes a value, or a sentence that says what is wrong with it."""

from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.desk.forms.reading import (
    UnreadError,
    number_text,
    read_day,
    read_number,
    read_series,
    value_text,
)
from planner.farm.crops import Batch
from planner.farm.faults import FaultKind
from planner.farm.fields import specs_of
from planner.farm.site import Loop

TODAY = date(2027, 3, 10)
SPECS = specs_of(Batch)


def day(text):
    return read_day(text, field="sow_on", spec=SPECS["sow_on"], today=TODAY)


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("Tue 12 Jan 2027", date(2027, 1, 12)),
        ("12 Jan 2027", date(2027, 1, 12)),
        ("12 January 2027", date(2027, 1, 12)),
        ("2027-01-12", date(2027, 1, 12)),
        ("  12   Jan  2027 ", date(2027, 1, 12)),
        ("W02 2027", date(2027, 1, 11)),
        ("2027-W02", date(2027, 1, 11)),
        ("w2", date(2027, 1, 11)),
        ("W53 2026", date(2026, 12, 28)),
    ],
)
def test_that_a_date_can_be_typed_in_several_ways(text, meant):
    assert day(text) == meant


@pytest.mark.parametrize("text", ["tomorrow", "31 Feb 2027", "W54 2027", "W53 2027", "12/01/2027", "12 Jan"])
def test_that_what_is_no_date_is_refused_with_its_text_and_an_example(text):
    with pytest.raises(UnreadError) as refused:
        day(text)
    assert text in refused.value.fault.message
    assert "Sow on" in refused.value.fault.message
    assert "Wed 10 Mar 2027" in refused.value.fault.message


@given(st.dates(min_value=date(1990, 1, 1), max_value=date(2199, 12, 31)))
def test_that_every_date_reads_back_as_it_is_written(when):
    assert day(value_text(when)) == when


@given(st.floats(min_value=-1e9, max_value=1e9, allow_nan=False))
def test_that_every_number_reads_back_as_it_is_written(number):
    spec = SPECS["bed_days"]
    assert read_number(number_text(number), field="bed_days", spec=spec) == number


def test_that_an_empty_field_means_not_given_where_that_is_allowed():
    assert read_number("  ", field="bed_days", spec=SPECS["bed_days"]) is None
    with pytest.raises(UnreadError) as refused:
        read_number("", field="plants", spec=SPECS["plants"])
    assert refused.value.fault.kind is FaultKind.MISSING


@pytest.mark.parametrize("text", ["twelve", "1.5", "12 plants", "inf", "1e999"])
def test_that_what_is_no_whole_number_is_refused_with_value_and_limit(text):
    with pytest.raises(UnreadError) as refused:
        read_number(text, field="plants", spec=SPECS["plants"])
    message = refused.value.fault.message
    assert text in message
    assert "1 to 1000000" in message.replace(",", "")


def test_that_twelve_months_can_be_typed_in_a_row():
    spec = specs_of(Loop)["water_c"]
    assert read_series("1 2.5; 3", field="water_c", spec=spec) == (1, 2.5, 3)
    assert read_series("", field="water_c", spec=spec) == ()
    with pytest.raises(UnreadError):
        read_series("1 warm 3", field="water_c", spec=spec)
