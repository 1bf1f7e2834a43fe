"""Why a repair of a flagged week changes each figure as it does: both farms foreseen, and the difference."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property, partial
from typing import Final

from planner.farm.changes import applied
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.forecast.engine import Forecaster
from planner.forecast.values import Flag, FlagKind
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, worked
from planner.forecast.why.values import Explanation
from planner.planning.answering import Maker, difference, stated, summed
from planner.planning.remedies.effects import Span, span_of_flag
from planner.planning.remedies.values import Remedy
from planner.planning.why_farms import (
    days_of,
    ground_of,
    plan_weeks,
    why_fullest,
    why_grown,
    why_least,
    why_least_feed_ratio,
    why_weeks_short,
)

_ADVICE: Final = "coefficient/advice/"
_GRAMS_OF: Final = "grams of "
_WITHOUT: Final = "plants without a place"
FIGURES: Final = (
    "least",
    "weeks-short",
    "plan-weeks-short",
    "feed-ratio",
    "fall",
    "fullest",
    "unplaced",
    "harvest",
)
"""What can be asked of a repair, besides the grams that it gives."""


def remedy_whys(
    farm: Farm, forecaster: Forecaster, flag: Flag, remedies: Sequence[Remedy]
) -> dict[str, Maker]:
    """Return why each figure of some repairs of a flag changes as it does."""
    found: dict[str, Maker] = {}
    base = _Base(farm, forecaster, flag)
    for remedy in remedies:
        why = _Repair(base, remedy)
        for what in FIGURES:
            found[remedy_name(flag, remedy, what)] = partial(why.changed, what)
        for key, grams in remedy.details:
            if key.startswith(_GRAMS_OF):
                maker = partial(why.grams, key.removeprefix(_GRAMS_OF), float(grams))
                found[remedy_name(flag, remedy, key)] = maker
    return found


def remedy_name(flag: Flag, remedy: Remedy, what: str) -> str:
    """Return what a figure of a repair is called."""
    on = "" if flag.on is None else f" {flag.on.isoformat()}"
    return f"{flag.name}{on} {flag.kind.value} {remedy.kind.value} {what}"


@dataclass(frozen=True)
class _Base:
    """The farm as it is, with what is flagged; foreseen when the first question is asked."""

    farm: Farm
    forecaster: Forecaster
    flag: Flag

    @cached_property
    def ground(self) -> Ground:
        return ground_of(self.farm, self.forecaster)

    @cached_property
    def span(self) -> Span:
        weeks = round(self.ground.catalogue.figure(f"{_ADVICE}remedy_watch_weeks").value)
        return span_of_flag(self.ground.farm, self.flag, self.ground.forecast, watch_weeks=weeks)


@dataclass(frozen=True)
class _Repair:
    """One repair, with the farm as it would be."""

    base: _Base
    remedy: Remedy

    @cached_property
    def _after(self) -> Ground:
        base = self.base
        return ground_of(applied(base.farm, self.remedy.change_set), base.forecaster)

    def changed(self, what: str) -> Explanation:
        """Return by how much a figure changes, with both answers behind it."""
        before, after = (self._figure(ground, what) for ground in (self.base.ground, self._after))
        return difference(f"change of {before.title}", before.about, before, after)

    def grams(self, product: str, grams: float) -> Explanation:
        """Return how much of a product a repair gives at a time, and what it betters."""
        entry = self.base.ground.catalogue.supplements.get(product)
        name = product if entry is None else entry.name
        given = worked("value", grams, "g")
        return stated("grams at a time", name, given, children=(self.changed("least"),))

    def _figure(self, ground: Ground, what: str) -> Explanation:
        span = self.base.span
        weeks = slice(span.first, span.last)
        number, loop = ground.loop_forecast(span.loop)
        tanks = [tank.id for tank in ground.farm.tanks if tank.loop == loop.loop]
        makers: dict[str, Maker] = {
            "least": partial(why_least, ground, (number,), weeks),
            "weeks-short": partial(why_weeks_short, ground, (number,), weeks),
            "plan-weeks-short": partial(why_weeks_short, ground, (number,), plan_weeks(ground)),
            "feed-ratio": partial(why_least_feed_ratio, ground, number, weeks),
            "fall": partial(_fall, ground, span),
            "fullest": partial(why_fullest, ground, tanks, days_of(weeks)),
            "unplaced": partial(_unplaced, ground),
            "harvest": partial(why_grown, ground),
        }
        return makers[what]()


def _fall(ground: Ground, span: Span) -> Explanation:
    """Return how far the lowest week of feed lies below what was usual before."""
    weeks = ground.figure("weeks_before", f"{_ADVICE}hole_weeks_before")
    _, loop = ground.loop_forecast(span.loop)
    start = span.days.start
    before = loop.feed_g[max(start - round(weeks.value) * DAYS_PER_WEEK, 0) : start]
    usual = float(before.mean()) if before.size else 0.0
    lowest = float(loop.feed_g[span.days].reshape(-1, DAYS_PER_WEEK).mean(axis=1).min())
    known = usual > 0.0
    return Explanation(
        title="fall of the feed",
        about=loop.name,
        value=max(1.0 - lowest / usual, 0.0) if known else 0.0,
        unit="1",
        formula=Formula.FALL if known else Formula.NOTHING,
        inputs=(worked("lowest", lowest, "g/d"), worked("before", usual, "g/d"), weeks),
        on=ground.forecast.ruler.week_start(span.first),
    )


def _unplaced(ground: Ground) -> Explanation:
    """Return how many plants have no place, batch by batch."""
    flags = [flag for flag in ground.forecast.flags if flag.kind is FlagKind.UNPLACED]
    parts = [
        stated(
            "plants without a place", flag.name, worked("value", float(dict(flag.values)["plants"]), "plants")
        )
        for flag in flags
    ]
    return summed("plants without a place", "", sum(one.value or 0.0 for one in parts), "plants", parts)
