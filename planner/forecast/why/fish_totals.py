"""Why so many kg of fish are gained and harvested in some weeks."""

from __future__ import annotations

from functools import partial
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.forecast.values import GroupForecast
from planner.forecast.why.feed_holes import groups_asked
from planner.forecast.why.fish_count import why_harvested
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, week_days, worked
from planner.forecast.why.growth import why_gain
from planner.forecast.why.many import Part, told_sum
from planner.forecast.why.values import Explanation, NoteKind

_PER_THOUSAND: Final = 1000.0


def why_gained(ground: Ground, about: Id, days: slice) -> Explanation:
    """Return why fish gain so much in some weeks [kg]; `about` is a group, a loop, or `NO_ID` for all."""
    groups, name = groups_asked(ground, about)
    weeks = range(days.start // DAYS_PER_WEEK, days.stop // DAYS_PER_WEEK)
    parts = [
        Part(
            value=float(group.gain_g[week_days(week)].sum()) / _PER_THOUSAND,
            name=f"{group.name} {week:05}",
            explain=partial(_gain_of_week, ground, group, week),
        )
        for group in groups
        for week in weeks
    ]
    return told_sum(
        [part for part in parts if part.value],
        title="gain of fish in some weeks",
        about=name,
        value=sum(float(group.gain_g[days].sum()) for group in groups) / _PER_THOUSAND,
        unit="kg",
        on=ground.forecast.ruler.date_of(days.start),
        nothing=NoteKind.NO_FISH,
    )


def _gain_of_week(ground: Ground, group: GroupForecast, week: int) -> Explanation:
    grams = float(group.gain_g[week_days(week)].sum())
    return Explanation(
        title="gain of a group in a week",
        about=group.name,
        value=grams / _PER_THOUSAND,
        unit="kg",
        formula=Formula.GAIN_OF_DAYS,
        inputs=(
            worked("gain_g_per_day", grams / DAYS_PER_WEEK, "g/d"),
            worked("days", float(DAYS_PER_WEEK), "d"),
        ),
        children=(why_gain(ground, group, week_days(week).start),),
        on=ground.forecast.ruler.week_start(week),
    )


def why_fish_harvests(ground: Ground, about: Id, days: slice) -> Explanation:
    """Return why so much fish is harvested in some weeks [kg], harvest by harvest."""
    groups, name = groups_asked(ground, about)
    parts = [
        Part(
            value=float(group.harvest_g[day]) / _PER_THOUSAND,
            name=f"{group.name} {day:06}",
            explain=partial(why_harvested, ground, group, day),
        )
        for group in groups
        for day in (int(one) + days.start for one in group.harvest_count[days].nonzero()[0])
    ]
    return told_sum(
        parts,
        title="fish harvested in some weeks",
        about=name,
        value=sum(float(group.harvest_g[days].sum()) for group in groups) / _PER_THOUSAND,
        unit="kg",
        on=ground.forecast.ruler.date_of(days.start),
        nothing=NoteKind.NO_FISH_HARVEST,
    )
