"""The page of published cases shows every one, sorted, searched and marked, without standing still."""

import csv
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from planner.bootstrap_checks import check_steps
from planner.catalogue.errors import CatalogueError
from planner.commands_verify import results_of, shipped_areas
from planner.desk.checking.dialog import CheckDialog
from planner.desk.checking.rows import case_columns, case_page, case_rows, counts_words, searched_words
from planner.desk.rows import ID_ROLE, RowsModel
from planner.desk.theme import DARK, LIGHT, contrast
from planner.forecast.verify.run import CaseResult, Verdict
from planner.forecast.why.arithmetic import recomputed
from tests.desk.helpers import nameless_controls, put_away


@pytest.fixture(scope="session")
def steps(means):
    return tuple(check_steps(means))


@pytest.fixture(scope="session")
def results(steps):
    return tuple(result for step in steps for result in step.results)


@pytest.fixture(scope="session")
def few(steps):
    """A few cases of every step, one of them put outside its tolerance."""
    thin = [replace(step, cases=2 * len(steps), results=step.results[:2]) for step in steps]
    good, *others = thin[5].results
    spoiled = replace(good, ours=good.ours * 2 + 1, within=False, note="OUTSIDE as shipped. Made so.")
    thin[5] = replace(thin[5], results=(spoiled, *others))
    return tuple(thin)


@pytest.fixture
def dialog(qtbot, few):
    dialog = CheckDialog(lambda: iter(few), LIGHT)
    dialog.show()
    qtbot.waitUntil(lambda: dialog.is_done)
    yield dialog
    put_away(dialog)


def shown(dialog, column):
    return [dialog.shown.index(at, column).data() for at in range(dialog.shown.rowCount())]


def test_that_the_steps_give_what_the_command_gives(means, results):
    assert results == results_of(means, shipped_areas(means))


def test_that_no_step_is_long(steps):
    assert all(len(step.results) <= 12 or step.results[0].farm for step in steps)
    assert all(step.cases == sum(len(each.results) for each in steps) for step in steps)


def test_that_the_model_of_cases_behaves(qtmodeltester, qtbot, results):
    model = RowsModel(case_columns())
    model.set_rows(case_rows(results[:40], LIGHT))
    qtmodeltester.check(model)


def test_that_a_row_has_a_text_and_a_value_to_sort_by_for_each_column(results):
    for row in case_rows(results, LIGHT):
        assert len(row.texts) == len(row.sort) == len(case_columns())


def test_that_what_is_not_computed_is_a_row_with_what_is_lacking(steps):
    lacking = [each for step in steps for each in step.lacking]
    assert len(lacking) >= 15
    for row, each in zip(case_rows(lacking, LIGHT), lacking, strict=True):
        assert row.texts[0] == "– not computed"
        assert row.texts[3] == each.published
        page = case_page(each, "Area")
        assert page.sections[0].facts[0].value == each.lacks


def test_that_every_case_is_shown_and_those_outside_come_first_with_sign_word_and_colour(dialog, few):
    verdicts = [result.verdict for step in few for result in step.results]
    outside = verdicts.count(Verdict.OUTSIDE)
    lacking = sum(len(step.lacking) for step in few)
    assert dialog.shown.rowCount() == len(verdicts) + lacking
    words = shown(dialog, 0)
    assert outside > 0
    assert words[:outside] == ["✗ outside"] * outside
    assert "✗ outside" not in words[outside:]
    colour = dialog.shown.index(0, 0).data(Qt.ItemDataRole.ForegroundRole)
    assert colour == LIGHT.wrong
    assert words.count("≈ from memory") == verdicts.count(Verdict.SHOWN)


def test_that_what_is_outside_can_be_read_in_both_looks():
    for theme in (LIGHT, DARK):
        assert contrast(theme.wrong, theme.stripe) >= 4.5


def test_that_the_counts_say_how_the_cases_came_out(dialog, few):
    results = [result for step in few for result in step.results]
    outside = sum(result.within is False for result in results)
    assert f"{outside} outside" in dialog.counts.text()
    assert dialog.counts.text() == counts_words(results)
    assert f"{sum(len(step.lacking) for step in few)} that the program cannot work out" in dialog.proof.text()


def test_that_the_first_one_outside_is_opened_with_its_reason_first(dialog):
    said = dialog.details.toPlainText()
    assert "Outside the tolerance. Made so." in said
    assert said.index("Made so.") < said.index("Published")


def test_that_a_subject_leaves_its_own_cases(qtbot, dialog, few):
    area = few[-1].area
    rows = [dialog.subjects.item(at).data(ID_ROLE) for at in range(dialog.subjects.count())]
    assert rows == ["", *dict.fromkeys(step.area for step in few)]
    dialog.subjects.setCurrentRow(rows.index(area))
    shown_areas = {payload.area for payload in dialog.shown.payloads()}
    assert shown_areas == {area}
    assert dialog.how_many.text() == f"{dialog.shown.rowCount()} shown"


def test_that_a_subject_with_something_outside_says_so_in_red(dialog, few):
    (named,) = [
        item
        for item in (dialog.subjects.item(at) for at in range(1, dialog.subjects.count()))
        if item.data(ID_ROLE) == few[5].area
    ]
    assert ", 1 outside" in named.text() or " outside" in named.text()
    assert named.foreground().color() == LIGHT.wrong


def test_that_what_is_shown_is_saved_as_a_table(dialog, tmp_path):
    dialog.verdict.setCurrentIndex(dialog.verdict.findData("outside"))
    path = tmp_path / "cases.csv"
    dialog.save_to(str(path))
    rows = list(csv.DictReader(path.read_text(encoding="utf-8-sig").splitlines()))
    assert [row["key"] for row in rows] == [payload.key for payload in dialog.shown.payloads()]
    assert {row["verdict"] for row in rows} == {"outside"}
    assert dialog.told.text() == f"{len(rows)} rows saved in cases.csv"


def test_that_a_table_that_cannot_be_saved_is_told(dialog, tmp_path):
    dialog.save_to(str(tmp_path / "nowhere" / "cases.csv"))
    assert dialog.told.text().startswith("Not saved: ")
    assert "nowhere" in dialog.told.text()


def test_that_a_verdict_can_be_picked_by_keys(qtbot, dialog):
    dialog.verdict.setFocus()
    qtbot.keyClick(dialog.verdict, Qt.Key.Key_Down)
    words = shown(dialog, 0)
    assert words == ["✗ outside"] * dialog.shown.rowCount() != []


def test_that_a_search_leaves_what_fits(qtbot, dialog):
    everything = dialog.shown.rowCount()
    qtbot.keyClicks(dialog.search, "SUN Allen")
    assert 0 < dialog.shown.rowCount() < everything
    for payload in dialog.shown.payloads():
        said = searched_words(payload)
        assert "sun" in said
        assert "allen" in said


def test_that_columns_are_sorted_by_value(qtbot, dialog):
    dialog.table.sortByColumn(2, Qt.SortOrder.DescendingOrder)
    ours = [payload.ours for payload in dialog.shown.payloads() if isinstance(payload, CaseResult)]
    assert ours == sorted(ours, reverse=True)


def test_that_arrow_keys_show_all_about_a_case(qtbot, dialog):
    dialog.table.setCurrentIndex(dialog.shown.index(0, 0))
    qtbot.keyClick(dialog.table, Qt.Key.Key_Down)
    row = dialog.model.rows[dialog.shown.mapToSource(dialog.table.currentIndex()).row()]
    said = dialog.details.toPlainText()
    assert row.payload.title in said
    assert row.payload.publication.split(" (")[0] in said


def test_that_a_case_page_holds_inputs_figures_and_the_reason_of_the_tolerance(results):
    result = next(each for each in results if each.figures and each.inputs)
    page = case_page(result, "Area")
    texts = [fact.value for section in page.sections for fact in section.facts]
    assert set(result.figures) <= set(texts)
    assert any(result.publication == text for text in texts)


def test_that_a_range_is_shown_whole_with_the_difference_of_its_nearest_end(results):
    result = next(each for each in results if each.ranges and each.gap == 0)
    (row,) = case_rows((result,), LIGHT)
    low, high = (f"{float(f'{value:.3g}'):g}" for value in (result.ours_low, result.ours_high))
    assert row.texts[2].replace(",", "").startswith(f"{low} to {high}")
    assert row.texts[4].startswith("0")


def test_that_a_title_can_be_read_however_narrow_the_page_is(qtbot, dialog):
    least = dialog.table.fontMetrics().averageCharWidth() * 30
    for width in (1200, 640):
        dialog.resize(width, 400)
        qtbot.wait(1)
        assert dialog.table.columnWidth(1) >= least
        head = dialog.table.horizontalHeader()
        assert all(head.sectionSize(at) >= head.sectionSizeFromContents(at).width() for at in range(6))


@pytest.mark.parametrize(("ours", "words"), [(1.00001, "0.0 %"), (0.99999, "0.0 %"), (1.02, "+2.0 %")])
def test_that_a_difference_too_small_to_be_shown_has_no_sign(results, ours, words):
    result = replace(results[0], ours=ours, ours_low=ours, ours_high=ours, published=1.0)
    (row,) = case_rows((result,), LIGHT)
    assert row.texts[4].replace("\u00a0", " ") == words


def test_that_a_wrong_file_of_cases_is_said_in_the_page(qtbot):
    def broken():
        raise CatalogueError("is missing", file="verify/water.toml", field="title")
        yield

    dialog = CheckDialog(broken, LIGHT)
    qtbot.waitUntil(lambda: dialog.is_done)
    assert "verify/water.toml: title: is missing" in dialog.counts.text()
    put_away(dialog)


def test_that_the_page_can_be_closed_while_it_works(qtbot, steps):
    asked = []

    def slow():
        for step in steps:
            asked.append(step)
            yield step

    dialog = CheckDialog(slow, LIGHT)
    dialog.show()
    qtbot.waitUntil(lambda: len(asked) > 2)
    put_away(dialog)
    before = len(asked)
    QApplication.processEvents()
    assert len(asked) == before < len(steps)


def test_that_every_control_of_the_page_has_a_spoken_name(dialog):
    assert nameless_controls(dialog) == []


def test_that_a_row_is_spoken_with_its_verdict(dialog):
    spoken = dialog.shown.index(0, 0).data(Qt.ItemDataRole.AccessibleTextRole)
    assert spoken.startswith("outside, ")
    assert "published" in spoken


def test_that_help_opens_the_page(qtbot, window):
    window.menus.actions["help.check"].trigger()
    (dialog,) = window.findChildren(CheckDialog)
    qtbot.waitUntil(lambda: dialog.is_done, timeout=20000)
    assert dialog.shown.rowCount() > 500
    dialog.reject()


def test_that_ours_the_print_and_their_difference_can_be_asked(results):
    rows = case_rows(results, LIGHT)
    for row, result in zip(rows, results, strict=True):
        mine, printed, gap, allowed = row.asks[2:]
        assert mine.value == result.ours
        assert printed.value == result.published
        assert printed.notes[0].values[0][1] == result.publication
        assert recomputed(gap) == pytest.approx(gap.value, abs=1e-9)
        assert allowed.value == result.tolerance


def test_that_a_number_of_the_table_leads_to_its_answer(qtbot, dialog):
    asked = []
    dialog.why_wanted.connect(lambda facts, number: asked.append(facts[number]))
    dialog.table.setCurrentIndex(dialog.shown.index(0, 2))
    qtbot.keyClick(dialog.table, Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)
    dialog.subjects.setCurrentRow(0)
    qtbot.keyClick(dialog.subjects, Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)
    assert [fact.ask.title for fact in asked] == ["our figure", "published cases"]
    assert recomputed(asked[1].ask) == asked[1].ask.value


def test_that_the_counts_on_top_answer_with_what_they_are_made_of(qtbot, dialog):
    asked, results = [], dialog._results
    dialog.why_wanted.connect(lambda facts, _number: asked.extend(facts))
    for label in (dialog.counts, dialog.proof):
        label.setFocus()
        qtbot.keyClick(label, Qt.Key.Key_I, Qt.KeyboardModifier.ControlModifier)
    came_out, proof, shown = (fact.ask for fact in asked)
    judged = sum(result.within is not None for result in results)
    assert came_out.value == proof.value == judged
    assert [one.value for one in came_out.inputs] == [
        sum(result.within is wanted for result in results) for wanted in (True, False)
    ]
    assert shown.inputs[0].value + shown.inputs[1].value == len(results) - judged
    for answer in (came_out, proof, shown):
        assert recomputed(answer) == answer.value
