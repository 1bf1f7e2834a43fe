"""Why so much of an element reaches the water in a week: from feed, make-up water, doses and solids."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Final

import numpy as np

from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.site import Loop
from planner.farm.species import ELEMENTS
from planner.farm.water import Dose
from planner.forecast.supply import dose_g
from planner.forecast.values import Floats, GroupForecast, LoopForecast
from planner.forecast.why.fates import fate_of, loop_of, why_in_solids
from planner.forecast.why.fish import why_group_mean
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, entered, week_days, worked
from planner.forecast.why.growth import why_gain_in_week
from planner.forecast.why.solids import why_liquor, why_mineralised
from planner.forecast.why.values import Explanation, Input, Note, NoteKind
from planner.forecast.why.water_behind import make_up_litres

_IRON: Final = ELEMENTS.index("fe")
_NITROGEN: Final = ELEMENTS.index("n")
_PER_THOUSAND: Final = 1000.0
_PER_MILLION: Final = 1_000_000.0
_NOTHING_G: Final = 1e-9
_GAS_PATH: Final = "element/{}/gas_loss_share"
_DISSOLVING_PATH: Final = "coefficient/feed_split/dissolving_share_where_gas_was_found"


def why_supply(ground: Ground, loop: LoopForecast, week: int, element: int) -> Explanation:
    """Return why so much of an element is supplied in a week."""
    ruler = ground.forecast.ruler
    value = float(ruler.weekly_sum(loop.supply_g)[element, week])
    return Explanation(
        title="supply",
        about=loop.name,
        value=value,
        unit="g",
        formula=Formula.SUM,
        children=tuple(_parts(ground, loop, week, element)),
        on=ruler.week_start(week),
    )


def _parts(ground: Ground, loop: LoopForecast, week: int, element: int) -> Iterator[Explanation]:
    yield _from_feed(ground, loop, week, element)
    yield _from_top_up(ground, loop, week, element)
    yield _from_doses(ground, loop, week, element)
    yield why_mineralised(ground, loop, week, element)
    yield why_liquor(ground, loop, week, element)


def _week_sum(ground: Ground, by_day: Floats, week: int, element: int) -> float:
    return float(ground.forecast.ruler.weekly_sum(by_day)[element, week])


def _from_feed(ground: Ground, loop: LoopForecast, week: int, element: int) -> Explanation:
    value = _week_sum(ground, loop.dissolved_g, week, element)
    groups = tuple(_from_group(ground, group, week, element) for group in loop.groups)
    rest = value - sum(group.value or 0.0 for group in groups)
    inputs = () if abs(rest) <= _NOTHING_G else (worked("others", rest, "g"),)
    return Explanation(
        title="dissolved from feed",
        about=loop.name,
        value=value,
        unit="g",
        formula=Formula.SUM,
        inputs=inputs,
        children=groups,
        notes=() if groups else (Note(kind=NoteKind.NO_FISH),),
        on=ground.forecast.ruler.week_start(week),
    )


def _from_group(ground: Ground, group: GroupForecast, week: int, element: int) -> Explanation:
    fate = fate_of(ground, group)
    content, solids, fish, gas, dissolved = (
        _week_sum(ground, by_day, week, element)
        for by_day in (fate.content_g, fate.solids_g, fate.fish_g, fate.gas_g, fate.dissolved_g)
    )
    return Explanation(
        title="dissolved from feed of a group",
        about=group.name,
        value=dissolved,
        unit="g",
        formula=Formula.DISSOLVED,
        inputs=(
            worked("in_feed_g", content, "g"),
            worked("in_solids_g", solids, "g"),
            worked("kept_in_fish_g", fish, "g"),
            worked("lost_as_gas_g", gas, "g"),
        ),
        children=(
            _in_feed(ground, group, week, element, value=content),
            why_in_solids(ground, group, element, content=content, value=solids),
            _kept(ground, group, week, element, value=fish),
            _gas(ground, group, element, before=(content, solids, fish), value=gas),
        ),
        on=ground.forecast.ruler.week_start(week),
    )


def _in_feed(ground: Ground, group: GroupForecast, week: int, element: int, *, value: float) -> Explanation:
    feed, symbol = ground.groups[group.group].feed, ELEMENTS[element]
    feed_g = worked("feed_g", float(group.feed_g[week_days(week)].sum()), "g")
    if element == _NITROGEN:
        formula = Formula.IN_FEED_NITROGEN
        shares: tuple[Input, ...] = (
            ground.figure("protein_share", f"feed/{feed}/protein_share"),
            ground.figure("protein_per_nitrogen", "coefficient/feed_split/protein_per_nitrogen"),
        )
    else:
        formula = Formula.IN_FEED_IRON if element == _IRON else Formula.IN_FEED
        unit = "mg" if element == _IRON else "g"
        shares = (ground.figure("content", f"feed/{feed}/{symbol}_{unit}_per_kg"),)
    return Explanation(
        title="element in the feed",
        about=group.name,
        value=value,
        unit="g",
        formula=formula,
        inputs=(feed_g, *shares),
        children=(why_group_mean(ground, group, week),),
    )


def _kept(ground: Ground, group: GroupForecast, week: int, element: int, *, value: float) -> Explanation:
    iron = element == _IRON
    name = f"body_{ELEMENTS[element]}_{'mg' if iron else 'g'}_per_kg"
    body = ground.figure("body_content", f"fish/{ground.groups[group.group].species}/{name}")
    gain_g = float(group.gain_g[week_days(week)].sum())
    capped = gain_g * body.value / (_PER_MILLION if iron else _PER_THOUSAND) - value
    return Explanation(
        title="element kept in fish",
        about=group.name,
        value=value,
        unit="g",
        formula=Formula.KEPT_IN_FISH_IRON if iron else Formula.KEPT_IN_FISH,
        inputs=(worked("gain_g", gain_g, "g"), body, worked("capped_g", capped, "g")),
        children=(why_gain_in_week(ground, group, week),),
        notes=_capped_note(capped),
    )


def _capped_note(capped_g: float) -> tuple[Note, ...]:
    if capped_g <= _NOTHING_G:
        return ()
    return (Note(kind=NoteKind.CAPPED_SPLIT, values=(("capped_g", capped_g),)),)


def _gas(
    ground: Ground, group: GroupForecast, element: int, *, before: tuple[float, float, float], value: float
) -> Explanation:
    """Explain what is lost as gas; `before` is in the feed, in solids and kept in fish."""
    content, solids, fish = before
    loop, share = loop_of(ground, group), ground.figure("gas_loss_share", _GAS_PATH.format(ELEMENTS[element]))
    if element == _NITROGEN and loop.gas_loss_share is not None:
        share = entered("gas_loss_share", loop.gas_loss_share, "1", loop.name)
    dissolving = ground.figure("dissolving_share", _DISSOLVING_PATH)
    capped = (content - solids - fish) * share.value / dissolving.value - value
    return Explanation(
        title="element lost as gas",
        about=group.name,
        value=value,
        unit="g",
        formula=Formula.LOST_AS_GAS,
        inputs=(
            worked("in_feed_g", content, "g"),
            worked("in_solids_g", solids, "g"),
            worked("kept_in_fish_g", fish, "g"),
            share,
            dissolving,
            worked("capped_g", capped, "g"),
        ),
        notes=_capped_note(capped),
    )


def _from_top_up(ground: Ground, loop: LoopForecast, week: int, element: int) -> Explanation:
    entry: Loop = ground.loops[loop.loop]
    litres, children = make_up_litres(ground, entry)
    per_l = getattr(entry, f"top_up_{ELEMENTS[element]}_mg_per_l")
    return Explanation(
        title="from make-up water",
        about=loop.name,
        value=_week_sum(ground, loop.top_up_g, week, element),
        unit="g",
        formula=Formula.TOP_UP,
        inputs=(
            litres,
            entered("mg_per_l", per_l, "mg/L", entry.name),
            worked("days", float(DAYS_PER_WEEK), "d"),
        ),
        children=children,
        on=ground.forecast.ruler.week_start(week),
    )


def _from_doses(ground: Ground, loop: LoopForecast, week: int, element: int) -> Explanation:
    doses = [dose for dose in ground.farm.doses if dose.loop == loop.loop]
    parts = [_of_dose(ground, dose, week, element) for dose in doses]
    return Explanation(
        title="from doses",
        about=loop.name,
        value=_week_sum(ground, loop.dose_g, week, element),
        unit="g",
        formula=Formula.SUM,
        children=tuple(part for part in parts if part.value),
        on=ground.forecast.ruler.week_start(week),
    )


def _of_dose(ground: Ground, dose: Dose, week: int, element: int) -> Explanation:
    brought = dose_g([dose], supplements=ground.catalogue.supplements, ruler=ground.forecast.ruler)
    value = _week_sum(ground, brought, week, element)
    share = ground.figure("element_share", f"supplement/{dose.supplement}/{ELEMENTS[element]}_share")
    whole = dose.grams * share.value
    name = ground.catalogue.supplements[dose.supplement].name
    return Explanation(
        title="dose",
        about=name,
        value=value,
        unit="g",
        formula=Formula.DOSE,
        inputs=(
            entered("grams", dose.grams, "g", name),
            share,
            worked("doses_in_week", float(np.divide(value, whole)) if whole else 0.0, "doses"),
        ),
        on=dose.on,
    )
