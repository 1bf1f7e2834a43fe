"""Conditions of figures in the language of the window; what is not known is marked as English."""

import pytest
from PySide6.QtCore import QLocale

from planner.catalogue.loading import shipped_catalogue
from planner.desk.conditions import bare, condition_words, in_language, parts_in
from planner.desk.languages import LANGUAGES

OTHERS = [language for language in LANGUAGES if language != "en"]
LEAST_SHARE = 0.95
"""Of the figures of the catalogue at least so many have conditions that are translated."""
MOST_STALE = 0.02
"""Of the parts so few may stand for conditions that have been worded anew meanwhile."""


def test_that_english_says_them_as_they_are(qapp):
    assert condition_words("field leaves, without nitrate") == "field leaves, without nitrate"


def test_that_known_parts_are_put_together_with_their_numbers(spanish):
    assert condition_words("97 % at 25 °C; legal minimum 70 %") == "97 % a 25 °C; mínimo legal 70 %"
    assert condition_words("20-30 °C") == "20-30 °C"
    assert condition_words("") == ""


def test_that_numbers_are_written_by_the_locale(spanish):
    QLocale.setDefault(QLocale("es"))
    try:
        assert condition_words("onion stalk 2.4") == "tallo de cebolla 2,4"
    finally:
        QLocale.setDefault(QLocale.c())


def test_that_one_unknown_part_leaves_all_of_it_in_english_and_marked(spanish):
    assert condition_words("field leaves, no such part") == "[en] field leaves, no such part"


@pytest.mark.parametrize("language", OTHERS)
def test_that_every_part_keeps_its_numbers_and_nearly_all_stand_for_one_there_is(language):
    known = parts_in(language)
    assert [part for part, said in known.items() if part.count("#") != said.count("#")] == []
    there = {piece for figure in shipped_catalogue().figures.values() for piece in pieces(figure.conditions)}
    assert len(set(known) - there) <= MOST_STALE * len(known)


@pytest.mark.parametrize("language", OTHERS)
def test_that_most_conditions_are_translated(language):
    known = parts_in(language)
    figures = shipped_catalogue().figures.values()
    done = sum(in_language(figure.conditions, known) is not None for figure in figures)
    assert done >= LEAST_SHARE * len(figures)


def pieces(text):
    for part in text.split("; "):
        for smaller in part.split(", "):
            yield from (bare(piece) for piece in smaller.split(": "))
