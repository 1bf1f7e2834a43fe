"""The forecast with ranges and chances, as text and as data told on its page."""

from __future__ import annotations

import json

import pytest

from tests.cli.test_json_page import paths, rows


def test_that_every_field_of_chances_is_on_the_page_and_no_other(run, root, kitchen):
    page = (root / "docs" / "forecast-json.md").read_text(encoding="utf-8")
    data = json.loads(run("forecast", kitchen, "--chances", "--json").out)
    assert set(paths(data["chances"])) == {row[0] for row in rows(page, "chances")}
    assert all(len(row) == 3 and all(row) for row in rows(page, "chances"))


def test_that_every_field_of_ranges_is_on_the_page_and_no_other(run, root, yard):
    page = (root / "docs" / "forecast-json.md").read_text(encoding="utf-8")
    data = json.loads(run("forecast", yard, "--ranges", "--json").out)
    assert set(paths(data["ranges"])) == {row[0] for row in rows(page, "ranges")}
    assert all(len(row) == 3 and all(row) for row in rows(page, "ranges"))
    for week, forecast in zip(data["ranges"]["loops"][0]["weeks"], data["loops"][0]["weeks"], strict=True):
        three = week["elements"]["N"]["ratio"]
        assert (three and three[1]) == forecast["elements"]["N"]["ratio"]
        assert three is None or three == sorted(three)


def test_that_ranges_are_told_as_text_with_what_matters_most(run, yard):
    out = run("forecast", yard, "--ranges", "--weeks", 12).out
    assert "supply over demand by the ranges of the figures" in out
    most = out.split("what matters most for ")[1].splitlines()[1:9]
    assert len(most) == 8
    assert all("ratio" in line and " to " in line for line in most)


def test_that_the_same_seed_prints_the_same_and_another_does_not(run, yard):
    words = ("forecast", yard, "--chances", "--json", "--weeks", 12)
    first, again, other = (run(*words, *more).out for more in ((), ("--seed", 1), ("--seed", 7)))
    assert first == again
    assert json.loads(other)["chances"]["seed"] == 7
    assert json.loads(other)["chances"]["harvest"] != json.loads(first)["chances"]["harvest"]


def test_that_without_the_word_nothing_is_added(run, yard):
    assert "chances" not in json.loads(run("forecast", yard, "--json").out)


def test_that_targets_are_told_with_their_chance_as_text(run, kitchen):
    out = run("forecast", kitchen, "--chances", "--weeks", 8).out
    data = json.loads(run("forecast", kitchen, "--chances", "--weeks", 8, "--json").out)["chances"]
    target = data["targets"][0]
    assert f"{target['crop']}, at least {target['amount_per_week']:g} heads a week" in out
    week = target["weeks"][0]
    line = next(line for line in out.split("at least")[1].splitlines() if week["week"] in line)
    assert line.endswith(f"{week['chance'] * 100:.0f} %")


def test_that_a_farm_without_targets_is_told_by_crop(run, yard):
    out = run("forecast", yard, "--chances").out
    assert "lettuce-leaf, heads" in out


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("--seed", "3"), "--seed goes with --chances"),
        (("--chances", "--csv"), "--chances does not go with --csv"),
        (("--ranges", "--csv"), "--ranges does not go with --csv"),
        (("--chances", "--seed", "lucky"), '"lucky" is not a whole number'),
        (("--chances", "--seed", "-1"), "--seed"),
    ],
)
def test_that_words_that_do_not_go_together_are_refused(run, yard, words, told):
    said = run("forecast", yard, *words)
    assert (said.code, said.out) == (2, "")
    assert told in said.err
