"""The phone's calendar: read by an independent library, brought in again without doubles, by role."""

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta, timezone

import pytest
import vobject

from planner.bootstrap import Means
from planner.farm.farm import by_id
from planner.paper.ical import CalendarError, CalendarHead, Reminder, calendar_text
from planner.paper.ical_events import CalendarEvent, EventKind, Role, calendar_events
from planner.shipped import shipped_path
from tests.paper.helpers import ARABIC, EMOJI, NAME_120

MADE = datetime(2027, 1, 2, 9, 30, tzinfo=timezone(timedelta(hours=8)))
ON = date(2027, 1, 4)
HOSTILE = (
    NAME_120, ARABIC, EMOJI, "a" * 300, "=1", "x\r\nBEGIN:VEVENT\r\nUID:e", "END:VCALENDAR", "a;b,c\\n:d\"e",
    "\u202eflip", "<b>&amp;</b>", "../../etc", "\x00\x1b[31m",
)  # fmt: skip


def event(
    number=0, *, on=ON, title="Sow LTB-27W01-A: 30 seeds", kind=EventKind.SOW, text="Sow it.", where="Bench"
):
    return CalendarEvent(
        uid=f"00000000-0000-4000-8000-{number:012d}", kind=kind, on=on, until_on=on + timedelta(days=1),
        title=title, text=text, where=where,
    )  # fmt: skip


def head(**more):
    known = {
        "farm": "Brookside",
        "farm_id": "f1",
        "role": Role.ALL,
        "first_on": ON,
        "behind_on": ON + timedelta(days=84),
        "made_at": MADE,
        "reminder": Reminder(at=time(7, 0)),
    }
    return CalendarHead(**(known | more))


class Phone:
    """Another program's calendar: keeps one event for each UID, the one with the highest SEQUENCE."""

    def __init__(self):
        self.events = {}

    def bring_in(self, text):
        calendar = vobject.readOne(text.decode())
        assert calendar.method.value == "PUBLISH"
        for entry in calendar.contents.get("vevent", []):
            known = self.events.get(entry.uid.value)
            key = (int(entry.sequence.value), entry.dtstamp.value)
            if known is None or key >= (int(known.sequence.value), known.dtstamp.value):
                self.events[entry.uid.value] = entry
        return calendar

    @property
    def shown(self):
        return {
            uid: (entry.summary.value, entry.dtstart.value)
            for uid, entry in self.events.items()
            if entry.status.value != "CANCELLED"
        }


def later(minutes):
    return head(made_at=MADE + timedelta(minutes=minutes))


# --- the format --------------------------------------------------------------------------------------


def test_that_an_event_is_all_day_in_any_zone_and_frees_the_day():
    entry = Phone().bring_in(calendar_text([event()], head()).text).vevent
    for value, wanted in ((entry.dtstart.value, ON), (entry.dtend.value, ON + timedelta(days=1))):
        assert type(value) is date  # a bare date: no time, no zone, the same day everywhere
        assert value == wanted
    assert entry.transp.value == "TRANSPARENT"
    assert entry.dtstamp.value == MADE.astimezone(UTC)


@pytest.mark.parametrize(
    ("reminder", "trigger"),
    [
        (Reminder(at=time(7, 0)), timedelta(hours=7)),
        (Reminder(at=time(18, 30), days_before=1), timedelta(hours=-5, minutes=-30)),
    ],
)
def test_that_a_reminder_rings_at_the_time_asked_for(reminder, trigger):
    entry = Phone().bring_in(calendar_text([event()], head(reminder=reminder)).text).vevent
    assert entry.valarm.action.value == "DISPLAY"
    assert entry.valarm.trigger.value == trigger
    assert entry.valarm.description.value == entry.summary.value


def test_that_without_a_reminder_nothing_rings():
    assert b"VALARM" not in calendar_text([event()], head(reminder=None)).text


def test_that_lines_are_folded_at_75_bytes_and_end_as_the_standard_says():
    text = calendar_text([event(title=ARABIC * 30, text=EMOJI * 60)], head()).text
    assert text.endswith(b"END:VCALENDAR\r\n")
    assert max(map(len, text.split(b"\r\n"))) <= 75
    assert b"\n" not in text.replace(b"\r\n", b"")


@pytest.mark.parametrize("name", HOSTILE)
def test_that_hostile_names_stay_words(name):
    made = calendar_text([event(title=name, text=name, where="Bed")], head(farm=name))
    calendar = Phone().bring_in(made.text)
    assert len(calendar.contents["vevent"]) == 1
    shown = calendar.vevent.summary.value
    assert "\n" not in shown
    assert "\u202e" not in shown
    assert shown == " ".join(name.replace("\u202e", "").replace("\x00", " ").replace("\x1b", " ").split())


# --- again -------------------------------------------------------------------------------------------


def test_that_bringing_the_same_in_again_changes_nothing():
    phone = Phone()
    events = [event(number) for number in range(5)]
    first = calendar_text(events, head())
    phone.bring_in(first.text)
    before = phone.shown
    again = calendar_text(events, later(600), earlier=first.text)
    phone.bring_in(again.text)
    assert phone.shown == before
    assert (again.new, again.changed, again.cancelled) == (0, 0, 0)
    one, other = (Phone().bring_in(made.text).vevent for made in (first, again))
    assert one.sequence.value == other.sequence.value
    assert one.last_modified.value == other.last_modified.value


def test_that_a_moved_event_moves_and_the_others_keep_their_numbers():
    phone = Phone()
    first = calendar_text([event(0), event(1)], head())
    phone.bring_in(first.text)
    moved = [event(0, on=ON + timedelta(days=7)), event(1)]
    second = calendar_text(moved, head(), earlier=first.text)  # within the same minute
    assert (second.new, second.changed) == (0, 1)
    was = {e.uid.value: int(e.sequence.value) for e in phone.events.values()}
    phone.bring_in(second.text)
    now = {e.uid.value: int(e.sequence.value) for e in phone.events.values()}
    assert len(phone.shown) == 2
    assert phone.shown[moved[0].uid][1] == ON + timedelta(days=7)
    assert now[moved[0].uid] > was[moved[0].uid]
    assert now[moved[1].uid] == was[moved[1].uid]


def test_that_numbers_rise_also_when_the_calendar_made_before_is_lost():
    phone = Phone()
    phone.bring_in(calendar_text([event(0)], head()).text)
    phone.bring_in(calendar_text([event(0, on=ON + timedelta(days=3))], later(1)).text)
    assert [day for _, day in phone.shown.values()] == [ON + timedelta(days=3)]


def test_that_what_is_gone_is_cancelled_once_and_can_come_back():
    phone = Phone()
    first = calendar_text([event(0), event(1)], head())
    second = calendar_text([event(1)], later(5), earlier=first.text)
    assert second.cancelled == 1
    third = calendar_text([event(1)], later(10), earlier=second.text)
    for made in (first, second, third):
        phone.bring_in(made.text)
    assert set(phone.shown) == {event(1).uid}
    sequence = phone.events[event(0).uid].sequence.value
    fourth = calendar_text([event(0), event(1)], later(10), earlier=third.text)
    phone.bring_in(fourth.text)
    assert set(phone.shown) == {event(0).uid, event(1).uid}
    assert int(phone.events[event(0).uid].sequence.value) > int(sequence)


def test_that_days_that_are_not_covered_any_more_are_left_alone():
    first = calendar_text([event(0), event(1, on=ON + timedelta(days=14))], head())
    second = calendar_text(
        [event(1, on=ON + timedelta(days=14))], head(first_on=ON + timedelta(days=7)), earlier=first.text
    )
    assert second.cancelled == 0
    assert event(0).uid.encode() not in second.text


def test_that_a_changed_reminder_is_a_change():
    first = calendar_text([event()], head())
    second = calendar_text([event()], head(reminder=Reminder(at=time(6, 0))), earlier=first.text)
    assert second.changed == 1


@pytest.mark.parametrize(
    ("earlier", "said"),
    [
        (b"", "cannot be read|none that this program made"),
        (b"hello", "cannot be read|none that this program made"),
        (b"\xff\xfe\x00", "cannot be read"),
        (
            b"BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//X//Y//EN\r\nEND:VCALENDAR\r\n",
            "none that this program made",
        ),
        (b"BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\n", "cannot be read"),
    ],
)
def test_that_what_is_no_calendar_of_ours_is_refused(earlier, said):
    with pytest.raises(CalendarError, match=said):
        calendar_text([event()], head(), earlier=earlier)


@pytest.mark.parametrize("other", [{"farm_id": "f2"}, {"role": Role.OWNER}])
def test_that_another_farms_or_roles_calendar_is_refused(other):
    first = calendar_text([event()], head())
    with pytest.raises(CalendarError, match="another"):
        calendar_text([event()], head(**other), earlier=first.text)


def test_that_an_event_somebody_spoilt_is_written_anew():
    first = calendar_text([event()], head()).text.replace(b"SEQUENCE:", b"X-SEQUENCE:")
    made = calendar_text([event()], head(), earlier=first)
    assert (made.events, made.new) == (1, 1)


# --- what goes in ------------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def kitchen():
    means = Means()
    return means, means.read(shipped_path("sample_data", "school-kitchen.toml")).farm


def events_of(means, farm, role=Role.ALL, *, weeks=12):
    forecast = means.forecaster.preview(farm)
    catalogue = means.forecaster.catalogue_for(farm)
    return calendar_events(farm, forecast, catalogue, first_day=0, last_day=weeks * 7, role=role)


def test_that_every_key_is_used_once(kitchen):
    found = events_of(*kitchen, weeks=52)
    assert len({one.uid for one in found}) == len(found) > 500


def test_that_moving_a_batch_keeps_the_keys_of_its_events(kitchen):
    means, farm = kitchen
    batch = farm.batches[len(farm.batches) // 2]
    moved = replace(batch, sow_on=batch.sow_on + timedelta(days=7))
    later_farm = replace(farm, batches=tuple(moved if b.id == batch.id else b for b in farm.batches))
    first, second = (
        {one.uid: one for one in events_of(means, each, Role.GROWER, weeks=52) if batch.code in one.title}
        for each in (farm, later_farm)
    )
    sown = [uid for uid, one in first.items() if one.kind in (EventKind.SOW, EventKind.MOVE)]
    assert len(sown) == 2
    for uid in sown:
        assert second[uid].on > first[uid].on


def test_that_each_role_gets_its_own_work(kitchen):
    kinds = {role: {one.kind for one in events_of(*kitchen, role)} for role in Role}
    assert kinds[Role.GROWER] <= {
        EventKind.SOW, EventKind.SPACE, EventKind.MOVE, EventKind.PICK, EventKind.CLEAR
    }  # fmt: skip
    assert EventKind.FEED in kinds[Role.CARETAKER]
    assert EventKind.TEST in kinds[Role.CARETAKER]
    assert EventKind.SOW not in kinds[Role.CARETAKER]
    assert EventKind.FEED not in kinds[Role.OWNER]
    assert kinds[Role.ALL] >= kinds[Role.GROWER] | kinds[Role.CARETAKER] | kinds[Role.OWNER]


def test_that_a_long_harvest_is_one_event_a_week(kitchen):
    means, farm = kitchen
    chives = next(batch for batch in farm.batches if batch.crop == "chives")
    picks = [
        one
        for one in events_of(means, farm, weeks=52)
        if one.kind is EventKind.PICK and chives.code in one.title
    ]
    assert len(picks) > 3
    assert all((one.until_on - one.on).days <= 7 for one in picks)


def test_that_cautions_stand_in_the_event_they_belong_to(kitchen):
    means, farm = kitchen
    catalogue = means.forecaster.catalogue
    for one in events_of(means, farm, weeks=52):
        if one.kind is EventKind.PICK:
            assert catalogue.cautions["water-on-leaves"].text in one.text
        if one.kind is EventKind.HARVEST_FISH:
            assert catalogue.cautions["fish-as-food"].text in one.text
        if one.kind is EventKind.FEED:
            assert "no more than they eat" in one.text
    assert by_id(farm.batches)


def test_that_siphonings_and_solids_are_in_it_once_with_how_to_handle_them(kitchen):
    means, farm = kitchen
    loops = tuple(replace(loop, solids_settled_siphoned_every_days=14) for loop in farm.loops)
    caution = means.forecaster.catalogue.cautions["solids-as-manure"].text
    found = events_of(means, replace(farm, loops=loops), Role.CARETAKER, weeks=8)
    kinds = [one.kind for one in found if caution in one.text]
    assert kinds.count(EventKind.SIPHON) == 3
    assert kinds.count(EventKind.SOLIDS) == 1
    assert len({one.uid for one in found}) == len(found)


def test_that_a_year_of_a_farm_is_read_by_another_library(kitchen):
    found = events_of(*kitchen, weeks=52)
    made = calendar_text(found, head(behind_on=ON + timedelta(days=400)))
    phone = Phone()
    phone.bring_in(made.text)
    assert len(phone.shown) == len(found)
    assert {title for title, _ in phone.shown.values()} == {one.title for one in found}
