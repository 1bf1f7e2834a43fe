"""Tables of other programs: letters, separators, numbers and days, units, and rows that cannot be taken."""

from datetime import date

import pytest

from planner.catalogue.loading import shipped_catalogue
from planner.farm.cells import harmless, unguarded
from planner.farm.fields import Id
from planner.farm.water import Quantity
from planner.store.csv_in.cells import (
    CellError,
    DayOrder,
    Decimal,
    day_of,
    day_order_of,
    decimal_of,
    number_of,
)
from planner.store.csv_in.readings import MappingError, ReadingWish, guessed_roles, read_readings
from planner.store.csv_in.sheet import MOST_CELL, MOST_COLUMNS, SheetError, read_sheet
from planner.store.csv_in.units import unit_table

LOOP = Id("00000000-0000-4000-8000-000000000001")


def units():
    catalogue = shipped_catalogue()
    return unit_table(lambda path: catalogue.figure(path).value)


def read(text, *, roles=None, known=(), **more):
    sheet = read_sheet(text.encode() if isinstance(text, str) else text)
    wish = ReadingWish(
        roles=guessed_roles(sheet.headings) if roles is None else roles,
        loop=LOOP,
        loops={"Loop": LOOP},
        **more,
    )
    return read_readings(sheet, wish, units=units(), known=known)


def values(found):
    return [(one.on, one.quantity, one.value) for one in found.readings]


# --- the file ----------------------------------------------------------------------------------------


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "cp1252"])
@pytest.mark.parametrize("separator", [",", ";", "\t"])
@pytest.mark.parametrize("end", ["\n", "\r\n"])
def test_that_any_common_letters_and_separators_are_read(encoding, separator, end):
    rows = (("Tag", "Größe"), ("1", "süß"), ("2", "=x"))
    text = end.join(separator.join(row) for row in rows) + end
    sheet = read_sheet(text.encode(encoding))
    assert sheet.headings == ("Tag", "Größe")
    assert [row.cells for row in sheet.rows] == [("1", "süß"), ("2", "=x")]
    assert [row.line for row in sheet.rows] == [2, 3]


@pytest.mark.parametrize(
    ("content", "said"),
    [
        (b"", "empty"),
        (b"\n  \n", "empty"),
        (b"PK\x03\x04rest", "workbook"),
        (b"a,b\n\x00,1", "no text"),
        (b"\xff\xfea", "says it is utf-16"),
        (b"a,b\n" + b"x" * (MOST_CELL + 1), "line 2: a cell has 5001 characters"),
        (b"a,b\n" + b'"' + b"x" * 200_000 + b'"', "not written as a table|a cell has"),
        (",".join("a" for _ in range(MOST_COLUMNS + 1)).encode(), "201 columns"),
    ],
)
def test_that_what_is_no_table_ends_in_a_sentence(content, said):
    with pytest.raises(SheetError, match=said):
        read_sheet(content)


def test_that_too_large_a_table_is_refused(monkeypatch):
    monkeypatch.setattr("planner.store.csv_in.sheet.MOST_ROWS", 3)
    with pytest.raises(SheetError, match="more than 3 rows"):
        read_sheet(b"a,b\n" + b"1,2\n" * 4)
    monkeypatch.setattr("planner.store.csv_in.sheet.MOST_BYTES", 3)
    with pytest.raises(SheetError, match="at most 3 are read"):
        read_sheet(b"a,b\n")


def test_that_headings_are_told_apart_and_short_rows_filled_up():
    sheet = read_sheet(b"a,a,\n1\n")
    assert sheet.headings == ("a", "a (2)", "column 3")
    assert sheet.rows[0].cells == ("1", "", "")


@pytest.mark.parametrize(
    "text", ["=1+1", "+cmd|x", "-2+3", "@SUM", "\t=1", "'=1", "''+x", "'tis", "-3", "plain", ""]
)
def test_that_what_was_made_harmless_is_read_back(text):
    assert unguarded(harmless(text)) == text
    assert not harmless(text).startswith(("=", "@", "\t"))


# --- numbers and days --------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("text", "decimal", "value"),
    [
        ("7", None, 7),
        ("7.25", None, 7.25),
        ("7,25", None, 7.25),
        ("1.234,5", Decimal.COMMA, 1234.5),
        ("1,234.5", Decimal.POINT, 1234.5),
        ("1,234", Decimal.POINT, 1234),
        ("1,234", Decimal.COMMA, 1.234),
        ("1 250", None, 1250),
        ("\u22125", None, -5),
    ],
)
def test_that_numbers_are_read_as_they_are_written(text, decimal, value):
    assert number_of(text, decimal) == value


@pytest.mark.parametrize("text", ["1,234", "1.234"])
def test_that_a_number_that_may_be_two_is_asked(text):
    with pytest.raises(CellError, match="thousands or a fraction"):
        number_of(text, None)


@pytest.mark.parametrize(
    "text", ["", "x", "nan", "inf", "1e5", "0x10", "1.2.3", "1,2,3", "--1", "٣", "=1", "9" * 400, "<0.1"]
)
def test_that_what_is_no_number_is_told(text):
    with pytest.raises(CellError):
        number_of(text, Decimal.POINT)


@pytest.mark.parametrize(
    ("text", "order"),
    [
        ("2027-04-05", None), ("2027-04-05T08:30:00Z", None), ("2027/4/5", None), ("5.4.2027", None),
        ("05.04.2027 08:30", None), ("05/04/2027", DayOrder.DAY_FIRST), ("04/05/2027", DayOrder.MONTH_FIRST),
        ("Mon 5 Apr 2027", None), ("5 April 2027", None),
    ],
)  # fmt: skip
def test_that_days_are_read_as_they_are_written(text, order):
    assert day_of(text, order) == date(2027, 4, 5)


@pytest.mark.parametrize(
    "text", ["03/04/2027", "2027-02-30", "yesterday", "", "5.4.27", "13/13/2027", "4-5-6"]
)
def test_that_a_day_in_doubt_or_none_is_told(text):
    with pytest.raises(CellError):
        day_of(text, None)


def test_that_one_clear_cell_clears_the_others_up():
    assert day_order_of(["03/04/2027", "25/04/2027"]) is DayOrder.DAY_FIRST
    assert day_order_of(["03/04/2027", "04/25/2027"]) is DayOrder.MONTH_FIRST
    assert day_order_of(["03/04/2027"]) is None
    assert decimal_of(["1,234", "7,2"]) is Decimal.COMMA
    assert decimal_of(["1,234"]) is None


# --- readings ----------------------------------------------------------------------------------------


def test_that_units_are_turned_into_those_that_are_kept():
    found = read(
        "Date,Temp (°F),EC (µS/cm),Nitrate (mg/L NO3),KH (dKH),TAN (mg/L N)\n2027-04-05,68.0,850,44.3,4,0.5\n"
    )
    assert found.faults == ()
    got = {one.quantity: one.value for one in found.readings}
    assert got[Quantity.WATER_C] == pytest.approx(20)
    assert got[Quantity.EC_MS_PER_CM] == pytest.approx(0.85)
    # 44.3 mg/L of nitrate is 10 mg/L of nitrate nitrogen: the limit for drinking water is told both ways.
    assert got[Quantity.NITRATE_N_MG_PER_L] == pytest.approx(10, abs=0.02)
    assert got[Quantity.ALKALINITY_MG_PER_L] == pytest.approx(4 * 17.85)
    assert got[Quantity.TAN_MG_PER_L] == 0.5


def test_that_a_column_whose_unit_is_not_said_is_not_taken_on_trust():
    with pytest.raises(MappingError, match=r'"Temp" has no unit. Say which one: °C, °F'):
        read("Date,Temp\n2027-04-05,20\n")
    assert values(read("Date,Temp\n2027-04-05,68\n", units={"Temp": "°F"})) == [
        (date(2027, 4, 5), Quantity.WATER_C, pytest.approx(20))
    ]
    with pytest.raises(MappingError, match="must be in one of: °C, °F"):
        read("Date,Temp (K)\n2027-04-05,293\n")


def test_that_ppm_means_nothing_without_the_factor_of_the_meter():
    with pytest.raises(MappingError, match="factor"):
        read("Date,TDS (ppm)\n2027-04-05,600\n")
    found = read("Date,TDS (ppm)\n2027-04-05,600\n", meter_factor=0.5)
    assert [(one.value, one.meter_factor) for one in found.readings] == [(600, 0.5)]


def test_that_every_bad_row_is_listed_with_line_column_and_reason_and_none_is_dropped():
    found = read(
        "Date,pH,Notes\n2027-04-05,6.8,ok\n2027-04-06,19,\nsoon,7,\n,7.1,\n2027-04-09,x,\n2027-04-10,7,a,b\n"
    )
    assert [(fault.line, fault.column) for fault in found.faults] == [
        (3, "pH"), (4, "Date"), (5, "Date"), (6, "pH"), (7, "")
    ]  # fmt: skip
    assert "must lie within 2 to 12" in found.faults[0].sentence()
    assert [one.on for one in found.readings] == [date(2027, 4, 5)]


def test_that_what_is_there_already_comes_in_once():
    text = "Date,pH\n2027-04-05,6.8\n2027-04-05,6.8\n2027-04-06,6.9\n"
    first = read(text)
    assert (len(first.readings), first.known) == (2, 1)
    again = read(text, known=first.readings)
    assert (len(again.readings), again.known) == (0, 3)


def test_that_a_long_table_is_read_too():
    found = read(
        "on,quantity,value,notes\n2027-04-05,ph,6.8,'=1+1\n2027-04-05,ec mS/cm,0.9,\n2027-04-05,magic,1,\n"
    )
    assert [(one.quantity, one.value) for one in found.readings] == [
        (Quantity.PH, 6.8), (Quantity.EC_MS_PER_CM, 0.9)
    ]  # fmt: skip
    assert found.readings[0].notes == "=1+1"
    assert [fault.line for fault in found.faults] == [4]


@pytest.mark.parametrize(
    ("roles", "said"),
    [
        ({}, "no column is the date"),
        ({"Date": "date"}, "no column is a reading"),
        ({"Date": "date", "Nope": "ph"}, "there is no column"),
        ({"Date": "date", "pH": "magic"}, "cannot be"),
        ({"Date": "date", "pH": "date"}, "both"),
    ],
)
def test_that_a_mapping_that_cannot_be_is_told(roles, said):
    with pytest.raises(MappingError, match=said):
        read("Date,pH\n2027-04-05,7\n", roles=roles)


def test_that_a_loop_named_in_the_row_counts():
    found = read("Date,Loop,pH\n2027-04-05,Loop,7\n2027-04-05,Other,7\n")
    assert len(found.readings) == 1
    assert "no loop is called" in found.faults[0].reason
