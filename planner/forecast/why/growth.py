"""Why a fish weighs so much on a day, why it grows so much in one, and when it is heavy enough to harvest."""

from __future__ import annotations

from datetime import date
from typing import Final

import numpy as np

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fish import Feeding, FishEventKind, FishGroup
from planner.forecast.fish import ready_day
from planner.forecast.values import GroupForecast
from planner.forecast.why.fish import given_feed_note, why_feed
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, week_days, worked
from planner.forecast.why.growing import (
    GAINED,
    WEIGHS,
    gain_by_growth,
    stage_input,
    told_on,
    warmth_that_counts,
    water_c_on,
    water_notes,
    weight_after,
)
from planner.forecast.why.many import largest
from planner.forecast.why.values import Explanation, Input, Note, NoteKind

_NOTHING_G: Final = 1e-9
_IDLE: Final = frozenset({NoteKind.NO_FISH, NoteKind.OFF_FEED, NoteKind.PURGED, NoteKind.NO_APPETITE})


def why_gain(ground: Ground, group: GroupForecast, day: int) -> Explanation:
    """Return why a group gains so much on a day: by growth, or by what it eats of the feed it is given."""
    entry: FishGroup = ground.groups[group.group]
    note = given_feed_note(ground, entry, group, day)
    warmth = warmth_that_counts(ground, entry, day)
    if note is None and not warmth.value and entry.feeding is not Feeding.GROWTH:
        note = _no_appetite(ground, entry, day)
    if note is not None and (note.kind in _IDLE or not warmth.value):
        return told_on(GAINED, ground, group, day, Formula.NOTHING, notes=(note,))
    if note is None and entry.feeding is Feeding.GROWTH:
        return gain_by_growth(ground, entry, group, day)
    feed, fcr = why_feed(ground, group, day), stage_input(ground, entry, group, day, "fcr")
    inputs = (worked("feed_g", feed.value or 0.0, "g/d"), fcr)
    if note is None and entry.feeding is Feeding.TABLE:
        return told_on(GAINED, ground, group, day, Formula.GAIN_BY_FEED, inputs, children=(feed,))
    after = weight_after(ground, entry, group, day)
    eaten = (
        ground.figure("most_eaten_share", "coefficient/fish/most_eaten_share"),
        worked("count", group.count[day], "fish"),
        worked("weight_g", group.weight_g[day], "g"),
        worked("weight_after_g", after.value or 0.0, "g"),
    )
    return told_on(
        GAINED, ground, group, day, Formula.GAIN_BY_APPETITE, (*inputs, *eaten), children=(feed, after)
    )


def why_gain_in_week(ground: Ground, group: GroupForecast, week: int) -> Explanation:
    """Return why a group gains so much in a week [g]: its seven days."""
    days = week_days(week)
    return Explanation(
        title="gain in the week",
        about=group.name,
        value=float(group.gain_g[days].sum()),
        unit="g",
        formula=Formula.SUM,
        children=tuple(why_gain(ground, group, day) for day in range(days.start, days.stop)),
        on=ground.forecast.ruler.week_start(week),
    )


def _no_appetite(ground: Ground, entry: FishGroup, day: int) -> Note:
    species = ground.catalogue.fish[entry.species]
    told = (
        ("water_c", water_c_on(ground, entry, day)),
        ("base_c", species.base_c),
        ("ceiling_c", species.ceiling_c),
    )
    return Note(kind=NoteKind.NO_APPETITE, values=told)


def why_weight(ground: Ground, group: GroupForecast, day: int) -> Explanation:
    """Return why a fish weighs so much on a day: weighed or stocked so heavy, and grown since."""
    entry: FishGroup = ground.groups[group.group]
    on = ground.forecast.ruler.date_of(day)
    if on < entry.stocked_on:
        note = Note(kind=NoteKind.NOT_STOCKED_YET, values=(("on", entry.stocked_on.isoformat()),))
        return told_on(WEIGHS, ground, group, day, Formula.NOTHING, (), notes=(note,))
    then_on, then = _weighed(ground, entry, on)
    grown = _grown(ground, entry, group, then_on, on)
    value = float(group.weight_g[day])
    mixed = value - then.value - (grown.value or 0.0)
    return told_on(
        WEIGHS,
        ground,
        group,
        day,
        Formula.WEIGHT,
        (
            then,
            worked("grown_g", grown.value or 0.0, "g"),
            worked("by_fish_added_g", 0.0 if abs(mixed) <= _NOTHING_G * value else mixed, "g"),
        ),
        children=(grown,) if then_on < on else (),
        notes=(Note(kind=NoteKind.WEIGHED_ON, values=(("on", then_on.isoformat()),)),),
    )


def _weighed(ground: Ground, entry: FishGroup, on: date) -> tuple[date, Input]:
    """Return when the fish were last weighed up to a day, at the latest as they were stocked, and what."""
    samples = [
        event
        for event in ground.farm.fish_events
        if event.group == entry.id
        and event.kind is FishEventKind.SAMPLE
        and event.mean_weight_g is not None
        and entry.stocked_on <= event.on <= on
    ]
    last = max(samples, key=lambda event: event.on, default=None)
    if last is None:
        return entry.stocked_on, entered("weight_then_g", entry.mean_weight_g, "g", entry.name)
    return last.on, entered("weight_then_g", last.mean_weight_g or 0.0, "g", entry.name)


def _grown(ground: Ground, entry: FishGroup, group: GroupForecast, from_on: date, on: date) -> Explanation:
    """Return what a fish grew from a day to the day before another, by runs of seven days."""
    life, parts = ground.life(entry.id), []
    first, end = (on_day.toordinal() - entry.stocked_on.toordinal() for on_day in (from_on, on))
    many = life.count[first:end]
    each = np.divide(life.gain_g[first:end], many, out=np.zeros_like(many), where=many > 0)
    for start in range(0, each.size, DAYS_PER_WEEK):
        run = each[start : start + DAYS_PER_WEEK]
        day = ground.forecast.ruler.day_of(entry.stocked_on) + first + start
        parts.append(_run(ground, entry, group, day, days=run.size, grown_g=float(run.sum())))
    kept, others, notes = largest(parts)
    return Explanation(
        title="growth of a fish since it was weighed",
        about=group.name,
        value=float(each.sum()),
        unit="g",
        formula=Formula.SUM,
        inputs=(worked("others", others, "g"),) if notes else (),
        children=kept,
        notes=(*notes, *water_notes(ground, entry)),
        on=from_on,
    )


def _run(
    ground: Ground, entry: FishGroup, group: GroupForecast, day: int, *, days: int, grown_g: float
) -> Explanation:
    """Return what a fish grew on some days; the gain of the group on the first of them stands behind it."""
    in_plan = 0 <= day < ground.forecast.ruler.days
    warm = worked("water_c", water_c_on(ground, entry, day), "°C")
    return Explanation(
        title="growth of a fish in some days",
        about=group.name,
        value=grown_g,
        unit="g",
        formula=Formula.GROWTH_OF_DAYS,
        inputs=(worked("days", float(days), "d"), worked("growth_a_day_g", grown_g / days, "g/d"), warm),
        children=(why_gain(ground, group, day),) if in_plan else (),
        on=ground.forecast.ruler.date_of(day),
    )


def why_ready(ground: Ground, group: GroupForecast) -> Explanation:
    """Return why fish are first as heavy as for the harvest so many days after stocking, `on` that day."""
    entry: FishGroup = ground.groups[group.group]
    heavy = ground.figure("harvest_weight_g", f"fish/{entry.species}/harvest_weight_g")
    ruler, day = ground.forecast.ruler, ready_day(group, heavy.value)
    notes: tuple[Note, ...]
    if day is None:
        last = max(int(np.flatnonzero(group.count)[-1]) if group.count.any() else 0, 0)
        value, on, notes = None, None, (Note(kind=NoteKind.NOT_IN_PLAN),)
    else:
        last, on = day, ruler.date_of(day)
        value = float((on - entry.stocked_on).days)
        notes = (Note(kind=NoteKind.SINCE_PLAN_BEGAN),) if day == 0 and value > 0 else ()
    before = worked("weight_the_day_before_g", group.weight_g[last - 1], "g") if last else None
    return Explanation(
        title="ready to harvest",
        about=group.name,
        value=value,
        unit="d",
        formula=Formula.READY,
        inputs=(
            heavy,
            worked("weight_g", group.weight_g[last], "g"),
            *((before,) if before is not None else ()),
        ),
        children=(why_weight(ground, group, last),),
        notes=(*notes, *water_notes(ground, entry)),
        on=on,
    )
