"""Sentences for people at a terminal stay short, and lose nothing."""

from __future__ import annotations

from planner.forecast.week import DueWhere
from planner.paper.sentences import wheres_words


def run(unit, first=1, last=72, bed="Raft"):
    return DueWhere(bed=bed, unit=unit, first=first, last=last)


def test_that_whole_rafts_one_after_another_are_told_together():
    runs = [run(4), run(3), run(2), run(5, last=48)]
    assert list(wheres_words(runs)) == ["Raft 2–4, places 1–72 of each", "Raft 5, places 1–48"]


def test_that_a_gap_another_bed_or_other_places_are_told_apart():
    runs = [run(1), run(3), run(4, bed="Other"), run(5, first=2, bed="Other")]
    assert list(wheres_words(runs)) == [
        "Raft 1, places 1–72",
        "Raft 3, places 1–72",
        "Other 4, places 1–72",
        "Other 5, places 2–72",
    ]


def test_that_a_bed_without_chosen_places_is_told_by_its_name():
    assert list(wheres_words([run(0), run(0, bed="Other")])) == ["Raft", "Other"]
