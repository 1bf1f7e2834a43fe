"""Why so many places of a bed are held or free on a day, and which ones a batch holds."""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from typing import Final

from planner.farm.crops import Phase, Placement
from planner.farm.fields import Id
from planner.farm.holds import Hold
from planner.farm.site import Bed
from planner.farm.species import BedKind
from planner.forecast.occupancy import holds
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, worked
from planner.forecast.why.many import Part, told_sum
from planner.forecast.why.values import Explanation, Note, NoteKind

_PLACES: Final = "places"


def bed_of(ground: Ground, about: Id) -> Bed:
    """Return a bed by its id; raises `NoSuchFigureError` when there is none."""
    for bed in ground.farm.beds:
        if bed.id == about:
            return bed
    raise NoSuchFigureError(f"there is no bed {about}.")


def why_used(ground: Ground, about: Id, day: int) -> Explanation:
    """Return why so many places of a bed are held on a day: by which batches, until when."""
    bed = bed_of(ground, about)
    return _used(ground, bed, day)


def _used(ground: Ground, bed: Bed, day: int) -> Explanation:
    on = ground.forecast.ruler.date_of(day)
    held = [hold for hold in holds(ground.farm, ground.forecast) if hold.bed == bed.id]
    held = [hold for hold in held if hold.from_on <= on < hold.until_on]
    by_batch: dict[Id, list[Hold]] = {}
    for hold in held:
        by_batch.setdefault(hold.batch, []).append(hold)
    parts = [
        Part(
            value=float(sum(_many(hold) for hold in many)),
            name=ground.farm.batches[ground.row(batch)].code,
            explain=partial(_held_by, ground, bed, batch, tuple(many), day),
        )
        for batch, many in by_batch.items()
    ]
    places = {(hold.unit, place) for hold in held for place in range(hold.first, hold.last + 1)}
    found = told_sum(
        parts,
        title="places held",
        about=bed.name,
        value=float(len(places)),
        unit=_PLACES,
        on=on,
        nothing=NoteKind.BED_EMPTY,
    )
    twice = sum(part.value for part in parts) - len(places)
    return found if not twice else _with_twice(found, twice)


def _with_twice(found: Explanation, twice: float) -> Explanation:
    """Return an answer that takes places off that two batches hold at once."""
    return replace(
        found,
        inputs=(*found.inputs, worked("held_twice", -twice, _PLACES)),
        notes=(*found.notes, Note(kind=NoteKind.HELD_TWICE, values=(("many", twice),))),
    )


def _many(hold: Hold) -> int:
    return hold.last - hold.first + 1


def _held_by(ground: Ground, bed: Bed, batch: Id, held: tuple[Hold, ...], day: int) -> Explanation:
    code = ground.farm.batches[ground.row(batch)].code
    until = max(hold.until_on for hold in held)
    told = (("from", min(hold.from_on for hold in held).isoformat()), ("until", until.isoformat()))
    return Explanation(
        title="places held by a batch",
        about=code,
        value=float(sum(_many(hold) for hold in held)),
        unit=_PLACES,
        formula=Formula.SUM,
        inputs=tuple(entered(_run_name(hold), _many(hold), _PLACES, f"{code}, {bed.name}") for hold in held),
        notes=(Note(kind=NoteKind.HELD_UNTIL, values=told),),
        on=ground.forecast.ruler.date_of(day),
    )


def _run_name(run: Hold | Placement) -> str:
    """Return the name of a run of places, such as "unit_1_places_3_to_10"."""
    return f"unit_{run.unit}_places_{run.first}_to_{run.last}"


def why_free(ground: Ground, about: Id, day: int) -> Explanation:
    """Return why so many places of a bed are free on a day."""
    bed = bed_of(ground, about)
    used, all_places = _used(ground, bed, day), _places(bed)
    return Explanation(
        title="places free",
        about=bed.name,
        value=(all_places.value or 0.0) - (used.value or 0.0),
        unit=_PLACES,
        formula=Formula.PLACES_FREE,
        inputs=(
            worked("places", all_places.value or 0.0, _PLACES),
            worked("held", used.value or 0.0, _PLACES),
        ),
        children=(all_places, used),
        on=used.on,
    )


def _places(bed: Bed) -> Explanation:
    return Explanation(
        title="places of a bed",
        about=bed.name,
        value=float(bed.places),
        unit=_PLACES,
        formula=Formula.PLACES,
        inputs=(
            entered("units", bed.units, "rafts, blocks or trays", bed.name),
            entered("rows", bed.rows, _PLACES, bed.name),
            entered("columns", bed.columns, _PLACES, bed.name),
        ),
    )


def why_nursery(ground: Ground, day: int) -> Explanation:
    """Return why so many nursery places are held on a day, all nurseries together."""
    parts = tuple(_used(ground, bed, day) for bed in ground.farm.beds if bed.kind is BedKind.NURSERY)
    return Explanation(
        title="nursery places held",
        about=ground.farm.settings.name,
        value=sum(part.value or 0.0 for part in parts),
        unit=_PLACES,
        formula=Formula.SUM,
        children=parts,
        notes=() if parts else (Note(kind=NoteKind.NO_NURSERY),),
        on=ground.forecast.ruler.date_of(day),
    )


def why_batch_places(ground: Ground, row: int, day: int) -> Explanation:
    """Return how many places a batch holds on a day, in the beds of the phase it is in.

    Raises `NoSuchFigureError` on a day on which it stands nowhere.
    """
    batch, table, ruler = ground.farm.batches[row], ground.forecast.batches, ground.forecast.ruler
    spans = {phase: table.phase_days(row, phase) for phase in Phase}
    phase = next((phase for phase, (first, end) in spans.items() if first <= day < end), None)
    if phase is None:
        first, end = (
            ruler.date_of(one).isoformat() for one in (spans[Phase.NURSERY][0], spans[Phase.BED][1])
        )
        on = ruler.date_of(day).isoformat()
        raise NoSuchFigureError(f"{batch.code} stands nowhere on {on}; it does from {first} to before {end}.")
    beds = {bed.id: bed.name for bed in ground.farm.beds}
    runs = [run for run in ground.farm.placements if run.batch == batch.id and run.phase is phase]
    told = (("phase", phase.value), ("until", ruler.date_of(spans[phase][1]).isoformat()))
    return Explanation(
        title="places of a batch",
        about=batch.code,
        value=float(sum(run.count for run in runs)),
        unit=_PLACES,
        formula=Formula.SUM,
        inputs=tuple(
            entered(_run_name(run), run.count, _PLACES, f"{batch.code}, {beds[run.bed]}") for run in runs
        ),
        notes=(
            Note(kind=NoteKind.IN_PHASE, values=told),
            *(() if runs else (Note(kind=NoteKind.NO_PLACES),)),
        ),
        on=ruler.date_of(day),
    )
