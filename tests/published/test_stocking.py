"""Staggered stocking against published feed charts and the raft system of the Virgin Islands."""

import numpy as np
import pytest

from planner.planning.stocking.steady import staggered_feed, steadiness
from tests.science.figures import published_table

FIRST_WEEK, LAST_WEEK = 7, 30


def weekly_feed() -> np.ndarray:
    rows = published_table("tilapia_weekly_chart.csv")
    kept = [row for row in rows if FIRST_WEEK <= int(row["week"]) <= LAST_WEEK]
    return np.array([float(row["feed_g_per_day_per_1000_fish"]) for row in kept])


@pytest.mark.parametrize(
    ("groups", "lowest_over_highest", "drop_percent", "variation_percent"),
    [
        (1, 0.09, 87, 43),
        (2, 0.50, 44, 21),
        (3, 0.66, 24, 14),
        (4, 0.71, 29, 12),
        (6, 0.89, 10, 5),
        (8, 0.87, 13, 6),
        (12, 0.96, 4, 2),
    ],
)
def test_that_staggered_groups_even_the_feed_out_as_on_the_feed_makers_chart(
    groups: int, lowest_over_highest: float, drop_percent: int, variation_percent: int
) -> None:
    """A Brazilian feed maker's tilapia chart, weeks 7 to 30 of 30, equal groups over 24 weeks.

    The expected figures were worked out from the chart beside this program, to two digits and whole percent;
    one unit of the last digit is allowed, for two of them (0.71 and 21 %) stand half a unit from ours.
    """
    found = steadiness(staggered_feed(weekly_feed(), groups=groups))
    assert found.lowest_over_highest == pytest.approx(lowest_over_highest, abs=0.01)
    assert 100.0 * found.drop_share == pytest.approx(drop_percent, abs=1.0)
    assert 100.0 * found.variation == pytest.approx(variation_percent, abs=1.0)
