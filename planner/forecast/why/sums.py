"""Why so much is sown, moved and picked, harvested, and used up in some weeks: sums over many batches."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fields import NO_ID, Id
from planner.forecast.pieces import PIECE_KINDS, PieceKind, Pieces, pieces_of
from planner.forecast.week import DueKind, DueTask, DueUnit, due_between
from planner.forecast.why.batches import why_seeds
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, week_days, worked
from planner.forecast.why.many import MOST_PARTS, Part, told_sum
from planner.forecast.why.milestones import why_picked
from planner.forecast.why.plants import why_harvest
from planner.forecast.why.values import Explanation, NoteKind

WORK: Final = {
    kind.value: kind for kind in (DueKind.SOW, DueKind.SPACE, DueKind.MOVE, DueKind.PICK, DueKind.CLEAR)
}
"""Work on batches that can be summed, by its name."""
SOWN_PLANTS: Final = "sown plants"
HARVESTED: Final = ("plants", "kg")
_PER_THOUSAND: Final = 1000.0


def why_work(ground: Ground, part: str, crop: str, days: slice) -> Explanation:
    """Return why so much is to be sown, spaced, moved, picked or cleared on some days, of a crop or of all.

    `part` is a `DueKind` of batches by its value: what is sown counts seeds, all else plants; with
    `SOWN_PLANTS` the plants that are wanted of what is sown. What is picked again counts at every pick.
    """
    if part not in (*WORK, SOWN_PLANTS):
        raise NoSuchFigureError(f'"{part}" is no work that is summed; there are {", ".join(_works())}.')
    _check_crop(ground, crop)
    kind = WORK.get(part, DueKind.SOW)
    due = due_between(ground.farm, ground.forecast, first_day=days.start, last_day=days.stop)
    return _work(ground, part, crop, [task for task in due if task.kind is kind], days)


def _work(ground: Ground, part: str, crop: str, tasks: list[DueTask], days: slice) -> Explanation:
    mine = [task for task in tasks if crop in ("", task.crop)]
    parts = [_task(ground, part, task) for task in mine]
    value = sum(one.value for one in parts)
    if not crop and len(parts) > MOST_PARTS:
        crops = [task.crop for task in mine]

        def of_one(one: str) -> Explanation:
            return _work(ground, part, one, mine, days)

        parts = list(_by_crop(ground, crops, [one.value for one in parts], of_one))
    return told_sum(
        parts,
        title=f"to {part}" if part in WORK else "plants sown",
        about=_of_crop(ground, crop),
        value=value,
        unit="seeds" if part == DueKind.SOW.value else "plants",
        on=ground.forecast.ruler.date_of(days.start),
        nothing=NoteKind.NOTHING_DUE,
    )


def _by_crop(
    ground: Ground, crops: list[str], values: list[float], explain: Callable[[str], Explanation]
) -> Iterator[Part]:
    """Yield a part for each crop, so that a long sum can be read."""
    for crop in dict.fromkeys(crops):
        value = sum(value for one, value in zip(crops, values, strict=True) if one == crop)
        yield Part(value=value, name=_of_crop(ground, crop), explain=partial(explain, crop))


def _works() -> Iterator[str]:
    yield from (*WORK, SOWN_PLANTS)


def _check_crop(ground: Ground, crop: str) -> None:
    if crop and crop not in ground.forecast.crops:
        raise NoSuchFigureError(f'"{crop}" is not grown; crops are {", ".join(ground.forecast.crops)}.')


def _of_crop(ground: Ground, crop: str) -> str:
    return ground.catalogue.crops[crop].name if crop else ground.farm.settings.name


def _task(ground: Ground, part: str, task: DueTask) -> Part:
    row = ground.row(task.about)
    if part == DueKind.SOW.value:
        return Part(value=task.many, name=task.what, explain=partial(why_seeds, ground, row))
    if part == DueKind.PICK.value:
        day = ground.forecast.ruler.day_of(task.on)
        return Part(value=task.many, name=task.what, explain=partial(why_picked, ground, row, day))
    assert task.unit is DueUnit.PLANTS or part == SOWN_PLANTS
    plants = float(ground.farm.batches[row].plants)
    return Part(value=plants, name=task.what, explain=partial(_as_wanted, task, plants))


def _as_wanted(task: DueTask, plants: float) -> Explanation:
    return Explanation(
        title="plants of a batch",
        about=task.what,
        value=plants,
        unit="plants",
        formula=Formula.AS_ENTERED,
        inputs=(entered("value", plants, "plants", task.what),),
        on=task.on,
    )


def why_seeds_used(ground: Ground, crop: str, lot: Id, days: slice) -> Explanation:
    """Return why so many seeds are sown on some days: of a crop, of a seed lot, or of all."""
    _check_crop(ground, crop)
    if lot != NO_ID and lot not in ground.lots:
        raise NoSuchFigureError(f"there is no seed lot {lot}.")
    table = ground.forecast.batches
    sown = ((table.sow_day >= days.start) & (table.sow_day < days.stop)).nonzero()[0].tolist()
    parts = [
        Part(
            value=float(table.seeds[row]),
            name=ground.farm.batches[row].code,
            explain=partial(why_seeds, ground, row),
        )
        for row in sown
        if crop in ("", ground.farm.batches[row].crop) and lot in (NO_ID, ground.farm.batches[row].seed_lot)
    ]
    if not crop and lot == NO_ID and len(parts) > MOST_PARTS:
        crops = [ground.farm.batches[row].crop for row in sown]
        of_one = partial(_seeds_of, ground, days)
        parts = list(_by_crop(ground, crops, [one.value for one in parts], of_one))
    return told_sum(
        parts,
        title="seeds of some weeks",
        about=ground.lots[lot].code if lot != NO_ID else _of_crop(ground, crop),
        value=sum(part.value for part in parts),
        unit="seeds",
        on=ground.forecast.ruler.date_of(days.start),
        nothing=NoteKind.NOTHING_DUE,
    )


def _seeds_of(ground: Ground, days: slice, crop: str) -> Explanation:
    return why_seeds_used(ground, crop, NO_ID, days)


def why_pieces(ground: Ground, part: str, days: slice) -> Explanation:
    """Return why so many plugs or net pots are used on some days; `part` is a `PieceKind` by its value."""
    kind = PIECE_KINDS.get(part)
    if kind is None:
        raise NoSuchFigureError(f'"{part}" is not counted; there are {", ".join(PIECE_KINDS)}.')
    used = [
        one
        for one in pieces_of(ground.farm, ground.forecast)
        if one.kind is kind and days.start <= one.day < days.stop
    ]
    parts = [
        Part(
            value=float(one.count),
            name=ground.farm.batches[one.row].code,
            explain=partial(_pieces, ground, one),
        )
        for one in used
    ]
    return told_sum(
        parts,
        title=f"{part}s of some weeks",
        about=ground.farm.settings.name,
        value=float(sum(one.count for one in used)),
        unit="pieces",
        on=ground.forecast.ruler.date_of(days.start),
        nothing=NoteKind.NOTHING_DUE,
    )


def _pieces(ground: Ground, used: Pieces) -> Explanation:
    """Explain what one batch uses: a plug for each seed, a net pot for each plant."""
    batch, on = ground.farm.batches[used.row], ground.forecast.ruler.date_of(used.day)
    seeds = why_seeds(ground, used.row)
    by_seed = used.kind is PieceKind.PLUG
    many = (
        worked("many", float(used.count), "seeds")
        if by_seed
        else entered("many", used.count, "plants", batch.code)
    )
    return Explanation(
        title=f"{used.kind.value}s of a batch",
        about=batch.code,
        value=float(used.count),
        unit="pieces",
        formula=Formula.ONE_EACH,
        inputs=(many,),
        children=(seeds,) if by_seed else (),
        on=on,
    )


def why_total(ground: Ground, part: str, crop: str, days: slice) -> Explanation:
    """Return why so many plants, or kg, are harvested in some weeks, of a crop or of all together."""
    if part not in HARVESTED:
        raise NoSuchFigureError(f'"{part}" is neither plants nor kg.')
    _check_crop(ground, crop)
    if crop:
        return _total_of(ground, part, crop, days)
    crops = [one for one in ground.forecast.crops if _harvested(ground, part, one, days) > 0.0]
    parts = [
        Part(
            value=_harvested(ground, part, one, days),
            name=one,
            explain=partial(_total_of, ground, part, one, days),
        )
        for one in crops
    ]
    return told_sum(
        parts,
        title="harvest of some weeks",
        about=ground.farm.settings.name,
        value=sum(one.value for one in parts),
        unit=part,
        on=ground.forecast.ruler.date_of(days.start),
        nothing=NoteKind.NOTHING_DUE,
    )


def _harvested(ground: Ground, part: str, crop: str, days: slice) -> float:
    number = ground.forecast.crops.index(crop)
    if part == "kg":
        return float(ground.forecast.harvest_g[number, days].sum()) / _PER_THOUSAND
    return float(ground.forecast.harvest_plants[number, days].sum())


def _total_of(ground: Ground, part: str, crop: str, days: slice) -> Explanation:
    weeks = range(days.start // DAYS_PER_WEEK, days.stop // DAYS_PER_WEEK)
    parts = [
        Part(
            value=_harvested(ground, part, crop, week_days(week)),
            name=f"{week:05}",
            explain=partial(_week_of, ground, part, crop, week),
        )
        for week in weeks
    ]
    return told_sum(
        [one for one in parts if one.value > 0.0],
        title="harvest of some weeks",
        about=ground.catalogue.crops[crop].name,
        value=_harvested(ground, part, crop, days),
        unit=part,
        on=ground.forecast.ruler.date_of(days.start),
        nothing=NoteKind.NOTHING_DUE,
    )


def _week_of(ground: Ground, part: str, crop: str, week: int) -> Explanation:
    found = why_harvest(ground, crop, week, grams=part == "kg")
    if part != "kg":
        return found
    return Explanation(
        title="harvest of a week",
        about=found.about,
        value=(found.value or 0.0) / _PER_THOUSAND,
        unit="kg",
        formula=Formula.IN_KG,
        inputs=(worked("grams", found.value or 0.0, "g"),),
        children=(found,),
        on=found.on,
    )
