"""Loops and readings for tests of the water side, built by hand."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from functools import cache

import numpy as np

from planner.catalogue.loading import shipped_catalogue
from planner.farm.ids import id_from
from planner.farm.site import Loop
from planner.farm.species import ELEMENTS
from planner.farm.water import Quantity, Reading
from planner.forecast.climate import daily_series
from planner.forecast.engine import Forecaster
from planner.forecast.values import Floats, LoopForecast, Ruler
from tests.farms import LOOP, MONDAY, farm_of

RULER = Ruler(start_on=MONDAY, weeks=20)
NITROGEN = ELEMENTS.index("n")


def loop_of(
    feed_g: float = 200.0, *, protein: float = 0.32, plants_n_g: float = 0.0, gas_share: float = 0.4
) -> LoopForecast:
    """Return a loop fed evenly: 32 % of the nitrogen kept, 15 % in solids, a share of all lost as gas."""
    days, elements = RULER.days, len(ELEMENTS)
    nitrogen = feed_g * protein / 6.25
    rows = {name: np.zeros((elements, days)) for name in ("content", "fish", "solids", "gas", "dissolved")}
    rows["content"][NITROGEN] = nitrogen
    rows["fish"][NITROGEN] = 0.32 * nitrogen
    rows["solids"][NITROGEN] = 0.15 * nitrogen
    rows["gas"][NITROGEN] = gas_share * nitrogen
    rows["dissolved"][NITROGEN] = (1.0 - 0.32 - 0.15 - gas_share) * nitrogen
    demand = np.zeros((elements, days))
    demand[NITROGEN] = plants_n_g
    return replace(
        _empty_loop(),
        feed_g=np.full(days, feed_g),
        **{f"{name}_g": values for name, values in rows.items()},
        demand_g=demand,
        protein_share=np.full(days, protein),
    )


def water_of(loop: Loop) -> Floats | None:
    """Return the water of a loop by day as its months say it [°C]."""
    return daily_series(loop.water_c, start_on=RULER.start_on, days=RULER.days, floor=0.0)


@cache
def _empty_loop() -> LoopForecast:
    """Return the forecast of a loop without fish and crops."""
    return Forecaster(shipped_catalogue()).forecast(farm_of()).loops[0]


def read(quantity: Quantity, value: float, day: int, *, factor: float | None = None) -> Reading:
    """Return a reading so many days after the first Monday."""
    return Reading(
        id=id_from("reading", quantity.value, str(day), str(value)),
        loop=LOOP.id,
        on=on_day(day),
        quantity=quantity,
        value=value,
        meter_factor=factor,
    )


def weekly(quantity: Quantity, *values: float) -> tuple[Reading, ...]:
    """Return readings a week apart from the first Monday."""
    return tuple(read(quantity, value, 7 * week) for week, value in enumerate(values))


def on_day(day: int) -> date:
    """Return the date so many days after the first Monday."""
    return MONDAY + timedelta(days=day)
