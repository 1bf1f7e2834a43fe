"""The page of farm texts lists every key that the catalogue ships: with it alone a farm can be written."""

from __future__ import annotations

import re

import pytest

from planner.catalogue.loading import shipped_catalogue
from planner.forecast.checks import shelves

ROW = re.compile(r"^\| (?P<shelf>[a-z ]+) \| (?P<keys>`.*`) \|$", re.MULTILINE)


@pytest.fixture
def listed(root):
    page = (root / "docs" / "farm-text.md").read_text(encoding="utf-8")
    part = page.partition("<!-- keys of the catalogue -->")[2].partition("<!-- end of keys -->")[0]
    return {row["shelf"]: re.findall(r"`([^`]+)`", row["keys"]) for row in ROW.finditer(part)}


@pytest.mark.parametrize("shelf", ["crop", "fish", "feed", "feeding table", "supplement"])
def test_that_the_page_lists_the_keys_that_ship_and_no_others(listed, shelf):
    assert listed[shelf] == sorted(shelves(shipped_catalogue())[shelf])
