"""Where every bed and every unit of it lies on the map, to one scale, and which hole is at a point.

Each bed stands on the square pitch that its area gives its places. Beds flow like words on a page: how they
lie to each other on the ground is not known. Pure arithmetic; must know nothing of Qt.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Final

from planner.farm.fields import Id
from planner.farm.site import Bed

GAP: Final = 12.0
"""Free ground around a unit [px]."""

LABEL_SHARE: Final = 1.25
"""Height of the line above a unit, in heights of a line of text."""

_LEAST_BLOCK_EMS: Final = 15.0
_MOST_PITCH_PX: Final = 40.0
_GOOD_PITCH_PX: Final = 30.0
_LEAST_PX_PER_M: Final = 4.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Sizes:
    """What the layout must know of the screen [px]: its width, a line of text, and pixels to a metre."""

    width: float
    line: float
    px_per_m: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Plot:
    """One raft, block or tray on the map [px]; holes are `pitch` apart."""

    bed: Bed
    unit: int
    x: float
    y: float
    pitch: float

    @property
    def width(self) -> float:
        """Width [px]."""
        return self.pitch * self.bed.columns

    @property
    def height(self) -> float:
        """Height [px]."""
        return self.pitch * self.bed.rows

    def corner(self, place: int) -> tuple[float, float]:
        """Return the upper left corner of the square around a place [px]."""
        row, column = divmod(place - 1, self.bed.columns)
        return self.x + column * self.pitch, self.y + row * self.pitch

    def place_at(self, x: float, y: float) -> int:
        """Return the place of the unit that is nearest to a point."""
        column = min(max(int((x - self.x) / self.pitch), 0), self.bed.columns - 1)
        row = min(max(int((y - self.y) / self.pitch), 0), self.bed.rows - 1)
        return row * self.bed.columns + column + 1

    def holds(self, x: float, y: float) -> bool:
        """Tell whether a point lies on the unit."""
        return self.x <= x < self.x + self.width and self.y <= y < self.y + self.height


@dataclass(frozen=True, slots=True, kw_only=True)
class Heading:
    """The line that names a bed, with the room it has [px]."""

    bed: Bed
    x: float
    y: float
    width: float


@dataclass(frozen=True, slots=True, kw_only=True)
class MapLayout:
    """All of the map from top to bottom."""

    plots: tuple[Plot, ...]
    headings: tuple[Heading, ...]
    width: float
    height: float
    position: dict[tuple[Id, int], int]

    def between(self, top: float, bottom: float) -> Iterable[Plot]:
        """Yield the plots that are at least partly between two heights."""
        return (plot for plot in self.plots if plot.y < bottom and plot.y + plot.height > top)

    def at(self, x: float, y: float) -> tuple[Plot, int] | None:
        """Return the plot and its place at a point, None on bare ground."""
        plot = next((plot for plot in self.plots if plot.holds(x, y)), None)
        return None if plot is None else (plot, plot.place_at(x, y))

    def plot(self, bed: Id, unit: int) -> Plot | None:
        """Return the plot of a unit, None when it is not shown."""
        at = self.position.get((bed, unit))
        return None if at is None else self.plots[at]


def pitch_m(bed: Bed) -> float:
    """Return how far apart the places of a bed are [m], on a square pitch.

    >>> from planner.farm.species import BedKind
    >>> from planner.farm.fields import Id
    >>> bed = Bed(id=Id("b"), name="Raft", loop=Id("l"), kind=BedKind.RAFT, rows=6, columns=12, area_m2=2.88)
    >>> pitch_m(bed)
    0.2
    """
    return round(math.sqrt(bed.place_area_m2), 9)


def fitting_scale(beds: Sequence[Bed], width_px: float) -> float:
    """Return pixels to a metre at which holes can be read and the widest unit fits, where both can be."""
    if not beds:
        return _LEAST_PX_PER_M
    final = [bed for bed in beds if bed.units * bed.places > 0]
    widest = max(pitch_m(bed) * bed.columns for bed in final)
    coarsest = max(pitch_m(bed) for bed in final)
    finest = min(pitch_m(bed) for bed in final)
    room = (width_px - 2 * GAP) / widest
    readable = min(_GOOD_PITCH_PX / finest, _MOST_PITCH_PX / coarsest)
    return max(min(room, readable), _LEAST_PX_PER_M)


def laid_out(beds: Sequence[Bed], sizes: Sizes) -> MapLayout:
    """Return the layout of some beds on a page of a width."""
    plots: list[Plot] = []
    headings: list[Heading] = []
    x, y, high, widest = GAP, GAP, 0.0, 0.0
    for bed in beds:
        block = _Block(bed, sizes)
        if x > GAP and x + block.width > sizes.width - GAP:
            x, y, high = GAP, y + high, 0.0
        headings.append(Heading(bed=bed, x=x, y=y, width=block.width))
        plots.extend(block.plots(x, y))
        widest = max(widest, x + block.width)
        x += block.width + 2 * GAP
        high = max(high, block.height + 2 * GAP)
    return MapLayout(
        plots=tuple(plots),
        headings=tuple(headings),
        width=widest + GAP,
        height=y + high,
        position={(plot.bed.id, plot.unit): at for at, plot in enumerate(plots)},
    )


class _Block:
    """A bed with all its units, as many beside each other as there is room for."""

    def __init__(self, bed: Bed, sizes: Sizes) -> None:
        self._bed = bed
        self._pitch = pitch_m(bed) * sizes.px_per_m
        self._head = sizes.line * 1.6
        self._label = sizes.line * LABEL_SHARE if bed.units > 1 else 0.0
        self._unit_width = self._pitch * bed.columns + GAP
        self._unit_height = self._pitch * bed.rows + self._label + GAP
        room = max(int((sizes.width - 2 * GAP) // self._unit_width), 1)
        self._across = min(bed.units, room)
        lines = -(-bed.units // self._across)
        self.width = max(self._across * self._unit_width, sizes.line * _LEAST_BLOCK_EMS)
        self.height = self._head + lines * self._unit_height

    def plots(self, x: float, y: float) -> Iterable[Plot]:
        for unit in range(1, self._bed.units + 1):
            line, across = divmod(unit - 1, self._across)
            yield Plot(
                bed=self._bed,
                unit=unit,
                x=x + across * self._unit_width,
                y=y + self._head + self._label + line * self._unit_height,
                pitch=self._pitch,
            )


def row_boxes(plot: Plot, first: int, last: int) -> list[tuple[float, float, float, float]]:
    """Return x, y, width and height of the box around the places of a span in each row it touches [px]."""
    found = []
    columns = plot.bed.columns
    while first <= last:
        end = min(last, -(-first // columns) * columns)
        x, y = plot.corner(first)
        found.append((x, y, (end - first + 1) * plot.pitch, plot.pitch))
        first = end + 1
    return found
