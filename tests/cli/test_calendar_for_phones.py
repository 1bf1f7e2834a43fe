"""The calendar command writes paper, the phone's calendar, or both."""

import os
import stat

import pytest
import vobject


def entries(path):
    return vobject.readOne(path.read_text(encoding="utf-8")).contents["vevent"]


def test_that_the_phones_calendar_is_written_and_updated(run, tmp_path, kitchen):
    out, farm = tmp_path / "k.ics", tmp_path / "k.toml"
    text = kitchen.read_text(encoding="utf-8")
    farm.write_text(text, encoding="utf-8")
    first = run("calendar", farm, "--ics", out, "--role", "grower")
    assert first.code == 0
    assert "0 changed, 0 cancelled" in first.out
    many = len(entries(out))
    again = run("calendar", farm, "--ics", out, "--role", "grower")
    assert f"{many} events, 0 new, 0 changed, 0 cancelled" in again.out
    uids = {entry.uid.value for entry in entries(out)}
    assert len(uids) == many
    assert [path.name for path in tmp_path.iterdir() if path.suffix == ".part"] == []


def test_that_paper_and_phone_can_be_written_at_once(run, tmp_path, yard):
    said = run("calendar", yard, "--pdf", tmp_path / "c.pdf", "--ics", tmp_path / "c.ics")
    assert said.code == 0
    assert sorted(path.name for path in tmp_path.iterdir()) == ["c.ics", "c.pdf"]


@pytest.mark.skipif(os.name != "posix", reason="rights of files are those of Unix")
def test_that_rights_of_the_file_stay(run, tmp_path, yard):
    out = tmp_path / "c.ics"
    run("calendar", yard, "--ics", out)
    out.chmod(0o640)
    run("calendar", yard, "--ics", out)
    assert stat.S_IMODE(out.stat().st_mode) == 0o640


@pytest.mark.parametrize(
    ("words", "wanted"),
    [
        ((), "say what to write"),
        (("--ics", "c.txt"), "must end in .ics"),
        (("--ics", "c.ics", "--remind", "7 o'clock"), "neither a time"),
        (("--ics", "c.ics", "--remind", "25:00"), "neither a time"),
        (("--ics", "c.ics", "--remind-before", "31"), "must lie within 0 to 30"),
        (("--ics", "c.ics", "--role", "boss"), "invalid choice"),
        (("--ics", "c.ics", "--weeks", "999"), "outside the plan"),
    ],
)
def test_that_wrong_wishes_are_told(run, tmp_path, yard, monkeypatch, words, wanted):
    monkeypatch.chdir(tmp_path)
    said = run("calendar", yard, *words)
    assert said.code == 2
    assert wanted in said.err
    assert list(tmp_path.iterdir()) == []


def test_that_a_file_that_is_no_calendar_of_ours_is_never_written_over(run, tmp_path, yard):
    out = tmp_path / "mine.ics"
    out.write_text("my own notes", encoding="utf-8")
    said = run("calendar", yard, "--ics", out)
    assert said.code == 2
    assert "Choose another name" in said.err
    assert out.read_text(encoding="utf-8") == "my own notes"


def test_that_an_earlier_calendar_that_is_not_there_is_told(run, tmp_path, yard):
    said = run("calendar", yard, "--ics", tmp_path / "c.ics", "--earlier", tmp_path / "none.ics")
    assert said.code == 1
    assert "is not there" in said.err
