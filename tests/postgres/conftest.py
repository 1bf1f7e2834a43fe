"""The fixtures of shared farms: one server for the run, an empty database for each test, desks on it."""

import pytest

from planner.actions.session import Session
from planner.bootstrap import Means, utc_now
from planner.catalogue.own import laid_over
from planner.store.store import FarmStore
from tests.desk.helpers import sample_farm
from tests.postgres.server import a_database, a_server, binaries


@pytest.fixture(scope="session")
def server():
    """The address of a running server, without a database."""
    if binaries() is None:
        pytest.skip("no PostgreSQL server is installed here")
    with a_server() as address:
        yield address


_NUMBERS = iter(range(1, 10_000))


@pytest.fixture
def url(server):
    """The address of an empty database of its own."""
    with a_database(server, f"farm{next(_NUMBERS)}") as address:
        yield address


@pytest.fixture(scope="session")
def means():
    return Means()


@pytest.fixture(scope="session")
def farm(means):
    return sample_farm(means)


@pytest.fixture
def open_desk(url, means, farm):
    """Open the farm on the server once more, under a name."""
    FarmStore.create(url, farm, means.holds(farm)).close()
    stores = []

    def opened(who="", where=url):
        store = FarmStore.open(where)
        stores.append(store)
        return Session(
            store,
            means.catalogue,
            holds_of=means.holds,
            faults_of=means.faults,
            now=utc_now,
            laid_over=laid_over,
            who=who,
        )

    yield opened
    for store in stores:
        store.close()
