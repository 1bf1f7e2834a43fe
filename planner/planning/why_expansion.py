"""Why a loop can or cannot carry more beds: every figure of the four verdicts, and what limits first."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from functools import cached_property, partial

import numpy as np

from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.forecast.engine import Forecaster
from planner.forecast.values import LoopForecast
from planner.forecast.water.load import WeekLoad
from planner.forecast.why.air import why_peak_oxygen, why_surface
from planner.forecast.why.fish import why_feed_mean
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, worked
from planner.forecast.why.values import Explanation, Note, NoteKind
from planner.forecast.why.water import loads_of, why_filter_need
from planner.planning.answering import Maker, stated
from planner.planning.expansion.verdicts import Expansion, MonthArea, Question, Verdict
from planner.planning.why_farms import ground_of
from planner.planning.why_more_area import MoreArea
from planner.planning.why_more_flow import MoreFlow


def expansion_whys(
    farm: Farm, forecaster: Forecaster, question: Question, found: Expansion
) -> dict[str, Maker]:
    """Return why each figure of the verdicts is what it is, and each month's largest area."""
    why = _Expansion(ground_of(farm, forecaster), question, found)
    whys: dict[str, Maker] = {"answer": why.answer}
    for verdict in found.verdicts:
        whys[f"{verdict.matter.value} answer"] = partial(why.verdict, verdict)
        for name, value in verdict.numbers:
            if value is not None:
                whys[number_name(verdict, name)] = partial(why.number, name, value)
    for month in found.area_by_month:
        for high_end, what in ((True, "with-a-margin"), (False, "at-most")):
            whys[month_name(month, what)] = partial(why.month, month, high_end=high_end)
    return whys


def number_name(verdict: Verdict, name: str) -> str:
    """Return what a figure of a verdict is called."""
    return f"{verdict.matter.value} {name}"


def month_name(month: MonthArea, what: str) -> str:
    """Return what an area of a month is called: "with-a-margin" or "at-most"."""
    return f"month {month.year}-{month.month:02d} {what}"


@dataclass(frozen=True)
class _Expansion:
    """The loop with what is asked to be added."""

    ground: Ground
    question: Question
    found: Expansion

    @cached_property
    def _loop(self) -> LoopForecast:
        return self.ground.loop_forecast(self.question.loop)[1]

    @cached_property
    def _area(self) -> MoreArea:
        return MoreArea(self.ground, self._loop, self.question, self.found.area_by_month)

    @cached_property
    def _flow(self) -> MoreFlow:
        return MoreFlow(self.ground, self.question)

    def month(self, month: MonthArea, *, high_end: bool) -> Explanation:
        """Return the extra area that every week of a month carries."""
        return self._area.month(month, high_end=high_end)

    # --- answers ---

    def answer(self) -> Explanation:
        """Return the four verdicts, and what decides."""
        limiting = self.found.limiting
        said = () if limiting is None else (_limited(limiting),)
        return Explanation(
            title="answer for more beds",
            about=self.found.answer.value,
            value=None,
            unit="",
            formula=Formula.VERDICT,
            children=tuple(self.verdict(one) for one in self.found.verdicts),
            notes=said,
        )

    def verdict(self, verdict: Verdict) -> Explanation:
        """Return the answer of one verdict, with all its figures."""
        given = [(name, value) for name, value in verdict.numbers if value is not None]
        return Explanation(
            title=f"answer for {verdict.matter.value}",
            about=verdict.answer.value,
            value=None,
            unit="",
            formula=Formula.VERDICT,
            inputs=tuple(self.ground.figure(path.rpartition("/")[2], path) for path in verdict.basis),
            children=tuple(self.number(name, value) for name, value in given),
            notes=(_limited(verdict),) if verdict.limit is not None else (),
        )

    def number(self, name: str, value: float) -> Explanation:
        """Return why one figure of a verdict is what it is."""
        maker = self._makers.get(name)
        found = self._entered(name, value) if maker is None else maker()
        return replace(found, value=value)

    def _entered(self, name: str, value: float) -> Explanation:
        title, _, unit = name.rpartition(" ")
        return stated(title or name, "", entered("value", value, unit if title else "1", "more beds"))

    @cached_property
    def _makers(self) -> Mapping[str, Maker]:
        return {
            "largest area of every month m²": partial(self._area.every_month, high_end=False),
            "largest area of every month, with a margin m²": partial(self._area.every_month, high_end=True),
            "months that carry it": self._area.months_that_carry,
            "months of the plan": self._area.months,
            "feed it takes g/d": self._area.feed_of_area,
            "flow needed L/h": self._flow.flow,
            "flow needed with reserve L/h": self._flow.flow_with_reserve,
            "head with friction m": self._flow.head,
            "flow of the pump at that head L/h": self._flow.pump,
            "filter surface entered m²": self._filters,
            "filter surface needed m²": self._filter_need,
            "filter surface needed at most m²": self._filter_need_high,
            "oxygen asked for after feeding g/h": self._oxygen,
            "oxygen asked for at most g/h": self._oxygen_high,
            "feed that has to be added g/d": self._area.lacking,
            "power wanted W": self._flow.power,
            "water kg/m²": self._flow.water,
            "water kg": self._flow.water_kg,
            "load kg/m²": self._flow.load,
        }

    # --- filter and oxygen ---

    @cached_property
    def _more(self) -> Ground:
        """The same loop with the feed that the new area still lacks."""
        forecast, loop = self.ground.forecast, self._loop
        fed = replace(loop, feed_g=loop.feed_g + np.repeat(self._area.lacking_g, DAYS_PER_WEEK))
        loops = tuple(fed if one.loop == loop.loop else one for one in forecast.loops)
        return Ground(
            farm=self.ground.farm,
            forecast=replace(forecast, loops=loops),
            forecaster=self.ground.forecaster,
        )

    def _fed_more(self) -> LoopForecast:
        return self._more.loop_forecast(self.question.loop)[1]

    @cached_property
    def _loads(self) -> tuple[WeekLoad, ...]:
        return loads_of(self._more, self._fed_more())

    def _filter_need(self) -> Explanation:
        week = max(range(len(self._loads)), key=self._need)
        return self._with_added(why_filter_need(self._more, self._fed_more(), week), week)

    def _with_added(self, found: Explanation, week: int) -> Explanation:
        """Return an answer in which all feed is that of today's fish and what has to be added."""
        today = why_feed_mean(self.ground, self._loop, week)
        return _fed_by(found, today, self._area.lacking_in(week))

    def _need(self, week: int) -> float:
        return self._loads[week].need_m2.likely

    def _oxygen(self) -> Explanation:
        week = max(range(len(self._loads)), key=self._peak)
        return self._with_added(why_peak_oxygen(self._more, self._fed_more(), week), week)

    def _peak(self, week: int) -> float:
        return self._loads[week].peak_oxygen_g_per_h.likely

    def _filter_need_high(self) -> Explanation:
        return self._high("filter surface needed at most", "m²", self._filter_need())

    def _oxygen_high(self) -> Explanation:
        return self._high("oxygen asked for at most", "g/h", self._oxygen())

    def _high(self, title: str, unit: str, likely: Explanation) -> Explanation:
        """Return the high end of a span, with the likely answer behind it: its figures tell their ranges."""
        return Explanation(
            title=title,
            about=likely.about,
            value=0.0,
            unit=unit,
            formula=Formula.HIGH_END,
            inputs=(worked("likely", likely.value or 0.0, unit),),
            children=(likely,),
            on=likely.on,
        )

    def _filters(self) -> Explanation:
        return why_surface(self.ground, self._loop, 0)


def _fed_by(found: Explanation, today: Explanation, added: Explanation) -> Explanation:
    if found.title != today.title:
        return replace(found, children=tuple(_fed_by(child, today, added) for child in found.children))
    return replace(found, formula=Formula.SUM, inputs=(), children=(today, added), notes=())


def _limited(verdict: Verdict) -> Note:
    what = verdict.answer.value if verdict.limit is None else verdict.limit.value
    return Note(kind=NoteKind.LIMITED_BY, values=(("what", what),))
