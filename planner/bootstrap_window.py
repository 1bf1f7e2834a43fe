"""Opens the window: gives the desk its means, and reads in what is heavy only after the first paint."""

from __future__ import annotations

import gc
import os
import sys
from collections.abc import Callable
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING, Final

from planner import __version__
from planner.bootstrap import FARM_SUFFIX, Means, is_text, local_now, opened
from planner.platform_guard import screen_refusal, this_refusal

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import date

    from PySide6.QtCore import QSettings
    from PySide6.QtGui import QPixmap
    from PySide6.QtWidgets import QApplication, QWidget

    from planner.actions.session import Session
    from planner.bootstrap import AnyStore
    from planner.bootstrap_csv import TableIn
    from planner.bootstrap_glance import GlanceShelf
    from planner.desk.given import DeskServices
    from planner.desk.keeping.backup_dialog import BackupLine
    from planner.desk.messages import Question
    from planner.desk.services import CheckStep, Rooms, WorkspaceNeeds
    from planner.desk.window import MainWindow
    from planner.desk.workspace import Workspace
    from planner.farm.farm import Farm
    from planner.planning.answers import Answers

ORGANISATION: Final = "Raftweek"
SAMPLE: Final = ("sample_data", "school-kitchen.toml")
SAMPLE_FILE: Final = f"Sample farm{FARM_SUFFIX}"
STYLE: Final = "Fusion"
GLANCES: Final = "glances"
TIMING_ASKED_BY: Final = "RAFTWEEK_TIMING"
_WINDOW_REFUSED: Final = 1
_LANGUAGE_CODES: Final = {"es": "es", "fil": "fil", "tl": "fil"}
"""Codes of languages besides English; some systems still use the older one of Filipino."""


def open_window(path: Path | None) -> int:
    """Open the window on a farm, or on the last one or the sample farm, and return when it is closed.

    Returns 0, or 1 with a sentence on stderr when there can be no window.
    """
    refusal = this_refusal() or screen_refusal(os.environ, system=sys.platform)
    if refusal is not None:
        print(refusal, file=sys.stderr)
        return _WINDOW_REFUSED
    gc.disable()  # nothing of what is read in goes away again, so looking for it only takes time
    application = application_made()
    from planner.desk.window import MainWindow

    services = services_for(path)
    speak(services, application)
    window = MainWindow(services)
    window.ready.connect(_collect_again)
    _watch_when_asked(application, window)
    window.show()
    return application.exec()


def application_made() -> QApplication:
    """Read in the toolkit and return the application, in our style and under our name."""
    _read_in_toolkit()
    from PySide6.QtWidgets import QApplication

    # Asked for like this, the style is made without its many enums being read into Python first.
    application = QApplication([*sys.argv[:1], "-style", STYLE])
    application.setOrganizationName(ORGANISATION)
    application.setApplicationName(ORGANISATION)
    return application


def _read_in_toolkit() -> None:
    """Read in the toolkit, without the look that it takes at the source of every module read in after it.

    It looks whether a module asks for other names of its functions, which none of ours does.
    """
    import builtins

    import PySide6.QtCore  # noqa: F401 - puts its own way to import in place

    plain = getattr(builtins, "__orig_import__", None)
    if plain is not None:
        builtins.__import__ = plain


def spoken(settings: QSettings) -> str:
    """Return the code of the language that was chosen, or else of the system's; empty for English."""
    from PySide6.QtCore import QLocale

    chosen = settings.value("look/language", "", type=str) or QLocale.system().name()
    return _LANGUAGE_CODES.get(str(chosen).partition("_")[0], "")


def speak(services: DeskServices, application: QApplication) -> None:
    """Say everything in the language that was chosen, or else in that of the system where we have it."""
    code = spoken(services.settings)
    if code:
        from planner.desk.languages import speak

        speak(code, application)


def _collect_again() -> None:
    gc.freeze()
    gc.enable()


def _watch_when_asked(application: QApplication, window: MainWindow) -> None:
    if os.environ.get(TIMING_ASKED_BY):
        from planner.bootstrap_timing import watch

        watch(application, window)


def _ask(question: Question, answered: Callable[[bool], None], parent: QWidget) -> None:
    # Boxes are read in with the first question, not before the window is painted.
    from planner.desk.messages import ask_on_screen

    ask_on_screen(question, answered, parent)


def services_for(path: Path | None) -> DeskServices:
    """Return what the window is given to open a farm, the latest one when no path is named."""
    from planner.desk.given import DeskServices

    home, settings = farm_folder(), _settings()
    return DeskServices(
        load=Wiring(home, spoken(settings)).rooms,
        settings=settings,
        now=local_now,
        ask=_ask,
        home=home,
        version=__version__,
        find_glance=_find_glance,
        keep_glance=_keep_glance,
        start_with=path,
        sample=home / SAMPLE_FILE,
    )


def _shelf() -> GlanceShelf:
    from PySide6.QtCore import QStandardPaths

    from planner.bootstrap_glance import GlanceShelf

    cache = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.CacheLocation)
    return GlanceShelf(Path(cache) / GLANCES, __version__)


def _find_glance(farm: Path, day: date, looks: str) -> QPixmap | None:
    return _shelf().find(farm, day, looks)


def _keep_glance(farm: Path, day: date, looks: str, picture: QPixmap) -> None:
    _shelf().keep(farm, day, looks, picture)


def _settings() -> QSettings:
    from PySide6.QtCore import QSettings

    return QSettings(QSettings.Format.IniFormat, QSettings.Scope.UserScope, ORGANISATION, ORGANISATION)


def farm_folder() -> Path:
    """Return the folder that farms are kept in unless the user says otherwise."""
    from PySide6.QtCore import QStandardPaths

    documents = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.DocumentsLocation)
    return Path(documents or Path.home()) / ORGANISATION


class Wiring:
    """What the menus of the window do, in terms of the store, the acts and the forecast."""

    def __init__(self, home: Path, language: str = "") -> None:
        """Keep the folder of farms, and the language that crops are named in; nothing is read yet."""
        self._home = home
        self._means = Means(language)
        self._stores: dict[int, AnyStore] = {}

    def rooms(self) -> Rooms:
        """Read in everything heavy and return what the window calls."""
        from planner.bootstrap_entries import read_entries, write_entries
        from planner.desk.services import Library, Rooms
        from planner.paper.errors import PaperError
        from planner.store.errors import StoreError

        return Rooms(
            open_farm=self.open_farm,
            new_farm=self.new_farm,
            first_farm=self.first_farm,
            save_copy=self.save_copy,
            export_text=self.export_text,
            close=self.close,
            where=self.where,
            troubles=(StoreError, PaperError, OSError),
            make_workspace=self.make_workspace,
            check=self.check,
            read_table=self.read_table,
            library=Library(write=write_entries, read=read_entries),
            backups=self.backups,
            put_back=self.put_back,
            warm=self.warm,
        )

    def warm(self) -> Iterator[str]:
        """Read in what the first act needs, and yield between the parts what was read."""
        for name in ("sqlalchemy", "sqlalchemy.orm", "planner.store.records", "planner.store.store"):
            import_module(name)
            yield name

    def open_farm(self, path: Path) -> Session:
        """Open a farm file; a farm text becomes a farm file of the same name beside it."""
        if not is_text(path):
            return self._session(opened(path))
        return self._created(path.with_suffix(FARM_SUFFIX), self._means.read(path).farm)

    def _created(self, path: Path, farm: Farm) -> Session:
        return self._session(self._means.create_store(path, farm))

    def _session(self, store: AnyStore) -> Session:
        """Return a session that is let go together with its store; a backup is made of what is new."""
        from planner.bootstrap_backups import backed_up

        try:
            session = self._means.session(store)
        except BaseException:
            store.close()
            raise
        self._stores[id(session)] = store
        backed_up(store)
        return session

    def new_farm(self, path: Path, answers: Answers) -> Session:
        """Make a farm file of the answers and open it."""
        from planner.planning.draft import drafted

        return self._created(path, drafted(answers, self._means.forecaster).farm)

    def first_farm(self) -> Session:
        """Open the copy of the sample farm, made when there is none yet."""
        from planner.shipped import shipped_path

        path = self._home / SAMPLE_FILE
        if path.exists():
            return self.open_farm(path)
        self._home.mkdir(parents=True, exist_ok=True)
        return self._created(path, self._means.read(shipped_path(*SAMPLE)).farm)

    def save_copy(self, session: Session, path: Path) -> None:
        """Write the farm and its history to another file."""
        self._stores[id(session)].copy_to(path)

    def export_text(self, session: Session, path: Path) -> None:
        """Write the farm as text."""
        from planner.store.text import write_farm_text

        path.write_text(write_farm_text(session.farm), encoding="utf-8")

    def close(self, session: Session) -> None:
        """Make a backup of what is new, and let go of the farm's file."""
        from planner.bootstrap_backups import backed_up

        store = self._stores.pop(id(session))
        backed_up(store)
        store.close()

    def backups(self, path: Path) -> tuple[BackupLine, ...]:
        """Return the backups of a farm file, the latest first."""
        from planner.bootstrap_backups import backup_lines

        return backup_lines(path)

    def put_back(self, backup: Path, path: Path) -> None:
        """Put a backup in the place of a farm file that is closed."""
        from planner.bootstrap_backups import put_back

        put_back(backup, path)

    def where(self, session: Session) -> Path | None:
        """Return the file a farm is kept in."""
        return session.path

    def make_workspace(self, needs: WorkspaceNeeds) -> Workspace:
        """Return the middle of the window."""
        from planner.desk.workspace import Workspace

        return Workspace(needs, forecaster=self._means.forecaster)

    def read_table(self, session: Session, path: Path) -> TableIn:
        """Return the table in a file; raises `ValueError` when it is none."""
        from planner.bootstrap_csv import TableIn

        return TableIn.read(self._means, lambda: session.farm, path)

    def check(self) -> Iterator[CheckStep]:
        """Work the published cases out, a few at a time."""
        from planner.bootstrap_checks import check_steps

        return check_steps(self._means)
