"""Why so many fish are in a group on a day, how many are expected to die, and what a harvest brings."""

from __future__ import annotations

from datetime import date
from typing import Final

from planner.farm.fish import FishEvent, FishEventKind, FishGroup
from planner.forecast.values import GroupForecast
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, worked
from planner.forecast.why.growth import why_weight
from planner.forecast.why.values import Explanation, Input, Note, NoteKind

_PER_THOUSAND: Final = 1000.0
_NO_FISH: Final = 1e-6
"""Less of a fish than this is noise of the sums."""


def why_count(ground: Ground, group: GroupForecast, day: int) -> Explanation:
    """Return why there are so many fish on a day: stocked and added, less dead and harvested."""
    entry: FishGroup = ground.groups[group.group]
    on, ruler = ground.forecast.ruler.date_of(day), ground.forecast.ruler
    if on < entry.stocked_on:
        note = Note(kind=NoteKind.NOT_STOCKED_YET, values=(("on", entry.stocked_on.isoformat()),))
        return _fish(group, "fish of a group", 0.0, Formula.NOTHING, on=on, notes=(note,))
    age = ruler.day_of(on) - ruler.day_of(entry.stocked_on)
    harvested = float(ground.life(group.group).harvest_count[: age + 1].sum())
    added = _counted(ground, entry, FishEventKind.ADDED, until_on=on)
    expected = why_deaths_by_age(ground, entry, 0, age)
    died = expected.value or 0.0
    counted = _counted(ground, entry, FishEventKind.DEATHS, until_on=on)
    notes: tuple[Note, ...] = ()
    there = float(group.count[day])
    rest = entry.count + added - harvested - counted - died - there
    dead = entered("counted_dead", counted, "fish", group.name)
    if abs(rest) > _NO_FISH * max(entry.count, 1.0):
        dead = worked("counted_dead", counted + rest, "fish")
        notes = (Note(kind=NoteKind.MORE_THAN_LEFT, values=(("many", counted),)),)
    return _fish(
        group,
        "fish of a group",
        there,
        Formula.FISH_COUNT,
        on=on,
        inputs=(
            entered("stocked", entry.count, "fish", group.name),
            entered("added", added, "fish", group.name),
            dead,
            worked("expected_dead", died, "fish"),
            worked("harvested", harvested, "fish"),
        ),
        children=(*((expected,) if age else ()), *_harvests_until(ground, group, day)),
        notes=notes,
    )


def _fish(
    group: GroupForecast,
    title: str,
    value: float,
    formula: Formula,
    *,
    on: date,
    inputs: tuple[Input, ...] = (),
    children: tuple[Explanation, ...] = (),
    notes: tuple[Note, ...] = (),
) -> Explanation:
    return Explanation(
        title=title,
        about=group.name,
        value=value,
        unit="fish",
        formula=formula,
        inputs=inputs,
        children=children,
        notes=notes,
        on=on,
    )


def _events(ground: Ground, entry: FishGroup, kind: FishEventKind) -> list[FishEvent]:
    return [event for event in ground.farm.fish_events if event.group == entry.id and event.kind is kind]


def _counted(ground: Ground, entry: FishGroup, kind: FishEventKind, *, until_on: date) -> float:
    events = (event for event in _events(ground, entry, kind) if entry.stocked_on <= event.on <= until_on)
    return float(sum(event.count or 0 for event in events))


def why_deaths_by_age(ground: Ground, entry: FishGroup, first: int, end: int) -> Explanation:
    """Return how many are expected to die from one day after stocking to the day before another."""
    life = ground.life(entry.id)
    many = life.count[first:end]
    share = ground.own_or_figure(
        "daily_death_share",
        entry.daily_death_share,
        f"fish/{entry.species}/daily_death_share",
        about=entry.name,
    )
    mean = float(many.mean()) if many.size else 0.0
    start = ground.forecast.ruler.day_of(entry.stocked_on) + first
    return _fish(
        life,
        "deaths expected",
        float(many.sum()) * share.value,
        Formula.EXPECTED_DEATHS,
        on=ground.forecast.ruler.date_of(start),
        inputs=(
            worked("mean_count", mean, "fish"),
            share,
            worked("days", float(many.size), "d"),
        ),
    )


def why_deaths(ground: Ground, group: GroupForecast, days: slice) -> Explanation:
    """Return how many fish of a group are expected to die on some days of the plan."""
    entry: FishGroup = ground.groups[group.group]
    stocked = ground.forecast.ruler.day_of(entry.stocked_on)
    first, end = max(days.start - stocked, 0), max(days.stop - stocked, 0)
    return why_deaths_by_age(ground, entry, first, end)


def why_harvested(ground: Ground, group: GroupForecast, day: int) -> Explanation:
    """Return why a harvest of fish weighs so much: its fish, times what each weighs on the day."""
    fish, grams = _harvest_of(ground, group, day)
    return Explanation(
        title="harvest of fish",
        about=group.name,
        value=grams / _PER_THOUSAND,
        unit="kg",
        formula=Formula.GROUP_MASS,
        inputs=(worked("count", fish, "fish"), worked("weight_g", grams / fish, "g")),
        children=(why_harvested_fish(ground, group, day), why_weight(ground, group, day)),
        on=ground.forecast.ruler.date_of(day),
    )


def why_harvested_fish(ground: Ground, group: GroupForecast, day: int) -> Explanation:
    """Return why so many fish are harvested: as many as entered, or all that are left."""
    fish, _ = _harvest_of(ground, group, day)
    entry: FishGroup = ground.groups[group.group]
    on = ground.forecast.ruler.date_of(day)
    events = [event for event in _events(ground, entry, FishEventKind.HARVEST) if event.on == on]
    wanted = sum(event.count or 0 for event in events)
    if all(event.count is not None for event in events) and abs(wanted - fish) <= _NO_FISH * fish:
        inputs = tuple(entered("value", event.count or 0, "fish", group.name) for event in events)
        formula = Formula.AS_ENTERED if len(inputs) == 1 else Formula.SUM
        return _fish(group, "fish harvested", fish, formula, on=on, inputs=inputs)
    return _all_left(ground, entry, group, day, fish=fish)


def _all_left(
    ground: Ground, entry: FishGroup, group: GroupForecast, day: int, *, fish: float
) -> Explanation:
    """Explain a harvest of all: those of the evening before, with what else happened that morning."""
    life, ruler = ground.life(entry.id), ground.forecast.ruler
    age = day - ruler.day_of(entry.stocked_on)
    share = ground.own_or_figure(
        "daily_death_share",
        entry.daily_death_share,
        f"fish/{entry.species}/daily_death_share",
        about=entry.name,
    )
    before = float(life.count[age - 1]) if age else float(entry.count)
    evening = before * (1.0 - share.value) if age else before
    return _fish(
        group,
        "fish harvested",
        fish,
        Formula.ALL_LEFT,
        on=ruler.date_of(day),
        inputs=(
            worked("count_the_day_before", before, "fish"),
            share if age else worked("daily_death_share", 0.0, "1/d"),
            worked("changed_that_morning", fish - evening, "fish"),
        ),
        children=(why_count(ground, group, day - 1),) if day and age else (),
        notes=(Note(kind=NoteKind.ALL_HARVESTED),),
    )


def _harvest_of(ground: Ground, group: GroupForecast, day: int) -> tuple[float, float]:
    """Return fish and grams harvested on a day; raises `NoSuchFigureError` when none are."""
    fish, grams = float(group.harvest_count[day]), float(group.harvest_g[day])
    if fish > 0.0:
        return fish, grams
    date_of = ground.forecast.ruler.date_of
    days = [date_of(int(one)).isoformat() for one in group.harvest_count.nonzero()[0]]
    there = f"its harvests are on {', '.join(days)}" if days else "none is within the plan"
    raise NoSuchFigureError(
        f'no fish of "{group.name}" are harvested on {date_of(day).isoformat()}; {there}.'
    )


def _harvests_until(ground: Ground, group: GroupForecast, day: int) -> tuple[Explanation, ...]:
    """Return the harvests within the plan up to a day, without what lies behind those of all."""
    days = [int(one) for one in group.harvest_count[: day + 1].nonzero()[0]]
    return tuple(
        _fish(
            group,
            "fish harvested",
            float(group.harvest_count[one]),
            Formula.AS_ENTERED,
            on=ground.forecast.ruler.date_of(one),
            inputs=(worked("value", group.harvest_count[one], "fish"),),
        )
        for one in days
    )
