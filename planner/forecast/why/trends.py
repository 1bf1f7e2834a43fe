"""Why readings are taken to rise or fall so quickly, and why a test or a calibration is so late."""

from __future__ import annotations

from collections import Counter
from datetime import date, timedelta

from planner.farm.fields import Id
from planner.farm.water import Quantity, Reading
from planner.forecast.values import LoopForecast
from planner.forecast.water.meters import MeterState, meter_book, trend_readings
from planner.forecast.water.readings import ReadingFigures, Trend, reading_figures, series
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered
from planner.forecast.why.values import Explanation, Input, Note, NoteKind
from planner.forecast.why.water_day import water_on


def why_trend(ground: Ground, loop: LoopForecast, on: date, part: str) -> Explanation:
    """Return why a quantity is taken to change so much a week: the readings that tell it.

    `part` is a `Quantity` by its value. Raises `NoSuchFigureError` where there is no trend.
    """
    quantity = _quantity(part)
    seen = _trend(ground, loop, on, quantity)
    figures = reading_figures(ground.catalogue)
    spread = (("low", seen.per_week.low), ("high", seen.per_week.high))
    return Explanation(
        title="change of a reading in a week",
        about=f"{quantity.value}, {loop.name}",
        value=seen.per_week.likely,
        unit=f"{unit_of(quantity)}/week",
        formula=Formula.TREND,
        inputs=(
            *_readings(ground, loop, on, quantity, figures),
            ground.figure("window_days", figures.rules["trend_window_days"].path),
            ground.figure("fewest", figures.rules["trend_fewest"].path),
        ),
        notes=(Note(kind=NoteKind.MIDDLE_HALF, values=spread),),
        on=seen.until_on,
    )


def _quantity(part: str) -> Quantity:
    known = {one.value: one for one in Quantity}
    if part not in known:
        raise NoSuchFigureError(f'"{part}" is nothing that is read; there are {", ".join(known)}.')
    return known[part]


def unit_of(quantity: Quantity) -> str:
    """Return the unit of a quantity, which stands behind its name.

    >>> unit_of(Quantity.ALKALINITY_MG_PER_L), unit_of(Quantity.PH)
    ('mg/L CaCO3', '1')
    """
    return quantity.value.partition(" ")[2] or "1"


def _trend(ground: Ground, loop: LoopForecast, on: date, quantity: Quantity) -> Trend:
    views = water_on(ground, loop, on).readings.quantities
    found = next((one.trend for one in views if one.quantity is quantity), None)
    if found is None:
        raise NoSuchFigureError(f"too few readings of {quantity.value} tell where it goes.")
    return found


def _readings(
    ground: Ground, loop: LoopForecast, on: date, quantity: Quantity, figures: ReadingFigures
) -> tuple[Input, ...]:
    """Return the readings that count, each under its day."""
    since = on - timedelta(days=int(figures.rule("trend_window_days")))
    usable = trend_readings(ground.farm, loop=loop.loop, until_on=on)
    found = [one for one in series(usable, quantity, loop=loop.loop, until_on=on) if since <= one.on]
    many = Counter(one.on for one in found)
    unit = unit_of(quantity)
    return tuple(entered(_name(one, many[one.on]), one.value, unit, loop.name) for one in found)


def _name(reading: Reading, same_day: int) -> str:
    return f"read on {reading.on.isoformat()}" + (f" {reading.at}" if same_day > 1 else "")


def why_test_late(ground: Ground, loop: LoopForecast, on: date, part: str) -> Explanation:
    """Return why a test is so many days late; below 0 it is not due yet. `part` is a `Quantity`."""
    quantity = _quantity(part)
    due = next((one for one in water_on(ground, loop, on).readings.due if one.quantity is quantity), None)
    every = reading_figures(ground.catalogue).every_days.get(quantity)
    if due is None or every is None or due.last_on is None:
        raise NoSuchFigureError(f"no regular test of {quantity.value} was made yet.")
    return Explanation(
        title="days a test is late",
        about=f"{quantity.value}, {loop.name}",
        value=float(due.days_late),
        unit="d",
        formula=Formula.DAYS_LATE,
        inputs=(
            entered("days_since_last", float((on - due.last_on).days), "d", loop.name),
            ground.figure("every_days", every.path),
        ),
        notes=(Note(kind=NoteKind.LAST_DONE, values=(("day", due.last_on.isoformat()),)),),
        on=due.due_on,
    )


def why_meter_late(ground: Ground, about: Id, on: date) -> Explanation:
    """Return why the calibration of a meter is so many days late; below 0 it is not due yet.

    Raises `NoSuchFigureError` for a meter that is not there, not watched, or was never calibrated.
    """
    state = _meter(ground, about, on)
    every = state.meter.calibrate_every_days
    if every is None or state.last_on is None or state.due_on is None:
        raise NoSuchFigureError(f"the calibrations of {state.meter.name} are not watched.")
    return Explanation(
        title="days a calibration is late",
        about=state.meter.name,
        value=float(state.days_late),
        unit="d",
        formula=Formula.DAYS_LATE,
        inputs=(
            entered("days_since_last", float((on - state.last_on).days), "d", state.meter.name),
            entered("every_days", float(every), "d", state.meter.name),
        ),
        notes=(Note(kind=NoteKind.LAST_DONE, values=(("day", state.last_on.isoformat()),)),),
        on=state.due_on,
    )


def _meter(ground: Ground, about: Id, on: date) -> MeterState:
    for state in meter_book(ground.farm).states(on):
        if state.meter.id == about:
            return state
    raise NoSuchFigureError(f"there is no meter {about}.")
