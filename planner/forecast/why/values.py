"""What an answer to "why?" is made of, as values: subject, inputs, notes and the tree of explanations."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import Enum

from planner.farm.crops import Stage
from planner.farm.fields import NO_ID, Id
from planner.forecast.why.formulas import Formula


class SubjectKind(Enum):
    """Which figure is asked about; what else a subject must name stands behind each."""

    SEEDS = "seeds"  # batch
    STAGE_DAYS = "stage days"  # batch, stage
    FIRST_PICK = "first pick"  # batch
    STAGE_FIRST = "first day of a stage"  # batch, stage
    STAGE_LAST = "last day of a stage"  # batch, stage
    STAGE_DAY = "day of a stage"  # batch, stage, day
    FREED = "places free"  # batch
    PICKED = "picked on a day"  # batch, day
    BATCH_HARVEST = "batch harvest"  # batch
    HARVEST_PLANTS = "harvest plants"  # crop, week
    HARVEST_G = "harvest grams"  # crop, week
    DEMAND = "demand"  # loop, week, element
    SUPPLY = "supply"  # loop, week, element
    RATIO = "ratio"  # loop, week, element
    LIMITING = "limiting element"  # loop, week
    FEED = "feed"  # fish group, day
    GROUP_FEED = "feed of a group"  # fish group, week
    GROUP_MASS = "mass of a group"  # fish group, day
    FEED_MEAN = "mean feed"  # loop, week
    FEED_RATIO = "feed-rate ratio"  # loop, week
    PLANTED = "planted area"  # loop, week
    AREA_FED = "area fed"  # loop, week, perhaps the rule
    DENSITY = "density"  # tank, day
    AMMONIA = "ammonia"  # loop, week
    FILTER_NEED = "filter need"  # loop, week
    OXYGEN = "oxygen"  # loop, week
    ACID = "acid"  # loop, week
    BASE = "base"  # loop, week
    BASE_GRAMS = "base grams"  # loop, on, part: a product
    SALT_GRAMS = "salt grams"  # loop, on, part: a product
    IRON_DUE = "iron due"  # loop, on
    IRON_GRAMS = "iron grams"  # loop, on, part: a product
    SALTS = "salts"  # loop, on
    FREE_AMMONIA = "free ammonia"  # loop, on
    LIMIT = "limit"  # loop, on, part: a way of foretelling
    STOCK = "stock in the water"  # loop, day, element
    COVERED = "supply and stock"  # loop, week, element
    LACKING = "what plants lack"  # loop, week, element
    SOLIDS_BATCH = "solids batch"  # solids batch, part: a `SolidsPart`
    ALKALINITY = "alkalinity foreseen"  # loop, on, day
    ALKALINITY_FALL = "fall of alkalinity"  # loop, week
    OBSERVED_ACID = "acid by the log"  # loop, on
    TREND = "trend of readings"  # loop, on, part: a quantity
    TEST_LATE = "test late"  # loop, on, part: a quantity
    METER_LATE = "calibration late"  # meter, on
    SURFACE = "filter surface"  # loop, week
    GRAVEL = "surface of gravel"  # loop
    PEAK_OXYGEN = "oxygen after feeding"  # loop, week
    SATURATION = "oxygen held"  # loop, week
    DOSE_BRINGS = "what a dose brings"  # dose
    ADVISED_BRINGS = "what an advised dose brings"  # loop, on, part: a product
    BASE_LEFT = "base left over"  # loop, on
    WANTING = "element wanting"  # loop, on, element
    LOT_SHARE = "germination of a lot"  # seed lot, on
    GROUP_COUNT = "fish of a group"  # fish group, day
    GROUP_WEIGHT = "weight of a fish"  # fish group, day
    GROUP_GAIN = "gain of a group"  # fish group, day
    GROUP_DEATHS = "deaths expected"  # fish group, week, weeks
    FISH_HARVEST = "harvest of fish"  # fish group, day
    FISH_HARVEST_COUNT = "fish harvested"  # fish group, day
    FEED_FALL = "fall of the feed at a harvest"  # fish group, day
    FEED_HOLE = "fall of the feed in a week"  # loop, week
    FEED_AMOUNT = "feed of some weeks"  # fish group, loop or none, week, weeks, perhaps part: a feed
    FISH_GAINED = "gain of fish in some weeks"  # fish group, loop or none, week, weeks
    FISH_HARVESTED = "fish harvested in some weeks"  # fish group, loop or none, week, weeks
    WORK = "work of some weeks"  # part: a `DueKind`, week, weeks, perhaps crop
    SEEDS_USED = "seeds of some weeks"  # week, weeks, perhaps crop, perhaps a seed lot
    PIECES = "pieces of some weeks"  # part: a `PieceKind`, week, weeks
    HARVEST_TOTAL = "harvest of some weeks"  # part: plants or kg, week, weeks, perhaps crop
    PLANTED_CROP = "area of a crop"  # loop, week, crop
    BATCH_AREA = "area of a batch"  # batch
    PLACES_USED = "places held"  # bed, day
    PLACES_FREE = "places free in a bed"  # bed, day
    NURSERY_USED = "nursery places held"  # day
    BATCH_PLACES = "places of a batch"  # batch, day
    BATCH_YIELD = "yield of a plant"  # batch
    BATCH_HEADS = "plants that live"  # batch
    BATCH_DEMAND = "demand of a batch"  # batch, week, element
    BATCH_LATE = "later than by the book"  # batch
    BAND = "band of the ratio"  # loop, week, element
    FLAG = "flag"  # whatever it is about, part: a `FlagKind`, perhaps on
    FISH_READY = "ready to harvest"  # fish group


@dataclass(frozen=True, slots=True, kw_only=True)
class Subject:
    """One figure of a forecast.

    `about` is the id of a batch, loop, fish group or tank. `week` counts from 0 on the ruler, `day`
    too; `element` indexes `ELEMENTS`. `on` is the day that water is looked at, without it the first of the
    week; `part` a product by its key, or a `LimitWay` or `AreaRule` by its value. A span is `weeks` from
    `week` on, all up to the end of the plan with 0.
    """

    kind: SubjectKind
    about: Id = NO_ID
    crop: str = ""
    stage: Stage | None = None
    week: int = 0
    day: int = 0
    element: int = 0
    on: date | None = None
    part: str = ""
    weeks: int = 0


class Origin(Enum):
    """Where an input comes from."""

    FIGURE = "figure of the catalogue"
    ENTERED = "entered by the grower"
    WORKED_OUT = "worked out"
    COUNTED = "counted"


@dataclass(frozen=True, slots=True, kw_only=True)
class Input:
    """One number that goes into a formula.

    `name` is the name the formula knows it by. A figure of the catalogue has path, range, source,
    confidence and conditions; what was entered may name the thing it was entered for in `about`.
    """

    name: str
    value: float
    unit: str
    origin: Origin
    about: str = ""
    path: str = ""
    low: float | None = None
    high: float | None = None
    source: str = ""
    confidence: str = ""
    conditions: str = ""


class NoteKind(Enum):
    """What the reader of a figure should bear in mind."""

    CAPPED_SPLIT = "capped split"
    ASSUMED_TEMPERATURE = "assumed temperature"
    BOOK_DURATIONS = "book durations"
    UNKNOWN_CLIMATE = "unknown climate"
    STRETCHED = "stretched to the limit"
    GIVEN_UP = "given up"
    DELAY = "delay"
    LEAST_STAND = "least stand"
    LOT_COUNTS = "lot counts"
    OLD_SEED = "old seed"
    PRIMED_SEED = "primed seed"
    OTHERS = "others left out"
    FIELD_LIMITS = "field limits"
    FROM_TO = "from one day to another"
    CHANGED = "last changed"
    CHANGED_BY = "last changed by"
    NO_FISH = "no fish"
    OFF_FEED = "off feed"
    PURGED = "purged"
    NO_APPETITE = "no appetite"
    FEED_GIVEN = "feed given"
    NOTHING_PLANTED = "nothing planted"
    NOTHING_WANTED = "nothing wanted"
    BAND = "band"
    OVER_LIMIT = "over the limit"
    ACID_SPREAD = "acid spread"
    SHARED_BASE = "shared base"
    DOSE_CAP = "dose cap"
    GAP_MEAN = "gap mean"
    IRON_NEVER = "iron never given"
    IRON_NOT_TESTED = "iron not tested"
    FACTOR_ASSUMED = "factor assumed"
    METER_OVERDUE = "meter overdue"
    FISH_LIMIT = "fish limit"
    NO_BASE_GIVEN = "no base given"
    NOT_IN_PLAN = "not in plan"
    PERHAPS_NEVER = "perhaps never"
    LATEST = "latest"
    NOT_STOCKED_YET = "not stocked yet"
    MORE_THAN_LEFT = "more than were left"
    ALL_HARVESTED = "all harvested"
    WEIGHED_ON = "weighed on"
    SINCE_PLAN_BEGAN = "since the plan began"
    FEED_BACK = "feed back"
    FEED_NOT_BACK = "feed not back"
    FISH_TAKEN = "fish taken"
    OPENED_BY_HARVEST = "opened by a harvest"
    NOTHING_BEFORE = "nothing before"
    NOTHING_DUE = "nothing due"
    BED_EMPTY = "bed empty"
    HELD_TWICE = "held twice"
    HELD_UNTIL = "held until"
    IN_PHASE = "in a phase"
    NO_PLACES = "no places"
    NO_NURSERY = "no nursery"
    NO_FISH_HARVEST = "no harvest of fish"
    SLOWED_BY = "slowed by"
    QUICKER = "quicker than by the book"
    UNDER_LAYER = "under a layer"
    UNDER_LAMPS = "under lamps"
    FLAG_SPAN = "span of a flag"
    NOT_ENTERED = "not entered"
    NOT_SUITED = "not suited"
    SHORT_OF = "short of"
    NEVER_ABOVE = "never above what is eaten"
    TREATED_ON = "treated"
    BARRED = "barred"
    WATER_NOT_KNOWN = "water not known"
    MEAN_BY_DAY = "mean by day"
    NOT_KNOWN = "not known"
    STOCK_ASSUMED = "stock assumed"
    STOCK_BEFORE = "tested before the plan"
    STOCK_TESTED = "counted from a test"
    DAY_BY_DAY = "day by day"
    LIKE_FIRST_WEEK = "like the first week"
    READ_ON = "read on"
    SPREAD = "spread"
    SEEN_BETWEEN = "seen between"
    MIDDLE_HALF = "middle half"
    LAST_DONE = "last done"
    WEIGHT_OF = "weight of a batch"
    STILL_LASTS = "still lasts"
    NOTED = "noted by"
    NOTED_WHEN = "noted when"
    BY_ACT = "kept by the act"
    ACT_CHANGED = "changed by the act"
    ENTRY_ONLY = "changed nothing else"
    BEFORE_OWN = "before an own value"
    PUBLISHED = "published"
    SAID = "said of it"
    COMPUTED_BY = "computed by"
    TOLERATED_FOR = "tolerated for"
    INDEPENDENT = "taken as independent"
    VANISHES = "one figure leaves nothing"
    MOVED_TOGETHER = "moved together"
    DRAWS = "draws"
    ALL_VARY = "others together"
    NEAR_SURE = "no draw tells"
    SEARCHED_WITHIN = "searched within"
    SEARCH_STOPPED = "search stopped"
    PROVEN = "proven"
    WEEK_PART = "part of a week"
    READY_EARLY = "ready early"
    WORK_DAYS = "days of work"
    LESS_ROOM = "less room"
    CAREFUL_END = "careful end"
    JUDGED_WEEKS = "judged weeks"
    LIMITED_BY = "limited by"
    MAKES_WAY = "makes way"
    ALREADY = "standing already"


@dataclass(frozen=True, slots=True, kw_only=True)
class Note:
    """One thing to bear in mind, with its numbers by name."""

    kind: NoteKind
    values: tuple[tuple[str, float | str], ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Explanation:
    """A figure with what it was worked out from.

    `title` is a code such as "seeds"; `about` the batch, crop, group or loop by name. `value` is the
    forecast's own figure, None where it has none (a note says why). `on` is the date a figure stands
    for. `children` explain the inputs that were worked out themselves.
    """

    title: str
    about: str
    value: float | None
    unit: str
    formula: Formula
    inputs: tuple[Input, ...] = ()
    children: tuple[Explanation, ...] = ()
    notes: tuple[Note, ...] = ()
    on: date | None = None

    def input(self, name: str) -> Input:
        """Return the input of a name; raises `KeyError` when there is none."""
        for one in self.inputs:
            if one.name == name:
                return one
        raise KeyError(name)
