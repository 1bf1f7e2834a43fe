"""Holes in the feed, and feed to buy: the forecast's figures, worked again."""

from __future__ import annotations

import pytest

from planner.farm.fields import NO_ID
from planner.forecast.plain import WeekSpan, forecast_data
from planner.forecast.values import FlagKind
from planner.forecast.why.ask import why
from planner.forecast.why.ground import NoSuchFigureError
from planner.forecast.why.values import NoteKind, Subject, SubjectKind
from planner.planning.orders import OrderKind, order_list
from tests.forecast.sample_farms import NAMES, known
from tests.forecast.why.test_fish_figures import groups_of
from tests.forecast.why.working import asked, walk, works_out


def falls_of(name):
    return [flag for flag in known(name)[1].flags if flag.kind is FlagKind.FEED_FALLS]


@pytest.mark.parametrize("name", NAMES)
def test_that_every_fall_the_forecast_warns_of_is_explained(name):
    forecast = known(name)[1]
    for flag in falls_of(name):
        day = forecast.ruler.day_of(flag.on)
        found = asked(name, kind=SubjectKind.FEED_FALL, about=flag.about, day=day)
        assert found.value == pytest.approx(100 * dict(flag.values)["fall_share"], rel=1e-9)
        works_out(found)
        (back,) = found.notes
        assert (back.kind is NoteKind.FEED_NOT_BACK) == (flag.until_on is None)
        if flag.until_on is not None:
            assert dict(back.values)["on"] == flag.until_on.isoformat()
        assert found.children[2].value == dict(flag.values)["fish"]
    assert falls_of("by-hand")


@pytest.mark.parametrize("name", NAMES)
def test_that_every_week_says_how_its_feed_stands_to_the_four_before(name):
    forecast = known(name)[1]
    for loop in forecast.loops:
        means = forecast.ruler.weekly_mean(loop.feed_g)
        for week in range(forecast.ruler.weeks):
            found = asked(name, kind=SubjectKind.FEED_HOLE, about=loop.loop, week=week)
            before = means[max(week - 4, 0) : week]
            if not before.size or not before.mean():
                assert found.value is None
                assert {note.kind for note in found.notes} == {NoteKind.NOTHING_BEFORE}
                continue
            assert found.value == pytest.approx(100 * (1 - means[week] / before.mean()), abs=1e-9)
            works_out(found)


def test_that_a_hole_names_the_harvest_the_purge_and_the_empty_tank_that_open_it():
    loop = known("by-hand")[1].loops[0].loop
    kinds = {}
    for week in (1, 8, 13, 15):
        found = asked("by-hand", kind=SubjectKind.FEED_HOLE, about=loop, week=week)
        kinds[week] = {note.kind for one in walk(found) for note in one.notes}
    assert NoteKind.OFF_FEED in kinds[1]
    assert NoteKind.FISH_TAKEN in kinds[8]
    assert NoteKind.PURGED in kinds[13]
    assert {NoteKind.NO_FISH, NoteKind.OPENED_BY_HARVEST} <= kinds[15]


def test_that_a_day_without_a_fall_names_the_days_that_have_one():
    group = groups_of("by-hand")[0]
    with pytest.raises(NoSuchFigureError, match=r"does not fall on .*; it falls on \d{4}-"):
        asked("by-hand", kind=SubjectKind.FEED_FALL, about=group.group, day=3)


@pytest.mark.parametrize("name", NAMES)
def test_that_the_feed_of_the_plan_is_that_of_the_order_list(name):
    farm, forecast, forecaster = known(name)
    lines = order_list(farm, forecast, forecaster.catalogue_for(farm))
    for feed in {group.feed for group in farm.fish_groups}:
        found = asked(name, kind=SubjectKind.FEED_AMOUNT, part=feed)
        wanted = sum(line.amount for line in lines if line.kind is OrderKind.FEED and line.key == feed)
        assert found.value == pytest.approx(wanted, rel=1e-9)
        works_out(found)


def test_that_feed_is_told_for_a_group_a_loop_a_farm_and_some_weeks():
    forecast = known("by-hand")[1]
    loop = forecast.loops[0]
    group = loop.groups[1]
    whole = asked("by-hand", kind=SubjectKind.FEED_AMOUNT, about=loop.loop)
    assert whole.value == pytest.approx(loop.feed_g.sum() / 1000, rel=1e-9)
    assert asked("by-hand", kind=SubjectKind.FEED_AMOUNT, about=NO_ID).value == pytest.approx(whole.value)
    some = asked("by-hand", kind=SubjectKind.FEED_AMOUNT, about=group.group, week=3, weeks=2)
    assert some.value == pytest.approx(group.feed_g[21:35].sum() / 1000, rel=1e-9)
    assert len(some.children) == 2


@pytest.mark.parametrize("words", [{"about": "nobody"}, {"part": "chips"}, {"week": 3, "weeks": 99}])
def test_that_feed_of_what_is_not_there_is_refused_in_a_sentence(words):
    farm, forecast, forecaster = known("by-hand")
    with pytest.raises(NoSuchFigureError, match=r"\w+.*\.$"):
        why(Subject(kind=SubjectKind.FEED_AMOUNT, **words), farm, forecast, forecaster)


@pytest.mark.parametrize("name", NAMES)
def test_that_gain_and_harvest_of_fish_over_the_plan_are_the_totals_of_the_forecast(name):
    farm, forecast, forecaster = known(name)
    span = WeekSpan(first=0, last=forecast.ruler.weeks)
    totals = forecast_data(farm, forecast, forecaster.bands, span=span)["totals"]
    for kind, key in (
        (SubjectKind.FISH_GAINED, "fish_gain_kg"),
        (SubjectKind.FISH_HARVESTED, "fish_harvest_kg"),
        (SubjectKind.FEED_AMOUNT, "feed_kg"),
    ):
        found = asked(name, kind=kind)
        assert found.value == pytest.approx(totals[key], abs=1e-5)
        works_out(found)
