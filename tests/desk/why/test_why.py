"""Any figure of the side panel can be asked why, down to the sources and back, by hand and by keys."""

import pytest
from PySide6.QtCore import QPoint, Qt, QUrl
from PySide6.QtWidgets import QMenu

from planner.desk.batch_facts import harvest_kg
from planner.desk.behind import Behind
from planner.desk.facts import page_of
from planner.desk.outlook import look_out
from planner.desk.pages import Basis, Fact
from planner.desk.rows import RowsModel
from planner.desk.side import page_html
from planner.desk.theme import LIGHT
from planner.desk.why.answers import answer_columns, answer_of, answer_of_basis
from planner.desk.why.dialog import WhyDialog
from planner.farm.water import Quantity
from planner.forecast.water.targets import target_bands
from planner.forecast.why.values import Subject, SubjectKind
from tests.desk.helpers import TODAY, nameless_controls, put_away


@pytest.fixture
def behind(means, farm):
    return Behind(look_out(farm, means.forecaster), means.forecaster, TODAY)


@pytest.fixture
def page(behind, farm):
    return page_of(behind, farm.batches[0], TODAY)


@pytest.fixture
def dialog(qtbot, behind, page):
    dialog = WhyDialog(page.askable, behind.why, behind.outlook.catalogue, LIGHT)
    dialog.show_fact(0)
    dialog.show()
    yield dialog
    put_away(dialog)


def week_dialog(behind, kind):
    facts = page_of(behind, None, TODAY).askable
    dialog = WhyDialog(facts, behind.why, behind.outlook.catalogue, LIGHT)
    at = next(at for at, fact in enumerate(facts) if getattr(fact.ask, "kind", None) is kind)
    dialog.show_fact(at)
    dialog.show()
    return dialog


def row_with_more(dialog):
    return next(at for at, row in enumerate(dialog.model.rows) if row.payload is not None)


def test_that_the_seeds_are_answered_with_formula_inputs_and_sources(behind, farm):
    subject = Subject(kind=SubjectKind.SEEDS, about=farm.batches[0].id)
    explanation = behind.why(subject)
    answer = answer_of(explanation, behind.outlook.catalogue)
    assert answer.value == f"{behind.outlook.seeds(farm.batches[0])} seeds"
    assert "germination share" in answer.symbols
    germination = next(row for row in answer.rows if row.texts[0].startswith("germination"))
    assert "practice" in germination.texts[2] or "source" in germination.texts[2]
    assert len(answer.rows) >= len(explanation.inputs)


def test_that_no_code_with_an_underline_is_shown(behind, farm):
    kinds = (SubjectKind.RATIO, SubjectKind.DEMAND, SubjectKind.SUPPLY, SubjectKind.FEED_RATIO)
    for kind in kinds:
        subject = Subject(kind=kind, about=farm.loops[0].id, week=2)
        stack = [behind.why(subject)]
        while stack:
            explanation = stack.pop()
            stack.extend(explanation.children)
            answer = answer_of(explanation, behind.outlook.catalogue)
            texts = [answer.title, answer.symbols, *(row.texts[0] for row in answer.rows)]
            assert not any("_" in text for text in texts)
            assert all(len(row.texts) == len(row.sort) == len(answer_columns()) for row in answer.rows)


def test_that_an_input_that_has_a_reason_of_its_own_leads_to_it(behind, farm):
    explanation = behind.why(Subject(kind=SubjectKind.RATIO, about=farm.loops[0].id, week=4, element=0))
    answer = answer_of(explanation, behind.outlook.catalogue)
    reached = [row.payload for row in answer.rows if row.payload is not None]
    assert {id(each) for each in reached} == {id(child) for child in explanation.children}


def test_that_the_model_of_what_goes_in_behaves(qtmodeltester, qtbot, behind, farm):
    explanation = behind.why(Subject(kind=SubjectKind.RATIO, about=farm.loops[0].id, week=4, element=0))
    model = RowsModel(answer_columns())
    model.set_rows(answer_of(explanation, behind.outlook.catalogue).rows)
    qtmodeltester.check(model)


def test_that_a_reading_of_the_water_shows_the_band_it_is_held_against(behind):
    basis = Basis(figures=target_bands(behind.outlook.catalogue)[Quantity.PH].basis)
    fact = Fact(label="pH", value="6.8", ask=basis)
    answer = answer_of_basis(fact, basis, behind.outlook.catalogue)
    assert [row.sort[1] for row in answer.rows] == [figure.value for figure in basis.figures]
    assert len(answer.rows) == 2
    assert all(row.texts[2] for row in answer.rows)


def test_that_enter_goes_into_a_part_and_back_leads_to_the_same_row(qtbot, behind):
    dialog = week_dialog(behind, SubjectKind.RATIO)
    at = row_with_more(dialog)
    first = dialog.answer
    dialog.table.setFocus()
    dialog.table.setCurrentIndex(dialog.model.index(at, 0))
    assert dialog.deeper.isEnabled()
    qtbot.keyClick(dialog.table, Qt.Key.Key_Return)
    assert dialog.answer != first
    assert dialog.back.isEnabled()
    qtbot.mouseClick(dialog.back, Qt.MouseButton.LeftButton)
    assert dialog.answer == first
    assert dialog.table.currentIndex().row() == at
    assert not dialog.back.isEnabled()
    put_away(dialog)


def test_that_a_button_and_alt_left_do_the_same(qtbot, behind):
    dialog = week_dialog(behind, SubjectKind.AREA_FED)
    dialog.activateWindow()
    qtbot.waitUntil(dialog.isActiveWindow)
    first = dialog.answer
    dialog.table.setCurrentIndex(dialog.model.index(row_with_more(dialog), 0))
    qtbot.mouseClick(dialog.deeper, Qt.MouseButton.LeftButton)
    assert dialog.answer != first
    qtbot.keyClick(dialog.table, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert dialog.answer == first
    put_away(dialog)


def test_that_another_figure_of_the_page_can_be_asked_about_by_keys(qtbot, dialog):
    first = dialog.answer
    dialog.figure.setFocus()
    qtbot.keyClick(dialog.figure, Qt.Key.Key_Down)
    assert dialog.answer != first


def test_that_every_control_of_the_dialog_has_a_spoken_name(dialog):
    assert nameless_controls(dialog) == []
    assert dialog.answer.value in dialog.table.accessibleDescription()


def test_that_each_askable_fact_is_one_link_of_the_page(page):
    html = page_html(page, LIGHT)
    assert html.count("href='why:") == len(page.askable) > 3
    assert f"why:{len(page.askable) - 1}'" in html


def test_that_a_click_on_a_figure_asks_why(qtbot, window):
    side = window.workspace.side
    side.text.anchorClicked.emit(QUrl("why:1"))
    (dialog,) = window.findChildren(WhyDialog)
    assert dialog.figure.currentIndex() == 1
    fact = side.page.askable[1]
    assert dialog.figure.currentText().startswith(fact.label)
    dialog.reject()


def test_that_tab_and_enter_ask_why(qtbot, window):
    side = window.workspace.side
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    side.text.setFocus()
    qtbot.keyClick(side.text, Qt.Key.Key_Tab)
    qtbot.keyClick(side.text, Qt.Key.Key_Return)
    (dialog,) = window.findChildren(WhyDialog)
    assert dialog.figure.currentIndex() == 0
    dialog.reject()


@pytest.mark.qt_log_ignore("^This plugin does not support grabbing the (keyboard|mouse)")
def test_that_the_menu_of_a_figure_offers_why(qtbot, window):
    side = window.workspace.side
    found = next(
        QPoint(x, y)
        for y in range(0, side.text.viewport().height(), 3)
        for x in range(0, side.text.viewport().width(), 6)
        if side.text.anchorAt(QPoint(x, y))
    )
    side.text.customContextMenuRequested.emit(found)
    menu = next(menu for menu in side.findChildren(QMenu) if menu.actions())
    assert menu.actions()[0].text() == "Why?"
    menu.actions()[0].trigger()
    (dialog,) = window.findChildren(WhyDialog)
    dialog.reject()
    menu.close()


def test_that_button_and_key_ask_about_the_page(qtbot, window):
    qtbot.mouseClick(window.workspace.side.why, Qt.MouseButton.LeftButton)
    (dialog,) = window.findChildren(WhyDialog)
    dialog.reject()
    qtbot.waitUntil(lambda: window.findChildren(WhyDialog) == [])
    window.menus.actions["view.why"].trigger()
    (dialog,) = window.findChildren(WhyDialog)
    dialog.reject()


def test_that_the_harvest_of_a_batch_is_answered_by_the_figure_shown(behind, farm):
    for batch in farm.batches:
        facts = page_of(behind, batch, TODAY).askable
        (fact,) = (one for one in facts if one.label == "Harvest foreseen")
        assert behind.why(fact.ask).value == pytest.approx(harvest_kg(behind.outlook, batch))


def test_that_each_week_of_a_group_is_answered_by_the_feed_shown(behind, farm):
    facts = [
        fact
        for fact in page_of(behind, farm.fish_groups[0], TODAY).askable
        if getattr(fact.ask, "kind", None) is SubjectKind.GROUP_FEED
    ]
    assert len(facts) > 3
    for fact in facts:
        found = behind.why(fact.ask)
        assert fact.value.startswith(f"{found.value:.0f}")


def test_that_a_click_on_the_harvest_of_a_batch_asks_why(window, farm):
    window.workspace.choose(farm.batches[0].id)
    side = window.workspace.side
    number = [fact.label for fact in side.page.askable].index("Harvest foreseen")
    side.text.anchorClicked.emit(QUrl(f"why:{number}"))
    dialog = window.findChild(WhyDialog)
    assert dialog.answer.title.startswith("Harvest of a batch")


def test_that_planted_and_carried_area_are_each_answered_by_their_own_figure(behind, farm):
    facts = {fact.label: fact for fact in page_of(behind, None, TODAY).askable}
    planted, carried = behind.why(facts["Planted"].ask), behind.why(facts["Carried"].ask)
    assert facts["Planted"].value.startswith(f"{planted.value:.1f}")
    assert facts["Carried"].value.startswith(f"{carried.value:.1f}")
