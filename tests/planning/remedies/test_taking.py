"""Advice is taken in the farm file as one act, and let go again."""

from __future__ import annotations

from planner.forecast.values import FlagKind
from planner.planning.remedies.ask import remedies
from planner.planning.scenarios.sets import Scenario, adopted
from planner.planning.stocking.options import Search
from planner.planning.stocking.propose import stocking_table
from planner.planning.stocking.startup import start_up
from tests.farms import LOOP
from tests.planning.remedies.cases import falling_farm, flag_of, wave_farm
from tests.planning.stocking.farms import raft_farm, raft_need, raft_wish
from tests.planning.stocking.test_startup import young_farm


def taken_and_let_go(means, path, farm, change_sets):
    store = means.create_store(path, farm)
    session = means.session(store)
    try:
        start = session.farm
        for change_set in change_sets:
            session.act(change_set)
            assert session.farm != start
            assert session.undo_title == change_set.title
            session.undo()
            assert session.farm == start
    finally:
        store.close()


def test_that_every_remedy_is_one_act_that_can_be_undone(means, tmp_path):
    for name, farm, kind in (
        ("wave", wave_farm(), FlagKind.SHORT_SUPPLY),
        ("falling", falling_farm(), FlagKind.FEED_FALLS),
    ):
        found = remedies(farm, means.forecaster, flag_of(farm, means.forecaster, kind))
        taken_and_let_go(means, tmp_path / f"{name}.raftweek", farm, [one.change_set for one in found])


def test_that_a_stocking_is_one_act_that_can_be_undone(means, tmp_path):
    farm = raft_farm()
    wish = raft_wish(means.catalogue.fish["nile-tilapia"], groups=(4,), shares=(0.5,))
    table = stocking_table(farm, means.forecaster, wish, need=raft_need(), search=Search(rounds=0))
    taken_and_let_go(means, tmp_path / "raft.raftweek", farm, [table.best.change_set])


def test_that_a_start_up_and_a_scenario_are_one_act_that_can_be_undone(means, tmp_path):
    farm = young_farm()
    change_set = start_up(farm, means.forecaster, LOOP.id).change_set
    adopting = adopted(farm, Scenario(name="start slowly", change_sets=(change_set,)))
    taken_and_let_go(means, tmp_path / "young.raftweek", farm, [change_set, adopting])
