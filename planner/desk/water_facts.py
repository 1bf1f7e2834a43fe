"""What the side panel and the water tab say about the water of a loop: load, acid, tests, and what to give.

Pure: the water side goes in, sections of words come out. Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.pages import Basis, Fact, Section
from planner.desk.say import tr
from planner.desk.water_before import before_fact
from planner.desk.water_words import (
    assumed_words,
    caution_texts,
    level_words,
    limit_words,
    quantity_unit,
    quantity_value,
    quantity_words,
    rough_words,
    span_words,
    supplement_words,
    water_words,
)
from planner.desk.words import NONE, day_words, number_words
from planner.farm.species import ELEMENTS
from planner.forecast.water.acid import WeekAcid
from planner.forecast.water.iron import IronAdvice
from planner.forecast.water.limits import LimitWay
from planner.forecast.water.load import WeekLoad
from planner.forecast.water.readings import DueTest, Trend
from planner.forecast.water.side import LoopWater, QuantityView
from planner.forecast.why.values import Subject, SubjectKind

_LIMIT_UNITS: Final = {
    LimitWay.ALKALINITY_BALANCE: "mg/L CaCO₃",
    LimitWay.PH_BALANCE: "",
    LimitWay.PH_TREND: "",
}


def week_water_sections(water: LoopWater, week: int, catalogue: Catalogue) -> tuple[Section, ...]:
    """Return what there is to say of a loop's water in a week; tests and advice only for the running week."""
    load = Section(
        title=tr("Water of {loop}", loop=water.name),
        facts=(*_load(water, water.week_loads[week]), *_acid(water, water.week_acids[week])),
    )
    if week != water.advice.week:
        return (load,)
    return (load, tests_section(water), *advice_sections(water, catalogue))


def _of_week(water: LoopWater, kind: SubjectKind, week: int) -> Subject:
    return Subject(kind=kind, about=water.loop, week=week)


def _of_day(water: LoopWater, kind: SubjectKind, part: str = "") -> Subject:
    return Subject(kind=kind, about=water.loop, on=water.today, part=part)


def _load(water: LoopWater, load: WeekLoad) -> Iterator[Fact]:
    yield Fact(
        label=tr("Ammonia from feed"),
        value=span_words(load.tan_g_per_day, "g/d"),
        note=tr("as nitrogen, for the filter to take up"),
        ask=_of_week(water, SubjectKind.AMMONIA, load.week),
    )
    yield Fact(
        label=tr("Filter"),
        value=water_words(load.verdict),
        note="\n".join(_filter_notes(load)),
        ask=_of_week(water, SubjectKind.FILTER_NEED, load.week),
    )
    if load.area_m2 is not None:
        yield Fact(
            label=tr("Filter surface"),
            value=rough_words(load.area_m2, "m²"),
            ask=_of_week(water, SubjectKind.SURFACE, load.week),
        )
    yield from _gravel(water, load)
    yield Fact(
        label=tr("Oxygen asked for"),
        value=span_words(load.hourly_oxygen_g, "g/h"),
        note="\n".join(_oxygen_notes(load)),
        ask=_of_week(water, SubjectKind.OXYGEN, load.week),
    )
    yield Fact(
        label=tr("Oxygen after feeding"),
        value=span_words(load.peak_oxygen_g_per_h, "g/h"),
        ask=_of_week(water, SubjectKind.PEAK_OXYGEN, load.week),
    )
    if load.saturation_mg_per_l is not None and load.water_c is not None:
        yield Fact(
            label=tr("Oxygen it can hold"),
            value=rough_words(load.saturation_mg_per_l, "mg/L"),
            note=tr("water of {warmth}", warmth=rough_words(load.water_c, "°C")),
            ask=_of_week(water, SubjectKind.SATURATION, load.week),
        )


def _filter_notes(load: WeekLoad) -> Iterator[str]:
    need = span_words(load.need_m2, "m²")
    if load.area_m2 is None:
        yield tr("{need} of filter surface are needed", need=need)
    else:
        yield tr("{area} of {need} needed", area=rough_words(load.area_m2, "m²"), need=need)


def _gravel(water: LoopWater, load: WeekLoad) -> Iterator[Fact]:
    gravel = water.load.area.gravel_m2
    if gravel.high > 0:
        notes = [tr("with it: {verdict}", verdict=water_words(load.with_gravel))]
        if water.load.area.assumed_depth:
            notes.append(tr("the depth of the gravel is assumed"))
        yield Fact(
            label=tr("Gravel besides"),
            value=span_words(gravel, "m²"),
            note="\n".join(notes),
            ask=_of_week(water, SubjectKind.GRAVEL, load.week),
        )


def _oxygen_notes(load: WeekLoad) -> Iterator[str]:
    if load.saturation_mg_per_l is None or load.water_c is None:
        yield tr("saturation not known: no water temperature by month")


def _acid(water: LoopWater, acid: WeekAcid) -> Iterator[Fact]:
    yield Fact(
        label=tr("Acid made"),
        value=span_words(acid.planned_eq, tr("eq a week")),
        note=water_words(acid.agreement),
        ask=_of_week(water, SubjectKind.ACID, acid.week),
    )
    yield Fact(
        label=tr("Alkalinity falls by"),
        value=span_words(acid.drift_mg_per_l.times(-1.0), "mg/L"),
        note=tr("unless base is given"),
        ask=_of_week(water, SubjectKind.ALKALINITY_FALL, acid.week),
    )
    seen = water.observed
    if seen is not None:
        yield Fact(
            label=tr("Acid by the log"),
            value=span_words(seen.eq_per_day, tr("eq a day")),
            note=tr(
                "what alkalinity and base given show from {first} to {last}",
                first=day_words(seen.from_on),
                last=day_words(seen.until_on),
            ),
            ask=_of_day(water, SubjectKind.OBSERVED_ACID),
        )


def tests_section(water: LoopWater) -> Section:
    """Return what tests say: limits ahead, poison, salts, readings, and tests that are late."""
    return Section(
        title=tr("Tests of {loop}", loop=water.name),
        facts=(*_limits(water), *_ammonia(water), *_salts(water), *_readings(water), *_late(water)),
    )


def _limits(water: LoopWater) -> Iterator[Fact]:
    for limit in water.limits:
        bound = f"{number_words(limit.limit)} {_LIMIT_UNITS[limit.way]}".rstrip()
        start = ""
        if limit.value is not None and limit.on is not None:
            start = tr("; from {value} on {day}", value=number_words(limit.value), day=day_words(limit.on))
        yield Fact(
            label=water_words(limit.way),
            value=limit_words(limit),
            note=tr("when it falls to {limit}, no base given{start}", limit=bound, start=start),
            ask=_of_day(water, SubjectKind.LIMIT, limit.way.value),
        )


def _ammonia(water: LoopWater) -> Iterator[Fact]:
    found = water.readings.free_ammonia
    label = tr("Un-ionised ammonia")
    if found.not_known is not None or found.nh3_n_mg_per_l is None:
        why = NONE if found.not_known is None else water_words(found.not_known)
        ask = _of_day(water, SubjectKind.FREE_AMMONIA)
        yield Fact(label=label, value=tr("not known: {why}", why=why), ask=ask)
        return
    limit = NONE if found.limit is None else number_words(found.limit.value)
    yield Fact(
        label=label,
        value=f"{rough_words(found.nh3_n_mg_per_l, 'mg/L')} {level_words(found.level)}".rstrip(),
        note=tr(
            "as nitrogen; from {tan} mg/L ammonia, pH {ph}, {warmth} °C; at most {limit} for these fish",
            tan=number_words(found.tan_mg_per_l or 0.0),
            ph=number_words(found.ph or 0.0),
            warmth=number_words(found.water_c or 0.0, digits=1),
            limit=limit,
        ),
        ask=_of_day(water, SubjectKind.FREE_AMMONIA),
    )


def _salts(water: LoopWater) -> Iterator[Fact]:
    salts = water.readings.salts
    if salts is None:
        return
    factor = span_words(salts.factor)
    how = (
        tr("factor not noted, {factor} taken", factor=factor)
        if salts.factor_assumed
        else tr("factor of the meter {factor}", factor=factor)
    )
    yield Fact(
        label=tr("Salts"),
        value=f"{span_words(salts.ec_ms_per_cm, 'mS/cm')} {level_words(water.readings.salts_level)}".rstrip(),
        note=tr(
            "or {tds} dissolved solids; {how} (mg/L per µS/cm); read on {day}",
            tds=span_words(salts.tds_mg_per_l, "mg/L"),
            how=how,
            day=day_words(salts.on),
        ),
        ask=_of_day(water, SubjectKind.SALTS),
    )


def _readings(water: LoopWater) -> Iterator[Fact]:
    for view in water.readings.quantities:
        if view.reading is not None:
            value = quantity_value(view.quantity, view.reading.value)
            yield Fact(
                label=quantity_words(view.quantity),
                value=f"{value} {level_words(view.level)}".rstrip(),
                note=reading_note(view),
                ask=Basis(figures=view.band.basis) if view.band is not None and view.band.basis else None,
            )
            if view.trend is not None:
                yield Fact(
                    label=tr("{what}, where it goes", what=quantity_words(view.quantity)),
                    value=_trend_words(view.trend),
                    ask=_of_day(water, SubjectKind.TREND, view.quantity.value),
                )


def reading_note(view: QuantityView) -> str:
    """Return when a quantity was read, whether to test again, and where it goes."""
    assert view.reading is not None
    parts = [tr("on {day}", day=day_words(view.reading.on))]
    if view.repeat_test:
        parts.append(tr("stands alone: repeat the test before acting on it"))
    if view.doubtful:
        parts.append(tr("doubtful: its meter was overdue for calibration"))
    if view.trend_from is not None:
        parts.append(tr("trend only since the calibration of {day}", day=day_words(view.trend_from)))
    return "; ".join(parts)


def _trend_words(trend: Trend) -> str:
    unit = quantity_unit(trend.quantity)
    change = f"{span_words(trend.per_week)} {unit}".rstrip()
    return tr("{direction}, {change} a week", direction=water_words(trend.direction), change=change)


def _late(water: LoopWater) -> Iterator[Fact]:
    never = [due for due in water.readings.due if due.last_on is None]
    late = [due for due in water.readings.due if due.last_on is not None and due.days_late > 0]
    for at, due in enumerate(late):
        yield Fact(
            label=tr("Tests overdue") if not at else "",
            value=_late_words(due),
            ask=_of_day(water, SubjectKind.TEST_LATE, due.quantity.value),
        )
    if never:
        yield Fact(label=tr("Never tested"), value=", ".join(quantity_words(due.quantity) for due in never))


def _late_words(due: DueTest) -> str:
    return tr("{quantity}, {days} d", quantity=quantity_words(due.quantity), days=due.days_late)


def advice_sections(water: LoopWater, catalogue: Catalogue) -> tuple[Section, ...]:
    """Return what to put into the water this week, what comes before, and the cautions beside it."""
    advice = water.advice
    keys = (
        *(key for share in advice.base.bases for key in share.cautions),
        *(key for fill in advice.salts.fills for key in fill.cautions),
        *(key for product in advice.iron.products for key in product.cautions),
    )
    return (
        Section(
            title=tr("What to give {loop} this week", loop=water.name),
            warnings=tuple(before_fact(water, each, catalogue) for each in advice.base.before),
            cautions=caution_texts(keys, catalogue),
            facts=(*_base(water, catalogue), *_salt_fills(water, catalogue), *_iron(water, catalogue)),
        ),
    )


def _base(water: LoopWater, catalogue: Catalogue) -> Iterator[Fact]:
    base, dosed = water.advice.base, water.advice.dosed_eq
    planned = tr("; doses of the plan bring {eq}", eq=rough_words(dosed, "eq")) if dosed > 0 else ""
    yield Fact(
        label=tr("Base wanted"),
        value=span_words(base.need_eq, tr("eq a week")),
        note=tr("for the acid of the week{planned}", planned=planned),
        ask=_of_week(water, SubjectKind.BASE, water.advice.week),
    )
    if not base.bases:
        yield Fact(label="", value=tr("No base is at hand: the plan has no doses of one."))
    for share in base.bases:
        yield Fact(
            label=supplement_words(share.supplement, catalogue),
            value=span_words(share.grams_per_week, tr("g a week")),
            note=tr(
                "{kind}; at most {cap} at once",
                kind=water_words(share.kind),
                cap=rough_words(share.cap_g, "g"),
            )
            + (tr("; dissolves slowly") if share.slow else ""),
            ask=_of_day(water, SubjectKind.BASE_GRAMS, share.supplement),
        )
    if base.bases and base.left_over_eq > 0:
        yield Fact(
            label=tr("Left over"),
            value=rough_words(base.left_over_eq, "eq"),
            note=tr("does not fit into the doses of one week"),
            ask=_of_day(water, SubjectKind.BASE_LEFT),
        )
    if base.assumed:
        yield Fact(
            label=tr("Assumed"),
            value=assumed_words(base.assumed),
            note=tr("not tested lately; careful values are taken for the largest dose"),
        )


def _salt_fills(water: LoopWater, catalogue: Catalogue) -> Iterator[Fact]:
    for fill in water.advice.salts.fills:
        ions = fill.ions_g or {}
        brings = ", ".join(
            f"{rough_words(grams, 'g')} {tr(name)}" for name, grams in ions.items() if grams > 0
        )
        yield Fact(
            label=supplement_words(fill.supplement, catalogue),
            value=span_words(fill.grams, tr("g a week")),
            note=tr("for {element}", element=fill.element.capitalize())
            + (tr("; brings along {ions}", ions=brings) if brings else ""),
            ask=_of_day(water, SubjectKind.SALT_GRAMS, fill.supplement),
        )
    gaps = {name: grams for name, grams in water.advice.gaps_g.items() if grams > 0}
    unfilled = dict(zip(ELEMENTS, water.advice.salts.unfilled_g, strict=True))
    left = [name for name in gaps if unfilled[name] > 0]
    for at, name in enumerate(left):
        why = replace(_of_day(water, SubjectKind.WANTING), element=ELEMENTS.index(name))
        note = tr("a week, beyond what is supplied; nothing the plan has doses of fills it")
        yield Fact(
            label=tr("Wanting") if not at else "",
            value=f"{name.capitalize()} {rough_words(unfilled[name], 'g')}",
            note=note if name == left[-1] else "",
            ask=why,
        )


def _iron(water: LoopWater, catalogue: Catalogue) -> Iterator[Fact]:
    iron: IronAdvice = water.advice.iron
    last = tr("last given {day}", day=day_words(iron.last_on)) if iron.last_on else tr("never given")
    yield Fact(
        label=tr("Iron due"),
        value=day_words(iron.due_on),
        note=tr(
            "{last}; every {days} d, to {target}",
            last=last,
            days=iron.interval_days,
            target=span_words(iron.target_mg_per_l, "mg/L"),
        ),
        ask=_of_day(water, SubjectKind.IRON_DUE),
    )
    for product in iron.products:
        yield Fact(
            label=supplement_words(product.supplement, catalogue),
            value=span_words(product.grams, "g"),
            note=water_words(product.fit),
            ask=_of_day(water, SubjectKind.IRON_GRAMS, product.supplement),
        )
