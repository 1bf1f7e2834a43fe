"""A wrong file stops the reading with a sentence that names file, key and field."""

import re

import numpy as np
import pytest

from planner.catalogue.checking import Spot
from planner.catalogue.errors import CatalogueError, UnknownFigureError
from planner.catalogue.loading import load_catalogue
from planner.catalogue.reading import read_tables
from planner.catalogue.shelves import feeding_table_taken
from planner.science.feeding_table import FeedingTable, ration_interpolated

BASIL = "crops/basil.toml"
TILAPIA = "fish/nile-tilapia.toml"

# file, what stands there (a pattern), what is written instead, what the error must say
SPOILT = [
    (BASIL, r"bed_days = \{ value = 28,", "bed_days = { value = 99,", "basil: bed_days: value: is 99"),
    (BASIL, r"bed_days = .*\n", "", "basil: bed_days: is missing"),
    (BASIL, r"bed_days =", "bed_day =", "basil: bed_day: is not known here. Did you mean bed_days"),
    (BASIL, r"tall = false", "tall = 0", "basil: tall: is 0, but must be true or false"),
    (BASIL, r"tall = false", 'tall = false\ncolour = "green"', "basil: colour: is not known here"),
    (BASIL, r'key = "basil"', 'key = "basel"', "basel: key: is 'basel', but must be the name of the file"),
    (BASIL, r'code = "BAS"', 'code = "KAL"', "code: KAL is already the code of basil"),
    (BASIL, r'code = "BAS"', 'code = "bas"', "basil: code: is 'bas', but must be three capital letters"),
    (
        BASIL,
        r'group = "leafy"',
        'group = "leafs"',
        "basil: group: is 'leafs', but must be one of leafy, fruiting",
    ),
    (BASIL, r'beds = \["raft"', 'beds = ["boat"', "basil: beds: is 'boat', but must be one of"),
    (
        BASIL,
        r'source = "fao589"',
        'source = "fao588"',
        "source: 'fao588' is no publication. Did you mean fao589",
    ),
    (BASIL, r'confidence = "read"', 'confidence = "sure"', "confidence: is 'sure', but must be one of read"),
    (BASIL, r'source = "fao589"', 'source = ""', 'source: is empty, but a figure with confidence "read"'),
    (BASIL, r'unit = "d"', 'unit = "weeks"', "unit: is 'weeks', but must be 'd'"),
    (
        BASIL,
        r"bed_days = \{ value = 28, low = 20, high = 42",
        "bed_days = { value = 28, low = 20, high = 420",
        "basil: bed_days: high: is 420, but must lie within 1 to 400 d",
    ),
    (TILAPIA, r"(?m)^up_to_g = 100$", "up_to_g = 10", "stage 2: up_to_g: is 10, but must be above 20"),
    (TILAPIA, r'cautions = \["species-law"', 'cautions = ["specious-law"', "'specious-law' is no caution"),
    (
        TILAPIA,
        r"(?m)^base_c = \{ value = 17, low = 15, high = 18",
        "base_c = { value = 29, low = 15, high = 29",
        "nile-tilapia: base_c: is 29, but must be below optimum_c 29",
    ),
    ("feeds.toml", r"for_fish_g = \[20, 100000\]", "for_fish_g = [20]", "for_fish_g: has 1 numbers"),
    (
        "feeds.toml",
        r"for_fish_g = \[20, 100000\]",
        "for_fish_g = [20, 10]",
        "for_fish_from_g: is 20, but must be below",
    ),
    ("feeds.toml", r'key = "general-28"', 'key = "carnivore-45"', "carnivore-45: key: stands there twice"),
    (
        "feeding_tables.toml",
        r"weights_g = \[0.089,",
        "weights_g = [9.9,",
        "weights_g: must be one or more numbers, each",
    ),
    (
        "feeding_tables.toml",
        r"temperatures_c = \[2.22, ",
        "temperatures_c = [",
        "percent_per_day: must have 32 rows",
    ),
    ("feeding_tables.toml", r'species = "rainbow-trout"', 'species = "pike"', "species: 'pike' is no fish"),
    ("emergence.toml", r"days = \[\[0, 49\]", "days = [[0, 49, 1]", "lettuce: days: holds [0.0, 49.0, 1.0]"),
    ("emergence.toml", r'crops = \["kale"\]', 'crops = ["spinach"]', "crops: spinach already has the table"),
    ("emergence.toml", r"\[0, 98\]", "[0, 980]", "normal_percent: holds a number"),
    (
        "elements.toml",
        r"(?m)^solids_share = \{ value = 0.15, low = 0.1, high = 0.2",
        "solids_share = { value = 0.15, low = 0.1, high = 1.2",
        "element.n: solids_share: high: is 1.2",
    ),
    (
        "elements.toml",
        r"\[make_up.tap.figures\]",
        "[make_up.well.figures]",
        "make_up: well: is not known here",
    ),
    (
        "publications.toml",
        r"year = 2014",
        'year = "2014"',
        "fao589: year: is '2014', but must be a whole number",
    ),
    ("cautions.toml", r'topic = "Acids"', 'topics = "Acids"', "acids: topics: is not known here"),
    (
        "supplements.toml",
        r'formula = "KOH"',
        "formula = 1",
        "potassium-hydroxide: formula: is 1, but must be text",
    ),
]


@pytest.mark.parametrize(("file", "there", "instead", "said"), SPOILT)
def test_that_a_spoilt_file_is_refused_by_file_key_and_field(copied, file, there, instead, said):
    path = copied / "catalogue" / file
    text, count = re.subn(there, instead.replace("\\", r"\\"), path.read_text(encoding="utf-8"), count=1)
    assert count == 1
    path.write_text(text, encoding="utf-8")
    with pytest.raises(CatalogueError) as caught:
        load_catalogue(copied)
    assert said in str(caught.value)
    assert str(caught.value).split(":")[0].endswith(".toml")


def test_that_a_folder_without_crops_is_refused(copied):
    for path in (copied / "catalogue" / "crops").iterdir():
        path.unlink()
    with pytest.raises(CatalogueError, match="crops: has no entries"):
        load_catalogue(copied)


def test_that_a_coefficient_is_found_by_file_and_name(copied):
    text = '[answer]\nvalue = 42\nunit = "1"\nconditions = "always"\nsource = ""\nconfidence = "memory"\n'
    (copied / "coefficients" / "trial.toml").write_text(text, encoding="utf-8")
    figure = load_catalogue(copied).figure("coefficient/trial/answer")
    assert (figure.low, figure.value, figure.high) == (42, 42, 42)


def test_that_a_coefficient_without_a_source_it_was_read_in_is_refused(copied):
    text = '[answer]\nvalue = 42\nunit = "1"\nconditions = "always"\nsource = ""\nconfidence = "read"\n'
    (copied / "coefficients" / "trial.toml").write_text(text, encoding="utf-8")
    with pytest.raises(CatalogueError, match=r"coefficients/trial\.toml: answer: source: is empty"):
        load_catalogue(copied)


def test_that_an_unknown_figure_is_answered_with_near_misses(book):
    with pytest.raises(UnknownFigureError, match=r"no figure crop/basil/bed_day\. Did you mean bed_days"):
        book.figure("crop/basil/bed_day")
    with pytest.raises(UnknownFigureError, match="Did you mean crop/basil/bed_days"):
        book.figure("crops/basil/bed_days")


def test_that_a_feeding_table_can_be_read_between_its_nodes(book, request):
    """The printed cells come back exactly, and half way lies half way (World Aquaculture 2009, table 3)."""
    path = request.path.parent / "data" / "hypothetical_cold_water.toml"
    table = read_tables(path, file=path.name)["table"][0]
    spot = Spot(file=path.name, key=table["key"])
    read = feeding_table_taken(table, spot, sources=book.publications, fish=book.fish)
    nodes = FeedingTable(
        temperature_c=np.asarray(read.temperatures_c),
        weight_g=np.asarray(read.weights_g),
        percent_per_day=np.asarray(read.percent_per_day),
    )
    assert ration_interpolated(22.7, temperature_c=6.65, table=nodes) == pytest.approx(3.1)
    assert ration_interpolated(22.7, temperature_c=5.825, table=nodes) == pytest.approx((1.9 + 3.1) / 2)
