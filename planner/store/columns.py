"""Column types that the tables share, so that a date, an id or a choice is kept one way everywhere."""

from __future__ import annotations

import json
from datetime import UTC, date, datetime
from enum import Enum
from typing import Annotated, Any, Final

from sqlalchemy import Boolean, Date, DateTime, Double, ForeignKey, Integer, String, Text, TypeDecorator
from sqlalchemy import Enum as EnumColumn
from sqlalchemy.engine import Dialect
from sqlalchemy.orm import mapped_column
from sqlalchemy.types import TEXT, TypeEngine

from planner.farm.fields import NO_ID
from planner.store.plain import numbers_from

_ID_LENGTH: Final = 36
_NAME_LENGTH: Final = 120
_KEY_LENGTH: Final = 60
_CHOICE_LENGTH: Final = 40

ID_TEXT: Final = TEXT(_ID_LENGTH).with_variant(TEXT(), "postgresql")
"""Text for an id; PostgreSQL knows no length of a TEXT."""


class OpenReference(TypeDecorator[str]):
    """An id that may be left open: the empty id of a farm value is NULL in the table."""

    impl = TEXT
    cache_ok = True

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[Any]:
        """Return the type that ids have."""
        return dialect.type_descriptor(ID_TEXT)

    def process_bind_param(self, value: str | None, _dialect: Dialect) -> str | None:
        """Return NULL for the empty id."""
        return value or None

    def process_result_value(self, value: Any, _dialect: Dialect) -> str:
        """Return the empty id for NULL."""
        return NO_ID if value is None else str(value)


class Series(TypeDecorator[tuple[float, ...]]):
    """Numbers by month as one JSON list.

    They are always read and written as a whole and never searched by month, so a child table
    would only cost a query and twelve rows for nothing.
    """

    impl = Text
    cache_ok = True

    def process_bind_param(self, value: tuple[float, ...] | None, _dialect: Dialect) -> str:
        """Return the JSON list."""
        return json.dumps([float(number) for number in value or ()], allow_nan=False)

    def process_result_value(self, value: Any, _dialect: Dialect) -> tuple[float, ...]:
        """Return the numbers; raises `ValueError` when the text is no list of numbers."""
        return numbers_from(value)


class UtcTime(TypeDecorator[datetime]):
    """A moment, kept in UTC without a zone, so that no setting of the database can shift it."""

    impl = DateTime
    cache_ok = True

    def process_bind_param(self, value: datetime | None, _dialect: Dialect) -> datetime | None:
        """Return the moment in UTC; raises `ValueError` for one that names no zone."""
        if value is None:
            return None
        if value.tzinfo is None:
            raise ValueError("a moment must say its time zone")
        return value.astimezone(UTC).replace(tzinfo=None)

    def process_result_value(self, value: datetime | None, _dialect: Dialect) -> datetime | None:
        """Return the moment with its zone."""
        return None if value is None else value.replace(tzinfo=UTC)


def _values(choices: type[Enum]) -> list[str]:
    return [str(choice.value) for choice in choices]


def chosen(choices: type[Enum], name: str) -> EnumColumn:
    """Return the column type for an enum, kept by value, guarded by a named CHECK."""
    return EnumColumn(
        choices,
        name=name,
        values_callable=_values,
        native_enum=False,
        create_constraint=True,
        length=_CHOICE_LENGTH,
        validate_strings=True,
    )


def refers(table: str) -> ForeignKey:
    """Return a reference that is checked when the act is complete, whatever the order inside it.

    Nothing is removed along with its owner behind the user's back: an act lists all it removes, so
    that undo can bring all of it back.
    """
    return ForeignKey(f"{table}.id", ondelete="NO ACTION", deferrable=True, initially="DEFERRED")


def owned_by(table: str) -> ForeignKey:
    """Return a reference of a part that goes when its owner goes."""
    return ForeignKey(f"{table}.id", ondelete="CASCADE", deferrable=True, initially="DEFERRED")


Key = Annotated[str, mapped_column(ID_TEXT, primary_key=True)]
Name = Annotated[str, mapped_column(String(_NAME_LENGTH))]
Label = Annotated[str, mapped_column(String(_NAME_LENGTH), unique=True)]
ShelfKey = Annotated[str, mapped_column(String(_KEY_LENGTH))]
Words = Annotated[str, mapped_column(Text)]
Whole = Annotated[int, mapped_column(Integer)]
Number = Annotated[float, mapped_column(Double)]
MaybeWhole = Annotated[int | None, mapped_column(Integer)]
MaybeNumber = Annotated[float | None, mapped_column(Double)]
YesNo = Annotated[bool, mapped_column(Boolean)]
Day = Annotated[date, mapped_column(Date)]
MaybeDay = Annotated[date | None, mapped_column(Date)]
Months = Annotated[tuple[float, ...], mapped_column(Series)]
Position = Annotated[int, mapped_column(Integer, index=True)]
