"""The symptom sheet: signs on leaves and in the water, what to note, and what to do first.

Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Final

from planner.paper.documents.ask import Ask
from planner.paper.documents.columns import LOG_SIZE, says, told
from planner.paper.pictograms import pictogram
from planner.paper.report import Cell, Paragraph, Report, RowGroup, Section, Size, Table, Tone
from planner.paper.sheet_files import sheet_file

TITLE: Final = "Signs and first actions"
_SIGN_SIZE: Final = Size(best_pt=13.0, least_pt=12.0)
_PICTURE_MM: Final = 17.0
_RULE: Final = (
    "Many causes look alike. Old leaves show first what a plant can move (nitrogen, potassium, "
    "magnesium), young "
    "leaves what it cannot (iron, calcium). Note before you act, change one thing at a time, and ask an "
    "adviser "
    "before adding anything to water that fish live in."
)


def symptoms(ask: Ask) -> Report:
    """Return the sheet; it says the same for every farm."""
    signs = sheet_file("symptoms")
    return ask.report(
        TITLE,
        (
            Section(parts=(Paragraph(text=_RULE),)),
            Section(heading="On plants", parts=(_table("Signs on plants", signs["leaf"]),)),
            Section(heading="In the water", parts=(_table("Signs in the water", signs["water"]),)),
            Section(parts=ask.cautions("pesticides", "fish-medicine", "caustic-bases", "acids"), columns=2),
            Section(
                heading="What this rests on",
                parts=(Paragraph(text=_basis([*signs["leaf"], *signs["water"]])),),
            ),
        ),
    )


def _table(name: str, rows: Sequence[Mapping[str, str]]) -> Table:
    columns = (
        told("picture", "", mm=_PICTURE_MM, share=0.01),
        told("sign", "Sign", mm=36.0, share=1.2, main=_SIGN_SIZE),
        told("may_be", "May be", mm=32.0, share=1.2),
        told("note", "Note", mm=28.0, share=1.0),
        told("first", "Do first", mm=38.0, share=1.4, main=LOG_SIZE),
    )
    return Table(name=name, columns=columns, groups=(RowGroup(rows=tuple(_row(row) for row in rows)),))


def _row(row: Mapping[str, str]) -> tuple[Cell, ...]:
    return (
        Cell(picture=pictogram(row["picture"])),
        says(row["sign"], tone=Tone.MAIN),
        says(row["may_be"]),
        says(row["note"]),
        says(row["first"], tone=Tone.STRONG),
    )


def _basis(rows: Sequence[Mapping[str, str]]) -> str:
    plain = "common practice"
    others = dict.fromkeys(f"{row['sign']}: {row['basis']}" for row in rows if row["basis"] != plain)
    return f"Common practice of growers, but for: {'; '.join(others)}."
