"""The order list by month, against plain sums over the same farm."""

from __future__ import annotations

import dataclasses
from datetime import date, timedelta

import pytest

from planner.catalogue.loading import shipped_catalogue
from planner.farm.crops import SeedLot
from planner.farm.ids import id_from
from planner.farm.species import BedKind
from planner.farm.water import Dose
from planner.forecast.engine import Forecaster
from planner.planning.orders import OrderKind, OrderUnit, order_list
from planner.planning.plain import order_rows, orders_data
from tests.farms import LOOP, MONDAY, NURSERY, RAFT, batch_of, farm_of, group_of, weekly_batches

FORECASTER = Forecaster(shipped_catalogue())


def orders(farm, **span):
    forecast = FORECASTER.preview(farm)
    return order_list(farm, forecast, FORECASTER.catalogue, **span)


def of_kind(lines, *kinds):
    return [line for line in lines if line.kind in kinds]


def test_that_seeds_of_all_months_are_all_seeds_of_the_plan():
    farm = farm_of(batches=weekly_batches(12, bed=RAFT.id))
    lines = of_kind(orders(farm), OrderKind.SEED)
    assert [line.month for line in lines] == ["2027-01", "2027-02", "2027-03"]
    assert sum(line.amount for line in lines) == FORECASTER.preview(farm).batches.seeds.sum()
    assert all(line.unit is OrderUnit.SEEDS and line.to_buy == line.amount for line in lines)


def test_that_a_lot_goes_down_month_by_month_and_what_is_missing_is_told():
    lot = SeedLot(
        id=id_from("lot"),
        code="LOT-1",
        crop="lettuce-butterhead",
        bought_on=MONDAY - timedelta(days=100),
        germination_share=0.5,
        seeds_left=400,
    )
    batches = weekly_batches(12, bed=RAFT.id, seed_lot=lot.id)
    first, second, third = of_kind(orders(farm_of(batches=batches, seed_lots=(lot,))), OrderKind.SEED)
    assert (first.detail, first.germination_share, first.lot_age_days) == ("LOT-1", 0.5, 100)
    assert (first.in_stock, first.to_buy) == (400, 0)
    assert second.in_stock == 400 - first.amount
    assert third.in_stock == max(second.in_stock - second.amount, 0)
    total = first.amount + second.amount + third.amount
    assert sum(line.to_buy for line in (first, second, third)) == total - 400
    assert second.lot_age_days == (date(2027, 2, 1) - MONDAY).days + 100


def test_that_a_lot_whose_stock_is_not_counted_asks_for_nothing():
    lot = SeedLot(id=id_from("lot"), code="LOT-1", crop="lettuce-butterhead")
    farm = farm_of(batches=(batch_of(bed=RAFT.id, seed_lot=lot.id),), seed_lots=(lot,))
    (line,) = of_kind(orders(farm), OrderKind.SEED)
    assert (line.in_stock, line.to_buy, line.lot_age_days) == (None, None, None)


def test_that_plugs_are_for_seedlings_and_pots_for_plants_on_rafts():
    gravel = dataclasses.replace(RAFT, id=id_from("gravel"), name="Gravel", kind=BedKind.MEDIA)
    batches = (
        batch_of("A", bed=RAFT.id, plants=25),
        batch_of("B", bed=gravel.id, plants=10),
        batch_of("C", bed=RAFT.id, plants=5, germination_days=0.0, nursery_days=0.0),
    )
    farm = farm_of(beds=(RAFT, gravel, NURSERY), batches=batches)
    seeds = FORECASTER.preview(farm).batches.seeds
    lines = orders(farm)
    assert sum(line.amount for line in of_kind(lines, OrderKind.PLUG)) == seeds[0] + seeds[1]
    assert sum(line.amount for line in of_kind(lines, OrderKind.NET_POT)) == 30
    assert {line.unit for line in of_kind(lines, OrderKind.PLUG, OrderKind.NET_POT)} == {OrderUnit.PIECES}


def test_that_feed_by_month_is_what_the_fish_eat():
    loop = dataclasses.replace(LOOP, water_c=(26.0,) * 12)
    farm = farm_of(loops=(loop,), fish_groups=(group_of(), group_of("Small", mean_weight_g=5.0)))
    lines = of_kind(orders(farm), OrderKind.FEED)
    eaten = sum(group.feed_g.sum() for loop in FORECASTER.preview(farm).loops for group in loop.groups)
    assert sum(line.amount for line in lines) == pytest.approx(eaten / 1000.0)
    feed = FORECASTER.catalogue.feeds["tilapia-grow-out-32"]
    assert {(line.detail, line.unit) for line in lines} == {(feed.pellet_mm, OrderUnit.KG)}
    low, high = lines[0].fish_g
    assert low == pytest.approx(5.0, rel=0.05)
    assert low < lines[0].made_for_g[0] < high


def test_that_doses_are_sorted_into_base_iron_and_salts():
    doses = (
        Dose(
            id=id_from("d1"),
            loop=LOOP.id,
            supplement="potassium-bicarbonate",
            grams=10.0,
            on=MONDAY,
            every_days=7,
        ),
        Dose(id=id_from("d2"), loop=LOOP.id, supplement="iron-dtpa-11", grams=5.0, on=MONDAY),
        Dose(id=id_from("d3"), loop=LOOP.id, supplement="magnesium-sulfate", grams=3.0, on=MONDAY),
    )
    lines = of_kind(orders(farm_of(doses=doses)), OrderKind.BASE, OrderKind.IRON, OrderKind.SALT)
    base = [line for line in lines if line.kind is OrderKind.BASE]
    assert sum(line.amount for line in base) == 10.0 * 20
    assert base[0].amount == 40.0
    assert {line.unit for line in lines} == {OrderUnit.G}
    assert len({line.kind for line in lines}) == len(doses) == 3


def test_that_only_the_days_asked_for_count():
    farm = farm_of(batches=weekly_batches(12, bed=RAFT.id))
    parts = [orders(farm, first_day=start, last_day=start + 70) for start in (0, 70)]
    whole = sum(line.amount for line in orders(farm) if line.kind is OrderKind.SEED)
    assert sum(line.amount for part in parts for line in part if line.kind is OrderKind.SEED) == whole


def test_that_an_empty_farm_needs_nothing():
    assert orders(farm_of()) == ()


def test_that_rows_have_the_same_fields_and_name_the_format():
    farm = farm_of(batches=weekly_batches(2, bed=RAFT.id), fish_groups=(group_of(),))
    rows = list(order_rows(orders(farm)))
    assert len({tuple(row) for row in rows}) == 1
    assert orders_data(farm, orders(farm))["format"] == "raftweek.orders/1"
