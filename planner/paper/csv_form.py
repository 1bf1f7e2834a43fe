"""Writes the tables of a report as CSV, safe to open in a spreadsheet.

Text that a spreadsheet would take for a formula gets an apostrophe before it. Must not know files.
"""

from __future__ import annotations

import csv
import io
from typing import Final

from planner.farm.cells import harmless
from planner.paper.report import Report, Table
from planner.paper.words import NO_BREAK

__all__ = ["csv_text", "harmless"]

_GROUP: Final = "Group"


def csv_text(report: Report, *, table: str | None = None) -> str:
    """Return one table of a report as CSV (RFC 4180), the first when none is named.

    Each row begins with its group; groups without rows say so in the next column.

    Raises:
        ValueError: the report has no such table.
    """
    chosen = _chosen(report, table)
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    grouped = any(group.heading for group in chosen.groups)
    headings = [f"{c.heading} ({c.unit})" if c.unit else c.heading for c in chosen.columns]
    writer.writerow([harmless(text) for text in ([_GROUP] if grouped else []) + headings])
    for group in chosen.groups:
        name = [harmless(" ".join(part for part in (group.heading, group.detail) if part))] if grouped else []
        for row in group.rows:
            writer.writerow(name + [harmless(cell.value or _plain(cell.text)) for cell in row])
        if group.empty and not group.rows:
            padding = [""] * (len(chosen.columns) - 1)
            writer.writerow([*name, harmless(group.empty), *padding])
    return out.getvalue()


def _plain(text: str) -> str:
    return text.replace(NO_BREAK, " ")


def _chosen(report: Report, name: str | None) -> Table:
    tables = [table for table in report.tables if name is None or table.name == name]
    if not tables:
        known = ", ".join(table.name for table in report.tables) or "none"
        raise ValueError(f"table: {name!r} is not in this report, which has {known}")
    return tables[0]
