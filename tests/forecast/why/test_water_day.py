"""Why so much acid, base, salt and iron, and a limit on that day: the water page's figures, worked again."""

from __future__ import annotations

import dataclasses
from datetime import date, timedelta

import pytest

from planner.bootstrap import Means
from planner.farm.ids import id_from
from planner.farm.water import Dose, Quantity, Reading
from planner.forecast.water.limits import LimitWay
from planner.forecast.water.side import loop_water
from planner.forecast.why.arithmetic import recomputed
from planner.forecast.why.ask import why
from planner.forecast.why.ground import NoSuchFigureError
from planner.forecast.why.values import NoteKind, Origin, Subject, SubjectKind
from tests.forecast.sample_farms import NAMES, known
from tests.forecast.why.working import walk

WEEK = 17
FIRST = date(2027, 4, 12)
DAY = FIRST + timedelta(days=20)
READ = {
    Quantity.PH: (7.0, 6.9, 6.8, 6.7, 6.6),
    Quantity.ALKALINITY_MG_PER_L: (70.0, 66.0, 61.0, 58.0, 54.0),
    Quantity.TAN_MG_PER_L: (0.4, 0.5, 0.5, 0.6, 0.8),
    Quantity.WATER_C: (24.0, 24.5, 25.0, 24.0, 24.5),
    Quantity.FE_MG_PER_L: (0.6, 0.5, 0.5, 0.4, 0.4),
}


def readings(loop, read):
    return tuple(
        Reading(
            id=id_from(f"{quantity.value} {at}"),
            loop=loop.id,
            quantity=quantity,
            value=value,
            on=FIRST + timedelta(days=4 * at),
        )
        for quantity, values in read.items()
        for at, value in enumerate(values)
    )


def doses(loop, keys):
    return tuple(
        Dose(id=id_from(f"dose {key}"), loop=loop.id, supplement=key, grams=10.0, on=FIRST) for key in keys
    )


class Asked:
    """A farm with readings and doses, its water on the day, and answers about it."""

    def __init__(self, read=READ, keys=None):
        self.forecaster = Means().forecaster
        bare, _, _ = known("school-kitchen")
        loop = bare.loops[0]
        known_keys = self.forecaster.catalogue.supplements
        keys = list(known_keys) if keys is None else keys
        self.farm = dataclasses.replace(bare, readings=readings(loop, read), doses=doses(loop, keys))
        self.forecast = self.forecaster.forecast(self.farm)
        self.loop = self.forecast.loops[0]
        self.water = loop_water(
            self.farm,
            self.loop,
            ruler=self.forecast.ruler,
            catalogue=self.forecaster.catalogue_for(self.farm),
            today=DAY,
        )

    def why(self, kind, part=""):
        subject = Subject(kind=kind, about=self.loop.loop, on=DAY, part=part)
        return why(subject, self.farm, self.forecast, self.forecaster)


@pytest.fixture(scope="module")
def asked():
    return Asked()


def holds(answer, figure):
    """Tell that an answer has a figure, and that every formula below it gives what it says."""
    assert answer.value == pytest.approx(figure, rel=1e-9, abs=1e-12)
    for one in walk(answer):
        again = recomputed(one)
        if one.value is None:
            continue
        if again is not None:
            # growth of single plants is kept in single precision: sums of it agree to seven digits
            assert one.value == pytest.approx(again, rel=1e-7, abs=1e-9), one.title
        for given in one.inputs:
            if given.origin is Origin.FIGURE:
                assert given.path
                assert given.confidence
                assert given.source or given.confidence


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("kind", [SubjectKind.ACID, SubjectKind.BASE])
def test_that_acid_and_base_of_a_week_are_those_of_the_page(name, kind):
    farm, forecast, forecaster = known(name)
    loop = forecast.loops[0]
    water = loop_water(
        farm,
        loop,
        ruler=forecast.ruler,
        catalogue=forecaster.catalogue,
        today=forecast.ruler.week_start(WEEK),
    )
    answer = why(Subject(kind=kind, about=loop.loop, week=WEEK), farm, forecast, forecaster)
    holds(answer, water.week_acids[WEEK].planned_eq.likely)
    assert water.advice.base.need_eq.likely == pytest.approx(answer.value)


def test_that_grams_of_every_base_advised_are_explained(asked):
    shares = asked.water.advice.base.bases
    assert shares
    for share in shares:
        answer = asked.why(SubjectKind.BASE_GRAMS, share.supplement)
        holds(answer, share.grams_per_week.likely)
        cap = next(note for note in answer.notes if note.kind is NoteKind.DOSE_CAP)
        assert dict(cap.values)["cap_g"] == pytest.approx(share.cap_g)


def test_that_grams_of_every_salt_advised_are_explained(asked):
    for fill in asked.water.advice.salts.fills:
        holds(asked.why(SubjectKind.SALT_GRAMS, fill.supplement), fill.grams.likely)


def test_that_a_salt_says_the_gap_it_fills():
    asked = Asked(keys=["magnesium-sulfate", "potassium-sulfate"])
    fills = asked.water.advice.salts.fills
    assert fills
    for fill in fills:
        answer = asked.why(SubjectKind.SALT_GRAMS, fill.supplement)
        holds(answer, fill.grams.likely)
        assert answer.children[0].input("wanted_beyond_supply_g").value == pytest.approx(
            asked.water.advice.gaps_g[fill.element]
        )


def test_that_iron_is_explained_by_interval_target_and_product(asked):
    iron = asked.water.advice.iron
    due = asked.why(SubjectKind.IRON_DUE)
    holds(due, (iron.due_on - DAY).days)
    assert due.on == iron.due_on
    assert iron.products
    for product in iron.products:
        answer = asked.why(SubjectKind.IRON_GRAMS, product.supplement)
        holds(answer, product.grams.likely)
        assert answer.input("present_mg_per_l").value == READ[Quantity.FE_MG_PER_L][-1]


def test_that_iron_never_given_is_due_at_once_and_none_is_taken_to_be_there():
    asked = Asked(read={}, keys=[])
    due = asked.why(SubjectKind.IRON_DUE)
    assert (due.value, due.on) == (0.0, DAY)
    assert due.notes[0].kind is NoteKind.IRON_NEVER


def test_that_free_ammonia_is_worked_again_from_its_readings(asked):
    found = asked.water.readings.free_ammonia
    answer = asked.why(SubjectKind.FREE_AMMONIA)
    holds(answer, found.nh3_n_mg_per_l)
    assert answer.input("ph").value == READ[Quantity.PH][-1]


@pytest.mark.parametrize(
    ("quantity", "value", "factor"),
    [
        (Quantity.EC_MS_PER_CM, 1.6, None),
        (Quantity.EC_MS_PER_CM, 1.6, 0.64),
        (Quantity.TDS_MG_PER_L, 900.0, None),
        (Quantity.TDS_MG_PER_L, 900.0, 0.5),
    ],
)
def test_that_salts_are_explained_whichever_way_the_meter_says_them(quantity, value, factor):
    asked = Asked(read={quantity: (value,)}, keys=[])
    one = dataclasses.replace(asked.farm.readings[0], meter_factor=factor)
    asked.farm = dataclasses.replace(asked.farm, readings=(one,))
    answer = asked.why(SubjectKind.SALTS)
    ec = value if quantity is Quantity.EC_MS_PER_CM else value / (factor or usual(asked)) / 1000.0
    holds(answer, ec)
    assert any(note.kind is NoteKind.FACTOR_ASSUMED for note in answer.notes) == (factor is None)


def usual(asked):
    return asked.forecaster.catalogue.figure("loop/tds_per_ec").value


@pytest.mark.parametrize("way", list(LimitWay))
def test_that_a_limit_is_explained_by_what_is_to_spare_and_its_fall(asked, way):
    limit = next(one for one in asked.water.limits if one.way is way)
    assert limit.not_known is None
    answer = asked.why(SubjectKind.LIMIT, way.value)
    start = limit.on if way is LimitWay.PH_TREND else limit.spent_from
    holds(answer, (limit.earliest_on - start).days)
    assert answer.on == limit.earliest_on
    assert answer.notes[0].kind is NoteKind.NO_BASE_GIVEN


@pytest.mark.parametrize("way", [LimitWay.ALKALINITY_BALANCE, LimitWay.PH_BALANCE])
def test_that_the_days_to_a_limit_are_summed_again_from_the_falls_below(asked, way):
    """The day before, what is to spare is not used up; on the day it is."""
    answer = asked.why(SubjectKind.LIMIT, way.value)
    fallen = next(one for one in answer.children if one.title == "fall of alkalinity before the day")
    if answer.input("spare_mg_per_l").value <= 0.0:
        assert (answer.value, fallen.children) == (0.0, ())
        return
    spare, last = answer.input("spare_mg_per_l").value, answer.input("fall_that_day_mg_per_l").value
    assert sum(one.input("days").value for one in fallen.children) == answer.value - 1
    assert sum(one.value for one in fallen.children) == pytest.approx(fallen.value)
    assert fallen.value < spare <= fallen.value + last


@pytest.mark.parametrize(
    ("kind", "part"),
    [
        (SubjectKind.SALTS, ""),
        (SubjectKind.FREE_AMMONIA, ""),
        *((SubjectKind.LIMIT, way.value) for way in LimitWay),
    ],
)
def test_that_without_readings_there_is_no_figure_and_it_is_said_why(kind, part):
    answer = Asked(read={}, keys=[]).why(kind, part)
    assert answer.value is None
    assert answer.notes[0].kind is NoteKind.NOT_KNOWN


@pytest.mark.parametrize(
    "kind", [SubjectKind.BASE_GRAMS, SubjectKind.SALT_GRAMS, SubjectKind.IRON_GRAMS, SubjectKind.LIMIT]
)
def test_that_what_is_not_advised_is_refused_by_name(asked, kind):
    with pytest.raises(NoSuchFigureError, match='"moon-dust" is'):
        asked.why(kind, "moon-dust")
