"""Every size a printed sheet has, declared once: papers, margins, rules, boxes, type.

Lengths are millimetres and type is in points. Must not know what is printed.
"""

from __future__ import annotations

import dataclasses
from dataclasses import dataclass
from typing import Final

MM_PER_PT: Final = 25.4 / 72


@dataclass(frozen=True, slots=True, kw_only=True)
class Paper:
    """A sheet of paper the way it is turned."""

    name: str
    width_mm: float
    height_mm: float

    @property
    def landscape(self) -> bool:
        """Whether it is wider than high."""
        return self.width_mm > self.height_mm

    def turned(self, *, landscape: bool) -> Paper:
        """Return the same sheet lying or standing.

        >>> A4.turned(landscape=True).width_mm
        297.0
        """
        if landscape == self.landscape:
            return self
        return dataclasses.replace(self, width_mm=self.height_mm, height_mm=self.width_mm)


A4: Final = Paper(name="A4", width_mm=210.0, height_mm=297.0)
A3: Final = Paper(name="A3", width_mm=297.0, height_mm=420.0)
LETTER: Final = Paper(name="Letter", width_mm=215.9, height_mm=279.4)
TABLOID: Final = Paper(name="Tabloid", width_mm=279.4, height_mm=431.8)

A5: Final = Paper(name="A5", width_mm=148.0, height_mm=210.0)
HALF_LETTER: Final = Paper(name="Half-Letter", width_mm=139.7, height_mm=215.9)

PAPERS: Final = (A4, LETTER, A3, TABLOID)
"""Every paper for sheets, standing."""

CARD_PAPERS: Final = (A5, HALF_LETTER)
"""Papers for cards beside a tank or a switchboard, standing."""

ALL_PAPERS: Final = (*PAPERS, *CARD_PAPERS)


def paper_named(name: str, *, landscape: bool) -> Paper:
    """Return a paper by its name, whatever its capitals.

    Raises:
        ValueError: there is no such paper.
    """
    for paper in ALL_PAPERS:
        if paper.name.casefold() == name.strip().casefold():
            return paper.turned(landscape=landscape)
    known = ", ".join(paper.name for paper in ALL_PAPERS)
    raise ValueError(f"paper: {name!r} is none of {known}")


@dataclass(frozen=True, slots=True, kw_only=True)
class TypeSizes:
    """Type sizes [pt] of everything but the cells of tables, which say their own."""

    title_pt: float
    subtitle_pt: float
    header_pt: float
    running_pt: float
    section_pt: float
    band_pt: float
    band_detail_pt: float
    column_heading_pt: float
    column_heading_least_pt: float
    body_pt: float
    footer_pt: float


BENCH_TYPE: Final = TypeSizes(
    title_pt=22.0,
    subtitle_pt=14.0,
    header_pt=11.0,
    running_pt=12.0,
    section_pt=15.0,
    band_pt=14.0,
    band_detail_pt=11.0,
    column_heading_pt=11.0,
    column_heading_least_pt=9.0,
    body_pt=11.0,
    footer_pt=10.0,
)
"""For sheets read at arm's length."""

WALL_TYPE: Final = TypeSizes(
    title_pt=34.0,
    subtitle_pt=22.0,
    header_pt=14.0,
    running_pt=16.0,
    section_pt=20.0,
    band_pt=22.0,
    band_detail_pt=16.0,
    column_heading_pt=14.0,
    column_heading_least_pt=11.0,
    body_pt=12.0,
    footer_pt=12.0,
)
"""For sheets on the wall, read at a step and a half."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PaperStyle:
    """Margins, rules, boxes and gaps [mm unless named pt]; greys run from 0 (black) to 1 (white).

    The left margin leaves room for punched holes, the others for a laminating edge or a clip.
    `shade` is None for a sheet without any fill.
    """

    margin_mm: float = 15.0
    punch_margin_mm: float = 20.0
    rule_pt: float = 0.5
    heavy_rule_pt: float = 1.25
    box_rule_pt: float = 1.25
    box_width_mm: float = 15.0
    box_height_mm: float = 8.0
    cell_pad_x_mm: float = 1.4
    cell_pad_y_mm: float = 1.0
    slack_mm: float = 0.15
    """How much narrower than its room text is set, so that rounding in a device never spills."""
    gap_mm: float = 2.0
    section_gap_mm: float = 5.0
    column_gap_mm: float = 8.0
    item_indent_mm: float = 4.5
    item_mark: str = "•"
    caution_mark: str = "!"
    shrink_pt: float = 0.5
    leading: float = 1.04
    """Height of a line over that of its type."""
    shade: float | None = 0.92
    hatch_step_mm: float = 1.5
    colour: bool = True
    """Whether tints are printed; patterns and letters say the same without them."""
    solid: bool = True
    """Whether shapes may be filled black; else a hatch takes the place of it."""
    type_scale: float = 1.0
    """How much larger than usual all type is set."""
    bench: TypeSizes = BENCH_TYPE
    wall: TypeSizes = WALL_TYPE

    def type_for(self, *, large: bool) -> TypeSizes:
        """Return the type sizes for the wall or for the bench."""
        types = self.wall if large else self.bench
        if self.type_scale == 1.0:
            return types
        sizes = dataclasses.asdict(types)
        return TypeSizes(**{name: pt * self.type_scale for name, pt in sizes.items()})


LARGE_TYPE_SCALE: Final = 1.25
STYLE: Final = PaperStyle()
INK_SAVING_STYLE: Final = PaperStyle(shade=None, colour=False, solid=False)


def style_for(
    *, large_type: bool = False, black_and_white: bool = False, ink_saving: bool = False
) -> PaperStyle:
    """Return the style for what is wished; saving ink leaves colour out too.

    >>> style_for(ink_saving=True) == INK_SAVING_STYLE, style_for(black_and_white=True).shade
    (True, 0.92)
    """
    style = INK_SAVING_STYLE if ink_saving else STYLE
    return dataclasses.replace(
        style,
        colour=style.colour and not black_and_white,
        type_scale=LARGE_TYPE_SCALE if large_type else style.type_scale,
    )
