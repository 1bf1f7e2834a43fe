"""Why supply of an element is short in a week: what changed against the four weeks before, or never was.

Every reason carries what it takes from the ratio of supply to demand, so that the largest comes first.
Reasons are codes with numbers; sentences are made of them elsewhere.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from enum import Enum
from functools import cached_property
from typing import Final

import numpy as np

from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.fields import Id
from planner.farm.fish import Feeding, FishGroup
from planner.farm.water import Dose
from planner.forecast.engine import Forecaster
from planner.forecast.flags import supply_flags
from planner.forecast.values import Flag, FlagKind, Floats, Forecast, GroupForecast, LoopForecast
from planner.forecast.why.fates import fate_of
from planner.forecast.why.fish import given_feed_note
from planner.forecast.why.ground import Ground, week_days
from planner.forecast.why.growing import water_c_on
from planner.forecast.why.values import NoteKind
from planner.science.fish import effective_temperature

_WEEKS_BEFORE: Final = 4
_DAYS_BEFORE: Final = _WEEKS_BEFORE * DAYS_PER_WEEK
_SURFACE_POWER: Final = 2.0 / 3.0
"""Growth by a coefficient on the cube root of weight goes with weight to this power."""
_FIRST_PICK: Final = 3


class ReasonKind(Enum):
    """What makes an element short."""

    FISH_HARVESTED = "fish harvested"
    OFF_FEED = "off feed"
    DOSE_ENDED = "dose ended"
    NEAR_HARVEST = "plants near harvest"
    MORE_PLANTS = "more plants"
    NO_FISH = "no fish"
    YOUNG_FISH = "young fish"
    COLD_WATER = "cold water"
    WARM_WATER = "warm water"
    LITTLE_FED = "little fed"
    LITTLE_IN_FEED = "little in feed"


CHANGES: Final = frozenset(
    {
        ReasonKind.FISH_HARVESTED,
        ReasonKind.OFF_FEED,
        ReasonKind.DOSE_ENDED,
        ReasonKind.NEAR_HARVEST,
        ReasonKind.MORE_PLANTS,
    }
)
"""Reasons that are a change against the weeks before; the others hold all along."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Reason:
    """One cause of a shortage.

    `ratio_lost` is what it takes from the ratio of supply to demand of `element`; `about` is the
    group, supplement or loop by name.
    """

    kind: ReasonKind
    element: int
    ratio_lost: float
    about: str
    on: date | None = None
    until_on: date | None = None
    values: tuple[tuple[str, float | str], ...] = ()


def reasons(
    forecast: Forecast,
    farm: Farm,
    *,
    loop: Id,
    week: int,
    forecaster: Forecaster,
    element: int | None = None,
) -> tuple[Reason, ...]:
    """Return why an element is short in a week, changes first, each by what it takes; empty if it is not.

    Without an element it is the one with the least supply for its demand. Raises `NoSuchFigureError`
    for a loop or week that is not there.
    """
    ground = Ground(farm=farm, forecast=forecast, forecaster=forecaster)
    ground.check_week(week)
    number, found = ground.loop_forecast(loop)
    verdict = ground.verdict(found, week)
    asked = verdict.limiting if element is None else element
    ratio = None if asked is None else verdict.ratio[asked]
    if asked is None or ratio is None or ratio >= ground.bands.thin_below:
        return ()
    shortage = _Shortage(ground=ground, number=number, loop=found, week=week, element=asked, ratio=ratio)
    least = ground.catalogue.figure("coefficient/why/least_ratio_lost").value
    told = [reason for reason in shortage.all_reasons() if reason.ratio_lost >= least]
    return tuple(sorted(told, key=_order))


def _order(reason: Reason) -> tuple[bool, float, str, str]:
    return reason.kind not in CHANGES, -reason.ratio_lost, reason.kind.value, reason.about


@dataclass(frozen=True, kw_only=True)
class _Shortage:
    """One element in one week of a loop, with what is asked about it more than once."""

    ground: Ground
    number: int
    loop: LoopForecast
    week: int
    element: int
    ratio: float

    def all_reasons(self) -> Iterator[Reason]:
        """Yield every cause that can be told, small ones too."""
        if not self.loop.feed_g[self.days].any() and not self._counts().any():
            yield self._reason(ReasonKind.NO_FISH, 1.0 - self.ratio, self.loop.name)
        for flag in self._falls():
            yield from self._harvested(flag)
        for group in self.loop.groups:
            yield from self._off_feed(group)
            yield from self._young(group)
            yield from self._out_of_warmth(group)
        yield from self._doses_ended()
        yield from self._more_wanted()
        yield from self._little_fed()

    @cached_property
    def days(self) -> slice:
        """The days of the week."""
        return week_days(self.week)

    @cached_property
    def demand_g(self) -> float:
        """What is wanted in the week [g]."""
        return float(self.loop.demand_g[self.element, self.days].sum())

    def _counts(self) -> Floats:
        empty = np.zeros(DAYS_PER_WEEK)
        return sum((group.count[self.days] for group in self.loop.groups), start=empty)

    def _reason(
        self,
        kind: ReasonKind,
        ratio_lost: float,
        about: str,
        *,
        span: tuple[date | None, date | None] = (None, None),
        values: tuple[tuple[str, float | str], ...] = (),
    ) -> Reason:
        return Reason(
            kind=kind,
            element=self.element,
            ratio_lost=float(ratio_lost),
            about=about,
            on=span[0],
            until_on=span[1],
            values=values,
        )

    # --- changes ---------------------------------------------------------------------------------

    def _falls(self) -> Iterator[Flag]:
        """Yield the falls of the feed after a harvest of fish that are not over by this week."""
        ruler = self.ground.forecast.ruler
        start, end = ruler.week_start(self.week), ruler.week_start(self.week + 1)
        for flag in supply_flags([self.loop], ruler, self.ground.bands):
            begun = flag.kind is FlagKind.FEED_FALLS and flag.on is not None and flag.on < end
            if begun and (flag.until_on is None or flag.until_on > start):
                yield flag

    def _harvested(self, flag: Flag) -> Iterator[Reason]:
        assert flag.on is not None
        day = self.ground.forecast.ruler.day_of(flag.on)
        before = self.loop.dissolved_g[self.element, max(day - _DAYS_BEFORE, 0) : day]
        now = float(self.loop.dissolved_g[self.element, self.days].sum())
        values = dict(flag.values)
        used_to_be = float(before.mean()) * DAYS_PER_WEEK if before.size else 0.0
        # The harvest answers for its own fall only, not for a winter that keeps the feed low after it.
        lost = min(used_to_be - now, used_to_be * float(values["fall_share"])) / self.demand_g
        told = (("fish", values["fish"]), ("fall_share", values["fall_share"]))
        span = (flag.on, flag.until_on)
        yield self._reason(ReasonKind.FISH_HARVESTED, lost, flag.name, span=span, values=told)

    def _off_feed(self, group: GroupForecast) -> Iterator[Reason]:
        entry: FishGroup = self.ground.groups[group.group]
        kinds = (NoteKind.OFF_FEED, NoteKind.PURGED, NoteKind.NO_APPETITE)
        span = range(self.days.start, self.days.stop)
        notes = {day: given_feed_note(self.ground, entry, group, day) for day in span}
        idle = [day for day, note in notes.items() if note is not None and note.kind in kinds]
        dissolved = fate_of(self.ground, group).dissolved_g[self.element]
        before = dissolved[max(self.days.start - _DAYS_BEFORE, 0) : self.days.start]
        if not idle or not before.size:
            return
        date_of = self.ground.forecast.ruler.date_of
        yield self._reason(
            ReasonKind.OFF_FEED,
            float(before.mean()) * len(idle) / self.demand_g,
            group.name,
            span=(date_of(idle[0]), date_of(idle[-1])),
            values=(("days", float(len(idle))),),
        )

    def _doses_ended(self) -> Iterator[Reason]:
        weekly = self.ground.forecast.ruler.weekly_sum(self.loop.dose_g)[self.element]
        before = weekly[max(self.week - _WEEKS_BEFORE, 0) : self.week]
        if not before.size:
            return
        lost = (float(before.mean()) - float(weekly[self.week])) / self.demand_g
        last = max(self._ended(), key=_end_of, default=None)
        if lost > 0 and last is not None:
            name = self.ground.catalogue.supplements[last.supplement].name
            yield self._reason(ReasonKind.DOSE_ENDED, lost, name, span=(_end_of(last), None))

    def _ended(self) -> Iterator[Dose]:
        end = self.ground.forecast.ruler.week_start(self.week + 1)
        for dose in self.ground.farm.doses:
            if dose.loop == self.loop.loop and _end_of(dose) < end:
                yield dose

    def _more_wanted(self) -> Iterator[Reason]:
        ruler = self.ground.forecast.ruler
        demand = ruler.weekly_sum(self.loop.demand_g)[self.element]
        supply = ruler.weekly_sum(self.loop.supply_g)[self.element]
        weeks = slice(max(self.week - _WEEKS_BEFORE, 0), self.week)
        if not demand[weeks].size or demand[weeks].mean() <= 0:
            return
        mean = float(demand[weeks].mean())
        lost = float(supply[weeks].mean()) * (1.0 / mean - 1.0 / self.demand_g)
        near, earlier = self._plants_near_harvest(self.week), self._plants_near_harvest(weeks.start)
        kind = ReasonKind.NEAR_HARVEST if near >= earlier and near else ReasonKind.MORE_PLANTS
        values = (("plants", float(near)), ("rise_share", self.demand_g / mean - 1.0))
        yield self._reason(kind, lost, self.loop.name, values=values)

    def _plants_near_harvest(self, week: int) -> int:
        table, days = self.ground.forecast.batches, week_days(week)
        near = round(self.ground.catalogue.figure("coefficient/why/near_harvest_days").value)
        first = table.ends[:, _FIRST_PICK]
        inside = (table.loop == self.number) & (first >= days.start) & (first < days.stop + near)
        return int(table.plants[inside].sum())

    # --- what holds all along --------------------------------------------------------------------

    def _from_group(self, group: GroupForecast) -> float:
        """Return what a group's feed brings in the week against what is wanted."""
        dissolved = fate_of(self.ground, group).dissolved_g[self.element, self.days]
        return float(dissolved.sum()) / self.demand_g

    def _young(self, group: GroupForecast) -> Iterator[Reason]:
        entry: FishGroup = self.ground.groups[group.group]
        grown = self.ground.catalogue.fish[entry.species].harvest_weight_g
        weight = float(group.weight_g[self.days].mean())
        if entry.feeding is Feeding.FIXED or weight <= 0 or weight >= grown:
            return
        lost = self._from_group(group) * ((grown / weight) ** _SURFACE_POWER - 1.0)
        values = (("weight_g", weight), ("harvest_weight_g", grown))
        yield self._reason(ReasonKind.YOUNG_FISH, lost, group.name, values=values)

    def _out_of_warmth(self, group: GroupForecast) -> Iterator[Reason]:
        entry: FishGroup = self.ground.groups[group.group]
        fish = self.ground.catalogue.fish[entry.species]
        water_c = water_c_on(self.ground, entry, self.days.start + DAYS_PER_WEEK // 2)
        share = (
            effective_temperature(
                water_c, base_c=fish.base_c, optimum_c=fish.optimum_c, ceiling_c=fish.ceiling_c
            )
            / fish.optimum_c
        )
        if entry.feeding is not Feeding.GROWTH or not group.count[self.days].any():
            return
        kind = ReasonKind.COLD_WATER if water_c < fish.optimum_c else ReasonKind.WARM_WATER
        # Below the base nothing is eaten at all: then warmth explains the whole shortage.
        lost = self._from_group(group) * (1.0 / share - 1.0) if share > 0 else 1.0 - self.ratio
        values = (("water_c", water_c), ("optimum_c", fish.optimum_c), ("growth_share", float(share)))
        yield self._reason(kind, lost, group.name, values=values)

    def _little_fed(self) -> Iterator[Reason]:
        """Yield that less is fed than the published band asks, or that the feed itself holds too little."""
        verdict = self.ground.verdict(self.loop, self.week)
        fed, band = verdict.feed_ratio_g_per_m2_d, verdict.fao_band
        if not fed or band is None:
            return
        from_feed = float(self.loop.dissolved_g[self.element, self.days].sum()) / self.demand_g
        values: tuple[tuple[str, float | str], ...] = (("fed", fed), ("low", band[0]), ("high", band[1]))
        if fed < band[0]:
            lost = from_feed * (band[0] / fed - 1.0)
            yield self._reason(ReasonKind.LITTLE_FED, lost, self.loop.name, values=values)
        most = from_feed * max(band[1] / fed, 1.0)
        rest = self.ratio - from_feed
        if most + rest < self.ground.bands.thin_below:
            lost = self.ground.bands.thin_below - most - rest
            yield self._reason(ReasonKind.LITTLE_IN_FEED, lost, self.loop.name, values=values)


def _end_of(dose: Dose) -> date:
    """Return the last day a dose is given on; one without an end runs on for good."""
    if dose.every_days == 0:
        return dose.on
    return dose.until_on or date.max
