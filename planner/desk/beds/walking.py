"""Which hole lies beside another on the map, also across the edge of a unit. Must know nothing of Qt."""

from __future__ import annotations

from typing import Final, NamedTuple

from planner.desk.beds.layout import MapLayout, Plot
from planner.farm.fields import Id

_ASIDE: Final = 3.0
"""How much further a unit counts as away that lies aside of the way gone."""


class Spot(NamedTuple):
    """One place of a unit of a bed."""

    bed: Id
    unit: int
    place: int


class Way(NamedTuple):
    """A step over the map: places to the right, places down; one of them is 0."""

    across: int
    down: int


def first_spot(layout: MapLayout) -> Spot | None:
    """Return the first hole of all, None when there is none."""
    plot = next(iter(layout.plots), None)
    return None if plot is None else Spot(plot.bed.id, plot.unit, 1)


def beside(layout: MapLayout, spot: Spot, way: Way) -> Spot | None:
    """Return the hole beside another; at an edge the nearest one of the next unit that way."""
    plot = layout.plot(spot.bed, spot.unit)
    if plot is None:
        return None
    row, column = divmod(spot.place - 1, plot.bed.columns)
    row, column = row + way.down, column + way.across
    if 0 <= row < plot.bed.rows and 0 <= column < plot.bed.columns:
        return spot._replace(place=row * plot.bed.columns + column + 1)
    return _over_the_edge(layout, plot, spot, way)


def _over_the_edge(layout: MapLayout, plot: Plot, spot: Spot, way: Way) -> Spot | None:
    x, y = plot.corner(spot.place)
    ahead = [
        (_distance(other, x, y, way), at) for at, other in enumerate(layout.plots) if _lies(other, plot, way)
    ]
    if not ahead:
        return None
    other = layout.plots[min(ahead)[1]]
    half = plot.pitch / 2
    return Spot(other.bed.id, other.unit, other.place_at(x + half, y + half))


def _lies(other: Plot, plot: Plot, way: Way) -> bool:
    """Tell whether a plot lies to a side of another."""
    if way.across > 0:
        return other.x >= plot.x + plot.width
    if way.across < 0:
        return other.x + other.width <= plot.x
    return other.y >= plot.y + plot.height if way.down > 0 else other.y + other.height <= plot.y


def _distance(other: Plot, x: float, y: float, way: Way) -> float:
    far_x = abs(min(max(x, other.x), other.x + other.width) - x)
    far_y = abs(min(max(y, other.y), other.y + other.height) - y)
    return far_x + _ASIDE * far_y if way.across else far_y + _ASIDE * far_x
