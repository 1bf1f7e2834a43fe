"""Charts for plain readers: bars, a line, dots in a band; black lines, few numbers, words at the ends.

Must not know farms, reports or layout.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Final

from planner.paper.documents.amounts import number_words
from planner.paper.shapes import (
    Drawing,
    DrawnLine,
    DrawnOval,
    DrawnPath,
    DrawnRect,
    DrawnText,
    Hatch,
    Shape,
    Side,
)

_PT: Final = 9.0
_LEFT_MM: Final = 15.0
_TOP_MM: Final = 4.0
_FOOT_MM: Final = 6.0
_DOT_MM: Final = 2.0
_BAND_TINT: Final = "#E2F1E7"
_BAR_TINT: Final = "#CDEBDD"
_STEPS: Final = (1.0, 2.0, 2.5, 5.0, 10.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class Frame:
    """Where a chart stands: its size [mm], and the values at its foot and top, and at its left and right."""

    width_mm: float
    height_mm: float
    low: float
    high: float
    first: float
    last: float

    @property
    def right_mm(self) -> float:
        """Right edge of the ground."""
        return self.width_mm - 2.0

    @property
    def foot_mm(self) -> float:
        """Lower edge of the ground."""
        return self.height_mm - _FOOT_MM

    def x(self, value: float) -> float:
        """Return where a value stands across."""
        span = (self.last - self.first) or 1.0
        return _LEFT_MM + (self.right_mm - _LEFT_MM) * (value - self.first) / span

    def y(self, value: float) -> float:
        """Return where a value stands up."""
        span = (self.high - self.low) or 1.0
        return self.foot_mm - (self.foot_mm - _TOP_MM) * (value - self.low) / span

    def ground(self, ticks: Sequence[float], names: Sequence[tuple[float, str]]) -> Iterator[Shape]:
        """Yield the edges, a line and number for each tick, and names along the foot."""
        for tick in ticks:
            y = self.y(tick)
            yield DrawnLine(x1_mm=_LEFT_MM, y1_mm=y, x2_mm=self.right_mm, y2_mm=y, rule_pt=0.5)
            yield DrawnText(
                x_mm=_LEFT_MM - 1.5, y_mm=y + 1.2, text=number_words(tick), pt=_PT, side=Side.RIGHT
            )
        yield DrawnLine(x1_mm=_LEFT_MM, y1_mm=_TOP_MM, x2_mm=_LEFT_MM, y2_mm=self.foot_mm, rule_pt=1.0)
        yield DrawnLine(
            x1_mm=_LEFT_MM, y1_mm=self.foot_mm, x2_mm=self.right_mm, y2_mm=self.foot_mm, rule_pt=1.0
        )
        for at, text in names:
            yield DrawnText(x_mm=self.x(at), y_mm=self.height_mm - 1.2, text=text, pt=_PT, side=Side.MIDDLE)

    def drawing(self, shapes: Sequence[Shape], says: str) -> Drawing:
        """Return the chart."""
        return Drawing(width_mm=self.width_mm, height_mm=self.height_mm, shapes=tuple(shapes), says=says)


def ticks_of(low: float, high: float) -> tuple[float, ...]:
    """Return two to seven round numbers from at or below `low` to at or above `high`.

    >>> ticks_of(0, 23), ticks_of(6.4, 7.2)
    ((0.0, 10.0, 20.0, 30.0), (6.4, 6.6, 6.8, 7.0, 7.2))
    """
    span = max(high - low, abs(high) * 0.05, 1e-6)
    size = 10.0 ** _exponent(span / 4)
    step = next(size * part for part in _STEPS if size * part >= span / 4)
    first = (low + 1e-9 * step) // step
    count = 1
    while (first + count) * step < high - 1e-9 * step:
        count += 1
    return tuple(round((first + at) * step, 10) for at in range(count + 1))


def _exponent(value: float) -> int:
    power = 0
    while value >= 10.0:
        value, power = value / 10.0, power + 1
    while value < 1.0:
        value, power = value * 10.0, power - 1
    return power


def bar_chart(
    amounts: Sequence[float],
    names: Sequence[str],
    *,
    wanted: Sequence[float],
    width_mm: float,
    height_mm: float,
) -> Drawing:
    """Return a bar for each name with its number above; what is wanted is a dashed line across its bar."""
    ticks = ticks_of(0.0, max([*amounts, *wanted, 1.0]))
    frame = Frame(
        width_mm=width_mm, height_mm=height_mm, low=0.0, high=ticks[-1], first=-0.5, last=len(amounts) - 0.5
    )
    shapes = list(frame.ground(ticks, [(float(at), name) for at, name in enumerate(names)]))
    for at, amount in enumerate(amounts):
        left, right = frame.x(at - 0.32), frame.x(at + 0.32)
        top = frame.y(amount)
        if amount > 0:
            shapes.append(
                DrawnRect(
                    x_mm=left, y_mm=top, width_mm=right - left, height_mm=frame.foot_mm - top, tint=_BAR_TINT,
                    hatch=Hatch.SLANT, label=number_words(round(amount, 1)), instead=" ",
                )
            )  # fmt: skip
        if wanted[at] > 0:
            y = frame.y(wanted[at])
            points = ((frame.x(at - 0.45), y), (frame.x(at + 0.45), y))
            shapes.append(DrawnPath(points_mm=points, rule_pt=1.5, dashed=True))
    said = ", ".join(f"{name} {number_words(amount)}" for name, amount in zip(names, amounts, strict=True))
    return frame.drawing(shapes, f"bars: {said}")


def line_chart(
    line: Sequence[tuple[float, float]],
    dots: Sequence[tuple[float, float]],
    names: Sequence[tuple[float, str]],
    *,
    width_mm: float,
    height_mm: float,
) -> Drawing:
    """Return a line through (x, y), with dots for what was measured."""
    values = [y for _, y in (*line, *dots)]
    ticks = ticks_of(0.0, max([*values, 1.0]))
    ends = [x for x, _ in (*line, *names)]
    frame = Frame(
        width_mm=width_mm, height_mm=height_mm, low=0.0, high=ticks[-1], first=min(ends), last=max(ends)
    )
    shapes = list(frame.ground(ticks, names))
    shapes.append(DrawnPath(points_mm=tuple((frame.x(x), frame.y(y)) for x, y in line), rule_pt=1.8))
    shapes.extend(_dots(frame, dots))
    return frame.drawing(shapes, f"a line from {number_words(line[0][1])} to {number_words(line[-1][1])}")


def band_chart(
    title: str,
    dots: Sequence[tuple[float, float]],
    band: tuple[float | None, float | None],
    ends: tuple[float, float],
    names: Sequence[tuple[float, str]],
    *,
    size_mm: tuple[float, float],
) -> Drawing:
    """Return readings as dots joined by a line, in front of the band they should keep to."""
    known = [value for value in band if value is not None]
    values = [*(y for _, y in dots), *known]
    ticks = ticks_of(0.0 if band[0] is None else min(values), max(values))
    frame = Frame(
        width_mm=size_mm[0], height_mm=size_mm[1], low=ticks[0], high=ticks[-1], first=ends[0], last=ends[1]
    )
    low, high = (
        frame.y(band[0] if band[0] is not None else ticks[0]),
        frame.y(band[1] if band[1] is not None else ticks[-1]),
    )
    shapes: list[Shape] = [
        DrawnRect(
            x_mm=_LEFT_MM, y_mm=high, width_mm=frame.right_mm - _LEFT_MM, height_mm=low - high,
            tint=_BAND_TINT, rule_pt=0.5, hatch=Hatch.DOTS,
        ),
        *frame.ground(ticks, names),
        DrawnText(x_mm=_LEFT_MM, y_mm=2.9, text=title, pt=_PT, bold=True),
    ]  # fmt: skip
    if len(dots) > 1:
        shapes.append(DrawnPath(points_mm=tuple((frame.x(x), frame.y(y)) for x, y in dots), rule_pt=1.0))
    shapes.extend(_dots(frame, dots))
    return frame.drawing(shapes, f"{title}: {', '.join(number_words(y) for _, y in dots)}")


def _dots(frame: Frame, dots: Sequence[tuple[float, float]]) -> Iterator[Shape]:
    for x, y in dots:
        yield DrawnOval(
            x_mm=frame.x(x) - _DOT_MM / 2,
            y_mm=frame.y(y) - _DOT_MM / 2,
            width_mm=_DOT_MM,
            height_mm=_DOT_MM,
            solid=True,
        )


def side_by_side(drawings: Sequence[Drawing], *, gap_mm: float) -> Drawing:
    """Return drawings beside each other as one."""
    shapes: list[Shape] = []
    left = 0.0
    for drawing in drawings:
        shapes.extend(_moved(shape, left) for shape in drawing.shapes)
        left += drawing.width_mm + gap_mm
    return Drawing(
        width_mm=left - gap_mm,
        height_mm=max(drawing.height_mm for drawing in drawings),
        shapes=tuple(shapes),
        says="; ".join(drawing.says for drawing in drawings),
    )


def _moved(shape: Shape, by_mm: float) -> Shape:
    if isinstance(shape, DrawnLine):
        return replace(shape, x1_mm=shape.x1_mm + by_mm, x2_mm=shape.x2_mm + by_mm)
    if isinstance(shape, DrawnPath):
        return replace(shape, points_mm=tuple((x + by_mm, y) for x, y in shape.points_mm))
    return replace(shape, x_mm=shape.x_mm + by_mm)
