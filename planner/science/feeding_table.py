"""Feeding tables: percent of body weight a day by fish weight and water temperature.

A table is read by size class, as printed, or by straight lines between the middles of the classes.
Must not know species: charts differ by a factor of two and the user picks one.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from planner.science.limits import (
    FloatArray,
    IntArray,
    T,
    Values,
    require_at_least,
    require_between,
    require_rising,
    shaped_like,
)

_G_PER_KG = 1000.0


@dataclass(frozen=True, slots=True, kw_only=True)
class FeedingTable:
    """Nodes of a feeding table: percent[i, j] at temperature_c[i] and weight_g[j]."""

    temperature_c: FloatArray
    """[degC], shape (row,), rising."""
    weight_g: FloatArray
    """[g], shape (column,), rising."""
    percent_per_day: FloatArray
    """[% of body weight/d], shape (row, column)."""

    def __post_init__(self) -> None:
        """Refuse a table whose nodes do not rise or do not match its body."""
        require_rising("table temperatures", self.temperature_c, unit="degC")
        require_rising("table weights", self.weight_g, unit="g")
        require_at_least("ration in table", self.percent_per_day, low=0.0, unit="%/d")
        wanted = (self.temperature_c.size, self.weight_g.size)
        if self.percent_per_day.shape != wanted or 0 in wanted:
            raise ValueError(f"feeding table has shape {self.percent_per_day.shape}; it must be {wanted}")


def class_middles_g(class_from_g: FloatArray) -> FloatArray:
    """Middles of the size classes of a printed table [g].

    class_from_g [g], shape (class + 1,), rising bounds. Returns shape (class,).

    >>> class_middles_g(np.array([23.0, 39.0, 62.0])).tolist()
    [31.0, 50.5]
    """
    require_rising("class bounds", class_from_g, unit="g")
    return (class_from_g[:-1] + class_from_g[1:]) / 2.0


def ration_by_class(weight_g: float, *, class_from_g: FloatArray, percent_per_day: FloatArray) -> float:
    """Ration of the size class a weight falls in, as printed [% of body weight/d].

    weight_g [g] at or above the first lower bound; class_from_g [g], shape (class,), rising lower bounds;
    percent_per_day [%/d], shape (class,). Source: leitritz1980 for trout.

    >>> classes = dict(class_from_g=np.array([23.0, 39.0, 62.0]), percent_per_day=np.array([2.0, 1.6, 1.4]))
    >>> ration_by_class(50.0, **classes)
    1.6
    """
    require_rising("class bounds", class_from_g, unit="g")
    require_at_least("weight", weight_g, low=float(class_from_g[0]), unit="g")
    return float(percent_per_day[int(np.searchsorted(class_from_g, weight_g, side="right")) - 1])


def ration_interpolated(weight_g: T, *, temperature_c: Values, table: FeedingTable) -> T:
    """Ration by straight lines between the nodes of a table, both ways [% of body weight/d].

    weight_g [g] and temperature_c [degC] within the table. At a node it is the printed figure.
    Source: worldaq2009 (teaching table), leitritz1980.

    >>> table = FeedingTable(
    ...     temperature_c=np.array([5.0, 8.0]),
    ...     weight_g=np.array([10.0, 20.0]),
    ...     percent_per_day=np.array([[2.0, 1.0], [4.0, 3.0]]),
    ... )
    >>> ration_interpolated(15.0, temperature_c=6.5, table=table)
    2.5
    """
    weights, temperatures = table.weight_g, table.temperature_c
    require_between("weight", weight_g, low=float(weights[0]), high=float(weights[-1]), unit="g")
    require_between(
        "temperature", temperature_c, low=float(temperatures[0]), high=float(temperatures[-1]), unit="degC"
    )
    column, across = _cell(weights, weight_g)
    row, down = _cell(temperatures, temperature_c)
    next_column = np.minimum(column + 1, weights.size - 1)
    next_row = np.minimum(row + 1, temperatures.size - 1)
    body = table.percent_per_day
    upper = body[row, column] * (1.0 - across) + body[row, next_column] * across
    lower = body[next_row, column] * (1.0 - across) + body[next_row, next_column] * across
    return shaped_like(weight_g, upper * (1.0 - down) + lower * down)


def feed_for_stock_kg(number: T, *, weight_g: Values, percent_per_day: Values) -> T:
    """Daily feed of a stock at a ration [kg/d].

    number [1] >= 0; weight_g [g] >= 0; percent_per_day [% of body weight/d] >= 0.

    >>> round(feed_for_stock_kg(10_000.0, weight_g=10.0, percent_per_day=7.0), 6)
    7.0
    """
    require_at_least("number of fish", number, low=0.0)
    require_at_least("weight", weight_g, low=0.0, unit="g")
    require_at_least("ration", percent_per_day, low=0.0, unit="%/d")
    biomass_kg = np.asarray(number) * weight_g / _G_PER_KG
    return shaped_like(number, biomass_kg * percent_per_day / 100.0)


def _cell(nodes: FloatArray, value: Values) -> tuple[IntArray, FloatArray]:
    """Index of the node below a value and how far the value is towards the next, 0..1."""
    if nodes.size == 1:
        return np.zeros(np.shape(value), dtype=np.int64), np.zeros(np.shape(value))
    below = np.clip(np.searchsorted(nodes, value, side="right") - 1, 0, nodes.size - 2)
    return below, (np.asarray(value) - nodes[below]) / (nodes[below + 1] - nodes[below])
