"""Takes the picture that the very first start shows: of the sample farm, before anybody has opened a window.

Run by the set-up, with the same screen that the window is opened on right after it, so that size, scale and
look are the same. Opens the window unseen on a copy of the settings, and leaves nothing behind but the sample
farm, where the first start would put it anyway, and its picture. Does nothing once a farm has been opened.
"""

from __future__ import annotations

import os
import sys
import tempfile
from pathlib import Path
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from PySide6.QtCore import QSettings

    from planner.desk.given import DeskServices

DONE: Final = 0
NOTHING_DONE: Final = 1
_SETTINGS_FILE: Final = "desk.ini"


def main() -> int:
    """Take the picture where one is wanted and can be had; return 0 when there is one."""
    from planner.platform_guard import screen_refusal, this_refusal

    if (this_refusal() or screen_refusal(os.environ, system=sys.platform)) is not None:
        return NOTHING_DONE
    from planner.bootstrap_window import application_made, services_for, speak

    application = application_made()
    services = services_for(None)
    speak(services, application)
    with tempfile.TemporaryDirectory() as folder:
        taken = take_first_picture(services, Path(folder))
    return DONE if taken else NOTHING_DONE


def take_first_picture(services: DeskServices, folder: Path) -> bool:
    """Take and keep the pictures of the very first start; settings meanwhile are kept in a folder.

    Returns whether there are any; false where a farm has been opened already, or nothing keeps pictures.
    """
    from planner.desk.first_look import first_looks_of
    from planner.desk.rehearsal import rehearse
    from planner.desk.settings import Memory, settings_file
    from planner.desk.window import MainWindow

    path, keep = services.sample, services.keep_glance
    if path is None or keep is None or Memory(services.settings).latest is not None:
        return False
    apart = settings_file(folder / _SETTINGS_FILE)
    _copy(services.settings, apart)
    window = MainWindow(services._replace(settings=apart, find_glance=None, keep_glance=None))
    try:
        window.open_unseen()
        pictures = rehearse(window, services.now(), first=True)
        looks = first_looks_of(window, window.memory)
    finally:
        window.close()
        window.deleteLater()
    for day, picture in pictures.items():
        keep(path, day, looks, picture)
    return bool(pictures)


def _copy(settings: QSettings, apart: QSettings) -> None:
    for key in settings.allKeys():
        apart.setValue(key, settings.value(key))


if __name__ == "__main__":
    sys.exit(main())
