"""Sets drawings into marks: scaled as a whole, or stretched across their room.

Must not know pages or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from planner.paper.marks import Fill, Frame, Mark, Oval, Pattern, Rule, Strip, Stroke, Tint
from planner.paper.measure import Face, width_mm
from planner.paper.report import Align
from planner.paper.setting import SetLine, Setter
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

_WHITE = 1.0
_PAD_EM = 0.15
_LETTERS_SHARE = 0.8
"""Height of letters and a little white over that of their line."""
"""White room left and right of a label that stands on a pattern, over its size."""


def drawing_strip(setter: Setter, drawing: Drawing, *, room_mm: float, room_high_mm: float) -> Strip:
    """Return a drawing that fits its room: a wide one stretched, else set smaller as a whole."""
    return _Scaled.of(setter, drawing, room_mm=room_mm, room_high_mm=room_high_mm).strip(drawing)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Scaled:
    """A setter of shapes whose lengths across, down, and whose type are scaled."""

    setter: Setter
    across: float
    down: float
    type: float

    @classmethod
    def of(cls, setter: Setter, drawing: Drawing, *, room_mm: float, room_high_mm: float) -> _Scaled:
        if drawing.wide:
            return cls(setter=setter, across=room_mm / drawing.width_mm, down=1.0, type=1.0)
        scale = min(1.0, room_mm / drawing.width_mm, room_high_mm / drawing.height_mm)
        return cls(setter=setter, across=scale, down=scale, type=scale)

    def strip(self, drawing: Drawing) -> Strip:
        marks = tuple(mark for shape in drawing.shapes for mark in self._shape(shape))
        return Strip(height_mm=drawing.height_mm * self.down, marks=marks)

    def _shape(self, shape: Shape) -> Iterator[Mark]:
        if isinstance(shape, DrawnLine):
            yield Rule(
                x_mm=shape.x1_mm * self.across,
                y_mm=shape.y1_mm * self.down,
                x2_mm=shape.x2_mm * self.across,
                y2_mm=shape.y2_mm * self.down,
                pt=shape.rule_pt,
            )
        elif isinstance(shape, DrawnRect):
            yield from self._rect(shape)
        elif isinstance(shape, DrawnText):
            yield self._text(shape)
        elif isinstance(shape, DrawnPath):
            yield self._path(shape)
        else:
            yield self._oval(shape)

    def _path(self, path: DrawnPath) -> Stroke:
        return Stroke(
            x_mm=0.0,
            y_mm=0.0,
            points_mm=tuple((x * self.across, y * self.down) for x, y in path.points_mm),
            pt=path.rule_pt,
            closed=path.closed,
            solid=path.solid and self.setter.style.solid,
            dashed=path.dashed,
        )

    def _oval(self, oval: DrawnOval) -> Oval:
        return Oval(
            x_mm=oval.x_mm * self.across,
            y_mm=oval.y_mm * self.down,
            width_mm=oval.width_mm * self.across,
            height_mm=oval.height_mm * self.down,
            pt=oval.rule_pt,
            solid=oval.solid and self.setter.style.solid,
        )

    def _text(self, text: DrawnText) -> Mark:
        line = SetLine(
            text=self.setter.readable(text.text),
            face=Face.BOLD if text.bold else Face.REGULAR,
            pt=text.pt * self.type,
        )
        width = self._width(line)
        shift = {Side.LEFT: 0.0, Side.MIDDLE: width / 2, Side.RIGHT: width}[text.side]
        return self.setter.words(
            line,
            x_mm=text.x_mm * self.across - shift,
            y_mm=text.y_mm * self.down,
            room_mm=width,
            align=Align.LEFT,
        )

    def _width(self, line: SetLine) -> float:
        return width_mm(self.setter.metrics, line.text, face=line.face, pt=line.pt)

    def _rect(self, rect: DrawnRect) -> Iterator[Mark]:
        style = self.setter.style
        x, width = rect.x_mm * self.across, rect.width_mm * self.across
        y, height = rect.y_mm * self.down, rect.height_mm * self.down
        if rect.tint and style.colour:
            yield Tint(x_mm=x, y_mm=y, width_mm=width, height_mm=height, colour=rect.tint)
        hatch = Hatch.CROSS if rect.hatch is Hatch.SOLID and not style.solid else rect.hatch
        if hatch is not Hatch.NONE:
            yield Pattern(x_mm=x, y_mm=y, width_mm=width, height_mm=height, hatch=hatch)
        if rect.rule_pt > 0:
            yield Frame(x_mm=x, y_mm=y, width_mm=width, height_mm=height, pt=rect.rule_pt)
        yield from self._label(rect, x=x, y=y, width=width, height=height)

    def _label(self, rect: DrawnRect, *, x: float, y: float, width: float, height: float) -> Iterator[Mark]:
        """Yield the label, or what stands instead of one too wide; on a pattern it has white behind it."""
        line = SetLine(text=self.setter.readable(rect.label), face=Face.BOLD, pt=rect.label_pt * self.type)
        if self._width(line) > width:
            line = SetLine(text=rect.instead or line.text, face=Face.BOLD, pt=line.pt)
        if not line.text:
            return
        base = y + (height - self.setter.height(line)) / 2 + self.setter.ascent(line)
        words = self.setter.words(line, x_mm=x, y_mm=base, room_mm=width, align=Align.CENTRE)
        if rect.hatch is not Hatch.NONE:
            pad = _PAD_EM * self.setter.height(line)
            back = min(self._width(line) + 2 * pad, width - pad)
            high = self.setter.height(line) * _LETTERS_SHARE
            yield Fill(
                x_mm=x + (width - back) / 2,
                y_mm=y + (height - high) / 2,
                width_mm=back,
                height_mm=high,
                grey=_WHITE,
            )
        yield words
