"""Every figure can be asked why, and the answer's arithmetic gives the figure."""

from __future__ import annotations

import dataclasses

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.catalogue.loading import shipped_catalogue
from planner.farm.crops import Stage
from planner.farm.species import ELEMENTS
from planner.forecast.engine import Forecaster
from planner.forecast.values import STAGES
from planner.forecast.verdicts import week_verdicts
from planner.forecast.water.filters import filter_figures
from planner.forecast.water.load import load_forecast, week_loads
from planner.forecast.why.arithmetic import recomputed
from planner.forecast.why.ask import why
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import NoSuchFigureError
from planner.forecast.why.values import NoteKind, Origin, Subject, SubjectKind
from tests.farms import farm_of, weekly_batches
from tests.forecast.sample_farms import NAMES, cold_site, known
from tests.forecast.why.working import asked, walk

NO_ARITHMETIC = {Formula.STAND_TABLE, Formula.LATER_DAYS, Formula.MINERALISED}


def titles(explanation):
    return {one.title for one in walk(explanation)}


OF_WATER = {
    SubjectKind.ACID,
    SubjectKind.BASE,
    SubjectKind.BASE_GRAMS,
    SubjectKind.SALT_GRAMS,
    SubjectKind.IRON_DUE,
    SubjectKind.IRON_GRAMS,
    SubjectKind.SALTS,
    SubjectKind.FREE_AMMONIA,
    SubjectKind.LIMIT,
}
ELSEWHERE = frozenset((SubjectKind.PICKED, *list(SubjectKind)[list(SubjectKind).index(SubjectKind.STOCK) :]))
"""Kinds that came later have tests of their own."""
KINDS = tuple(kind for kind in SubjectKind if kind not in OF_WATER | ELSEWHERE)
"""Kinds of the water of a day have tests of their own (test_water_day.py)."""


@st.composite
def subjects(draw):
    name = draw(st.sampled_from(NAMES))
    farm, forecast, _ = known(name)
    kind = draw(st.sampled_from(KINDS))
    return name, Subject(
        kind=kind,
        about=about_of(kind, farm, draw),
        crop=draw(st.sampled_from(forecast.crops)),
        stage=draw(st.sampled_from(list(Stage))),
        week=draw(st.integers(0, forecast.ruler.weeks - 1)),
        day=draw(st.integers(0, forecast.ruler.days - 1)),
        element=draw(st.integers(0, len(ELEMENTS) - 1)),
    )


def about_of(kind, farm, draw):
    return draw(st.sampled_from(things_of(kind, farm))).id


OF_BATCH = (
    SubjectKind.SEEDS,
    SubjectKind.STAGE_DAYS,
    SubjectKind.FIRST_PICK,
    SubjectKind.BATCH_HARVEST,
    SubjectKind.STAGE_FIRST,
    SubjectKind.STAGE_LAST,
    SubjectKind.STAGE_DAY,
    SubjectKind.FREED,
)
OF_GROUP = (SubjectKind.FEED, SubjectKind.GROUP_FEED, SubjectKind.GROUP_MASS)


def things_of(kind, farm):
    if kind in OF_BATCH:
        return farm.batches
    if kind in OF_GROUP:
        return farm.fish_groups
    return farm.tanks if kind is SubjectKind.DENSITY else farm.loops


def figure_of(subject, forecast, forecaster, farm):
    """Return the figure as the forecast has it, found without the explanations."""
    ruler, table = forecast.ruler, forecast.batches
    row = table.row_of.get(subject.about, 0)
    loop = forecast.loops[0]
    verdict = week_verdicts(loop, ruler, forecaster.bands)[subject.week]
    groups = {group.group: group for group in loop.groups}
    crop = forecast.crops.index(subject.crop)
    starts = [int(table.sow_day[row]), *table.ends[row]]
    column = STAGES.index(subject.stage)
    grams = sum(group.biomass_g[subject.day] for group in loop.groups)
    group = groups.get(subject.about)
    limiting = None if verdict.limiting is None else verdict.ratio[verdict.limiting]
    return {
        SubjectKind.SEEDS: table.seeds[row],
        SubjectKind.STAGE_DAYS: starts[column + 1] - starts[column],
        SubjectKind.FIRST_PICK: table.ends[row, 3] - table.sow_day[row],
        SubjectKind.STAGE_FIRST: starts[column] - starts[0],
        SubjectKind.STAGE_LAST: last_day(table, row, column) - starts[0],
        SubjectKind.STAGE_DAY: subject.day - starts[column] + 1,
        SubjectKind.FREED: starts[-1] - starts[0],
        SubjectKind.HARVEST_PLANTS: ruler.weekly_sum(forecast.harvest_plants)[crop, subject.week],
        SubjectKind.HARVEST_G: ruler.weekly_sum(forecast.harvest_g)[crop, subject.week],
        SubjectKind.DEMAND: verdict.demand_g[subject.element],
        SubjectKind.SUPPLY: verdict.supply_g[subject.element],
        SubjectKind.RATIO: verdict.ratio[subject.element],
        SubjectKind.LIMITING: limiting,
        SubjectKind.BATCH_HARVEST: sold_kg(farm.batches[row], forecast, row),
        SubjectKind.FEED: group and group.feed_g[subject.day],
        SubjectKind.GROUP_FEED: group and ruler.weekly_mean(group.feed_g)[subject.week],
        SubjectKind.GROUP_MASS: group and group.biomass_g[subject.day] / 1000,
        SubjectKind.PLANTED: verdict.planted_m2,
        SubjectKind.FEED_MEAN: verdict.feed_g_per_day,
        SubjectKind.FEED_RATIO: verdict.feed_ratio_g_per_m2_d,
        SubjectKind.AREA_FED: verdict.area_fed_m2[0],
        SubjectKind.DENSITY: grams / farm.tanks[0].volume_l,
        **water_figures(subject.week, loop, farm, forecast, catalogue=shipped_catalogue()),
    }[subject.kind]


def last_day(table, row, column):
    """Return the last day of a stage; a harvest that is picked at once takes its first day."""
    if STAGES[column] is Stage.PICKING:
        return table.pick_days(row)[1] - 1
    return table.ends[row, column] - 1


def sold_kg(batch, forecast, row):
    """Return what can be sold of a batch, as ripe as it gets [kg]."""
    profile = forecast.profiles[int(forecast.batches.profile[row])]
    grams = profile.yield_g_per_plant * forecast.batches.ripe[row] * profile.crop.marketable_share
    return batch.plants * profile.bed_survival_share * grams / 1000


def water_figures(week, loop, farm, forecast, *, catalogue):
    """Return what the water page says of filter and air, by kind."""
    load = load_forecast(
        loop,
        loop=next(one for one in farm.loops if one.id == loop.loop),
        altitude_m=farm.sites[0].altitude_m,
        filters=farm.filters,
        beds=farm.beds,
        ruler=forecast.ruler,
        catalogue=catalogue,
    )
    seen = week_loads(load, ruler=forecast.ruler, figures=filter_figures(catalogue))[week]
    return {
        SubjectKind.AMMONIA: seen.tan_g_per_day.likely,
        SubjectKind.FILTER_NEED: seen.need_m2.likely,
        SubjectKind.OXYGEN: seen.hourly_oxygen_g.likely,
    }


@given(subjects())
@settings(max_examples=150)
def test_that_an_answer_has_the_forecasts_figure_and_its_formula_gives_it(case):
    name, subject = case
    farm, forecast, forecaster = known(name)
    found = why(subject, farm, forecast, forecaster)
    figure = figure_of(subject, forecast, forecaster, farm)
    assert (found.value is None) == (figure is None)
    if figure is not None:
        assert found.value == pytest.approx(float(figure), rel=1e-9, abs=1e-12)
    for one in walk(found):
        again = recomputed(one)
        if again is None:
            assert one.value is None or one.formula in NO_ARITHMETIC
        else:
            assert one.value == pytest.approx(again, rel=1e-7, abs=1e-9), (one.title, one.formula)


@given(subjects())
@settings(max_examples=60)
def test_that_every_figure_used_is_that_of_the_catalogue_with_its_source(case):
    name, subject = case
    farm, forecast, forecaster = known(name)
    for one in walk(why(subject, farm, forecast, forecaster)):
        for given_ in one.inputs:
            if given_.origin is Origin.FIGURE and not given_.path.startswith("feeding table/"):
                figure = forecaster.catalogue.figure(given_.path)
                assert given_.value in (figure.value, figure.low, figure.high)
                assert (given_.low, given_.high, given_.source) == (figure.low, figure.high, figure.source)
                assert given_.conditions


@pytest.mark.parametrize("kind", KINDS)
def test_that_the_inputs_that_were_worked_out_are_explained_by_a_part_of_the_same_value(kind):
    farm, _, _ = known("school-kitchen")
    about = first_of(kind, farm)
    found = asked(
        "school-kitchen", kind=kind, about=about, crop="lettuce-leaf", stage=Stage.BED, week=17, day=119
    )
    wanted = {
        "gain_g",
        "weight_after_g",
        "effective_c",
        "supply_g",
        "demand_g",
        "whole_dry_mass_g",
        "dry_mass_g",
    }
    for one in walk(found):
        for given_ in one.inputs:
            if given_.name in wanted and one.children:
                assert min(abs(given_.value - (child.value or 0)) for child in one.children) <= 1e-7 * max(
                    1.0, given_.value
                )


def first_of(kind, farm):
    return things_of(kind, farm)[0].id


def test_that_demand_goes_down_to_the_content_yield_and_harvest_share_of_one_batch():
    found = asked(
        "school-kitchen", kind=SubjectKind.DEMAND, about=known("school-kitchen")[0].loops[0].id, week=12
    )
    batch = found.children[0]
    assert batch.input("content").path.endswith("/n_g_per_kg")
    whole = batch.children[0].children[0]
    assert {one.name for one in whole.inputs} >= {"yield_g_per_plant", "dry_matter_share", "harvest_share"}
    sizes = [child.value for child in found.children]
    assert sizes == sorted(sizes, reverse=True)


def test_that_supply_goes_down_to_feed_fish_and_what_they_keep():
    loop = known("school-kitchen")[0].loops[0].id
    found = asked("school-kitchen", kind=SubjectKind.SUPPLY, about=loop, week=12)
    assert titles(found) >= {
        "dissolved from feed",
        "from make-up water",
        "from doses",
        "element kept in fish",
        "element in solids",
        "element lost as gas",
        "gain",
        "warmth that counts",
    }


@pytest.mark.parametrize(("week", "code", "lost"), [(6, "SB-1", 0.0), (11, "SB-2", 0.8)])
def test_that_liquor_that_goes_back_is_told_by_its_batch(week, code, lost):
    farm, forecast, _ = known("by-hand")
    found = asked("by-hand", kind=SubjectKind.SUPPLY, about=farm.loops[0].id, week=week)
    (liquor,) = (one for one in found.children if one.title == "from solids batches")
    (batch,) = liquor.children
    assert (batch.about, batch.input("lost_share").value) == (code, lost)
    assert liquor.value == pytest.approx(forecast.loops[0].liquor_g[0, week * 7 : week * 7 + 7].sum())
    assert batch.value == pytest.approx(liquor.value)
    assert batch.value > 0


def test_that_what_solids_give_back_in_beds_names_filter_and_rates():
    for name, origin in (("by-hand", Origin.FIGURE), ("school-kitchen", Origin.ENTERED)):
        farm, _, _ = known(name)
        found = asked(name, kind=SubjectKind.SUPPLY, about=farm.loops[0].id, week=9, element=2)
        (beds,) = (one for one in found.children if one.title == "from solids in beds")
        assert beds.value > 0
        assert beds.input("rate_per_day").path == "element/k/mineral_rate_per_day"
        assert beds.children[0].input("captured_share").origin is origin


def test_that_a_capped_split_is_noted():
    farm, _, _ = known("by-hand")
    found = [
        one
        for element in range(len(ELEMENTS))
        for one in walk(
            asked("by-hand", kind=SubjectKind.SUPPLY, about=farm.loops[0].id, week=8, element=element)
        )
        if any(note.kind is NoteKind.CAPPED_SPLIT for note in one.notes)
    ]
    assert found
    for one in found:
        assert one.input("capped_g").value > 0


def test_that_book_durations_and_an_assumed_temperature_are_noted():
    farm, _, _ = known("by-hand")
    pick = asked("by-hand", kind=SubjectKind.FIRST_PICK, about=farm.batches[0].id)
    assert NoteKind.BOOK_DURATIONS in {note.kind for note in pick.notes}
    feed = asked("by-hand", kind=SubjectKind.FEED, about=farm.fish_groups[0].id, day=1)
    assert NoteKind.ASSUMED_TEMPERATURE in {note.kind for note in feed.notes}


@pytest.mark.parametrize(
    ("day", "kind"),
    [
        (11, NoteKind.OFF_FEED),
        (22, NoteKind.FEED_GIVEN),
        (98, NoteKind.PURGED),
        (101, NoteKind.NO_FISH),
    ],
)
def test_that_a_day_with_another_ration_says_why(day, kind):
    farm, _, _ = known("by-hand")
    found = asked("by-hand", kind=SubjectKind.FEED, about=farm.fish_groups[0].id, day=day)
    assert kind in {note.kind for note in found.notes}


def test_that_a_late_batch_names_delay_and_cause(forecaster):
    farm = farm_of(sites=(cold_site(),), batches=weekly_batches(1, bed_days=None, nursery_days=None))
    forecast = forecaster.forecast(farm)
    subject = Subject(kind=SubjectKind.STAGE_DAYS, about=farm.batches[0].id, stage=Stage.BED)
    found = why(subject, farm, forecast, forecaster)
    later = found.children[0]
    assert later.value == found.value - found.input("days").value > 0
    (note,) = (one for one in later.notes if one.kind is NoteKind.DELAY)
    assert dict(note.values)["cause"] in {"little light", "cold"}
    assert later.input("mean_air_c").value == pytest.approx(14.0, abs=0.5)


def test_that_a_stage_cut_off_at_its_longest_says_so(forecaster):
    frozen = dataclasses.replace(cold_site(), air_c=(4.5,) * 12)
    farm = farm_of(sites=(frozen,), batches=weekly_batches(1))
    forecast = forecaster.forecast(farm)
    subject = Subject(kind=SubjectKind.STAGE_DAYS, about=farm.batches[0].id, stage=Stage.BED)
    found = why(subject, farm, forecast, forecaster)
    longest = forecaster.catalogue.figure("coefficient/season/longest_stretch").value
    assert found.value == np.ceil(28 * longest)
    assert NoteKind.STRETCHED in {note.kind for note in found.notes}
    pick = why(Subject(kind=SubjectKind.FIRST_PICK, about=farm.batches[0].id), farm, forecast, forecaster)
    assert NoteKind.GIVEN_UP in {note.kind for note in pick.notes}


def test_that_what_the_grower_entered_is_told_from_the_book():
    farm, _, _ = known("by-hand")
    by_code = {batch.code: batch.id for batch in farm.batches}
    own = asked("by-hand", kind=SubjectKind.SEEDS, about=by_code["OWN"]).input("germination_share")
    lot = asked("by-hand", kind=SubjectKind.SEEDS, about=by_code["LTB-1"]).input("germination_share")
    book = asked("by-hand", kind=SubjectKind.SEEDS, about=by_code["OKR"]).input("germination_share")
    assert (own.origin, own.value) == (Origin.ENTERED, 0.7)
    assert (lot.origin, lot.value, lot.about) == (Origin.ENTERED, 0.8, "LOT-1")
    assert (book.origin, book.path) == (Origin.FIGURE, "crop/okra/germination_share")


@pytest.mark.parametrize(
    "words",
    [
        {"kind": SubjectKind.SEEDS, "about": "nobody"},
        {"kind": SubjectKind.DEMAND, "about": "nowhere"},
        {"kind": SubjectKind.FEED, "about": "nothing"},
        {"kind": SubjectKind.DENSITY, "about": "no tank"},
        {"kind": SubjectKind.HARVEST_G, "crop": "pineapple"},
        {"kind": SubjectKind.RATIO, "week": 99},
        {"kind": SubjectKind.FEED, "day": -1},
        {"kind": SubjectKind.STAGE_DAYS},
    ],
)
def test_that_a_figure_that_is_not_there_is_refused_in_a_sentence(words):
    farm, _, _ = known("by-hand")
    given_ = {
        "about": farm.batches[0].id if words["kind"] is SubjectKind.STAGE_DAYS else farm.loops[0].id
    } | words
    with pytest.raises(NoSuchFigureError, match=r"\w+.*\.$"):
        asked("by-hand", **given_)


def test_that_own_entries_are_explained_by_the_growers_value(forecaster):
    from planner.farm.farm import OwnEntry, Shelf
    from planner.farm.ids import id_from

    own = OwnEntry(
        id=id_from("own"),
        shelf=Shelf.CROP,
        key="lettuce-butterhead",
        like="lettuce-butterhead",
        name="Ours",
        values=(("n_g_per_kg", 50.0),),
    )
    farm = farm_of(own_entries=(own,), batches=weekly_batches(2))
    forecast = forecaster.forecast(farm)
    subject = Subject(kind=SubjectKind.DEMAND, about=farm.loops[0].id, week=5)
    content = why(subject, farm, forecast, forecaster).children[0].input("content")
    assert (content.value, content.low, content.high, content.confidence) == (
        50.0,
        50.0,
        50.0,
        "grower's value",
    )


def test_that_a_farm_without_anything_has_answers_too(forecaster):
    farm = farm_of()
    forecast = forecaster.forecast(farm)
    for kind in (SubjectKind.SUPPLY, SubjectKind.DEMAND, SubjectKind.RATIO, SubjectKind.FEED_RATIO):
        found = why(Subject(kind=kind, about=farm.loops[0].id), farm, forecast, forecaster)
        assert found.value in (None, 0.0)
        assert np.isfinite([one.value for one in found.inputs]).all()
    assert dataclasses.is_dataclass(found)


def test_that_a_thermometer_in_the_water_is_heeded(forecaster):
    from planner.farm.ids import id_from
    from planner.farm.water import Quantity, Reading
    from tests.farms import LOOP, MONDAY, group_of

    read = Reading(id=id_from("read"), loop=LOOP.id, on=MONDAY, quantity=Quantity.WATER_C, value=22.0)
    loop = dataclasses.replace(LOOP, water_c=(26.0,) * 12)
    farm = farm_of(loops=(loop,), fish_groups=(group_of(),), readings=(read,))
    forecast = forecaster.forecast(farm)
    for day in (0, 4, 30):
        found = why(
            Subject(kind=SubjectKind.FEED, about=farm.fish_groups[0].id, day=day), farm, forecast, forecaster
        )
        gain = found.children[0]
        assert recomputed(gain) == pytest.approx(gain.value, rel=1e-9)
        water = gain.children[0].children[0].input("water_c").value
        assert water < 26.0 if day == 0 else water <= 26.0


def test_that_a_loops_own_loss_of_nitrogen_is_told_as_entered_and_works_out():
    farm, forecaster = known(NAMES[0])[0], Forecaster(shipped_catalogue())
    own = dataclasses.replace(
        farm, loops=tuple(dataclasses.replace(one, gas_loss_share=0.2) for one in farm.loops)
    )
    forecast = forecaster.forecast(own)
    fed = next(number for number, loop in enumerate(forecast.loops) if loop.feed_g.any())
    week = int(forecast.loops[fed].feed_g.nonzero()[0][0]) // 7 + 1
    subject = Subject(
        kind=SubjectKind.SUPPLY, about=own.loops[fed].id, week=week, element=ELEMENTS.index("n")
    )
    told = [
        one for one in walk(why(subject, own, forecast, forecaster)) if one.formula is Formula.LOST_AS_GAS
    ]
    assert told
    for one in told:
        share = next(given for given in one.inputs if given.name == "gas_loss_share")
        assert (share.value, share.origin) == (0.2, Origin.ENTERED)
        assert recomputed(one) == pytest.approx(one.value)
