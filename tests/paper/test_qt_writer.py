"""The drawn sheet itself, read back with the tools that read PDF files anywhere."""

import re
import subprocess
import sys
import unicodedata
from collections.abc import Sequence

import pytest
from PySide6.QtGui import QColor

from planner.paper import qt_writer
from planner.paper.errors import GivenUpError
from planner.paper.marks import Page, Words
from planner.paper.measure import Face, width_mm
from planner.paper.qt_writer import (
    PaperError,
    QtFontMetrics,
    laid_out,
    page_images,
    paint_report,
    write_pdf,
    writing_steps,
)
from planner.paper.style import A3, A4, INK_SAVING_STYLE, LETTER, PAPERS, STYLE, TABLOID
from tests.paper.helpers import (
    ARABIC,
    HEBREW,
    NAME_120,
    UNICODE,
    bare_farm,
    calendar_of,
    pdf_text,
    sown_farm,
    squeezed,
    strange_farm,
    told,
)  # fmt: skip

POINTS = {"A4": (595, 842), "A3": (842, 1191), "Letter": (612, 792), "Tabloid": (792, 1224)}


def written(report, folder, paper, **how):
    path = folder / "sheet.pdf"
    return path, write_pdf(report, path, paper, **how)


def pages_in(path):
    return int(re.search(r"Pages:\s+(\d+)", told("pdfinfo", path)).group(1))


@pytest.mark.parametrize(
    ("count", "weeks", "large", "paper"),
    [(0, 9, False, A4), (1, 9, False, LETTER), (16, 9, True, A3), (200, 13, True, TABLOID)],
)
def test_that_every_sowing_is_found_in_the_text_of_the_pdf(qapp, tmp_path, count, weeks, large, paper):
    report = calendar_of(sown_farm(count, weeks=weeks), weeks=weeks, large=large)
    path, pages = written(report, tmp_path, paper.turned(landscape=True))
    assert pages_in(path) == pages
    text = squeezed(pdf_text(path))
    for row in report.tables[0].rows:
        for cell in row:
            for line in cell.lines:
                for word in line.text.split():
                    assert word in text, line
    assert [f"page{n}of{pages}" in text for n in range(1, pages + 1)] == [True] * pages


@pytest.mark.parametrize("large", [False, True])
def test_that_a_row_reads_from_left_to_right_on_one_line(qapp, tmp_path, large):
    report = calendar_of(sown_farm(1, weeks=1), weeks=1, large=large)
    path, _ = written(report, tmp_path, (A3 if large else A4).turned(landscape=True))
    (row,) = report.tables[0].rows
    lines = pdf_text(path).splitlines()
    (line,) = [line for line in lines if "Leaf" in line and row[2].lines[0].text in line.split()]
    assert line.index("Leaf") < line.index(f" {row[2].lines[0].text} ")
    heads = [line for line in lines if line.strip().startswith("Sow on")]
    assert re.search(r"Sow on\s+Crop\s+Sow\s+Fill\s+Batch\s+Move to bed\s+Harvest\s+Done", heads[0])


def test_that_strange_names_are_all_there(qapp, tmp_path):
    path, _ = written(calendar_of(strange_farm(), weeks=2), tmp_path, A4.turned(landscape=True))
    text = told("pdftotext", path, "-")
    for name in ("STR-27W14-7", UNICODE, "fine affluent office", "=HYPERLINK(1)", NAME_120):
        for word in name.split():
            assert word in text or squeezed(word) in squeezed(text), word
    plain = unicodedata.normalize("NFKC", text)  # Arabic comes back in the forms its letters are drawn in
    for word in (*ARABIC.split(), HEBREW):
        assert word in plain, word


def test_that_a_name_of_one_endless_word_is_broken_and_all_there(qapp):
    pages = laid_out(calendar_of(strange_farm(), weeks=2), A4.turned(landscape=True))
    lines = [mark.text for page in pages for mark in page.marks if isinstance(mark, Words)]
    assert sum(len(line) for line in lines if set(line) == {"W"}) == 120


def test_that_a_name_of_words_that_join_letters_stays_searchable(qapp, tmp_path):
    path, _ = written(calendar_of(strange_farm(), weeks=2), tmp_path, A4.turned(landscape=True))
    assert not set("ﬀﬁﬂﬃﬄ") & set(pdf_text(path))


def test_that_all_fonts_are_embedded_and_ours(qapp, tmp_path):
    path, _ = written(calendar_of(sown_farm(5)), tmp_path, A4.turned(landscape=True))
    rows = told("pdffonts", path).splitlines()[2:]
    assert rows
    for row in rows:
        assert "DejaVuSans" in row
        assert (row.split()[-5], row.split()[-3]) == ("yes", "yes"), row


@pytest.mark.parametrize("paper", PAPERS, ids=lambda paper: paper.name)
@pytest.mark.parametrize("landscape", [True, False])
def test_that_the_sheet_has_the_size_of_its_paper(qapp, tmp_path, paper, landscape):
    path, _ = written(calendar_of(sown_farm(2)), tmp_path, paper.turned(landscape=landscape))
    width, height = re.search(r"Page size:\s+([\d.]+) x ([\d.]+)", told("pdfinfo", path)).groups()
    wanted = POINTS[paper.name][:: -1 if landscape else 1]
    assert (float(width), float(height)) == pytest.approx(wanted, abs=1.0)


def test_that_the_file_says_its_title_and_whose_it_is(qapp, tmp_path):
    path, _ = written(calendar_of(bare_farm()), tmp_path, A4)
    facts = told("pdfinfo", path)
    assert "Seeding calendar – W14–W22, Mon 5 Apr – Sun 6 Jun 2027" in facts
    assert re.search(r"Author:\s+Brookside Loop", facts)


@pytest.mark.parametrize("large", [False, True])
def test_that_no_text_is_wider_than_its_cell_in_the_real_typeface(qapp, large):
    metrics = QtFontMetrics()
    for farm in (strange_farm(), sown_farm(30)):
        for paper in (A4, LETTER, A3, TABLOID):
            for page in laid_out(calendar_of(farm, large=large), paper.turned(landscape=True)):
                for mark in page.marks:
                    if isinstance(mark, Words):
                        wide = width_mm(metrics, mark.text, face=mark.face, pt=mark.pt)
                        assert wide <= mark.room_mm + 0.01, mark


def test_that_the_bench_sheet_keeps_one_line_a_row_on_letter_paper(qapp):
    page = laid_out(calendar_of(sown_farm(1, weeks=1), weeks=1), LETTER.turned(landscape=True))[0]
    heads = {m.y_mm for m in page.marks if isinstance(m, Words) and m.text in ("Sow on", "Harvest", "Done")}
    assert len(heads) == 1


def test_that_the_picture_on_screen_has_the_same_pages_as_the_file(qapp, tmp_path):
    report, paper = calendar_of(sown_farm(12)), A4.turned(landscape=True)
    _, pages = written(report, tmp_path, paper)
    images = page_images(report, paper, dpi=50)
    assert len(images) == pages
    assert {(image.width(), image.height()) for image in images} == {(585, 414)}
    for image in images:
        dark = sum(
            QColor(image.pixel(x, y)).lightness() < 128
            for x in range(0, image.width(), 2)
            for y in range(0, image.height(), 2)
        )
        assert dark > 50


def test_that_sheets_are_grey_at_most_and_ink_saving_ones_have_no_fill(qapp):
    report, shade = calendar_of(sown_farm(4)), QColor.fromRgbF(0.92, 0.92, 0.92).rgb()
    for style, shaded in ((INK_SAVING_STYLE, False), (STYLE, True)):
        image = page_images(report, A4.turned(landscape=True), dpi=40, style=style)[0]
        pixels = [image.pixel(x, y) for x in range(image.width()) for y in range(image.height())]
        assert all(QColor(pixel).hsvSaturation() == 0 for pixel in set(pixels))
        assert (pixels.count(shade) > 5000) is shaded


def test_that_a_printer_gets_the_same_pages(qapp, tmp_path):
    from PySide6.QtPrintSupport import QPrinter

    report, paper = calendar_of(sown_farm(12)), A4.turned(landscape=True)
    path, pages = written(report, tmp_path, paper)
    printer = QPrinter()
    printer.setOutputFormat(QPrinter.OutputFormat.PdfFormat)
    printer.setOutputFileName(str(tmp_path / "printed.pdf"))
    assert paint_report(report, printer, paper) == pages
    assert pdf_text(tmp_path / "printed.pdf") == pdf_text(path)


def test_that_single_pages_can_be_printed_with_their_own_numbers(qapp, tmp_path):
    from PySide6.QtGui import QPdfWriter

    report, paper = calendar_of(sown_farm(30)), A4.turned(landscape=True)
    path = tmp_path / "two.pdf"
    writer = QPdfWriter(str(path))
    assert paint_report(report, writer, paper, only=(2, 3)) == 2
    del writer
    text = pdf_text(path)
    assert "page 2 of" in text
    assert "page 3 of" in text
    assert "page 1 of" not in text


def test_that_a_path_that_cannot_be_written_is_told_in_words(qapp, tmp_path):
    report = calendar_of(bare_farm())
    (tmp_path / "file").write_text("not a folder")
    for path, words in (
        (tmp_path / "none" / "sheet.pdf", "could not be written"),
        (tmp_path / "file" / "sheet.pdf", "could not be written"),
        (tmp_path, "is a folder"),
    ):
        with pytest.raises(PaperError, match=words) as caught:
            write_pdf(report, path, A4)
        assert str(path) in str(caught.value)


def test_that_a_sheet_that_fails_leaves_the_old_one_and_no_rest(qapp, tmp_path, monkeypatch):
    path, _ = written(calendar_of(bare_farm()), tmp_path, A4)
    before = path.read_bytes()

    def fail(*_arguments, **_how):
        yield 1
        raise PaperError("Page 2 of 3 was not taken by the printer.")

    monkeypatch.setattr(qt_writer, "painting_steps", fail)
    with pytest.raises(PaperError, match="Page 2 of 3"):
        write_pdf(calendar_of(sown_farm(3)), path, A4)
    assert path.read_bytes() == before
    assert list(tmp_path.iterdir()) == [path]


def test_that_a_file_cut_short_is_never_put_in_place(qapp, tmp_path, monkeypatch):
    path = tmp_path / "sheet.pdf"

    def half(_pages: Sequence[Page], _writer, _paper):
        (part,) = tmp_path.iterdir()
        part.write_bytes(b"%PDF-1.4 half")
        yield 1

    monkeypatch.setattr(qt_writer, "painting_steps", half)
    with pytest.raises(PaperError, match="to its end"):
        write_pdf(calendar_of(bare_farm()), path, A4)
    assert list(tmp_path.iterdir()) == []


def test_that_a_file_that_is_there_is_replaced_and_keeps_its_rights(qapp, tmp_path):
    path = tmp_path / "sheet.pdf"
    path.write_text("old")
    path.chmod(0o640)
    write_pdf(calendar_of(bare_farm()), path, A4)
    assert path.read_bytes().startswith(b"%PDF")
    assert path.stat().st_mode & 0o777 == 0o640


def test_that_no_widgets_and_no_screen_are_needed(root, tmp_path):
    code = (
        "import sys\n"
        "from pathlib import Path\n"
        "from PySide6.QtGui import QGuiApplication\n"
        "app = QGuiApplication(['-platform', 'offscreen'])\n"
        "from planner.paper.qt_writer import write_pdf\n"
        "from planner.paper.style import A4\n"
        "from tests.paper.helpers import calendar_of, sown_farm\n"
        "print(write_pdf(calendar_of(sown_farm(3)), Path(sys.argv[1]), A4))\n"
        "assert 'PySide6.QtWidgets' not in sys.modules\n"
        "assert 'PySide6.QtPrintSupport' not in sys.modules\n"
    )
    path = tmp_path / "alone.pdf"
    done = subprocess.run(
        [sys.executable, "-c", code, str(path)], capture_output=True, text=True, check=False, cwd=root
    )
    assert done.returncode == 0, done.stderr
    assert int(done.stdout) == pages_in(path)


def test_that_the_writer_is_the_only_module_here_that_knows_the_toolkit(root):
    modules = sorted((root / "planner" / "paper").glob("*.py"))
    knows = [path.name for path in modules if "PySide6" in path.read_text()]
    assert knows == ["qt_writer.py"]


def test_that_the_narrow_cut_is_narrower_and_bold_is_wider(qapp):
    metrics = QtFontMetrics()
    wide = {face: metrics.width_em("Leaf lettuce", face) for face in Face}
    assert wide[Face.NARROW] < wide[Face.REGULAR] < wide[Face.BOLD]
    assert wide[Face.NARROW] < wide[Face.NARROW_BOLD] < wide[Face.BOLD]


def test_that_a_file_broken_off_leaves_nothing_and_what_was_there_stays(qapp, tmp_path):
    pages = laid_out(calendar_of(sown_farm(60, weeks=20), weeks=20), A4.turned(landscape=True))
    target = tmp_path / "sheet.pdf"
    target.write_bytes(b"older")
    steps = writing_steps(pages, target, A4.turned(landscape=True), title="x", author="y")
    assert next(steps) == 1
    steps.close()
    assert [each.name for each in tmp_path.iterdir()] == ["sheet.pdf"]
    assert target.read_bytes() == b"older"


def test_that_pages_wanted_no_longer_are_not_set_to_their_end(qapp):
    report = calendar_of(sown_farm(60, weeks=20), weeks=20)
    with pytest.raises(GivenUpError):
        laid_out(report, A4.turned(landscape=True), stopped=lambda: True)
