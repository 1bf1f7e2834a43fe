"""Writes docs/publications.md, all publications behind the figures: python .ci/list_publications.py

The page is made from resources/catalogue/publications.toml and from what leans on each of them; a test holds
that every publication is on it.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Final

ROOT: Final = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from planner.bootstrap import Means  # noqa: E402 - found from the root only
from planner.catalogue.catalogue import Catalogue  # noqa: E402
from planner.commands_verify import shipped_areas  # noqa: E402
from planner.forecast.verify.cases import Area  # noqa: E402
from planner.forecast.verify.run import publication_line  # noqa: E402

PAGE: Final = ROOT / "docs" / "publications.md"
HEAD: Final = """\
# Publications behind the figures

Every publication that a figure of `resources/`, a case of `raftweek verify` or a formula names, by its key.
After each stands how far it was seen. `raftweek why` gives the same line for each figure that went into an
answer, `raftweek verify` for each case. This page is written by `python .ci/list_publications.py`.
"""
PARTS: Final = (
    ("Behind figures", "At least one figure of the program comes from it."),
    ("Judges only", "No figure comes from it; published cases are held against it."),
    ("Read besides", "Neither; named by a formula or a note, or kept for what may be added."),
)


def page_text(catalogue: Catalogue, areas: tuple[Area, ...]) -> str:
    """Return the whole page."""
    return "\n".join((HEAD.rstrip("\n"), *_lines(catalogue, areas))) + "\n"


def _lines(catalogue: Catalogue, areas: tuple[Area, ...]) -> Iterator[str]:
    shelves = (catalogue.figures, catalogue.emergence, catalogue.feeding_tables)
    lent = {entry.source for shelf in shelves for entry in shelf.values()}
    judging = {each.source for area in areas for each in (*area.cases, *area.lacking)}
    every = set(catalogue.publications)
    for (title, words), keys in zip(PARTS, (lent, judging - lent, every - lent - judging), strict=True):
        yield from ("", f"## {title}", "", words, "")
        for key in sorted(keys & every):
            note = catalogue.publications[key].note
            yield f"- `{key}`: {publication_line(catalogue, key)}{f' *{note}*' if note else ''}"


def main() -> None:
    """Write the page."""
    means = Means()
    PAGE.write_text(page_text(means.catalogue, shipped_areas(means)), encoding="utf-8")


if __name__ == "__main__":
    main()
