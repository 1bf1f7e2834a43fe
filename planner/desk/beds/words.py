"""Every word of the bed map: what stands in a hole, how far it is, since when it is free, what comes next."""

from __future__ import annotations

from datetime import timedelta
from enum import Enum

from planner.desk.beds.stays import Along, Span, Stay, Stays
from planner.desk.places_words import unit_words_of
from planner.desk.say import tr
from planner.desk.words import choice_words, number_words, short_day_words
from planner.farm.crops import Batch
from planner.farm.site import Bed


class MapShow(Enum):
    """What is written into the holes and decides their colour."""

    STANDS = "stands"
    NEXT = "next"
    FREE = "free"


def show_words(show: MapShow) -> str:
    """Return what a way to look at the map is called."""
    return {
        MapShow.STANDS: tr("What stands there"),
        MapShow.NEXT: tr("What goes in next"),
        MapShow.FREE: tr("Days free"),
    }[show]


def layer_words(layer: int | None) -> str:
    """Return what a layer of beds is called; None for all of them."""
    if layer is None:
        return tr("All layers")
    return tr("On the ground") if layer == 0 else tr("Layer {layer}", layer=layer)


def batch_of(stays: Stays, stay: Stay) -> Batch:
    """Return the batch of a stay."""
    return stays.outlook.farm.batches[stay.row]


def places_words(bed: Bed, unit: int, span: Span) -> str:
    """Return the places of a span, such as "North raft, raft 2, places 1–12"."""
    where = unit_words_of(bed, unit)
    if span.count == 1:
        return tr("{where}, place {first}", where=where, first=span.first)
    return tr("{where}, places {first}–{last}", where=where, first=span.first, last=span.last)


def place_words(bed: Bed, unit: int, place: int) -> str:
    """Return one place, such as "North raft, raft 2, place 14"."""
    return tr("{where}, place {first}", where=unit_words_of(bed, unit), first=place)


def crop_words(stays: Stays, stay: Stay) -> str:
    """Return what the plants of a stay are called, with their variety."""
    batch = batch_of(stays, stay)
    name = stays.outlook.crop_name(batch.crop)
    return f"{name}, {batch.variety}" if batch.variety else name


def along_words(along: Along) -> str:
    """Return how far a batch is, such as "bed, day 12 of 30"."""
    return tr("{stage}, day {day} of {days}", stage=choice_words(along.stage), day=along.day, days=along.days)


def until_words(stays: Stays, stay: Stay) -> str:
    """Return the last day a stay holds its places."""
    return short_day_words(stays.date_of(stay.end) - timedelta(days=1))


def free_words(stays: Stays, span: Span, day: int) -> str:
    """Return since when a place is free; empty when something stands there."""
    if span.now is not None:
        return ""
    if span.free_since is None:
        return tr("never planted yet")
    days = day - span.free_since + 1
    since = short_day_words(stays.date_of(span.free_since))
    return (
        tr("since {since}, 1 day", since=since)
        if days == 1
        else tr("since {since}, {days} days", since=since, days=number_words(days, digits=0))
    )


def next_words(stays: Stays, span: Span) -> str:
    """Return what goes in next and when; empty when nothing is planned."""
    if span.next is None:
        return ""
    batch = batch_of(stays, span.next)
    return tr("{code} on {day}", code=batch.code, day=short_day_words(stays.date_of(span.next.start)))


def span_words(stays: Stays, span: Span, day: int) -> str:
    """Return all that is known of a span on a day, in sentences."""
    follows = next_words(stays, span)
    then = tr("Next: {what}.", what=follows) if follows else tr("Nothing is planned after that.")
    if span.now is None:
        return tr("Free {since}. {then}", since=free_words(stays, span, day), then=then)
    return tr(
        "{code}, {crop}: {along}, held until {until}. {then}",
        code=batch_of(stays, span.now).code,
        crop=crop_words(stays, span.now),
        along=along_words(stays.along(span.now, day)),
        until=until_words(stays, span.now),
        then=then,
    )


def map_help() -> str:
    """Return what the keys do on the map, for reading aloud."""
    return tr(
        "Arrow keys go from hole to hole, Page Up and Page Down a week back and on, Alt with left or right "
        "a day. Space takes up the plants of a hole; arrow keys choose where to, Enter puts them there, "
        "Escape leaves them. Plus and minus zoom."
    )
