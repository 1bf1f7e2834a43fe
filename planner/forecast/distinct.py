"""The different numbers of a column, for the few columns that are looked through while a farm is opened.

numpy's own way does the same, but reads in its masked arrays first, which takes longer than the forecast.
"""

from __future__ import annotations

import numpy as np

from planner.forecast.values import Ints


def distinct(numbers: Ints) -> Ints:
    """Return the different numbers of an array of shape (n,), in ascending order.

    >>> distinct(np.array([3, 1, 3])).tolist()
    [1, 3]
    """
    ordered = np.sort(numbers)
    is_new = np.ones(ordered.size, dtype=bool)
    is_new[1:] = ordered[1:] != ordered[:-1]
    found: Ints = ordered[is_new]
    return found
