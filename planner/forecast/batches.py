"""Turns the batches of a farm into columns: dates of every stage, plants, seeds, area, loop.

A table is built once and then brought up to date: a farm that differs in a few batches costs a few
rows.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from planner.farm.crops import Batch, Placement
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.species import Crop
from planner.forecast.paces import PaceBook
from planner.forecast.profiles import Profile, ProfileKey, profile_key, profile_of
from planner.forecast.standing import Standing
from planner.forecast.values import BatchTable, Ints, Ruler
from planner.science.schedule import seeds_for_many


class ProfileBook:
    """Numbers the profiles met so far, so that rows can point at them."""

    def __init__(self, crops: Mapping[str, Crop]) -> None:
        """Keep the crops that keys are looked up in."""
        self._crops = crops
        self._number: dict[ProfileKey, int] = {}
        self.profiles: list[Profile] = []

    def number(self, batch: Batch, lot_share: float | None = None) -> int:
        """Return the number of a batch's profile; raises `KeyError` for a crop that is not known.

        `lot_share` is the tested germination of the batch's seed lot.
        """
        key = profile_key(batch, lot_share)
        found = self._number.get(key)
        if found is None:
            found = self._number[key] = len(self.profiles)
            self.profiles.append(profile_of(key, self._crops[batch.crop]))
        return found


@dataclass(frozen=True, slots=True, kw_only=True)
class Books:
    """The numbered profiles and paces that rows point into."""

    profiles: ProfileBook
    paces: PaceBook


def build_table(farm: Farm, books: Books, ruler: Ruler, *, standing: Standing) -> BatchTable:
    """Return the table of all batches of a farm; `standing` says where they stand."""
    batches, book = farm.batches, books.profiles
    lots = {lot.id: lot.germination_share for lot in farm.seed_lots}
    numbers = [book.number(batch, lots.get(batch.seed_lot)) for batch in batches]
    start = ruler.start_on.toordinal()
    sow_day = np.fromiter((b.sow_on.toordinal() - start for b in batches), np.int64, count=len(batches))
    plants = np.fromiter((batch.plants for batch in batches), dtype=np.int64, count=len(batches))
    profile = np.asarray(numbers, dtype=np.int64)
    pace = _paces(batches, numbers, books, standing)
    profiles = book.profiles
    area = [standing.area_of(batch, profiles[n]) for batch, n in zip(batches, numbers, strict=True)]
    return BatchTable(
        ids=tuple(batch.id for batch in batches),
        row_of={batch.id: row for row, batch in enumerate(batches)},
        profile=profile,
        pace=pace,
        crop=_crop_numbers(book)[profile] if len(batches) else profile,
        loop=np.asarray([standing.loop_of(batch) for batch in batches], dtype=np.int64),
        sow_day=sow_day,
        ends=books.paces.ends(pace, sow_day),
        plants=plants,
        ripe=books.paces.ripe(pace, sow_day),
        seeds=_seeds(books, profile, pace, sow_day, plants),
        area_m2=np.asarray(area, dtype=np.float64),
    )


def _paces(batches: tuple[Batch, ...], profiles: list[int], books: Books, standing: Standing) -> Ints:
    number = books.paces.number
    found = [
        number(profile, standing.around(batch)) for batch, profile in zip(batches, profiles, strict=True)
    ]
    return np.asarray(found, dtype=np.int64)


@dataclass(frozen=True, slots=True)
class _Kept:
    """The farm that a table was made for, by the parts that matter."""

    farm: Farm
    standing: Standing
    ruler: Ruler
    paces_version: int
    table: BatchTable


class TableKeeper:
    """Keeps the last table and brings it up to date for a farm that differs in few batches."""

    def __init__(self, books: Books) -> None:
        """Keep the books that rows point into."""
        self._books = books
        self._kept: _Kept | None = None

    def table_for(self, farm: Farm, ruler: Ruler) -> BatchTable:
        """Return the table of a farm."""
        changed = self._changed_rows(farm, ruler)
        kept = self._kept
        same_places = changed is not None and kept is not None and kept.farm.placements is farm.placements
        standing = kept.standing if kept is not None and same_places else Standing(farm)
        if kept is None or changed is None:
            table = build_table(farm, self._books, ruler, standing=standing)
        elif changed:
            table = self._patched(kept.table, farm, ruler, rows=changed, standing=standing)
        else:
            table = kept.table
        self._kept = _Kept(
            farm=farm,
            standing=standing,
            ruler=ruler,
            paces_version=self._books.paces.version,
            table=table,
        )
        return table

    def _changed_rows(self, farm: Farm, ruler: Ruler) -> list[int] | None:
        """Return rows that differ from the kept table, None when it must be made anew."""
        if self._kept is None or self._kept.ruler != ruler:
            return None
        if self._kept.paces_version != self._books.paces.version:
            return None
        old = self._kept.farm
        same_frame = all(getattr(old, name) == getattr(farm, name) for name in _FRAME)
        if not same_frame or len(old.batches) != len(farm.batches):
            return None
        rows: set[int] = set()
        if old.batches is not farm.batches:
            pairs = enumerate(zip(old.batches, farm.batches, strict=True))
            rows = {row for row, (one, other) in pairs if one is not other}
        row_of = self._kept.table.row_of
        if any(farm.batches[row].id != self._kept.table.ids[row] for row in rows):
            return None
        if old.placements is not farm.placements:
            rows |= {row_of[batch] for batch in _batches_moved(old.placements, farm.placements)}
        return sorted(rows)

    def _patched(
        self, table: BatchTable, farm: Farm, ruler: Ruler, *, rows: list[int], standing: Standing
    ) -> BatchTable:
        changed = tuple(farm.batches[row] for row in rows)
        part = build_table(replace(farm, batches=changed), self._books, ruler, standing=standing)
        columns = {name: getattr(table, name).copy() for name in _COLUMNS}
        for name, column in columns.items():
            column[rows] = getattr(part, name)
        return replace(table, **columns)


_FRAME: Final = ("sites", "loops", "beds", "seed_lots")
"""What every row of a table depends on."""

_COLUMNS: Final = ("profile", "pace", "crop", "loop", "sow_day", "ends", "plants", "ripe", "seeds", "area_m2")


def _batches_moved(old: tuple[Placement, ...], new: tuple[Placement, ...]) -> set[Id]:
    """Return the batches of placements that stand in only one of two tuples."""
    before, after = set(map(id, old)), set(map(id, new))
    return {placement.batch for placement in new if id(placement) not in before} | {
        placement.batch for placement in old if id(placement) not in after
    }


def crop_keys(book: ProfileBook) -> tuple[str, ...]:
    """Return the crops of all profiles, each once, in the order met."""
    return tuple(dict.fromkeys(profile.crop.key for profile in book.profiles))


def _crop_numbers(book: ProfileBook) -> Ints:
    keys = {key: number for number, key in enumerate(crop_keys(book))}
    return np.asarray([keys[profile.crop.key] for profile in book.profiles], dtype=np.int64)


def _seeds(books: Books, profile: Ints, pace: Ints, sow_day: Ints, plants: Ints) -> Ints:
    """Return seeds to sow for the plants wanted, for what comes up at the warmth of the sowing day."""
    profiles = books.profiles.profiles
    germination = np.asarray([one.germination_share for one in profiles])[profile]
    survival = np.asarray([one.survival_share for one in profiles])[profile]
    return seeds_for_many(
        plants.astype(np.float64),
        germination=germination * books.paces.stand(pace, sow_day),
        survival=survival,
    )
