"""What can be found: things of the farm, crops of the book, weeks, pages, entries of the menus, words.

Made once for each outlook and then only looked through. Pure: must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import Enum
from itertools import chain
from typing import Final

from planner.desk.menus import MENUS
from planner.desk.outlook import Outlook
from planner.desk.say import tr
from planner.desk.terms import terms
from planner.desk.thing_words import thing_words
from planner.desk.words import day_words, kind_words, middle_of_week, week_span_words, week_words
from planner.farm.farm import DAYS_PER_WEEK, things

MOST_FOUND: Final = 60
_KINDS: Final = (
    "bed",
    "tank",
    "fish group",
    "loop",
    "site",
    "filter",
    "seed lot",
    "meter",
    "solids batch",
    "target",
)


class Target(Enum):
    """What is gone to, in the order that equally good finds are listed."""

    WEEK = "week"
    THING = "thing"
    BATCH = "batch"
    CROP = "crop"
    ENTRY = "entry"
    WORD = "word"


@dataclass(frozen=True, slots=True, kw_only=True)
class Find:
    """One thing that can be found: its name, what it is, and what `key` leads to it.

    `near` orders finds that fit equally well, the least first.
    """

    target: Target
    key: str
    name: str
    note: str
    near: int = 0


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Index:
    """Everything that can be found, with the text it is found by."""

    finds: tuple[Find, ...]
    texts: tuple[str, ...]

    def search(self, wanted: str) -> tuple[Find, ...]:
        """Return the best finds that hold every word typed; none for no words."""
        words = wanted.casefold().split()
        if not words:
            return ()
        ranks = list(Target)
        found = [
            (_fit(find.name.casefold(), words), ranks.index(find.target), find.near, at)
            for at, (find, text) in enumerate(zip(self.finds, self.texts, strict=True))
            if all(word in text for word in words)
        ]
        return tuple(self.finds[at] for *_, at in sorted(found)[:MOST_FOUND])


def _fit(name: str, words: Sequence[str]) -> int:
    """Return how well a name fits: 0 is it, 1 it begins so, 2 one of its words does, 3 it is in it."""
    whole = " ".join(words)
    if name == whole:
        return 0
    if name.startswith(whole):
        return 1
    starts = name.replace("-", " ").split()
    if all(any(start.startswith(word) for start in starts) for word in words):
        return 2
    return 3 if all(word in name for word in words) else 4


def index_of(outlook: Outlook, today: date) -> Index:
    """Return everything that can be found while a farm is open."""
    pairs = tuple(
        chain(
            _weeks(outlook, today),
            _things(outlook),
            _readings(outlook, today),
            _batches(outlook, today),
            _crops(outlook),
            _entries(),
            _glossary(),
        )
    )
    return Index(finds=tuple(find for find, _ in pairs), texts=tuple(text for _, text in pairs))


def _pair(find: Find, *more: str) -> tuple[Find, str]:
    return find, " ".join((find.name, find.note, *more)).casefold()


def _weeks(outlook: Outlook, today: date) -> Iterator[tuple[Find, str]]:
    ruler = outlook.forecast.ruler
    for week in range(ruler.weeks):
        monday = ruler.week_start(week)
        days = [monday + timedelta(days=each) for each in range(DAYS_PER_WEEK)]
        find = Find(
            target=Target.WEEK,
            key=monday.isoformat(),
            name=week_words(middle_of_week(monday)),
            note=week_span_words(monday).partition(" · ")[2],
            near=abs((monday - today).days),
        )
        yield _pair(find, *(day_words(day) for day in days), *(day.isoformat() for day in days))


def _things(outlook: Outlook) -> Iterator[tuple[Find, str]]:
    for word in _KINDS:
        for thing in things(outlook.farm, word):
            name = thing_words(thing, outlook.farm, outlook.catalogue)
            yield _pair(Find(target=Target.THING, key=thing.id, name=name, note=kind_words(word)))


def _readings(outlook: Outlook, today: date) -> Iterator[tuple[Find, str]]:
    """Yield each day that water was read on, once."""
    days = {reading.on: reading.id for reading in outlook.farm.readings}
    for on, reading in days.items():
        yield _pair(
            Find(
                target=Target.THING,
                key=reading,
                name=tr("Water read on {day}", day=day_words(on)),
                note=kind_words("reading"),
                near=abs((on - today).days),
            ),
            on.isoformat(),
        )


def _batches(outlook: Outlook, today: date) -> Iterator[tuple[Find, str]]:
    names = {key: crop.name for key, crop in outlook.catalogue.crops.items()}
    said: dict[date, str] = {}
    for batch in outlook.farm.batches:
        sown = said.get(batch.sow_on)
        if sown is None:
            sown = said[batch.sow_on] = tr("sown {day}", day=day_words(batch.sow_on))
        find = Find(
            target=Target.BATCH,
            key=batch.id,
            name=batch.code,
            note=f"{names.get(batch.crop, batch.crop)}, {sown}",
            near=abs((batch.sow_on - today).days),
        )
        yield _pair(find)


def _crops(outlook: Outlook) -> Iterator[tuple[Find, str]]:
    for key, crop in outlook.catalogue.crops.items():
        find = Find(target=Target.CROP, key=key, name=crop.name, note=tr("crop of the book: sow it"))
        yield _pair(find, crop.botanical)


def _entries() -> Iterator[tuple[Find, str]]:
    for title, entries in MENUS:
        for entry in entries:
            if entry is not None and not entry.submenu:
                name = tr(entry.text).replace("&", "").rstrip("…")
                keys = entry.keys.split()
                where = tr("menu {title}", title=tr(title).replace("&", ""))
                note = f"{where}, {keys[0]}" if keys else where
                yield _pair(Find(target=Target.ENTRY, key=entry.key, name=name, note=note), tr(entry.tip))


def _glossary() -> Iterator[tuple[Find, str]]:
    for term in terms():
        yield _pair(Find(target=Target.WORD, key=term.word, name=term.word, note=term.meaning))
