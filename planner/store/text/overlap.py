"""Refuses a batch that is given the same place twice in one phase.

Two batches in one place can only be told with stage dates, and is left to the forecast.
"""

from __future__ import annotations

from planner.farm.crops import Phase, Placement
from planner.farm.faults import FaultKind
from planner.farm.fields import Id
from planner.farm.site import Bed
from planner.farm.species import UNIT_WORDS
from planner.store.text.draft import Draft
from planner.store.text.findings import Findings


def refuse_overlaps(draft: Draft, findings: Findings) -> None:
    """Take up a fault for every run of places that overlaps another of the same batch and phase."""
    runs: dict[tuple[Id, Phase, Id, int], list[Placement]] = {}
    for placement in draft.found("placement"):
        mark = (placement.batch, placement.phase, placement.bed, placement.unit)
        runs.setdefault(mark, []).append(placement)
    for many in runs.values():
        many.sort(key=_first)
        last = 0
        bed: Bed | None = draft.thing("bed", many[0].bed)
        word = UNIT_WORDS[bed.kind] if bed is not None else "unit"
        for placement in many:
            if placement.first <= last:
                end = min(last, placement.last)
                findings.say(
                    draft.source_of("placement", placement.id),
                    FaultKind.HELD_PLACE,
                    f"{_named(placement.first, end)} given twice on {word} {placement.unit} "
                    f"for the {placement.phase.value} phase.",
                    field="places",
                    value=f"{placement.first}-{placement.last}",
                    remedy="Give each place once.",
                )
            last = max(last, placement.last)


def _first(placement: Placement) -> int:
    return placement.first


def _named(first: int, last: int) -> str:
    return f"place {first} is" if first == last else f"places {first} to {last} are"
