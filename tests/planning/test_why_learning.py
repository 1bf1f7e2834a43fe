"""Why something was learned: every figure of a lesson worked again from what its batches showed."""

from __future__ import annotations

import dataclasses
from datetime import timedelta

import pytest

from planner.catalogue.loading import shipped_catalogue
from planner.farm.crops import Stage
from planner.farm.ids import id_from
from planner.farm.log import Happening, LogEntry
from planner.forecast.why.values import NoteKind
from planner.planning.dating import Dater
from planner.planning.learning import key_of, learned, observed, outcomes
from planner.planning.why_learning import (
    why_actual,
    why_learned,
    why_longer,
    why_planned,
    why_spread,
)
from tests.forecast.sample_farms import known
from tests.forecast.why.working import works_out


def holds(answer, figure):
    assert answer.value == pytest.approx(figure)
    works_out(answer)


def entry(batch, what, on, **words):
    name = f"{batch.code} {what.value}"
    return LogEntry(
        id=id_from(name),
        code=name,
        on=on,
        what=what,
        batch=batch.id,
        noted_at=f"{on}T08:00:00+00:00",
        **words,
    )


@pytest.fixture(scope="module")
def logged():
    """A farm with a log of the first batches of one crop, each a day slower than the one before."""
    bare, _, forecaster = known("school-kitchen")
    crop = bare.batches[0].crop
    batches = [batch for batch in bare.batches if batch.crop == crop][:4]
    entries = []
    for at, batch in enumerate(batches):
        sown = batch.sow_on
        entries.append(entry(batch, Happening.SOWN, sown, amount=40.0))
        entries.append(entry(batch, Happening.GERMINATED, sown + timedelta(days=4 + at), amount=30.0 + at))
        if at < 3:
            moved = sown + timedelta(days=25 + 2 * at)
            entries.append(entry(batch, Happening.MOVED, moved, amount=float(batch.plants)))
    farm = dataclasses.replace(bare, log_entries=tuple(entries))
    today = batches[-1].sow_on + timedelta(days=80)
    found = outcomes(farm, Dater(forecaster, farm).lengths, today)
    return farm, found, forecaster.catalogue, today


def test_that_every_lesson_is_the_book_drawn_toward_its_batches(logged):
    farm, found, catalogue, _ = logged
    seen, lessons = observed(farm, found, catalogue), learned(farm, found, catalogue)
    assert {lesson.field for lesson in lessons} >= {"germination_days", "germination_share", "nursery_days"}
    for lesson in lessons:
        mine = seen[key_of(lesson)]
        answer = why_learned(lesson, mine, catalogue)
        holds(answer, lesson.estimate.value)
        assert answer.input("book").value == pytest.approx(lesson.estimate.book)
        assert len(answer.children) == len([one for one in mine if one.over]) + sum(
            child.notes[-1].kind is NoteKind.STILL_LASTS for child in answer.children
        )
        weights = [dict(child.notes[0].values)["weight"] for child in answer.children]
        assert answer.input("weights").value == pytest.approx(sum(weights))
        ratios = [child.value for child in answer.children]
        told = sum(weight * ratio for weight, ratio in zip(weights, ratios, strict=True))
        assert answer.input("weighed_ratios").value == pytest.approx(told)
        holds(why_spread(lesson, mine, catalogue), lesson.estimate.spread)


def test_that_planned_actual_and_their_difference_are_those_of_the_log(logged):
    farm, found, catalogue, today = logged
    batches = {batch.id: batch for batch in farm.batches}
    assert any(one.difference_days is None for one in found)
    for one in found:
        batch = batches[one.batch]
        holds(why_planned(one, batch, catalogue), float(one.planned_days))
        actual = why_actual(one, batch, today)
        holds(actual, float(one.so_far_days))
        first, last = (dict(actual.notes[0].values)[name] for name in ("first", "last"))
        assert first <= last
        longer = why_longer(one, batch, catalogue, today)
        if one.difference_days is None:
            assert longer is None
            assert actual.notes[-1].kind is NoteKind.STILL_LASTS
        else:
            holds(longer, float(one.difference_days))


def test_that_planned_days_name_the_figures_of_the_stage(logged):
    farm, found, catalogue, _ = logged
    batches = {batch.id: batch for batch in farm.batches}
    one = next(each for each in found if each.stage is Stage.NURSERY)
    answer = why_planned(one, batches[one.batch], catalogue)
    assert answer.inputs[0].path.endswith("nursery_days")
    assert answer.inputs[-1].name == "added_by_warmth_and_light"


def test_that_the_shipped_rules_of_learning_are_there():
    for name in ("book_weight_batches", "least_spread_share"):
        assert shipped_catalogue().figure(f"coefficient/learning/{name}").value > 0
