"""The water tab shows readings with their bands, their course over time, and what to give."""

import dataclasses
from datetime import date, timedelta

import pytest
from PySide6.QtCore import Qt, QUrl
from PySide6.QtGui import QImage

from planner.desk.behind import Behind
from planner.desk.forms.form import FormDialog
from planner.desk.outlook import look_out
from planner.desk.rows import RowsModel
from planner.desk.theme import DARK, LIGHT, mixed
from planner.desk.water.chart import WaterChart
from planner.desk.water.rows import (
    course_of,
    course_words,
    reading_book,
    reading_columns,
    reading_rows,
    solids_sections,
    together,
    whole_course,
)
from planner.desk.water.tab import WaterTab
from planner.desk.water_facts import week_water_sections
from planner.desk.water_words import quantity_words
from planner.desk.why.answers import answer_of
from planner.desk.why.dialog import WhyDialog
from planner.farm.ids import id_from
from planner.farm.water import Quantity, Reading, SolidsBatch
from planner.forecast.water.targets import Level
from planner.forecast.why.ask import why
from planner.forecast.why.values import Subject, SubjectKind
from tests.desk.helpers import TODAY, nameless_controls, put_away

FIRST = date(2027, 3, 1)
PH = (7.0, 6.9, 6.8, 6.1, 6.8, 6.7)
NITRATE = (20.0, 40.0, 90.0, 180.0, 200.0, 220.0)


def readings(loop):
    tests = [
        *((Quantity.PH, day, value) for day, value in enumerate(PH)),
        *((Quantity.NITRATE_N_MG_PER_L, day, value) for day, value in enumerate(NITRATE)),
    ]
    return tuple(
        Reading(
            id=id_from(f"{quantity.name} {day}"),
            loop=loop.id,
            quantity=quantity,
            value=value,
            on=FIRST + timedelta(days=day),
        )
        for quantity, day, value in tests
    )


@pytest.fixture(scope="session")
def tested(farm):
    other = dataclasses.replace(farm.loops[0], id=id_from("other loop"), name="Other loop")
    solids = SolidsBatch(
        id=id_from("solids"),
        code="SB-1",
        loop=farm.loops[0].id,
        siphoned_on=FIRST + timedelta(days=14),
        days=7,
        returned_on=FIRST + timedelta(days=44),
    )
    return dataclasses.replace(
        farm, readings=readings(farm.loops[0]), loops=(*farm.loops, other), solids_batches=(solids,)
    )


@pytest.fixture
def behind(means, tested):
    return Behind(look_out(tested, means.forecaster), means.forecaster, TODAY)


@pytest.fixture
def book(tested, means):
    return reading_book(tested, tested.loops[0].id, means.catalogue)


@pytest.fixture
def tab(qtbot, behind):
    tab = WaterTab(LIGHT)
    tab.resize(700, 600)
    tab.show_behind(behind)
    tab.show()
    yield tab
    put_away(tab)


def test_that_the_model_of_readings_behaves(qtmodeltester, qtbot, book):
    model = RowsModel(reading_columns())
    model.set_rows(reading_rows(book, LIGHT))
    qtmodeltester.check(model)


def test_that_each_reading_is_a_row_with_its_band_and_the_newest_first(book):
    rows = reading_rows(book, LIGHT)
    assert len(rows) == len(PH) + len(NITRATE)
    assert [row.sort[0] for row in rows] == sorted((row.sort[0] for row in rows), reverse=True)
    high = next(row for row in rows if row.texts[2].startswith("220 "))
    assert high.texts[3] == "■ act"
    assert high.ink == LIGHT.wrong
    safe = next(row for row in rows if row.texts[2].startswith("20 "))
    assert safe.texts[3] == "● safe"
    assert safe.ink is None
    assert {book.level(reading) for reading in book.of(Quantity.NITRATE_N_MG_PER_L)} >= {
        Level.SAFE,
        Level.ACT,
    }


def test_that_a_reading_that_stands_alone_asks_for_another_test(book):
    odd = [row for row in reading_rows(book, LIGHT) if "test again" in row.texts[3]]
    assert [row.texts[2] for row in odd] == ["6.1"]
    assert [point.value for point in course_of(book, Quantity.PH).points if point.odd] == [6.1]


def test_that_a_course_is_said_in_a_sentence(book):
    words = course_words(course_of(book, Quantity.PH))
    assert words.startswith("pH: 6 readings from 6.1 to 7, the last 6.7 on ")
    assert course_words(course_of(book, Quantity.P_MG_PER_L)) == "Phosphorus: no reading yet"


def painted(course, theme):
    chart = WaterChart(course.quantity, theme)
    chart.resize(360, 160)
    chart.show_course(course)
    image = QImage(360, 160, QImage.Format.Format_RGB32)
    chart.render(image)
    put_away(chart)
    return {image.pixelColor(x, y).name() for x in range(360) for y in range(160)}


@pytest.mark.parametrize("theme", [LIGHT, DARK])
def test_that_the_band_is_shaded_behind_the_readings(qtbot, book, theme):
    band = mixed(theme.good, theme.field, 0.2).name()
    assert band in painted(course_of(book, Quantity.PH), theme)
    assert band in painted(course_of(book, Quantity.NITRATE_N_MG_PER_L), theme)
    bare = dataclasses.replace(course_of(book, Quantity.PH), low=None, high=None)
    assert band not in painted(bare, theme)


def test_that_a_chart_without_readings_or_with_one_can_be_painted(qtbot, book):
    course = course_of(book, Quantity.PH)
    nothing = painted(dataclasses.replace(course, points=()), LIGHT)
    one = painted(dataclasses.replace(course, points=course.points[:1]), LIGHT)
    line = LIGHT.data_colour(5).name()
    assert line not in nothing
    assert line in one


def test_that_the_tab_shows_readings_charts_and_advice_of_a_loop(tab):
    assert tab.sorted.rowCount() == len(PH) + len(NITRATE)
    assert tab.count.text() == f"{len(PH) + len(NITRATE)} readings"
    assert "6 readings" in tab.charts[0].accessibleName()
    said = tab.text.toPlainText()
    assert "What to give" in said
    assert "Iron due" in said
    assert "SB-1" in said
    assert "Solids and mineralised liquor" in said


def test_that_another_loop_can_be_chosen_by_keys(qtbot, tab):
    assert not tab.loop.isHidden()
    tab.loop.setFocus()
    qtbot.keyClick(tab.loop, Qt.Key.Key_Down)
    assert tab.sorted.rowCount() == 0
    assert "no reading yet" in tab.charts[0].accessibleName()
    assert "Other loop" in tab.text.toPlainText()


def test_that_a_single_loop_needs_no_choice(qtbot, means, farm):
    tab = WaterTab(LIGHT)
    tab.show_behind(Behind(look_out(farm, means.forecaster), means.forecaster, TODAY))
    assert tab.loop.isHidden()
    put_away(tab)


def test_that_the_loop_that_was_chosen_stays_so(tab, behind):
    tab.loop.setCurrentIndex(1)
    tab.show_behind(behind)
    assert tab.loop.currentText() == "Other loop"


def test_that_enter_opens_a_reading_and_buttons_ask_for_new_things(qtbot, tab, tested):
    opened, wanted = [], []
    tab.opened.connect(opened.append)
    tab.new_wanted.connect(lambda word, loop: wanted.append((word, loop)))
    tab.view.setCurrentIndex(tab.sorted.index(0, 0))
    qtbot.keyClick(tab.view, Qt.Key.Key_Return)
    assert opened == [tab.model.rows[tab.sorted.mapToSource(tab.sorted.index(0, 0)).row()].id]
    for button in tab.buttons.values():
        qtbot.mouseClick(button, Qt.MouseButton.LeftButton)
    loop = tested.loops[0].id
    assert wanted == [("reading", loop), ("solids batch", loop), ("meter", ""), ("dose", loop)]


def test_that_every_control_of_the_tab_has_a_spoken_name(tab):
    assert nameless_controls(tab) == []


def test_that_the_tab_wears_another_theme(tab):
    tab.wear(DARK)
    assert all(chart.theme is DARK for chart in tab.charts)
    tab.wear(LIGHT)


def test_that_solids_batches_say_what_comes_back(behind):
    loop = behind.outlook.forecast.loops[0]
    (section,) = solids_sections(behind.outlook, loop)
    assert section.cautions
    facts = {fact.label: fact for fact in section.facts}
    assert facts["comes back"].value.startswith("N ")
    for label, part in (("went in", "gathered"), ("comes back", "back"), ("lost as gas", "gas")):
        assert facts[label].ask.part == part
        assert behind.why(facts[label].ask).value is not None
    assert solids_sections(behind.outlook, behind.outlook.forecast.loops[1]) == ()


def test_that_a_reading_added_in_the_tab_is_shown_there(qtbot, window):
    window.menus.actions["view.water"].trigger()
    assert window.workspace.shelf.listed.key == "water"
    water = window.workspace.shelf.place("water").tab
    before = len(water.model.rows)
    qtbot.mouseClick(water.buttons["reading"], Qt.MouseButton.LeftButton)
    (form,) = window.findChildren(FormDialog)
    form.rows["value"].editor.show_value(6.7)
    qtbot.mouseClick(form.ok, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(lambda: len(water.model.rows) == before + 1)
    assert water.charts[0].course.points


def test_that_a_figure_of_the_tab_can_be_asked_why(qtbot, window):
    window.menus.actions["view.water"].trigger()
    window.workspace.shelf.place("water").tab.text.anchorClicked.emit(QUrl("why:0"))
    (dialog,) = window.findChildren(WhyDialog)
    assert dialog.answer.rows
    dialog.reject()


def test_that_nitrate_is_foreseen_from_today_on_as_the_pool_of_the_loop(behind, tested, means):
    loop = behind.outlook.forecast.loops[0]
    book = reading_book(tested, loop.loop, means.catalogue)
    found = whole_course(book, Quantity.NITRATE_N_MG_PER_L, behind, loop).foreseen
    day = behind.outlook.forecast.ruler.day_of(TODAY)
    assert found[0] == (TODAY, float(loop.pool_mg_per_l[0][day]))
    assert len(found) == 13
    assert whole_course(book, Quantity.PH, behind, loop).foreseen == ()


def test_that_charts_below_each_other_share_their_days(behind, tested, means):
    loop = behind.outlook.forecast.loops[0]
    book = reading_book(tested, loop.loop, means.catalogue)
    courses = together(
        [whole_course(book, each, behind, loop) for each in (Quantity.PH, Quantity.NITRATE_N_MG_PER_L)]
    )
    assert {course.days for course in courses} == {(FIRST, courses[1].own_days[-1])}


def test_that_a_course_tells_what_is_foreseen(tab):
    nitrate = next(c for c in tab.charts if c.course.quantity is Quantity.NITRATE_N_MG_PER_L)
    assert "; foreseen " in nitrate.accessibleName()


def test_that_every_figure_of_the_water_says_why(behind, means, tested):
    """Every figure worked out has formula and inputs behind it, each answer the figure that is shown."""
    forecast = behind.outlook.forecast
    water = behind.water(forecast.loops[0])
    sections = week_water_sections(water, water.advice.week, behind.outlook.catalogue)
    entered = {quantity_words(view.quantity) for view in water.readings.quantities}
    answered = set()
    for fact in (fact for section in sections for fact in section.facts):
        if fact.label in entered or fact.label in UNASKED:
            continue
        assert isinstance(fact.ask, Subject), fact.label
        answer = why(fact.ask, tested, forecast, means.forecaster)
        assert answer.value is not None or answer.notes
        assert answer_of(answer, behind.outlook.catalogue).formula
        answered.add(fact.ask.kind)
    assert answered >= {
        SubjectKind.AMMONIA,
        SubjectKind.FILTER_NEED,
        SubjectKind.OXYGEN,
        SubjectKind.ACID,
        SubjectKind.BASE,
        SubjectKind.IRON_DUE,
        SubjectKind.FREE_AMMONIA,
        SubjectKind.LIMIT,
    }


UNASKED = {"", "Never tested", "Assumed"}
"""What is words or names only."""
