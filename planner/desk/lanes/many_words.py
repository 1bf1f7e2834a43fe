"""What is said of several batches at once, and of a picking window in the hand."""

from __future__ import annotations

from planner.desk.lanes.words import whole
from planner.desk.say import tr


def many_chosen(number: int) -> str:
    """Return how many batches are chosen."""
    if number == 0:
        return tr("No batch chosen")
    return tr("1 batch chosen") if number == 1 else tr("{many} batches chosen", many=whole(number))
