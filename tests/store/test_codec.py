"""Change sets become text and come back exactly."""

import json
from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.farm.changes import Change, ChangeSet
from planner.farm.crops import Batch, Phase
from planner.farm.farm import KINDS, SETTINGS_KIND, things
from planner.store.codec import CodecError, change_set_from, change_set_text, decoded, encoded
from tests.store.sample import FIRST, OWN, SITE, altered, change_set, sample_farm
from tests.strategies import farms


def all_things(farm):
    return [thing for kind in (SETTINGS_KIND, *KINDS) for thing in things(farm, kind.word)]


@settings(max_examples=20)
@given(farms(), st.text(max_size=5))
def test_that_any_change_set_comes_back_as_it_was(farm, title):
    changes = [Change(after=thing, index=3) for thing in all_things(farm)]
    changes += [Change(before=thing, index=0) for thing in all_things(farm)]
    whole = ChangeSet(title=title, changes=tuple(changes))
    back = change_set_from(change_set_text(whole), title=title)
    assert back == whole
    assert repr(back) == repr(whole)


def test_that_the_sample_has_something_of_every_kind():
    assert all(things(sample_farm(), kind.word) for kind in KINDS)


@pytest.mark.parametrize("number", [0.1, 1e-300, -0.0, 1.7976931348623157e308, 5e-324, 1 / 3])
def test_that_a_number_keeps_every_bit(number):
    text = json.dumps(encoded((number,)))
    assert decoded(tuple[float, ...], json.loads(text))[0].hex() == number.hex()


def test_that_values_of_own_entries_keep_their_types():
    back = change_set_from(change_set_text(change_set(Change(after=OWN))), title="")
    assert [type(value) for _, value in back.changes[0].after.values] == [float, str, bool]


@pytest.mark.parametrize(
    ("hint", "data"),
    [
        (int, True),
        (int, 1.5),
        (float, True),
        (float, "1"),
        (bool, 1),
        (str, None),
        (date, "2026-13-01"),
        (date, 20260101),
        (Phase, "attic"),
        (tuple[float, ...], "12"),
        (tuple[float, ...], [1.0, "x"]),
        (tuple[str, int], ["a"]),
        (int | None, "1"),
        (Batch, {"id": "x"}),
        (Batch, []),
    ],
)
def test_that_data_of_another_type_are_refused(hint, data):
    with pytest.raises(CodecError):
        decoded(hint, data)


@pytest.mark.parametrize(
    "text",
    [
        "",
        "{}",
        "[1]",
        '[{"kind":"batch"}]',
        '[{"kind":"os.system","before":null,"after":null,"index":null}]',
        '[{"kind":"batch","before":null,"after":null,"index":null}]',
        '[{"kind":"batch","before":null,"after":{"__class__":"x"},"index":null}]',
    ],
)
def test_that_a_text_that_is_no_change_set_is_refused(text):
    with pytest.raises(CodecError):
        change_set_from(text, title="")


def test_that_a_number_that_is_none_is_never_written():
    broken = change_set(altered(SITE, altitude_m=float("nan")))
    with pytest.raises(ValueError, match="JSON"):
        change_set_text(broken)


def test_that_a_batch_becomes_plain_data_by_field_name():
    plain = encoded(FIRST)
    assert plain["code"] == FIRST.code
    assert plain["sow_on"] == "2026-03-02"
    assert plain["germination_days"] is None
