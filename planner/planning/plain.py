"""Proposals and order lists as plain data of a documented, stable shape, for scripts and other programs.

The shapes are named here and described in docs/planning.md; a field is never renamed or given another
meaning under the same name.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from typing import Any, Final

from planner.farm.crops import Phase, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import Id
from planner.farm.site import Bed
from planner.forecast.values import Ruler
from planner.planning.orders import OrderLine
from planner.planning.placement import Refusal
from planner.planning.proposal import Note, Proposal, Sowing, WeekSupply

SUCCESSIONS_FORMAT: Final = "raftweek.successions/1"
ORDERS_FORMAT: Final = "raftweek.orders/1"
_DIGITS: Final = 3
Data = dict[str, Any]


def proposal_data(farm: Farm, proposal: Proposal, ruler: Ruler) -> Data:
    """Return a proposal as dicts, lists, texts and numbers."""
    where = _Where(farm, proposal.placements)
    codes = {batch.id: batch.code for batch in farm.batches}
    return {
        "format": SUCCESSIONS_FORMAT,
        "farm": farm.settings.name,
        "from": proposal.from_on.isoformat(),
        "even_share": proposal.even_share,
        "sowings": [_sowing_data(sowing, where) for sowing in proposal.sowings],
        "removed": [codes[batch] for batch in proposal.removed],
        "refused": [
            {"batch": batch.code, "crop": batch.crop, "sow_on": batch.sow_on.isoformat()}
            | refusal_data(refusal)
            for batch, refusal in proposal.refused
        ],
        "weeks": [_week_data(week, ruler) for week in proposal.weeks],
        "nursery": [
            {"week": ruler.week_name(one.week), "cells": one.cells, "held": one.held, "free": one.free}
            for one in proposal.nursery
        ],
        "notes": [_note_data(note) for note in proposal.notes],
    }


class _Where:
    """Where proposed batches stand, by the names of the beds."""

    def __init__(self, farm: Farm, placements: Sequence[Placement]) -> None:
        self._beds: dict[Id, Bed] = by_id(farm.beds)
        self._held: dict[Id, list[Placement]] = {}
        for run in placements:
            self._held.setdefault(run.batch, []).append(run)

    def of(self, batch: Id) -> list[Data]:
        return [
            {
                "phase": run.phase.value,
                "bed": self._beds[run.bed].name,
                "unit": run.unit,
                "first": run.first,
                "last": run.last,
            }
            for run in self._held.get(batch, ())
        ]


def _sowing_data(sowing: Sowing, where: _Where) -> Data:
    batch, seeding = sowing.batch, sowing.seeding
    return {
        "code": batch.code,
        "crop": batch.crop,
        "plants": batch.plants,
        "sow_on": sowing.sow_on.isoformat(),
        "space_on": _iso(sowing.space_on),
        "move_on": _iso(sowing.move_on),
        "first_pick_on": sowing.first_pick_on.isoformat(),
        "last_pick_on": sowing.last_pick_on.isoformat(),
        "harvest_week": sowing.harvest_week,
        "sown_early_days": sowing.sown_early_days,
        "moved_early_days": sowing.moved_early_days,
        "seeds": seeding.seeds,
        "seeds_needed": seeding.seeds_needed,
        "seed_rule": seeding.rule.rule.value,
        "germination_share": round(seeding.rule.germination, _DIGITS),
        "survival_share": round(seeding.rule.survival, _DIGITS),
        "allowance": seeding.rule.allowance,
        "pots": seeding.pots,
        "trays": seeding.trays,
        "spare_seeds": seeding.spare_seeds,
        "spare_cells": seeding.spare_cells,
        "where": where.of(batch.id),
    }


def _iso(on: date | None) -> str | None:
    return None if on is None else on.isoformat()


def refusal_data(refusal: Refusal) -> Data:
    """Return why a batch found no room: where, when, what is missing, what would make room."""
    return {
        "why": refusal.kind.value,
        "bed": refusal.bed,
        "needed": refusal.needed,
        "free": refusal.free,
        "short": refusal.short,
        "from": _iso(refusal.from_on),
        "until": _iso(refusal.until_on),
        "tight_on": _iso(refusal.tight_on),
        "freeing": [
            {"batch": one.code, "places": one.places, "until": one.until_on.isoformat(), "locked": one.locked}
            for one in refusal.freeing
        ],
    }


def _week_data(week: WeekSupply, ruler: Ruler) -> Data:
    return {
        "crop": week.crop,
        "week": ruler.week_name(week.week),
        "unit": week.unit.value,
        "wanted": round(week.wanted, _DIGITS),
        "foreseen": round(week.foreseen, _DIGITS),
    }


def _note_data(note: Note) -> Data:
    data: Data = {"what": note.kind.value, "crop": note.crop, "week": note.week or None, "on": _iso(note.on)}
    return data | {"values": dict(note.values)}


def orders_data(farm: Farm, lines: Sequence[OrderLine]) -> Data:
    """Return an order list as dicts, lists, texts and numbers."""
    return {"format": ORDERS_FORMAT, "farm": farm.settings.name, "lines": list(order_rows(lines))}


def order_rows(lines: Sequence[OrderLine]) -> Iterator[Data]:
    """Yield an order list as flat rows, the same fields in each; what is not known is None."""
    for line in lines:
        fish, made = line.fish_g or (None, None), line.made_for_g or (None, None)
        yield {
            "month": line.month,
            "kind": line.kind.value,
            "key": line.key,
            "name": line.name,
            "detail": line.detail,
            "amount": round(line.amount, _DIGITS),
            "unit": line.unit.value,
            "in_stock": line.in_stock,
            "to_buy": line.to_buy,
            "lot_age_days": line.lot_age_days,
            "germination_share": line.germination_share,
            "fish_low_g": _rounded(fish[0]),
            "fish_high_g": _rounded(fish[1]),
            "made_for_low_g": made[0],
            "made_for_high_g": made[1],
        }


def _rounded(value: float | None) -> float | None:
    return None if value is None else round(value, 1)


def places_by_bed(where: Sequence[Mapping[str, Any]]) -> dict[str, list[int]]:
    """Return bed name -> numbers of rafts or blocks that a proposed batch has in its last place."""
    found: dict[str, set[int]] = {}
    for run in where:
        if run["phase"] == Phase.BED.value:
            found.setdefault(run["bed"], set()).add(run["unit"])
    return {bed: sorted(units) for bed, units in found.items()}
