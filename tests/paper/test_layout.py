"""Pages: nothing split, nothing cut, headings again on every page, boxes big enough for wet hands."""

from dataclasses import replace
from datetime import date

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from planner.paper.layout import pages_of
from planner.paper.marks import Fill, Frame, Pattern, Rule, Words
from planner.paper.measure import Face, width_mm
from planner.paper.report import (
    Align,
    Box,
    Caution,
    Cell,
    Column,
    Drawing,
    DrawnLine,
    DrawnRect,
    DrawnText,
    Hatch,
    Line,
    Paragraph,
    Report,
    RowGroup,
    Section,
    Size,
    Table,
    Tone,
)  # fmt: skip
from planner.paper.style import A3, A4, INK_SAVING_STYLE, LETTER, PAPERS, STYLE, TABLOID, paper_named
from tests.paper.helpers import PRINTED, bare_farm, calendar_of, sown_farm, squeezed, strange_farm
from tests.paper.rulers import PlainMetrics

METRICS = PlainMetrics()
SMALL = Size(best_pt=11.0, least_pt=11.0)
SHEETS = [paper.turned(landscape=landscape) for paper in PAPERS for landscape in (True, False)]


def report_of(*parts, columns=1, heading="", large=False):
    section = Section(heading=heading, parts=parts, columns=columns)
    return Report(
        title="Sheet", sections=(section,), farm_name="Brookside", plan_mark="1A2B-3C4D", printed_on=PRINTED,
        large=large,
    )  # fmt: skip


def table_of(texts, *, widths=(30.0, 30.0), heading="W14"):
    columns = tuple(
        Column(key=str(n), heading=f"Head {n}", share=1.0, least_mm=width, main=SMALL, detail=SMALL)
        for n, width in enumerate(widths)
    )
    rows = tuple(
        (Cell(lines=(Line(text=text),)), *(Cell(box=Box.TICK) for _ in widths[1:])) for text in texts
    )
    return Table(name="Rows", columns=columns, groups=(RowGroup(heading=heading, rows=rows),))


def words_of(page):
    return [mark for mark in page.marks if isinstance(mark, Words)]


def text_of(page):
    return " ".join(mark.text for mark in words_of(page))


def edges(mark):
    if isinstance(mark, Rule):
        return mark.x_mm, mark.y_mm, mark.x2_mm, mark.y2_mm
    if isinstance(mark, Words):
        wide = width_mm(METRICS, mark.text, face=mark.face, pt=mark.pt)
        return mark.x_mm, mark.y_mm, mark.x_mm + wide, mark.y_mm
    return mark.x_mm, mark.y_mm, mark.x_mm + mark.width_mm, mark.y_mm + mark.height_mm


def assert_all_within_margins(pages, paper):
    for page in pages:
        for mark in page.marks:
            x, y, x2, y2 = edges(mark)
            assert x >= STYLE.punch_margin_mm - 0.01, mark
            assert y >= STYLE.margin_mm - 0.01, mark
            assert x2 <= paper.width_mm - STYLE.margin_mm + 0.01, mark
            assert y2 <= paper.height_mm - STYLE.margin_mm + 0.01, mark


@pytest.mark.parametrize("paper", SHEETS, ids=lambda p: f"{p.name}-{'lying' if p.landscape else 'standing'}")
@pytest.mark.parametrize("large", [False, True])
def test_that_nothing_leaves_the_margins_or_its_cell_on_any_paper(paper, large):
    pages = pages_of(calendar_of(strange_farm(), large=large), paper, METRICS)
    assert_all_within_margins(pages, paper)
    for page in pages:
        for mark in words_of(page):
            assert width_mm(METRICS, mark.text, face=mark.face, pt=mark.pt) <= mark.room_mm + 0.01, mark


def test_that_the_left_margin_leaves_room_for_punched_holes():
    assert STYLE.margin_mm >= 15
    assert STYLE.punch_margin_mm >= STYLE.margin_mm + 5


@pytest.mark.parametrize("paper", SHEETS, ids=lambda p: f"{p.name}-{'lying' if p.landscape else 'standing'}")
@pytest.mark.parametrize("large", [False, True])
def test_that_boxes_and_rules_are_big_enough_for_wet_hands(paper, large):
    pages = pages_of(calendar_of(sown_farm(16), large=large), paper, METRICS)
    boxes = [
        mark for page in pages for mark in page.marks
        if isinstance(mark, Frame) and mark.pt == STYLE.box_rule_pt and mark.width_mm <= 20
    ]  # fmt: skip
    assert len(boxes) == 16
    assert all(box.width_mm >= 15 and box.height_mm >= 8 for box in boxes)
    assert all(mark.pt >= 0.5 for page in pages for mark in page.marks if isinstance(mark, Rule | Frame))


@pytest.mark.parametrize(
    ("large", "paper", "least"),
    [
        (True, A3, 20), (True, TABLOID, 20), (True, A4, 20), (False, A4, 14), (False, LETTER, 14),
    ],
)  # fmt: skip
def test_that_crop_and_number_are_never_smaller_than_the_distance_asks(large, paper, least):
    pages = pages_of(calendar_of(strange_farm(), large=large), paper.turned(landscape=True), METRICS)
    bold = [mark for page in pages for mark in words_of(page) if mark.face is Face.BOLD]
    numbers = [mark for mark in bold if mark.text == "3"]
    names = [mark for mark in bold if mark.text in ("Sweet basil", "Sweet")]
    assert names
    assert numbers
    assert min(mark.pt for mark in names + numbers) >= least


def test_that_other_writing_is_never_below_eleven_points_in_the_rows():
    pages = pages_of(calendar_of(sown_farm(16)), A4.turned(landscape=True), METRICS)
    details = [m for page in pages for m in words_of(page) if m.text.startswith(("lot", "for", "Bed"))]
    assert details
    assert min(mark.pt for mark in details) >= 11


def test_that_rows_are_never_split_and_headings_come_again():
    texts = [f"row{n:03d}a row{n:03d}b" for n in range(120)]
    table = table_of(texts, widths=(22.0, 17.0))
    pages = pages_of(report_of(table), A4, METRICS)
    assert len(pages) > 2
    for page in pages:
        text = text_of(page)
        assert "Head 0" in text
        assert text.count("W14") == 1
        for n in range(120):
            assert (f"row{n:03d}a" in text) == (f"row{n:03d}b" in text)
    whole = " ".join(map(text_of, pages))
    assert all(whole.count(f"row{n:03d}a") == 1 for n in range(120))
    assert "(continued)" not in text_of(pages[0])
    assert "(continued)" in text_of(pages[1])


def test_that_a_band_is_never_left_alone_at_the_foot_of_a_page():
    groups = tuple(
        RowGroup(heading=f"BAND{n:02d}", rows=table_of([f"row{n:02d}"]).groups[0].rows) for n in range(40)
    )
    table = replace(table_of([]), groups=groups)
    for page in pages_of(report_of(table), A4, METRICS):
        text = text_of(page)
        for n in range(40):
            assert (f"BAND{n:02d}" in text) == (f"row{n:02d}" in text)


def test_that_a_row_higher_than_a_page_is_carried_on_and_loses_nothing():
    long_text = " ".join(f"word{n:04d}" for n in range(900))
    pages = pages_of(report_of(table_of([long_text])), A4, METRICS)
    assert_all_within_margins(pages, A4)
    whole = " ".join(map(text_of, pages))
    assert all(whole.count(f"word{n:04d}") == 1 for n in range(900))


def test_that_every_page_says_which_plan_it_is_and_page_x_of_y():
    pages = pages_of(calendar_of(sown_farm(40)), A4.turned(landscape=True), METRICS)
    assert len(pages) > 3
    for number, page in enumerate(pages, start=1):
        text = text_of(page)
        assert f"page {number} of {len(pages)}" in text
        assert "Brookside Loop" in text
        assert "printed Thu 1 Apr 2027, 09:05" in text
        assert "Seeding calendar" in text


def test_that_a_report_with_nothing_in_it_is_one_page():
    pages = pages_of(report_of(), A4, METRICS)
    assert [(page.number, page.count) for page in pages] == [(1, 1)]


def test_that_an_empty_span_says_nothing_to_sow_in_every_week():
    pages = pages_of(calendar_of(bare_farm(), weeks=9), A4.turned(landscape=True), METRICS)
    assert " ".join(map(text_of, pages)).count("nothing to sow") == 9


def test_that_sixty_weeks_are_all_there():
    farm = bare_farm(weeks=60)
    pages = pages_of(calendar_of(farm, weeks=60), A3.turned(landscape=True), METRICS)
    whole = squeezed(" ".join(map(text_of, pages)))
    assert whole.count("nothingtosow") == 60
    assert "Mon22May–Sun28May2028" in whole


def test_that_ink_saving_sheets_have_no_fill_at_all():
    report = calendar_of(sown_farm(3))
    assert any(isinstance(m, Fill) for page in pages_of(report, A4, METRICS) for m in page.marks)
    saved = pages_of(report, A4, METRICS, style=INK_SAVING_STYLE)
    assert not any(isinstance(m, Fill | Pattern) for page in saved for m in page.marks)


def test_that_a_caution_stays_in_its_frame_on_one_page():
    filler = Paragraph(text="word " * 600)
    caution = Caution(title="Careful", text="first " + "warning " * 60 + "last")
    pages = pages_of(report_of(filler, caution), A4, METRICS)
    (page,) = [page for page in pages if "Careful" in text_of(page)]
    assert "first" in text_of(page)
    assert "last" in text_of(page)
    assert any(isinstance(m, Frame) and m.pt == STYLE.heavy_rule_pt for m in page.marks)


def test_that_a_caution_longer_than_a_page_is_not_cut():
    caution = Caution(title="Careful", text=" ".join(f"word{n:04d}" for n in range(1500)))
    pages = pages_of(report_of(caution, columns=2), A4, METRICS)
    assert_all_within_margins(pages, A4)
    whole = " ".join(map(text_of, pages))
    assert all(f"word{n:04d}" in whole for n in range(1500))


@settings(max_examples=25)
@given(lengths=st.lists(st.integers(1, 300), max_size=25), columns=st.integers(1, 3))
def test_that_text_in_columns_loses_nothing_and_keeps_the_margins(lengths, columns):
    parts = [Paragraph(text=f"p{n:02d} " + "word " * length) for n, length in enumerate(lengths)]
    pages = pages_of(report_of(*parts, columns=columns, heading="Notes"), A4, METRICS)
    assert_all_within_margins(pages, A4)
    whole = " ".join(map(text_of, pages))
    assert whole.count("word") == sum(lengths)
    assert [t for t in whole.split() if t.startswith("p") and t[1:].isdigit()] == [
        f"p{n:02d}" for n in range(len(lengths))
    ]


def test_that_a_drawing_is_set_smaller_as_a_whole_when_the_paper_is_narrow():
    drawing = Drawing(
        width_mm=350.0, height_mm=100.0, says="one raft",
        shapes=(
            DrawnRect(x_mm=0, y_mm=0, width_mm=350, height_mm=100, hatch=Hatch.SLANT, label="A1"),
            DrawnLine(x1_mm=0, y1_mm=50, x2_mm=350, y2_mm=50),
            DrawnText(x_mm=10, y_mm=20, text="north", pt=20.0),
        ),
    )  # fmt: skip
    (page,) = pages_of(report_of(drawing), A4, METRICS)
    assert_all_within_margins([page], A4)
    (pattern,) = [mark for mark in page.marks if isinstance(mark, Pattern)]
    assert pattern.width_mm == pytest.approx(175.0)
    assert pattern.height_mm == pytest.approx(50.0)
    assert {"A1", "north"} <= {mark.text for mark in words_of(page)}


def test_that_numbers_stand_at_the_right_of_their_column():
    column = Column(
        key="n", heading="Seeds", share=1, least_mm=30, main=SMALL, detail=SMALL, align=Align.RIGHT
    )
    rows = tuple((Cell(lines=(Line(text=text, tone=Tone.MAIN),)),) for text in ("7", "1,250"))
    table = Table(name="t", columns=(column,), groups=(RowGroup(rows=rows),))
    (page,) = pages_of(report_of(table), A4, METRICS)
    ends = [round(edges(m)[2], 3) for m in words_of(page) if m.text in ("7", "1,250")]
    assert len(ends) == 2
    assert ends[0] == ends[1]


def test_that_a_number_of_seeds_is_never_broken():
    for paper in SHEETS:
        for large in (True, False):
            pages = pages_of(calendar_of(strange_farm(), large=large), paper, METRICS)
            bold = [m.text for page in pages for m in words_of(page) if m.face is Face.BOLD]
            assert any(len(text) == len("1,196,173") and text.count(",") == 2 for text in bold), paper


def test_that_columns_fold_into_two_lines_a_row_when_the_paper_is_narrow():
    report = calendar_of(sown_farm(1, weeks=1), weeks=1)
    code = "LTL-27W14-000"

    def height_of(text, paper):
        first = pages_of(report, paper, METRICS)[0]
        return next(mark.y_mm for mark in words_of(first) if mark.text == text)

    assert height_of("Leaf lettuce", A4) + 8 < height_of(code, A4)


def test_that_a_row_with_a_missing_cell_is_refused():
    with pytest.raises(ValueError, match="row: 1 cells, but the table has 2 columns"):
        replace(table_of([]), groups=(RowGroup(rows=((Cell(),),)),))


def test_that_an_unknown_paper_is_refused_by_name():
    with pytest.raises(ValueError, match="paper: 'A9' is none of A4, Letter, A3, Tabloid"):
        paper_named("A9", landscape=True)
    assert paper_named(" letter ", landscape=True).width_mm == 279.4


def test_that_the_date_of_the_first_week_is_said_in_words():
    (page, *_) = pages_of(calendar_of(bare_farm(), from_on=date(2027, 4, 8)), A4, METRICS)
    assert "W14–W22, Mon 5 Apr – Sun 6 Jun 2027" in text_of(page)
