"""The pages of the middle pane: made when seen, filled when stale, wide ones alone in the window."""

import pytest

from planner.desk.places.listed import LISTED
from planner.desk.places.makers import MAKERS

LATE = [listed for listed in LISTED if listed.late]


def test_that_every_late_page_has_a_maker_and_no_maker_is_left_over():
    assert {listed.key for listed in LATE} == set(MAKERS)


def test_that_no_two_pages_share_their_keys():
    keys = [listed.keys for listed in LISTED]
    assert len(set(keys)) == len(keys)


def test_that_no_late_page_is_made_before_it_is_seen(window):
    assert all(holder.place is None for holder in window.workspace.shelf.holders.values())


@pytest.mark.parametrize("listed", LATE, ids=lambda listed: listed.key)
def test_that_a_page_is_brought_to_the_front_by_its_menu_entry(window, listed):
    shelf = window.workspace.shelf
    window.menus.actions[f"view.{listed.key}"].trigger()
    assert shelf.listed is listed
    assert shelf.place(listed.key).isVisible()
    assert window.workspace.due.isHidden() is listed.wide
    assert window.workspace.side.isHidden() is listed.wide
    window.menus.actions["view.weeks"].trigger()
    assert not window.workspace.due.isHidden()


@pytest.mark.parametrize("listed", LATE, ids=lambda listed: listed.key)
def test_that_a_page_outlives_an_act_and_another_look(window, farm, listed):
    window.menus.actions[f"view.{listed.key}"].trigger()
    window.workspace.choose(farm.batches[0].id)
    window.menus.actions["change.remove"].trigger()
    window.menus.actions["change.undo"].trigger()
    window.menus.actions["shade.dark"].trigger()
    window.menus.actions["shade.light"].trigger()
    assert window.conduct.session.farm == farm
