"""The tables of what goes into the water, what is read from it, and what is made of its solids."""

from __future__ import annotations

from typing import Any, Final

from sqlalchemy.orm import Mapped, mapped_column

from planner.farm.meters import Meter, MeterKind
from planner.farm.water import Dose, Quantity, Reading, SolidsBatch
from planner.store.base import Base
from planner.store.columns import (
    Day,
    Key,
    Label,
    MaybeDay,
    MaybeNumber,
    MaybeWhole,
    Number,
    OpenReference,
    Position,
    ShelfKey,
    Whole,
    Words,
    YesNo,
    chosen,
    refers,
)
from planner.store.limits import limit_checks


class DoseRecord(Base):
    """Supplements and bases given."""

    __tablename__ = "dose"
    __table_args__ = limit_checks(Dose)
    owner = Dose
    id: Mapped[Key]
    position: Mapped[Position]
    loop: Mapped[str] = mapped_column(refers("loop"), index=True)
    supplement: Mapped[ShelfKey]
    grams: Mapped[Number]
    on: Mapped[Day]
    every_days: Mapped[Whole]
    until_on: Mapped[MaybeDay]
    notes: Mapped[Words]


class MeterRecord(Base):
    """Meters that water is read with."""

    __tablename__ = "meter"
    __table_args__ = limit_checks(Meter)
    owner = Meter
    id: Mapped[Key]
    position: Mapped[Position]
    name: Mapped[Label]
    kind: Mapped[MeterKind] = mapped_column(chosen(MeterKind, "kind"))
    factor: Mapped[MaybeNumber]
    calibrate_every_days: Mapped[MaybeWhole]
    used_from: Mapped[MaybeDay]
    notes: Mapped[Words]


class ReadingRecord(Base):
    """Values read from meters and test kits."""

    __tablename__ = "reading"
    __table_args__ = limit_checks(Reading)
    owner = Reading
    id: Mapped[Key]
    position: Mapped[Position]
    loop: Mapped[str] = mapped_column(refers("loop"), index=True)
    on: Mapped[Day]
    at: Mapped[Words]
    quantity: Mapped[Quantity] = mapped_column(chosen(Quantity, "quantity"))
    value: Mapped[Number]
    meter: Mapped[str | None] = mapped_column(OpenReference, refers("meter"), index=True)
    meter_factor: Mapped[MaybeNumber]
    notes: Mapped[Words]


class SolidsBatchRecord(Base):
    """Solids kept apart until their liquor goes back."""

    __tablename__ = "solids_batch"
    __table_args__ = limit_checks(SolidsBatch)
    owner = SolidsBatch
    id: Mapped[Key]
    position: Mapped[Position]
    code: Mapped[Label]
    loop: Mapped[str] = mapped_column(refers("loop"), index=True)
    siphoned_on: Mapped[Day]
    days: Mapped[Whole]
    aerated: Mapped[YesNo]
    returned_on: Mapped[MaybeDay]
    returned_share: Mapped[Number]
    notes: Mapped[Words]


WATER_RECORDS: Final[tuple[Any, ...]] = (DoseRecord, MeterRecord, ReadingRecord, SolidsBatchRecord)
"""Every mapping of this module."""
