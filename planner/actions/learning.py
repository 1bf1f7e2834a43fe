"""Taking up what the log taught: one act, for the batches still to be sown."""

from __future__ import annotations

from datetime import date

from planner.farm.changes import Change, ChangeSet
from planner.farm.farm import Farm
from planner.planning.learning import Learned, adopted


def adopt(farm: Farm, lesson: Learned, today: date) -> ChangeSet:
    """Give the learned value to every batch it is for; no changes when there is none."""
    changes = tuple(Change(before=before, after=after) for before, after in adopted(farm, lesson, today))
    return ChangeSet(title=f"Take up {lesson.field} of {lesson.crop} from the log", changes=changes)
