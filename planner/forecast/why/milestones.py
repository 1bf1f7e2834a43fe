"""Why a batch enters and leaves a stage and frees its places when it does, how far it is, what is picked."""

from __future__ import annotations

from typing import Final

from planner.farm.crops import Stage
from planner.farm.species import HarvestKind
from planner.forecast.profiles import picks_by_day
from planner.forecast.values import STAGES
from planner.forecast.why.batches import batch_input, why_stage
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, worked
from planner.forecast.why.values import Explanation

_PICKING: Final = STAGES.index(Stage.PICKING)
_FIRST_TITLES: Final = {
    Stage.GERMINATION: "days to germination",
    Stage.NURSERY: "days to the nursery",
    Stage.SPACING: "days to the middle spacing",
    Stage.BED: "days to the bed",
    Stage.PICKING: "days to the first pick",
    Stage.CLEARING: "days to clearing",
}
_LAST_TITLES: Final = {
    Stage.GERMINATION: "days to the last of germination",
    Stage.NURSERY: "days to the last in the nursery",
    Stage.SPACING: "days to the last at the middle spacing",
    Stage.BED: "days to the last in the bed before picking",
    Stage.PICKING: "days to the last pick",
    Stage.CLEARING: "days to the last of clearing",
}
_DAY_TITLES: Final = {
    Stage.GERMINATION: "day of germination",
    Stage.NURSERY: "day in the nursery",
    Stage.SPACING: "day at the middle spacing",
    Stage.BED: "day in the bed",
    Stage.PICKING: "day of picking",
    Stage.CLEARING: "day of clearing",
}


def why_stage_first(ground: Ground, row: int, stage: Stage) -> Explanation:
    """Return why a stage begins so many days after sowing, and on which day: what comes before it."""
    before = STAGES[: STAGES.index(stage)]
    return _days_of(ground, row, before, title=_FIRST_TITLES[stage])


def why_stage_last(ground: Ground, row: int, stage: Stage) -> Explanation:
    """Return why the last day of a stage is so many days after sowing; a single harvest takes a day."""
    first = why_stage_first(ground, row, stage)
    of_it = why_stage(ground, row, stage)
    days = max(_days(of_it), 1.0 if stage is Stage.PICKING else 0.0)
    value = _days(first) + days - 1.0
    return Explanation(
        title=_LAST_TITLES[stage],
        about=first.about,
        value=value,
        unit="d",
        formula=Formula.LAST_DAY,
        inputs=(worked("days_before", _days(first), "d"), worked("days_of_it", days, "d")),
        children=(first, of_it),
        on=ground.forecast.ruler.date_of(int(ground.forecast.batches.sow_day[row]) + int(value)),
    )


def why_freed(ground: Ground, row: int) -> Explanation:
    """Return why the places of a batch are free again so many days after sowing."""
    return _days_of(ground, row, STAGES, title="days until places are free")


def _days_of(ground: Ground, row: int, stages: tuple[Stage, ...], *, title: str) -> Explanation:
    parts = tuple(why_stage(ground, row, stage) for stage in stages)
    value = sum(_days(part) for part in parts)
    sown = int(ground.forecast.batches.sow_day[row])
    return Explanation(
        title=title,
        about=ground.farm.batches[row].code,
        value=value,
        unit="d",
        formula=Formula.SUM,
        children=parts,
        on=ground.forecast.ruler.date_of(sown + int(value)),
    )


def _days(part: Explanation) -> float:
    return part.value or 0.0


def why_stage_day(ground: Ground, row: int, stage: Stage, day: int) -> Explanation:
    """Return why a day is that day of a stage, such as the twelfth in the bed. `day` is one of the ruler."""
    first = why_stage_first(ground, row, stage)
    since = day - int(ground.forecast.batches.sow_day[row])
    return Explanation(
        title=_DAY_TITLES[stage],
        about=first.about,
        value=since - _days(first) + 1.0,
        unit="d",
        formula=Formula.DAY_OF,
        inputs=(worked("days_since_sowing", since, "d"), worked("days_before", _days(first), "d")),
        children=(first, why_stage(ground, row, stage)),
        on=ground.forecast.ruler.date_of(day),
    )


def why_picked(ground: Ground, row: int, day: int) -> Explanation:
    """Return why so many plants are to be picked on a day: all that live, or their share of the day.

    Raises `NoSuchFigureError` on a day without picking.
    """
    batch, table = ground.farm.batches[row], ground.forecast.batches
    profile = ground.forecast.profiles[int(table.profile[row])]
    shares = picks_by_day(profile)
    offset = day - int(table.ends[row, _PICKING - 1])
    if not 0 <= offset < shares.size or not shares[offset]:
        raise NoSuchFigureError(f"{batch.code} is not picked on that day.")
    share = float(shares[offset]) if profile.crop.harvest is HarvestKind.SINGLE else 1.0
    lives = batch_input(ground, batch, "bed_survival_share")
    return Explanation(
        title="plants to pick",
        about=batch.code,
        value=round(batch.plants * lives.value) * share,
        unit="plants",
        formula=Formula.PICKED,
        inputs=(
            entered("plants", batch.plants, "plants", batch.code),
            lives,
            worked("share_of_the_day", share, "1"),
        ),
        on=ground.forecast.ruler.date_of(day),
    )
