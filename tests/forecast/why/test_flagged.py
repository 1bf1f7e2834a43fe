"""Every flag of the forecast says why: figure, limit and source."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import pytest

from planner.farm.crops import Phase, Placement
from planner.farm.fish import Feeding, FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.farm.species import ELEMENTS, BedKind
from planner.forecast.engine import Forecaster
from planner.forecast.values import FlagKind
from planner.forecast.why.ask import why
from planner.forecast.why.ground import NoSuchFigureError
from planner.forecast.why.values import NoteKind, Origin, Subject, SubjectKind
from tests.farms import LOOP, MONDAY, NURSERY, RAFT, SITE, batch_of, farm_of, group_of, weekly_batches
from tests.forecast.sample_farms import GRAVEL, NAMES, cold_site, known
from tests.forecast.why.working import asked, walk, works_out


def event(kind, group, day, **fields):
    on = MONDAY + timedelta(days=day)
    return FishEvent(id=id_from(kind.value, group.name, str(day)), group=group.id, on=on, kind=kind, **fields)


CROWDED = group_of("Crowded", count=5000, mean_weight_g=300.0)
STUFFED = group_of("Stuffed", feeding=Feeding.FIXED, feed_g_per_day=90_000.0)
ILL = group_of("Ill")
FARMS = {
    "bare": farm_of(
        sites=(dataclasses.replace(SITE, air_c=(), radiation_mj_per_m2_d=(), latitude_deg=None),),
        fish_groups=(CROWDED, STUFFED),
        batches=(batch_of("OKR", crop="okra", plants=6, bed=RAFT.id), *weekly_batches(6)),
        beds=(RAFT, NURSERY, GRAVEL),
    ),
    "icy": farm_of(
        sites=(dataclasses.replace(cold_site(), air_c=(4.5,) * 12),),
        loops=(dataclasses.replace(LOOP, water_c=(4.0,) * 12),),
        fish_groups=(group_of("Cold"),),
        batches=weekly_batches(2),
    ),
    "hot": farm_of(loops=(dataclasses.replace(LOOP, water_c=(45.0,) * 12),), fish_groups=(group_of("Hot"),)),
    "ill": farm_of(
        fish_groups=(ILL,),
        fish_events=(
            event(FishEventKind.TREATED, ILL, 20),
            event(FishEventKind.HARVEST, ILL, 40, count=20),
        ),
    ),
}


def flags_of(name, forecaster):
    farm = FARMS.get(name) or known(name)[0]
    forecast = forecaster.forecast(farm)
    return farm, forecast


@pytest.mark.parametrize("name", [*FARMS, *NAMES])
def test_that_every_flag_is_explained_with_its_own_figure(name, forecaster):
    farm, forecast = flags_of(name, forecaster)
    assert forecast.flags
    for flag in forecast.flags:
        subject = Subject(kind=SubjectKind.FLAG, about=flag.about, part=flag.kind.value, on=flag.on)
        found = why(subject, farm, forecast, forecaster)
        works_out(found)
        assert found.on == flag.on
        values = dict(flag.values)
        figure = FIGURES[flag.kind](values)
        if figure is None:
            assert found.value is None
            assert found.notes
        elif isinstance(figure, tuple):
            assert found.value in [pytest.approx(one) for one in figure]
        else:
            assert found.value == pytest.approx(figure, rel=1e-9)
            assert any(one.origin is not Origin.WORKED_OUT for each in walk(found) for one in each.inputs)


FIGURES = {
    FlagKind.NO_CLIMATE: lambda _: None,
    FlagKind.UNPLACED: lambda of: of["plants"],
    FlagKind.NOT_SUITED: lambda _: None,
    FlagKind.DENSITY: lambda of: of["highest_kg_per_m3"],
    FlagKind.FEED_FALLS: lambda of: 100 * of["fall_share"],
    FlagKind.SHORT_SUPPLY: lambda of: of["lowest_ratio"],
    FlagKind.WATER_TEMPERATURE: lambda of: of["assumed_c"],
    FlagKind.LETHAL_TEMPERATURE: lambda of: (of["lowest_c"], of["highest_c"]),
    FlagKind.NO_APPETITE: lambda of: (of["lowest_c"], of["highest_c"]),
    FlagKind.OVERFED: lambda of: 100 * of["eaten_share"],
    FlagKind.GIVEN_UP: lambda of: of["size_share"],
    FlagKind.TREATED: lambda _: None,
    FlagKind.HARVEST_BARRED: lambda _: None,
}


def test_that_the_farms_here_show_every_kind_of_flag_the_forecast_makes(forecaster):
    met = {flag.kind for name in (*FARMS, *NAMES) for flag in flags_of(name, forecaster)[1].flags}
    known_not_placed = {FlagKind.NOT_SUITED, FlagKind.SHORT_PLACES}
    assert met >= set(FlagKind) - known_not_placed


def test_that_a_crop_on_a_bed_that_does_not_suit_it_names_both(forecaster):
    known_crops = forecaster.catalogue.crops
    crop = dataclasses.replace(known_crops["tomato"], beds=(BedKind.MEDIA,))
    other = dataclasses.replace(forecaster.catalogue, crops={**known_crops, "tomato": crop})
    batch = batch_of(crop="tomato", plants=2)
    run = Placement(id=id_from("p"), batch=batch.id, phase=Phase.BED, bed=RAFT.id, unit=1, first=1, count=2)
    farm = farm_of(batches=(batch,), placements=(run,))
    own = Forecaster(other)
    forecast = own.forecast(farm)
    subject = Subject(kind=SubjectKind.FLAG, about=batch.id, part=FlagKind.NOT_SUITED.value)
    found = why(subject, farm, forecast, own)
    (note,) = found.notes
    assert (found.value, note.kind) == (None, NoteKind.NOT_SUITED)
    assert (dict(note.values)["bed"], dict(note.values)["suited"]) == (RAFT.name, "media")


def test_that_a_flag_that_is_not_there_names_those_that_are():
    farm, forecast, _ = known("school-kitchen")
    flag = forecast.flags[0]
    with pytest.raises(NoSuchFigureError, match=f"its flags are .*{flag.kind.value}"):
        asked("school-kitchen", kind=SubjectKind.FLAG, about=flag.about, part="earthquake")
    with pytest.raises(NoSuchFigureError, match=r"it has none\."):
        asked("school-kitchen", kind=SubjectKind.FLAG, about=farm.sites[0].id, part="no climate")


@pytest.mark.parametrize("name", NAMES)
def test_that_the_band_of_a_week_is_told_with_its_bounds(name):
    loop = known(name)[1].loops[0].loop
    for week in (0, 9, 17):
        for element in range(len(ELEMENTS)):
            found = asked(name, kind=SubjectKind.BAND, about=loop, week=week, element=element)
            ratio = asked(name, kind=SubjectKind.RATIO, about=loop, week=week, element=element)
            assert found.value == ratio.value
            assert {note.kind for note in found.notes} >= {NoteKind.BAND}
            assert found.input("ample_above").path == "coefficient/verdict/ample_above"
            works_out(found)
