"""Feed that is given is rounded once, and alike in the list, on the pages and on paper."""

import pytest

from planner.desk.behind import Behind
from planner.desk.fish.rows import group_rows
from planner.desk.late import short_words
from planner.desk.outlook import look_out
from planner.desk.rations import feed_words
from planner.paper.documents.amounts import ration_number
from planner.planning.moved import WeekShift


@pytest.mark.parametrize("grams", [0.44, 3.0, 9.96, 15.6, 42.7, 49.9, 50.0, 191.0, 318.9])
def test_that_window_and_paper_round_feed_alike(grams):
    assert feed_words(grams) == ration_number(grams)


def test_that_the_table_of_fish_shows_feed_as_the_sheet_does(means, farm):
    day = farm.settings.plan_from
    behind = Behind(look_out(farm, means.forecaster), means.forecaster, day)
    forecast = behind.outlook.group(farm.fish_groups[0].id)[1]
    at = behind.outlook.forecast.ruler.day_of(day)
    row = next(row for row in group_rows(behind) if row.id == farm.fish_groups[0].id)
    assert row.texts[6] == ration_number(float(forecast.feed_g[at]))


@pytest.mark.parametrize(("plants", "said"), [(-1.0, "1 head short"), (-2.0, "2 heads short")])
def test_that_one_head_short_is_one(means, farm, plants, said):
    outlook = look_out(farm, means.forecaster)
    crops = outlook.catalogue.crops
    batch = next(each for each in farm.batches if crops[each.crop].harvest.value == "single")
    shift = WeekShift(crop=batch.crop, week=3, plants=plants)
    assert short_words(shift, outlook).endswith(said)
