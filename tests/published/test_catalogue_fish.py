"""Figures of fish, feeds and feeding tables against the publications they come from."""

import csv
import math
from pathlib import Path

import pytest

from planner.catalogue.loading import shipped_catalogue

DATA = Path(__file__).parent / "data"
CM_PER_INCH = 2.54


@pytest.fixture(scope="module")
def book():
    return shipped_catalogue()


def rows_of(name):
    lines = (DATA / name).read_text(encoding="utf-8").splitlines()
    return list(csv.DictReader(line for line in lines if not line.startswith("#")))


def holds(figure, value):
    return figure.low <= value <= figure.high


def length_weight_g(fish, length_in):
    return fish.length_weight_a * (length_in * CM_PER_INCH) ** fish.length_weight_b


@pytest.mark.parametrize(
    ("fish", "length_in", "weight_g"),
    [
        ("nile-tilapia", 3, 6.8),
        ("nile-tilapia", 4, 16.9),
        ("rainbow-trout", 3, 5.2),
        ("rainbow-trout", 4, 12.2),
        ("common-carp", 3, 7.2),
        ("common-carp", 4, 16.6),
        ("channel-catfish", 3, 2.5),
        ("channel-catfish", 4, 6.5),
    ],
)
def test_that_short_fish_weigh_what_the_published_curves_give(book, fish, length_in, weight_g):
    """Wagaw 2022 (tilapia), rainbow trout length-weight, FSA standard weights; weights printed to 0.1 g."""
    assert length_weight_g(book.fish[fish], length_in) == pytest.approx(weight_g, abs=0.06)


@pytest.mark.parametrize("length_mm", [200, 250, 300, 350, 400])
def test_that_the_power_law_of_african_catfish_follows_its_standard_curve(book, length_mm):
    """FSA standard weight of African catfish, 180-450 mm, bends in logs; the power law keeps to 2 %."""
    logarithm = math.log10(length_mm)
    standard_g = 10 ** (-3.668 + 1.885 * logarithm + 0.2087 * logarithm**2)
    fish = book.fish["african-catfish"]
    found_g = fish.length_weight_a * (length_mm / 10) ** fish.length_weight_b
    assert found_g == pytest.approx(standard_g, rel=0.02)


def test_that_deaths_of_tilapia_lie_between_the_two_strains_of_the_virgin_islands(book):
    """Rakocy and others 2004: 98.3 % (Nile) and 89.9 % (red) alive after 24 weeks."""
    alive = (1 - book.fish["nile-tilapia"].daily_death_share) ** (24 * 7)
    assert 0.899 <= alive <= 0.983


def test_that_feed_conversion_of_grown_tilapia_is_that_of_the_virgin_islands(book):
    """Rakocy and others 2004: 1.7 (Nile) and 1.8 (red)."""
    figure = book.figure("fish/nile-tilapia/stage/3/fcr")
    assert figure.value == 1.7
    assert holds(figure, 1.8)


def test_that_the_virgin_islands_tanks_lie_within_the_spread_of_density(book):
    """FAO technical paper 589: 20 kg per 1000 L, half of it under 500 L; UVI harvested 61.5 kg/m³."""
    figure = book.figure("fish/nile-tilapia/density_limit_kg_per_m3")
    assert (figure.value, book.fish["nile-tilapia"].density_limit_small_tank_kg_per_m3) == (20, 10)
    assert holds(figure, 61.5)


def test_that_tilapia_limits_are_those_of_the_extension_sheet(book):
    """Popma and Masser 1999: stops feeding below 17 °C, dies at 10-11 °C, grows best at 29-31 °C."""
    fish = book.fish["nile-tilapia"]
    assert fish.base_c == 17
    assert 10 <= fish.lethal_low_c <= 11
    assert 29 <= fish.optimum_c <= 31


def test_that_carp_growth_starts_where_goolish_and_adelmans_line_meets_zero(book):
    """Goolish and Adelman 1984: 0.71 % a day at 12 °C and 2.31 at 18 °C; scope for growth peaks at 27 °C."""
    slope = (2.31 - 0.71) / (18 - 12)
    assert book.fish["common-carp"].base_c == pytest.approx(12 - 0.71 / slope, abs=0.5)
    assert book.fish["common-carp"].optimum_c == 27


def test_that_barramundi_grow_best_where_katersky_and_carter_found_it(book):
    """Katersky and Carter 2007: most growth at 31.4 °C."""
    figure = book.figure("fish/barramundi/optimum_c")
    assert figure.value == pytest.approx(31.4, abs=0.5)
    assert holds(figure, 31.4)


@pytest.mark.parametrize("stage", [1, 2, 3])
def test_that_trout_growth_lies_in_the_hatchery_range(book, stage):
    """Hatchery formula sheet: 0.13-0.20 (x100), which is 1.3-2.0 (x1000)."""
    assert 1.3 <= book.figure(f"fish/rainbow-trout/stage/{stage}/tgc").value <= 2.0


@pytest.mark.parametrize(
    ("path", "low", "high"),
    [
        ("fish/nile-tilapia/body_n_g_per_kg", 22.4, 24.6),
        ("fish/common-carp/body_p_g_per_kg", 4.9, 5.3),
        ("fish/rainbow-trout/body_p_g_per_kg", 3.7, 5.9),
    ],
)
def test_that_body_contents_lie_in_the_measured_span(book, path, low, high):
    """GIFT tilapia whole-body protein / 6.25; whole common carp; compiled whole-body phosphorus."""
    assert low <= book.figure(path).value <= high


def test_that_tilapia_ammonia_limit_is_the_highest_without_loss_of_growth(book):
    """Abdalla and McNabb 1998: no loss at 0.06 mg/L un-ionised ammonia nitrogen, 28 °C, 35 days."""
    assert book.fish["nile-tilapia"].nh3_n_limit_mg_per_l == 0.06


def test_that_trout_ammonia_limit_stays_below_the_lowest_long_term_effect(book):
    """Long-term trout study: 0.022 mg/L ammonia, which is 0.0181 mg/L as nitrogen (14.007 / 17.031)."""
    assert book.fish["rainbow-trout"].nh3_n_limit_mg_per_l <= 0.022 * 14.007 / 17.031


@pytest.mark.parametrize(
    ("feed", "nitrogen_g_per_kg"), [("tilapia-grow-out-32", 51.2), ("ornamental-35", 56.0)]
)
def test_that_protein_becomes_nitrogen(book, feed, nitrogen_g_per_kg):
    """The convention protein = 6.25 x nitrogen: 32 % is 51.2, 35 % is 56.0 g/kg (rounding 0.05)."""
    assert book.feeds[feed].protein_share * 1000 / 6.25 == pytest.approx(nitrogen_g_per_kg, abs=0.05)


def test_that_the_carnivore_feed_has_the_minerals_of_present_commercial_feeds(book):
    """Tellbüscher and others 2024: P 12.0 ± 2.4, K 11 ± 2, Ca 18-21, Mg 2-3 g/kg, Fe about 200-325 mg/kg."""
    feed = book.feeds["carnivore-45"]
    assert (feed.p_g_per_kg, feed.k_g_per_kg) == (12.0, 11.0)
    assert 18 <= feed.ca_g_per_kg <= 21
    assert 2 <= feed.mg_g_per_kg <= 3
    assert 200 <= feed.fe_mg_per_kg <= 325


def test_that_the_trout_table_is_the_printed_one(book):
    """Leitritz and Lewis 1980, every temperature and size class."""
    table, rows = book.feeding_tables["trout-by-temperature"], rows_of("trout_feeding_table.csv")
    classes = [name for name in rows[0] if name.startswith("from_")]
    assert len(table.percent_per_day) == len(rows)
    for row, temperature_c, percents in zip(rows, table.temperatures_c, table.percent_per_day, strict=True):
        assert temperature_c == pytest.approx((float(row["temp_f"]) - 32) / 1.8, abs=0.006)
        assert percents == tuple(float(row[name]) for name in classes)


def test_that_each_weight_of_the_trout_table_lies_in_its_printed_class(book):
    """Leitritz and Lewis 1980: size classes turned from fish per pound."""
    (first, *_) = rows_of("trout_feeding_table.csv")
    bounds = [float(name.removeprefix("from_").removesuffix("g")) for name in first if name != "temp_f"]
    weights = book.feeding_tables["trout-by-temperature"].weights_g
    for weight, low, high in zip(weights, bounds, [*bounds[1:], math.inf], strict=True):
        assert low < weight < high


def test_that_the_tilapia_chart_gives_back_the_printed_grams(book):
    """A feed maker's chart: grams a day per 1000 fish; percents were rounded to three figures (0.5 %)."""
    table = book.feeding_tables["tilapia-weekly-chart"]
    rows = rows_of("tilapia_weekly_chart.csv")
    for row, weight, percent in zip(rows, table.weights_g, table.percent_per_day[0], strict=True):
        assert float(row["w_start_g"]) < weight < float(row["w_end_g"])
        grams = 1000 * weight * percent / 100
        assert grams == pytest.approx(float(row["feed_g_per_day_per_1000_fish"]), rel=0.005)
