"""Puts labels on sheets from a start position, and makes the page by which a printer is set right.

A sheet of labels has neither head nor foot: all of it is labels. Must not know farms or toolkits.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from planner.paper.labels import Label, LabelKind, LabelText, Loudness
from planner.paper.labels_grid import MOST_SHIFT_MM, GridError, LabelGrid, Spot
from planner.paper.labels_setting import LabelSetter, NoRoomOnLabelError, SetLabel
from planner.paper.marks import Frame, Group, Mark, Page, Placed, Rule
from planner.paper.measure import Face, FontMetrics
from planner.paper.report import Align, Caution
from planner.paper.setting import SetLine, Setter
from planner.paper.style import BENCH_TYPE, STYLE, Paper

USUAL_SIZE_MM: Final = {LabelKind.TRAY: (60.0, 30.0), LabelKind.RAFT: (85.0, 55.0)}
"""Width and height of a label where none is said: a tray label, a card (common practice, no source)."""

RULER_MM: Final = 100.0
MOST_LABELS: Final = 20_000
_TICK_MM: Final = 10.0
_LONG_TICK_MM: Final = 6.0
_HOW_TO: Final = (
    "How to use the calibration page",
    "1. Print it on plain paper at 100 % (actual size). Fit to page must be off.",
    "2. Measure the two rulers: each is exactly 100 mm. If not, the printer still scales the page.",
    "3. Lay the page on a sheet of labels and hold both against the light.",
    "4. Where all frames lie too far one way, print again with the opposite shift in millimetres.",
    "--shift 1x-0.5 moves all labels 1 mm to the right and 0.5 mm up.",
    "5. Where frames drift apart from label to label, a size or a gap is wrong: measure the labels again.",
    "The numbers in the frames are the start positions: a sheet with six labels gone starts at 7.",
)


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelSheets:
    """Finished sheets, and how many labels had names shortened or went without their square code."""

    pages: tuple[Page, ...]
    labels: int
    shortened: int
    uncoded: int


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetWish:
    """How labels lie on their sheets.

    The first sheet begins at label `start`. `shift_mm` moves everything right and down. `outlined` draws
    the edges, to cut along on plain paper. `caution` is printed on the back of each label, on a page of
    its own after each sheet.
    """

    grid: LabelGrid
    paper: Paper
    start: int = 1
    shift_mm: tuple[float, float] = (0.0, 0.0)
    outlined: bool = False
    coded: bool = True
    caution: Caution | None = None

    def __post_init__(self) -> None:
        """Refuse a start that is not on the sheet and a shift that no printer needs."""
        if not 1 <= self.start <= self.grid.count:
            raise GridError(
                f"start: {self.start} must lie within 1 to {self.grid.count}, the labels of a sheet"
            )
        for shift in self.shift_mm:
            if abs(shift) > MOST_SHIFT_MM:
                raise GridError(
                    f"shift: {shift:g} mm must lie within -{MOST_SHIFT_MM:g} to {MOST_SHIFT_MM:g} mm"
                )


def label_sheets(labels: Sequence[Label], wish: SheetWish, metrics: FontMetrics) -> LabelSheets:
    """Return the sheets of some labels.

    Raises `GridError` for too many labels, `NoRoomOnLabelError` when what must not be cut does not fit.
    """
    if len(labels) > MOST_LABELS:
        raise GridError(f"labels: {len(labels)} must be at most {MOST_LABELS} at once. Choose fewer weeks.")
    setter = _setter(wish, metrics, coded=wish.coded)
    known = {label: _set(setter, label) for label in dict.fromkeys(labels)}
    made = [known[label] for label in labels]
    bodies: list[list[Placed]] = []
    for on_sheet in _dealt(made, wish):
        spots = [wish.grid.spot(place) for place, _ in on_sheet]
        bodies.append(_laid(spots, [one.marks for _, one in on_sheet], wish))
        if wish.caution is not None:
            backs = [wish.grid.mirrored_spot(place, wish.paper) for place, _ in on_sheet]
            bodies.append(_laid(backs, [_back_marks(wish.caution, wish, metrics)] * len(backs), wish))
    return LabelSheets(
        pages=_numbered(bodies, wish.paper),
        labels=len(made),
        shortened=sum(one.shortened for one in made),
        uncoded=sum(not one.coded for one in made) if wish.coded else 0,
    )


def _setter(wish: SheetWish, metrics: FontMetrics, *, coded: bool) -> LabelSetter:
    grid = wish.grid
    return LabelSetter(metrics=metrics, width_mm=grid.width_mm, height_mm=grid.height_mm, coded=coded)


def _set(setter: LabelSetter, label: Label) -> SetLabel:
    try:
        return setter.set(label)
    except NoRoomOnLabelError as error:
        raise NoRoomOnLabelError(f"{label.code}: {error}") from None


def _dealt(made: Sequence[SetLabel], wish: SheetWish) -> Iterator[list[tuple[int, SetLabel]]]:
    """Yield the labels of each sheet with their places, the first sheet from the start on."""
    rest = list(made)
    start = wish.start
    while rest:
        room = wish.grid.count - start + 1
        yield list(enumerate(rest[:room], start=start))
        rest, start = rest[room:], 1


def _laid(spots: Sequence[Spot], many: Sequence[Sequence[Mark]], wish: SheetWish) -> list[Placed]:
    right, down = wish.shift_mm
    edge: tuple[Mark, ...] = (_edge(wish.grid),) if wish.outlined else ()
    return [
        Group(x_mm=spot.x_mm + right, y_mm=spot.y_mm + down, marks=(*edge, *marks))
        for spot, marks in zip(spots, many, strict=True)
    ]


def _edge(grid: LabelGrid) -> Frame:
    return Frame(x_mm=0.0, y_mm=0.0, width_mm=grid.width_mm, height_mm=grid.height_mm, pt=STYLE.rule_pt)


def _back_marks(caution: Caution, wish: SheetWish, metrics: FontMetrics) -> tuple[Mark, ...]:
    texts = (
        LabelText(text=caution.title, loudness=Loudness.STRONG),
        LabelText(text=caution.text),
    )
    return _setter(wish, metrics, coded=False).set(Label(code="", texts=texts)).marks


def _numbered(bodies: Sequence[Sequence[Placed]], paper: Paper) -> tuple[Page, ...]:
    return tuple(
        Page(number=number, count=len(bodies), paper=paper, placed=tuple(marks))
        for number, marks in enumerate(bodies, start=1)
    )


def calibration_pages(wish: SheetWish, metrics: FontMetrics) -> tuple[Page, ...]:
    """Return the page with the edge of every label and two rulers, and a page that says what to do."""
    setter = Setter(metrics=metrics, style=STYLE, types=BENCH_TYPE)
    places = range(1, wish.grid.count + 1)
    numbers = [(_number(place, wish.grid, setter),) for place in places]
    outlined = dataclasses.replace(wish, outlined=True)
    frames = _laid([wish.grid.spot(place) for place in places], numbers, outlined)
    return _numbered((frames, [*_rulers(setter), *_how_to(wish.paper, setter)]), wish.paper)


def _number(place: int, grid: LabelGrid, setter: Setter) -> Mark:
    line = SetLine(text=str(place), face=Face.BOLD, pt=BENCH_TYPE.band_pt)
    base = (grid.height_mm - setter.height(line)) / 2 + setter.ascent(line)
    return setter.words(line, x_mm=0.0, y_mm=base, room_mm=grid.width_mm, align=Align.CENTRE)


def _rulers(setter: Setter) -> Iterator[Mark]:
    """Yield a ruler across and one down, 100 mm between the outer ticks, with a tick every 10 mm."""
    x, y = STYLE.punch_margin_mm, STYLE.margin_mm
    yield Rule(x_mm=x, y_mm=y, x2_mm=x + RULER_MM, y2_mm=y, pt=STYLE.rule_pt)
    yield Rule(x_mm=x, y_mm=y, x2_mm=x, y2_mm=y + RULER_MM, pt=STYLE.rule_pt)
    for step in range(int(RULER_MM / _TICK_MM) + 1):
        along = step * _TICK_MM
        tick = _LONG_TICK_MM if step % 5 == 0 else _LONG_TICK_MM / 2
        yield Rule(x_mm=x + along, y_mm=y, x2_mm=x + along, y2_mm=y + tick, pt=STYLE.rule_pt)
        yield Rule(x_mm=x, y_mm=y + along, x2_mm=x + tick, y2_mm=y + along, pt=STYLE.rule_pt)
    line = SetLine(text=f"{RULER_MM:g} mm", face=Face.BOLD, pt=BENCH_TYPE.body_pt)
    for right, down in ((RULER_MM + STYLE.gap_mm, 0.0), (STYLE.gap_mm, RULER_MM)):
        yield setter.words(
            line, x_mm=x + right, y_mm=y + down + setter.ascent(line) / 2, room_mm=RULER_MM, align=Align.LEFT
        )


def _how_to(paper: Paper, setter: Setter) -> tuple[Mark, ...]:
    x = STYLE.punch_margin_mm + STYLE.item_indent_mm * 4
    room = paper.width_mm - x - STYLE.margin_mm
    lines = [*setter.wrapped(_HOW_TO[0], face=Face.BOLD, pt=BENCH_TYPE.section_pt, room_mm=room)]
    for text in _HOW_TO[1:]:
        lines += setter.wrapped(text, face=Face.REGULAR, pt=BENCH_TYPE.header_pt, room_mm=room)
    top = STYLE.margin_mm + 2 * _LONG_TICK_MM
    return setter.stacked(tuple(lines), x_mm=x, y_mm=top, room_mm=room)[1]
