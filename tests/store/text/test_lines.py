"""Lines of tables and keys are found without being led astray by texts and comments."""

from hypothesis import given
from hypothesis import strategies as st

from planner.farm.farm import Farm
from planner.store.text import write_farm_text
from planner.store.text.lines import Lines, masked
from tests.strategies import farms

TEXT = '''format = "raftweek.farm/1"
[farm] # the farm
name = "F"
notes = """
[[tank]]
name = "not a tank"
"""
[[tank]]
name = 'T # 1'
[[batch]]
code = "A"
  [[batch.place]]
  places = "1-3"
[[ batch . place ]]
"places" = 4
[[batch]]
water_c = [
  1,
  2, # code = 3
]
code = "B"
[[batch.place]]
places = 5
'''


def test_that_tables_and_keys_are_found_on_their_lines() -> None:
    lines = Lines(TEXT)
    assert lines.of((("farm", 0),), "name") == 3
    assert lines.of((("farm", 0),), "plan_from") == 2
    assert lines.of((("tank", 0),), "name") == 9
    assert lines.of((("batch", 1),), "code") == 21
    assert lines.of((), "format") == 1


def test_that_tables_within_tables_are_counted_from_their_parent() -> None:
    lines = Lines(TEXT)
    assert lines.of((("batch", 0), ("place", 0)), "places") == 13
    assert lines.of((("batch", 0), ("place", 1)), "places") == 15
    assert lines.of((("batch", 1), ("place", 0)), "places") == 23


def test_that_a_table_written_inline_has_the_line_of_its_key() -> None:
    lines = Lines('[[batch]]\ncode = "A"\nplace = [{places = 1}]\n')
    assert lines.of((("batch", 0), ("place", 0)), "places") == 3


def test_that_what_is_nowhere_has_no_line() -> None:
    assert Lines("").of((("tank", 3),), "name") == 0


@given(st.text())
def test_that_masking_keeps_every_line_as_long_as_it_is(text: str) -> None:
    assert [len(line) for line in masked(text).split("\n")] == [len(line) for line in text.split("\n")]


@given(farms())
def test_that_every_key_of_a_written_farm_is_found_where_it_stands(farm: Farm) -> None:
    text = write_farm_text(farm)
    lines, rows = Lines(text), text.split("\n")
    for number, tank in enumerate(farm.tanks):
        row = rows[lines.of((("tank", number),), "volume_l") - 1]
        assert row.startswith("volume_l")
        assert float(row.partition("=")[2]) == tank.volume_l
    for number in range(len(farm.batches)):
        assert rows[lines.of((("batch", number),)) - 1] == "[[batch]]"
