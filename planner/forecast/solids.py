"""Where the solids of the fish go: caught, settled under rafts, kept in gravel; and what comes back.

Nothing comes back that did not go in: what is caught leaves the loop unless a solids batch takes it, what
lies in beds rots there, and a batch's liquor goes back on its day. Solids of days before the plan are not
known and count for nothing. Must not know what dissolves in the water otherwise.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import Farm
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
    """How a loop deals with its solids; `media_share` is of what the filters let pass."""

    captured_share: float
    media_share: float
    siphoned_every_days: int | None
    batches: tuple[SolidsBatch, ...]


def solids_setup(farm: Farm, loop: Loop, figures: SolidsFigures) -> SolidsSetup:
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
        batches=tuple(batch for batch in farm.solids_batches if batch.loop == loop.id),
    )


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
    kept = _Kept(split.captured_g, settled.cleared_g, figures, ruler)
    for batch in sorted(setup.batches, key=_siphoned_on):
        kept.fill(batch)
    return SolidsFate(
        caught_g=split.captured_g,
        settled_g=split.settled_in_raft_beds_g,
        in_gravel_g=split.kept_in_media_beds_g,
        gone_g=kept.gone_g,
        lost_g=kept.lost_g,
        liquor_g=kept.liquor_g,
        mineralised_g=settled.released_g + gravel.released_g,
        in_batches_g=kept.in_batches_g,
        lying_g=settled.lying_g + gravel.lying_g,
        batches=tuple(kept.batches),
    )


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
    """What is taken out of the loop, shared out among solids batches and the drain."""

    def __init__(self, caught_g: Floats, cleared_g: Floats, figures: SolidsFigures, ruler: Ruler) -> None:
        self._figures, self._ruler = figures, ruler
        self._caught_left, self._cleared_left = caught_g.copy(), cleared_g.copy()
        self._into, self._out_of = np.zeros_like(caught_g), np.zeros_like(caught_g)
        self._discarded = np.zeros_like(caught_g)
        self.lost_g, self.liquor_g = np.zeros_like(caught_g), np.zeros_like(caught_g)
        self.batches: list[SolidsBatchForecast] = []

    @property
    def gone_g(self) -> Floats:
        """What leaves the loop for good by day: taken by no batch, or left over when one is emptied."""
        return self._caught_left + self._cleared_left + self._discarded

    @property
    def in_batches_g(self) -> Floats:
        """What batches hold, or will be filled with, at the end of each day."""
        return np.maximum(np.cumsum(self._into - self._out_of, axis=1), 0.0)

    def fill(self, batch: SolidsBatch) -> None:
        """Fill a batch with what no earlier one took, and give its liquor back on its day."""
        filled = self._ruler.day_of(batch.siphoned_on)
        caught, cleared = _days_before(filled, batch.days), _days_before(filled + 1, batch.days)
        gathered = self._caught_left[:, caught].sum(axis=1) + self._cleared_left[:, cleared].sum(axis=1)
        self._into[:, caught] += self._caught_left[:, caught]
        self._into[:, cleared] += self._cleared_left[:, cleared]
        self._caught_left[:, caught] = 0.0
        self._cleared_left[:, cleared] = 0.0
        liquor, lost, discarded = self._given_back(batch, gathered, filled)
        self.batches.append(
            SolidsBatchForecast(
                batch=batch.id,
                gathered_g=tuple(gathered.tolist()),
                liquor_g=tuple(liquor.tolist()),
                lost_g=tuple(lost.tolist()),
                discarded_g=tuple(discarded.tolist()),
            )
        )

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
    """Return so many days before a day, as far as they lie within the plan."""
    return slice(max(day - many, 0), max(day, 0))
