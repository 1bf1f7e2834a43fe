"""The meters that water is read with: what each measures, and how often it has to be calibrated.

When a meter was calibrated stands in the log. Knows nothing of what was read with it.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from enum import Enum
from typing import Final

from planner.farm import fields
from planner.farm.fields import Id
from planner.farm.water import Quantity


class MeterKind(Enum):
    """What a meter measures; most tell the temperature as well."""

    PH = "pH"
    EC = "conductivity"
    TDS = "dissolved solids"
    PH_EC = "pH and conductivity"
    OXYGEN = "oxygen"
    TEMPERATURE = "temperature"


_WARMTH: Final = frozenset({Quantity.WATER_C, Quantity.AIR_C})
_SALTS: Final = frozenset({Quantity.EC_MS_PER_CM, Quantity.TDS_MG_PER_L})

FACTORED: Final = _SALTS
"""Quantities that the factor of a meter turns into each other."""

READ_BY: Final[dict[MeterKind, frozenset[Quantity]]] = {
    MeterKind.PH: frozenset({Quantity.PH}) | _WARMTH,
    MeterKind.EC: _SALTS | _WARMTH,
    MeterKind.TDS: _SALTS | _WARMTH,
    MeterKind.PH_EC: frozenset({Quantity.PH}) | _SALTS | _WARMTH,
    MeterKind.OXYGEN: frozenset({Quantity.OXYGEN_MG_PER_L}) | _WARMTH,
    MeterKind.TEMPERATURE: _WARMTH,
}
"""Quantities that can be read with each kind of meter."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Meter:
    """One meter. `factor` is the ppm per µS/cm that it shows dissolved solids with.

    Without `calibrate_every_days` nobody watches over it. A meter that was never calibrated counts from
    `used_from`, and without that as overdue.
    """

    id: Id = fields.own_id()
    name: str = fields.name()
    kind: MeterKind = fields.choice()
    factor: float | None = fields.number(0.3, 1, "ppm per µS/cm", default=None)
    calibrate_every_days: int | None = fields.whole(1, 400, unit="d", default=None)
    used_from: date | None = fields.day(default=None, meaning="first day of use, calibrated when new")
    notes: str = fields.text()
