"""The water of a whole farm's loop put together, as values and as plain data."""

from __future__ import annotations

import ast
import json
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

import planner.forecast.water
from planner.farm.farm import OwnEntry, Shelf
from planner.farm.ids import id_from
from planner.farm.site import Filter, FilterKind
from planner.farm.water import Dose, Quantity
from planner.forecast.water.filters import FilterVerdict
from planner.forecast.water.plain import loop_water_data
from planner.forecast.water.side import loop_water
from planner.forecast.water.spans import DaySpan, Span, source_keys
from planner.forecast.water.targets import Level, NotKnown
from tests.farms import LOOP, farm_of, group_of, weekly_batches
from tests.forecast.water.loops import on_day, read, weekly
from tests.science.test_house_rules import typed_in_numbers

WARM = replace(LOOP, water_c=(22.0, 22.0, 23.0, 25.0, 26.0, 27.0, 28.0, 28.0, 27.0, 26.0, 24.0, 22.0))
SHELF = ("potassium-bicarbonate", "calcium-hydroxide", "magnesium-sulfate", "iron-dtpa-11")
MODULES = sorted(Path(planner.forecast.water.__file__).parent.glob("*.py"))


def farm_with(*readings, **parts):
    bed = Filter(
        id=id_from("filter"), name="Drum", loop=LOOP.id, kind=FilterKind.MOVING_BED, media_area_m2=30.0
    )
    given = {
        "loops": (WARM,),
        "fish_groups": (group_of(),),
        "batches": weekly_batches(6),
        "filters": (bed,),
        "readings": readings,
    }
    return farm_of(**(given | parts))


def water_of(forecaster, farm, *, day=30, **given):
    forecast = forecaster.forecast(farm)
    water = loop_water(
        farm,
        forecast.loops[0],
        ruler=forecast.ruler,
        catalogue=forecaster.catalogue_for(farm),
        today=on_day(day),
        **given,
    )
    return water, forecast.ruler


TESTED = (
    *weekly(Quantity.PH, 7.0, 6.9, 6.8, 6.7, 6.6),
    read(Quantity.TAN_MG_PER_L, 0.5, 28),
    read(Quantity.ALKALINITY_MG_PER_L, 80.0, 28),
    read(Quantity.TDS_MG_PER_L, 320.0, 28),
)


def test_that_a_tested_loop_has_an_answer_to_everything(forecaster):
    water, ruler = water_of(forecaster, farm_with(*TESTED), owned=SHELF)
    assert len(water.week_loads) == len(water.week_acids) == ruler.weeks
    assert water.week_loads[4].verdict in {FilterVerdict.TIGHT, FilterVerdict.ENOUGH}
    assert water.readings.free_ammonia.level is Level.SAFE
    assert water.readings.salts_level is Level.SAFE
    assert all(limit.not_known is None for limit in water.limits)
    assert water.advice.base.doses
    assert water.advice.base.before == ()
    assert water.advice.iron.products[0].supplement == "iron-dtpa-11"


def test_that_ammonia_goes_by_the_water_that_thermometers_drew_the_forecast_to(forecaster):
    cooler = read(Quantity.WATER_C, 15.0, 5)
    readings = (cooler, read(Quantity.PH, 7.0, 28), read(Quantity.TAN_MG_PER_L, 0.5, 28))
    drawn, ruler = water_of(forecaster, farm_with(*readings))
    plain, _ = water_of(forecaster, farm_with(*readings[1:]))
    found = drawn.readings.free_ammonia
    assert found.water_c_on is None
    assert found.water_c == pytest.approx(float(drawn.load.water_c[ruler.day_of(found.on)]))
    assert found.water_c < plain.readings.free_ammonia.water_c
    assert found.nh3_n_mg_per_l < plain.readings.free_ammonia.nh3_n_mg_per_l


def test_that_an_untested_loop_says_what_is_not_known(forecaster):
    water, _ = water_of(forecaster, farm_with(), owned=SHELF)
    assert water.readings.free_ammonia.not_known is NotKnown.NO_AMMONIA
    assert water.readings.salts is None
    assert all(view.reading is None and not view.repeat_test for view in water.readings.quantities)
    assert all(limit.not_known is not None for limit in water.limits)
    assert water.observed is None
    assert water.advice.base.assumed == ("ph", "alkalinity")


def test_that_an_odd_reading_asks_for_the_test_again(forecaster):
    water, _ = water_of(forecaster, farm_with(*weekly(Quantity.PH, 6.9, 6.9, 6.8, 6.9, 5.2)))
    (view,) = (view for view in water.readings.quantities if view.quantity is Quantity.PH)
    assert view.repeat_test
    assert view.level is Level.ACT


def test_that_an_old_reading_does_not_count_as_the_water_of_today(forecaster):
    water, _ = water_of(forecaster, farm_with(read(Quantity.TAN_MG_PER_L, 5.0, 0)), day=60)
    assert not water.advice.base.hold


def test_that_the_shelf_is_what_is_dosed_when_nobody_says(forecaster):
    dose = Dose(
        id=id_from("dose"), loop=LOOP.id, supplement="potassium-bicarbonate", grams=50.0, on=on_day(29)
    )
    water, _ = water_of(forecaster, farm_with(*TESTED, doses=(dose,)))
    assert [share.supplement for share in water.advice.base.bases] == ["potassium-bicarbonate"]
    assert water.advice.dosed_eq == pytest.approx(50.0 / 100.114, rel=1e-3)


def test_that_a_day_outside_the_plan_takes_its_nearest_week(forecaster):
    early, _ = water_of(forecaster, farm_with(), day=-40)
    late, ruler = water_of(forecaster, farm_with(), day=4000)
    assert early.advice.week == 0
    assert late.advice.week == ruler.weeks - 1


def test_that_a_loop_without_fish_needs_nothing(forecaster):
    water, _ = water_of(forecaster, farm_with(fish_groups=(), batches=()), owned=SHELF)
    assert water.advice.base.need_eq == Span(low=0.0, likely=0.0, high=0.0)
    assert water.advice.base.doses == ()
    assert water.week_loads[0].verdict is FilterVerdict.NO_LOAD


def test_that_every_row_behind_a_result_is_in_the_catalogue(forecaster, catalogue):
    water, _ = water_of(forecaster, farm_with(*TESTED), owned=SHELF)
    assert len(water.basis) > 30
    assert all(catalogue.figure(figure.path) == figure for figure in water.basis)
    assert {"ebeling2006", "zhuchen2002", "bensonkrause1984"} <= set(source_keys(water.basis))


def test_that_plain_data_is_json_with_words_for_codes(forecaster):
    water, ruler = water_of(forecaster, farm_with(*TESTED), owned=SHELF)
    data = json.loads(json.dumps(loop_water_data(water, ruler, weeks=range(3, 5))))
    assert [week["week"] for week in data["weeks"]] == ["2027-W04", "2027-W05"]
    low, likely, high = data["weeks"][0]["tan_g_per_day"]
    assert 0.0 < low <= likely <= high
    assert data["advice"]["base"]["hold"] is False
    assert {each["quantity"] for each in data["readings"]["quantities"]} >= {"ph", "tan mg/L"}
    assert data["sources"]


def test_that_an_untested_loop_is_plain_data_too(forecaster):
    water, ruler = water_of(forecaster, farm_with(loops=(LOOP,), filters=()))
    data = json.loads(json.dumps(loop_water_data(water, ruler, weeks=range(ruler.weeks))))
    assert data["filter"]["area_m2"] is None
    assert data["weeks"][0]["filter_verdict"] == "unknown"
    assert data["weeks"][0]["oxygen_saturation_mg_per_l"] is None
    assert {limit["not_known"] for limit in data["limits"]} == {
        "no alkalinity reading",
        "too few readings for a trend",
    }


def test_that_a_span_out_of_order_is_refused():
    with pytest.raises(ValueError, match="span 2 to 1"):
        Span(low=2.0, likely=1.5, high=1.0)
    with pytest.raises(ValueError, match="values by day"):
        DaySpan(low=np.array([2.0]), likely=np.array([1.0]), high=np.array([3.0]))


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.stem)
def test_that_no_coefficient_is_typed_into_a_function(path):
    tree = ast.parse(path.read_text(encoding="utf-8"))
    functions = [node for node in ast.walk(tree) if isinstance(node, ast.FunctionDef)]
    assert {each.name: typed_in_numbers(each) for each in functions if typed_in_numbers(each)} == {}


def test_that_the_growers_own_products_count_by_their_labels(forecaster):
    own = (
        OwnEntry(
            id=id_from("own iron"),
            shelf=Shelf.SUPPLEMENT,
            key="my-iron",
            like="iron-dtpa-11",
            name="My iron",
            values=(("fe_share", 0.05),),
        ),
        OwnEntry(
            id=id_from("own base"),
            shelf=Shelf.SUPPLEMENT,
            key="my-lye",
            like="potassium-hydroxide",
            name="My lye",
            values=(("base_eq_per_kg", 15.0), ("k_share", 0.6)),
        ),
    )
    farm = farm_with(*TESTED, own_entries=own)
    water, _ = water_of(forecaster, farm, owned=("my-iron", "my-lye"))
    # 2 mg/L in 4,000 L is 8 g of iron
    assert water.advice.iron.products[0].grams.likely == pytest.approx(8.0 / 0.05)
    (lye,) = water.advice.base.bases
    assert lye.grams_per_week.likely == pytest.approx(water.advice.base.need_eq.likely / 0.015)
    assert lye.cautions == ("caustic-bases",)


def test_that_hard_make_up_water_puts_the_day_of_low_alkalinity_off(forecaster):
    tested = (*TESTED, read(Quantity.ALKALINITY_MG_PER_L, 90.0, day=28))
    soft, hard = (
        water_of(
            forecaster,
            farm_with(
                *tested,
                loops=(replace(WARM, top_up_l_per_day=60.0, top_up_alkalinity_mg_per_l=mg_per_l),),
            ),
        )[0]
        for mg_per_l in (0.0, 40.0)
    )
    early, late = soft.limits[0].earliest_on, hard.limits[0].earliest_on
    assert early is not None
    assert late is None or late > early
