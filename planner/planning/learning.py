"""What the log teaches: planned against actual days, and durations and shares drawn toward the book.

Each value of a stage counts as one batch, the book as a few. A value far from all others counts for
nothing, so that one slip of the pen moves nothing. A batch that is still in a stage says only that it
lasts longer than so far. Pure: reads no clock and changes no farm; what is learned is only offered.
"""

from __future__ import annotations

import statistics
from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Any, Final

from planner.catalogue.catalogue import Catalogue
from planner.farm.checks import checked
from planner.farm.crops import Batch, Stage
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.log import Happening, LogEntry, Reason, standing
from planner.planning.anchoring import LengthsOf, Moments, moments_of

_ROUNDS: Final = 8
"""Rounds of weighing anew; the weights no longer change visibly after a few."""
_NORMAL: Final = 1.4826
"""Standard deviations to a median absolute deviation, for the normal distribution."""
SHARES: Final = ("germination_share", "bed_survival_share")
"""Fields that are shares; the others are durations."""
_LEARNED_STAGES: Final = (Stage.GERMINATION, Stage.NURSERY, Stage.BED, Stage.PICKING)
_HAPPENING: Final = {
    Stage.GERMINATION: Happening.GERMINATED,
    Stage.NURSERY: Happening.MOVED,
    Stage.BED: Happening.PICKED,
    Stage.PICKING: Happening.CLEARED,
}


@dataclass(frozen=True, slots=True, kw_only=True)
class LearningRule:
    """How much the book counts, and when a value counts for nothing."""

    book_weight: float
    least_spread_share: float
    spreads_until_ignored: float


def rule_of(catalogue: Catalogue) -> LearningRule:
    """Return the rule from the coefficients of learning."""
    book, least, ignored = (
        catalogue.figure(f"coefficient/learning/{name}").value
        for name in ("book_weight_batches", "least_spread_share", "spreads_until_ignored")
    )
    return LearningRule(book_weight=book, least_spread_share=least, spreads_until_ignored=ignored)


@dataclass(frozen=True, slots=True, kw_only=True)
class Estimate:
    """A learned value, how many batches it rests on (unfinished ones apart), and their spread."""

    value: float
    book: float
    n: int
    unfinished: int
    spread: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Weighed:
    """What was seen, drawn to: the values that count, each with its weight, and the robust spread of all.

    `told` are all that were seen and those unfinished ones that have lasted longer than `value`.
    """

    value: float
    told: tuple[float, ...]
    weights: tuple[float, ...]
    spread: float


def shrunk(
    book: float, seen: Sequence[float], rule: LearningRule, *, at_least: Sequence[float] = ()
) -> Estimate:
    """Return the book's value drawn toward what was seen; `at_least` are unfinished: longer than so.

    The spread is the robust standard deviation of what was seen, never below the rule's least. All
    values share one unit.
    """
    found = weighed(book, seen, rule, at_least=at_least)
    return Estimate(value=found.value, book=book, n=len(seen), unfinished=len(at_least), spread=found.spread)


def weighed(
    book: float, seen: Sequence[float], rule: LearningRule, *, at_least: Sequence[float] = ()
) -> Weighed:
    """Return the estimate of `shrunk` with what each value seen counts in it."""
    value = book
    crowd = [*seen, *([book] * round(rule.book_weight))]
    middle = statistics.median(crowd)
    spread = _spread(crowd, middle, book, rule)
    told: list[float] = []
    weights: list[float] = []
    for _ in range(_ROUNDS):
        told = [*seen, *(limit for limit in at_least if limit > value)]
        weights = [_weight(one, middle, spread * rule.spreads_until_ignored) for one in told]
        total = rule.book_weight + sum(weights)
        value = (rule.book_weight * book + sum(w * x for w, x in zip(weights, told, strict=True))) / total
    return Weighed(value=value, told=tuple(told), weights=tuple(weights), spread=spread)


def _spread(crowd: Sequence[float], middle: float, book: float, rule: LearningRule) -> float:
    found = _NORMAL * statistics.median(abs(one - middle) for one in crowd)
    return max(found, rule.least_spread_share * abs(book))


def _weight(value: float, middle: float, cut: float) -> float:
    """Return Tukey's biweight: 1 in the middle, nothing from `cut` on."""
    away = abs(value - middle) / cut if cut else 0.0
    return (1 - away * away) ** 2 if away < 1 else 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class StageOutcome:
    """One stage of one batch: days planned by the book and days it really took, None while it lasts.

    `so_far` are the days it has lasted when it is not over. It lasts from `began_on` until `ended_on`.
    """

    batch: Id
    stage: Stage
    planned_days: int
    actual_days: int | None
    so_far_days: int
    reason: Reason
    began_on: date
    ended_on: date | None

    @property
    def difference_days(self) -> int | None:
        """Days longer than planned; fewer are negative."""
        return None if self.actual_days is None else self.actual_days - self.planned_days


def outcomes(farm: Farm, book_lengths_of: LengthsOf, today: date) -> tuple[StageOutcome, ...]:
    """Return planned against actual for every stage that the log says something about."""
    about, told = {entry.batch for entry in farm.log_entries}, _told_of(farm)
    return tuple(
        found
        for batch in farm.batches
        if batch.id in about
        for found in _of_batch(batch, told.get(batch.id, ()), book_lengths_of, today)
    )


def _told_of(farm: Farm) -> dict[Id, list[LogEntry]]:
    """Return the entries that stand by batch: sorted once, for there may be thousands of either."""
    told: dict[Id, list[LogEntry]] = {}
    for entry in standing(farm.log_entries):
        told.setdefault(entry.batch, []).append(entry)
    return told


@dataclass(frozen=True, slots=True, kw_only=True)
class ReasonTotal:
    """Stages that ended otherwise than planned for one reason: how many, and days longer (shorter) in all."""

    reason: Reason
    stages: int
    days: int


def reason_totals(found: Sequence[StageOutcome]) -> tuple[ReasonTotal, ...]:
    """Return totals by reason of all stages that took other days than planned, the most days first."""
    days: dict[Reason, list[int]] = defaultdict(list)
    for one in found:
        if one.difference_days:
            days[one.reason].append(one.difference_days)
    totals = (ReasonTotal(reason=reason, stages=len(each), days=sum(each)) for reason, each in days.items())
    return tuple(sorted(totals, key=_weight_of))


def _weight_of(total: ReasonTotal) -> tuple[int, str]:
    return -abs(total.days), total.reason.value


def by_the_book(batch: Batch) -> Batch:
    """Return a batch without days of its own, sown when it really was."""
    return replace(batch, **{f"{stage.value}_days": None for stage in Stage})  # type: ignore[arg-type]


def _of_batch(
    batch: Batch, entries: Sequence[LogEntry], book_lengths_of: LengthsOf, today: date
) -> Iterator[StageOutcome]:
    moments = moments_of(batch.id, entries)
    lengths = book_lengths_of(by_the_book(batch))
    reasons = {e.what: e.reason for e in standing(entries) if e.batch == batch.id}
    began: date | None = moments.sown_on or batch.sow_on
    planned_from = 0
    for number, stage in enumerate(_LEARNED_STAGES, start=1):
        at = tuple(Stage).index(stage) + (1 if stage is Stage.NURSERY else 0)
        planned, planned_from = lengths[at] - planned_from, lengths[at]
        end = moments.end_of(stage)
        over = end is not None or any(moments.end_of(later) for later in _LEARNED_STAGES[number:])
        # A stage that is over without its days written down says nothing, least of all that it still lasts.
        if began is not None and (end is not None or not over):
            days = ((end or today) - began).days
            yield StageOutcome(
                batch=batch.id,
                stage=stage,
                planned_days=planned,
                actual_days=None if end is None else days,
                so_far_days=max(days, 0) if end is None else days,
                reason=reasons.get(_HAPPENING[stage], Reason.NONE),
                began_on=began,
                ended_on=end,
            )
        if not over:
            return
        began = end


@dataclass(frozen=True, slots=True, kw_only=True)
class Learned:
    """What was learned for one crop, variety, quarter of the year and field of a batch.

    `field` is a duration [d] or a share [1] as batches have it; `quarter` 0 is January to March, by
    the month of sowing.
    """

    crop: str
    variety: str
    quarter: int
    field: str
    estimate: Estimate


def quarter_of(on: date) -> int:
    """Return the quarter of the year, 0 to 3."""
    return (on.month - 1) // 3


Key = tuple[str, str, int, str]


@dataclass(frozen=True, slots=True, kw_only=True)
class Observed:
    """What one batch shows of a field: seen, and what the book says of it; `over` when it is not going on."""

    batch: Batch
    seen: float
    by_the_book: float
    over: bool

    @property
    def ratio(self) -> float:
        """What was seen over what the book says."""
        return self.seen / self.by_the_book if self.by_the_book else 1.0


def learned(farm: Farm, found: Sequence[StageOutcome], catalogue: Catalogue) -> tuple[Learned, ...]:
    """Return all that the log teaches, durations as the book's days times the ratio that was seen.

    The ratio of actual to planned takes the season out that the forecast reckons with already.
    """
    rule = rule_of(catalogue)
    seen = sorted(observed(farm, found, catalogue).items())
    made = (_learned(key, one, catalogue, rule) for key, one in seen if any(each.over for each in one))
    return tuple(one for one in made if one is not None)


def observed(
    farm: Farm, found: Sequence[StageOutcome], catalogue: Catalogue
) -> dict[Key, tuple[Observed, ...]]:
    """Return what the log shows of each crop, variety, quarter and field, batch by batch."""
    batches = {batch.id: batch for batch in farm.batches}
    seen: dict[Key, list[Observed]] = defaultdict(list)
    for one in found:
        if one.planned_days > 0:
            batch, over = batches[one.batch], one.actual_days is not None
            days = one.so_far_days if one.actual_days is None else one.actual_days
            mine = Observed(batch=batch, seen=days, by_the_book=one.planned_days, over=over)
            seen[_key(batch, f"{one.stage.value}_days")].append(mine)
    told = _told_of(farm)
    for batch in (each for each in farm.batches if each.id in told):
        for field, share in _shares_of(moments_of(batch.id, told[batch.id]), batch):
            book = _book(catalogue, batch.crop, field)
            mine = Observed(batch=batch, seen=share, by_the_book=book, over=True)
            seen[_key(batch, field)].append(mine)
    return {key: tuple(each) for key, each in seen.items()}


def key_of(lesson: Learned) -> Key:
    """Return what a lesson is of, as `observed` has it."""
    return lesson.crop, lesson.variety, lesson.quarter, lesson.field


def _key(batch: Batch, field: str) -> Key:
    return batch.crop, batch.variety, quarter_of(batch.sow_on), field


def _shares_of(moments: Moments, batch: Batch) -> Iterator[tuple[str, float]]:
    if moments.seeds and moments.seedlings is not None:
        yield "germination_share", moments.seedlings / moments.seeds
    if moments.cleared_on is not None and moments.moved:
        yield "bed_survival_share", 1 - moments.culled / batch.plants


def _book(catalogue: Catalogue, crop: str, field: str) -> float:
    return float(getattr(catalogue.crops[crop], field, 0) or 0)


def weighed_ratios(seen: Sequence[Observed], rule: LearningRule) -> Weighed:
    """Return the ratio to the book that batches show, with what each counts in it; those over come first."""
    ratios = [each.ratio for each in seen if each.over]
    return weighed(1.0, ratios, rule, at_least=[each.ratio for each in seen if not each.over])


def _learned(key: Key, seen: Sequence[Observed], catalogue: Catalogue, rule: LearningRule) -> Learned | None:
    crop, variety, quarter, field = key
    book = _book(catalogue, crop, field)
    if not book:
        return None
    ratio, over = weighed_ratios(seen, rule), sum(each.over for each in seen)
    value = ratio.value * book
    estimate = Estimate(
        value=min(value, 1.0) if field in SHARES else value,
        book=book,
        n=over,
        unfinished=len(seen) - over,
        spread=ratio.spread * book,
    )
    return Learned(crop=crop, variety=variety, quarter=quarter, field=field, estimate=estimate)


def adopted(farm: Farm, lesson: Learned, today: date) -> tuple[tuple[Batch, Batch], ...]:
    """Return the batches still to be sown that a lesson is for, before and after it is taken up.

    Locked batches, and those for which the grower gave the value, stay as they are.
    """
    found = []
    for batch in farm.batches:
        fits = _key(batch, lesson.field) == (lesson.crop, lesson.variety, lesson.quarter, lesson.field)
        if fits and batch.sow_on > today and not batch.locked and getattr(batch, lesson.field) is None:
            value: Any = round(lesson.estimate.value, 2)
            if lesson.field not in SHARES:
                value = float(round(value))
            after = checked(batch, **{lesson.field: value})
            found.append((batch, after))
    return tuple(found)
