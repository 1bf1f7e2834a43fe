"""Makes the forecast of a farm, and makes it again quickly when little has changed.

What depends on the fish is kept while the fish, their water and their feed stay the same; what
depends on the batches is folded from counts of sowings and does not grow with their number.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.own import laid_over
from planner.catalogue.schema import FIGURE_SPECS
from planner.farm.farm import DAYS_PER_WEEK, Farm, OwnEntry, by_id
from planner.farm.fields import Id
from planner.farm.fish import Feeding, FishEvent, FishGroup
from planner.farm.site import Loop, WeekStart
from planner.farm.species import BedKind, Crop
from planner.forecast.batch_flags import BatchFlags
from planner.forecast.batches import Books, ProfileBook, crop_keys
from planner.forecast.crops import demand_g, harvests, planted_m2
from planner.forecast.delays import Delay, delay_of
from planner.forecast.figures import BandFigures, SupplyFigures, band_figures, supply_figures
from planner.forecast.fish import Ration, appetite_of, forecast_group, total_feed_g
from planner.forecast.flags import (
    appetite_flags,
    climate_flags,
    density_flags,
    overfed_flags,
    slow_flags,
    supply_flags,
    treated_flags,
)
from planner.forecast.keeping import same
from planner.forecast.loop_water import WaterKeeper
from planner.forecast.paces import PaceBook
from planner.forecast.pools import loop_pools
from planner.forecast.ration import table_ration
from planner.forecast.supply import (
    FedGroup,
    dose_g,
    feed_fate,
    figures_of_loop,
    protein_share,
    top_up_g,
)
from planner.forecast.tables import TableKeeper
from planner.forecast.values import (
    BatchTable,
    Days,
    Flag,
    Floats,
    Forecast,
    GroupForecast,
    LoopForecast,
    Ruler,
)
from planner.forecast.warmth import Warmth, drawn_series, warmth_read

_SUNDAY_FIRST_SHIFT: Final = 1


def ruler_of(farm: Farm) -> Ruler:
    """Return the weeks of a farm's plan; they begin on the day its first site begins a week on."""
    plan_from = farm.settings.plan_from
    sunday = bool(farm.sites) and farm.sites[0].week_start is WeekStart.SUNDAY
    shift = _SUNDAY_FIRST_SHIFT if sunday else 0
    start_on = plan_from - timedelta(days=(plan_from.weekday() + shift) % DAYS_PER_WEEK)
    weeks = -(-(farm.plan_until - start_on).days // DAYS_PER_WEEK)
    return Ruler(start_on=start_on, weeks=weeks)


@dataclass(frozen=True, slots=True)
class _LoopSide:
    """The part of a loop's forecast that the crops have no share in."""

    fed: tuple[FedGroup, ...]
    feed_g: Floats
    arrays: dict[str, Floats]
    protein_share: Floats
    water_c: Floats | None


class Forecaster:
    """Forecasts one farm after another with the same catalogue."""

    def __init__(self, catalogue: Catalogue) -> None:
        """Take the catalogue; the farm's own entries are laid over it for each farm."""
        self._book_catalogue = catalogue
        self._own: tuple[OwnEntry, ...] | None = None
        self._catalogue = catalogue
        self._start_over(())

    @property
    def book(self) -> Catalogue:
        """The catalogue alone, without anybody's own entries."""
        return self._book_catalogue

    @property
    def catalogue(self) -> Catalogue:
        """The catalogue with the own entries of the last farm laid over it."""
        return self._catalogue

    @property
    def bands(self) -> BandFigures:
        """The bands that verdicts go by."""
        return self._bands

    @property
    def paces(self) -> PaceBook:
        """The paces that the batches of the last forecast go by."""
        return self._paces

    def delay_of(self, forecast: Forecast, row: int) -> Delay | None:
        """Return by how much and why a batch of the last forecast is later than by the book."""
        return delay_of(forecast.batches, self._paces, row)

    def catalogue_for(self, farm: Farm) -> Catalogue:
        """Return the catalogue with a farm's own entries laid over it.

        Raises `FarmFaultError` when an own entry is not like anything or names no figure.
        """
        if farm.own_entries != self._own:
            self._start_over(farm.own_entries)
        return self._catalogue

    def _start_over(self, own: tuple[OwnEntry, ...]) -> None:
        self._catalogue = laid_over(self._book_catalogue, own)
        self._own = own
        self._bands = band_figures(self._catalogue)
        self._figures: SupplyFigures = supply_figures(self._catalogue)
        self._book = ProfileBook(self._catalogue)
        self._paces = PaceBook(self._catalogue, self._book.profiles)
        self._tables = TableKeeper(Books(profiles=self._book, paces=self._paces), self._catalogue)
        self._sides: dict[Id, tuple[tuple[object, ...], _LoopSide]] = {}
        self._fed: dict[Id, tuple[tuple[object, ...], FedGroup]] = {}
        self._waters = WaterKeeper(self._catalogue)
        self._warmth_key: tuple[object, ...] = ()
        self._warmth = Warmth()
        self._fade_days = self._catalogue.figure("coefficient/season/reading_fade_days").value
        self._appetite = appetite_of(self._catalogue)
        self._batch_flags = BatchFlags(self._catalogue)
        self._flags: dict[str, tuple[tuple[object, ...], tuple[Flag, ...]]] = {}

    def forecast(self, farm: Farm) -> Forecast:
        """Return the forecast of a farm.

        Raises `KeyError` for a crop, fish, feed or supplement that is not in the catalogue; check
        the farm first with `planner.forecast.checks`.
        """
        bare = self.preview(farm)
        return replace(bare, flags=self._all_flags(farm, bare))

    def days(self, farm: Farm) -> Days:
        """Return only when each batch is in which stage: the first part of a forecast, and a quick one."""
        self.catalogue_for(farm)
        ruler = ruler_of(farm)
        warmth = self._warmth_of(farm)
        self._paces.set_frame(farm.sites, ruler, air_read=warmth.air)
        return Days(ruler=ruler, batches=self._tables.table_for(farm, ruler))

    def days_alone(self, farm: Farm) -> Days:
        """Return when the batches of a farm with only a few of its batches are in which stage.

        Everything else must be as in the farm last forecast; what is kept of that stays kept.
        """
        ruler = ruler_of(farm)
        return Days(ruler=ruler, batches=self._tables.table_alone(farm, ruler))

    def preview(self, farm: Farm) -> Forecast:
        """Return the forecast of a farm without flags, quick enough for a drag."""
        catalogue = self.catalogue_for(farm)
        days = self.days(farm)
        ruler, table = days.ruler, days.batches
        loops = tuple(
            self._loop_forecast(farm, loop, number, table=table, ruler=ruler)
            for number, loop in enumerate(farm.loops)
        )
        crops = crop_keys(self._book)
        plants, grams = harvests(table, self._book.profiles, self._paces, ruler, crops=len(crops))
        return Forecast(
            ruler=ruler,
            crops=crops,
            profiles=tuple(self._book.profiles),
            batches=table,
            loops=loops,
            harvest_plants=plants,
            harvest_g=grams,
            flags=(),
            source_keys=_sources(catalogue, crops),
        )

    def _warmth_of(self, farm: Farm) -> Warmth:
        """Return the temperatures read, kept from the last time if nothing was read since."""
        key = (farm.readings, farm.loops, farm.sites)
        if not same(self._warmth_key, key):
            self._warmth_key, self._warmth = key, warmth_read(farm)
        return self._warmth

    def _all_flags(self, farm: Farm, bare: Forecast) -> tuple[Flag, ...]:
        catalogue, loops, ruler = self._catalogue, bare.loops, bare.ruler
        groups = [group for loop in loops for group in loop.groups]
        water_c = {loop.loop: loop.water_c for loop in loops}
        of_batches = self._flags_of(
            "batches",
            (farm.batches, farm.placements, farm.beds),
            lambda: self._batch_flags.flags(farm, bare.batches, bare.crops),
        )
        of_fish = self._flags_of(
            "fish",
            (farm.sites, farm.loops, farm.tanks, farm.fish_groups, farm.fish_events, ruler, self._warmth),
            lambda: (
                *climate_flags(farm, catalogue, ruler, water_c=water_c),
                *appetite_flags(farm, catalogue, loops, ruler),
                *overfed_flags(farm, catalogue, loops, ruler),
                *density_flags(farm, catalogue, groups, ruler),
                *treated_flags(farm),
            ),
        )
        slow = slow_flags(farm, bare.batches, ruler)
        return (*of_batches, *slow, *of_fish, *supply_flags(loops, ruler, self._bands))

    def _flags_of(
        self, what: str, key: tuple[object, ...], make: Callable[[], Iterable[Flag]]
    ) -> tuple[Flag, ...]:
        """Return flags, kept from the last time if nothing they hang on has changed."""
        kept = self._flags.get(what)
        if kept is not None and same(kept[0], key):
            return kept[1]
        found = tuple(make())
        self._flags[what] = (key, found)
        return found

    def _loop_forecast(
        self, farm: Farm, loop: Loop, number: int, *, table: BatchTable, ruler: Ruler
    ) -> LoopForecast:
        side = self._side(farm, loop, ruler)
        water = self._waters.water_of(farm, loop, arrays=side.arrays, ruler=ruler)
        demand = demand_g(table, self._book.profiles, self._paces, ruler, loop=number)
        pools = loop_pools(water.pools, supply_g=water.supply_g, demand_g=demand)
        beds = sum(
            bed.area_m2 for bed in farm.beds if bed.loop == loop.id and bed.kind is not BedKind.NURSERY
        )
        return LoopForecast(
            loop=loop.id,
            name=loop.name,
            groups=tuple(one.group for one in side.fed),
            feed_g=side.feed_g,
            **side.arrays,
            demand_g=demand,
            planted_m2=planted_m2(table, self._book.profiles, ruler, loop=number),
            bed_m2=beds,
            protein_share=side.protein_share,
            water_c=side.water_c,
            solids=water.solids,
            water_l=loop.water_l,
            pool_g=pools.pool_g,
            unmet_g=pools.unmet_g,
            leaving_g=pools.leaving_g,
            pool_assumed=pools.assumed,
            pool_misses=pools.misses,
            area_rule=loop.area_rule,
        )

    def _side(self, farm: Farm, loop: Loop, ruler: Ruler) -> _LoopSide:
        """Return what fish, water and doses bring, kept from the last time if nothing has changed."""
        water_read = self._warmth.water.get(loop.id, ())
        key = (loop, farm.tanks, farm.fish_groups, farm.fish_events, farm.doses, ruler, water_read)
        kept = self._sides.get(loop.id)
        if kept is not None and same(kept[0], key):
            return kept[1]
        side = self._side_anew(farm, loop, ruler)
        self._sides[loop.id] = (key, side)
        return side

    def _side_anew(self, farm: Farm, loop: Loop, ruler: Ruler) -> _LoopSide:
        tanks = {tank.id for tank in farm.tanks if tank.loop == loop.id}
        events = _events_by_group(farm)
        fed = tuple(
            self._fed_group(group, events.get(group.id, []), loop, ruler)
            for group in farm.fish_groups
            if group.tank in tanks
        )
        fate = feed_fate(fed, figures=figures_of_loop(self._figures, loop), ruler=ruler)
        doses = [dose for dose in farm.doses if dose.loop == loop.id]
        arrays = {
            "content_g": fate.content_g,
            "fish_g": fate.fish_g,
            "solids_g": fate.solids_g,
            "gas_g": fate.gas_g,
            "dissolved_g": fate.dissolved_g,
            "top_up_g": top_up_g(loop, figures=self._figures, ruler=ruler),
            "dose_g": dose_g(doses, supplements=self._catalogue.supplements, ruler=ruler),
        }
        return _LoopSide(
            fed=fed,
            feed_g=total_feed_g([one.group for one in fed], ruler),
            arrays=arrays,
            protein_share=protein_share(fed, reference=self._bands.reference_protein_share, ruler=ruler),
            water_c=self.water_c(loop, start_on=ruler.start_on, days=ruler.days),
        )

    def _fed_group(self, group: FishGroup, events: list[FishEvent], loop: Loop, ruler: Ruler) -> FedGroup:
        """Return a group with its fish and feed, kept from the last time if nothing met it or its water."""
        water_read = self._warmth.water.get(loop.id, ())
        key = (group, tuple(events), loop.water_c, ruler, water_read)
        kept = self._fed.get(group.id)
        if kept is None or not same(kept[0], key):
            kept = self._fed[group.id] = (key, self._fed_anew(group, events, loop, ruler))
        return kept[1]

    def _fed_anew(self, group: FishGroup, events: list[FishEvent], loop: Loop, ruler: Ruler) -> FedGroup:
        species = self._catalogue.fish[group.species]
        days = max((ruler.date_of(ruler.days) - group.stocked_on).days, 0)
        found = forecast_group(
            group,
            events,
            species=species,
            water_c=self.water_c(loop, start_on=group.stocked_on, days=days),
            ration=self._ration(group),
            appetite=self._appetite,
            ruler=ruler,
        )
        return FedGroup(group=found, species=species, feed=self._catalogue.feeds[group.feed])

    def life_of(self, farm: Farm, group: FishGroup) -> GroupForecast:
        """Return a group of the last farm from the day it is stocked to the end of the plan, in whole weeks.

        Day 0 is the day of stocking: what went before the plan is in it too.
        """
        plan, tanks = ruler_of(farm), by_id(farm.tanks)
        days = max((plan.date_of(plan.days) - group.stocked_on).days, 0)
        life = Ruler(start_on=group.stocked_on, weeks=-(-days // DAYS_PER_WEEK))
        loop: Loop = by_id(farm.loops)[tanks[group.tank].loop]
        return self._fed_anew(group, _events_by_group(farm).get(group.id, []), loop, life).group

    def water_c(self, loop: Loop, *, start_on: date, days: int) -> Floats | None:
        """Return the water of a loop of the last farm by day [°C], drawn to readings; None if not known."""
        return drawn_series(
            loop.water_c,
            self._warmth.water.get(loop.id, ()),
            start_on=start_on,
            days=days,
            fade_days=self._fade_days,
            floor=0.0,
        )

    def _ration(self, group: FishGroup) -> Ration | None:
        if group.feeding is not Feeding.TABLE:
            return None
        return table_ration(self._catalogue.feeding_tables[group.feeding_table])


def _events_by_group(farm: Farm) -> dict[Id, list[FishEvent]]:
    events: dict[Id, list[FishEvent]] = {}
    for event in sorted(farm.fish_events, key=_on):
        events.setdefault(event.group, []).append(event)
    return events


def _on(event: FishEvent) -> date:
    return event.on


def _sources(catalogue: Catalogue, crops: Sequence[str]) -> tuple[str, ...]:
    """Return the publications behind the crops' figures, each once."""
    fields = FIGURE_SPECS[Crop]
    found = (catalogue.figure(f"crop/{crop}/{field}").source for crop in crops for field in fields)
    return tuple(dict.fromkeys(source for source in found if source))
