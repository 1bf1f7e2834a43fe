"""Commands of plans tell why their figures are what they are, by the words that name them."""

from __future__ import annotations

import json

import pytest

COMMANDS = {
    "orders": ((), "2027-03 seed basil", "seeds to order"),
    "successions": ((), "week 2027-W20 lettuce-leaf heads foreseen", "foreseen"),
    "plan": (("--seconds", "0.2"), "plan gap", "gap to the best possible"),
    "expand": (("--area", "3"), "nutrients feed it takes g/d", "feed that the area takes"),
    "stock": (
        ("--rounds", "2", "--groups", "2", "--shares", "1"),
        "stock 2 100 uneven",
        "unevenness of the feed",
    ),
    "compare": (("--lose", "Winter fish@2027-04-01"), "base feed", "feed over the plan"),
}


@pytest.mark.parametrize("command", list(COMMANDS))
def test_that_a_figure_of_a_plan_is_told_as_text_and_as_data(run, kitchen, command):
    options, name, title = COMMANDS[command]
    text = run(command, kitchen, *options, "--why", *name.split())
    assert text.code == 0, text.err
    assert text.out.startswith(f"{name}:\n  {title}")
    data = json.loads(run(command, kitchen, *options, "--json", "--why", name).out)
    assert data["format"] == "raftweek.answers/1"
    (answer,) = data["answers"]
    assert (answer["figure"], answer["title"]) == (name, title)
    assert answer["value"] is not None


def test_that_without_words_all_names_are_listed(run, kitchen):
    names = run("orders", kitchen, "--why").out.splitlines()
    assert "2027-03 seed basil" in names
    assert json.loads(run("orders", kitchen, "--why", "--json").out)["figures"] == names


def test_that_an_answer_is_the_figure_that_the_command_prints(run, kitchen):
    lines = json.loads(run("orders", kitchen, "--json").out)["lines"]
    line = next(one for one in lines if (one["month"], one["kind"]) == ("2027-05", "feed"))
    words = ("2027-05", "feed", line["key"])
    (answer,) = json.loads(run("orders", kitchen, "--json", "--why", *words).out)["answers"]
    assert answer["value"] == pytest.approx(line["amount"], abs=5e-4)


def test_that_repairs_and_a_start_up_can_be_asked(run, kitchen):
    names = run("advise", kitchen, "--week", "2027-W18", "--why").out.splitlines()
    name = next(one for one in names if one.endswith(" harvest"))
    told = run("advise", kitchen, "--week", "2027-W18", "--why", name)
    assert "change of harvest over the plan" in told.out
    start = run("stock", kitchen, "--start-up", "--why").out.splitlines()
    assert "area of a batch" in run("stock", kitchen, "--start-up", "--why", start[0]).out


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("2027-03", "seed", "basli"), 'Did you mean "2027-03 seed basil"?'),
        (("seed",), "at most are told at once"),
    ],
)
def test_that_words_that_name_none_or_too_many_are_told_so(run, kitchen, words, said):
    found = run("orders", kitchen, "--why", *words)
    assert found.code == 2
    assert said in found.err
