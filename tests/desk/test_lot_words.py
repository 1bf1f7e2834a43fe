"""What is known of a seed lot stands where its seeds are counted: on the page of the batch."""

import dataclasses
from datetime import timedelta

import pytest

from planner.actions.records import new_entry
from planner.desk.behind import Behind
from planner.desk.facts import page_of
from planner.desk.outlook import look_out
from planner.farm.crops import SeedLot
from planner.farm.ids import id_from
from planner.farm.log import Happening, Unit
from tests.desk.helpers import TODAY


@pytest.fixture
def page(means, farm):
    """The page of a batch of an old, primed lot that was tested long ago."""
    batch = farm.batches[-1]
    packed = batch.sow_on - timedelta(days=900)
    lot = SeedLot(id=id_from("lot"), code="LOT-Z", crop=batch.crop, primed=True, packed_on=packed)
    test = new_entry(
        what=Happening.SEED_TESTED,
        on=packed + timedelta(days=9),
        seed_lot=lot.id,
        amount=30.0,
        out_of=50,
        unit=Unit.PLANTS,
    )
    sown = dataclasses.replace(batch, seed_lot=lot.id, variety="")
    changed = dataclasses.replace(
        farm, seed_lots=(lot,), log_entries=(test,), batches=(*farm.batches[:-1], sown)
    )
    outlook = look_out(changed, means.forecaster)
    return page_of(Behind(outlook, means.forecaster, TODAY), sown, TODAY)


def test_that_the_seeds_of_a_batch_say_what_its_lot_showed(page):
    (seeds,) = (fact for section in page.sections for fact in section.facts if fact.label == "Seeds to sow")
    assert "Old lot: test it" in seeds.note
    assert "Primed seed keeps less long" in seeds.note
    assert "30 of 50 came up: 1 tests" in seeds.note
