"""Names of entries in other languages: for the right plant, and nothing else of it changes."""

import dataclasses
import re
import tomllib

import pytest

from planner.catalogue import names as names_module
from planner.catalogue.errors import CatalogueError
from planner.catalogue.loading import shipped_catalogue
from planner.catalogue.names import (
    CODE_OF_LANGUAGE,
    PRODUCTS,
    SHELVES,
    SPECIES,
    named_beside,
    named_in,
    names_in,
)
from planner.shipped import shipped_path

LANGUAGES = tuple(CODE_OF_LANGUAGE.values())


@pytest.fixture(scope="module")
def catalogue():
    return shipped_catalogue()


@pytest.mark.parametrize("language", LANGUAGES)
def test_that_every_name_stands_for_the_plant_or_fish_of_its_botanical_name(catalogue, language):
    read = tomllib.loads(shipped_path("resources", "words", f"names_{language}.toml").read_text("utf-8"))
    assert read["reviewed"] is False, "only a grower who speaks the language can say so"
    for shelf in SPECIES:
        entries = getattr(catalogue, shelf)
        assert {key: row["botanical"] for key, row in read[shelf].items()} == {
            key: entries[key].botanical for key in read[shelf]
        }
    for shelf in PRODUCTS:
        entries = getattr(catalogue, shelf)
        assert {key: row["english"] for key, row in read[shelf].items()} == {
            key: entries[key].name for key in read[shelf]
        }


@pytest.mark.parametrize("language", LANGUAGES)
def test_that_every_feed_has_a_name_and_every_number_of_a_product_stays(catalogue, language):
    assert set(names_in(language)["feeds"]) == set(catalogue.feeds)
    for shelf in PRODUCTS:
        for key, name in names_in(language)[shelf].items():
            assert re.findall(r"\d+", name) == re.findall(r"\d+", getattr(catalogue, shelf)[key].name)


@pytest.mark.parametrize("language", LANGUAGES)
def test_that_no_two_entries_share_a_name(catalogue, language):
    named = named_in(catalogue, language)
    said = [entry.name for shelf in SHELVES for entry in getattr(named, shelf).values()]
    assert len(set(said)) == len(said)


@pytest.mark.parametrize("language", LANGUAGES)
def test_that_nothing_but_names_changes(catalogue, language):
    named = named_in(catalogue, language)
    for shelf in SHELVES:
        before, after = getattr(catalogue, shelf), getattr(named, shelf)
        assert {key: dataclasses.replace(entry, name="") for key, entry in after.items()} == {
            key: dataclasses.replace(entry, name="") for key, entry in before.items()
        }
    assert named.figures is catalogue.figures


def test_that_a_crop_is_called_as_growers_call_it(catalogue):
    assert named_in(catalogue, "fil").crops["water-spinach"].name == "Kangkong"
    assert named_in(catalogue, "es").crops["basil"].name == "Albahaca"
    assert named_in(catalogue, "fil").crops["chard"].name == "Swiss chard"


def test_that_a_second_name_stands_in_brackets_unless_it_is_the_same(catalogue):
    both = named_beside(catalogue, "fil")
    assert both.crops["pak-choi"].name == "Pak choi (Pechay)"
    assert both.crops["okra"].name == "Okra"
    assert named_beside(named_in(catalogue, "es"), "fil").fish["nile-tilapia"].name == (
        "Tilapia del Nilo (Tilapyang Nilo)"
    )


@pytest.mark.parametrize("language", ["", "en", "xx", "../fil"])
def test_that_a_language_without_names_changes_nothing(catalogue, language):
    assert named_in(catalogue, language) is catalogue
    assert names_in(language) == {}


@pytest.mark.parametrize("text", ["[crops", "[crops.basil]\nnames = 'x'\n", "crops = 3\n"])
def test_that_a_file_that_is_broken_is_named(tmp_path, monkeypatch, text):
    broken = tmp_path / "names_es.toml"
    broken.write_text(text, encoding="utf-8")
    monkeypatch.setattr(names_module, "shipped_path", lambda *_parts: broken)
    with pytest.raises(CatalogueError, match=r"names_es\.toml"):
        names_in("es")
