"""The command why: figures named in words, explained as text and as data."""

from __future__ import annotations

import json
from datetime import date

import pytest


def test_that_seeds_are_explained_with_formula_sources_and_confidence(run, kitchen):
    said = run("why", kitchen, "batch", "LTB-27W14-A", "seeds")
    assert (said.code, said.err) == (0, "")
    assert said.out.startswith("seeds of LTB-27W14-A: 28 seeds, Thu 8 Apr 2027\n")
    assert "⌈plants / (germination_share × stand_share × nursery_survival_share)⌉" in said.out
    assert "0.8 to 0.99; seedact201, common practice" in said.out


def test_that_a_short_element_is_told_with_its_reasons_first(run, kitchen):
    out = run("why", kitchen, "week", "2027-W18", "N").out.replace("\u00a0", " ")
    flags = json.loads(run("forecast", kitchen, "--json").out)["flags"]
    fall = next(one for one in flags if one["kind"] == "feed falls" and one["from"] == "2027-05-03")
    until = date.fromisoformat(fall["until"])
    assert out.startswith(
        f"because: {fall['fish']:.0f} fish harvested on Mon 3 May: "
        f"feed falls {100 * fall['fall_share']:.0f} % until {until:%a} {until.day} {until:%b}\n"
    )
    assert "ratio of N: " in out


@pytest.mark.parametrize(
    ("words", "title", "unit"),
    [
        (("batch", "ltb-27w14-a", "first-pick"), "first pick", "d"),
        (("batch", "LTB-27W14-A", "nursery"), "nursery days", "d"),
        (("batch", "LTB-27W14-A", "harvest"), "harvest of a batch", "kg"),
        (("week", "2027-W18", "planted"), "planted area", "m²"),
        (("fish", "winter fish", "2027-05-03", "mass"), "mass of a group", "kg"),
        (("fish", "winter fish", "2027-W18"), "feed of a group in the week", "g/d"),
        (("week", "2027-w18", "n", "supply"), "supply", "g"),
        (("week", "2027-05-05", "Fe", "demand"), "demand", "g"),
        (("week", "2027-W18", "least"), "limiting element", "g/g"),
        (("week", "2027-W18", "feed"), "feed a day in the week", "g/d"),
        (("week", "2027-W18", "feed-ratio"), "feed-rate ratio", "g/m²/d"),
        (("week", "2027-W18", "area"), "area fed", "m²"),
        (("week", "2027-W18", "acid"), "acid made in a week", "eq"),
        (("week", "2027-W18", "base"), "base wanted in a week", "eq"),
        (("water", "2027-05-03", "iron-due"), "next dose of iron", "d"),
        (("week", "2027-W18", "crop", "lettuce-leaf"), "harvest", "plants"),
        (("week", "2027-W18", "crop", "lettuce-leaf", "kg"), "harvest", "g"),
        (("fish", "winter fish", "2027-05-03"), "feed", "g/d"),
        (("tank", "Big tank", "2027-05-03"), "density", "kg/m³"),
        (("batch", "LTB-27W14-A", "yield"), "yield of a plant", "g"),
        (("batch", "LTB-27W14-A", "heads"), "plants that live", "plants"),
        (("batch", "LTB-27W14-A", "late"), "later than by the book", "d"),
        (("batch", "LTB-27W14-A", "area"), "area of a batch", "m²"),
        (("batch", "LTB-27W14-A", "freed"), "days until places are free", "d"),
        (("batch", "LTB-27W14-A", "bed", "first"), "days to the bed", "d"),
        (("batch", "LTB-27W14-A", "picking", "last"), "days to the last pick", "d"),
        (("batch", "LTB-27W14-A", "2027-05-03", "places"), "places of a batch", "places"),
        (("batch", "LTB-27W14-A", "2027-W18", "N"), "demand of a batch", "g"),
        (("week", "2027-W18", "hole"), "fall of the feed in a week", "%"),
        (("week", "2027-W18", "planted", "lettuce-leaf"), "area of a crop", "m²"),
        (("week", "2027-W18", "N", "band"), "how supply counts", "g/g"),
        (("week", "2027-W18", "N", "covered"), "supply and stock for the demand", "1"),
        (("week", "2027-W18", "N", "lacking"), "what plants lack", "g"),
        (("week", "2027-W18", "sow"), "to sow", "seeds"),
        (("weeks", "2027-W14", "2027-W18", "pick", "lettuce-leaf"), "to pick", "plants"),
        (("plan", "sown-plants"), "plants sown", "plants"),
        (("plan", "seeds"), "seeds of some weeks", "seeds"),
        (("plan", "plugs"), "media plugs of some weeks", "pieces"),
        (("plan", "net-pots"), "net pots of some weeks", "pieces"),
        (("plan", "harvest-kg"), "harvest of some weeks", "kg"),
        (("plan", "harvest-plants", "basil"), "harvest of some weeks", "plants"),
        (("plan", "feed-kg"), "feed of some weeks", "kg"),
        (("plan", "gain-kg"), "gain of fish in some weeks", "kg"),
        (("plan", "fish-kg"), "fish harvested in some weeks", "kg"),
        (("fish", "winter fish", "2027-05-03", "count"), "fish of a group", "fish"),
        (("fish", "winter fish", "2027-05-03", "weight"), "weight of a fish", "g"),
        (("fish", "winter fish", "2027-05-03", "gain"), "gain", "g/d"),
        (("fish", "autumn fish", "2027-05-03", "harvest"), "harvest of fish", "kg"),
        (("fish", "autumn fish", "2027-05-03", "harvested"), "fish harvested", "fish"),
        (("fish", "autumn fish", "2027-05-03", "fall"), "fall of the feed at a harvest", "%"),
        (("fish", "winter fish", "2027-W18", "deaths"), "deaths expected", "fish"),
        (("fish", "winter fish", "plan", "feed-kg"), "feed of some weeks", "kg"),
        (("fish", "winter fish", "ready"), "ready to harvest", "d"),
        (("bed", "North raft", "2027-05-03", "used"), "places held", "places"),
        (("bed", "North raft", "2027-05-03", "free"), "places free", "places"),
        (("nursery", "2027-05-03"), "nursery places held", "places"),
        (("water", "2027-05-03", "stock", "K"), "stock in the water", "mg/L"),
        (("flag", "short-supply", "Kitchen loop"), "flag: short supply", "g/g"),
        (("flag", "feed-falls", "Autumn fish", "2027-05-03"), "fall of the feed at a harvest", "%"),
        (("solids", "Barrel 1", "back"), None, "g"),
        (("dose", "iron-dtpa-11", "2027-01-05"), None, "g"),
        (("week", "2027-W18", "surface"), None, "m²"),
        (("week", "2027-W18", "peak-oxygen"), None, "g/h"),
        (("week", "2027-W18", "alkalinity-fall"), None, "mg/L CaCO₃"),
    ],
)
def test_that_every_subject_can_be_named(run, kitchen, words, title, unit):
    data = json.loads(run("why", kitchen, *words, "--json").out)
    assert (data["format"], data["unit"]) == ("raftweek.why/1", unit)
    assert title in (None, data["title"])
    assert data["value"] is not None


def test_that_the_values_are_those_of_the_forecast(run, kitchen):
    week = next(
        week
        for week in json.loads(run("forecast", kitchen, "--json").out)["loops"][0]["weeks"]
        if week["week"] == "2027-W18"
    )
    for words, value in (
        (("N",), week["elements"]["N"]["ratio"]),
        (("K", "supply"), week["elements"]["K"]["supply_g"]),
        (("Ca", "demand"), week["elements"]["Ca"]["demand_g"]),
        (("feed-ratio",), week["feed_ratio_g_per_m2_d"]),
    ):
        data = json.loads(run("why", kitchen, "week", "2027-W18", *words, "--json").out)
        assert data["value"] == pytest.approx(value, abs=1e-6)


def test_that_every_product_advised_on_a_day_can_be_asked_about(run, kitchen):
    day = "2027-05-03"
    advice = json.loads(run("water", kitchen, "--date", day, "--json").out)["loops"][0]["advice"]
    asked = 0
    for word, products in (
        ("base", [(one["supplement"], one["grams_per_week"]) for one in advice["base"]["bases"]]),
        ("iron", [(one["supplement"], one["grams"]) for one in advice["iron"]["products"]]),
    ):
        for key, grams in products:
            data = json.loads(run("why", kitchen, "water", day, word, key, "--json").out)
            assert data["value"] == pytest.approx(grams[1], abs=1e-6)
            asked += 1
    assert asked


def test_that_what_was_not_tested_lately_has_no_figure_and_says_so(run, kitchen):
    for figure in ("alkalinity-limit", "ph-limit", "ph-trend"):
        said = run("why", kitchen, "water", "2027-05-03", figure)
        assert (said.code, said.err) == (0, "")
        assert ": no figure" in said.out
        assert "not known: " in said.out


def test_that_depth_says_how_far_to_go_down(run, kitchen):
    none, one, deep = (
        run("why", kitchen, "week", "2027-W12", "N", "demand", "--depth", depth).out for depth in (0, 1, 5)
    )
    assert len(none.splitlines()) == 1
    assert len(none) < len(one) < len(deep)
    assert "dry mass of a whole plant" in deep


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (("bach", "X", "seeds"), 'Did you mean "batch"?'),
        (("batch", "LTB-27W14-Z", "seeds"), 'there is no batch "LTB-27W14-Z". Did you mean'),
        (("batch", "LTB-27W14-A", "seed"), 'Did you mean "seeds"?'),
        (("batch", "LTB-27W14-A"), "takes two words more"),
        (("week", "2027-W18"), "takes a week and a figure"),
        (("week", "2028-W40", "N"), "52 weeks from 2027-01-04"),
        (("week", "soon", "N"), '"soon" is not a date'),
        (("week", "2027-W18", "Zn"), 'a week has no figure "Zn"'),
        (("week", "2027-W18", "N", "surplus"), "neither supply nor demand"),
        (("week", "2027-W18", "crop", "lettuce"), 'Did you mean "lettuce-leaf"?'),
        (("week", "2027-W18", "crop", "lettuce-leaf", "t"), "neither plants nor kg"),
        (("water", "2027-05-03"), "takes a day and a figure"),
        (("water", "2027-05-03", "irn-due"), 'Did you mean "iron-due"?'),
        (("water", "2027-05-03", "iron"), "takes the key of one product"),
        (
            ("water", "2027-05-03", "base", "moon-dust"),
            '"moon-dust" is not advised in the week of 2027-05-03',
        ),
        (("water", "2031-05-03", "salts"), "outside the plan"),
        (("fish", "Sumer fish", "2027-05-03"), "there is no fish group"),
        (("fish", "Winter fish", "2031-05-03"), "outside the plan"),
        (("tank", "Big tank", "yesterday"), "is not a date"),
        (("week", "2027-W18", "N", "--loop", "Other"), 'there is no loop "Other"'),
        (("weeks", "2027-W18", "sow"), "takes two weeks and a figure"),
        (("weeks", "2027-W18", "2027-W14", "sow"), "comes before"),
        (("weeks", "2027-W14", "2027-W18", "dance"), 'weeks have no figure "dance"'),
        (("plan",), '"plan" takes a figure'),
        (("plan", "seeds", "pineapple"), 'does not grow "pineapple"'),
        (("plan", "plugs", "basil"), '"plugs" does not take it'),
        (("plan", "feed-kg", "chips"), 'no fish get the feed "chips"; feeds are'),
        (("batch", "LTB-27W14-A", "2027-12-24", "places"), "stands nowhere on 2027-12-24"),
        (("batch", "LTB-27W14-A", "2027-W40", "N"), "does not grow in 2027-W40"),
        (("batch", "LTB-27W14-A", "2027-05-03", "holes"), 'on a day has no figure "holes"'),
        (("batch", "LTB-27W14-A", "2027-W18", "Zn"), '"Zn" is no element'),
        (("fish", "Winter fish", "2027-05-03", "harvest"), "its harvests are on 2027-08-02"),
        (("fish", "Winter fish", "2027-05-03", "age"), 'fish have no figure "age" on a day'),
        (("fish", "Winter fish", "plan", "age"), 'fish have no figure "age" of weeks'),
        (("bed", "North raft", "2027-05-03"), "a bed has no figure"),
        (("bed", "Nort raft", "2027-05-03", "used"), 'Did you mean "North raft"?'),
        (("nursery", "today"), '"today" is not a date'),
        (("flag", "earthquake", "Kitchen loop"), "there is no kind of flag"),
        (("flag", "density", "Kitchen loop"), "there is no density flag of"),
        (("tank", "Big tank", "2027-05-03", "now"), "a tank takes a day"),
        (("water", "2027-05-03", "stock"), "takes one element"),
        (("water", "2027-05-03", "trend", "mood"), "is nothing that is read"),
        (("solids", "Barrel 1", "smell"), 'has no figure "smell"'),
        (("week", "2027-W18", "N", "--depth", "deep"), '"deep" is not a number of levels'),
    ],
)
def test_that_a_subject_that_is_not_there_is_told_with_what_is(run, kitchen, words, told):
    said = run("why", kitchen, *words)
    assert (said.code, said.out) == (2, "")
    assert told in said.err


def test_that_every_source_named_is_given_in_full_below(run, kitchen):
    out = run("why", kitchen, "batch", "LTB-27W14-A", "seeds").out
    _, _, below = out.partition("\nsources:\n")
    keys = [line.partition(":")[0].strip() for line in below.splitlines()]
    assert "seedact201" in keys
    assert keys == sorted(set(keys))
    assert all(line.startswith("  ") and " (" in line for line in below.splitlines())


def test_that_the_data_hold_every_publication_of_the_figures(run, kitchen):
    data = json.loads(run("why", kitchen, "week", "2027-W18", "N", "--json").out)

    def sources(part):
        found = {one["source"] for one in part["inputs"] if one.get("source")}
        return found.union(*(sources(child) for child in part["parts"]))

    assert set(data["publications"]) == sources(data)
    assert "fao589" in data["publications"]


@pytest.mark.parametrize(
    ("words", "title"),
    [
        (("week", "2027-W18", "N", "range"), "range of ratio"),
        (("week", "2027-W18", "N", "supply", "range"), "range of supply"),
        (("week", "2027-W18", "N", "demand", "range"), "range of demand"),
        (("week", "2027-W18", "feed", "range"), "range of mean feed"),
        (("week", "2027-W18", "crop", "lettuce-leaf", "kg", "range"), "range of harvest"),
        (("batch", "LTB-27W14-A", "first-pick", "range"), "range of days to the first pick"),
        (("week", "2027-W18", "N", "draws"), "likely ratio by draws"),
        (("week", "2027-W18", "feed", "draws"), "likely feed by draws"),
        (("week", "2027-W18", "crop", "lettuce-leaf", "draws"), "likely harvest by draws"),
        (("week", "2027-W18", "crop", "lettuce-leaf", "chance", "20"), "chance"),
        (("week", "2027-W18", "crop", "lettuce-leaf", "kg", "chance", "2.5"), "chance"),
    ],
)
def test_that_how_sure_a_figure_is_can_be_asked(run, kitchen, words, title):
    data = json.loads(run("why", kitchen, *words, "--json").out)
    assert data["title"] == title
    assert data["value"] is not None
    assert data["parts"]


def test_that_a_range_is_the_one_that_the_forecast_prints(run, kitchen):
    ranges = json.loads(run("forecast", kitchen, "--ranges", "--json").out)["ranges"]["loops"][0]
    week = next(week for week in ranges["weeks"] if week["week"] == "2027-W18")
    data = json.loads(run("why", kitchen, "week", "2027-W18", "N", "range", "--json").out)
    told = [one["value"] for one in data["inputs"]]
    assert told == pytest.approx(week["elements"]["N"]["ratio"], abs=1e-6)


def test_that_a_chance_is_the_one_that_the_forecast_prints_and_hangs_on_the_seed(run, kitchen):
    chances = json.loads(run("forecast", kitchen, "--chances", "--seed", "3", "--json").out)["chances"]
    target = next(one for one in chances["targets"] if one["unit"] == "heads")
    week = max(target["weeks"], key=lambda one: one["chance"] * (1 - one["chance"]))
    words = ("week", week["week"], "crop", target["crop"], "chance", f"{target['amount_per_week']:g}")
    data = json.loads(run("why", kitchen, *words, "--seed", "3", "--json").out)
    assert data["value"] == pytest.approx(week["chance"], abs=1e-6)
    assert {"kind": "draws", "draws": "1,000", "seed": "3"} in data["notes"]


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("week", "2027-W18", "crop", "lettuce-leaf", "chance"), "one amount of 0 or more"),
        (("week", "2027-W18", "crop", "lettuce-leaf", "chance", "many"), "one amount of 0 or more"),
        (("week", "2027-W18", "acid", "range"), "nothing tells how sure"),
        (("week", "2027-W18", "N", "chance", "4"), "a chance is one of a harvest"),
        (("range",), "is no subject"),
    ],
)
def test_that_what_has_no_range_and_no_chance_is_told_so(run, kitchen, words, said):
    found = run("why", kitchen, *words)
    assert found.code == 2
    assert said in found.err
    assert found.out == ""
