"""Asks how sure a figure is: for its range, for what draws make of it, for the chance of so much harvest."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from enum import Enum
from typing import Final, TypeVar

from planner.farm.crops import TargetUnit
from planner.forecast.chances.values import Chances
from planner.forecast.ranges.values import Ranges
from planner.forecast.why.chances import (
    Asked,
    why_chance,
    why_spread_of_feed,
    why_spread_of_harvest,
    why_spread_of_ratio,
)
from planner.forecast.why.ground import Ground, NoSuchFigureError
from planner.forecast.why.pick_span import why_pick_span
from planner.forecast.why.ranges import (
    why_range_of_demand,
    why_range_of_feed,
    why_range_of_harvest,
    why_range_of_ratio,
    why_range_of_supply,
)
from planner.forecast.why.values import Explanation, Subject, SubjectKind

_T = TypeVar("_T")


class SureKind(Enum):
    """In which way it is asked how sure a figure is."""

    RANGE = "range"
    DRAWS = "draws"
    CHANCE = "chance"


@dataclass(frozen=True, slots=True, kw_only=True)
class SureSubject:
    """How sure the figure `of` a forecast is; a chance is that of at least `amount` in the figure's unit."""

    kind: SureKind
    of: Subject
    amount: float = 0.0


def needs_ranges(asked: SureSubject) -> bool:
    """Tell whether an answer needs ranges; a batch is looked at alone, all other ways need draws."""
    return asked.kind is SureKind.RANGE and asked.of.kind is not SubjectKind.FIRST_PICK


def why_sure(
    asked: SureSubject, ground: Ground, *, ranges: Ranges | None = None, chances: Chances | None = None
) -> Explanation:
    """Return how sure a figure is, and why.

    Raises `NoSuchFigureError` for a figure that has no range or no draws, or where they were not worked out.
    """
    of = asked.of
    if asked.kind is SureKind.RANGE and of.kind is SubjectKind.FIRST_PICK:
        return why_pick_span(ground, ground.row(of.about))
    if asked.kind is SureKind.RANGE:
        return _known(_RANGES, of)(ground, _there(ranges, "ranges"), of)
    if asked.kind is SureKind.DRAWS:
        return _known(_DRAWS, of)(ground, _there(chances, "chances"), of)
    if of.kind not in _UNITS:
        raise NoSuchFigureError(f'a chance is one of a harvest, not of "{of.kind.value}".')
    wanted = Asked(crop=of.crop, week=of.week, amount=asked.amount, unit=_UNITS[of.kind])
    return why_chance(ground, _there(chances, "chances"), wanted)


def _known(known: Mapping[SubjectKind, _T], of: Subject) -> _T:
    if of.kind not in known:
        kinds = ", ".join(kind.value for kind in known)
        raise NoSuchFigureError(f'nothing tells how sure "{of.kind.value}" is; there are {kinds}.')
    return known[of.kind]


def _there(found: _T | None, what: str) -> _T:
    if found is None:
        raise NoSuchFigureError(f"{what} were not worked out yet.")
    return found


_UNITS: Final = {SubjectKind.HARVEST_PLANTS: TargetUnit.HEADS, SubjectKind.HARVEST_G: TargetUnit.KG}

_RANGES: Final[Mapping[SubjectKind, Callable[[Ground, Ranges, Subject], Explanation]]] = {
    SubjectKind.HARVEST_PLANTS: lambda ground, ranges, of: why_range_of_harvest(
        ground, ranges, of.crop, of.week, grams=False
    ),
    SubjectKind.HARVEST_G: lambda ground, ranges, of: why_range_of_harvest(
        ground, ranges, of.crop, of.week, grams=True
    ),
    SubjectKind.SUPPLY: lambda ground, ranges, of: why_range_of_supply(
        ground, ranges, of.about, of.week, of.element
    ),
    SubjectKind.DEMAND: lambda ground, ranges, of: why_range_of_demand(
        ground, ranges, of.about, of.week, of.element
    ),
    SubjectKind.RATIO: lambda ground, ranges, of: why_range_of_ratio(
        ground, ranges, of.about, of.week, of.element
    ),
    SubjectKind.FEED_MEAN: lambda ground, ranges, of: why_range_of_feed(ground, ranges, of.about, of.week),
}

_DRAWS: Final[Mapping[SubjectKind, Callable[[Ground, Chances, Subject], Explanation]]] = {
    SubjectKind.HARVEST_PLANTS: lambda ground, chances, of: why_spread_of_harvest(
        ground, chances, of.crop, of.week
    ),
    SubjectKind.HARVEST_G: lambda ground, chances, of: why_spread_of_harvest(
        ground, chances, of.crop, of.week, TargetUnit.KG
    ),
    SubjectKind.RATIO: lambda ground, chances, of: why_spread_of_ratio(
        ground, chances, of.about, of.week, of.element
    ),
    SubjectKind.FEED_MEAN: lambda ground, chances, of: why_spread_of_feed(ground, chances, of.about, of.week),
}
