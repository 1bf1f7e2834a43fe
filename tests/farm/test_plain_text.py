"""Marks that are not seen, or that turn the order of reading, stand in no name and in no message."""

import pytest

from planner.farm.checks import thing_faults
from planner.farm.faults import Fault, FaultKind
from planner.farm.fields import NO_ID
from planner.farm.ids import new_id
from planner.farm.plain_text import first_mark, in_sight
from planner.farm.site import Tank

TURNING = [chr(code) for code in (*range(0x202A, 0x202F), *range(0x2066, 0x206A))]
UNSEEN = ["\u00ad", "\u200b", "\u200e", "\u2060", "\ufeff", "\U000e0041"]
BREAKS = ["\n", "\r", "\v", "\u0085", "\u2028"]
CONTROLS = ["\x00", "\t", "\x1b", "\x7f", "\x9b"]


def faults(**given: str) -> list[Fault]:
    said = {"name": "Tank 1"} | given
    return list(thing_faults(Tank(id=new_id(), loop=NO_ID, volume_l=3000, **said)))


@pytest.mark.parametrize("mark", [*TURNING, *UNSEEN, *BREAKS, *CONTROLS], ids=ascii)
def test_that_a_name_with_such_a_mark_is_refused_by_its_number(mark):
    (fault,) = faults(name=f"Tank{mark}1")
    code = f"U+{ord(mark):04X}"
    assert (fault.kind, fault.field, fault.value) == (FaultKind.WRONG_TYPE, "name", code)
    assert f"name holds {code}, " in fault.sentence()
    assert "as character 5, but must be one plain line" in fault.sentence()
    assert f"Tank<{code}>1" in fault.sentence()
    assert fault.sentence().isprintable()


@pytest.mark.parametrize("text", ["two\nlines\r\nwith\ta tab", "pasted\u200btext", "\u202eturned", "\x1b"])
def test_that_a_note_may_hold_anything(text):
    assert faults(notes=text) == []


@pytest.mark.parametrize(
    "text", ["Ñandú", "حوض الأسماك", "می\u200cخواهم", "池", "🐟", "👩\u200d🌾", "a\u00a0b"]
)
def test_that_names_of_any_script_are_taken(text):
    assert faults(name=text) == []
    assert in_sight(text) == text


def test_that_the_first_of_several_is_told():
    mark = first_mark("a\u200bb\u202e")
    assert mark is not None
    assert (mark.code, mark.place, mark.words) == ("U+200B", 2, "a mark that is not seen")
