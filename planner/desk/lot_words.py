"""What is known of a seed lot, in words. Must know nothing of widgets."""

from __future__ import annotations

from datetime import date
from typing import Final

from planner.desk.say import tr
from planner.desk.words import number_words
from planner.forecast.seed_lots import Caution, LotShare

_PERCENT: Final = 100.0
CAUTION_WORDS: Final = {
    Caution.OLD: "Old lot: test it. Until then more seeds are sown.",
    Caution.PRIMED: "Primed seed keeps less long: test it. More seeds are sown.",
}


def lot_notes(lot: LotShare, on: date) -> list[str]:
    """Return what seed of a lot sown on a day is reckoned with: counts with n, and why to be careful."""
    told = [tr(CAUTION_WORDS[caution]) for caution in lot.cautions(on)]
    if lot.seeds:
        told.append(count_words(lot))
    return told


def count_words(lot: LotShare) -> str:
    """Return how many seeds of a lot were counted, and how many of them came up."""
    return tr(
        "{came} of {seeds} came up: {tests} tests, {batches} batches",
        came=number_words(lot.came_up),
        seeds=number_words(lot.seeds),
        tests=lot.tests,
        batches=lot.batches,
    )


def share_words(lot: LotShare, on: date) -> str:
    """Return the share that is reckoned with, and its spread when the lot was counted: "86 % ± 4"."""
    share = lot.share(on)
    percent = number_words(_PERCENT * (lot.prior_share if share is None else share), digits=0)
    if not lot.seeds:
        return tr("{percent} %", percent=percent)
    return tr("{percent} % ± {spread}", percent=percent, spread=number_words(_PERCENT * lot.sd, digits=0))
