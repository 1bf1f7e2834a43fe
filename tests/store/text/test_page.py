"""The page for growers says what the reader does: its examples read, its tables are the declared ones."""

import re
from pathlib import Path

import pytest

from planner.store.text import limits, read_farm_text
from planner.store.text.forms import FORMS
from planner.store.text.keys_page import headers_on, with_key_tables

ROOT = Path(__file__).resolve().parents[3]
PAGE = (ROOT / "docs" / "farm-text.md").read_text(encoding="utf-8")
EXAMPLES = re.findall(r"```toml\n(.*?)```", PAGE, re.DOTALL)
WHOLE = EXAMPLES[0]


def test_that_the_tables_of_keys_are_the_declared_ones() -> None:
    renew = "python -m planner.store.text.keys_page docs/farm-text.md"
    assert with_key_tables(PAGE) == PAGE, f"renew the page: {renew}"


def test_that_every_table_of_a_farm_text_is_on_the_page() -> None:
    assert sorted(headers_on(PAGE)) == sorted(form.header for form in FORMS)


def test_that_the_whole_example_is_read() -> None:
    farm = read_farm_text(WHOLE)
    assert (len(farm.fish_groups), len(farm.fish_events), len(farm.batches), len(farm.placements)) == (
        3,
        3,
        9,
        2,
    )
    assert farm.beds[1].places == 6 * 72


@pytest.mark.parametrize("number", range(1, len(EXAMPLES)))
def test_that_each_piece_of_the_page_reads_after_the_whole_example(number: int) -> None:
    assert read_farm_text(WHOLE + EXAMPLES[number]) != read_farm_text(WHOLE)


def test_that_the_limits_on_the_page_are_the_readers() -> None:
    assert limits.FORMAT in PAGE
    said = (limits.MOST_BYTES // 1_000_000, limits.MOST_THINGS // 1_000, limits.MOST_LINE_CHARACTERS // 1_000)
    assert (
        "at most {} million bytes, {} 000 things (repeats written out), and lines of {} 000\n".format(*said)
        in PAGE
    )


def test_that_the_catalogue_has_what_the_examples_name() -> None:
    shelves = ROOT / "resources" / "catalogue"
    known = {path.stem for path in shelves.glob("*/*.toml")}
    for shelf in ("feeds", "supplements"):
        known |= set(
            re.findall(r'^key = "(.*)"', (shelves / f"{shelf}.toml").read_text("utf-8"), re.MULTILINE)
        )
    named = set(re.findall(r'^(?:crop|species|feed|like) += "(.*?)"', "\n".join(EXAMPLES), re.MULTILINE))
    assert named
    assert named <= known
