"""Where batches stand: their loop, the growing area they take, and what surrounds them."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass
from typing import NamedTuple

from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import NO_ID, Id
from planner.farm.site import Bed
from planner.farm.species import Crop
from planner.forecast.season import Surroundings


@dataclass(slots=True)
class _Held:
    """The final places of a batch: the first bed it stands in, plants placed and the area they take."""

    bed: Id
    count: int = 0
    area_m2: float = 0.0


class Stand(NamedTuple):
    """The number of a batch's loop, its growing area [m²], and what surrounds it (None without a loop)."""

    loop: int
    area_m2: float
    around: Surroundings | None


class Standing:
    """Looks up where the batches of one farm stand."""

    def __init__(self, farm: Farm) -> None:
        """Read beds and placements once."""
        self._beds: dict[Id, Bed] = by_id(farm.beds)
        self._place_m2 = {bed.id: bed.place_area_m2 for bed in farm.beds}
        loops = {loop.id: number for number, loop in enumerate(farm.loops)}
        self._loop_of = {bed.id: loops[bed.loop] for bed in farm.beds} | {NO_ID: 0}
        sites = {site.id: number for number, site in enumerate(farm.sites)}
        self._site_of_loop = [sites[loop.site] for loop in farm.loops]
        self._around: dict[tuple[Id, Id], Surroundings] = {}
        self._held: dict[Id, _Held] = {}
        self._nursery: dict[Id, Id] = {}
        self._runs: dict[Id, list[Placement]] | None = None
        self._placements: Sequence[Placement] = farm.placements
        self._note(farm.placements)

    def _note(self, placements: Iterable[Placement]) -> None:
        held_by, place_m2 = self._held, self._place_m2
        for placement in placements:
            if placement.phase is Phase.BED:
                held = held_by.get(placement.batch)
                if held is None:
                    held = held_by[placement.batch] = _Held(placement.bed)
                held.count += placement.count
                held.area_m2 += placement.count * place_m2[placement.bed]
            elif placement.phase is Phase.NURSERY:
                self._nursery.setdefault(placement.batch, placement.bed)

    def moved(self, batches: Collection[Id], placements: Sequence[Placement]) -> None:
        """Take up where some batches stand by now, by the placements of the whole farm."""
        self._runs, self._placements = None, placements
        self._forget(batches)
        self._note([placement for placement in placements if placement.batch in batches])

    def altered(self, placements: Collection[Placement]) -> None:
        """Take up placements that have changed where they stand in the farm's list of them."""
        if not placements:
            return
        if self._runs is None:
            self._runs = {}
            for run in self._placements:
                self._runs.setdefault(run.batch, []).append(run)
        for run in placements:
            runs = self._runs[run.batch]
            runs[next(at for at, each in enumerate(runs) if each.id == run.id)] = run
        batches = {run.batch for run in placements}
        self._forget(batches)
        self._note([run for batch in batches for run in self._runs[batch]])

    def _forget(self, batches: Collection[Id]) -> None:
        for batch in batches:
            self._held.pop(batch, None)
            self._nursery.pop(batch, None)

    def of(self, batch: Batch, crop: Crop) -> Stand:
        """Return where a batch stands: by its first bed and nursery, in the first loop where nothing tells.

        Places held count with their bed's area; plants without a place with the crop's own spacing.
        """
        held = self._held.get(batch.id)
        if held is not None:
            bed = held.bed
            area = held.area_m2 + max(batch.plants - held.count, 0) / crop.bed_density_per_m2
        else:
            bed = batch.bed
            each = 1.0 / crop.bed_density_per_m2 if bed == NO_ID else self._place_m2[bed]
            area = batch.plants * each
        beds = bed, self._nursery.get(batch.id, NO_ID)
        around = self._around.get(beds)
        if around is None and self._site_of_loop:
            around = self._around[beds] = self.surroundings(*beds)
        return Stand(self._loop_of[bed], area, around)

    def place_m2(self, bed: Id) -> float:
        """Return the growing area of one place of a bed [m²], 0 where no bed is told."""
        return self._place_m2.get(bed, 0.0)

    def surroundings(self, bed: Id, nursery: Id) -> Surroundings:
        """Return what surrounds a batch in a bed that is raised in a nursery; either may be `NO_ID`.

        The farm must have a loop.
        """
        loop = self._loop_of[bed]
        bed_light, bed_lamp = self._light_at(bed)
        nursery_light, nursery_lamp = self._light_at(nursery)
        return Surroundings(
            site=self._site_of_loop[loop],
            bed_light_share=bed_light,
            bed_lamp_mol=bed_lamp,
            nursery_light_share=nursery_light,
            nursery_lamp_mol=nursery_lamp,
        )

    def _light_at(self, bed: Id) -> tuple[float, float]:
        """Return the share of light let through to a bed, and what lamps add [mol/m²/d]."""
        if bed == NO_ID:
            return _OPEN
        return self._beds[bed].light_share, self._beds[bed].lamp_mol_per_m2_d


_OPEN = (1.0, 0.0)
"""All the light under the roof, and no lamps."""
