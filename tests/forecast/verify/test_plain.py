"""The shape that scripts read, as docs/verify.md promises it."""

from __future__ import annotations

import json
from pathlib import Path

from planner.forecast.verify.cases import areas_taken
from planner.forecast.verify.plain import verify_data
from planner.forecast.verify.run import lacking_of, verify_all

CASE_KEYS = [
    "key",
    "area",
    "title",
    "note",
    "formula",
    "farm",
    "inputs",
    "figures",
    "unit",
    "ours",
    "published",
    "difference",
    "relative_difference",
    "tolerance",
    "tolerance_reason",
    "within",
    "source",
    "publication",
    "confidence",
    "independent",
    "standing",
    "own_figures",
    "fitted",
    "judged_by",
    "against",
    "assumed",
    "assumed_ranges",
    "ours_low",
    "ours_high",
    "range_low",
    "range_high",
    "in_range",
]
LACKING_KEYS = ["key", "area", "title", "published", "lacks", "source", "publication", "confidence", "note"]
COUNT_KEYS = [
    "cases",
    "within",
    "outside",
    "from_memory",
    "independent",
    "independent_within",
    "formula_only",
    "own_source",
    "assumed",
    "not_computed",
    "outside_in_range",
]


def data_of(catalogue, *cases):
    areas = areas_taken({"feed": {"title": "Feed", "case": list(cases)}}, sources=catalogue.publications)
    return verify_data(verify_all(catalogue, areas, farms={}))


def test_that_the_shape_is_the_documented_one(catalogue, case):
    data = data_of(catalogue, case, case | {"key": "told", "confidence": "from memory"})
    assert data["format"] == "raftweek.verify/1"
    assert list(data["counts"]) == COUNT_KEYS
    assert data["counts"] == {
        "cases": 1,
        "within": 1,
        "outside": 0,
        "from_memory": 1,
        "independent": 0,
        "independent_within": 0,
        "formula_only": 0,
        "own_source": 1,
        "assumed": 0,
        "not_computed": 0,
        "outside_in_range": 0,
    }
    first, second = data["cases"]
    assert list(first) == CASE_KEYS
    assert (first["within"], second["within"]) == (True, None)
    assert json.loads(json.dumps(data)) == data


def test_that_every_key_is_explained_in_the_docs():
    page = (Path(__file__).parents[3] / "docs" / "verify.md").read_text(encoding="utf-8")
    for key in (*CASE_KEYS, *LACKING_KEYS, *COUNT_KEYS, "format", "counts"):
        assert f"`{key}`" in page


def test_that_what_cannot_be_worked_out_is_in_the_data_beside_the_cases(catalogue, lacking):
    areas = areas_taken(
        {"feed": {"title": "Feed", "not_computed": [lacking]}}, sources=catalogue.publications
    )
    data = verify_data((), lacking_of(catalogue, areas))
    assert data["cases"] == []
    (found,) = data["not_computed"]
    assert list(found) == LACKING_KEYS
    assert (found["published"], found["lacks"]) == ("no difference", "The model has no pH in it.")
    assert data["counts"]["not_computed"] == 1


def test_that_the_last_bits_of_the_machine_are_left_out(catalogue, case):
    (found,) = data_of(catalogue, case)["cases"]
    assert (found["ours"], found["difference"]) == (58.88, -0.02)
