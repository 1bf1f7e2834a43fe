"""What swims: fish groups, what happens to them, and what they are fed."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import Enum

from planner.farm import fields
from planner.farm.fields import Id


class Feeding(Enum):
    """How the ration of a group is set.

    By growth: gain × FCR. By table: percent of body weight from a feeding table. By percent:
    a fixed share of the body weight. Fixed: so many grams a day, whatever the fish weigh.
    """

    GROWTH = "growth"
    TABLE = "table"
    PERCENT = "percent"
    FIXED = "fixed"


class FishEventKind(Enum):
    """What happened, or is planned, to a group."""

    HARVEST = "harvest"
    DEATHS = "deaths"
    ADDED = "added"
    SAMPLE = "sample"
    OFF_FEED = "off feed"
    FEED_GIVEN = "feed given"
    TREATED = "treated"


@dataclass(frozen=True, slots=True, kw_only=True)
class FishGroup:
    """Fish stocked together.

    Grower's own figures overrule the species: `fcr`, `tgc`, `daily_death_share`. `feed_percent`
    serves feeding by percent, `feed_g_per_day` fixed feeding, `feeding_table` feeding by table.
    """

    id: Id = fields.own_id()
    name: str = fields.name()
    tank: Id = fields.reference("tank")
    species: str = fields.key("fish")
    feed: str = fields.key("feed")
    stocked_on: date = fields.day()
    count: int = fields.whole(1, 10_000_000, unit="fish")
    mean_weight_g: float = fields.number(0.01, 100_000, "g")
    feeding: Feeding = fields.choice(default=Feeding.GROWTH)
    feeding_table: str = fields.key("feeding table", default="")
    feed_percent: float | None = fields.number(0.01, 40, "% of body weight a day", default=None)
    feed_g_per_day: float | None = fields.number(0, 100_000_000, "g/d", default=None)
    fcr: float | None = fields.number(0.3, 10, "g feed/g gain", default=None)
    tgc: float | None = fields.number(0.01, 10, "1000·g^⅓/(°C·d)", default=None)
    daily_death_share: float | None = fields.number(0, 0.2, "1/d", default=None)
    notes: str = fields.text()


@dataclass(frozen=True, slots=True, kw_only=True)
class FishEvent:
    """A harvest, deaths, fish added, a weighed sample, days off feed, feed really given, or a treatment.

    `count` fish (harvest, deaths, added; a harvest without a count takes them all), `mean_weight_g`
    (sample, added), `days` (off feed, feed given; from `on`), `feed_g_per_day` (feed given), `cleared_on`
    (treated: the day from which the fish may be eaten; until it is given they may not).
    """

    id: Id = fields.own_id()
    group: Id = fields.reference("fish group")
    on: date = fields.day()
    kind: FishEventKind = fields.choice()
    count: int | None = fields.whole(1, 10_000_000, unit="fish", default=None)
    mean_weight_g: float | None = fields.number(0.01, 100_000, "g", default=None)
    days: int | None = fields.whole(1, 400, unit="d", default=None)
    feed_g_per_day: float | None = fields.number(0, 100_000_000, "g/d", default=None)
    cleared_on: date | None = fields.day(
        default=None, meaning="of treated fish: first day on which they may be eaten"
    )
    notes: str = fields.text()
