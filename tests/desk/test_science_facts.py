"""The side panel says why batches are late, what the water needs, and why an element is short."""

import dataclasses
from datetime import date, timedelta

import pytest

from planner.desk.behind import Behind
from planner.desk.facts import page_of
from planner.desk.outlook import look_out
from planner.desk.water_facts import advice_sections, week_water_sections
from planner.desk.week_facts import flag_words
from planner.desk.why.entered import answer_to
from planner.farm.ids import id_from
from planner.farm.water import Dose, Quantity, Reading
from planner.forecast.delays import DelayCause
from planner.forecast.values import Band, Flag, FlagKind
from planner.shipped import shipped_path
from tests.desk.helpers import TODAY

SPRING = date(2027, 4, 20)
NO_WARMTH = {"air_c": (), "nursery_c": ()}
NO_CLIMATE = {**NO_WARMTH, "radiation_mj_per_m2_d": (), "latitude_deg": None}


@pytest.fixture(scope="session")
def kitchen(means):
    """The school kitchen with two readings of one day, so that much is not known."""
    farm = means.read(shipped_path("sample_data", "school-kitchen.toml")).farm
    few = (Quantity.PH, Quantity.NITRATE_N_MG_PER_L)
    latest = max(reading.on for reading in farm.readings)
    readings = tuple(each for each in farm.readings if each.on == latest and each.quantity in few)
    return dataclasses.replace(farm, readings=readings, solids_batches=())


@pytest.fixture
def behind(means, kitchen):
    return Behind(look_out(kitchen, means.forecaster), means.forecaster, SPRING)


def behind_of(means, farm, day=SPRING):
    return Behind(look_out(farm, means.forecaster), means.forecaster, day)


def texts(sections):
    return "\n".join(
        text
        for section in sections
        for text in (
            section.title,
            *(warning.value for warning in section.warnings),
            *section.cautions,
            *(part for fact in section.facts for part in (fact.label, fact.value, fact.note)),
            *(each.value for fact in section.facts for each in fact.more),
        )
    )


def reading(loop, quantity, value, on=SPRING, **more):
    name = f"{quantity.value}-{on}-{value}"
    return Reading(id=id_from(name), loop=loop.id, quantity=quantity, value=value, on=on, **more)


def dose(loop, supplement):
    return Dose(id=id_from(f"dose {supplement}"), loop=loop.id, supplement=supplement, grams=50, on=SPRING)


def stage_facts(behind, batch):
    page = page_of(behind, batch, SPRING)
    return next(
        section.facts for section in page.sections if any(f.label == "By the book" for f in section.facts)
    )


def test_that_stages_say_by_how_much_they_differ_from_the_book_and_why(behind, kitchen):
    batch = kitchen.batches[0]
    row = behind.outlook.forecast.batches.row_of[batch.id]
    late = {each.stage.value: each for each in behind.stage_delays(row)}
    assert late
    notes = [fact.note for fact in stage_facts(behind, batch)]
    for each in late.values():
        assert any(f"{each.days:+d} d: {each.cause.value}" in note for note in notes)


def test_that_the_delay_of_a_batch_is_said_with_each_cause_alone(behind, kitchen):
    batch = kitchen.batches[0]
    delay = behind.delay(behind.outlook.forecast.batches.row_of[batch.id])
    fact = stage_facts(behind, batch)[-1]
    assert fact.value == f"+{delay.days} d: {delay.cause.value}"
    assert f"{delay.by_light:+d} d" in fact.note
    assert f"{delay.by_warmth:+d} d" in fact.note


def test_that_every_cause_of_delay_has_its_own_words(behind, kitchen):
    from planner.desk.words import choice_words

    assert [choice_words(cause) for cause in DelayCause] == ["little light", "cold", "heat"]


def test_that_book_days_are_said_where_no_climate_is_entered(means, kitchen):
    bare = dataclasses.replace(
        kitchen,
        sites=tuple(dataclasses.replace(site, **NO_CLIMATE) for site in kitchen.sites),
        readings=(),
    )
    found = behind_of(means, bare)
    facts = stage_facts(found, bare.batches[0])
    assert facts[-1].value == "book days, no climate entered"
    assert not any(" d:" in fact.note for fact in facts)


def test_that_a_climate_known_in_part_says_what_is_missing(means, kitchen):
    half = dataclasses.replace(
        kitchen, sites=tuple(dataclasses.replace(site, **NO_WARMTH) for site in kitchen.sites), readings=()
    )
    fact = stage_facts(behind_of(means, half), half.batches[0])[-1]
    assert "no air temperature entered" in fact.note


def test_that_seeds_say_what_comes_up_at_the_warmth_of_the_day(means, kitchen):
    hot = dataclasses.replace(
        kitchen, sites=tuple(dataclasses.replace(site, air_c=(29.0,) * 12) for site in kitchen.sites)
    )
    found = behind_of(means, hot)
    table = found.outlook.forecast.batches
    row = next(row for row in range(len(hot.batches)) if found.stand_share(row) < 1)
    batch = hot.batches[row]
    page = page_of(found, batch, SPRING)
    fact = next(f for section in page.sections for f in section.facts if f.label == "Seeds to sow")
    assert "at this warmth" in fact.note
    assert fact.value == str(int(table.seeds[row]))


def test_that_a_batch_given_up_is_said_with_the_size_it_reaches():
    flag = Flag(
        kind=FlagKind.GIVEN_UP, about=id_from("x"), name="LET-1", values=(("crop", "x"), ("size_share", 0.42))
    )
    words = flag_words(flag)
    assert "LET-1" in words
    assert "42 %" in words
    assert "too slowly" in words


def test_that_a_loop_without_warmth_is_told_which_warmth_was_taken():
    flag = Flag(
        kind=FlagKind.WATER_TEMPERATURE, about=id_from("x"), name="Fish 1", values=(("assumed_c", 28.5),)
    )
    words = flag_words(flag)
    assert "no warmth of the water is entered" in words
    assert "28.5 °C" in words


def test_that_what_stands_behind_stays_right_after_the_forecaster_saw_another_farm(means, kitchen, farm):
    found = behind_of(means, kitchen)
    before = [found.delay(row) for row in range(5)]
    look_out(farm, means.forecaster)
    assert [found.delay(row) for row in range(5)] == before


def test_that_the_week_says_load_filter_oxygen_and_acid_as_ranges(behind):
    page = page_of(behind, None, SPRING)
    section = next(each for each in page.sections if each.title.startswith("Water of"))
    facts = {fact.label: fact for fact in section.facts}
    water, week = behind.water(behind.outlook.forecast.loops[0]), behind.outlook.week_of(SPRING)
    load, drift = water.week_loads[week], water.week_acids[week].drift_mg_per_l
    assert facts["Ammonia from feed"].value == "25 (17 to 25) g/d"
    assert round(load.tan_g_per_day.likely) == 25
    assert facts["Filter"].value == "enough"
    assert facts["Oxygen asked for"].value.endswith("g/h")
    likely, least, most = (round(-value) for value in (drift.likely, drift.high, drift.low))
    assert facts["Alkalinity falls by"].value == f"{likely} ({least} to {most}) mg/L"


def test_that_a_limit_without_a_reading_says_what_is_missing(behind):
    said = texts(page_of(behind, None, SPRING).sections)
    assert "not known: no alkalinity reading" in said
    assert "not known: no ammonia reading" in said


def test_that_a_limit_is_a_range_of_days_once_alkalinity_is_tested(means, kitchen):
    tested = dataclasses.replace(
        kitchen,
        readings=(
            *kitchen.readings,
            reading(kitchen.loops[0], Quantity.ALKALINITY_MG_PER_L, 90),
            reading(kitchen.loops[0], Quantity.PH, 7.0),
        ),
    )
    said = texts(page_of(behind_of(means, tested), None, SPRING).sections)
    assert "not known: no alkalinity reading" not in said
    assert "not before" in said or "between" in said


def test_that_readings_carry_their_band_and_tests_that_are_late_are_named(behind):
    said = texts(page_of(behind, None, SPRING).sections)
    assert "6.8 ● safe" in said
    assert "Tests overdue" in said
    assert "Never tested" in said


def test_that_un_ionised_ammonia_is_said_with_what_it_is_made_from(means, kitchen):
    loop = kitchen.loops[0]
    tested = dataclasses.replace(
        kitchen,
        readings=(
            reading(loop, Quantity.TAN_MG_PER_L, 1.5),
            reading(loop, Quantity.PH, 7.4),
            reading(loop, Quantity.WATER_C, 25.0),
            reading(loop, Quantity.TDS_MG_PER_L, 640.0, meter_factor=0.64),
        ),
    )
    said = texts(page_of(behind_of(means, tested), None, SPRING).sections)
    assert "from 1.5 mg/L ammonia, pH 7.4, 25.0 °C" in said
    assert "1.0 mS/cm" in said
    assert "factor of the meter 0.64" in said


def test_that_advice_is_in_grams_of_what_the_farm_has(behind):
    water = behind.water(behind.outlook.forecast.loops[0])
    said = texts(advice_sections(water, behind.outlook.catalogue))
    likely = water.advice.base.bases[0].grams_per_week.likely
    assert 550 < likely < 650
    assert "Potassium bicarbonate\n600 (0 to 1300) g a week" in said
    assert "Test the ammonia first." in said


def test_that_lye_is_never_advised_without_its_caution(means, kitchen):
    lye = dataclasses.replace(kitchen, doses=(dose(kitchen.loops[0], "potassium-hydroxide"),))
    found = behind_of(means, lye)
    water = found.water(found.outlook.forecast.loops[0])
    assert water.advice.base.bases
    sections = advice_sections(water, found.outlook.catalogue)
    caution = found.outlook.catalogue.cautions["caustic-bases"].text
    assert any(caution in each for section in sections for each in section.cautions)
    assert caution in texts(page_of(found, None, SPRING).sections)


def test_that_tests_and_advice_stand_only_in_the_running_week(behind):
    water = behind.water(behind.outlook.forecast.loops[0])
    week = water.advice.week
    now = [section.title for section in week_water_sections(water, week, behind.outlook.catalogue)]
    later = [section.title for section in week_water_sections(water, week + 1, behind.outlook.catalogue)]
    assert len(now) > len(later) == 1


def test_that_the_week_says_why_an_element_is_short(means, farm):
    found = behind_of(means, farm, TODAY)
    loop = found.outlook.forecast.loops[0]
    ruler = found.outlook.forecast.ruler
    week = next(week for week in range(ruler.weeks) if found.reasons(loop.loop, week))
    verdict = found.outlook.verdicts[loop.loop][week]
    assert verdict.band[verdict.limiting] in {Band.SHORT, Band.THIN}
    page = page_of(found, None, ruler.week_start(week) + timedelta(days=1))
    section = next(section for section in page.sections if section.title.startswith("Why "))
    assert len(section.facts) == len(found.reasons(loop.loop, week))
    assert all(fact.value.endswith(".") for fact in section.facts)


def test_that_the_water_is_worked_out_once_for_an_outlook(behind):
    loop = behind.outlook.forecast.loops[0]
    assert behind.water(loop) is behind.water(loop)


def test_that_every_askable_fact_of_every_page_has_an_answer(behind, kitchen, means, farm):
    for found, whole in ((behind, kitchen), (behind_of(means, farm, TODAY), farm)):
        for thing in (None, whole.batches[0], whole.fish_groups[0]):
            for fact in page_of(found, thing, found.today).askable:
                if hasattr(fact.ask, "figures"):
                    assert fact.ask.figures
                else:
                    assert answer_to(found, fact.ask).title


def test_that_the_acid_the_log_shows_is_said_beside_the_foreseen_one(means, kitchen):
    days = [SPRING - timedelta(days=7 * week) for week in range(6)]
    tested = dataclasses.replace(
        kitchen,
        readings=tuple(
            reading(kitchen.loops[0], Quantity.ALKALINITY_MG_PER_L, 60.0 + 8 * week, on=day)
            for week, day in enumerate(days)
        ),
    )
    found = behind_of(means, tested)
    assert found.water(found.outlook.forecast.loops[0]).observed is not None
    assert "Acid by the log" in texts(page_of(found, None, SPRING).sections)


def test_that_a_page_can_be_shown_before_what_takes_time(behind):
    whole = page_of(behind, None, SPRING)
    behind.waits = True
    early = page_of(behind, None, SPRING)
    titles = [section.title for section in early.sections]
    assert titles == [section.title for section in whole.sections if section.title in titles]
    assert not any(title.startswith("Water of") for title in titles)


def test_that_the_window_shows_the_water_soon_after_the_farm(qtbot, window):
    qtbot.waitUntil(lambda: "Water of" in window.workspace.side.text.toPlainText())


def test_that_each_element_says_its_stock_and_whether_a_test_told_it(behind):
    week = behind.outlook.week_of(SPRING)
    verdict = behind.outlook.verdicts[behind.outlook.forecast.loops[0].loop][week]
    assert not verdict.stock_assumed[0]
    assert verdict.stock_assumed[2]
    facts = {fact.label: fact for section in page_of(behind, None, SPRING).sections for fact in section.facts}
    assert f"stock {verdict.stock_mg_per_l[0]:.0f} mg/L" in facts["N"].more[0].value
    assert "assumed" not in facts["N"].more[0].value
    assert "mg/L, assumed: no test" in facts["K"].more[0].value
    for label, at in (("N", 0), ("K", 2)):
        found = behind.why(facts[label].more[0].ask)
        assert found.value == pytest.approx(verdict.stock_mg_per_l[at])


def test_that_what_plants_lack_is_said(means, farm):
    found = behind_of(means, dataclasses.replace(farm, fish_groups=(), fish_events=()), TODAY)
    (verdicts,) = found.outlook.verdicts.values()
    verdict = next(each for each in verdicts if any(unmet > 0.05 for unmet in each.unmet_g))
    day = found.outlook.forecast.ruler.week_start(verdict.week)
    said = texts(page_of(found, None, day).sections)
    assert "plants lack " in said
    assert "with it " in said
