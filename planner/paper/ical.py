"""A phone's calendar as iCalendar text (RFC 5545), made so that bringing it in again updates, never doubles.

Every event keeps its UID for life. Its SEQUENCE rises when it changes: the calendar written before is
read, what is the same keeps its number, what is gone is told as cancelled. Reads neither clock nor files.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from hashlib import blake2b
from typing import Any, Final

from icalendar import Alarm, Calendar, Event

from planner import __version__
from planner.paper.ical_events import CalendarEvent, Role
from planner.paper.plain_names import one_line

MAKER: Final = "-//Raftweek//Raftweek"
_SEQUENCE_FROM: Final = datetime(2020, 1, 1, tzinfo=UTC)
"""SEQUENCE numbers are minutes from here, so that they rise also when no earlier calendar is at hand."""

_SECONDS_PER_MINUTE: Final = 60
_MARK: Final = "X-RAFTWEEK-MARK"
_ROLE: Final = "X-RAFTWEEK-ROLE"
_FARM: Final = "X-RAFTWEEK-FARM"
_MARK_BYTES: Final = 8
_CANCELLED: Final = "CANCELLED"
MOST_BYTES: Final = 50_000_000


class CalendarError(ValueError):
    """An earlier calendar that cannot be gone on from; the text says why."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Reminder:
    """When a phone rings: so many days before, at a time of day."""

    at: time
    days_before: int = 0

    @property
    def trigger(self) -> timedelta:
        """Time from the midnight an event begins with."""
        return timedelta(days=-self.days_before, hours=self.at.hour, minutes=self.at.minute)


@dataclass(frozen=True, slots=True, kw_only=True)
class CalendarHead:
    """Whose calendar it is, what days it covers, and when it is made (with its time zone)."""

    farm: str
    farm_id: str
    role: Role
    first_on: date
    behind_on: date
    made_at: datetime
    reminder: Reminder | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class _Known:
    """An event as the earlier calendar told it."""

    event: Any
    sequence: int
    mark: str
    changed_at: datetime
    on: date
    cancelled: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Made:
    """The text of a calendar, and how many events it holds, changed and cancelled."""

    text: bytes
    events: int
    new: int
    changed: int
    cancelled: int


def calendar_text(
    events: Sequence[CalendarEvent], head: CalendarHead, *, earlier: bytes | None = None
) -> Made:
    """Return events as iCalendar text, going on from the calendar that was made before.

    Events that were there and fall within the days covered, but are no more, come as cancelled.

    Raises `CalendarError` when `earlier` is no calendar of this farm and role.
    """
    known = {} if earlier is None else _known(earlier, head)
    calendar = _calendar(head)
    tally = {"new": 0, "changed": 0}
    for event in events:
        before = known.pop(str(event.uid), None)
        mark = _mark(event, head.reminder)
        same = before is not None and before.mark == mark and not before.cancelled
        if not same:
            tally["new" if before is None else "changed"] += 1
        calendar.add_component(_event(event, head, before, mark))
    gone = list(_cancelled(known.values(), head))
    for entry in gone:
        calendar.add_component(entry)
    text: bytes = calendar.to_ical()
    return Made(text=text, events=len(events), cancelled=len(gone), **tally)


def _calendar(head: CalendarHead) -> Calendar:
    calendar = Calendar()
    name = f"{one_line(head.farm)} – {head.role.value}"
    calendar.add("prodid", f"{MAKER} {__version__}//EN")
    calendar.add("version", "2.0")
    calendar.add("calscale", "GREGORIAN")
    calendar.add("method", "PUBLISH")
    calendar.add("name", name)
    calendar.add("x-wr-calname", name)
    calendar.add(_FARM, head.farm_id)
    calendar.add(_ROLE, head.role.value)
    return calendar


def _event(event: CalendarEvent, head: CalendarHead, before: _Known | None, mark: str) -> Event:
    same = before is not None and before.mark == mark and not before.cancelled
    entry = Event()
    entry.add("uid", str(event.uid))
    entry.add("dtstamp", head.made_at.astimezone(UTC))
    entry.add("last-modified", before.changed_at if same and before else head.made_at.astimezone(UTC))
    entry.add("sequence", before.sequence if same and before else _next_sequence(before, head.made_at))
    entry.add("status", "CONFIRMED")
    entry.add("dtstart", event.on)
    entry.add("dtend", event.until_on)
    entry.add("transp", "TRANSPARENT")
    entry.add("summary", one_line(event.title))
    entry.add("description", event.text)
    if event.where:
        entry.add("location", event.where)
    entry.add("categories", [event.kind.value])
    entry.add(_MARK, mark)
    if head.reminder is not None:
        entry.add_component(_alarm(event, head.reminder))
    return entry


def _alarm(event: CalendarEvent, reminder: Reminder) -> Alarm:
    alarm = Alarm()
    alarm.add("action", "DISPLAY")
    alarm.add("description", one_line(event.title))
    alarm.add("trigger", reminder.trigger)
    return alarm


def _next_sequence(before: _Known | None, at: datetime) -> int:
    minutes = int((at - _SEQUENCE_FROM).total_seconds()) // _SECONDS_PER_MINUTE
    return max(minutes, 0 if before is None else before.sequence + 1)


def _mark(event: CalendarEvent, reminder: Reminder | None) -> str:
    """Return a mark of all that a phone shows of an event."""
    shown = (event.on, event.until_on, event.title, event.text, event.where, event.kind, reminder)
    return blake2b(repr(shown).encode(), digest_size=_MARK_BYTES).hexdigest()


def _cancelled(gone: Iterable[_Known], head: CalendarHead) -> Iterator[Event]:
    """Yield events that are no more as cancelled, as long as their day is covered."""
    for known in gone:
        if not head.first_on <= known.on < head.behind_on:
            continue
        entry = Event()
        for name in ("uid", "dtstart", "dtend", "summary", "location", "categories", _MARK):
            if name in known.event:
                entry[name] = known.event[name]
        entry.add("dtstamp", head.made_at.astimezone(UTC))
        entry.add("last-modified", known.changed_at if known.cancelled else head.made_at.astimezone(UTC))
        entry.add("sequence", known.sequence if known.cancelled else _next_sequence(known, head.made_at))
        entry.add("status", _CANCELLED)
        yield entry


def _known(text: bytes, head: CalendarHead) -> dict[str, _Known]:
    """Return the events of an earlier calendar by their UID."""
    if len(text) > MOST_BYTES:
        raise CalendarError(f"it is larger than {MOST_BYTES} bytes, which no calendar of this program is.")
    try:
        calendar = Calendar.from_ical(text)
    except (ValueError, KeyError, IndexError) as error:
        raise CalendarError(f"it cannot be read as a calendar ({one_line(str(error))[:80]}).") from None
    if not str(calendar.get("prodid", "")).startswith(MAKER):
        raise CalendarError("it is a calendar, but none that this program made.")
    farm, role = str(calendar.get(_FARM, "")), str(calendar.get(_ROLE, ""))
    if farm != head.farm_id:
        raise CalendarError("it is the calendar of another farm.")
    if role != head.role.value:
        raise CalendarError(f'it is the calendar of another role, "{one_line(role)[:20]}".')
    found = (_read_event(entry) for entry in calendar.walk("VEVENT"))
    return {uid: known for uid, known in found if known is not None}


def _read_event(entry: Any) -> tuple[str, _Known | None]:
    """Return the UID of an event and what is known of it; None for one that somebody spoilt."""
    uid = str(entry.get("uid", ""))
    try:
        on = entry["dtstart"].dt
        changed_at = entry["last-modified"].dt
        sequence = int(entry["sequence"])
    except (KeyError, AttributeError, ValueError):
        return uid, None
    if not isinstance(on, date) or isinstance(on, datetime):
        return uid, None
    known = _Known(
        event=entry,
        sequence=sequence,
        mark=str(entry.get(_MARK, "")),
        changed_at=changed_at,
        on=on,
        cancelled=str(entry.get("status", "")).upper() == _CANCELLED,
    )
    return uid, known
