"""The different numbers of a column are those that numpy finds, without its masked arrays."""

import subprocess
import sys

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.forecast.distinct import distinct


@given(st.lists(st.integers(-(2**40), 2**40)))
def test_that_they_are_those_that_numpy_finds(numbers):
    column = np.array(numbers, dtype=np.int64)
    assert distinct(column).tolist() == np.unique(column).tolist()


@pytest.mark.parametrize("numbers", [[], [7], [7, 7]])
def test_that_short_columns_are_no_trouble(numbers):
    assert distinct(np.array(numbers, dtype=np.int64)).tolist() == sorted(set(numbers))


FORECAST = """
import sys
from planner.bootstrap import Means
from planner.shipped import shipped_path
means = Means()
farm = means._checked_text(shipped_path("sample_data", "school-kitchen.toml"))
means.forecaster.preview(farm)
print("numpy.ma" in sys.modules)
"""


def test_that_a_forecast_reads_in_no_masked_arrays(root):
    done = subprocess.run(
        [sys.executable, "-c", FORECAST], cwd=root, capture_output=True, text=True, check=False
    )
    assert done.stdout.strip() == "False", done.stderr
