"""What the fish do, day by day: number, weight, feed, gain, harvest.

A plain walk through the days: every event of the grower is met on its day, and feed and growth stay
tied by the feed conversion, so that mass closes.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final, Protocol

import numpy as np

from planner.farm.fish import Feeding, FishEvent, FishEventKind, FishGroup
from planner.farm.species import FishSpecies
from planner.forecast.values import Floats, GroupForecast, Ruler
from planner.science.fish import effective_temperature

_CUBE_ROOT: Final = 1.0 / 3.0
_PER_THOUSAND: Final = 1000.0
_PERCENT: Final = 100.0


class Ration(Protocol):
    """Percent of body weight a day for a weight [g] at a water temperature [°C]."""

    def __call__(self, weight_g: float, temperature_c: float) -> float:
        """Return the ration [% of body weight a day]."""
        ...


@dataclass(slots=True)
class _Shoal:
    """The group on the day the walk has come to."""

    count: float
    weight_g: float
    feed_days_left: int = 0
    feed_given_g: float = 0.0
    fasting_days_left: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class _Day:
    """What one day gave: end weight, feed and gain of the whole group."""

    weight_g: float
    feed_g: float
    gain_g: float


def forecast_group(
    group: FishGroup,
    events: Sequence[FishEvent],
    *,
    species: FishSpecies,
    water_c: Floats | None,
    ration: Ration | None,
    ruler: Ruler,
) -> GroupForecast:
    """Return the group by day over the ruler.

    `water_c` is the water temperature of each day from the day of stocking to the end of the ruler,
    None when it is not known: growth then goes at the species' optimum. `ration` is the feeding
    table of a group fed by table.
    """
    days = max((ruler.date_of(ruler.days) - group.stocked_on).days, 0)
    temperature = np.full(days, species.optimum_c) if water_c is None else water_c
    walk = _Walk(group=group, events=events, species=species, temperature=temperature, ration=ration)
    series = {name: np.zeros(ruler.days) for name in ("count", "weight", "feed", "gain", "out", "out_g")}
    first = ruler.day_of(group.stocked_on)
    for age in range(days):
        on = group.stocked_on + timedelta(days=age)
        taken, taken_g = walk.morning(on)
        did = walk.through_the_day(on, age=age)
        day = first + age
        if day >= 0:
            values = (walk.shoal.count, walk.shoal.weight_g, did.feed_g, did.gain_g, taken, taken_g)
            for name, value in zip(series, values, strict=True):
                series[name][day] = value
        walk.evening(did)
        if walk.is_over(on):
            # Nothing swims and nothing is to come: only the last weight stays to be seen.
            series["weight"][max(day + 1, 0) :] = walk.shoal.weight_g
            break
    return GroupForecast(
        group=group.id,
        name=group.name,
        tank=group.tank,
        count=series["count"],
        weight_g=series["weight"],
        feed_g=series["feed"],
        gain_g=series["gain"],
        harvest_count=series["out"],
        harvest_g=series["out_g"],
    )


class _Walk:
    """Goes through the days of one group."""

    def __init__(
        self,
        *,
        group: FishGroup,
        events: Sequence[FishEvent],
        species: FishSpecies,
        temperature: Floats,
        ration: Ration | None,
    ) -> None:
        self._group = group
        self._species = species
        self._temperature: list[float] = temperature.tolist()
        warmth = effective_temperature(
            temperature, base_c=species.base_c, optimum_c=species.optimum_c, ceiling_c=species.ceiling_c
        )
        self._warmth: list[float] = warmth.tolist()
        self._ration = ration
        self._last_event_on = max((event.on for event in events), default=group.stocked_on)
        self._by_day: dict[date, list[FishEvent]] = {}
        for event in events:
            self._by_day.setdefault(event.on, []).append(event)
        self._purge = _purge_days(events, round(species.purge_days))
        own = group.daily_death_share
        self._death_share = species.daily_death_share if own is None else own
        self.shoal = _Shoal(count=float(group.count), weight_g=group.mean_weight_g)

    def morning(self, on: date) -> tuple[float, float]:
        """Meet the day's events; return fish harvested and their mass [g]."""
        taken = taken_g = 0.0
        for event in self._by_day.get(on, ()):
            if event.kind is FishEventKind.HARVEST:
                many = self.shoal.count if event.count is None else min(event.count, self.shoal.count)
                taken, taken_g = taken + many, taken_g + many * self.shoal.weight_g
                self.shoal.count -= many
            else:
                _meet(event, self.shoal)
        return taken, taken_g

    def is_over(self, on: date) -> bool:
        """Tell whether no fish are left after a day and no event is to come."""
        return self.shoal.count <= 0 and on >= self._last_event_on

    def through_the_day(self, on: date, *, age: int) -> _Day:
        """Return what is fed and grown on a day, `age` days after stocking."""
        shoal = self.shoal
        nothing = _Day(weight_g=shoal.weight_g, feed_g=0.0, gain_g=0.0)
        if shoal.count <= 0 or shoal.fasting_days_left > 0 or on in self._purge:
            return nothing
        if shoal.feed_days_left > 0:
            return self._grown_on(shoal.feed_given_g)
        match self._group.feeding:
            case Feeding.GROWTH:
                return self._grown_by_warmth(self._warmth[age])
            case Feeding.FIXED:
                return self._grown_on(self._group.feed_g_per_day or 0.0)
            case Feeding.PERCENT:
                return self._grown_on_percent(self._group.feed_percent or 0.0)
            case Feeding.TABLE:
                assert self._ration is not None
                return self._grown_on_percent(self._ration(shoal.weight_g, self._temperature[age]))

    def evening(self, did: _Day) -> None:
        """Carry weight and losses over to the next day."""
        shoal = self.shoal
        shoal.weight_g = did.weight_g
        shoal.count *= 1.0 - self._death_share
        shoal.feed_days_left = max(shoal.feed_days_left - 1, 0)
        shoal.fasting_days_left = max(shoal.fasting_days_left - 1, 0)

    def _grown_by_warmth(self, warmth: float) -> _Day:
        shoal = self.shoal
        root = shoal.weight_g**_CUBE_ROOT + self._tgc() / _PER_THOUSAND * warmth
        weight_g = max(root**3, shoal.weight_g)
        gain_g = shoal.count * (weight_g - shoal.weight_g)
        return _Day(weight_g=weight_g, feed_g=gain_g * self._fcr(), gain_g=gain_g)

    def _grown_on(self, feed_g: float) -> _Day:
        shoal = self.shoal
        gain_g = feed_g / self._fcr()
        return _Day(weight_g=shoal.weight_g + gain_g / shoal.count, feed_g=feed_g, gain_g=gain_g)

    def _grown_on_percent(self, percent: float) -> _Day:
        return self._grown_on(self.shoal.count * self.shoal.weight_g * percent / _PERCENT)

    def _tgc(self) -> float:
        return self._of_stage("tgc") if self._group.tgc is None else self._group.tgc

    def _fcr(self) -> float:
        return self._of_stage("fcr") if self._group.fcr is None else self._group.fcr

    def _of_stage(self, name: str) -> float:
        for stage in self._species.stages:
            if self.shoal.weight_g <= stage.up_to_g:
                return float(getattr(stage, name))
        return float(getattr(self._species.stages[-1], name))


def _meet(event: FishEvent, shoal: _Shoal) -> None:
    """Let an event other than a harvest happen to the shoal."""
    match event.kind:
        case FishEventKind.DEATHS:
            shoal.count = max(shoal.count - (event.count or 0), 0.0)
        case FishEventKind.ADDED:
            added, weight_g = float(event.count or 0), event.mean_weight_g or 0.0
            mass_g = shoal.count * shoal.weight_g + added * weight_g
            shoal.count += added
            shoal.weight_g = mass_g / shoal.count
        case FishEventKind.SAMPLE:
            shoal.weight_g = event.mean_weight_g or shoal.weight_g
        case FishEventKind.OFF_FEED:
            shoal.fasting_days_left = event.days or 0
        case FishEventKind.FEED_GIVEN:
            shoal.feed_days_left, shoal.feed_given_g = event.days or 0, event.feed_g_per_day or 0.0
        case FishEventKind.HARVEST:
            raise ValueError("a harvest is met where its fish are counted")


def _purge_days(events: Sequence[FishEvent], days: int) -> frozenset[date]:
    """Return the days without feed before the whole group is harvested."""
    return frozenset(
        event.on - timedelta(days=back)
        for event in events
        if event.kind is FishEventKind.HARVEST and event.count is None
        for back in range(1, days + 1)
    )


def total_feed_g(groups: Sequence[GroupForecast], ruler: Ruler) -> Floats:
    """Return the feed of several groups together [g/d]."""
    return sum((group.feed_g for group in groups), start=np.zeros(ruler.days))
