"""Where batches stand: their loop, the growing area they take, and what surrounds them."""

from __future__ import annotations

from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import NO_ID, Id
from planner.farm.site import Bed
from planner.forecast.profiles import Profile
from planner.forecast.season import Surroundings


class Standing:
    """Looks up where the batches of one farm stand."""

    def __init__(self, farm: Farm) -> None:
        """Read beds and placements once."""
        self._beds: dict[Id, Bed] = by_id(farm.beds)
        self._place_m2 = {bed.id: bed.place_area_m2 for bed in farm.beds}
        self._loops = {loop.id: number for number, loop in enumerate(farm.loops)}
        sites = {site.id: number for number, site in enumerate(farm.sites)}
        self._site_of_loop = [sites[loop.site] for loop in farm.loops]
        self._held: dict[Id, list[Placement]] = {}
        self._around: dict[tuple[Id, Id], Surroundings] = {}
        self._nursery: dict[Id, Id] = {}
        for placement in farm.placements:
            if placement.phase is Phase.BED:
                self._held.setdefault(placement.batch, []).append(placement)
            elif placement.phase is Phase.NURSERY:
                self._nursery.setdefault(placement.batch, placement.bed)

    def _bed_of(self, batch: Batch) -> Id:
        held = self._held.get(batch.id)
        return held[0].bed if held else batch.bed

    def loop_of(self, batch: Batch) -> int:
        """Return the number of the loop a batch drinks from, the first where nothing tells."""
        bed = self._bed_of(batch)
        return self._loops[self._beds[bed].loop] if bed != NO_ID else 0

    def area_of(self, batch: Batch, profile: Profile) -> float:
        """Return the growing area of a batch in the final places [m²].

        Places held count with their bed's area; plants without a place with the crop's own spacing.
        """
        held = self._held.get(batch.id, ())
        if not held and batch.bed != NO_ID:
            return batch.plants * self._place_m2[batch.bed]
        placed, on_beds = 0, 0.0
        for placement in held:
            placed += placement.count
            on_beds += placement.count * self._place_m2[placement.bed]
        return on_beds + max(batch.plants - placed, 0) / profile.crop.bed_density_per_m2

    def around(self, batch: Batch) -> Surroundings | None:
        """Return what surrounds a batch, by its first bed and nursery; None on a farm without a loop."""
        beds = self._bed_of(batch), self._nursery.get(batch.id, NO_ID)
        found = self._around.get(beds)
        if found is None and self._site_of_loop:
            found = self._around[beds] = self.surroundings(*beds)
        return found

    def surroundings(self, bed: Id, nursery: Id) -> Surroundings:
        """Return what surrounds a batch in a bed that is raised in a nursery; either may be `NO_ID`.

        The farm must have a loop.
        """
        loop = self._loops[self._beds[bed].loop] if bed != NO_ID else 0
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
