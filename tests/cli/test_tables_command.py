"""Tables for a spreadsheet from the command line."""

import pytest

from planner.paper.sheets_out import TABLES


def test_that_all_tables_are_written_as_csv_and_as_a_workbook(run, tmp_path, yard):
    said = run("tables", yard, "--csv", tmp_path, "--xlsx", tmp_path / "t.xlsx")
    assert (said.code, said.err) == (0, "")
    assert len(list(tmp_path.glob("*.csv"))) == len(TABLES)
    assert (tmp_path / "t.xlsx").read_bytes().startswith(b"PK")


def test_that_one_table_is_printed(run, yard):
    said = run("tables", yard, "--table", "batches")
    assert said.out.startswith("code,crop,variety,sow_on,")
    assert run("tables", yard, "--list").out.split("\n")[:2] == ["batches", "weeks"]


def test_that_nothing_is_written_when_one_file_is_there(run, tmp_path, yard):
    (tmp_path / "weeks.csv").write_text("mine", encoding="utf-8")
    said = run("tables", yard, "--csv", tmp_path)
    assert said.code == 2
    assert "is there already" in said.err
    assert [path.name for path in tmp_path.iterdir()] == ["weeks.csv"]


@pytest.mark.parametrize(
    ("words", "wanted"),
    [
        (("--table", "magic"), "is none of batches"),
        ((), "say where to"),
        (("--csv", "nowhere/at/all"), "is not a folder"),
        (("--xlsx", "t.xls"), "must end in .xlsx"),
    ],
)
def test_that_wrong_wishes_are_told(run, tmp_path, yard, monkeypatch, words, wanted):
    monkeypatch.chdir(tmp_path)
    said = run("tables", yard, *words)
    assert said.code == 2
    assert wanted in said.err
