"""A pump by the points of its curve, and the flow that a loop with more beds needs.

Must know nothing of farms but what is handed over as numbers.
"""

from __future__ import annotations

import itertools
from dataclasses import dataclass
from typing import Final

import numpy as np

from planner.farm.faults import FarmFaultError, Fault, FaultKind

_FEWEST: Final = 2


@dataclass(frozen=True, slots=True, kw_only=True)
class PumpCurve:
    """Points (head [m], flow [L/h]) as typed off a pump's sheet, the lowest head first.

    >>> curve = pump_curve(((0.0, 3000.0), (2.0, 1500.0), (1.0, 2400.0)))
    >>> curve.flow_at(1.5)
    1950.0
    """

    points: tuple[tuple[float, float], ...]

    @property
    def highest_m(self) -> float:
        """The highest head of the curve [m]."""
        return self.points[-1][0]

    @property
    def ends_in_nothing(self) -> bool:
        """Whether the curve goes on to where nothing flows any more."""
        return self.points[-1][1] <= 0.0

    def flow_at(self, head_m: float) -> float | None:
        """Return the flow at a head [L/h], straight between points; None where the curve is cut off.

        Below the first point its flow counts: more cannot be known. Above a curve that goes on to nothing,
        nothing flows.
        """
        if head_m > self.highest_m:
            return 0.0 if self.ends_in_nothing else None
        heads, flows = zip(*self.points, strict=True)
        return float(np.interp(head_m, heads, flows))


def pump_curve(points: tuple[tuple[float, float], ...]) -> PumpCurve:
    """Return the curve through points in any order.

    Raises `FarmFaultError` for fewer than two, two at one head, negative values, or flow rising with head.
    """
    ordered = tuple(sorted(points))
    if len(ordered) < _FEWEST:
        raise FarmFaultError((_fault(str(len(points)), f"{_FEWEST} points or more make a curve."),))
    for head, flow in ordered:
        if not (np.isfinite(head) and np.isfinite(flow)) or head < 0.0 or flow < 0.0:
            raise FarmFaultError(
                (_fault(f"{head:g}:{flow:g}", "head and flow must be numbers of 0 or more."),)
            )
    for (low, more), (high, less) in itertools.pairwise(ordered):
        if high <= low:
            raise FarmFaultError((_fault(f"{high:g}", "two points stand at one head."),))
        if less > more:
            words = f"flow must not rise with head, but does from {low:g} m to {high:g} m."
            raise FarmFaultError((_fault(f"{less:g}", words),))
    return PumpCurve(points=ordered)


def _fault(value: str, words: str) -> Fault:
    return Fault(
        kind=FaultKind.OUT_OF_LIMITS,
        where="pump",
        field="points",
        value=value,
        message=f"points: {value}: {words}",
        remedy='Give points as "0:3000,1:2400,2:1500": head in m, flow in L/h.',
    )
