"""Why the feed of a loop carries so much extra area in a month, and how much feed more beds would take."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import Final

from planner.farm.species import CropGroup
from planner.forecast.values import Floats, LoopForecast
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.fish import why_feed_mean
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, worked
from planner.forecast.why.many import MOST_PARTS, others_note
from planner.forecast.why.values import Explanation, Input
from planner.planning.expansion.area import extra_area_by_week, feed_lacking_by_week, month_of_week
from planner.planning.expansion.verdicts import MonthArea, Question
from planner.planning.why_bands import band_inputs, feed_asked, reference_input

_WITH_MARGIN: Final = "largest area of every month, with a margin"


@dataclass(frozen=True)
class MoreArea:
    """A loop with an area that is to be added, and the largest area of each month."""

    ground: Ground
    loop: LoopForecast
    question: Question
    area_by_month: tuple[MonthArea, ...]

    def _ends(self, *, high_end: bool) -> tuple[Input, Input]:
        return band_inputs(self.ground, self.loop, "high" if high_end else "low")

    def _ratio(self, *, high_end: bool) -> Input:
        leafy, fruiting = self._ends(high_end=high_end)
        of = leafy if self.question.group is CropGroup.LEAFY else fruiting
        return replace(of, name="ratio_g_per_m2_d")

    def _of_week(self, week: int) -> tuple[Input, ...]:
        """Return feed, protein and what is planted in a week."""
        ruler, loop = self.ground.forecast.ruler, self.loop
        planted = ruler.weekly_mean(loop.planted_m2)[:, week]
        protein = float(ruler.weekly_mean(loop.protein_share)[week])
        return (
            worked("feed_g_per_day", float(ruler.weekly_mean(loop.feed_g)[week]), "g/d"),
            worked("protein_share", protein, "g/g"),
            reference_input(self.ground, loop, protein),
            worked("leafy_m2", float(planted[0]), "m²"),
            worked("fruiting_m2", float(planted[1]), "m²"),
        )

    def _area(self, week: int, *, high_end: bool, title: str = "extra area carried") -> Explanation:
        """Return the extra area that the feed of a week carries."""
        leafy, fruiting = self._ends(high_end=high_end)
        bare = Explanation(
            title=title,
            about=self.loop.name,
            value=0.0,
            unit="m²",
            formula=Formula.AREA_CARRIED,
            inputs=(*self._of_week(week), leafy, fruiting, self._ratio(high_end=high_end)),
            children=(why_feed_mean(self.ground, self.loop, week),),
            on=self.ground.forecast.ruler.week_start(week),
        )
        return figured(bare)

    def month(self, month: MonthArea, *, high_end: bool) -> Explanation:
        """Return the extra area that every week of a month carries: that of its leanest week."""
        ruler = self.ground.forecast.ruler
        by_week = extra_area_by_week(
            self.loop, ruler, self.ground.bands, group=self.question.group, high_end=high_end
        )
        weeks = [n for n in range(ruler.weeks) if month_of_week(ruler, n) == (month.year, month.month)]
        leanest = min(weeks, key=by_week.__getitem__)
        return self._area(leanest, high_end=high_end, title="extra area of the leanest week")

    def every_month(self, *, high_end: bool) -> Explanation:
        """Return the extra area that every month carries: that of the leanest."""
        months = sorted(self.area_by_month, key=lambda one: one.cautious_m2 if high_end else one.most_m2)
        parts = tuple(self.month(one, high_end=high_end) for one in months[:MOST_PARTS])
        return Explanation(
            title=_WITH_MARGIN if high_end else "largest area of every month",
            about=self.loop.name,
            value=min((one.value or 0.0 for one in parts), default=0.0),
            unit="m²",
            formula=Formula.LEAST if parts else Formula.NOTHING,
            children=parts,
        )

    def months_that_carry(self) -> Explanation:
        """Return the months whose feed carries the area."""
        carry = [one for one in self.area_by_month if one.most_m2 >= self.question.area_m2]
        return self._counted("months that carry it", [self.month(one, high_end=False) for one in carry])

    def months(self) -> Explanation:
        """Return the months that were looked at."""
        parts = [self.month(one, high_end=False) for one in self.area_by_month]
        return self._counted("months of the plan", parts)

    def _counted(self, title: str, parts: list[Explanation]) -> Explanation:
        kept = tuple(parts[:MOST_PARTS])
        rest = len(parts) - len(kept)
        return Explanation(
            title=title,
            about=self.loop.name,
            value=float(len(parts)),
            unit="months",
            formula=Formula.COUNTED,
            inputs=(worked("others", rest, "months"),) if rest else (),
            children=kept,
            notes=others_note(rest),
        )

    def feed_of_area(self) -> Explanation:
        """Return the feed that the area takes at the low end of its band."""
        protein = float(self.loop.protein_share.mean())
        return Explanation(
            title="feed that the area takes",
            about=self.loop.name,
            value=0.0,
            unit="g/d",
            formula=Formula.FEED_OF_AREA,
            inputs=(
                entered("area_m2", self.question.area_m2, "m²", "more beds"),
                self._ratio(high_end=False),
                reference_input(self.ground, self.loop, protein),
                worked("protein_share", protein, "g/g"),
            ),
        )

    @cached_property
    def lacking_g(self) -> Floats:
        """Feed that is missing in each week [g/d]."""
        return feed_lacking_by_week(
            self.question.area_m2,
            self.loop,
            self.ground.forecast.ruler,
            self.ground.bands,
            group=self.question.group,
        )

    def lacking(self) -> Explanation:
        """Return the feed that is missing in the week that lacks most."""
        return self.lacking_in(int(self.lacking_g.argmax()))

    def lacking_in(self, week: int) -> Explanation:
        """Return the feed that is missing in a week."""
        feed, protein, _, leafy_m2, fruiting_m2 = self._of_week(week)
        extra = self.question.area_m2
        more = (extra, 0.0) if self.question.group is CropGroup.LEAFY else (0.0, extra)
        asked = feed_asked(
            self.ground,
            self.loop,
            (leafy_m2.value + more[0], fruiting_m2.value + more[1]),
            about=self.loop.name,
            protein_share=protein.value,
        )
        lacking = Explanation(
            title="feed that has to be added",
            about=self.loop.name,
            value=0.0,
            unit="g/d",
            formula=Formula.FEED_LACKING,
            inputs=(worked("asked_g_per_day", asked.value or 0.0, "g/d"), feed),
            children=(asked, why_feed_mean(self.ground, self.loop, week)),
            on=self.ground.forecast.ruler.week_start(week),
        )
        return figured(lacking)
