"""Draws what happens by week, one week beside the other: a ruler, balance strips, bars, and lives of batches.

Every drawing is as wide as its column, so that weeks stand below each other. Must not know reports.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.site import WeekStart
from planner.forecast.values import Band
from planner.paper.documents.amounts import number_words
from planner.paper.shapes import Drawing, DrawnPath, DrawnRect, DrawnText, Hatch, Shape, Side
from planner.paper.words import month_words, week_name

_MONTH_MM: Final = 5.5
_WEEK_MM: Final = 5.5
_STRIP_MM: Final = 7.0
_BARS_MM: Final = 17.0
_BARS_HEAD_MM: Final = 4.0
_LANE_MM: Final = 5.6
_LABEL_PT: Final = 9.0
_SMALL_PT: Final = 8.0
_NOTHING: Final = " "
_MOST_WEEKS_OF_LONG_MONTHS: Final = 26
"""Over more weeks months are short, so that their years fit beside them on a narrow paper."""

BAND_LETTERS: Final = {
    Band.NO_DEMAND: "–",
    Band.SHORT: "S",
    Band.THIN: "T",
    Band.MET: "M",
    Band.AMPLE: "A",
}
_BAND_LOOKS: Final = {
    Band.NO_DEMAND: ("", Hatch.NONE),
    Band.SHORT: ("#F6C9B8", Hatch.CROSS),
    Band.THIN: ("#FBE9B7", Hatch.SLANT),
    Band.MET: ("#D6EEDF", Hatch.NONE),
    Band.AMPLE: ("#D3E6F5", Hatch.DOTS),
}
STAGE_HATCHES: Final = {
    "nursery": Hatch.DOTS,
    "spaced out": Hatch.LEVEL,
    "bed": Hatch.NONE,
    "picking": Hatch.SLANT,
    "clearing": Hatch.CROSS,
}


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekFrame:
    """The weeks that stand side by side; a drawing is as many units wide as there are days."""

    start: date
    weeks: int
    starts: WeekStart

    @property
    def days(self) -> int:
        """Width of every drawing, in days."""
        return self.weeks * DAYS_PER_WEEK

    def drawing(self, height_mm: float, shapes: Sequence[Shape], says: str) -> Drawing:
        """Return a drawing as wide as its column."""
        return Drawing(
            width_mm=float(self.days), height_mm=height_mm, shapes=tuple(shapes), says=says, wide=True
        )

    def week_on(self, week: int) -> date:
        """Return the first day of a week."""
        return self.start + timedelta(days=week * DAYS_PER_WEEK)

    def clipped(self, first: int, end: int) -> tuple[int, int]:
        """Return the part of some days (counted from the start) that is drawn."""
        return max(first, 0), min(end, self.days)


def ruler(frame: WeekFrame) -> Drawing:
    """Return months above week numbers."""
    shapes = [*_months(frame), *_weeks(frame)]
    return frame.drawing(_MONTH_MM + _WEEK_MM, shapes, "weeks from left to right")


def _months(frame: WeekFrame) -> Iterator[Shape]:
    first = 0
    for day in range(1, frame.days + 1):
        on, before = frame.start + timedelta(days=day), frame.start + timedelta(days=first)
        if day == frame.days or (on.year, on.month) != (before.year, before.month):
            words = month_words(before)
            if frame.weeks > _MOST_WEEKS_OF_LONG_MONTHS:
                words = f"{words[:3]} {before.year}"
            yield DrawnRect(
                x_mm=first, y_mm=0.0, width_mm=day - first, height_mm=_MONTH_MM, label=words,
                instead=words[:3] if day - first > 2 * DAYS_PER_WEEK else _NOTHING, label_pt=_LABEL_PT,
            )  # fmt: skip
            first = day


def _weeks(frame: WeekFrame) -> Iterator[Shape]:
    for week in range(frame.weeks):
        name = week_name(frame.week_on(week), frame.starts)
        yield DrawnRect(
            x_mm=week * DAYS_PER_WEEK, y_mm=_MONTH_MM, width_mm=DAYS_PER_WEEK, height_mm=_WEEK_MM, label=name,
            instead=name[1:], label_pt=_SMALL_PT,
        )  # fmt: skip


def balance_strip(frame: WeekFrame, weeks: Sequence[tuple[Band, str]]) -> Drawing:
    """Return a cell a week: how supply stands to demand, above the element that is scarcest."""
    shapes: list[Shape] = []
    for week, (band, symbol) in enumerate(weeks):
        tint, hatch = _BAND_LOOKS[band]
        x = float(week * DAYS_PER_WEEK)
        shapes.append(
            DrawnRect(
                x_mm=x, y_mm=0.0, width_mm=DAYS_PER_WEEK, height_mm=_STRIP_MM, tint=tint, hatch=hatch,
                label=BAND_LETTERS[band], label_pt=11.0,
            )
        )  # fmt: skip
        shapes.append(
            DrawnText(
                x_mm=x + DAYS_PER_WEEK / 2, y_mm=_STRIP_MM + 4.0, text=symbol, pt=_SMALL_PT, side=Side.MIDDLE
            )
        )
    said = ", ".join(BAND_LETTERS[band] for band, _ in weeks)
    return frame.drawing(_STRIP_MM + 5.5, shapes, f"balance by week: {said}")


def bars(
    frame: WeekFrame, amounts: Sequence[float], *, target: Sequence[float] | None = None, digits: int = 1
) -> Drawing:
    """Return a bar a week with its number, to some digits, above it, and the target as a dashed line."""
    most = max([*amounts, *(target or ())], default=0.0) or 1.0
    room = _BARS_MM - _BARS_HEAD_MM
    shapes: list[Shape] = []
    for week, amount in enumerate(amounts):
        if amount <= 0:
            continue
        high = room * amount / most
        left, right = frame.clipped(week * DAYS_PER_WEEK - 1, (week + 1) * DAYS_PER_WEEK + 1)
        x = week * DAYS_PER_WEEK
        shapes.append(
            DrawnRect(
                x_mm=x + 1.0, y_mm=_BARS_MM - high, width_mm=DAYS_PER_WEEK - 2.0, height_mm=high,
                tint="#CDEBDD", hatch=Hatch.SLANT,
            )
        )  # fmt: skip
        shapes.append(
            DrawnRect(
                x_mm=left, y_mm=_BARS_MM - high - _BARS_HEAD_MM, width_mm=right - left,
                height_mm=_BARS_HEAD_MM, rule_pt=0.0, label=number_words(round(amount, digits)),
                instead=_NOTHING, label_pt=_SMALL_PT,
            )
        )  # fmt: skip
    shapes.extend(_target_line(target, most, room))
    return frame.drawing(_BARS_MM, shapes, "bars by week")


def _target_line(target: Sequence[float] | None, most: float, room: float) -> Iterator[Shape]:
    """Yield dashes at the height of the target, week by week where there is one."""
    for week, wanted in enumerate(target or ()):
        if wanted > 0:
            y = _BARS_MM - room * wanted / most
            yield DrawnPath(
                points_mm=((week * DAYS_PER_WEEK, y), ((week + 1) * DAYS_PER_WEEK, y)),
                rule_pt=1.25,
                dashed=True,
            )


@dataclass(frozen=True, slots=True, kw_only=True)
class Life:
    """One batch from sowing to clearing: days counted from the start of the frame, stage by stage."""

    code: str
    number: int
    spans: tuple[tuple[str, int, int], ...]

    @property
    def first(self) -> int:
        """First day."""
        return self.spans[0][1]

    @property
    def end(self) -> int:
        """Day after the last."""
        return self.spans[-1][2]


def lanes_of(lives: Sequence[Life]) -> list[list[Life]]:
    """Return batches dealt to as few lanes as they need, none above another in its lane.

    >>> days = (("A", 0, 9), ("B", 4, 8), ("C", 9, 12))
    >>> lives = [Life(code=code, number=0, spans=(("bed", first, end),)) for code, first, end in days]
    >>> [[life.code for life in lane] for lane in lanes_of(lives)]
    [['A', 'C'], ['B']]
    """
    lanes: list[list[Life]] = []
    for life in sorted(lives, key=_by_day):
        for lane in lanes:
            if lane[-1].end <= life.first:
                lane.append(life)
                break
        else:
            lanes.append([life])
    return lanes


def _by_day(life: Life) -> tuple[int, str]:
    return life.first, life.code


def lane(frame: WeekFrame, lives: Sequence[Life], tint: str) -> Drawing:
    """Return one lane of batches: a piece for each stage, named by the code where it fits, else by number."""
    shapes: list[Shape] = []
    for life in lives:
        for stage, first, end in life.spans:
            low, high = frame.clipped(first, end)
            if high > low:
                shapes.append(
                    DrawnRect(
                        x_mm=low, y_mm=0.4, width_mm=high - low, height_mm=_LANE_MM - 0.8, tint=tint,
                        hatch=STAGE_HATCHES[stage],
                    )
                )  # fmt: skip
        low, high = frame.clipped(life.first, life.end)
        shapes.append(
            DrawnRect(
                x_mm=low, y_mm=0.4, width_mm=high - low, height_mm=_LANE_MM - 0.8, rule_pt=1.0,
                hatch=Hatch.NONE,
            )
        )  # fmt: skip
        shapes.extend(_name(frame, life))
    return frame.drawing(_LANE_MM, shapes, ", ".join(life.code for life in lives))


def _name(frame: WeekFrame, life: Life) -> Iterator[Shape]:
    """Yield the name over the longest stage, most often the bed, whose ground is plain."""
    pieces = [frame.clipped(first, end) for stage, first, end in life.spans if stage == "bed"]
    low, high = max(pieces, key=_length) if pieces else frame.clipped(life.first, life.end)
    if high - low > 2:
        yield DrawnRect(
            x_mm=low, y_mm=0.4, width_mm=high - low, height_mm=_LANE_MM - 0.8, rule_pt=0.0, label=life.code,
            instead=str(life.number), label_pt=_SMALL_PT,
        )  # fmt: skip


def _length(piece: tuple[int, int]) -> int:
    return piece[1] - piece[0]
