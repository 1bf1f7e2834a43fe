"""Tables for spreadsheets: nothing in them runs, another library reads them, and they come back in equal."""

import csv
import io
import json
import unicodedata
from dataclasses import replace
from datetime import date, datetime

import openpyxl
import pytest

from planner.bootstrap import Means
from planner.farm.cells import unguarded
from planner.farm.fields import specs_of
from planner.farm.ids import id_from
from planner.farm.log import Happening, LogEntry, Unit
from planner.farm.meters import Meter, MeterKind
from planner.farm.water import Quantity, Reading
from planner.paper.sheets_files import csv_bytes, json_bytes, table_csv, workbook_bytes
from planner.paper.sheets_out import TABLES, PlainTable, TableGround, all_tables, table_of
from planner.shipped import shipped_path
from planner.store.csv_in.batches import BatchWish, guessed_fields, read_batches
from planner.store.csv_in.readings import ReadingWish, guessed_roles, read_readings
from planner.store.csv_in.sheet import read_sheet
from planner.store.csv_in.units import unit_table
from tests.paper.helpers import ARABIC, EMOJI, NAME_120

HOSTILE = (
    "=1+1", "+1+cmd|' /C calc'!A0", "-2+3", "@SUM(A1)", "\t=1", "\r=1", " =1", "＝1", "'=x", "<b>&amp;</b>",
    ARABIC, EMOJI, NAME_120, "a" * 300, "../../etc", 'say "x", or;y', "two\nlines", "\u202eflip",
    "http://a.b/c", "007", "1e5",
)  # fmt: skip
RUNS = ("=", "+", "-", "@", "\t", "\r", "\n", "＝")


def seen(text):
    """Return a text as a name may hold it: on one line, without marks that are not seen."""
    return "".join(letter for letter in text if unicodedata.category(letter) not in ("Cc", "Cf"))[:120]


@pytest.fixture(scope="module")
def ground():
    means = Means()
    farm = means.read(shipped_path("sample_data", "school-kitchen.toml")).farm
    farm = replace(
        farm,
        batches=tuple(
            replace(
                batch, variety=seen(HOSTILE[number % len(HOSTILE)]), notes=HOSTILE[-1 - number % len(HOSTILE)]
            )
            for number, batch in enumerate(farm.batches)
        ),
    )
    return TableGround(
        farm=farm,
        forecast=means.forecaster.forecast(farm),
        catalogue=means.forecaster.catalogue_for(farm),
        bands=means.forecaster.bands,
    )


def hostile_table():
    return PlainTable(
        name="hostile", columns=("text", "number"), rows=tuple((text, -1.5) for text in HOSTILE)
    )


def test_that_no_cell_of_a_csv_runs_as_a_formula():
    rows = list(csv.reader(io.StringIO(table_csv(hostile_table()), newline="")))
    for cells, text in zip(rows[1:], HOSTILE, strict=True):
        assert not cells[0].lstrip(" ").startswith(RUNS)
        assert unguarded(cells[0]) == text
        assert cells[1] == "-1.5"


def test_that_no_cell_of_a_workbook_runs_and_every_text_is_whole():
    book = openpyxl.load_workbook(io.BytesIO(workbook_bytes([hostile_table()])))
    for (text_cell, number_cell), text in zip(book["hostile"].iter_rows(min_row=2), HOSTILE, strict=True):
        assert text_cell.data_type == "s"
        assert text_cell.hyperlink is None
        assert text_cell.value == text.replace("\r", "_x000D_") or text_cell.value.replace(
            "\r", ""
        ) == text.replace("\r", "")
        assert number_cell.value == -1.5
    assert book["hostile"]["A2"].quotePrefix


def test_that_every_table_has_cells_for_every_column(ground):
    for table in all_tables(ground):
        assert all(len(row) == len(table.columns) for row in table.rows), table.name
        assert len(set(table.columns)) == len(table.columns)


def test_that_a_workbook_has_a_sheet_for_every_table_with_dates_as_dates(ground):
    book = openpyxl.load_workbook(io.BytesIO(workbook_bytes(all_tables(ground))))
    assert tuple(book.sheetnames) == TABLES
    sheet = book["batches"]
    headings = [cell.value for cell in sheet[1]]
    first = dict(zip(headings, (cell.value for cell in sheet[2]), strict=True))
    assert first["sow_on"] == datetime.combine(ground.farm.batches[0].sow_on, datetime.min.time())
    assert first["plants"] == ground.farm.batches[0].plants
    assert sheet.freeze_panes == "A2"


def test_that_batches_written_out_come_back_in_equal(ground):
    sheet = read_sheet(csv_bytes(table_of("batches", ground)))
    roles = guessed_fields(sheet.headings)
    crops = {key: key for key in ground.catalogue.crops}
    wish = BatchWish(roles=roles, crops=crops, give_code=lambda *_: "none")
    found = read_batches(sheet, wish, replace(ground.farm, batches=()))
    assert found.faults == ()
    for back, batch in zip(found.batches, ground.farm.batches, strict=True):
        # White space at the ends of a cell does not count.
        for field in specs_of(type(batch)):
            if field != "id":
                was, now = getattr(batch, field), getattr(back, field)
                assert stripped(now) == stripped(was), field


def stripped(value):
    return value.strip() if isinstance(value, str) else value


def test_that_readings_written_out_come_back_in_equal(ground):
    farm = ground.farm
    more = tuple(
        Reading(
            id=f"x{number}",
            loop=farm.loops[0].id,
            on=date(2027, 1, 1 + number),
            quantity=quantity,
            value=3.0,
            meter_factor=0.5 if quantity is Quantity.TDS_MG_PER_L else None,
        )
        for number, quantity in enumerate(Quantity)
    )
    tds = replace(more[4], id="tds", on=date(2027, 2, 1), value=600.0, meter_factor=0.5, notes="=1+1")
    farm = replace(farm, readings=(*farm.readings, *more, tds))
    sheet = read_sheet(csv_bytes(table_of("readings", replace(ground, farm=farm))))
    units = unit_table(lambda path: ground.catalogue.figure(path).value)
    loops = {loop.name: loop.id for loop in farm.loops}
    wish = ReadingWish(roles=guessed_roles(sheet.headings), loop=farm.loops[0].id, loops=loops)
    found = read_readings(sheet, wish, units=units)
    assert found.faults == ()
    assert [replace(one, id="") for one in found.readings] == [
        replace(one, id="") for one in dict.fromkeys(farm.readings)
    ]
    assert read_readings(sheet, wish, units=units, known=farm.readings).readings == ()


def test_that_no_bed_holds_more_than_it_has(ground):
    table = table_of("occupancy", ground)
    assert all(0 <= row[4] <= row[3] and row[3] - row[4] == row[5] for row in table.rows)
    assert any(row[4] for row in table.rows)


def test_that_elements_sum_up_as_the_forecast_does(ground):
    table = table_of("elements", ground)
    rows = [dict(zip(table.columns, row, strict=True)) for row in table.rows]
    assert {row["element"] for row in rows} == {"N", "P", "K", "Ca", "Mg", "Fe"}
    demand = sum(row["demand_g"] for row in rows if row["element"] == "N")
    assert demand == pytest.approx(sum(loop.demand_g[0].sum() for loop in ground.forecast.loops), rel=1e-6)


def test_that_an_unknown_table_is_told(ground):
    with pytest.raises(ValueError, match="is none of batches, weeks"):
        table_of("magic", ground)


def test_that_a_farm_without_anything_has_tables_too():
    means = Means()
    from planner.planning.starter import starter_farm

    farm = starter_farm(name="Empty", plan_from=date(2027, 1, 4))
    empty = TableGround(
        farm=farm,
        forecast=means.forecaster.forecast(farm),
        catalogue=means.catalogue,
        bands=means.forecaster.bands,
    )
    assert openpyxl.load_workbook(io.BytesIO(workbook_bytes(all_tables(empty)))).sheetnames == list(TABLES)


def test_that_the_log_and_meters_are_tables_too_also_where_what_they_tell_of_is_gone(ground):
    farm = ground.farm
    meter = Meter(id=id_from("m"), name="Pen", kind=MeterKind.PH)
    reading = replace(farm.readings[0], id=id_from("r"), meter=meter.id)
    entry = LogEntry(
        id=id_from("e"), code="E1", what=Happening.PICKED, on=farm.settings.plan_from,
        batch=id_from("batch", "gone"), amount=3, unit=Unit.HEADS, notes="=1+1",
    )  # fmt: skip
    told = replace(
        ground, farm=replace(farm, meters=(meter,), readings=(*farm.readings, reading), log_entries=(entry,))
    )
    log, readings = table_of("log", told), table_of("readings", told)
    (row,) = (dict(zip(log.columns, row, strict=True)) for row in log.rows)
    assert (row["what"], row["amount"], row["unit"], row["batch"]) == ("picked", 3, "heads", "")
    assert dict(zip(readings.columns, readings.rows[-1], strict=True))["meter"] == "Pen"
    assert "'=1+1" in table_csv(log)


def test_that_json_holds_every_table_with_every_row(ground):
    data = json.loads(json_bytes(all_tables(ground)))
    assert data["format"] == "raftweek.tables/1"
    assert tuple(data["tables"]) == TABLES
    assert data["tables"]["batches"][0]["sow_on"] == ground.farm.batches[0].sow_on.isoformat()
    assert len(data["tables"]["places"]) == len(ground.farm.placements)
