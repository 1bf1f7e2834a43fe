"""How successions are to be planned, and whether what is wanted makes sense."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date
from typing import Final

from planner.farm.crops import TargetUnit
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.fields import Id
from planner.planning.many import Rules
from planner.planning.rhythm import WorkDays
from planner.planning.seeding import SeedWish
from planner.planning.wanted import Order, Rhythm, RhythmOf, Want

_TOGETHER: Final = Rules(keep_together=True)


@dataclass(frozen=True, slots=True, kw_only=True)
class SuccessionWish:
    """How to plan: from which day on (the plan's first when not said), on which days, where, and how.

    With `replace_old` unlocked batches that are sown from that day on make way, of crops that are wanted
    steadily or in a rhythm; an order alone comes on top of what is planned.
    `beds` names the beds a crop may stand in; else it is every bed of a kind it grows in.
    """

    from_on: date | None = None
    work: WorkDays = field(default_factory=WorkDays)
    replace_old: bool = True
    beds: Mapping[str, tuple[Id, ...]] = field(default_factory=dict)
    rules: Rules = _TOGETHER
    seeds: SeedWish = field(default_factory=SeedWish)


def check_wants(wants: Iterable[Want], crops: Mapping[str, object]) -> None:
    """Raise `FarmFaultError` for a crop that is not known or wanted in two units, and for no amount."""
    units: dict[str, TargetUnit] = {}
    for want in wants:
        if want.crop not in crops:
            raise FarmFaultError((_fault("crop", want.crop, "a crop of the catalogue"),))
        is_sowing = isinstance(want, Rhythm) and want.of is RhythmOf.SOWING
        if not is_sowing and units.setdefault(want.crop, want.unit) is not want.unit:
            raise FarmFaultError((_fault("unit", want.unit.value, f"one unit for all of {want.crop}"),))
        amount = want.amount if isinstance(want, Order | Rhythm) else want.amount_per_week
        if not amount > 0:
            raise FarmFaultError((_fault("amount", f"{amount:g}", "above 0"),))


def _fault(where: str, value: str, limit: str) -> Fault:
    return Fault(
        kind=FaultKind.OUT_OF_LIMITS,
        where="successions",
        field=where,
        value=value,
        limit=limit,
        message=f'{where} is "{value}", but must be {limit}.',
    )
