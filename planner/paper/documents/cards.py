"""Cards beside the work: what to do in a power cut, and what becomes of fish solids.

Never a time that fish survive: nobody can know it. Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta
from typing import Final

from planner.farm.water import SolidsBatch
from planner.paper.documents.ask import Ask
from planner.paper.documents.columns import WRITE, says, told, written
from planner.paper.documents.photos import photo_frames
from planner.paper.pictograms import pictogram
from planner.paper.report import (
    Box,
    Cell,
    Drawing,
    Line,
    Report,
    RowGroup,
    Section,
    Size,
    Table,
    Tone,
)
from planner.paper.sheet_files import sheet_file
from planner.paper.words import NO_BREAK, day_words

EMERGENCY_TITLE: Final = "Power cut"
SOLIDS_TITLE: Final = "Solids and mineraliser card"
_STEP_SIZE: Final = Size(best_pt=16.0, least_pt=14.0)
_MORE_SIZE: Final = Size(best_pt=11.0, least_pt=11.0)
_NUMBER_SIZE: Final = Size(best_pt=22.0, least_pt=20.0)
_PICTURE_MM: Final = 18.0
_PHONES: Final = ("Owner", "Caretaker", "Electrician", "Power company", "Fish adviser")
_PLACES: Final = (
    "Battery air pump",
    "Spare air stones and hose",
    "Fuse box and switch",
    "Water shut-off",
)
_LINE_MM: Final = 10.0
_PHOTO_MM: Final = (50.0, 34.0)
_SOLIDS_CAUTION: Final = "solids-as-manure"
_CHECKS: Final = 8
_DASH: Final = "not returned in the plan"


def emergency_card(ask: Ask) -> Report:
    """Return the card: five steps in front; numbers, places and photos behind."""
    steps = tuple(_step(number, step) for number, step in enumerate(sheet_file("emergency")["step"], start=1))
    columns = (
        told("number", "", mm=9.0, share=0.01, main=_NUMBER_SIZE),
        told("picture", "", mm=_PICTURE_MM, share=0.01),
        told("step", "", mm=60.0, share=3.0, main=_STEP_SIZE, detail=_MORE_SIZE),
    )
    table = Table(name="Steps", columns=columns, groups=(RowGroup(rows=steps),))
    front = Section(parts=(table,), apart=True)
    return ask.report(EMERGENCY_TITLE, (front, *_back(ask)))


def _step(number: int, step: dict[str, str]) -> tuple[Cell, ...]:
    return (
        says(str(number), tone=Tone.MAIN),
        Cell(picture=pictogram(step["picture"])),
        says(step["say"], step["more"], tone=Tone.MAIN),
    )


def _back(ask: Ask) -> Iterator[Section]:
    yield Section(heading="Call", parts=(_lines("Telephones", "Who", "Number", _PHONES),), new_page=True)
    yield Section(heading="Where it is", parts=(_lines("Places", "What", "Where", _PLACES),))
    yield Section(heading="Photos", parts=(_photos(),))
    yield Section(parts=ask.cautions("power-cut", "tripped-device", "electricity-near-water"))


def _lines(name: str, what: str, where: str, rows: tuple[str, ...]) -> Table:
    columns = (
        told("what", what, mm=38.0, share=1.0, main=Size(best_pt=12.0, least_pt=11.0)),
        written("where", where, mm=50.0, share=2.0),
    )
    lines = tuple((says(row, tone=Tone.STRONG), Cell(box=Box.WRITE, least_high_mm=_LINE_MM)) for row in rows)
    return Table(name=name, columns=columns, groups=(RowGroup(rows=lines),))


def _photos() -> Drawing:
    wide, high = _PHOTO_MM
    return photo_frames(wide_mm=wide, high_mm=high, says="two frames for photos: the switch, the battery air")


def solids_card(ask: Ask) -> Report:
    """Return a card for each solids batch of the span, and an empty one when there is none."""
    batches = [b for b in ask.farm.solids_batches if ask.first <= b.siphoned_on <= ask.last]
    sections = tuple(
        section
        for number, batch in enumerate(batches or [None])
        for section in _card(ask, batch, new_page=number > 0)
    )
    return ask.report(SOLIDS_TITLE, sections, header_lines=("NOT ON LEAVES. Treat as manure.",))


def _card(ask: Ask, batch: SolidsBatch | None, *, new_page: bool) -> Iterator[Section]:
    heading = "" if batch is None else batch.code
    facts = Table(
        name=f"Batch {heading}".strip(),
        columns=(
            told("what", "", mm=34.0, share=1.0),
            told("value", "", mm=56.0, share=2.0, main=Size(best_pt=13.0, least_pt=11.0)),
        ),
        groups=(RowGroup(rows=tuple(_facts(ask, batch))),),
    )
    yield Section(heading=heading, parts=(*ask.cautions(_SOLIDS_CAUTION), facts), new_page=new_page)
    columns = (
        written("date", "Date", mm=18.0, share=0.5),
        written("air", "Air on", unit="yes / no", share=0.2),
        written("smell", "Smells", unit="yes / no", share=0.2),
        written("ph", "pH", share=0.2),
        written("ec", "EC", unit="mS/cm", share=0.2),
        written("initials", "Initials", share=0.3),
    )
    checks = Table(name=f"Checks {heading}".strip(), columns=columns, fill=(WRITE,) * len(columns))
    yield Section(heading="Look every week", parts=(checks,))


def _facts(ask: Ask, batch: SolidsBatch | None) -> Iterator[tuple[Cell, ...]]:
    loops = {loop.id: loop.name for loop in ask.farm.loops}
    blank = Cell(box=Box.WRITE)
    known: dict[str, Cell] = {}
    if batch is not None:
        first = batch.siphoned_on - timedelta(days=batch.days)
        known = {
            "Batch": _told(batch.code),
            "Filled on": _told(day_words(batch.siphoned_on)),
            "Solids of": _told(f"{batch.days}{NO_BREAK}days, from {day_words(first)}"),
            "From": _told(loops[batch.loop]),
            "Air blown through": _told("yes" if batch.aerated else "no: do not return"),
            "Goes back on": _told(day_words(batch.returned_on) if batch.returned_on else _DASH),
        }
    for what in (
        "Batch", "Filled on", "Solids of", "From", "Litres", "Air blown through", "Goes back on",
        "Litres returned, to which bed", "Initials",
    ):  # fmt: skip
        yield (says(what, tone=Tone.STRONG), known.get(what, blank))


def _told(text: str) -> Cell:
    return Cell(lines=(Line(text=text, tone=Tone.MAIN),))
