"""Plain sentences and lines of text for the command line: forecasts, what is due, what does not fit."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from typing import Any, Final

from planner.farm.fields import Id
from planner.farm.species import UNIT_WORDS
from planner.forecast.week import OF_SOLIDS, DueKind, DueTask, DueUnit, DueWhere
from planner.paper.chances import chances_lines
from planner.paper.documents.amounts import ration_number
from planner.paper.ranges import ranges_lines
from planner.paper.words import day_words, list_words, range_words
from planner.planning.placement import Refusal, RefusalKind

_NOTHING: Final = "-"
_REFUSALS_TOLD: Final = 3
_DUE_WORDS: Final[dict[DueKind, str]] = {
    DueKind.SOW: "sow",
    DueKind.SPACE: "move to wider spacing",
    DueKind.MOVE: "move to the bed",
    DueKind.PICK: "pick",
    DueKind.CLEAR: "clear and clean",
    DueKind.STOCK_FISH: "stock",
    DueKind.HARVEST_FISH: "harvest fish of",
    DueKind.FEED: "feed",
    DueKind.DOSE: "dose",
    DueKind.SIPHON: "siphon solids from under the rafts of",
    DueKind.FILL_MINERALISER: "fill the mineraliser with",
    DueKind.RETURN_LIQUOR: "give back the liquor of",
}
_OF_DAYS: Final = {
    DueKind.SIPHON: "every {many:.0f} days",
    DueKind.FILL_MINERALISER: "solids of {many:.0f} days",
    DueKind.RETURN_LIQUOR: "after {many:.0f} days",
}
_OF_SOLIDS: Final = (
    "as manure: below the leaf, not on a harvest day, own tools; liquor only if aired and without smell"
)
_REFUSED: Final = {
    RefusalKind.NO_FREE_PLACES: (
        "{code} has no place: {where} has {free} free places from {from_on} to {until_on}, "
        "but {needed} are needed."
    ),
    RefusalKind.WRONG_BED: "{code} cannot stand in {where}: it is another kind of bed.",
    RefusalKind.NO_SUCH_UNIT: '{code} cannot stand there: "{bed}" has no {unit}.',
    RefusalKind.LOCKED: "{code} is locked and stays where it is.",
    RefusalKind.NOTHING_TO_PLACE: "{code} has no plants to place.",
    RefusalKind.NEEDED_NEXT: "{code} cannot stay longer: {next} comes to {where} on {from_on}.",
    RefusalKind.PICKED_ONCE: "{code} is picked once and has no days of picking to change.",
    RefusalKind.NO_SUCH_WINDOW: "{code} can be picked for 0 to {free} days, not for {needed}.",
}
_COLUMNS: Final = (
    "week",
    "from",
    "feed g/d",
    "fish kg",
    "m²",
    "g/m²/d",
    "{rule} band",
    "least",
    "supply/demand",
)
_WIDTHS: Final = (10, 12, 10, 9, 7, 8, 10, 6, 14)


def refusal_sentence(refusal: Refusal, code: str) -> str:
    """Return why a batch has no place or cannot stay as long, in one sentence."""
    word = UNIT_WORDS[refusal.bed_kind] if refusal.bed_kind else "unit"
    return _REFUSED[refusal.kind].format(
        code=code,
        bed=refusal.bed,
        unit=f"{word} {refusal.unit}",
        where=f'{word} {refusal.unit} of "{refusal.bed}"' if refusal.unit else f'"{refusal.bed}"',
        free=refusal.free,
        needed=refusal.needed,
        from_on=day_words(refusal.from_on) if refusal.from_on else "",
        until_on=day_words(refusal.until_on) if refusal.until_on else "",
        next=", ".join(refusal.blocking),
    )


def refusals_lines(refusals: Iterable[Refusal], codes: Mapping[Id, str]) -> Iterator[str]:
    """Yield why batches have no place: a line for each of the first few, then how many more there are."""
    first_of: dict[Id, Refusal] = {}
    for refusal in refusals:
        first_of.setdefault(refusal.batch, refusal)
    told = list(first_of.items())
    for batch, refusal in told[:_REFUSALS_TOLD]:
        yield refusal_sentence(refusal, codes[batch])
    more = len(told) - _REFUSALS_TOLD
    if more > 0:
        yield f"and {more} more {'batch' if more == 1 else 'batches'} without a place"


def forecast_lines(data: Mapping[str, Any]) -> Iterator[str]:
    """Yield a table of the forecast, a line a week, for people; from the data of `forecast_data`."""
    yield f"{data['farm']}  (plan {data['plan_mark']})"
    for loop in data["loops"]:
        yield ""
        yield f"{loop['loop']}: {loop['bed_m2']:g} m² of beds, {loop['water_l']:g} L of water"
        yield _line([column.format(rule=loop["area_rule"].upper()) for column in _COLUMNS])
        for week in loop["weeks"]:
            yield _line(_cells(week))
    yield ""
    totals = data["totals"]
    yield f"feed {totals['feed_kg']:.1f} kg, fish harvested {totals['fish_harvest_kg']:.1f} kg"
    for crop in totals["harvest"]:
        yield f"{crop['crop']}: {crop['plants']:.0f} plants, {crop['kg']:.1f} kg"
    if "ranges" in data:
        yield from ranges_lines(data["ranges"])
    if "chances" in data:
        yield from chances_lines(data["chances"])


def _cells(week: Mapping[str, Any]) -> tuple[str, ...]:
    ratio, band, least = week["feed_ratio_g_per_m2_d"], week["rule_band_g_per_m2_d"], week["limiting"]
    of_least = week["elements"][least]["ratio"] if least else None
    return (
        week["week"],
        week["start"],
        f"{week['feed_g_per_day']:.0f}",
        f"{week['biomass_kg']:.1f}",
        f"{week['planted_m2']:.1f}",
        _NOTHING if ratio is None else f"{ratio:.0f}",
        _NOTHING if band is None else f"{band[0]:.0f}-{band[1]:.0f}",
        least or _NOTHING,
        _NOTHING if of_least is None else f"{of_least:.2f}",
    )


def _line(cells: Sequence[str]) -> str:
    return "".join(cell.rjust(width) for cell, width in zip(cells, _WIDTHS, strict=True))


def week_lines(tasks: Sequence[DueTask], *, name: str, crop_names: Mapping[str, str]) -> Iterator[str]:
    """Yield what is due in a week, a line a task, under the days."""
    yield name
    if not tasks:
        yield "nothing is due"
    on = None
    for task in tasks:
        if task.on != on:
            on = task.on
            yield day_words(on)
        yield f"  {task_sentence(task, crop_names=crop_names)}"


def task_sentence(task: DueTask, *, crop_names: Mapping[str, str]) -> str:
    """Return one task in words: what to do, to what, how many, where."""
    crop = f" ({crop_names.get(task.crop, task.crop)})" if task.crop else ""
    where = f", {list_words(wheres_words(task.where))}" if task.where else ""
    care = f" ({_OF_SOLIDS})" if task.kind in OF_SOLIDS else ""
    return f"{_DUE_WORDS[task.kind]} {task.what}{crop}: {amount_words(task)}{where}{care}"


def amount_words(task: DueTask) -> str:
    """Return how many of what."""
    if task.unit is DueUnit.G_PER_DAY:
        return f"{ration_number(task.many)} g a day"
    if task.kind in _OF_DAYS:
        return _OF_DAYS[task.kind].format(many=task.many)
    return f"{task.many:,.0f} {task.unit.value}"


def wheres_words(runs: Iterable[DueWhere]) -> Iterator[str]:
    """Yield runs of places in words; the same places on one unit after another are told together."""
    many = tuple(runs)
    beds = list(dict.fromkeys(run.bed for run in many))
    together: list[DueWhere] = []
    for run in sorted(many, key=lambda run: (beds.index(run.bed), run.unit, run.first)):
        if together and not _goes_on(together[-1], run):
            yield _together_words(together)
            together = []
        together.append(run)
    if together:
        yield _together_words(together)


def _goes_on(run: DueWhere, following: DueWhere) -> bool:
    return following == replace(run, unit=run.unit + 1) and run.unit > 0


def _together_words(runs: Sequence[DueWhere]) -> str:
    first, last = runs[0], runs[-1]
    if first is last:
        return where_words(first)
    units, places = range_words(first.unit, last.unit), range_words(first.first, first.last)
    return f"{first.bed} {units}, places {places} of each"


def where_words(run: DueWhere) -> str:
    """Return a run of places in words."""
    if run.unit == 0:
        return run.bed
    return f"{run.bed} {run.unit}, places {range_words(run.first, run.last)}"
