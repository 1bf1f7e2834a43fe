"""What the fish page says of a group: density, pellets, harvests, holes in the supply, and its cautions.

Pure: must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.behind import Behind
from planner.desk.book import figure_label
from planner.desk.facts import week_label
from planner.desk.fish.asked import pellet_answer
from planner.desk.fish.course import GroupCourse, harvests
from planner.desk.fish.ration import week_rations
from planner.desk.fish.weeks import suits
from planner.desk.pages import Entered, Fact, Page, Section, Shifted
from planner.desk.rations import feed_words
from planner.desk.say import tr
from planner.desk.water_words import caution_texts
from planner.desk.week_facts import flag_fact, over_sections
from planner.desk.why.figures import figure_answer
from planner.desk.words import choice_words, day_words, number_words, with_unit
from planner.farm.fish import FishEvent, FishEventKind
from planner.forecast.values import FlagKind
from planner.forecast.why.values import Subject, SubjectKind

_SAMPLE_EVERY: Final = "coefficient/sheets/sample_every_days"
_SAMPLE_FEWEST: Final = "coefficient/sheets/sample_fewest_fish"
_G_PER_KG: Final = 1000.0
_PERCENT: Final = 100.0
_LAW: Final = ("species-law", "fish-welfare")
_MEDICINE: Final = ("fish-medicine",)
_FOOD: Final = ("fish-as-food",)


def fish_page(behind: Behind, course: GroupCourse) -> Page:
    """Return what is to be known of a group besides its tables and charts."""
    catalogue = behind.outlook.catalogue
    return Page(
        title=course.group.name,
        subtitle=tr("{fish}, on {day}", fish=course.species.name, day=day_words(course.shown_on)),
        sections=(
            *over_sections(behind),
            *_notes(behind, course),
            _now(behind, course),
            _pellet(behind, course),
            _harvest(course, catalogue),
            *_holes(course),
        ),
    )


def _notes(behind: Behind, course: GroupCourse) -> Iterator[Section]:
    about = (*behind.outlook.flags.get(course.group.id, ()), *behind.outlook.flags.get(course.tank.id, ()))
    flags = tuple(flag_fact(flag) for flag in about if flag.kind is not FlagKind.FEED_FALLS)
    notes = (*flags, *_sample(course, behind.outlook.catalogue))
    if notes:
        yield Section(title=tr("Take note"), warnings=notes)


def _sample(course: GroupCourse, catalogue: Catalogue) -> Iterator[Fact]:
    """Yield that the fish should be weighed; nothing when they were of late or are not there yet."""
    if course.shown_on < course.group.stocked_on or course.likely.count[course.day] <= 0:
        return
    asked, last = _last_weighed(course)
    days = (course.shown_on - last).days
    if days <= catalogue.figure(_SAMPLE_EVERY).high:
        return
    beside = tuple(
        figure_answer(catalogue, catalogue, path, title=figure_label(path.rpartition("/")[2]), about="")
        for path in (_SAMPLE_EVERY, _SAMPLE_FEWEST)
    )
    ask = Shifted(
        title="days since fish were weighed", ask=asked, old_on=last, new_on=course.shown_on, beside=beside
    )
    yield Fact(label="", value=_sample_words(days, catalogue), ask=ask)


def _last_weighed(course: GroupCourse) -> tuple[Entered, date]:
    """Return what says when the fish were weighed last, by the day that is shown, and that day."""
    weighed = [
        event for event in course.events if event.kind is FishEventKind.SAMPLE and event.on <= course.shown_on
    ]
    if not weighed:
        return Entered(about=course.group.id, field="stocked_on"), course.group.stocked_on
    last = max(weighed, key=_day_of)
    return Entered(about=last.id, field="on"), last.on


def _day_of(event: FishEvent) -> date:
    return event.on


def _sample_words(days: int, catalogue: Catalogue) -> str:
    fewest = catalogue.figure(_SAMPLE_FEWEST)
    return tr(
        "Not weighed for {days} days: weight and feed are a guess that grows with each. Weigh {low} to "
        "{high} fish and enter the sample.",
        days=days,
        low=number_words(fewest.low, digits=0),
        high=number_words(fewest.high, digits=0),
    )


def _now(behind: Behind, course: GroupCourse) -> Section:
    day = course.day
    density = float(course.density[day])
    count, weight_g = float(course.likely.count[day]), float(course.likely.weight_g[day])
    facts = [
        Fact(
            label=tr("Feed"),
            value=tr("{grams} g/d", grams=feed_words(float(course.likely.feed_g[day]))),
            note=tr("by {way}; never more than is eaten", way=choice_words(course.group.feeding)),
            ask=Subject(kind=SubjectKind.FEED, about=course.group.id, day=day),
        ),
        Fact(
            label=tr("Live weight"),
            value=with_unit(count * weight_g / _G_PER_KG, "kg", digits=1),
            note=_span_note(course, day),
            ask=Subject(kind=SubjectKind.GROUP_MASS, about=course.group.id, day=day),
        ),
        Fact(
            label=course.tank.name,
            value=with_unit(density, "kg/m³", digits=1),
            note=_density_note(course),
            ask=Subject(kind=SubjectKind.DENSITY, about=course.tank.id, day=day),
        ),
    ]
    keys = (*(key for key in _LAW if key in course.species.cautions), *_MEDICINE)
    return Section(
        title=_when(course),
        facts=tuple(facts),
        cautions=caution_texts(keys, behind.outlook.catalogue),
    )


def _when(course: GroupCourse) -> str:
    """Return what the day that is shown is: today, or the end of the plan that lies nearest."""
    if course.shown_on == course.today:
        return tr("Today")
    return tr("When the plan begins") if course.shown_on > course.today else tr("When the plan ended")


def _span_note(course: GroupCourse, day: int) -> str:
    if course.slow is None or course.quick is None:
        return tr("growth by your own figure")
    low, high = float(course.slow.weight_g[day]), float(course.quick.weight_g[day])
    return tr(
        "{likely} g each, {low} to {high} g by slow or quick growth",
        likely=number_words(float(course.likely.weight_g[day]), digits=0),
        low=number_words(min(low, high), digits=0),
        high=number_words(max(low, high), digits=0),
    )


def _density_note(course: GroupCourse) -> str:
    limit = number_words(course.density_limit)
    over = [each for each in week_rations(course) if each.density > course.density_limit]
    if not over:
        return tr("limit {limit} kg/m³, kept as far as the plan goes", limit=limit)
    first = course.ruler.week_start(over[0].week)
    return tr(
        "limit {limit} kg/m³, passed from {week} on: harvest, move or do without some fish by then",
        limit=limit,
        week=week_label(first),
    )


def _weight_now(course: GroupCourse) -> float:
    return float(course.likely.weight_g[course.day])


def _pellet(behind: Behind, course: GroupCourse) -> Section:
    facts = [
        Fact(
            label=course.feed.name,
            value=tr("pellet {size} mm", size=course.feed.pellet_mm),
            note=tr(
                "for fish of {low} to {high} g",
                low=number_words(course.feed.for_fish_from_g),
                high=number_words(course.feed.for_fish_to_g),
            ),
            ask=pellet_answer(course, _weight_now(course), behind.outlook.catalogue.feeds),
        )
    ]
    change = next((each for each in week_rations(course) if not suits(course.feed, each.weight_g)), None)
    if change is not None:
        others = [feed for feed in behind.outlook.catalogue.feeds.values() if suits(feed, change.weight_g)]
        facts.append(
            Fact(
                label=week_label(course.ruler.week_start(change.week)),
                value=tr("change the feed at {grams} g", grams=number_words(change.weight_g, digits=0)),
                note="\n".join(
                    tr("{name}: pellet {size} mm", name=feed.name, size=feed.pellet_mm) for feed in others
                )
                or tr("no feed of the book is made for fish of this weight"),
                ask=pellet_answer(course, change.weight_g, behind.outlook.catalogue.feeds),
            )
        )
    return Section(title=tr("Feed and pellet"), facts=tuple(facts))


def _harvest(course: GroupCourse, catalogue: Catalogue) -> Section:
    facts = [*_planned(course)]
    if course.species.ornamental:
        facts.append(Fact(label="", value=tr("An ornamental fish: not for the table.")))
    elif not any(event.on >= course.shown_on and event.count is None for event in harvests(course)):
        facts.append(_ready(course))
    keys = () if course.species.ornamental else _FOOD
    return Section(title=tr("Harvest of fish"), facts=tuple(facts), cautions=caution_texts(keys, catalogue))


def _ready(course: GroupCourse) -> Fact:
    weight = with_unit(course.species.harvest_weight_g, "g")
    likely = course.ready_on(course.likely)
    quick, slow = course.ready_on(course.quick), course.ready_on(course.slow)
    note = ""
    if quick is not None and (likely is None or quick < likely):
        note = tr("{quick} at the earliest", quick=day_words(quick))
        note += tr(", {slow} when slow", slow=day_words(slow)) if slow else tr(", past the plan when slow")
    return Fact(
        label=tr("Ready at {weight}", weight=weight),
        value=day_words(likely) if likely else tr("not within the plan"),
        note=note,
        ask=Subject(kind=SubjectKind.FISH_READY, about=course.group.id),
    )


def _planned(course: GroupCourse) -> Iterator[Fact]:
    for event in harvests(course):
        if not course.ruler.start_on <= event.on < course.ruler.date_of(course.ruler.days):
            continue
        day = course.ruler.day_of(event.on)
        grams, fish = float(course.likely.harvest_g[day]), float(course.likely.harvest_count[day])
        notes = [tr("{fish} fish", fish=number_words(fish, digits=0))]
        if fish > 0:
            notes.append(tr("{grams} g each", grams=number_words(grams / fish, digits=0)))
        if event.count is None and course.species.purge_days > 0:
            notes.append(
                tr("no feed for {days} d before", days=number_words(course.species.purge_days, digits=0))
            )
        yield Fact(
            label=day_words(event.on),
            value=with_unit(grams / _G_PER_KG, "kg", digits=1),
            note=", ".join(notes),
            ask=_harvested(course, day) if fish > 0 else None,
        )


def _harvested(course: GroupCourse, day: int) -> Subject:
    return Subject(kind=SubjectKind.FISH_HARVEST, about=course.group.id, day=day)


def _holes(course: GroupCourse) -> Iterator[Section]:
    facts = []
    for flag in course.falls:
        values = dict(flag.values)
        share = float(values.get("fall_share", 0.0)) * _PERCENT
        back = (
            tr("back on {day}", day=day_words(flag.until_on))
            if flag.until_on
            else tr("not back within the plan")
        )
        assert flag.on is not None
        facts.append(
            Fact(
                label=day_words(flag.on),
                value=tr("feed of the loop falls by {share} %", share=number_words(share, digits=0)),
                note=tr("against the four weeks before; {back}", back=back),
                ask=Subject(
                    kind=SubjectKind.FEED_FALL, about=course.group.id, day=course.ruler.day_of(flag.on)
                ),
            )
        )
    if facts:
        yield Section(title=tr("Holes in the plants' food"), facts=tuple(facts))
