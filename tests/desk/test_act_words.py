"""Acts are named in the language of the window, also those that come ready from the actions."""

import re

import pytest

from planner.desk.act_words import ACT_FORMS, act_words
from planner.farm.log import Happening

BLANK = re.compile(r"\{(\w+)\}")
READY = {
    "Lock LTB-27W09-A": "Bloquear LTB-27W09-A",
    "Unlock 3 batches": "Desbloquear 3 lotes",
    "Adopt the season plan from 2027-03-17": "Adoptar el plan de temporada desde 2027-03-17",
}


@pytest.mark.parametrize("form", ACT_FORMS)
def test_that_in_english_every_name_stays_as_it_is(form):
    title = BLANK.sub(r"\1 of it", form)
    assert act_words(title) == title


@pytest.mark.parametrize("form", ACT_FORMS)
def test_that_in_spanish_every_form_is_said_in_spanish_and_keeps_what_it_names(spanish, form):
    said = act_words(BLANK.sub("LTB-27W09-A", form))
    assert said != BLANK.sub("LTB-27W09-A", form)
    assert said.count("LTB-27W09-A") == len(BLANK.findall(form))


@pytest.mark.parametrize(("ready", "said"), READY.items())
def test_that_the_most_special_form_is_taken(spanish, ready, said):
    assert act_words(ready) == said


@pytest.mark.parametrize("happening", list(Happening))
def test_that_what_happened_is_said_in_spanish_with_its_amount(spanish, happening):
    said = act_words(f"Log: {happening.value} 19 seeds, LTB-27W09-A, 2027-03-17")
    assert said.startswith("Registro: ")
    assert "19 semillas, LTB-27W09-A, 2027-03-17" in said


def test_that_an_act_named_by_the_desk_is_left_alone(spanish):
    assert act_words("Sembrar LTB-27W09-A") == "Sembrar LTB-27W09-A"


def test_that_locking_in_a_spanish_window_is_named_in_spanish(spanish, window, farm):
    batch = next(each for each in farm.batches if not each.locked)
    window.workspace.choose(batch.id)
    window.menus.actions["change.lock"].trigger()
    assert window.conduct.undo_title == f"Bloquear {batch.code}"
