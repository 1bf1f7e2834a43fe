"""What the side panel says about a batch, a fish group, a bed or a week: titles, facts, figures, sources.

Pure: an outlook goes in, words come out. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from datetime import date
from typing import Any, Final

from planner.desk.batch_facts import batch_page, notes_section
from planner.desk.behind import Behind
from planner.desk.book import entry_name, figure_words
from planner.desk.many_facts import many_page
from planner.desk.outlook import Outlook
from planner.desk.pages import Entered, Fact, Page, Section
from planner.desk.places_words import row_words_of
from planner.desk.say import tr
from planner.desk.week_facts import warnings_about, week_page
from planner.desk.why.entered import totalled
from planner.desk.words import (
    NONE,
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
from planner.farm.crops import Batch
from planner.farm.farm import DAYS_PER_WEEK, Thing, kind_of, label_of
from planner.farm.fields import NO_ID, FieldKind, FieldSpec, Id, specs_of
from planner.farm.fish import FishGroup
from planner.farm.site import Bed, Tank
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import entered
from planner.forecast.why.values import Explanation, Subject, SubjectKind

_GROUP_WEEKS: Final = 12
_FISH_FIGURES: Final = (
    "optimum_c",
    "harvest_weight_g",
    "daily_death_share",
    "density_limit_kg_per_m3",
    "body_n_g_per_kg",
)
_FEED_FIGURES: Final = ("protein_share", "p_g_per_kg", "k_g_per_kg")


def page_of(behind: Behind, thing: Thing | None, day: date, *, along: Sequence[Batch] = ()) -> Page:
    """Return the page about a thing, or about the week of a day when nothing is chosen.

    `along` are all batches that are chosen; of several, their sums are told.
    """
    outlook = behind.outlook
    known = outlook.forecast.batches.row_of
    if isinstance(thing, Batch) and thing.id in known:
        many = len(along) > 1 and all(batch.id in known for batch in along)
        return many_page(outlook, along) if many else batch_page(behind, thing)
    if isinstance(thing, FishGroup):
        return _group_page(outlook, thing, day)
    if isinstance(thing, Bed):
        return _bed_page(outlook, thing, day)
    if isinstance(thing, Tank):
        return _tank_page(behind, thing, day)
    if thing is not None:
        return _thing_page(outlook, thing)
    return week_page(behind, day)


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
                    Fact(
                        label=tr("On"),
                        value=day_words(group.stocked_on),
                        ask=Entered(about=group.id, field="stocked_on"),
                    ),
                    Fact(
                        label=tr("Fish"),
                        value=number_words(group.count, digits=0),
                        ask=Entered(about=group.id, field="count"),
                    ),
                    Fact(
                        label=tr("Weight of each"),
                        value=with_unit(group.mean_weight_g, "g"),
                        ask=Entered(about=group.id, field="mean_weight_g"),
                    ),
                    Fact(label=tr("Tank"), value=label_of(tank) if tank else NONE),
                    Fact(label=tr("Ration set by"), value=choice_words(group.feeding)),
                ),
            ),
            Section(title=tr("Weeks from here"), facts=tuple(_group_weeks(outlook, group, day))),
            Section(title=tr("What this rests on"), figures=tuple(each for each in figures if each)),
            *notes_section(group.notes),
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
            ask=Subject(kind=SubjectKind.GROUP_FEED, about=group.id, week=week),
            label=week_label(ruler.week_start(week)),
            value=tr("{feed} g feed a day", feed=number_words(feed, digits=0)),
            more=(
                Fact(
                    label=week_label(ruler.week_start(week)),
                    value=tr(
                        "{count} fish of {weight} g",
                        count=number_words(count, digits=0),
                        weight=number_words(weight, digits=0),
                    ),
                    ask=Subject(kind=SubjectKind.GROUP_MASS, about=group.id, day=at),
                ),
            ),
        )


def week_label(monday: date) -> str:
    """Return a short label of a week, such as "W14 · 5 Apr"."""
    return f"W{middle_of_week(monday).isocalendar().week:02d} · {short_day_words(monday).partition(' ')[2]}"


def _bed_page(outlook: Outlook, bed: Bed, day: date) -> Page:
    standing = tuple(_standing(outlook, bed, day))
    held = sum(count for _, count, _ in standing)
    by_batch = tuple((batch.code, float(count)) for batch, count, _ in standing)
    facts = tuple(
        Fact(
            label=batch.code,
            value=outlook.crop_name(batch.crop),
            more=(
                Fact(
                    label=batch.code,
                    value=tr("{count} places", count=count),
                    ask=totalled("places held", runs, "places", about=batch.code),
                ),
            ),
        )
        for batch, count, runs in standing
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
                        ask=_places_asked(bed),
                    ),
                    Fact(
                        label=tr("Growing area"),
                        value=with_unit(bed.area_m2, "m²"),
                        ask=Entered(about=bed.id, field="area_m2"),
                    ),
                    Fact(label=tr("Loop of water"), value=label_of(loop) if loop else NONE),
                ),
            ),
            Section(
                title=tr("Standing there on {day}", day=day_words(day)),
                facts=(
                    Fact(
                        label=tr("Held"),
                        value=tr("{held} of {all} places", held=held, all=bed.places),
                        ask=totalled("places held", by_batch, "places", about=bed.name),
                    ),
                    *facts,
                ),
            ),
            *notes_section(bed.notes),
        ),
    )


def _places_asked(bed: Bed) -> Explanation:
    """Return why a bed has so many places."""
    sizes = (("units", bed.units), ("rows", bed.rows), ("columns", bed.columns))
    return Explanation(
        title="places",
        about=bed.name,
        value=float(bed.places),
        unit="places",
        formula=Formula.PLACES,
        inputs=tuple(entered(name, size, "1", bed.name) for name, size in sizes),
    )


_Runs = tuple[tuple[str, float], ...]
"""Places by where they are: a raft, block or tray with its run of places."""


def _standing(outlook: Outlook, bed: Bed, day: date) -> Iterator[tuple[Batch, int, _Runs]]:
    """Yield the batches that stand in a bed on a day, with how many places each holds, and where."""
    table = outlook.forecast.batches
    at = outlook.forecast.ruler.day_of(day)
    held: dict[Id, dict[str, float]] = {}
    for run in outlook.farm.placements:
        if run.bed == bed.id:
            first, end = table.phase_days(table.row_of[run.batch], run.phase)
            if first <= at < end:
                where = f"{row_words_of(bed, run.unit)}: {run.first}–{run.first + run.count - 1}"
                runs = held.setdefault(run.batch, {})
                runs[where] = runs.get(where, 0.0) + run.count
    for batch in outlook.farm.batches:
        if batch.id in held:
            runs = held[batch.id]
            yield batch, round(sum(runs.values())), tuple(runs.items())


def _thing_page(outlook: Outlook, thing: Thing) -> Page:
    facts = []
    for field, spec in specs_of(type(thing)).items():
        value = getattr(thing, field)
        if spec.kind is FieldKind.ID or field == "notes" or value in (None, "", (), NO_ID):
            continue
        said = _value_words(outlook, value, spec)
        ask = Entered(about=thing.id, field=field) if spec.kind in _ASKED else None
        facts.append(Fact(label=field_words(field), value=said, ask=ask))
    return Page(
        title=label_of(thing),
        subtitle=kind_words(kind_of(thing).word),
        sections=(
            *warnings_about(outlook, thing.id),
            Section(title="", facts=tuple(facts)),
            *notes_section(thing.notes if hasattr(thing, "notes") else ""),
        ),
    )


def _tank_page(behind: Behind, tank: Tank, day: date) -> Page:
    """Return what is entered for a tank, and how densely it is stocked on a day of the plan."""
    page = _thing_page(behind.outlook, tank)
    if not behind.outlook.covers(day):
        return page
    ask = Subject(kind=SubjectKind.DENSITY, about=tank.id, day=behind.outlook.forecast.ruler.day_of(day))
    found = behind.why(ask)
    if found.value is None:
        return page
    density = Fact(label=tr("Fish in the tank"), value=with_unit(found.value, found.unit, digits=1), ask=ask)
    section = Section(title=tr("On {day}", day=day_words(day)), facts=(density,))
    return replace(page, sections=(*page.sections, section))


def _value_words(outlook: Outlook, value: Any, spec: FieldSpec) -> str:
    kind, unit = spec.kind, spec.unit
    if kind is FieldKind.KEY:
        return entry_name(outlook.catalogue, spec.catalogue, value)
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


_ASKED: Final = frozenset({FieldKind.NUMBER, FieldKind.WHOLE, FieldKind.DAY, FieldKind.SERIES})
_PLAIN_WORDS: Final[dict[FieldKind, Callable[[Any], str]]] = {
    FieldKind.DAY: day_words,
    FieldKind.CHOICE: choice_words,
    FieldKind.YES_NO: _yes_no,
}
