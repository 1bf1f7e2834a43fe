"""No place is ever held twice on one day, even by what is written past the program."""

import itertools
import sqlite3
from contextlib import closing

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from planner.store.errors import HELD_PLACE
from planner.store.store import FarmStore
from tests.store.sample import FIRST, FIRST_PLACES, RAFTS, SECOND, SECOND_PLACES, holds_of, sample_farm

NEW = "00000000-0000-4000-8000-000000000000"
COLUMNS = "id, position, batch, phase, bed, unit, first, count, held_from, held_until"
INTO = f"INTO placement ({COLUMNS}) VALUES (?, 0, ?, 'bed', ?, ?, ?, ?, ?, ?)"
FREE = ("2026-01-01", "2026-02-01")
HELD = ("2026-04-01", "2026-04-02")


@pytest.fixture
def raw(tmp_path):
    path = tmp_path / "guarded.raftweek"
    farm = sample_farm()
    FarmStore.create(path, farm, holds_of(farm)).close()
    with closing(sqlite3.connect(path, isolation_level=None)) as connection:
        connection.execute("PRAGMA foreign_keys = ON")
        yield connection


def row(*, unit=1, first=1, count=1, days=HELD, key=NEW):
    return (key, SECOND.id, RAFTS.id, unit, first, count, *days)


@pytest.mark.parametrize("verb", ["INSERT", "INSERT OR REPLACE", "INSERT OR IGNORE", "REPLACE"])
def test_that_a_held_place_cannot_be_inserted(raw, verb):
    before = raw.execute("SELECT * FROM placement").fetchall()
    with pytest.raises(sqlite3.IntegrityError, match=HELD_PLACE):
        raw.execute(f"{verb} {INTO}", row())
    assert raw.execute("SELECT * FROM placement").fetchall() == before


@pytest.mark.parametrize(
    ("held", "first", "count"), [(True, 24, 1), (True, 13, 12), (True, 1, 24), (True, 12, 2), (False, 25, 5)]
)
def test_that_only_shared_places_clash(raw, held, first, count):
    if held:
        with pytest.raises(sqlite3.IntegrityError, match=HELD_PLACE):
            raw.execute(f"INSERT {INTO}", row(first=first, count=count))
    else:
        raw.execute(f"INSERT {INTO}", row(first=first, count=count))


def test_that_only_shared_days_clash(raw):
    start, end = raw.execute(
        "SELECT held_from, held_until FROM placement WHERE id = ?", (SECOND_PLACES.id,)
    ).fetchone()
    raw.execute(f"INSERT {INTO}", row(first=13, days=("2026-01-01", start)))
    raw.execute(f"INSERT {INTO}", row(first=13, days=(end, "2026-06-01"), key=NEW.replace("8", "9")))
    with pytest.raises(sqlite3.IntegrityError, match=HELD_PLACE):
        raw.execute(f"INSERT {INTO}", row(first=14, days=("2026-01-01", "2030-01-01"), key="x"))


@pytest.mark.parametrize("verb", ["UPDATE", "UPDATE OR REPLACE", "UPDATE OR IGNORE", "UPDATE OR FAIL"])
@pytest.mark.parametrize(
    "change",
    [
        "first = 12",
        "first = 1",
        "count = 24, first = 1",
        "id = 'other', first = 2",
        "held_until = '2029-01-01'",
    ],
)
def test_that_a_held_place_cannot_be_moved_onto(raw, verb, change):
    raw.execute(f"INSERT {INTO}", row(first=13, days=("2027-01-01", "2027-02-01")))
    with pytest.raises(sqlite3.IntegrityError, match=HELD_PLACE):
        raw.execute(f"{verb} placement SET {change} WHERE id = ?", (SECOND_PLACES.id,))


def test_that_a_run_without_days_holds_nothing_but_is_checked_when_it_gets_them(raw):
    raw.execute(f"INSERT {INTO}", row(days=(None, None)))
    with pytest.raises(sqlite3.IntegrityError, match=HELD_PLACE):
        raw.execute("UPDATE placement SET held_from = ?, held_until = ? WHERE id = ?", (*HELD, NEW))


@pytest.mark.parametrize(
    "days", [(HELD[0], None), (None, HELD[1]), HELD[::-1], (HELD[0], HELD[0]), ("2026-4-1", "2026-4-2")]
)
def test_that_days_come_in_order_and_both_or_neither(raw, days):
    with pytest.raises(sqlite3.IntegrityError, match="ck_placement_held"):
        raw.execute(f"INSERT {INTO}", row(unit=3, days=days))


def test_that_a_run_may_move_within_its_own_places(raw):
    raw.execute("UPDATE placement SET count = 6 WHERE id = ?", (FIRST_PLACES.id,))
    raw.execute("UPDATE placement SET first = 3, id = ? WHERE id = ?", (NEW, FIRST_PLACES.id))
    assert raw.execute("SELECT first FROM placement WHERE id = ?", (NEW,)).fetchone() == (3,)


def test_that_a_batch_may_come_back_to_a_place_after_it_left(raw):
    raw.execute(f"INSERT {INTO}", (NEW, FIRST.id, RAFTS.id, 1, 1, 12, "2026-01-01", "2026-03-01"))


@settings(suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(
    st.lists(
        st.tuples(
            st.integers(1, 2), st.integers(1, 6), st.integers(1, 3), st.integers(1, 20), st.integers(1, 8)
        ),
        max_size=25,
    )
)
def test_that_whatever_is_written_no_two_runs_share_a_place_on_a_day(raw, runs):
    raw.execute("BEGIN")
    for number, (unit, first, count, day, length) in enumerate(runs):
        days = (f"2030-01-{day:02d}", f"2030-01-{day + length:02d}")
        fits = not any(
            u == unit and first < f + c and f < first + count and days[0] < until and start < days[1]
            for u, f, c, start, until in raw.execute(
                "SELECT unit, first, count, held_from, held_until FROM placement WHERE held_from > '2029'"
            )
        )
        written = row(unit=unit, first=first, count=count, days=days, key=f"n{number}")
        if fits:
            raw.execute(f"INSERT {INTO}", written)
        else:
            with pytest.raises(sqlite3.IntegrityError, match=HELD_PLACE):
                raw.execute(f"INSERT {INTO}", written)
    rows = raw.execute(
        "SELECT bed, unit, first, count, held_from, held_until FROM placement WHERE held_from IS NOT NULL"
    ).fetchall()
    raw.execute("ROLLBACK")
    for (b1, u1, f1, c1, s1, e1), (b2, u2, f2, c2, s2, e2) in itertools.combinations(rows, 2):
        assert not ((b1, u1) == (b2, u2) and f1 < f2 + c2 and f2 < f1 + c1 and s1 < e2 and s2 < e1)
