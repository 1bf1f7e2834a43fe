"""Ids are the same on every machine where they are worked out, and marks change with the farm."""

import dataclasses

from hypothesis import given
from hypothesis import strategies as st

from planner.farm.farm import Farm
from planner.farm.ids import id_from, is_id, new_id
from planner.farm.mark import plan_mark
from tests.strategies import farms

parts = st.lists(
    st.text(st.characters(exclude_characters="\x1f", exclude_categories=("Cs",)), max_size=5), min_size=1
)


@given(parts, parts)
def test_that_different_parts_lead_to_different_ids(one: list[str], other: list[str]) -> None:
    assert (id_from(*one) == id_from(*other)) is (one == other)
    assert is_id(id_from(*one))


def test_that_an_id_worked_out_never_changes_between_releases() -> None:
    assert id_from("tank", "Tank 1") == "494433aa-4302-56dd-91de-fe99a4fce6ae"


def test_that_only_the_usual_spelling_is_an_id() -> None:
    one = new_id()
    assert is_id(one)
    assert not is_id(one.replace("-", ""))
    assert not is_id("tank-1")
    assert not is_id("{" + one + "}")


@given(farms())
def test_that_the_mark_of_a_plan_changes_with_its_notes(farm: Farm) -> None:
    changed = dataclasses.replace(farm.settings, notes=farm.settings.notes + ".")
    assert plan_mark(farm) == plan_mark(dataclasses.replace(farm))
    assert plan_mark(farm) != plan_mark(dataclasses.replace(farm, settings=changed))
