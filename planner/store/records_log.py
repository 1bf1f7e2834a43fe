"""The table of what really happened."""

from __future__ import annotations

from typing import Any, Final

from sqlalchemy.orm import Mapped, mapped_column

from planner.farm.log import Happening, LogEntry, Reason, Unit
from planner.farm.water import Quantity
from planner.store.base import Base
from planner.store.columns import (
    Day,
    Key,
    Label,
    MaybeNumber,
    MaybeWhole,
    OpenReference,
    Position,
    ShelfKey,
    Words,
    chosen,
    refers,
)
from planner.store.limits import limit_checks


class LogEntryRecord(Base):
    """The log; a correction refers to the entry it takes the place of."""

    __tablename__ = "log_entry"
    __table_args__ = limit_checks(LogEntry)
    owner = LogEntry
    id: Mapped[Key]
    position: Mapped[Position]
    code: Mapped[Label]
    what: Mapped[Happening] = mapped_column(chosen(Happening, "what"))
    on: Mapped[Day]
    at: Mapped[Words]
    batch: Mapped[str | None] = mapped_column(OpenReference, refers("batch"), index=True)
    group: Mapped[str | None] = mapped_column(OpenReference, refers("fish_group"), index=True)
    bed: Mapped[str | None] = mapped_column(OpenReference, refers("bed"), index=True)
    loop: Mapped[str | None] = mapped_column(OpenReference, refers("loop"), index=True)
    seed_lot: Mapped[str | None] = mapped_column(OpenReference, refers("seed_lot"), index=True)
    meter: Mapped[str | None] = mapped_column(OpenReference, refers("meter"), index=True)
    supplement: Mapped[ShelfKey]
    quantity: Mapped[Quantity | None] = mapped_column(chosen(Quantity, "quantity"))
    amount: Mapped[MaybeNumber]
    out_of: Mapped[MaybeWhole]
    unit: Mapped[Unit] = mapped_column(chosen(Unit, "unit"))
    reason: Mapped[Reason] = mapped_column(chosen(Reason, "reason"))
    who: Mapped[Words]
    noted_at: Mapped[Words]
    corrects: Mapped[str | None] = mapped_column(OpenReference, refers("log_entry"), index=True)
    notes: Mapped[Words]


LOG_RECORDS: Final[tuple[Any, ...]] = (LogEntryRecord,)
"""Every mapping of this module."""
