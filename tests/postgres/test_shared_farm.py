"""A farm on a real database server, worked on from several desks."""

import dataclasses
import random

import pytest
from sqlalchemy import create_engine, text

from planner.actions.batches import change_batch
from planner.cli import main
from planner.farm.changes import Change, ChangeSet
from planner.farm.faults import FarmFaultError
from planner.farm.merging import ClashError
from planner.store.acts import ActKind
from planner.store.errors import (
    FarmThereAlreadyError,
    HeldPlaceError,
    LostFarmError,
    NewerFarmError,
    NoSuchFarmError,
    ReadOnlyFarmError,
)
from planner.store.guard import make_server_tables
from planner.store.migrations.runner import CURRENT_VERSION
from planner.store.store import FarmStore

EDITS = 300
"""Edits of each of two desks; benchmarks/shared_farm.py does 2,000."""


def note(session, at, notes):
    return change_batch(session.farm, dataclasses.replace(session.farm.batches[at], notes=notes))


def run(url, *statements):
    engine = create_engine(url, isolation_level="AUTOCOMMIT")
    with engine.connect() as connection:
        found = [connection.execute(text(statement)) for statement in statements]
        rows = found[-1].all() if found[-1].returns_rows else []
    engine.dispose()
    return rows


def test_that_a_farm_comes_back_as_it_was(open_desk, farm):
    assert open_desk().farm == farm


def test_that_an_act_is_seen_at_the_other_desk_with_its_name(open_desk):
    one, other = open_desk("Ana"), open_desk("Ben")
    one.act(note(one, 0, "from Ana"))
    notice = other.catch_up()
    assert notice.change_set.title.startswith("Ana: ")
    assert other.farm == one.farm
    assert other.history[0].who == "Ana"


def test_that_undo_takes_back_ones_own_act_and_leaves_the_other_ones(open_desk):
    one, other = open_desk("Ana"), open_desk("Ben")
    one.act(note(one, 0, "from Ana"))
    other.act(note(other, 1, "from Ben"))
    one.catch_up()
    one.undo()
    other.catch_up()
    assert [each.notes for each in other.farm.batches[:2]] == ["", "from Ben"]
    assert other.undo_title is not None
    one.redo()
    other.catch_up()
    assert [each.notes for each in other.farm.batches[:2]] == ["from Ana", "from Ben"]
    assert one.farm == other.farm == open_desk().farm


def test_that_undo_of_what_another_changed_since_tells_both_values(open_desk):
    one, other = open_desk("Ana"), open_desk("Ben")
    one.act(note(one, 0, "from Ana"))
    other.catch_up()
    other.act(note(other, 0, "from Ben"))
    one.catch_up()
    with pytest.raises(ClashError, match="from Ben"):
        one.undo()
    assert one.farm.batches[0].notes == "from Ben"


def test_that_no_place_is_held_twice_whoever_writes(open_desk, url, farm):
    """The database itself refuses, past everything that a desk would have refused before."""
    store = FarmStore.open(url)
    first, second = store.held()[:2]
    with pytest.raises(HeldPlaceError):
        store.apply(
            ChangeSet(title="both", changes=()),
            [dataclasses.replace(second, from_on=first.from_on, until_on=first.until_on)]
            if _same_run(farm, first, second)
            else _forced(store, farm, first),
            kind=ActKind.DO,
            at=_noon(),
        )
    store.close()


def _same_run(farm, first, second):
    places = {each.id: each for each in farm.placements}
    one, other = places[first.placement], places[second.placement]
    return (one.bed, one.unit, one.first) == (other.bed, other.unit, other.first)


def _forced(store, farm, hold):
    """Return holds of two placements that are first made to name the same run."""
    places = {each.id: each for each in farm.placements}
    taken = places[hold.placement]
    other = next(each for each in farm.placements if each.batch != taken.batch)
    moved = dataclasses.replace(other, bed=taken.bed, unit=taken.unit, first=taken.first, count=taken.count)
    change = ChangeSet(title="move", changes=(Change(before=other, after=moved),))
    store.apply(change, [], kind=ActKind.DO, at=_noon(), freed=[other.id])
    return [dataclasses.replace(hold, placement=other.id)]


def _noon():
    from datetime import UTC, datetime

    return datetime(2027, 3, 1, 12, tzinfo=UTC)


def test_that_two_desks_end_with_the_same_farm_and_lose_nothing(open_desk):
    """Two desks edit at random, neither looking; each edit is kept, or told as a clash and then put in."""
    one, other = open_desk("Ana"), open_desk("Ben")
    chance, kept, clashes = random.Random(5), {"Ana": 0, "Ben": 0}, 0
    for number in range(2 * EDITS):
        who, desk = chance.choice((("Ana", one), ("Ben", other)))
        wanted = note(desk, chance.randrange(12), f"{who} {number}")
        try:
            desk.act(wanted)
        except ClashError as clash:
            clashes += 1
            desk.act(clash.mine)
        kept[who] += 1
    one.catch_up()
    other.catch_up()
    last = open_desk()
    assert one.farm == other.farm == last.farm
    acts = last.history
    assert len(acts) == sum(kept.values())
    assert {who: sum(line.who == who for line in acts) for who in kept} == kept
    assert clashes > 0


def test_that_a_database_without_a_farm_is_told(url):
    with pytest.raises(NoSuchFarmError, match="holds no farm"):
        FarmStore.open(url)


def test_that_a_farm_is_not_made_over_another(open_desk, url, farm):
    with pytest.raises(FarmThereAlreadyError):
        FarmStore.create(url, farm)


def test_that_older_tables_are_brought_up_to_date(url, farm, means):
    FarmStore.create(url, farm, means.holds(farm)).close()
    later = (
        "DROP TABLE log_entry",
        "ALTER TABLE reading DROP COLUMN meter, DROP COLUMN at",
        "DROP TABLE meter",
        "ALTER TABLE seed_lot DROP COLUMN supplier, DROP COLUMN primed, DROP COLUMN packed_on",
        "ALTER TABLE fish_event DROP COLUMN cleared_on",
        "ALTER TABLE act DROP COLUMN who",
        "ALTER TABLE site DROP COLUMN rain_mm",
        "ALTER TABLE loop DROP COLUMN area_rule",
    )
    run(url, *later, "UPDATE meta SET schema_version = 1")
    with FarmStore.open(url) as store:
        assert store.load() == farm
        assert store.acts() == ()
    assert run(url, "SELECT schema_version FROM meta") == [(CURRENT_VERSION,)]
    default = "SELECT column_default FROM information_schema.columns "
    default += "WHERE column_name = 'who' AND table_name = 'act'"
    assert run(url, default) == [(None,)]


def test_that_a_newer_farm_is_refused(open_desk, url):
    run(url, f"UPDATE meta SET schema_version = {CURRENT_VERSION + 1}")
    with pytest.raises(NewerFarmError):
        FarmStore.open(url)


def test_that_a_server_that_is_not_there_is_told_in_a_sentence(server):
    nowhere = server.rpartition(":")[0] + ":1/farm"
    with pytest.raises(LostFarmError, match="cannot be reached"):
        FarmStore.open(nowhere)


def test_that_a_broken_connection_loses_nothing_and_comes_back(open_desk, server):
    desk = open_desk("Ana")
    desk.act(note(desk, 0, "before"))
    cut_off = "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname LIKE 'farm%'"
    run(f"{server}/postgres", cut_off)
    desk.act(note(desk, 1, "after"))
    assert [each.notes for each in open_desk().farm.batches[:2]] == ["before", "after"]


def test_that_a_reader_reads_and_is_told_when_changing(open_desk, url):
    open_desk("Ana")
    run(
        url,
        "DROP ROLE IF EXISTS farm_reader",
        "CREATE ROLE farm_reader LOGIN",
        "GRANT SELECT ON ALL TABLES IN SCHEMA public TO farm_reader",
    )
    reader = open_desk("Eve", where=url.replace("postgres@", "farm_reader@"))
    assert reader.farm.batches
    with pytest.raises(ReadOnlyFarmError, match="may be read but not changed"):
        reader.act(note(reader, 0, "not hers"))
    assert open_desk().farm.batches[0].notes == ""


def test_that_an_editor_needs_no_more_than_the_rights_that_are_written_down(open_desk, url):
    open_desk("Ana")
    run(
        url,
        "DROP ROLE IF EXISTS farm_editor",
        "CREATE ROLE farm_editor LOGIN",
        "GRANT SELECT, INSERT, UPDATE, DELETE ON ALL TABLES IN SCHEMA public TO farm_editor",
    )
    editor = open_desk("Ben", where=url.replace("postgres@", "farm_editor@"))
    editor.act(note(editor, 0, "hers"))
    editor.undo()
    assert open_desk().farm.batches[0].notes == ""


def test_that_a_clash_with_the_rules_of_the_farm_is_refused_before_it_is_sent(open_desk):
    desk = open_desk("Ana")
    batch = desk.farm.batches[0]
    with pytest.raises(FarmFaultError):
        desk.act(change_batch(desk.farm, dataclasses.replace(batch, crop="moss")))


def test_that_commands_take_an_address_where_they_take_a_file(open_desk, url, capsys):
    open_desk()
    assert main(["check", url]) == 0
    assert main(["forecast", url, "--weeks", "2", "--json"]) == 0
    said = capsys.readouterr().out
    assert said.startswith(f"{url.replace('+psycopg', '')}: no faults")
    assert '"weeks"' in said


def test_that_tables_are_made_from_the_same_mappings(url):
    engine = create_engine(url)
    with engine.begin() as connection:
        make_server_tables(connection)
    engine.dispose()
    names = {name for (name,) in run(url, "SELECT tablename FROM pg_tables WHERE schemaname = 'public'")}
    assert {"batch", "placement", "act", "meta", "reading"} <= names
