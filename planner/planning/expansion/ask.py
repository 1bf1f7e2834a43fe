"""Answers whether a loop can carry more beds: nutrients, flow, filter and oxygen, and what surrounds them."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.farm import DAYS_PER_WEEK, Farm, by_id
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.farm.site import AreaRule, Bed, Loop
from planner.farm.species import BedKind
from planner.forecast.engine import Forecaster
from planner.forecast.values import Floats, Forecast, LoopForecast
from planner.forecast.water.filters import FilterVerdict, filter_figures
from planner.forecast.water.load import WeekLoad, load_forecast, week_loads
from planner.planning.expansion.area import extra_area_by_month, feed_lacking_by_week, feed_of_area_g
from planner.planning.expansion.surroundings import surroundings
from planner.planning.expansion.verdicts import (
    Answer,
    Expansion,
    Limit,
    Matter,
    MonthArea,
    Question,
    Verdict,
    worst,
)

_ADVICE: Final = "coefficient/advice/"
_CM_PER_M: Final = 100.0
_L_PER_M3: Final = 1000.0


def expansion(farm: Farm, forecaster: Forecaster, question: Question) -> Expansion:
    """Return the four verdicts on adding beds to a loop.

    Raises `FarmFaultError` for an area that is not above 0, a nursery, or figures below 0.
    """
    _check(farm, question)
    forecast = forecaster.forecast(farm)
    loop: Loop = by_id(farm.loops)[question.loop]
    found = next(one for one in forecast.loops if one.loop == loop.id)
    months = extra_area_by_month(found, forecast.ruler, forecaster.bands, group=question.group)
    task = _Task(
        farm=farm, loop=loop, found=found, forecast=forecast, forecaster=forecaster, question=question
    )
    return Expansion(
        verdicts=(
            nutrients(question, months, task.feed_wanted_g(), loop.area_rule),
            task.flow(),
            task.filter_and_oxygen(),
            surroundings(question),
        ),
        area_by_month=months,
    )


_BASIS: Final = {
    AreaRule.FAO: ("feed_rate/fao_leafy", "feed_rate/fao_fruiting"),
    AreaRule.UVI: ("feed_rate/uvi_raft",),
}
"""Figures that the area is judged by, by whose ratio the loop goes by."""


def nutrients(
    question: Question,
    months: tuple[MonthArea, ...],
    feed_wanted_g: float,
    rule: AreaRule = AreaRule.FAO,
) -> Verdict:
    """Return whether the feed carries the area: in every month at the high end of the band, or less well."""
    area = question.area_m2
    careful = min((month.cautious_m2 for month in months), default=0.0)
    most = min((month.most_m2 for month in months), default=0.0)
    carried = sum(month.most_m2 >= area for month in months)
    answer: Answer = Answer.NO
    limits: tuple[Limit, ...] = (Limit.FEED,)
    if area <= careful:
        answer, limits = Answer.YES, ()
    elif area <= most:
        answer, limits = Answer.YES_WITH, (Limit.THIN_FEED,)
    elif carried:
        answer, limits = Answer.YES_WITH, (Limit.FEED_IN_SOME_MONTHS,)
    return Verdict(
        matter=Matter.NUTRIENTS,
        answer=answer,
        limits=limits,
        numbers=(
            ("area asked for m²", area),
            ("largest area of every month m²", most),
            ("largest area of every month, with a margin m²", careful),
            ("months that carry it", float(carried)),
            ("months of the plan", float(len(months))),
            ("feed it takes g/d", feed_wanted_g),
        ),
        cautions=("planning-aid",),
        basis=_BASIS[rule],
    )


class _Task:
    """What the verdicts on flow, filter and oxygen need of the farm."""

    def __init__(
        self,
        *,
        farm: Farm,
        loop: Loop,
        found: LoopForecast,
        forecast: Forecast,
        forecaster: Forecaster,
        question: Question,
    ) -> None:
        self._farm, self._loop, self._found, self._forecast = farm, loop, found, forecast
        self._forecaster, self._question = forecaster, question
        self._catalogue: Catalogue = forecaster.catalogue

    def _advice(self, name: str) -> float:
        return self._catalogue.figure(_ADVICE + name).value

    def feed_wanted_g(self) -> float:
        """Return the feed that the new area takes at the low end of its band [g/d], at the protein given."""
        return feed_of_area_g(
            self._question.area_m2, self._found, self._forecaster.bands, self._question.group
        )

    # --- flow ---

    def flow(self) -> Verdict:
        """Return whether the pump gives the flow of tanks and beds at the new head, with some in reserve."""
        needed = self._needed_l_per_h()
        head = self._head_m()
        pump, reserve = self._question.pump, self._advice("pump_reserve_share")
        given = None if pump is None or head is None else pump.flow_at(head)
        answer, limits = self._flow_answer(needed, head, given, reserve)
        return Verdict(
            matter=Matter.FLOW,
            answer=answer,
            limits=limits,
            numbers=(
                ("flow needed L/h", needed),
                ("flow needed with reserve L/h", None if needed is None else needed * (1.0 + reserve)),
                ("head with friction m", head),
                ("flow of the pump at that head L/h", given),
            ),
            cautions=("electricity-near-water", "power-cut"),
            basis=tuple(
                _ADVICE + name
                for name in (
                    "pump_tank_turnover_per_h",
                    "pump_raft_turnover_per_h",
                    "pump_media_fillings_per_h",
                    "pump_reserve_share",
                    "pump_friction_share",
                )
            ),
        )

    def _flow_answer(
        self, needed: float | None, head: float | None, given: float | None, reserve: float
    ) -> tuple[Answer, tuple[Limit, ...]]:
        missing = [
            *((Limit.NO_TANK,) if needed is None else ()),
            *((Limit.NO_HEAD,) if head is None else ()),
            *((Limit.NO_PUMP,) if self._question.pump is None else ()),
        ]
        if needed is None or missing:
            return Answer.UNKNOWN, tuple(missing)
        if given is None:
            return Answer.UNKNOWN, (Limit.CURVE_TOO_SHORT,)
        if given <= 0.0:
            return Answer.NO, (Limit.HEAD,)
        if given < needed:
            return Answer.NO, (Limit.FLOW,)
        if given < needed * (1.0 + reserve):
            return Answer.YES_WITH, (Limit.NO_RESERVE,)
        return Answer.YES, ()

    def _head_m(self) -> float | None:
        question = self._question
        if question.head_m is None:
            return None
        if question.friction_m is not None:
            return question.head_m + question.friction_m
        return question.head_m * (1.0 + self._advice("pump_friction_share"))

    def _needed_l_per_h(self) -> float | None:
        """Return the turnover of tanks and the flow of all beds, the new ones too; None without a tank."""
        tanks = [tank for tank in self._farm.tanks if tank.loop == self._loop.id]
        if not tanks:
            return None
        beds = [bed for bed in self._farm.beds if bed.loop == self._loop.id]
        flow = sum(tank.volume_l for tank in tanks) * self._advice("pump_tank_turnover_per_h")
        flow += sum(self._bed_flow(bed.kind, bed.area_m2, bed.depth_cm) for bed in beds)
        question = self._question
        return flow + self._bed_flow(question.kind, question.area_m2, question.depth_cm)

    def _bed_flow(self, kind: BedKind, area_m2: float, depth_cm: float | None) -> float:
        if kind is BedKind.NURSERY:
            return 0.0
        media = kind is BedKind.MEDIA
        usual = self._catalogue.figure(
            "coefficient/sizing/" + ("media_bed_depth" if media else "raft_water_depth")
        ).value
        depth_m = usual if depth_cm is None else depth_cm / _CM_PER_M
        volume_l = area_m2 * depth_m * _L_PER_M3
        if media:
            voids = self._catalogue.figure("coefficient/sizing/media_void_share").value
            return volume_l * voids * self._advice("pump_media_fillings_per_h")
        return volume_l * self._advice("pump_raft_turnover_per_h")

    # --- filter and oxygen ---

    def filter_and_oxygen(self) -> Verdict:
        """Return whether filter and air carry the feed of the plan, or more where the beds need more."""
        loads = self._loads()
        heaviest = max(loads, key=_need)
        filter_answer, filter_limit = _filter_answer(heaviest)
        oxygen_answer, oxygen_limit = self._oxygen_answer(loads)
        found = [(filter_answer, filter_limit), (oxygen_answer, oxygen_limit)]
        answer = worst((filter_answer, oxygen_answer))
        found.sort(key=lambda one: one[0] is not answer)
        peak = max(loads, key=_peak).peak_oxygen_g_per_h
        return Verdict(
            matter=Matter.FILTER_AND_OXYGEN,
            answer=answer,
            limits=tuple(limit for _, limit in found if limit is not None),
            numbers=(
                ("filter surface entered m²", heaviest.area_m2),
                ("filter surface needed m²", heaviest.need_m2.likely),
                ("filter surface needed at most m²", heaviest.need_m2.high),
                ("oxygen asked for after feeding g/h", peak.likely),
                ("oxygen asked for at most g/h", peak.high),
                ("oxygen supply entered g/h", self._question.oxygen_g_per_h),
                ("feed that has to be added g/d", float(self._lacking_g().max())),
            ),
            cautions=("power-cut", "tripped-device", "planning-aid"),
        )

    def _lacking_g(self) -> Floats:
        """Return the feed that has to be added in each week for everything to be carried [g/d]."""
        question, ruler = self._question, self._forecast.ruler
        return feed_lacking_by_week(
            question.area_m2, self._found, ruler, self._forecaster.bands, group=question.group
        )

    def _loads(self) -> tuple[WeekLoad, ...]:
        """Return the load of every week, with the feed added that the new area still lacks.

        What beds of gravel add as filter surface is not counted on.
        """
        added = np.repeat(self._lacking_g(), DAYS_PER_WEEK)
        more = replace(self._found, feed_g=self._found.feed_g + added)
        ruler, catalogue = self._forecast.ruler, self._catalogue
        load = load_forecast(
            more,
            loop=self._loop,
            altitude_m=by_id(self._farm.sites)[self._loop.site].altitude_m,
            filters=self._farm.filters,
            beds=self._farm.beds,
            ruler=ruler,
            catalogue=catalogue,
        )
        return week_loads(load, ruler=ruler, figures=filter_figures(catalogue))

    def _oxygen_answer(self, loads: tuple[WeekLoad, ...]) -> tuple[Answer, Limit | None]:
        supply = self._question.oxygen_g_per_h
        if supply is None:
            return Answer.UNKNOWN, Limit.NO_OXYGEN
        peak = max(loads, key=_peak).peak_oxygen_g_per_h
        if supply < peak.likely:
            return Answer.NO, Limit.OXYGEN
        return (Answer.YES_WITH, Limit.OXYGEN_HIGH) if supply < peak.high else (Answer.YES, None)


def _need(load: WeekLoad) -> float:
    return load.need_m2.likely


def _peak(load: WeekLoad) -> float:
    return load.peak_oxygen_g_per_h.likely


def _filter_answer(load: WeekLoad) -> tuple[Answer, Limit | None]:
    match load.verdict:
        case FilterVerdict.UNKNOWN:
            return Answer.UNKNOWN, Limit.NO_FILTER_AREA
        case FilterVerdict.SHORT:
            return Answer.NO, Limit.FILTER_SHORT
        case FilterVerdict.TIGHT:
            return Answer.YES_WITH, Limit.FILTER_TIGHT
        case _:
            held = load.covers_high_need or load.verdict is FilterVerdict.NO_LOAD
            return (Answer.YES, None) if held else (Answer.YES_WITH, Limit.FILTER_HIGH)


def _check(farm: Farm, question: Question) -> None:
    faults = []
    if question.loop not in by_id(farm.loops):
        faults.append(_fault("loop", question.loop, "is not on the farm."))
    if not (math.isfinite(question.area_m2) and question.area_m2 > 0.0):
        faults.append(_fault("area_m2", f"{question.area_m2:g}", "must be above 0 m²."))
    if question.kind is BedKind.NURSERY:
        faults.append(_fault("kind", question.kind.value, "seedlings take next to nothing; ask for a bed."))
    for name in _NOT_NEGATIVE:
        value = getattr(question, name)
        if value is not None and not (math.isfinite(value) and value >= 0.0):
            faults.append(_fault(name, f"{value:g}", "must be a number of 0 or more."))
    if faults:
        raise FarmFaultError(tuple(faults))


_NOT_NEGATIVE: Final = (
    "depth_cm",
    "head_m",
    "friction_m",
    "oxygen_g_per_h",
    "light_mol_per_m2_d",
    "light_wanted_mol_per_m2_d",
    "lamps_w",
    "pump_w",
    "spare_w",
    "load_allowed_kg_per_m2",
    "dry_kg_per_m2",
)


def _fault(field: str, value: str, words: str) -> Fault:
    return Fault(
        kind=FaultKind.OUT_OF_LIMITS,
        where="more beds",
        field=field,
        value=value,
        limit="0",
        message=f"{field} is {value}: {words}",
    )


def bed_question(bed: Bed) -> Question:
    """Return the question whether a bed like one of the farm can be added once more."""
    return Question(loop=bed.loop, area_m2=bed.area_m2, kind=bed.kind, depth_cm=bed.depth_cm)
