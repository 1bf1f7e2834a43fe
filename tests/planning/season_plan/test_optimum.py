"""On a season small enough to try every plan, the exact search finds the best, and the search nearly."""

from __future__ import annotations

import dataclasses
from datetime import timedelta
from itertools import product

import numpy as np
import pytest

from planner.farm.crops import Phase
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.ids import id_from
from planner.farm.site import Bed
from planner.farm.species import BedKind
from planner.planning.season_plan.job import solve
from planner.planning.season_plan.options import PlanOptions
from planner.planning.season_plan.plan import PlanStatus
from tests.farms import LOOP, MONDAY, batch_of, farm_of, group_of
from tests.planning.season_plan.conftest import target_of

LOT, PLACES = 8, 24
CROPS = ("pak-choi", "mustard-greens")


@pytest.fixture(scope="module")
def tiny():
    bed = Bed(
        id=id_from("tiny"), name="Raft", loop=LOOP.id, kind=BedKind.RAFT, rows=4, columns=6, area_m2=1.0
    )
    return farm_of(
        beds=(bed,),
        fish_groups=(group_of(count=6),),
        targets=(target_of(CROPS[0], 13.0, from_week=5), target_of(CROPS[1], 9.0, from_week=5)),
        settings=dataclasses.replace(farm_of().settings, plan_weeks=8),
    )


def weekly_batches_of(tiny, lots):
    """Return batches of both crops for lots by (crop, week)."""
    found = []
    for (crop, week), count in lots.items():
        if count:
            found.append(
                batch_of(
                    f"{crop}-{week}",
                    crop=crop,
                    sow_on=MONDAY + timedelta(weeks=week),
                    plants=count * LOT,
                    bed=tiny.beds[0].id,
                    **dict.fromkeys(
                        (
                            "germination_days",
                            "nursery_days",
                            "bed_days",
                            "clearing_days",
                            "bed_survival_share",
                        )
                    ),
                )
            )
    return tuple(found)


class Reckoner:
    """Prices plans from forecasts of one batch each, in plain sums that share nothing with the planner's."""

    def __init__(self, tiny, means):
        self.tiny, self.catalogue = tiny, means.catalogue
        bare = means.forecaster.preview(tiny)
        self.weeks = bare.ruler.weeks
        self.supply = bare.ruler.weekly_sum(bare.loops[0].supply_g)
        self.harvest, self.demand, self.held = {}, {}, {}
        for crop, week in product(CROPS, range(self.weeks)):
            farm = dataclasses.replace(tiny, batches=weekly_batches_of(tiny, {(crop, week): 1}))
            seen = means.forecaster.preview(farm)
            market = self.catalogue.crops[crop].marketable_share
            row = seen.crops.index(crop)
            self.harvest[crop, week] = seen.ruler.weekly_sum(seen.harvest_plants[row]) * market
            self.demand[crop, week] = seen.ruler.weekly_sum(seen.loops[0].demand_g)
            start, end = seen.batches.phase_days(0, Phase.BED)
            held = np.zeros(200, dtype=int)
            held[start:end] = LOT
            self.held[crop, week] = held
        self.useful = [key for key, harvest in self.harvest.items() if harvest.any()]

    def figure(self, name):
        return self.catalogue.figure(f"coefficient/{name}").value

    def cost(self, lots):
        """Return the cost of lots by (crop, week), infinite where they do not fit."""
        if sum((count * self.held[key] for key, count in lots.items()), np.zeros(200)).max() > PLACES:
            return np.inf
        total = 0.0
        for target in self.tiny.targets:
            first = (target.from_on - MONDAY).days // DAYS_PER_WEEK
            wanted = np.where(np.arange(self.weeks) >= first, target.amount_per_week, 0.0)
            got = sum(
                (count * self.harvest[key] for key, count in lots.items() if key[0] == target.crop),
                np.zeros(self.weeks),
            )
            missed, over = np.maximum(wanted - got, 0).sum(), np.maximum(got - wanted, 0).sum()
            total += (
                missed * self.figure("season_plan/missed_weight")
                + over * self.figure("season_plan/wasted_weight")
            ) / target.amount_per_week
        demand = sum((count * self.demand[key] for key, count in lots.items()), np.zeros_like(self.supply))
        short = np.maximum(demand - self.supply / self.figure("verdict/thin_below"), 0)
        idle = np.maximum(self.supply / self.figure("verdict/ample_above") - demand, 0)
        usual = self.supply.mean(axis=1, keepdims=True)
        counted = usual[:, 0] > 0
        price = short * self.figure("season_plan/short_element_weight")
        price += idle * self.figure("season_plan/idle_element_weight")
        return total + float((price[counted] / usual[counted]).sum())


@pytest.fixture(scope="module")
def reckoner(tiny, means):
    return Reckoner(tiny, means)


@pytest.fixture(scope="module")
def best(reckoner):
    keys = reckoner.useful
    assert 4 <= len(keys) <= 7
    counts = product(range(PLACES // LOT + 1), repeat=len(keys))
    return min(reckoner.cost(dict(zip(keys, lots, strict=True))) for lots in counts)


def lots_of(plan):
    return {(sowing.crop, sowing.week): sowing.plants // LOT for sowing in plan.sowings}


def test_that_the_exact_search_finds_the_best_of_all_plans(tiny, means, reckoner, best):
    options = PlanOptions(lot_plants=LOT, rounds=0, exact=True, exact_seconds=60.0)
    plan = solve(tiny, means.forecaster, options)
    assert plan.status is PlanStatus.BEST
    assert plan.sowings
    assert plan.parts.cost == pytest.approx(best, rel=1e-6)
    assert reckoner.cost(lots_of(plan)) == pytest.approx(best, rel=1e-6)


def test_that_the_quick_search_comes_to_the_best_as_well(tiny, means, reckoner, best):
    plan = solve(tiny, means.forecaster, PlanOptions(lot_plants=LOT, rounds=300))
    assert reckoner.cost(lots_of(plan)) == pytest.approx(plan.parts.cost, rel=1e-6)
    assert plan.parts.cost == pytest.approx(best, rel=1e-6)


def test_that_the_bound_is_no_more_than_the_best_of_all_plans(tiny, means, best):
    plan = solve(tiny, means.forecaster, PlanOptions(lot_plants=LOT, rounds=0))
    assert plan.model.worth - plan.bound <= best + 1e-9
    assert plan.gap >= 0
