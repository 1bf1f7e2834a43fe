"""A chance says how many draws met it, how wide each thing varies, and how sure the share itself is."""

from __future__ import annotations

from functools import lru_cache

import numpy as np
import pytest
from scipy import stats

from planner.farm.crops import TargetUnit
from planner.forecast.chances.draw import chances_of
from planner.forecast.chances.spreads import spreads_of
from planner.forecast.why.arithmetic import recomputed
from planner.forecast.why.chances import (
    Asked,
    why_chance,
    why_spread_of_feed,
    why_spread_of_harvest,
    why_spread_of_ratio,
)
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError
from planner.forecast.why.spreads import LUCK
from planner.forecast.why.values import NoteKind, Origin
from tests.forecast.sample_farms import NAMES, known
from tests.forecast.why.working import walk

NO_ARITHMETIC = {Formula.PERCENTILE, Formula.ALONE}


@lru_cache(maxsize=4)
def drawn(name):
    farm, forecast, forecaster = known(name)
    chances = chances_of(farm, forecast, forecaster)
    return Ground(farm=farm, forecast=forecast, forecaster=forecaster), chances


@lru_cache(maxsize=8)
def middling(name):
    """Return a chance that is neither sure nor none: the middle of the crop and week that vary most."""
    ground, chances = drawn(name)
    spread = chances.harvest_plants.std(axis=1)
    crop, week = np.unravel_index(int(spread.argmax()), spread.shape)
    amount = float(np.median(chances.harvest_plants[crop, :, week]))
    asked = Asked(crop=chances.crops[crop], week=int(week), amount=amount)
    return asked, why_chance(ground, chances, asked)


@pytest.mark.parametrize("name", NAMES)
def test_that_a_chance_is_the_draws_that_met_it(name):
    ground, chances = drawn(name)
    asked, answer = middling(name)
    assert answer.value == chances.chance_at_least(asked.crop, asked.week, amount=asked.amount)
    assert 0 < answer.value < 1
    assert answer.input("draws").value == chances.draws == 1000
    note = next(note for note in answer.notes if note.kind is NoteKind.DRAWS)
    assert dict(note.values) == {"draws": "1,000", "seed": "1"}
    levels = chances.harvest_percentiles(asked.crop)[:, asked.week]
    told = [answer.input(f"percentile_{level}").value for level in (10, 50, 90)]
    assert told == pytest.approx(levels)
    assert ground.catalogue.crops[asked.crop].name == answer.about


@pytest.mark.parametrize("name", NAMES)
def test_that_all_arithmetic_of_a_chance_can_be_done_again(name):
    for one in walk(middling(name)[1]):
        if one.formula not in NO_ARITHMETIC:
            assert recomputed(one) == pytest.approx(one.value), one.title


def test_that_the_error_of_the_share_is_that_of_a_binomial():
    _, answer = middling("backyard")
    error = answer.children[0]
    draws = 1000
    assert error.value == pytest.approx(stats.binom(draws, answer.value).std() / draws)


@pytest.mark.parametrize("name", NAMES)
def test_that_each_cause_is_how_far_draws_spread_with_it_alone_and_the_widest_comes_first(name):
    _, answer = middling(name)
    wide = [one.value for one in answer.children[1:]]
    assert {one.title for one in answer.children[1:]} < set(LUCK.values())
    assert min(wide) > 0
    assert wide == sorted(wide, reverse=True)
    assert wide[0] > 0
    # Each alone does less than all together, and together they do not do less than the widest alone.
    chances, asked = drawn(name)[1], middling(name)[0]
    whole = chances.harvest(asked.crop)[:, asked.week].std()
    assert whole > 0.5 * wide[0]
    assert whole < 1.5 * float(np.sqrt(np.sum(np.square(wide))))


@pytest.mark.parametrize("name", NAMES)
def test_that_spreads_are_those_that_were_drawn_with_and_tell_on_whose_word(name):
    farm, forecast, forecaster = known(name)
    spreads = spreads_of(farm, forecast, forecaster.catalogue_for(farm))
    codes = {batch.code: row for row, batch in enumerate(farm.batches)}
    titles = {
        "spread of days to the first pick": spreads.days_sd,
        "spread of survival in the bed": spreads.bed_sd,
        "spread of survival in the nursery": spreads.nursery_sd,
        "spread of germination of the lot": spreads.germination_sd,
    }
    seen = set()
    for one in walk(middling(name)[1]):
        if one.title in titles:
            seen.add(one.title)
            assert one.value == pytest.approx(titles[one.title][codes[one.about]])
        for given in one.inputs:
            if given.origin is Origin.FIGURE:
                assert given.confidence
    assert len(seen) >= 3


def test_that_a_chance_of_all_or_none_says_how_fine_draws_tell():
    ground, chances = drawn("backyard")
    asked, _ = middling("backyard")
    sure = why_chance(ground, chances, Asked(crop=asked.crop, week=asked.week, amount=0.0))
    assert sure.value == 1.0
    assert NoteKind.NEAR_SURE in {note.kind for note in sure.notes}
    assert sure.children[0].value == 0.0


def test_that_middles_of_harvest_feed_and_ratio_are_those_of_the_draws():
    ground, chances = drawn("backyard")
    asked, _ = middling("backyard")
    loop = chances.loops[0]
    kilos = why_spread_of_harvest(ground, chances, asked.crop, asked.week, TargetUnit.KG)
    assert kilos.value == pytest.approx(chances.harvest_percentiles(asked.crop, TargetUnit.KG)[1, asked.week])
    feed = why_spread_of_feed(ground, chances, loop.loop, 20)
    assert feed.value == pytest.approx(np.median(loop.feed_g_per_day[:, 20]))
    week = int(np.flatnonzero(~np.isnan(loop.ratio[:, 0]).all(axis=0))[0])
    ratio = why_spread_of_ratio(ground, chances, loop.loop, week, 0)
    assert ratio.value == pytest.approx(np.nanmedian(loop.ratio[:, 0, week]))
    assert feed.children
    assert ratio.children


@pytest.mark.parametrize(
    ("words", "said"),
    [
        ({"crop": "no-such-crop", "week": 0, "amount": 1.0}, "not grown"),
        ({"week": 9999, "amount": 1.0}, "week is 9999"),
        ({"week": 0, "amount": -1.0}, "0 or more"),
        ({"week": 0, "amount": float("nan")}, "0 or more"),
    ],
)
def test_that_what_cannot_be_asked_is_refused(words, said):
    ground, chances = drawn("backyard")
    with pytest.raises(NoSuchFigureError, match=said):
        why_chance(ground, chances, Asked(**({"crop": chances.crops[0]} | words)))
