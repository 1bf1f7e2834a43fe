"""The tour: every page of the window and every dialog over it, each with the way that leads there.

A test that goes round by this table sees all there is; a page that is listed comes in by itself, a dialog by
a row of `DIALOGS`, and `test_tour.py` holds the table against the classes of the program.
"""

from collections.abc import Callable
from datetime import timedelta
from typing import NamedTuple

from PySide6.QtWidgets import QApplication, QDialog, QWidget

from planner.bootstrap_csv import TableIn
from planner.desk.book_page.new_entry import NewEntryDialog
from planner.desk.crash import CrashDialog
from planner.desk.csv_in.dialog import TableDialog
from planner.desk.forms.plans import FORM_WORDS
from planner.desk.keeping.backup_dialog import BackupDialog, BackupLine
from planner.desk.messages import Question, ask_on_screen
from planner.desk.places.listed import LISTED
from planner.desk.plan.help_pages import HelpPage
from planner.desk.plan.page import SECTIONS
from planner.farm.farm import Shelf
from planner.store.csv_in.sheet import read_sheet
from tests.desk.helpers import NOW


class Stop(NamedTuple):
    """One thing to look at: its name, and what brings it before the eyes."""

    name: str
    go: Callable[[QWidget], QWidget]


def top_dialog():
    """Return the one dialog that stands over the window."""
    found = (each for each in QApplication.topLevelWidgets() if isinstance(each, QDialog))
    shown = [each for each in found if each.isVisible()]
    assert len(shown) == 1, shown
    return shown[0]


def _page(key):
    def go(window):
        window.menus.actions[f"view.{key}"].trigger()
        return window

    return go


def _section(key):
    def go(window):
        window.menus.actions["view.plan"].trigger()
        window.workspace.shelf.place("plan").go_to(key)
        return window

    return go


def _entry(key, *, chosen=None):
    def go(window):
        if chosen is not None:
            window.workspace.choose(chosen(window.conduct.session.farm).id)
        window.menus.actions[key].trigger()
        return top_dialog()

    return go


def _new(word):
    def go(window):
        window.workspace.run(f"new.{word}")
        return window.workspace.editing.dialog

    return go


def _batch(farm):
    return farm.batches[0]


def _paste(window):
    window.workspace.choose(_batch(window.conduct.session.farm).id)
    window.menus.actions["change.copy"].trigger()
    return _entry("change.paste")(window)


def _why(window):
    window.workspace.choose(_batch(window.conduct.session.farm).id)
    window.workspace.settle()
    return _entry("view.why")(window)


def _first(window):
    window.workspace.asking.show_first()
    return top_dialog()


def _crash(window):
    report = "\n".join(f"  line {number} of what a programmer needs to know" for number in range(40))
    return _opened(CrashDialog(report, window.theme, window))


def _backups(window):
    lines = [
        BackupLine(path=window._services.home / f"{at:%Y-%m-%d}.raftweek", at=at, size=123_456)
        for at in (NOW - timedelta(days=days) for days in (0, 1, 7))
    ]
    return _opened(BackupDialog(lines, NOW, window.theme, window))


def _table(window):
    session = window.conduct.session
    text = "Date,pH,Temp (°C),Remark\n2027-01-05,6.8,24.5,-\nsoon,19,24,-\n"
    table = TableIn(window._services.load.__self__.means, lambda: session.farm, read_sheet(text.encode()))
    return _opened(TableDialog(table, session.act, window.theme, window))


def _own_entry(window):
    workspace = window.workspace
    return _opened(NewEntryDialog(workspace.outlook, Shelf.CROP, "basil", window.theme, window))


def _section_help(window):
    return _opened(HelpPage("season", "Season", window.theme, window))


def _question(window):
    text = "This is taken out or let go along with it: " + "bed, " * 12 + "tank. Undo brings all of it back."
    question = Question(title="Remove bed R1", text=text, go_on="Remove all of it")
    ask_on_screen(question, _nobody, window)
    return top_dialog()


def _nobody(_go_on):
    pass


def _opened(dialog):
    dialog.open()
    return dialog


PAGES = (
    *(Stop(listed.key, _page(listed.key)) for listed in LISTED if listed.key != "plan"),
    *(Stop(f"plan {section.key}", _section(section.key)) for section in SECTIONS),
)
FORMS = tuple(Stop(f"new {word}", _new(word)) for word in FORM_WORDS if word != "settings")
DIALOGS = (
    *FORMS,
    Stop("begin", _entry("farm.begin")),
    Stop("new farm", _entry("farm.new")),
    Stop("print", _entry("farm.print")),
    Stop("labels", _entry("paper.labels")),
    Stop("trace", _entry("paper.trace", chosen=_batch)),
    Stop("phone calendar", _entry("paper.phone")),
    Stop("own entry", _own_entry),
    Stop("backups", _backups),
    Stop("table in", _table),
    Stop("history", _entry("change.history")),
    Stop("search", _entry("view.search")),
    Stop("why", _why),
    Stop("paste", _paste),
    Stop("split", _entry("change.split", chosen=_batch)),
    Stop("alter batch", _entry("change.alter", chosen=_batch)),
    Stop("farm settings", _entry("setup.farm")),
    Stop("first figures", _first),
    Stop("page help", _entry("help.page")),
    Stop("section help", _section_help),
    Stop("glossary", _entry("help.glossary")),
    Stop("arithmetic", _entry("help.check")),
    Stop("about", _entry("help.about")),
    Stop("question", _question),
    Stop("crash", _crash),
)
