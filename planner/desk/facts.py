"""What the side panel says about a batch, a fish group, a bed or a week: titles, facts, figures, sources.

Pure: an outlook goes in, words come out. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date, timedelta
from typing import Any, Final

from planner.desk.book import FigureWords, figure_label, figure_words
from planner.desk.outlook import Outlook
from planner.desk.pages import Fact, Page, Section
from planner.desk.places_words import places_by_batch
from planner.desk.say import tr
from planner.desk.week_facts import G_PER_KG, warnings_about, week_page
from planner.desk.words import (
    NONE,
    STAGE_LETTERS,
    choice_words,
    day_words,
    field_words,
    kind_words,
    middle_of_week,
    number_words,
    short_day_words,
    unit_words,
    with_unit,
)
from planner.farm.crops import Batch, Phase
from planner.farm.farm import DAYS_PER_WEEK, Thing, kind_of, label_of
from planner.farm.fields import NO_ID, FieldKind, Id, specs_of
from planner.farm.fish import FishGroup
from planner.farm.site import Bed

_GROUP_WEEKS: Final = 12
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
_FISH_FIGURES: Final = (
    "optimum_c",
    "harvest_weight_g",
    "daily_death_share",
    "density_limit_kg_per_m3",
    "body_n_g_per_kg",
)
_FEED_FIGURES: Final = ("protein_share", "p_g_per_kg", "k_g_per_kg")


def page_of(outlook: Outlook, thing: Thing | None, day: date) -> Page:
    """Return the page about a thing, or about the week of a day when nothing is chosen."""
    if isinstance(thing, Batch) and thing.id in outlook.forecast.batches.row_of:
        return _batch_page(outlook, thing)
    if isinstance(thing, FishGroup):
        return _group_page(outlook, thing, day)
    if isinstance(thing, Bed):
        return _bed_page(outlook, thing, day)
    if thing is not None:
        return _thing_page(outlook, thing)
    return week_page(outlook, day)


def _batch_page(outlook: Outlook, batch: Batch) -> Page:
    table, ruler = outlook.forecast.batches, outlook.forecast.ruler
    row = table.row_of[batch.id]
    spans = table.spans(row, ruler)
    last = spans[-1].end_on - timedelta(days=1)
    dates = tuple(
        Fact(
            label=f"{STAGE_LETTERS[span.stage]}  {choice_words(span.stage)}",
            value=_span_words(span.start_on, span.end_on - timedelta(days=1)),
            note=tr("1 day") if span.days == 1 else tr("{days} days", days=span.days),
        )
        for span in spans
    )
    return Page(
        title=batch.code,
        subtitle=", ".join(part for part in (outlook.crop_name(batch.crop), batch.variety) if part)
        + (tr(" · locked") if batch.locked else ""),
        sections=(
            *warnings_about(outlook, batch.id),
            Section(title=f"{day_words(batch.sow_on)} – {day_words(last)}", facts=dates),
            Section(title=tr("Numbers"), facts=tuple(_batch_numbers(outlook, batch, row))),
            Section(title=tr("Places"), facts=tuple(_batch_places(outlook, batch))),
            Section(title=tr("What this rests on"), figures=tuple(_batch_figures(outlook, batch))),
            *_notes(batch.notes),
        ),
    )


def _span_words(first: date, last: date) -> str:
    if first == last:
        return short_day_words(first)
    return f"{short_day_words(first)} – {short_day_words(last)}"


def _batch_numbers(outlook: Outlook, batch: Batch, row: int) -> Iterator[Fact]:
    profile = outlook.forecast.profiles[int(outlook.forecast.batches.profile[row])]
    yield Fact(label=tr("Plants in the bed"), value=number_words(batch.plants, digits=0))
    yield Fact(
        label=tr("Seeds to sow"),
        value=number_words(outlook.seeds(batch), digits=0),
        note=tr(
            "{plants} ÷ ({germination} germinate × {survival} live), rounded up",
            plants=batch.plants,
            germination=number_words(profile.germination_share),
            survival=number_words(profile.survival_share),
        ),
    )
    standing = batch.plants * profile.bed_survival_share
    kilograms = standing * profile.yield_g_per_plant * profile.crop.marketable_share / G_PER_KG
    yield Fact(
        label=tr("Harvest foreseen"),
        value=tr("about {kg} kg", kg=number_words(kilograms, digits=1)),
        note=tr(
            "{plants} plants × {living} live × {grams} g × {sold} can be sold",
            plants=batch.plants,
            living=number_words(profile.bed_survival_share),
            grams=number_words(profile.yield_g_per_plant),
            sold=number_words(profile.crop.marketable_share),
        ),
    )


def _batch_places(outlook: Outlook, batch: Batch) -> Iterator[Fact]:
    places = places_by_batch(outlook.farm)
    table = outlook.forecast.batches
    for phase in Phase:
        first, end = table.phase_days(table.row_of[batch.id], phase)
        if end > first:
            yield Fact(label=choice_words(phase), value=places.get((batch.id, phase), tr("no places yet")))


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


def _group_page(outlook: Outlook, group: FishGroup, day: date) -> Page:
    species = outlook.catalogue.fish.get(group.species)
    feed = outlook.catalogue.feeds.get(group.feed)
    tank = outlook.found.get(group.tank)
    figures = [
        *(figure_words(outlook.catalogue, f"fish/{group.species}/{name}") for name in _FISH_FIGURES),
        *(figure_words(outlook.catalogue, f"feed/{group.feed}/{name}") for name in _FEED_FIGURES),
    ]
    return Page(
        title=group.name,
        subtitle=", ".join(each.name for each in (species, feed) if each),
        sections=(
            *warnings_about(outlook, group.id),
            Section(
                title=tr("Stocked"),
                facts=(
                    Fact(label=tr("On"), value=day_words(group.stocked_on)),
                    Fact(
                        label=tr("Fish"),
                        value=number_words(group.count, digits=0),
                        note=tr("{grams} g each", grams=number_words(group.mean_weight_g)),
                    ),
                    Fact(label=tr("Tank"), value=label_of(tank) if tank else NONE),
                    Fact(label=tr("Ration set by"), value=choice_words(group.feeding)),
                ),
            ),
            Section(title=tr("Weeks from here"), facts=tuple(_group_weeks(outlook, group, day))),
            Section(title=tr("What this rests on"), figures=tuple(each for each in figures if each)),
            *_notes(group.notes),
        ),
    )


def _group_weeks(outlook: Outlook, group: FishGroup, day: date) -> Iterator[Fact]:
    found = outlook.group(group.id)
    if found is None:
        return
    ruler, forecast = outlook.forecast.ruler, found[1]
    first = max(outlook.week_of(day), outlook.week_of(group.stocked_on))
    for week in range(first, min(first + _GROUP_WEEKS, ruler.weeks)):
        at = week * DAYS_PER_WEEK
        count, weight = float(forecast.count[at]), float(forecast.weight_g[at])
        if count <= 0:
            continue
        feed = float(forecast.feed_g[at : at + DAYS_PER_WEEK].mean())
        yield Fact(
            label=week_label(ruler.week_start(week)),
            value=tr("{feed} g feed a day", feed=number_words(feed, digits=0)),
            note=tr(
                "{count} fish of {weight} g",
                count=number_words(count, digits=0),
                weight=number_words(weight, digits=0),
            ),
        )


def week_label(monday: date) -> str:
    """Return a short label of a week, such as "W14 · 5 Apr"."""
    return f"W{middle_of_week(monday).isocalendar().week:02d} · {short_day_words(monday).partition(' ')[2]}"


def _bed_page(outlook: Outlook, bed: Bed, day: date) -> Page:
    standing = tuple(_standing(outlook, bed, day))
    held = sum(count for _, count in standing)
    facts = tuple(
        Fact(
            label=batch.code,
            value=outlook.crop_name(batch.crop),
            note=tr("{count} places", count=count),
        )
        for batch, count in standing
    )
    loop = outlook.found.get(bed.loop)
    return Page(
        title=bed.name,
        subtitle=choice_words(bed.kind),
        sections=(
            *warnings_about(outlook, bed.id),
            Section(
                title=tr("Size"),
                facts=(
                    Fact(
                        label=tr("Places"),
                        value=number_words(bed.places, digits=0),
                        note=tr(
                            "{units} × {rows} rows of {columns}",
                            units=bed.units,
                            rows=bed.rows,
                            columns=bed.columns,
                        ),
                    ),
                    Fact(label=tr("Growing area"), value=with_unit(bed.area_m2, "m²")),
                    Fact(label=tr("Loop of water"), value=label_of(loop) if loop else NONE),
                ),
            ),
            Section(
                title=tr("Standing there on {day}", day=day_words(day)),
                facts=(
                    Fact(
                        label=tr("Held"),
                        value=tr("{held} of {all} places", held=held, all=bed.places),
                    ),
                    *facts,
                ),
            ),
            *_notes(bed.notes),
        ),
    )


def _standing(outlook: Outlook, bed: Bed, day: date) -> Iterator[tuple[Batch, int]]:
    table = outlook.forecast.batches
    at = outlook.forecast.ruler.day_of(day)
    held: dict[Id, int] = {}
    for run in outlook.farm.placements:
        if run.bed == bed.id:
            first, end = table.phase_days(table.row_of[run.batch], run.phase)
            if first <= at < end:
                held[run.batch] = held.get(run.batch, 0) + run.count
    for batch in outlook.farm.batches:
        if batch.id in held:
            yield batch, held[batch.id]


def _thing_page(outlook: Outlook, thing: Thing) -> Page:
    facts = []
    for field, spec in specs_of(type(thing)).items():
        value = getattr(thing, field)
        if spec.kind is FieldKind.ID or field == "notes" or value in (None, "", (), NO_ID):
            continue
        facts.append(Fact(label=field_words(field), value=_value_words(outlook, value, spec.kind, spec.unit)))
    return Page(
        title=label_of(thing),
        subtitle=kind_words(kind_of(thing).word),
        sections=(
            *warnings_about(outlook, thing.id),
            Section(title="", facts=tuple(facts)),
            *_notes(thing.notes if hasattr(thing, "notes") else ""),
        ),
    )


def _value_words(outlook: Outlook, value: Any, kind: FieldKind, unit: str) -> str:
    if kind is FieldKind.REFERENCE:
        found = outlook.found.get(value)
        return label_of(found) if found else NONE
    if kind in {FieldKind.NUMBER, FieldKind.WHOLE}:
        return with_unit(value, unit)
    if kind is FieldKind.SERIES:
        return " ".join(number_words(each) for each in value) + f" {unit_words(unit)}"
    said = _PLAIN_WORDS.get(kind)
    return said(value) if said else str(value)


def _yes_no(value: bool) -> str:
    return tr("yes") if value else tr("no")


_PLAIN_WORDS: Final[dict[FieldKind, Callable[[Any], str]]] = {
    FieldKind.DAY: day_words,
    FieldKind.CHOICE: choice_words,
    FieldKind.YES_NO: _yes_no,
}


def _notes(text: str) -> tuple[Section, ...]:
    return (Section(title=tr("Notes"), facts=(Fact(label="", value=text),)),) if text.strip() else ()
