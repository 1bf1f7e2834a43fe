"""The bed map as a table: a row for all neighbouring places of the same lot on a day."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from planner.desk.beds.asked import along_asked, free_asked, next_asked, until_asked
from planner.desk.beds.stays import Span, Stays
from planner.desk.beds.words import along_words, batch_of, crop_words, free_words, next_words, until_words
from planner.desk.pages import Ask
from planner.desk.places_words import row_words_of
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.words import NONE
from planner.farm.site import Bed


def map_columns() -> tuple[Column, ...]:
    """Return the columns."""
    return (
        Column(title=tr("Bed")),
        Column(title=tr("Raft, block or tray")),
        Column(title=tr("Places")),
        Column(title=tr("Batch")),
        Column(title=tr("Crop")),
        Column(title=tr("How far")),
        Column(title=tr("Held until")),
        Column(title=tr("Free")),
        Column(title=tr("Next")),
    )


def map_rows(stays: Stays, beds: Sequence[Bed], day: int) -> tuple[Row, ...]:
    """Return the rows of some beds on a day of the ruler."""
    return tuple(_rows(stays, beds, day))


def _rows(stays: Stays, beds: Sequence[Bed], day: int) -> Iterator[Row]:
    for order, bed in enumerate(beds):
        for unit in range(1, bed.units + 1):
            for span in stays.spans(bed, unit, day):
                yield _row(stays, bed, order, unit, span, day)


def _row(stays: Stays, bed: Bed, order: int, unit: int, span: Span, day: int) -> Row:
    places = str(span.first) if span.count == 1 else f"{span.first}–{span.last}"
    now = span.now
    held = (
        (NONE,) * 4
        if now is None
        else (
            batch_of(stays, now).code,
            crop_words(stays, now),
            along_words(stays.along(now, day)),
            until_words(stays, now),
        )
    )
    texts = (
        bed.name,
        row_words_of(bed, unit),
        places,
        *held,
        free_words(stays, span, day) or NONE,
        next_words(stays, span) or NONE,
    )
    where = (order, unit, span.first)
    sort = (
        where,
        (unit, order, span.first),
        (span.count, *where),
        *((text, *where) for text in held[:3]),
        (now.end if now is not None else -1, *where),
        (span.free_since if span.free_since is not None else -1, *where),
        (span.next.start if span.next is not None else 10**9, *where),
    )
    return Row(
        id=f"{bed.id} {unit} {span.first}",
        texts=texts,
        sort=sort,
        payload=now.run.batch if now is not None else bed.id,
        asks=_asks(stays, span, day),
    )


def _asks(stays: Stays, span: Span, day: int) -> tuple[Ask | None, ...]:
    """Return what each column can be asked, in their order."""
    now, then = span.now, span.next
    return (
        *(None,) * 5,
        along_asked(stays, now, day) if now is not None else None,
        until_asked(now) if now is not None else None,
        free_asked(stays, span, day),
        next_asked(then) if then is not None else None,
    )
