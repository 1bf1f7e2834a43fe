"""The daily feed sheet of each tank: what is planned, what was given, what was left, who did it.

The plan is the most to give, never a reason to feed beyond what fish eat. Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.site import Tank
from planner.forecast.values import GroupForecast
from planner.paper.documents.amounts import meal_g, ration_g, ration_number, ration_words, weighed_words
from planner.paper.documents.ask import Ask
from planner.paper.documents.columns import BENCH_SIZE, WRITE, dated, says, told, written
from planner.paper.report import Cell, Column, Paragraph, Report, RowGroup, Section, Table, Tone
from planner.paper.words import NO_BREAK, count_words, day_words, list_words, range_words

TITLE: Final = "Daily feed sheet"
_MEALS: Final = "coefficient/sheets/meals_per_day"
_LEFT_MIN: Final = "coefficient/sheets/leftovers_out_after_min"
_CAUTIONS: Final = ("fish-medicine", "fish-welfare")
NO_FEED: Final = "none"


def feed_sheet(ask: Ask) -> Report:
    """Return a sheet for each tank, a row a day."""
    tanks = ask.farm.tanks
    sections = tuple(
        section for number, tank in enumerate(tanks) for section in _sheet_of(ask, tank, number)
    ) or (Section(parts=(Paragraph(text="There is no fish tank on this farm."),)),)
    return ask.report(TITLE, sections, subtitle=ask.span_words)


def _sheet_of(ask: Ask, tank: Tank, number: int) -> Iterator[Section]:
    groups = [group for loop in ask.forecast.loops for group in loop.groups if group.tank == tank.id]
    rows = tuple(
        RowGroup(
            heading=ask.week_head(start)[0],
            detail=_most_words(ask, groups, start),
            rows=_week(ask, groups, start),
        )
        for start in ask.week_starts()
    )
    meals = ask.catalogue.figure(_MEALS)
    text = (
        f"The plan is the most to give. Split it into {range_words(round(meals.low), round(meals.high))} "
        f"meals; "
        "stop as soon as fish stop eating and take out what is left after "
        f"{ask.catalogue.figure(_LEFT_MIN).value:.0f}{NO_BREAK}minutes. Feed less in cold or bad water, and "
        "none while power is out."
    )
    cup = "My scoop holds, levelled: ______ g. Weigh it again with every new bag."
    table = Table(name=f"Feed {tank.name}", columns=_columns(ask), groups=rows)
    yield Section(
        heading=f"{tank.name}: {_who(ask, groups)}",
        parts=(Paragraph(text=text), Paragraph(text=cup), table),
        new_page=number > 0,
    )
    yield Section(parts=ask.cautions(*_CAUTIONS), columns=2)


def _who(ask: Ask, groups: Sequence[GroupForecast]) -> str:
    """Return which fish swim in a tank on the first day, or that there are none."""
    day = min(max(ask.first_day, 0), ask.forecast.ruler.days - 1)
    named = [
        f"{group.name} ({count_words(round(float(group.count[day])), 'fish', 'fish')}, "
        f"about {float(group.weight_g[day]):,.0f}{NO_BREAK}g each)"
        for group in groups
        if group.count[day] > 0
    ]
    return list_words(named) or "no fish on the first day"


def _most_words(ask: Ask, groups: Sequence[GroupForecast], start: date) -> str:
    """Return what each group is to get a day in a week, on the mean."""
    day = ask.forecast.ruler.day_of(start)
    fed = [
        (group.name, float(group.feed_g[max(day, 0) : max(day + DAYS_PER_WEEK, 0)].mean()))
        for group in groups
        if group.feed_g[max(day, 0) : max(day + DAYS_PER_WEEK, 0)].size
    ]
    return ", ".join(f"{name}: {ration_words(grams)} a day" for name, grams in fed if grams > 0)


def _week(ask: Ask, groups: Sequence[GroupForecast], start: date) -> tuple[tuple[Cell, ...], ...]:
    return tuple(_day(ask, groups, start + timedelta(days=offset)) for offset in range(DAYS_PER_WEEK))


def _day(ask: Ask, groups: Sequence[GroupForecast], on: date) -> tuple[Cell, ...]:
    day, meals = ask.forecast.ruler.day_of(on), ask.catalogue.figure(_MEALS).value
    inside = 0 <= day < ask.forecast.ruler.days
    planned = sum(float(group.feed_g[day]) for group in groups) if inside else 0.0
    weekday, rest = day_words(on, beside=on).split(" ", 1)
    date_cell = says(f"{weekday}{NO_BREAK}{rest.replace(' ', NO_BREAK)}", value=on.isoformat())
    feed = ration_number(planned) if planned > 0 else NO_FEED
    meal = weighed_words(meal_g(ration_g(planned), meals)) if planned > 0 else "–"
    return (date_cell, says(feed, tone=Tone.MAIN, value=str(ration_g(planned))), says(meal), *(WRITE,) * 7)


def _columns(ask: Ask) -> tuple[Column, ...]:
    meals = round(ask.catalogue.figure(_MEALS).value)
    return (
        dated(mm=25.5),
        told("planned", "Plan", unit="g a day", mm=16.0, share=0.1, main=BENCH_SIZE, right=True),
        told("meal", "A meal", unit=f"g, of {meals}", mm=14.0, share=0.1, right=True),
        written("scoops", "Scoops", share=0.3),
        written("given", "Given", unit="g", share=0.5),
        written("left", "Left over", unit="yes / no", share=0.3),
        written("dead", "Dead", unit="fish", share=0.3),
        written("water", "Water", unit="°C", share=0.3),
        written("note", "Note", mm=22.0, share=3.0),
        written("initials", "Initials", unit="time", share=0.3),
    )
