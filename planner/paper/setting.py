"""Sets text into marks and strips: single lines, paragraphs, warnings.

Must not know pages or toolkits.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Iterator
from dataclasses import dataclass, field

from planner.paper.marks import Frame, Mark, Strip, Words
from planner.paper.measure import Face, Fitted, FontMetrics, fit, width_mm, wrapped
from planner.paper.readable import readable
from planner.paper.report import Align, Caution, Paragraph, Size, Tone
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
    known: dict[tuple[str, Face, Size, float, int], tuple[SetLine, ...]] = field(
        default_factory=dict, compare=False, repr=False
    )
    """Texts that were fitted already: the same heading or place comes many times on one sheet."""

    def readable(self, text: str) -> str:
        """Return a text in which every letter can be drawn."""
        return readable(text, self.metrics.shows)

    def ascent(self, line: SetLine) -> float:
        """Return the height of a line above where it stands [mm]."""
        return self.metrics.ascent_em(line.face) * line.pt * MM_PER_PT * self.style.leading

    def height(self, line: SetLine) -> float:
        """Return the whole height of a line [mm]."""
        descent = self.metrics.descent_em(line.face) * line.pt * MM_PER_PT * self.style.leading
        return self.ascent(line) + descent

    def scaled(self, size: Size) -> Size:
        """Return a size of the report in the type that is wished for; wall sizes have their own."""
        scale = self.style.type_scale
        if scale == 1.0:
            return size
        return Size(best_pt=size.best_pt * scale, least_pt=size.least_pt * scale)

    def fitted(self, text: str, *, face: Face, size: Size, room_mm: float, wrap: int) -> tuple[SetLine, ...]:
        """Return a text wrapped, then set smaller, to fit a room."""
        key = (text, face, size, room_mm, wrap)
        found = self.known.get(key)
        if found is None:
            found = self.known[key] = self._fitted(text, face=face, size=size, room_mm=room_mm, wrap=wrap)
        return found

    def _fitted(self, text: str, *, face: Face, size: Size, room_mm: float, wrap: int) -> tuple[SetLine, ...]:
        done: Fitted = fit(
            self.metrics,
            self.readable(text),
            face=face,
            size=self.scaled(size),
            room_mm=room_mm - self.style.slack_mm,
            wrap=wrap,
            step_pt=self.style.shrink_pt,
        )
        return tuple(SetLine(text=line, face=face, pt=done.pt) for line in done.lines)

    def wrapped(self, text: str, *, face: Face, pt: float, room_mm: float) -> tuple[SetLine, ...]:
        """Return a text wrapped at one size."""
        room = room_mm - self.style.slack_mm
        lines = wrapped(self.metrics, self.readable(text), face=face, pt=pt, room_mm=room)
        return tuple(SetLine(text=line, face=face, pt=pt) for line in lines)

    def words(self, line: SetLine, *, x_mm: float, y_mm: float, room_mm: float, align: Align) -> Words:
        """Return a line put into a room that begins at `x_mm`, standing on `y_mm`."""
        if align is not Align.LEFT:
            spare = room_mm - width_mm(self.metrics, line.text, face=line.face, pt=line.pt)
            x_mm += spare if align is Align.RIGHT else spare / 2
        return Words(x_mm=x_mm, y_mm=y_mm, text=line.text, face=line.face, pt=line.pt, room_mm=room_mm)

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
        face = Face.REGULAR if paragraph.tone is Tone.DETAIL else Face.BOLD
        pt = self.types.section_pt if paragraph.tone is Tone.MAIN else self.types.body_pt
        lines = self.wrapped(paragraph.text, face=face, pt=pt, room_mm=room_mm - indent)
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
                keep=paragraph.leads if last else number in (0, len(lines) - 2),
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
        bottom, marks = self.stacked(title, x_mm=pad, y_mm=pad, room_mm=inner)
        for number, text in enumerate(caution.texts):
            lines = self.wrapped(text, face=Face.REGULAR, pt=self.types.body_pt, room_mm=inner)
            top = bottom + (pad if number else 0.0)
            bottom, more = self.stacked(lines, x_mm=pad, y_mm=top, room_mm=inner)
            marks = (*marks, *more)
        frame = Frame(
            x_mm=0.0, y_mm=0.0, width_mm=room_mm, height_mm=bottom + pad, pt=self.style.heavy_rule_pt
        )
        return Strip(height_mm=bottom + pad + self.style.gap_mm, marks=(frame, *marks))
