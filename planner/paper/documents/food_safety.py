"""The food-safety pack: logs an inspector asks for, each on a page of its own.

It claims nothing: no produce is called safe. Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from planner.paper.documents.ask import Ask
from planner.paper.documents.columns import WRITE, says, told, written
from planner.paper.report import Caution, Cell, Column, Paragraph, Report, RowGroup, Section, Table
from planner.paper.words import NO_BREAK, day_words

TITLE: Final = "Food-safety pack"
_KEPT: Final = "coefficient/sheets/records_kept_years"


@dataclass(frozen=True, slots=True, kw_only=True)
class _Log:
    """One log: what it is for, its columns as (heading, unit, millimetres, share), and its cautions."""

    heading: str
    text: str
    columns: tuple[tuple[str, str, float, float], ...]
    cautions: tuple[str, ...] = ()


_LOGS: Final = (
    _Log(
        heading="Training",
        text="Everyone who handles food or plants, before the first day and then once a year.",
        columns=(
            ("Date", "", 24.0, 0.2), ("Who", "", 40.0, 1.0), ("What was taught", "", 50.0, 2.0),
            ("By whom", "", 34.0, 0.8), ("Signature", "", 32.0, 0.6),
        ),
    ),
    _Log(
        heading="Cleaning",
        text="Tools, knives, crates, tables, rafts, floors, cold store: with drinking water, then dry.",
        columns=(
            ("Date", "time", 24.0, 0.2), ("What was cleaned", "", 50.0, 2.0), ("With what", "", 36.0, 1.0),
            ("Rinsed", "yes / no", 16.0, 0.1), ("Checked by", "", 30.0, 0.5), ("Initials", "", 16.0, 0.1),
        ),
    ),
    _Log(
        heading="Water tests for produce",
        text="Wash water, top-up water and system water, as your produce-safety adviser asks. Keep the "
        "laboratory's sheet.",
        columns=(
            ("Date", "time", 24.0, 0.2), ("Which water", "", 34.0, 1.0), ("Where taken", "", 34.0, 1.0),
            ("Laboratory", "", 30.0, 0.8), ("Result", "with unit", 26.0, 0.6),
            ("What was done", "", 34.0, 1.0), ("Initials", "", 16.0, 0.1),
        ),
        cautions=("water-on-leaves",),
    ),
    _Log(
        heading="Illness and injury",
        text="Who was sent home or bandaged, and what became of produce that was touched.",
        columns=(
            ("Date", "time", 24.0, 0.2), ("Who", "", 34.0, 0.8), ("What", "", 40.0, 1.2),
            ("What was done", "also with produce", 44.0, 1.6), ("Back on", "date", 20.0, 0.2),
            ("Initials", "", 16.0, 0.1),
        ),
        cautions=("ill-workers",),
    ),
    _Log(
        heading="Visitors",
        text="Hands washed, told what not to touch, children beside an adult at the tanks.",
        columns=(
            ("Date", "in – out", 30.0, 0.3), ("Who, from where", "", 50.0, 2.0), ("Why", "", 36.0, 1.0),
            ("Hands washed", "yes / no", 18.0, 0.1), ("Signature", "", 32.0, 0.6),
        ),
        cautions=("slips-and-drowning",),
    ),
    _Log(
        heading="Harvest and lots",
        text="One line a picking; the batch code leads back to seed and bed and forward to whoever got it.",
        columns=(
            ("Date", "time", 24.0, 0.2), ("Batch / lot", "", 32.0, 1.0), ("Crop", "", 30.0, 1.0),
            ("Bed", "", 24.0, 0.6), ("Heads or kg", "", 20.0, 0.2), ("Goes to", "", 34.0, 1.0),
            ("Hands, tools clean", "yes / no", 18.0, 0.1), ("Initials", "", 16.0, 0.1),
        ),
        cautions=("water-on-leaves", "solids-as-manure"),
    ),
)  # fmt: skip


def food_safety(ask: Ask) -> Report:
    """Return the pack: a page for each log, then what seed came from where."""
    kept = ask.catalogue.figure(_KEPT)
    first = (
        f"Write with a pen that water does not wash off, on the day, and keep these sheets at least "
        f"{kept.value:.0f}{NO_BREAK}years, certified growers {kept.high:.0f}. They are a record of work: "
        f"they do not "
        "say that anything is safe."
    )
    sections = tuple(section for number, log in enumerate(_LOGS) for section in _log(ask, log, first, number))
    return ask.report(TITLE, (*sections, *_suppliers(ask)), landscape=True)


def _log(ask: Ask, log: _Log, first: str, number: int) -> Iterator[Section]:
    columns = tuple(
        written(f"c{at}", heading, unit=unit, mm=mm, share=share)
        for at, (heading, unit, mm, share) in enumerate(log.columns)
    )
    table = Table(name=log.heading, columns=columns, fill=(WRITE,) * len(columns))
    opening: tuple[Paragraph | Caution, ...] = (Paragraph(text=log.text),)
    if number == 0:
        opening = (Paragraph(text=first), *ask.cautions("produce-records"), *opening)
    yield Section(
        heading=log.heading, parts=(*opening, *ask.cautions(*log.cautions), table), new_page=number > 0
    )


def _suppliers(ask: Ask) -> Iterator[Section]:
    columns: tuple[Column, ...] = (
        told("what", "What", mm=40.0, share=1.5),
        told("lot", "Lot", mm=36.0, share=1.2),
        told("bought", "Bought on", mm=30.0, share=0.4),
        written("who", "Supplier, telephone", mm=60.0, share=2.0),
        written("papers", "Papers kept where", mm=40.0, share=1.0),
    )
    lots = tuple(
        (
            says(ask.catalogue.crops[lot.crop].name, lot.variety),
            says(lot.code),
            says(day_words(lot.bought_on)) if lot.bought_on else WRITE,
            WRITE,
            WRITE,
        )
        for lot in ask.farm.seed_lots
    )
    feeds = {group.feed: ask.catalogue.feeds[group.feed].name for group in ask.farm.fish_groups}
    fed = tuple(_bare(name) for name in feeds.values())
    given = {dose.supplement: ask.catalogue.supplements[dose.supplement].name for dose in ask.farm.doses}
    groups = tuple(
        group
        for group in (
            RowGroup(heading="Seed", rows=lots),
            RowGroup(heading="Feed", rows=fed),
            RowGroup(heading="Given to the water", rows=tuple(_bare(name) for name in given.values())),
        )
        if group.rows
    )
    table = Table(name="Suppliers", columns=columns, groups=groups, fill=(WRITE,) * len(columns))
    yield Section(heading="Suppliers", parts=(table,), new_page=True)


def _bare(name: str) -> tuple[Cell, ...]:
    return (says(name), WRITE, WRITE, WRITE, WRITE)
