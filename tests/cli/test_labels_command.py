"""Labels and tags from the command line."""

import pytest


def test_that_labels_are_printed_for_the_weeks_asked_for(run, tmp_path, kitchen):
    said = run("labels", kitchen, "--out", tmp_path / "l.pdf", "--weeks", "4")
    assert (said.code, said.err) == (0, "")
    assert "l.pdf: 11 labels, 1 page" in said.out
    assert (tmp_path / "l.pdf").read_bytes().startswith(b"%PDF")


def test_that_a_batch_can_be_picked_and_its_labels_counted(run, tmp_path, kitchen):
    said = run("labels", kitchen, "--out", tmp_path / "l.pdf", "--batch", "LTL-27W01-A", "--copies", "25")
    assert "25 labels, 2 pages" in said.out


def test_that_the_calibration_page_needs_no_batches(run, tmp_path, kitchen):
    said = run(
        "labels",
        kitchen,
        "--calibration",
        "--out",
        tmp_path / "c.pdf",
        "--grid",
        "3x8",
        "--size",
        "63.5x33.9",
    )
    assert said.code == 0
    assert "calibration, 2 pages" in said.out


@pytest.mark.parametrize(
    ("words", "wanted"),
    [
        (("--grid", "3x9", "--size", "60x40"), "rows: the labels reach to"),
        (("--grid", "three by eight"), "grid: "),
        (("--start", "99"), "start: 99 must lie within 1 to 24"),
        (("--size", "12x8"), "has no room for code, dates and numbers"),
        (("--gap", "2x2"), "say --grid too"),
        (("--shift", "90x0"), "shift: 90 mm must lie within -20 to 20 mm"),
        (("--copies", "0"), "--copies: 0 must lie within 1 to 500"),
        (("--batch", "LTL-27W1-A"), "Did you mean"),
        (("--batch", "../../etc/passwd"), "no batch or seed lot has the code"),
        (("--from", "2026-01-01"), "reaches outside the plan"),
    ],
)
def test_that_wrong_wishes_are_told_and_nothing_is_written(run, tmp_path, kitchen, words, wanted):
    said = run("labels", kitchen, "--out", tmp_path / "l.pdf", *words)
    assert said.code == 2
    assert wanted in said.err
    assert list(tmp_path.iterdir()) == []


def test_that_names_shortened_are_told(run, tmp_path, kitchen):
    text = kitchen.read_text(encoding="utf-8").replace('variety = "', f'variety = "{"long " * 20}', 1)
    farm = tmp_path / "long.toml"
    farm.write_text(text, encoding="utf-8")
    said = run("labels", farm, "--out", tmp_path / "l.pdf", "--size", "50x25", "--weeks", "52")
    assert said.code == 0
