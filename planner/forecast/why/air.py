"""Why a loop has so much biofilm surface, and why its water is asked for, and holds, so much oxygen."""

from __future__ import annotations

from typing import Final

from planner.farm.farm import by_id
from planner.farm.site import Bed
from planner.farm.species import BedKind
from planner.forecast.values import LoopForecast
from planner.forecast.water.filters import BIOLOGICAL
from planner.forecast.why.arithmetic import figured
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError, entered, worked
from planner.forecast.why.values import Explanation
from planner.forecast.why.water import load_of_week, why_oxygen

_NITRIFICATION: Final = "coefficient/nitrification/"
_CARE: Final = "coefficient/water_care/"
_GRAVEL_DEPTH: Final = f"{_CARE}gravel_depth_cm"


def why_surface(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return why the filters have so much biofilm surface: what was entered for each.

    Raises `NoSuchFigureError` when no filter has a surface entered.
    """
    area = load_of_week(ground, loop, week).area_m2
    if area is None:
        raise NoSuchFigureError(f"no filter of {loop.name} has a surface entered.")
    known = [
        one
        for one in ground.farm.filters
        if one.loop == loop.loop and one.kind in BIOLOGICAL and one.media_area_m2 is not None
    ]
    return Explanation(
        title="biofilm surface there is",
        about=loop.name,
        value=area,
        unit="m²",
        formula=Formula.SUM,
        inputs=tuple(entered(one.name, one.media_area_m2 or 0.0, "m²", one.name) for one in known),
    )


def why_gravel(ground: Ground, loop: LoopForecast) -> Explanation:
    """Return why gravel is counted for so much biofilm surface, bed by bed."""
    beds = [bed for bed in ground.farm.beds if bed.loop == loop.loop and bed.kind is BedKind.MEDIA]
    parts = tuple(_gravel_of(ground, bed) for bed in beds)
    return Explanation(
        title="biofilm surface of gravel",
        about=loop.name,
        value=sum(one.value or 0.0 for one in parts),
        unit="m²",
        formula=Formula.SUM,
        children=parts,
    )


def _gravel_of(ground: Ground, bed: Bed) -> Explanation:
    bare = Explanation(
        title="biofilm surface of gravel",
        about=bed.name,
        value=0.0,
        unit="m²",
        formula=Formula.GRAVEL,
        inputs=(
            entered("area_m2", bed.area_m2, "m²", bed.name),
            ground.own_or_figure("depth_cm", bed.depth_cm, _GRAVEL_DEPTH, about=bed.name),
            ground.figure("surface_m2_per_m3", f"{_NITRIFICATION}surface_gravel_20_mm"),
            ground.figure("working_share", f"{_CARE}gravel_active_share"),
        ),
    )
    return figured(bare)


def why_peak_oxygen(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return why so much oxygen an hour is asked for after feeding in a week."""
    hourly = why_oxygen(ground, loop, week)
    return Explanation(
        title="oxygen an hour after feeding",
        about=loop.name,
        value=load_of_week(ground, loop, week).peak_oxygen_g_per_h.likely,
        unit="g/h",
        formula=Formula.OXYGEN_PEAK,
        inputs=(
            worked("oxygen_g_per_h", hourly.value or 0.0, "g/h"),
            ground.figure("peak_factor", f"{_CARE}oxygen_peak_factor"),
        ),
        children=(hourly,),
        on=hourly.on,
    )


def why_saturation(ground: Ground, loop: LoopForecast, week: int) -> Explanation:
    """Return why water of a week's warmth holds so much oxygen: the mean over its days.

    Raises `NoSuchFigureError` where the warmth of the water is not known.
    """
    load, site = load_of_week(ground, loop, week), by_id(ground.farm.sites)[ground.loops[loop.loop].site]
    if load.saturation_mg_per_l is None or load.water_c is None:
        raise NoSuchFigureError(f"no temperature of the water of {loop.name} is known.")
    return Explanation(
        title="oxygen that water can hold",
        about=loop.name,
        value=load.saturation_mg_per_l,
        unit="mg/L",
        formula=Formula.OXYGEN_HELD,
        inputs=(
            worked("mean_water_c", load.water_c, "°C"),
            entered("altitude_m", site.altitude_m, "m", site.name),
            *(
                ground.figure(name, f"coefficient/water/oxygen_temperature_{name}")
                for name in _coefficients(ground)
            ),
        ),
        on=ground.forecast.ruler.week_start(week),
    )


def _coefficients(ground: Ground) -> tuple[str, ...]:
    head = "coefficient/water/oxygen_temperature_"
    return tuple(path.removeprefix(head) for path in ground.catalogue.figures if path.startswith(head))
