"""The shape that scripts read, as docs/verify.md promises it."""

from __future__ import annotations

import json
from pathlib import Path

from planner.forecast.verify.cases import areas_taken
from planner.forecast.verify.plain import verify_data
from planner.forecast.verify.run import verify_all

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
]


def data_of(catalogue, *cases):
    areas = areas_taken({"feed": {"title": "Feed", "case": list(cases)}}, sources=catalogue.publications)
    return verify_data(verify_all(catalogue, areas, farms={}))


def test_that_the_shape_is_the_documented_one(catalogue, case):
    data = data_of(catalogue, case, case | {"key": "told", "confidence": "from memory"})
    assert data["format"] == "raftweek.verify/1"
    assert data["counts"] == {"cases": 1, "within": 1, "outside": 0, "from_memory": 1}
    first, second = data["cases"]
    assert list(first) == CASE_KEYS
    assert (first["within"], second["within"]) == (True, None)
    assert json.loads(json.dumps(data)) == data


def test_that_every_key_is_explained_in_the_docs():
    page = (Path(__file__).parents[3] / "docs" / "verify.md").read_text(encoding="utf-8")
    for key in (*CASE_KEYS, "format", "counts", "cases", "outside", "from_memory"):
        assert f"`{key}`" in page


def test_that_the_last_bits_of_the_machine_are_left_out(catalogue, case):
    (found,) = data_of(catalogue, case)["cases"]
    assert (found["ours"], found["difference"]) == (58.88, -0.02)
