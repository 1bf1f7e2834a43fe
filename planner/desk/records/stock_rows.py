"""Seed lots with what is known of them, and meters with their calibrations, as ready rows. Pure."""

from __future__ import annotations

from datetime import date

from planner.desk.lot_words import CAUTION_WORDS, count_words, share_words
from planner.desk.outlook import Outlook
from planner.desk.pages import Ask
from planner.desk.records.answers import lot_asks, meter_asks
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.why.entered import of_figure
from planner.desk.words import NONE, choice_words, day_words, number_words
from planner.farm.crops import SeedLot
from planner.farm.meters import MeterKind
from planner.forecast.seed_lots import LotShare, lot_shares
from planner.forecast.water.meters import MeterState, meter_book


def lot_columns() -> tuple[Column, ...]:
    """Return the columns of the seed lots."""
    titles = (tr("Lot"), tr("Crop"), tr("Supplier"), tr("Seed"), tr("Packed or bought"))
    more = (tr("Comes up"), tr("Counted"), tr("Seeds left"), tr("Advice"))
    return tuple(Column(title=title, numeric=title == tr("Seeds left")) for title in (*titles, *more))


def lot_rows(outlook: Outlook, today: date) -> tuple[Row, ...]:
    """Return one row for each lot, with the share its seed is reckoned with today and n."""
    shares = lot_shares(outlook.farm, outlook.catalogue)
    return tuple(_lot_row(lot, shares[lot.id], outlook, today) for lot in outlook.farm.seed_lots)


def _lot_row(lot: SeedLot, share: LotShare, outlook: Outlook, today: date) -> Row:
    crop = outlook.crop_name(lot.crop)
    kinds = [tr("pelleted")] * lot.pelleted + [tr("primed")] * lot.primed
    day = lot.packed_on or lot.bought_on
    texts = (
        lot.code,
        f"{crop}, {lot.variety}" if lot.variety else crop,
        lot.supplier or NONE,
        ", ".join(kinds) or tr("plain"),
        day_words(day) if day else NONE,
        share_words(share, today),
        count_words(share) if share.seeds else tr("not tested yet"),
        NONE if lot.seeds_left is None else number_words(lot.seeds_left),
        " ".join(tr(CAUTION_WORDS[caution]) for caution in share.cautions(today)),
    )
    reckoned = share.share(today) or share.prior_share
    sort = (*texts[:4], day.toordinal() if day else 0, reckoned, share.seeds, lot.seeds_left or 0, texts[8])
    asks = lot_asks(lot, share, today)
    return Row(id=lot.id, texts=texts, sort=sort, spoken=", ".join(texts), asks=asks)


def meter_columns() -> tuple[Column, ...]:
    """Return the columns of the meters."""
    titles = (tr("Meter"), tr("Measures"), tr("Factor"), tr("Calibrated"), tr("Due"), tr("State"))
    return tuple(Column(title=title) for title in titles)


def meter_rows(outlook: Outlook, today: date) -> tuple[Row, ...]:
    """Return one row for each meter, with its last calibration and the next."""
    factor = of_figure(outlook.catalogue, "loop/tds_per_ec")
    return tuple(
        _meter_row(state, meter_asks(state, today, factor if _counts_salts(state) else None))
        for state in meter_book(outlook.farm).states(today)
    )


def _counts_salts(state: MeterState) -> bool:
    return state.meter.kind in (MeterKind.EC, MeterKind.TDS, MeterKind.PH_EC)


def _meter_row(state: MeterState, asks: tuple[Ask | None, ...]) -> Row:
    meter = state.meter
    texts = (
        meter.name,
        choice_words(meter.kind),
        NONE if meter.factor is None else number_words(meter.factor),
        day_words(state.last_on) if state.last_on else tr("never"),
        day_words(state.due_on) if state.due_on else tr("no interval set"),
        _state_words(state),
    )
    days = (
        state.last_on.toordinal() if state.last_on else 0,
        state.due_on.toordinal() if state.due_on else 0,
    )
    sort = (texts[0], texts[1], meter.factor or 0.0, *days, state.days_late)
    return Row(id=meter.id, texts=texts, sort=sort, spoken=", ".join(texts), asks=asks)


def _state_words(state: MeterState) -> str:
    if state.due_on is None:
        return tr("not watched")
    if state.last_on is None:
        return tr("never calibrated: what it reads is doubtful")
    if state.days_late > 0:
        return tr("overdue by {days} d: what it reads is doubtful", days=state.days_late)
    return tr("due in {days} d", days=-state.days_late)
