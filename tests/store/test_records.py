"""Every field of a farm has a column that can hold it, and the file itself knows the limits."""

import sqlite3
import typing
from datetime import date
from enum import Enum
from types import NoneType

import pytest
from sqlalchemy import Boolean, Date, Double, Integer, String, create_mock_engine
from sqlalchemy import Enum as EnumColumn
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.schema import CreateTable

from planner.farm.farm import KINDS, SETTINGS_KIND, OwnEntry
from planner.farm.fields import FieldKind, specs_of
from planner.store.base import Base, table
from planner.store.columns import OpenReference, Series
from planner.store.guard import GUARDED_TABLES, schema_of_records
from planner.store.plain import VALUES
from planner.store.records import PlacementRecord, table_of

ALL_KINDS = (SETTINGS_KIND, *KINDS)
BESIDES = {"position", "held_from", "held_until"}
FIELDS = [
    (kind.word, field, spec)
    for kind in ALL_KINDS
    for field, spec in specs_of(kind.owner).items()
    if not (kind.owner is OwnEntry and field == VALUES)
]
TYPES = {
    FieldKind.ID: String,
    FieldKind.REFERENCE: (String, OpenReference),
    FieldKind.NAME: String,
    FieldKind.TEXT: String,
    FieldKind.KEY: String,
    FieldKind.WHOLE: Integer,
    FieldKind.NUMBER: Double,
    FieldKind.YES_NO: Boolean,
    FieldKind.DAY: Date,
    FieldKind.CHOICE: EnumColumn,
    FieldKind.SERIES: Series,
}


@pytest.mark.parametrize(
    ("word", "field", "spec"), FIELDS, ids=[f"{word}-{field}" for word, field, _ in FIELDS]
)
def test_that_a_field_has_a_column_of_its_type(word, field, spec):
    column = table_of(word).c[field]
    assert isinstance(column.type, TYPES[spec.kind])
    open_reference = spec.kind is FieldKind.REFERENCE and not spec.needed
    assert column.nullable is (spec.may_be_none or open_reference)


@pytest.mark.parametrize("kind", ALL_KINDS, ids=lambda kind: kind.word)
def test_that_a_table_has_no_column_without_a_field(kind):
    columns = {column.name for column in table_of(kind.word).c}
    assert columns - BESIDES == set(specs_of(kind.owner)) - {VALUES}


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.word)
def test_that_choices_are_kept_by_value(kind):
    hints = typing.get_type_hints(kind.owner)
    for field, spec in specs_of(kind.owner).items():
        if spec.kind is FieldKind.CHOICE:
            column = table_of(kind.word).c[field]
            enum = next((one for one in typing.get_args(hints[field]) if one is not NoneType), hints[field])
            assert issubclass(enum, Enum)
            assert column.type.enums == [choice.value for choice in enum]


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.word)
def test_that_a_reference_says_what_happens_when_its_target_goes(kind):
    for field, spec in specs_of(kind.owner).items():
        if spec.kind is FieldKind.REFERENCE:
            (key,) = table_of(kind.word).c[field].foreign_keys
            assert key.column.table is table_of(spec.refers_to)
            assert key.ondelete == "NO ACTION"
            assert key.deferrable
            assert key.constraint.name == f"fk_{table_of(kind.word).name}_{field}"


def test_that_every_constraint_has_a_name():
    for each in Base.metadata.tables.values():
        assert all(constraint.name for constraint in each.constraints), each.name


def test_that_limits_of_fields_stand_in_the_file():
    statement = str(CreateTable(table_of("site")).compile(dialect=sqlite.dialect()))
    spec = specs_of(KINDS[0].owner)["latitude_deg"]
    assert f'"latitude_deg" BETWEEN {spec.low} AND {spec.high}' in statement


def test_that_the_guard_is_made_along_with_the_tables():
    triggers = {name for kind, name, _ in schema_of_records() if kind == "trigger"}
    assert triggers == {"placement_guard_insert", "placement_guard_update"}


def statements(dialect):
    """Return what a kind of database is told to make the tables."""
    emitted = []
    engine = create_mock_engine(
        f"{dialect.name}://", lambda ddl, *_, **__: emitted.append(str(ddl.compile(dialect=dialect)))
    )
    GUARDED_TABLES.create_all(engine, checkfirst=False)
    return "\n".join(emitted)


def test_that_postgresql_gets_an_exclusion_constraint_and_sqlite_triggers():
    on_server, in_file = statements(postgresql.dialect()), statements(sqlite.dialect())
    assert "EXCLUDE USING gist (bed WITH =, unit WITH =, int4range(first, first + count) WITH &&" in on_server
    assert "TRIGGER" not in on_server
    assert "num_nonnulls" in on_server
    assert "EXCLUDE" not in in_file
    assert in_file.count("CREATE TRIGGER") == 2


@pytest.mark.parametrize("text", ["2026-1-1", "soon", "2026-01-01 12:00", 2461041.5, 0])
def test_that_only_real_dates_can_be_held(text):
    check = next(c for c in table(PlacementRecord).constraints if c.name == "ck_placement_held_from_date")
    connection = sqlite3.connect(":memory:")
    connection.execute(f"CREATE TABLE t (held_from DATE CHECK ({check.sqltext}))")
    with pytest.raises(sqlite3.IntegrityError):
        connection.execute("INSERT INTO t VALUES (?)", (text,))
    connection.execute("INSERT INTO t VALUES (?)", (date(2026, 2, 28).isoformat(),))
    connection.close()
