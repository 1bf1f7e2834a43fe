"""Makes a ration by weight and temperature out of a feeding table of the catalogue."""

from __future__ import annotations

import numpy as np

from planner.catalogue.catalogue import FeedingTable as PrintedTable
from planner.forecast.fish import Ration
from planner.science.feeding_table import FeedingTable, ration_interpolated


class TableRation:
    """Looks rations up in one table; beyond its edges the nearest printed figure holds."""

    def __init__(self, printed: PrintedTable) -> None:
        """Take the printed table up."""
        self._table = FeedingTable(
            temperature_c=np.asarray(printed.temperatures_c, dtype=np.float64),
            weight_g=np.asarray(printed.weights_g, dtype=np.float64),
            percent_per_day=np.asarray(printed.percent_per_day, dtype=np.float64),
        )
        self._weights = (printed.weights_g[0], printed.weights_g[-1])
        self._temperatures = (printed.temperatures_c[0], printed.temperatures_c[-1])

    @property
    def holds_at_c(self) -> float | None:
        """The one temperature that the table was printed for [°C]; None where it tells rations by warmth."""
        low, high = self._temperatures
        return low if low == high else None

    def __call__(self, weight_g: float, temperature_c: float) -> float:
        """Return the ration [% of body weight a day]."""
        weight = min(max(weight_g, self._weights[0]), self._weights[1])
        temperature = min(max(temperature_c, self._temperatures[0]), self._temperatures[1])
        return float(ration_interpolated(weight, temperature_c=temperature, table=self._table))


def table_ration(printed: PrintedTable) -> Ration:
    """Return the ration of a printed table."""
    return TableRation(printed)
