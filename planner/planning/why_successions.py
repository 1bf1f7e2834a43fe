"""Why a succession is sown on its day, with so many plants and seeds, and what comes of it week by week."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import partial
from typing import Final

from planner.farm.crops import Phase, Stage, TargetUnit
from planner.farm.farm import Farm, by_id
from planner.forecast.engine import Forecaster
from planner.forecast.formed import pick_share
from planner.forecast.values import Ruler
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.batches import batch_input, germination_input, why_first_pick, why_seeds, why_stage
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, worked
from planner.forecast.why.many import MOST_PARTS
from planner.forecast.why.milestones import why_stage_first
from planner.forecast.why.values import Explanation, Input, Note, NoteKind
from planner.planning.answering import Maker, stated, summed
from planner.planning.proposal import Proposal, Sowing, WeekSupply
from planner.planning.seeding import LossRule
from planner.planning.wanted import Want
from planner.planning.why_farms import ground_of
from planner.planning.why_supply import why_sold, why_wanted

_TOTAL_TITLES: Final = {"seeds": "seeds of all sowings", "plants": "plants of all sowings"}


def succession_whys(
    farm: Farm, forecaster: Forecaster, wants: Sequence[Want], found: Proposal
) -> dict[str, Maker]:
    """Return why the sowings of a proposal are what they are, and the weeks it foresees.

    The farm is the one that the proposal was made for; it is foreseen once more with it.
    """
    taken = frozenset(found.removed)
    after = replace(
        farm,
        batches=(*(one for one in farm.batches if one.id not in taken), *found.batches),
        placements=(*(run for run in farm.placements if run.batch not in taken), *found.placements),
    )
    ground = ground_of(after, forecaster)
    why = _Successions(ground, tuple(wants), found)
    whys: dict[str, Maker] = {}
    for one in found.sowings:
        for what, maker in why.of_sowing(one):
            whys[sowing_name(one, what)] = maker
    whys |= {f"proposal {what}": maker for what, maker in why.of_whole()}
    for week in found.weeks:
        whys[week_name(ground.forecast.ruler, week, "wanted")] = partial(why.wanted, week)
        whys[week_name(ground.forecast.ruler, week, "foreseen")] = partial(why.foreseen, week)
    return whys


def sowing_name(one: Sowing, what: str) -> str:
    """Return what a figure of a sowing is called: `what` is "sow-on", "plants", "seeds" and so on."""
    return f"sowing {one.batch.code} {what}"


def week_name(ruler: Ruler, week: WeekSupply, what: str) -> str:
    """Return what a week's amount is called: `what` is "wanted" or "foreseen"."""
    return f"week {ruler.week_name(week.week)} {week.crop} {week.unit.value} {what}"


@dataclass(frozen=True)
class _Successions:
    """A proposal with the farm as it would be."""

    ground: Ground
    wants: tuple[Want, ...]
    found: Proposal

    def of_sowing(self, one: Sowing) -> Iterator[tuple[str, Maker]]:
        """Yield what can be asked of a sowing."""
        row = self.ground.row(one.batch.id)
        yield "sow-on", partial(self.sow_on, one, row)
        yield "plants", partial(self.plants, one, row)
        yield "seeds", partial(self.seeds, one, row)
        if one.seeding.trays:
            yield "trays", partial(self.trays, one, row)
        if one.move_on is not None:
            yield "move-on", partial(why_stage_first, self.ground, row, Stage.BED)
        yield "first-pick", partial(why_first_pick, self.ground, row)
        yield "last-pick", partial(why_stage, self.ground, row, Stage.PICKING)

    def sow_on(self, one: Sowing, row: int) -> Explanation:
        """Return why it is sown so many days before it is wanted."""
        pick = why_first_pick(self.ground, row)
        days = pick.value or 0.0
        if one.wanted_on is None:
            given = entered("value", 0.0, "d", one.batch.code)
            return replace(
                stated("days before the day given", one.batch.code, given, children=(pick,)), on=one.sow_on
            )
        early = float((one.wanted_on - one.first_pick_on).days)
        return Explanation(
            title="days sown before it is wanted",
            about=one.batch.code,
            value=float((one.wanted_on - one.sow_on).days),
            unit="d",
            formula=Formula.DAYS_AHEAD,
            inputs=(worked("days_to_first_pick", days, "d"), worked("days_ready_early", early, "d")),
            children=(pick,),
            notes=tuple(_early_notes(one, early)),
            on=one.sow_on,
        )

    def plants(self, one: Sowing, row: int) -> Explanation:
        """Return why so many plants: what is missing over what one gives, or what covers the weeks."""
        batch = one.batch
        less = batch.plants < one.wanted_plants
        values = (("wanted", float(one.wanted_plants)), ("sown", float(batch.plants)))
        notes = (Note(kind=NoteKind.LESS_ROOM, values=values),) if less else ()
        if one.wanted_on is None:
            return stated(
                "plants", batch.code, entered("value", batch.plants, "plants", batch.code), notes=notes
            )
        if not one.per_plant or batch.plants != one.wanted_plants:
            return self._covering(one, row, notes)
        return Explanation(
            title="plants",
            about=batch.code,
            value=float(batch.plants),
            unit="plants",
            formula=Formula.PLANTS_WANTED,
            inputs=(
                worked("missing", one.missing, self._unit(one).value),
                worked("per_plant", one.per_plant, f"{self._unit(one).value}/plant"),
            ),
            children=(self._gives(one, row), *self._weeks_of(one)),
            notes=notes,
            on=one.wanted_on,
        )

    def _covering(self, one: Sowing, row: int, notes: tuple[Note, ...]) -> Explanation:
        """Return plants that were found by covering weeks, or by the room there was."""
        return Explanation(
            title="plants",
            about=one.batch.code,
            value=float(one.batch.plants),
            unit="plants",
            formula=Formula.PLANTS_COVER,
            inputs=(
                worked("wanted_plants", one.wanted_plants, "plants"),
                *(
                    self.ground.figure(name, f"coefficient/successions/{name}")
                    for name in ("headroom_share", "most_over_share", "slack_share")
                ),
            ),
            children=(self._gives(one, row), *self._weeks_of(one)),
            notes=notes,
            on=one.wanted_on,
        )

    def _unit(self, one: Sowing) -> TargetUnit:
        units = [want.unit for want in self.wants if want.crop == one.batch.crop]
        return units[0] if units else TargetUnit.HEADS

    def _gives(self, one: Sowing, row: int) -> Explanation:
        """Return what one plant gives within the plan, as fit for sale."""
        ground, batch = self.ground, one.batch
        forecast = ground.forecast
        profile = forecast.profiles[int(forecast.batches.profile[row])]
        share = pick_share(forecast, row, first_day=0, last_day=forecast.ruler.days)
        inputs: list[Input] = [
            batch_input(ground, batch, "bed_survival_share"),
            ground.figure("marketable_share", f"crop/{batch.crop}/marketable_share"),
            worked("pick_share", share, "1"),
        ]
        weighed = self._unit(one) is TargetUnit.KG
        if weighed:
            inputs += [
                worked("yield_g_per_plant", profile.yield_g_per_plant, "g"),
                worked("size_share", float(forecast.batches.ripe[row]), "1"),
            ]
        bare = Explanation(
            title="what one plant gives",
            about=batch.code,
            value=0.0,
            unit=f"{self._unit(one).value}/plant",
            formula=Formula.GIVES_KG if weighed else Formula.GIVES_HEADS,
            inputs=tuple(inputs),
        )
        return figured(bare)

    def _weeks_of(self, one: Sowing) -> Iterator[Explanation]:
        """Yield what is wanted of the crop in the week that a sowing is for."""
        for week in self.found.weeks:
            name = self.ground.forecast.ruler.week_name(week.week)
            if week.crop == one.batch.crop and name == one.harvest_week:
                yield self.wanted(week)
                yield self.foreseen(week)

    # --- seeds ---

    def seeds(self, one: Sowing, row: int) -> Explanation:
        """Return why so many seeds: those needed, in whole pots, in full trays where that is wished."""
        seeding = one.seeding
        needed = self._needed(one, row)
        if seeding.spare_seeds == 0:
            return needed
        return Explanation(
            title="seeds",
            about=one.batch.code,
            value=float(seeding.seeds),
            unit="seeds",
            formula=Formula.SEEDS_IN_POTS,
            inputs=(
                worked("pots", seeding.pots, "pots"),
                entered("seeds_a_pot", seeding.rule.per_pot, "seeds", one.batch.code),
            ),
            children=(needed,),
            on=one.sow_on,
        )

    def _needed(self, one: Sowing, row: int) -> Explanation:
        seeding, rule = one.seeding, one.seeding.rule
        by_share = rule.rule is LossRule.DIVIDE
        known = why_seeds(self.ground, row)
        losses = (
            self.ground.figure("survival_share", f"crop/{one.batch.crop}/nursery_survival_share")
            if by_share
            else entered("allowance", rule.allowance, "1", one.batch.code)
        )
        if by_share and losses.value != rule.survival:
            losses = worked("survival_share", rule.survival, "1")
        tested = replace(germination_input(self.ground, one.batch), name="tested_share")
        return Explanation(
            title="seeds",
            about=one.batch.code,
            value=float(seeding.seeds_needed),
            unit="seeds",
            formula=Formula.SEEDS_SHARE if by_share else Formula.SEEDS_ADDED,
            inputs=(
                worked("plants", seeding.plants, "plants"),
                worked("germination_share", rule.germination, "1"),
                losses,
                tested,
            ),
            children=known.children,
            notes=known.notes,
            on=one.sow_on,
        )

    def trays(self, one: Sowing, row: int) -> Explanation:
        """Return why so many trays: a cell a pot."""
        seeding = one.seeding
        return Explanation(
            title="trays",
            about=one.batch.code,
            value=float(seeding.trays),
            unit="trays",
            formula=Formula.FULL_UNITS,
            inputs=(
                worked("pots", seeding.pots, "pots"),
                entered("cells_a_tray", seeding.rule.per_tray, "cells", self._nursery(one)),
            ),
            children=(self.seeds(one, row),),
            on=one.sow_on,
        )

    def _nursery(self, one: Sowing) -> str:
        """Return the name of the bed in which a sowing is raised."""
        beds = by_id(self.ground.farm.beds)
        raised = (run for run in self.found.placements if run.phase is Phase.NURSERY)
        return next((beds[run.bed].name for run in raised if run.batch == one.batch.id), "")

    # --- the whole ---

    def of_whole(self) -> Iterator[tuple[str, Maker]]:
        """Yield what can be asked of the proposal as a whole."""
        found = self.found.sowings
        yield "seeds", partial(self._total, "seeds", found, self.seeds)
        yield "plants", partial(self._total, "plants", found, self.plants)
        for crop in dict.fromkeys(week.crop for week in self.found.weeks if week.wanted > 0):
            yield f"even {crop}", partial(self._even, crop)
        if self.found.nursery:
            yield "nursery free", self._free_cells

    def _total(
        self, unit: str, found: Sequence[Sowing], why: Callable[[Sowing, int], Explanation]
    ) -> Explanation:
        parts = [why(one, self.ground.row(one.batch.id)) for one in found]
        return summed(_TOTAL_TITLES[unit], "", sum(one.value or 0.0 for one in parts), unit, parts)

    def _even(self, crop: str) -> Explanation:
        """Return the share of weeks whose supply lies near what is wanted."""
        within = self.ground.figure("within_share", "coefficient/successions/even_share")
        weeks = tuple(week for week in self.found.weeks if week.crop == crop and week.wanted > 0)
        near = [abs(week.foreseen - week.wanted) <= within.value * week.wanted for week in weeks]
        return Explanation(
            title="weeks near what is wanted",
            about=self.ground.catalogue.crops[crop].name,
            value=sum(near) / len(weeks),
            unit="1",
            formula=Formula.SHARE,
            inputs=(worked("part", sum(near), "weeks"), worked("whole", len(weeks), "weeks"), within),
            children=tuple(self.foreseen(week) for week, even in zip(weeks, near, strict=True) if not even)[
                :MOST_PARTS
            ],
        )

    def _free_cells(self) -> Explanation:
        """Return how many nursery cells stay free in the fullest week."""
        week = min(self.found.nursery, key=lambda one: one.free)
        return Explanation(
            title="nursery cells free in the fullest week",
            about="",
            value=float(week.free),
            unit="cells",
            formula=Formula.FREE,
            inputs=(worked("cells", week.cells, "cells"), worked("held", week.held, "cells")),
            on=self.ground.forecast.ruler.week_start(week.week),
        )

    # --- weeks ---

    def wanted(self, week: WeekSupply) -> Explanation:
        """Return why so much is wanted of a crop in a week."""
        return why_wanted(self.ground, self.wants, week.crop, week.unit, week.week, week.wanted)

    def foreseen(self, week: WeekSupply) -> Explanation:
        """Return why so much is foreseen of a crop in a week, as fit for sale."""
        return why_sold(self.ground, week.crop, week.unit, week.week, week.foreseen, title="foreseen")


def _early_notes(one: Sowing, early: float) -> Iterator[Note]:
    if early > 0:
        yield Note(kind=NoteKind.READY_EARLY, values=(("days", early),))
    shifted = one.sown_early_days + one.moved_early_days
    if shifted:
        yield Note(kind=NoteKind.WORK_DAYS, values=(("days", float(shifted)),))
