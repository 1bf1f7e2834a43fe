"""What a grower does with the water: give doses, note readings, keep solids to rot and return them."""

from __future__ import annotations

from datetime import date
from typing import Final

from planner.actions.changing import addition, alteration, found, removal
from planner.farm.changes import ChangeSet
from planner.farm.checks import checked
from planner.farm.farm import Farm
from planner.farm.fields import Id
from planner.farm.meters import Meter
from planner.farm.water import Dose, Reading, SolidsBatch

_DOSE: Final = "dose"
_METER: Final = "meter"
_READING: Final = "reading"
_SOLIDS: Final = "solids batch"


def add_dose(dose: Dose) -> ChangeSet:
    """Give or plan a dose."""
    return addition(f"Add {_dose(dose)}", dose)


def change_dose(farm: Farm, dose: Dose) -> ChangeSet:
    """Put the changed dose in place of the one with its id."""
    return alteration(farm, dose, title=f"Change {_dose(dose)}")


def remove_dose(farm: Farm, dose_id: Id) -> ChangeSet:
    """Remove a dose."""
    dose: Dose = found(farm, _DOSE, dose_id)
    return removal(farm, dose, title=f"Remove {_dose(dose)}")


def add_meter(meter: Meter) -> ChangeSet:
    """Add a meter that water is read with."""
    return addition(f"Add meter {meter.name}", meter)


def change_meter(farm: Farm, meter: Meter) -> ChangeSet:
    """Put the changed meter in place of the one with its id."""
    return alteration(farm, meter, title=f"Change meter {meter.name}")


def remove_meter(farm: Farm, meter_id: Id, *, with_dependants: bool = False) -> ChangeSet:
    """Remove a meter; raises `FarmFaultError` naming what was read with it, unless that may let it go."""
    meter: Meter = found(farm, _METER, meter_id)
    return removal(farm, meter, title=f"Remove meter {meter.name}", with_dependants=with_dependants)


def add_reading(reading: Reading) -> ChangeSet:
    """Note a reading."""
    return addition(f"Add {_reading(reading)}", reading)


def add_readings(readings: tuple[Reading, ...]) -> ChangeSet:
    """Note many readings in one act, as when a table is read in."""
    return addition(f"Add {len(readings)} readings", *readings)


def change_reading(farm: Farm, reading: Reading) -> ChangeSet:
    """Put the changed reading in place of the one with its id."""
    return alteration(farm, reading, title=f"Change {_reading(reading)}")


def remove_reading(farm: Farm, reading_id: Id) -> ChangeSet:
    """Remove a reading."""
    reading: Reading = found(farm, _READING, reading_id)
    return removal(farm, reading, title=f"Remove {_reading(reading)}")


def add_solids_batch(solids: SolidsBatch) -> ChangeSet:
    """Put solids apart to rot, or plan to."""
    return addition(f"Add solids batch {solids.code}", solids)


def change_solids_batch(farm: Farm, solids: SolidsBatch) -> ChangeSet:
    """Put the changed solids batch in place of the one with its id."""
    return alteration(farm, solids, title=f"Change solids batch {solids.code}")


def return_liquor(farm: Farm, solids_id: Id, *, on: date, share: float = 1.0) -> ChangeSet:
    """Let the liquor of a solids batch, or a share of it, go back to the water on a day."""
    solids: SolidsBatch = found(farm, _SOLIDS, solids_id)
    after = checked(solids, returned_on=on, returned_share=share)
    return alteration(farm, after, title=f"Return liquor of {solids.code}, {on.isoformat()}")


def remove_solids_batch(farm: Farm, solids_id: Id) -> ChangeSet:
    """Remove a solids batch."""
    solids: SolidsBatch = found(farm, _SOLIDS, solids_id)
    return removal(farm, solids, title=f"Remove solids batch {solids.code}")


def _dose(dose: Dose) -> str:
    return f"dose of {dose.supplement}, {dose.on.isoformat()}"


def _reading(reading: Reading) -> str:
    return f"reading of {reading.quantity.value}, {reading.on.isoformat()}"
