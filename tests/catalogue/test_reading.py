"""The quick road through a file gives what the slow road gives, or refuses what it refuses."""

import tomllib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.catalogue.errors import CatalogueError
from planner.catalogue.reading import read_tables, tables_of
from planner.shipped import shipped_path

NUMBERS = "value = 1.5, low = -1, high = 2e-3"
TEXTS = 'unit = "d", conditions = "a = b", source = "", confidence = "read"'
ROW = f"{{ {NUMBERS}, {TEXTS} }}"
NOTED = f'{{ {NUMBERS}, {TEXTS}, note = "ä" }}'
LINES = [
    f"days = {ROW}",
    f"weeks = {NOTED}",
    f"hours={ROW}",
    "[figures]",
    "[[stage]]",
    "[stage.figures]",
    "# a remark",
    "",
    "years = 3",
    'days = "7"',
    'name = "Ä = b # c"',
    "count = -0.5e-3",
    "count = 1_000",
    "count = 007",
    'name = "a \\"quoted\\" word"',
    "[figures.inner]",
    'inner = "text"',
    "2 = 2",
]


@pytest.mark.parametrize(
    "path", sorted(shipped_path("resources").glob("c*/**/*.toml")), ids=lambda path: path.stem
)
def test_that_the_quick_road_reads_every_shipped_file_like_the_slow_one(path):
    text = path.read_text(encoding="utf-8")
    assert tables_of(text) == tomllib.loads(text)


@given(st.lists(st.sampled_from(LINES), max_size=8))
def test_that_both_roads_agree_on_any_order_of_lines(lines):
    text = "\n".join(lines)
    try:
        expected = tomllib.loads(text)
    except tomllib.TOMLDecodeError:
        with pytest.raises(tomllib.TOMLDecodeError):
            tables_of(text)
    else:
        assert tables_of(text) == expected


def test_that_a_row_inside_a_long_text_stays_text():
    text = f'notes = """\ndays = {ROW}\n"""'
    assert tables_of(text) == tomllib.loads(text)


def test_that_a_row_written_twice_is_refused(tmp_path):
    path = tmp_path / "twice.toml"
    path.write_text(f"days = {ROW}\ndays = {ROW}\n", encoding="utf-8")
    with pytest.raises(CatalogueError, match=r"twice\.toml: is not TOML: .*line 2"):
        read_tables(path, file="twice.toml")


def test_that_an_error_after_lifted_rows_still_names_its_line(tmp_path):
    path = tmp_path / "basil.toml"
    path.write_text(f"[figures]\ndays = {ROW}\nweeks = {ROW}\nnot toml\n", encoding="utf-8")
    with pytest.raises(CatalogueError, match="line 4"):
        read_tables(path, file="basil.toml")


def test_that_a_missing_file_is_named(tmp_path):
    with pytest.raises(CatalogueError, match=r"^none\.toml: cannot be read"):
        read_tables(tmp_path / "none.toml", file="none.toml")


def test_that_a_file_that_is_not_text_is_named(tmp_path):
    path = tmp_path / "noise.toml"
    path.write_bytes(b"\xff\xfe\x00")
    with pytest.raises(CatalogueError, match=r"^noise\.toml: is not UTF-8 text"):
        read_tables(path, file="noise.toml")
