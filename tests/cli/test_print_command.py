"""Any document from the command line: written, listed, and refused in a sentence when it cannot be."""

import json
import re
import subprocess

import pytest

from planner.paper.registry import DOCUMENTS


def told(program, *arguments):
    return subprocess.run([program, *map(str, arguments)], capture_output=True, text=True, check=True).stdout


@pytest.mark.parametrize("key", [document.key for document in DOCUMENTS])
def test_that_every_document_is_written(run, tmp_path, kitchen, key):
    said = run("print", key, kitchen, "--out", tmp_path / "d.pdf", "--from", "2027-02-01")
    assert (said.code, said.err) == (0, "")
    pages = int(re.search(r"d\.pdf: (\d+) page", said.out).group(1))
    assert f"Pages:           {pages}" in told("pdfinfo", tmp_path / "d.pdf")


def test_that_documents_are_listed_with_paper_and_weeks_and_need_no_farm(run):
    said = run("print", "--list")
    assert said.code == 0
    lines = said.out.splitlines()
    assert [line.split()[0] for line in lines[: len(DOCUMENTS)]] == [each.key for each in DOCUMENTS]
    assert "A3" in lines[0]
    assert "9 weeks" in lines[0]
    assert "tray-labels" in said.out


def test_that_the_list_and_what_was_written_come_as_json(run, tmp_path, kitchen):
    listed = json.loads(run("print", "--list", "--json").out)
    assert [entry["document"] for entry in listed] == [document.key for document in DOCUMENTS]
    assert {"title", "says", "paper", "landscape", "weeks"} <= set(listed[0])
    wrote = json.loads(run("print", "symptoms", kitchen, "--out", tmp_path / "s.pdf", "--json").out)
    assert wrote == {"document": "symptoms", "file": str(tmp_path / "s.pdf"), "pages": 3}


@pytest.mark.parametrize(
    ("words", "wanted"),
    [
        ((), "say which document; --list names them all"),
        (("week-tasks",), "say which farm week-tasks is printed for"),
        (("weektasks", "KITCHEN"), 'no document "weektasks". There are: seeding-calendar, week-tasks'),
        (("tray-labels", "KITCHEN"), "raftweek labels FILE --kind tray"),
        (("week-tasks", "KITCHEN", "--paper", "B5"), "--paper: 'B5' is none of A4, Letter, A3"),
        (("week-tasks", "KITCHEN", "--second", "klingon"), '"klingon" is none of filipino, spanish'),
        (("week-tasks", "KITCHEN", "--weeks", "0"), '"0" is not a number of weeks'),
        (("week-tasks", "KITCHEN", "--weeks", "99"), "--weeks 99 reaches outside the plan"),
        (("week-tasks", "KITCHEN", "--from", "2031-01-01"), "--from 2031-01-01 reaches outside the plan"),
        (("week-tasks", "KITCHEN", "--out", "week.doc"), "must end in .pdf"),
    ],
)  # fmt: skip
def test_that_wrong_wishes_are_told_with_exit_code_2_and_nothing_is_written(
    run, tmp_path, monkeypatch, kitchen, words, wanted
):
    monkeypatch.chdir(tmp_path)
    said = run("print", *(kitchen if word == "KITCHEN" else word for word in words))
    assert (said.code, said.out) == (2, "")
    assert wanted in said.err
    assert list(tmp_path.iterdir()) == []


def test_that_a_farm_that_is_not_there_is_told_with_exit_code_1(run, tmp_path):
    said = run("print", "week-tasks", tmp_path / "none.toml", "--out", tmp_path / "w.pdf")
    assert said.code == 1
    assert "none.toml" in said.err


def test_that_a_folder_that_is_not_there_is_told_with_exit_code_1(run, tmp_path, kitchen):
    said = run("print", "symptoms", kitchen, "--out", tmp_path / "none" / "s.pdf")
    assert said.code == 1
    assert "could not be written" in said.err


def test_that_paper_language_and_look_are_taken(run, tmp_path, kitchen):
    out = tmp_path / "w.pdf"
    said = run(
        "print", "water-log", kitchen, "--out", out, "--paper", "letter", "--second", "spanish",
        "--ink-saving", "--large-type", "--black-and-white", "--from", "2027-02-01", "--weeks", "2",
    )  # fmt: skip
    assert (said.code, said.err) == (0, "")
    assert "792 x 612 pts" in told("pdfinfo", out)
    text = told("pdftotext", "-layout", out, "-")
    assert "Registro de análisis de agua" in text
    assert "not yet checked by a native speaker" in text
    assert "W06" in text
    assert "W07" not in text


def test_that_without_a_name_the_file_is_called_after_the_document(run, tmp_path, monkeypatch, kitchen):
    monkeypatch.chdir(tmp_path)
    assert run("print", "emergency", kitchen).code == 0
    assert [path.name for path in tmp_path.iterdir()] == ["emergency.pdf"]
