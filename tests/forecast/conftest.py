"""One catalogue and one forecaster for all forecast tests."""

from __future__ import annotations

import pytest

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.loading import shipped_catalogue
from planner.forecast.engine import Forecaster


@pytest.fixture(scope="session")
def catalogue() -> Catalogue:
    return shipped_catalogue()


@pytest.fixture
def forecaster(catalogue: Catalogue) -> Forecaster:
    return Forecaster(catalogue)
