"""The tables: one mapping for every kind of thing on a farm, with their keys, limits and order.

Columns carry the names of the fields they keep. Records never leave the store; what leaves are
farm values.
"""

from __future__ import annotations

from datetime import date, datetime
from typing import Any, Final

from sqlalchemy import CheckConstraint, Index, Integer, String, Table, Text
from sqlalchemy.orm import Mapped, mapped_column

from planner.farm.crops import Batch, Phase, Placement, SeedLot, Target, TargetUnit
from planner.farm.farm import KINDS, SETTINGS_KIND, OwnEntry, Settings, Shelf
from planner.farm.fish import Feeding, FishEvent, FishEventKind, FishGroup
from planner.farm.site import AreaRule, Bed, Filter, FilterKind, Loop, Site, Tank, Units, WeekStart
from planner.farm.species import BedKind
from planner.store.acts import ActState
from planner.store.base import Base, table
from planner.store.columns import (
    Day,
    Key,
    Label,
    MaybeDay,
    MaybeNumber,
    MaybeWhole,
    Months,
    Name,
    Number,
    OpenReference,
    Position,
    ShelfKey,
    UtcTime,
    Whole,
    Words,
    YesNo,
    chosen,
    owned_by,
    refers,
)
from planner.store.limits import date_check, limit_checks
from planner.store.records_log import LOG_RECORDS
from planner.store.records_water import WATER_RECORDS


class SettingsRecord(Base):
    """The farm as a whole: exactly one row."""

    __tablename__ = "settings"
    __table_args__ = limit_checks(Settings)
    owner = Settings
    id: Mapped[Key]
    name: Mapped[Name]
    plan_from: Mapped[Day]
    plan_weeks: Mapped[Whole]
    notes: Mapped[Words]


class SiteRecord(Base):
    """Places with their climate."""

    __tablename__ = "site"
    __table_args__ = limit_checks(Site)
    owner = Site
    id: Mapped[Key]
    position: Mapped[Position]
    name: Mapped[Label]
    place: Mapped[Name]
    latitude_deg: Mapped[MaybeNumber]
    longitude_deg: Mapped[MaybeNumber]
    altitude_m: Mapped[Number]
    time_zone: Mapped[ShelfKey]
    week_start: Mapped[WeekStart] = mapped_column(chosen(WeekStart, "week_start"))
    units: Mapped[Units] = mapped_column(chosen(Units, "units"))
    air_c: Mapped[Months]
    nursery_c: Mapped[Months]
    radiation_mj_per_m2_d: Mapped[Months]
    rain_mm: Mapped[Months]
    roof_transmission: Mapped[Number]
    notes: Mapped[Words]


class LoopRecord(Base):
    """Bodies of water that go round."""

    __tablename__ = "loop"
    __table_args__ = limit_checks(Loop)
    owner = Loop
    id: Mapped[Key]
    position: Mapped[Position]
    name: Mapped[Label]
    site: Mapped[str] = mapped_column(refers("site"), index=True)
    water_l: Mapped[Number]
    water_c: Mapped[Months]
    top_up_l_per_day: Mapped[MaybeNumber]
    top_up_n_mg_per_l: Mapped[Number]
    top_up_p_mg_per_l: Mapped[Number]
    top_up_k_mg_per_l: Mapped[Number]
    top_up_ca_mg_per_l: Mapped[Number]
    top_up_mg_mg_per_l: Mapped[Number]
    top_up_fe_mg_per_l: Mapped[Number]
    top_up_alkalinity_mg_per_l: Mapped[MaybeNumber]
    gas_loss_share: Mapped[MaybeNumber]
    solids_settled_siphoned_every_days: Mapped[MaybeWhole]
    area_rule: Mapped[AreaRule] = mapped_column(chosen(AreaRule, "area_rule"))
    notes: Mapped[Words]


class TankRecord(Base):
    """Fish tanks."""

    __tablename__ = "tank"
    __table_args__ = limit_checks(Tank)
    owner = Tank
    id: Mapped[Key]
    position: Mapped[Position]
    name: Mapped[Label]
    loop: Mapped[str] = mapped_column(refers("loop"), index=True)
    volume_l: Mapped[Number]
    notes: Mapped[Words]


class FilterRecord(Base):
    """Stages of water treatment."""

    __tablename__ = "filter"
    __table_args__ = limit_checks(Filter)
    owner = Filter
    id: Mapped[Key]
    position: Mapped[Position]
    name: Mapped[Label]
    loop: Mapped[str] = mapped_column(refers("loop"), index=True)
    kind: Mapped[FilterKind] = mapped_column(chosen(FilterKind, "kind"))
    volume_l: Mapped[MaybeNumber]
    media_area_m2: Mapped[MaybeNumber]
    solids_captured_share: Mapped[MaybeNumber]
    notes: Mapped[Words]


class BedRecord(Base):
    """Rafts, media-bed blocks and nursery trays."""

    __tablename__ = "bed"
    __table_args__ = limit_checks(Bed)
    owner = Bed
    id: Mapped[Key]
    position: Mapped[Position]
    name: Mapped[Label]
    loop: Mapped[str] = mapped_column(refers("loop"), index=True)
    kind: Mapped[BedKind] = mapped_column(chosen(BedKind, "kind"))
    units: Mapped[Whole]
    rows: Mapped[Whole]
    columns: Mapped[Whole]
    area_m2: Mapped[Number]
    layer: Mapped[Whole]
    depth_cm: Mapped[MaybeNumber]
    light_share: Mapped[Number]
    lamp_mol_per_m2_d: Mapped[Number]
    notes: Mapped[Words]


class OwnEntryRecord(Base):
    """The grower's own entries; their figures are in `own_value`."""

    __tablename__ = "own_entry"
    __table_args__ = limit_checks(OwnEntry)
    owner = OwnEntry
    id: Mapped[Key]
    position: Mapped[Position]
    shelf: Mapped[Shelf] = mapped_column(chosen(Shelf, "shelf"))
    key: Mapped[str] = mapped_column(String(60), unique=True)
    like: Mapped[ShelfKey]
    name: Mapped[Name]
    notes: Mapped[Words]


class OwnValueRecord(Base):
    """One figure of an own entry: a number, a text, or yes or no."""

    __tablename__ = "own_value"
    __table_args__ = (
        CheckConstraint(
            "(number IS NOT NULL) + (text IS NOT NULL) + (yes_no IS NOT NULL) = 1", name="one_value"
        ).ddl_if(dialect="sqlite"),
        CheckConstraint("num_nonnulls(number, text, yes_no) = 1", name="one_of_three").ddl_if(
            dialect="postgresql"
        ),
    )
    entry: Mapped[str] = mapped_column(owned_by("own_entry"), primary_key=True)
    position: Mapped[int] = mapped_column(Integer, primary_key=True)
    name: Mapped[Name]
    number: Mapped[MaybeNumber]
    text: Mapped[str | None] = mapped_column(Text)
    yes_no: Mapped[bool | None]


class SeedLotRecord(Base):
    """Packets and deliveries of seed."""

    __tablename__ = "seed_lot"
    __table_args__ = limit_checks(SeedLot)
    owner = SeedLot
    id: Mapped[Key]
    position: Mapped[Position]
    code: Mapped[Label]
    crop: Mapped[ShelfKey]
    variety: Mapped[Name]
    supplier: Mapped[Words]
    pelleted: Mapped[YesNo]
    primed: Mapped[YesNo]
    packed_on: Mapped[MaybeDay]
    bought_on: Mapped[MaybeDay]
    germination_share: Mapped[MaybeNumber]
    seeds_left: Mapped[MaybeWhole]
    notes: Mapped[Words]


class FishGroupRecord(Base):
    """Fish stocked together."""

    __tablename__ = "fish_group"
    __table_args__ = limit_checks(FishGroup)
    owner = FishGroup
    id: Mapped[Key]
    position: Mapped[Position]
    name: Mapped[Label]
    tank: Mapped[str] = mapped_column(refers("tank"), index=True)
    species: Mapped[ShelfKey]
    feed: Mapped[ShelfKey]
    stocked_on: Mapped[Day]
    count: Mapped[Whole]
    mean_weight_g: Mapped[Number]
    feeding: Mapped[Feeding] = mapped_column(chosen(Feeding, "feeding"))
    feeding_table: Mapped[ShelfKey]
    feed_percent: Mapped[MaybeNumber]
    feed_g_per_day: Mapped[MaybeNumber]
    fcr: Mapped[MaybeNumber]
    tgc: Mapped[MaybeNumber]
    daily_death_share: Mapped[MaybeNumber]
    notes: Mapped[Words]


class FishEventRecord(Base):
    """What happens to fish groups."""

    __tablename__ = "fish_event"
    __table_args__ = limit_checks(FishEvent)
    owner = FishEvent
    id: Mapped[Key]
    position: Mapped[Position]
    group: Mapped[str] = mapped_column(refers("fish_group"), index=True)
    on: Mapped[Day]
    kind: Mapped[FishEventKind] = mapped_column(chosen(FishEventKind, "kind"))
    count: Mapped[MaybeWhole]
    mean_weight_g: Mapped[MaybeNumber]
    days: Mapped[MaybeWhole]
    feed_g_per_day: Mapped[MaybeNumber]
    cleared_on: Mapped[MaybeDay]
    notes: Mapped[Words]


class BatchRecord(Base):
    """Plants sown together."""

    __tablename__ = "batch"
    __table_args__ = limit_checks(Batch)
    owner = Batch
    id: Mapped[Key]
    position: Mapped[Position]
    code: Mapped[Label]
    crop: Mapped[ShelfKey]
    variety: Mapped[Name]
    sow_on: Mapped[Day]
    plants: Mapped[Whole]
    bed: Mapped[str | None] = mapped_column(OpenReference, refers("bed"), index=True)
    seed_lot: Mapped[str | None] = mapped_column(OpenReference, refers("seed_lot"), index=True)
    germination_days: Mapped[MaybeNumber]
    nursery_days: Mapped[MaybeNumber]
    spacing_days: Mapped[MaybeNumber]
    bed_days: Mapped[MaybeNumber]
    picking_days: Mapped[MaybeNumber]
    clearing_days: Mapped[MaybeNumber]
    germination_share: Mapped[MaybeNumber]
    bed_survival_share: Mapped[MaybeNumber]
    yield_g_per_plant: Mapped[MaybeNumber]
    locked: Mapped[YesNo]
    notes: Mapped[Words]


class PlacementRecord(Base):
    """Runs of places held by batches, with the days they are held; guarded in `planner.store.guard`.

    A run that holds nothing yet (its stage lasts no day) has neither date.
    """

    __tablename__ = "placement"
    __table_args__ = (
        *limit_checks(Placement),
        CheckConstraint("(held_from IS NULL) = (held_until IS NULL)", name="held_both"),
        CheckConstraint("held_from < held_until", name="held_order"),
        CheckConstraint(date_check("held_from"), name="held_from_date"),
        CheckConstraint(date_check("held_until"), name="held_until_date"),
        # All that the guard asks for, so that it never has to look up the rows themselves.
        Index("ix_placement_held", "bed", "unit", "held_from", "held_until", "first", "count", "id"),
    )
    owner = Placement
    id: Mapped[Key]
    position: Mapped[Position]
    batch: Mapped[str] = mapped_column(refers("batch"), index=True)
    phase: Mapped[Phase] = mapped_column(chosen(Phase, "phase"))
    bed: Mapped[str] = mapped_column(refers("bed"))
    unit: Mapped[Whole]
    first: Mapped[Whole]
    count: Mapped[Whole]
    held_from: Mapped[date | None]
    held_until: Mapped[date | None]


class TargetRecord(Base):
    """So much of a crop wanted each week."""

    __tablename__ = "target"
    __table_args__ = limit_checks(Target)
    owner = Target
    id: Mapped[Key]
    position: Mapped[Position]
    crop: Mapped[ShelfKey]
    amount_per_week: Mapped[Number]
    unit: Mapped[TargetUnit] = mapped_column(chosen(TargetUnit, "unit"))
    from_on: Mapped[Day]
    until_on: Mapped[MaybeDay]
    notes: Mapped[Words]


class ActRecord(Base):
    """What the user did, oldest first, so that undo works after the farm is closed and opened."""

    __tablename__ = "act"
    seq: Mapped[int] = mapped_column(Integer, primary_key=True, autoincrement=False)
    title: Mapped[Words]
    at: Mapped[datetime] = mapped_column(UtcTime)
    state: Mapped[ActState] = mapped_column(chosen(ActState, "state"))
    changes: Mapped[Words]
    who: Mapped[Words]


class MetaRecord(Base):
    """About the file itself: exactly one row. `revision` grows by one with every act kept."""

    __tablename__ = "meta"
    __table_args__ = (CheckConstraint("id = 1", name="one_row"),)
    id: Mapped[int] = mapped_column(Integer, primary_key=True, autoincrement=False)
    schema_version: Mapped[Whole]
    revision: Mapped[Whole]


_RECORD_OF: Final[dict[type[Any], type[Base]]] = {
    record.owner: record for record in (*WATER_RECORDS, *LOG_RECORDS)
} | {
    mapper.class_.owner: mapper.class_ for mapper in Base.registry.mappers if mapper.class_.owner is not None
}
_OWNER_OF_WORD: Final = {kind.word: kind.owner for kind in (SETTINGS_KIND, *KINDS)}


def record_of(word: str) -> type[Base]:
    """Return the mapping of the kind called `word`; raises `KeyError` when there is none."""
    return _RECORD_OF[_OWNER_OF_WORD[word]]


def table_of(word: str) -> Table:
    """Return the table of the kind called `word`."""
    return table(record_of(word))
