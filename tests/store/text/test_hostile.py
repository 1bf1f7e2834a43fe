"""Whatever a text holds, reading it ends in a farm or in faults that say what is wrong."""

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from planner.farm.farm import Farm
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.store.text import limits, read_farm_file, read_farm_text, write_farm_text
from planner.store.text.forms import FORMS, Form
from planner.store.text.syntax import text_of
from tests.strategies import farms

FIRST = 'format = "raftweek.farm/1"\n'
HEAD = FIRST + '[farm]\nname = "F"\nplan_from = 2026-03-02\n'
SITE = '[[site]]\nname = "S"\n[[loop]]\nname = "L"\nwater_l = 9000\n'
HEADERS = st.sampled_from([form.header for form in FORMS] + ["[batch]", "[[other]]", "[[tank.event]]"])
KEYS = st.sampled_from(sorted({name for form in FORMS for name in form.keys}))
RAW = [
    "1",
    "2",
    "0",
    "-1",
    "3.5",
    "1e400",
    "1e-400",
    "-0.0",
    "nan",
    "-inf",
    "0xffffffffffffffffffff",
    "true",
    '""',
    '"x"',
    '"1-18"',
    '"1-9999999"',
    '"all"',
    '"bed"',
    '"nursery"',
    '"basil"',
    '"percent"',
    "2026-03-02",
    "1990-01-01",
    "9999-12-31",
    "08:00:00",
    "2026-03-02T01:02:03Z",
    "[]",
    "[1,2]",
    '["x"]',
    "[[1]]",
    "{a=1}",
    "[{}]",
    "[[],{}]",
]
LINES = st.one_of(
    HEADERS,
    HEADERS,
    st.builds("{} = {}".format, KEYS, st.one_of(st.sampled_from(RAW), st.integers().map(str))),
)
SIGNS = st.sampled_from([*"[]{}=.,#'\"\\\n\r\x00\ud800", "'''", '"""', "\n[[tank]]\n", "\nid = 1\n"])


def faults_of(text: str) -> tuple[Fault, ...] | None:
    try:
        read_farm_text(text, file="f.toml")
    except FarmFaultError as error:
        return error.faults
    return None


def read_or_refused(text: str) -> None:
    faults = faults_of(text)
    assert faults is None or faults
    assert all(fault.message and fault.file == "f.toml" for fault in faults or ())


@given(st.text())
def test_that_any_text_is_read_or_refused(text: str) -> None:
    read_or_refused(text)
    read_or_refused(HEAD + text)


@given(st.lists(LINES, max_size=30, unique=True).map("\n".join))
def test_that_any_tables_and_keys_with_any_values_are_read_or_refused(text: str) -> None:
    read_or_refused(HEAD + SITE + text)


@given(st.sampled_from([form for form in FORMS if form.parent == ""]), st.data())
def test_that_a_table_with_any_value_for_each_key_is_read_or_refused(form: Form, data: st.DataObject) -> None:
    chosen = data.draw(st.sets(st.sampled_from(sorted(form.keys))))
    lines = [f"{name} = {data.draw(st.sampled_from(RAW))}" for name in sorted(chosen)]
    read_or_refused("\n".join((HEAD + SITE if form.word != "farm" else FIRST, form.header, *lines)))


@given(farms(), st.data())
def test_that_a_farm_text_with_a_wound_is_read_or_refused(farm: Farm, data: st.DataObject) -> None:
    text = write_farm_text(farm)
    for _ in range(data.draw(st.integers(1, 4))):
        at = data.draw(st.integers(0, len(text)))
        gone = data.draw(st.integers(0, 12))
        text = text[:at] + data.draw(st.one_of(SIGNS, st.text(max_size=3))) + text[at + gone :]
    read_or_refused(text)


@given(farms(), st.data())
def test_that_a_farm_text_with_lines_mixed_up_is_read_or_refused(farm: Farm, data: st.DataObject) -> None:
    lines = write_farm_text(farm).split("\n")
    for _ in range(data.draw(st.integers(1, 3))):
        one, other = (data.draw(st.integers(0, len(lines) - 1)) for _ in range(2))
        lines[one], lines[other] = lines[other], lines[one]
    read_or_refused("\n".join(lines))


@given(st.binary(max_size=50), st.binary(max_size=50))
def test_that_bytes_that_are_no_text_become_a_fault(before: bytes, after: bytes) -> None:
    with pytest.raises(FarmFaultError) as caught:
        text_of(before + b"\xff" + after)
    assert caught.value.faults[0].kind is FaultKind.SYNTAX


@pytest.mark.parametrize(
    "text",
    [
        HEAD + "a = " + "[" * 100_000,
        HEAD + "a = " + "{a = " * 50_000,
        HEAD + ".".join(["a"] * 50_000) + " = 1",
        HEAD + "[" + ".".join(['"a"'] * 20_000) + "]",
        HEAD + 'notes = """' + '\\"""' * 200_000,
        HEAD + '"' * 200_001,
        HEAD + "'" * 200_001,
        HEAD + "[[tank]]\n" * 100_001,
        HEAD + "".join(f"x{number} = 1\n" for number in range(50_000)),
        HEAD + "a = " + "9" * 100_000,
        HEAD + "[[tank]]\nname = 1e999999999\n",
        HEAD + "# " + "x" * limits.MOST_BYTES,
    ],
    ids=lambda text: text[len(HEAD) : len(HEAD) + 12].replace("\n", " "),
)
def test_that_a_text_made_to_choke_the_reader_is_refused(text: str) -> None:
    with pytest.raises(FarmFaultError):
        read_farm_text(text)


def test_that_repeats_beyond_the_most_things_are_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(limits, "MOST_THINGS", 2_000)
    batch = '[[batch]]\ncrop = "basil"\nsow_on = 2026-03-02\nplants = 1\n'
    batch += "repeat_every_days = 1\nrepeat_times = 520\n"
    with pytest.raises(FarmFaultError) as caught:
        read_farm_text(HEAD + batch * (limits.MOST_THINGS // limits.MOST_REPEATS + 1))
    assert caught.value.faults[0].kind is FaultKind.TOO_LARGE


def test_that_places_beyond_the_most_things_are_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(limits, "MOST_THINGS", 2_000)
    bed = '[[raft_bed]]\nname = "R"\nrafts = 5000\nplaces = 200\narea_m2 = 9000\n'
    odd = ", ".join(str(number) for number in range(1, 200, 2))
    place = f'[[batch.place]]\nphase = "bed"\nraft = "all"\nplaces = "{odd}"\n'
    batch = '[[batch]]\ncrop = "basil"\nsow_on = 2026-03-02\nplants = 1000000\n'
    with pytest.raises(FarmFaultError) as caught:
        read_farm_text(HEAD + SITE + bed + batch + place)
    assert caught.value.faults[0].kind is FaultKind.TOO_LARGE


def test_that_no_more_faults_are_told_than_a_person_would_read() -> None:
    with pytest.raises(FarmFaultError) as caught:
        read_farm_text(HEAD + "[[tank]]\n" * 5000)
    assert len(caught.value.faults) == limits.MOST_FAULTS


def test_that_a_file_too_large_is_refused_unread(tmp_path: Path) -> None:
    path = tmp_path / "large.toml"
    with path.open("wb") as file:
        file.truncate(limits.MOST_BYTES + 1)
    with pytest.raises(FarmFaultError) as caught:
        read_farm_file(path)
    assert caught.value.faults[0].kind is FaultKind.TOO_LARGE


def test_that_a_file_that_is_not_there_is_an_error_of_the_surroundings(tmp_path: Path) -> None:
    with pytest.raises(FileNotFoundError):
        read_farm_file(tmp_path / "none.toml")
