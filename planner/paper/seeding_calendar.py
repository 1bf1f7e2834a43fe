"""The seeding calendar: what to sow in each week, for the nursery wall or the bench.

One row a sowing, grouped by week, with room to tick off by hand. Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.farm.crops import Batch, Phase, SeedLot
from planner.farm.farm import DAYS_PER_WEEK, Farm, by_id
from planner.farm.fields import Id
from planner.farm.mark import plan_mark
from planner.farm.site import WeekStart
from planner.farm.species import Crop
from planner.forecast.values import Forecast
from planner.paper.places import PlaceBook, tray_words
from planner.paper.report import Align, Box, Cell, Column, Line, Report, RowGroup, Section, Size, Table, Tone
from planner.paper.seeding_notes import notes
from planner.paper.words import (
    EN_DASH,
    NO_BREAK,
    count_words,
    day_words,
    span_words,
    week_name,
    week_start,
    whole_words,
)

TITLE: Final = "Seeding calendar"
TABLE_NAME: Final = "Sowings"
NOTHING: Final = "nothing to sow"
NO_LOT: Final = "lot not chosen"
SOWN_IN_PLACE: Final = "sown where it grows"
MOST_WEEKS: Final = 520
_FIRM: Final = ("sow", "seeds", "trays", "done", "initials", "date_done", "number_done")
_HOW_TO: Final = (
    "When sown: tick the box, then write your initials, the date, and how many seeds were really sown."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Sizes:
    """Type and least widths of the calendar's columns, for the wall or for the bench."""

    loud: Size
    number: Size
    day: Size
    detail: Size
    sow_mm: float
    crop_mm: float
    seeds_mm: float
    trays_mm: float
    batch_mm: float
    move_mm: float
    harvest_mm: float
    tick_mm: float
    write_mm: float
    write_date_mm: float


WALL_LEAST_PT: Final = 20.0
"""Least type of crop and number on the wall: read at 1.5 m (capitals of 5 mm; own reckoning)."""
BENCH_LEAST_PT: Final = 14.0

_WALL: Final = _Sizes(
    loud=Size(best_pt=23.0, least_pt=WALL_LEAST_PT),
    number=Size(best_pt=26.0, least_pt=WALL_LEAST_PT),
    day=Size(best_pt=20.0, least_pt=16.0),
    detail=Size(best_pt=14.0, least_pt=13.0),
    sow_mm=31.5,
    crop_mm=70.0,
    seeds_mm=34.0,
    trays_mm=29.0,
    batch_mm=42.0,
    move_mm=61.0,
    harvest_mm=36.0,
    tick_mm=18.0,
    write_mm=20.0,
    write_date_mm=22.0,
)
_BENCH: Final = _Sizes(
    loud=Size(best_pt=15.0, least_pt=BENCH_LEAST_PT),
    number=Size(best_pt=16.0, least_pt=BENCH_LEAST_PT),
    day=Size(best_pt=13.0, least_pt=11.0),
    detail=Size(best_pt=11.0, least_pt=11.0),
    sow_mm=18.6,
    crop_mm=30.0,
    seeds_mm=18.7,
    trays_mm=20.0,
    batch_mm=28.6,
    move_mm=39.3,
    harvest_mm=27.1,
    tick_mm=16.4,
    write_mm=15.2,
    write_date_mm=15.2,
)


def seeding_calendar(
    farm: Farm,
    forecast: Forecast,
    catalogue: Catalogue,
    *,
    from_on: date,
    weeks: int,
    printed_on: datetime,
    large: bool,
) -> Report:
    """Return the seeding calendar of whole weeks, from the week that holds `from_on`.

    `large` sets it for the wall (A3, Tabloid), else for the bench. Weeks begin as the first site says.
    `catalogue` has the farm's own entries laid over it.

    Raises:
        ValueError: `weeks` is not 1 to 520.
    """
    if not 1 <= weeks <= MOST_WEEKS:
        raise ValueError(f"weeks: {weeks} must lie within 1 to {MOST_WEEKS}")
    calendar = _Calendar(farm=farm, forecast=forecast, catalogue=catalogue, from_on=from_on, weeks=weeks)
    rows = calendar.sowings()
    table = Table(name=TABLE_NAME, columns=_columns(_WALL if large else _BENCH), groups=calendar.groups(rows))
    return Report(
        title=TITLE,
        subtitle=calendar.span_words,
        header_lines=(_summary(farm, forecast, rows), _HOW_TO),
        sections=(Section(parts=(table,)), *notes(farm, forecast, catalogue, rows=rows, large=large)),
        farm_name=farm.settings.name,
        plan_mark=plan_mark(farm),
        printed_on=printed_on,
        landscape=True,
        large=large,
    )


def _summary(farm: Farm, forecast: Forecast, rows: tuple[int, ...]) -> str:
    sites = ", ".join(site.name for site in farm.sites if site.name != farm.settings.name)
    where = f"{farm.settings.name} ({sites})" if sites else farm.settings.name
    if not rows:
        return f"{where}: no sowings in these weeks."
    seeds = sum(int(forecast.batches.seeds[row]) for row in rows)
    return f"{where}: {count_words(len(rows), 'sowing', 'sowings')}, {count_words(seeds, 'seed', 'seeds')}."


class _Calendar:
    """Gathers what the calendar of one farm says."""

    def __init__(
        self, *, farm: Farm, forecast: Forecast, catalogue: Catalogue, from_on: date, weeks: int
    ) -> None:
        self._farm = farm
        self._crops = catalogue.crops
        self._forecast = forecast
        self._starts = farm.sites[0].week_start if farm.sites else WeekStart.MONDAY
        self._first = week_start(from_on, self._starts)
        self._weeks = weeks
        self._places = PlaceBook(farm)
        self._lots: dict[Id, SeedLot] = by_id(farm.seed_lots)

    @property
    def span_words(self) -> str:
        """The weeks covered, by number and by date."""
        last = self._first + timedelta(days=self._weeks * DAYS_PER_WEEK - 1)
        first_week, last_week = week_name(self._first, self._starts), week_name(last, self._starts)
        names = first_week if self._weeks == 1 else f"{first_week}{EN_DASH}{last_week}"
        return f"{names}, {span_words(self._first, last)}"

    def sowings(self) -> tuple[int, ...]:
        """Return the rows of the batches sown in the span, by day, then by code."""
        table, ruler = self._forecast.batches, self._forecast.ruler
        first = ruler.day_of(self._first)
        inside = (table.sow_day >= first) & (table.sow_day < first + self._weeks * DAYS_PER_WEEK)
        rows = (int(row) for row in inside.nonzero()[0])
        return tuple(sorted(rows, key=self._order))

    def _order(self, row: int) -> tuple[int, str]:
        return int(self._forecast.batches.sow_day[row]), self._farm.batches[row].code

    def groups(self, rows: tuple[int, ...]) -> tuple[RowGroup, ...]:
        """Return one group a week, weeks without sowing too."""
        by_week: dict[date, list[int]] = {}
        for row in rows:
            by_week.setdefault(week_start(self._farm.batches[row].sow_on, self._starts), []).append(row)
        starts = (self._first + timedelta(days=week * DAYS_PER_WEEK) for week in range(self._weeks))
        return tuple(self._group(start, by_week.get(start, [])) for start in starts)

    def _group(self, start: date, rows: list[int]) -> RowGroup:
        return RowGroup(
            heading=week_name(start, self._starts),
            detail=span_words(start, start + timedelta(days=DAYS_PER_WEEK - 1)),
            rows=tuple(self._row(row) for row in rows),
            empty="" if rows else NOTHING,
        )

    def _row(self, row: int) -> tuple[Cell, ...]:
        batch = self._farm.batches[row]
        crop = self._forecast.profiles[int(self._forecast.batches.profile[row])].crop
        write = Cell(box=Box.WRITE)
        return (
            _day_cell(batch.sow_on),
            _crop_cell(batch, crop, self._crops.get(crop.key, crop).name),
            self._seeds_cell(batch, row),
            self._trays_cell(batch, row),
            self._batch_cell(batch),
            Cell(lines=tuple(self._move_lines(batch, row))),
            Cell(lines=tuple(self._harvest_lines(batch, row))),
            Cell(box=Box.TICK),
            write,
            write,
            write,
        )

    def _seeds_cell(self, batch: Batch, row: int) -> Cell:
        seeds = int(self._forecast.batches.seeds[row])
        wanted = f"for {count_words(batch.plants, 'plant', 'plants')}"
        lines = (Line(text=whole_words(seeds), tone=Tone.MAIN), Line(text=wanted))
        return Cell(lines=lines, value=str(seeds))

    def _trays_cell(self, batch: Batch, row: int) -> Cell:
        first, *rest = tray_words(self._places, batch, int(self._forecast.batches.seeds[row]))
        return Cell(lines=(Line(text=first, tone=Tone.STRONG), *(Line(text=text) for text in rest)))

    def _batch_cell(self, batch: Batch) -> Cell:
        lot = self._lots.get(batch.seed_lot)
        lot_words = f"lot {lot.code}" if lot else NO_LOT
        return Cell(lines=(Line(text=batch.code, tone=Tone.STRONG), Line(text=lot_words)))

    def _week_day(self, day: int, beside: date) -> str:
        on = self._forecast.ruler.date_of(day)
        return f"{week_name(on, self._starts)} {day_words(on, beside=beside)}"

    def _move_lines(self, batch: Batch, row: int) -> Iterator[Line]:
        table = self._forecast.batches
        spacing, moved = (table.phase_days(row, phase)[0] for phase in (Phase.SPACING, Phase.BED))
        sown = int(table.sow_day[row])
        if moved > sown:
            yield Line(text=self._week_day(moved, batch.sow_on), tone=Tone.STRONG)
            yield Line(text=f"{_days(moved - sown)} from sowing")
        else:
            yield Line(text=SOWN_IN_PLACE, tone=Tone.STRONG)
        for text in self._places.where(batch, Phase.BED):
            yield Line(text=text)
        if moved > spacing > sown:
            yield Line(text=f"before that, space out {self._week_day(spacing, batch.sow_on)}")
            for text in self._places.where(batch, Phase.SPACING):
                yield Line(text=text)

    def _harvest_lines(self, batch: Batch, row: int) -> Iterator[Line]:
        ruler = self._forecast.ruler
        first_day, end_day = self._forecast.batches.pick_days(row)
        first, last = ruler.date_of(first_day), ruler.date_of(end_day - 1)
        weeks = (week_name(first, self._starts), week_name(last, self._starts))
        yield Line(text=EN_DASH.join(dict.fromkeys(weeks)), tone=Tone.STRONG)
        if first == last:
            yield Line(text=_held_together(day_words(first, beside=batch.sow_on)))
        else:
            yield Line(text=_held_together(f"{day_words(first, beside=batch.sow_on)} {EN_DASH}"))
            yield Line(text=_held_together(day_words(last, beside=batch.sow_on)))


def _held_together(text: str) -> str:
    """Return a text that wraps nowhere while it fits a line."""
    return text.replace(" ", NO_BREAK)


def _day_cell(on: date) -> Cell:
    """Return weekday above day and month, so that both stay whole in a narrow column."""
    weekday, day = day_words(on, beside=on).split(" ", 1)
    lines = (Line(text=weekday, tone=Tone.MAIN), Line(text=_held_together(day), tone=Tone.MAIN))
    return Cell(lines=lines, value=on.isoformat())


def _crop_cell(batch: Batch, crop: Crop, named: str) -> Cell:
    """Return the crop large; smaller below it what its name on this sheet has behind it, and the variety."""
    own, behind = (crop.name, named.removeprefix(crop.name)) if named.startswith(crop.name) else (named, "")
    details = (Line(text=text) for text in (behind.strip(), batch.variety) if text)
    return Cell(lines=(Line(text=own, tone=Tone.MAIN), *details))


def _days(count: int) -> str:
    return count_words(count, "day", "days")


def _columns(sizes: _Sizes) -> tuple[Column, ...]:
    """Return the columns; what is ticked and written by hand keeps its room on every paper."""

    def column(
        key: str,
        heading: str,
        least_mm: float,
        *,
        share: float = 1.0,
        main: Size = sizes.detail,
        unit: str = "",
        fold: int = 0,
    ) -> Column:
        return Column(
            key=key,
            heading=heading,
            unit=unit,
            share=share,
            least_mm=least_mm,
            main=main,
            detail=sizes.detail,
            align=Align.RIGHT if key == "seeds" else Align.LEFT,
            fold=fold,
            firm=key in _FIRM,
        )

    return (
        column("sow", "Sow on", sizes.sow_mm, main=sizes.day, share=0.2),
        column("crop", "Crop", sizes.crop_mm, main=sizes.loud, unit="variety", share=4.0),
        column("seeds", "Sow", sizes.seeds_mm, main=sizes.number, unit="seeds", share=0.5),
        column("trays", "Fill", sizes.trays_mm, unit="trays", share=1.0),
        column("batch", "Batch", sizes.batch_mm, unit="seed lot", share=4.0, fold=1),
        column("move", "Move to bed", sizes.move_mm, unit="when, where", share=1.5, fold=1),
        column("harvest", "Harvest", sizes.harvest_mm, unit="first – last", share=0.5, fold=1),
        column("done", "Done", sizes.tick_mm, unit="tick", share=0.1),
        column("initials", "Initials", sizes.write_mm, share=0.3, fold=1),
        column("date_done", "Date", sizes.write_date_mm, unit="done", share=0.3, fold=1),
        column("number_done", "Seeds", sizes.write_mm, unit="sown", share=0.3, fold=1),
    )
