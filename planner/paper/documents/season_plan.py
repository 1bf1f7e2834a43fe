"""The season plan: balance, harvest and every sowing week by week, then what all of it rests on.

Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date
from typing import Final

from planner.catalogue.figure import Figure
from planner.farm.crops import Batch, Phase, Stage, Target, TargetUnit
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.site import AreaRule
from planner.farm.species import HarvestKind
from planner.forecast.figures import band_figures
from planner.forecast.values import Band, Floats, LoopForecast, WeekVerdict
from planner.forecast.verdicts import symbol_of, week_verdicts
from planner.paper.documents.amounts import number_words
from planner.paper.documents.ask import Ask
from planner.paper.documents.columns import LOG_SIZE, says, told
from planner.paper.documents.weeks_drawing import (
    Life,
    WeekFrame,
    balance_strip,
    bars,
    lane,
    lanes_of,
    ruler,
)
from planner.paper.palette import look
from planner.paper.places import PlaceBook
from planner.paper.report import Cell, Column, Paragraph, Report, RowGroup, Section, Table
from planner.paper.seeding_notes import cited, notes, sureness_words
from planner.paper.words import EN_DASH, count_words, day_words, week_name, whole_words

TITLE: Final = "Season plan"
_MOST_ACROSS: Final = 62
_G_PER_KG: Final = 1000.0
_STAGES: Final = {
    Stage.GERMINATION: "nursery",
    Stage.NURSERY: "nursery",
    Stage.SPACING: "spaced out",
    Stage.BED: "bed",
    Stage.PICKING: "picking",
    Stage.CLEARING: "clearing",
}
_BALANCE_KEY: Final = (
    "Balance: S short, T thin, M met, A ample, by the element with the least supply for its demand, "
    "which is named "
    "below. Harvest: numbers a week; the dashed line is what is wanted."
)
_LIVES_KEY: Final = (
    "Sowings: dots are the nursery, level lines a wider spacing, plain the bed, slanted lines picking, "
    "crossed lines "
    "clearing. A number stands for a batch of the list below."
)
_FIGURES: Final = (
    ("coefficient/verdict/short_below", "supply over demand below which plants are short"),
    ("coefficient/verdict/thin_below", "supply over demand below which stock in the water is drawn down"),
    ("coefficient/verdict/ample_above", "supply over demand above which an element builds up"),
    ("feed_rate/fao_leafy", "feed a day over leafy area"),
    ("feed_rate/fao_fruiting", "feed a day over fruiting area"),
    ("feed_rate/uvi_raft", "feed a day over raft area, tropical raft system"),
)


def season_plan(ask: Ask) -> Report:
    """Return the plan: charts by week, the list of sowings, and the page of assumptions."""
    rows = _rows(ask)
    numbers = {row: number for number, row in enumerate(rows, start=1)}
    sections: list[Section] = []
    for number, frame in enumerate(_frames(ask)):
        sections.extend(_charts(ask, frame, numbers, new_page=number > 0))
    sections.append(Section(heading="Sowings", parts=(_list(ask, numbers),)))
    sections.append(
        Section(heading="What this rests on", parts=tuple(_assumptions(ask)), columns=2, new_page=True)
    )
    sections.extend(notes(ask.farm, ask.forecast, ask.catalogue, rows=rows, large=False))
    return ask.report(TITLE, tuple(sections), subtitle=ask.span_words, landscape=True)


def _rows(ask: Ask) -> tuple[int, ...]:
    """Return the batches that live in the span, by crop, then by day."""
    table = ask.forecast.batches
    there = (table.sow_day < ask.end_day) & (table.ends[:, -1] > ask.first_day)
    return tuple(sorted((int(row) for row in there.nonzero()[0]), key=_Order(ask)))


class _Order:
    """The order of batches in chart and list."""

    def __init__(self, ask: Ask) -> None:
        self._ask = ask

    def __call__(self, row: int) -> tuple[str, int, str]:
        batch = self._ask.farm.batches[row]
        name = self._ask.catalogue.crops[batch.crop].name
        return name.casefold(), int(self._ask.forecast.batches.sow_day[row]), batch.code


def _frames(ask: Ask) -> Iterator[WeekFrame]:
    """Yield stretches of weeks of one length, no longer than can be read side by side."""
    parts = -(-ask.weeks // _MOST_ACROSS)
    size = -(-ask.weeks // parts)
    starts = list(ask.week_starts())
    for at in range(0, ask.weeks, size):
        yield WeekFrame(start=starts[at], weeks=min(size, ask.weeks - at), starts=ask.starts)


def _charts(ask: Ask, frame: WeekFrame, numbers: dict[int, int], *, new_page: bool) -> Iterator[Section]:
    first = ask.forecast.ruler.day_of(frame.start)
    groups = (*_balance(ask, frame, first), *_harvest(ask, frame, first))
    yield Section(
        parts=(Paragraph(text=_BALANCE_KEY, leads=True), _chart("Balance and harvest", frame, groups)),
        new_page=new_page,
    )
    lives = tuple(_lives(ask, frame, first, numbers))
    yield Section(
        heading="Sowings by week",
        parts=(Paragraph(text=_LIVES_KEY, leads=True), _chart("Sowings by week", frame, lives)),
    )


def _chart(name: str, frame: WeekFrame, groups: tuple[RowGroup, ...]) -> Table:
    column = Column(
        key="weeks",
        heading="",
        share=1.0,
        least_mm=100.0,
        main=LOG_SIZE,
        detail=LOG_SIZE,
        picture=ruler(frame),
    )
    shown = groups or (RowGroup(heading=name, empty="nothing in these weeks"),)
    return Table(name=name, columns=(column,), groups=shown)


def _balance(ask: Ask, frame: WeekFrame, first: int) -> Iterator[RowGroup]:
    figures = band_figures(ask.catalogue)
    for loop in ask.forecast.loops:
        verdicts = week_verdicts(loop, ask.forecast.ruler, figures)
        weeks = [_week_band(verdicts, first // DAYS_PER_WEEK + week) for week in range(frame.weeks)]
        yield RowGroup(
            heading=f"Balance, {loop.name}",
            detail=_feed_words(loop, first, frame.days),
            rows=((Cell(picture=balance_strip(frame, weeks)),),),
        )


def _week_band(verdicts: Sequence[WeekVerdict], week: int) -> tuple[Band, str]:
    if not 0 <= week < len(verdicts) or verdicts[week].limiting is None:
        return Band.NO_DEMAND, ""
    scarce = verdicts[week].limiting
    assert scarce is not None
    return verdicts[week].band[scarce], symbol_of(scarce)


def _feed_words(loop: LoopForecast, first: int, days: int) -> str:
    feed = loop.feed_g[max(first, 0) : max(first + days, 0)]
    if not feed.size:
        return ""
    return (
        f"feed {number_words(round(float(feed.min())))} to {number_words(round(float(feed.max())))} g a day"
    )


def _harvest(ask: Ask, frame: WeekFrame, first: int) -> Iterator[RowGroup]:
    for at, key in enumerate(ask.forecast.crops):
        crop = ask.catalogue.crops[key]
        targets = [target for target in ask.farm.targets if target.crop == key]
        unit = targets[0].unit if targets else _unit(crop.harvest)
        by_day = (
            ask.forecast.harvest_plants[at]
            if unit is TargetUnit.HEADS
            else ask.forecast.harvest_g[at] / _G_PER_KG
        )
        amounts = [_week_sum(by_day, first + week * DAYS_PER_WEEK) for week in range(frame.weeks)]
        if not any(amounts) and not targets:
            continue
        wanted = [_wanted(targets, unit, frame.week_on(week)) for week in range(frame.weeks)]
        word = "heads" if unit is TargetUnit.HEADS else "kg"
        yield RowGroup(
            heading=f"Harvest, {crop.name}",
            detail=f"{word} a week; {number_words(round(sum(amounts), 1))} in all",
            rows=((Cell(picture=bars(frame, amounts, target=wanted, digits=0 if word == "heads" else 1)),),),
        )


def _unit(harvest: HarvestKind) -> TargetUnit:
    return TargetUnit.HEADS if harvest is HarvestKind.SINGLE else TargetUnit.KG


def _week_sum(by_day: Floats, first: int) -> float:
    return float(by_day[max(first, 0) : max(first + DAYS_PER_WEEK, 0)].sum())


def _wanted(targets: Sequence[Target], unit: TargetUnit, on: date) -> float:
    return sum(
        target.amount_per_week
        for target in targets
        if target.unit is unit and target.from_on <= on and (target.until_on is None or on <= target.until_on)
    )


def _lives(ask: Ask, frame: WeekFrame, first: int, numbers: dict[int, int]) -> Iterator[RowGroup]:
    by_crop: dict[str, list[Life]] = {}
    for row, number in numbers.items():
        life = _life(ask, row, first, number)
        if life.end > 0 and life.first < frame.days:
            by_crop.setdefault(ask.farm.batches[row].crop, []).append(life)
    for at, (key, lives) in enumerate(by_crop.items()):
        rows = tuple((Cell(picture=lane(frame, one, look(at).tint)),) for one in lanes_of(lives))
        yield RowGroup(
            heading=ask.catalogue.crops[key].name,
            detail=count_words(len(lives), "batch", "batches"),
            rows=rows,
        )


def _life(ask: Ask, row: int, first: int, number: int) -> Life:
    spans = ask.forecast.batches.spans(row, ask.forecast.ruler)
    day_of = ask.forecast.ruler.day_of
    return Life(
        code=ask.farm.batches[row].code,
        number=number,
        spans=tuple((_STAGES[s.stage], day_of(s.start_on) - first, day_of(s.end_on) - first) for s in spans),
    )


def _list(ask: Ask, numbers: dict[int, int]) -> Table:
    columns = (
        told("number", "No.", mm=12.0, share=0.1, right=True),
        told("batch", "Batch", mm=34.0, share=1.0),
        told("crop", "Crop", unit="variety", mm=40.0, share=1.5),
        told("sow", "Sow", mm=34.0, share=0.5),
        told("seeds", "Seeds", mm=16.0, share=0.1, right=True),
        told("move", "Move to bed", mm=34.0, share=0.5),
        told("where", "Where", mm=42.0, share=2.0),
        told("pick", "Pick", unit="first – last", mm=36.0, share=0.5),
        told("plants", "Plants", mm=16.0, share=0.1, right=True),
    )
    places = PlaceBook(ask.farm)
    rows = tuple(_list_row(ask, row, number, places) for row, number in numbers.items())
    empty = "" if rows else "no sowings in these weeks"
    return Table(name="Sowings", columns=columns, groups=(RowGroup(rows=rows, empty=empty),))


def _list_row(ask: Ask, row: int, number: int, places: PlaceBook) -> tuple[Cell, ...]:
    batch: Batch = ask.farm.batches[row]
    table = ask.forecast.batches
    moved = table.phase_days(row, Phase.BED)[0]
    first, end = table.pick_days(row)
    picked = [ask.forecast.ruler.date_of(day) for day in dict.fromkeys((first, end - 1))]
    return (
        says(str(number)),
        says(batch.code),
        says(ask.catalogue.crops[batch.crop].name, batch.variety),
        says(_dated(ask, batch.sow_on)),
        says(whole_words(int(table.seeds[row]))),
        says(_dated(ask, ask.forecast.ruler.date_of(moved))),
        says(*places.where(batch, Phase.BED)),
        says(f" {EN_DASH} ".join(_dated(ask, on) for on in picked)),
        says(whole_words(batch.plants)),
    )


def _dated(ask: Ask, on: date) -> str:
    return f"{week_name(on, ask.starts)} {day_words(on)}"


def _assumptions(ask: Ask) -> Iterator[Paragraph]:
    yield Paragraph(
        text="Supply is what fish leave of the feed, with top-up water, doses and what solids give back; "
        "demand is "
        "what plants take up as they grow. Both are likely values: figures of uptake are no better than "
        "a fifth "
        "either way. Test the water and look at the plants."
    )
    yield from _hand_check(ask)
    numbers: dict[str, int] = {}
    for path, words in _FIGURES:
        figure = ask.catalogue.figure(path)
        mark = f" [{numbers.setdefault(figure.source, len(numbers) + 1)}]" if figure.source else ""
        yield Paragraph(
            text=f"{words}: {_figure_words(figure)}{mark}, {sureness_words(figure.confidence)}; "
            f"{figure.conditions}.",
            item=True,
        )
    for source, number in numbers.items():
        yield Paragraph(text=f"[{number}] {cited(ask.catalogue.publications[source])}")


def _figure_words(figure: Figure) -> str:
    spread = "" if figure.low == figure.high else f" ({figure.low:g} to {figure.high:g})"
    unit = "" if figure.unit in ("1", "g/g") else f" {figure.unit}"
    return f"{figure.value:g}{spread}{unit}"


_BAND_WORDS: Final = {
    AreaRule.FAO: "the FAO manual's band for this mix of crops and this protein",
    AreaRule.UVI: "the band of the tropical raft system (UVI), by which this loop goes,",
}


def _hand_check(ask: Ask) -> Iterator[Paragraph]:
    """Yield a sum of the first planted week that can be worked again by hand."""
    figures = band_figures(ask.catalogue)
    for loop in ask.forecast.loops:
        for verdict in week_verdicts(loop, ask.forecast.ruler, figures)[
            max(ask.first_day, 0) // DAYS_PER_WEEK :
        ]:
            ratio, band = verdict.feed_ratio_g_per_m2_d, verdict.rule_band
            if ratio is None or band is None:
                continue
            start = ask.forecast.ruler.week_start(verdict.week)
            yield Paragraph(
                text=f"To check by hand, {loop.name}, {week_name(start, ask.starts)}: "
                f"{verdict.feed_g_per_day:.0f} g "
                f"feed a day ÷ {verdict.planted_m2:.1f} m² planted = {ratio:.0f} g/m² a day; "
                f"{_BAND_WORDS[verdict.rule]} is {band[0]:.0f} to {band[1]:.0f}."
            )
            break
