"""What the log says of a month: picked, fed, weighed, done, and what went wrong.

Notes stay out: they are the caretaker's own and belong on no sheet that an owner gets. Must not know layout
or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import NO_ID, Id
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.log import Happening, LogEntry, Reason, Unit, standing
from planner.forecast.values import GroupForecast
from planner.paper.documents.amounts import kg_words, number_words
from planner.paper.documents.ask import Ask
from planner.paper.plain_names import one_line
from planner.paper.words import NO_BREAK, count_words, day_words, list_words

_G_PER_KG: Final = 1000.0
_MOST_TROUBLES: Final = 6
_DONE: Final = {
    Happening.SOWN: ("sowing", "sowings"),
    Happening.MOVED: ("move to a bed", "moves to beds"),
    Happening.PICKED: ("picking", "pickings"),
    Happening.CLEARED: ("batch cleared", "batches cleared"),
    Happening.DOSED: ("addition to the water", "additions to the water"),
    Happening.TOPPED_UP: ("top-up", "top-ups"),
    Happening.SIPHONED: ("siphoning of solids", "siphonings of solids"),
    Happening.RETURNED: ("return of liquor", "returns of liquor"),
    Happening.MEASURED: ("reading", "readings"),
    Happening.WEIGHED: ("weighing of fish", "weighings of fish"),
    Happening.MAINTAINED: ("piece of maintenance", "pieces of maintenance"),
    Happening.CALIBRATED: ("calibration of a meter", "calibrations of meters"),
}
_PEST_WORDS: Final = ("none", "a few", "many", "very many")


@dataclass(frozen=True, slots=True, kw_only=True)
class Picked:
    """What was picked of one crop: heads, kilograms, and the kilograms of both together.

    Heads weigh what the plan says a plant of the crop weighs.
    """

    heads: float = 0.0
    kg: float = 0.0
    kg_of_all: float = 0.0


@dataclass(frozen=True, slots=True)
class MonthLog:
    """The entries that hold, of the days that were asked for."""

    ask: Ask

    def entries(self) -> tuple[LogEntry, ...]:
        """Return the entries of these days, the earliest first."""
        held = standing(self.ask.farm.log_entries)
        return tuple(sorted((e for e in held if self.ask.first <= e.on <= self.ask.last), key=_day))

    def picked(self) -> dict[str, Picked]:
        """Return what was picked by crop."""
        found: dict[str, Picked] = {}
        for crop, _, heads, kg, both in self._picks():
            sum_ = found.get(crop, Picked())
            found[crop] = Picked(heads=sum_.heads + heads, kg=sum_.kg + kg, kg_of_all=sum_.kg_of_all + both)
        return found

    def picked_by_week(self) -> list[float]:
        """Return the kilograms picked in each week asked for."""
        weeks = [0.0] * self.ask.weeks
        for _, on, _, _, both in self._picks():
            weeks[(on - self.ask.first).days // DAYS_PER_WEEK] += both
        return weeks

    def _picks(self) -> Iterator[tuple[str, date, float, float, float]]:
        """Yield crop, day, heads, kilograms and the weight of both of each picking."""
        crops = {batch.id: batch.crop for batch in self.ask.farm.batches}
        for entry in self.entries():
            if entry.what is not Happening.PICKED or entry.batch not in crops:
                continue
            crop, amount = crops[entry.batch], entry.amount or 0.0
            if entry.unit is Unit.HEADS:
                yield crop, entry.on, amount, 0.0, amount * self._kg_per_plant(crop)
            else:
                yield crop, entry.on, 0.0, amount, amount

    def _kg_per_plant(self, crop: str) -> float:
        """Return the planned weight of a plant that is picked [kg], 0 for a crop that is never picked."""
        forecast = self.ask.forecast
        at = forecast.crops.index(crop)
        plants = float(forecast.harvest_plants[at].sum())
        return float(forecast.harvest_g[at].sum()) / plants / _G_PER_KG if plants > 0 else 0.0

    def fed_g(self) -> float:
        """Return the feed that was noted in these days [g]."""
        return sum(_grams(event, self.ask.first, self.ask.last) for event in self._fed(None))

    def _fed(self, group: Id | None) -> Iterator[FishEvent]:
        for event in self.ask.farm.fish_events:
            if event.kind is FishEventKind.FEED_GIVEN and group in (None, event.group):
                yield event

    def feed_ratios(self) -> Iterator[str]:
        """Yield feed over gain of each group, between its last two samples up to these days' end."""
        for loop in self.ask.forecast.loops:
            for group in loop.groups:
                yield from self._ratio(group)

    def _ratio(self, group: GroupForecast) -> Iterator[str]:
        samples = sorted(
            (
                event
                for event in self.ask.farm.fish_events
                if event.group == group.group
                and event.kind is FishEventKind.SAMPLE
                and event.mean_weight_g is not None
                and event.on <= self.ask.last
            ),
            key=_event_day,
        )[-2:]
        if len(samples) < 2 or samples[0].on == samples[1].on or samples[1].on < self.ask.first:
            return
        begin, end = samples[0].on, samples[1].on - timedelta(days=1)
        days = (end - begin).days + 1
        fed = sum(_grams(event, begin, end) for event in self._fed(group.group))
        noted = len({day for event in self._fed(group.group) for day in _days(event, begin, end)})
        gain = self._gain_g(group, samples[0], samples[1])
        name = one_line(group.name)
        if noted < days:
            yield (
                f"{name}: feed was noted on {noted} of the {days} days between the last two samples, too "
                "few to tell feed ÷ gain"
            )
        elif gain > 0:
            yield (
                f"{name}: {kg_words(fed)} fed and {kg_words(gain)} gained between the samples of "
                f"{day_words(begin)} and {day_words(samples[1].on)}: feed ÷ gain {fed / gain:.2f}"
            )

    def _gain_g(self, group: GroupForecast, first: FishEvent, second: FishEvent) -> float:
        """Return what the fish alive each day gained, each fish the same every day [g]."""
        ruler = self.ask.forecast.ruler
        days = (second.on - first.on).days
        begin = ruler.day_of(first.on)
        alive = group.count[max(begin, 0) : max(begin + days, 0)]
        each = ((second.mean_weight_g or 0.0) - (first.mean_weight_g or 0.0)) / days
        return float(alive.sum()) * each

    def done(self) -> str:
        """Return how often each kind of work was noted, empty when none was."""
        counts: dict[Happening, int] = {}
        for entry in self.entries():
            counts[entry.what] = counts.get(entry.what, 0) + 1
        return list_words(
            [count_words(counts[what], *words) for what, words in _DONE.items() if what in counts]
        )

    def troubles(self) -> Iterator[str]:
        """Yield pests, culls and what was left undone; reasons are told, notes are not."""
        found = [words for entry in self.entries() if (words := self._trouble(entry))]
        yield from found[:_MOST_TROUBLES]
        if len(found) > _MOST_TROUBLES:
            yield f"and {len(found) - _MOST_TROUBLES} more in the log"

    def _trouble(self, entry: LogEntry) -> str:
        where = self._where(entry)
        why = f" ({entry.reason.value})" if entry.reason is not Reason.NONE else ""
        match entry.what:
            case Happening.PEST if entry.amount:
                return f"{day_words(entry.on)}: pests{where}, {_PEST_WORDS[min(int(entry.amount), 3)]}{why}"
            case Happening.CULLED if entry.amount:
                many = count_words(round(entry.amount), "plant", "plants")
                return f"{day_words(entry.on)}: {many} thrown away{where}{why}"
            case Happening.NOT_DONE:
                return f"{day_words(entry.on)}: something was left undone{where}{why}"
            case Happening.LEFT_OVER if entry.amount:
                grams = number_words(round(entry.amount))
                return f"{day_words(entry.on)}: {grams} g of feed left over{where}{why}"
            case _:
                return ""

    def _where(self, entry: LogEntry) -> str:
        farm = self.ask.farm
        codes = {batch.id: batch.code for batch in farm.batches} | {bed.id: bed.name for bed in farm.beds}
        codes |= {group.id: group.name for group in farm.fish_groups}
        names = [codes[each] for each in (entry.batch, entry.bed, entry.group) if each in codes]
        return f", {one_line(names[0])}" if names and names[0] != NO_ID else ""


def _day(entry: LogEntry) -> date:
    return entry.on


def _event_day(event: FishEvent) -> date:
    return event.on


def _days(event: FishEvent, first: date, last: date) -> Iterator[date]:
    """Yield the days of an entry of feed that lie from one day up to another."""
    for day in range(event.days or 1):
        on = event.on + timedelta(days=day)
        if first <= on <= last:
            yield on


def _grams(event: FishEvent, first: date, last: date) -> float:
    return (event.feed_g_per_day or 0.0) * sum(1 for _ in _days(event, first, last))


def _cleared_words(event: FishEvent) -> str:
    if event.cleared_on is None:
        return "not to be eaten: no day is known on which it is cleared"
    return f"not to be eaten before {day_words(event.cleared_on)}"


def event_words(event: FishEvent) -> str:  # noqa: PLR0911 - one return for each kind of event
    """Return what happened to fish in words."""
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
