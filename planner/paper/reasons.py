"""Sentences for reasons of a shortage, and lines of text for an explanation of a figure."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date
from typing import Final

from planner.forecast.why.formulas import Formula
from planner.forecast.why.reasons import Reason, ReasonKind
from planner.forecast.why.values import Explanation, Input, Note, NoteKind, Origin
from planner.paper.figure_reasons import FIGURE_NOTES, FIGURE_WORDS
from planner.paper.plan_reasons import PLAN_NOTES, PLAN_WORDS
from planner.paper.record_reasons import RECORD_NOTES, RECORD_WORDS
from planner.paper.water_reasons import WATER_NOTES, WATER_WORDS
from planner.paper.words import day_words, percent_words

_DIGITS: Final = 4
_INDENT: Final = "  "


def reason_sentence(reason: Reason, *, beside: date | None = None) -> str:
    """Return why an element is short, in one sentence without a full stop.

    `beside` leaves the year out of days in its year.
    """
    words = {name: _short(value) for name, value in reason.values}
    words |= {name: percent_words(float(value)) for name, value in reason.values if name.endswith("_share")}
    words |= {
        "about": reason.about,
        "on": day_words(reason.on, beside=beside) if reason.on else "",
        "span": UNTIL.format(on=day_words(reason.until_on, beside=beside)) if reason.until_on else TO_THE_END,
    }
    return REASON_WORDS[reason.kind].format(**words)


def _short(value: float | str) -> str:
    return value if isinstance(value, str) else f"{value:,.0f}"


UNTIL: Final = "until {on}"
TO_THE_END: Final = "for the rest of the plan"

REASON_WORDS: Final[Mapping[ReasonKind, str]] = {
    ReasonKind.FISH_HARVESTED: "{fish} fish harvested on {on}: feed falls {fall_share} {span}",
    ReasonKind.OFF_FEED: "{about} off feed for {days} d of the week",
    ReasonKind.DOSE_ENDED: "the dose of {about} runs out: it was last given on {on}",
    ReasonKind.NEAR_HARVEST: (
        "many plants near harvest ({plants}): the plants want {rise_share} more than in the four weeks before"
    ),
    ReasonKind.MORE_PLANTS: (
        "the plants have grown: they want {rise_share} more than in the four weeks before"
    ),
    ReasonKind.NO_FISH: "no fish are fed in {about}",
    ReasonKind.YOUNG_FISH: (
        "{about}: the fish are young, {weight_g} g each against {harvest_weight_g} g at harvest"
    ),
    ReasonKind.COLD_WATER: (
        "cold water: at {water_c} °C {about} grow at {growth_share} of what they would at {optimum_c} °C"
    ),
    ReasonKind.WARM_WATER: (
        "warm water: at {water_c} °C {about} grow at {growth_share} of what they would at {optimum_c} °C"
    ),
    ReasonKind.LITTLE_FED: (
        "more is planted than the fish feed: {fed} g/m²/d are fed, where {low} to {high} are usual"
    ),
    ReasonKind.LITTLE_IN_FEED: ("the feed holds too little of it: even {high} g/m²/d would not be enough"),
}

FORMULA_WORDS: Final[Mapping[Formula, str]] = {
    Formula.SUM: "the sum of its parts",
    Formula.MEAN: "the mean of its parts",
    Formula.LEAST: "the least of its parts",
    Formula.AS_ENTERED: "as entered",
    Formula.NOTHING: "nothing",
    Formula.COUNT: "how many there are of what is listed",
    Formula.SEEDS: "plants wanted, over the share that comes up and lives in the nursery, rounded up",
    Formula.LOT_SHARE: "what packet or book says, taken for so many seeds, and what came up of those counted",
    Formula.LOT_SHARE_CAREFUL: "the likely share, less some standard deviations, for seed to be careful with",
    Formula.STAND_LINE: "all come up to the best temperature, none at the ceiling, in a line between",
    Formula.STAND_TABLE: "read from the crop's table of normal seedlings by temperature",
    Formula.STAGE_DAYS: "days by the book or the grower, in whole days, and what warmth and light add",
    Formula.LAST_DAY: "days before the stage and its own, the first of them counted as well",
    Formula.DAY_OF: "days since sowing less those before the stage, the first counted as one",
    Formula.PICKED: "plants that live in the bed, in whole plants, times the share that the day has",
    Formula.PLACES: "rafts, blocks or trays, times rows, times places along a row",
    Formula.DAYS_FREE: "days from the first free day to the day shown, both counted",
    Formula.PICKING_DAYS: "days from the first pick to the last, and the last day itself",
    Formula.LATER_DAYS: "days until warmth and light have added up to the days by the book, less those days",
    Formula.BATCH_PLANTS: "plants that live, times the share of their picks that falls in the week",
    Formula.BATCH_GRAMS: "plants that live, times the share of their picks, times what a plant gives",
    Formula.BATCH_SOLD: "plants that live, times what a plant gives, times the share of it that can be sold",
    Formula.BATCH_DEMAND: "plants, times dry mass formed in the week, times content",
    Formula.BATCH_DEMAND_IRON: "plants, times dry mass formed in the week, times content",
    Formula.DRY_MASS_IN_WEEK: "dry mass of a whole plant, times the share of its growth in the week",
    Formula.WHOLE_DRY_MASS: "fresh yield, times dry matter, over the part of the plant that is harvested",
    Formula.WINDOW_YIELD: "yield by the book, for the picks and the room that these plants have",
    Formula.RATIO: "supply over demand",
    Formula.DISSOLVED: "what the feed holds, less solids, fish and gas",
    Formula.IN_FEED_NITROGEN: "feed, times protein, over protein per nitrogen",
    Formula.IN_FEED: "feed, times its content",
    Formula.IN_FEED_IRON: "feed, times its content",
    Formula.IN_SOLIDS: "what the feed holds, times the share that leaves as solids",
    Formula.KEPT_IN_FISH: "gain, times body content, less what this feed cannot give",
    Formula.KEPT_IN_FISH_IRON: "gain, times body content, less what this feed cannot give",
    Formula.LOST_AS_GAS: "what neither solids nor fish keep, times the share lost as gas over the share "
    "that dissolved where it was found, less what is not there to lose",
    Formula.TOP_UP: "make-up water, times what a litre brings, times days",
    Formula.TOP_UP_LITRES: "water of the loop, times the usual share a day",
    Formula.DOSE: "grams of a dose, times the share of the element, times doses that count in the week",
    Formula.LAID_DOWN: "solids of the fish, less what the filters take out",
    Formula.MINERALISED: "what the solids laid down so far give back day by day, slower as they get old",
    Formula.LIQUOR: "what was gathered, times what rots free by then, less gas, as much as goes back",
    Formula.FEED_BY_GAIN: "gain, times feed conversion",
    Formula.GAIN: "fish, times what each gains in the day",
    Formula.WEIGHT_AFTER: "the cube root of weight grows by the coefficient times warmth",
    Formula.EFFECTIVE_TEMPERATURE: (
        "the best temperature, times how well the fish grow at this one, at most that of the water"
    ),
    Formula.FEED_BY_PERCENT: "mass of the fish, times percent of body weight",
    Formula.FEED_BY_TABLE: "mass of the fish, times percent of it, times their appetite at this warmth",
    Formula.AMMONIA: "feed, times its protein, times the ammonia nitrogen that comes of protein",
    Formula.FILTER_NEED: "ammonia nitrogen over what a square metre of biofilm takes at the water's warmth",
    Formula.OXYGEN: "what fish take by their feed and nitrifiers by the ammonia, over the hours of a day",
    Formula.FEED_RATIO: "feed over planted area",
    Formula.PLANTED_AREA: "leafy and fruiting crops in their final places",
    Formula.AREA_FED: "feed over the feed-rate ratio of the band's end",
    Formula.MIXED_BAND: "bands of leafy and fruiting crops mixed by area, for the protein that is fed",
    Formula.ACID: "feed of a week, times the acid that comes of a kilogram of feed in a loop with plants",
    Formula.BASE_WANTED: "as much base as acid is made",
    Formula.BASE_GRAMS: "this product's share of the base wanted, over the base in a kilogram of it",
    Formula.SALT_GRAMS: "the gap, over the share of the element in the product",
    Formula.GAP_LEFT: "what crops want beyond supply, less what bases and other salts bring",
    Formula.IRON_DUE: "days between doses, less days since the last",
    Formula.IRON_GRAMS: "what the water lacks of the target, times its volume, over the iron in the product",
    Formula.SALTS_OF_SOLIDS: "dissolved solids over the factor of the meter",
    Formula.SOLIDS_OF_SALTS: "conductivity times the factor of the meter",
    Formula.FREE_AMMONIA: "the share of ammonia that is un-ionised at this pH and temperature",
    Formula.LIMIT_BY_BALANCE: "days until the fall of alkalinity adds up to what is to spare",
    Formula.FALL_OF_DAYS: "days, times the mean fall of a day at its quickest",
    Formula.LIMIT_BY_TREND: "what is to spare over its fastest fall in the last weeks, in whole days",
    Formula.SPARE_ALKALINITY: "the last reading, less the limit",
    Formula.SPARE_TO_PH: "alkalinity that goes until pH is at the limit, free carbon dioxide unchanged",
    Formula.DENSITY: "mass of fish over the tank's volume",
    Formula.GROUP_MASS: "fish, times their mean weight",
    **FIGURE_WORDS,
    **PLAN_WORDS,
    **WATER_WORDS,
    **RECORD_WORDS,
}

NOTE_WORDS: Final[Mapping[NoteKind, str]] = {
    NoteKind.CAPPED_SPLIT: "more is asked for than the feed holds; {capped_g} g are left out",
    NoteKind.ASSUMED_TEMPERATURE: "the water temperature is not known; {assumed_c} °C, the best, is assumed",
    NoteKind.BOOK_DURATIONS: "the climate is not known: durations are those of the book, the same all year",
    NoteKind.UNKNOWN_CLIMATE: "part of the climate is not known and slows nothing",
    NoteKind.STRETCHED: "the stage is cut off at {times} times its days by the book",
    NoteKind.GIVEN_UP: "the season is too slow: the crop is given up at {size_share} of its size",
    NoteKind.DELAY: (
        "first pick {days} d late because of {cause} (light alone {by_light} d, warmth alone {by_warmth} d)"
    ),
    NoteKind.LEAST_STAND: "hardly any would come up; the least share is taken",
    NoteKind.LOT_COUNTS: "{tests} tests and {batches} batches of the lot were counted, {n} seeds in all",
    NoteKind.OLD_SEED: "old lot: test it; until then the careful end of what is likely is taken",
    NoteKind.PRIMED_SEED: "primed seed keeps less long: test it; the careful end of what is likely is taken",
    NoteKind.OTHERS: "{many} smaller parts are summed as others",
    NoteKind.FIELD_LIMITS: "this field takes {low} to {high}{unit}",
    NoteKind.FROM_TO: "from {from} to {until}",
    NoteKind.CHANGED: "last changed on {on}: {act}",
    NoteKind.CHANGED_BY: "last changed on {on} by {who}: {act}",
    NoteKind.NO_FISH: "no fish on that day",
    NoteKind.OFF_FEED: "off feed since {from}",
    NoteKind.PURGED: "purged for {days} days before the harvest on {harvest}",
    NoteKind.NO_APPETITE: "the water has {water_c} °C; these fish feed between {base_c} and {ceiling_c} °C",
    NoteKind.FEED_GIVEN: "feed really given, entered from {from} on",
    NoteKind.NOTHING_PLANTED: "nothing is planted",
    NoteKind.NOTHING_WANTED: "nothing is wanted",
    NoteKind.BAND: "this counts as: {band}",
    NoteKind.OVER_LIMIT: "over the limit of the species",
    NoteKind.ACID_SPREAD: (
        "{low} to {high} eq must be reckoned with; the balance of nitrogen gives {balance} eq"
    ),
    NoteKind.SHARED_BASE: (
        "gaps of potassium and calcium are filled first; the gentlest bases share what is left"
    ),
    NoteKind.DOSE_CAP: "at most {cap_g} g at once, so that pH rises by no more than {step} in a day",
    NoteKind.GAP_MEAN: "the mean of {weeks} weeks from this one on",
    NoteKind.IRON_NEVER: "iron was never given: it is due at once",
    NoteKind.IRON_NOT_TESTED: "iron was not tested lately: none is taken to be there",
    NoteKind.FACTOR_ASSUMED: "the factor of the meter was not noted; the usual one is taken",
    NoteKind.METER_OVERDUE: "doubtful: the meter of the {what} reading was overdue for calibration",
    NoteKind.FISH_LIMIT: "at most {limit} mg/L for these fish",
    NoteKind.NO_BASE_GIVEN: "counted from the day of the reading, with no base given",
    NoteKind.NOT_IN_PLAN: "it is not reached within the plan",
    NoteKind.PERHAPS_NEVER: "at the earliest; perhaps it is not reached at all within the plan",
    NoteKind.LATEST: "at the earliest, with the fastest fall; with the slowest on {latest}",
    NoteKind.NOT_KNOWN: "not known: {reason}",
    **FIGURE_NOTES,
    **PLAN_NOTES,
    **WATER_NOTES,
    **RECORD_NOTES,
}


def note_sentence(note: Note) -> str:
    """Return a note in words."""
    values = {name: _number(value) for name, value in note.values}
    return NOTE_WORDS[note.kind].format(**values)


def _number(value: float | str) -> str:
    return value if isinstance(value, str) else f"{value:.{_DIGITS}g}"


def _amount(value: float, unit: str) -> str:
    """Return a number with its unit; a bare share has none."""
    return _number(value) if unit == "1" else f"{_number(value)} {unit}"


def explanation_lines(explanation: Explanation, *, depth: int, level: int = 0) -> Iterator[str]:
    """Yield an explanation as indented lines, down to a depth (0: the figure alone)."""
    lead = _INDENT * level
    yield f"{lead}{_headline(explanation)}"
    if level >= depth:
        return
    inner = lead + _INDENT
    yield f"{inner}{FORMULA_WORDS[explanation.formula]}: {explanation.formula.value}"
    for one in explanation.inputs:
        yield f"{inner}{input_line(one)}"
    for note in explanation.notes:
        yield f"{inner}note: {note_sentence(note)}"
    for child in explanation.children:
        yield from explanation_lines(child, depth=depth, level=level + 1)


def _headline(explanation: Explanation) -> str:
    if explanation.formula is Formula.VERDICT:
        return f"{explanation.title}: {explanation.about}"
    value = "no figure" if explanation.value is None else _amount(explanation.value, explanation.unit)
    about = f" of {explanation.about}" if explanation.about else ""
    on = f", {day_words(explanation.on)}" if explanation.on else ""
    return f"{explanation.title}{about}: {value}{on}"


def input_line(one: Input) -> str:
    """Return an input with where it comes from and how sure it is."""
    head = f"{one.name} = {_amount(one.value, one.unit)}"
    match one.origin:
        case Origin.WORKED_OUT:
            return f"{head} (worked out)"
        case Origin.ENTERED:
            return f"{head} (entered for {one.about})"
        case Origin.COUNTED:
            return f"{head} (counted)"
        case Origin.FIGURE:
            spread = (
                "" if one.low is None or one.high is None else f"{_number(one.low)} to {_number(one.high)}; "
            )
            source = one.source or "no source"
            return f"{head} ({spread}{source}, {one.confidence}; {one.conditions}; {one.path})"
