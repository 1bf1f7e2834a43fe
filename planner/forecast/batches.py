"""Turns the batches of a farm into columns: dates of every stage, plants, seeds, area, loop.

A table is built once and then brought up to date: a farm that differs in a few batches costs a few
rows.
"""

from __future__ import annotations

from collections.abc import Mapping, Set
from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import NO_ID, Id
from planner.farm.site import Bed
from planner.farm.species import Crop
from planner.forecast.profiles import Profile, ProfileKey, profile_key, profile_of
from planner.forecast.values import BatchTable, Floats, Ints, Ruler
from planner.science.schedule import seeds_to_sow

_STAGE_COUNT: Final = 6


class ProfileBook:
    """Numbers the profiles met so far, so that rows can point at them."""

    def __init__(self, crops: Mapping[str, Crop]) -> None:
        """Keep the crops that keys are looked up in."""
        self._crops = crops
        self._number: dict[ProfileKey, int] = {}
        self.profiles: list[Profile] = []

    def number(self, batch: Batch) -> int:
        """Return the number of a batch's profile; raises `KeyError` for a crop that is not known."""
        key = profile_key(batch)
        found = self._number.get(key)
        if found is None:
            found = self._number[key] = len(self.profiles)
            self.profiles.append(profile_of(key, self._crops[batch.crop]))
        return found


class BedArea:
    """Where the batches of a farm stand: their loop and the growing area they take."""

    def __init__(self, farm: Farm, *, only: Set[Id] | None = None) -> None:
        """Read beds and placements once, those of `only` some batches when given."""
        self._beds: dict[Id, Bed] = by_id(farm.beds)
        self._loops = {loop.id: number for number, loop in enumerate(farm.loops)}
        self._held: dict[Id, list[Placement]] = {}
        for placement in farm.placements:
            if placement.phase is Phase.BED and (only is None or placement.batch in only):
                self._held.setdefault(placement.batch, []).append(placement)

    def loop_of(self, batch: Batch) -> int:
        """Return the number of the loop a batch drinks from, the first where nothing tells."""
        held = self._held.get(batch.id)
        bed_id = held[0].bed if held else batch.bed
        return self._loops[self._beds[bed_id].loop] if bed_id != NO_ID else 0

    def area_of(self, batch: Batch, profile: Profile) -> float:
        """Return the growing area of a batch in the final places [m²].

        Places held count with their bed's area; plants without a place with the crop's own spacing.
        """
        held = self._held.get(batch.id, ())
        placed = sum(placement.count for placement in held)
        on_beds = sum(placement.count * self._beds[placement.bed].place_area_m2 for placement in held)
        if not held and batch.bed != NO_ID:
            return batch.plants * self._beds[batch.bed].place_area_m2
        return on_beds + max(batch.plants - placed, 0) / profile.crop.bed_density_per_m2


def build_table(farm: Farm, book: ProfileBook, ruler: Ruler, *, only: Set[Id] | None = None) -> BatchTable:
    """Return the table of all batches of a farm; `only` names them when they are few."""
    batches = farm.batches
    profile = np.fromiter((book.number(batch) for batch in batches), dtype=np.int64, count=len(batches))
    start = ruler.start_on.toordinal()
    sow_day = np.fromiter((b.sow_on.toordinal() - start for b in batches), np.int64, count=len(batches))
    plants = np.fromiter((batch.plants for batch in batches), dtype=np.int64, count=len(batches))
    area, loops = _where(farm, book, profile, only)
    return BatchTable(
        ids=tuple(batch.id for batch in batches),
        row_of={batch.id: row for row, batch in enumerate(batches)},
        profile=profile,
        crop=_crop_numbers(book)[profile] if len(batches) else profile,
        loop=loops,
        sow_day=sow_day,
        ends=sow_day[:, None] + _stage_offsets(book)[profile],
        plants=plants,
        seeds=_seeds(book, profile, plants),
        area_m2=area,
    )


@dataclass(frozen=True, slots=True)
class _Kept:
    """The farm that a table was made for, by the parts that matter."""

    farm: Farm
    ruler: Ruler
    crops: tuple[str, ...]
    table: BatchTable


class TableKeeper:
    """Keeps the last table and brings it up to date for a farm that differs in few batches."""

    def __init__(self, book: ProfileBook) -> None:
        """Keep the book that rows point into."""
        self._book = book
        self._kept: _Kept | None = None

    def table_for(self, farm: Farm, ruler: Ruler) -> BatchTable:
        """Return the table of a farm."""
        changed = self._changed_rows(farm, ruler)
        if self._kept is None or changed is None:
            table = build_table(farm, self._book, ruler)
        elif changed:
            table = self._patched(self._kept.table, farm, ruler, changed)
        else:
            table = self._kept.table
        self._kept = _Kept(farm=farm, ruler=ruler, crops=crop_keys(self._book), table=table)
        return table

    def _changed_rows(self, farm: Farm, ruler: Ruler) -> list[int] | None:
        """Return rows that differ from the kept table, None when it must be made anew."""
        if self._kept is None or self._kept.ruler != ruler:
            return None
        old = self._kept.farm
        same_frame = old.beds == farm.beds and old.loops == farm.loops
        if not same_frame or len(old.batches) != len(farm.batches):
            return None
        pairs = enumerate(zip(old.batches, farm.batches, strict=True))
        rows = {row for row, (one, other) in pairs if one is not other}
        row_of = self._kept.table.row_of
        if any(farm.batches[row].id != self._kept.table.ids[row] for row in rows):
            return None
        if old.placements is not farm.placements:
            rows |= {row_of[batch] for batch in _batches_moved(old.placements, farm.placements)}
        return sorted(rows)

    def _patched(self, table: BatchTable, farm: Farm, ruler: Ruler, rows: list[int]) -> BatchTable:
        changed = tuple(farm.batches[row] for row in rows)
        ids = {batch.id for batch in changed}
        part = build_table(replace(farm, batches=changed), self._book, ruler, only=ids)
        columns = {name: getattr(table, name).copy() for name in _COLUMNS}
        for name, column in columns.items():
            column[rows] = getattr(part, name)
        return replace(table, **columns)


_COLUMNS: Final = ("profile", "crop", "loop", "sow_day", "ends", "plants", "seeds", "area_m2")


def _batches_moved(old: tuple[Placement, ...], new: tuple[Placement, ...]) -> set[Id]:
    """Return the batches of placements that stand in only one of two tuples."""
    before, after = set(map(id, old)), set(map(id, new))
    return {placement.batch for placement in new if id(placement) not in before} | {
        placement.batch for placement in old if id(placement) not in after
    }


def _where(farm: Farm, book: ProfileBook, profile: Ints, only: Set[Id] | None) -> tuple[Floats, Ints]:
    beds, profiles = BedArea(farm, only=only), book.profiles
    areas = [beds.area_of(b, profiles[number]) for b, number in zip(farm.batches, profile, strict=True)]
    loops = [beds.loop_of(batch) for batch in farm.batches]
    return np.asarray(areas, dtype=np.float64), np.asarray(loops, dtype=np.int64)


def crop_keys(book: ProfileBook) -> tuple[str, ...]:
    """Return the crops of all profiles, each once, in the order met."""
    return tuple(dict.fromkeys(profile.crop.key for profile in book.profiles))


def _crop_numbers(book: ProfileBook) -> Ints:
    keys = {key: number for number, key in enumerate(crop_keys(book))}
    return np.asarray([keys[profile.crop.key] for profile in book.profiles], dtype=np.int64)


def _stage_offsets(book: ProfileBook) -> Ints:
    """Return days from sowing to the end of each stage, shape (profile, stage)."""
    days = np.asarray([profile.stage_days for profile in book.profiles], dtype=np.int64)
    return np.cumsum(days.reshape(-1, _STAGE_COUNT), axis=1)


def _seeds(book: ProfileBook, profile: Ints, plants: Ints) -> Ints:
    """Return seeds to sow, working each pair of profile and number out once."""
    pairs, back = np.unique(np.stack([profile, plants]), axis=1, return_inverse=True)
    seeds = [
        seeds_to_sow(
            int(number),
            germination=book.profiles[which].germination_share,
            survival=book.profiles[which].survival_share,
        )
        for which, number in pairs.T
    ]
    return np.asarray(seeds, dtype=np.int64)[back.reshape(-1)]
