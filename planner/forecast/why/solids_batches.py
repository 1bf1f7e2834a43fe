"""Why so much went into a solids batch, comes back of it as liquor, or leaves it as gas."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum
from typing import Final

from planner.farm.farm import by_id
from planner.farm.fields import Id
from planner.farm.species import ELEMENTS
from planner.farm.water import SolidsBatch
from planner.forecast.values import SolidsBatchForecast
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, worked
from planner.forecast.why.solids import liquor_of_batch
from planner.forecast.why.values import Explanation, Note, NoteKind


class SolidsPart(Enum):
    """What is asked about a solids batch; the value is the `part` of a subject."""

    GATHERED = "gathered"
    BACK = "back"
    GAS = "gas"


_TITLES: Final = {
    SolidsPart.GATHERED: "solids gathered",
    SolidsPart.BACK: "liquor that goes back",
    SolidsPart.GAS: "lost as gas from the batch",
}


def why_solids_batch(ground: Ground, about: Id, part: str) -> Explanation:
    """Return why a solids batch gathers, gives back or loses so much, element by element."""
    batch = _Batch(ground=ground, entry=_entry(ground, about), found=_found(ground, about))
    asked = _part(part)
    parts = tuple(batch.answer(asked, element) for element in range(len(ELEMENTS)))
    return Explanation(
        title=_TITLES[asked],
        about=batch.entry.code,
        value=sum(one.value or 0.0 for one in parts),
        unit="g",
        formula=Formula.SUM,
        children=tuple(one for one in parts if one.value),
        on=batch.entry.siphoned_on if asked is SolidsPart.GATHERED else batch.entry.returned_on,
    )


def _entry(ground: Ground, about: Id) -> SolidsBatch:
    found: SolidsBatch | None = by_id(ground.farm.solids_batches).get(about)
    if found is None:
        raise NoSuchFigureError(f"there is no solids batch {about}.")
    return found


def _found(ground: Ground, about: Id) -> SolidsBatchForecast:
    for loop in ground.forecast.loops:
        for one in loop.solids.batches:
            if one.batch == about:
                return one
    raise NoSuchFigureError(f"the solids batch {about} was emptied before the plan began.")


def _part(part: str) -> SolidsPart:
    known = {one.value: one for one in SolidsPart}
    if part not in known:
        raise NoSuchFigureError(f'"{part}" is no part of a solids batch; there are {", ".join(known)}.')
    return known[part]


@dataclass(frozen=True, slots=True, kw_only=True)
class _Batch:
    """One solids batch with what is foreseen of it."""

    ground: Ground
    entry: SolidsBatch
    found: SolidsBatchForecast

    def answer(self, part: SolidsPart, element: int) -> Explanation:
        """Return why a part is so much of one element."""
        match part:
            case SolidsPart.GATHERED:
                return self._gathered(element)
            case SolidsPart.BACK:
                return self._back(element)
            case SolidsPart.GAS:
                return self._gas(element)

    def _gathered(self, element: int) -> Explanation:
        """Days before the plan are taken to be like the plan's first week: a note says so."""
        whole, before = self.found.gathered_g[element], self.found.before_g[element]
        assumed = Note(kind=NoteKind.LIKE_FIRST_WEEK, values=(("grams", before),))
        return Explanation(
            title="gathered in a solids batch",
            about=ELEMENTS[element].capitalize(),
            value=whole,
            unit="g",
            formula=Formula.GATHERED,
            inputs=(
                worked("caught_in_plan_g", whole - before, "g"),
                worked("caught_before_g", before, "g"),
                worked("days", float(self.entry.days), "d"),
            ),
            notes=(assumed,) if before else (),
            on=self.entry.siphoned_on,
        )

    def _back(self, element: int) -> Explanation:
        if not self.found.liquor_g[element]:
            return self._nothing(SolidsPart.BACK)
        answer = liquor_of_batch(self.ground, self.entry, self.found, element)
        return replace(answer, about=ELEMENTS[element].capitalize(), children=(self._gathered(element),))

    def _gas(self, element: int) -> Explanation:
        if not self.found.lost_g[element]:
            return self._nothing(SolidsPart.GAS)
        liquor = liquor_of_batch(self.ground, self.entry, self.found, element)
        bare = replace(
            liquor,
            title=_TITLES[SolidsPart.GAS],
            about=ELEMENTS[element].capitalize(),
            value=0.0,
            formula=Formula.BATCH_GAS,
            inputs=tuple(one for one in liquor.inputs if one.name != "returned_share"),
            children=(self._gathered(element),),
        )
        return figured(bare)

    def _nothing(self, part: SolidsPart) -> Explanation:
        return Explanation(
            title=_TITLES[part], about=self.entry.code, value=0.0, unit="g", formula=Formula.NOTHING
        )
