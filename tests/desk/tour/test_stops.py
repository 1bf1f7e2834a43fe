"""The table of stops itself: no dialog of the program is left out of the tour."""

import importlib
import inspect
import pkgutil

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication, QDialog

import planner.desk
from tests.desk.tour.stops import DIALOGS


def dialogs_of_the_program():
    found = set()
    for module in pkgutil.walk_packages(planner.desk.__path__, "planner.desk."):
        for name, owner in inspect.getmembers(importlib.import_module(module.name), inspect.isclass):
            if issubclass(owner, QDialog) and owner.__module__ == module.name and not name.startswith("_"):
                found.add(owner)
    return {owner.__name__ for owner in found}


def test_that_every_dialog_of_the_program_is_a_stop(desk_in):
    window = desk_in()
    seen = set()
    for stop in DIALOGS:
        dialog = stop.go(window)
        seen.update(owner.__name__ for owner in type(dialog).__mro__)
        dialog.close()
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    assert dialogs_of_the_program() - seen == set()
