"""Who notes something at this desk, and when. Must know nothing of what is noted."""

from __future__ import annotations

from datetime import UTC, datetime

from planner.actions.audit import Noted
from planner.desk import settings
from planner.desk.services import WorkspaceNeeds


def noted_at(now: datetime) -> str:
    """Return a moment as the log keeps it: UTC, to the minute."""
    return now.astimezone(UTC).strftime("%Y-%m-%dT%H:%MZ")


def noted_by(needs: WorkspaceNeeds) -> Noted:
    """Return the initials that were typed last at this desk, and the moment."""
    return Noted(who=needs.memory.get(settings.INITIALS), at=noted_at(needs.now()))
