"""What comes in with feed goes somewhere, and no more than that."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.science import elements

GRAMS = st.floats(0.0, 1e5)
SHARE = st.floats(0.0, 1.0)


@given(feed=st.lists(GRAMS, min_size=1, max_size=6), gain=GRAMS, body=SHARE, solids=SHARE)
def test_that_a_split_sums_to_the_feed_and_no_part_is_negative(
    feed: list[float], gain: float, body: float, solids: float
) -> None:
    fed = np.array(feed)
    split = elements.split_feed(fed, gain_g=gain, body_content_g_per_g=body, solids_share=solids)
    parts = split.fish_g + split.solids_g + split.dissolved_g
    assert np.all(np.abs(parts - fed) <= 1e-9 * np.maximum(fed, 1.0))
    for part in (split.fish_g, split.solids_g, split.dissolved_g):
        assert np.all(part >= 0.0)


@given(feed=GRAMS, more=GRAMS, gain=GRAMS, body=SHARE, solids=SHARE)
def test_that_more_feed_never_dissolves_less(
    feed: float, more: float, gain: float, body: float, solids: float
) -> None:
    both = np.array([feed, feed + more])
    split = elements.split_feed(both, gain_g=gain, body_content_g_per_g=body, solids_share=solids)
    assert split.dissolved_g[1] >= split.dissolved_g[0] - 1e-9 * max(feed + more, 1.0)


def test_that_fish_cannot_keep_what_the_feed_does_not_hold_and_it_is_said() -> None:
    split = elements.split_feed(
        np.array([10.0, 10.0]), gain_g=100.0, body_content_g_per_g=np.array([0.2, 0.05]), solids_share=0.1
    )
    assert split.fish_capped.tolist() == [True, False]
    assert split.fish_g.tolist() == pytest.approx([9.0, 5.0])
    assert split.dissolved_g.tolist() == pytest.approx([0.0, 4.0])


def test_that_fish_that_shrink_are_refused() -> None:
    with pytest.raises(ValueError, match=r"gain is -1 g; it must be at least 0 g"):
        elements.split_feed(np.array([1.0]), gain_g=-1.0, body_content_g_per_g=0.02, solids_share=0.1)


@given(solids=st.lists(GRAMS, min_size=1, max_size=5), captured=SHARE, media=SHARE)
def test_that_solids_are_all_somewhere(solids: list[float], captured: float, media: float) -> None:
    laid = np.array(solids)
    split = elements.split_solids(laid, captured_share=captured, media_share_of_passed=media)
    total = split.captured_g + split.settled_in_raft_beds_g + split.kept_in_media_beds_g
    assert total == pytest.approx(laid)
    assert np.all(split.settled_in_raft_beds_g >= 0.0)


@given(final=SHARE, rate=st.floats(0.0, 2.0))
def test_that_release_rises_and_never_passes_its_final_share(final: float, rate: float) -> None:
    released = elements.released_share(np.arange(200.0), final_share=final, rate_per_day=rate)
    assert released[0] == 0.0
    assert np.all(np.diff(released) >= -1e-15)
    assert np.all(released <= final)


@given(
    laid=st.lists(GRAMS, min_size=2, max_size=40),
    final=SHARE,
    rate=st.floats(0.0, 2.0),
)
def test_that_daily_release_never_passes_what_was_laid_down(
    laid: list[float], final: float, rate: float
) -> None:
    days = np.array(laid)[:, np.newaxis]
    released = elements.daily_release(days, final_share=final, rate_per_day=rate)[:, 0]
    assert np.all(released >= 0.0)
    assert np.all(np.cumsum(released) <= final * np.cumsum(days[:, 0]) + 1e-6)


def test_that_daily_release_of_one_batch_is_the_release_curve() -> None:
    laid = np.zeros((60, 1))
    laid[0] = 100.0
    daily = elements.daily_release(laid, final_share=0.5, rate_per_day=0.07)[:, 0]
    curve = elements.released_share(np.arange(60.0), final_share=0.5, rate_per_day=0.07)
    assert np.cumsum(daily) == pytest.approx(100.0 * curve)


def test_that_excretion_and_solids_cannot_pass_the_whole() -> None:
    with pytest.raises(ValueError, match=r"solids share is 0.5; it must be at most 0.45"):
        elements.ammonia_share_of_feed_nitrogen(
            excreted_share=0.55, solids_share=0.5, solids_removed_share=0.6
        )
