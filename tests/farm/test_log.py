"""Entries of the log are checked against their kind, and a correction takes the place of what it corrects."""

import dataclasses

import pytest

from planner.farm.checks import farm_faults, thing_faults
from planner.farm.fields import NO_ID
from planner.farm.ids import id_from
from planner.farm.log import Happening, LogEntry, Unit, first_of, standing
from planner.farm.log_checks import NEEDED_OF, UNITS_OF, missing_of
from planner.farm.water import Quantity
from tests.store.sample import PICKED, RIGHT, START, sample_farm


def entry(**given):
    fields = {"code": "L-9", "what": Happening.NOTE, "on": START, **given}
    return LogEntry(id=id_from("entry", fields["code"]), **fields)


def with_log(*entries):
    return dataclasses.replace(sample_farm(), log_entries=entries)


def fields_at_fault(thing):
    return {fault.field for fault in thing_faults(thing)}


@pytest.mark.parametrize("what", [kind for kind, needed in NEEDED_OF.items() if "amount" in needed])
def test_that_what_is_counted_needs_an_amount(what):
    said = {"quantity": Quantity.PH, "out_of": 4}
    given = {name: value for name, value in said.items() if name in NEEDED_OF[what]}
    assert fields_at_fault(entry(what=what)) == {"amount", *given}
    assert not fields_at_fault(entry(what=what, amount=2.0, unit=UNITS_OF[what][0], **given))


@pytest.mark.parametrize("at", ["7:30", "24:00", "12:60", "noon", "07.30"])
def test_that_a_time_is_a_time_of_day(at):
    assert fields_at_fault(entry(at=at)) == {"at"}


@pytest.mark.parametrize(
    ("what", "amount", "unit", "field"),
    [
        (Happening.PICKED, 3.0, Unit.LITRES, "unit"),
        (Happening.DEATHS, 1.5, Unit.FISH, "amount"),
        (Happening.PEST, 4.0, Unit.SCORE, "amount"),
        (Happening.NOTE, -1.0, Unit.NONE, "amount"),
        (Happening.PICKED, -1.0, Unit.KG, "amount"),
    ],
)
def test_that_an_amount_fits_its_unit_and_kind(what, amount, unit, field):
    (fault,) = thing_faults(entry(what=what, amount=amount, unit=unit))
    assert fault.field == field
    assert fault.limit


def test_that_a_reading_is_one_that_there_can_be():
    cold = entry(what=Happening.MEASURED, quantity=Quantity.AIR_C, amount=-12.0)
    assert not fields_at_fault(cold)
    (fault,) = thing_faults(dataclasses.replace(cold, quantity=Quantity.PH, amount=70.0))
    assert (fault.field, fault.value, fault.limit) == ("amount", "70", "2 to 12 (ph)")


def test_that_no_more_seeds_come_up_than_were_laid_out():
    test = entry(what=Happening.SEED_TESTED, amount=21.0, out_of=20, unit=Unit.PLANTS)
    (fault,) = thing_faults(test)
    assert "at most the 20 laid out" in fault.message


def test_that_a_new_entry_is_about_something():
    assert missing_of(entry(what=Happening.PICKED)) == ("batch", "amount")
    assert missing_of(PICKED) == ()


def test_that_a_correction_stands_and_the_old_entry_stays():
    farm = sample_farm()
    assert farm.log_entries[:2] == (PICKED, RIGHT)
    assert RIGHT in standing(farm.log_entries)
    assert PICKED not in standing(farm.log_entries)
    assert first_of(farm.log_entries, RIGHT) == PICKED.id


def test_that_a_withdrawn_entry_no_longer_stands():
    gone = entry(what=Happening.WITHDRAWN, corrects=PICKED.id)
    assert standing((PICKED, gone)) == ()


def test_that_an_entry_is_corrected_once():
    again = dataclasses.replace(RIGHT, id=id_from("again"), code="L-3")
    (fault,) = farm_faults(with_log(PICKED, RIGHT, again))
    assert "corrected by L-2 already" in fault.message


def test_that_corrections_do_not_go_round_in_a_ring():
    ring = dataclasses.replace(PICKED, corrects=RIGHT.id)
    assert [fault.field for fault in farm_faults(with_log(ring, RIGHT))] == ["corrects"]
    itself = dataclasses.replace(PICKED, corrects=PICKED.id)
    assert "corrects" in {fault.field for fault in farm_faults(with_log(itself))}


def test_that_a_correction_of_nothing_is_a_fault():
    assert RIGHT.corrects != NO_ID
    assert "corrects" in {fault.field for fault in farm_faults(with_log(RIGHT))}
