"""Gives proposed sowings their places, and works out from a forecast of all of it what comes of them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from datetime import date
from typing import Final

import numpy as np

from planner.farm.codes import Codes
from planner.farm.crops import Batch, Phase, Placement, TargetUnit
from planner.farm.farm import DAYS_PER_WEEK, Farm, by_id
from planner.farm.fields import Id
from planner.farm.site import Bed
from planner.farm.species import BedKind, Crop
from planner.forecast.engine import Forecaster
from planner.forecast.values import Floats, Forecast
from planner.planning.many import PlacedMany, Rules, place_many
from planner.planning.placement import IdMaker, Refusal
from planner.planning.proposal import Note, NurseryWeek, Proposal, Sowing, WeekSupply
from planner.planning.seeding import Seeding, SeedRule, SeedWish, plants_of, seeding_for
from planner.planning.sowing_day import Need
from planner.planning.wanted import Due

G_PER_KG: Final = 1000.0
_IN_NURSERY: Final = (Phase.NURSERY,)
_AFTER_NURSERY: Final = (Phase.SPACING, Phase.BED)


class Settling:
    """A farm that proposed batches are put into, as far as there is room for them."""

    def __init__(
        self,
        base: Farm,
        forecaster: Forecaster,
        *,
        rules: Rules,
        seeds: SeedWish,
        codes: Codes,
        make_id: IdMaker,
        between: frozenset[Id] = frozenset(),
    ) -> None:
        """Begin with a farm as it stands; plants stand at an intermediate distance in beds `between`."""
        self._base = base
        self._forecaster = forecaster
        self._rules = replace(rules, between=between)
        self._seeds = seeds
        self._codes = codes
        self._make_id = make_id
        self._crops = forecaster.catalogue_for(base).crops
        self._beds: dict[Id, Bed] = by_id(base.beds)
        self.batches: tuple[Batch, ...] = ()
        self.placements: tuple[Placement, ...] = ()
        self.of_batch: dict[Id, tuple[Need, Seeding]] = {}
        self.refused: list[tuple[Batch, Refusal]] = []

    @property
    def farm(self) -> Farm:
        """The farm with everything that found room."""
        return self._with(self.batches, self.placements)

    def forecast(self) -> Forecast:
        """Return the forecast of that farm, without flags."""
        return self._forecaster.preview(self.farm)

    def refuse(self, batch: Batch, refusal: Refusal) -> None:
        """Keep for the proposal why a sowing found no room."""
        self.refused.append((batch, refusal))

    def settle(self, needs: Sequence[Need]) -> list[tuple[Need, Batch, Refusal]]:
        """Put in what is needed; return what found no room, in the nursery or in the beds.

        Seedlings are placed first: the nursery's light decides when they move.
        """
        made = {batch.id: (need, batch) for need in needs for batch in (self._batch(need),)}
        new = tuple(batch for _, batch in made.values())
        raised = self._placed(new, self.placements, _IN_NURSERY, {})
        refusals = {refusal.batch: refusal for refusal in raised.refusals}
        left = tuple(batch for batch in new if batch.id not in refusals)
        beds = {batch.id: made[batch.id][0].ground.beds for batch in left}
        grown = self._placed(left, (*self.placements, *raised.placements), _AFTER_NURSERY, beds)
        refusals |= {refusal.batch: refusal for refusal in grown.refusals}
        self.batches += tuple(batch for batch in new if batch.id not in refusals)
        found = (*raised.placements, *grown.placements)
        self.placements += tuple(run for run in found if run.batch not in refusals)
        return [(*made[batch], refusal) for batch, refusal in refusals.items()]

    def _batch(self, need: Need) -> Batch:
        choice = need.choice
        like = replace(choice.batch, bed=need.ground.beds[0])
        seeding = seeding_for(need.plants, self._rule(need))
        plants = need.plants
        if self._seeds.fill_trays:
            plants = max(plants_of(seeding.seeds, seeding.rule), plants)
        code = self._codes.give(self._crops[like.crop].code, like.sow_on)
        batch = replace(like, id=self._make_id(), code=code, plants=plants)
        self.of_batch[batch.id] = need, seeding
        return batch

    def _rule(self, need: Need) -> SeedRule:
        choice, wish = need.choice, self._seeds
        profile = choice.course.profile
        nursery = self._beds.get(need.ground.nursery)
        return SeedRule(
            germination=profile.germination_share * choice.course.stand_share(choice.sow_day),
            survival=profile.survival_share,
            rule=wish.rule,
            allowance=wish.allowance,
            per_pot=wish.per_pot,
            per_tray=nursery.places_per_unit if nursery is not None else 0,
            fill_trays=wish.fill_trays,
        )

    def _with(self, batches: Sequence[Batch], placements: Sequence[Placement]) -> Farm:
        return replace(
            self._base,
            batches=(*self._base.batches, *batches),
            placements=(*self._base.placements, *placements),
        )

    def _placed(
        self,
        batches: Sequence[Batch],
        placements: Sequence[Placement],
        phases: tuple[Phase, ...],
        beds: Mapping[Id, Sequence[Id]],
    ) -> PlacedMany:
        farm = self._with((*self.batches, *batches), placements)
        return place_many(
            batches,
            farm,
            self._forecaster.preview(farm),
            rules=replace(self._rules, phases=phases, crops=self._crops),
            beds=beds,
            make_id=self._make_id,
        )


def proposal_of(
    settling: Settling,
    *,
    crops: Mapping[str, Crop],
    removed: tuple[Id, ...],
    from_on: date,
    even_share: float,
    dues: Sequence[Due],
    notes: Sequence[Note],
) -> Proposal:
    """Return the proposal that a settling has come to."""
    forecast = settling.forecast()
    return Proposal(
        from_on=from_on,
        even_share=even_share,
        batches=settling.batches,
        placements=settling.placements,
        removed=removed,
        sowings=tuple(sorted(_sowings(settling, forecast), key=_by_day)),
        refused=tuple(settling.refused),
        weeks=tuple(_weeks(dues, forecast, crops)),
        nursery=tuple(_nursery_weeks(settling.farm, forecast)),
        notes=tuple(notes),
    )


def _by_day(sowing: Sowing) -> tuple[date, str]:
    return sowing.sow_on, sowing.batch.code


def _sowings(settling: Settling, forecast: Forecast) -> Iterator[Sowing]:
    """Yield the sowings with their dates as the forecast of the whole farm has them."""
    table, ruler = forecast.batches, forecast.ruler
    for batch in settling.batches:
        need, seeding = settling.of_batch[batch.id]
        row = table.row_of[batch.id]
        sow, nursery, spacing = (int(day) for day in (table.sow_day[row], *table.ends[row, 1:3]))
        first, behind = table.pick_days(row)
        yield Sowing(
            batch=batch,
            sow_on=batch.sow_on,
            space_on=ruler.date_of(nursery) if spacing > nursery else None,
            move_on=ruler.date_of(spacing) if spacing > sow else None,
            first_pick_on=ruler.date_of(first),
            last_pick_on=ruler.date_of(behind - 1),
            harvest_week=ruler.week_name(first // DAYS_PER_WEEK),
            seeding=seeding,
            sown_early_days=need.choice.sown_early_days,
            moved_early_days=need.choice.moved_early_days,
            wanted_on=None if need.wanted_day is None else ruler.date_of(need.wanted_day),
            wanted_plants=max(need.asked_plants, need.plants),
            missing=float(need.missing),
            per_plant=need.per_plant,
        )


def _weeks(dues: Sequence[Due], forecast: Forecast, crops: Mapping[str, Crop]) -> Iterator[WeekSupply]:
    wanted: dict[tuple[str, TargetUnit], Floats] = {}
    for due in dues:
        weeks = wanted.setdefault((due.crop, due.unit), np.zeros(forecast.ruler.weeks))
        weeks[due.week] += due.amount
    for (crop, unit), by_week in wanted.items():
        foreseen = supply_by_week(forecast, crop, unit, crops[crop].marketable_share)
        for week in np.flatnonzero(by_week):
            yield WeekSupply(
                crop=crop,
                unit=unit,
                week=int(week),
                wanted=float(by_week[week]),
                foreseen=float(foreseen[week]),
            )


def supply_by_week(forecast: Forecast, crop: str, unit: TargetUnit, marketable_share: float) -> Floats:
    """Return what is foreseen of a crop by week, as fit for sale [heads or kg]."""
    if crop not in forecast.crops:
        return np.zeros(forecast.ruler.weeks)
    row = forecast.crops.index(crop)
    if unit is TargetUnit.KG:
        return forecast.ruler.weekly_sum(forecast.harvest_g[row]) * (marketable_share / G_PER_KG)
    return forecast.ruler.weekly_sum(forecast.harvest_plants[row]) * marketable_share


def _nursery_weeks(farm: Farm, forecast: Forecast) -> Iterator[NurseryWeek]:
    """Yield how full the nurseries are in every week, on the fullest day of it."""
    nurseries = {bed.id: bed.places for bed in farm.beds if bed.kind is BedKind.NURSERY}
    table, ruler = forecast.batches, forecast.ruler
    change = np.zeros(ruler.days + 1, dtype=np.int64)
    for run in farm.placements:
        if run.bed in nurseries:
            start, end = table.phase_days(table.row_of[run.batch], run.phase)
            first, behind = np.clip((start, max(end, start + 1)), 0, ruler.days)
            change[first] += run.count
            change[behind] -= run.count
    fullest = np.cumsum(change)[: ruler.days].reshape(ruler.weeks, DAYS_PER_WEEK).max(axis=1)
    cells = sum(nurseries.values())
    for week, held in enumerate(fullest.tolist() if nurseries else ()):
        yield NurseryWeek(week=week, cells=cells, held=held)
