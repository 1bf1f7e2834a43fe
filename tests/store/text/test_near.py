"""Keys and tables that are not known are answered with what was most likely meant."""

import pytest

from planner.store.text.forms import FORMS, Form, form_of_header
from planner.store.text.near import UNIT_WORDS, unknown_key, unknown_table


@pytest.mark.parametrize(
    ("header", "key", "meant"),
    [
        ("[[tank]]", "volume_m3", "volume_l is in litres"),
        ("[[tank]]", "volume", "volume_l is in litres"),
        ("[[tank]]", "volume_gal", "volume_l is in litres"),
        ("[[loop]]", "water_m3", "water_l is in litres"),
        ("[[loop]]", "temp_f", "water_c is in degrees Celsius"),
        ("[[site]]", "temp_f", "air_c is in degrees Celsius; nursery_c is in degrees Celsius"),
        ("[[site]]", "altitude_ft", "altitude_m is in metres"),
        ("[[raft_bed]]", "area_ft2", "area_m2 is in square metres"),
        ("[[raft_bed]]", "spacing_in", "spacing_cm is in centimetres"),
        ("[[fish_group]]", "weight_kg", "mean_weight_g is in grams"),
        ("[[fish_group]]", "feed_kg_per_day", "feed_g_per_day is in grams a day"),
        ("[[fish_group.event]]", "weight_g", "mean_weight_g is in grams"),
        ("[[batch]]", "nursery_weeks", "nursery_days is in days"),
        ("[[feed]]", "protein_percent", "protein_share is in parts of one"),
        ("[[filter]]", "solids_captured_percent", "solids_captured_share is in parts of one"),
    ],
)
def test_that_a_key_in_another_unit_is_answered_with_the_right_one(header: str, key: str, meant: str) -> None:
    message, _remedy = unknown_key(form_of_header(header), key)
    assert meant in message


@pytest.mark.parametrize(
    ("header", "key", "meant"),
    [
        ("[[batch]]", "plant", "crop"),
        ("[[batch]]", "sown_on", "sow_on"),
        ("[[batch]]", "quantity", "plants"),
        ("[[fish_group]]", "number", "count"),
        ("[[raft_bed]]", "units", "rafts"),
        ("[[batch.place]]", "holes", "places"),
        ("[[tank]]", "lop", "loop"),
    ],
)
def test_that_a_word_of_the_trade_is_answered_with_the_key(header: str, key: str, meant: str) -> None:
    _message, remedy = unknown_key(form_of_header(header), key)
    assert f"Did you mean {meant}" in remedy


@pytest.mark.parametrize("form", FORMS, ids=[form.header for form in FORMS])
def test_that_any_unknown_key_is_answered_with_all_keys_there_are(form: Form) -> None:
    message, remedy = unknown_key(form, "qqqqqqqq")
    assert "has no key qqqqqqqq" in message
    assert all(name in remedy for name in form.keys)
    assert "Did you mean" not in remedy


def test_that_a_table_by_another_name_is_answered_with_the_right_one() -> None:
    assert "raft_bed or media_bed or nursery" in unknown_table("bed", ["tank"])[1]
    assert "Did you mean batch?" in unknown_table("batches", ["batch", "tank"])[1]


def test_that_every_common_unit_has_words() -> None:
    said = {key.spec.unit for form in FORMS for key in form.keys.values() if not key.figure}
    assert {"L", "g", "m²", "°C", "d", "mg/L"} <= said & set(UNIT_WORDS)
