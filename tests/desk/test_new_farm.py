"""A new farm is asked for in a few answers, and drafted so that it has no fault."""

from datetime import date
from functools import partial

import pytest
from hypothesis import given
from hypothesis import strategies as st
from PySide6.QtCore import Qt

from planner.catalogue.places import zone_places
from planner.desk.book import BookShelf
from planner.desk.newfarm.dialog import NewFarmDialog, NewFarmNeeds
from planner.desk.newfarm.offers import climate_choices, laid_out_for, species_cautions
from planner.desk.plan.kit import Words
from planner.desk.theme import LIGHT
from planner.farm.crops import Target, TargetUnit
from planner.farm.ids import new_id
from planner.farm.site import Units, WeekStart
from planner.farm.species import BedKind
from planner.forecast.checks import all_faults
from planner.paper.words import week_number
from planner.planning.answers import Answers, BedWish, CropWish
from planner.planning.climates import ClimateClass
from planner.planning.draft import drafted, feed_for, plants_per_sowing, weeks_between_sowings
from tests.desk.helpers import TODAY, nameless_controls, put_away

MONDAY = date(2027, 3, 8)


@pytest.fixture
def dialog(qtbot, means):
    shelf = BookShelf(means.catalogue)
    needs = NewFarmNeeds(
        crops=shelf("crop"),
        fish=shelf("fish"),
        theme=LIGHT,
        today=TODAY,
        lay_out=partial(laid_out_for, means.catalogue),
        climates=climate_choices(means.catalogue),
        zones=zone_places(),
        cautions=species_cautions(means.catalogue),
    )
    dialog = NewFarmDialog(needs)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose, on=False)
    dialog.show()
    yield dialog
    put_away(dialog)


def fill(dialog, **texts):
    for field, text in {
        "farm_name": "Back garden",
        "tank_l": "1000",
        "fish_count": "40",
        "fish_weight_g": "50",
        **texts,
    }.items():
        dialog.rows[field].editor.line.setText(text)
    bed = dialog.beds.lines[0]
    bed["length_m"].line.setText("2.4")
    bed["width_m"].line.setText("1.2")
    dialog.crops.lines[0]["crop"].show_value("lettuce-leaf")
    dialog.crops.lines[0]["amount_per_week"].line.setText("10")


def test_that_nothing_more_than_the_few_answers_is_asked(dialog):
    assert set(dialog.rows) == {
        "farm_name",
        "place",
        "latitude_deg",
        "altitude_m",
        "climate",
        "measures",
        "week_start",
        "tank_l",
        "species",
        "fish_count",
        "fish_weight_g",
    }
    assert nameless_controls(dialog) == []


def test_that_missing_answers_are_named_and_nothing_is_handed_on(qtbot, dialog):
    with qtbot.assertNotEmitted(dialog.answered):
        qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    assert "must be given" in dialog.rows["farm_name"].words
    assert "length and width" in dialog.beds.trouble.text()
    assert "Wanted each week" in dialog.crops.trouble.text()


def test_that_an_answer_outside_its_limits_is_named_with_value_and_limit(qtbot, dialog):
    fill(dialog, tank_l="3")
    with qtbot.assertNotEmitted(dialog.answered):
        qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    assert "3" in dialog.rows["tank_l"].words
    assert "10 to 10000000 L" in dialog.rows["tank_l"].words
    assert dialog.rows["tank_l"].editor.line.text() == "3"


def test_that_answers_are_handed_on(qtbot, dialog):
    fill(dialog)
    qtbot.mouseClick(dialog.beds.add, Qt.MouseButton.LeftButton)
    dialog.beds.lines[1]["kind"].show_value(BedKind.MEDIA)
    dialog.beds.lines[1]["holes"].line.setText("12")
    with qtbot.waitSignal(dialog.answered) as told:
        qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    (answers,) = told.args
    assert answers.name == "Back garden"
    assert answers.latitude_deg is None
    assert [bed.kind for bed in answers.beds] == [BedKind.RAFT, BedKind.MEDIA]
    assert answers.beds[1].holes == 12
    assert answers.plan_from == MONDAY


def test_that_the_loop_is_drawn_as_it_is_typed(qtbot, dialog):
    fill(dialog)
    qtbot.keyClicks(dialog.beds.lines[0]["holes"].line, "72")
    sketch = dialog.drawing.sketch
    assert (sketch.tank_l, sketch.fish) == (1000.0, 40)
    (bed,) = sketch.beds
    assert bed.rows * bed.columns == 72
    assert bed.length_m * bed.width_m == pytest.approx(2.88)
    assert "72 places" in dialog.drawing.accessibleDescription()
    dialog.drawing.grab()


def test_that_tab_comes_to_every_line_before_the_button_that_adds_one(dialog):
    dialog.beds.add.click()
    first = dialog.beds.lines[0]["kind"].focusProxy()
    walked, at = [first.accessibleName()], first.nextInFocusChain()
    while at is not first:
        if at.focusPolicy() & Qt.FocusPolicy.TabFocus:
            walked.append(at.accessibleName())
        at = at.nextInFocusChain()
    fields = [name.split(" [")[0].split(",")[0] for name in walked[: walked.index("Make the farm")]]
    bed = ["Kind", "Length", "Width", "Holes"]
    assert fields == [*bed, *bed, "Add a bed", "Crop", "Wanted each week", "Counted in", "Add a crop"]


def test_that_the_law_is_told_of_where_fish_are_chosen(dialog):
    said = [words.text() for words in dialog.findChildren(Words) if words.isVisibleTo(dialog)]
    assert any("without a permit" in each for each in said)


def test_that_half_typed_answers_are_left_out_of_the_drawing(qtbot, dialog):
    qtbot.keyClicks(dialog.rows["tank_l"].editor.line, "12x")
    qtbot.keyClicks(dialog.beds.lines[0]["length_m"].line, "2.4")
    assert dialog.drawing.sketch.tank_l is None
    assert dialog.drawing.sketch.beds == ()


def test_that_a_country_brings_latitude_time_zone_week_and_units(qtbot, dialog):
    fill(dialog)
    dialog.rows["place"].editor.show_zone("America/Chicago")
    assert dialog.rows["week_start"].editor.read() is WeekStart.SUNDAY
    assert dialog.rows["measures"].editor.read() is Units.US
    with qtbot.waitSignal(dialog.answered) as told:
        qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    (found,) = told.args
    assert found.time_zone == "America/Chicago"
    assert found.place.startswith("United States – Chicago")
    assert found.latitude_deg == pytest.approx(41.85)


def test_that_words_of_ones_own_stand_as_the_place(qtbot, dialog):
    fill(dialog)
    dialog.rows["place"].editor.show_value("behind the hill")
    with qtbot.waitSignal(dialog.answered) as told:
        qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    (found,) = told.args
    assert (found.place, found.time_zone, found.latitude_deg) == ("behind the hill", "UTC", None)


def test_that_a_guessed_climate_is_told_as_a_guess_and_kept_as_one(qtbot, dialog, means):
    fill(dialog)
    climate = dialog.rows["climate"]
    climate.editor.show_value(ClimateClass.TROPICAL)
    climate.show_hint()
    assert "from memory" in climate.words
    with qtbot.waitSignal(dialog.answered) as told:
        qtbot.mouseClick(dialog.ok, Qt.MouseButton.LeftButton)
    (site,) = drafted(told.args[0], means.forecaster).farm.sites
    assert len(site.air_c) == 12
    assert "guessed" in site.notes


def answers(means, **changes):
    given_answers = {
        "name": "Back garden",
        "place": "",
        "latitude_deg": None,
        "tank_l": 1000.0,
        "species": next(iter(means.catalogue.fish)),
        "fish_count": 40,
        "mean_weight_g": 50.0,
        "beds": (BedWish(name="Raft", kind=BedKind.RAFT, length_m=2.4, width_m=1.2),),
        "crops": (CropWish(crop="lettuce-leaf", amount_per_week=5.0),),
        "plan_from": MONDAY,
    }
    return Answers(**{**given_answers, **changes})


def test_that_a_draft_has_a_sowing_each_week_places_for_them_and_no_fault(means):
    draft = drafted(answers(means), means.forecaster)
    farm = draft.farm
    assert len(farm.batches) == farm.settings.plan_weeks
    assert all_faults(farm, means.forecaster) == ()
    assert {bed.kind for bed in farm.beds} == {BedKind.RAFT, BedKind.NURSERY}
    assert farm.targets[0].amount_per_week == 5


def test_that_a_bed_given_by_its_size_gets_places_at_the_distance_of_its_crop(means):
    crop = means.catalogue.crops["lettuce-leaf"]
    (bed, *_) = drafted(answers(means), means.forecaster).farm.beds
    assert bed.area_m2 == pytest.approx(2.4 * 1.2)
    assert bed.places <= crop.bed_density_per_m2 * bed.area_m2


def test_that_holes_overrule_the_size(means):
    wish = BedWish(name="Raft", kind=BedKind.RAFT, length_m=2.4, width_m=1.2, holes=72)
    (bed, *_) = drafted(answers(means, beds=(wish,)), means.forecaster).farm.beds
    assert bed.places == 72
    assert bed.area_m2 == pytest.approx(2.88)


@given(
    amount=st.integers(1, 300),
    crop=st.sampled_from(["lettuce-leaf", "basil", "tomato", "kale"]),
    unit=st.sampled_from(list(TargetUnit)),
)
def test_that_sowings_cover_what_is_wanted_until_the_next_one(means, amount, crop, unit):
    entry = means.catalogue.crops[crop]
    target = Target(id=new_id(), crop=crop, amount_per_week=amount, unit=unit, from_on=MONDAY)
    living = plants_per_sowing(target, entry) * entry.bed_survival_share
    if unit is TargetUnit.KG:
        grams = living * entry.yield_g_per_plant * entry.marketable_share
        assert grams >= amount * 1000 * weeks_between_sowings(entry) * (1 - 1e-9)
    else:
        assert living >= amount * (1 - 1e-9)


def test_that_a_crop_picked_for_weeks_is_not_sown_every_week(means):
    tomato = means.catalogue.crops["tomato"]
    assert weeks_between_sowings(tomato) > 4
    assert weeks_between_sowings(means.catalogue.crops["lettuce-leaf"]) == 1
    wish = CropWish(crop="tomato", amount_per_week=1.0, unit=TargetUnit.KG)
    farm = drafted(answers(means, crops=(wish,)), means.forecaster).farm
    assert len(farm.batches) == -(-52 // weeks_between_sowings(tomato))


def test_that_the_same_crop_wished_twice_gets_codes_of_its_own(means):
    wish = CropWish(crop="lettuce-leaf", amount_per_week=2.0)
    farm = drafted(answers(means, crops=(wish, wish)), means.forecaster).farm
    codes = [batch.code for batch in farm.batches]
    assert len(set(codes)) == len(codes) == 104


def test_that_codes_name_the_week_the_ruler_shows_where_weeks_begin_on_sunday(means):
    given_answers = answers(means, plan_from=date(2027, 3, 7), week_start=WeekStart.SUNDAY)
    farm = drafted(given_answers, means.forecaster).farm
    for batch in farm.batches:
        assert f"W{week_number(batch.sow_on, WeekStart.SUNDAY):02d}" in batch.code


def test_that_the_feed_suits_the_weight_of_the_fish(means):
    for weight in (2.0, 50.0, 400.0):
        feed = means.catalogue.feeds[feed_for(weight, means.catalogue)]
        assert feed.for_fish_from_g <= weight


def test_that_a_farm_without_fish_and_crops_can_be_drafted(means):
    farm = drafted(answers(means, fish_count=0, crops=()), means.forecaster).farm
    assert farm.fish_groups == farm.batches == ()
    assert all_faults(farm, means.forecaster) == ()
