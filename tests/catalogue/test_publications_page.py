"""Every publication can be found on the page of publications, as it is cited elsewhere."""

from __future__ import annotations

import re

from planner.catalogue.loading import shipped_catalogue
from planner.forecast.verify.run import publication_line

ROW = re.compile(r"^- `(?P<key>[^`]+)`: (?P<line>.*)$", re.MULTILINE)


def test_that_the_page_lists_every_publication_and_no_other(root):
    """Write it anew by `python .ci/list_publications.py`."""
    catalogue = shipped_catalogue()
    listed = dict(ROW.findall((root / "docs" / "publications.md").read_text(encoding="utf-8")))
    assert set(listed) == set(catalogue.publications)
    for key, line in listed.items():
        assert line.startswith(publication_line(catalogue, key)), key


def test_that_the_pages_of_science_and_checking_lead_to_it(root):
    for name in ("science.md", "verify.md", "catalogue.md"):
        assert "(publications.md)" in (root / "docs" / name).read_text(encoding="utf-8"), name
