"""A reading that is mended twice leaves all three values in the log, with who said each and when."""

import dataclasses

import pytest

from planner.actions.audit import Noted, mend_reading, note_reading, take_out_reading
from planner.farm.log import Happening, standing
from planner.farm.water import Quantity
from planner.store.text import read_farm_text
from planner.store.text.writer import write_farm_text
from tests.actions.desk_of import in_memory
from tests.store.sample import LOOP, METER, READING, START

ANA = Noted(who="AN", at="2026-03-02T07:40Z")
BEN = Noted(who="BE", at="2026-03-03T18:05Z")
CAT = Noted(who="CA", at="2026-03-09T06:00Z")


@pytest.fixture
def session():
    return in_memory()


def ph(value, **given):
    return dataclasses.replace(READING, id="0b7c1d52-2c9e-4b43-9d5e-0a1f7a1b2c3d", value=value, **given)


def of_ph(session, first):
    """The values of the log that belong to one reading, in order."""
    chain, found = {first.id}, []
    for entry in session.farm.log_entries:
        if entry.id in chain or entry.corrects in chain:
            chain.add(entry.id)
            found.append((entry.amount, entry.at, entry.who, entry.noted_at))
    return found


def test_that_a_ph_corrected_twice_keeps_all_three_values_times_and_initials(session):
    had = len(session.farm.readings)
    session.act(note_reading(session.farm, ph(6.4), ANA))
    first = session.farm.log_entries[-1]
    for value, noted in ((6.6, BEN), (6.7, CAT)):
        last = session.farm.readings[-1]
        session.act(mend_reading(session.farm, dataclasses.replace(last, value=value), noted))
    assert of_ph(session, first) == [
        (6.4, "06:45", "AN", ANA.at),
        (6.6, "06:45", "BE", BEN.at),
        (6.7, "06:45", "CA", CAT.at),
    ]
    assert len(session.farm.readings) == had + 1
    assert session.farm.readings[-1].value == 6.7
    assert [e.amount for e in standing(session.farm.log_entries) if e.who == "CA"] == [6.7]
    text = write_farm_text(session.farm)
    assert read_farm_text(text).log_entries == session.farm.log_entries


def test_that_a_reading_nobody_logged_is_logged_as_it_stood_before_it_is_mended(session):
    stood = session.farm.readings[0]
    session.act(mend_reading(session.farm, dataclasses.replace(stood, value=7.1), BEN))
    before, after = session.farm.log_entries[-2:]
    assert (before.amount, before.who, after.amount, after.who) == (stood.value, "", 7.1, "BE")
    assert after.corrects == before.id
    assert [one.value for one in session.farm.readings] == [7.1]
    session.undo()
    assert session.farm.readings == (stood,)


def test_that_a_reading_taken_out_stays_in_the_log(session):
    stood = session.farm.readings[0]
    session.act(take_out_reading(session.farm, stood.id, CAT, None))
    assert session.farm.readings == ()
    told, gone = session.farm.log_entries[-2:]
    assert (told.amount, gone.what, gone.corrects, gone.who) == (6.8, Happening.WITHDRAWN, told.id, "CA")
    assert (gone.loop, gone.meter) == (told.loop, told.meter) == (stood.loop, METER.id)
    session.undo()
    assert session.farm.readings == (stood,)
    session.act(note_reading(session.farm, ph(6.4), ANA))
    session.act(take_out_reading(session.farm, session.farm.readings[-1].id, CAT, None))
    assert session.farm.readings == (stood,)


def test_that_nothing_mended_is_nothing_done(session):
    assert mend_reading(session.farm, session.farm.readings[0], BEN).changes == ()


def test_that_a_correction_keeps_the_factor_of_its_meter(session):
    solids = ph(480.0, quantity=Quantity.TDS_MG_PER_L, meter=METER.id, meter_factor=0.5, loop=LOOP.id)
    session.act(note_reading(session.farm, solids, ANA))
    mended = dataclasses.replace(session.farm.readings[-1], value=470.0, on=START)
    session.act(mend_reading(session.farm, mended, BEN))
    assert (session.farm.readings[-1].value, session.farm.readings[-1].meter_factor) == (470.0, 0.5)
