"""The catalogue that ships is whole: every entry complete, every figure with unit, source and confidence."""

import dataclasses
import math

import pytest

from planner.catalogue.figure import Confidence
from planner.catalogue.schema import FIGURE_SPECS
from planner.farm.checks import value_faults
from planner.farm.fields import specs_of
from planner.farm.species import (
    ELEMENTS,
    BedKind,
    Crop,
    Feed,
    FishSpecies,
    FishStage,
    HarvestKind,
    Supplement,
)

NEEDED_CROPS = [
    "lettuce-leaf",
    "lettuce-butterhead",
    "lettuce-romaine",
    "basil",
    "mint",
    "pak-choi",
    "mustard-greens",
    "water-spinach",
    "chard",
    "kale",
    "spinach",
    "coriander",
    "parsley",
    "chives",
    "celery",
    "rocket",
    "tomato",
    "sweet-pepper",
    "chilli",
    "cucumber",
    "aubergine",
    "okra",
    "bush-bean",
    "strawberry",
]
NEEDED_FISH = [
    "nile-tilapia",
    "common-carp",
    "channel-catfish",
    "african-catfish",
    "rainbow-trout",
    "barramundi",
    "goldfish-koi",
    "european-perch",
]
OWNERS = {"crops": Crop, "fish": FishSpecies, "feeds": Feed, "supplements": Supplement}
SHELF_WORDS = {"crops": "crop", "fish": "fish", "feeds": "feed", "supplements": "supplement"}


def test_that_every_figure_has_a_unit_a_spread_and_conditions(book):
    for figure in book.figures.values():
        assert figure.unit, figure.path
        assert figure.conditions, figure.path
        assert figure.low <= figure.value <= figure.high, figure.path
        assert all(map(math.isfinite, (figure.low, figure.value, figure.high))), figure.path


def test_that_every_source_is_a_publication_and_every_read_figure_has_one(book):
    for figure in book.figures.values():
        assert not figure.source or figure.source in book.publications, figure.path
        assert figure.source or figure.confidence is not Confidence.READ, figure.path
        assert figure.confidence is not Confidence.GROWERS_VALUE, figure.path


@pytest.mark.parametrize("place", OWNERS)
def test_that_every_field_of_every_entry_stands_within_its_limits(book, place):
    for key, entry in getattr(book, place).items():
        assert entry.key == key
        for field, spec in specs_of(OWNERS[place]).items():
            faults = value_faults(where=key, field=field, value=getattr(entry, field), spec=spec)
            assert not list(faults), (key, field)


@pytest.mark.parametrize("place", OWNERS)
def test_that_every_value_of_an_entry_has_its_figure(book, place):
    for key, entry in getattr(book, place).items():
        for field in FIGURE_SPECS[OWNERS[place]]:
            assert book.figure(f"{SHELF_WORDS[place]}/{key}/{field}").value == getattr(entry, field)


def test_that_every_stage_of_a_fish_has_its_figures(book):
    for key, fish in book.fish.items():
        assert fish.stages, key
        for number, stage in enumerate(fish.stages, start=1):
            for field in FIGURE_SPECS[FishStage]:
                assert book.figure(f"fish/{key}/stage/{number}/{field}").value == getattr(stage, field)


def test_that_the_crops_and_fish_growers_ask_for_are_there(book):
    assert set(NEEDED_CROPS) <= set(book.crops)
    assert set(NEEDED_FISH) <= set(book.fish)


def test_that_codes_of_crops_are_three_capitals_and_differ(book):
    codes = [crop.code for crop in book.crops.values()]
    assert len(set(codes)) == len(codes)
    assert all(len(code) == 3 and code.isupper() for code in codes)


def test_that_a_crop_cut_once_has_nothing_to_pick_again(book):
    for crop in book.crops.values():
        once = crop.harvest is HarvestKind.SINGLE
        assert (crop.pick_interval_days == 0) is once, crop.key
        assert (crop.first_pick_share == 1) is once, crop.key


def test_that_every_crop_can_stand_in_a_bed(book):
    for crop in book.crops.values():
        assert crop.beds, crop.key
        assert BedKind.NURSERY not in crop.beds, crop.key


def test_that_the_last_stage_of_a_fish_reaches_beyond_its_harvest(book):
    for fish in book.fish.values():
        limits = [stage.up_to_g for stage in fish.stages]
        assert limits == sorted(set(limits)), fish.key
        assert limits[-1] > 10 * fish.harvest_weight_g, fish.key


def test_that_what_fish_keep_and_what_solids_hold_never_exceed_the_feed(book):
    """Kept = body content / FCR; an entry that broke this could not close its mass."""
    fish, feed = book.fish["nile-tilapia"], book.feeds["tilapia-grow-out-32"]
    fcr = fish.stages[-1].fcr
    fed = {name: getattr(feed, f"{name}_g_per_kg") for name in ("p", "k", "ca", "mg")}
    fed["n"] = feed.protein_share * 1000 / 6.25
    for element, content in fed.items():
        kept = getattr(fish, f"body_{element}_g_per_kg") / fcr / content
        assert kept + book.elements[element].solids_share < 1, element


def test_that_only_nitrogen_is_lost_as_gas(book):
    assert set(book.elements) == set(ELEMENTS)
    assert [key for key in ELEMENTS if book.elements[key].gas_loss_share > 0] == ["n"]


def test_that_every_caution_named_by_an_entry_exists(book):
    for entry in (*book.fish.values(), *book.supplements.values()):
        assert set(entry.cautions) <= set(book.cautions), entry.key


def test_that_each_of_the_twenty_cautions_says_where_it_is_shown(book):
    assert len(book.cautions) >= 20
    for caution in book.cautions.values():
        assert caution.topic, caution.key
        assert caution.where, caution.key
        assert caution.basis, caution.key
        assert len(caution.text) > 30, caution.key


def test_that_hydroxides_carry_the_caution_of_caustic_bases(book):
    for key in ("potassium-hydroxide", "calcium-hydroxide"):
        assert "caustic-bases" in book.supplements[key].cautions


def test_that_ornamental_fish_are_not_purged_for_the_table(book):
    ornamental = [fish for fish in book.fish.values() if fish.ornamental]
    assert ornamental
    assert all(fish.purge_days == 0 for fish in ornamental)


def test_that_a_product_without_analysis_counts_for_nothing(book):
    seaweed = book.supplements["seaweed-extract"]
    assert "no-analysis" in seaweed.cautions
    shares = [getattr(seaweed, field) for field in FIGURE_SPECS[Supplement]]
    assert not any(shares)


def test_that_every_crop_in_the_emergence_table_comes_up_where_seedlings_are_normal(book):
    for crop, table in book.emergence.items():
        assert crop in book.crops
        comes_up = {temperature for temperature, _ in table.days}
        assert comes_up.isdisjoint(table.none_c), crop


def test_that_the_catalogue_cannot_be_changed_in_place(book):
    with pytest.raises(TypeError):
        book.crops["weed"] = book.crops["basil"]
    with pytest.raises(dataclasses.FrozenInstanceError):
        book.crops = {}
