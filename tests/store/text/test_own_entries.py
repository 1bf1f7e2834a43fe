"""Own entries alone as text: a library that goes from farm to farm and comes back the same."""

import dataclasses

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.farm.farm import OwnEntry, Shelf
from planner.farm.faults import FarmFaultError
from planner.farm.fields import NO_ID
from planner.farm.ids import new_id
from planner.store.text import read_own_entries, read_own_entries_file, write_own_entries
from tests.strategies import farms

BASIL = OwnEntry(
    id=new_id(), shelf=Shelf.CROP, key="basil-fine", like="basil", name="Fine", values=(("bed_days", 26.0),)
)


def without_ids(entries):
    return [dataclasses.replace(own, id=NO_ID) for own in entries]


@given(farms().map(lambda farm: farm.own_entries) | st.just((BASIL,)))
def test_that_entries_written_and_read_are_the_same_and_so_is_their_text(entries):
    text = write_own_entries(entries)
    back = read_own_entries(text)
    assert without_ids(back) == without_ids(entries)
    assert write_own_entries(back) == text


def test_that_the_text_names_no_ids(tmp_path):
    text = write_own_entries((BASIL,))
    assert BASIL.id not in text
    path = tmp_path / "library.toml"
    path.write_text(text, encoding="utf-8")
    assert without_ids(read_own_entries_file(path)) == without_ids((BASIL,))


@pytest.mark.parametrize(
    ("text", "field", "says"),
    [
        ('format = "raftweek.farm/1"\n', "format", "raftweek.entries/1"),
        ("", "format", "is missing"),
        ('format = "raftweek.entries/1"\n[[batch]]\ncode = "x"\n', "batch", "does not belong here"),
        ('format = "raftweek.entries/1"\n[[crop]]\nkey = "a"\nname = "A"\n', "like", "must be given"),
    ],
)
def test_that_a_wrong_text_is_refused_with_its_field(text, field, says):
    with pytest.raises(FarmFaultError) as refused:
        read_own_entries(text)
    assert any(fault.field == field and says in fault.sentence() for fault in refused.value.faults), [
        fault.sentence() for fault in refused.value.faults
    ]
