"""What comes before a base is given, as warnings that can be asked why.

A test that is wanted is asked how late it is, a reading that is too high what it passes. Must know nothing of
widgets.
"""

from __future__ import annotations

from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.pages import Fact
from planner.desk.water_words import quantity_words, water_words
from planner.farm.water import Quantity
from planner.forecast.water.bases import Before
from planner.forecast.water.side import LoopWater
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import entered, figure_input
from planner.forecast.why.values import Explanation, Subject, SubjectKind

_TESTED: Final = {
    Before.TEST_AMMONIA: Quantity.TAN_MG_PER_L,
    Before.TEST_PH: Quantity.PH,
    Before.TEST_ALKALINITY: Quantity.ALKALINITY_MG_PER_L,
}
_TOO_HIGH: Final = {
    Before.AMMONIA_HIGH: (Quantity.TAN_MG_PER_L, "loop/tan_limit_mg_per_l"),
    Before.PH_HIGH_ENOUGH: (Quantity.PH, "loop/ph_high"),
}


def before_fact(water: LoopWater, before: Before, catalogue: Catalogue) -> Fact:
    """Return what comes before a base is given, and what that is asked."""
    words = water_words(before)
    if before in _TESTED:
        return Fact(label="", value=words, ask=_how_late(water, _TESTED[before]))
    return Fact(label="", value=words, ask=_over_limit(water, *_TOO_HIGH[before], catalogue))


def _how_late(water: LoopWater, quantity: Quantity) -> Subject | None:
    """Return what tells how late a test is; None where there was none yet."""
    done = any(due.quantity is quantity and due.last_on is not None for due in water.readings.due)
    if not done:
        return None
    return Subject(kind=SubjectKind.TEST_LATE, about=water.loop, on=water.today, part=quantity.value)


def _over_limit(water: LoopWater, quantity: Quantity, path: str, catalogue: Catalogue) -> Explanation | None:
    """Return the reading beside the figure that it passes."""
    view = next((each for each in water.readings.quantities if each.quantity is quantity), None)
    if view is None or view.reading is None:
        return None
    value, unit = view.reading.value, catalogue.figure(path).unit
    return Explanation(
        title=quantity_words(quantity),
        about=water.name,
        value=value,
        unit=unit,
        formula=Formula.AS_ENTERED,
        inputs=(entered("value", value, unit, water.name), figure_input(catalogue, "limit", path)),
        on=view.reading.on,
    )
