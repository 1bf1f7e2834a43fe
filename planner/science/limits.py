"""One way to refuse a number outside the range a formula is valid for.

Every formula in this room says the same kind of sentence when it refuses: the quantity, the value,
the limit and the unit. This module must not know any formula.
"""

from __future__ import annotations

from typing import Any, TypeAlias, TypeVar

import numpy as np
from numpy.typing import NDArray

FloatArray: TypeAlias = NDArray[np.float64]
IntArray: TypeAlias = NDArray[np.int64]
BoolArray: TypeAlias = NDArray[np.bool_]
Values: TypeAlias = float | FloatArray
"""A number, or an array that broadcasts with the first argument of the formula."""

T = TypeVar("T", float, FloatArray)
"""The first argument of a formula: a number gives a number, an array gives an array of its shape."""

FLOAT_NOISE = 1e-9
"""Relative slack for counts that are whole numbers up to rounding of the arithmetic."""


def _said(number: float, unit: str) -> str:
    return f"{number:.6g} {unit}".rstrip()


def require_at_least(name: str, value: Values, *, low: float, unit: str = "") -> None:
    """Refuse a value, or any element of an array, that is below ``low`` or not a number.

    >>> require_at_least("feed", -2.0, low=0.0, unit="g/d")
    Traceback (most recent call last):
    ValueError: feed is -2 g/d; it must be at least 0 g/d
    """
    if not isinstance(value, float) and np.size(value) == 0:
        return
    # Numbers come by the thousand, and numpy takes long over a single one.
    smallest = value if isinstance(value, float) else float(np.min(value))
    if not smallest >= low:
        raise ValueError(f"{name} is {_said(smallest, unit)}; it must be at least {_said(low, unit)}")


def require_at_most(name: str, value: Values, *, high: float, unit: str = "") -> None:
    """Refuse a value, or any element of an array, that is above ``high`` or not a number.

    >>> require_at_most("pH", 15.0, high=14.0)
    Traceback (most recent call last):
    ValueError: pH is 15; it must be at most 14
    """
    if not isinstance(value, float) and np.size(value) == 0:
        return
    # Numbers come by the thousand, and numpy takes long over a single one.
    largest = value if isinstance(value, float) else float(np.max(value))
    if not largest <= high:
        raise ValueError(f"{name} is {_said(largest, unit)}; it must be at most {_said(high, unit)}")


def require_between(name: str, value: Values, *, low: float, high: float, unit: str = "") -> None:
    """Refuse a value outside ``low`` to ``high``, both included.

    >>> require_between("germination", 0.95, low=0.0, high=1.0)
    """
    require_at_least(name, value, low=low, unit=unit)
    require_at_most(name, value, high=high, unit=unit)


def require_above(name: str, value: Values, *, low: float, unit: str = "") -> None:
    """Refuse a value that is not greater than ``low``.

    >>> require_above("feed conversion", 0.0, low=0.0, unit="g/g")
    Traceback (most recent call last):
    ValueError: feed conversion is 0 g/g; it must be above 0 g/g
    """
    if not isinstance(value, float) and np.size(value) == 0:
        return
    # Numbers come by the thousand, and numpy takes long over a single one.
    smallest = value if isinstance(value, float) else float(np.min(value))
    if not smallest > low:
        raise ValueError(f"{name} is {_said(smallest, unit)}; it must be above {_said(low, unit)}")


def require_rising(name: str, values: FloatArray, *, unit: str = "") -> None:
    """Refuse a list of nodes that does not rise strictly.

    >>> require_rising("weights", np.array([1.0, 1.0]), unit="g")
    Traceback (most recent call last):
    ValueError: weights must rise from one to the next; 1 g is followed by 1 g
    """
    steps = np.diff(values)
    falls = np.flatnonzero(~(steps > 0))
    if falls.size:
        first = int(falls[0])
        raise ValueError(
            f"{name} must rise from one to the next; {_said(float(values[first]), unit)} is followed by "
            f"{_said(float(values[first + 1]), unit)}"
        )


def shaped_like(_first: T, result: object) -> T:
    """Give a result back the way it came: a plain number for a number, an array for an array.

    >>> shaped_like(1.0, np.float64(2.5))
    2.5
    """
    array: Any = np.asarray(result, dtype=np.float64)
    given: T = array if array.ndim else array.item()
    return given
