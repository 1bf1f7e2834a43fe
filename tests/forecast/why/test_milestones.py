"""Dates of a batch can be asked why, and plants to pick are those that the list of what is due tells."""

from itertools import pairwise

import pytest

from planner.farm.crops import Stage
from planner.forecast.values import STAGES
from planner.forecast.week import DueKind, due_in_week
from planner.forecast.why.arithmetic import recomputed
from planner.forecast.why.ask import why
from planner.forecast.why.ground import NoSuchFigureError
from planner.forecast.why.values import Subject, SubjectKind
from tests.forecast.sample_farms import NAMES, known


def asked(name, **words):
    farm, forecast, forecaster = known(name)
    return why(Subject(**words), farm, forecast, forecaster)


def tasks(name, kind):
    farm, forecast, _ = known(name)
    for week in range(forecast.ruler.weeks):
        yield from (task for task in due_in_week(farm, forecast, week) if task.kind is kind)


@pytest.mark.parametrize("name", NAMES)
def test_that_plants_to_pick_are_those_that_are_due(name):
    _, forecast, _ = known(name)
    for task in tasks(name, DueKind.PICK):
        day = forecast.ruler.day_of(task.on)
        found = asked(name, kind=SubjectKind.PICKED, about=task.about, day=day)
        assert found.value == pytest.approx(task.many)
        assert recomputed(found) == pytest.approx(found.value)
        assert found.on == task.on


@pytest.mark.parametrize("name", NAMES)
def test_that_a_batch_moves_to_the_bed_on_the_day_that_is_answered(name):
    for task in tasks(name, DueKind.MOVE):
        found = asked(name, kind=SubjectKind.STAGE_FIRST, about=task.about, stage=Stage.BED)
        assert found.on == task.on
        assert found.value == sum(part.value for part in found.children)


@pytest.mark.parametrize("name", NAMES)
def test_that_the_last_day_of_a_stage_lies_before_the_first_of_the_next(name):
    farm, _, _ = known(name)
    batch = farm.batches[0]
    for before, after in pairwise(STAGES):
        if before is Stage.PICKING:
            continue
        last = asked(name, kind=SubjectKind.STAGE_LAST, about=batch.id, stage=before)
        first = asked(name, kind=SubjectKind.STAGE_FIRST, about=batch.id, stage=after)
        assert (first.on - last.on).days == 1


def test_that_a_day_without_picking_has_no_figure():
    farm, _, _ = known(NAMES[0])
    with pytest.raises(NoSuchFigureError, match="not picked"):
        asked(NAMES[0], kind=SubjectKind.PICKED, about=farm.batches[0].id, day=0)
