"""Why tests say what they say: salts from a meter, free ammonia, and the day a limit is reached."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Final

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.water import Quantity, Reading
from planner.forecast.values import LoopForecast
from planner.forecast.water.limits import LimitDay, LimitWay
from planner.forecast.water.side import LoopWater
from planner.forecast.water.spans import Span
from planner.forecast.water.targets import HIGHEST_C, LOWEST_C, NotKnown, SaltReading
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, worked
from planner.forecast.why.values import Explanation, Input, Note, NoteKind
from planner.forecast.why.water_day import water_on, why_acid

_TITLES: Final = {
    LimitWay.ALKALINITY_BALANCE: "limit of alkalinity by balance",
    LimitWay.PH_BALANCE: "limit of pH by balance",
    LimitWay.PH_TREND: "limit of pH by trend",
}
_FORMULAS: Final = {
    LimitWay.ALKALINITY_BALANCE: Formula.LIMIT_BY_BALANCE,
    LimitWay.PH_BALANCE: Formula.LIMIT_BY_BALANCE,
    LimitWay.PH_TREND: Formula.LIMIT_BY_TREND,
}
_CARE: Final = "coefficient/water_care/"
_TEN: Final = 10.0


def why_salts(ground: Ground, loop: LoopForecast, on: date) -> Explanation:
    """Return why a meter's reading says so much conductivity; dissolved solids are a child."""
    water = water_on(ground, loop, on)
    salts = water.readings.salts
    if salts is None:
        return _unknown(
            "salts", loop, Formula.AS_ENTERED, "mS/cm", "no reading of conductivity or dissolved solids"
        )
    reading = _salt_reading(water, salts)
    doubts = _doubts(water, reading.quantity)
    factor = _factor(ground, salts, loop)
    assumed = (Note(kind=NoteKind.FACTOR_ASSUMED),) if salts.factor_assumed else ()
    ec, tds = salts.ec_ms_per_cm.likely, salts.tds_mg_per_l.likely
    if reading.quantity is Quantity.TDS_MG_PER_L:
        formula = Formula.SALTS_OF_SOLIDS
        inputs: tuple[Input, ...] = (entered("dissolved_solids_mg_per_l", tds, "mg/L", loop.name), factor)
        children: tuple[Explanation, ...] = ()
    else:
        formula, inputs = Formula.AS_ENTERED, (entered("value", ec, "mS/cm", loop.name),)
        children = (_solids(loop, ec, tds, factor, assumed),)
    return Explanation(
        title="salts",
        about=loop.name,
        value=ec,
        unit="mS/cm",
        formula=formula,
        inputs=inputs,
        children=children,
        notes=(*assumed, *doubts),
        on=salts.on,
    )


def _solids(loop: LoopForecast, ec: float, tds: float, factor: Input, notes: tuple[Note, ...]) -> Explanation:
    return Explanation(
        title="dissolved solids",
        about=loop.name,
        value=tds,
        unit="mg/L",
        formula=Formula.SOLIDS_OF_SALTS,
        inputs=(entered("conductivity_ms_per_cm", ec, "mS/cm", loop.name), factor),
        notes=notes,
    )


def _doubts(water: LoopWater, quantity: Quantity) -> tuple[Note, ...]:
    """Return a note when the last reading of a quantity was made with a meter overdue for calibration."""
    views = (view for view in water.readings.quantities if view.quantity is quantity)
    said = (("what", quantity.value),)
    return tuple(Note(kind=NoteKind.METER_OVERDUE, values=said) for view in views if view.doubtful)


def _salt_reading(water: LoopWater, salts: SaltReading) -> Reading:
    """Return the reading that the salts came from: conductivity when both were read on a day."""
    by = {view.quantity: view.reading for view in water.readings.quantities}
    for quantity in (Quantity.EC_MS_PER_CM, Quantity.TDS_MG_PER_L):
        reading = by.get(quantity)
        if reading is not None and reading.on == salts.on:
            return reading
    raise NoSuchFigureError("there is no reading of salts.")


def _factor(ground: Ground, salts: SaltReading, loop: LoopForecast) -> Input:
    if salts.factor_assumed:
        return ground.figure("meter_factor", "loop/tds_per_ec")
    return entered("meter_factor", salts.factor.likely, "mg/L per µS/cm", loop.name)


def why_free_ammonia(ground: Ground, loop: LoopForecast, on: date) -> Explanation:
    """Return why so much of the ammonia read is un-ionised."""
    water = water_on(ground, loop, on)
    found = water.readings.free_ammonia
    if found.tan_mg_per_l is None or found.ph is None or found.water_c is None:
        return _unknown(
            "un-ionised ammonia as nitrogen", loop, Formula.FREE_AMMONIA, "mg/L", _why_not(found.not_known)
        )
    held = min(max(found.water_c, LOWEST_C), HIGHEST_C)
    warmth = (
        worked("water_c", held, "°C")
        if found.water_c_on is None
        else entered("water_c", held, "°C", loop.name)
    )
    limit = (Note(kind=NoteKind.FISH_LIMIT, values=(("limit", found.limit.value),)),) if found.limit else ()
    return Explanation(
        title="un-ionised ammonia as nitrogen",
        about=loop.name,
        value=found.nh3_n_mg_per_l,
        unit="mg/L",
        formula=Formula.FREE_AMMONIA,
        inputs=(
            entered("ammonia_mg_per_l", found.tan_mg_per_l, "mg/L", loop.name),
            entered("ph", found.ph, "1", loop.name),
            warmth,
            ground.figure("pka_intercept", "coefficient/water/ammonia_pka_intercept"),
            ground.figure("pka_slope_k", "coefficient/water/ammonia_pka_slope_k"),
        ),
        notes=(*limit, *_doubts(water, Quantity.PH)),
        on=found.on,
    )


def why_limit(ground: Ground, loop: LoopForecast, on: date, way: str) -> Explanation:
    """Return why a limit is reached at the earliest after so many days from the reading."""
    water = water_on(ground, loop, on)
    limit = next((one for one in water.limits if one.way.value == way), None)
    if limit is None:
        raise NoSuchFigureError(f'"{way}" is no limit; there are {", ".join(one.value for one in LimitWay)}.')
    title = _TITLES[limit.way]
    if limit.not_known is not None or limit.value is None or limit.on is None:
        return _unknown(title, loop, _FORMULAS[limit.way], "d", _why_not(limit.not_known))
    return (
        _trend(water, limit, title)
        if limit.way is LimitWay.PH_TREND
        else _balance(ground, loop, water, limit, title)
    )


def _trend(water: LoopWater, limit: LimitDay, title: str) -> Explanation:
    seen = next(view.trend for view in water.readings.quantities if view.quantity is Quantity.PH)
    fall = Span(low=0.0, likely=0.0, high=0.0) if seen is None else seen.per_week.times(-1.0)
    assert limit.value is not None
    return Explanation(
        title=title,
        about=water.name,
        value=_days_to(limit),
        unit="d",
        formula=Formula.LIMIT_BY_TREND,
        inputs=(
            entered("reading", limit.value, "1", water.name),
            worked("limit", limit.limit, "1"),
            worked("fall_per_week", fall.high, "1/week"),
        ),
        notes=_limit_notes(limit),
        on=limit.earliest_on,
    )


def _balance(
    ground: Ground, loop: LoopForecast, water: LoopWater, limit: LimitDay, title: str
) -> Explanation:
    week = water.advice.week
    spare = _spare(ground, loop, water, limit)
    before, last = limit.spent_mg_per_l, 0.0
    if limit.earliest_on is not None and before:
        before, last = before[:-1], before[-1]
    fallen = _fallen(loop, limit, before)
    return Explanation(
        title=title,
        about=loop.name,
        value=_days_to(limit),
        unit="d",
        formula=Formula.LIMIT_BY_BALANCE,
        inputs=(
            worked("spare_mg_per_l", spare.value or 0.0, "mg/L"),
            worked("days_before", float(len(before)), "d"),
            worked("fallen_before_mg_per_l", fallen.value or 0.0, "mg/L"),
            worked("fall_that_day_mg_per_l", last, "mg/L"),
            *_top_up(ground, loop),
        ),
        children=(spare, fallen, why_acid(ground, loop, week)),
        notes=_limit_notes(limit),
        on=limit.earliest_on,
    )


def _spare(ground: Ground, loop: LoopForecast, water: LoopWater, limit: LimitDay) -> Explanation:
    """Return alkalinity between the last reading and the limit."""
    views = {view.quantity: view.reading for view in water.readings.quantities}
    reading = views[Quantity.ALKALINITY_MG_PER_L]
    assert reading is not None
    assert limit.value is not None
    alkalinity = entered("alkalinity_mg_per_l", reading.value, "mg/L", loop.name)
    if limit.way is LimitWay.ALKALINITY_BALANCE:
        formula, value = Formula.SPARE_ALKALINITY, reading.value - limit.limit
        rest: tuple[Input, ...] = (ground.figure("limit", f"{_CARE}alkalinity_low_mg_per_l"),)
    else:
        formula = Formula.SPARE_TO_PH
        value = reading.value * (1.0 - _TEN ** (limit.limit - limit.value))
        target = ground.figure("ph_target", "loop/ph_target")
        rest = (
            entered("ph", limit.value, "1", loop.name),
            worked("limit", limit.limit, "1"),
            target,
        )
    return Explanation(
        title="alkalinity to spare",
        about=loop.name,
        value=value,
        unit="mg/L",
        formula=formula,
        inputs=(alkalinity, *rest),
        on=reading.on,
    )


def _fallen(loop: LoopForecast, limit: LimitDay, falls: tuple[float, ...]) -> Explanation:
    """Return what alkalinity falls by before the day of the limit, by runs of seven days, at its quickest."""
    assert limit.spent_from is not None
    runs = [falls[first : first + DAYS_PER_WEEK] for first in range(0, len(falls), DAYS_PER_WEEK)]
    parts = tuple(
        Explanation(
            title="fall of alkalinity in some days",
            about=loop.name,
            value=sum(run),
            unit="mg/L",
            formula=Formula.FALL_OF_DAYS,
            inputs=(
                worked("days", float(len(run)), "d"),
                worked("fall_a_day_mg_per_l", sum(run) / len(run), "mg/L"),
            ),
            on=limit.spent_from + timedelta(days=number * DAYS_PER_WEEK),
        )
        for number, run in enumerate(runs)
    )
    return Explanation(
        title="fall of alkalinity before the day",
        about=loop.name,
        value=sum(falls),
        unit="mg/L",
        formula=Formula.SUM,
        children=parts,
        on=limit.spent_from,
    )


def _top_up(ground: Ground, loop: LoopForecast) -> tuple[Input, ...]:
    """Return alkalinity that make-up water gives back, where the grower entered it."""
    entry = ground.loops[loop.loop]
    if entry.top_up_alkalinity_mg_per_l is None:
        return ()
    return (entered("make_up_water_mg_per_l", entry.top_up_alkalinity_mg_per_l, "mg/L", entry.name),)


def _days_to(limit: LimitDay) -> float | None:
    start = limit.on if limit.spent_from is None else limit.spent_from
    if limit.earliest_on is None or start is None:
        return None
    return float((limit.earliest_on - start).days)


def _limit_notes(limit: LimitDay) -> tuple[Note, ...]:
    notes = [Note(kind=NoteKind.NO_BASE_GIVEN)]
    if limit.earliest_on is None:
        notes.append(Note(kind=NoteKind.NOT_IN_PLAN))
    elif limit.latest_on is None:
        notes.append(Note(kind=NoteKind.PERHAPS_NEVER))
    else:
        latest = (("latest", limit.latest_on.isoformat()),)
        notes.append(Note(kind=NoteKind.LATEST, values=latest))
    return tuple(notes)


def _why_not(reason: NotKnown | None) -> str:
    return "not known" if reason is None else reason.value


def _unknown(title: str, loop: LoopForecast, formula: Formula, unit: str, reason: str) -> Explanation:
    """Return an answer without a figure; the note says what is missing."""
    return Explanation(
        title=title,
        about=loop.name,
        value=None,
        unit=unit,
        formula=formula,
        notes=(Note(kind=NoteKind.NOT_KNOWN, values=(("reason", reason),)),),
    )
