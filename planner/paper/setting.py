"""Sets text into marks and strips: single lines, paragraphs, warnings, drawings.

Must not know pages or toolkits.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Iterator
from dataclasses import dataclass

from planner.paper.marks import Frame, Mark, Pattern, Rule, Strip, Words
from planner.paper.measure import Face, Fitted, FontMetrics, fit, width_mm, wrapped
from planner.paper.report import (
    Align,
    Caution,
    Drawing,
    DrawnLine,
    DrawnRect,
    Hatch,
    Paragraph,
    Shape,
    Size,
)
from planner.paper.style import MM_PER_PT, PaperStyle, TypeSizes


@dataclass(frozen=True, slots=True, kw_only=True)
class SetLine:
    """One line of text with its type."""

    text: str
    face: Face
    pt: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Setter:
    """Turns texts into marks with one set of sizes and one way of measuring."""

    metrics: FontMetrics
    style: PaperStyle
    types: TypeSizes

    def ascent(self, line: SetLine) -> float:
        """Return the height of a line above where it stands [mm]."""
        return self.metrics.ascent_em(line.face) * line.pt * MM_PER_PT * self.style.leading

    def height(self, line: SetLine) -> float:
        """Return the whole height of a line [mm]."""
        descent = self.metrics.descent_em(line.face) * line.pt * MM_PER_PT * self.style.leading
        return self.ascent(line) + descent

    def fitted(self, text: str, *, face: Face, size: Size, room_mm: float, wrap: int) -> tuple[SetLine, ...]:
        """Return a text wrapped, then set smaller, to fit a room."""
        done: Fitted = fit(
            self.metrics,
            text,
            face=face,
            size=size,
            room_mm=room_mm - self.style.slack_mm,
            wrap=wrap,
            step_pt=self.style.shrink_pt,
        )
        return tuple(SetLine(text=line, face=face, pt=done.pt) for line in done.lines)

    def wrapped(self, text: str, *, face: Face, pt: float, room_mm: float) -> tuple[SetLine, ...]:
        """Return a text wrapped at one size."""
        lines = wrapped(self.metrics, text, face=face, pt=pt, room_mm=room_mm - self.style.slack_mm)
        return tuple(SetLine(text=line, face=face, pt=pt) for line in lines)

    def words(self, line: SetLine, *, x_mm: float, y_mm: float, room_mm: float, align: Align) -> Words:
        """Return a line put into a room that begins at `x_mm`, standing on `y_mm`."""
        spare = room_mm - width_mm(self.metrics, line.text, face=line.face, pt=line.pt)
        shift = {Align.LEFT: 0.0, Align.CENTRE: spare / 2, Align.RIGHT: spare}[align]
        return Words(
            x_mm=x_mm + shift, y_mm=y_mm, text=line.text, face=line.face, pt=line.pt, room_mm=room_mm
        )

    def stacked(
        self,
        lines: tuple[SetLine, ...],
        *,
        x_mm: float,
        y_mm: float,
        room_mm: float,
        align: Align = Align.LEFT,
    ) -> tuple[float, tuple[Mark, ...]]:
        """Return the bottom of lines put below each other from `y_mm` down, and their marks."""
        marks = []
        for line in lines:
            marks.append(
                self.words(line, x_mm=x_mm, y_mm=y_mm + self.ascent(line), room_mm=room_mm, align=align)
            )
            y_mm += self.height(line)
        return y_mm, tuple(marks)

    def text_strip(
        self,
        text: str,
        *,
        face: Face,
        pt: float,
        room_mm: float,
        after_mm: float = 0.0,
        keep: bool = False,
    ) -> Strip:
        """Return a text as one strip that is never broken."""
        lines = self.wrapped(text, face=face, pt=pt, room_mm=room_mm)
        bottom, marks = self.stacked(lines, x_mm=0.0, y_mm=0.0, room_mm=room_mm)
        return Strip(height_mm=bottom + after_mm, marks=marks, keep=keep)

    def heading(self, text: str, *, room_mm: float) -> Strip:
        """Return the heading of a section, kept with what follows."""
        return self.text_strip(
            text,
            face=Face.BOLD,
            pt=self.types.section_pt,
            room_mm=room_mm,
            after_mm=self.style.gap_mm / 2,
            keep=True,
        )

    def paragraph(self, paragraph: Paragraph, *, room_mm: float) -> Iterator[Strip]:
        """Yield a paragraph line by line; its first two and its last two lines stay together."""
        indent = self.style.item_indent_mm if paragraph.item else 0.0
        lines = self.wrapped(
            paragraph.text, face=Face.REGULAR, pt=self.types.body_pt, room_mm=room_mm - indent
        )
        for number, line in enumerate(lines):
            last = number == len(lines) - 1
            marks: list[Mark] = [
                self.words(
                    line, x_mm=indent, y_mm=self.ascent(line), room_mm=room_mm - indent, align=Align.LEFT
                )
            ]
            if paragraph.item and number == 0:
                mark = dataclasses.replace(line, text=self.style.item_mark)
                marks.append(
                    self.words(mark, x_mm=0.0, y_mm=self.ascent(line), room_mm=indent, align=Align.LEFT)
                )
            yield Strip(
                height_mm=self.height(line) + (self.style.gap_mm if last else 0.0),
                marks=tuple(marks),
                keep=not last and number in (0, len(lines) - 2),
            )

    def caution(self, caution: Caution, *, room_mm: float) -> Strip:
        """Return a warning in a heavy frame, with a mark before its title."""
        pad = self.style.gap_mm
        inner = room_mm - 2 * pad
        title = self.wrapped(
            f"{self.style.caution_mark} {caution.title}",
            face=Face.BOLD,
            pt=self.types.body_pt,
            room_mm=inner,
        )
        text = self.wrapped(caution.text, face=Face.REGULAR, pt=self.types.body_pt, room_mm=inner)
        bottom, marks = self.stacked(title + text, x_mm=pad, y_mm=pad, room_mm=inner)
        frame = Frame(
            x_mm=0.0, y_mm=0.0, width_mm=room_mm, height_mm=bottom + pad, pt=self.style.heavy_rule_pt
        )
        return Strip(height_mm=bottom + pad + self.style.gap_mm, marks=(frame, *marks))

    def drawing(self, drawing: Drawing, *, room_mm: float, room_high_mm: float) -> Strip:
        """Return a drawing, set smaller as a whole when it is wider or higher than its room."""
        scale = min(1.0, room_mm / drawing.width_mm, room_high_mm / drawing.height_mm)
        marks = tuple(mark for shape in drawing.shapes for mark in self._shape(shape, scale))
        return Strip(height_mm=drawing.height_mm * scale, marks=marks)

    def _shape(self, shape: Shape, scale: float) -> Iterator[Mark]:
        if isinstance(shape, DrawnLine):
            yield Rule(
                x_mm=shape.x1_mm * scale,
                y_mm=shape.y1_mm * scale,
                x2_mm=shape.x2_mm * scale,
                y2_mm=shape.y2_mm * scale,
                pt=shape.rule_pt,
            )
        elif isinstance(shape, DrawnRect):
            yield from self._rect(shape, scale)
        else:
            line = SetLine(
                text=shape.text, face=Face.BOLD if shape.bold else Face.REGULAR, pt=shape.pt * scale
            )
            room = width_mm(self.metrics, line.text, face=line.face, pt=line.pt)
            yield self.words(
                line, x_mm=shape.x_mm * scale, y_mm=shape.y_mm * scale, room_mm=room, align=Align.LEFT
            )

    def _rect(self, rect: DrawnRect, scale: float) -> Iterator[Mark]:
        x, y, width, height = (side * scale for side in (rect.x_mm, rect.y_mm, rect.width_mm, rect.height_mm))
        if rect.hatch is not Hatch.NONE:
            yield Pattern(x_mm=x, y_mm=y, width_mm=width, height_mm=height, hatch=rect.hatch)
        yield Frame(x_mm=x, y_mm=y, width_mm=width, height_mm=height, pt=rect.rule_pt)
        if rect.label:
            line = SetLine(text=rect.label, face=Face.BOLD, pt=rect.label_pt * scale)
            base = y + (height - self.height(line)) / 2 + self.ascent(line)
            yield self.words(line, x_mm=x, y_mm=base, room_mm=width, align=Align.CENTRE)
