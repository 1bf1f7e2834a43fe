"""What the side panel says about several batches that are chosen together: how many, and their sums.

Pure: an outlook and batches go in, words come out. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import timedelta
from typing import Final

from planner.desk.batch_facts import harvest_kg
from planner.desk.outlook import Outlook
from planner.desk.pages import Fact, Page, Section
from planner.desk.say import tr
from planner.desk.words import number_words, short_day_words
from planner.farm.crops import Batch

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
        facts = tuple(Fact(label=batch.code, value=short_day_words(batch.sow_on)) for batch in batches)
        sections.append(Section(title=tr("Sown"), facts=facts))
    return Page(
        title=tr("{many} batches", many=number_words(len(batches), digits=0)),
        subtitle=tr("chosen together · {locked} locked", locked=locked) if locked else tr("chosen together"),
        sections=tuple(sections),
    )


def _sums(outlook: Outlook, batches: Sequence[Batch]) -> Iterator[Fact]:
    table, ruler = outlook.forecast.batches, outlook.forecast.ruler
    picks = [table.pick_days(table.row_of[batch.id]) for batch in batches]
    first, last = ruler.date_of(min(start for start, _ in picks)), ruler.date_of(max(end for _, end in picks))
    sown = min(batch.sow_on for batch in batches), max(batch.sow_on for batch in batches)
    plants = sum(batch.plants for batch in batches)
    seeds = sum(outlook.seeds(batch) for batch in batches)
    kilograms = sum(harvest_kg(outlook, batch) for batch in batches)
    yield Fact(label=tr("Plants in the bed"), value=number_words(plants, digits=0))
    yield Fact(label=tr("Seeds to sow"), value=number_words(seeds, digits=0))
    yield Fact(label=tr("Harvest foreseen"), value=tr("about {kg} kg", kg=number_words(kilograms, digits=1)))
    yield Fact(label=tr("Sown"), value=f"{short_day_words(sown[0])} – {short_day_words(sown[1])}")
    end = last - timedelta(days=1)
    yield Fact(label=tr("Picked"), value=f"{short_day_words(first)} – {short_day_words(end)}")


def _by_crop(outlook: Outlook, batches: Sequence[Batch]) -> Iterator[Fact]:
    crops: dict[str, list[Batch]] = {}
    for batch in batches:
        crops.setdefault(batch.crop, []).append(batch)
    for crop, of_it in sorted(crops.items(), key=_most_first):
        plants = number_words(sum(batch.plants for batch in of_it), digits=0)
        note = tr("1 batch") if len(of_it) == 1 else tr("{many} batches", many=len(of_it))
        yield Fact(label=outlook.crop_name(crop), value=tr("{plants} plants", plants=plants), note=note)


def _most_first(crop: tuple[str, list[Batch]]) -> tuple[int, str]:
    return -len(crop[1]), crop[0]
