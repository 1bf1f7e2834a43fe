"""Every document on every paper: nothing cut, nothing run over, boxes for wet hands, head and foot."""

import re

import pytest

from planner.paper.bilingual import in_two_languages
from planner.paper.cells import slots_of
from planner.paper.marks import Fill, Frame, Pattern, Rule, Stroke, Tint, Words
from planner.paper.measure import width_mm
from planner.paper.qt_writer import QtFontMetrics, laid_out, write_pdf
from planner.paper.readable import readable
from planner.paper.registry import DOCUMENTS, document_named
from planner.paper.report import Box, Table
from planner.paper.sheet_files import LANGUAGES, second_language
from planner.paper.style import A3, A4, A5, HALF_LETTER, INK_SAVING_STYLE, LETTER, STYLE, TABLOID, style_for
from tests.paper.documents_helpers import HOSTILE, empty, hostile, long_year, sample
from tests.paper.helpers import pdf_text, squeezed, told

EACH = pytest.mark.parametrize("document", DOCUMENTS, ids=lambda document: document.key)
BIG = pytest.mark.parametrize("paper", [A4, LETTER, A3, TABLOID], ids=lambda paper: paper.name)
CARDS = [document_named("emergency"), document_named("solids-card")]
TURNERS = re.compile("[\u200e\u200f\u202a-\u202e\u2066-\u2069\u0000-\u0008]")


def pages_on(document, farm, paper, *, style=STYLE, second="", **how):
    lying = document.lies_on(paper)
    report = farm.report(document, large=document.is_large_on(lying), **how)
    if second:
        report = in_two_languages(report, second_language(second))
    return report, laid_out(report, lying, style=style)


def words_of(pages):
    return [mark for page in pages for mark in page.marks if isinstance(mark, Words)]


def assert_all_inside(pages, *, edge=STYLE.margin_mm):
    metrics = QtFontMetrics()
    for page in pages:
        wide, high = page.paper.width_mm - edge, page.paper.height_mm - edge
        for mark in page.marks:
            assert mark.y_mm <= high + 0.01, mark
            if isinstance(mark, Words):
                width = width_mm(metrics, mark.text, face=mark.face, pt=mark.pt)
                assert mark.x_mm >= STYLE.margin_mm - 0.01, mark
                assert mark.x_mm + width <= wide + 0.2, mark
            elif isinstance(mark, Frame | Fill | Pattern | Tint):
                assert mark.x_mm + mark.width_mm <= wide + 0.01, mark
                assert mark.y_mm + mark.height_mm <= high + 0.01, mark


@EACH
@BIG
@pytest.mark.parametrize("farm", [sample, hostile, empty], ids=["sample", "hostile", "empty"])
def test_that_nothing_leaves_its_page(qapp, document, paper, farm):
    _, pages = pages_on(document, farm(), paper)
    assert_all_inside(pages)


@pytest.mark.parametrize("document", CARDS, ids=lambda document: document.key)
@pytest.mark.parametrize("paper", [A5, HALF_LETTER], ids=lambda paper: paper.name)
@pytest.mark.parametrize("farm", [sample, hostile], ids=["sample", "hostile"])
def test_that_cards_fit_small_papers(qapp, document, paper, farm):
    _, pages = pages_on(document, farm(), paper)
    assert_all_inside(pages)
    assert len(pages) <= 3


@EACH
@pytest.mark.parametrize("second", LANGUAGES)
def test_that_two_languages_in_larger_type_stay_on_their_page(qapp, document, second):
    style = style_for(large_type=True)
    report, pages = pages_on(document, sample(), A4, second=second, style=style)
    assert_all_inside(pages)
    assert any("not yet checked by a native speaker" in line for line in report.header_lines)


@EACH
@BIG
def test_that_every_page_says_farm_plan_day_and_number(qapp, document, paper):
    report, pages = pages_on(document, sample(), paper)
    for page in pages:
        said = squeezed("".join(mark.text for mark in page.marks if isinstance(mark, Words)))
        for part in (report.farm_name, report.plan_mark, "printedThu1Apr2027,09:05"):
            assert squeezed(part) in said
        assert f"page{page.number}of{len(pages)}" in said


@pytest.mark.parametrize("document", DOCUMENTS[1:], ids=lambda document: document.key)
def test_that_hostile_names_come_out_as_text_and_whole(qapp, document):
    # Rows of the first, the seeding calendar, come in pieces where they are higher than a page.
    assert DOCUMENTS[0].key == "seeding-calendar"
    report, pages = pages_on(document, hostile(), A4)
    shown = squeezed("".join(mark.text for mark in words_of(pages)))
    assert squeezed(HOSTILE[0]) in shown  # the farm's own name, at the head and foot
    for table in report.tables:
        for row in table.rows:
            for cell in row:
                for line in cell.lines:
                    assert squeezed(readable(line.text, QtFontMetrics().shows)) in shown, line.text
    for mark in words_of(pages):
        assert not TURNERS.search(mark.text), mark


@pytest.mark.parametrize("key", ["week-tasks", "harvest-record", "scouting", "food-safety", "season-plan"])
def test_that_each_hostile_name_is_on_the_sheet_that_lists_it(qapp, key):
    document = document_named(key)
    _, pages = pages_on(document, hostile(), A4, weeks=14)
    shown = squeezed("".join(mark.text for mark in words_of(pages)))
    for name in HOSTILE:
        assert squeezed(readable(name, QtFontMetrics().shows)) in shown, name


@EACH
def test_that_room_for_a_hand_is_large_enough(document):
    for report in (sample().report(document), hostile().report(document)):
        paper = document.lies_on(document.paper)
        width = paper.width_mm - STYLE.punch_margin_mm - STYLE.margin_mm
        for table in report.tables:
            handled = {
                at
                for row in (*table.rows, *([table.fill] if table.fill else []))
                for at, cell in enumerate(row)
                if cell.box is not Box.NONE
            }
            for line in slots_of(table.columns, width_mm=width):
                for slot in line:
                    if slot.index in handled:
                        assert slot.width_mm >= STYLE.box_width_mm, (table.name, slot.column.heading)


@EACH
def test_that_boxes_to_tick_are_as_large_on_the_paper(qapp, document):
    report, pages = pages_on(document, sample(), document.paper)
    ticks = sum(cell.box is Box.TICK for table in report.tables for row in table.rows for cell in row)
    frames = [
        mark
        for page in pages
        for mark in page.marks
        if isinstance(mark, Frame) and mark.pt == STYLE.box_rule_pt and mark.width_mm == STYLE.box_width_mm
    ]
    assert len(frames) == ticks
    assert all(frame.height_mm >= 8.0 for frame in frames)


@pytest.mark.parametrize("key", ["harvest-record", "fish-sampling", "scouting", "solids-card", "food-safety"])
def test_that_logs_go_on_with_lines_to_the_foot_of_the_page(qapp, key):
    document = document_named(key)
    _, pages = pages_on(document, sample(), document.paper)
    inner = [m.y_mm for m in pages[-1].marks if isinstance(m, Rule)]
    *_, last, foot = sorted(set(inner))  # the line above the foot is the lowest
    assert foot - last < STYLE.box_height_mm + 2 * STYLE.gap_mm


@EACH
def test_that_ink_is_saved_and_colour_left_out(qapp, document):
    _, saving = pages_on(document, sample(), A4, style=INK_SAVING_STYLE)
    marks = [mark for page in saving for mark in page.marks]
    assert not any(isinstance(mark, Tint) for mark in marks)
    assert not any(isinstance(mark, Fill) and mark.grey < 1.0 for mark in marks)
    assert not any(isinstance(mark, Stroke) and mark.solid for mark in marks)
    _, grey = pages_on(document, sample(), A4, style=style_for(black_and_white=True))
    assert not any(isinstance(mark, Tint) for page in grey for mark in page.marks)


@pytest.mark.parametrize("key", ["season-plan", "feed-sheet", "monthly-report", "shopping", "maintenance"])
def test_that_a_year_of_sixty_weeks_is_printed(qapp, key):
    document = document_named(key)
    _, pages = pages_on(document, long_year(), document.paper, weeks=60)
    assert_all_inside(pages)


@pytest.mark.parametrize("weeks_off", [-400, -3, 20, 400])
@EACH
def test_that_weeks_outside_the_plan_are_blank_and_no_fault(qapp, document, weeks_off):
    farm = sample()
    day = farm.farm.settings.plan_from.toordinal() + 7 * (weeks_off if weeks_off < 0 else 40 + weeks_off)
    report = farm.report(document, from_on=type(farm.farm.settings.plan_from).fromordinal(day))
    assert laid_out(report, document.lies_on(document.paper))


def test_that_the_tasks_of_a_week_are_read_day_after_day(qapp, tmp_path):
    document = document_named("week-tasks")
    write_pdf(sample().report(document), tmp_path / "week.pdf", A4)
    _, _, text = told("pdftotext", tmp_path / "week.pdf", "-").partition("Every day")
    days = [
        "Mon 4 Jan 2027",
        "Tue 5 Jan 2027",
        "Wed 6 Jan 2027",
        "Sun 10 Jan 2027",
        "Left from last week",
    ]
    places = [text.index(day) for day in days]
    assert places == sorted(places)
    lines = [line for line in pdf_text(tmp_path / "week.pdf").splitlines() if "Move to bed" in line]
    assert re.search(r"Move to bed\s+24\s+North raft", lines[0])


@EACH
def test_that_the_words_of_the_file_are_those_of_the_report(qapp, tmp_path, document):
    report = sample().report(document)
    write_pdf(report, tmp_path / "sheet.pdf", document.lies_on(document.paper))
    text = squeezed(told("pdftotext", "-layout", tmp_path / "sheet.pdf", "-"))
    for section in report.sections:
        assert squeezed(section.heading) in text
        for part in section.parts:
            if isinstance(part, Table):
                for row in part.rows:
                    for cell in row:
                        for line in cell.lines:
                            for word in line.text.split():
                                assert squeezed(word) in text, word


def test_that_a_picture_that_is_wide_reaches_from_rule_to_rule(qapp):
    document = document_named("season-plan")
    _, pages = pages_on(document, sample(), A3)
    strips = [m for m in pages[0].marks if isinstance(m, Frame) and abs(m.height_mm - 7.0) < 1e-6]
    assert len(strips) == document.weeks
    right = max(mark.x_mm + mark.width_mm for mark in strips)
    assert right == pytest.approx(pages[0].paper.width_mm - STYLE.margin_mm, abs=0.01)
    assert strips[0].width_mm == pytest.approx(strips[-1].width_mm)


@pytest.mark.parametrize("paper", [A4, LETTER, A3, TABLOID], ids=lambda paper: paper.name)
@pytest.mark.parametrize("weeks", [26, 27, 60])
def test_that_months_of_the_season_plan_are_all_told_alike_with_their_year(qapp, weeks, paper):
    _, pages = pages_on(document_named("season-plan"), long_year(), paper, weeks=weeks)
    month = re.compile(
        r"(January|February|March|April|May|June|July|August|September|October|November|December)"
    )
    short = re.compile(r"(Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)")
    texts = [mark.text.replace("\xa0", " ") for mark in pages[0].marks if isinstance(mark, Words)]
    told = [text for text in texts if re.fullmatch(rf"({month.pattern}|{short.pattern})( \d{{4}})?", text)]
    whole = told[1:5]  # the first and the last are parts of a month
    pattern = month if weeks <= 26 else short
    assert whole
    assert all(re.fullmatch(rf"{pattern.pattern} \d{{4}}", text) for text in whole), whole
