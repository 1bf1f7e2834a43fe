"""A farm's own entries are laid over the book, or refused by field, value and limit."""

import pytest

from planner.catalogue.figure import Confidence
from planner.catalogue.own import fields_of, laid_over
from planner.farm.farm import OwnEntry, Shelf
from planner.farm.faults import FarmFaultError, FaultKind
from planner.farm.fields import Id
from planner.farm.species import BedKind, HarvestKind

NUMBER = iter(range(10_000))


def own(**given):
    usual = {"shelf": Shelf.CROP, "key": "genovese", "like": "basil", "name": "Genovese", "values": ()}
    return OwnEntry(id=Id(f"own-{next(NUMBER)}"), **{**usual, **given})


def faults_of(book, *entries):
    with pytest.raises(FarmFaultError) as caught:
        laid_over(book, entries)
    return caught.value.faults


def test_that_without_own_entries_the_book_itself_comes_back(book):
    assert laid_over(book, ()) is book


def test_that_an_own_crop_is_like_the_book_but_for_its_values(book):
    laid = laid_over(book, [own(values=(("bed_days", 31.0),))])
    mine, basil = laid.crops["genovese"], book.crops["basil"]
    assert (mine.key, mine.name, mine.bed_days) == ("genovese", "Genovese", 31.0)
    assert (mine.nursery_days, mine.notes) == (basil.nursery_days, basil.notes)
    assert "genovese" not in book.crops
    assert laid.crops["basil"] is basil


def test_that_a_growers_value_says_so_and_keeps_the_books_beside_it(book):
    figure = laid_over(book, [own(values=(("bed_days", 31.0),))]).figure("crop/genovese/bed_days")
    assert figure.confidence is Confidence.GROWERS_VALUE
    assert (figure.low, figure.value, figure.high, figure.unit) == (31.0, 31.0, 31.0, "d")
    assert "28" in figure.note


def test_that_a_value_not_given_keeps_source_and_confidence_of_the_book(book):
    laid = laid_over(book, [own(values=(("bed_days", 31.0),))])
    mine, books = laid.figure("crop/genovese/k_g_per_kg"), book.figure("crop/basil/k_g_per_kg")
    assert (mine.value, mine.source, mine.confidence) == (books.value, books.source, books.confidence)


def test_that_an_own_entry_may_take_the_place_of_the_one_it_is_like(book):
    laid = laid_over(book, [own(key="basil", values=(("bed_days", 25),))])
    assert laid.crops["basil"].bed_days == 25.0
    assert laid.figure("crop/basil/bed_days").confidence is Confidence.GROWERS_VALUE
    assert book.figure("crop/basil/bed_days").value == 28


def test_that_an_own_entry_may_be_like_an_earlier_own_entry(book):
    first = own(values=(("bed_days", 31.0),))
    second = own(key="genovese-winter", like="genovese", values=(("nursery_days", 20.0),))
    crop = laid_over(book, [first, second]).crops["genovese-winter"]
    assert (crop.bed_days, crop.nursery_days) == (31.0, 20.0)


def test_that_choices_and_switches_may_be_given(book):
    values = (("beds", "raft, media, raft"), ("harvest", "picking"), ("tall", True), ("code", "GEN"))
    crop = laid_over(book, [own(values=values)]).crops["genovese"]
    assert crop.beds == (BedKind.RAFT, BedKind.MEDIA)
    assert (crop.harvest, crop.tall, crop.code) == (HarvestKind.PICKING, True, "GEN")


def test_that_a_stage_of_an_own_fish_may_be_given_by_its_number(book):
    fish = own(shelf=Shelf.FISH, key="my-tilapia", like="nile-tilapia", values=(("stage_2_tgc", 1.3),))
    laid = laid_over(book, [fish])
    stages = laid.fish["my-tilapia"].stages
    assert stages[1].tgc == 1.3
    assert stages[0] == book.fish["nile-tilapia"].stages[0]
    assert laid.figure("fish/my-tilapia/stage/2/tgc").confidence is Confidence.GROWERS_VALUE
    assert laid.figure("fish/my-tilapia/stage/1/tgc").confidence is Confidence.MEMORY


@pytest.mark.parametrize(
    ("shelf", "like", "field", "value"),
    [
        (Shelf.FEED, "general-28", "protein_share", 0.3),
        (Shelf.SUPPLEMENT, "seaweed-extract", "k_share", 0.02),
    ],
)
def test_that_feeds_and_supplements_may_be_ones_own(book, shelf, like, field, value):
    laid = laid_over(book, [own(shelf=shelf, like=like, key="mine", values=((field, value),))])
    assert laid.figure(f"{shelf.value}/mine/{field}").value == value


def test_that_every_field_offered_is_taken(book):
    fish = book.fish["nile-tilapia"]
    values = []
    for field in fields_of(fish):
        if field.startswith("stage_"):
            _, number, name = field.split("_")
            values.append((field, getattr(fish.stages[int(number) - 1], name)))
        else:
            values.append((field, getattr(fish, field)))
    entry = own(shelf=Shelf.FISH, key="twin", like=fish.key, name=fish.name, values=tuple(values))
    twin = laid_over(book, [entry]).fish["twin"]
    assert twin.stages == fish.stages
    assert all(getattr(twin, field) == value for field, value in values if not field.startswith("stage_"))


def test_that_an_unknown_field_is_refused_with_near_misses_and_the_known_ones(book):
    (fault,) = faults_of(book, own(values=(("bed_day", 31.0),)))
    assert (fault.kind, fault.field, fault.value) == (FaultKind.UNKNOWN_KEY, "bed_day", "31.0")
    assert fault.remedy.startswith("Did you mean bed_days?")
    assert "nursery_days" in fault.remedy
    assert 'own entry "genovese"' in fault.where


def test_that_a_value_out_of_limits_is_refused_with_the_limit(book):
    (fault,) = faults_of(book, own(values=(("bed_days", 4000.0),)))
    assert (fault.kind, fault.field, fault.value, fault.limit) == (
        FaultKind.OUT_OF_LIMITS,
        "bed_days",
        "4000",
        "1 to 400 d",
    )


@pytest.mark.parametrize(
    ("field", "value", "limit"),
    [
        ("bed_days", "soon", "a number"),
        ("bed_days", True, "a number"),
        ("tall", 1.0, "true or false"),
        ("code", 7.0, "text"),
        ("group", "leafs", "one of leafy, fruiting"),
        ("group", "leafy, fruiting", "one of leafy, fruiting"),
        ("beds", "boat", "one or more of nursery, raft, media"),
        ("beds", "", "one or more of nursery, raft, media"),
    ],
)
def test_that_a_value_of_the_wrong_type_is_refused(book, field, value, limit):
    (fault,) = faults_of(book, own(values=((field, value),)))
    assert (fault.kind, fault.field, fault.limit) == (FaultKind.WRONG_TYPE, field, limit)


@pytest.mark.parametrize("value", [float("nan"), float("inf")])
def test_that_a_number_that_is_none_is_refused(book, value):
    (fault,) = faults_of(book, own(values=(("bed_days", value),)))
    assert fault.kind is FaultKind.OUT_OF_LIMITS


def test_that_being_like_nothing_known_is_refused_with_near_misses(book):
    (fault,) = faults_of(book, own(like="basill"))
    assert (fault.kind, fault.field, fault.value) == (FaultKind.UNKNOWN_NAME, "like", "basill")
    assert fault.remedy.startswith("Did you mean basil?")


def test_that_a_fish_is_not_like_a_crop(book):
    (fault,) = faults_of(book, own(shelf=Shelf.FISH))
    assert (fault.kind, fault.field) == (FaultKind.UNKNOWN_NAME, "like")


@pytest.mark.parametrize("key", ["kale", "a/b"])
def test_that_the_key_of_another_entry_is_refused(book, key):
    (fault,) = faults_of(book, own(key=key))
    assert (fault.field, fault.value) == ("key", key)


def test_that_two_own_entries_of_one_key_are_refused(book):
    (fault,) = faults_of(book, own(), own(name="Another"))
    assert (fault.kind, fault.field) == (FaultKind.DUPLICATE, "key")


@pytest.mark.parametrize(
    ("values", "field", "limit"),
    [
        ((("optimum_c", 6.0),), "optimum_c", "above 10.9"),
        ((("base_c", 20.0), ("optimum_c", 12.0)), "base_c", "below 12"),
    ],
)
def test_that_temperatures_must_rise(book, values, field, limit):
    (fault,) = faults_of(book, own(values=values))
    assert (fault.kind, fault.field, fault.limit) == (FaultKind.WRONG_ORDER, field, limit)


def test_that_all_faults_are_told_at_once(book):
    values = (("bed_day", 31.0), ("bed_days", 4000.0), ("tall", "yes"))
    assert len(faults_of(book, own(values=values), own(like="basill", key="x"))) == 4
