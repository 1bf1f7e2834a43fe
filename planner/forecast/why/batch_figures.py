"""Why a plant of a batch gives so much, how many live, what the batch wants of an element, how late it is."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

from planner.farm.crops import Stage
from planner.farm.site import Bed
from planner.forecast.delays import StageDelay, stage_delays
from planner.forecast.formed import formed_per_plant
from planner.forecast.why.batches import batch_input, delay_notes, why_first_pick, why_stage
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, week_days, worked
from planner.forecast.why.plants import batch_demand, plant_yield
from planner.forecast.why.values import Explanation, Note, NoteKind

_FIRST_PICK: Final = 3


def why_yield(ground: Ground, row: int) -> Explanation:
    """Return why a plant of a batch gives so much over all its picks [g]; smaller where it is given up."""
    of_yield, children = plant_yield(ground, row)
    ripe = float(ground.forecast.batches.ripe[row])
    return Explanation(
        title="yield of a plant",
        about=ground.farm.batches[row].code,
        value=of_yield.value * ripe,
        unit="g",
        formula=Formula.YIELD,
        inputs=(of_yield, worked("size_share", ripe, "1")),
        children=children,
        notes=(Note(kind=NoteKind.GIVEN_UP, values=(("size_share", ripe),)),) if ripe < 1.0 else (),
    )


def why_heads(ground: Ground, row: int) -> Explanation:
    """Return why so many plants of a batch live to be picked, in whole plants; none that never came up."""
    batch = ground.farm.batches[row]
    lives = batch_input(ground, batch, "bed_survival_share")
    up = float(ground.forecast.batches.ripe[row] > 0.0)
    return Explanation(
        title="plants that live",
        about=batch.code,
        value=round(batch.plants * lives.value) * up,
        unit="plants",
        formula=Formula.HEADS,
        inputs=(
            entered("plants", batch.plants, "plants", batch.code),
            lives,
            worked("came_up", up, "1"),
        ),
        on=ground.forecast.ruler.date_of(int(ground.forecast.batches.ends[row, _FIRST_PICK])),
    )


def why_batch_demand(ground: Ground, row: int, week: int, element: int) -> Explanation:
    """Return why a batch wants so much of an element in a week [g]."""
    forecast = ground.forecast
    formed = formed_per_plant(forecast.batches, ground.paces, forecast.ruler, [row])
    return batch_demand(ground, row, float(formed[0, week_days(week)].sum()), week, element)


def why_late(ground: Ground, row: int) -> Explanation:
    """Return why the first pick is so many days later than by the book, below 0 when it is earlier."""
    first = why_first_pick(ground, row)
    late = stage_delays(ground.forecast.batches, ground.paces, row)
    days = float(sum(one.days for one in late))
    return Explanation(
        title="later than by the book",
        about=first.about,
        value=days,
        unit="d",
        formula=Formula.FIRST_PICK_LATE,
        inputs=(
            worked("days_to_first_pick", first.value or 0.0, "d"),
            worked("book_days_to_first_pick", (first.value or 0.0) - days, "d"),
        ),
        children=tuple(_stage_late(ground, row, one) for one in late),
        notes=(*delay_notes(ground, row), *_layer_notes(ground, row), *first.notes),
        on=first.on,
    )


def _stage_late(ground: Ground, row: int, late: StageDelay) -> Explanation:
    stage = why_stage(ground, row, late.stage)
    told = () if late.cause is None else (("cause", late.cause.value),)
    kind = NoteKind.QUICKER if late.cause is None else NoteKind.SLOWED_BY
    return Explanation(
        title=f"{_STAGES[late.stage]} later than by the book",
        about=stage.about,
        value=float(late.days),
        unit="d",
        formula=Formula.STAGE_LATE,
        inputs=(
            worked("days", stage.value or 0.0, "d"),
            worked("book_days", (stage.value or 0.0) - late.days, "d"),
        ),
        children=(stage,),
        notes=(Note(kind=kind, values=told),) if late.cause is not None or late.days < 0 else (),
        on=stage.on,
    )


_STAGES: Final = {
    Stage.GERMINATION: "germination",
    Stage.NURSERY: "nursery",
    Stage.SPACING: "middle spacing",
    Stage.BED: "bed",
}


def _layer_notes(ground: Ground, row: int) -> Iterator[Note]:
    """Yield which beds get less light than there is under the roof, and which get more from lamps."""
    batch = ground.farm.batches[row]
    runs = dict.fromkeys(run.bed for run in ground.farm.placements if run.batch == batch.id)
    about = [bed for bed in ground.farm.beds if bed.id in runs or bed.id == batch.bed]
    for bed in about:
        yield from _light_notes(bed)


def _light_notes(bed: Bed) -> Iterator[Note]:
    if bed.light_share < 1.0:
        yield Note(kind=NoteKind.UNDER_LAYER, values=(("bed", bed.name), ("share", bed.light_share)))
    if bed.lamp_mol_per_m2_d > 0.0:
        yield Note(kind=NoteKind.UNDER_LAMPS, values=(("bed", bed.name), ("mol", bed.lamp_mol_per_m2_d)))


def check_alive(ground: Ground, row: int, week: int) -> None:
    """Raise `NoSuchFigureError` for a week in which a batch does not grow."""
    table, ruler, days = ground.forecast.batches, ground.forecast.ruler, week_days(week)
    first, end = int(table.sow_day[row]), table.pick_days(row)[1]
    if days.stop <= first or days.start >= end:
        code = ground.farm.batches[row].code
        span = f"{ruler.date_of(first).isoformat()} to {ruler.date_of(end - 1).isoformat()}"
        raise NoSuchFigureError(f"{code} does not grow in {ruler.week_name(week)}; it does from {span}.")
