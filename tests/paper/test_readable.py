"""Every letter of a name can be read on paper: emoji by their names, unknown scripts by their numbers."""

import subprocess

import pytest

from planner.paper.measure import plain_text
from planner.paper.qt_writer import QtFontMetrics, write_pdf
from planner.paper.readable import readable
from planner.paper.report import Paragraph, Report, Section
from planner.paper.style import A4
from tests.paper.helpers import PRINTED

LATIN = "\u024f".__ge__
SHOWN = {
    "Basil \U0001f33f pot": "Basil [herb] pot",
    "\U0001f468\u200d\U0001f33e farm": "[man][ear of rice] farm",
    "thumb \U0001f44d\U0001f3fd": "thumb [thumbs up sign]",
    "nothing \U0010fffd": "nothing [U+10FFFD]",
    "Hangul \ud55c": "Hangul [U+D55C]",
}
WHOLE = (
    "Litsugas ñ é ü ß Ž",
    "Rucola e\u0301 A\u030a",
    "Базилик",
    "Βασιλικός",
    "<b>&amp;</b> =1+1 ../../etc $(x)",
)


@pytest.mark.parametrize(("name", "shown"), SHOWN.items())
def test_that_what_no_typeface_draws_is_told_by_its_name(name, shown):
    assert readable(name, LATIN) == shown


@pytest.mark.parametrize("name", WHOLE)
def test_that_what_can_be_drawn_stays(qapp, name):
    assert readable(name, QtFontMetrics().shows) == name


def test_that_two_names_stay_apart():
    pots = [readable(f"pot {letter}", LATIN) for letter in "\U0001f33f\U0001f340\u6c34\u706b"]
    assert len(set(pots)) == 4


def pdf_words(path, tmp_path, *names):
    report = Report(
        title="Names",
        sections=(Section(parts=tuple(Paragraph(text=name) for name in names)),),
        farm_name="Farm",
        plan_mark="1234",
        printed_on=PRINTED,
    )
    write_pdf(report, path, A4)
    return subprocess.run(["pdftotext", path, "-"], capture_output=True, text=True, check=True).stdout


def test_that_the_paper_says_the_names_and_has_no_empty_box(qapp, tmp_path):
    said = " ".join(pdf_words(tmp_path / "n.pdf", tmp_path, *SHOWN, *WHOLE).split())
    for shown in ("Basil [herb] pot", "[man][ear of rice] farm", "thumb [thumbs up sign]", *WHOLE[2:]):
        assert shown in said, shown
    assert "\ufffd" not in said


def test_that_arabic_is_drawn_and_read_from_the_right(qapp, tmp_path):
    assert readable("خس روماني", QtFontMetrics().shows) == "خس روماني"
    said = pdf_words(tmp_path / "a.pdf", tmp_path, "خس")
    assert any("\u0600" <= letter <= "\u06ff" or "\ufb50" <= letter <= "\ufeff" for letter in said)


def test_that_three_hundred_letters_are_all_there(qapp, tmp_path):
    name = "".join(chr(ord("a") + at % 26) for at in range(300))
    said = "".join(pdf_words(tmp_path / "l.pdf", tmp_path, name).split())
    assert name in said


def test_that_a_letter_nobody_sees_turns_nothing_round():
    assert readable("abc\u202edef", LATIN) == plain_text("abc\u202edef") == "abcdef"
