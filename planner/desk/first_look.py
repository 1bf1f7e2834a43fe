"""Finds what was last seen of the farm that is about to be opened, and keeps it when the window closes.

Read in before the first paint, so nothing of the lanes may be read in here before there is a glance.
"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from planner.desk import settings
from planner.desk.services import DeskServices
from planner.desk.settings import Memory
from planner.desk.theme import Theme

if TYPE_CHECKING:
    from planner.desk.glance_view import GlanceView
    from planner.desk.workspace import Workspace


def first_look(services: DeskServices, memory: Memory, theme: Theme, parent: QWidget) -> GlanceView | None:
    """Return a view of the glance of the farm that will be opened; None when there is none that holds."""
    path = services.start_with or memory.latest
    glance = services.find_glance(path) if services.find_glance and path else None
    if glance is None:
        return None
    from planner.desk.glance_view import GlanceView

    return GlanceView(
        glance,
        theme,
        today=services.now().date(),
        arrangement=memory.get(settings.ARRANGEMENT),
        parent=parent,
    )


def keep_look(services: DeskServices, workspace: Workspace, path: Path) -> None:
    """Keep what the lanes show of a farm file that has been closed: so it is found at the next start."""
    if services.keep_glance is None or workspace.outlook is None:
        return
    from planner.desk.glance import glance_of

    name = workspace.outlook.farm.settings.name
    services.keep_glance(path, glance_of(name, workspace.lanes.scene, services.now().date()))
