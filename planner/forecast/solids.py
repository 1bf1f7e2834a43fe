"""Where the solids of the fish go: caught, settled under rafts, kept in gravel; and what comes back.

Nothing comes back that did not go in: what is caught leaves the loop unless a solids batch takes it, what
lies in beds rots there, and a batch's liquor goes back on its day. What lay in beds before the plan is not
known and counts for nothing; what a batch holds from then is taken to be like the plan's first week. Must
not know what dissolves in the water otherwise.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.site import Bed, Filter, Loop
from planner.farm.species import ELEMENTS, BedKind
from planner.farm.water import SolidsBatch
from planner.forecast.values import Floats, Ruler, SolidsBatchForecast, SolidsFate
from planner.science.elements import daily_release, released_share, split_solids

_NITROGEN: Final = ELEMENTS.index("n")
_COEFFICIENT: Final = "coefficient/solids/"


@dataclass(frozen=True, slots=True, kw_only=True)
class SolidsFigures:
    """Coefficients of solids; shares and rates have one entry per element.

    `aired_limit` and `still_limit` are the most that comes back with air and without [g/g]; under rafts
    it goes at `settled_rate_share` of the rate.
    """

    captured_share: float
    aired_limit: Floats
    still_limit: Floats
    rate_per_day: Floats
    settled_rate_share: float
    still_lost_share: Floats


def solids_figures(catalogue: Catalogue) -> SolidsFigures:
    """Return the coefficients as the catalogue has them."""

    def values(path: str) -> Floats:
        return np.asarray([catalogue.figure(path.format(element)).value for element in ELEMENTS])

    lost = np.zeros(len(ELEMENTS))
    lost[_NITROGEN] = catalogue.figure(f"{_COEFFICIENT}still_nitrogen_lost_share").value
    return SolidsFigures(
        captured_share=catalogue.figure("loop/solids_captured_share").value,
        aired_limit=values("element/{}/mineral_limit_share"),
        still_limit=values(_COEFFICIENT + "still_limit_share_{}"),
        rate_per_day=values("element/{}/mineral_rate_per_day"),
        settled_rate_share=catalogue.figure(f"{_COEFFICIENT}settled_rate_share").value,
        still_lost_share=lost,
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class SolidsSetup:
    """How a loop deals with its solids.

    `media_share` is of what the filters let pass; `fed_days_before` the days before the plan on which it
    had fish.
    """

    captured_share: float
    media_share: float
    siphoned_every_days: int | None
    fed_days_before: int
    batches: tuple[SolidsBatch, ...]


def solids_setup(farm: Farm, loop: Loop, figures: SolidsFigures, ruler: Ruler) -> SolidsSetup:
    """Return how a loop deals with its solids.

    Filters in a row each take their share of what the one before lets pass; without a share entered the
    usual one counts. What passes is taken to spread over rafts and gravel by their area: an assumption.
    """
    filters = [one for one in farm.filters if one.loop == loop.id]
    beds = [bed for bed in farm.beds if bed.loop == loop.id and bed.kind is not BedKind.NURSERY]
    return SolidsSetup(
        captured_share=_captured_share(filters, figures.captured_share),
        media_share=_media_share(beds),
        siphoned_every_days=loop.solids_settled_siphoned_every_days,
        fed_days_before=_fed_days_before(farm, loop, ruler),
        batches=tuple(batch for batch in farm.solids_batches if batch.loop == loop.id),
    )


def _fed_days_before(farm: Farm, loop: Loop, ruler: Ruler) -> int:
    tanks = {tank.id for tank in farm.tanks if tank.loop == loop.id}
    ages = [-ruler.day_of(group.stocked_on) for group in farm.fish_groups if group.tank in tanks]
    return max(ages, default=0)


def _captured_share(filters: Iterable[Filter], usual: float) -> float:
    shares = [one.solids_captured_share for one in filters if one.solids_captured_share is not None]
    return 1.0 - float(np.prod([1.0 - share for share in shares])) if shares else usual


def _media_share(beds: Sequence[Bed]) -> float:
    whole = sum(bed.area_m2 for bed in beds)
    gravel = sum(bed.area_m2 for bed in beds if bed.kind is BedKind.MEDIA)
    return min(gravel / whole, 1.0) if beds else 0.0


def solids_fate(solids_g: Floats, setup: SolidsSetup, figures: SolidsFigures, ruler: Ruler) -> SolidsFate:
    """Return where the solids of each day go; `solids_g` is of shape (element, day)."""
    split = split_solids(
        solids_g, captured_share=setup.captured_share, media_share_of_passed=setup.media_share
    )
    settled = _rotting(
        split.settled_in_raft_beds_g,
        limit=figures.still_limit,
        rate=figures.rate_per_day * figures.settled_rate_share,
        cleared_every=setup.siphoned_every_days,
    )
    gravel = _rotting(
        split.kept_in_media_beds_g, limit=figures.aired_limit, rate=figures.rate_per_day, cleared_every=None
    )
    before = _caught_before(split.captured_g, setup, ruler)
    kept = _Kept(np.hstack((before, split.captured_g)), settled.cleared_g, figures, ruler)
    for batch in sorted(setup.batches, key=_siphoned_on):
        kept.fill(batch)
    return SolidsFate(
        caught_g=split.captured_g,
        settled_g=split.settled_in_raft_beds_g,
        in_gravel_g=split.kept_in_media_beds_g,
        before_g=kept.before_g,
        gone_g=kept.gone_g,
        lost_g=kept.lost_g,
        liquor_g=kept.liquor_g,
        mineralised_g=settled.released_g + gravel.released_g,
        in_batches_g=kept.in_batches_g,
        lying_g=settled.lying_g + gravel.lying_g,
        batches=tuple(kept.batches),
    )


def _caught_before(caught_g: Floats, setup: SolidsSetup, ruler: Ruler) -> Floats:
    """Return what was caught before the plan, for as many days as batches that are still kept reach back."""
    reach = [
        batch.days - ruler.day_of(batch.siphoned_on)
        for batch in setup.batches
        if batch.returned_on is None or batch.returned_on >= ruler.start_on
    ]
    lead = max(0, *reach) if reach else 0
    fed = min(lead, max(setup.fed_days_before, 0))
    found = np.zeros((caught_g.shape[0], lead))
    found[:, lead - fed :] = caught_g[:, :DAYS_PER_WEEK].mean(axis=1, keepdims=True)
    return found


def _siphoned_on(batch: SolidsBatch) -> tuple[int, str]:
    return batch.siphoned_on.toordinal(), batch.code


@dataclass(frozen=True, slots=True, kw_only=True)
class _Rot:
    """Solids that lie in beds: given back and cleared away on each day, left at its end [g]."""

    released_g: Floats
    cleared_g: Floats
    lying_g: Floats


def _rotting(laid_g: Floats, *, limit: Floats, rate: Floats, cleared_every: int | None) -> _Rot:
    """Return how laid-down solids rot, and are cleared away at the start of every so many days."""
    elements, days = laid_g.shape
    length = min(cleared_every or days, days)
    spans = -(-days // length)
    padded = np.zeros((elements, spans * length))
    padded[:, :days] = laid_g
    # Nothing outlives a clearing, so all spans between clearings can be worked through side by side.
    by_span = np.moveaxis(padded.reshape(elements, spans, length), (0, 1, 2), (2, 1, 0))
    released = daily_release(by_span, final_share=limit, rate_per_day=rate)
    lying = np.maximum(np.cumsum(by_span - released, axis=0), 0.0)
    cleared = np.zeros_like(by_span)
    cleared[0, 1:] = lying[-1, :-1]
    return _Rot(
        released_g=_by_element(released, days),
        cleared_g=_by_element(cleared, days),
        lying_g=_by_element(lying, days),
    )


def _by_element(by_span: Floats, days: int) -> Floats:
    """Return an array (day of span, span, element) as (element, day)."""
    whole = np.moveaxis(by_span, (0, 1, 2), (2, 1, 0)).reshape(by_span.shape[2], -1)
    return np.ascontiguousarray(whole[:, :days])


class _Kept:
    """What is taken out of the loop, shared out among solids batches and the drain.

    What was caught begins some days before the plan, so that batches filled then are known.
    """

    def __init__(self, caught_g: Floats, cleared_g: Floats, figures: SolidsFigures, ruler: Ruler) -> None:
        self._figures, self._ruler = figures, ruler
        self._lead = caught_g.shape[1] - ruler.days
        self._caught_left, self._cleared_left = caught_g.copy(), np.zeros_like(caught_g)
        self._cleared_left[:, self._lead :] = cleared_g
        self._into = np.zeros_like(caught_g)
        self._out_of, self._discarded = np.zeros_like(cleared_g), np.zeros_like(cleared_g)
        self.lost_g, self.liquor_g = np.zeros_like(cleared_g), np.zeros_like(cleared_g)
        self.batches: list[SolidsBatchForecast] = []

    @property
    def gone_g(self) -> Floats:
        """What leaves the loop for good by day: taken by no batch, or left over when one is emptied."""
        return (self._caught_left + self._cleared_left)[:, self._lead :] + self._discarded

    @property
    def before_g(self) -> Floats:
        """What batches hold from days before the plan, on its first day."""
        found = np.zeros_like(self._discarded)
        found[:, 0] = self._into[:, : self._lead].sum(axis=1)
        return found

    @property
    def in_batches_g(self) -> Floats:
        """What batches hold, or will be filled with, at the end of each day."""
        flow = self._into[:, self._lead :] + self.before_g - self._out_of
        return np.maximum(np.cumsum(flow, axis=1), 0.0)

    def fill(self, batch: SolidsBatch) -> None:
        """Fill a batch with what no earlier one took, and give its liquor back on its day."""
        filled = self._ruler.day_of(batch.siphoned_on)
        taken = self._taken(filled + self._lead, batch.days)
        if batch.returned_on is not None and batch.returned_on < self._ruler.start_on:
            return
        self._into += taken
        gathered = taken.sum(axis=1)
        liquor, lost, discarded = self._given_back(batch, gathered, filled)
        self.batches.append(
            SolidsBatchForecast(
                batch=batch.id,
                gathered_g=tuple(gathered.tolist()),
                before_g=tuple(taken[:, : self._lead].sum(axis=1).tolist()),
                liquor_g=tuple(liquor.tolist()),
                lost_g=tuple(lost.tolist()),
                discarded_g=tuple(discarded.tolist()),
            )
        )

    def _taken(self, filled: int, days: int) -> Floats:
        """Return by day what is left to be taken, and take it: caught before a day, cleared up to it."""
        taken = np.zeros_like(self._into)
        for left, span in (
            (self._caught_left, _days_before(filled, days)),
            (self._cleared_left, _days_before(filled + 1, days)),
        ):
            taken[:, span] += left[:, span]
            left[:, span] = 0.0
        return taken

    def _given_back(self, batch: SolidsBatch, gathered: Floats, filled: int) -> tuple[Floats, Floats, Floats]:
        """Return liquor, loss and rest on the day of return; nothing when it is not within the plan."""
        nothing = np.zeros_like(gathered)
        day = None if batch.returned_on is None else self._ruler.day_of(batch.returned_on)
        if day is None or not 0 <= day < self._ruler.days:
            return nothing, nothing, nothing
        figures = self._figures
        released = gathered * released_share(
            np.full(gathered.shape, float(day - filled)),
            final_share=figures.aired_limit if batch.aerated else figures.still_limit,
            rate_per_day=figures.rate_per_day,
        )
        lost = nothing if batch.aerated else released * figures.still_lost_share
        liquor = (released - lost) * batch.returned_share
        discarded = gathered - lost - liquor
        self.lost_g[:, day] += lost
        self.liquor_g[:, day] += liquor
        self._discarded[:, day] += discarded
        self._out_of[:, day] += gathered
        return liquor, lost, discarded


def _days_before(day: int, many: int) -> slice:
    """Return so many days before a day, as far as they are known."""
    return slice(max(day - many, 0), max(day, 0))
