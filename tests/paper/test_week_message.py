"""A week fits one message of a plain phone: 160 letters, plain ones, the most pressing work first."""

from dataclasses import replace

import pytest

from planner.forecast.week import due_in_week
from planner.paper.week_message import MOST_LETTERS, plain, week_message
from tests.paper.documents_helpers import HOSTILE, empty, hostile, looked, sample


def message(farm, week):
    return week_message(farm.farm, farm.forecast, farm.ask().catalogue, week=week)


@pytest.mark.parametrize("farm", [sample, hostile, empty], ids=["sample", "hostile", "empty"])
def test_that_every_week_is_one_message_of_plain_letters(farm):
    for week in range(0, farm().forecast.ruler.weeks, 3):
        text = message(farm(), week)
        assert 0 < len(text) <= MOST_LETTERS
        assert text.isascii()
        assert text.isprintable()
        assert farm().forecast.ruler.week_name(week) in text


@pytest.mark.parametrize("name", HOSTILE)
def test_that_a_strange_name_leaves_room_for_the_work(name):
    named = replace(sample().farm, settings=replace(sample().farm.settings, name=name))
    assert "feed" in message(looked(named), 3)


def test_that_an_empty_week_says_so():
    assert message(empty(), 0).endswith("nothing is due")


def test_that_what_finds_no_room_is_counted():
    farm = sample()
    for week in range(4, 20):
        text = message(farm, week)
        if "more" not in text:
            continue
        told = text.split(": ", 1)[1].split(", ")
        assert int(told[-1].removeprefix("+").removesuffix(" more")) >= 1
        assert len(told) - 1 <= len(due_in_week(farm.farm, farm.forecast, week))
        return
    pytest.fail("no week of the sample is too full for one message")


def test_that_feed_comes_first_and_picks_before_sowings():
    text = message(sample(), 8)
    body = text.split(": ", 1)[1]
    assert body.startswith("feed ")
    assert body.index("pick") < body.index("move")


def test_that_marks_are_taken_off_and_others_become_a_question():
    assert plain("Azúcar – 水\u202e") == "Azucar - ?"
