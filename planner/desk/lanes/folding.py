"""Which lanes stay where a window is low: the beds always, then the balance, then the fish.

Must know nothing of what a lane shows.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtWidgets import QSplitter, QWidget

_FISH, _BEDS, _BALANCE = range(3)
_FIRST_TO_FOLD: Final = (_FISH, _BALANCE)


def fold_lanes(split: QSplitter, height: int) -> None:
    """Hide as many lanes as a height [px] has no room for, and show the others."""
    lanes = [split.widget(at) for at in range(split.count())]
    shown = {at for at, lane in enumerate(lanes) if lane is not None}
    for at in _FIRST_TO_FOLD:
        if _height_of(split, shown) > height:
            shown.discard(at)
    for at, lane in enumerate(lanes):
        if lane is not None and lane.isHidden() is (at in shown):
            lane.setVisible(at in shown)


def least_height(ruler: QWidget, split: QSplitter, bar: QWidget) -> int:
    """Return the least height [px] of the lanes with ruler and scroll bar: the beds alone."""
    return ruler.sizeHint().height() + _height_of(split, {_BEDS}) + bar.sizeHint().height()


def _height_of(split: QSplitter, shown: set[int]) -> int:
    lanes = (split.widget(at) for at in shown)
    least = sum(lane.minimumSizeHint().height() for lane in lanes if lane is not None)
    return least + split.handleWidth() * max(len(shown) - 1, 0)
