"""Repairs by what goes into the water: liquor of rotted solids, grams of a salt, of iron, or of a base."""

from __future__ import annotations

import dataclasses
from collections.abc import Iterator, Mapping
from datetime import date, timedelta
from typing import Final

from planner.farm.changes import Change, ChangeSet
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.species import ELEMENTS
from planner.farm.water import Dose, SolidsBatch
from planner.forecast.water.bases import Before, before_base, carbon_dioxide_used, is_slow, owned_bases
from planner.forecast.water.chemistry import chemistry_of
from planner.forecast.water.dosing import dose_cap_eq, dose_figures
from planner.forecast.water.side import water_now
from planner.forecast.water.supplements import GapFill, fill_gap
from planner.planning.remedies.case import Case
from planner.planning.remedies.values import Candidate, Details, RemedyKind, SideEffect

_G_PER_KG: Final = 1000.0
_TINY_G: Final = 1e-6
_BASE_ELEMENTS: Final = ("k", "ca", "mg")
_LIQUOR: Final = ("solids-as-manure",)


def to_bring_elements(case: Case) -> Iterator[Candidate]:
    """Yield repairs that bring what is short in the flagged weeks from elsewhere than the feed."""
    yield from _liquor(case)
    gaps = _gaps(case)
    if gaps:
        yield from _salts(case, gaps)
        yield from _base(case, gaps)


def _liquor(case: Case) -> Iterator[Candidate]:
    """Yield the return of a solids batch that is waiting, and of one still to be made."""
    for solids in case.farm.solids_batches:
        waits = solids.returned_on is None or solids.returned_on > case.first_on
        if solids.loop == case.span.loop and waits and solids.siphoned_on < case.first_on:
            after = dataclasses.replace(solids, returned_on=case.first_on)
            yield _returned(case, Change(before=solids, after=after), solids.code)
    days = round(case.advice("remedy_liquor_days"))
    filled_on = case.first_on - timedelta(days=days)
    if filled_on < max(case.from_on, case.ruler.start_on):
        return
    code = f"SOL-{filled_on.isoformat()}"
    if code in {solids.code for solids in case.farm.solids_batches}:
        return
    fresh = SolidsBatch(
        id=case.new_id("liquor"),
        code=code,
        loop=case.span.loop,
        siphoned_on=filled_on,
        days=days,
        aerated=True,
        returned_on=case.first_on,
    )
    yield _returned(case, Change(after=fresh), code)


def _returned(case: Case, change: Change, code: str) -> Candidate:
    on = case.first_on.isoformat()
    return Candidate(
        kind=RemedyKind.RETURN_LIQUOR,
        change_set=ChangeSet(title=f"Return liquor of {code} on {on}", changes=(change,)),
        details=(("solids", code), ("on", on)),
        side_effects=(SideEffect.NOT_ON_HARVEST_DAY, SideEffect.YIELD_OF_SOLIDS_UNSURE),
        cautions=_LIQUOR,
    )


def _gaps(case: Case) -> dict[str, float]:
    """Return what crops want beyond supply in the flagged weeks [g/week], for elements that are short."""
    ruler, bands = case.ruler, case.forecaster.bands
    weeks = slice(case.span.first, case.span.last)
    supply = ruler.weekly_sum(case.water.supply_g)[:, weeks]
    demand = ruler.weekly_sum(case.water.demand_g)[:, weeks]
    found: dict[str, float] = {}
    for row, element in enumerate(ELEMENTS):
        if (supply[row] < demand[row] * bands.short_below).any():
            # The worst week counts: what is dosed is the same every week.
            found[element] = float((demand[row] * bands.thin_below - supply[row]).max())
    return found


def _shelf(case: Case) -> frozenset[str]:
    return frozenset(dose.supplement for dose in case.farm.doses)


def _ways(case: Case, element: str, grams: float) -> tuple[GapFill, ...]:
    """Return ways to fill a gap without a base, from the shelf if it holds any, else what can be bought."""
    shelf = _shelf(case)
    known = {key: one for key, one in case.catalogue.supplements.items() if one.base_eq_per_kg == 0.0}
    owned = [key for key in known if key in shelf]
    return fill_gap(element, grams, owned=owned, catalogue=case.catalogue) or fill_gap(
        element, grams, owned=known, catalogue=case.catalogue
    )


def _salts(case: Case, gaps: Mapping[str, float]) -> Iterator[Candidate]:
    """Yield weekly doses that fill every gap that a salt or a chelate can fill."""
    left = dict(gaps)
    fills: list[GapFill] = []
    for element in gaps:
        ways = _ways(case, element, left[element]) if left[element] > _TINY_G else ()
        if ways:
            fills.append(ways[0])
            for name, brought in zip(ELEMENTS, ways[0].brings_g, strict=True):
                left[name] = max(left.get(name, 0.0) - brought, 0.0)
    if not fills:
        return
    on, weeks = case.first_on, DAYS_PER_WEEK
    doses = [_dose(case, fill.supplement, fill.grams.likely, on=on, every=weeks) for fill in fills]
    bought = any(fill.supplement not in _shelf(case) for fill in fills)
    salty = any(sum((fill.ions_g or {}).values()) > _TINY_G for fill in fills)
    yield Candidate(
        kind=RemedyKind.DOSE_SUPPLEMENT,
        change_set=ChangeSet(
            title=f"Dose {', '.join(fill.supplement for fill in fills)} from {on.isoformat()}",
            changes=tuple(Change(after=dose) for dose in doses),
        ),
        details=_grams([(fill.supplement, fill.grams.likely) for fill in fills], every=weeks, on=on),
        side_effects=(
            *((SideEffect.NOT_ON_SHELF,) if bought else ()),
            *((SideEffect.SALT_BUILDS_UP,) if salty else ()),
        ),
        cautions=tuple(dict.fromkeys(key for fill in fills for key in fill.cautions)),
    )


def _base(case: Case, gaps: Mapping[str, float]) -> Iterator[Candidate]:
    """Yield small daily doses of the gentlest base that brings what is short, if base may be given."""
    water = water_now(case.farm, case.loop, today=case.first_on, catalogue=case.catalogue)
    first = before_base(water, case.catalogue)
    if {Before.AMMONIA_HIGH, Before.PH_HIGH_ENOUGH} & set(first):
        return
    for element in (one for one in _BASE_ELEMENTS if one in gaps):
        shelf = _shelf(case)
        holders = [k for k, s in case.catalogue.supplements.items() if getattr(s, f"{element}_share") > 0.0]
        bases = owned_bases([k for k in holders if k in shelf], case.catalogue)
        bases = bases or owned_bases(holders, case.catalogue)
        quick = [base for base in bases if not is_slow(base, case.catalogue)]
        if not quick:
            continue
        base = quick[0]
        cap_eq = dose_cap_eq(
            water,
            carbon_dioxide_used=carbon_dioxide_used(base),
            figures=dose_figures(case.catalogue),
            chemistry=chemistry_of(case.catalogue),
        )
        most = cap_eq / base.base_eq_per_kg * _G_PER_KG
        daily = gaps[element] / float(getattr(base, f"{element}_share")) / DAYS_PER_WEEK
        dose = _dose(case, base.key, min(daily, most), on=case.first_on, every=1)
        yield Candidate(
            kind=RemedyKind.DOSE_BASE,
            change_set=ChangeSet(
                title=f"Dose {base.key} daily from {case.first_on.isoformat()}", changes=(Change(after=dose),)
            ),
            details=_grams([(base.key, dose.grams)], every=1, on=case.first_on),
            side_effects=(
                SideEffect.RAISES_PH,
                *((SideEffect.TEST_FIRST,) if first else ()),
                *(() if base.key in shelf else (SideEffect.NOT_ON_SHELF,)),
            ),
            cautions=base.cautions,
        )


def _dose(case: Case, supplement: str, grams: float, *, on: date, every: int) -> Dose:
    return Dose(
        id=case.new_id("dose", supplement, str(every)),
        loop=case.span.loop,
        supplement=supplement,
        grams=grams,
        on=on,
        every_days=every,
        until_on=case.last_on,
    )


def _grams(given: list[tuple[str, float]], *, every: int, on: date) -> Details:
    return (
        *((f"g of {supplement}", grams) for supplement, grams in given),
        ("every_days", float(every)),
        ("on", on.isoformat()),
    )
