"""The command that turns a length into a weight."""

from __future__ import annotations

import pytest

from planner.catalogue.loading import shipped_catalogue
from planner.cli import main
from planner.forecast.lengths import weight_of_length


def test_that_a_fingerling_of_ten_centimetres_weighs_what_the_curve_says():
    """Wagaw 2022: tilapia W = 0.0104 TL^3.19, so 4 inches (10.16 cm) are 16.9 g."""
    found = weight_of_length(shipped_catalogue(), "nile-tilapia", length_cm=10.16)
    assert found.likely_g == pytest.approx(16.9, abs=0.05)


def test_that_a_length_carries_a_quarter_either_way_for_tilapia():
    found = weight_of_length(shipped_catalogue(), "nile-tilapia", length_cm=10.0)
    assert found.low_g / found.likely_g == pytest.approx(0.75, abs=0.05)
    assert found.high_g / found.likely_g == pytest.approx(1.25, abs=0.05)


@pytest.mark.parametrize("species", sorted(shipped_catalogue().fish))
def test_that_longer_fish_weigh_more_and_ranges_are_in_order(species):
    short, long = (weight_of_length(shipped_catalogue(), species, length_cm=cm) for cm in (8.0, 16.0))
    assert short.low_g <= short.likely_g <= short.high_g < long.high_g


def test_that_the_command_says_weight_range_source_and_to_weigh(capsys):
    assert main(["length", "nile-tilapia", "10"]) == 0
    out = capsys.readouterr().out
    assert out.startswith("Nile tilapia of 10 cm: about 16 g (12 to 20 g)\n")
    assert "wagaw2022" in out
    assert "Weigh a sample." in out


def test_that_heavy_fish_are_told_without_an_exponent(capsys):
    assert main(["length", "nile-tilapia", "20"]) == 0
    assert "about 150 g (110 to 180 g)" in capsys.readouterr().out


@pytest.mark.parametrize("words", [["tilapia", "10"], ["nile-tilapia", "0"], ["nile-tilapia", "long"]])
def test_that_a_wrong_fish_or_length_is_wrong_usage(capsys, words):
    try:
        code = main(["length", *words])
    except SystemExit as ended:
        code = ended.code
    assert code == 2
    assert words[0] in capsys.readouterr().err or words[0] == "nile-tilapia"


def test_that_a_fish_longer_than_any_series_tells_of_is_refused_with_its_limit(capsys):
    assert main(["length", "nile-tilapia", "190"]) == 2
    assert "tell of fish of at most 2,500 g" in capsys.readouterr().err
