"""What the tests of the page share: a sample with flagged weeks, a bare farm, and needs of a page."""

import dataclasses

import pytest

from planner.desk.behind import Behind
from planner.desk.conduct import Conduct
from planner.desk.outlook import look_out
from planner.desk.places.place import PlaceNeeds
from planner.desk.theme import LIGHT
from planner.shipped import shipped_path
from tests.desk.helpers import NOW, TODAY, Answering, open_session


@pytest.fixture(scope="session")
def kitchen(means):
    """A farm with targets, flagged weeks and several fish groups."""
    return means.read(shipped_path("sample_data", "school-kitchen.toml")).farm


@pytest.fixture(scope="session")
def bare(kitchen):
    """The same site and water with nothing in it."""
    return dataclasses.replace(
        kitchen,
        beds=(),
        batches=(),
        placements=(),
        fish_groups=(),
        fish_events=(),
        tanks=(),
        targets=(),
        doses=(),
        readings=(),
        solids_batches=(),
        filters=(),
        seed_lots=(),
    )


@pytest.fixture
def behind_of(means):
    """Makes what stands behind a farm."""

    def made(farm):
        return Behind(look_out(farm, means.forecaster), means.forecaster, TODAY)

    return made


@dataclasses.dataclass
class Stage:
    """A section on the open farm: shows the farm anew after each act, as the window does."""

    part: object
    session: object
    behind_of: object

    def show(self, *_notice):
        self.part.show_behind(self.behind_of(self.session.farm))


@pytest.fixture
def stage(qtbot, qapp, means, behind_of, tmp_path):
    """Makes a section on a farm that is open in memory; it is put away at the end."""
    made = []

    def make(maker, farm, size=(1000, 600)):
        session = open_session(means, farm)
        conduct = Conduct()
        needs = PlaceNeeds(
            theme=LIGHT,
            conduct=conduct,
            ask=Answering(),
            now=lambda: NOW,
            memory=None,
            home=tmp_path,
            forecaster=means.forecaster,
        )
        part = maker(needs, None)
        found = Stage(part=part, session=session, behind_of=behind_of)
        conduct.take(session)
        conduct.changed.connect(found.show)
        part.resize(*size)
        found.show()
        part.show()
        made.append((part, conduct))
        return found

    yield make
    from tests.desk.helpers import put_away

    for part, conduct in made:
        part.leave()
        conduct.let_go()
        put_away(part)


@pytest.fixture
def rest(qtbot):
    """Waits until nothing is worked out any more."""

    def waited(worker):
        qtbot.waitUntil(lambda: not worker.is_working, timeout=60_000)

    return waited
