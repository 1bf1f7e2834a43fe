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
from planner.paper.documents.amounts import kg_words
from planner.paper.documents.ask import Ask
from planner.paper.documents.charts import band_chart, bar_chart, line_chart, side_by_side
from planner.paper.documents.columns import WRITE, says, told, written
from planner.paper.documents.month_log import MonthLog, Picked, event_words
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
_GAP_MM: Final = 6.0
_HALF_MM: Final = (_WIDTH_MM - _GAP_MM) / 2
_CHART_MM: Final = 25.0
_PANEL_MM: Final = (55.0, 27.0)
_WATER_WEEKS: Final = 12
_SHOWN: Final = (Quantity.PH, Quantity.TAN_MG_PER_L, Quantity.NITRATE_N_MG_PER_L)
_G_PER_KG: Final = 1000.0
_MOST_NAMED: Final = 6
_CHART_KEY: Final = "Bars: kg picked a week, as noted; dashed: by the plan. Line: kg of fish by the plan."
_DOT_KEY: Final = "Dots are tests; the ground shows where values should be."
_FED: Final = FishEventKind.FEED_GIVEN
_LEVEL_WORDS: Final = {
    Level.ACT: "Outside the band, act",
    Level.WATCH: "Near the edge of the band, watch",
    Level.SAFE: "In the band",
    None: "Without a band",
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
        Section(parts=(Paragraph(text=" ".join(sheet.short()), tone=Tone.STRONG),)),
        Section(heading="Harvest and fish", parts=tuple(sheet.stock())),
        *sheet.water(),
        Section(
            columns=2,
            parts=(
                *_headed("What was done", sheet.done()),
                *_headed("Problems", sheet.problems()),
                *_headed("Next month", sheet.coming()),
            ),
        ),
        Section(parts=(_signed(),)),
    )
    return ask.report(TITLE, sections, subtitle=ask.span_words)


def _items(texts: Iterator[str]) -> Iterator[Paragraph]:
    for text in texts:
        yield Paragraph(text=text, item=True)


def _headed(heading: str, texts: Iterator[str]) -> Iterator[Paragraph]:
    yield Paragraph(text=heading, tone=Tone.STRONG, leads=True)
    yield from _items(texts)


@dataclass(frozen=True, slots=True)
class _Month:
    """Gathers what the report of one farm says."""

    ask: Ask

    @property
    def log(self) -> MonthLog:
        """What the log says of these days."""
        return MonthLog(self.ask)

    def short(self) -> Iterator[str]:
        """Yield the three things an owner asks first."""
        days = self.ask.days_within
        plants = float(self.ask.forecast.harvest_plants[:, days].sum())
        grams = float(self.ask.forecast.harvest_g[:, days].sum())
        many = count_words(round(plants), "plant", "plants")
        picked = sum(self.log.picked_by_week())
        told = f"{kg_words(picked * _G_PER_KG)} were noted as picked" if picked else "no picking was noted"
        yield f"The plan has {many}, {kg_words(grams)}, to pick in this time; {told}."
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

    def stock(self) -> Iterator[Part]:
        """Yield harvest and fish side by side, then each crop and the fish in words."""
        days = self.ask.days_within
        if days.stop - days.start < 2:
            yield Paragraph(text="These weeks lie outside the plan.")
            return
        yield Paragraph(text=_CHART_KEY, leads=True)
        yield side_by_side((self._bars(), self._line(days)), gap_mm=_GAP_MM)
        crops = "; ".join(self._by_crop())
        if crops:
            yield Paragraph(text=f"{crops}.")
        yield Paragraph(text=" ".join(self._fish_words(days)))

    def _bars(self) -> Drawing:
        ruler = self.ask.forecast.ruler
        starts = list(self.ask.week_starts())
        names = [week_name(start, self.ask.starts) for start in starts]
        if len(names) > _MOST_BARS:
            names = [name if at % 4 == 0 else "" for at, name in enumerate(names)]
        wanted = [self._week_kg(ruler.day_of(start)) for start in starts]
        return bar_chart(
            self.log.picked_by_week(), names, wanted=wanted, width_mm=_HALF_MM, height_mm=_CHART_MM
        )

    def _line(self, days: slice) -> Drawing:
        line = [(float(day), self._stock(day)[1] / _G_PER_KG) for day in range(days.start, days.stop)]
        dates = self._dates(days.start, days.stop - 1)
        return line_chart(line, (), dates, width_mm=_HALF_MM, height_mm=_CHART_MM)

    def _week_kg(self, first: int) -> float:
        days = self.ask.forecast.harvest_g[:, max(first, 0) : max(first + DAYS_PER_WEEK, 0)]
        return float(days.sum()) / _G_PER_KG

    def _by_crop(self) -> Iterator[str]:
        days, picked = self.ask.days_within, self.log.picked()
        for at, key in enumerate(self.ask.forecast.crops):
            grams = float(self.ask.forecast.harvest_g[at, days].sum())
            plants = float(self.ask.forecast.harvest_plants[at, days].sum())
            if grams > 0 or key in picked:
                many = count_words(max(round(plants), 1), "plant", "plants")
                plan = f"planned {many}, {kg_words(grams)}" if grams > 0 else "not planned"
                name = self.ask.catalogue.crops[key].name
                yield f"{name}: {_picked_words(picked.get(key)) if picked else ''}{plan}"

    def _dates(self, first: int, last: int) -> list[tuple[float, str]]:
        """Return about three days with their names, from the first to the last."""
        date_of = self.ask.forecast.ruler.date_of
        return [
            (float(day), short_day_words(date_of(day)))
            for day in (first + round((last - first) * (part + 0.5) / 3) for part in range(3))
        ]

    def _fish_words(self, days: slice) -> Iterator[str]:
        feed = sum(float(loop.feed_g[days].sum()) for loop in self.ask.forecast.loops)
        gain = sum(float(g.gain_g[days].sum()) for loop in self.ask.forecast.loops for g in loop.groups)
        if gain > 0:
            ratio = feed / gain
            yield f"Feed planned {kg_words(feed)}, gain planned {kg_words(gain)}: feed ÷ gain {ratio:.1f}."
        events = [event for event in self.ask.farm.fish_events if self.ask.first <= event.on <= self.ask.last]
        groups = {group.id: group.name for group in self.ask.farm.fish_groups}
        for event in sorted((one for one in events if one.kind is not _FED), key=_event_day):
            yield f"{day_words(event.on)}, {groups[event.group]}: {event_words(event)}."
        if not any(event.kind is FishEventKind.SAMPLE for event in events):
            yield "No sample of fish was recorded; their weight is the plan's."
        fed = self.log.fed_g()
        yield f"Feed noted: {kg_words(fed)}." if fed else "No feed was noted."
        yield from (f"{words}." for words in self.log.feed_ratios())

    def water(self) -> Iterator[Section]:
        """Yield readings of each loop in their bands."""
        bands = target_bands(self.ask.catalogue)
        since = self.ask.last - timedelta(days=_WATER_WEEKS * DAYS_PER_WEEK)
        for loop in self.ask.farm.loops:
            heading = f"Water, {loop.name}, the last {_WATER_WEEKS} weeks"
            readings = [one for one in self._readings(since, self.ask.last) if one.loop == loop.id]
            if not readings:
                none = Paragraph(text="No test of the water was recorded.")
                yield Section(heading=heading, parts=(none,))
                continue
            words = " ".join((_DOT_KEY, *_last_words(readings, bands)))
            yield Section(heading=heading, parts=(self._panels(readings, since), Paragraph(text=words)))

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
        """Yield what was noted as done, and what was due."""
        noted = self.log.done()
        yield f"Noted: {noted}." if noted else "Nothing was noted as done; see the task sheets."
        yield f"Due by the plan: {_counts(self._due(self.ask.first_day))}"

    def problems(self) -> Iterator[str]:
        """Yield what the log tells, short weeks, and deaths."""
        found = [*self.log.troubles(), *self._deaths(), *self._short_weeks()]
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
                yield f"{day_words(event.on)}: {event_words(event)}."

    def coming(self) -> Iterator[str]:
        """Yield what is due in as many weeks after these."""
        tasks = self._due(self.ask.end_day)
        sown = list(
            dict.fromkeys(self.ask.catalogue.crops[t.crop].name for t in tasks if t.kind is DueKind.SOW)
        )
        first = max(self.ask.end_day, 0)
        days = slice(first, first + self.ask.weeks * DAYS_PER_WEEK)
        picked = kg_words(float(self.ask.forecast.harvest_g[:, days].sum()))
        more = "" if len(sown) <= _MOST_NAMED else " and others"
        sow = f" To be sown: {list_words(sown[:_MOST_NAMED])}{more}." if sown else ""
        yield f"Planned: {_counts(tasks)}{sow} To be picked: {picked}."


_MOST_BARS: Final = 13


def _is_short(verdict: WeekVerdict) -> bool:
    return verdict.limiting is not None and verdict.band[verdict.limiting] is Band.SHORT


def _bounds(band: TargetBand | None) -> tuple[float | None, float | None]:
    if band is None:
        return None, None
    return (None if band.low is None else band.low.value, None if band.high is None else band.high.value)


def _last_of(readings: list[Reading]) -> tuple[Reading, ...]:
    return tuple({reading.quantity: reading for reading in readings}.values())


def _last_words(readings: list[Reading], bands: Mapping[Quantity, TargetBand]) -> Iterator[str]:
    """Yield the last reading of each quantity, a sentence for each level; those outside come first."""
    last = _last_of(readings)
    days = {reading.on for reading in last}
    dated = len(days) > 1
    by_level: dict[Level | None, list[str]] = {}
    for reading in last:
        band = bands.get(reading.quantity)
        level = band.level(reading.value) if band else None
        words = _reading_words(reading, band_words(band) if band else "", dated=dated)
        by_level.setdefault(level, []).append(words)
    said = [
        f"{how}: {list_words(by_level[level])}" for level, how in _LEVEL_WORDS.items() if level in by_level
    ]
    on = f"Last test, {day_words(max(days))}. " if not dated else "Last tests. "
    for at, sentence in enumerate(said):
        yield f"{on if at == 0 else ''}{sentence}."


def _reading_words(reading: Reading, band: str, *, dated: bool) -> str:
    unit = unit_of(reading.quantity)
    value = f"{reading.value:g}{NO_BREAK}{unit}" if unit else f"{reading.value:g}"
    beside = [*([band] if band else []), *([day_words(reading.on)] if dated else [])]
    name = f"{QUANTITY_NAMES[reading.quantity]} {value}"
    return f"{name} ({'; '.join(beside)})" if beside else name


def _counts(tasks: tuple[DueTask, ...]) -> str:
    counts: dict[DueKind, int] = {}
    for task in tasks:
        counts[task.kind] = counts.get(task.kind, 0) + 1
    said = [count_words(counts[kind], *words) for kind, words in _VERBS.items() if kind in counts]
    return f"{list_words(said)}." if said else "nothing."


def _picked_words(picked: Picked | None) -> str:
    if picked is None:
        return "none picked, "
    heads = [count_words(round(picked.heads), "head", "heads")] if picked.heads else []
    return f"picked {list_words([*heads, *([kg_words(picked.kg * _G_PER_KG)] if picked.kg else [])])}, "


def _event_day(event: FishEvent) -> date:
    return event.on


def _reading_day(reading: Reading) -> date:
    return reading.on


def _signed() -> Table:
    columns = (
        told("who", "Written and read by", mm=50.0, share=1.0),
        written("caretaker", "Caretaker, initials", mm=40.0, share=1.0),
        written("owner", "Owner, initials", mm=40.0, share=1.0),
    )
    rows = ((says("on (date); photos are on the back"), WRITE, WRITE),)
    return Table(name="Signed", columns=columns, groups=(RowGroup(rows=rows),))
