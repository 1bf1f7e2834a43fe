"""Makes what the lanes draw from an outlook: rows and bars, fish and feed, weeks of balance.

Only puts together what the forecast says; reckons nothing about plants or fish. Must know nothing of Qt
painting.
"""

from __future__ import annotations

from array import array
from collections.abc import Iterable, Iterator, Mapping
from typing import Final

from planner.desk.lanes.packing import Held, packed
from planner.desk.lanes.scene import (
    NO_UNIT,
    UNPLACED,
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
from planner.desk.outlook import Outlook
from planner.desk.places_words import row_words_of
from planner.desk.words import choice_words, number_words, tr
from planner.farm.crops import PHASE_OF_STAGE, Batch, Phase, Placement
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.fields import NO_ID, Id
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.site import Bed, WeekStart
from planner.farm.species import ELEMENTS, BedKind, Crop
from planner.forecast.values import Floats, Forecast, GroupForecast, LoopForecast, WeekVerdict

_MARKS: Final = {
    FishEventKind.HARVEST: FishMarkKind.HARVEST,
    FishEventKind.ADDED: FishMarkKind.ADDED,
    FishEventKind.OFF_FEED: FishMarkKind.OFF_FEED,
}
_NONE: Final = float("nan")


def scene_of(outlook: Outlook) -> Scene:
    """Return everything the lanes show."""
    ruler = outlook.forecast.ruler
    start = ruler.start_on.toordinal()
    sites = outlook.farm.sites
    return Scene(
        start=start,
        end=start + ruler.days,
        groups=_groups(outlook),
        feeds=tuple(_feed(outlook, loop) for loop in outlook.forecast.loops),
        balances=tuple(
            balance_of(outlook.forecast, loop, outlook.verdicts[loop.loop]) for loop in outlook.forecast.loops
        ),
        from_sunday=bool(sites) and sites[0].week_start is WeekStart.SUNDAY,
    )


class BarMaker:
    """Makes the bars of batches; crops get their colours in the order the farm names them."""

    def __init__(self, farm: Farm, forecast: Forecast, crops: Mapping[str, Crop]) -> None:
        self._forecast = forecast
        self._crops = crops
        self._colours: dict[str, int] = {}
        for batch in farm.batches:
            self._colours.setdefault(batch.crop, len(self._colours))
        self._start = forecast.ruler.start_on.toordinal()

    def bar(self, batch: Batch, phase: Phase, run: Placement | None, plants: int) -> Bar:
        """Return the bar of one run of a batch, or of what is unplaced in a phase."""
        table = self._forecast.batches
        row = table.row_of[batch.id]
        first, end = table.phase_days(row, phase)
        crop = self._crops.get(batch.crop)
        return Bar(
            batch=batch.id,
            run=run.id if run else NO_ID,
            phase=phase,
            bed=run.bed if run else UNPLACED,
            unit=run.unit if run else NO_UNIT,
            code=batch.code,
            crop=crop.code if crop else batch.crop,
            crop_name=crop.name if crop else batch.crop,
            colour=self._colours.get(batch.crop, len(self._colours)),
            plants=plants,
            start=self._start + first,
            end=self._start + max(end, first + 1),
            segments=self._segments(row, phase),
            locked=batch.locked,
        )

    def lasts(self, batch: Batch, phase: Phase) -> bool:
        """Tell whether a batch spends any day in a phase."""
        table = self._forecast.batches
        first, end = table.phase_days(table.row_of[batch.id], phase)
        return end > first

    def _segments(self, row: int, phase: Phase) -> tuple[Segment, ...]:
        spans = self._forecast.batches.spans(row, self._forecast.ruler)
        return tuple(
            Segment(stage=span.stage, start=span.start_on.toordinal(), end=span.end_on.toordinal())
            for span in spans
            if PHASE_OF_STAGE[span.stage] is phase
        )


def bar_maker(outlook: Outlook, farm: Farm, forecast: Forecast) -> BarMaker:
    """Return a maker of bars for a farm, which may be one that is only tried out."""
    return BarMaker(farm, forecast, outlook.catalogue.crops)


def _groups(outlook: Outlook) -> tuple[RowGroup, ...]:
    farm = outlook.farm
    maker = bar_maker(outlook, farm, outlook.forecast)
    batches = {batch.id: batch for batch in farm.batches}
    standing: dict[tuple[Id, int], list[tuple[Placement, Bar]]] = {}
    for run in farm.placements:
        bar = maker.bar(batches[run.batch], run.phase, run, run.count)
        standing.setdefault((run.bed, run.unit), []).append((run, bar))
    beds = tuple(_bed_group(bed, standing, outlook) for bed in farm.beds)
    waiting = _waiting(farm, maker)
    return (waiting, *beds) if waiting is not None else beds


def _bed_group(
    bed: Bed, standing: dict[tuple[Id, int], list[tuple[Placement, Bar]]], outlook: Outlook
) -> RowGroup:
    rows = tuple(_row(bed, unit, standing.get((bed.id, unit), ())) for unit in range(1, bed.units + 1))
    return RowGroup(
        bed=bed.id,
        name=bed.name,
        detail=_bed_detail(bed),
        rows=rows,
        held=_held_share(bed, rows, outlook.forecast),
    )


def _bed_detail(bed: Bed) -> str:
    return tr(
        "{kind} · {places} places · {area} m²",
        kind=choice_words(bed.kind),
        places=number_words(bed.places, digits=0),
        area=number_words(bed.area_m2),
    )


def _row(bed: Bed, unit: int, standing: Iterable[tuple[Placement, Bar]]) -> Row:
    lines, bars = packed(
        [Held(bar=bar, first=run.first, share=run.count / bed.places_per_unit) for run, bar in standing]
    )
    return Row(bed=bed.id, unit=unit, name=row_words_of(bed, unit), lines=lines, bars=bars)


def _held_share(bed: Bed, rows: Iterable[Row], forecast: Forecast) -> Curve:
    """Return the share of a bed's places that is held, as means by week."""
    ruler = forecast.ruler
    start = ruler.start_on.toordinal()
    steps = [0] * (ruler.days + 1)
    for row in rows:
        for bar in row.bars:
            first, end = (min(max(day - start, 0), ruler.days) for day in (bar.start, bar.end))
            steps[first] += bar.plants
            steps[end] -= bar.plants
    held, by_week = 0, [0.0] * ruler.weeks
    for day, step in enumerate(steps[: ruler.days]):
        held += step
        by_week[day // DAYS_PER_WEEK] += held / (bed.places * DAYS_PER_WEEK)
    return Curve(start=start, step=DAYS_PER_WEEK, values=array("d", by_week))


def _waiting(farm: Farm, maker: BarMaker) -> RowGroup | None:
    """Return what is unplaced, one row for each phase; None when everything stands."""
    rows = []
    for phase in _phases_to_place(farm):
        bars = list(_unplaced(farm, maker, phase))
        if bars:
            lines, laid = packed([Held(bar=bar, first=at, share=0.0) for at, bar in enumerate(bars)])
            rows.append(
                Row(bed=UNPLACED, unit=NO_UNIT, name=choice_words(phase), lines=lines, bars=laid, phase=phase)
            )
    if not rows:
        return None
    count = sum(len(row.bars) for row in rows)
    detail = tr("{count} still to be given places", count=count)
    return RowGroup(bed=UNPLACED, name=tr("Unplaced"), detail=detail, rows=tuple(rows), urgent=True)


def _phases_to_place(farm: Farm) -> tuple[Phase, ...]:
    nursery = any(bed.kind is BedKind.NURSERY for bed in farm.beds)
    return (Phase.NURSERY, Phase.BED) if nursery else (Phase.BED,)


def _unplaced(farm: Farm, maker: BarMaker, phase: Phase) -> Iterator[Bar]:
    held: dict[Id, int] = {}
    for run in farm.placements:
        if run.phase is phase:
            held[run.batch] = held.get(run.batch, 0) + run.count
    for batch in farm.batches:
        placed = held.get(batch.id, 0)
        missing = batch.plants - placed
        whole = phase is Phase.BED or placed == 0
        if missing > 0 and whole and maker.lasts(batch, phase):
            yield maker.bar(batch, phase, None, missing)


def balance_of(forecast: Forecast, loop: LoopForecast, verdicts: tuple[WeekVerdict, ...]) -> BalanceScene:
    """Return supply against demand of one loop, by week."""
    start = forecast.ruler.start_on.toordinal()

    def curve(values: Iterable[float | None]) -> Curve:
        given = array("d", (_NONE if value is None else value for value in values))
        return Curve(start=start, step=DAYS_PER_WEEK, values=given)

    elements = tuple(
        ElementWeeks(
            element=element,
            supply=curve(week.supply_g[at] for week in verdicts),
            demand=curve(week.demand_g[at] for week in verdicts),
            band=tuple(BandMark(week.band[at].value) for week in verdicts),
        )
        for at, element in enumerate(ELEMENTS)
    )
    return BalanceScene(
        loop=loop.loop,
        name=loop.name,
        start=start,
        weeks=forecast.ruler.weeks,
        elements=elements,
        limiting=tuple(week.limiting for week in verdicts),
        feed_ratio=curve(week.feed_ratio_g_per_m2_d for week in verdicts),
        ratio_bands=(
            RatioBand(
                name=tr("FAO band"),
                low=curve(week.fao_band[0] if week.fao_band else None for week in verdicts),
                high=curve(week.fao_band[1] if week.fao_band else None for week in verdicts),
            ),
            RatioBand(
                name=tr("UVI band"),
                low=curve(week.uvi_band[0] for week in verdicts),
                high=curve(week.uvi_band[1] for week in verdicts),
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
