"""What the side panel says about a week: harvest, feed, every element, and what to take note of.

Pure: an outlook goes in, words come out. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from typing import Final

from planner.desk.behind import Behind
from planner.desk.outlook import Outlook
from planner.desk.pages import Entered, Fact, Page, Section, Shifted, Unsure
from planner.desk.say import tr
from planner.desk.sure_words import element_range_words, harvest_range_words, target_sections
from planner.desk.words import (
    choice_words,
    day_words,
    ended_words,
    field_words,
    middle_of_week,
    number_words,
    week_span_words,
    week_words,
    with_unit,
)
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import NO_ID, Id, specs_of
from planner.farm.species import ELEMENTS
from planner.forecast.values import AreaRule, Band, Flag, WeekVerdict
from planner.forecast.why.values import Subject, SubjectKind

G_PER_KG: Final = 1000.0
_OTHER: Final = {AreaRule.FAO: AreaRule.UVI, AreaRule.UVI: AreaRule.FAO}
_PERCENT: Final = 100.0
_MOST_TIMES: Final = 20.0
_LEAST_LACKING_G: Final = 0.01
"""Below this, two decimals of a gram say nothing."""
_OTHER_FLAG: Final = "{name}: take a closer look."
_FLAG_WORDS: Final = {
    "no climate": "No climate is entered for {name}; book durations apply.",
    "unplaced": "{name} has no places yet.",
    "short of places": "{name} has fewer places than plants.",
    "not suited": "{name} stands in a bed that does not suit it.",
    "density": "{name}: more fish in the tank than the limit for its size.",
    "feed falls": "{name}: the feed falls, and the plants' food with it.",
    "short supply": "{name}: less is supplied than the crops take up.",
    "water temperature": "{name}: no warmth of the water is entered for its loop; growth is worked out "
    "at {assumed} °C, the best for this fish.",
    "lethal temperature": "{name}: the water comes close to what the fish cannot live in.",
    "no appetite": "{name}: the water is too cold or too warm for these fish to feed and grow; what is given "
    "all the same fouls it.",
    "overfed": "{name}: more is fed than these fish can eat; what they leave fouls the water.",
    "too slow": "{name} grows too slowly in this season to be ready in time: the plan gives it up when it is "
    "{share} % of its size.",
    "treated fish": "{name}: treated with a medicine and not cleared yet: no fish of it may be harvested for "
    "eating. Log the day on which they are cleared.",
    "harvest barred": "{name}: this harvest is barred: the fish were treated with a medicine and are not "
    "cleared by then.",
}


def warnings_about(outlook: Outlook, about: Id) -> tuple[Section, ...]:
    """Return what the grower should note about a thing, under its heading; empty when nothing."""
    flags = tuple(flag_fact(flag) for flag in outlook.flags.get(about, ()))
    return (Section(title=tr("Take note"), warnings=flags),) if flags else ()


def flag_fact(flag: Flag) -> Fact:
    """Return a flag in words, to be asked why it is there."""
    return Fact(label="", value=flag_words(flag), ask=flag_asked(flag))


def flag_asked(flag: Flag) -> Subject:
    """Return what is asked about a flag."""
    return Subject(kind=SubjectKind.FLAG, about=flag.about, part=flag.kind.value, on=flag.on)


def over_sections(behind: Behind) -> tuple[Section, ...]:
    """Return that the plan is over and what to do, under its heading; empty while it is not."""
    if not behind.is_over:
        return ()
    over = Fact(label="", value=over_words(behind), ask=_plan_days(behind))
    return (Section(title=tr("The plan is over"), warnings=(over,)),)


def _plan_days(behind: Behind) -> Shifted:
    """Return what tells from when to when the plan goes, by its first day and the weeks it was given."""
    from planner.desk.why.entered import typed

    farm = behind.outlook.farm
    weeks = typed(
        field_words("plan_weeks"),
        farm.settings.plan_weeks,
        specs_of(type(farm.settings))["plan_weeks"],
        about=farm.settings.name,
    )
    return Shifted(
        title="days of the plan",
        ask=Entered(about=NO_ID, field="plan_from"),
        old_on=farm.settings.plan_from,
        new_on=farm.plan_until,
        beside=(weeks,),
    )


def over_words(behind: Behind) -> str:
    """Return when the plan ended, and how it is taken further."""
    return ended_words(behind.outlook.farm)


def flag_words(flag: Flag) -> str:
    """Return a flag in words, with its days."""
    values = dict(flag.values)
    share = number_words(float(values.get("size_share", 0.0)) * _PERCENT, digits=0)
    assumed = number_words(float(values.get("assumed_c", 0.0)))
    words = tr(_FLAG_WORDS.get(flag.kind.value, _OTHER_FLAG), name=flag.name, share=share, assumed=assumed)
    if flag.on is None:
        return words
    if flag.until_on is None or flag.until_on == flag.on:
        return f"{words} ({day_words(flag.on)})"
    return f"{words} ({day_words(flag.on)} – {day_words(flag.until_on)})"


def week_page(behind: Behind, day: date) -> Page:
    """Return the page about the week a day lies in."""
    outlook = behind.outlook
    week = outlook.week_of(day)
    ruler = outlook.forecast.ruler
    monday = ruler.week_start(week)
    loops = tuple(
        section
        for loop in outlook.forecast.loops
        for section in (
            loop_section(behind, loop.loop, loop.name, week),
            *_reasons(behind, outlook.verdicts[loop.loop][week], loop.loop),
        )
    )
    flags = tuple(
        flag_fact(flag)
        for flag in outlook.forecast.flags
        if flag.on is None
        or (flag.on < monday + timedelta(days=DAYS_PER_WEEK) and (flag.until_on or flag.on) >= monday)
    )
    return Page(
        title=tr("Week {week}", week=week_words(middle_of_week(monday))),
        subtitle=week_span_words(monday).partition(" · ")[2],
        sections=(
            *over_sections(behind),
            Section(title=tr("Harvest foreseen"), facts=tuple(_harvest(behind, week))),
            *target_sections(behind, week),
            *loops,
            *((Section(title=tr("Take note"), warnings=flags),) if flags else ()),
            *_waters(behind, week),
        ),
    )


def _waters(behind: Behind, week: int) -> Iterator[Section]:
    if behind.waits:
        return
    from planner.desk.water_facts import week_water_sections

    for loop in behind.outlook.forecast.loops:
        yield from week_water_sections(behind.water(loop), week, behind.outlook.catalogue)


def _harvest(behind: Behind, week: int) -> Iterator[Fact]:
    outlook = behind.outlook
    forecast = outlook.forecast
    days = slice(week * DAYS_PER_WEEK, (week + 1) * DAYS_PER_WEEK)
    nothing = True
    for at, crop in enumerate(forecast.crops):
        grams = float(forecast.harvest_g[at, days].sum())
        if grams > 0:
            nothing = False
            ask = Subject(kind=SubjectKind.HARVEST_G, crop=crop, week=week)
            yield Fact(
                label=outlook.crop_name(crop),
                value=tr("about {kg} kg", kg=number_words(grams / G_PER_KG, digits=1)),
                ask=ask,
                more=_range_fact(outlook.crop_name(crop), harvest_range_words(behind.sure, crop, week), ask),
            )
    if nothing:
        yield Fact(label="", value=tr("Nothing"))


def _range_fact(label: str, words: str, of: Subject) -> tuple[Fact, ...]:
    """Return low and high of a figure, to be asked by themselves; nothing while they are not known."""
    return (Fact(label=label, value=words, ask=Unsure(of=of)),) if words else ()


def loop_section(behind: Behind, loop: Id, name: str, week: int) -> Section:
    """Return feed, areas and every element of a loop in a week, under its name."""
    verdict = behind.outlook.verdicts[loop][week]
    return Section(
        title=name,
        facts=(
            *_feed_facts(verdict, loop, verdict.rule),
            *_element_facts(behind, verdict, loop),
        ),
    )


def rule_part(rule: AreaRule) -> str:
    """Return how a rule is named where the area is asked about; FAO's goes without saying."""
    return "" if rule is AreaRule.FAO else rule.value


def carried_words(verdict: WeekVerdict, rule: AreaRule) -> str:
    """Return what area the feed carries by the rule that was picked, and what the other one says."""
    spans = [verdict.area_fed_by(each) for each in (rule, _OTHER[rule])]
    (low, high), (other_low, other_high) = (
        (number_words(least, digits=1), number_words(most, digits=1)) for least, most in spans
    )
    return tr(
        "by {rule} this feed carries {low} to {high} m², by {other} {other_low} to {other_high} m²",
        rule=rule.name,
        low=low,
        high=high,
        other=_OTHER[rule].name,
        other_low=other_low,
        other_high=other_high,
    )


def _area_words(verdict: WeekVerdict, rule: AreaRule) -> str:
    """Return the planted area that the feed carries by a rule, least to most."""
    least, most = verdict.area_fed_by(rule)
    return tr("{low} to {high} m²", low=number_words(least, digits=1), high=number_words(most, digits=1))


def feed_fact(label: str, loop: Id, verdict: WeekVerdict) -> Fact:
    """Return the feed a day of a loop in a week, to be asked why."""
    return Fact(
        label=label,
        value=tr("{grams} g a day", grams=number_words(verdict.feed_g_per_day, digits=0)),
        ask=Subject(kind=SubjectKind.FEED_MEAN, about=loop, week=verdict.week),
    )


def _feed_facts(verdict: WeekVerdict, loop: Id, rule: AreaRule) -> Iterator[Fact]:
    yield feed_fact(tr("Feed"), loop, verdict)
    yield Fact(
        label=tr("Planted"),
        value=with_unit(verdict.planted_m2, "m²", digits=1),
        ask=Subject(kind=SubjectKind.PLANTED, about=loop, week=verdict.week),
    )
    yield Fact(
        label=tr("Carried"),
        value=_area_words(verdict, rule),
        note=tr(
            "planted area this feed carries by {rule}; by {other} {area}",
            rule=rule.name,
            other=_OTHER[rule].name,
            area=_area_words(verdict, _OTHER[rule]),
        ),
        ask=Subject(kind=SubjectKind.AREA_FED, about=loop, week=verdict.week, part=rule_part(rule)),
    )
    if verdict.feed_ratio_g_per_m2_d is not None and verdict.fao_band is not None:
        yield Fact(
            label=tr("Feed-rate ratio"),
            value=with_unit(verdict.feed_ratio_g_per_m2_d, "g/m²/d", digits=0),
            note=tr(
                "FAO {a} to {b}, UVI {c} to {d}",
                a=number_words(verdict.fao_band[0], digits=0),
                b=number_words(verdict.fao_band[1], digits=0),
                c=number_words(verdict.uvi_band[0], digits=0),
                d=number_words(verdict.uvi_band[1], digits=0),
            ),
            ask=Subject(kind=SubjectKind.FEED_RATIO, about=loop, week=verdict.week),
        )


def _reasons(behind: Behind, verdict: WeekVerdict, loop: Id) -> Iterator[Section]:
    """Yield why the limiting element is short, the weightiest reason first; nothing when it is not."""
    if verdict.limiting is None or behind.waits:
        return
    from planner.desk.why.words import reason_words

    monday = behind.outlook.forecast.ruler.week_start(verdict.week)
    said = [reason_words(reason, beside=monday) for reason in behind.reasons(loop, verdict.week)]
    if said:
        ask = Subject(kind=SubjectKind.RATIO, about=loop, week=verdict.week, element=verdict.limiting)
        yield Section(
            title=tr("Why {element} is short", element=ELEMENTS[verdict.limiting].capitalize()),
            facts=tuple(Fact(label="", value=f"{words[:1].upper()}{words[1:]}.", ask=ask) for words in said),
        )


def _element_facts(behind: Behind, verdict: WeekVerdict, loop: Id) -> Iterator[Fact]:
    for at in range(len(ELEMENTS)):
        yield _element_fact(behind, verdict, loop, at)


def _element_fact(behind: Behind, verdict: WeekVerdict, loop: Id, at: int) -> Fact:
    ratio, band = verdict.ratio[at], verdict.band[at]
    value = choice_words(band)
    if ratio is not None and band is not Band.NO_DEMAND:
        value = tr("{band} · {share}", band=value, share=_share_words(ratio))
    if verdict.limiting == at:
        value = tr("{value} · limiting", value=value)
    label = ELEMENTS[at].capitalize()
    ask = Subject(kind=SubjectKind.RATIO, about=loop, week=verdict.week, element=at)
    return Fact(
        label=label,
        value=value,
        note=tr(
            "{supply} g supplied, {demand} g wanted",
            supply=_grams(verdict.supply_g[at]),
            demand=_grams(verdict.demand_g[at]),
        ),
        ask=ask,
        more=(
            *_stock_facts(verdict, loop, at),
            *_range_fact(label, element_range_words(behind.sure, loop, at, verdict.week), ask),
        ),
    )


def _stock_facts(verdict: WeekVerdict, loop: Id, at: int) -> Iterator[Fact]:
    """Yield what is dissolved when the week begins, how far it goes with the supply, and what is lacking."""
    level, covered, unmet = verdict.stock_mg_per_l[at], verdict.covered_ratio[at], verdict.unmet_g[at]
    stock = tr("stock {level} mg/L", level=_grams(level))
    if verdict.stock_assumed[at]:
        stock = tr("stock {level} mg/L, assumed: no test", level=_grams(level))
    said = [(stock, SubjectKind.STOCK)]
    if covered is not None and verdict.band[at] in {Band.SHORT, Band.THIN}:
        said.append((tr("with it {share}", share=_share_words(covered)), SubjectKind.COVERED))
    if unmet > _LEAST_LACKING_G:
        said.append((tr("plants lack {grams} g", grams=_grams(unmet)), SubjectKind.LACKING))
    first = verdict.week * DAYS_PER_WEEK
    for words, kind in said:
        ask = Subject(kind=kind, about=loop, week=verdict.week, day=first, element=at)
        yield Fact(label=ELEMENTS[at].capitalize(), value=words, ask=ask)


def _share_words(ratio: float) -> str:
    """Return supply over demand in percent; where next to nothing is wanted the figure means little."""
    if ratio > _MOST_TIMES:
        return tr("over {percent} %", percent=number_words(_MOST_TIMES * _PERCENT, digits=0))
    return tr("{percent} %", percent=number_words(ratio * _PERCENT, digits=0))


def _grams(value: float) -> str:
    return number_words(value, digits=0 if value >= 10 else 2)
