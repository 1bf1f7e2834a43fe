"""Asks for remedies: tries repairs, works their effect out by forecasting, offers the few that help.

Must know nothing of words or widgets.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from datetime import date
from typing import Final

from planner.farm.changes import ChangeSet, applied, with_places
from planner.farm.checks import farm_faults
from planner.farm.farm import Farm
from planner.farm.faults import Fault
from planner.farm.mark import plan_mark
from planner.farm.withdrawal import barred_harvests
from planner.forecast.checks import all_faults
from planner.forecast.engine import Forecaster
from planner.forecast.occupancy import HoldKeeper
from planner.forecast.values import Flag, FlagKind, Forecast
from planner.planning.remedies.appetite import overfed
from planner.planning.remedies.case import Case
from planner.planning.remedies.effects import Span, effect_of, severity, span_of_flag
from planner.planning.remedies.fish import to_hold_feed, to_thin_tank
from planner.planning.remedies.plantings import to_be_ripe, to_ease_demand, to_find_places
from planner.planning.remedies.values import ORDER, Candidate, Effect, Remedy, RemedyKind, SideEffect
from planner.planning.remedies.water import to_bring_elements

_MOST: Final = 5
_Makers = tuple[Callable[[Case], Iterator[Candidate]], ...]

_MAKERS: Final[dict[FlagKind, _Makers]] = {
    FlagKind.SHORT_SUPPLY: (to_ease_demand, to_bring_elements, to_hold_feed),
    FlagKind.FEED_FALLS: (to_ease_demand, to_bring_elements, to_hold_feed),
    FlagKind.DENSITY: (to_thin_tank,),
    FlagKind.UNPLACED: (to_find_places,),
    FlagKind.SHORT_PLACES: (to_find_places,),
    FlagKind.GIVEN_UP: (to_be_ripe,),
}

REPAIRABLE: Final = tuple(_MAKERS)
"""Kinds of flags there are remedies for."""


class Soundness:
    """Tells the faults of farms that come from one farm; looks only at what is other where that has none.

    One serves all flags of a farm, for looking a large farm through takes longer than a forecast of it.
    """

    def __init__(self, farm: Farm, forecaster: Forecaster) -> None:
        """Look the farm through that the others come from."""
        self._forecaster, self._keeper = forecaster, HoldKeeper()
        self._sound = None if farm_faults(farm) else farm

    def faults(self, farm: Farm) -> tuple[Fault, ...]:
        """Return every fault of a farm that comes from the one."""
        return all_faults(farm, self._forecaster, sound=self._sound, keeper=self._keeper)


def remedies(
    farm: Farm,
    forecaster: Forecaster,
    flag: Flag,
    *,
    today: date | None = None,
    soundness: Soundness | None = None,
) -> tuple[Remedy, ...]:
    """Return up to five repairs of what a flag warns of, the cheapest first; none for other flags.

    Each is of another kind, and each makes the flagged matter better on a forecast of the changed farm; of
    several of a kind the one that leaves least of it, then loses least harvest, then changes feed least.
    Nothing before `today`, or else the plan, is changed, and what lies wholly before it has no remedies. No
    remedy makes a farm faulty, a tank fuller than its limit that was not, or feeds fish above what they eat.
    Who asks about several flags of a farm hands in the `soundness` of it.
    """
    makers = _MAKERS.get(flag.kind, ())
    if not makers:
        return ()
    case = _case(farm, forecaster, flag, today)
    if case.last_on < case.from_on:
        return ()
    judge = _Judge(case, soundness or Soundness(farm, forecaster))
    found = [judge.judged(candidate) for make in makers for candidate in make(case)]
    kept = _few([remedy for remedy in found if remedy is not None], judge)
    forecaster.preview(farm)  # so that questions about the last forecast are about the farm again
    return kept


def _case(farm: Farm, forecaster: Forecaster, flag: Flag, today: date | None) -> Case:
    forecast = forecaster.forecast(farm)
    watch = round(forecaster.catalogue.figure("coefficient/advice/remedy_watch_weeks").value)
    return Case(
        farm=farm,
        forecaster=forecaster,
        forecast=forecast,
        flag=flag,
        span=span_of_flag(farm, flag, forecast, watch_weeks=watch),
        from_on=farm.settings.plan_from if today is None else max(today, farm.settings.plan_from),
        mark=plan_mark(farm),
    )


class _Judge:
    """Forecasts changed farms and says how they stand to the farm as it is."""

    def __init__(self, case: Case, soundness: Soundness) -> None:
        self._case, self._soundness = case, soundness
        self._before = self._effect(case.farm, case.forecast)
        self._severity = self._severity_of(case.farm, case.forecast, case.span)
        self._too_full = _too_full(case.forecast)

    def judged(self, candidate: Candidate) -> Remedy | None:
        """Return the remedy, None when it does not help."""
        case = self._case
        changes = with_places(case.farm, candidate.change_set.changes)
        change_set = ChangeSet(title=candidate.change_set.title, changes=changes)
        farm = applied(case.farm, change_set)
        events = change_set.ids("fish event")
        if any(harvest.id in events for harvest, _treatment in barred_harvests(farm.fish_events)):
            return None  # treated fish are not advised to be eaten
        forecast = case.forecaster.forecast(farm)
        left = 0.0 if _is_gone(case.flag, farm) else self._severity_of(farm, forecast, case.span)
        if left >= self._severity:
            return None
        return self._remedy(candidate, change_set, self._effect(farm, forecast), left)

    def does_harm(self, remedy: Remedy) -> bool:
        """Tell whether a remedy makes faults, fills a tank too full, or feeds fish above what they eat.

        Looks at the whole farm again, so it is asked of few.
        """
        forecaster = self._case.forecaster
        farm = applied(self._case.farm, remedy.change_set)
        forecast = forecaster.forecast(farm)
        return bool(
            _too_full(forecast) - self._too_full
            or overfed(self._case.forecast, farm, forecast, forecaster)
            or self._soundness.faults(farm)
        )

    def _remedy(
        self, candidate: Candidate, change_set: ChangeSet, after: Effect, left: float
    ) -> Remedy | None:
        before = self._before
        elsewhere = after.plan_weeks_short - after.weeks_short - before.plan_weeks_short + before.weeks_short
        if self._case.flag.kind is FlagKind.SHORT_SUPPLY and after.plan_weeks_short > before.plan_weeks_short:
            return None
        side_effects = candidate.side_effects
        if elsewhere > 0:
            side_effects = (*side_effects, SideEffect.MORE_WEEKS_SHORT_ELSEWHERE)
        return Remedy(
            kind=candidate.kind,
            change_set=change_set,
            details=candidate.details,
            before=before,
            after=after,
            severity_before=self._severity,
            severity_after=left,
            side_effects=side_effects,
            cautions=candidate.cautions,
        )

    def _effect(self, farm: Farm, forecast: Forecast) -> Effect:
        return effect_of(farm, forecast, self._case.span, self._case.forecaster)

    def _severity_of(self, farm: Farm, forecast: Forecast, span: Span) -> float:
        return severity(farm, forecast, self._case.flag, span, self._case.forecaster)


def _is_gone(flag: Flag, farm: Farm) -> bool:
    """Tell whether the batch that a flag is about has been taken out."""
    about_batch = flag.kind in (FlagKind.UNPLACED, FlagKind.SHORT_PLACES, FlagKind.GIVEN_UP)
    return about_batch and all(batch.id != flag.about for batch in farm.batches)


def _too_full(forecast: Forecast) -> frozenset[str]:
    """Return the tanks that are flagged as too full."""
    return frozenset(flag.about for flag in forecast.flags if flag.kind is FlagKind.DENSITY)


def _merit(remedy: Remedy) -> tuple[float, float, float]:
    """Return what is left of the matter, harvest lost, and how much the feed changes, in whole grams."""
    feed_g = abs(remedy.after.feed_g - remedy.before.feed_g)
    return remedy.severity_after, float(-round(remedy.harvest_change_g)), float(round(feed_g))


def _few(found: Sequence[Remedy], judge: _Judge) -> tuple[Remedy, ...]:
    """Return the remedies that leave least and do no harm, one of a kind, the cheapest first."""
    kept: dict[RemedyKind, Remedy] = {}
    for remedy in sorted(found, key=lambda one: (*_merit(one), ORDER.index(one.kind))):
        if len(kept) < _MOST and remedy.kind not in kept and not judge.does_harm(remedy):
            kept[remedy.kind] = remedy
    return tuple(sorted(kept.values(), key=lambda one: ORDER.index(one.kind)))
