"""The first minutes: three doors, a strip over the sample, and what a new plan comes to."""

from dataclasses import replace

import pytest
from PySide6.QtWidgets import QPushButton

from planner.actions.changing import addition
from planner.desk.behind import Behind
from planner.desk.doors.asked import first_facts
from planner.desk.doors.dialog import DoorsDialog
from planner.desk.doors.figures import AHEAD_WEEKS, first_figures
from planner.desk.doors.first import FirstDialog
from planner.desk.newfarm.dialog import NewFarmDialog
from planner.desk.outlook import look_out
from planner.desk.pages import Summed
from planner.desk.shade import ShadeChoice
from planner.desk.why.answers import answer_of
from planner.desk.why.dialog import WhyDialog
from planner.desk.why.entered import answer_to
from planner.farm.ids import new_id
from tests.desk.helpers import nameless_controls


def dialogs(window, kind):
    return window.findChildren(kind)


def test_that_the_first_start_shows_the_sample_with_the_doors_as_a_strip(window, rooms):
    assert ("first",) in rooms.calls
    assert window.doors.strip.isVisible()
    window.doors.strip.away.click()
    assert window.doors.strip is None


def test_that_the_strip_leads_to_a_new_farm(window):
    window.doors.strip.new.click()
    assert len(dialogs(window, NewFarmDialog)) == 1


def test_that_begin_shows_three_doors_each_with_a_name(window):
    window.menus.actions["farm.begin"].trigger()
    (dialog,) = dialogs(window, DoorsDialog)
    assert len(dialog.findChildren(QPushButton)) == 3
    assert nameless_controls(dialog) == []
    dialog.new.click()
    assert len(dialogs(window, NewFarmDialog)) == 1


def test_that_the_door_of_the_sample_opens_it(window, rooms):
    before = rooms.calls.count(("first",))
    window.menus.actions["farm.begin"].trigger()
    dialogs(window, DoorsDialog)[0].sample.click()
    assert rooms.calls.count(("first",)) == before + 1
    assert window.doors.strip is not None


def test_that_the_first_figures_are_those_of_the_forecast(window):
    workspace = window.workspace
    found = first_figures(workspace._behind)
    outlook = workspace.outlook
    week = outlook.week_of(workspace._today)
    loop = outlook.forecast.loops[0].loop
    verdicts = outlook.verdicts[loop]
    assert found.feed_g_per_day == verdicts[week].feed_g_per_day
    assert found.carried[0].now_m2 == verdicts[week].area_fed_m2
    assert found.carried[0].then_m2 == verdicts[week + AHEAD_WEEKS].area_fed_m2
    sown = [batch for batch in outlook.farm.batches if outlook.forecast.ruler.week_of(batch.sow_on) == week]
    assert sum(each.seeds for each in found.sowings) == sum(outlook.seeds(batch) for batch in sown)


def test_that_a_farm_begun_is_told_in_figures_and_can_be_printed(window, tmp_path):
    window.files._on_begin(str(tmp_path / "own.raftweek"))
    (dialog,) = dialogs(window, FirstDialog)
    assert nameless_controls(dialog) == []
    dialog.print.click()
    from planner.desk.printing import PrintDialog

    assert len(dialogs(window, PrintDialog)) == 1


def test_that_the_strip_is_inked_anew_when_the_look_changes(window):
    words = window.doors.strip.words
    window.set_shade(ShadeChoice.DARK)
    dark = words.palette().color(words.foregroundRole())
    assert dark == window.theme.text
    window.set_shade(ShadeChoice.LIGHT)
    assert words.palette().color(words.foregroundRole()) == window.theme.text != dark


def test_that_the_first_figures_follow_what_is_done_to_the_farm(window):
    window.workspace.asking.show_first()
    (dialog,) = dialogs(window, FirstDialog)
    before = dialog.said["sow"].text()
    batch = window.workspace.outlook.farm.batches[0]
    today = window.workspace._today
    window.conduct.act(addition("Sow", replace(batch, id=new_id(), code="NEW-1", sow_on=today, plants=77)))
    after = dialog.said["sow"].text()
    assert after != before
    figures = first_figures(window.workspace._behind)
    assert all(str(each.seeds) in after for each in figures.sowings)


def test_that_every_first_figure_can_be_asked_why(window):
    window.workspace.asking.show_first()
    (dialog,) = dialogs(window, FirstDialog)
    assert set(dialog.asks) == set(dialog.said)
    facts = first_facts(window.workspace._behind)
    for key, ask in dialog.asks.items():
        assert ask.isEnabled() == bool(facts[key])
        for fact in facts[key]:
            why = answer_to(window.workspace._behind, fact.ask)
            assert answer_of(why, window.workspace.outlook.catalogue).rows
    dialog.asks["feed"].click()
    (why,) = dialogs(window, WhyDialog)
    why.reject()


def test_that_a_sum_on_a_card_is_asked_as_the_sum_it_is(means, farm):
    first = farm.batches[0]
    twin = replace(first, id=new_id(), code="TWIN")
    loop = replace(farm.loops[0], id=new_id(), name="Second")
    two = replace(farm, batches=(*farm.batches, twin), loops=(*farm.loops, loop))
    behind = Behind(look_out(two, means.forecaster), means.forecaster, first.sow_on)
    facts, figures = first_facts(behind), first_figures(behind)
    sums = [fact for fact in facts["sow"] if isinstance(fact.ask, Summed)]
    seeds = {each.crop: each.seeds for each in figures.sowings}
    assert sums
    assert all(answer_to(behind, fact.ask).value == seeds[fact.label] for fact in sums)
    assert answer_to(behind, facts["feed"][0].ask).value == pytest.approx(figures.feed_g_per_day)
    assert len(facts["feed"]) == 3
