"""Plain tables as CSV text and as a workbook, where no text can ever run as a formula.

Must not know farms or forecasts.
"""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterable
from datetime import date, datetime, time
from typing import Any, Final

from planner.farm.cells import harmless
from planner.paper.sheets_out import PlainTable, Value

FORMAT: Final = "raftweek.tables/1"
_LINE_END: Final = "\r\n"
_WIDEST: Final = 60
_NARROWEST: Final = 8
_SAMPLE_ROWS: Final = 200
_BYTE_ORDER_MARK: Final = "\ufeff"


def table_csv(table: PlainTable) -> str:
    """Return a table as CSV (RFC 4180); what a spreadsheet would run gets an apostrophe before it."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator=_LINE_END)
    writer.writerow([harmless(name) for name in table.columns])
    writer.writerows([_csv_cell(value) for value in row] for row in table.rows)
    return out.getvalue()


def csv_bytes(table: PlainTable) -> bytes:
    """Return a table as a CSV file, marked as UTF-8 so that spreadsheets read every name."""
    return (_BYTE_ORDER_MARK + table_csv(table)).encode()


def _csv_cell(value: Value) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, date):
        return value.isoformat()
    return harmless(value) if isinstance(value, str) else repr(value)


def json_bytes(tables: Iterable[PlainTable]) -> bytes:
    """Return tables as JSON: a list of rows by the name of each, days as YYYY-MM-DD."""
    data = {
        table.name: [dict(zip(table.columns, map(_json_cell, row), strict=True)) for row in table.rows]
        for table in tables
    }
    return json.dumps({"format": FORMAT, "tables": data}, indent=1, ensure_ascii=False).encode() + b"\n"


def _json_cell(value: Value) -> Any:
    return value.isoformat() if isinstance(value, date) else value


def workbook_bytes(tables: Iterable[PlainTable]) -> bytes:
    """Return tables as one workbook (XLSX), a sheet each; texts are texts, whatever they begin with."""
    import xlsxwriter  # type: ignore[import-untyped]  # it has no types; read in only here

    out = io.BytesIO()
    options = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False}
    with xlsxwriter.Workbook(out, options) as book:
        forms = {
            "heading": book.add_format({"bold": True, "bottom": 1}),
            "day": book.add_format({"num_format": "yyyy-mm-dd"}),
            "guarded": book.add_format({"quote_prefix": True}),
        }
        for table in tables:
            _fill(book.add_worksheet(table.name), table, forms)
    return out.getvalue()


def _fill(sheet: Any, table: PlainTable, forms: dict[str, Any]) -> None:
    for column, name in enumerate(table.columns):
        sheet.write_string(0, column, name, forms["heading"])
        sheet.set_column(column, column, _width(table, column))
    for number, row in enumerate(table.rows, start=1):
        for column, value in enumerate(row):
            _write(sheet, number, column, value, forms)
    sheet.freeze_panes(1, 0)
    if table.rows:
        sheet.autofilter(0, 0, len(table.rows), len(table.columns) - 1)


def _write(sheet: Any, row: int, column: int, value: Value, forms: dict[str, Any]) -> None:
    if value is None or value == "":
        return
    if isinstance(value, bool):
        sheet.write_boolean(row, column, value)
    elif isinstance(value, date):
        sheet.write_datetime(row, column, datetime.combine(value, time()), forms["day"])
    elif isinstance(value, str):
        guarded = harmless(value) != value
        sheet.write_string(row, column, value, forms["guarded"] if guarded else None)
    else:
        sheet.write_number(row, column, value)


def _width(table: PlainTable, column: int) -> int:
    cells = [table.columns[column], *(_csv_cell(row[column]) for row in table.rows[:_SAMPLE_ROWS])]
    return min(max(max(map(len, cells)) + 2, _NARROWEST), _WIDEST)
