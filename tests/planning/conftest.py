"""One catalogue and the sample farm for the planning tests that need a whole farm."""

from __future__ import annotations

import pytest

from planner.bootstrap import Means
from tests.desk.helpers import sample_farm


@pytest.fixture(scope="session")
def means():
    return Means()


@pytest.fixture(scope="session")
def farm(means):
    return sample_farm(means)
