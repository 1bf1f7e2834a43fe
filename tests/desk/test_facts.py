"""The side panel says what the forecast says, with figures, sources and confidence."""

import dataclasses
from datetime import timedelta

import pytest

from planner.desk.behind import Behind
from planner.desk.facts import page_of
from planner.desk.lanes.words import stage_letter
from planner.desk.outlook import look_out
from planner.desk.pages import Entered
from planner.desk.places_words import beds_by_batch, places_of
from planner.desk.side import SidePanel, page_html
from planner.desk.theme import DARK, LIGHT
from planner.desk.week_facts import flag_words
from planner.desk.words import choice_words
from planner.farm.crops import Phase, Stage
from planner.forecast.values import Flag, FlagKind
from tests.desk.helpers import TODAY, put_away


@pytest.fixture(scope="session")
def outlook(means, farm):
    return look_out(farm, means.forecaster)


@pytest.fixture
def behind(outlook, means):
    return Behind(outlook, means.forecaster, TODAY)


def words(page):
    return [
        page.title,
        page.subtitle,
        *(
            text
            for section in page.sections
            for text in (
                section.title,
                *(warning.value for warning in section.warnings),
                *(part for fact in section.facts for part in (fact.label, fact.value, fact.note)),
                *(part for figure in section.figures for part in (figure.label, figure.value, figure.source)),
            )
        ),
    ]


def test_that_a_batch_page_has_every_stage_with_its_dates(outlook, farm, behind):
    batch = farm.batches[0]
    row = outlook.forecast.batches.row_of[batch.id]
    page = page_of(behind, batch, TODAY)
    spans = outlook.forecast.batches.spans(row, outlook.forecast.ruler)
    dates = next(section for section in page.sections if len(section.facts) == len(spans) + 1)
    assert len(spans) >= 3
    assert all(
        f"{span.start_on.day} " in fact.value for span, fact in zip(spans, dates.facts[:-1], strict=True)
    )


def test_that_the_seeds_on_a_batch_page_come_with_their_sum(outlook, farm, behind):
    page = page_of(behind, farm.batches[0], TODAY)
    fact = next(fact for section in page.sections for fact in section.facts if fact.label == "Seeds to sow")
    assert fact.value == str(outlook.seeds(farm.batches[0]))
    assert str(farm.batches[0].plants) in fact.note


def test_that_every_figure_on_a_page_says_where_it_is_from_and_how_sure(outlook, farm, behind):
    sure = ("read in the source", "common practice", "memory", "your own value")
    for thing in (farm.batches[0], farm.fish_groups[0]):
        figures = [each for section in page_of(behind, thing, TODAY).sections for each in section.figures]
        assert len(figures) > 5
        assert all(any(word in figure.source for word in sure) for figure in figures)


def test_that_a_grower_s_own_number_is_shown_as_such(means, farm):
    batch = dataclasses.replace(farm.batches[0], bed_days=31)
    own = dataclasses.replace(farm, batches=(batch, *farm.batches[1:]))
    page = page_of(Behind(look_out(own, means.forecaster), means.forecaster, TODAY), batch, TODAY)
    figure = next(each for section in page.sections for each in section.figures if each.own)
    assert figure.value == "31 d"
    assert "your own value" in figure.source


def test_that_a_fish_page_foresees_twelve_weeks(outlook, farm, behind):
    page = page_of(behind, farm.fish_groups[0], TODAY)
    weeks = [fact for section in page.sections for fact in section.facts if "feed a day" in fact.value]
    assert len(weeks) == 12
    assert weeks[0].label.startswith("W10")


def test_that_a_bed_page_counts_what_stands_there(outlook, farm, behind):
    raft = next(bed for bed in farm.beds if bed.kind.value == "raft")
    day = outlook.forecast.ruler.start_on + timedelta(weeks=10)
    page = page_of(behind, raft, day)
    held = next(fact for section in page.sections for fact in section.facts if fact.label == "Held")
    counts = [
        int(each.value.split()[0])
        for section in page.sections
        for fact in section.facts
        for each in fact.more
        if each.value.endswith(" places")
    ]
    assert held.value == f"{sum(counts)} of {raft.places} places"
    assert sum(counts) > 0


def test_that_a_week_page_names_the_limiting_element(outlook, farm, behind):
    day = outlook.forecast.ruler.start_on + timedelta(weeks=8)
    verdict = outlook.verdicts[farm.loops[0].id][8]
    page = page_of(behind, None, day)
    limiting = [fact.label for section in page.sections for fact in section.facts if "limiting" in fact.value]
    assert [label.lower() for label in limiting] == [("n", "p", "k", "ca", "mg", "fe")[verdict.limiting]]


def test_that_every_thing_of_a_farm_has_a_page(outlook, farm, behind):
    for thing in outlook.found.values():
        assert page_of(behind, thing, TODAY).title


def test_that_what_the_grower_wrote_is_never_taken_for_html(outlook, farm, behind):
    batch = dataclasses.replace(farm.batches[0], notes="<b>bold</b> & <script>")
    html = page_html(page_of(behind, batch, TODAY), LIGHT)
    assert "<script>" not in html
    assert "&lt;b&gt;bold&lt;/b&gt; &amp;" in html


def test_that_the_panel_keeps_its_place_when_the_same_thing_changes(qtbot, outlook, farm, behind):
    panel = SidePanel(LIGHT)
    panel.resize(260, 200)
    panel.show()
    page = page_of(behind, farm.fish_groups[0], TODAY)
    panel.show_page(page, of_thing=True)
    panel.text.verticalScrollBar().setValue(50)
    panel.show_page(dataclasses.replace(page, sections=page.sections[1:]), of_thing=True)
    assert panel.text.verticalScrollBar().value() == 50
    panel.wear(DARK)
    put_away(panel)


@pytest.mark.parametrize("kind", FlagKind)
def test_that_every_flag_is_put_into_words_of_its_own(kind, farm):
    flag = Flag(
        kind=kind, about=farm.batches[0].id, name="LET-1", on=TODAY, until_on=TODAY + timedelta(days=3)
    )
    said = flag_words(flag)
    assert "LET-1" in said
    assert "closer look" not in said
    assert "Wed 10 Mar 2027 – Sat 13 Mar 2027" in said


def test_that_a_tank_says_how_densely_it_is_stocked(behind, outlook, farm):
    tank = farm.tanks[0]
    page = page_of(behind, tank, TODAY)
    fact = next(fact for fact in page.askable if fact.label == "Fish in the tank")
    group = outlook.forecast.loops[0].groups[0]
    day = outlook.forecast.ruler.day_of(TODAY)
    mass_kg = group.count[day] * group.weight_g[day] / 1000
    assert fact.value == f"{mass_kg / (tank.volume_l / 1000):.1f} kg/m³"


def test_that_a_tank_outside_the_plan_says_only_what_is_entered(behind, outlook, farm):
    late = outlook.forecast.ruler.date_of(outlook.forecast.ruler.days + 5)
    asked = page_of(behind, farm.tanks[0], late).askable
    assert asked
    assert all(isinstance(fact.ask, Entered) for fact in asked)


def test_that_the_places_of_one_batch_are_those_among_all(farm):
    every = beds_by_batch(farm)
    for batch in farm.batches:
        assert places_of(farm, batch.id).get(Phase.BED) == every.get(batch.id)
    assert every


def test_that_the_letters_of_stages_are_those_of_the_lanes_in_every_language(spanish, behind, farm):
    batch = farm.batches[0]
    labels = [fact.label for section in page_of(behind, batch, TODAY).sections for fact in section.facts]
    for stage in (Stage.GERMINATION, Stage.NURSERY, Stage.BED, Stage.CLEARING):
        assert f"{stage_letter(stage)}  {choice_words(stage)}" in labels
    assert stage_letter(Stage.NURSERY) == "V"
