"""Shares equivalents of base over products so that gaps of elements are filled first.

A small linear problem, solved exactly: its best answer lies at a corner, and there are few corners.
Must not know products by name, nor water.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import combinations
from typing import Final

import numpy as np

from planner.forecast.values import Floats

_TINY: Final = 1e-9
"""Slack for corners, and the gap [g] that is none."""
_AIMS: Final = 4
_SINGULAR: Final = 1e-12
_TIE: Final = 1e-3
"""Aims that differ by less are a tie. Printed contents are rounded: per equivalent all potassium bases
bring the same potassium, and a fourth digit must not choose lye over bicarbonate."""


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class MixProblem:
    """What is to be shared.

    `eq_per_g` [eq/g] > 0 and `harsh` (0 or 1) by product; `content` [g/g] by (element, product); `gap_g` >= 0
    and `rank` by element: gaps of rank 0 are filled before anything else, those of rank 1 after gentleness.
    """

    equivalents: float
    eq_per_g: Floats
    harsh: Floats
    content: Floats
    gap_g: Floats
    rank: tuple[int, ...]


def fill_gaps(problem: MixProblem) -> Floats:
    """Return grams of each product that fill gaps best, of at most the given equivalents.

    In order, ties within a thousandth passed on: least unfilled share of the gaps of rank 0, least
    equivalents from harsh products, least unfilled share of the gaps of rank 1, fewest equivalents.
    Shares of a gap count alike for every element.
    """
    products = problem.eq_per_g.size
    wanted = np.flatnonzero(problem.gap_g > _TINY)
    if products == 0 or problem.equivalents <= 0.0 or wanted.size == 0:
        return np.zeros(products)
    columns, right = _tableau(problem, wanted)
    aims = _aims(problem, wanted)
    corners = _corners(columns, right)
    reached = corners @ aims.T
    left = np.arange(len(corners))
    for aim in range(_AIMS):
        values = reached[left, aim]
        left = left[values <= values.min() + _TIE]
    return corners[left[0], :products] * problem.equivalents / problem.eq_per_g


def _tableau(problem: MixProblem, wanted: np.ndarray) -> tuple[Floats, Floats]:
    """Return columns and right side in shares: products, equivalents left over, unfilled, surplus.

    A product's variable is its share of all equivalents; unfilled and surplus are shares of the gap.
    """
    products, elements = problem.eq_per_g.size, wanted.size
    columns = np.zeros((1 + elements, products + 1 + 2 * elements))
    columns[0, : products + 1] = 1.0
    per_eq = problem.content[wanted] / problem.eq_per_g * problem.equivalents
    columns[1:, :products] = per_eq / problem.gap_g[wanted][:, None]
    unfilled = products + 1 + np.arange(elements)
    columns[1 + np.arange(elements), unfilled] = 1.0
    columns[1 + np.arange(elements), unfilled + elements] = -1.0
    return columns, np.ones(1 + elements)


def _aims(problem: MixProblem, wanted: np.ndarray) -> Floats:
    """Return one row of weights per aim, the first the most weighty."""
    products, elements = problem.eq_per_g.size, wanted.size
    aims = np.zeros((_AIMS, products + 1 + 2 * elements))
    for place, element in enumerate(wanted):
        row = 0 if problem.rank[element] == 0 else 2
        aims[row, products + 1 + place] = 1.0
    aims[1, :products] = problem.harsh
    aims[-1, :products] = 1.0
    return aims


def _corners(columns: Floats, right: Floats) -> Floats:
    """Return every corner, one a row: as many variables as rows, the rest nought, none below nought."""
    rows, width = columns.shape
    chosen = np.asarray(list(combinations(range(width), rows)))
    squares = columns[:, chosen].transpose(1, 0, 2)
    regular = np.abs(np.linalg.det(squares)) > _SINGULAR
    chosen, squares = chosen[regular], squares[regular]
    values = np.linalg.solve(squares, np.broadcast_to(right[:, None], (len(squares), rows, 1)))[..., 0]
    allowed = np.all(values >= -_TINY, axis=1)
    corners = np.zeros((int(allowed.sum()), width))
    np.put_along_axis(corners, chosen[allowed], np.maximum(values[allowed], 0.0), axis=1)
    return corners
