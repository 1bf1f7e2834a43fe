"""Every field of a farm says what it holds, within which limits, and what it refers to."""

import dataclasses
from datetime import date
from typing import Any, get_type_hints

import pytest

from planner.farm.farm import KINDS, SETTINGS_KIND, Farm, kind_named
from planner.farm.fields import FieldKind, FieldSpec, specs_of
from planner.farm.species import Crop, Feed, FishSpecies, FishStage, Supplement

OWNERS = [kind.owner for kind in (SETTINGS_KIND, *KINDS)]
ALL = [*OWNERS, Crop, FishSpecies, FishStage, Feed, Supplement]
FIELDS = [(owner, name, spec) for owner in ALL for name, spec in specs_of(owner).items()]
NAMES = [f"{owner.__name__}.{name}" for owner, name, _spec in FIELDS]


@pytest.mark.parametrize(("owner", "name", "spec"), FIELDS, ids=NAMES)
def test_that_the_default_of_a_field_lies_within_its_limits(
    owner: type[Any], name: str, spec: FieldSpec
) -> None:
    default = next(field.default for field in dataclasses.fields(owner) if field.name == name)
    if default is dataclasses.MISSING:
        assert spec.needed
    elif isinstance(default, (int, float)) and not isinstance(default, bool):
        assert spec.low is not None
        assert spec.high is not None
        assert spec.low <= default <= spec.high
    else:
        assert not spec.needed


@pytest.mark.parametrize(("owner", "name", "spec"), FIELDS, ids=NAMES)
def test_that_numbers_have_limits_in_order_and_a_unit_in_sight(
    owner: type[Any], name: str, spec: FieldSpec
) -> None:
    if spec.kind in (FieldKind.NUMBER, FieldKind.WHOLE, FieldKind.SERIES, FieldKind.DAY):
        assert spec.low is not None
        assert spec.high is not None
        assert spec.low < spec.high
    if spec.kind in (FieldKind.NUMBER, FieldKind.SERIES):
        assert spec.unit


@pytest.mark.parametrize(("owner", "name", "spec"), FIELDS, ids=NAMES)
def test_that_a_field_may_be_none_where_its_type_says_so(
    owner: type[Any], name: str, spec: FieldSpec
) -> None:
    optional = type(None) in getattr(get_type_hints(owner)[name], "__args__", ())
    assert spec.may_be_none is optional


@pytest.mark.parametrize("owner", OWNERS)
def test_that_references_point_at_kinds_that_stand_before_or_at_their_own(owner: type[Any]) -> None:
    order = [kind.owner for kind in KINDS]
    for spec in specs_of(owner).values():
        if spec.kind is FieldKind.REFERENCE:
            assert order.index(kind_named(spec.refers_to).owner) <= order.index(owner)


@pytest.mark.parametrize("owner", OWNERS)
def test_that_every_thing_begins_with_an_id(owner: type[Any]) -> None:
    assert next(iter(specs_of(owner).items()))[1].kind is FieldKind.ID


def test_that_a_farm_holds_one_tuple_for_every_kind() -> None:
    places = [field.name for field in dataclasses.fields(Farm)]
    assert places == [SETTINGS_KIND.place, *(kind.place for kind in KINDS)]


@pytest.mark.parametrize(
    ("ending", "unit"),
    [
        ("_l", "L"),
        ("_m2", "m²"),
        ("_g", "g"),
        ("_days", "d"),
        ("_mg_per_l", "mg/L"),
        ("_m", "m"),
        ("_cm", "cm"),
    ],
)
def test_that_the_unit_in_a_name_is_the_declared_one(ending: str, unit: str) -> None:
    found = [
        (name, spec.unit)
        for _owner, name, spec in FIELDS
        if name.endswith(ending) and spec.kind in (FieldKind.NUMBER, FieldKind.WHOLE)
    ]
    assert found
    assert {said for name, said in found if not name.endswith(f"_per{ending}")} == {unit}


def test_that_days_of_a_farm_lie_between_1990_and_2199() -> None:
    days = [spec for _owner, _name, spec in FIELDS if spec.kind is FieldKind.DAY]
    assert {(spec.low, spec.high) for spec in days} == {(date(1990, 1, 1), date(2199, 12, 31))}
