"""Why feed falls around a harvest or in a week, how long it stays low, and how much feed some weeks take.

What feeds fish feeds plants: a hole in the feed is a hole in their supply.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from functools import partial
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import NO_ID, Id
from planner.farm.fish import FishGroup
from planner.forecast.flags import feed_around, supply_flags
from planner.forecast.values import Flag, FlagKind, GroupForecast, LoopForecast
from planner.forecast.why.fish import given_feed_note, why_feed_mean, why_group_mean
from planner.forecast.why.fish_count import why_harvested_fish
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, week_days, worked
from planner.forecast.why.many import Part, told_sum
from planner.forecast.why.values import Explanation, Input, Note, NoteKind

_WEEKS_BEFORE: Final = 4
_PER_THOUSAND: Final = 1000.0
_PERCENT: Final = 100.0


def why_fall(ground: Ground, group: GroupForecast, day: int) -> Explanation:
    """Return why the feed of a loop falls so deep at a harvest of fish, and until when [%]."""
    loop = _loop_with(ground, group.group)
    flag = _fall_on(ground, loop, group, day)
    before, after = feed_around(loop.feed_g, day)
    first = max(day - _WEEKS_BEFORE * DAYS_PER_WEEK, 0)
    used_to_be = _fed(ground, loop, slice(first, day), title="feed a day before the harvest", value=before)
    since = slice(day, day + DAYS_PER_WEEK)
    then = _fed(ground, loop, since, title="feed a day in the week from the harvest", value=after)
    return Explanation(
        title="fall of the feed at a harvest",
        about=group.name,
        value=float(dict(flag.values)["fall_share"]) * _PERCENT,
        unit="%",
        formula=Formula.FEED_FALL,
        inputs=(worked("before_g_per_day", before, "g/d"), worked("after_g_per_day", after, "g/d")),
        children=(used_to_be, then, why_harvested_fish(ground, group, day)),
        notes=(_back(ground, day, flag.until_on),),
        on=flag.on,
    )


def _loop_with(ground: Ground, group: Id) -> LoopForecast:
    return next(loop for loop in ground.forecast.loops if any(one.group == group for one in loop.groups))


def _fall_on(ground: Ground, loop: LoopForecast, group: GroupForecast, day: int) -> Flag:
    on = ground.forecast.ruler.date_of(day)
    falls = [
        flag
        for flag in supply_flags([loop], ground.forecast.ruler, ground.bands)
        if flag.kind is FlagKind.FEED_FALLS and flag.about == group.group
    ]
    found = next((flag for flag in falls if flag.on == on), None)
    if found is None:
        days = [flag.on.isoformat() for flag in falls if flag.on is not None]
        there = f"it falls on {', '.join(days)}" if days else "no harvest of it makes it fall"
        raise NoSuchFigureError(f'at "{group.name}" feed does not fall on {on.isoformat()}; {there}.')
    return found


def _back(ground: Ground, day: int, until_on: date | None) -> Note:
    """Return the note of how long feed stays low."""
    if until_on is None:
        return Note(kind=NoteKind.FEED_NOT_BACK)
    weeks = (ground.forecast.ruler.day_of(until_on) - day) / DAYS_PER_WEEK
    return Note(kind=NoteKind.FEED_BACK, values=(("on", until_on.isoformat()), ("weeks", weeks)))


def _fed(ground: Ground, loop: LoopForecast, days: slice, *, title: str, value: float) -> Explanation:
    """Return feed a day over some days, group by group, each with what keeps it from its own rule."""
    many = loop.feed_g[days].size
    return Explanation(
        title=title,
        about=loop.name,
        value=value,
        unit="g/d",
        formula=Formula.SUM,
        children=tuple(_fed_group(ground, group, days, many) for group in loop.groups) if many else (),
        notes=() if loop.groups else (Note(kind=NoteKind.NO_FISH),),
        on=ground.forecast.ruler.date_of(days.start),
    )


def _fed_group(ground: Ground, group: GroupForecast, days: slice, many: int) -> Explanation:
    grams = float(group.feed_g[days].sum())
    return Explanation(
        title="feed of a group a day",
        about=group.name,
        value=grams / many,
        unit="g/d",
        formula=Formula.MEAN_OF_DAYS,
        inputs=(worked("sum_g", grams, "g"), worked("days", float(many), "d")),
        notes=tuple(_causes(ground, group, range(days.start, days.start + many))),
        on=ground.forecast.ruler.date_of(days.start),
    )


def _causes(ground: Ground, group: GroupForecast, days: range) -> Iterator[Note]:
    """Yield what keeps a group from being fed by its own rule on some days, each cause once."""
    entry: FishGroup = ground.groups[group.group]
    met: dict[Note, None] = {}
    for day in days:
        note = given_feed_note(ground, entry, group, day)
        if note is not None:
            met[Note(kind=note.kind, values=note.values)] = None
    yield from met
    for day in days:
        if group.harvest_count[day] > 0.0:
            on = ground.forecast.ruler.date_of(day).isoformat()
            told = (("on", on), ("fish", float(round(group.harvest_count[day]))))
            yield Note(kind=NoteKind.FISH_TAKEN, values=told)


def why_hole(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return by how much a week's feed lies below the four weeks before, and what opened the hole [%].

    Below 0 where it lies above them; without a figure in the first week and where nothing was fed before.
    """
    means = ground.forecast.ruler.weekly_mean(loop.feed_g)
    weeks = range(max(week - _WEEKS_BEFORE, 0), week)
    before = float(means[weeks.start : week].mean()) if weeks else 0.0
    now = float(means[week])
    value = (1.0 - now / before) * _PERCENT if before > 0.0 else None
    return Explanation(
        title="fall of the feed in a week",
        about=loop.name,
        value=value,
        unit="%",
        formula=Formula.FEED_FALL,
        inputs=(worked("before_g_per_day", before, "g/d"), worked("after_g_per_day", now, "g/d")),
        children=(
            _mean_of_weeks(ground, loop, weeks, before),
            *(_fed_group(ground, group, week_days(week), DAYS_PER_WEEK) for group in loop.groups),
        ),
        notes=tuple(_hole_notes(ground, loop, week, value)),
        on=ground.forecast.ruler.week_start(week),
    )


def _mean_of_weeks(ground: Ground, loop: LoopForecast, weeks: range, value: float) -> Explanation:
    return Explanation(
        title="feed a day in the weeks before",
        about=loop.name,
        value=value if weeks else None,
        unit="g/d",
        formula=Formula.MEAN,
        children=tuple(why_feed_mean(ground, loop, week) for week in weeks),
        on=ground.forecast.ruler.week_start(weeks.start),
    )


def _hole_notes(ground: Ground, loop: LoopForecast, week: int, value: float | None) -> Iterator[Note]:
    """Yield which harvests the feed has not got over yet, and when it is back where it was."""
    if value is None:
        yield Note(kind=NoteKind.NOTHING_BEFORE)
        return
    ruler = ground.forecast.ruler
    start, end = ruler.week_start(week), ruler.week_start(week + 1)
    for flag in supply_flags([loop], ruler, ground.bands):
        begun = flag.kind is FlagKind.FEED_FALLS and flag.on is not None and flag.on < end
        if begun and (flag.until_on is None or flag.until_on > start):
            fish = float(round(float(dict(flag.values)["fish"])))
            assert flag.on is not None
            told = (("about", flag.name), ("on", flag.on.isoformat()), ("fish", fish))
            yield Note(kind=NoteKind.OPENED_BY_HARVEST, values=told)
    if value > 0.0:
        yield _back(ground, week * DAYS_PER_WEEK, _back_on(ground, loop, week))


def _back_on(ground: Ground, loop: LoopForecast, week: int) -> date | None:
    """Return the first day of the week in which feed is back at the mean of the weeks before this one."""
    means = ground.forecast.ruler.weekly_mean(loop.feed_g)
    before = float(means[max(week - _WEEKS_BEFORE, 0) : week].mean())
    back = (means[week:] >= before).nonzero()[0]
    return ground.forecast.ruler.week_start(week + int(back[0])) if back.size else None


def why_feed_amount(ground: Ground, about: Id, feed: str, days: slice) -> Explanation:
    """Return why some weeks take so much feed [kg].

    `about` is a fish group, a loop, or `NO_ID` for the whole farm; with the key of a `feed` only groups
    that get it count. Raises `NoSuchFigureError` for neither, and for a feed that no group gets.
    """
    groups, name = groups_asked(ground, about, feed)
    parts = tuple(_amount(ground, group, days) for group in groups)
    if len(parts) == 1:
        return parts[0]
    return Explanation(
        title="feed of some weeks",
        about=name,
        value=sum(part.value or 0.0 for part in parts),
        unit="kg",
        formula=Formula.SUM,
        children=parts,
        notes=() if parts else (Note(kind=NoteKind.NO_FISH),),
        on=ground.forecast.ruler.date_of(days.start),
    )


def groups_asked(ground: Ground, about: Id, feed: str = "") -> tuple[list[GroupForecast], str]:
    """Return the groups of a subject, those that get a feed when one is named, and what to call them.

    `about` is a group, a loop, or `NO_ID` for all. Raises `NoSuchFigureError` for what is not there.
    """
    inside = [
        (loop, group)
        for loop in ground.forecast.loops
        for group in loop.groups
        if about in (NO_ID, loop.loop, group.group)
    ]
    known = {*ground.loops, *ground.groups, NO_ID}
    if about not in known:
        raise NoSuchFigureError(f"there is no fish group or loop {about}.")
    of_feed = [group for _, group in inside if feed in ("", ground.groups[group.group].feed)]
    if feed and not of_feed:
        keys = dict.fromkeys(ground.groups[group.group].feed for _, group in inside)
        there = f"feeds are {', '.join(keys)}" if keys else "there are no fish"
        raise NoSuchFigureError(f'no fish get the feed "{feed}"; {there}.')
    if feed:
        return of_feed, ground.catalogue.feeds[feed].name
    return of_feed, ground.loops[about].name if about in ground.loops else ground.farm.settings.name


def _amount(ground: Ground, group: GroupForecast, days: slice) -> Explanation:
    """Return the feed of a group over some weeks [kg]: the weeks that take most, and all others."""
    weeks = range(days.start // DAYS_PER_WEEK, days.stop // DAYS_PER_WEEK)
    parts = [
        Part(
            value=_kg(group, week_days(week)),
            name=f"{week:05}",
            explain=partial(_amount_of_week, ground, group, week),
        )
        for week in weeks
        if group.feed_g[week_days(week)].any()
    ]
    return told_sum(
        parts,
        title="feed of some weeks",
        about=group.name,
        value=_kg(group, days),
        unit="kg",
        on=ground.forecast.ruler.date_of(days.start),
        nothing=NoteKind.NO_FISH,
    )


def _kg(group: GroupForecast, days: slice) -> float:
    return float(group.feed_g[days].sum()) / _PER_THOUSAND


def _amount_of_week(ground: Ground, group: GroupForecast, week: int) -> Explanation:
    mean = why_group_mean(ground, group, week)
    inputs: tuple[Input, ...] = (
        worked("feed_g_per_day", mean.value or 0.0, "g/d"),
        worked("days", float(DAYS_PER_WEEK), "d"),
    )
    return Explanation(
        title="feed of a week",
        about=group.name,
        value=_kg(group, week_days(week)),
        unit="kg",
        formula=Formula.KG_OF_DAYS,
        inputs=inputs,
        children=(mean,),
        on=ground.forecast.ruler.week_start(week),
    )
