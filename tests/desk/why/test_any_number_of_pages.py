"""Any number of balance, fish, water, records and catalogue can be asked why; see `test_any_number`."""

import dataclasses
from datetime import timedelta

import pytest

from planner.desk.balance.weeks import loop_weeks, week_columns, week_rows
from planner.desk.behind import Behind
from planner.desk.book_page.own_values import shifts
from planner.desk.book_page.rows import (
    SHELVES,
    entries_of,
    entry_columns,
    entry_rows,
    figure_columns,
    figure_rows,
    shift_columns,
    shift_rows,
)
from planner.desk.fish.course import course_of_group
from planner.desk.fish.facts import fish_page
from planner.desk.fish.ration import ration_columns, ration_rows
from planner.desk.fish.rows import event_columns, event_rows, group_columns, group_rows
from planner.desk.fish.weeks import Scoop
from planner.desk.outlook import look_out
from planner.desk.pages import Page
from planner.desk.records import rows as records
from planner.desk.records.stock_rows import lot_columns, lot_rows, meter_columns, meter_rows
from planner.desk.theme import LIGHT
from planner.desk.water.doses import dose_columns, dose_rows
from planner.desk.water.rows import reading_book, reading_columns, reading_rows, solids_sections
from planner.desk.water_facts import advice_sections, week_water_sections
from planner.desk.water_facts import tests_section as section_of_tests
from planner.farm.crops import SeedLot
from planner.farm.farm import OwnEntry, Shelf
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.farm.log import Happening, LogEntry, Unit
from planner.farm.meters import Meter, MeterKind
from planner.farm.species import ELEMENTS
from planner.farm.water import Quantity, Reading
from planner.planning.dating import Dater
from planner.planning.late import carried_over
from planner.planning.learning import learned, observed, outcomes
from planner.shipped import shipped_path
from tests.desk.why.test_any_number import (
    Sheet,
    asked_in,
    names,
    see_answered,
    some_of,
    unasked_cells,
    unasked_lines,
)

__all__ = ["names"]

NO_FIGURES = {
    ("balance", "From"): "the calendar",
    ("ration", "Week"): "the calendar",
    ("groups", "Tank"): "names",
    ("entries", "Note"): "what the grower wrote, told as it was written",
    ("entries", "State"): "codes of other entries",
    ("entries", "About"): "names and codes",
    ("late", "Task"): "codes",
    ("lots", "Crop"): "names",
    ("lots", "Lot"): "codes",
    ("lots", "Supplier"): "names",
    ("shifts", "Batch"): "codes",
    ("figures", "Figure"): "the number of a stage is its name",
    ("outcomes", "Batch"): "codes",
    ("doses", "Product"): "names of substances",
    ("own", "Entry"): "names",
}
"""Columns that show digits but no figures, and why."""


def log_of(batches):
    """Yield a log of some batches, each a day slower than the one before; the last one still grows."""
    for at, batch in enumerate(batches):
        steps = [
            (Happening.SOWN, 0, 40.0, Unit.SEEDS),
            (Happening.GERMINATED, 4 + at, 33.0 + at, Unit.PLANTS),
        ]
        if at + 1 < len(batches):
            steps.append((Happening.MOVED, 24 + at, float(batch.plants), Unit.PLANTS))
        for what, after, amount, unit in steps:
            on = batch.sow_on + timedelta(days=after)
            code = f"{batch.code} {what.value}"
            yield LogEntry(
                id=id_from(code),
                code=code,
                on=on,
                at="07:30",
                what=what,
                batch=batch.id,
                amount=amount,
                unit=unit,
                who="Ines",
                noted_at=f"{on.isoformat()}T08:00Z",
                notes="3 pale ones",
            )


def seed_test(lot, on):
    return LogEntry(
        id=id_from("seed test"),
        code="T1",
        on=on,
        what=Happening.SEED_TESTED,
        seed_lot=lot.id,
        amount=41.0,
        out_of=50,
        unit=Unit.PLANTS,
        noted_at=f"{on.isoformat()}T08:00Z",
    )


def fish_events(group):
    said = (
        ("weighed", FishEventKind.SAMPLE, 30, {"mean_weight_g": 61.0}),
        ("dead", FishEventKind.DEATHS, 33, {"count": 3}),
        ("some", FishEventKind.HARVEST, 60, {"count": 20}),
        ("fed", FishEventKind.FEED_GIVEN, 40, {"feed_g_per_day": 200.0, "days": 4}),
    )
    for name, kind, after, given in said:
        on = group.stocked_on + timedelta(days=after)
        yield FishEvent(id=id_from(name), group=group.id, on=on, kind=kind, **given)


def weekly_readings(loop, today):
    for quantity, value in (
        (Quantity.ALKALINITY_MG_PER_L, 60.0),
        (Quantity.PH, 6.8),
        (Quantity.TAN_MG_PER_L, 0.4),
    ):
        for week in range(5):
            yield Reading(
                id=id_from(f"{quantity.value} {week}"),
                loop=loop.id,
                quantity=quantity,
                value=value + week / 10,
                on=today - timedelta(days=7 * week + 1),
            )


@pytest.fixture(scope="module")
def farm(means):
    """The school kitchen with something of everything that the pages show."""
    bare = means.read(shipped_path("sample_data", "school-kitchen.toml")).farm
    crop = bare.batches[0].crop
    batches = [batch for batch in bare.batches if batch.crop == crop][:4]
    lot = SeedLot(
        id=id_from("lot"),
        code="L1",
        crop=crop,
        packed_on=batches[0].sow_on,
        germination_share=0.9,
        seeds_left=400,
    )
    pen = Meter(
        id=id_from("pen"), name="Pen", kind=MeterKind.PH, calibrate_every_days=14, used_from=batches[0].sow_on
    )
    own = OwnEntry(
        id=id_from("own"), shelf=Shelf.CROP, key=crop, like=crop, name="Ours", values=(("bed_days", 33.0),)
    )
    today = batches[-1].sow_on + timedelta(days=40)
    return dataclasses.replace(
        bare,
        seed_lots=(lot,),
        meters=(pen, dataclasses.replace(pen, id=id_from("ec"), name="EC", kind=MeterKind.EC, factor=0.5)),
        own_entries=(own,),
        fish_events=(*bare.fish_events, *fish_events(bare.fish_groups[0])),
        readings=(*bare.readings, *weekly_readings(bare.loops[0], today)),
        log_entries=(*log_of(batches), seed_test(lot, batches[0].sow_on)),
    )


@pytest.fixture(scope="module")
def today(farm):
    return max(entry.on for entry in farm.log_entries) + timedelta(days=16)


@pytest.fixture(scope="module")
def behind(means, farm, today):
    return Behind(look_out(farm, means.forecaster), means.forecaster, today)


def balance(behind):
    for loop in behind.outlook.forecast.loops:
        weeks = loop_weeks(behind.outlook, loop.loop, None)
        for at in range(len(ELEMENTS)):
            yield Sheet(week_columns(), week_rows(weeks, at, behind.outlook))


def groups(behind):
    yield Sheet(group_columns(), group_rows(behind))


def courses(behind):
    return [course_of_group(behind, group.id) for group in behind.outlook.farm.fish_groups]


def events(behind):
    for course in courses(behind):
        yield Sheet(event_columns(), event_rows(course.events, course.ruler))


def ration(behind):
    for course in courses(behind):
        rows = ration_rows(course, Scoop(meals=3, grams=25.0), behind.outlook.catalogue.feeds)
        yield Sheet(ration_columns(), rows)


def readings(behind):
    theme = LIGHT
    for loop in behind.outlook.forecast.loops:
        book = reading_book(behind.outlook.farm, loop.loop, behind.outlook.catalogue)
        yield Sheet(reading_columns(), reading_rows(book, theme))


def doses(behind):
    for loop in behind.outlook.forecast.loops:
        yield Sheet(dose_columns(), dose_rows(behind.outlook, behind.water(loop)))


def found_of(behind):
    farm = behind.outlook.farm
    return outcomes(farm, Dater(behind._forecaster, farm).lengths, behind.today)


def entries(behind):
    yield Sheet(records.entry_columns(), records.entry_rows(behind.outlook))


def outcome_sheet(behind):
    rows = records.outcome_rows(behind.outlook, found_of(behind), behind.today)
    yield Sheet(records.outcome_columns(), rows)


def lessons(behind):
    farm, catalogue, found = behind.outlook.farm, behind.outlook.catalogue, found_of(behind)
    seen = observed(farm, found, catalogue)
    rows = records.lesson_rows(behind.outlook, learned(farm, found, catalogue), seen)
    yield Sheet(records.lesson_columns(), rows)


def late(behind):
    found = carried_over(behind.outlook.farm, behind._forecaster, behind.today)
    yield Sheet(records.late_columns(), records.late_rows(behind.outlook, found))


def lots(behind):
    yield Sheet(lot_columns(), lot_rows(behind.outlook, behind.today))


def meters(behind):
    yield Sheet(meter_columns(), meter_rows(behind.outlook, behind.today))


def own(behind):
    for shelf, _, _ in SHELVES:
        yield Sheet(entry_columns(), entry_rows(behind.outlook.farm, behind.outlook.catalogue, shelf))


def figures(behind):
    theme, book = LIGHT, behind._forecaster.book
    for shelf, _, _ in SHELVES:
        for key in entries_of(behind.outlook.catalogue, shelf):
            rows = figure_rows(behind.outlook.catalogue, shelf, key, theme, book=book)
            yield Sheet(figure_columns(), rows)


def moved(behind):
    farm, forecaster = behind.outlook.farm, behind._forecaster
    tried = dataclasses.replace(farm, own_entries=())
    now = forecaster.preview(farm)
    yield Sheet(shift_columns(), shift_rows(shifts(farm, now, forecaster.preview(tried)), farm))


TABLES = {
    "balance": balance,
    "groups": groups,
    "events": events,
    "ration": ration,
    "readings": readings,
    "doses": doses,
    "entries": entries,
    "outcomes": outcome_sheet,
    "lessons": lessons,
    "late": late,
    "lots": lots,
    "meters": meters,
    "own": own,
    "figures": figures,
    "shifts": moved,
}


def fish(behind):
    for course in courses(behind):
        yield fish_page(behind, course)


def water(behind):
    outlook = behind.outlook
    for loop in outlook.forecast.loops:
        side = behind.water(loop)
        sections = (
            *advice_sections(side, outlook.catalogue),
            section_of_tests(side),
            *solids_sections(outlook, loop),
            *week_water_sections(side, side.advice.week, outlook.catalogue),
        )
        yield Page(title="", subtitle="", sections=sections)


FACTS = {"fish": fish, "water": water}


@pytest.mark.parametrize("page", TABLES)
def test_that_every_number_of_a_table_can_be_asked(page, behind, names):
    sheets = list(TABLES[page](behind))
    assert any(sheet.rows for sheet in sheets)
    missing = unasked_cells(page, sheets, names, NO_FIGURES)
    assert not missing, sorted(missing)[:20]


@pytest.mark.parametrize("page", TABLES)
def test_that_every_number_of_a_table_has_an_answer(page, behind):
    see_answered(behind, some_of(asked_in(TABLES[page](behind))))


@pytest.mark.parametrize("page", FACTS)
def test_that_every_number_of_a_text_can_be_asked(page, behind, names):
    missing = unasked_lines(FACTS[page](behind), names)
    assert not missing, sorted(missing)[:20]


@pytest.mark.parametrize("page", FACTS)
def test_that_every_number_of_a_text_has_an_answer(page, behind):
    see_answered(behind, [fact for shown in FACTS[page](behind) for fact in shown.askable])
