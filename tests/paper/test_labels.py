"""Labels and tags: what they say, where they lie on the sheet, and that the code reads as what is printed."""

import subprocess
from dataclasses import replace

import pytest
import zxingcpp
from PySide6.QtGui import QImage

from planner.bootstrap import Means
from planner.catalogue.loading import shipped_catalogue
from planner.farm.crops import Batch, Phase, SeedLot
from planner.farm.ids import id_from
from planner.paper.labels import LabelKind, label_caution, labels_of, rows_asked
from planner.paper.labels_grid import (
    GridError,
    LabelGrid,
    centred_grid,
    checked_on,
    fitted_grid,
    pair_of,
    whole_pair_of,
)
from planner.paper.labels_setting import LEAST_PT, LabelSetter, NoRoomOnLabelError
from planner.paper.labels_sheet import RULER_MM, SheetWish, calibration_pages, label_sheets
from planner.paper.marks import Fill, Frame, Words
from planner.paper.plain_names import one_line
from planner.paper.qr import square_code
from planner.paper.qt_writer import QtFontMetrics, page_image, write_pages
from planner.paper.style import A4, LETTER, MM_PER_PT
from tests.paper.helpers import (
    ARABIC,
    EMOJI,
    HEBREW,
    NAME_120,
    UNICODE,
    bare_farm,
    catalogue_of,
    forecast_of,
    pdf_text,
    sown_farm,
    squeezed,
    strange_farm,
)

GRID = LabelGrid(
    columns=3, rows=8, width_mm=63.5, height_mm=33.9, left_mm=7.2, top_mm=13.1, gap_x_mm=2.5, gap_y_mm=0
)
OFFSET_MM = 0.5
"""How far off a label may be printed (the feature list of the trade: half a millimetre)."""


def labels(farm, kind=LabelKind.TRAY, **more):
    forecast = forecast_of(farm, catalogue_of(farm))
    return labels_of(kind, farm, forecast, rows=range(len(farm.batches)), **more)


def texts(label):
    return [text.text for text in label.texts]


# --- what they say -----------------------------------------------------------------------------------


def kitchen_labels(root, kind):
    means = Means()
    farm = means.read(root / "sample_data" / "school-kitchen.toml").farm
    forecast = means.forecaster.preview(farm)
    return farm, labels_of(
        kind, farm, forecast, rows=rows_asked(kind, farm, forecast, first_day=0, last_day=28)
    )


def test_that_a_tray_label_says_all_that_the_nursery_needs(root):
    _, found = kitchen_labels(root, LabelKind.TRAY)
    assert texts(found[0]) == [
        "Leaf lettuce", "LTL-27W01-A", "sown 2027-01-04 Mon W01", "transplant W04 (Fri 29 Jan)",
        "19 seeds × 19 cells", "lot not chosen", "Seedling bench tray 2",
    ]  # fmt: skip


def test_that_a_raft_tag_says_raft_batch_crop_date_and_harvest(root):
    farm, found = kitchen_labels(root, LabelKind.RAFT)
    said = texts(found[0])
    assert said[0].startswith("Raft ")
    assert said[1] == "Butterhead lettuce"
    assert said[2] in {batch.code for batch in farm.batches}
    assert said[3].startswith("in 2027-01-0")
    assert said[4].startswith("harvest W")
    assert "2027" in said[5]
    assert "holes" in said[6]


def test_that_each_tray_has_a_label_and_the_seeds_of_all_are_the_seeds_of_the_batch():
    farm = bare_farm()
    batch = Batch(id=id_from("b"), code="X-1", crop="basil", sow_on=farm.settings.plan_from, plants=150)
    farm = replace(farm, batches=(batch,))
    forecast = forecast_of(farm, catalogue_of(farm))
    found = labels(farm)
    seeds = int(forecast.batches.seeds[0])
    said = [next(text for text in texts(label) if "seeds" in text) for label in found]
    assert sum(int(text.split(" ")[0]) for text in said) == seeds
    assert [text.partition(", ")[2] for text in said] == [
        f"tray {n} of {len(found)}" for n in range(1, len(found) + 1)
    ]


def test_that_copies_overrule_one_for_each_tray():
    farm = sown_farm(2)
    assert len(labels(farm, copies=5)) == 10


def test_that_the_lot_and_a_missing_bed_are_told():
    farm = bare_farm()
    lot = SeedLot(id=id_from("l"), code="L-77", crop="basil")
    batch = Batch(
        id=id_from("b"), code="X-1", crop="basil", sow_on=farm.settings.plan_from, plants=5, seed_lot=lot.id
    )
    farm = replace(farm, batches=(batch,), seed_lots=(lot,))
    assert "lot L-77" in texts(labels(farm)[0])
    assert texts(labels(farm, LabelKind.RAFT)[0])[-1] == "places not chosen"


def test_that_every_raft_a_batch_stands_on_has_its_tag():
    farm = sown_farm(4)
    held = {(run.batch, run.bed, run.unit) for run in farm.placements if run.phase is Phase.BED}
    alone = sum(1 for batch in farm.batches if not any(batch.id == held_by for held_by, _, _ in held))
    assert len(labels(farm, LabelKind.RAFT)) == len(held) + alone


@pytest.mark.parametrize(
    ("text", "line"),
    [
        ("a\nb\tc\r", "a b c"),
        ("\u202eevil\u2066", "evil"),
        ("  x  ", "x"),
        ("\x00\x1b[31m", "[31m"),
        ("", ""),
    ],
)
def test_that_a_name_cannot_leave_its_line_or_turn_the_writing_round(text, line):
    assert one_line(text) == line


# --- where they lie ----------------------------------------------------------------------------------


def drawn(pages, tmp_path, paper, *, dpi=300):
    """Every page as a picture made from the PDF by another program."""
    path = tmp_path / "labels.pdf"
    write_pages(pages, path, paper, title="x", author="y")
    subprocess.run(["pdftoppm", "-r", str(dpi), "-gray", "-png", path, tmp_path / "page"], check=True)
    return path, [QImage(str(name)) for name in sorted(tmp_path.glob("page*.png"))]


def dark_runs(dark, dpi):
    """Middles [mm] of the runs of dark pixels along a line."""
    found, begun = [], None
    for place, is_dark in enumerate([*dark, False]):
        if is_dark and begun is None:
            begun = place
        elif not is_dark and begun is not None:
            found.append((begun + place) / 2 / dpi * 25.4)
            begun = None
    return found


def is_dark(image, x, y):
    return image.pixelColor(x, y).lightness() < 128


@pytest.mark.parametrize(("grid", "paper"), [
    (GRID, A4),
    (LabelGrid(columns=2, rows=5, width_mm=101.6, height_mm=50.8, left_mm=4, top_mm=12, gap_x_mm=4), LETTER),
    (LabelGrid(columns=5, rows=13, width_mm=38.1, height_mm=21.2, left_mm=4, top_mm=10.7, gap_x_mm=2.5), A4),
])  # fmt: skip
@pytest.mark.parametrize("shift", [(0.0, 0.0), (1.5, -0.75)])
def test_that_frames_lie_within_half_a_millimetre_of_where_the_grid_says(qapp, tmp_path, grid, paper, shift):
    dpi = 300
    pages = calibration_pages(SheetWish(grid=grid, paper=paper, shift_mm=shift), QtFontMetrics())
    _, images = drawn(pages, tmp_path, paper, dpi=dpi)
    image = images[0]
    for number in (1, grid.columns, grid.count // 2 + 1, grid.count):
        spot = grid.spot(number)
        left, top = spot.x_mm + shift[0], spot.y_mm + shift[1]
        # A line across the label a quarter down meets its left and right edge, clear of the number.
        row = round((top + grid.height_mm / 4) / 25.4 * dpi)
        edges = dark_runs([is_dark(image, x, row) for x in range(image.width())], dpi)
        column = round((left + grid.width_mm / 5) / 25.4 * dpi)
        sides = dark_runs([is_dark(image, column, y) for y in range(image.height())], dpi)
        for found, wanted in (
            (edges, left), (edges, left + grid.width_mm), (sides, top), (sides, top + grid.height_mm),
        ):  # fmt: skip
            assert min(abs(edge - wanted) for edge in found) < OFFSET_MM / 2


def test_that_the_rulers_are_a_hundred_millimetres_in_print(qapp, tmp_path):
    dpi = 300
    pages = calibration_pages(SheetWish(grid=GRID, paper=A4), QtFontMetrics())
    _, images = drawn(pages, tmp_path, A4, dpi=dpi)
    row = round((15.0 + 2.0) / 25.4 * dpi)
    ticks = dark_runs([is_dark(images[1], x, row) for x in range(images[1].width())], dpi)
    across = [tick for tick in ticks if 19 < tick < 121]
    assert across[-1] - across[0] == pytest.approx(RULER_MM, abs=0.2)


def test_that_half_used_sheets_are_gone_on_with_from_the_start_position(qapp):
    farm = sown_farm(9)
    found = labels(farm, copies=3)
    sheets = label_sheets(found, SheetWish(grid=GRID, paper=A4, start=20, outlined=True), QtFontMetrics())
    assert len(sheets.pages) == 2
    frames = [[mark for mark in page.marks if isinstance(mark, Frame)] for page in sheets.pages]
    assert [len(many) for many in frames] == [5, 22]
    first, wanted = frames[0][0], GRID.spot(20)
    assert (first.x_mm, first.y_mm) == (wanted.x_mm, wanted.y_mm)
    assert (frames[1][0].x_mm, frames[1][0].y_mm) == (GRID.left_mm, GRID.top_mm)


def test_that_backs_lie_behind_their_labels_when_the_sheet_is_turned(qapp):
    grid = replace(GRID, left_mm=5.0)
    caution = label_caution(shipped_catalogue())
    wish = SheetWish(grid=grid, paper=A4, outlined=True, caution=caution)
    sheets = label_sheets(labels(sown_farm(4), copies=1), wish, QtFontMetrics())
    front, back = ([m for m in page.marks if isinstance(m, Frame)] for page in sheets.pages)
    for one, other in zip(front, back, strict=True):
        assert one.x_mm + one.width_mm == pytest.approx(A4.width_mm - other.x_mm)
        assert one.y_mm == other.y_mm
    said = squeezed("".join(mark.text for mark in sheets.pages[1].marks if isinstance(mark, Words)))
    assert squeezed(caution.text) in said


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"columns": 0}, "columns: 0 must lie within 1 to 50"),
        ({"width_mm": 5.0}, "width of a label: 5 mm must lie within 8 to 432 mm"),
        ({"height_mm": float("nan")}, "height of a label"),
        ({"left_mm": -1.0}, "left margin: -1 mm must lie within 0 to 200 mm"),
        ({"gap_y_mm": 201.0}, "gap between rows"),
    ],
)
def test_that_a_grid_that_cannot_be_is_told_by_field_value_and_limit(change, said):
    with pytest.raises(GridError, match=said):
        replace(GRID, **change)


def test_that_labels_off_the_paper_are_refused():
    with pytest.raises(GridError, match=r"columns: the labels reach to 216.2 mm, but A4 ends at 210 mm"):
        checked_on(replace(GRID, left_mm=20.7), A4)


@pytest.mark.parametrize("start", [0, 25, -3])
def test_that_a_start_off_the_sheet_is_refused(start):
    with pytest.raises(GridError, match=r"start: .* must lie within 1 to 24"):
        SheetWish(grid=GRID, paper=A4, start=start)


@pytest.mark.parametrize(
    "text", ["", "60", "60x", "x30", "60x30x2", "sixty x 30", "1e3x2", "٦٠x30", "9" * 30 + "x1"]
)
def test_that_what_is_no_pair_of_lengths_is_refused(text):
    with pytest.raises(GridError, match=r"size: .*not two numbers"):
        pair_of(text, field="size")


def test_that_pairs_are_read_however_they_are_spaced():
    assert pair_of(" 63.5 × 33.9 ", field="size") == (63.5, 33.9)
    assert whole_pair_of("3X8", field="grid") == (3, 8)
    with pytest.raises(GridError, match="whole"):
        whole_pair_of("2.5x8", field="grid")


def test_that_plain_paper_is_filled_from_its_middle():
    grid = fitted_grid(A4, width_mm=60, height_mm=30, edge_mm=10, gap_mm=2)
    assert (grid.columns, grid.rows) == (3, 8)
    right, low = grid.reach_mm
    assert grid.left_mm == pytest.approx(A4.width_mm - right)
    assert grid.top_mm == pytest.approx(A4.height_mm - low)
    assert centred_grid(A4, columns=3, rows=8, size_mm=(60, 30), gap_mm=(2, 2)) == grid


# --- how they are set --------------------------------------------------------------------------------


def words_of(marks):
    return [mark for mark in marks if isinstance(mark, Words)]


@pytest.mark.parametrize("size", [(60, 30), (63.5, 33.9), (85, 55), (130, 20), (120, 18), (50, 60)])
@pytest.mark.parametrize("kind", LabelKind)
def test_that_strange_labels_stay_inside_their_edges_and_above_the_least_size(qapp, size, kind):
    metrics = QtFontMetrics()
    setter = LabelSetter(metrics=metrics, width_mm=size[0], height_mm=size[1])
    for label in labels(strange_farm(), kind, copies=1):
        made = setter.set(label)
        for word in words_of(made.marks):
            wide = metrics.width_em(word.text, word.face) * word.pt * MM_PER_PT
            assert word.pt >= LEAST_PT
            assert word.x_mm >= 0
            assert word.x_mm + wide <= size[0] + 0.01
            assert word.y_mm - metrics.ascent_em(word.face) * word.pt * MM_PER_PT >= -0.01
            assert word.y_mm + metrics.descent_em(word.face) * word.pt * MM_PER_PT <= size[1] + 0.01
        assert squeezed(label.code) in squeezed("".join(word.text for word in words_of(made.marks)))


def test_that_nothing_but_the_code_is_lost_when_it_is_torn_off(qapp):
    setter = LabelSetter(metrics=QtFontMetrics(), width_mm=60, height_mm=30)
    for label in labels(sown_farm(7)):
        made = setter.set(label)
        assert made.coded
        assert not made.shortened
        left_of_code = min(mark.x_mm for mark in made.marks if isinstance(mark, Fill))
        said = squeezed("".join(word.text for word in words_of(made.marks)))
        assert all(squeezed(text) in said.replace("·", "") for text in map(squeezed, texts(label)))
        assert all(word.x_mm + word.room_mm < left_of_code for word in words_of(made.marks))


def test_that_a_label_too_small_for_code_and_dates_is_refused(qapp):
    setter = LabelSetter(metrics=QtFontMetrics(), width_mm=25, height_mm=10)
    with pytest.raises(NoRoomOnLabelError, match=r"25 × 10 mm has no room .* 7 pt"):
        setter.set(labels(sown_farm(1))[0])


# --- the square code ---------------------------------------------------------------------------------


@pytest.mark.parametrize(
    "text",
    [
        "LTB-27W09-A",
        "x",
        "1234567",
        NAME_120,
        ARABIC,
        HEBREW,
        UNICODE,
        EMOJI,
        "=1+1",
        "../../etc",
        "<b>&\"'",
        "漢字",
    ],
)
def test_that_another_program_reads_the_code_as_the_very_text(qapp, text):
    modules = square_code(text).rows
    side = (len(modules) + 8) * 6
    image = QImage(side, side, QImage.Format.Format_Grayscale8)
    image.fill(255)
    for y, row in enumerate(modules):
        for x, black in enumerate(row):
            if black:
                for step in range(36):
                    image.setPixel((x + 4) * 6 + step % 6, (y + 4) * 6 + step // 6, 0)
    assert read_codes(image) == {text}
    assert len(modules) >= 21  # the smallest QR Code that is no Micro QR Code


def read_codes(image):
    image = image.convertToFormat(QImage.Format.Format_Grayscale8)
    rows = memoryview(image.constBits()).cast("B", [image.height(), image.bytesPerLine()])
    found = zxingcpp.read_barcodes(rows, formats=zxingcpp.BarcodeFormat.QRCode)
    return {code.text for code in found}


def test_that_every_code_on_a_printed_sheet_scans_as_the_code_printed_beside_it(qapp, tmp_path):
    farm = sown_farm(12)
    found = labels(farm, copies=1)
    sheets = label_sheets(found, SheetWish(grid=GRID, paper=A4), QtFontMetrics())
    path, images = drawn(sheets.pages, tmp_path, A4, dpi=200)
    codes = {batch.code for batch in farm.batches}
    assert read_codes(images[0]) == codes
    printed = squeezed(pdf_text(path))
    assert all(code in printed for code in codes)


def test_that_a_screen_picture_holds_the_same_code(qapp):
    sheets = label_sheets(labels(sown_farm(1)), SheetWish(grid=GRID, paper=A4), QtFontMetrics())
    assert read_codes(page_image(sheets.pages[0], dpi=200)) == {labels(sown_farm(1))[0].code}
