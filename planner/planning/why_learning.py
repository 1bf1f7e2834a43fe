"""Why a stage took longer than planned, what was learned from it, and why a task is so late.

Gives codes and numbers; words are made from them elsewhere. Must know nothing of how they are shown.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.errors import UnknownFigureError
from planner.farm.crops import Batch, Stage
from planner.farm.species import HarvestKind
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import entered, figure_input, worked
from planner.forecast.why.values import Explanation, Input, Note, NoteKind
from planner.planning.learning import (
    SHARES,
    Learned,
    Observed,
    StageOutcome,
    Weighed,
    rule_of,
    weighed_ratios,
)

_RULES: Final = "coefficient/learning/"


def why_planned(outcome: StageOutcome, batch: Batch, catalogue: Catalogue) -> Explanation:
    """Return why a stage was planned to take so many days: the book's, and what warmth and light add."""
    book = tuple(_book_days(outcome, batch, catalogue))
    added = outcome.planned_days - sum(one.value for one in book)
    return Explanation(
        title=f"{outcome.stage.value} days",
        about=batch.code,
        value=float(outcome.planned_days),
        unit="d",
        formula=Formula.SUM,
        inputs=(*book, worked("added_by_warmth_and_light", added, "d")),
        on=outcome.began_on,
    )


def _book_days(outcome: StageOutcome, batch: Batch, catalogue: Catalogue) -> Iterable[Input]:
    """Yield the figures of the stage; the days of spacing belong to the nursery here."""
    stages = [outcome.stage, *([Stage.SPACING] if outcome.stage is Stage.NURSERY else [])]
    crop = catalogue.crops[batch.crop]
    for stage in stages:
        if stage is Stage.PICKING and crop.harvest is HarvestKind.SINGLE:
            continue
        name = f"{stage.value}_days"
        try:
            yield figure_input(catalogue, name, f"crop/{batch.crop}/{name}")
        except UnknownFigureError:
            continue


def why_actual(outcome: StageOutcome, batch: Batch, today: date) -> Explanation:
    """Return why a stage took so many days, or has lasted so long: what the log says of both its ends."""
    days = outcome.so_far_days if outcome.actual_days is None else outcome.actual_days
    end = outcome.ended_on or today
    told = (("first", outcome.began_on.isoformat()), ("last", end.isoformat()))
    lasts = () if outcome.ended_on is not None else (Note(kind=NoteKind.STILL_LASTS),)
    return Explanation(
        title="days by the log",
        about=batch.code,
        value=float(days),
        unit="d",
        formula=Formula.AS_ENTERED,
        inputs=(entered("value", days, "d", batch.code),),
        notes=(Note(kind=NoteKind.SEEN_BETWEEN, values=told), *lasts),
        on=outcome.ended_on,
    )


def why_longer(outcome: StageOutcome, batch: Batch, catalogue: Catalogue, today: date) -> Explanation | None:
    """Return why a stage took so many days more or fewer than planned; None while it lasts."""
    if outcome.difference_days is None or outcome.actual_days is None:
        return None
    return Explanation(
        title="days longer than planned",
        about=batch.code,
        value=float(outcome.difference_days),
        unit="d",
        formula=Formula.LONGER,
        inputs=(
            worked("actual_days", outcome.actual_days, "d"),
            worked("planned_days", outcome.planned_days, "d"),
        ),
        children=(why_actual(outcome, batch, today), why_planned(outcome, batch, catalogue)),
        on=outcome.ended_on,
    )


def why_learned(lesson: Learned, seen: Sequence[Observed], catalogue: Catalogue) -> Explanation:
    """Return why a value was learned: the book's, drawn toward what each batch showed.

    `seen` is what the log shows of the lesson (`planner.planning.learning.observed`).
    """
    rule = rule_of(catalogue)
    found, share = weighed_ratios(seen, rule), lesson.field in SHARES
    return Explanation(
        title="value learned",
        about=_about(lesson, catalogue),
        value=lesson.estimate.value,
        unit=_unit(lesson),
        formula=Formula.LEARNED_SHARE if share else Formula.LEARNED,
        inputs=(
            why_book(lesson, catalogue),
            figure_input(catalogue, "book_weight", f"{_RULES}book_weight_batches"),
            worked("weights", sum(found.weights), ""),
            worked("weighed_ratios", _weighed(found), ""),
        ),
        children=_batches(seen, found, unit=_unit(lesson)),
    )


def _about(lesson: Learned, catalogue: Catalogue) -> str:
    name = catalogue.crops[lesson.crop].name
    return f"{name}, {lesson.variety}" if lesson.variety else name


def _unit(lesson: Learned) -> str:
    return "1" if lesson.field in SHARES else "d"


def why_book(lesson: Learned, catalogue: Catalogue) -> Input:
    """Return the book's value that a lesson began with."""
    return figure_input(catalogue, "book", f"crop/{lesson.crop}/{lesson.field}")


def _weighed(found: Weighed) -> float:
    return sum(weight * ratio for weight, ratio in zip(found.weights, found.told, strict=True))


def _batches(seen: Sequence[Observed], found: Weighed, *, unit: str) -> tuple[Explanation, ...]:
    """Return what each batch showed, by code; one that lasts less than the value says nothing."""
    over = [each for each in seen if each.over]
    lasting = [each for each in seen if not each.over and each.ratio in found.told[len(over) :]]
    pairs = zip((*over, *lasting), found.weights, strict=True)
    parts = [_batch(one, weight, unit=unit) for one, weight in pairs]
    return tuple(sorted(parts, key=_code))


def _code(part: Explanation) -> str:
    return part.about


def _batch(one: Observed, weight: float, *, unit: str) -> Explanation:
    lasts = () if one.over else (Note(kind=NoteKind.STILL_LASTS),)
    bare = Explanation(
        title="batch that was seen",
        about=one.batch.code,
        value=one.ratio,
        unit="1",
        formula=Formula.SEEN_RATIO,
        inputs=(
            entered("seen", one.seen, unit, one.batch.code),
            worked("by_the_book", one.by_the_book, unit),
        ),
        notes=(Note(kind=NoteKind.WEIGHT_OF, values=(("weight", weight),)), *lasts),
        on=one.batch.sow_on,
    )
    return figured(bare)


def why_spread(lesson: Learned, seen: Sequence[Observed], catalogue: Catalogue) -> Explanation:
    """Return why what was seen spreads so much."""
    found = weighed_ratios(seen, rule_of(catalogue))
    least = figure_input(catalogue, "least_spread_share", f"{_RULES}least_spread_share")
    return Explanation(
        title="spread of what was seen",
        about=_about(lesson, catalogue),
        value=lesson.estimate.spread,
        unit=_unit(lesson),
        formula=Formula.SPREAD_SEEN,
        inputs=(worked("robust_spread", found.spread, "1"), least, why_book(lesson, catalogue)),
        children=_batches(seen, found, unit=_unit(lesson)),
    )
