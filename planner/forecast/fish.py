"""What the fish do, day by day: number, weight, feed, gain, harvest.

A plain walk through the days: every event of the grower is met on its day, and feed and growth stay
tied by the feed conversion, so that mass closes.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Final, Protocol

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.fish import Feeding, FishEvent, FishEventKind, FishGroup
from planner.farm.species import FishSpecies, FishStage
from planner.forecast.values import Floats, GroupForecast, Ruler
from planner.science.fish import effective_temperature

_CUBE_ROOT: Final = 1.0 / 3.0
_PER_THOUSAND: Final = 1000.0
_PERCENT: Final = 100.0


class Ration(Protocol):
    """Percent of body weight a day for a weight [g] at a water temperature [°C]."""

    @property
    def holds_at_c(self) -> float | None:
        """The one temperature that all rations are for [°C]; None where they are told by temperature."""

    def __call__(self, weight_g: float, temperature_c: float) -> float:
        """Return the ration [% of body weight a day]."""
        ...


@dataclass(frozen=True, slots=True, kw_only=True)
class Appetite:
    """What bounds growth and feed of all fish.

    Lighter than `fry_g` [g] a fish grows by the same share a day as one of that weight. Of an amount entered
    it eats up to `most_eaten_share` times what its growth asks for.
    """

    fry_g: float
    most_eaten_share: float


def share_of_table(ration: Ration, warmth_c: Floats, species: FishSpecies) -> Floats | None:
    """Return how much of a table's ration fish eat at some warmth that counts [0..1]; None: all of it.

    A table printed for one temperature does not know that fish in colder, or too warm, water eat less: there
    its ration goes with the species' growth. It is never more than printed.
    """
    if ration.holds_at_c is None:
        return None
    at = effective_temperature(
        ration.holds_at_c, base_c=species.base_c, optimum_c=species.optimum_c, ceiling_c=species.ceiling_c
    )
    return np.minimum(warmth_c / at, 1.0) if at > 0.0 else None


def appetite_of(catalogue: Catalogue) -> Appetite:
    """Return the bounds as the catalogue has them."""
    return Appetite(
        fry_g=catalogue.figure("coefficient/fish/fry_weight_g").value,
        most_eaten_share=catalogue.figure("coefficient/fish/most_eaten_share").value,
    )


@dataclass(slots=True)
class _Shoal:
    """The group on the day the walk has come to."""

    count: float
    weight_g: float
    feed_days_left: int = 0
    feed_given_g: float = 0.0
    fasting_days_left: int = 0


_Grown = tuple[float, float, float]
"""What one day gave: end weight, feed and gain of the whole group [g]."""

_SERIES: Final = ("count", "weight_g", "feed_g", "gain_g", "harvest_count", "harvest_g")
"""What is noted of each day, by the names of `GroupForecast`."""


def forecast_group(
    group: FishGroup,
    events: Sequence[FishEvent],
    *,
    species: FishSpecies,
    water_c: Floats | None,
    ration: Ration | None,
    appetite: Appetite,
    ruler: Ruler,
) -> GroupForecast:
    """Return the group by day over the ruler.

    `water_c` is the water temperature of each day from the day of stocking to the end of the ruler,
    None when it is not known: growth then goes at the species' optimum. `ration` is the feeding
    table of a group fed by table.
    """
    first = ruler.day_of(group.stocked_on)
    days = max(ruler.days - first, 0)
    temperature = np.full(days, species.optimum_c) if water_c is None else water_c
    walk = _Walk(
        group=group, events=events, species=species, temperature=temperature, ration=ration, appetite=appetite
    )
    noted = walk.through(days, notes_from=max(-first, 0))
    series = np.zeros((len(_SERIES), ruler.days))
    start = max(first, 0)
    if noted:
        series[:, start : start + len(noted)] = np.asarray(noted).T
    # Once nothing swims and nothing is to come, only the last weight stays to be seen.
    series[_SERIES.index("weight_g"), min(start, ruler.days) + len(noted) :] = walk.shoal.weight_g
    return GroupForecast(
        group=group.id, name=group.name, tank=group.tank, **dict(zip(_SERIES, series, strict=True))
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
        appetite: Appetite,
    ) -> None:
        self._group = group
        self._species = species
        self._temperature: list[float] = temperature.tolist()
        warmth = effective_temperature(
            temperature, base_c=species.base_c, optimum_c=species.optimum_c, ceiling_c=species.ceiling_c
        )
        self._warmth: list[float] = warmth.tolist()
        share = None if ration is None else share_of_table(ration, warmth, species)
        self._of_table: list[float] | None = None if share is None else share.tolist()
        self._ration = ration
        self._appetite = appetite
        self._by_age: dict[int, list[FishEvent]] = {}
        for event in events:
            self._by_age.setdefault((event.on - group.stocked_on).days, []).append(event)
        self._last_event = max(self._by_age, default=0)
        self._purge = _purge_ages(self._by_age, round(species.purge_days))
        own = group.daily_death_share
        self._lives = 1.0 - (species.daily_death_share if own is None else own)
        self._grows = self._how_grown(group.feeding)
        self.shoal = _Shoal(count=float(group.count), weight_g=group.mean_weight_g)

    def _how_grown(self, feeding: Feeding) -> Callable[[int], _Grown]:
        return {
            Feeding.GROWTH: self._grown_by_warmth,
            Feeding.FIXED: self._grown_fixed,
            Feeding.PERCENT: self._grown_by_percent,
            Feeding.TABLE: self._grown_by_table,
        }[feeding]

    def through(self, days: int, *, notes_from: int) -> list[tuple[float, ...]]:
        """Go through so many days from stocking; return what `_SERIES` names of each day noted.

        Ends on the day after which no fish are left and no event is to come.
        """
        noted: list[tuple[float, ...]] = []
        shoal = self.shoal
        for age in range(days):
            taken, taken_g = self._morning(age) if age in self._by_age else (0.0, 0.0)
            weight_g, feed_g, gain_g = self._fed_and_grown(age)
            if age >= notes_from:
                noted.append((shoal.count, shoal.weight_g, feed_g, gain_g, taken, taken_g))
            shoal.weight_g = weight_g
            shoal.count *= self._lives
            if shoal.count <= 0 and age >= self._last_event:
                break
        return noted

    def _morning(self, age: int) -> tuple[float, float]:
        """Meet the day's events; return fish harvested and their mass [g]."""
        taken = taken_g = 0.0
        for event in self._by_age[age]:
            if event.kind is FishEventKind.HARVEST:
                many = self.shoal.count if event.count is None else min(event.count, self.shoal.count)
                taken, taken_g = taken + many, taken_g + many * self.shoal.weight_g
                self.shoal.count -= many
            else:
                _meet(event, self.shoal)
        return taken, taken_g

    def _fed_and_grown(self, age: int) -> _Grown:
        """Return what is fed and grown on a day, `age` days after stocking."""
        shoal = self.shoal
        fasting, given = shoal.fasting_days_left, shoal.feed_days_left
        shoal.fasting_days_left, shoal.feed_days_left = max(fasting - 1, 0), max(given - 1, 0)
        if shoal.count <= 0 or fasting > 0 or age in self._purge:
            return shoal.weight_g, 0.0, 0.0
        if self._warmth[age] <= 0.0:
            return self._without_appetite(given=given > 0)
        return self._grown_on(shoal.feed_given_g, age) if given > 0 else self._grows(age)

    def _without_appetite(self, *, given: bool) -> _Grown:
        """Return a day too cold or too warm to eat: a ration stops, what is given all the same is lost."""
        shoal, feed_g = self.shoal, 0.0
        if given:
            feed_g = shoal.feed_given_g
        elif self._group.feeding is Feeding.FIXED:
            feed_g = self._group.feed_g_per_day or 0.0
        return shoal.weight_g, feed_g, 0.0

    def _grown_by_warmth(self, age: int) -> _Grown:
        weight_g = self._weight_after(age)
        gain_g = self.shoal.count * (weight_g - self.shoal.weight_g)
        return weight_g, gain_g * self._fcr(), gain_g

    def _weight_after(self, age: int) -> float:
        """Return what a fish weighs after a day by its growth coefficient [g], as `weight_after_day` does."""
        before_g = self.shoal.weight_g
        by_g = max(before_g, self._appetite.fry_g)
        root = by_g**_CUBE_ROOT + self._tgc() / _PER_THOUSAND * self._warmth[age]
        return before_g * max(float(root**3) / by_g, 1.0)

    def _grown_on(self, feed_g: float, age: int) -> _Grown:
        """Return a day with an amount of feed; what is more than fish eat is fed all the same, and lost."""
        most_g = self._appetite.most_eaten_share * (self._weight_after(age) - self.shoal.weight_g)
        gain_g = min(feed_g / self._fcr(), most_g * self.shoal.count)
        return self.shoal.weight_g + gain_g / self.shoal.count, feed_g, gain_g

    def _grown_fixed(self, age: int) -> _Grown:
        return self._grown_on(self._group.feed_g_per_day or 0.0, age)

    def _grown_by_percent(self, age: int) -> _Grown:
        percent = self._group.feed_percent or 0.0
        return self._grown_on(self.shoal.count * self.shoal.weight_g * percent / _PERCENT, age)

    def _grown_by_table(self, age: int) -> _Grown:
        assert self._ration is not None
        percent = self._ration(self.shoal.weight_g, self._temperature[age])
        if self._of_table is not None:
            percent *= self._of_table[age]
        feed_g = self.shoal.count * self.shoal.weight_g * percent / _PERCENT
        gain_g = feed_g / self._fcr()
        return self.shoal.weight_g + gain_g / self.shoal.count, feed_g, gain_g

    def _tgc(self) -> float:
        return self._stage().tgc if self._group.tgc is None else self._group.tgc

    def _fcr(self) -> float:
        return self._stage().fcr if self._group.fcr is None else self._group.fcr

    def _stage(self) -> FishStage:
        for stage in self._species.stages:
            if self.shoal.weight_g <= stage.up_to_g:
                return stage
        return self._species.stages[-1]


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
        case FishEventKind.TREATED:
            pass  # changes neither number nor weight
        case FishEventKind.HARVEST:
            raise ValueError("a harvest is met where its fish are counted")


def _purge_ages(by_age: Mapping[int, Sequence[FishEvent]], days: int) -> frozenset[int]:
    """Return the days since stocking without feed, before the whole group is harvested."""
    return frozenset(
        age - back
        for age, events in by_age.items()
        if any(event.kind is FishEventKind.HARVEST and event.count is None for event in events)
        for back in range(1, days + 1)
    )


def total_feed_g(groups: Sequence[GroupForecast], ruler: Ruler) -> Floats:
    """Return the feed of several groups together [g/d]."""
    return sum((group.feed_g for group in groups), start=np.zeros(ruler.days))


def ready_day(group: GroupForecast, harvest_weight_g: float) -> int | None:
    """Return the first day with fish as heavy as they are harvested, None when there is none."""
    heavy = (group.weight_g >= harvest_weight_g) & (group.count > _FEW_FISH)
    found = np.flatnonzero(heavy)
    return int(found[0]) if found.size else None


_FEW_FISH: Final = 0.5
"""Less than this of a fish is what expected deaths leave of none."""
