"""Why so much went into a solids batch, comes back of it as liquor, or leaves it as gas."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from enum import Enum
from typing import Final

from planner.farm.farm import by_id
from planner.farm.fields import Id
from planner.farm.species import ELEMENTS
from planner.farm.water import SolidsBatch
from planner.forecast.values import SolidsBatchForecast
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, worked
from planner.forecast.why.solids import liquor_of_batch
from planner.forecast.why.values import Explanation, Note, NoteKind


class SolidsPart(Enum):
    """What is asked about a solids batch; the value is the `part` of a subject."""

    GATHERED = "gathered"
    BACK = "back"
    GAS = "gas"


def why_solids_batch(ground: Ground, about: Id, part: str) -> Explanation:
    """Return why a solids batch gathers, gives back or loses so much, element by element."""
    entry = by_id(ground.farm.solids_batches).get(about)
    found = next((one for loop in ground.forecast.loops for one in loop.solids.batches if one.batch == about))
    if entry is None or found is None:
        raise NoSuchFigureError(f"the forecast has no solids batch {about}.")
    asked = _part(part)
    makers: dict[SolidsPart, Callable[[int], Explanation]] = {
        SolidsPart.GATHERED: _Of(ground, entry, found).gathered,
        SolidsPart.BACK: _Of(ground, entry, found).back,
        SolidsPart.GAS: _Of(ground, entry, found).gas,
    }
    parts = tuple(makers[asked](element) for element in range(len(ELEMENTS)))
    return Explanation(
        title=_TITLES[asked],
        about=entry.code,
        value=sum(one.value or 0.0 for one in parts),
        unit="g",
        formula=Formula.SUM,
        children=tuple(one for one in parts if one.value),
        on=entry.siphoned_on if asked is SolidsPart.GATHERED else entry.returned_on,
    )
