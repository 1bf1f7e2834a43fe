"""Tables of every kind of file come in through the window by keys and hand, whole or not at all."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from planner.bootstrap_csv import TableIn
from planner.desk.csv_in import dialog as table_dialog
from planner.desk.csv_in.dialog import TableDialog
from planner.desk.csv_in.opening import TableOpening

HEAD = "Date,pH,Temp (°C)"
ROWS = ("2027-01-05,6.8,24.5", "2027-01-06,6.9,24")
PLAIN = "\n".join((HEAD, *ROWS))
COMMA = "Fecha;pH;Temperatura (°C)\n05.01.2027;6,8;24,5\n26.01.2027;6,9;24\n"


@pytest.fixture(autouse=True)
def in_no_hurry(monkeypatch):
    """Let what is looked at beside the window be waited for, however busy the machine is."""
    monkeypatch.setattr(table_dialog, "_AT_ONCE_MS", 60_000)


@pytest.fixture
def opened(window, means, tmp_path):
    """Open a file of some bytes in the window; return the dialog, or None and what the window says."""

    def open_file(content):
        path = tmp_path / "table.csv"
        path.write_bytes(content)
        said = []
        opening = TableOpening(
            lambda session, name: TableIn.read(means, lambda: session.farm, name),
            window.conduct,
            window.theme,
            window,
        )
        opening.troubled.connect(said.append)
        opening.open(str(path))
        return next(iter(window.findChildren(TableDialog)), None), said

    return open_file


@pytest.mark.parametrize(
    "content",
    [
        PLAIN.encode(),
        PLAIN.encode("utf-8-sig"),
        PLAIN.encode("utf-16"),
        PLAIN.replace("\n", "\r\n").encode("cp1252"),
        PLAIN.replace(",", "\t").encode(),
        COMMA.encode("cp1252"),
        COMMA.encode("utf-8-sig"),
    ],
    ids=["utf-8", "mark", "utf-16", "windows", "tabs", "semicolons", "semicolons with mark"],
)
def test_that_a_file_comes_in_by_one_key_and_goes_by_one_undo(window, opened, content):
    before = window.workspace.outlook.farm
    dialog, said = opened(content)
    assert said == []
    assert "4 would come in" in dialog.said.text()
    dialog.go.setFocus()
    QTest.keyClick(dialog.go, Qt.Key.Key_Space)
    farm = window.workspace.outlook.farm
    assert sorted(r.value for r in set(farm.readings) - set(before.readings)) == [6.8, 6.9, 24, 24.5]
    window.conduct.undo()
    assert window.workspace.outlook.farm == before


@pytest.mark.parametrize(
    ("content", "why"),
    [(b"", "empty"), (bytes(range(256)) * 40, "no text"), (b"a,b\n" + b"x" * 20_000_001, "Split it")],
    ids=["empty", "no text", "huge"],
)
def test_that_a_file_that_is_no_table_is_told_and_opens_nothing(opened, content, why):
    dialog, said = opened(content)
    assert dialog is None
    assert why in said[0]


def test_that_escape_leaves_the_farm_alone(window, opened):
    before = window.workspace.outlook.farm
    dialog, _ = opened(PLAIN.encode())
    QTest.keyClick(dialog, Qt.Key.Key_Escape)
    assert window.workspace.outlook.farm == before


def test_that_a_column_without_words_of_its_own_is_mapped_by_hand(opened):
    dialog, _ = opened(PLAIN.replace("Date", "When it was").encode())
    assert "no column is the date" in dialog.said.text()
    column = dialog.columns[0]
    column.role.setFocus()
    QTest.keyClick(column.role, Qt.Key.Key_Down)
    assert column.role.currentData() == "date"
    assert "4 would come in" in dialog.said.text()
