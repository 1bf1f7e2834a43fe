"""Where the nutrients in fish feed go: fish, solids, water; and what solids give back.

Arrays run over elements (and days before them); every formula also takes plain numbers.
What goes in comes out: each split sums to the feed. Must not know which element is which.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.science.limits import (
    BoolArray,
    FloatArray,
    T,
    Values,
    require_above,
    require_at_least,
    require_between,
    shaped_like,
)


def nitrogen_from_protein(protein: T, *, protein_per_nitrogen: float) -> T:
    """Nitrogen in crude protein [unit of protein].

    protein >= 0 [g, or share of feed]; protein_per_nitrogen [g/g] above 0. Source: tellbuscher2024.

    >>> nitrogen_from_protein(320.0, protein_per_nitrogen=6.25)
    51.2
    """
    require_at_least("protein", protein, low=0.0)
    require_above("protein per nitrogen", protein_per_nitrogen, low=0.0, unit="g/g")
    return shaped_like(protein, np.asarray(protein) / protein_per_nitrogen)


def protein_from_nitrogen(nitrogen: T, *, protein_per_nitrogen: float) -> T:
    """Crude protein that holds an amount of nitrogen [unit of nitrogen]. Source: tellbuscher2024.

    >>> round(protein_from_nitrogen(59.7, protein_per_nitrogen=6.25), 1)
    373.1
    """
    require_at_least("nitrogen", nitrogen, low=0.0)
    require_above("protein per nitrogen", protein_per_nitrogen, low=0.0, unit="g/g")
    return shaped_like(nitrogen, np.asarray(nitrogen) * protein_per_nitrogen)


def elements_in_feed(feed_g: T, *, content_g_per_g: Values) -> T:
    """Elements that come in with feed [g]. feed_g [g] >= 0; content_g_per_g [g/g] 0..1.

    >>> round(elements_in_feed(1000.0, content_g_per_g=0.011), 6)
    11.0
    """
    require_at_least("feed", feed_g, low=0.0, unit="g")
    require_between("content of feed", content_g_per_g, low=0.0, high=1.0, unit="g/g")
    return shaped_like(feed_g, np.asarray(feed_g) * content_g_per_g)


@dataclass(frozen=True, slots=True, kw_only=True)
class FeedSplit:
    """One feed's elements by where they go [g]; the three sum to the feed."""

    fish_g: FloatArray
    solids_g: FloatArray
    dissolved_g: FloatArray
    fish_capped: BoolArray
    """True where growth asked for more of the element than the feed held after solids: what is not
    explained by this feed was taken as zero left in the water, and the page should say so."""


def split_feed(
    feed_in_g: FloatArray, *, gain_g: Values, body_content_g_per_g: Values, solids_share: Values
) -> FeedSplit:
    """Split the elements of the feed into kept in fish, passed as solids, and dissolved [g].

    feed_in_g [g] >= 0, any shape; gain_g [g live weight] >= 0; body_content_g_per_g [g/g] 0..1;
    solids_share [share of feed] 0..1; all broadcast together. Fish take gain x body content, but never
    more than the feed less solids; the rest is dissolved. Source: tellbuscher2024, strauch2018 (shares).

    >>> feed = np.array([51.2, 11.0])
    >>> body, solids = np.array([0.026, 0.0048]), np.array([0.108, 0.5])
    >>> split = split_feed(feed, gain_g=625.0, body_content_g_per_g=body, solids_share=solids)
    >>> split.fish_g.round(2).tolist(), split.dissolved_g.round(2).tolist()
    ([16.25, 3.0], [29.42, 2.5])
    """
    require_at_least("element in feed", feed_in_g, low=0.0, unit="g")
    require_at_least("gain", gain_g, low=0.0, unit="g")
    require_between("body content", body_content_g_per_g, low=0.0, high=1.0, unit="g/g")
    require_between("solids share", solids_share, low=0.0, high=1.0)
    wanted = np.asarray(gain_g) * body_content_g_per_g
    feed, wanted = np.broadcast_arrays(np.asarray(feed_in_g, dtype=np.float64), wanted)
    solids = feed * solids_share
    left = np.maximum(feed - solids, 0.0)
    fish = np.minimum(wanted, left)
    return FeedSplit(fish_g=fish, solids_g=solids, dissolved_g=left - fish, fish_capped=wanted > left)


def total_ammonia_nitrogen(feed_g: T, *, protein_share: Values, nitrogen_factor: Values) -> T:
    """Total ammonia nitrogen given off by fish: feed x protein x factor [g N].

    feed_g [g] >= 0; protein_share [g/g] 0..1; nitrogen_factor [g TAN/g protein] >= 0, published from
    0.063 to 0.092. Source: ksu2021, timmonsebeling, redtilapia-ammonia.

    >>> round(total_ammonia_nitrogen(2000.0, protein_share=0.32, nitrogen_factor=0.092), 1)
    58.9
    """
    require_at_least("feed", feed_g, low=0.0, unit="g")
    require_between("protein share", protein_share, low=0.0, high=1.0, unit="g/g")
    require_at_least("ammonia factor", nitrogen_factor, low=0.0, unit="g/g")
    return shaped_like(feed_g, np.asarray(feed_g) * protein_share * nitrogen_factor)


def ammonia_share_of_feed_nitrogen(
    *, excreted_share: float, solids_share: float, solids_removed_share: float
) -> float:
    """Share of feed nitrogen that becomes ammonia: excreted, plus solids left to break down [0..1].

    All shares [0..1]. Source: fao589 appendix 4.

    >>> shares = dict(excreted_share=0.55, solids_share=0.15, solids_removed_share=0.60)
    >>> round(ammonia_share_of_feed_nitrogen(**shares), 6)
    0.61
    """
    require_between("excreted share", excreted_share, low=0.0, high=1.0)
    require_between("solids share", solids_share, low=0.0, high=1.0 - excreted_share)
    require_between("share of solids removed", solids_removed_share, low=0.0, high=1.0)
    return excreted_share + solids_share * (1.0 - solids_removed_share)


def ammonia_nitrogen_by_shares(
    feed_g: T, *, protein_share: Values, protein_per_nitrogen: float, ammonia_share: Values
) -> T:
    """Ammonia nitrogen from feed by the share of its nitrogen that becomes ammonia [g N].

    feed_g [g] >= 0; ammonia_share [share of feed nitrogen] 0..1. Source: fao589 appendix 4.

    >>> route = dict(protein_share=0.32, protein_per_nitrogen=6.25, ammonia_share=0.61)
    >>> round(ammonia_nitrogen_by_shares(200.0, **route), 2)
    6.25
    """
    require_at_least("feed", feed_g, low=0.0, unit="g")
    require_between("ammonia share", ammonia_share, low=0.0, high=1.0)
    nitrogen = nitrogen_from_protein(
        np.asarray(feed_g, dtype=np.float64) * protein_share, protein_per_nitrogen=protein_per_nitrogen
    )
    return shaped_like(feed_g, nitrogen * ammonia_share)


def gaseous_loss(nitrogen_g: T, *, loss_share: Values) -> T:
    """Nitrogen that leaves as gas by denitrification [g]. nitrogen_g [g] >= 0; loss_share 0..1.

    Source: yangkim2020 (whole systems), zou2016 (media beds).

    >>> gaseous_loss(50.0, loss_share=0.4)
    20.0
    """
    require_at_least("nitrogen", nitrogen_g, low=0.0, unit="g")
    require_between("gaseous loss", loss_share, low=0.0, high=1.0)
    return shaped_like(nitrogen_g, np.asarray(nitrogen_g) * loss_share)


def dry_solids(feed_g: T, *, solids_per_feed: Values) -> T:
    """Dry solids that fish leave from feed [g]. solids_per_feed [g/g] 0..1. Source: srac454.

    >>> dry_solids(200.0, solids_per_feed=0.25)
    50.0
    """
    require_at_least("feed", feed_g, low=0.0, unit="g")
    require_between("solids per feed", solids_per_feed, low=0.0, high=1.0, unit="g/g")
    return shaped_like(feed_g, np.asarray(feed_g) * solids_per_feed)


@dataclass(frozen=True, slots=True, kw_only=True)
class SolidsSplit:
    """Where solids end up [g]; the three sum to the solids."""

    captured_g: FloatArray
    settled_in_raft_beds_g: FloatArray
    kept_in_media_beds_g: FloatArray


def split_solids(solids_g: FloatArray, *, captured_share: float, media_share_of_passed: float) -> SolidsSplit:
    """Split solids into caught by the filter, settled under rafts and kept in media [g].

    solids_g [g] >= 0, any shape; captured_share [0..1]; media_share_of_passed [0..1]: of what passes
    the filter, the part that meets media beds. Source: fao589 appendix 4 (capture).

    >>> split = split_solids(np.array([10.0]), captured_share=0.6, media_share_of_passed=0.25)
    >>> parts = split.captured_g, split.settled_in_raft_beds_g, split.kept_in_media_beds_g
    >>> [float(part[0]) for part in parts]
    [6.0, 3.0, 1.0]
    """
    require_at_least("solids", solids_g, low=0.0, unit="g")
    require_between("captured share", captured_share, low=0.0, high=1.0)
    require_between("share passed to media beds", media_share_of_passed, low=0.0, high=1.0)
    captured = solids_g * captured_share
    passed = solids_g - captured
    media = passed * media_share_of_passed
    return SolidsSplit(captured_g=captured, settled_in_raft_beds_g=passed - media, kept_in_media_beds_g=media)


def released_share(days: T, *, final_share: Values, rate_per_day: Values) -> T:
    """Share of an element in solids that is back in the water: final x (1 - exp(-rate x days)) [0..1].

    days [d] >= 0 since the solids were laid down; final_share [0..1]; rate_per_day [1/d] >= 0. Rises with
    time and never passes the final share. Fitted loosely to delaide2018 and tellbuscher-data: an assumption.

    >>> round(released_share(14.0, final_share=0.5, rate_per_day=0.07), 3)
    0.312
    """
    require_at_least("days of mineralisation", days, low=0.0, unit="d")
    require_between("final released share", final_share, low=0.0, high=1.0)
    require_at_least("release rate", rate_per_day, low=0.0, unit="1/d")
    return shaped_like(days, np.asarray(final_share) * -np.expm1(-np.asarray(days) * rate_per_day))


def daily_release(laid_down_g: FloatArray, *, final_share: Values, rate_per_day: Values) -> FloatArray:
    """Release on each day from solids laid down on all days so far [g/d].

    laid_down_g [g], shape (day, ...), >= 0; final_share and rate_per_day broadcast with shape (...).
    What is laid down on a day starts to release the day after. Returns the shape of laid_down_g.

    >>> laid = np.array([[10.0], [0.0], [0.0]])
    >>> daily_release(laid, final_share=0.5, rate_per_day=0.07)[:, 0].round(3).tolist()
    [0.0, 0.338, 0.315]
    """
    require_at_least("solids laid down", laid_down_g, low=0.0, unit="g")
    require_between("final released share", final_share, low=0.0, high=1.0)
    require_at_least("release rate", rate_per_day, low=0.0, unit="1/d")
    rate = np.broadcast_to(np.asarray(rate_per_day, dtype=np.float64), laid_down_g.shape[1:])
    released = np.zeros_like(laid_down_g)
    labile = np.zeros(laid_down_g.shape[1:])
    at_once = _days_at_once(rate, laid_down_g.shape[0])
    ages = np.arange(at_once + 1, dtype=np.float64).reshape((-1,) + (1,) * rate.ndim)
    left_of_a_gram = np.exp(-ages * rate)
    for first in range(0, laid_down_g.shape[0], at_once):
        laid = laid_down_g[first : first + at_once] * final_share
        # What is left of all that was laid down up to a day: each gram weighed back to the first one.
        sums = labile + np.cumsum(laid / left_of_a_gram[1 : laid.shape[0] + 1], axis=0)
        lying = np.concatenate((labile[np.newaxis], sums * left_of_a_gram[1 : laid.shape[0] + 1]))
        released[first : first + at_once] = lying[:-1] * -np.expm1(-rate)
        labile = lying[-1]
    return released


_WEIGHT_SPAN: Final = 200.0
"""Weights in one sum may differ by e to this power: far from the largest number a float holds."""


def _days_at_once(rate: FloatArray, days: int) -> int:
    quickest = float(rate.max(initial=0.0))
    return max(days if quickest * days <= _WEIGHT_SPAN else int(_WEIGHT_SPAN / quickest), 1)
