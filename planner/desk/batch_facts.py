"""What the side panel says about a batch: dates and why they are late, seeds, places, figures behind it.

Pure: an outlook and what stands behind it go in, words come out. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from typing import Final

from planner.desk.behind import Behind
from planner.desk.book import FigureWords, figure_label, figure_words
from planner.desk.lanes.words import stage_letter
from planner.desk.lot_words import lot_notes
from planner.desk.outlook import Outlook
from planner.desk.pages import Entered, Fact, Page, Section
from planner.desk.places_words import places_of
from planner.desk.say import tr
from planner.desk.week_facts import G_PER_KG, warnings_about
from planner.desk.words import (
    choice_words,
    day_words,
    gram_words,
    number_words,
    short_day_words,
    unit_words,
)
from planner.farm.crops import Batch, Phase
from planner.farm.fields import specs_of
from planner.forecast.delays import Delay, StageDelay
from planner.forecast.seed_lots import lot_shares
from planner.forecast.values import StageSpan
from planner.forecast.why.values import Subject, SubjectKind

_BATCH_FIGURES: Final = (
    "germination_days",
    "nursery_days",
    "spacing_days",
    "bed_days",
    "picking_days",
    "clearing_days",
    "germination_share",
    "nursery_survival_share",
    "bed_survival_share",
    "yield_g_per_plant",
    "bed_density_per_m2",
)


def batch_page(behind: Behind, batch: Batch) -> Page:
    """Return the page about a batch."""
    outlook = behind.outlook
    table, ruler = outlook.forecast.batches, outlook.forecast.ruler
    row = table.row_of[batch.id]
    spans = table.spans(row, ruler)
    last = spans[-1].end_on - timedelta(days=1)
    late = {each.stage: each for each in behind.stage_delays(row)}
    dates = tuple(_stage_fact(batch, span, late.get(span.stage)) for span in spans)
    return Page(
        title=batch.code,
        subtitle=", ".join(part for part in (outlook.crop_name(batch.crop), batch.variety) if part)
        + (tr(" · locked") if batch.locked else ""),
        sections=(
            *warnings_about(outlook, batch.id),
            Section(
                title=f"{day_words(batch.sow_on)} – {day_words(last)}",
                facts=(*dates, _against_book(behind, batch, row)),
            ),
            Section(title=tr("Numbers"), facts=tuple(_batch_numbers(behind, batch, row))),
            Section(title=tr("Places"), facts=tuple(_batch_places(outlook, batch))),
            Section(title=tr("What this rests on"), figures=tuple(_batch_figures(outlook, batch))),
            *notes_section(batch.notes),
        ),
    )


def _stage_fact(batch: Batch, span: StageSpan, late: StageDelay | None) -> Fact:
    days = tr("1 day") if span.days == 1 else tr("{days} days", days=span.days)
    return Fact(
        label=f"{stage_letter(span.stage)}  {choice_words(span.stage)}",
        value=_span_words(span.start_on, span.end_on - timedelta(days=1)),
        note=days if late is None else f"{days} · {stage_delay_words(late)}",
        ask=Subject(kind=SubjectKind.STAGE_DAYS, about=batch.id, stage=span.stage),
    )


def stage_delay_words(late: StageDelay) -> str:
    """Return by how much a stage differs from the book and why, such as "+6 d: little light"."""
    days = tr("{days} d", days=f"{late.days:+d}")
    return days if late.cause is None else f"{days}: {choice_words(late.cause)}"


def _against_book(behind: Behind, batch: Batch, row: int) -> Fact:
    """Return how the first pick stands to the book."""
    ask = Subject(kind=SubjectKind.BATCH_LATE, about=batch.id)
    label = tr("By the book")
    known = behind.climate(row)
    delay = behind.delay(row)
    if not any(known) and delay is None:
        return Fact(label=label, value=tr("book days, no climate entered"), ask=ask)
    missing = _MISSING_CLIMATE.get(known)
    unknown = tr(missing) if missing else ""
    if delay is None:
        return Fact(label=label, value=tr("no later than the book"), note=unknown, ask=ask)
    notes = "\n".join(note for note in (_alone(delay), unknown) if note)
    return Fact(label=label, value=f"+{delay.days} d: {choice_words(delay.cause)}", note=notes, ask=ask)


_MISSING_CLIMATE: Final = {
    (False, True): "no air temperature entered: warmth slows nothing in the bed",
    (True, False): "light not known: it slows nothing",
}


def _alone(delay: Delay) -> str:
    return tr(
        "little light alone {light} d, warmth alone {warmth} d",
        light=f"{delay.by_light:+d}",
        warmth=f"{delay.by_warmth:+d}",
    )


def _span_words(first: date, last: date) -> str:
    if first == last:
        return short_day_words(first)
    return f"{short_day_words(first)} – {short_day_words(last)}"


def _batch_numbers(behind: Behind, batch: Batch, row: int) -> Iterator[Fact]:
    outlook = behind.outlook
    profile = outlook.forecast.profiles[int(outlook.forecast.batches.profile[row])]
    yield Fact(
        label=tr("Plants in the bed"),
        value=number_words(batch.plants, digits=0),
        ask=Entered(about=batch.id, field="plants"),
    )
    yield Fact(
        label=tr("Seeds to sow"),
        value=number_words(outlook.seeds(batch), digits=0),
        note=_seeds_note(behind, batch, row),
        ask=Subject(kind=SubjectKind.SEEDS, about=batch.id),
    )
    yield Fact(
        label=tr("Harvest foreseen"),
        value=tr("about {kg} kg", kg=number_words(harvest_kg(outlook, batch), digits=1)),
        note=tr(
            "{plants} plants × {living} live × {grams} g × {sold} can be sold",
            plants=batch.plants,
            living=number_words(profile.bed_survival_share),
            grams=gram_words(profile.yield_g_per_plant),
            sold=number_words(profile.crop.marketable_share),
        ),
        ask=Subject(kind=SubjectKind.BATCH_HARVEST, about=batch.id),
    )


def harvest_kg(outlook: Outlook, batch: Batch) -> float:
    """Return what of a batch is foreseen to be harvested and sold [kg]."""
    table = outlook.forecast.batches
    profile = outlook.forecast.profiles[int(table.profile[table.row_of[batch.id]])]
    standing = batch.plants * profile.bed_survival_share * float(table.ripe[table.row_of[batch.id]])
    return float(standing * profile.yield_g_per_plant * profile.crop.marketable_share / G_PER_KG)


def _seeds_note(behind: Behind, batch: Batch, row: int) -> str:
    told = [_seeds_reckoned(behind, batch, row)]
    lot = lot_shares(behind.outlook.farm, behind.outlook.catalogue).get(batch.seed_lot)
    if lot is not None and batch.germination_share is None:
        told += lot_notes(lot, batch.sow_on)
    return "\n".join(told)


def _seeds_reckoned(behind: Behind, batch: Batch, row: int) -> str:
    outlook, stand = behind.outlook, behind.stand_share(row)
    profile = outlook.forecast.profiles[int(outlook.forecast.batches.profile[row])]
    values = {
        "plants": batch.plants,
        "germination": number_words(profile.germination_share),
        "survival": number_words(profile.survival_share),
    }
    if stand >= 1:
        return tr("{plants} ÷ ({germination} germinate × {survival} live), rounded up", **values)
    return tr(
        "{plants} ÷ ({germination} germinate × {stand} of them at this warmth × {survival} live), rounded up",
        stand=number_words(stand, digits=2),
        **values,
    )


def _batch_places(outlook: Outlook, batch: Batch) -> Iterator[Fact]:
    places = places_of(outlook.farm, batch.id)
    table = outlook.forecast.batches
    for phase in Phase:
        first, end = table.phase_days(table.row_of[batch.id], phase)
        if end > first:
            yield Fact(label=choice_words(phase), value=places.get(phase, tr("no places yet")))


def _batch_figures(outlook: Outlook, batch: Batch) -> Iterator[FigureWords]:
    for name in _BATCH_FIGURES:
        own = getattr(batch, name, None)
        if own is not None:
            unit = unit_words(specs_of(Batch)[name].unit)
            value = f"{number_words(own)} {unit}".rstrip()
            yield FigureWords(
                label=figure_label(name),
                value=value,
                source=tr("your own value, for this batch"),
                conditions="",
                own=True,
            )
            continue
        found = figure_words(outlook.catalogue, f"crop/{batch.crop}/{name}")
        if found is not None:
            yield found


def notes_section(text: str) -> tuple[Section, ...]:
    """Return what the grower noted, under its heading; empty when nothing."""
    return (Section(title=tr("Notes"), facts=(Fact(label="", value=text),)),) if text.strip() else ()
