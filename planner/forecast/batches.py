"""Turns the batches of a farm into columns: dates of every stage, plants, seeds, area, loop."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.crops import Batch
from planner.farm.farm import Farm
from planner.forecast.paces import PaceBook
from planner.forecast.profiles import Profile, ProfileKey, profile_key, profile_of
from planner.forecast.room import density_by_room
from planner.forecast.seed_lots import LotShares, share_for
from planner.forecast.standing import Stand, Standing
from planner.forecast.values import BatchTable, Ints, Ruler
from planner.science.schedule import seeds_for_many


class ProfileBook:
    """Numbers the profiles met so far, so that rows can point at them."""

    def __init__(self, catalogue: Catalogue) -> None:
        """Keep the crops that keys are looked up in, and how canopies close."""
        self.crops = catalogue.crops
        self._closure = catalogue.figure("coefficient/growth/spacing_closure_m2_per_kg").value
        self._number: dict[ProfileKey, int] = {}
        self._densities: dict[tuple[str, float], float | None] = {}
        self.profiles: list[Profile] = []

    def number(self, batch: Batch, lot_share: float | None = None, *, area_m2: float = 0.0) -> int:
        """Return the number of a batch's profile; raises `KeyError` for a crop that is not known.

        `lot_share` is the germination known of the batch's seed lot, `area_m2` the ground it stands on.
        """
        density = self._density(batch.crop, area_m2 / batch.plants)
        key = profile_key(batch, lot_share, density)
        found = self._number.get(key)
        if found is None:
            found = self._number[key] = len(self.profiles)
            crop = self.crops[batch.crop]
            self.profiles.append(profile_of(key, crop, closure_m2_per_kg=self._closure))
        return found

    def _density(self, crop: str, place_m2: float) -> float | None:
        """Return the density of a crop by the ground a plant has; few are met, so each is worked out once."""
        key = crop, place_m2
        if key not in self._densities:
            self._densities[key] = density_by_room(place_m2, self.crops[crop])
        return self._densities[key]


@dataclass(frozen=True, slots=True, kw_only=True)
class Books:
    """The numbered profiles and paces that rows point into."""

    profiles: ProfileBook
    paces: PaceBook


def build_table(farm: Farm, books: Books, ruler: Ruler, *, standing: Standing, lots: LotShares) -> BatchTable:
    """Return the table of all batches of a farm; `standing` says where they stand, `lots` what comes up."""
    batches, book = farm.batches, books.profiles
    stands = [standing.of(batch, book.crops[batch.crop]) for batch in batches]
    numbers = [
        book.number(batch, share_for(lots, batch), area_m2=stand.area_m2)
        for batch, stand in zip(batches, stands, strict=True)
    ]
    start = ruler.start_on.toordinal()
    sow_day = np.fromiter((b.sow_on.toordinal() - start for b in batches), np.int64, count=len(batches))
    plants = np.fromiter((batch.plants for batch in batches), dtype=np.int64, count=len(batches))
    profile = np.asarray(numbers, dtype=np.int64)
    pace = _paces(numbers, stands, books.paces)
    return BatchTable(
        ids=tuple(batch.id for batch in batches),
        row_of={batch.id: row for row, batch in enumerate(batches)},
        profile=profile,
        pace=pace,
        crop=_crop_numbers(book)[profile] if len(batches) else profile,
        loop=np.asarray([stand.loop for stand in stands], dtype=np.int64),
        sow_day=sow_day,
        ends=books.paces.ends(pace, sow_day),
        plants=plants,
        ripe=books.paces.ripe(pace, sow_day),
        seeds=_seeds(books, profile, pace, sow_day, plants),
        area_m2=np.asarray([stand.area_m2 for stand in stands], dtype=np.float64),
    )


def redated(table: BatchTable, books: Books) -> BatchTable:
    """Return a table with the dates, sizes and seeds of all its rows by the paces as they are now."""
    paces, pace, sow_day = books.paces, table.pace, table.sow_day
    return replace(
        table,
        ends=paces.ends(pace, sow_day),
        ripe=paces.ripe(pace, sow_day),
        seeds=_seeds(books, table.profile, pace, sow_day, table.plants),
    )


def _paces(profiles: Sequence[int], stands: Sequence[Stand], paces: PaceBook) -> Ints:
    """Return the pace of every batch; each profile is looked up once in each surroundings."""
    keys = [(profile, id(stand.around)) for profile, stand in zip(profiles, stands, strict=True)]
    known = {
        key: paces.number(key[0], stand.around) for key, stand in dict(zip(keys, stands, strict=True)).items()
    }
    return np.asarray([known[key] for key in keys], dtype=np.int64)


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
