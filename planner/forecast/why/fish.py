"""Why a group of fish is fed so much on a day and in a week."""

from __future__ import annotations

from datetime import timedelta
from typing import Final

import numpy as np

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import Id
from planner.farm.fish import Feeding, FishEvent, FishEventKind, FishGroup
from planner.forecast.fish import share_of_table
from planner.forecast.ration import table_ration
from planner.forecast.values import GroupForecast, LoopForecast
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, week_days, worked
from planner.forecast.why.growing import (
    FED,
    gain_by_growth,
    stage_input,
    told_on,
    warmth_that_counts,
    water_c_on,
    water_notes,
)
from planner.forecast.why.values import Explanation, Input, Note, NoteKind, Origin

_CUBE_ROOT: Final = 1.0 / 3.0
_PER_THOUSAND: Final = 1000.0
_PERCENT: Final = 100.0


def group_named(ground: Ground, about: Id) -> GroupForecast:
    """Return the forecast of a group by its id; raises `NoSuchFigureError` when there is none."""
    for loop in ground.forecast.loops:
        for group in loop.groups:
            if group.group == about:
                return group
    raise NoSuchFigureError(f"there is no fish group {about}.")


def why_feed(ground: Ground, group: GroupForecast, day: int) -> Explanation:
    """Return why a group is fed so much on a day."""
    entry: FishGroup = ground.groups[group.group]
    reason = given_feed_note(ground, entry, group, day)
    if reason is not None:
        given = reason.kind is NoteKind.FEED_GIVEN
        inputs = (entered("value", group.feed_g[day], "g/d", group.name),) if given else ()
        return told_on(
            FED, ground, group, day, Formula.AS_ENTERED if given else Formula.NOTHING, inputs, notes=(reason,)
        )
    match entry.feeding:
        case Feeding.GROWTH:
            return _by_growth(ground, entry, group, day)
        case Feeding.FIXED:
            value = entered("value", entry.feed_g_per_day or 0.0, "g/d", group.name)
            return told_on(FED, ground, group, day, Formula.AS_ENTERED, (value,))
        case Feeding.PERCENT | Feeding.TABLE:
            return _by_percent(ground, entry, group, day)


def given_feed_note(ground: Ground, entry: FishGroup, group: GroupForecast, day: int) -> Note | None:
    """Return the note of a day on which feed does not go by the group's own rule, else None."""
    if group.count[day] <= 0:
        return Note(kind=NoteKind.NO_FISH)
    events = [event for event in ground.farm.fish_events if event.group == group.group]
    fasting = _latest(ground, events, FishEventKind.OFF_FEED, day)
    if fasting is not None:
        return Note(kind=NoteKind.OFF_FEED, values=(("from", fasting.on.isoformat()),))
    purge = round(ground.catalogue.fish[entry.species].purge_days)
    on = ground.forecast.ruler.date_of(day)
    for event in events:
        whole = event.kind is FishEventKind.HARVEST and event.count is None
        if whole and event.on - timedelta(days=purge) <= on < event.on:
            return Note(
                kind=NoteKind.PURGED, values=(("harvest", event.on.isoformat()), ("days", float(purge)))
            )
    given = _latest(ground, events, FishEventKind.FEED_GIVEN, day)
    if given is not None:
        return Note(kind=NoteKind.FEED_GIVEN, values=(("from", given.on.isoformat()),))
    return _appetite_note(ground, entry, day)


def _appetite_note(ground: Ground, entry: FishGroup, day: int) -> Note | None:
    """Return the note of a day on which a ration stops because of the water, else None."""
    species, water_c = ground.catalogue.fish[entry.species], water_c_on(ground, entry, day)
    rationed = entry.feeding in {Feeding.PERCENT, Feeding.TABLE}
    if not rationed or species.base_c < water_c < species.ceiling_c:
        return None
    told = (("water_c", water_c), ("base_c", species.base_c), ("ceiling_c", species.ceiling_c))
    return Note(kind=NoteKind.NO_APPETITE, values=told)


def _latest(ground: Ground, events: list[FishEvent], kind: FishEventKind, day: int) -> FishEvent | None:
    """Return the last event of a kind up to a day, when it still holds on that day."""
    on = ground.forecast.ruler.date_of(day)
    before = [event for event in events if event.kind is kind and event.on <= on]
    last = max(before, key=_on, default=None)
    if last is None or on >= last.on + timedelta(days=last.days or 0):
        return None
    return last


def _on(event: FishEvent) -> int:
    return event.on.toordinal()


def _by_growth(ground: Ground, entry: FishGroup, group: GroupForecast, day: int) -> Explanation:
    gain = gain_by_growth(ground, entry, group, day)
    return told_on(
        FED,
        ground,
        group,
        day,
        Formula.FEED_BY_GAIN,
        (worked("gain_g", gain.value or 0.0, "g/d"), stage_input(ground, entry, group, day, "fcr")),
        children=(gain,),
        notes=water_notes(ground, entry),
    )


def _by_percent(ground: Ground, entry: FishGroup, group: GroupForecast, day: int) -> Explanation:
    share = 1.0
    children: tuple[Explanation, ...] = ()
    if entry.feeding is Feeding.PERCENT:
        percent = entered("percent", entry.feed_percent or 0.0, "% of body weight a day", group.name)
    else:
        table = ground.catalogue.feeding_tables[entry.feeding_table]
        warmth = warmth_that_counts(ground, entry, day)
        ration, species = table_ration(table), ground.catalogue.fish[entry.species]
        eaten = share_of_table(ration, np.asarray([warmth.value or 0.0]), species)
        if eaten is not None:
            share, children = float(eaten[0]), (warmth,)
        percent = Input(
            name="percent",
            value=ration(float(group.weight_g[day]), water_c_on(ground, entry, day)),
            unit="% of body weight a day",
            origin=Origin.FIGURE,
            about=table.name,
            path=f"feeding table/{table.key}",
            source=table.source,
            confidence=table.confidence.value,
            conditions=table.conditions,
        )
    inputs = (
        worked("count", group.count[day], "fish"),
        worked("weight_g", group.weight_g[day], "g"),
        percent,
    )
    notes = water_notes(ground, entry) if entry.feeding is Feeding.TABLE else ()
    if not children:
        return told_on(FED, ground, group, day, Formula.FEED_BY_PERCENT, inputs, notes=notes)
    eats = worked("appetite_share", share, "1")
    return told_on(
        FED, ground, group, day, Formula.FEED_BY_TABLE, (*inputs, eats), children=children, notes=notes
    )


def why_feed_mean(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return why a loop's fish are fed so much a day in a week."""
    value = float(ground.forecast.ruler.weekly_mean(loop.feed_g)[week])
    return Explanation(
        title="feed a day in the week",
        about=loop.name,
        value=value,
        unit="g/d",
        formula=Formula.SUM,
        children=tuple(why_group_mean(ground, group, week) for group in loop.groups),
        notes=() if loop.groups else (Note(kind=NoteKind.NO_FISH),),
        on=ground.forecast.ruler.week_start(week),
    )


def why_group_mean(ground: Ground, group: GroupForecast, week: int) -> Explanation:
    """Return why a group is fed so much a day in a week: its seven days."""
    days = week_days(week)
    return Explanation(
        title="feed of a group in the week",
        about=group.name,
        value=float(group.feed_g[days].sum() / DAYS_PER_WEEK),
        unit="g/d",
        formula=Formula.MEAN,
        children=tuple(why_feed(ground, group, day) for day in range(days.start, days.stop)),
        on=ground.forecast.ruler.week_start(week),
    )
