"""How wide each thing varies that draws leave to chance, and on whose word: a figure's range, or custom."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Final

from planner.farm.crops import Batch
from planner.forecast.formed import pick_share
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, week_days, worked
from planner.forecast.why.many import largest
from planner.forecast.why.values import Explanation, Input

PATH: Final = "coefficient/chances/"
_STAGES: Final = ("germination", "nursery", "spacing", "bed")

LUCK: Final[Mapping[str, str]] = {
    "counted": "seeds and plants that live one by one",
    "germination_sd": "germination of the lot",
    "nursery_sd": "survival in the nursery",
    "bed_sd": "survival in the bed",
    "days_sd": "days to the first pick",
    "yield_cv": "yield",
}


def spreads_of_week(ground: Ground, crop: str, week: int, name: str) -> tuple[Explanation, ...]:
    """Return how wide a thing varies for the batches picked in a week, one answer for those alike."""
    if name == "counted":
        return ()
    days = week_days(week)
    found: dict[tuple[object, ...], Explanation] = {}
    for row, batch in enumerate(ground.farm.batches):
        if batch.crop != crop or not pick_share(
            ground.forecast, row, first_day=days.start, last_day=days.stop
        ):
            continue
        one = _spread(ground, row, batch, name)
        found.setdefault((one.formula, one.value), one)
    kept, _, _ = largest(found.values())
    return kept


def _spread(ground: Ground, row: int, batch: Batch, name: str) -> Explanation:
    if name == "days_sd":
        return _days_spread(ground, row, batch)
    if name == "yield_cv":
        path = f"crop/{batch.crop}/yield_g_per_plant"
        if batch.yield_g_per_plant is not None:
            return _own(ground, batch, "spread of yield", "own_yield_cv")
        return _of_figure(ground, batch.code, "spread of yield", path, formula=Formula.DEVIATION_SHARE)
    share = {
        "germination_sd": "germination_share",
        "nursery_sd": "nursery_survival_share",
        "bed_sd": "bed_survival_share",
    }[name]
    tested = {lot.id for lot in ground.farm.seed_lots if lot.germination_share is not None}
    is_own = name == "germination_sd" and batch.seed_lot in tested
    title = f"spread of {LUCK[name]}"
    if is_own or getattr(batch, share, None) is not None:
        return _own(ground, batch, title, "own_share_sd")
    return _of_figure(ground, batch.code, title, f"crop/{batch.crop}/{share}", formula=Formula.DEVIATION)


def _own(ground: Ground, batch: Batch, title: str, name: str) -> Explanation:
    """Return the usual spread of what a grower gave or tested."""
    usual = ground.figure("value", f"{PATH}{name}")
    return Explanation(
        title=title,
        about=batch.code,
        value=usual.value,
        unit=usual.unit,
        formula=Formula.AS_ENTERED,
        inputs=(usual,),
    )


def _of_figure(
    ground: Ground, about: str, title: str, path: str, *, formula: Formula, more: tuple[Input, ...] = ()
) -> Explanation:
    """Return the spread that the range of a figure stands for; figure and rule tell their sources."""
    figure = ground.figure("likely", path)
    ends = ((name, getattr(figure, name)) for name in ("low", "high"))
    bare = Explanation(
        title=title,
        about=about,
        value=0.0,
        unit="1" if formula is Formula.DEVIATION_SHARE else figure.unit,
        formula=formula,
        inputs=(
            figure,
            *(worked(name, figure.value if end is None else end, figure.unit) for name, end in ends),
            ground.figure("range_deviations", f"{PATH}range_deviations"),
            *more,
        ),
    )
    return figured(bare)


def _days_spread(ground: Ground, row: int, batch: Batch) -> Explanation:
    """Return how much the first pick varies in days: the stages, each for itself, in squares."""
    parts = tuple(_stage_spreads(ground, row, batch))
    bare = Explanation(
        title="spread of days to the first pick",
        about=batch.code,
        value=0.0,
        unit="d",
        formula=Formula.QUADRATURE,
        children=parts,
    )
    return figured(bare)


def _stage_spreads(ground: Ground, row: int, batch: Batch) -> Iterator[Explanation]:
    profile = ground.forecast.profiles[int(ground.forecast.batches.profile[row])]
    for number, stage in enumerate(_STAGES):
        days = float(profile.stage_days[number])
        if days <= 0.0:
            continue
        title, name = f"spread of {stage} days", f"{stage}_days"
        if getattr(batch, name) is not None:
            yield _own_stage(ground, batch, title, days)
            continue
        path = f"crop/{batch.crop}/{name}"
        on_farm = ground.figure("days_within_farm_share", f"{PATH}days_within_farm_share")
        yield _of_figure(ground, batch.code, title, path, formula=Formula.DEVIATION_ON_FARM, more=(on_farm,))


def _own_stage(ground: Ground, batch: Batch, title: str, days: float) -> Explanation:
    """Return the usual spread of days that the grower gave, in whole days as they are gone by."""
    bare = Explanation(
        title=title,
        about=batch.code,
        value=0.0,
        unit="d",
        formula=Formula.OWN_DAYS,
        inputs=(
            ground.figure("own_days_cv", f"{PATH}own_days_cv"),
            entered("days", days, "d", batch.code),
        ),
    )
    return figured(bare)


def spreads_of_fish(ground: Ground) -> tuple[Explanation, ...]:
    """Return how wide growth and deaths of fish vary."""
    titles = {"fish_growth_cv": "spread of growth of fish", "fish_death_cv": "spread of deaths of fish"}
    return tuple(_usual(ground, title, name) for name, title in titles.items())


def spreads_of_crops(ground: Ground, week: int) -> tuple[Explanation, ...]:
    """Return how wide the batches vary that are picked in a week."""
    crops = ground.forecast.crops
    names = ("days_sd", "yield_cv", "bed_sd")
    return tuple(one for crop in crops for name in names for one in spreads_of_week(ground, crop, week, name))


def _usual(ground: Ground, title: str, name: str) -> Explanation:
    figure = ground.figure("value", f"{PATH}{name}")
    return Explanation(
        title=title,
        about="",
        value=figure.value,
        unit=figure.unit,
        formula=Formula.AS_ENTERED,
        inputs=(figure,),
    )
