"""Why seed of a lot is taken to come up so well: packet or book, moved by what was counted."""

from __future__ import annotations

from datetime import date
from typing import Final

from planner.farm.fields import Id
from planner.forecast.seed_lots import PATH, Caution, LotShare
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, worked
from planner.forecast.why.values import Explanation, Note, NoteKind

_CAUTIONS: Final = {Caution.OLD: NoteKind.OLD_SEED, Caution.PRIMED: NoteKind.PRIMED_SEED}


def is_reckoned(lot: LotShare, on: date) -> bool:
    """Tell whether a lot's share on a day is more than what its packet says."""
    return lot.seeds > 0 or bool(lot.cautions(on))


def why_lot(ground: Ground, about: Id, on: date) -> Explanation:
    """Return why seed of a lot sown on a day is taken to come up so well.

    Raises `NoSuchFigureError` for a lot that is not there.
    """
    lot = ground.lot_shares.get(about)
    if lot is None:
        raise NoSuchFigureError(f"there is no seed lot {about}.")
    return lot_answer(ground, lot, on)


def lot_answer(ground: Ground, lot: LotShare, on: date) -> Explanation:
    """Return why seed of a lot sown on a day is reckoned with as it is, carefully or not."""
    likely = _likely_share(ground, lot, on)
    cautions = lot.cautions(on)
    if not cautions:
        return likely
    return Explanation(
        title="germination",
        about=likely.about,
        value=lot.share(on),
        unit="1",
        formula=Formula.LOT_SHARE_CAREFUL,
        inputs=(
            worked("mean", lot.mean, "1"),
            ground.figure("caution_spreads", f"{PATH}lot_caution_spreads"),
            ground.figure("prior_seeds", f"{PATH}lot_prior_seeds"),
            entered("seeds_counted", lot.seeds, "seeds", likely.about),
        ),
        children=(likely,),
        notes=tuple(Note(kind=_CAUTIONS[caution]) for caution in cautions),
        on=on,
    )


def _likely_share(ground: Ground, lot: LotShare, on: date) -> Explanation:
    code = ground.lots[lot.lot].code
    book = f"crop/{ground.lots[lot.lot].crop}/germination_share"
    counted = (("tests", float(lot.tests)), ("batches", float(lot.batches)), ("n", float(lot.seeds)))
    return Explanation(
        title="likely germination",
        about=code,
        value=lot.mean,
        unit="1",
        formula=Formula.LOT_SHARE,
        inputs=(
            ground.own_or_figure("prior_share", lot.prior_share if lot.by_packet else None, book, about=code),
            ground.figure("prior_seeds", f"{PATH}lot_prior_seeds"),
            entered("came_up", lot.came_up, "seeds", code),
            entered("seeds_counted", lot.seeds, "seeds", code),
        ),
        notes=(Note(kind=NoteKind.LOT_COUNTS, values=counted),),
        on=on,
    )
