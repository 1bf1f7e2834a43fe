"""Files of cases are taken strictly: whatever is wrong is told with file, key and field."""

from __future__ import annotations

from typing import Any

import pytest

from planner.catalogue.errors import CatalogueError
from planner.forecast.verify.cases import Assumed, Held, Reason, areas_taken

SOURCES = ("ksu2021", "emerson1975")


def taken(**listed: Any):
    (area,) = areas_taken({"feed": {"title": "Feed", **listed}}, sources=SOURCES)
    return area


def test_that_a_case_is_taken_with_all_it_says(case):
    (found,) = taken(case=[case]).cases
    assert (found.key, found.area, found.unit, found.published) == ("tan", "feed", "g/d", 58.9)
    assert found.inputs == (("feed_g", 2000.0), ("protein_share", 0.32))
    assert (found.tolerance, found.reason, found.confidence) == (0.05, Reason.ROUNDING, Held.READ)
    assert found.farm == ""


def test_that_a_tolerance_in_percent_is_turned_into_the_unit(case):
    del case["tolerance"]
    (found,) = taken(case=[{**case, "published": -200, "tolerance_percent": 2}]).cases
    assert found.tolerance == pytest.approx(4.0)


def test_that_each_row_of_a_printed_table_is_a_case_with_its_own_key_and_title(table):
    first, second = taken(table=[table]).cases
    assert (first.key, first.title, first.published) == ("pka-20", "Acidity at 20 °C", 9.4025)
    assert (second.key, second.inputs) == ("pka-25", (("temperature_c", 25.0),))


def test_that_a_column_of_tolerances_goes_by_row(table):
    del table["tolerance"]
    table |= {
        "columns": ["temperature_c", "published", "tolerance"],
        "rows": [[20, 9.4, 0.1], [25, 9.2, 0.2]],
    }
    assert [case.tolerance for case in taken(table=[table]).cases] == [0.1, 0.2]


def test_that_a_list_of_numbers_is_an_input(case):
    case["inputs"] = {"weights_g": [1, 2.5]}
    (found,) = taken(case=[case]).cases
    assert found.inputs == (("weights_g", (1.0, 2.5)),)


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"source": "ksu"}, r"tan: source: 'ksu' is no publication"),
        (
            {"confidence": "sure"},
            r"tan: confidence: is 'sure', but must be one of read, derived, from memory",
        ),
        ({"reason": "hope"}, r"tan: reason: is 'hope'"),
        ({"published": "many"}, r"tan: published: is 'many', but must be a number"),
        ({"published": float("nan")}, r"tan: published: is nan, but must be a finite number"),
        ({"tolerance": -1}, r"tan: tolerance: is -1, but must be at least 0"),
        ({"tolerance_percent": 1}, r"tan: tolerance: must be given once"),
        ({"inputs": {"feed_g": True}}, r"tan: inputs.feed_g: is True"),
        ({"farm": "island"}, r"tan: farm: is not known here"),
        ({"tolerence": 1}, r"tan: tolerence: is not known here. Did you mean tolerance"),
    ],
)
def test_that_a_wrong_field_is_named(case, change, said):
    with pytest.raises(CatalogueError, match=rf"verify/feed.toml: {said}"):
        taken(case=[case | change])


@pytest.mark.parametrize("field", ["title", "formula", "unit", "published", "reason", "source", "confidence"])
def test_that_a_missing_field_is_named(case, field):
    del case[field]
    with pytest.raises(CatalogueError, match=f"tan: {field}: is missing"):
        taken(case=[case])


def test_that_a_tolerance_is_never_left_out(case):
    del case["tolerance"]
    with pytest.raises(CatalogueError, match="tan: tolerance: must be given once"):
        taken(case=[case])


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"rows": [[20]]}, r"rows: holds \[20\], but must be rows of 2 entries"),
        ({"columns": ["temperature_c", "ours"]}, "columns: has no column published"),
        ({"title": "At pH {ph}"}, "title: names 'ph', which is no input"),
    ],
)
def test_that_a_wrong_table_is_named(table, change, said):
    with pytest.raises(CatalogueError, match=f"verify/feed.toml: pka: {said}"):
        taken(table=[table | change])


def test_that_a_key_stands_once_in_all_areas(case):
    files = {"feed": {"title": "Feed", "case": [case]}, "water": {"title": "Water", "case": [case]}}
    with pytest.raises(CatalogueError, match=r"verify/water.toml: tan: key: stands in feed already"):
        areas_taken(files, sources=SOURCES)


def test_that_a_system_names_its_farm(case):
    with pytest.raises(CatalogueError, match="tan: farm: is missing"):
        taken(system=[case])
    (found,) = taken(system=[case | {"farm": "island"}]).cases
    assert found.farm == "island"


def test_that_an_unknown_list_is_refused(case):
    with pytest.raises(CatalogueError, match=r"verify/feed.toml: cases: is not known here"):
        taken(cases=[case])


def test_that_what_is_assumed_comes_with_its_ranges(case):
    case |= {"assumed": "Protein is not told.", "assumed_ranges": {"protein_share": [0.28, 0.4]}}
    (found,) = taken(case=[case]).cases
    assert found.assumed == Assumed(words="Protein is not told.", ranges=(("protein_share", 0.28, 0.4),))


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"assumed_ranges": {"protein_share": [0.2, 0.4]}}, "assumed: is missing"),
        ({"assumed": "x", "assumed_ranges": {"ash": [0, 1]}}, "assumed_ranges.ash: is no input"),
        ({"assumed": "x", "assumed_ranges": {"protein_share": [0.2]}}, "must be the low and the high end"),
        ({"assumed": "x", "assumed_ranges": {"protein_share": [0.4, 0.5]}}, "leaves out the input 0.32"),
        ({"reason": "order only"}, "tolerance: must be left out where only the order is judged"),
        ({"against": "island"}, "against: is not known here"),
    ],
)
def test_that_a_wrong_assumption_or_order_is_named(case, change, said):
    with pytest.raises(CatalogueError, match=f"verify/feed.toml: tan: .*{said}"):
        taken(case=[case | change])


def test_that_an_order_needs_two_sides(case):
    del case["tolerance"]
    with pytest.raises(CatalogueError, match="tan: published: is 1, which is no order"):
        taken(case=[case | {"reason": "order only", "published": 1}])


def test_that_what_is_lacking_is_taken_with_its_words(lacking):
    (found,) = taken(not_computed=[lacking]).lacking
    assert (found.key, found.area, found.published) == ("ph", "feed", "no difference")
    assert (found.lacks, found.confidence) == ("The model has no pH in it.", Held.READ)


@pytest.mark.parametrize("field", ["title", "published", "lacks", "source", "confidence"])
def test_that_a_missing_field_of_what_is_lacking_is_named(lacking, field):
    del lacking[field]
    with pytest.raises(CatalogueError, match=f"verify/feed.toml: ph: {field}: is missing"):
        taken(not_computed=[lacking])


def test_that_a_case_and_what_is_lacking_share_no_key(case, lacking):
    with pytest.raises(CatalogueError, match="tan: key: stands in feed already"):
        taken(case=[case], not_computed=[lacking | {"key": "tan"}])
