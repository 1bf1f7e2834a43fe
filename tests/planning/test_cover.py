"""Weeks of a crop that is picked many times, covered by sowings."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.planning.cover import Margin, cover

WEEKS = 30
EXACT = Margin(headroom=0.0, most_over=0.2)


@dataclass(frozen=True)
class Plain:
    """A sowing that gives some amounts from a week on."""

    week: int
    gives: tuple[float, ...]

    @property
    def per_plant(self):
        found = np.zeros(WEEKS)
        part = self.gives[: WEEKS - self.week]
        found[self.week : self.week + len(part)] = part
        return found


def covered(wanted, gives, *, have=None, margin=EXACT, weeks=range(WEEKS)):
    have = np.zeros(WEEKS) if have is None else have
    found = cover(
        wanted,
        have,
        offers=lambda week: [Plain(week, tuple(one)) for one in gives] if week in weeks else [],
        margin=margin,
    )
    total = have + sum((one.offer.per_plant * one.plants for one in found.sown), start=np.zeros(WEEKS))
    return found, total


def test_that_a_crop_picked_once_is_sown_for_every_week():
    found, total = covered(np.full(WEEKS, 10.0), [[2.0]])
    assert [(one.week, one.plants) for one in found.sown] == [(week, 5) for week in range(WEEKS)]
    assert (total == 10.0).all()


def test_that_plants_are_sown_again_when_their_window_ends():
    found, total = covered(np.full(WEEKS, 10.0), [[1.0] * 10])
    assert [(one.week, one.plants) for one in found.sown] == [(0, 10), (10, 10), (20, 10)]
    assert (total == 10.0).all()


def test_that_three_cuts_three_weeks_apart_need_a_chain_of_their_own_for_each_week():
    found, total = covered(np.full(WEEKS, 12.0), [[1.0, 0, 0, 1.0, 0, 0, 1.0]])
    assert [one.week for one in found.sown] == [
        w for start in range(0, WEEKS, 9) for w in range(start, start + 3)
    ]
    assert (total == 12.0).all()


def test_that_what_stands_anyway_is_not_sown_again():
    have = np.zeros(WEEKS)
    have[:20] = 10.0
    found, _ = covered(np.full(WEEKS, 10.0), [[1.0]], have=have)
    assert [one.week for one in found.sown] == list(range(20, WEEKS))


def test_that_headroom_and_slack_save_small_sowings():
    wanted, falling = np.full(WEEKS, 100.0), [[1.0 * 0.95**n for n in range(12)]]
    exact, _ = covered(wanted, falling)
    roomy, total = covered(wanted, falling, margin=Margin(headroom=0.1, most_over=0.2, slack=0.03))
    assert len(roomy.sown) < len(exact.sown)
    assert (total >= 97.0).all()
    assert (total <= 120.0).all()


def test_that_weeks_without_an_offer_are_told_with_what_is_missing():
    found, _ = covered(np.full(WEEKS, 10.0), [[1.0]], weeks=range(3, WEEKS))
    assert found.missed == ((0, 10.0), (1, 10.0), (2, 10.0))


def test_that_swinging_picks_are_evened_out():
    swinging = [[3.0, 2.0, 2.0] * 4, [2.0, 3.0, 2.0] * 4, [2.0, 2.0, 3.0] * 4]
    _, total = covered(np.full(WEEKS, 700.0), swinging)
    assert (np.abs(total / 700.0 - 1.0) <= 0.2).mean() >= 0.95


@given(
    wanted=st.lists(st.integers(0, 50), min_size=WEEKS, max_size=WEEKS),
    window=st.integers(1, 12),
    decline=st.floats(0.7, 1.0),
)
def test_that_what_picks_hold_out_for_is_always_covered(wanted, window, decline):
    wanted = np.asarray(wanted, dtype=np.float64)
    found, total = covered(
        wanted, [[decline**n for n in range(window)]], margin=Margin(headroom=0.0, most_over=9e9)
    )
    assert found.missed == ()
    assert (total >= wanted - 1e-6).all()
    assert all(one.plants >= 1 for one in found.sown)


@pytest.mark.parametrize("amount", [1.0, 7.0, 40.0])
def test_that_no_plant_is_sown_that_no_week_needs(amount):
    wanted = np.full(WEEKS, amount)
    found, total = covered(wanted, [[1.0, 0.9, 0.8]])
    for one in found.sown:
        less = total - one.offer.per_plant
        assert (less < wanted - 1e-9).any()
