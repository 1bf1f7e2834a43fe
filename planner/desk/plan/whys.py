"""What the tables and cards of the page are asked: each number by the name that its answer goes by.

Answers are made beside the window with what they are about, and worked out when they are asked. Must know
nothing of widgets but that a wish goes up from one.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from typing import Any, Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.pages import Fact, Later
from planner.desk.plan.expansion_words import number_lines
from planner.desk.rows import Row
from planner.desk.say import tr
from planner.desk.words import NONE, number_words
from planner.farm.farm import Farm, by_id
from planner.forecast.values import Flag, Ruler
from planner.planning.answering import Whys
from planner.planning.expansion.verdicts import Expansion, Verdict
from planner.planning.orders import OrderLine
from planner.planning.proposal import Proposal, WeekSupply, steady_share
from planner.planning.remedies.values import Effect, Remedy
from planner.planning.scenarios.compare import BASE, Comparison
from planner.planning.season_plan.plan import SeasonPlan
from planner.planning.season_plan.proposal import Difference
from planner.planning.stocking.harvests import HarvestOption
from planner.planning.stocking.options import StockingOption, StockingTable
from planner.planning.why_expansion import number_name
from planner.planning.why_orders import order_name
from planner.planning.why_remedies import FIGURES, remedy_name
from planner.planning.why_scenarios import scenario_name
from planner.planning.why_season import line_name, sown_name
from planner.planning.why_stocking import harvest_name, stocked_name, way_name
from planner.planning.why_successions import sowing_name, week_name

Names = tuple[str | None, ...]
"""For each column of a row the name of its figure, None where there are only words."""
_PERCENT: Final = 100.0
_G_PER_KG: Final = 1000.0


@dataclass(frozen=True, slots=True)
class Answered:
    """What was worked out, with what tells why its figures are what they are."""

    found: Any
    whys: Whys


def asked_rows(rows: Iterable[Row], names: Iterable[Names], whys: Whys) -> tuple[Row, ...]:
    """Return rows whose numbers can be asked; `names` are those of each row in their order."""
    return tuple(
        replace(row, asks=tuple(_ask(name, whys) for name in of_row))
        for row, of_row in zip(rows, names, strict=True)
    )


def _ask(name: str | None, whys: Whys) -> Later | None:
    return Later(name, whys[name]) if name is not None and name in whys else None


# --- successions and season ----------------------------------------------------------------------------

_OF_SOWING: Final = ("sow-on", "", "", "plants", "seeds", "trays", "move-on", "first-pick", "last-pick", "")


def sowing_names(found: Proposal) -> Iterator[Names]:
    """Yield the names of the figures of each sowing."""
    for one in found.sowings:
        yield tuple(sowing_name(one, what) if what else None for what in _OF_SOWING)


def supply_names(found: Proposal, ruler: Ruler) -> Iterator[Names]:
    """Yield the names of what is wanted and foreseen in each week."""
    for week in found.weeks:
        yield None, None, week_name(ruler, week, "wanted"), week_name(ruler, week, "foreseen")


def week_asks(weeks: Iterable[WeekSupply], ruler: Ruler, what: str, whys: Whys) -> tuple[Later | None, ...]:
    """Return what is asked of each week that is drawn of a proposal of sowings."""
    return tuple(_ask(week_name(ruler, week, what), whys) for week in weeks)


def line_asks(plan: SeasonPlan, number: int, what: str, whys: Whys) -> tuple[Later | None, ...]:
    """Return what is asked of each week that is drawn of a crop in a season."""
    line = plan.model.lines[number]
    return tuple(_ask(line_name(plan, line, week, what), whys) for week in range(plan.model.weeks))


def succession_facts(found: Proposal, catalogue: Catalogue, whys: Whys) -> tuple[Fact, ...]:
    """Return what a proposal of sowings can be asked as a whole."""
    seeds = sum(one.seeding.seeds for one in found.sowings)
    plants = sum(one.batch.plants for one in found.sowings)
    facts = [
        Fact(label=tr("Seeds"), value=number_words(seeds), ask=_ask("proposal seeds", whys)),
        Fact(label=tr("Plants"), value=number_words(plants), ask=_ask("proposal plants", whys)),
    ]
    for crop in dict.fromkeys(week.crop for week in found.weeks):
        weeks = tuple(week for week in found.weeks if week.crop == crop)
        share = _percent(steady_share(weeks, within=found.even_share))
        label = tr("Weeks near what is wanted: {crop}", crop=catalogue.crops[crop].name)
        facts.append(Fact(label=label, value=share, ask=_ask(f"proposal even {crop}", whys)))
    if found.nursery:
        free = number_words(min(week.free for week in found.nursery))
        facts.append(
            Fact(label=tr("Nursery cells free"), value=free, ask=_ask("proposal nursery free", whys))
        )
    return tuple(fact for fact in facts if fact.ask is not None)


def season_names(rows: Iterable[Row], ruler: Ruler) -> Iterator[Names]:
    """Yield the names of the figures of weeks; a row goes by the first day, the crop and the unit."""
    for row in rows:
        week = ruler.week_name(ruler.week_of(row.sort[0]))
        of = f"week {week} {row.id.partition(' ')[2]}"
        yield None, None, *(f"{of} {what}" for what in ("wanted", "today", "harvest", "meets"))


def difference_names(plan: SeasonPlan, differences: Iterable[Difference]) -> Iterator[Names]:
    """Yield the names of the sowings that a plan adds or changes."""
    known = {(one.crop, one.sow_on, one.plants): sown_name(one) for one in plan.sowings}
    for each in differences:
        after = each.after
        name = None if after is None else known.get((after.crop, after.sow_on, after.plants))
        yield None, None, None, None, name


def plan_facts(plan: SeasonPlan, whys: Whys) -> tuple[Fact, ...]:
    """Return what a plan can be asked as a whole: how near to the best it is, what its worth is made of."""
    worth = plan.model.worth or 1.0
    parts = plan.parts
    told = (
        (tr("Gap to the best possible"), plan.gap, "plan gap"),
        (tr("Worth"), plan.objective / worth, "plan worth"),
        (tr("No plan is worth more than"), plan.bound / worth, "plan bound"),
        (tr("Missed"), parts.missed / worth, "plan missed"),
        (tr("More than wanted"), parts.wasted / worth, "plan wasted"),
        (tr("Short supply"), float(parts.short.sum()) / worth, "plan short"),
        (tr("Supply left idle"), float(parts.idle.sum()) / worth, "plan idle"),
        (tr("The same amount every week"), plan.by_hand / worth, "plan by-hand"),
    )
    facts = [Fact(label=label, value=_percent(share), ask=_ask(name, whys)) for label, share, name in told]
    many = Fact(label=tr("Sowings"), value=number_words(len(plan.sowings)), ask=_ask("plan sowings", whys))
    return tuple(fact for fact in (*facts, many) if fact.ask is not None)


def _percent(share: float) -> str:
    return tr("{percent} %", percent=number_words(share * _PERCENT, digits=1))


# --- fish ----------------------------------------------------------------------------------------------

_OF_WAY: Final = ("", "", "apart", "fall", "longest", "uneven", "in-band", "fullest", "feed")
_OF_HARVEST: Final = ("", "", "fall", "back", "lowest", "lowest", "least", "fullest")


def way_names(rows: Iterable[Row], table: StockingTable) -> Iterator[Names]:
    """Yield the names of the figures of each way; a way without room has none."""
    for row in rows:
        if row.payload < 0:
            yield ()
        else:
            option = table.options[row.payload]
            yield tuple(way_name(option, what) if what else None for what in _OF_WAY)


def stocked_names(rows: Iterable[Row], option: StockingOption, farm: Farm) -> Iterator[Names]:
    """Yield the name of the fish of each stocking."""
    tanks = by_id(farm.tanks)
    for row in rows:
        one = option.stocked[int(row.id)]
        yield None, way_name(option, stocked_name(one, tanks[one.tank].name)), None, None


def hole_names(option: StockingOption) -> Iterator[Names]:
    """Yield the names of how deep and how long the feed falls at each harvest."""
    for hole in option.holes:
        of = f"hole {hole.on.isoformat()}"
        yield None, way_name(option, f"{of} fall"), way_name(option, f"{of} back")


def harvest_names(options: Iterable[HarvestOption]) -> Iterator[Names]:
    """Yield the names of the figures of each way to take a harvest."""
    for one in options:
        yield tuple(harvest_name(one, what) if what else None for what in _OF_HARVEST)


def start_names(rows: Iterable[Row]) -> Iterator[Names]:
    """Yield the names of the figures of each batch of a start-up."""
    for row in rows:
        of = f"start {row.texts[0]}"
        yield None, None, None, f"{of} area", None, f"{of} may", f"{of} waits"


# --- scenarios, more beds, orders, repairs -------------------------------------------------------------

_OF_SCENARIO: Final = (
    "least",
    "weeks-short",
    "planted",
    "unplaced",
    "feed",
    "fish",
    "fullest",
    "cost",
    "income",
)


def compare_names(found: Comparison) -> Iterator[Names]:
    """Yield the names of the figures of each row of a comparison, column by column."""
    keys = dict.fromkeys(key for column in found.columns for key, _ in column.harvest_g)
    columns = [BASE, *(column.name for column in found.columns[1:])]
    for what in (*_OF_SCENARIO, *(f"harvest {key}" for key in keys)):
        yield None, *(scenario_name(name, what) for name in columns)


def month_names(rows: Iterable[Row]) -> Iterator[Names]:
    """Yield the names of the areas of each month."""
    for row in rows:
        yield None, f"month {row.id} with-a-margin", f"month {row.id} at-most"


def verdict_facts(verdict: Verdict, whys: Whys) -> tuple[Fact, ...]:
    """Return what a verdict can be asked: its answer, and each of its figures that is known."""
    name = f"{verdict.matter.value} answer"
    answer = Fact(label=tr("Answer"), value=tr(verdict.answer.value), ask=_ask(name, whys))
    figures = [
        Fact(label=label, value=value, ask=_ask(number_name(verdict, number), whys))
        for (label, value), (number, _) in zip(number_lines(verdict), verdict.numbers, strict=True)
    ]
    return tuple(fact for fact in (answer, *figures) if fact.ask is not None)


def expansion_facts(found: Expansion, whys: Whys) -> tuple[Fact, ...]:
    """Return what the answer for all four verdicts can be asked."""
    answer = Fact(label=tr("Answer"), value=tr(found.answer.value), ask=_ask("answer", whys))
    return (answer,) if answer.ask is not None else ()


def order_names(lines: Iterable[OrderLine]) -> Iterator[Names]:
    """Yield the names of what is used, in stock and to buy of each line."""
    for line in lines:
        of = order_name(line)
        buy = of if line.to_buy is None else f"{of} to-buy"
        yield None, None, None, of, f"{of} in-stock", buy, None


_REPAIR_WORDS: Final = {
    "least": "Least supply",
    "weeks-short": "Weeks short",
    "plan-weeks-short": "Weeks short in the whole plan",
    "feed-ratio": "Feed for the planted area",
    "fall": "Fall of the feed",
    "fullest": "Fullest tank",
    "unplaced": "Plants without a place",
    "harvest": "Harvest of crops",
}


_ALWAYS: Final = "harvest"
"""What is told of a repair even where it stays as it is."""


def _repair_words(effect: Effect, what: str) -> str:
    """Return a figure of a repair before or after it."""
    limiting = effect.limiting
    ratio = None if limiting is None else effect.lowest_ratio[limiting]
    feed = effect.feed_ratio_g_per_m2_d
    said = {
        "least": NONE if ratio is None else f"{_percent(ratio)} {effect.limiting_symbol}",
        "weeks-short": number_words(effect.weeks_short),
        "plan-weeks-short": number_words(effect.plan_weeks_short),
        "feed-ratio": NONE if feed is None else tr("{grams} g/m²/d", grams=number_words(feed, digits=0)),
        "fall": _percent(effect.fall_share),
        "fullest": tr("{mass} kg/m³", mass=number_words(effect.peak_kg_per_m3, digits=1)),
        "unplaced": number_words(effect.unplaced_plants),
        "harvest": tr("{kg} kg", kg=number_words(effect.crops_g / _G_PER_KG, digits=1)),
    }
    return said[what]


def remedy_facts(flag: Flag, remedy: Remedy, whys: Whys) -> tuple[Fact, ...]:
    """Return what a repair can be asked: what it changes, figure by figure, and what it gives."""
    facts = [
        Fact(
            label=tr(_REPAIR_WORDS[what]),
            value=tr("{before} → {after}", before=before, after=after),
            ask=_ask(remedy_name(flag, remedy, what), whys),
        )
        for what in FIGURES
        for before, after in ((_repair_words(remedy.before, what), _repair_words(remedy.after, what)),)
        if what == _ALWAYS or before != after
    ]
    facts += [
        Fact(
            label=tr("Grams at a time"),
            value=tr("{grams} g", grams=number_words(float(value))),
            ask=_ask(remedy_name(flag, remedy, key), whys),
        )
        for key, value in remedy.details
        if isinstance(value, float)
    ]
    return tuple(fact for fact in facts if fact.ask is not None)
