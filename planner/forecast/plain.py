"""The forecast as plain data of a documented, stable shape: what scripts and other programs read.

The shape is named by `FORMAT` and described in docs/forecast-json.md; a field is never renamed or
given another meaning under the same name.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any, Final

from planner.farm.farm import DAYS_PER_WEEK, Farm, by_id
from planner.farm.mark import plan_mark
from planner.farm.site import Loop
from planner.farm.species import ELEMENTS
from planner.forecast.figures import BandFigures
from planner.forecast.values import Flag, Floats, Forecast, GroupForecast, LoopForecast, WeekVerdict
from planner.forecast.verdicts import symbol_of, week_verdicts

FORMAT: Final = "raftweek.forecast/1"

_DIGITS: Final = 6
_G_PER_KG: Final = 1000.0
Data = dict[str, Any]


@dataclass(frozen=True, slots=True, kw_only=True)
class WeekSpan:
    """Weeks of the ruler from `first` up to the one before `last`."""

    first: int
    last: int

    def __iter__(self) -> Iterator[int]:
        """Go through the weeks."""
        return iter(range(self.first, self.last))


def forecast_data(farm: Farm, forecast: Forecast, bands: BandFigures, *, span: WeekSpan) -> Data:
    """Return the forecast of some weeks as dicts, lists, texts and numbers."""
    ruler = forecast.ruler
    loops = by_id(farm.loops)
    return {
        "format": FORMAT,
        "farm": farm.settings.name,
        "plan_mark": plan_mark(farm),
        "from": ruler.week_start(span.first).isoformat(),
        "weeks": span.last - span.first,
        "elements": [symbol_of(number) for number in range(len(ELEMENTS))],
        "loops": [_loop_data(loops[loop.loop], loop, forecast, bands, span) for loop in forecast.loops],
        "harvest": [_harvest_data(forecast, week) for week in span],
        "sowings": list(_sowings(farm, forecast, span)),
        "totals": _totals(forecast, span),
        "flags": [flag_data(flag) for flag in forecast.flags],
        "sources": list(forecast.source_keys),
    }


def _plain(value: float) -> float:
    """Return a number short enough to read; six digits after the point lose nothing that matters."""
    return round(float(value), _DIGITS)


def _loop_data(
    loop: Loop, found: LoopForecast, forecast: Forecast, bands: BandFigures, span: WeekSpan
) -> Data:
    verdicts = week_verdicts(found, forecast.ruler, bands)
    flows = _flows_by_week(found, forecast)
    return {
        "loop": loop.name,
        "water_l": loop.water_l,
        "bed_m2": _plain(found.bed_m2),
        "area_rule": found.area_rule.value,
        "weeks": [_week_data(found, forecast, verdicts[week], flows) for week in span],
    }


_FLOWS: Final = (
    ("in_feed_g", "content_g"),
    ("kept_in_fish_g", "fish_g"),
    ("in_solids_g", "solids_g"),
    ("lost_as_gas_g", "gas_g"),
    ("dissolved_from_feed_g", "dissolved_g"),
    ("from_top_up_g", "top_up_g"),
    ("from_doses_g", "dose_g"),
    ("from_mineralised_g", "mineralised_g"),
    ("from_liquor_g", "liquor_g"),
)


def _flows_by_week(found: LoopForecast, forecast: Forecast) -> dict[str, Floats]:
    return {word: forecast.ruler.weekly_sum(getattr(found, name)) for word, name in _FLOWS}


def _week_data(
    found: LoopForecast, forecast: Forecast, verdict: WeekVerdict, flows: dict[str, Floats]
) -> Data:
    week = verdict.week
    groups = [_group_data(group, week) for group in found.groups]
    ratio = verdict.feed_ratio_g_per_m2_d
    return {
        "week": forecast.ruler.week_name(week),
        "start": forecast.ruler.week_start(week).isoformat(),
        "feed_g_per_day": _plain(verdict.feed_g_per_day),
        "feed_kg": _plain(verdict.feed_g_per_day * DAYS_PER_WEEK / _G_PER_KG),
        "fish": groups,
        "fish_count": _plain(sum(group["count"] for group in groups)),
        "biomass_kg": _plain(sum(group["biomass_kg"] for group in groups)),
        "planted_m2": _plain(verdict.planted_m2),
        "feed_ratio_g_per_m2_d": None if ratio is None else _plain(ratio),
        "feed_per_bed_g_per_m2_d": _plain(verdict.feed_g_per_day / found.bed_m2) if found.bed_m2 else None,
        "fao_band_g_per_m2_d": verdict.fao_band and [_plain(bound) for bound in verdict.fao_band],
        "uvi_band_g_per_m2_d": list(verdict.uvi_band),
        "area_fed_m2": [_plain(bound) for bound in verdict.area_fed_m2],
        "rule_band_g_per_m2_d": verdict.rule_band and [_plain(bound) for bound in verdict.rule_band],
        "area_carried_m2": [_plain(bound) for bound in verdict.area_carried_m2],
        "elements": {symbol_of(n): _element_data(n, verdict, flows) for n in range(len(ELEMENTS))},
        "limiting": None if verdict.limiting is None else symbol_of(verdict.limiting),
    }


def _element_data(number: int, verdict: WeekVerdict, flows: dict[str, Floats]) -> Data:
    ratio, covered = verdict.ratio[number], verdict.covered_ratio[number]
    return {
        "supply_g": _plain(verdict.supply_g[number]),
        "demand_g": _plain(verdict.demand_g[number]),
        "ratio": None if ratio is None else _plain(ratio),
        "band": verdict.band[number].value,
        **{word: _plain(flow[number, verdict.week]) for word, flow in flows.items()},
        "stock_g": _plain(verdict.stock_g[number]),
        "stock_mg_per_l": _plain(verdict.stock_mg_per_l[number]),
        "stock_assumed": verdict.stock_assumed[number],
        "covered_ratio": None if covered is None else _plain(covered),
        "unmet_g": _plain(verdict.unmet_g[number]),
    }


def _group_data(group: GroupForecast, week: int) -> Data:
    """Return a group in one week: numbers at its first day, feed as the week's mean."""
    days = slice(week * DAYS_PER_WEEK, (week + 1) * DAYS_PER_WEEK)
    first = week * DAYS_PER_WEEK
    return {
        "group": group.name,
        "count": _plain(group.count[first]),
        "mean_weight_g": _plain(group.weight_g[first]),
        "biomass_kg": _plain(group.biomass_g[first] / _G_PER_KG),
        "feed_g_per_day": _plain(group.feed_g[days].mean()),
        "gain_g_per_day": _plain(group.gain_g[days].mean()),
        "harvest_count": _plain(group.harvest_count[days].sum()),
        "harvest_kg": _plain(group.harvest_g[days].sum() / _G_PER_KG),
    }


def _harvest_data(forecast: Forecast, week: int) -> Data:
    days = slice(week * DAYS_PER_WEEK, (week + 1) * DAYS_PER_WEEK)
    return {
        "week": forecast.ruler.week_name(week),
        "start": forecast.ruler.week_start(week).isoformat(),
        "crops": _crop_sums(forecast, days),
    }


def _crop_sums(forecast: Forecast, days: slice) -> list[Data]:
    plants = forecast.harvest_plants[:, days].sum(axis=1)
    kilos = forecast.harvest_g[:, days].sum(axis=1) / _G_PER_KG
    return [
        {"crop": crop, "plants": _plain(plants[number]), "kg": _plain(kilos[number])}
        for number, crop in enumerate(forecast.crops)
        if kilos[number] > 0
    ]


def _sowings(farm: Farm, forecast: Forecast, span: WeekSpan) -> Iterator[Data]:
    table, ruler = forecast.batches, forecast.ruler
    for row, batch in enumerate(farm.batches):
        if not span.first <= ruler.week_of(batch.sow_on) < span.last:
            continue
        first_pick, last_pick = table.pick_days(row)
        yield {
            "batch": batch.code,
            "crop": batch.crop,
            "sow_on": batch.sow_on.isoformat(),
            "seeds": int(table.seeds[row]),
            "plants": batch.plants,
            "move_on": ruler.date_of(int(table.ends[row, 2])).isoformat(),
            "harvest_from": ruler.date_of(first_pick).isoformat(),
            "harvest_until": ruler.date_of(last_pick - 1).isoformat(),
            "area_m2": _plain(float(table.area_m2[row])),
        }


def _totals(forecast: Forecast, span: WeekSpan) -> Data:
    days = slice(span.first * DAYS_PER_WEEK, span.last * DAYS_PER_WEEK)
    groups = [group for loop in forecast.loops for group in loop.groups]
    return {
        "feed_kg": _plain(sum(float(loop.feed_g[days].sum()) for loop in forecast.loops) / _G_PER_KG),
        "fish_gain_kg": _plain(sum(float(group.gain_g[days].sum()) for group in groups) / _G_PER_KG),
        "fish_harvest_kg": _plain(sum(float(group.harvest_g[days].sum()) for group in groups) / _G_PER_KG),
        "harvest": _crop_sums(forecast, days),
    }


def _field(name: str) -> str:
    return name.replace(" ", "_")


def flag_data(flag: Flag) -> Data:
    """Return a flag as plain data."""
    return {
        "kind": flag.kind.value,
        "about": flag.name,
        "from": flag.on and flag.on.isoformat(),
        "until": flag.until_on and flag.until_on.isoformat(),
        **{_field(name): _plain(value) if isinstance(value, float) else value for name, value in flag.values},
    }


_BANDS: Final = (
    ("fao_band_g_per_m2_d", "fao_{end}_g_per_m2_d"),
    ("uvi_band_g_per_m2_d", "uvi_{end}_g_per_m2_d"),
    ("area_fed_m2", "area_fed_{end}_m2"),
    ("rule_band_g_per_m2_d", "rule_{end}_g_per_m2_d"),
    ("area_carried_m2", "area_carried_{end}_m2"),
)


def forecast_rows(data: Data) -> Iterator[dict[str, Any]]:
    """Yield one flat row a loop and week, for a table of comma-separated values.

    Every row has the same names. A band becomes two of them, its low and its high end, empty where
    nothing is planted; the fish and the flows of the elements are left to the whole data.
    """
    bands = {name for name, _ in _BANDS}
    for loop in data["loops"]:
        for week in loop["weeks"]:
            row = {"loop": loop["loop"]}
            row.update({name: week[name] for name in week if name not in {*bands, "fish", "elements"}})
            for name, word in _BANDS:
                low, high = week[name] or (None, None)
                row.update({word.format(end="low"): low, word.format(end="high"): high})
            for symbol, figures in week["elements"].items():
                row.update(
                    {f"{symbol}_{name}": figures[name] for name in ("supply_g", "demand_g", "ratio", "band")}
                )
            yield row
