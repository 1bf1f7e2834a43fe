"""Logs that hands fill: harvest, fish samples, scouting; each with the caution that belongs to it.

Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from typing import Final

from planner.farm.crops import Phase
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.log import Happening
from planner.forecast.week import DueKind
from planner.paper.documents.ask import Ask
from planner.paper.documents.columns import WRITE, dated, says, told, written
from planner.paper.documents.month_log import MonthLog
from planner.paper.places import PlaceBook
from planner.paper.plain_names import one_line
from planner.paper.report import Cell, Paragraph, Report, RowGroup, Section, Table, Tone
from planner.paper.words import NO_BREAK, day_words, whole_words

HARVEST_TITLE: Final = "Harvest record"
SAMPLING_TITLE: Final = "Fish sampling sheet"
SCOUTING_TITLE: Final = "Scouting sheet"
_SAMPLE_FEWEST: Final = "coefficient/sheets/sample_fewest_fish"
_SAMPLE_EVERY: Final = "coefficient/sheets/sample_every_days"
_ASIDE: Final = "Use a pen that water does not wash off; a wiped board must be copied the same day."


def harvest_record(ask: Ask) -> Report:
    """Return what is due to be picked, then lines to write on."""
    yes_no = "yes / no"
    columns = (
        dated(mm=25.5),
        written("time", "Time", share=0.2),
        told("batch", "Batch / lot", mm=26.0, share=1.5),
        told("crop", "Crop", mm=30.0, share=2.5),
        told("bed", "Bed", mm=24.0, share=2.0),
        told("due", "Due", unit="plants", mm=15.4, share=0.2, right=True),
        written("heads", "Picked", unit="heads or kg", mm=17.0, share=0.5),
        written("waste", "Waste", unit="heads or kg", mm=17.0, share=0.5),
        written("where", "Goes to", mm=20.0, share=1.0),
        written("temp", "Cold store", unit="°C", share=0.2),
        written("clean", "Hands, tools clean", unit=yes_no, share=0.2),
        written("initials", "Initials", share=0.2),
    )
    table = Table(
        name="Harvest",
        columns=columns,
        groups=(*_noted_picks(ask), *_due_picks(ask)),
        fill=(WRITE,) * len(columns),
    )
    return ask.report(
        HARVEST_TITLE,
        (_care(ask, "water-on-leaves", "produce-records", "ill-workers"), Section(parts=(table,))),
        subtitle=ask.span_words,
        header_lines=(f"Write a line for every picking, at the table. {_ASIDE}",),
        landscape=True,
    )


def _due_picks(ask: Ask) -> Iterator[RowGroup]:
    places = PlaceBook(ask.farm)
    batches = {batch.id: batch for batch in ask.farm.batches}
    due = ask.due_by_week()
    for start in ask.week_starts():
        rows = []
        for task in due.get(start, ()):
            if task.kind is DueKind.PICK:
                batch = batches[task.about]
                many = whole_words(round(task.many))
                crop = ask.catalogue.crops[batch.crop].name
                rows.append(
                    (
                        _date_cell(task.on),
                        WRITE,
                        says(batch.code),
                        says(crop, batch.variety),
                        says(*places.where(batch, Phase.BED)),
                        says(many, value=many),
                        *(WRITE,) * 6,
                    )
                )
        name, days = ask.week_head(start)
        yield RowGroup(
            heading=name, detail=days, rows=tuple(rows), empty="" if rows else "nothing is due to be picked"
        )


def _noted_picks(ask: Ask) -> Iterator[RowGroup]:
    """Yield what the log has of these weeks already, so that nobody writes it twice."""
    batches = {batch.id: batch for batch in ask.farm.batches}
    places = PlaceBook(ask.farm)
    rows = []
    for entry in MonthLog(ask).entries():
        if entry.what is Happening.PICKED and entry.batch in batches:
            batch = batches[entry.batch]
            amount = f"{entry.amount or 0:g} {entry.unit.value}"
            rows.append(
                (
                    _date_cell(entry.on),
                    says(entry.at),
                    says(batch.code),
                    says(ask.catalogue.crops[batch.crop].name, batch.variety),
                    says(*places.where(batch, Phase.BED)),
                    says(),
                    says(amount, value=f"{entry.amount or 0:g}"),
                    *(WRITE,) * 4,
                    says(one_line(entry.who)),
                )
            )
    if rows:
        yield RowGroup(heading="Noted in the program already", rows=tuple(rows))


def _date_cell(on: date) -> Cell:
    return says(day_words(on, beside=on).replace(" ", NO_BREAK), value=on.isoformat())


def _care(ask: Ask, *keys: str) -> Section:
    return Section(parts=ask.cautions(*keys), columns=len(keys))


def fish_sampling(ask: Ask) -> Report:
    """Return a sheet to weigh fish by: each group with what the plan says it weighs."""
    columns = (
        dated(mm=25.5),
        told("group", "Fish group", mm=32.0, share=2.0),
        told("plan", "By the plan", unit="g each", mm=17.0, share=0.2, right=True),
        written("count", "Weighed", unit="fish", share=0.4),
        written("total", "All together", unit="g", mm=18.0, share=0.5),
        written("mean", "Mean", unit="g each", share=0.4),
        written("length", "Length", unit="cm", share=0.4),
        written("health", "Health", unit="skin, fins, gills", mm=24.0, share=1.5),
        written("feed", "Feed since last", unit="kg", mm=17.0, share=0.4),
        written("fcr", "Feed ÷ gain", share=0.4),
        written("initials", "Initials", unit="time", share=0.2),
    )
    table = Table(name="Samples", columns=columns, groups=tuple(_samples(ask)), fill=(WRITE,) * len(columns))
    fewest, every = (ask.catalogue.figure(path) for path in (_SAMPLE_FEWEST, _SAMPLE_EVERY))
    rule = (
        f"Weigh at least {fewest.low:.0f}, better {fewest.high:.0f} fish of each group, every "
        f"{every.value:.0f}{NO_BREAK}days, taken from all over the tank, before feeding. Wet hands and net; "
        "put them back at once. Mean = all together ÷ fish weighed. Feed ÷ gain = feed given since the last "
        "sample ÷ (gain of one fish × fish in the group)."
    )
    return ask.report(
        SAMPLING_TITLE,
        (
            Section(parts=(Paragraph(text=rule),)),
            _care(ask, "fish-welfare", "fish-medicine", "species-law", "fish-as-food"),
            Section(parts=(table,)),
        ),
        subtitle=ask.span_words,
        header_lines=(_ASIDE,),
        landscape=True,
    )


def _samples(ask: Ask) -> Iterator[RowGroup]:
    every = round(ask.catalogue.figure(_SAMPLE_EVERY).value)
    last = _last_samples(ask)
    for loop in ask.forecast.loops:
        for group in loop.groups:
            rows = []
            on = ask.first
            while on <= ask.last:
                day = ask.forecast.ruler.day_of(on)
                inside = 0 <= day < ask.forecast.ruler.days
                if inside and group.count[day] > 0:
                    weight = f"{float(group.weight_g[day]):,.0f}"
                    rows.append((_date_cell(on), says(group.name), says(weight, value=weight), *(WRITE,) * 8))
                on += timedelta(days=every)
            if rows:
                yield RowGroup(
                    heading=group.name, detail=last.get(group.group, "not weighed yet"), rows=tuple(rows)
                )


def _last_samples(ask: Ask) -> dict[str, str]:
    events = sorted(
        (
            event
            for event in ask.farm.fish_events
            if event.kind is FishEventKind.SAMPLE and event.on < ask.first
        ),
        key=_event_day,
    )
    return {
        event.group: f"last weighed {day_words(event.on)}: {event.mean_weight_g:,.0f}{NO_BREAK}g each"
        for event in events
    }


def _event_day(event: FishEvent) -> date:
    return event.on


def scouting(ask: Ask) -> Report:
    """Return a line for each bed and week, to note pests and disease on."""
    columns = (
        told("bed", "Bed", mm=34.0, share=2.0),
        written("seen", "Pest or disease seen", mm=32.0, share=2.0),
        written("level", "How bad", unit="0 to 3", share=0.2),
        written("action", "What was done", mm=30.0, share=2.0),
        written("product", "Product", mm=22.0, share=1.0),
        written("safe", "Safe for fish", unit="label says", share=0.2),
        written("earliest", "Earliest harvest", unit="date", mm=18.0, share=0.3),
        written("initials", "Initials", unit="time", share=0.2),
    )
    groups = tuple(
        RowGroup(
            heading=name,
            detail=days,
            rows=tuple((says(bed.name, tone=Tone.STRONG), *(WRITE,) * 7) for bed in ask.farm.beds),
            empty="" if ask.farm.beds else "there are no beds",
        )
        for start in ask.week_starts()
        for name, days in (ask.week_head(start),)
    )
    table = Table(name="Scouting", columns=columns, groups=groups, fill=(WRITE,) * len(columns))
    rule = (
        "Look under leaves, at young tips, at sticky cards and at a root. 0 nothing, 1 a few, 2 on many "
        "plants, "
        "3 harm to the crop. Take off what is sick; try water, hands and helpers before any spray."
    )
    return ask.report(
        SCOUTING_TITLE,
        (
            Section(parts=(Paragraph(text=rule), *ask.cautions("pesticides"))),
            Section(parts=(table,)),
        ),
        subtitle=ask.span_words,
        header_lines=(_ASIDE,),
        landscape=True,
    )
