"""Wrong usage, help, and opening what cannot be opened: a sentence each, never a traceback."""

from __future__ import annotations

import os
import re
import subprocess
import sys

import pytest

from planner import cli
from planner.cli import COMMANDS, main
from planner.cli_commands import parser
from planner.paper.style import paper_named

OPTION = re.compile(r"(?<![\w-])--[a-z][a-z-]+")


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("forecast", "a.toml", "--from", "tomorrow"), '"tomorrow" is not a date such as 2027-04-08'),
        (("forecast", "a.toml", "--weeks", "0"), '"0" is not a number of weeks, 1 or more'),
        (("forecast", "a.toml", "--weeks", "some"), '"some" is not a number of weeks, 1 or more'),
        (("forecast", "a.toml", "--json", "--csv"), "not allowed with"),
        (("forecast", "a.toml", "b.toml"), "b.toml"),
        (("forecast",), "FILE"),
        (("week", "a.toml", "--date", "2027-02-30"), '"2027-02-30" is not a date'),
        (("calendar", "a.toml"), "--pdf"),
        (("calendar", "a.toml", "--pdf", "o.pdf", "--paper", "A5"), "'A5'"),
        (("check", "a.toml", "--nosuch"), "--nosuch"),
        (("--nosuch",), "--nosuch"),
        (("import", "a.toml"), "FILE"),
        (("calender",), 'Did you mean "calendar"?'),
        (("calender", "a.toml"), 'Did you mean "calendar"?'),
        (("forcast", "a.toml"), 'Did you mean "forecast"?'),
        (("nosuchcommand",), "neither a command nor a file"),
        (("a.raftweek", "b.raftweek"), "opens one farm at a time, but 2 were named"),
    ],
)
def test_that_wrong_usage_is_told_with_exit_code_2(run, words, told):
    said = run(*words)
    assert (said.code, said.out) == (2, "")
    assert told in said.err


@pytest.mark.parametrize(
    ("content", "suffix", "told"),
    [
        (None, ".raftweek", "is not there"),
        (b"", ".raftweek", "is empty"),
        (b"", ".toml", "is empty"),
        (bytes(range(256)), ".raftweek", "is not a farm file"),
        (bytes(range(256)), ".toml", "is not a farm text"),
        (b'format = "raftweek.farm/1"\n', ".txt", "give it a name that ends in .toml"),
    ],
)
def test_that_the_window_is_not_opened_on_what_is_no_farm(run, tmp_path, content, suffix, told):
    path = tmp_path / f"farm{suffix}"
    if content is not None:
        path.write_bytes(content)
    said = run(path)
    assert (said.code, said.out) == (1, "")
    assert said.err.startswith(str(path))
    assert told in said.err
    assert said.err.count("\n") == 1


def test_that_the_window_is_not_opened_on_a_folder(run, tmp_path):
    said = run(tmp_path)
    assert (said.code, said.err) == (1, f"{tmp_path} is a folder, not a file.\n")


def test_that_a_farm_may_be_opened(tmp_path, yard):
    assert cli.refusal_to_open(yard) is None
    farm = tmp_path / "farm.raftweek"
    assert main(["import", str(yard), str(farm)]) == 0
    assert cli.refusal_to_open(farm) is None


def test_that_a_file_named_like_a_command_is_opened_by_its_path(tmp_path, monkeypatch, run):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "calender").touch()
    said = run("calender")
    assert (said.code, said.err) == (
        1,
        'calender is empty. "raftweek new" starts a farm under a name that is not taken.\n',
    )


@pytest.mark.parametrize("command", COMMANDS)
def test_that_help_of_each_command_says_what_it_does_and_every_option(run, command):
    said = run(command, "--help")
    assert (said.code, said.err) == (0, "")
    assert said.out.startswith(f"usage: raftweek {command} ")
    for line in said.out.splitlines():
        if line.startswith("  ") and line.strip() and not line.startswith("   "):
            words = line.split()
            assert len(words) > 2 or words[-1] != words[0], line


def test_that_help_names_every_command_and_the_exit_codes(run):
    said = run("--help")
    assert said.code == 0
    for command in COMMANDS:
        assert f"\n    {command} " in said.out
    assert "raftweek [FILE]" in said.out
    assert "exit codes: 0 good, 1 the farm has faults or cannot be read, 2 wrong usage" in said.out


def test_that_main_and_parser_know_the_same_commands():
    for command in COMMANDS:
        assert command in parser().format_help()


def test_that_the_page_of_the_command_line_tells_every_command(root):
    page = (root / "docs" / "command-line.md").read_text(encoding="utf-8")
    told = [line.split("`")[1].split()[0] for line in page.splitlines() if line.startswith("| `")]
    assert told == list(COMMANDS)


@pytest.mark.parametrize("command", COMMANDS)
def test_that_the_page_tells_the_options_of_every_command(root, capsys, command):
    """All of them, or, where dots stand for the rest, none that is not there."""
    page = (root / "docs" / "command-line.md").read_text(encoding="utf-8")
    (row,) = [line for line in page.splitlines() if line.startswith((f"| `{command} ", f"| `{command}`"))]
    assert main([command, "--help"]) == 0
    there = set(OPTION.findall(capsys.readouterr().out)) - {"--help"}
    told = set(OPTION.findall(row))
    assert told <= there
    assert told == there or "..." in row


def test_that_every_offered_paper_can_be_had():
    for name in ("A4", "Letter", "A3", "Tabloid"):
        assert paper_named(name, landscape=True).name == name


def test_that_a_mistake_of_our_own_is_told_in_a_sentence(run, monkeypatch, yard):
    def broken(self, path):
        raise RuntimeError("no such luck")

    monkeypatch.setattr("planner.bootstrap.Means.read", broken)
    said = run("check", yard)
    assert said.code == 1
    assert "RuntimeError: no such luck" in said.err
    assert said.err.count("\n") == 1


def test_that_a_traceback_is_there_for_who_asks(capsys, monkeypatch, yard):
    def broken(self, path):
        raise RuntimeError("no such luck")

    monkeypatch.setattr("planner.bootstrap.Means.read", broken)
    monkeypatch.setenv(cli.TRACEBACK_ASKED_BY, "1")
    assert main(["check", str(yard)]) == 1
    assert "Traceback" in capsys.readouterr().err


def test_that_stopping_by_the_keyboard_is_silent(run, monkeypatch, yard):
    def stopped(self, path):
        raise KeyboardInterrupt

    monkeypatch.setattr("planner.bootstrap.Means.read", stopped)
    said = run("check", yard)
    assert said == (cli.INTERRUPTED, "", "")


def process(root, *words, **more):
    return subprocess.Popen(
        [sys.executable, "-m", "planner", *words],
        cwd=root,
        env={**os.environ, "PYTHONUTF8": "1"},
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        **more,
    )


def test_that_a_reader_that_has_read_enough_ends_it_in_silence(root, kitchen):
    with process(root, "forecast", str(kitchen), "--json") as running:
        assert running.stdout.readline() == b"{\n"
        running.stdout.close()
        assert running.stderr.read() == b""
        assert running.wait(60) == 0


def test_that_the_program_runs_from_the_command_line(root, kitchen, tmp_path):
    with process(root, "check", str(kitchen)) as running:
        out, err = running.communicate(timeout=60)
    assert (running.returncode, err) == (0, b"")
    assert b"no faults" in out
    with process(root, "check", str(tmp_path / "none.toml")) as running:
        out, err = running.communicate(timeout=60)
    assert (running.returncode, out) == (1, b"")
    assert b"none.toml is not there" in err
