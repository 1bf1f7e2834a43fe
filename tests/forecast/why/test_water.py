"""Why filter and air are asked for so much: the figures of the water page, worked again."""

from __future__ import annotations

import pytest

from planner.forecast.water.filters import filter_figures
from planner.forecast.water.load import load_forecast, week_loads
from planner.forecast.why.arithmetic import recomputed
from planner.forecast.why.ask import why
from planner.forecast.why.values import Origin, Subject, SubjectKind
from tests.forecast.sample_farms import NAMES, known

KINDS = (SubjectKind.AMMONIA, SubjectKind.FILTER_NEED, SubjectKind.OXYGEN)


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("kind", KINDS)
def test_that_the_answer_is_the_water_pages_figure_and_can_be_worked_again(name, kind):
    farm, forecast, forecaster = known(name)
    loop, week = forecast.loops[0], 6
    answer = why(Subject(kind=kind, about=loop.loop, week=week), farm, forecast, forecaster)
    load = load_forecast(
        loop,
        loop=farm.loops[0],
        altitude_m=farm.sites[0].altitude_m,
        filters=farm.filters,
        beds=farm.beds,
        ruler=forecast.ruler,
        catalogue=forecaster.catalogue,
    )
    seen = week_loads(load, ruler=forecast.ruler, figures=filter_figures(forecaster.catalogue))[week]
    told = {
        SubjectKind.AMMONIA: seen.tan_g_per_day,
        SubjectKind.FILTER_NEED: seen.need_m2,
        SubjectKind.OXYGEN: seen.hourly_oxygen_g,
    }[kind]
    assert answer.value == pytest.approx(told.likely, rel=1e-9)
    assert recomputed(answer) == pytest.approx(told.likely, rel=1e-9)
    rows = [one for one in answer.inputs if one.origin is Origin.FIGURE]
    assert rows
    assert all(one.path and one.confidence for one in rows)
    assert answer.children
