"""Why a way of stocking is judged as it is, and why the feed falls so far when one harvest is taken."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import partial
from typing import Final

import numpy as np

from planner.farm.changes import applied
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.fields import Id
from planner.forecast.engine import Forecaster
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, worked
from planner.forecast.why.many import largest
from planner.forecast.why.values import Explanation, Note, NoteKind
from planner.planning.answering import Maker
from planner.planning.stocking.harvests import HarvestOption
from planner.planning.stocking.options import HarvestHole, Stocked, StockingOption, StockingTable
from planner.planning.stocking.wish import takes_of
from planner.planning.why_farms import ground_of, why_fullest, why_least

_ADVICE: Final = "coefficient/advice/"
_L_PER_M3: Final = 1000.0
_G_PER_KG: Final = 1000.0
_PERCENT: Final = 100.0
_UNEVEN: Final = "unevenness of the feed"


def stocking_whys(table: StockingTable, ground: Ground) -> dict[str, Maker]:
    """Return why each way of stocking of a table is judged as it is; `ground` is the farm it was made for."""
    found: dict[str, Maker] = {}
    for option in table.options:
        why = _Way(option, table, ground)
        for what, maker in why.figures().items():
            found[way_name(option, what)] = maker
        for one in option.stocked:
            found[way_name(option, stocked_name(one, ground.tanks[one.tank].name))] = partial(
                why.stocked, one
            )
        for hole in option.holes:
            found[way_name(option, f"hole {hole.on.isoformat()} fall")] = partial(why_fall, hole, ground)
            found[way_name(option, f"hole {hole.on.isoformat()} back")] = partial(why_back, hole)
    return found


def way_name(option: StockingOption, what: str) -> str:
    """Return what a figure of a way is called, such as "stock 4 50 apart"."""
    return f"stock {option.groups} {option.share * _PERCENT:.0f} {what}"


def stocked_name(one: Stocked, tank: str) -> str:
    """Return what the fish of one stocking are called, by the name of their tank."""
    return f"{one.on.isoformat()} {tank} fish"


def why_fall(hole: HarvestHole, ground: Ground) -> Explanation:
    """Return how far the feed falls at a harvest, against what was usual before."""
    weeks = ground.figure("weeks_before", f"{_ADVICE}hole_weeks_before")
    if hole.usual_g_per_day <= 0.0:
        return Explanation(
            title="fall of the feed", about="", value=0.0, unit="1", formula=Formula.NOTHING, on=hole.on
        )
    return Explanation(
        title="fall of the feed",
        about="",
        value=hole.depth_share,
        unit="1",
        formula=Formula.FALL,
        inputs=(
            worked("lowest", hole.lowest_g_per_day, "g/d"),
            worked("before", hole.usual_g_per_day, "g/d"),
            weeks,
        ),
        on=hole.on,
    )


def why_back(hole: HarvestHole) -> Explanation:
    """Return how long it takes until feed is back at what was usual before."""
    days = () if hole.weeks is None else (worked("days", hole.weeks * DAYS_PER_WEEK, "d"),)
    missing = Note(kind=NoteKind.NOT_IN_PLAN)
    return Explanation(
        title="weeks until feed is back",
        about="",
        value=hole.weeks,
        unit="weeks",
        formula=Formula.IN_WEEKS,
        inputs=(*days, worked("back_at", hole.usual_g_per_day, "g/d")),
        notes=(missing,) if hole.weeks is None else (),
        on=hole.on,
    )


@dataclass(frozen=True)
class _Way:
    """One way of stocking."""

    option: StockingOption
    table: StockingTable
    ground: Ground

    def figures(self) -> Mapping[str, Maker]:
        """Return what can be asked of the way."""
        return {
            "apart": self.apart,
            "fall": self.deepest,
            "longest": self.longest,
            "uneven": self.uneven,
            "in-band": self.inside,
            "fullest": self.fullest,
            "feed": self.feed,
            "score": self.score,
        }

    def _made(self, bare: Explanation) -> Explanation:
        return replace(bare, notes=(*bare.notes, self._judged_note()))

    def _judged_note(self) -> Note:
        ends = (
            ("from", self.table.judged_from_on.isoformat()),
            ("until", self.table.judged_until_on.isoformat()),
        )
        return Note(kind=NoteKind.JUDGED_WEEKS, values=ends)

    def apart(self) -> Explanation:
        """Return how many weeks lie between two groups."""
        option = self.option
        return Explanation(
            title="weeks between two groups",
            about="",
            value=option.apart_weeks,
            unit="weeks",
            formula=Formula.APART,
            inputs=(
                worked("weeks_to_grow", option.grow_weeks, "weeks"),
                worked("harvests_of_one", takes_of(option.share), "harvests"),
                entered("groups", option.groups, "groups", "the table"),
                worked("weeks_between_harvests_of_one", option.take_apart_weeks, "weeks"),
                self.ground.figure("most_weeks_between", f"{_ADVICE}part_harvest_apart_weeks"),
            ),
        )

    def deepest(self) -> Explanation:
        """Return the largest fall of the feed at any harvest."""
        return self._most(
            "largest fall of the feed", [why_fall(one, self.ground) for one in self.option.holes], "1"
        )

    def longest(self) -> Explanation:
        """Return the longest time until feed is back."""
        parts = [why_back(one) for one in self.option.holes]
        found = self._most("longest time until feed is back", parts, "weeks")
        if self.option.longest_weeks is not None:
            return found
        return replace(found, value=None, notes=(Note(kind=NoteKind.NOT_IN_PLAN), *found.notes))

    def _most(self, title: str, parts: list[Explanation], unit: str) -> Explanation:
        kept, _, notes = largest(parts)
        value = max((one.value or 0.0 for one in parts), default=0.0)
        return Explanation(
            title=title,
            about="",
            value=value,
            unit=unit,
            formula=Formula.MOST if parts else Formula.NOTHING,
            children=kept,
            notes=(*notes, self._judged_note()),
        )

    def uneven(self) -> Explanation:
        """Return how far the feed of weeks spreads around its mean."""
        feed = np.asarray(self.option.judged.feed_g)
        mean = float(feed.mean()) if feed.size else 0.0
        if mean <= 0.0:
            return self._made(
                Explanation(
                    title="unevenness of the feed", about="", value=0.0, unit="1", formula=Formula.NOTHING
                )
            )
        return self._made(
            Explanation(
                title="unevenness of the feed",
                about="",
                value=self.option.variation,
                unit="1",
                formula=Formula.VARIATION,
                inputs=(
                    worked("standard_deviation", float(feed.std()), "g/d"),
                    worked("mean", mean, "g/d"),
                ),
                children=(self.feed(),),
            )
        )

    def feed(self) -> Explanation:
        """Return the mean feed of the judged weeks."""
        feed = self.option.judged.feed_g
        return self._made(
            Explanation(
                title="mean feed",
                about="",
                value=self.option.mean_feed_g_per_day,
                unit="g/d",
                formula=Formula.SHARE,
                inputs=(worked("part", sum(feed), "g/d"), worked("whole", len(feed), "weeks")),
            )
        )

    def _distances(self) -> tuple[int, int, float]:
        """Return weeks that ask for feed, those inside the band, and the mean relative distance from it."""
        judged = self.option.judged
        feed, low, high = (np.asarray(one) for one in (judged.feed_g, judged.low_g, judged.high_g))
        asks = high > 0.0
        away = np.maximum(np.maximum(low - feed, feed - high), 0.0)[asks] / ((low + high) / 2.0)[asks]
        return int(asks.sum()), int((away <= 0.0).sum()), float(away.mean()) if away.size else 0.0

    def inside(self) -> Explanation:
        """Return the share of weeks whose feed lies inside the band that beds ask for."""
        asking, inside, _ = self._distances()
        judged = self.option.judged
        ends = (
            [value for value in judged.low_g if value > 0.0],
            [value for value in judged.high_g if value > 0.0],
        )
        band = tuple(
            worked(f"mean_{name}_end_of_band", sum(values) / len(values), "g/d")
            for name, values in zip(("low", "high"), ends, strict=True)
            if values
        )
        return self._made(
            Explanation(
                title="weeks inside the band",
                about="",
                value=self.option.inside_share,
                unit="1",
                formula=Formula.SHARE,
                inputs=(worked("part", inside, "weeks"), worked("whole", asking, "weeks"), *band),
            )
        )

    def score(self) -> Explanation:
        """Return what ways are ranked by; the lowest is the best."""
        _, _, distance = self._distances()
        return self._made(
            Explanation(
                title="score of the way",
                about="",
                value=self.option.score,
                unit="1",
                formula=Formula.STOCKING_SCORE,
                inputs=(
                    worked("inside_share", self.option.inside_share, "1"),
                    worked("mean_distance", distance, "1"),
                ),
                children=(self.inside(),),
            )
        )

    def fullest(self) -> Explanation:
        """Return how full the tank gets that comes nearest to its limit."""
        judged = self.option.judged
        tank = self.ground.tanks[judged.fullest_tank]
        return Explanation(
            title="fullest tank",
            about=tank.name,
            value=self.option.peak_density_kg_per_m3,
            unit="kg/m³",
            formula=Formula.DENSITY,
            inputs=(
                worked("mass_kg", judged.fullest_mass_g / _G_PER_KG, "kg"),
                entered("volume_l", tank.volume_l, "L", tank.name),
                worked("limit", self.option.density_limit_kg_per_m3, "kg/m³"),
            ),
            on=judged.fullest_on,
        )

    def stocked(self, one: Stocked) -> Explanation:
        """Return why so many fish go into a tank: the best that was found, and what it is ranked by."""
        tank = self.ground.tanks[one.tank]
        together = sum(
            each.count for each in self.option.stocked if (each.slot, each.on) == (one.slot, one.on)
        )
        return Explanation(
            title="fish stocked",
            about=tank.name,
            value=float(one.count),
            unit="fish",
            formula=Formula.SEARCHED,
            inputs=(
                worked("fish_of_the_group", together, "fish"),
                entered("volume_l", tank.volume_l, "L", tank.name),
                worked("limit", self.option.density_limit_kg_per_m3, "kg/m³"),
            ),
            children=(self.score(), self.fullest()),
            on=one.on,
        )


def harvest_whys(
    options: tuple[HarvestOption, ...], group: Id, farm: Farm, forecaster: Forecaster
) -> dict[str, Maker]:
    """Return why the feed falls so far and so long with each way of taking the harvest of a fish group."""
    found: dict[str, Maker] = {}
    for one in options:
        ground = ground_of(applied(farm, one.change_set), forecaster)
        why = _Harvest(one, group, ground)
        name = partial(harvest_name, one)
        found[name("fall")] = partial(why_fall, one.hole, ground)
        found[name("back")] = partial(why_back, one.hole)
        found[name("lowest")] = why.lowest
        found[name("fullest")] = why.fullest
        if one.lowest_ratio is not None:
            found[name("least")] = why.least
    return found


def harvest_name(one: HarvestOption, what: str) -> str:
    """Return what a figure of a way to take a harvest is called."""
    return f"harvest {one.share * _PERCENT:.0f} {what}"


@dataclass(frozen=True)
class _Harvest:
    """One way of taking a harvest, with the farm as it would be."""

    option: HarvestOption
    group: Id
    ground: Ground

    def _first(self) -> int:
        return self.ground.forecast.ruler.day_of(self.option.hole.on)

    def _number(self) -> int:
        loops = self.ground.forecast.loops
        return next(n for n, loop in enumerate(loops) if any(g.group == self.group for g in loop.groups))

    def lowest(self) -> Explanation:
        """Return the feed of the lowest week after the first take: the mean of its days."""
        ruler, loop = self.ground.forecast.ruler, self.ground.forecast.loops[self._number()]
        first = ruler.day_of(self.option.lowest_on)
        feed = loop.feed_g[first : first + DAYS_PER_WEEK]
        return Explanation(
            title="lowest week of feed",
            about=loop.name,
            value=self.option.lowest_feed_g_per_day,
            unit="g/d",
            formula=Formula.SHARE,
            inputs=(worked("part", float(feed.sum()), "g"), worked("whole", feed.size, "d")),
            on=self.option.lowest_on,
        )

    def fullest(self) -> Explanation:
        """Return how full the tank of the group gets from the first take on."""
        tank = self.ground.groups[self.group].tank
        days = slice(self._first(), self.ground.forecast.ruler.days)
        return why_fullest(self.ground, (tank,), days)

    def least(self) -> Explanation:
        """Return the least supply for its demand in the weeks that are watched."""
        weeks = round(self.ground.catalogue.figure(f"{_ADVICE}remedy_watch_weeks").value)
        last = min(self._first() + weeks * DAYS_PER_WEEK, self.ground.forecast.ruler.days)
        watched = slice(self._first() // DAYS_PER_WEEK, -(-last // DAYS_PER_WEEK))
        return why_least(self.ground, (self._number(),), watched)
