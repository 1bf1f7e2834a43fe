"""Sets the texts of one label into its room: as large as they fit, on one line each or run together.

The least size is never gone below: when not all fits, names are shortened, never codes, dates or numbers.
Measuring asks a `FontMetrics`. Must not know farms or toolkits.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from enum import Enum
from itertools import groupby
from typing import Final

from planner.paper.labels import Label, LabelText, Loudness
from planner.paper.marks import Mark, Rule
from planner.paper.measure import Face, FontMetrics, clusters, width_mm
from planner.paper.qr import LEAST_MODULE_MM, SquareCode, code_marks, square_code
from planner.paper.report import Size
from planner.paper.setting import SetLine, Setter
from planner.paper.style import BENCH_TYPE, STYLE

LEAST_PT: Final = 7.0
"""Capitals of 1.7 mm, to be read at half a metre (own reckoning: one in three hundred)."""

MOST_SCALE: Final = 2.5
_STEP: Final = 0.05
_PT: Final = {Loudness.LOUD: 13.0, Loudness.STRONG: 10.0, Loudness.PLAIN: 9.0}
_FACE: Final = {Loudness.LOUD: Face.BOLD, Loudness.STRONG: Face.BOLD, Loudness.PLAIN: Face.REGULAR}
_PAD_SHARE: Final = 0.05
_LEAST_PAD_MM: Final = 1.2
_CODE_SHARE: Final = 0.4
_BEST_MODULE_MM: Final = 0.55
_SMALLER_SHARE: Final = 0.6
_BESIDE: Final = " · "
_MORE: Final = "…"
_LEAST_LETTERS: Final = 6
_MOST_LETTERS: Final = 120


class Grouping(Enum):
    """Which texts of a label share a line: none, neighbours that are alike, or all."""

    APART = "apart"
    ALIKE = "alike"
    ALL = "all"


class NoRoomOnLabelError(ValueError):
    """A label is too small for what has to stand on it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SetLabel:
    """One label as marks from its own corner, whether names were shortened and whether it has its code."""

    marks: tuple[Mark, ...]
    shortened: bool
    coded: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelSetter:
    """Sets labels of one size with one way of measuring."""

    metrics: FontMetrics
    width_mm: float
    height_mm: float
    coded: bool = True

    @property
    def pad_mm(self) -> float:
        """Empty edge inside the label."""
        return max(min(self.width_mm, self.height_mm) * _PAD_SHARE, _LEAST_PAD_MM)

    def set(self, label: Label) -> SetLabel:
        """Return a label as marks.

        Raises `NoRoomOnLabelError` when code, dates and numbers do not fit at the least size.
        """
        square = square_code(label.code) if self.coded and label.code else None
        side = self._code_side(square)
        found = self._lines(label.texts, self._room(side))
        if side and (found is None or found[1]):
            alone = self._lines(label.texts, self._room(0.0))
            if found is None or (alone is not None and not alone[1]):
                # Whole words without a code are worth more than a code beside cut ones.
                side, found = 0.0, alone
        if found is None:
            raise NoRoomOnLabelError(
                f"label: {self.width_mm:g} × {self.height_mm:g} mm has no room for code, dates and numbers "
                f"at {LEAST_PT:g} pt. Take larger labels."
            )
        lines, shortened = found
        marks = [*self._text_marks(lines, self._room(side))]
        if square is not None and side:
            marks += self._code_marks(square, side)
        return SetLabel(marks=tuple(marks), shortened=shortened, coded=bool(side))

    def _room(self, side: float) -> float:
        """Return the width left for text beside a code."""
        return self.width_mm - 2 * self.pad_mm - side

    def _code_side(self, square: SquareCode | None) -> float:
        """Return the side of the code; 0 when its modules would be too small to be read."""
        if square is None:
            return 0.0
        most = square.modules * _BEST_MODULE_MM
        side = min(self.height_mm - self.pad_mm, self.width_mm * _CODE_SHARE, most)
        return side if side / square.modules >= LEAST_MODULE_MM else 0.0

    def _code_marks(self, square: SquareCode, side: float) -> Iterator[Mark]:
        """Yield the code at the right edge, and the line along which it may be torn off."""
        x = self.width_mm - side - self.pad_mm / 2
        yield Rule(x_mm=x, y_mm=0.0, x2_mm=x, y2_mm=self.height_mm, pt=STYLE.rule_pt)
        yield from code_marks(square, x_mm=x, y_mm=(self.height_mm - side) / 2, side_mm=side)

    def _lines(self, texts: Sequence[LabelText], room: float) -> tuple[tuple[SetLine, ...], bool] | None:
        """Return the lines and whether names were shortened; None when even then they do not fit."""
        found = self._largest(texts, room)
        if found is not None:
            return found, False
        low, high = _LEAST_LETTERS, _MOST_LETTERS
        best = self._at_least_size(_shortened(texts, low), room)
        while best is not None and low < high:
            middle = (low + high + 1) // 2
            tried = self._at_least_size(_shortened(texts, middle), room)
            low, high, best = (middle, high, tried) if tried is not None else (low, middle - 1, best)
        return None if best is None else (best, True)

    def _largest(self, texts: Sequence[LabelText], room: float) -> tuple[SetLine, ...] | None:
        """Return the lines as large as they fit, if it may be each text by itself, else run together."""
        least = round(LEAST_PT / max(_PT.values()) / _STEP)
        for grouping in (Grouping.APART, Grouping.ALIKE):
            for step in range(round(MOST_SCALE / _STEP), least - 1, -1):
                found = self._scaled(texts, room, scale=step * _STEP, grouping=grouping)
                if found is not None:
                    return found
        return None

    def _at_least_size(self, texts: Sequence[LabelText], room: float) -> tuple[SetLine, ...] | None:
        for grouping in (Grouping.ALIKE, Grouping.ALL):
            found = self._scaled(texts, room, scale=0.0, grouping=grouping, break_words=True)
            if found is not None:
                return found
        return None

    def _scaled(
        self,
        texts: Sequence[LabelText],
        room: float,
        *,
        scale: float,
        grouping: Grouping,
        break_words: bool = False,
    ) -> tuple[SetLine, ...] | None:
        """Return the lines at a scale, None when they are too high or a word would have to be broken.

        A text that is too wide is set smaller before it takes a second line.
        """
        setter = self._setter()
        lines: list[SetLine] = []
        for text, loudness in _paragraphs(texts, grouping):
            best = max(_PT[loudness] * scale, LEAST_PT)
            size = Size(best_pt=best, least_pt=max(best * _SMALLER_SHARE, LEAST_PT))
            found = setter.fitted(text, face=_FACE[loudness], size=size, room_mm=room, wrap=1)
            if not break_words and self._breaks_a_word(text, found[0], room):
                return None
            lines.extend(found)
        high = sum(setter.height(line) for line in lines)
        return tuple(lines) if high <= self.height_mm - 2 * self.pad_mm else None

    def _breaks_a_word(self, text: str, line: SetLine, room: float) -> bool:
        widths = (width_mm(self.metrics, word, face=line.face, pt=line.pt) for word in text.split(" "))
        return max(widths, default=0.0) > room - STYLE.slack_mm

    def _text_marks(self, lines: tuple[SetLine, ...], room: float) -> tuple[Mark, ...]:
        setter = self._setter()
        high = sum(setter.height(line) for line in lines)
        _, marks = setter.stacked(lines, x_mm=self.pad_mm, y_mm=(self.height_mm - high) / 2, room_mm=room)
        return marks

    def _setter(self) -> Setter:
        return Setter(metrics=self.metrics, style=STYLE, types=BENCH_TYPE)


def _paragraphs(texts: Sequence[LabelText], grouping: Grouping) -> Iterator[tuple[str, Loudness]]:
    """Yield the texts that stand together, and how loud they are."""
    if grouping is Grouping.APART:
        yield from ((text.text, text.loudness) for text in texts)
    elif grouping is Grouping.ALL:
        yield _BESIDE.join(text.text for text in texts), Loudness.PLAIN
    else:
        for loudness, many in groupby(texts, key=_loudness):
            yield _BESIDE.join(text.text for text in many), loudness


def _loudness(text: LabelText) -> Loudness:
    return text.loudness


def _shortened(texts: Sequence[LabelText], most_letters: int) -> tuple[LabelText, ...]:
    return tuple(_cut(text, most_letters) if text.may_shorten else text for text in texts)


def _cut(text: LabelText, most_letters: int) -> LabelText:
    letters = clusters(text.text)
    if len(letters) <= most_letters:
        return text
    return dataclasses.replace(text, text="".join(letters[: most_letters - 1]).rstrip() + _MORE)
