"""Breaks a report into pages: what is kept together, what comes again, where each mark stands.

Pure: measuring is asked of a `FontMetrics`. Must not know any toolkit.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import groupby
from typing import Final

from planner.paper.drawn import drawing_strip
from planner.paper.filling import Filler, Flow
from planner.paper.marks import ColumnFlow, Group, Page, Placed, Rule, Strip
from planner.paper.measure import Face, FontMetrics
from planner.paper.report import Align, Caution, Drawing, Paragraph, Part, Report, Section, Table
from planner.paper.setting import SetLine, Setter
from planner.paper.style import STYLE, Paper, PaperStyle
from planner.paper.tables import TableSetter
from planner.paper.words import moment_words

_BESIDE: Final = "  ·  "


def pages_of(
    report: Report, paper: Paper, metrics: FontMetrics, *, style: PaperStyle = STYLE
) -> tuple[Page, ...]:
    """Return the pages of a report on a paper; there is always at least one."""
    setter = Setter(metrics=metrics, style=style, types=style.type_for(large=report.large))
    sheet = Sheet(report=report, paper=paper, setter=setter)
    bodies = sheet.bodies()
    return tuple(
        Page(number=number, count=len(bodies), paper=paper, placed=sheet.whole(body, number, len(bodies)))
        for number, body in enumerate(bodies, start=1)
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """One report on one paper."""

    report: Report
    paper: Paper
    setter: Setter

    @property
    def left(self) -> float:
        """Left edge of what is printed [mm]."""
        return self.setter.style.punch_margin_mm

    @property
    def width(self) -> float:
        """Width of what is printed [mm]."""
        return self.paper.width_mm - self.left - self.setter.style.margin_mm

    def bodies(self) -> list[list[Placed]]:
        """Return the marks between head and foot of every page."""
        style = self.setter.style
        tops = tuple(
            style.margin_mm + strip.height_mm + style.gap_mm for strip in (self._title(), self._running())
        )
        bottom = self.paper.height_mm - style.margin_mm - self._foot(1, 1).height_mm - style.gap_mm
        room = bottom - max(tops)
        flow = [item for section in self.report.sections for item in self._section(section, room)]
        return Filler(tops=(tops[0], tops[1]), bottom=bottom, left=self.left).fill(flow)

    def whole(self, body: list[Placed], number: int, count: int) -> tuple[Placed, ...]:
        """Return a page with its head and foot."""
        top = self.setter.style.margin_mm
        head = self._title() if number == 1 else self._running()
        foot = self._foot(number, count)
        low = self.paper.height_mm - top - foot.height_mm
        return (
            Group(x_mm=self.left, y_mm=top, marks=head.marks),
            *body,
            Group(x_mm=self.left, y_mm=low, marks=foot.marks),
        )

    def _title(self) -> Strip:
        types, report = self.setter.types, self.report
        lines: list[SetLine] = []
        for text, face, pt in (
            (report.title, Face.BOLD, types.title_pt),
            (report.subtitle, Face.BOLD, types.subtitle_pt),
            *((line, Face.REGULAR, types.header_pt) for line in report.header_lines),
        ):
            lines.extend(self.setter.wrapped(text, face=face, pt=pt, room_mm=self.width))
        bottom, marks = self.setter.stacked(tuple(lines), x_mm=0.0, y_mm=0.0, room_mm=self.width)
        return Strip(height_mm=bottom, marks=marks)

    def _running(self) -> Strip:
        report = self.report
        text = _BESIDE.join(part for part in (report.title, report.subtitle) if part)
        return self.setter.text_strip(
            text, face=Face.BOLD, pt=self.setter.types.running_pt, room_mm=self.width
        )

    def _foot(self, number: int, count: int) -> Strip:
        """Return the foot: whose plan, which plan, when printed, and which page of how many."""
        pt, gap = self.setter.types.footer_pt, self.setter.style.gap_mm
        page = SetLine(text=f"page {number} of {count}", face=Face.BOLD, pt=pt)
        facts = f"Plan {self.report.plan_mark}{_BESIDE}printed {moment_words(self.report.printed_on)}"
        name = self.setter.wrapped(self.report.farm_name, face=Face.BOLD, pt=pt, room_mm=self.width)
        y, marks = self.setter.stacked(name, x_mm=0.0, y_mm=gap / 2, room_mm=self.width)
        room = self.width * 2 / 3
        lines = self.setter.wrapped(facts, face=Face.REGULAR, pt=pt, room_mm=room)
        bottom, more = self.setter.stacked(lines, x_mm=0.0, y_mm=y, room_mm=room)
        right = self.setter.words(
            page,
            x_mm=room,
            y_mm=y + self.setter.ascent(page),
            room_mm=self.width - room,
            align=Align.RIGHT,
        )
        line = Rule(x_mm=0.0, y_mm=0.0, x2_mm=self.width, y2_mm=0.0, pt=self.setter.style.rule_pt)
        return Strip(height_mm=bottom, marks=(line, *marks, *more, right))

    def _section(self, section: Section, room: float) -> Iterator[Flow]:
        lead = [Strip(height_mm=self.setter.style.section_gap_mm, keep=True, turn=section.new_page)]
        if section.heading:
            lead.append(self.setter.heading(section.heading, room_mm=self.width))
        for is_text, parts in groupby(section.parts, key=_is_text):
            if is_text and section.columns > 1:
                yield self._in_columns(tuple(parts), section.columns, room, tuple(lead))
            else:
                yield from lead
                yield from self._parts_below(parts, room)
            lead = []

    def _parts_below(self, parts: Iterable[Part], room: float) -> Iterator[Strip]:
        """Yield parts one below the other; a table or drawing has a gap before what follows it."""
        gap: tuple[Strip, ...] = ()
        for part in parts:
            yield from gap
            yield from self._part(part, self.width, room)
            gap = (Strip(height_mm=self.setter.style.gap_mm),) if isinstance(part, Table | Drawing) else ()

    def _part(self, part: Part, width: float, room: float) -> Iterator[Strip]:
        if isinstance(part, Table):
            yield from TableSetter(setter=self.setter, table=part, width_mm=width, room_high_mm=room).strips()
        elif isinstance(part, Paragraph):
            yield from self.setter.paragraph(part, room_mm=width)
        elif isinstance(part, Caution):
            yield from self._caution(part, width, room)
        else:
            yield drawing_strip(self.setter, part, room_mm=width, room_high_mm=room)

    def _caution(self, caution: Caution, width: float, room: float) -> Iterator[Strip]:
        framed = self.setter.caution(caution, room_mm=width)
        if framed.height_mm <= room:
            yield framed
            return
        yield self.setter.heading(f"{self.setter.style.caution_mark} {caution.title}", room_mm=width)
        for text in caution.texts:
            yield from self.setter.paragraph(Paragraph(text=text), room_mm=width)

    def _in_columns(
        self, parts: tuple[Part, ...], columns: int, room: float, lead: tuple[Strip, ...]
    ) -> ColumnFlow:
        gap = self.setter.style.column_gap_mm
        width = (self.width - gap * (columns - 1)) / columns
        strips = tuple(strip for part in parts for strip in self._part(part, width, room))
        return ColumnFlow(lead=lead, strips=strips, columns=columns, pitch_mm=width + gap)


def _is_text(part: Part) -> bool:
    return isinstance(part, Paragraph | Caution)
