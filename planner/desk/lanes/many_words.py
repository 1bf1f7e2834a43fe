"""What is said of several batches at once, and of a picking window in the hand."""

from __future__ import annotations

from planner.desk.lanes.scene import Bar
from planner.desk.lanes.words import day_month_year, days_moved, whole
from planner.desk.say import tr
from planner.farm.crops import Stage


def many_chosen(number: int) -> str:
    """Return how many batches are chosen."""
    if number == 0:
        return tr("No batch chosen")
    return tr("1 batch chosen") if number == 1 else tr("{many} batches chosen", many=whole(number))


def picked_until(bar: Bar, days: int) -> str:
    """Return until when a batch would be picked, and by how many days that is later."""
    end = max((each.end for each in bar.segments if each.stage is Stage.PICKING), default=bar.end)
    return tr("Picked until {day} ({moved})", day=day_month_year(end - 1), moved=days_moved(days))


def no_window(bar: Bar) -> str:
    """Return that no bar of a batch has a window of picking."""
    return tr("{code} has no window of picking to stretch.", code=bar.code)
