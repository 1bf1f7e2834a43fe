"""How sure a week is, in words: ranges beside its figures, and the chance that each target is met.

Pure: must know nothing of widgets.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import TYPE_CHECKING, Final

from planner.desk.behind import Behind
from planner.desk.pages import Fact, Section, Unsure
from planner.desk.say import tr
from planner.desk.words import choice_words, number_words
from planner.farm.crops import TargetUnit
from planner.farm.fields import Id
from planner.forecast.why.values import Subject, SubjectKind

if TYPE_CHECKING:
    from planner.desk.sureness import Sureness
    from planner.forecast.chances.values import Chances
    from planner.forecast.ranges.values import LoopRanges, Range

_PERCENT: Final = 100.0
_G_PER_KG: Final = 1000.0
_TEN: Final = 10.0
_HARVEST: Final = {TargetUnit.HEADS: SubjectKind.HARVEST_PLANTS, TargetUnit.KG: SubjectKind.HARVEST_G}


def _ends(band: Range, *at: int, per: float = 1.0) -> tuple[float, float] | None:
    """Return low and high at a place of a range, None where there is no figure."""
    low, high = float(band.low[at]) / per, float(band.high[at]) / per
    return None if math.isnan(low) or math.isnan(high) else (low, high)


def _between(ends: tuple[float, float], unit: str) -> str:
    low, high = (number_words(end, digits=0 if ends[1] >= _TEN else 1) for end in ends)
    return tr("{low} to {high} {unit}", low=low, high=high, unit=unit)


def harvest_range_words(sure: Sureness | None, crop: str, week: int) -> str:
    """Return low and high of a crop's harvest in a week; empty as long as they are not known."""
    if sure is None or sure.ranges is None or crop not in sure.ranges.crops:
        return ""
    ends = _ends(sure.ranges.harvest_g, sure.ranges.crops.index(crop), week, per=_G_PER_KG)
    return "" if ends is None else _between(ends, "kg")


def element_range_words(sure: Sureness | None, loop: Id, element: int, week: int) -> str:
    """Return low and high of supply, demand and their ratio; empty as long as they are not known."""
    found = _loop(sure, loop)
    if found is None:
        return ""
    supply = _ends(found.supply_g, element, week)
    demand = _ends(found.demand_g, element, week)
    ratio = _ends(found.ratio, element, week)
    parts = [
        tr("supplied {span}", span=_between(supply, "g")) if supply else "",
        tr("wanted {span}", span=_between(demand, "g")) if demand else "",
        _between((ratio[0] * _PERCENT, ratio[1] * _PERCENT), "%") if ratio else "",
    ]
    return "; ".join(part for part in parts if part)


def _loop(sure: Sureness | None, loop: Id) -> LoopRanges | None:
    if sure is None or sure.ranges is None:
        return None
    return next((each for each in sure.ranges.loops if each.loop == loop), None)


def target_sections(behind: Behind, week: int) -> tuple[Section, ...]:
    """Return how likely each target of a week is met; empty before that is known or without targets."""
    if behind.sure is None:
        return ()
    facts = tuple(_targets(behind, behind.sure.chances, week))
    return (Section(title=tr("Chance that targets are met"), facts=facts),) if facts else ()


def _targets(behind: Behind, chances: Chances, week: int) -> Iterator[Fact]:
    from planner.forecast.chances.plain import target_chances

    outlook = behind.outlook
    for target in outlook.farm.targets:
        chance = dict(target_chances(chances, target)).get(week)
        if chance is not None:
            yield Fact(
                label=outlook.crop_name(target.crop),
                value=tr("{percent} %", percent=number_words(chance * _PERCENT, digits=0)),
                note=tr(
                    "at least {amount} {unit}; of {draws} draws",
                    amount=number_words(target.amount_per_week),
                    unit=choice_words(target.unit),
                    draws=chances.draws,
                ),
                ask=Unsure(
                    of=Subject(kind=_HARVEST[target.unit], crop=target.crop, week=week),
                    at_least=target.amount_per_week,
                ),
            )


def stop_words(share: float = 0.0) -> str:
    """Return what a button says that stops it, with how far it is; `share` from 0 to 1."""
    return tr("Stop ({percent} %)", percent=number_words(share * _PERCENT, digits=0)) if share else tr("Stop")
