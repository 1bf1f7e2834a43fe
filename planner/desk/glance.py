"""What the lanes last showed of a farm, as plain values that can be kept in a file and read back.

With it the window shows the farm at once at the next start, until the farm itself is read in. Only
numbers, words and lists are written, and everything is checked when it is read: whatever another program
may have put in the file, the worst it does is that there is no glance. Must know nothing of files, Qt,
forecasts or how a farm is kept.
"""

from __future__ import annotations

import math
from array import array
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Any, Final, TypeVar

from planner.desk.lanes.scene import (
    NO_UNIT,
    BalanceScene,
    BandMark,
    Bar,
    Curve,
    ElementWeeks,
    FeedScene,
    FishMark,
    FishMarkKind,
    FishRow,
    RatioBand,
    Row,
    RowGroup,
    Scene,
    Segment,
)
from planner.desk.lanes.time_scale import FIRST_DAY, LAST_DAY
from planner.farm.crops import Phase, Stage
from planner.farm.fields import Id
from planner.farm.species import ELEMENTS

DAYS_BEFORE: Final = 150
DAYS_AFTER: Final = 400
"""Bars that lie wholly outside of these days around today are left out, so that a glance stays small."""

GOOD_FOR_DAYS: Final = 30
"""So long after it was taken a glance still has every bar that can be seen beside the day of today."""

_MOST_WORDS: Final = 500
_MOST_COUNT: Final = 10**9
_STAGES: Final = tuple(Stage)

T = TypeVar("T")


class GlanceError(ValueError):
    """A glance that is none; the text says what of it is wrong."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Glance:
    """The scene of a farm of that name, taken on a day."""

    name: str
    taken_on: date
    scene: Scene


def glance_of(name: str, scene: Scene, today: date) -> Glance:
    """Return a glance of a scene, with the bars that can be seen around today."""
    low, high = today.toordinal() - DAYS_BEFORE, today.toordinal() + DAYS_AFTER
    groups = tuple(
        replace(group, rows=tuple(replace(row, bars=_between(row.bars, low, high)) for row in group.rows))
        for group in scene.groups
    )
    return Glance(name=name, taken_on=today, scene=replace(scene, groups=groups))


def _between(bars: Sequence[Bar], low: int, high: int) -> tuple[Bar, ...]:
    return tuple(bar for bar in bars if bar.end > low and bar.start < high)


# ---- to plain values


def to_plain(glance: Glance) -> list[Any]:
    """Return a glance as nested lists of numbers and words."""
    scene = glance.scene
    return [
        glance.name,
        glance.taken_on.toordinal(),
        scene.start,
        scene.end,
        scene.from_sunday,
        [_plain_group(group) for group in scene.groups],
        [_plain_feed(feed) for feed in scene.feeds],
        [_plain_balance(balance) for balance in scene.balances],
    ]


def _plain_group(group: RowGroup) -> list[Any]:
    rows = [
        [row.unit, row.name, row.lines, row.phase and row.phase.value, [_plain_bar(bar) for bar in row.bars]]
        for row in group.rows
    ]
    held = None if group.held is None else _plain_curve(group.held)
    return [group.bed, group.name, group.detail, group.urgent, held, rows]


def _plain_bar(bar: Bar) -> list[Any]:
    return [
        bar.batch,
        bar.run,
        bar.phase.value,
        bar.code,
        bar.crop,
        bar.crop_name,
        bar.colour,
        bar.plants,
        bar.start,
        bar.end,
        [[each.order, each.start, each.end] for each in bar.segments],
        bar.locked,
        bar.top,
        bar.lines,
    ]


def _plain_curve(curve: Curve) -> list[Any]:
    return [curve.start, curve.step, [None if math.isnan(each) else each for each in curve.values]]


def _plain_feed(feed: FeedScene) -> list[Any]:
    groups = [
        [
            row.group,
            row.name,
            row.tank,
            row.start,
            row.end,
            [[mark.kind.value, mark.day, mark.count] for mark in row.marks],
        ]
        for row in feed.groups
    ]
    curves = (feed.feed_by_day, feed.feed_by_week, feed.biomass_by_week)
    return [feed.loop, feed.name, *(_plain_curve(curve) for curve in curves), groups]


def _plain_balance(balance: BalanceScene) -> list[Any]:
    elements = [
        [
            each.element,
            _plain_curve(each.supply),
            _plain_curve(each.demand),
            [mark.value for mark in each.band],
        ]
        for each in balance.elements
    ]
    bands = [[band.name, _plain_curve(band.low), _plain_curve(band.high)] for band in balance.ratio_bands]
    return [
        balance.loop,
        balance.name,
        balance.start,
        balance.weeks,
        elements,
        list(balance.limiting),
        _plain_curve(balance.feed_ratio),
        bands,
    ]


# ---- from plain values


def from_plain(plain: object) -> Glance:
    """Return the glance that plain values stand for.

    Raises:
        GlanceError: a value is missing, of another kind, or beyond what a farm can have.
    """
    try:
        return _glance(plain)
    except GlanceError:
        raise
    except (TypeError, ValueError, OverflowError, RecursionError) as error:
        raise GlanceError(str(error)) from error


def _glance(plain: object) -> Glance:
    name, taken_on, start, end, from_sunday, groups, feeds, balances = _listed(plain)
    scene = Scene(
        start=_day(start),
        end=_day(end),
        groups=_each(groups, _group),
        feeds=_each(feeds, _feed),
        balances=_each(balances, _balance),
        from_sunday=_flag(from_sunday),
    )
    return Glance(name=_words(name), taken_on=date.fromordinal(_day(taken_on)), scene=scene)


def _group(plain: object) -> RowGroup:
    bed, name, detail, urgent, held, rows = _listed(plain)
    bed_id = Id(_words(bed))
    return RowGroup(
        bed=bed_id,
        name=_words(name),
        detail=_words(detail),
        urgent=_flag(urgent),
        held=None if held is None else _curve(held),
        rows=tuple(_row(row, bed_id) for row in _listed(rows)),
    )


def _row(plain: object, bed: Id) -> Row:
    unit, name, lines, phase, bars = _listed(plain)
    unit = _whole(unit, least=NO_UNIT)
    return Row(
        bed=bed,
        unit=unit,
        name=_words(name),
        lines=_number(lines),
        phase=None if phase is None else Phase(phase),
        bars=tuple(_bar(bar, bed, unit) for bar in _listed(bars)),
    )


def _bar(plain: object, bed: Id, unit: int) -> Bar:
    batch, run, phase, code, crop, crop_name, colour, plants, start, end, segments, locked, top, lines = (
        _listed(plain)
    )
    return Bar(
        batch=Id(_words(batch)),
        run=Id(_words(run)),
        phase=Phase(phase),
        bed=bed,
        unit=unit,
        code=_words(code),
        crop=_words(crop),
        crop_name=_words(crop_name),
        colour=_whole(colour),
        plants=_whole(plants),
        start=_day(start),
        end=_day(end),
        segments=_each(segments, _segment),
        locked=_flag(locked),
        top=_number(top),
        lines=_number(lines),
    )


def _segment(plain: object) -> Segment:
    order, start, end = _listed(plain)
    stage = _STAGES[_whole(order, most=len(_STAGES) - 1)]
    return Segment(stage=stage, start=_day(start), end=_day(end))


def _curve(plain: object, length: int | None = None) -> Curve:
    start, step, values = _listed(plain)
    found = array("d", (math.nan if each is None else _number(each) for each in _listed(values)))
    if length is not None and len(found) != length:
        raise GlanceError(f"a curve has {len(found)} values, not {length}")
    return Curve(start=_day(start), step=_whole(step, least=1), values=found)


def _feed(plain: object) -> FeedScene:
    loop, name, by_day, by_week, biomass, groups = _listed(plain)
    return FeedScene(
        loop=Id(_words(loop)),
        name=_words(name),
        feed_by_day=_curve(by_day),
        feed_by_week=_curve(by_week),
        biomass_by_week=_curve(biomass),
        groups=_each(groups, _fish_row),
    )


def _fish_row(plain: object) -> FishRow:
    group, name, tank, start, end, marks = _listed(plain)
    return FishRow(
        group=Id(_words(group)),
        name=_words(name),
        tank=_words(tank),
        start=_day(start),
        end=_day(end),
        marks=_each(marks, _mark),
    )


def _mark(plain: object) -> FishMark:
    kind, day, count = _listed(plain)
    return FishMark(kind=FishMarkKind(kind), day=_day(day), count=None if count is None else _whole(count))


def _balance(plain: object) -> BalanceScene:
    loop, name, start, weeks, elements, limiting, ratio, bands = _listed(plain)
    weeks = _whole(weeks)
    rows = tuple(_element(each, weeks) for each in _listed(elements))
    limits = tuple(None if each is None else _whole(each, most=len(rows) - 1) for each in _listed(limiting))
    if len(limits) != weeks:
        raise GlanceError(f"{len(limits)} weeks are limited, not {weeks}")
    return BalanceScene(
        loop=Id(_words(loop)),
        name=_words(name),
        start=_day(start),
        weeks=weeks,
        elements=rows,
        limiting=limits,
        feed_ratio=_curve(ratio, weeks),
        ratio_bands=tuple(_band(each, weeks) for each in _listed(bands)),
    )


def _element(plain: object, weeks: int) -> ElementWeeks:
    element, supply, demand, band = _listed(plain)
    if element not in ELEMENTS:
        raise GlanceError(f"{element!r} is no element")
    marks = _each(band, BandMark)
    if len(marks) != weeks:
        raise GlanceError(f"{len(marks)} weeks are marked, not {weeks}")
    return ElementWeeks(
        element=element, supply=_curve(supply, weeks), demand=_curve(demand, weeks), band=marks
    )


def _band(plain: object, weeks: int) -> RatioBand:
    name, low, high = _listed(plain)
    return RatioBand(name=_words(name), low=_curve(low, weeks), high=_curve(high, weeks))


# ---- single values, each refused when it is of another kind


def _listed(plain: object) -> list[Any]:
    if type(plain) is not list:
        raise GlanceError("a list is missing")
    return plain


def _each(plain: object, make: Callable[[Any], T]) -> tuple[T, ...]:
    return tuple(make(each) for each in _listed(plain))


def _words(plain: object) -> str:
    if type(plain) is not str or len(plain) > _MOST_WORDS:
        raise GlanceError("words are missing or too long")
    return plain


def _flag(plain: object) -> bool:
    if type(plain) is not bool:
        raise GlanceError("yes or no is missing")
    return plain


def _whole(plain: object, *, least: int = 0, most: int = _MOST_COUNT) -> int:
    if type(plain) is not int or not least <= plain <= most:
        raise GlanceError(f"{plain!r} is no whole number from {least} to {most}")
    return plain


def _day(plain: object) -> int:
    return _whole(plain, least=FIRST_DAY, most=LAST_DAY)


def _number(plain: object) -> float:
    if type(plain) not in (int, float) or not 0 <= plain <= _MOST_COUNT:  # type: ignore[operator]
        raise GlanceError(f"{plain!r} is no number from 0 to {_MOST_COUNT}")
    return float(plain)  # type: ignore[arg-type]
