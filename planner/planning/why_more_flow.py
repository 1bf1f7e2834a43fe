"""Why more beds ask for so much flow, head and power, and weigh so much."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from planner.farm.species import BedKind
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, worked
from planner.forecast.why.values import Explanation, Input
from planner.planning.answering import stated, summed
from planner.planning.expansion.surroundings import KG_PER_M3
from planner.planning.expansion.verdicts import Question

_ADVICE: Final = "coefficient/advice/"
_SIZING: Final = "coefficient/sizing/"
_CM_PER_M: Final = 100.0
_L_PER_M3: Final = 1000.0


@dataclass(frozen=True)
class MoreFlow:
    """A farm with beds that are to be added."""

    ground: Ground
    question: Question

    def flow(self) -> Explanation:
        """Return the flow of tanks and of all beds, the new ones too."""
        farm, question = self.ground.farm, self.question
        turnover = self.ground.figure("times_an_hour", f"{_ADVICE}pump_tank_turnover_per_h")
        parts = [
            self._turned(tank.name, entered("litres", tank.volume_l, "L", tank.name), turnover)
            for tank in farm.tanks
            if tank.loop == question.loop
        ]
        beds = [
            (bed.name, bed.kind, bed.area_m2, bed.depth_cm) for bed in farm.beds if bed.loop == question.loop
        ]
        beds.append(("more beds", question.kind, question.area_m2, question.depth_cm))
        parts += [self._of_bed(*bed) for bed in beds if bed[1] is not BedKind.NURSERY]
        return summed("flow needed", "", sum(one.value or 0.0 for one in parts), "L/h", parts)

    def _of_bed(self, name: str, kind: BedKind, area_m2: float, depth_cm: float | None) -> Explanation:
        media = kind is BedKind.MEDIA
        usual = self.ground.figure(
            "depth_m", f"{_SIZING}{'media_bed_depth' if media else 'raft_water_depth'}"
        )
        depth_m = usual.value if depth_cm is None else depth_cm / _CM_PER_M
        litres = area_m2 * depth_m * _L_PER_M3
        more: list[Input] = [entered("area_m2", area_m2, "m²", name)]
        more.append(usual if depth_cm is None else entered("depth_m", depth_m, "m", name))
        if media:
            voids = self.ground.figure("void_share", f"{_SIZING}media_void_share")
            litres *= voids.value
            more.append(voids)
        path = "pump_media_fillings_per_h" if media else "pump_raft_turnover_per_h"
        times = self.ground.figure("times_an_hour", _ADVICE + path)
        return self._turned(name, worked("litres", litres, "L"), times, *more)

    def _turned(self, about: str, litres: Input, times: Input, *more: Input) -> Explanation:
        bare = Explanation(
            title="flow",
            about=about,
            value=0.0,
            unit="L/h",
            formula=Formula.TURNOVER,
            inputs=(litres, times, *more),
        )
        return figured(bare)

    def flow_with_reserve(self) -> Explanation:
        """Return the flow with some in reserve."""
        flow = self.flow()
        return Explanation(
            title="flow needed with reserve",
            about="",
            value=0.0,
            unit="L/h",
            formula=Formula.WITH_RESERVE,
            inputs=(
                worked("amount", flow.value or 0.0, "L/h"),
                self.ground.figure("reserve_share", f"{_ADVICE}pump_reserve_share"),
            ),
            children=(flow,),
        )

    def head(self) -> Explanation:
        """Return the height the water is lifted, and what pipes take."""
        question = self.question
        head = question.head_m or 0.0
        share = self.ground.figure("friction_share", f"{_ADVICE}pump_friction_share")
        known = question.friction_m
        friction = (
            (worked("friction_m", head * share.value, "m"), share)
            if known is None
            else (entered("friction_m", known, "m", "more beds"),)
        )
        bare = Explanation(
            title="head with friction",
            about="",
            value=0.0,
            unit="m",
            formula=Formula.HEAD,
            inputs=(entered("head_m", head, "m", "more beds"), *friction),
        )
        return figured(bare)

    def pump(self) -> Explanation:
        """Return what the pump gives at that head."""
        points = () if self.question.pump is None else self.question.pump.points
        return Explanation(
            title="flow of the pump",
            about="",
            value=0.0,
            unit="L/h",
            formula=Formula.CURVE,
            inputs=tuple(entered(f"at_{head:g}_m", flow, "L/h", "the pump") for head, flow in points),
            children=(self.head(),),
        )

    def _given(self, title: str, value: float | None, unit: str) -> Explanation:
        return stated(title, "", entered("value", value or 0.0, unit, "more beds"))

    def power(self) -> Explanation:
        """Return the power of lamps and pumps to be added."""
        question = self.question
        parts = (
            self._given("power of lamps", question.lamps_w, "W"),
            self._given("power of pumps", question.pump_w, "W"),
        )
        return summed("power wanted", "", sum(one.value or 0.0 for one in parts), "W", parts)

    def water(self) -> Explanation:
        """Return what the water weighs on a square metre."""
        return Explanation(
            title="weight of the water",
            about="",
            value=0.0,
            unit="kg/m²",
            formula=Formula.WATER_LOAD,
            inputs=(
                entered("depth_cm", self.question.depth_cm or 0.0, "cm", "more beds"),
                worked("kg_per_m3", KG_PER_M3, "kg/m³"),
            ),
        )

    def water_kg(self) -> Explanation:
        """Return what all the water weighs."""
        water = self.water()
        known = figured(water)
        return Explanation(
            title="weight of all the water",
            about="",
            value=0.0,
            unit="kg",
            formula=Formula.OVER_AREA,
            inputs=(
                worked("kg_per_m2", known.value or 0.0, "kg/m²"),
                entered("area_m2", self.question.area_m2, "m²", "more beds"),
            ),
            children=(known,),
        )

    def load(self) -> Explanation:
        """Return the load on a square metre."""
        water = self.water()
        parts = (
            figured(water),
            self._given("frame, liner and rafts", self.question.dry_kg_per_m2, "kg/m²"),
        )
        return summed("load", "", sum(one.value or 0.0 for one in parts), "kg/m²", parts)
