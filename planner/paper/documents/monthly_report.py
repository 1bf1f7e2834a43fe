"""The owner's monthly report: harvest, fish and water in plain sentences with three charts.

It tells apart what was recorded and what is only planned. Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import groupby
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.water import Quantity, Reading
from planner.forecast.figures import band_figures
from planner.forecast.values import Band, WeekVerdict
from planner.forecast.verdicts import symbol_of, week_verdicts
from planner.forecast.water.targets import Level, TargetBand, target_bands
from planner.forecast.week import DueKind, DueTask, due_between
from planner.paper.documents.amounts import kg_words, number_words
from planner.paper.documents.ask import Ask
from planner.paper.documents.charts import band_chart, bar_chart, line_chart, side_by_side
from planner.paper.documents.columns import WRITE, says, told, written
from planner.paper.documents.photos import photo_frames
from planner.paper.documents.quantities import QUANTITY_NAMES, band_words, unit_of
from planner.paper.report import Drawing, Paragraph, Part, Report, RowGroup, Section, Table, Tone
from planner.paper.words import (
    EN_DASH,
    NO_BREAK,
    count_words,
    day_words,
    list_words,
    percent_words,
    short_day_words,
    week_name,
)

TITLE: Final = "Monthly report"
_WIDTH_MM: Final = 174.0
_CHART_MM: Final = 36.0
_PANEL_MM: Final = (55.0, 44.0)
_WATER_WEEKS: Final = 12
_SHOWN: Final = (Quantity.PH, Quantity.TAN_MG_PER_L, Quantity.NITRATE_N_MG_PER_L)
_G_PER_KG: Final = 1000.0
_MOST_NAMED: Final = 6
_PHOTO_MM: Final = (84.0, 38.0)
_LEVEL_WORDS: Final = {
    Level.SAFE: "in its band",
    Level.WATCH: "near the edge of its band: watch it",
    Level.ACT: "outside its band: act",
}
_VERBS: Final = {
    DueKind.SOW: ("sowing", "sowings"),
    DueKind.MOVE: ("move to a bed", "moves to beds"),
    DueKind.PICK: ("picking", "pickings"),
    DueKind.CLEAR: ("batch cleared", "batches cleared"),
    DueKind.DOSE: ("addition to the water", "additions to the water"),
    DueKind.STOCK_FISH: ("stocking of fish", "stockings of fish"),
    DueKind.HARVEST_FISH: ("fish harvest", "fish harvests"),
}


def monthly_report(ask: Ask) -> Report:
    """Return the report of the weeks asked for, and what comes in as many after them."""
    sheet = _Month(ask)
    sections = (
        Section(heading="In short", parts=tuple(_items(sheet.short()))),
        Section(heading="Harvest", parts=tuple(sheet.harvest())),
        Section(heading="Fish", parts=tuple(sheet.fish())),
        Section(heading="Water", parts=tuple(sheet.water())),
        Section(heading="What was done", parts=tuple(_items(sheet.done()))),
        Section(heading="Problems", parts=tuple(_items(sheet.problems()))),
        Section(heading="Next month", parts=tuple(_items(sheet.coming()))),
        Section(heading="Photos", parts=(_photos(),)),
        Section(parts=(_signed(),)),
    )
    return ask.report(TITLE, sections, subtitle=ask.span_words)


def _items(texts: Iterator[str]) -> Iterator[Paragraph]:
    for text in texts:
        yield Paragraph(text=text, item=True)


@dataclass(frozen=True, slots=True)
class _Month:
    """Gathers what the report of one farm says."""

    ask: Ask

    def short(self) -> Iterator[str]:
        """Yield the three things an owner asks first."""
        days = self.ask.days_within
        plants = float(self.ask.forecast.harvest_plants[:, days].sum())
        grams = float(self.ask.forecast.harvest_g[:, days].sum())
        many = count_words(round(plants), "plant", "plants")
        yield f"The plan has {many}, {kg_words(grams)}, to pick in this time."
        if days.stop > days.start:
            count, mass = self._stock(days.stop - 1)
            yield (
                f"By the plan there are {count_words(round(count), 'fish', 'fish')} at its end, "
                f"{kg_words(mass)} together."
            )
        else:
            yield "These weeks lie outside the plan: nothing is foreseen for them."
        readings = self._readings(self.ask.first, self.ask.last)
        tested = len({(reading.loop, reading.on) for reading in readings})
        if tested:
            yield f"The water was tested on {count_words(tested, 'day', 'days')}."
        else:
            yield "No test of the water was recorded in this time."

    def _stock(self, day: int) -> tuple[float, float]:
        groups = [group for loop in self.ask.forecast.loops for group in loop.groups]
        return (
            sum(float(group.count[day]) for group in groups),
            sum(float(group.biomass_g[day]) for group in groups),
        )

    def harvest(self) -> Iterator[Part]:
        """Yield planned harvest week by week; what was picked is not kept in the program."""
        ruler = self.ask.forecast.ruler
        starts = list(self.ask.week_starts())
        weights = [self._week_kg(ruler.day_of(start)) for start in starts]
        names = [week_name(start, self.ask.starts) for start in starts]
        if any(weights):
            yield Paragraph(text="Kilograms a week by the plan:", tone=Tone.STRONG, leads=True)
            if len(names) > _MOST_BARS:
                names = [name if at % 4 == 0 else "" for at, name in enumerate(names)]
            yield bar_chart(
                weights, names, wanted=[0.0] * len(weights), width_mm=_WIDTH_MM, height_mm=_CHART_MM
            )
        else:
            yield Paragraph(text="The plan has nothing to pick in this time.")
        yield Paragraph(
            text="What was really picked is not recorded in the program; it stands on the harvest records."
        )
        crops = list(self._by_crop())
        if crops:
            yield Paragraph(text=f"By the plan: {list_words(crops)}.")

    def _week_kg(self, first: int) -> float:
        days = self.ask.forecast.harvest_g[:, max(first, 0) : max(first + DAYS_PER_WEEK, 0)]
        return float(days.sum()) / _G_PER_KG

    def _by_crop(self) -> Iterator[str]:
        days = self.ask.days_within
        for at, key in enumerate(self.ask.forecast.crops):
            grams = float(self.ask.forecast.harvest_g[at, days].sum())
            plants = float(self.ask.forecast.harvest_plants[at, days].sum())
            if grams > 0:
                name = self.ask.catalogue.crops[key].name
                many = count_words(max(round(plants), 1), "plant", "plants")
                yield f"{name} {kg_words(grams)} of {many}"

    def fish(self) -> Iterator[Part]:
        """Yield the stock by day, with dots for samples, and what was recorded."""
        days = self.ask.days_within
        if days.stop - days.start < 2:
            yield Paragraph(text="These weeks lie outside the plan.")
            return
        line = [(float(day), self._stock(day)[1] / _G_PER_KG) for day in range(days.start, days.stop)]
        yield Paragraph(text="Kilograms of fish by the plan:", tone=Tone.STRONG, leads=True)
        yield line_chart(
            line, (), self._dates(days.start, days.stop - 1), width_mm=_WIDTH_MM, height_mm=_CHART_MM
        )
        yield Paragraph(text=" ".join(self._fish_words(days)))

    def _dates(self, first: int, last: int) -> list[tuple[float, str]]:
        """Return about five days with their names, from the first to the last."""
        date_of = self.ask.forecast.ruler.date_of
        return [
            (float(day), short_day_words(date_of(day)))
            for day in (first + round((last - first) * (part + 0.5) / 5) for part in range(5))
        ]

    def _fish_words(self, days: slice) -> Iterator[str]:
        feed = sum(float(loop.feed_g[days].sum()) for loop in self.ask.forecast.loops)
        gain = sum(float(g.gain_g[days].sum()) for loop in self.ask.forecast.loops for g in loop.groups)
        if gain > 0:
            ratio = feed / gain
            yield f"Feed planned {kg_words(feed)}, gain planned {kg_words(gain)}: feed ÷ gain {ratio:.1f}."
        events = [event for event in self.ask.farm.fish_events if self.ask.first <= event.on <= self.ask.last]
        groups = {group.id: group.name for group in self.ask.farm.fish_groups}
        for event in sorted(events, key=_event_day):
            yield f"{day_words(event.on)}, {groups[event.group]}: {_event_words(event)}."
        if not any(event.kind is FishEventKind.SAMPLE for event in events):
            yield "No sample of fish was recorded; their weight is the plan's."
        if not any(event.kind is FishEventKind.FEED_GIVEN for event in events):
            yield "Feed really given was not recorded."

    def water(self) -> Iterator[Part]:
        """Yield readings of each loop in their bands."""
        bands = target_bands(self.ask.catalogue)
        since = self.ask.last - timedelta(days=_WATER_WEEKS * DAYS_PER_WEEK)
        for loop in self.ask.farm.loops:
            readings = [one for one in self._readings(since, self.ask.last) if one.loop == loop.id]
            yield Paragraph(text=f"{loop.name}, the last {_WATER_WEEKS} weeks:", tone=Tone.STRONG, leads=True)
            if not readings:
                yield Paragraph(text="No test of the water was recorded.")
                continue
            yield self._panels(readings, since)
            yield Paragraph(text="Dots are tests, the dotted ground is where values should be.")
            yield from _items(_last_words(readings, bands))

    def _panels(self, readings: list[Reading], since: date) -> Drawing:
        bands = target_bands(self.ask.catalogue)
        ends = (0.0, float(_WATER_WEEKS * DAYS_PER_WEEK))
        names = [
            (ends[1] * part, short_day_words(since + timedelta(days=round(ends[1] * part))))
            for part in (0.14, 0.82)
        ]
        panels = [
            band_chart(
                f"{QUANTITY_NAMES[quantity]} {unit_of(quantity)}".strip(),
                [(float((r.on - since).days), r.value) for r in readings if r.quantity is quantity],
                _bounds(bands.get(quantity)),
                ends,
                names,
                size_mm=_PANEL_MM,
            )
            for quantity in _SHOWN
        ]
        return side_by_side(panels, gap_mm=4.0)

    def _readings(self, first: date, last: date) -> list[Reading]:
        return sorted((one for one in self.ask.farm.readings if first <= one.on <= last), key=_reading_day)

    def _due(self, first: int) -> tuple[DueTask, ...]:
        end = first + self.ask.weeks * DAYS_PER_WEEK
        return due_between(self.ask.farm, self.ask.forecast, first_day=max(first, 0), last_day=max(end, 0))

    def done(self) -> Iterator[str]:
        """Yield what was due; the program does not keep whether it was done."""
        yield from _counts(self._due(self.ask.first_day))
        yield "This is what was due; the program does not record what was really done. See the task sheets."

    def problems(self) -> Iterator[str]:
        """Yield short weeks, tests outside their band, and deaths."""
        found = [*self._short_weeks(), *self._deaths()]
        yield from found or ["None is known from the plan and from what was recorded."]

    def _short_weeks(self) -> Iterator[str]:
        """Yield runs of weeks in which an element is short, with how little there is at worst."""
        figures = band_figures(self.ask.catalogue)
        first = max(self.ask.first_day, 0) // DAYS_PER_WEEK
        for loop in self.ask.forecast.loops:
            weeks = week_verdicts(loop, self.ask.forecast.ruler, figures)[first : first + self.ask.weeks]
            for is_short, run in groupby(weeks, key=_is_short):
                if is_short:
                    yield self._short_words(loop.name, tuple(run))

    def _short_words(self, loop: str, run: tuple[WeekVerdict, ...]) -> str:
        starts = (self.ask.forecast.ruler.week_start(verdict.week) for verdict in (run[0], run[-1]))
        names = EN_DASH.join(dict.fromkeys(week_name(start, self.ask.starts) for start in starts))
        scarce = dict.fromkeys(symbol_of(v.limiting) for v in run if v.limiting is not None)
        least = min(min(ratio for ratio in verdict.ratio if ratio is not None) for verdict in run)
        return (
            f"{loop}, {names}: {list_words(scarce)} short; at worst the fish supply about "
            f"{percent_words(least)} of what plants want."
        )

    def _deaths(self) -> Iterator[str]:
        for event in self.ask.farm.fish_events:
            if event.kind is FishEventKind.DEATHS and self.ask.first <= event.on <= self.ask.last:
                yield f"{day_words(event.on)}: {_event_words(event)}."

    def coming(self) -> Iterator[str]:
        """Yield what is due in as many weeks after these."""
        tasks = self._due(self.ask.end_day)
        yield from _counts(tasks)
        sown = list(
            dict.fromkeys(self.ask.catalogue.crops[t.crop].name for t in tasks if t.kind is DueKind.SOW)
        )
        if sown:
            more = "" if len(sown) <= _MOST_NAMED else " and others"
            yield f"To be sown: {list_words(sown[:_MOST_NAMED])}{more}."
        first = max(self.ask.end_day, 0)
        days = slice(first, first + self.ask.weeks * DAYS_PER_WEEK)
        yield f"To be picked by the plan: {kg_words(float(self.ask.forecast.harvest_g[:, days].sum()))}."


_MOST_BARS: Final = 13


def _is_short(verdict: WeekVerdict) -> bool:
    return verdict.limiting is not None and verdict.band[verdict.limiting] is Band.SHORT


def _bounds(band: TargetBand | None) -> tuple[float | None, float | None]:
    if band is None:
        return None, None
    return (None if band.low is None else band.low.value, None if band.high is None else band.high.value)


def _last_words(readings: list[Reading], bands: Mapping[Quantity, TargetBand]) -> Iterator[str]:
    last = {reading.quantity: reading for reading in readings}
    for quantity, reading in last.items():
        band = bands.get(quantity)
        said = f"; {_LEVEL_WORDS[band.level(reading.value)]} ({band_words(band)})" if band else ""
        unit = unit_of(quantity)
        value = f"{reading.value:g}{NO_BREAK}{unit}" if unit else f"{reading.value:g}"
        yield f"{QUANTITY_NAMES[quantity]}: {value} on {day_words(reading.on)}{said}"


def _cleared_words(event: FishEvent) -> str:
    if event.cleared_on is None:
        return "not to be eaten: no day is known on which it is cleared"
    return f"not to be eaten before {day_words(event.cleared_on)}"


def _event_words(event: FishEvent) -> str:  # noqa: PLR0911 - one return for each kind of event
    many = "all fish" if event.count is None else count_words(event.count, "fish", "fish")
    weight = "" if event.mean_weight_g is None else f"{number_words(event.mean_weight_g)}{NO_BREAK}g each"
    match event.kind:
        case FishEventKind.HARVEST:
            return f"{many} harvested"
        case FishEventKind.DEATHS:
            return f"{many} found dead"
        case FishEventKind.ADDED:
            return f"{many} added, {weight}"
        case FishEventKind.SAMPLE:
            return f"a sample weighed {weight}"
        case FishEventKind.OFF_FEED:
            return f"off feed for {count_words(event.days or 0, 'day', 'days')}"
        case FishEventKind.FEED_GIVEN:
            return (
                f"{number_words(event.feed_g_per_day or 0.0)}{NO_BREAK}g a day fed for "
                f"{count_words(event.days or 0, 'day', 'days')}"
            )
        case FishEventKind.TREATED:
            return f"treated with a medicine; {_cleared_words(event)}"


def _counts(tasks: tuple[DueTask, ...]) -> Iterator[str]:
    counts: dict[DueKind, int] = {}
    for task in tasks:
        counts[task.kind] = counts.get(task.kind, 0) + 1
    said = [count_words(counts[kind], *words) for kind, words in _VERBS.items() if kind in counts]
    yield f"{list_words(said)}." if said else "Nothing was planned."


def _event_day(event: FishEvent) -> date:
    return event.on


def _reading_day(reading: Reading) -> date:
    return reading.on


def _photos() -> Drawing:
    wide, high = _PHOTO_MM
    return photo_frames(wide_mm=wide, high_mm=high, says="two frames for photos")


def _signed() -> Table:
    columns = (
        told("who", "Written and read by", mm=60.0, share=1.0),
        written("initials", "Initials", mm=30.0, share=0.5),
        written("date", "Date", mm=40.0, share=0.5),
    )
    rows = ((says("Caretaker"), WRITE, WRITE), (says("Owner"), WRITE, WRITE))
    return Table(name="Signed", columns=columns, groups=(RowGroup(rows=rows),))
