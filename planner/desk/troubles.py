"""Says in words why a farm cannot be shown at all."""

from __future__ import annotations

from typing import Final

from planner.desk.outlook import unknown_keys
from planner.desk.say import tr
from planner.desk.words import faults_words
from planner.farm.farm import Farm
from planner.farm.faults import FarmFaultError
from planner.forecast.engine import Forecaster

_NAMED: Final = 5


def trouble_with_farm(farm: Farm, forecaster: Forecaster) -> str:
    """Return why a farm cannot be shown: it names what no catalogue has; empty when it can."""
    try:
        catalogue = forecaster.catalogue_for(farm)
    except FarmFaultError as refused:
        return faults_words(refused.faults)
    missing = unknown_keys(farm, catalogue)
    if not missing:
        return ""
    return tr(
        "This farm names what the catalogue does not have: {names}. Mend its text form, then open that.",
        names=", ".join(missing[:_NAMED]) + ("…" if len(missing) > _NAMED else ""),
    )
