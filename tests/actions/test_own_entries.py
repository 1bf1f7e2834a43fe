"""Entries of a library are taken into a farm in one act."""

import dataclasses

from planner.actions.own_entries import taken_in
from planner.farm.changes import applied
from planner.farm.farm import OwnEntry, Shelf
from planner.farm.ids import new_id
from tests.farms import farm_of


def entry(key, **values):
    pairs = tuple(sorted(values.items()))
    return OwnEntry(id=new_id(), shelf=Shelf.CROP, key=key, like="basil", name=key, values=pairs)


def test_that_new_ones_are_added_changed_ones_replaced_and_the_same_left_alone():
    same, old = entry("same", bed_days=20.0), entry("old", bed_days=30.0)
    farm = dataclasses.replace(farm_of(), own_entries=(same, old))
    library = (entry("same", bed_days=20.0), entry("old", bed_days=31.0), entry("new", bed_days=10.0))
    done = taken_in(farm, library, title="library")
    assert len(done.changes) == 2
    after = {own.key: own for own in applied(farm, done).own_entries}
    assert after["same"] == same
    assert after["old"].id == old.id
    assert after["old"].values == (("bed_days", 31.0),)
    assert after["new"].id != library[2].id
    assert taken_in(applied(farm, done), library, title="library").changes == ()
