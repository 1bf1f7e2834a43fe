"""Every formula, note and reason has words, and every word finds its number."""

from __future__ import annotations

from datetime import date
from string import Formatter

import pytest

from planner.forecast.why.formulas import Formula
from planner.forecast.why.reasons import Reason, ReasonKind
from planner.forecast.why.values import Explanation, Input, Note, NoteKind, Origin
from planner.paper.reasons import (
    FORMULA_WORDS,
    NOTE_WORDS,
    explanation_lines,
    input_line,
    note_sentence,
    reason_sentence,
)
from planner.paper.words import NO_BREAK

REASON_VALUES = {
    ReasonKind.FISH_HARVESTED: {"fish": 74.2, "fall_share": 0.62},
    ReasonKind.OFF_FEED: {"days": 3.0},
    ReasonKind.NEAR_HARVEST: {"plants": 1250.0, "rise_share": 0.25},
    ReasonKind.MORE_PLANTS: {"plants": 10.0, "rise_share": 0.25},
    ReasonKind.YOUNG_FISH: {"weight_g": 34.7, "harvest_weight_g": 500.0},
    ReasonKind.COLD_WATER: {"water_c": 20.4, "optimum_c": 29.0, "growth_share": 0.33},
    ReasonKind.WARM_WATER: {"water_c": 34.0, "optimum_c": 29.0, "growth_share": 0.5},
    ReasonKind.LITTLE_FED: {"fed": 18.4, "low": 40.0, "high": 50.0},
    ReasonKind.LITTLE_IN_FEED: {"fed": 18.4, "low": 40.0, "high": 50.0},
}


def told(kind, *, until_on=None, beside=None):
    values = tuple(REASON_VALUES.get(kind, {}).items())
    reason = Reason(
        kind=kind,
        element=0,
        ratio_lost=0.3,
        about="Autumn fish",
        on=date(2027, 5, 3),
        until_on=until_on,
        values=values,
    )
    return reason_sentence(reason, beside=beside).replace(NO_BREAK, " ")


@pytest.mark.parametrize("kind", list(ReasonKind))
def test_that_every_reason_is_a_sentence_with_its_numbers(kind):
    sentence = told(kind)
    assert len(sentence) > 15
    assert "{" not in sentence


def test_that_a_harvest_of_fish_says_how_long_feed_is_low():
    assert told(ReasonKind.FISH_HARVESTED, until_on=date(2027, 7, 2), beside=date(2027, 1, 1)) == (
        "74 fish harvested on Mon 3 May: feed falls 62 % until Fri 2 Jul"
    )
    assert told(ReasonKind.FISH_HARVESTED).endswith("feed falls 62 % for the rest of the plan")


def test_that_numbers_are_rounded_as_people_say_them():
    assert told(ReasonKind.NEAR_HARVEST).startswith(
        "many plants near harvest (1,250): the plants want 25 % more"
    )
    assert "34" not in told(ReasonKind.YOUNG_FISH)
    assert "35 g each against 500 g at harvest" in told(ReasonKind.YOUNG_FISH)


def test_that_every_formula_has_words():
    assert set(FORMULA_WORDS) == set(Formula)


@pytest.mark.parametrize("kind", list(NoteKind))
def test_that_every_note_has_words(kind):
    wanted = [name for _, name, _, _ in Formatter().parse(NOTE_WORDS[kind]) if name]
    said = note_sentence(Note(kind=kind, values=tuple((name, 2.5) for name in wanted)))
    assert said
    assert said.count("2.5") >= len(set(wanted))
    assert "{" not in said


def test_that_an_input_says_where_it_comes_from():
    plain = {"name": "share", "value": 0.92, "unit": "1"}
    assert input_line(Input(origin=Origin.WORKED_OUT, **plain)) == "share = 0.92 (worked out)"
    assert (
        input_line(Input(origin=Origin.ENTERED, about="LOT-1", **plain)) == "share = 0.92 (entered for LOT-1)"
    )
    figure = Input(
        origin=Origin.FIGURE,
        path="crop/basil/germination_share",
        low=0.8,
        high=0.99,
        source="",
        confidence="memory",
        conditions="20 °C",
        **plain,
    )
    assert input_line(figure) == (
        "share = 0.92 (0.8 to 0.99; no source, memory; 20 °C; crop/basil/germination_share)"
    )


def test_that_a_figure_that_is_not_there_is_told_so():
    nothing = Explanation(title="ratio", about="N", value=None, unit="g/g", formula=Formula.RATIO)
    assert list(explanation_lines(nothing, depth=0)) == ["ratio of N: no figure"]
