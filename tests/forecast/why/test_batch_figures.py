"""Yield, plants that live, demand, places and lateness of a batch: the forecast's figures, worked again."""

from __future__ import annotations

import pytest

from planner.farm.crops import Phase, Stage
from planner.forecast.delays import delay_of
from planner.forecast.formed import rows_alive
from planner.forecast.why.ask import why
from planner.forecast.why.ground import NoSuchFigureError
from planner.forecast.why.values import NoteKind, Subject, SubjectKind
from tests.farms import farm_of, weekly_batches
from tests.forecast.sample_farms import NAMES, cold_site, known
from tests.forecast.why.working import asked, walk, works_out


@pytest.mark.parametrize("name", NAMES)
def test_that_yield_and_living_plants_are_those_of_the_profile(name):
    farm, forecast, _ = known(name)
    for row, batch in enumerate(farm.batches):
        profile = forecast.profiles[int(forecast.batches.profile[row])]
        grams = asked(name, kind=SubjectKind.BATCH_YIELD, about=batch.id)
        assert grams.value == pytest.approx(profile.yield_g_per_plant * forecast.batches.ripe[row])
        heads = asked(name, kind=SubjectKind.BATCH_HEADS, about=batch.id)
        assert heads.value == round(batch.plants * profile.bed_survival_share)
        works_out(grams)
        works_out(heads)


@pytest.mark.parametrize("name", NAMES)
def test_that_the_demands_of_batches_are_the_demand_of_the_loop(name):
    farm, forecast, _ = known(name)
    for loop_number, loop in enumerate(forecast.loops):
        week = 12
        whole = forecast.ruler.weekly_sum(loop.demand_g)[0, week]
        summed, alive = 0.0, rows_alive(forecast.batches, first_day=85, last_day=91)
        for row, batch in enumerate(farm.batches):
            if forecast.batches.loop[row] != loop_number:
                continue
            subject = {"kind": SubjectKind.BATCH_DEMAND, "about": batch.id, "week": week, "element": 0}
            if row not in alive:
                with pytest.raises(NoSuchFigureError, match="does not grow in"):
                    asked(name, **subject)
                continue
            found = asked(name, **subject)
            works_out(found)
            summed += found.value
        assert summed == pytest.approx(float(whole), rel=1e-6, abs=1e-9)


@pytest.mark.parametrize("name", NAMES)
def test_that_lateness_is_the_first_pick_less_the_book(name):
    farm, forecast, forecaster = known(name)
    for row, batch in enumerate(farm.batches):
        found = asked(name, kind=SubjectKind.BATCH_LATE, about=batch.id)
        delay = delay_of(forecast.batches, forecaster.paces, row)
        assert max(found.value, 0) == (0 if delay is None else delay.days)
        assert sum(child.value for child in found.children) == found.value
        works_out(found)


def test_that_a_late_batch_names_stage_cause_and_layer(forecaster):
    import dataclasses

    from tests.farms import NURSERY, RAFT

    shaded = dataclasses.replace(RAFT, light_share=0.6, layer=0)
    batches = tuple(
        dataclasses.replace(one, bed=shaded.id) for one in weekly_batches(1, bed_days=None, nursery_days=None)
    )
    farm = farm_of(sites=(cold_site(),), beds=(shaded, NURSERY), batches=batches)
    forecast = forecaster.forecast(farm)
    found = why(Subject(kind=SubjectKind.BATCH_LATE, about=batches[0].id), farm, forecast, forecaster)
    assert found.value > 0
    kinds = {note.kind for one in walk(found) for note in one.notes}
    assert {NoteKind.DELAY, NoteKind.UNDER_LAYER, NoteKind.SLOWED_BY} <= kinds
    (bed,) = (child for child in found.children if child.title.startswith("bed "))
    (slowed,) = (note for note in bed.notes if note.kind is NoteKind.SLOWED_BY)
    assert dict(slowed.values)["cause"] in {"little light", "cold"}


@pytest.mark.parametrize("phase", list(Phase))
def test_that_a_batch_holds_the_places_of_its_phase(phase):
    farm, forecast, _ = known("school-kitchen")
    table = forecast.batches
    asked_about = 0
    for row, batch in enumerate(farm.batches):
        first, end = table.phase_days(row, phase)
        if not 0 <= first < end <= forecast.ruler.days:
            continue
        found = asked("school-kitchen", kind=SubjectKind.BATCH_PLACES, about=batch.id, day=first)
        runs = [run for run in farm.placements if run.batch == batch.id and run.phase is phase]
        assert found.value == sum(run.count for run in runs)
        works_out(found)
        asked_about += 1
    assert asked_about or phase is Phase.SPACING


def test_that_a_batch_that_is_gone_stands_nowhere():
    farm, forecast, _ = known("school-kitchen")
    gone = int(forecast.batches.ends[0, 5])
    with pytest.raises(NoSuchFigureError, match=r"stands nowhere on \d{4}-"):
        asked("school-kitchen", kind=SubjectKind.BATCH_PLACES, about=farm.batches[0].id, day=gone)
    assert Stage.BED.value == "bed"
