"""Why so much is dissolved, foreseen, gathered and brought: the water page's figures, worked again."""

from __future__ import annotations

import dataclasses
from datetime import timedelta
from itertools import combinations
from statistics import median

import pytest

from planner.farm.crops import SeedLot
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.ids import id_from
from planner.farm.log import Happening, LogEntry
from planner.farm.meters import Meter, MeterKind
from planner.farm.site import Filter, FilterKind
from planner.farm.species import ELEMENTS, BedKind
from planner.farm.water import Quantity, SolidsBatch
from planner.forecast.seed_lots import lot_shares
from planner.forecast.water.side import alkalinity_of, loop_water
from planner.forecast.why.ask import why
from planner.forecast.why.ground import NoSuchFigureError
from planner.forecast.why.solids_batches import SolidsPart
from planner.forecast.why.values import NoteKind, Subject, SubjectKind
from tests.forecast.sample_farms import NAMES, known
from tests.forecast.why.test_water_day import DAY, FIRST, READ, Asked
from tests.forecast.why.working import works_out


def holds(answer, figure):
    """Tell that an answer has a figure, and that every formula below it gives what it says."""
    assert answer.value == pytest.approx(figure, rel=1e-9, abs=1e-12)
    works_out(answer)


def verdict_of(farm, forecast, forecaster, week):
    from planner.forecast.verdicts import week_verdicts

    return week_verdicts(forecast.loops[0], forecast.ruler, forecaster.bands)[week]


@pytest.mark.parametrize("name", NAMES)
@pytest.mark.parametrize("week", [0, 9, 19])
@pytest.mark.parametrize("element", range(len(ELEMENTS)))
def test_that_stock_and_what_it_covers_are_those_of_the_balance(name, week, element):
    farm, forecast, forecaster = known(name)
    loop, verdict = forecast.loops[0], verdict_of(farm, forecast, forecaster, week)
    asked = {"about": loop.loop, "week": week, "element": element}
    day = week * DAYS_PER_WEEK
    stock = why(
        Subject(kind=SubjectKind.STOCK, about=loop.loop, day=day, element=element), farm, forecast, forecaster
    )
    holds(stock, verdict.stock_mg_per_l[element])
    lacking = why(Subject(kind=SubjectKind.LACKING, **asked), farm, forecast, forecaster)
    holds(lacking, verdict.unmet_g[element])
    covered = why(Subject(kind=SubjectKind.COVERED, **asked), farm, forecast, forecaster)
    if verdict.covered_ratio[element] is None:
        assert covered.value is None
        assert covered.notes[0].kind is NoteKind.NOTHING_WANTED
    else:
        holds(covered, verdict.covered_ratio[element])


def test_that_a_stock_is_counted_on_from_the_last_test():
    asked = Asked()
    day = asked.forecast.ruler.day_of(DAY) + 1
    iron = ELEMENTS.index("fe")
    subject = Subject(kind=SubjectKind.STOCK, about=asked.loop.loop, day=day, element=iron)
    answer = why(subject, asked.farm, asked.forecast, asked.forecaster)
    holds(answer, float(asked.loop.pool_mg_per_l[iron, day]))
    assert answer.input("start_mg_per_l").value == pytest.approx(READ[Quantity.FE_MG_PER_L][-1])
    assert answer.notes[0].kind is NoteKind.STOCK_TESTED


def test_that_a_stock_never_tested_says_so():
    farm, _, forecaster = known("school-kitchen")
    bare = dataclasses.replace(farm, readings=())
    foreseen = forecaster.forecast(bare)
    subject = Subject(kind=SubjectKind.STOCK, about=foreseen.loops[0].loop, day=3, element=0)
    answer = why(subject, bare, foreseen, forecaster)
    holds(answer, float(foreseen.loops[0].pool_mg_per_l[0, 3]))
    assert answer.notes[0].kind is NoteKind.STOCK_ASSUMED
    assert answer.input("start_mg_per_l").path == "solution/leafy/n"


def test_that_alkalinity_foreseen_is_that_of_the_chart():
    asked = Asked()
    ahead = alkalinity_of(
        asked.farm,
        asked.water.acid,
        ruler=asked.forecast.ruler,
        catalogue=asked.forecaster.catalogue_for(asked.farm),
        today=DAY,
        weeks=12,
    )
    assert len(ahead) > 10
    for point in ahead:
        day = asked.forecast.ruler.day_of(point.on)
        subject = Subject(kind=SubjectKind.ALKALINITY, about=asked.loop.loop, on=DAY, day=day)
        answer = why(subject, asked.farm, asked.forecast, asked.forecaster)
        holds(answer, point.span.likely)
        assert answer.on == point.on
    between = Subject(
        kind=SubjectKind.ALKALINITY,
        about=asked.loop.loop,
        on=DAY,
        day=asked.forecast.ruler.day_of(ahead[0].on) + 1,
    )
    with pytest.raises(NoSuchFigureError, match="no alkalinity is foreseen"):
        why(between, asked.farm, asked.forecast, asked.forecaster)


def test_that_alkalinity_kept_at_nothing_says_by_how_much():
    asked = Asked(read={Quantity.ALKALINITY_MG_PER_L: (20.0, 15.0, 10.0, 6.0, 2.0)}, keys=[])
    ruler = asked.forecast.ruler
    day = ruler.day_of(DAY) - 4 + 8 * DAYS_PER_WEEK
    subject = Subject(kind=SubjectKind.ALKALINITY, about=asked.loop.loop, on=DAY, day=day)
    answer = why(subject, asked.farm, asked.forecast, asked.forecaster)
    holds(answer, 0.0)
    assert answer.input("kept_above_0_mg_per_l").value > 0.0


@pytest.mark.parametrize("name", NAMES)
def test_that_load_of_filter_and_air_is_that_of_the_page(name):
    farm, forecast, forecaster = known(name)
    forecaster.forecast(farm)  # other tests of this file show it farms whose readings warm the water
    loop, week = forecast.loops[0], 17
    water = loop_water(
        farm,
        loop,
        ruler=forecast.ruler,
        catalogue=forecaster.catalogue_for(farm),
        today=forecast.ruler.week_start(week),
    )
    load = water.week_loads[week]

    def asked(kind):
        return why(Subject(kind=kind, about=loop.loop, week=week), farm, forecast, forecaster)

    holds(asked(SubjectKind.PEAK_OXYGEN), load.peak_oxygen_g_per_h.likely)
    holds(asked(SubjectKind.GRAVEL), water.load.area.gravel_m2.likely)
    holds(asked(SubjectKind.ALKALINITY_FALL), -water.week_acids[week].drift_mg_per_l.likely)
    if load.saturation_mg_per_l is None:
        with pytest.raises(NoSuchFigureError, match="no temperature"):
            asked(SubjectKind.SATURATION)
    else:
        holds(asked(SubjectKind.SATURATION), load.saturation_mg_per_l)
    if load.area_m2 is None:
        with pytest.raises(NoSuchFigureError, match="no filter"):
            asked(SubjectKind.SURFACE)
    else:
        holds(asked(SubjectKind.SURFACE), load.area_m2)


def test_that_gravel_and_filters_are_summed_one_by_one():
    farm, _, forecaster = known("school-kitchen")
    loop = farm.loops[0]
    filters = (
        Filter(id=id_from("a"), name="Drum", loop=loop.id, kind=FilterKind.MOVING_BED, media_area_m2=40.0),
        Filter(id=id_from("b"), name="Tower", loop=loop.id, kind=FilterKind.TRICKLING, media_area_m2=12.5),
    )
    beds = tuple(
        dataclasses.replace(bed, kind=BedKind.MEDIA, depth_cm=None) if at == 0 else bed
        for at, bed in enumerate(each for each in farm.beds)
    )
    asked = dataclasses.replace(farm, filters=filters, beds=beds)
    forecast = forecaster.forecast(asked)
    surface = why(Subject(kind=SubjectKind.SURFACE, about=loop.id, week=3), asked, forecast, forecaster)
    holds(surface, 52.5)
    gravel = why(Subject(kind=SubjectKind.GRAVEL, about=loop.id), asked, forecast, forecaster)
    assert gravel.value > 0.0
    holds(gravel, gravel.value)


def test_that_a_trend_is_the_median_of_all_slopes():
    asked = Asked()
    for quantity, values in READ.items():
        view = next(one for one in asked.water.readings.quantities if one.quantity is quantity)
        answer = asked.why(SubjectKind.TREND, part=quantity.value)
        assert answer.value == pytest.approx(view.trend.per_week.likely)
        read = [one.value for one in answer.inputs if one.name.startswith("read on")]
        assert read == list(values)
        days = [(FIRST + timedelta(days=4 * at)).toordinal() for at in range(len(values))]
        slopes = [
            (later[1] - earlier[1]) / (later[0] - earlier[0]) * DAYS_PER_WEEK
            for earlier, later in combinations(zip(days, read, strict=True), 2)
        ]
        assert answer.value == pytest.approx(median(slopes))


def test_that_no_trend_and_no_such_reading_are_named():
    asked = Asked(read={Quantity.PH: (7.0,)})
    with pytest.raises(NoSuchFigureError, match="too few readings"):
        asked.why(SubjectKind.TREND, part=Quantity.PH.value)
    with pytest.raises(NoSuchFigureError, match="nothing that is read"):
        asked.why(SubjectKind.TREND, part="taste")
    with pytest.raises(NoSuchFigureError, match="too few readings of alkalinity"):
        asked.why(SubjectKind.OBSERVED_ACID)


def test_that_acid_by_the_log_is_that_of_the_page():
    asked = Asked()
    holds(asked.why(SubjectKind.OBSERVED_ACID), asked.water.observed.eq_per_day.likely)


def test_that_a_late_test_counts_its_days():
    asked = Asked(read={Quantity.PH: (7.0, 6.9)})
    due = next(one for one in asked.water.readings.due if one.quantity is Quantity.PH)
    answer = asked.why(SubjectKind.TEST_LATE, part=Quantity.PH.value)
    holds(answer, float(due.days_late))
    assert answer.on == due.due_on
    with pytest.raises(NoSuchFigureError, match="no regular test"):
        asked.why(SubjectKind.TEST_LATE, part=Quantity.TAN_MG_PER_L.value)


def test_that_advice_says_what_it_brings_leaves_and_lacks():
    asked = Asked()
    advice = asked.water.advice
    holds(asked.why(SubjectKind.BASE_LEFT), advice.base.left_over_eq)
    for at in range(len(ELEMENTS)):
        subject = Subject(kind=SubjectKind.WANTING, about=asked.loop.loop, on=DAY, element=at)
        holds(why(subject, asked.farm, asked.forecast, asked.forecaster), advice.salts.unfilled_g[at])
    products = [one.supplement for one in (*advice.base.bases, *advice.salts.fills, *advice.iron.products)]
    assert products
    for product in products:
        answer = asked.why(SubjectKind.ADVISED_BRINGS, part=product)
        holds(answer, answer.value)
        assert len(answer.children) > 1


def test_that_a_dose_brings_its_shares_of_the_product():
    asked = Asked()
    supplements = asked.forecaster.catalogue.supplements
    for dose in asked.farm.doses:
        subject = Subject(kind=SubjectKind.DOSE_BRINGS, about=dose.id)
        answer = why(subject, asked.farm, asked.forecast, asked.forecaster)
        holds(answer, dose.grams)
        product = supplements[dose.supplement]
        for child in answer.children:
            if child.unit == "eq":
                assert child.value == pytest.approx(product.base_eq_per_kg * dose.grams / 1000.0)
            else:
                share = getattr(product, f"{child.about.lower()}_share")
                assert child.value == pytest.approx(share * dose.grams * 1000.0 / asked.loop.water_l)


def batch(loop, code, **words):
    usual = {"siphoned_on": FIRST, "days": 14, "aerated": True, "returned_on": FIRST + timedelta(days=30)}
    return SolidsBatch(id=id_from(code), code=code, loop=loop.id, **(usual | words))


def test_that_solids_batches_gather_give_back_and_lose_what_the_page_says():
    bare, _, forecaster = known("school-kitchen")
    loop = bare.loops[0]
    start = bare.settings.plan_from
    batches = (
        batch(loop, "S1"),
        batch(loop, "S2", siphoned_on=FIRST + timedelta(days=20), aerated=False),
        batch(loop, "S3", siphoned_on=FIRST + timedelta(days=40), returned_on=None),
        batch(loop, "S4", siphoned_on=start + timedelta(days=3), returned_on=start + timedelta(days=33)),
    )
    farm = dataclasses.replace(bare, solids_batches=batches)
    forecast = forecaster.forecast(farm)
    before = 0.0
    for found in forecast.loops[0].solids.batches:
        for part, grams in (
            (SolidsPart.GATHERED, found.gathered_g),
            (SolidsPart.BACK, found.liquor_g),
            (SolidsPart.GAS, found.lost_g),
        ):
            subject = Subject(kind=SubjectKind.SOLIDS_BATCH, about=found.batch, part=part.value)
            answer = why(subject, farm, forecast, forecaster)
            holds(answer, sum(grams))
        before += sum(found.before_g)
    assert before > 0.0
    with pytest.raises(NoSuchFigureError, match="no part of a solids batch"):
        why(
            Subject(kind=SubjectKind.SOLIDS_BATCH, about=batches[0].id, part="smell"),
            farm,
            forecast,
            forecaster,
        )


def test_that_a_lot_answers_by_packet_and_counts():
    bare, _, forecaster = known("school-kitchen")
    crop = bare.batches[0].crop
    lot = SeedLot(id=id_from("lot"), code="L1", crop=crop, packed_on=FIRST, germination_share=0.9)
    test = LogEntry(
        id=id_from("test"),
        code="E1",
        on=FIRST,
        what=Happening.SEED_TESTED,
        seed_lot=lot.id,
        amount=40.0,
        out_of=50,
        noted_at="2027-04-12T08:00:00+00:00",
    )
    farm = dataclasses.replace(bare, seed_lots=(lot,), log_entries=(test,))
    forecast = forecaster.forecast(farm)
    share = lot_shares(farm, forecaster.catalogue)[lot.id]
    for on in (DAY, DAY + timedelta(days=3000)):
        answer = why(Subject(kind=SubjectKind.LOT_SHARE, about=lot.id, on=on), farm, forecast, forecaster)
        holds(answer, share.share(on))


def test_that_a_meter_says_how_late_its_calibration_is():
    bare, _, forecaster = known("school-kitchen")
    meter = Meter(
        id=id_from("pen"), name="pH pen", kind=MeterKind.PH, calibrate_every_days=14, used_from=FIRST
    )
    unwatched = Meter(id=id_from("old"), name="Old pen", kind=MeterKind.PH)
    farm = dataclasses.replace(bare, meters=(meter, unwatched))
    forecast = forecaster.forecast(farm)
    answer = why(Subject(kind=SubjectKind.METER_LATE, about=meter.id, on=DAY), farm, forecast, forecaster)
    holds(answer, (DAY - FIRST).days - 14.0)
    with pytest.raises(NoSuchFigureError, match="not watched"):
        why(Subject(kind=SubjectKind.METER_LATE, about=unwatched.id, on=DAY), farm, forecast, forecaster)


def test_that_things_that_are_not_there_are_named():
    farm, forecast, forecaster = known("school-kitchen")
    for kind, words in (
        (SubjectKind.DOSE_BRINGS, "no dose"),
        (SubjectKind.LOT_SHARE, "no seed lot"),
        (SubjectKind.METER_LATE, "no meter"),
        (SubjectKind.SOLIDS_BATCH, "no solids batch"),
    ):
        with pytest.raises(NoSuchFigureError, match=words):
            why(Subject(kind=kind, about=id_from("nothing")), farm, forecast, forecaster)
