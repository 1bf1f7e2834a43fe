"""A meter overdue by a day makes its readings doubtful; a calibration ends that and begins a new trend."""

import dataclasses
from datetime import timedelta

import pytest

from planner.farm.ids import id_from
from planner.farm.log import Happening, LogEntry
from planner.farm.meters import Meter, MeterKind
from planner.farm.water import Quantity, Reading
from planner.forecast.water.meters import meter_book, trend_readings
from planner.forecast.water.side import loop_water
from planner.forecast.why.ask import why
from planner.forecast.why.values import NoteKind, Subject, SubjectKind
from tests.farms import LOOP, MONDAY, farm_of, group_of, weekly_batches

PEN = Meter(
    id=id_from("pen"),
    name="Pen",
    kind=MeterKind.PH_EC,
    factor=0.5,
    calibrate_every_days=30,
    used_from=MONDAY,
)


def on_day(days):
    return MONDAY + timedelta(days=days)


def read(day, value=6.8, quantity=Quantity.PH, **given):
    return Reading(
        id=id_from("reading", quantity.value, str(day)),
        loop=LOOP.id,
        on=on_day(day),
        quantity=quantity,
        value=value,
        **{"meter": PEN.id, **given},
    )


def calibrated(day, **given):
    code = f"C-{day}"
    fields = {"what": Happening.CALIBRATED, "on": on_day(day), "meter": PEN.id, **given}
    return LogEntry(id=id_from("entry", code), code=code, **fields)


def book(*entries, meter=PEN):
    return meter_book(farm_of(meters=(meter,), log_entries=entries))


@pytest.mark.parametrize(("day", "doubtful"), [(0, False), (30, False), (31, True), (90, True)])
def test_that_a_meter_is_overdue_from_the_day_after_its_interval(day, doubtful):
    assert book().is_doubtful(read(day)) is doubtful


def test_that_a_calibration_ends_the_doubt_until_its_interval_is_over():
    found = book(calibrated(40))
    doubtful = [day for day in range(80) if found.is_doubtful(read(day))]
    assert doubtful == [*range(31, 40), *range(71, 80)]


def test_that_a_withdrawn_calibration_counts_for_nothing():
    gone = calibrated(41, what=Happening.WITHDRAWN, corrects=calibrated(40).id)
    assert book(calibrated(40), gone).is_doubtful(read(50))


def test_that_a_meter_never_calibrated_is_doubted_and_one_not_watched_is_not():
    assert book(meter=dataclasses.replace(PEN, used_from=None)).is_doubtful(read(1))
    assert not book(meter=dataclasses.replace(PEN, calibrate_every_days=None)).is_doubtful(read(300))


def test_that_temperature_and_other_meters_are_not_doubted():
    assert not book().is_doubtful(read(90, 24.0, Quantity.WATER_C))
    assert not book().is_doubtful(read(90, meter=""))
    assert book().is_doubtful(read(90, 1.2, Quantity.EC_MS_PER_CM))


def test_that_a_meter_says_when_it_is_due():
    (state,) = book(calibrated(40)).states(on_day(75))
    assert (state.last_on, state.due_on, state.days_late) == (on_day(40), on_day(70), 5)
    (state,) = book(meter=dataclasses.replace(PEN, used_from=None)).states(on_day(75))
    assert (state.last_on, state.due_on, state.days_late) == (None, on_day(75), 0)


DRIFT = [read(day, 7.4 - 0.02 * day) for day in range(0, 30, 3)]
"""A pH that seems to fall because the meter drifts, down to 6.86."""
AFTER = [read(day, 7.4) for day in range(30, 48, 3)]
"""The same water read with the meter set right."""


def water(forecaster, catalogue, readings, *entries, day=47):
    farm = farm_of(
        meters=(PEN,),
        readings=tuple(readings),
        log_entries=entries,
        fish_groups=(group_of(),),
        batches=weekly_batches(3),
    )
    forecast = forecaster.forecast(farm)
    seen = loop_water(farm, forecast.loops[0], ruler=forecast.ruler, catalogue=catalogue, today=on_day(day))
    (view,) = (view for view in seen.readings.quantities if view.quantity is Quantity.PH)
    return farm, forecast, view


def test_that_no_trend_goes_across_a_calibration(forecaster, catalogue):
    _, _, across = water(forecaster, catalogue, [*DRIFT, *AFTER])
    _, _, since = water(forecaster, catalogue, [*DRIFT, *AFTER], calibrated(30))
    assert across.trend.per_week.likely != pytest.approx(0.0)
    assert across.trend_from is None
    assert since.trend.per_week.likely == pytest.approx(0.0)
    assert since.trend.from_on == since.trend_from == on_day(30)


def test_that_a_trend_waits_for_enough_readings_after_a_calibration(forecaster, catalogue):
    _, _, view = water(forecaster, catalogue, [*DRIFT, AFTER[0]], calibrated(30), day=31)
    assert view.trend is None
    assert view.trend_from == on_day(30)
    assert trend_readings(
        farm_of(meters=(PEN,), readings=(*DRIFT, AFTER[0]), log_entries=(calibrated(30),)),
        loop=LOOP.id,
        until_on=on_day(31),
    ) == (AFTER[0],)


def test_that_why_tells_of_a_meter_that_was_overdue(forecaster, catalogue):
    salts = read(47, 1.4, Quantity.EC_MS_PER_CM)
    farm, forecast, _ = water(forecaster, catalogue, [salts])
    asked = Subject(kind=SubjectKind.SALTS, about=LOOP.id, on=on_day(47))
    notes = [note.kind for note in why(asked, farm, forecast, forecaster).notes]
    assert NoteKind.METER_OVERDUE in notes
    farm, forecast, _ = water(forecaster, catalogue, [salts], calibrated(45))
    notes = [note.kind for note in why(asked, farm, forecast, forecaster).notes]
    assert NoteKind.METER_OVERDUE not in notes
