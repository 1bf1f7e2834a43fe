"""Makes what the lanes draw from an outlook: rows and bars, fish and feed, weeks of balance.

Only puts together what the forecast says; reckons nothing about plants or fish. Must know nothing of Qt
painting.
"""

from __future__ import annotations

from array import array
from collections.abc import Iterable, Iterator
from typing import Final

import numpy as np

from planner.desk.bars_of import RowKeeper
from planner.desk.lanes.scene import (
    BalanceScene,
    BandMark,
    Curve,
    ElementWeeks,
    FeedScene,
    FishMark,
    FishMarkKind,
    FishRow,
    RatioBand,
    Scene,
)
from planner.desk.outlook import Outlook
from planner.desk.say import tr
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.site import WeekStart
from planner.farm.species import ELEMENTS
from planner.forecast.figures import BandFigures
from planner.forecast.months import months_of
from planner.forecast.values import Floats, Forecast, GroupForecast, LoopForecast
from planner.forecast.verdicts import BANDS, week_columns

_MARKS: Final = {
    FishEventKind.HARVEST: FishMarkKind.HARVEST,
    FishEventKind.ADDED: FishMarkKind.ADDED,
    FishEventKind.OFF_FEED: FishMarkKind.OFF_FEED,
}
_BAND_MARKS: Final = tuple(BandMark(band.value) for band in BANDS)


def scene_of(outlook: Outlook, keeper: RowKeeper | None = None) -> Scene:
    """Return everything the lanes show; a `keeper` makes it quick when little has changed."""
    ruler = outlook.forecast.ruler
    start = ruler.start_on.toordinal()
    sites = outlook.farm.sites
    return Scene(
        start=start,
        end=start + ruler.days,
        groups=(keeper or RowKeeper()).groups(outlook),
        feeds=tuple(_feed(outlook, loop) for loop in outlook.forecast.loops),
        balances=tuple(balance_of(outlook.forecast, loop, outlook.bands) for loop in outlook.forecast.loops),
        from_sunday=bool(sites) and sites[0].week_start is WeekStart.SUNDAY,
        months=months_of(sites[0], outlook.catalogue) if sites else (),
    )


def balance_of(forecast: Forecast, loop: LoopForecast, bands: BandFigures) -> BalanceScene:
    """Return supply against demand of one loop, by week."""
    start = forecast.ruler.start_on.toordinal()
    found = week_columns(loop, forecast.ruler, bands)

    def curve(values: Floats) -> Curve:
        return Curve(start=start, step=DAYS_PER_WEEK, values=array("d", values.tolist()))

    every_week = np.ones(forecast.ruler.weeks)
    planted = ~np.isnan(found.per_m2)
    low, high = (np.where(planted, edge, np.nan) for edge in (found.fao_low, found.fao_high))
    return BalanceScene(
        loop=loop.loop,
        name=loop.name,
        start=start,
        weeks=forecast.ruler.weeks,
        elements=tuple(
            ElementWeeks(
                element=element,
                supply=curve(found.supply_g[at]),
                demand=curve(found.demand_g[at]),
                band=tuple(_BAND_MARKS[band] for band in found.band[at].tolist()),
            )
            for at, element in enumerate(ELEMENTS)
        ),
        limiting=tuple(None if at < 0 else at for at in found.limiting.tolist()),
        feed_ratio=curve(found.per_m2),
        ratio_bands=(
            RatioBand(name=tr("FAO band"), low=curve(low), high=curve(high)),
            RatioBand(
                name=tr("UVI band"),
                low=curve(every_week * bands.uvi_raft[0]),
                high=curve(every_week * bands.uvi_raft[1]),
            ),
        ),
    )


def _feed(outlook: Outlook, loop: LoopForecast) -> FeedScene:
    ruler = outlook.forecast.ruler
    biomass = ruler.weekly_mean(loop.feed_g * 0)
    for group in loop.groups:
        biomass = biomass + ruler.weekly_mean(group.biomass_g)
    return FeedScene(
        loop=loop.loop,
        name=loop.name,
        feed_by_day=_curve(loop.feed_g, outlook, step=1),
        feed_by_week=_curve(ruler.weekly_mean(loop.feed_g), outlook, step=DAYS_PER_WEEK),
        biomass_by_week=_curve(biomass, outlook, step=DAYS_PER_WEEK),
        groups=tuple(_fish_row(outlook, group) for group in loop.groups),
    )


def _curve(values: Floats, outlook: Outlook, *, step: int) -> Curve:
    start = outlook.forecast.ruler.start_on.toordinal()
    return Curve(start=start, step=step, values=array("d", values.tolist()))


def _fish_row(outlook: Outlook, found: GroupForecast) -> FishRow:
    farm, ruler = outlook.farm, outlook.forecast.ruler
    group = next(each for each in farm.fish_groups if each.id == found.group)
    tank = next((tank.name for tank in farm.tanks if tank.id == group.tank), "")
    start = group.stocked_on.toordinal()
    there = found.count.nonzero()[0]
    end = ruler.start_on.toordinal() + (int(there[-1]) + 1 if there.size else 0)
    stocked = FishMark(kind=FishMarkKind.STOCKED, day=start, count=group.count)
    events = (event for event in farm.fish_events if event.group == group.id)
    return FishRow(
        group=group.id,
        name=group.name,
        tank=tank,
        start=start,
        end=max(end, start + 1),
        marks=(stocked, *_marks(events)),
    )


def _marks(events: Iterable[FishEvent]) -> Iterator[FishMark]:
    for event in events:
        if event.kind in _MARKS:
            yield FishMark(kind=_MARKS[event.kind], day=event.on.toordinal(), count=event.count)
