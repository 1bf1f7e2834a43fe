"""Why a season plan is worth what it is, how near that is to the best, and why each sowing is in it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from functools import cached_property, partial
from typing import Final

import numpy as np

from planner.farm.species import ELEMENTS
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, worked
from planner.forecast.why.many import largest
from planner.forecast.why.values import Explanation, Note, NoteKind
from planner.planning.answering import Maker, summed
from planner.planning.outcome import supply_by_week
from planner.planning.season_plan.fixed import fixed_part
from planner.planning.season_plan.plan import NOTHING_PLANNED, PlannedSowing, PlanStatus, SeasonPlan
from planner.planning.season_plan.tally import Tally
from planner.planning.season_plan.values import Floats, Line
from planner.planning.wanted import wants_of
from planner.planning.why_farms import ground_of
from planner.planning.why_supply import why_sold, why_wanted

_PATH: Final = "coefficient/season_plan/"
_UNIT: Final = "crop-weeks"
_PERCENT: Final = 100.0
_SIDE_TITLES: Final = {"short": "supply short", "idle": "supply idle"}


def season_whys(plan: SeasonPlan, today: Ground) -> dict[str, Maker]:
    """Return why a plan is as good as it is, its sowings and its weeks.

    `today` is the farm that the plan was made for, with its own forecast.
    """
    if plan.status in NOTHING_PLANNED:
        return {}
    why = _Season(plan, today)
    found: dict[str, Maker] = {
        "plan gap": why.gap,
        "plan worth": why.worth,
        "plan bound": why.bound,
        "plan by-hand": why.by_hand,
        "plan targets": why.targets,
        "plan missed": why.missed,
        "plan wasted": why.wasted,
        "plan short": partial(why.elements, "short"),
        "plan idle": partial(why.elements, "idle"),
        "plan sowings": why.sowings,
    }
    for sowing in plan.sowings:
        found[sown_name(sowing)] = partial(why.sowing, sowing)
    for week in range(plan.model.weeks):
        for number, line in enumerate(plan.model.lines):
            name = partial(line_name, plan, line, week)
            found[name("wanted")] = partial(why.wanted, number, week)
            found[name("harvest")] = partial(why.harvest, number, week)
            found[name("today")] = partial(why.today, number, week)
            if line.wanted[week] > 0:
                found[name("meets")] = partial(why.meets, number, week)
    return found


def sown_name(sowing: PlannedSowing) -> str:
    """Return what the plants of a sowing of the plan are called."""
    return f"sowing {sowing.week_name} {sowing.crop} {sowing.bed_kind.value} {sowing.ground + 1} plants"


def line_name(plan: SeasonPlan, line: Line, week: int, what: str) -> str:
    """Return what an amount of a week is called: "wanted", "harvest", "today" or "meets"."""
    name = plan.model.ruler.week_name(plan.model.first_week + week)
    return f"week {name} {plan.model.crops[line.crop]} {line.unit.value} {what}"


@dataclass(frozen=True)
class _Season:
    """A plan with today's farm beside it."""

    plan: SeasonPlan
    ground: Ground

    def _tally(self) -> Tally:
        tally = Tally(self.plan.model)
        tally.put(np.asarray(self.plan.lots, dtype=np.int64))
        return tally

    # --- how good it is ---

    def gap(self) -> Explanation:
        """Return how far the plan may fall short of the best possible."""
        plan = self.plan
        return Explanation(
            title="gap to the best possible",
            about="",
            value=plan.gap,
            unit="1",
            formula=Formula.GAP_TO_BOUND if plan.bound else Formula.NOTHING,
            inputs=(worked("bound", plan.bound, _UNIT), worked("worth", plan.objective, _UNIT)),
            children=(self.worth(), self.bound()),
            notes=tuple(self._status_notes()),
        )

    def _status_notes(self) -> Iterator[Note]:
        if self.plan.status is PlanStatus.BEST:
            yield Note(kind=NoteKind.PROVEN)
        elif self.plan.status is PlanStatus.STOPPED:
            yield Note(kind=NoteKind.SEARCH_STOPPED)
        else:
            share = f"{self.plan.gap * _PERCENT:.2g}"
            yield Note(kind=NoteKind.SEARCHED_WITHIN, values=(("share", share),))

    def bound(self) -> Explanation:
        """Return the most that any plan can be worth."""
        return Explanation(
            title="most any plan can be worth",
            about="",
            value=self.plan.bound,
            unit=_UNIT,
            formula=Formula.BOUND,
            inputs=(worked("worth_of_targets", self.plan.model.worth, _UNIT),),
            children=(self.targets(),),
        )

    def worth(self) -> Explanation:
        """Return what the plan is worth, with each of its costs."""
        parts = self.plan.parts
        return Explanation(
            title="worth of the plan",
            about="",
            value=self.plan.objective,
            unit=_UNIT,
            formula=Formula.PLAN_WORTH,
            inputs=(
                worked("worth_of_targets", self.plan.model.worth, _UNIT),
                worked("missed", parts.missed, _UNIT),
                worked("wasted", parts.wasted, _UNIT),
                worked("short", float(parts.short.sum()), _UNIT),
                worked("idle", float(parts.idle.sum()), _UNIT),
            ),
            children=(
                self.targets(),
                self.missed(),
                self.wasted(),
                self.elements("short"),
                self.elements("idle"),
            ),
        )

    def by_hand(self) -> Explanation:
        """Return what the same amount sown week after week is worth."""
        return Explanation(
            title="worth of the rhythm by hand",
            about="",
            value=self.plan.by_hand,
            unit=_UNIT,
            formula=Formula.SEARCHED,
            inputs=(worked("worth_of_targets", self.plan.model.worth, _UNIT),),
        )

    def targets(self) -> Explanation:
        """Return what it would be worth to meet every target."""
        lines = self.plan.model.lines
        amounts = [float(line.wanted.sum()) for line in lines]
        return self._of_lines("worth of all targets", amounts, "missed_weight", self.plan.model.worth)

    def missed(self) -> Explanation:
        """Return what is missed of the targets."""
        missing = np.maximum(self._tally().missing, 0.0).sum(axis=1)
        return self._of_lines("missed", missing.tolist(), "missed_weight", self.plan.parts.missed)

    def wasted(self) -> Explanation:
        """Return what comes beyond the targets."""
        over = np.maximum(-self._tally().missing, 0.0).sum(axis=1)
        return self._of_lines("more than wanted", over.tolist(), "wasted_weight", self.plan.parts.wasted)

    def _of_lines(self, title: str, amounts: list[float], weight: str, value: float) -> Explanation:
        parts = [
            self._weighed(title, self._crop(line), weight, amount, line.usual, line.unit.value)
            for line, amount in zip(self.plan.model.lines, amounts, strict=True)
            if amount > 0.0
        ]
        return summed(title, "", value, _UNIT, parts)

    def _crop(self, line: Line) -> str:
        return self.ground.catalogue.crops[self.plan.model.crops[line.crop]].name

    def _weighed(
        self, title: str, about: str, weight: str, amount: float, usual: float, unit: str
    ) -> Explanation:
        bare = Explanation(
            title=title,
            about=about,
            value=0.0,
            unit=_UNIT,
            formula=Formula.WEIGHED,
            inputs=(
                self.ground.figure("weight", f"{_PATH}{weight}"),
                worked("amount", amount, unit),
                worked("usual", usual, unit),
            ),
        )
        return figured(bare)

    def elements(self, side: str) -> Explanation:
        """Return what supply that is short, or left idle, costs, element by element."""
        elements, demand = self.plan.model.elements, self._tally().demand
        beyond: Floats = demand - elements.high if side == "short" else elements.low - demand
        grams = np.maximum(beyond, 0.0).sum(axis=2)
        names = [loop.name for loop in self.ground.forecast.loops]
        parts = [
            self._weighed(
                _SIDE_TITLES[side],
                f"{ELEMENTS[element].capitalize()}, {names[loop]}",
                f"{side}_element_weight",
                float(grams[loop, element]),
                float(elements.usual[loop, element]),
                "g",
            )
            for loop, element in np.argwhere((grams > 0.0) & (elements.usual > 0.0)).tolist()
        ]
        return summed(_SIDE_TITLES[side], "", float(getattr(self.plan.parts, side).sum()), _UNIT, parts)

    # --- sowings ---

    def sowings(self) -> Explanation:
        """Return how many sowings there are, the largest first."""
        kept, _, notes = largest(self.sowing(one) for one in self.plan.sowings)
        many = len(self.plan.sowings)
        return Explanation(
            title="sowings of the plan",
            about="",
            value=float(many),
            unit="sowings",
            formula=Formula.COUNTED,
            inputs=(worked("others", many - len(kept), "sowings"),) if notes else (),
            children=kept,
            notes=notes,
        )

    def _column(self, sowing: PlannedSowing) -> int:
        columns = self.plan.model.columns
        crop = self.plan.model.crops.index(sowing.crop)
        same = (columns.crop == crop) & (columns.ground == sowing.ground) & (columns.week == sowing.week)
        return int(np.flatnonzero(same)[0])

    def sowing(self, sowing: PlannedSowing) -> Explanation:
        """Return why so many plants are sown: what they give, and what a lot more or fewer would cost."""
        model, tally, column = self.plan.model, self._tally(), self._column(sowing)
        lot = int(model.columns.lot[column])
        gives = [
            self._given(number, column, int(week), float(share), sowing.plants)
            for number, line in enumerate(model.lines)
            if line.crop == int(model.columns.crop[column])
            for week, share in zip(*model.columns.picks.of(column), strict=True)
        ]
        kept, _, notes = largest(gives)
        return Explanation(
            title="plants",
            about=self.ground.catalogue.crops[sowing.crop].name,
            value=float(sowing.plants),
            unit="plants",
            formula=Formula.SEARCHED,
            inputs=(
                entered("lot", lot, "plants", "the plan"),
                worked("lots_more_with_room", tally.room_for(column), "lots"),
                worked("one_lot_more_costs", tally.change_of(column, 1), _UNIT),
                worked("one_lot_fewer_costs", tally.change_of(column, -1), _UNIT),
            ),
            children=kept,
            notes=notes,
            on=sowing.sow_on,
        )

    def _given(self, number: int, column: int, week: int, share: float, plants: int) -> Explanation:
        model = self.plan.model
        line = model.lines[number]
        bare = Explanation(
            title="harvest of a sowing",
            about=f"{self._crop(line)}, {self._sown_on(column)}",
            value=0.0,
            unit=line.unit.value,
            formula=Formula.SOWN_HARVEST,
            inputs=(
                worked("plants", plants, "plants"),
                worked("pick_share", share, "1"),
                worked("per_plant", line.per_plant, f"{line.unit.value}/plant"),
                self.ground.figure("marketable_share", f"crop/{model.crops[line.crop]}/marketable_share"),
            ),
            on=model.ruler.week_start(model.first_week + week),
        )
        return figured(bare)

    def _sown_on(self, column: int) -> str:
        model = self.plan.model
        return model.ruler.date_of(int(model.columns.sow_day[column])).isoformat()

    # --- weeks ---

    def wanted(self, number: int, week: int) -> Explanation:
        """Return why so much of a crop is wanted in a week."""
        model = self.plan.model
        line, at = model.lines[number], model.first_week + week
        wants = wants_of(self.ground.farm.targets)
        key = model.crops[line.crop]
        return why_wanted(self.ground, wants, key, line.unit, at, float(line.wanted[week]))

    def harvest(self, number: int, week: int) -> Explanation:
        """Return what the plan brings of a crop in a week: sowing by sowing, and what stands already."""
        model, line = self.plan.model, self.plan.model.lines[number]
        plants = self._tally().plants
        parts: list[Explanation] = []
        for column in np.flatnonzero((model.columns.crop == line.crop) & (plants > 0)).tolist():
            weeks, shares = model.columns.picks.of(column)
            parts += [
                self._given(number, column, week, share, int(plants[column]))
                for share in shares[weeks == week].tolist()
            ]
        value = self.plan.weeks[week].lines[number].harvest
        at, standing = model.first_week + week, float(line.fixed[week])
        if standing:
            key = model.crops[line.crop]
            parts.append(
                why_sold(self._fixed, key, line.unit, at, standing, title="harvest of what stands already")
            )
        found = summed("harvest of the plan", self._crop(line), value, line.unit.value, parts)
        return replace(found, on=model.ruler.week_start(at))

    @cached_property
    def _fixed(self) -> Ground:
        """The farm without the batches whose place the plan takes."""
        model = self.plan.model
        until_on = model.ruler.week_start(model.first_week + model.weeks)
        stays = fixed_part(self.ground.farm, from_on=model.from_on, until_on=until_on)
        return ground_of(stays, self.ground.forecaster)

    def today(self, number: int, week: int) -> Explanation:
        """Return what today's plan brings of a crop in a week."""
        model, line = self.plan.model, self.plan.model.lines[number]
        key, at = model.crops[line.crop], model.first_week + week
        share = self.ground.catalogue.crops[key].marketable_share
        value = float(supply_by_week(self.ground.forecast, key, line.unit, share)[at])
        return why_sold(self.ground, key, line.unit, at, value, title="harvest of today's plan")

    def meets(self, number: int, week: int) -> Explanation:
        """Return what share of what is wanted the plan brings in a week."""
        harvest, wanted = self.harvest(number, week), self.wanted(number, week)
        part, whole = harvest.value or 0.0, wanted.value or 0.0
        return Explanation(
            title="meets what is wanted",
            about=wanted.about,
            value=part / whole,
            unit="1",
            formula=Formula.SHARE,
            inputs=(worked("part", part, harvest.unit), worked("whole", whole, wanted.unit)),
            children=(harvest, wanted),
            on=wanted.on,
        )
