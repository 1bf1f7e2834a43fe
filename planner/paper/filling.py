"""Fills pages: what is kept together stays on one page, and headings come again on the next.

Must not know reports, measuring or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from itertools import groupby
from typing import Final

from planner.paper.marks import ColumnFlow, Group, Placed, Strip

_EVEN_TO_MM: Final = 0.5

Flow = Strip | ColumnFlow
"""What is put on pages one after the other."""

Chains = Sequence[list[Strip]]
"""Strips by chains: those of one chain stay on one page together."""


@dataclass(slots=True, kw_only=True)
class Filler:
    """Puts strips below each other, and begins a new page when one does not fit."""

    tops: tuple[float, float]
    bottom: float
    left: float
    pages: list[list[Placed]] = field(default_factory=lambda: [[]])
    y: float = 0.0
    begun: bool = False

    def fill(self, flow: Sequence[Flow]) -> list[list[Placed]]:
        """Return the marks of every page."""
        self.y = self.tops[0]
        for is_columns, items in groupby(flow, key=_is_columns):
            if is_columns:
                for item in items:
                    assert isinstance(item, ColumnFlow)
                    self._columns(item)
            else:
                self._down([item for item in items if isinstance(item, Strip)])
        return self.pages

    def _down(self, strips: Sequence[Strip]) -> None:
        for chain in _chains(strips):
            over = self.y + _height([chain]) > self.bottom
            if (over or chain[0].turn) and self.begun:
                self._turn(chain[0].again)
            for strip in chain:
                if self.y + strip.height_mm > self.bottom and self.begun:
                    self._turn(strip.again)
                self._put(strip)
                while strip.fills and self.y + strip.height_mm <= self.bottom:
                    self._put(strip)

    def _columns(self, flow: ColumnFlow) -> None:
        """Put text down in columns of one height, on this page as far as it has room, then the next."""
        chains = list(_chains(flow.strips))
        tallest = max((_height([chain]) for chain in chains[: flow.columns]), default=0.0)
        turn = any(strip.turn for strip in flow.lead)
        if (turn or self.y + _height([list(flow.lead)]) + tallest > self.bottom) and self.begun:
            self._turn(())
        for strip in flow.lead:
            self._put(strip)
        while chains:
            high = _even_height(chains, flow.columns, self.bottom - self.y)
            taken = _dealt(chains, flow.columns, high)
            marks: list[Placed] = []
            for number, column in enumerate(taken):
                marks.extend(_stacked(column, x_mm=number * flow.pitch_mm))
            self._put(Strip(height_mm=max(map(_height, taken)), marks=tuple(marks)))
            chains = chains[sum(map(len, taken)) :]
            if chains:
                self._turn(())

    def _turn(self, again: tuple[Strip, ...]) -> None:
        self.pages.append([])
        self.y = self.tops[1]
        for strip in again:
            self._put(strip)
        self.begun = False

    def _put(self, strip: Strip) -> None:
        if not strip.marks and not self.begun:
            return  # a gap has no use at the top of a page
        if strip.marks:
            self.pages[-1].append(Group(x_mm=self.left, y_mm=self.y, marks=strip.marks))
        self.y += strip.height_mm
        self.begun = True


def _chains(strips: Sequence[Strip]) -> Iterator[list[Strip]]:
    """Yield strips that must stay on one page together."""
    chain: list[Strip] = []
    for strip in strips:
        chain.append(strip)
        if not strip.keep:
            yield chain
            chain = []
    if chain:
        yield chain


def _height(chains: Chains) -> float:
    return sum(strip.height_mm for chain in chains for strip in chain)


def _is_columns(item: Flow) -> bool:
    return isinstance(item, ColumnFlow)


def _stacked(chains: Chains, *, x_mm: float) -> Iterator[Placed]:
    y = 0.0
    for chain in chains:
        for strip in chain:
            yield Group(x_mm=x_mm, y_mm=y, marks=strip.marks)
            y += strip.height_mm


def _dealt(chains: Chains, columns: int, high: float) -> list[list[list[Strip]]]:
    """Return as many chains as fit into columns of one height, in order; the first takes at least one."""
    dealt: list[list[list[Strip]]] = [[] for _ in range(columns)]
    rest = iter(chains)
    chain = next(rest, None)
    for column in dealt:
        used = 0.0
        while chain is not None and (chain is chains[0] or used + _height([chain]) <= high):
            column.append(chain)
            used += _height([chain])
            chain = next(rest, None)
    return dealt


def _even_height(chains: Chains, columns: int, room: float) -> float:
    """Return about the least height at which all chains fit into the columns, but at most `room`."""
    if not _all_fit(chains, columns, room):
        return room
    low, high = 0.0, room
    while high - low > _EVEN_TO_MM:
        middle = (low + high) / 2
        if _all_fit(chains, columns, middle):
            high = middle
        else:
            low = middle
    return high


def _all_fit(chains: Chains, columns: int, high: float) -> bool:
    dealt = _dealt(chains, columns, high)
    return sum(map(len, dealt)) == len(chains) and all(_height(column) <= high for column in dealt)
