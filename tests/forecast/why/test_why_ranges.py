"""Both ends of every range can be worked out again from the figures that were moved."""

from __future__ import annotations

import math

import numpy as np
import pytest

from planner.farm.species import ELEMENTS
from planner.forecast.why.arithmetic import recomputed
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import Ground, NoSuchFigureError
from planner.forecast.why.pick_span import pick_span, why_pick_span
from planner.forecast.why.ranges import (
    why_range_of_demand,
    why_range_of_feed,
    why_range_of_harvest,
    why_range_of_ratio,
    why_range_of_supply,
)
from planner.forecast.why.values import Origin
from tests.forecast.ranges.test_ranges import sample
from tests.forecast.sample_farms import known
from tests.forecast.why.working import walk

NAMES = ("backyard", "by-hand")


def asked(name):
    farm, forecast, forecaster = known(name)
    return Ground(farm=farm, forecast=forecast, forecaster=forecaster), sample(name)[2]


def every_range(name, week):
    """Yield an answer for each figure of a week that has a range, with the range's own three numbers."""
    ground, ranges = asked(name)
    for grams, band in ((False, ranges.harvest_plants), (True, ranges.harvest_g)):
        for number, crop in enumerate(ranges.crops):
            yield why_range_of_harvest(ground, ranges, crop, week, grams=grams), band, (number, week)
    for loop in ranges.loops:
        yield why_range_of_feed(ground, ranges, loop.loop, week), loop.feed_g_per_day, (week,)
        for element in range(len(ELEMENTS)):
            at = (element, week)
            yield why_range_of_supply(ground, ranges, loop.loop, week, element), loop.supply_g, at
            yield why_range_of_demand(ground, ranges, loop.loop, week, element), loop.demand_g, at
            if not math.isnan(loop.ratio.likely[at]):
                yield why_range_of_ratio(ground, ranges, loop.loop, week, element), loop.ratio, at


@pytest.mark.parametrize("name", NAMES)
def test_that_both_ends_of_every_range_come_out_of_what_is_told(name):
    weeks = asked(name)[1].ruler.weeks
    told = 0
    for week in range(0, weeks, 5):
        for answer, band, at in every_range(name, week):
            ends = answer.children
            assert answer.value == pytest.approx(band.likely[at])
            assert [end.value for end in ends] == pytest.approx([band.low[at], band.high[at]])
            for one in walk(answer):
                assert recomputed(one) == pytest.approx(one.value, rel=1e-9, abs=1e-9), one.title
            told += sum(len(end.children) for end in ends)
    assert told > weeks


@pytest.mark.parametrize("name", NAMES)
def test_that_the_figure_that_does_most_comes_first_and_tells_its_range_and_source(name):
    for answer, _, _ in every_range(name, asked(name)[1].ruler.weeks // 2):
        for end in walk(answer):
            if end.formula is not Formula.RANGE_HIGH or not end.children:
                continue
            sizes = [one.value for one in end.children]
            assert sizes == sorted(sizes, reverse=True)
            others = next((one.value for one in end.inputs if one.name == "others"), 0.0)
            assert sizes[-1] > 0 or others == 0
            for one in end.children:
                figure = one.inputs[0]
                assert figure.origin is Origin.FIGURE
                assert figure.low < figure.high
                assert figure.confidence


def test_that_the_first_figure_is_the_one_that_the_swings_say_matters_most():
    ground, ranges = asked("backyard")
    loop, week = ranges.loops[0], ranges.ruler.weeks // 2
    answer = why_range_of_feed(ground, ranges, loop.loop, week)
    raised = [
        max(0.0, float(swing.at_low.feed_g_per_day[0, week]), float(swing.at_high.feed_g_per_day[0, week]))
        for swing in ranges.swings
    ]
    most = ranges.swings[int(np.argmax(raised))]
    assert answer.children[1].children[0].inputs[0].path == most.paths[0]


def test_that_what_is_not_there_is_refused():
    ground, ranges = asked("backyard")
    with pytest.raises(NoSuchFigureError, match="not grown"):
        why_range_of_harvest(ground, ranges, "no-such-crop", 0, grams=True)
    with pytest.raises(NoSuchFigureError, match="no loop"):
        why_range_of_feed(ground, ranges, "nowhere", 0)


@pytest.mark.parametrize("name", NAMES)
def test_that_a_batch_says_how_soon_and_how_late_it_may_be_picked(name):
    ground, _ = asked(name)
    table = ground.forecast.batches
    seen = 0
    for row in range(0, len(ground.farm.batches), 7):
        answer = why_pick_span(ground, row)
        likely = int(table.ends[row, 3] - table.sow_day[row])
        assert answer.value == likely == answer.input("likely").value
        assert answer.input("low").value <= likely <= answer.input("high").value
        for one in walk(answer):
            assert recomputed(one) == pytest.approx(one.value), one.title
        seen += len(answer.children[1].children)
    assert seen


def test_that_more_days_in_the_bed_by_the_book_are_more_days_to_the_pick():
    ground, _ = asked("backyard")
    row = next(
        row
        for row, batch in enumerate(ground.farm.batches)
        if batch.bed_days is None and ground.catalogue.crops[batch.crop].bed_days >= 10
    )
    path = f"crop/{ground.farm.batches[row].crop}/bed_days"
    figure = ground.catalogue.figure(path)
    moved = next(one for one in pick_span(ground, row).moved if one.paths == (path,))
    # A season only ever slows a crop, so each day more by the book is at least a day more.
    assert moved.at_high >= round(figure.high) - round(figure.value)
    assert moved.at_low <= round(figure.low) - round(figure.value) < 0


def test_that_days_which_the_grower_gave_are_not_moved():
    ground, _ = asked("by-hand")
    for row, batch in enumerate(ground.farm.batches):
        if batch.bed_days is not None:
            paths = {path for one in pick_span(ground, row).moved for path in one.paths}
            assert f"crop/{batch.crop}/bed_days" not in paths
