"""Makes the rows and bars of the beds lane, and keeps what has not changed since the last time.

Only puts together what the forecast says; reckons nothing about plants. Must know nothing of Qt painting.
"""

from __future__ import annotations

from array import array
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field

from planner.desk.lanes.packing import Held, packed
from planner.desk.lanes.scene import NO_UNIT, UNPLACED, Bar, Curve, Row, RowGroup, Segment
from planner.desk.outlook import Outlook
from planner.desk.places_words import row_words_of
from planner.desk.say import tr
from planner.desk.words import choice_words, number_words
from planner.farm.crops import PHASE_OF_STAGE, Batch, Phase, Placement
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.fields import NO_ID, Id
from planner.farm.site import Bed
from planner.farm.species import BedKind, Crop
from planner.forecast.values import STAGES, Forecast, Ruler

_AREA_DIGITS = 2


def crop_colours(farm: Farm) -> dict[str, int]:
    """Return a colour number for every crop, in the order the farm names them."""
    colours: dict[str, int] = {}
    for batch in farm.batches:
        if batch.crop not in colours:
            colours[batch.crop] = len(colours)
    return colours


class BarMaker:
    """Makes the bars of batches from a forecast, which may be one that is only tried out."""

    def __init__(self, forecast: Forecast, crops: Mapping[str, Crop], colours: Mapping[str, int]) -> None:
        self._forecast = forecast
        self._crops = crops
        self._colours = colours
        self._start = forecast.ruler.start_on.toordinal()
        self._all_days: list[tuple[int, ...]] | None = None

    @property
    def row_of(self) -> dict[Id, int]:
        """Batch id -> its row."""
        return self._forecast.batches.row_of

    def days_of_all(self) -> list[tuple[int, ...]]:
        """Return `days` of every batch by its row, read once: quicker than one after the other."""
        if self._all_days is None:
            table = self._forecast.batches
            ends = table.ends.tolist()
            self._all_days = [(day, *of) for day, of in zip(table.sow_day.tolist(), ends, strict=True)]
        return self._all_days

    def days(self, batch: Batch) -> tuple[int, ...]:
        """Return the day a batch is sown and the day after each of its stages."""
        table = self._forecast.batches
        row = table.row_of[batch.id]
        return (int(table.sow_day[row]), *table.ends[row].tolist())

    def bar(self, batch: Batch, phase: Phase, run: Placement | None, plants: int) -> Bar:
        """Return the bar of one run of a batch, or of what is unplaced in a phase."""
        table = self._forecast.batches
        first, end = table.phase_days(table.row_of[batch.id], phase)
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
            segments=self._segments(batch, phase),
            locked=batch.locked,
        )

    def lasts(self, batch: Batch, phase: Phase) -> bool:
        """Tell whether a batch spends any day in a phase."""
        table = self._forecast.batches
        first, end = table.phase_days(table.row_of[batch.id], phase)
        return end > first

    def _segments(self, batch: Batch, phase: Phase) -> tuple[Segment, ...]:
        days = self.days(batch)
        return tuple(
            Segment(stage=stage, start=self._start + start, end=self._start + end)
            for stage, start, end in zip(STAGES, days, days[1:], strict=False)
            if end > start and PHASE_OF_STAGE[stage] is phase
        )


@dataclass(frozen=True, slots=True)
class _Kept:
    """A bar with everything it was made from."""

    batch: Batch
    run: Placement
    days: tuple[int, ...]
    colour: int
    bar: Bar


@dataclass(slots=True)
class RowKeeper:
    """Makes the groups of the beds lane; bars, rows and curves that are the same are the same objects."""

    _ruler: Ruler | None = None
    _bars: dict[Id, _Kept] = field(default_factory=dict)
    _rows: dict[tuple[Id, int], tuple[tuple[Bar, ...], Bed, Row]] = field(default_factory=dict)
    _curves: dict[Id, tuple[tuple[Row, ...], Bed, Curve]] = field(default_factory=dict)

    def groups(self, outlook: Outlook) -> tuple[RowGroup, ...]:
        """Return what is unplaced, if anything is, and every bed with its rows."""
        farm, ruler = outlook.farm, outlook.forecast.ruler
        if ruler != self._ruler:
            self._ruler, self._bars, self._rows, self._curves = ruler, {}, {}, {}
        colours = crop_colours(farm)
        maker = BarMaker(outlook.forecast, outlook.catalogue.crops, colours)
        standing = self._standing(farm, maker, colours)
        beds = tuple(self._group(bed, standing, ruler) for bed in farm.beds)
        waiting = _waiting(farm, maker)
        return (waiting, *beds) if waiting is not None else beds

    def _standing(
        self, farm: Farm, maker: BarMaker, colours: Mapping[str, int]
    ) -> dict[tuple[Id, int], list[tuple[Placement, Bar]]]:
        batches = {batch.id: batch for batch in farm.batches}
        before, self._bars = self._bars, {}
        standing: dict[tuple[Id, int], list[tuple[Placement, Bar]]] = {}
        all_days, row_of = maker.days_of_all(), maker.row_of
        for run in farm.placements:
            batch = batches[run.batch]
            days, colour = all_days[row_of[run.batch]], colours[batch.crop]
            kept = before.get(run.id)
            if (
                kept is None
                or kept.batch is not batch
                or kept.run is not run
                or (kept.days, kept.colour) != (days, colour)
            ):
                kept = _Kept(batch, run, days, colour, maker.bar(batch, run.phase, run, run.count))
            self._bars[run.id] = kept
            standing.setdefault((run.bed, run.unit), []).append((run, kept.bar))
        return standing

    def _group(
        self, bed: Bed, standing: dict[tuple[Id, int], list[tuple[Placement, Bar]]], ruler: Ruler
    ) -> RowGroup:
        rows = tuple(
            self._row(bed, unit, standing.get((bed.id, unit), ())) for unit in range(1, bed.units + 1)
        )
        return RowGroup(
            bed=bed.id, name=bed.name, detail=_bed_detail(bed), rows=rows, held=self._curve(bed, rows, ruler)
        )

    def _row(self, bed: Bed, unit: int, standing: Sequence[tuple[Placement, Bar]]) -> Row:
        unlaid = tuple(bar for _, bar in standing)
        kept = self._rows.get((bed.id, unit))
        if kept is not None and kept[0] == unlaid and kept[1] is bed:
            return kept[2]
        held = [
            Held(bar=bar, first=run.first, share=run.count / bed.places_per_unit) for run, bar in standing
        ]
        lines, bars = packed(held)
        row = Row(bed=bed.id, unit=unit, name=row_words_of(bed, unit), lines=lines, bars=bars)
        self._rows[bed.id, unit] = (unlaid, bed, row)
        return row

    def _curve(self, bed: Bed, rows: tuple[Row, ...], ruler: Ruler) -> Curve:
        kept = self._curves.get(bed.id)
        if kept is not None and kept[1] is bed and all(a is b for a, b in zip(kept[0], rows, strict=True)):
            return kept[2]
        curve = _held_share(bed, rows, ruler)
        self._curves[bed.id] = (rows, bed, curve)
        return curve


def _bed_detail(bed: Bed) -> str:
    return tr(
        "{kind} · {places} places · {area} m²",
        kind=choice_words(bed.kind),
        places=number_words(bed.places, digits=0),
        area=number_words(round(bed.area_m2, _AREA_DIGITS)),
    )


def _held_share(bed: Bed, rows: Sequence[Row], ruler: Ruler) -> Curve:
    """Return the share of a bed's places that is held, as means by week."""
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
