"""Turns the words of the command `why` into the subject they name; read in when the command runs."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Final

from planner.commands_why_names import (
    day_of_word,
    element_of,
    is_week,
    named,
    near,
    week_of,
    wrong,
)
from planner.commands_why_weeks import OF_FISH, plan_subject, water_subject, week_subject, weeks_subject
from planner.farm.crops import Stage
from planner.forecast.values import FlagKind
from planner.forecast.why.solids_batches import SolidsPart
from planner.forecast.why.values import Subject, SubjectKind

if TYPE_CHECKING:
    from planner.farm.farm import Farm
    from planner.farm.fields import Id
    from planner.forecast.values import Forecast

_OF_BATCH: Final = {
    "seeds": "seeds",
    "first-pick": "first pick",
    "harvest": "batch harvest",
    "yield": "yield of a plant",
    "heads": "plants that live",
    "late": "later than by the book",
    "freed": "places free",
    "area": "area of a batch",
}
_OF_BATCH_DAY: Final = {"places": "places of a batch", "picked": "picked on a day"}
_OF_STAGE: Final = {"first": "first day of a stage", "last": "last day of a stage"}
_OF_FISH_DAY: Final = {
    "": "feed",
    "mass": "mass of a group",
    "count": "fish of a group",
    "weight": "weight of a fish",
    "gain": "gain of a group",
    "harvest": "harvest of fish",
    "harvested": "fish harvested",
    "fall": "fall of the feed at a harvest",
}
_OF_FISH_SPAN: Final = {"deaths": "deaths expected", **OF_FISH}
_OF_BED: Final = {"used": "places held", "free": "places free in a bed"}


def subject_of(words: Sequence[str], farm: Farm, forecast: Forecast, *, loop: str | None) -> Subject:
    """Return the subject that words name; raises `WrongUsageError` for one that is not there."""
    kind, *rest = words
    match kind:
        case "week":
            return week_subject(rest, farm, forecast, loop=loop)
        case "water":
            return water_subject(rest, farm, forecast, loop=loop)
        case "weeks":
            return weeks_subject(rest, farm, forecast)
        case "plan":
            return plan_subject(rest, farm, forecast)
        case "nursery":
            return _nursery(rest, forecast)
    maker = _OF_THINGS.get(kind)
    if maker is None:
        known = (*_OF_THINGS, "week", "weeks", "plan", "water", "nursery")
        raise wrong(f'"{kind}" is no subject.{near(kind, known)}')
    if len(rest) < 2:
        raise wrong(f'"{kind}" takes two words more; "raftweek why --help" shows which.')
    return maker(rest, farm, forecast)


def _batch(words: Sequence[str], farm: Farm, forecast: Forecast) -> Subject:
    about = named(words[0], "batch", {batch.code: batch.id for batch in farm.batches})
    figure, *rest = words[1:]
    stages = {stage.value: stage for stage in Stage}
    if figure in _OF_BATCH and not rest:
        return Subject(kind=SubjectKind(_OF_BATCH[figure]), about=about)
    if figure in stages and not rest:
        return Subject(kind=SubjectKind.STAGE_DAYS, about=about, stage=stages[figure])
    if figure in stages and rest in (["first"], ["last"]):
        return Subject(kind=SubjectKind(_OF_STAGE[rest[0]]), about=about, stage=stages[figure])
    if len(rest) == 1 and figure[:1].isdigit():
        return _batch_then(figure, rest[0], about, forecast)
    said, known = " ".join(words[1:]), [*_OF_BATCH, *stages, *_OF_BATCH_DAY]
    raise wrong(f'a batch has no figure "{said}".{near(figure, known)}')


def _batch_then(when: str, figure: str, about: Id, forecast: Forecast) -> Subject:
    """Return a figure of a batch in a week or on a day."""
    if is_week(when):
        week, element = week_of(when, forecast.ruler), element_of(figure)
        return Subject(kind=SubjectKind.BATCH_DEMAND, about=about, week=week, element=element)
    day = day_of_word(when, forecast.ruler)
    if figure not in _OF_BATCH_DAY:
        raise wrong(f'a batch on a day has no figure "{figure}".{near(figure, _OF_BATCH_DAY)}')
    return Subject(kind=SubjectKind(_OF_BATCH_DAY[figure]), about=about, day=day)


def _fish(words: Sequence[str], farm: Farm, forecast: Forecast) -> Subject:
    about = named(words[0], "fish group", {group.name: group.id for group in farm.fish_groups})
    when, figure = words[1], " ".join(words[2:])
    if when == "ready" and not figure:
        return Subject(kind=SubjectKind.FISH_READY, about=about)
    if when == "plan" or (is_week(when) and figure):
        if figure not in _OF_FISH_SPAN:
            raise wrong(f'fish have no figure "{figure}" of weeks.{near(figure, _OF_FISH_SPAN)}')
        whole = when == "plan"
        week = 0 if whole else week_of(when, forecast.ruler)
        kind = SubjectKind(_OF_FISH_SPAN[figure])
        return Subject(kind=kind, about=about, week=week, weeks=0 if whole else 1)
    if is_week(when):
        return Subject(kind=SubjectKind.GROUP_FEED, about=about, week=week_of(when, forecast.ruler))
    if figure not in _OF_FISH_DAY:
        raise wrong(f'fish have no figure "{figure}" on a day.{near(figure, [*_OF_FISH_DAY][1:])}')
    day = day_of_word(when, forecast.ruler)
    return Subject(kind=SubjectKind(_OF_FISH_DAY[figure]), about=about, day=day)


def _only(words: Sequence[str], many: int, what: str) -> None:
    if len(words) > many:
        raise wrong(f'"{" ".join(words[many:])}" is too much: {what}.')


def _tank(words: Sequence[str], farm: Farm, forecast: Forecast) -> Subject:
    _only(words, 2, "a tank takes a day")
    about = named(words[0], "tank", {tank.name: tank.id for tank in farm.tanks})
    return Subject(kind=SubjectKind.DENSITY, about=about, day=day_of_word(words[1], forecast.ruler))


def _bed(words: Sequence[str], farm: Farm, forecast: Forecast) -> Subject:
    about = named(words[0], "bed", {bed.name: bed.id for bed in farm.beds})
    day, figure = day_of_word(words[1], forecast.ruler), " ".join(words[2:])
    if figure not in _OF_BED:
        raise wrong(f'a bed has no figure "{figure}" on a day.{near(figure, _OF_BED)}')
    return Subject(kind=SubjectKind(_OF_BED[figure]), about=about, day=day)


def _nursery(words: Sequence[str], forecast: Forecast) -> Subject:
    if len(words) != 1:
        raise wrong('"nursery" takes a day, such as 2027-05-03.')
    return Subject(kind=SubjectKind.NURSERY_USED, day=day_of_word(words[0], forecast.ruler))


def _lot(words: Sequence[str], farm: Farm, forecast: Forecast) -> Subject:
    _only(words, 2, "a seed lot takes a day")
    about = named(words[0], "seed lot", {lot.code: lot.id for lot in farm.seed_lots})
    on = forecast.ruler.date_of(day_of_word(words[1], forecast.ruler))
    return Subject(kind=SubjectKind.LOT_SHARE, about=about, on=on)


def _meter(words: Sequence[str], farm: Farm, forecast: Forecast) -> Subject:
    _only(words, 2, "a meter takes a day")
    about = named(words[0], "meter", {meter.name: meter.id for meter in farm.meters})
    on = forecast.ruler.date_of(day_of_word(words[1], forecast.ruler))
    return Subject(kind=SubjectKind.METER_LATE, about=about, on=on)


def _dose(words: Sequence[str], farm: Farm, _forecast: Forecast) -> Subject:
    _only(words, 2, "a dose takes its product and the day it is first given")
    doses = {f"{dose.supplement} {dose.on.isoformat()}": dose.id for dose in farm.doses}
    about = named(" ".join(words), "dose", doses)
    return Subject(kind=SubjectKind.DOSE_BRINGS, about=about)


def _solids(words: Sequence[str], farm: Farm, _forecast: Forecast) -> Subject:
    about = named(words[0], "solids batch", {batch.code: batch.id for batch in farm.solids_batches})
    part, known = " ".join(words[1:]), [one.value for one in SolidsPart]
    if part not in known:
        raise wrong(f'a solids batch has no figure "{part}".{near(part, known)}')
    return Subject(kind=SubjectKind.SOLIDS_BATCH, about=about, part=part)


def _flag(words: Sequence[str], _farm: Farm, forecast: Forecast) -> Subject:
    _only(words, 3, "a flag takes its kind, a name and perhaps a day")
    kinds = {kind.value.replace(" ", "-"): kind for kind in FlagKind}
    if words[0] not in kinds:
        raise wrong(f'there is no kind of flag "{words[0]}".{near(words[0], kinds)}')
    there = {flag.name: flag.about for flag in forecast.flags if flag.kind is kinds[words[0]]}
    about = named(words[1], f"{words[0]} flag of", there)
    on = forecast.ruler.date_of(day_of_word(words[2], forecast.ruler)) if words[2:] else None
    return Subject(kind=SubjectKind.FLAG, about=about, part=kinds[words[0]].value, on=on)


_OF_THINGS: Final[dict[str, Callable[[Sequence[str], Farm, Forecast], Subject]]] = {
    "batch": _batch,
    "fish": _fish,
    "tank": _tank,
    "bed": _bed,
    "lot": _lot,
    "meter": _meter,
    "solids": _solids,
    "dose": _dose,
    "flag": _flag,
}
