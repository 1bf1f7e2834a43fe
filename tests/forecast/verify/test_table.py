"""The table for a spreadsheet: a row for each case, whole numbers and words, nothing lost to commas."""

from __future__ import annotations

import csv

from planner.forecast.verify.cases import areas_taken
from planner.forecast.verify.run import lacking_of, verify_all
from planner.forecast.verify.table import HEADS, verify_csv


def rows_of(catalogue, *cases, lacking=()):
    listed = {"title": "Feed", "case": list(cases), "not_computed": list(lacking)}
    areas = areas_taken({"feed": listed}, sources=catalogue.publications)
    text = verify_csv(verify_all(catalogue, areas, farms={}), lacking_of(catalogue, areas))
    return list(csv.DictReader(text.splitlines()))


def test_that_a_case_is_a_row_with_everything_about_it(catalogue, case):
    (row,) = rows_of(catalogue, case | {"note": 'Says "about", and more.'})
    assert tuple(row) == HEADS
    assert (row["verdict"], row["standing"]) == ("within", "own source")
    assert (row["ours"], row["published"], row["difference"]) == ("58.88", "58.9", "-0.02")
    assert row["inputs"] == "feed_g 2000; protein_share 0.32"
    assert row["note"] == 'Says "about", and more.'
    assert row["leans_on"] == "coefficient/feed_split/tan_share_of_feed_protein"
    assert row["publication"].startswith(catalogue.publications["ksu2021"].authors)


def test_that_an_order_has_no_tolerance(catalogue, case):
    del case["tolerance"]
    (row,) = rows_of(catalogue, case | {"reason": "order only", "published": 70})
    assert (row["tolerance"], row["tolerance_reason"]) == ("", "order only")


def test_that_what_is_not_computed_is_a_row_too(catalogue, case, lacking):
    _, row = rows_of(catalogue, case, lacking=[lacking])
    assert (row["verdict"], row["published"]) == ("not computed", "no difference")
    assert row["note"] == "The model has no pH in it."
    assert row["ours"] == ""
