"""The desk in other languages: files that can be read, every blank in place, English where a word lacks."""

import contextlib
import importlib.util
import re
import tomllib
from itertools import product

import pytest
from PySide6.QtCore import QCoreApplication, QLocale

from planner.catalogue.loading import shipped_catalogue
from planner.catalogue.names import SHELVES
from planner.desk.behind import Behind
from planner.desk.languages import LANGUAGES, Words, speak
from planner.desk.outlook import look_out
from planner.desk.records.rows import amount_words
from planner.desk.say import CONTEXT, careful, tr
from planner.desk.why.answers import answer_of
from planner.desk.why.words import (
    NAME_FORMS,
    TITLE_FORMS,
    name_words,
    no_figure_words,
    note_words,
    readable,
    title_text,
)
from planner.farm.crops import Stage
from planner.farm.ids import new_id
from planner.farm.log import Happening, LogEntry, Unit
from planner.farm.water import Quantity
from planner.forecast.why.values import Note, NoteKind, Origin, Subject, SubjectKind
from planner.paper.linguist import messages, read_ts, ts_path
from planner.shipped import shipped_path
from tests.desk.helpers import TODAY

OTHERS = [language for language in LANGUAGES if language != "en"]
BLANK = re.compile(r"{\w+[^}]*}")
LEAST_SHARE = 0.9
"""Of the texts of the desk at least so many are translated; the rest is shown in English."""


@pytest.fixture(params=OTHERS)
def language(request):
    return request.param


def test_that_every_translation_keeps_the_blanks_of_its_text(language):
    found = read_ts(ts_path(language))
    assert found
    wrong = [
        text for text, said in found.items() if sorted(BLANK.findall(text)) != sorted(BLANK.findall(said))
    ]
    assert wrong == []


def test_that_a_translation_has_a_key_to_press_where_its_text_has_one(language):
    found = read_ts(ts_path(language))
    wrong = [text for text, said in found.items() if text.count("&") != said.count("&")]
    assert wrong == []


def test_that_most_of_the_desk_is_translated(language):
    found = messages(ts_path(language))
    assert sum(bool(said) for said, _ in found.values()) >= LEAST_SHARE * len(found)


def test_that_every_caution_and_all_help_is_translated(language):
    found = read_ts(ts_path(language))
    cautions = shipped_path("resources", "catalogue", "cautions.toml").read_text("utf-8")
    texts = [text for each in tomllib.loads(cautions).values() for text in (each["topic"], each["text"])]
    for path in shipped_path("resources", "help").glob("*.toml"):
        parts = (part for parts in tomllib.loads(path.read_text("utf-8")).values() for part in parts)
        texts += [text for part in parts for text in (part["heading"], *part["paragraphs"])]
    assert [text for text in texts if text not in found] == []


def test_that_what_the_catalogue_notes_of_its_entries_is_translated(language):
    catalogue = shipped_catalogue()
    noted = (shelf for shelf in SHELVES if shelf != "feeding_tables")
    notes = {entry.notes for shelf in noted for entry in getattr(catalogue, shelf).values()}
    assert len(notes) > 40
    assert sorted(notes - set(read_ts(ts_path(language)))) == []


def test_that_a_caution_nobody_reviewed_keeps_its_english_beside_it(spanish):
    text = "Keep birds, rats, pets and livestock away from beds, and cover the tanks."
    said = careful(text)
    assert said.startswith("Mantenga aves")
    assert said.endswith(f"[{text}]")


def test_that_what_people_eat_hangs_on_keeps_its_english_in_an_answer(spanish):
    said = note_words(Note(kind=NoteKind.NEVER_ABOVE))
    assert said.startswith("nunca dé más alimento")
    assert said.endswith("[never feed more than the fish eat: what is left spoils the water]")


def test_that_a_reviewed_caution_stands_alone_and_so_does_the_english(qapp, spanish):
    text = "Keep birds, rats, pets and livestock away from beds, and cover the tanks."
    spanish._reviewed[text] = spanish._said[text]
    assert careful(text) == spanish._said[text]
    qapp.removeTranslator(spanish)
    assert careful(text) == text


def test_that_words_nobody_reviewed_are_marked(language):
    assert all(not reviewed for said, reviewed in messages(ts_path(language)).values() if not said)


def test_that_the_desk_speaks_another_language_and_english_where_a_word_is_missing(qapp, language):
    words = Words(language, qapp)
    text, said = next(iter(read_ts(ts_path(language)).items()))
    qapp.installTranslator(words)
    try:
        assert QCoreApplication.translate(CONTEXT, text) == said
        assert tr("no such text {n}", n=1) == "no such text 1"
    finally:
        qapp.removeTranslator(words)


def test_that_english_and_unknown_languages_change_nothing(qapp):
    before = QLocale()
    speak("en", qapp)
    speak("xx", qapp)
    assert QLocale() == before
    assert tr("Weeks") == "Weeks"


def test_that_a_file_that_is_none_leaves_everything_in_english(tmp_path):
    broken = tmp_path / "desk_xx.ts"
    broken.write_text("<TS", encoding="utf-8")
    assert read_ts(broken) == {}
    assert read_ts(tmp_path / "none.ts") == {}


def test_that_the_lanes_speak_it_too_and_the_same_letter_is_told_apart(qapp):
    words = Words("es", qapp)
    assert words.translate("Lanes", "Fish and feed") == "Peces y alimento"
    assert words.translate("Lanes", "S", "letter of the band short") == "F"
    assert words.translate("Lanes", "S", "letter of fish stocked") == "P"


def test_that_words_which_are_not_ours_are_left_to_the_toolkit(qapp):
    words = Words("es", qapp)
    assert words.translate("QPlatformTheme", "Cancel") is None
    assert words.translate(CONTEXT, "no such text") is None


def why_module():
    path = shipped_path("resources").parent / ".ci" / "why_texts.py"
    spec = importlib.util.spec_from_file_location("why_texts", path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_that_no_word_of_an_answer_to_why_is_missing(language):
    said = read_ts(ts_path(language))
    assert sorted(set(why_module().why_texts()) - set(said)) == []


def subjects_of(farm):
    """Every kind of question about the first thing of every sort; many do not fit and have no answer."""
    sorts = (farm.loops, farm.fish_groups, farm.tanks, farm.batches, farm.seed_lots, farm.doses, farm.meters)
    products = ("potassium-bicarbonate", "iron-dtpa-11", "pH", Quantity.PH.value, "")
    for kind, sort, part in product(SubjectKind, sorts, products):
        if sort:
            crop, stage = farm.batches[0].crop, Stage.BED
            yield Subject(kind=kind, about=sort[0].id, crop=crop, stage=stage, week=9, day=63, part=part)


def test_that_every_form_of_a_title_that_is_put_together_is_known():
    assert set(why_module().title_forms()) - set(TITLE_FORMS) <= {"{what} – {what}"}


def walked(explanation):
    yield explanation
    for child in explanation.children:
        yield from walked(child)


def answers(farm, means):
    behind = Behind(look_out(farm, means.forecaster), means.forecaster, TODAY)
    for subject in subjects_of(farm):
        with contextlib.suppress(Exception):
            yield from walked(behind.why(subject))


def test_that_answers_for_the_sample_farm_hold_no_name_or_title_that_is_missing(means, farm):
    found = tuple(answers(farm, means))
    names = {readable(one.name) for each in found for one in each.inputs if one.origin is not Origin.COUNTED}
    titles = {readable(each.title) for each in found}
    assert len(names) > 60
    assert len(titles) > 40
    forms = [re.compile(BLANK.sub(".+", form)) for form in (*NAME_FORMS, *TITLE_FORMS)]
    made = {text for text in names | titles if any(form.fullmatch(text) for form in forms)}
    own = {one.name for kind in (farm.fish_groups, farm.beds, farm.tanks, farm.loops) for one in kind}
    left = {text for text in names | titles if not text.isdigit()} - made - own
    for language in OTHERS:
        assert sorted(left - set(read_ts(ts_path(language)))) == []


def test_that_an_answer_is_spoken_in_the_language(spanish, means, farm):
    behind = Behind(look_out(farm, means.forecaster), means.forecaster, TODAY)
    loop = farm.loops[0].id
    answer = answer_of(
        behind.why(Subject(kind=SubjectKind.RATIO, about=loop, week=9)), behind.outlook.catalogue
    )
    assert answer.title.startswith("Razón")
    assert answer.symbols == "aporte / demanda"
    assert title_text("low end of ratio") == "extremo bajo de razón"
    assert name_words("unit_1_places_15_to_28") == "unidad 1, lugares 15 a 28"
    assert no_figure_words("nothing of K is wanted in that week.") == "en esa semana no se pide nada de K."
    assert note_words(Note(kind=NoteKind.OFF_FEED, values=(("from", "2027-01-04"),))).startswith("sin comer")


def test_that_an_amount_of_the_log_is_listed_in_the_language(spanish):
    entry = LogEntry(id=new_id(), code="a", on=TODAY, what=Happening.SOWN, amount=19, unit=Unit.SEEDS)
    assert amount_words(entry) == "19 semillas"
