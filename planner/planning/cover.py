"""Covers the weeks of a crop that is picked many times: how many plants to sow for which week.

Goes through the weeks in order. A week that is not covered by what stands gets a new sowing, just large
enough; its later picks count for the weeks to come, so plants are sown again when windows end. Must know
nothing of crops, days or places.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import combinations
from math import ceil
from typing import Generic, Protocol, TypeVar

import numpy as np

from planner.forecast.values import Floats

_NOISE = 1e-9
_SWEEPS = 200
"""Rounds of the least squares; what changes after so many is less than a plant."""


class Offer(Protocol):
    """A sowing that could be made: what one plant gives in each week, shape (week,)."""

    @property
    def per_plant(self) -> Floats:
        """What one plant gives by week."""


O = TypeVar("O", bound=Offer)  # noqa: E741 - an offer


@dataclass(frozen=True, slots=True, kw_only=True)
class Margin:
    """How far above what is wanted a new sowing may fill its week, and later weeks, as shares.

    A week that lacks no more than the share `slack` is not worth a sowing of its own.
    """

    headroom: float
    most_over: float
    slack: float = 0.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Sown(Generic[O]):
    """An offer that is taken up, for a week, with so many plants."""

    offer: O
    week: int
    plants: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Covered(Generic[O]):
    """What is sown, and weeks (week, missing) that no offer reaches."""

    sown: tuple[Sown[O], ...]
    missed: tuple[tuple[int, float], ...]


def cover(
    wanted: Floats, have: Floats, *, offers: Callable[[int], Sequence[O]], margin: Margin
) -> Covered[O]:
    """Return sowings that cover what is wanted, on top of what is there anyway.

    wanted and have of shape (week,), in one unit. `offers(week)` are the sowings whose picks begin in a
    week, best first.
    """
    there = have.copy()
    sown: list[Sown[O]] = []
    missed: list[tuple[int, float]] = []
    for week in np.flatnonzero(wanted > 0):
        if there[week] >= wanted[week] * (1.0 - margin.slack) - _NOISE:
            continue
        for one in _for_week(int(week), wanted, there, offers(int(week)), margin):
            there += one.offer.per_plant * one.plants
            sown.append(one)
        if there[week] < wanted[week] * (1.0 - margin.slack) - _NOISE:
            missed.append((int(week), float(wanted[week] - there[week])))
    trimmed = _trimmed(sown, wanted * (1.0 - margin.slack), there)
    return Covered(sown=tuple(_evened(trimmed, wanted, have, margin)), missed=tuple(missed))


def _trimmed(sown: Sequence[Sown[O]], least: Floats, there: Floats) -> list[Sown[O]]:
    """Return sowings without the plants that later ones have made needless; weeks stay covered as before."""
    kept: list[Sown[O]] = []
    for one in reversed(sown):
        per_plant = one.offer.per_plant
        weeks = np.flatnonzero((per_plant > 0) & (least > 0))
        # A week that is short as it is must not lose anything.
        spare = np.maximum(there[weeks] - least[weeks], 0.0)
        needless = int(np.floor((spare / per_plant[weeks]).min() + _NOISE)) if weeks.size else 0
        plants = max(one.plants - needless, 0)
        there -= per_plant * (one.plants - plants)
        if plants:
            kept.append(replace(one, plants=plants))
    return kept[::-1]


def _evened(sown: list[Sown[O]], wanted: Floats, have: Floats, margin: Margin) -> list[Sown[O]]:
    """Return the sowings with numbers that even out swings of weekly picks, if that makes more weeks even.

    Where picks fall three times into one week and twice into the next, covering the weeks with two gives
    the others far too much. Least squares over all weeks then leave some a little short and others a little
    over.
    """
    weeks = np.flatnonzero(wanted > 0)
    if not sown or _even_weeks(sown, wanted, have, margin) == weeks.size:
        return sown
    columns = np.stack([one.offer.per_plant[weeks] / wanted[weeks] for one in sown])
    plants = np.asarray([one.plants for one in sown], dtype=np.float64)
    missing = 1.0 - have[weeks] / wanted[weeks] - plants @ columns
    sizes = (columns**2).sum(axis=1)
    for _ in range(_SWEEPS):
        for row in np.flatnonzero(sizes > 0):
            step = max(float(columns[row] @ missing) / sizes[row], -plants[row])
            plants[row] += step
            missing -= step * columns[row]
    numbers = np.rint(plants).astype(np.int64).tolist()
    evened = [replace(one, plants=number) for one, number in zip(sown, numbers, strict=True) if number]
    better = _even_weeks(evened, wanted, have, margin) > _even_weeks(sown, wanted, have, margin)
    return evened if better else sown


def _even_weeks(sown: Sequence[Sown[O]], wanted: Floats, have: Floats, margin: Margin) -> int:
    """Return how many weeks come within the share `most_over` of what is wanted, above or below."""
    given = have + sum((one.offer.per_plant * one.plants for one in sown), start=np.zeros(wanted.size))
    even = np.abs(given - wanted) <= margin.most_over * wanted + _NOISE
    return int(np.count_nonzero(even & (wanted > 0)))


def _for_week(
    week: int, wanted: Floats, there: Floats, offers: Sequence[O], margin: Margin
) -> Sequence[Sown[O]]:
    """Return what to sow for one week: one sowing, or equal parts on several days where picks swing.

    A crop picked every three days gives three picks in one week and two in the next. Where one sowing
    would give later weeks too much, the plants are split over the days that even this out best.
    """
    usable = [offer for offer in offers if offer.per_plant[week] > 0]
    full = wanted[week] * (1.0 + margin.headroom) - there[week]
    best: list[Sown[O]] = []
    least_over = np.inf
    for parts in _parts(usable):
        plants = ceil(full / sum(float(offer.per_plant[week]) for offer in parts) - _NOISE)
        given = plants * np.sum([offer.per_plant for offer in parts], axis=0)
        over = _most_over(given, week, wanted, there)
        if over < least_over - _NOISE:
            best = [Sown(offer=offer, week=week, plants=plants) for offer in parts]
            least_over = over
        if over <= margin.most_over:
            break
    return best


def _parts(offers: list[O]) -> Iterator[list[O]]:
    """Yield single offers, best first, then ever more of them together."""
    for number in range(1, len(offers) + 1):
        yield from (list(chosen) for chosen in combinations(offers, number))


def _most_over(given: Floats, week: int, wanted: Floats, there: Floats) -> float:
    """Return by how much what is given exceeds what is wanted at most, of weeks that want no less."""
    weeks = np.flatnonzero((given > 0) & (wanted >= wanted[week]))
    weeks = weeks[weeks >= week]
    return float(((there[weeks] + given[weeks]) / wanted[weeks]).max() - 1.0) if weeks.size else 0.0
