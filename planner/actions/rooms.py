"""Finding room for batches: what is asked of the planning room, and its refusals as faults."""

from __future__ import annotations

from typing import Final, Protocol

from planner.farm.checks import where_of
from planner.farm.crops import Phase, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import Id
from planner.farm.species import UNIT_WORDS
from planner.planning.placement import Refusal, RefusalKind

_MESSAGES: Final = {
    RefusalKind.NO_FREE_PLACES: "{needed} places are needed in {where} from {from_on} to {until_on}, "
    "but {free} are free{blocking}.",
    RefusalKind.WRONG_BED: 'it cannot stand in "{bed}", which is not a bed for that phase.',
    RefusalKind.NO_SUCH_UNIT: '"{bed}" has no {word} {unit}.',
    RefusalKind.LOCKED: "it is locked and is not moved.",
    RefusalKind.NOTHING_TO_PLACE: "there is nothing to place.",
}
_REMEDIES: Final = {
    RefusalKind.NO_FREE_PLACES: "Choose another bed or other days, or move what stands there first.",
    RefusalKind.WRONG_BED: "Choose another bed.",
    RefusalKind.NO_SUCH_UNIT: "Choose another {word}.",
    RefusalKind.LOCKED: "Unlock it first.",
    RefusalKind.NOTHING_TO_PLACE: "Give it plants first.",
}


class Rooms(Protocol):
    """What is asked of `Places`: runs of places for a batch, or why there are none."""

    def fit(
        self,
        batch: Id,
        phase: Phase,
        bed: Id,
        *,
        count: int,
        unit: int | None = None,
        by_days: int = 0,
    ) -> tuple[Placement, ...] | Refusal:
        """Return places for so many plants of a batch in a bed, or a refusal."""


class NoRoomError(FarmFaultError):
    """A batch cannot stand where it was to go; `refusal` has the figures."""

    def __init__(self, fault: Fault, refusal: Refusal) -> None:
        """Keep the refusal beside the fault made from it."""
        super().__init__((fault,))
        self.refusal = refusal


def refusal_fault(farm: Farm, refusal: Refusal) -> Fault:
    """Return the fault that says in words why a batch cannot stand somewhere."""
    word = UNIT_WORDS[refusal.bed_kind] if refusal.bed_kind else "unit"
    unit = f" {word} {refusal.unit} of" if refusal.unit else ""
    blocking = ", ".join(f'"{code}"' for code in refusal.blocking)
    words = {
        "needed": refusal.needed,
        "free": refusal.free,
        "bed": refusal.bed,
        "unit": refusal.unit,
        "word": word,
        "where": f'{unit} "{refusal.bed}"'.strip(),
        "from_on": refusal.from_on,
        "until_on": refusal.until_on,
        "blocking": f"; {blocking} stand there" if blocking else "",
    }
    room_is_short = refusal.kind is RefusalKind.NO_FREE_PLACES
    return Fault(
        kind=FaultKind.NO_ROOM if room_is_short else FaultKind.NOT_SUITED,
        where=where_of(by_id(farm.batches)[refusal.batch]),
        field="bed",
        value=refusal.bed,
        limit=f"{refusal.free} free places" if room_is_short else "",
        message=_MESSAGES[refusal.kind].format(**words),
        remedy=_REMEDIES[refusal.kind].format(**words),
    )
