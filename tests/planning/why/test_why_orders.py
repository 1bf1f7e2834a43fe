"""Every amount of the order list is the sum of the sowings, fish and doses that use it."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import pytest

from planner.catalogue.loading import shipped_catalogue
from planner.farm.crops import SeedLot
from planner.farm.ids import id_from
from planner.farm.water import Dose
from planner.forecast.engine import Forecaster
from planner.planning.orders import OrderKind, order_list
from planner.planning.why_orders import order_name, order_whys
from tests.farms import LOOP, MONDAY, RAFT, farm_of, group_of, weekly_batches
from tests.planning.why.helpers import all_made

LOT = SeedLot(
    id=id_from("lot"),
    code="LOT-1",
    crop="lettuce-butterhead",
    bought_on=MONDAY - timedelta(days=100),
    germination_share=0.5,
    seeds_left=400,
)


def whole_farm():
    batches = weekly_batches(12, bed=RAFT.id, seed_lot=LOT.id)
    dose = Dose(
        id=id_from("dose"), loop=LOOP.id, on=MONDAY, supplement="iron-dtpa-11", grams=5.0, every_days=14
    )
    fish = (group_of("One"), dataclasses.replace(group_of("Two"), id=id_from("two"), count=10))
    return farm_of(batches=batches, seed_lots=(LOT,), fish_groups=fish, doses=(dose,))


def asked(farm, **span):
    forecaster = Forecaster(shipped_catalogue())
    forecast = forecaster.preview(farm)
    lines = order_list(farm, forecast, forecaster.catalogue, **span)
    return lines, all_made(order_whys(farm, forecast, forecaster, lines, **span))


@pytest.mark.parametrize("span", [{}, {"first_day": 10, "last_day": 80}])
def test_that_every_amount_is_the_sum_of_what_uses_it(span):
    lines, found = asked(whole_farm(), **span)
    assert {line.kind for line in lines} >= {
        OrderKind.SEED,
        OrderKind.PLUG,
        OrderKind.NET_POT,
        OrderKind.FEED,
        OrderKind.IRON,
    }
    for line in lines:
        answer = found[order_name(line)]
        assert answer.value == line.amount
        assert answer.children
        if line.to_buy is not None:
            assert found[f"{order_name(line)} to-buy"].value == line.to_buy
        if line.in_stock is not None:
            assert found[f"{order_name(line)} in-stock"].value == line.in_stock


def test_that_names_of_lines_are_told_apart():
    lines, found = asked(whole_farm())
    assert len({order_name(line) for line in lines}) == len(lines)
    assert set(found) >= {order_name(line) for line in lines}


def test_that_the_sample_farm_can_be_asked_whole(means, farm):
    forecast = means.forecaster.preview(farm)
    lines = order_list(farm, forecast, means.forecaster.catalogue_for(farm))
    found = all_made(order_whys(farm, forecast, means.forecaster, lines))
    assert len(found) >= len(lines) > 20
