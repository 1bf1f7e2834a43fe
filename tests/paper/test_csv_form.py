"""The same table as CSV: complete, and harmless in a spreadsheet."""

import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.paper.csv_form import csv_text, harmless
from tests.paper.helpers import bare_farm, calendar_of, sown_farm, strange_farm

STARTS = ("=", "+", "-", "@", "\t", "\r")


def rows_of(report, **which):
    return list(csv.reader(io.StringIO(csv_text(report, **which), newline="")))


def test_that_every_sowing_is_a_row_with_its_week():
    report = calendar_of(sown_farm(16))
    head, *rows = rows_of(report)
    assert head[:4] == ["Group", "Sow on", "Crop (variety)", "Sow (seeds)"]
    sown = [row for row in rows if "nothing to sow" not in row]
    assert len(sown) == 16
    assert {len(row) for row in rows} == {len(head)}
    assert sown[0][0].startswith("W14 Mon 5 Apr")
    assert sown[0][1] == "2027-04-05"
    assert all(int(row[3]) > 0 for row in sown)
    assert not any("\u00a0" in field for row in rows for field in row)


def test_that_weeks_without_sowing_are_rows_too():
    rows = rows_of(calendar_of(bare_farm(), weeks=4))
    assert [row[1] for row in rows[1:]] == ["nothing to sow"] * 4


def test_that_a_formula_in_a_name_is_made_harmless():
    fields = [field for row in rows_of(calendar_of(strange_farm())) for field in row]
    assert any("=HYPERLINK(1)" in field for field in fields)
    assert not any(field.startswith(STARTS) for field in fields)


@given(st.text())
def test_that_no_text_begins_like_a_formula_unless_it_is_a_number(text):
    done = harmless(text)
    assert done.endswith(text)
    if done.lstrip(" ").startswith(STARTS):
        float(done)


def test_that_another_table_can_be_asked_for_by_name():
    head, *rows = rows_of(calendar_of(sown_farm(2)), table="Assumptions")
    assert head[0] == "Crop"
    assert len(rows) == 2
    with pytest.raises(ValueError, match="table: 'Nothing' is not in this report, which has Sowings, Assump"):
        csv_text(calendar_of(sown_farm(2)), table="Nothing")
