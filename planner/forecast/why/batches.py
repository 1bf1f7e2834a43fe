"""Why a batch needs so many seeds, takes so many days, and is first picked on that day."""

from __future__ import annotations

import math
from typing import Final

from planner.farm.crops import Batch, Stage
from planner.farm.species import HarvestKind
from planner.forecast.paces import BEFORE_DAYS
from planner.forecast.season import emergence_of
from planner.forecast.seed_lots import share_for
from planner.forecast.values import STAGES
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, worked
from planner.forecast.why.lots import is_reckoned, lot_answer
from planner.forecast.why.values import Explanation, Input, Note, NoteKind

_GROWING: Final = (Stage.GERMINATION, Stage.NURSERY, Stage.SPACING, Stage.BED)
_FIRST_PICK: Final = 3


def why_seeds(ground: Ground, row: int) -> Explanation:
    """Return why so many seeds are sown."""
    batch, table = ground.farm.batches[row], ground.forecast.batches
    stand, lot = _stand(ground, row), _lot_share(ground, batch)
    return Explanation(
        title="seeds",
        about=batch.code,
        value=float(table.seeds[row]),
        unit="seeds",
        formula=Formula.SEEDS,
        inputs=(
            entered("plants", batch.plants, "plants", batch.code),
            germination_input(ground, batch),
            worked("stand_share", 1.0 if stand is None else stand.value or 0.0, "1"),
            ground.figure("nursery_survival_share", f"crop/{batch.crop}/nursery_survival_share"),
        ),
        children=tuple(child for child in (lot, stand) if child is not None),
        notes=() if stand is not None else (Note(kind=NoteKind.UNKNOWN_CLIMATE),),
        on=batch.sow_on,
    )


def germination_input(ground: Ground, batch: Batch) -> Input:
    """Return the germination a batch goes by: its own, its seed lot's, or the book's."""
    own, about = batch.germination_share, batch.code
    share = share_for(ground.lot_shares, batch)
    if own is None and share is not None:
        if is_reckoned(ground.lot_shares[batch.seed_lot], batch.sow_on):
            return worked("germination_share", share, "1")
        own, about = share, ground.lots[batch.seed_lot].code
    return ground.own_or_figure("germination_share", own, f"crop/{batch.crop}/germination_share", about=about)


def _lot_share(ground: Ground, batch: Batch) -> Explanation | None:
    """Return why seed of a lot is taken to come up so well; None where packet, book or grower say it."""
    lot = ground.lot_shares.get(batch.seed_lot)
    if lot is None or batch.germination_share is not None or not is_reckoned(lot, batch.sow_on):
        return None
    return lot_answer(ground, lot, batch.sow_on)


def batch_input(ground: Ground, batch: Batch, name: str, *, as_name: str = "") -> Input:
    """Return a figure of the crop, or what the grower gave for the batch in its place."""
    return ground.own_or_figure(
        as_name or name, getattr(batch, name), f"crop/{batch.crop}/{name}", about=batch.code
    )


def _stand(ground: Ground, row: int) -> Explanation | None:
    """Return why that share of the tested germination comes up, None where warmth is not known."""
    table, batch = ground.forecast.batches, ground.farm.batches[row]
    sky = ground.paces.sky_of(int(table.pace[row]))
    if sky is None or sky.nursery_c is None:
        return None
    sow_day = table.sow_day[row : row + 1]
    share = float(ground.paces.stand(table.pace[row : row + 1], sow_day)[0])
    day = min(max(int(sow_day[0]) + BEFORE_DAYS, 0), sky.nursery_c.size - 1)
    least = ground.figure("least_share", "coefficient/season/least_stand_share")
    inputs = [worked("temperature_c", float(sky.nursery_c[day]), "°C"), least]
    printed = emergence_of(ground.catalogue, batch.crop)
    by_table = printed is not None and bool(printed.normal_percent)
    if not by_table:
        path = f"crop/{batch.crop}/germination_"
        inputs += [
            ground.figure("optimum_c", f"{path}optimum_c"),
            ground.figure("ceiling_c", f"{path}ceiling_c"),
        ]
    return Explanation(
        title="stand",
        about=batch.code,
        value=share,
        unit="1",
        formula=Formula.STAND_TABLE if by_table else Formula.STAND_LINE,
        inputs=tuple(inputs),
        notes=(Note(kind=NoteKind.LEAST_STAND),) if share <= least.value else (),
        on=batch.sow_on,
    )


def why_first_pick(ground: Ground, row: int) -> Explanation:
    """Return why the first pick is that many days after sowing."""
    table, batch = ground.forecast.batches, ground.farm.batches[row]
    first = int(table.ends[row, _FIRST_PICK])
    return Explanation(
        title="first pick",
        about=batch.code,
        value=float(first - int(table.sow_day[row])),
        unit="d",
        formula=Formula.SUM,
        children=tuple(why_stage(ground, row, stage) for stage in _GROWING),
        notes=_batch_notes(ground, row),
        on=ground.forecast.ruler.date_of(first),
    )


def _batch_notes(ground: Ground, row: int) -> tuple[Note, ...]:
    ripe = float(ground.forecast.batches.ripe[row])
    given_up = (Note(kind=NoteKind.GIVEN_UP, values=(("size_share", ripe),)),) if ripe < 1.0 else ()
    return (*given_up, *_season_notes(ground, row))


def _season_notes(ground: Ground, row: int) -> tuple[Note, ...]:
    sky = ground.paces.sky_of(int(ground.forecast.batches.pace[row]))
    if sky is None or not sky.is_known:
        return (Note(kind=NoteKind.BOOK_DURATIONS),)
    if sky.bed_c is None or sky.bed_mol is None:
        missing = "temperature" if sky.bed_c is None else "light"
        return (Note(kind=NoteKind.UNKNOWN_CLIMATE, values=(("missing", missing),)),)
    return ()


def why_stage(ground: Ground, row: int, stage: Stage) -> Explanation:
    """Return why a stage of a batch takes that many days."""
    table, batch = ground.forecast.batches, ground.farm.batches[row]
    column = STAGES.index(stage)
    start = int(table.sow_day[row] if column == 0 else table.ends[row, column - 1])
    days = int(table.ends[row, column]) - start
    book = _book_days(ground, batch, stage)
    picking = stage is Stage.PICKING and ground.catalogue.crops[batch.crop].harvest is not HarvestKind.SINGLE
    later = days - round(book.value)
    return Explanation(
        title=f"{stage.value} days",
        about=batch.code,
        value=float(days),
        unit="d",
        formula=Formula.PICKING_DAYS if picking else Formula.STAGE_DAYS,
        inputs=(book,) if picking else (book, worked("later_days", float(later), "d")),
        children=(_later(ground, row, start, days=days, later=later),) if later and not picking else (),
        notes=(*_stretch_note(ground, book, days), *_season_notes(ground, row)) if stage in _GROWING else (),
        on=ground.forecast.ruler.date_of(start),
    )


def _stretch_note(ground: Ground, book: Input, days: int) -> tuple[Note, ...]:
    """Return a note where a stage is as long as it may ever be."""
    longest = ground.catalogue.figure("coefficient/season/longest_stretch").value
    if days <= round(book.value) or days < math.ceil(round(book.value) * longest):
        return ()
    return (Note(kind=NoteKind.STRETCHED, values=(("times", longest),)),)


def _book_days(ground: Ground, batch: Batch, stage: Stage) -> Input:
    name = f"{stage.value}_days"
    single = ground.catalogue.crops[batch.crop].harvest is HarvestKind.SINGLE
    if stage is Stage.PICKING and single and batch.picking_days is None:
        return worked("days", 0.0, "d")
    return batch_input(ground, batch, name, as_name="days")


def _later(ground: Ground, row: int, start: int, *, days: int, later: int) -> Explanation:
    """Return why a stage takes longer than by the book: what warmth and light were like meanwhile."""
    table, batch = ground.forecast.batches, ground.farm.batches[row]
    return Explanation(
        title="later than by the book",
        about=batch.code,
        value=float(later),
        unit="d",
        formula=Formula.LATER_DAYS,
        inputs=_surroundings(ground, row, start, days),
        notes=delay_notes(ground, row),
        on=ground.forecast.ruler.date_of(int(table.ends[row, _FIRST_PICK])),
    )


def _surroundings(ground: Ground, row: int, start: int, days: int) -> tuple[Input, ...]:
    batch = ground.farm.batches[row]
    sky = ground.paces.sky_of(int(ground.forecast.batches.pace[row]))
    if sky is None:
        return ()
    span = slice(max(start - sky.first_day, 0), max(start + days - sky.first_day, 1))
    found = []
    if sky.bed_c is not None:
        found.append(worked("mean_air_c", float(sky.bed_c[span].mean()), "°C"))
        found += [
            ground.figure(name, f"crop/{batch.crop}/{name}") for name in ("base_c", "optimum_c", "ceiling_c")
        ]
    if sky.bed_mol is not None:
        found.append(worked("mean_light_mol", float(sky.bed_mol[span].mean()), "mol/m²/d"))
        name = "light_target_mol_per_m2_d"
        found.append(ground.figure(name, f"crop/{batch.crop}/{name}"))
        found.append(ground.figure("half_rate_mol", "coefficient/season/light_half_rate_mol"))
    return tuple(found)


def delay_notes(ground: Ground, row: int) -> tuple[Note, ...]:
    """Return a note of what makes a batch late; nothing where it is not."""
    delay = ground.forecaster.delay_of(ground.forecast, row)
    if delay is None:
        return ()
    values: tuple[tuple[str, float | str], ...] = (
        ("cause", delay.cause.value),
        ("days", float(delay.days)),
        ("by_light", float(delay.by_light)),
        ("by_warmth", float(delay.by_warmth)),
    )
    return (Note(kind=NoteKind.DELAY, values=values),)
