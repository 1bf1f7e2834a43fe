"""The water side of a loop as plain dicts, lists, texts and numbers, for files and scripts.

Codes stay codes; words are made where they are shown.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date
from enum import Enum
from typing import Any, Final

from planner.forecast.values import Ruler
from planner.forecast.water.acid import WeekAcid
from planner.forecast.water.bases import BaseAdvice, BaseShare
from planner.forecast.water.iron import IronAdvice
from planner.forecast.water.limits import LimitDay, ObservedAcid
from planner.forecast.water.load import WeekLoad
from planner.forecast.water.readings import DueTest
from planner.forecast.water.side import LoopWater, QuantityView, WaterAdvice, WaterReadings
from planner.forecast.water.spans import Span, source_keys
from planner.forecast.water.supplements import GapFill
from planner.forecast.water.targets import FreeAmmonia

Data = dict[str, Any]
_DIGITS: Final = 6


def loop_water_data(water: LoopWater, ruler: Ruler, *, weeks: Iterable[int]) -> Data:
    """Return the water side of a loop in some weeks, with the advice of the day."""
    return {
        "loop": water.name,
        "today": water.today.isoformat(),
        "filter": _filter_data(water),
        "weeks": [_week_data(water, week, ruler) for week in weeks],
        "readings": readings_data(water.readings),
        "limits": [_limit_data(limit) for limit in water.limits],
        "observed_acid": _observed_data(water.observed),
        "advice": advice_data(water.advice),
        "sources": list(source_keys(water.basis)),
    }


def _plain(value: float | None) -> float | None:
    return None if value is None else round(float(value), _DIGITS)


def _span(span: Span | None) -> list[float] | None:
    """Return low, likely and high."""
    if span is None:
        return None
    return [round(each, _DIGITS) for each in (span.low, span.likely, span.high)]


def _day(on: date | None) -> str | None:
    return None if on is None else on.isoformat()


def _code(code: Enum | None) -> str | None:
    return None if code is None else str(code.value)


def _filter_data(water: LoopWater) -> Data:
    area = water.load.area
    return {
        "area_m2": _plain(area.known_m2),
        "filters_without_area": len(area.without_area),
        "gravel_m2": _span(area.gravel_m2),
        "gravel_depth_assumed": area.assumed_depth,
    }


def _week_data(water: LoopWater, week: int, ruler: Ruler) -> Data:
    return {
        "week": ruler.week_name(week),
        **_load_data(water.week_loads[week]),
        **_acid_data(water.week_acids[week]),
    }


def _load_data(load: WeekLoad) -> Data:
    return {
        "tan_g_per_day": _span(load.tan_g_per_day),
        "filter_need_m2": _span(load.need_m2),
        "filter_ratio": _plain(load.ratio),
        "filter_verdict": load.verdict.value,
        "filter_verdict_with_gravel": load.with_gravel.value,
        "fish_oxygen_g_per_day": _span(load.fish_oxygen_g_per_day),
        "nitrification_oxygen_g_per_day": _span(load.nitrification_oxygen_g_per_day),
        "oxygen_g_per_h": _span(load.hourly_oxygen_g),
        "oxygen_peak_g_per_h": _span(load.peak_oxygen_g_per_h),
        "water_c": _plain(load.water_c),
        "oxygen_saturation_mg_per_l": _plain(load.saturation_mg_per_l),
    }


def _acid_data(acid: WeekAcid) -> Data:
    return {
        "acid_balance_eq": _span(acid.net_eq),
        "acid_published_eq": _span(acid.published_eq),
        "acid_planned_eq": _span(acid.planned_eq),
        "acid_agreement": acid.agreement.value,
        "alkalinity_drift_mg_per_l": _span(acid.drift_mg_per_l),
    }


def readings_data(readings: WaterReadings) -> Data:
    """Return what tests say."""
    salts = readings.salts
    return {
        "quantities": [_quantity_data(view) for view in readings.quantities if view.reading is not None],
        "free_ammonia": _ammonia_data(readings.free_ammonia),
        "salts": None
        if salts is None
        else {
            "on": _day(salts.on),
            "ec_ms_per_cm": _span(salts.ec_ms_per_cm),
            "tds_mg_per_l": _span(salts.tds_mg_per_l),
            "level": _code(readings.salts_level),
            "factor_assumed": salts.factor_assumed,
        },
        "due": [_due_data(due) for due in readings.due],
    }


def _quantity_data(view: QuantityView) -> Data:
    assert view.reading is not None
    seen = view.trend
    return {
        "quantity": view.quantity.value,
        "value": _plain(view.reading.value),
        "on": _day(view.reading.on),
        "level": _code(view.level),
        "repeat_test": view.repeat_test,
        "doubtful": view.doubtful,
        "trend_from": view.trend_from.isoformat() if view.trend_from else None,
        "per_week": None if seen is None else _span(seen.per_week),
        "direction": None if seen is None else seen.direction.value,
    }


def _due_data(due: DueTest) -> Data:
    return {
        "quantity": due.quantity.value,
        "last_on": _day(due.last_on),
        "due_on": _day(due.due_on),
        "days_late": due.days_late,
    }


def _ammonia_data(found: FreeAmmonia) -> Data:
    return {
        "not_known": _code(found.not_known),
        "within_days": found.within_days,
        "on": _day(found.on),
        "tan_mg_per_l": _plain(found.tan_mg_per_l),
        "ph": _plain(found.ph),
        "water_c": _plain(found.water_c),
        "nh3_n_mg_per_l": _plain(found.nh3_n_mg_per_l),
        "limit_mg_per_l": None if found.limit is None else _plain(found.limit.value),
        "level": _code(found.level),
    }


def _limit_data(limit: LimitDay) -> Data:
    return {
        "way": limit.way.value,
        "limit": _plain(limit.limit),
        "not_known": _code(limit.not_known),
        "from_value": _plain(limit.value),
        "from_on": _day(limit.on),
        "already": limit.already,
        "earliest_on": _day(limit.earliest_on),
        "latest_on": _day(limit.latest_on),
    }


def _observed_data(seen: ObservedAcid | None) -> Data | None:
    if seen is None:
        return None
    return {
        "from_on": _day(seen.from_on),
        "until_on": _day(seen.until_on),
        "eq_per_day": _span(seen.eq_per_day),
        "eq_per_kg_feed": _span(seen.eq_per_kg_feed),
    }


def advice_data(advice: WaterAdvice) -> Data:
    """Return what to put into the water."""
    return {
        "gaps_g_per_week": {name: _plain(grams) for name, grams in advice.gaps_g.items()},
        "base": _base_data(advice.base),
        "base_dosed_eq": _plain(advice.dosed_eq),
        "iron": _iron_data(advice.iron),
        "salts": [_fill_data(fill) for fill in advice.salts.fills],
        "gaps_left_g_per_week": [_plain(grams) for grams in advice.salts.unfilled_g],
    }


def _base_data(base: BaseAdvice) -> Data:
    return {
        "need_eq_per_week": _span(base.need_eq),
        "before": [each.value for each in base.before],
        "hold": base.hold,
        "bases": [_share_data(share) for share in base.bases],
        "doses": [
            {"day": dose.day, "supplement": dose.supplement, "grams": _plain(dose.grams)}
            for dose in base.doses
        ],
        "left_over_eq": _plain(base.left_over_eq),
        "assumed": list(base.assumed),
    }


def _share_data(share: BaseShare) -> Data:
    return {
        "supplement": share.supplement,
        "kind": share.kind.value,
        "slow": share.slow,
        "grams_per_week": _span(share.grams_per_week),
        "most_grams_per_dose": _plain(share.cap_g),
        "cautions": list(share.cautions),
    }


def _iron_data(iron: IronAdvice) -> Data:
    return {
        "target_mg_per_l": _span(iron.target_mg_per_l),
        "interval_days": iron.interval_days,
        "last_on": _day(iron.last_on),
        "due_on": _day(iron.due_on),
        "days_late": iron.days_late,
        "products": [
            {"supplement": each.supplement, "fit": each.fit.value, "grams": _span(each.grams)}
            for each in iron.products
        ],
    }


def _fill_data(fill: GapFill) -> Data:
    return {
        "element": fill.element,
        "supplement": fill.supplement,
        "grams_per_week": _span(fill.grams),
        "ions_g": None if fill.ions_g is None else {name: _plain(each) for name, each in fill.ions_g.items()},
        "cautions": list(fill.cautions),
    }
