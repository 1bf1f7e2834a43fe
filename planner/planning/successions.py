"""Plans successions: from what is wanted back to what to sow when, with places for every stage.

Sowing days are found in the table of first picks (`timing`), numbers of plants from what one plant gives.
Crops picked many times are covered week by week (`cover`). What is locked or sown before a given day is
left alone, and counts. Must know nothing of Qt, files or the clock.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Final

import numpy as np

from planner.farm.codes import codes_of
from planner.farm.crops import Batch, TargetUnit
from planner.farm.farm import DAYS_PER_WEEK, Farm
from planner.farm.fields import Id
from planner.farm.ids import new_id
from planner.farm.species import HarvestKind
from planner.forecast.engine import Forecaster
from planner.forecast.values import Floats, Forecast
from planner.planning.cover import Margin, cover
from planner.planning.grounds import Ground, beds_between, grounds_for
from planner.planning.outcome import G_PER_KG, Settling, proposal_of, supply_by_week
from planner.planning.placement import IdMaker
from planner.planning.proposal import Note, NoteKind, Proposal
from planner.planning.sowing_day import Choice, DayChooser, Need
from planner.planning.succession_wish import SuccessionWish, check_wants
from planner.planning.timing import Timer
from planner.planning.wanted import Due, Order, Rhythm, RhythmOf, Want, dues_of, sowing_days, wants_of
from planner.science.schedule import whole_up

_NOISE: Final = 1e-9
_SMALLER_TRIES: Final = 3


@dataclass(frozen=True, slots=True, kw_only=True)
class _Offer:
    choice: Choice
    per_plant: Floats
    wanted_day: int


def propose(
    farm: Farm,
    forecaster: Forecaster,
    wants: Sequence[Want] | None = None,
    *,
    wish: SuccessionWish | None = None,
    make_id: IdMaker = new_id,
) -> Proposal:
    """Return what to sow for what is wanted, by default the targets of the farm.

    Raises `FarmFaultError` for a crop that is not in the catalogue, for a crop wanted in two units, and for
    rules that cannot be read.
    """
    chosen = wish or SuccessionWish()
    wanted = wants_of(farm.targets) if wants is None else tuple(wants)
    check_wants(wanted, forecaster.catalogue_for(farm).crops)
    return _Planning(farm, forecaster, wanted, chosen, make_id).proposal()


class _Planning:
    """One planning of one farm."""

    def __init__(
        self,
        farm: Farm,
        forecaster: Forecaster,
        wants: Sequence[Want],
        wish: SuccessionWish,
        make_id: IdMaker,
    ) -> None:
        self._farm, self._forecaster, self._wants, self._wish = farm, forecaster, wants, wish
        self._make_id = make_id
        self._timer = Timer(farm, forecaster)
        self._ruler = self._timer.ruler
        self._crops = self._timer.catalogue.crops
        self._from_on = wish.from_on or farm.settings.plan_from
        self._from_day = self._ruler.day_of(self._from_on)
        self._notes: list[Note] = []
        planned = {want.crop for want in wants if not isinstance(want, Order)}
        removed = [batch.id for batch in farm.batches if wish.replace_old and self._makes_way(batch, planned)]
        gone = frozenset(removed)
        self._removed = tuple(removed)
        self._base = replace(
            farm,
            batches=tuple(batch for batch in farm.batches if batch.id not in gone),
            placements=tuple(run for run in farm.placements if run.batch not in gone),
        )
        self._standing: Forecast = forecaster.preview(self._base)
        self._choosers: dict[tuple[str, Ground], DayChooser] = {}

    def _makes_way(self, batch: Batch, planned: set[str]) -> bool:
        return batch.crop in planned and not batch.locked and batch.sow_on >= self._from_on

    def proposal(self) -> Proposal:
        """Return the proposal: needs of all crops are placed together, by the day they come."""
        settling = Settling(
            self._base,
            self._forecaster,
            rules=self._wish.rules,
            seeds=self._wish.seeds,
            codes=codes_of(self._farm),
            make_id=self._make_id,
            between=self._between(),
        )
        grounds = self._grounds()
        needs = [need for crop in grounds for need in self._needs(crop, grounds[crop][0])]
        without: list[Need] = []
        number = 0
        while needs:
            number += 1
            refused = settling.settle(sorted(needs, key=_by_sowing))
            # What found no room moves on to the next ground of its crop, timed for the light there.
            needs = []
            for need, batch, refusal in refused:
                more = grounds[batch.crop][number:]
                again = self._again(need, batch.crop, more[0]) if more else None
                if again is None:
                    settling.refuse(batch, refusal)
                    without.append(need)
                else:
                    needs.append(again)
        self._sow_less(settling, without, grounds)
        self._note_poor_stands(settling)
        return proposal_of(
            settling,
            crops=self._crops,
            removed=self._removed,
            from_on=self._from_on,
            even_share=self._timer.catalogue.figure("coefficient/successions/even_share").value,
            dues=self._dues(),
            notes=self._notes,
        )

    def _sow_less(
        self, settling: Settling, without: Sequence[Need], grounds: Mapping[str, tuple[Ground, ...]]
    ) -> None:
        """Put in as many plants as there is room for on any ground, where there is none for all of them."""
        pending = [(need, need.plants) for need in without]
        for _ in range(_SMALLER_TRIES):
            room = dict.fromkeys(range(len(pending)), 0)
            done: set[int] = set()
            for number in range(max(map(len, grounds.values()), default=0)):
                trial = self._trial(pending, done, grounds, number)
                refused = {id(need): refusal for need, _, refusal in settling.settle(list(trial.values()))}
                for place, need in trial.items():
                    refusal = refused.get(id(need))
                    if refusal is None:
                        done.add(place)
                        self._note_less(pending[place][0], need)
                    else:
                        room[place] = max(room[place], need.plants * refusal.free // max(refusal.needed, 1))
            pending = [
                (need, min(room[place], plants - 1))
                for place, (need, plants) in enumerate(pending)
                if place not in done and room[place] > 0 and plants > 1
            ]

    def _trial(
        self,
        pending: Sequence[tuple[Need, int]],
        done: set[int],
        grounds: Mapping[str, tuple[Ground, ...]],
        number: int,
    ) -> dict[int, Need]:
        """Return what is tried on one ground, by its place among what is pending."""
        found = {}
        for place, (need, plants) in enumerate(pending):
            crop = need.choice.batch.crop
            if place not in done and number < len(grounds[crop]):
                again = self._again(need, crop, grounds[crop][number])
                if again is not None:
                    found[place] = replace(again, plants=plants, asked_plants=need.plants)
        return found

    def _note_less(self, need: Need, less: Need) -> None:
        day = less.choice.course.first_pick(less.choice.sow_day)
        figures = {"wanted": float(need.plants), "sown": float(less.plants)}
        self._note(NoteKind.LESS, less.choice.batch.crop, day, **figures)

    def _note_poor_stands(self, settling: Settling) -> None:
        """Note crops that are sown on days so warm that few come up: how many sowings, and the worst."""
        poor = self._timer.catalogue.figure("coefficient/successions/poor_stand_share").value
        found: dict[str, list[tuple[float, int]]] = {}
        for batch in settling.batches:
            choice = settling.of_batch[batch.id][0].choice
            stand = choice.course.stand_share(choice.sow_day)
            if stand < poor:
                found.setdefault(batch.crop, []).append((stand, choice.sow_day))
        for crop, sowings in found.items():
            stand, day = min(sowings)
            self._note(NoteKind.POOR_STAND, crop, day, stand_share=stand, sowings=float(len(sowings)))

    def _grounds(self) -> dict[str, tuple[Ground, ...]]:
        """Return the grounds of every wanted crop, noting those that have none."""
        found = {}
        between = self._between()
        for crop in dict.fromkeys(want.crop for want in self._wants):
            only = self._wish.beds.get(crop, ())
            grounds = grounds_for(self._crops[crop], self._farm, only=only, between=between)
            if grounds:
                found[crop] = grounds
            else:
                self._notes.append(Note(kind=NoteKind.NO_BED, crop=crop))
        return found

    def _between(self) -> frozenset[Id]:
        return beds_between(self._farm, (self._crops[want.crop] for want in self._wants))

    def _dues(self) -> tuple[Due, ...]:
        return tuple(due for want in self._wants for due in dues_of(want, self._ruler))

    def _chooser(self, crop: str, ground: Ground) -> DayChooser:
        key = crop, ground
        if key not in self._choosers:
            like = Batch(
                id=Id(""), code="-", crop=crop, sow_on=self._ruler.start_on, plants=1, bed=ground.beds[0]
            )
            self._choosers[key] = DayChooser(
                self._timer, self._wish.work, like, nursery=ground.nursery, from_day=self._from_day
            )
        return self._choosers[key]

    def _again(self, need: Need, crop: str, ground: Ground) -> Need | None:
        chooser = self._chooser(crop, ground)
        if need.wanted_day is None:
            choice = chooser.sown_by(need.choice.sow_day)
        else:
            choice = chooser.by(need.wanted_day)
        return None if choice is None else replace(need, choice=choice, ground=ground)

    def _needs(self, crop: str, ground: Ground) -> list[Need]:
        dues = sorted((due for due in self._dues() if due.crop == crop), key=_by_day)
        needs = list(self._of_rhythms(crop, ground))
        have = self._given(crop, dues[0].unit) if dues else np.zeros(self._ruler.weeks)
        for need in needs:
            have += self._per_plant(need.choice, dues[0].unit) * need.plants if dues else 0.0
        if self._crops[crop].harvest is HarvestKind.SINGLE:
            needs.extend(self._once(dues, ground, have))
        elif dues:
            needs.extend(self._many_times(dues, ground, have))
        return needs

    def _of_rhythms(self, crop: str, ground: Ground) -> Iterable[Need]:
        """Yield sowings whose days are given."""
        chooser = self._chooser(crop, ground)
        for want in self._wants:
            if want.crop != crop or not isinstance(want, Rhythm) or want.of is not RhythmOf.SOWING:
                continue
            for day in sowing_days(want, self._ruler):
                choice = chooser.sown_by(day) if day >= self._from_day else None
                if choice is None:
                    self._miss(crop, day, want.amount)
                else:
                    yield Need(choice=choice, ground=ground, plants=whole_up(want.amount), wanted_day=None)

    def _given(self, crop: str, unit: TargetUnit) -> Floats:
        """Return what stands anyway gives of a crop by week, as fit for sale.

        Of a crop that is only ordered nothing counts: what stands is taken to be promised already.
        """
        if all(isinstance(want, Order) for want in self._wants if want.crop == crop):
            return np.zeros(self._ruler.weeks)
        return supply_by_week(self._standing, crop, unit, self._crops[crop].marketable_share)

    def _per_plant(self, choice: Choice, unit: TargetUnit) -> Floats:
        """Return what one plant gives in each week, as fit for sale and less what is lost in the bed."""
        profile = choice.course.profile
        share = profile.bed_survival_share * profile.crop.marketable_share
        by_weight = unit is TargetUnit.KG
        if by_weight:
            share *= profile.yield_g_per_plant * choice.course.ripe_share(choice.sow_day) / G_PER_KG
        return choice.course.picked_by_week(choice.sow_day, self._ruler.weeks, weighed=by_weight) * share

    def _once(self, dues: Sequence[Due], ground: Ground, have: Floats) -> Iterable[Need]:
        """Yield a sowing for every week of a crop that is harvested once."""
        for due in dues:
            chooser = self._chooser(due.crop, ground)
            taken = min(have[due.week], due.amount)
            have[due.week] -= taken
            amount = due.amount - taken
            if amount <= _NOISE * due.amount:
                continue
            wanted_day = self._work_day(due, chooser)
            choice = chooser.by(wanted_day)
            if choice is None:
                self._miss(due.crop, wanted_day, amount)
                continue
            self._note_choice(due, choice)
            first_week = choice.course.first_pick(choice.sow_day) // DAYS_PER_WEEK
            per_plant = float(self._per_plant(choice, due.unit).sum())
            if first_week < 0 or per_plant <= 0:
                self._miss(due.crop, wanted_day, amount)
                continue
            yield Need(
                choice=choice,
                ground=ground,
                plants=whole_up(amount / per_plant),
                wanted_day=wanted_day,
                missing=amount,
                per_plant=per_plant,
            )

    def _many_times(self, dues: Sequence[Due], ground: Ground, have: Floats) -> Iterable[Need]:
        """Yield sowings that cover the weeks of a crop that is picked many times."""
        chooser = self._chooser(dues[0].crop, ground)
        wanted = np.zeros(self._ruler.weeks)
        spans: dict[int, tuple[int, int]] = {}
        for due in dues:
            wanted[due.week] += due.amount
            last_day = min(self._work_day(due, chooser), spans.get(due.week, (0, due.last_day))[1])
            spans[due.week] = due.first_day, last_day
        figure = self._timer.catalogue.figure
        margin = Margin(
            headroom=figure("coefficient/successions/headroom_share").value,
            most_over=figure("coefficient/successions/most_over_share").value,
            slack=figure("coefficient/successions/slack_share").value,
        )

        def offers(week: int) -> list[_Offer]:
            return self._offers(chooser, spans[week], dues[0].unit)

        found = cover(wanted, have, offers=offers, margin=margin)
        for week, missing in found.missed:
            self._miss(dues[0].crop, spans[week][1], missing)
        for one in found.sown:
            yield Need(
                choice=one.offer.choice, ground=ground, plants=one.plants, wanted_day=one.offer.wanted_day
            )

    def _offers(self, chooser: DayChooser, span: tuple[int, int], unit: TargetUnit) -> list[_Offer]:
        """Return sowings whose first pick falls into a week, those that begin to give soonest first."""
        first_day, last_day = span
        found: dict[int, _Offer] = {}
        for day in chooser.course.sowings_for(first_day, last_day):
            choice = chooser.on(int(day), wanted_day=last_day, ideal_day=int(day))
            if choice is not None:
                pick = choice.course.first_pick(choice.sow_day)
                per_plant = self._per_plant(choice, unit)
                found.setdefault(pick, _Offer(choice=choice, per_plant=per_plant, wanted_day=last_day))
        return [found[pick] for pick in sorted(found)]

    def _work_day(self, due: Due, chooser: DayChooser) -> int:
        """Return the last day of work by which something is due, its last day where there is none."""
        for day in range(due.last_day, due.first_day - 1, -1):
            if chooser.is_open(day):
                return day
        return due.last_day

    def _note_choice(self, due: Due, choice: Choice) -> None:
        pick = choice.course.first_pick(choice.sow_day)
        if pick < due.first_day:
            self._note(NoteKind.EARLY, due.crop, due.first_day, days=float(due.first_day - pick))
        ripe = choice.course.ripe_share(choice.sow_day)
        if ripe < 1:
            self._note(NoteKind.TOO_SLOW, due.crop, due.first_day, ripe_share=ripe)

    def _miss(self, crop: str, day: int, amount: float) -> None:
        """Note that an amount cannot be had: it would have to be sown before the first day, or not at all."""
        chooser = next(chooser for (key, _), chooser in self._choosers.items() if key == crop)
        latest = chooser.course.latest_for(day)
        soon = latest is None or latest < self._from_day
        kind = NoteKind.TOO_SOON if soon else NoteKind.NO_WORK_DAY
        self._note(kind, crop, day, amount=amount)

    def _note(self, kind: NoteKind, crop: str, day: int, **values: float) -> None:
        week = self._ruler.week_name(day // DAYS_PER_WEEK)
        on = self._ruler.date_of(day)
        self._notes.append(Note(kind=kind, crop=crop, week=week, on=on, values=tuple(values.items())))


def _by_day(due: Due) -> tuple[int, int]:
    return due.week, due.last_day


def _by_sowing(need: Need) -> int:
    return need.choice.sow_day
