"""What the side panel says about several batches that are chosen together: how many, and their sums.

Pure: an outlook and batches go in, words come out. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from typing import Final

from planner.desk.batch_facts import harvest_kg
from planner.desk.outlook import Outlook
from planner.desk.pages import Entered, Fact, Page, Section, Shifted, Summed
from planner.desk.say import tr
from planner.desk.words import number_words, short_day_words
from planner.farm.crops import Batch, Stage
from planner.forecast.why.values import Subject, SubjectKind

_NAMED: Final = 12
"""So many batches are listed by their codes; of more only their sums are told."""


def many_page(outlook: Outlook, batches: Sequence[Batch]) -> Page:
    """Return the page about several batches, in order of sowing."""
    locked = sum(batch.locked for batch in batches)
    sections = [
        Section(title=tr("Together"), facts=tuple(_sums(outlook, batches))),
        Section(title=tr("Crops"), facts=tuple(_by_crop(outlook, batches))),
    ]
    if len(batches) <= _NAMED:
        facts = tuple(
            Fact(
                label=batch.code,
                value=short_day_words(batch.sow_on),
                ask=Entered(about=batch.id, field="sow_on"),
            )
            for batch in batches
        )
        sections.append(Section(title=tr("Sown"), facts=facts))
    return Page(
        title=tr("{many} batches", many=number_words(len(batches), digits=0)),
        subtitle=tr("chosen together · {locked} locked", locked=locked) if locked else tr("chosen together"),
        sections=tuple(sections),
    )


def _sums(outlook: Outlook, batches: Sequence[Batch]) -> Iterator[Fact]:
    plants = sum(batch.plants for batch in batches)
    seeds = sum(outlook.seeds(batch) for batch in batches)
    kilograms = sum(harvest_kg(outlook, batch) for batch in batches)
    yield Fact(
        label=tr("Plants in the bed"), value=number_words(plants, digits=0), ask=_plants_asked(batches)
    )
    yield Fact(
        label=tr("Seeds to sow"),
        value=number_words(seeds, digits=0),
        ask=Summed(
            title="seeds",
            unit="seeds",
            parts=tuple(
                (Subject(kind=SubjectKind.SEEDS, about=batch.id), float(outlook.seeds(batch)))
                for batch in batches
            ),
        ),
    )
    yield Fact(
        label=tr("Harvest foreseen"),
        value=tr("about {kg} kg", kg=number_words(kilograms, digits=1)),
        ask=Summed(
            title="harvest of a batch",
            unit="kg",
            parts=tuple(
                (Subject(kind=SubjectKind.BATCH_HARVEST, about=batch.id), harvest_kg(outlook, batch))
                for batch in batches
            ),
        ),
    )
    yield from _spans(outlook, batches)


def _spans(outlook: Outlook, batches: Sequence[Batch]) -> Iterator[Fact]:
    """Yield from when to when batches are sown and picked; what is asked is the last day, and how far off."""
    table, ruler = outlook.forecast.batches, outlook.forecast.ruler
    picks = {batch: table.pick_days(table.row_of[batch.id]) for batch in batches}
    first = ruler.date_of(min(start for start, _ in picks.values()))
    latest, (_, end) = max(picks.items(), key=_end_of)
    sown_last = max(batches, key=_sowing)
    sown = Entered(about=sown_last.id, field="sow_on")
    yield _span(tr("Sown"), min(batch.sow_on for batch in batches), sown_last.sow_on, sown)
    picked = Subject(kind=SubjectKind.STAGE_LAST, about=latest.id, stage=Stage.PICKING)
    yield _span(tr("Picked"), first, ruler.date_of(end) - timedelta(days=1), picked)


def _span(label: str, first: date, last: date, ask: Subject | Entered) -> Fact:
    return Fact(
        label=label,
        value=f"{short_day_words(first)} – {short_day_words(last)}",
        ask=Shifted(title="days from the first to the last", ask=ask, old_on=first, new_on=last),
    )


def _end_of(pick: tuple[Batch, tuple[int, int]]) -> int:
    return pick[1][1]


def _sowing(batch: Batch) -> date:
    return batch.sow_on


def _plants_asked(batches: Sequence[Batch], about: str = "") -> Summed:
    return Summed(
        title="plants in the bed",
        unit="plants",
        parts=tuple((Entered(about=batch.id, field="plants"), float(batch.plants)) for batch in batches),
        about=about,
    )


def _by_crop(outlook: Outlook, batches: Sequence[Batch]) -> Iterator[Fact]:
    crops: dict[str, list[Batch]] = {}
    for batch in batches:
        crops.setdefault(batch.crop, []).append(batch)
    for crop, of_it in sorted(crops.items(), key=_most_first):
        plants = number_words(sum(batch.plants for batch in of_it), digits=0)
        note = tr("1 batch") if len(of_it) == 1 else tr("{many} batches", many=len(of_it))
        name = outlook.crop_name(crop)
        yield Fact(
            label=name, value=tr("{plants} plants", plants=plants), note=note, ask=_plants_asked(of_it, name)
        )


def _most_first(crop: tuple[str, list[Batch]]) -> tuple[int, str]:
    return -len(crop[1]), crop[0]
