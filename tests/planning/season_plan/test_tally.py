"""Counting lot by lot comes to the same as counting everything anew."""

from __future__ import annotations

import numpy as np
import pytest

from planner.planning.season_plan.local_search import improve
from planner.planning.season_plan.model import build_model
from planner.planning.season_plan.options import PlanOptions
from planner.planning.season_plan.rounding import make_fit, round_into
from planner.planning.season_plan.tally import Tally, near


@pytest.fixture(scope="module")
def model(season, means):
    return build_model(season, means.forecaster, PlanOptions(lot_plants=2, labour_min_per_week=25.0))


@pytest.fixture
def tally(model):
    random = np.random.default_rng(4)
    found = Tally(model)
    for column in random.permutation(model.columns.count)[:40].tolist():
        found.change(column, min(3, found.room_for(column)))
    return found


def anew(tally):
    found = Tally(tally.model)
    found.put(tally.lots)
    return found


def fits(tally):
    slack = [tally.bed_left.min(), tally.nursery_left.min(), tally.work_left.min() + 1e-6]
    return min(slack) >= 0


def test_that_a_change_is_foretold_exactly(tally):
    for column in range(0, tally.lots.size, 7):
        for by in (1, -int(tally.lots[column])):
            before = tally.parts().cost
            foretold = tally.change_of(column, by)
            tally.change(column, by)
            assert tally.parts().cost - before == pytest.approx(foretold, abs=1e-9)


def test_that_a_tally_that_was_changed_often_is_that_of_its_lots(tally):
    for column in range(tally.lots.size):
        tally.change(column, 2)
        tally.change(column, -2)
    fresh = anew(tally)
    assert tally.parts().cost == pytest.approx(fresh.parts().cost)
    assert (tally.bed_left == fresh.bed_left).all()
    assert (tally.nursery_left == fresh.nursery_left).all()


def test_that_the_hopes_are_never_too_low_and_the_same_near_by(tally):
    hopes = tally.gain_of_each()
    exact = [tally.change_of(column, 1) for column in range(hopes.size)]
    assert (hopes <= np.asarray(exact) + 1e-9).all()
    chosen = np.flatnonzero(tally.model.columns.crop == 0)
    assert tally.gain_among(near(tally.model, chosen)) == pytest.approx(hopes[chosen], abs=1e-9)


def test_that_room_for_a_lot_is_seen_alike_one_by_one_and_all_at_once(tally):
    every = np.arange(tally.lots.size)
    room = [tally.room_for(column) > 0 for column in every.tolist()]
    assert tally.fits(every).tolist() == room
    assert True in room
    assert False in room


def test_that_searching_never_makes_a_plan_worse_and_keeps_to_all_room(tally):
    cost = tally.parts().cost
    for change, _ in zip(improve(tally, seed=1), range(150), strict=False):
        assert change <= 0
        assert fits(tally)
        assert tally.parts().cost == pytest.approx(cost + change, abs=1e-7)
        cost += change
    assert fits(anew(tally))


def test_that_rounding_keeps_to_all_room(model):
    tally = Tally(model)
    round_into(tally, np.random.default_rng(0).uniform(0.0, 3.0, size=tally.lots.size))
    assert tally.lots.sum() > 0
    assert fits(anew(tally))


def test_that_a_crowded_plan_is_thinned_until_it_fits(model):
    tally = Tally(model)
    tally.put(np.full(tally.lots.size, 4))
    assert not fits(tally)
    make_fit(tally)
    assert tally.lots.sum() > 0
    assert fits(anew(tally))
