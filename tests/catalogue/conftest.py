import shutil

import pytest

from planner.catalogue.loading import load_catalogue
from planner.shipped import shipped_path

RESOURCES = shipped_path("resources")


@pytest.fixture(scope="session")
def book():
    return load_catalogue(RESOURCES)


@pytest.fixture
def copied(tmp_path):
    """A copy of the catalogue's files that a test may spoil."""
    for name in ("catalogue", "coefficients"):
        shutil.copytree(RESOURCES / name, tmp_path / name)
    return tmp_path
