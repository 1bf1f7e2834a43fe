"""Repairs by changing fish: what they are fed, when and how many are harvested and stocked."""

from __future__ import annotations

import dataclasses
import math
from collections.abc import Iterator
from datetime import date, timedelta
from typing import Final

from planner.farm.changes import Change, ChangeSet
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fish import Feeding, FishEvent, FishEventKind, FishGroup
from planner.forecast.values import GroupForecast
from planner.planning.remedies.case import Case
from planner.planning.remedies.values import Candidate, RemedyKind, SideEffect

_HANDLING: Final = ("fish-welfare",)
_TABLE_FISH: Final = ("fish-welfare", "fish-as-food")
_LAW: Final = ("species-law", "fish-welfare")
_STEP_WEEKS: Final = 2


def to_hold_feed(case: Case) -> Iterator[Candidate]:
    """Yield repairs that keep the feed of the flagged weeks up."""
    yield from _fed_by_appetite(case)
    yield from _part_harvests(case)
    yield from _stocked_earlier(case)
    yield from _one_more_group(case)


def _fed_by_appetite(case: Case) -> Iterator[Candidate]:
    """Yield repairs that feed a group what it eats where it is fed less."""
    for group, _ in case.groups():
        if group.feeding not in (Feeding.FIXED, Feeding.PERCENT):
            continue
        after = dataclasses.replace(group, feeding=Feeding.GROWTH)
        yield Candidate(
            kind=RemedyKind.FEED_APPETITE,
            change_set=_set(f"Feed {group.name} what it eats", Change(before=group, after=after)),
            details=(("group", group.name),),
            side_effects=(SideEffect.MORE_FEED,),
            cautions=_HANDLING,
        )


def _part_harvests(case: Case) -> Iterator[Candidate]:
    """Yield repairs that take a part at a harvest and the rest some weeks later."""
    apart = timedelta(weeks=round(case.advice("part_harvest_apart_weeks")))
    share = case.advice("remedy_part_share")
    row = case.catalogue.figure("coefficient/advice/remedy_part_share")
    first_on = case.ruler.week_start(case.span.first) - apart
    for group, found in case.groups():
        for event in _harvests(case, group):
            if not max(first_on, case.from_on) <= event.on <= case.last_on:
                continue
            if any(other.on > event.on for other in _harvests(case, group) if other.count is None):
                continue
            for part in sorted({share, row.low}):
                yield from _in_two(case, group, found, event, share=part, rest_on=event.on + apart)


def _in_two(
    case: Case, group: FishGroup, found: GroupForecast, event: FishEvent, *, share: float, rest_on: date
) -> Iterator[Candidate]:
    day = case.ruler.day_of(event.on)
    if not 0 <= day < case.ruler.days:
        return
    there = float(found.harvest_count[day])
    part = round(there * share)
    if part < 1 or part >= there:
        return
    rest = FishEvent(
        id=case.new_id("rest", event.id, f"{share:g}"), group=group.id, on=rest_on, kind=FishEventKind.HARVEST
    )
    if event.count is not None:
        rest = dataclasses.replace(rest, count=max(event.count - part, 1))
    yield Candidate(
        kind=RemedyKind.HARVEST_PART,
        change_set=_set(
            f"Harvest {part} of {group.name} on {event.on.isoformat()}, the rest on {rest_on.isoformat()}",
            Change(before=event, after=dataclasses.replace(event, count=part)),
            Change(after=rest),
        ),
        details=(("group", group.name), ("fish", float(part)), ("rest_on", rest_on.isoformat())),
        side_effects=(SideEffect.MORE_FISH_LATER, SideEffect.NO_REST_OF_PURGE),
        cautions=_TABLE_FISH,
    )


def _stocked_earlier(case: Case) -> Iterator[Candidate]:
    most = round(case.advice("remedy_stock_earlier_weeks_most"))
    for group, _ in case.groups():
        if group.stocked_on > case.last_on:
            continue
        yield from _moved(case, group, [-weeks for weeks in range(_STEP_WEEKS, most + 1, _STEP_WEEKS)])
    after = [group for group, _ in case.groups() if group.stocked_on > case.last_on]
    for group in sorted(after, key=_stocked_on)[:1]:
        yield from _moved(case, group, [-weeks for weeks in range(_STEP_WEEKS, most + 1, _STEP_WEEKS)])


def _moved(case: Case, group: FishGroup, weeks: list[int]) -> Iterator[Candidate]:
    """Yield repairs that stock a group so many weeks later, or earlier when negative."""
    for many in weeks:
        on = group.stocked_on + timedelta(weeks=many)
        if min(on, group.stocked_on) < case.from_on or any(event.on < on for event in _events(case, group)):
            continue
        later = many > 0
        yield Candidate(
            kind=RemedyKind.STOCK_LATER if later else RemedyKind.STOCK_EARLIER,
            change_set=_set(
                f"Stock {group.name} {abs(many)} weeks {'later' if later else 'earlier'}",
                Change(before=group, after=dataclasses.replace(group, stocked_on=on)),
            ),
            details=(("group", group.name), ("weeks", float(many))),
            side_effects=(
                (SideEffect.LIGHTER_FISH, SideEffect.LESS_FEED) if later else (SideEffect.MORE_FISH_LATER,)
            ),
            cautions=_LAW,
        )


def _one_more_group(case: Case) -> Iterator[Candidate]:
    """Yield repairs that stock fingerlings like those of the last group before the flagged weeks."""
    known = [group for group, _ in case.groups()]
    if not known:
        return
    like = max(known, key=_stocked_on)
    weeks = round(case.advice("remedy_stock_earlier_weeks_most"))
    for ahead in range(weeks, 0, -_STEP_WEEKS):
        on = case.first_on - timedelta(weeks=ahead)
        if on < case.from_on:
            continue
        for share in (1.0, case.advice("remedy_part_share")):
            count = max(round(like.count * share), 1)
            name = f"{like.name} +{count}, {on.isoformat()}"
            group = dataclasses.replace(
                like,
                id=case.new_id("more", like.id, str(ahead), str(count)),
                name=name,
                stocked_on=on,
                count=count,
            )
            yield Candidate(
                kind=RemedyKind.STOCK_MORE,
                change_set=_set(f"Stock {count} more fish on {on.isoformat()}", Change(after=group)),
                details=(("like", like.name), ("fish", float(count)), ("on", on.isoformat())),
                side_effects=(SideEffect.FINGERLINGS_NEEDED, SideEffect.MORE_FISH_LATER),
                cautions=_LAW,
            )


def to_thin_tank(case: Case) -> Iterator[Candidate]:
    """Yield repairs for a tank that is too full: harvest a part or all earlier, stock later or fewer."""
    inside = [(group, found) for group, found in case.groups() if group.tank == case.flag.about]
    most = round(case.advice("remedy_stock_earlier_weeks_most"))
    for group, found in inside:
        if not case.catalogue.fish[group.species].ornamental:
            yield from _excess_harvested(case, group, found)
            yield from _harvested_earlier(case, group)
        if group.stocked_on >= case.from_on:
            yield from _moved(case, group, list(range(_STEP_WEEKS, most + 1, _STEP_WEEKS)))
            yield from _fewer(case, group)


def _excess(case: Case) -> float:
    """Return the share of the live mass that is above the limit."""
    values = dict(case.flag.values)
    highest, limit = float(values["highest_kg_per_m3"]), float(values["limit"])
    return 1.0 - limit / highest


def _excess_harvested(case: Case, group: FishGroup, found: GroupForecast) -> Iterator[Candidate]:
    """Yield a harvest of what is too much, from this group, on the day the tank gets too full."""
    on = max(case.flag.on or case.first_on, case.from_on)
    day = case.ruler.day_of(on)
    if not 0 <= day < case.ruler.days or found.count[day] <= 0.0:
        return
    groups = [one for one in case.water.groups if one.tank == group.tank]
    peak = max(float(sum(one.biomass_g[d] for one in groups)) for d in range(day, case.span.days.stop))
    own = float(found.biomass_g[day : case.span.days.stop].max())
    part = math.ceil(found.count[day] * min(_excess(case) * peak / own, 1.0)) if own > 0.0 else 0
    if not 1 <= part < found.count[day]:
        return
    event = FishEvent(
        id=case.new_id("excess", group.id), group=group.id, on=on, kind=FishEventKind.HARVEST, count=part
    )
    light = found.weight_g[day] < case.catalogue.fish[group.species].harvest_weight_g
    yield Candidate(
        kind=RemedyKind.HARVEST_PART,
        change_set=_set(f"Harvest {part} of {group.name} on {on.isoformat()}", Change(after=event)),
        details=(("group", group.name), ("fish", float(part)), ("on", on.isoformat())),
        side_effects=(
            SideEffect.LESS_FEED,
            SideEffect.NO_REST_OF_PURGE,
            *((SideEffect.LIGHTER_FISH,) if light else ()),
        ),
        cautions=_TABLE_FISH,
    )


def _harvested_earlier(case: Case, group: FishGroup) -> Iterator[Candidate]:
    on = max(case.flag.on or case.first_on, case.from_on)
    for event in _harvests(case, group):
        if event.count is not None or event.on <= on or on <= group.stocked_on:
            continue
        if any(other.on > on for other in _events(case, group) if other.id != event.id):
            continue
        yield Candidate(
            kind=RemedyKind.HARVEST_EARLIER,
            change_set=_set(
                f"Harvest {group.name} on {on.isoformat()}",
                Change(before=event, after=dataclasses.replace(event, on=on)),
            ),
            details=(("group", group.name), ("weeks", float((event.on - on).days) / DAYS_PER_WEEK)),
            side_effects=(SideEffect.LIGHTER_FISH, SideEffect.LESS_FEED),
            cautions=_TABLE_FISH,
        )


def _fewer(case: Case, group: FishGroup) -> Iterator[Candidate]:
    count = math.floor(group.count * (1.0 - _excess(case)))
    if 1 <= count < group.count:
        yield Candidate(
            kind=RemedyKind.STOCK_FEWER,
            change_set=_set(
                f"Stock {count} of {group.count} fish of {group.name}",
                Change(before=group, after=dataclasses.replace(group, count=count)),
            ),
            details=(("group", group.name), ("fish", float(group.count - count))),
            side_effects=(SideEffect.LESS_FEED,),
            cautions=_HANDLING,
        )


def _events(case: Case, group: FishGroup) -> list[FishEvent]:
    return [event for event in case.farm.fish_events if event.group == group.id]


def _harvests(case: Case, group: FishGroup) -> list[FishEvent]:
    return [event for event in _events(case, group) if event.kind is FishEventKind.HARVEST]


def _stocked_on(group: FishGroup) -> tuple[date, str]:
    return group.stocked_on, group.name


def _set(title: str, *changes: Change) -> ChangeSet:
    return ChangeSet(title=title, changes=changes)
