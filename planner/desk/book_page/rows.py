"""Entries of the catalogue and their figures as ready rows. Pure: must know nothing of widgets."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Any, Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Confidence, Figure
from planner.catalogue.own import fields_of
from planner.desk.book import figure_label, source_words, value_words
from planner.desk.book_page.own_values import Shift
from planner.desk.book_page.shift_answers import shift_asks
from planner.desk.conditions import condition_words
from planner.desk.pages import Ask
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.why.entered import counted
from planner.desk.why.figures import figure_answer
from planner.desk.words import day_words
from planner.farm.farm import Farm, OwnEntry, Shelf
from planner.farm.fields import FieldKind, FieldSpec

SHELVES: Final = (
    (Shelf.CROP, "Crops", "crops"),
    (Shelf.FISH, "Fish", "fish"),
    (Shelf.FEED, "Feeds", "feeds"),
    (Shelf.SUPPLEMENT, "Supplements", "supplements"),
)


def entries_of(catalogue: Catalogue, shelf: Shelf) -> dict[str, Any]:
    """Return the entries of a shelf by key."""
    place = next(place for each, _, place in SHELVES if each is shelf)
    return dict(getattr(catalogue, place))


def entry_columns() -> tuple[Column, ...]:
    """Return the columns of the list of entries."""
    return (Column(title=tr("Entry")), Column(title=tr("Own values")))


def entry_rows(farm: Farm, catalogue: Catalogue, shelf: Shelf) -> tuple[Row, ...]:
    """Return one row for each entry of a shelf, by name."""
    own = {each.key: each for each in farm.own_entries if each.shelf is shelf}
    found = entries_of(catalogue, shelf).items()
    return tuple(
        _entry_row(key, entry, own.get(key))
        for key, entry in sorted(found, key=lambda pair: pair[1].name.casefold())
    )


def _entry_row(key: str, entry: Any, mine: OwnEntry | None) -> Row:
    own = len(mine.values) if mine is not None else 0
    said = tr("1 own") if own == 1 else tr("{count} own", count=own) if own else ""
    botanical = getattr(entry, "botanical", "") or getattr(entry, "formula", "")
    spoken = ", ".join(each for each in (entry.name, botanical, said) if each)
    sort = (entry.name.casefold(), own)
    return Row(id=key, texts=(entry.name, said), sort=sort, spoken=spoken, asks=(None, _own_answer(mine)))


def _own_answer(own: OwnEntry | None) -> Ask | None:
    """Return what the count of own values is asked: which they are."""
    if own is None or not own.values:
        return None
    return counted("values of your own", [field_label(field) for field, _ in own.values], about=own.name)


def figure_columns() -> tuple[Column, ...]:
    """Return the columns of the table of figures."""
    return (
        Column(title=tr("Figure")),
        Column(title=tr("In use, with its range")),
        Column(title=tr("Where it comes from, and how sure")),
        Column(title=tr("Holds for")),
    )


def figure_rows(
    catalogue: Catalogue, shelf: Shelf, key: str, theme: Theme, *, book: Catalogue
) -> tuple[Row, ...]:
    """Return one row for each figure of an entry; the payload is the figure and what limits it.

    `book` is the catalogue without anybody's own entries.
    """
    return tuple(_figures(catalogue, shelf, key, theme, book))


def _figures(catalogue: Catalogue, shelf: Shelf, key: str, theme: Theme, book: Catalogue) -> Iterator[Row]:
    entry = entries_of(catalogue, shelf).get(key)
    if entry is None:
        return
    for field, spec in fields_of(entry).items():
        path = f"{shelf.value}/{key}/{path_name(field)}"
        figure = catalogue.figures.get(path)
        if spec.kind is FieldKind.NUMBER and figure is not None:
            row = _figure_row(catalogue, field, figure, spec, theme)
            why = figure_answer(catalogue, book, path, title=row.texts[0], about=entry.name)
            yield replace(row, asks=(None, why, why, why))


def path_name(field: str) -> str:
    """Return how the catalogue names a field: stages of fish stand under their number.

    >>> path_name("stage_2_tgc"), path_name("bed_days")
    ('stage/2/tgc', 'bed_days')
    """
    return field.replace("_", "/", 2) if field.startswith("stage_") else field


def field_label(field: str) -> str:
    """Return what a field is called, a stage of a fish by its number."""
    if not field.startswith("stage_"):
        return figure_label(field)
    _, number, name = field.split("_", 2)
    return tr("Size {number}: {words}", number=number, words=figure_label(name))


def _figure_row(catalogue: Catalogue, field: str, figure: Figure, spec: FieldSpec, theme: Theme) -> Row:
    own = figure.confidence is Confidence.GROWERS_VALUE
    source = source_words(figure, catalogue)
    if own and figure.note:
        source = f"{source}, {figure.note}"
    label = field_label(field)
    conditions = condition_words(figure.conditions)
    texts = (label[:1].upper() + label[1:], value_words(figure), source, conditions)
    return Row(
        id=field,
        texts=texts,
        sort=(texts[0], figure.value, source, conditions),
        spoken=", ".join(text for text in texts if text),
        payload=(figure, spec),
        ink=theme.link if own else None,
    )


def shift_columns() -> tuple[Column, ...]:
    """Return the columns of the table of batches that would move."""
    return (
        Column(title=tr("Batch")),
        Column(title=tr("First harvest now")),
        Column(title=tr("Then")),
        Column(title=tr("Days"), numeric=True),
        Column(title=tr("Harvest over now")),
        Column(title=tr("Then")),
    )


def shift_rows(found: Sequence[Shift], farm: Farm) -> tuple[Row, ...]:
    """Return one row for each batch that would move."""
    sown = {batch.id: batch.sow_on for batch in farm.batches}
    return tuple(replace(_shift_row(each), asks=shift_asks(each, sown[each.batch])) for each in found)


def _shift_row(shift: Shift) -> Row:
    (now, then), (over, over_then) = shift.picked_on, shift.over_on
    days = (then - now).days
    said = f"+{days}" if days > 0 else str(days).replace("-", "−")
    texts = (shift.code, day_words(now), day_words(then), said, day_words(over), day_words(over_then))
    sort = (shift.code, now.toordinal(), then.toordinal(), days, over.toordinal(), over_then.toordinal())
    return Row(id=shift.batch, texts=texts, sort=sort, spoken=", ".join(texts))
