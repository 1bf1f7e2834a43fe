"""The doses of a loop: when they are due, what they give, and what the water asks for."""

import dataclasses
from datetime import date, timedelta

import pytest
from PySide6.QtCore import Qt

from planner.desk.behind import Behind
from planner.desk.outlook import look_out
from planner.desk.water.doses import (
    Advised,
    advised_doses,
    dose_cautions,
    dose_rows,
    given_last,
    gives_words,
    next_due,
    taken_up,
    whole_grams,
)
from planner.desk.water_words import water_words
from planner.farm.changes import applied
from planner.farm.ids import id_from
from planner.farm.water import Dose, Quantity, Reading
from planner.forecast.water.iron import ChelateFit
from planner.forecast.water.spans import exactly
from tests.desk.helpers import TODAY, nameless_controls

DAY = timedelta(days=1)


def dose(loop, supplement, on, **more):
    given = {"grams": 100.0, "every_days": 0, **more}
    return Dose(id=id_from(f"{supplement} {on}"), loop=loop, supplement=supplement, on=on, **given)


@pytest.fixture(scope="session")
def dosed(farm):
    loop = farm.loops[0].id
    doses = (
        dose(loop, "potassium-hydroxide", TODAY - 10 * DAY, every_days=7),
        dose(loop, "iron-dtpa-11", TODAY - 30 * DAY),
    )
    tests = (
        (Quantity.PH, 6.4),
        (Quantity.TAN_MG_PER_L, 0.2),
        (Quantity.ALKALINITY_MG_PER_L, 50.0),
    )
    readings = tuple(
        Reading(id=id_from(quantity.name), loop=loop, quantity=quantity, value=value, on=TODAY - DAY)
        for quantity, value in tests
    )
    return dataclasses.replace(farm, doses=doses, readings=readings)


@pytest.fixture
def behind(means, dosed):
    return Behind(look_out(dosed, means.forecaster), means.forecaster, TODAY)


@pytest.fixture
def water(behind):
    return behind.water(behind.outlook.forecast.loops[0])


@pytest.mark.parametrize(
    ("given", "last", "due"),
    [
        ({"on": date(2027, 3, 1)}, date(2027, 3, 1), None),
        ({"on": date(2027, 3, 10)}, None, date(2027, 3, 10)),
        ({"on": date(2027, 3, 1), "every_days": 4}, date(2027, 3, 9), date(2027, 3, 13)),
        ({"on": date(2027, 3, 2), "every_days": 4}, date(2027, 3, 6), date(2027, 3, 10)),
        (
            {"on": date(2027, 3, 1), "every_days": 4, "until_on": date(2027, 3, 12)},
            date(2027, 3, 9),
            None,
        ),
        ({"on": date(2027, 3, 20), "every_days": 4}, None, date(2027, 3, 20)),
    ],
)
def test_that_a_dose_was_given_last_before_today_and_is_due_from_today_on(given, last, due):
    found = dose(id_from("loop"), "potassium-hydroxide", given.pop("on"), **given)
    assert given_last(found, TODAY) == last
    assert next_due(found, TODAY) == due


def test_that_what_is_asked_for_stands_first_then_what_is_due_then_what_is_over(behind, water):
    rows = dose_rows(behind.outlook, water)
    kinds = [type(row.payload) for row in rows]
    assert kinds == sorted(kinds, key=lambda kind: kind is not Advised)
    planned = [row.payload for row in rows if isinstance(row.payload, Dose)]
    assert [next_due(each, TODAY) is None for each in planned] == [False, True]


def test_that_iron_is_asked_for_by_the_interval_of_its_rule(behind, water):
    iron = next(each for each in advised_doses(behind.outlook, water) if each.supplement == "iron-dtpa-11")
    assert iron.on == TODAY  # 21 days after the last are over
    assert not iron.planned
    base = next(
        each for each in advised_doses(behind.outlook, water) if each.supplement == "potassium-hydroxide"
    )
    assert base.planned  # the plan gives it again within the week


@pytest.mark.parametrize("fit", list(ChelateFit))
def test_that_only_a_chelate_that_may_not_fit_is_warned_of(behind, water, fit):
    product = dataclasses.replace(water.advice.iron.products[0], fit=fit)
    iron = dataclasses.replace(water.advice.iron, products=(product,))
    fitted = dataclasses.replace(water, advice=dataclasses.replace(water.advice, iron=iron))
    asked = next(
        each for each in advised_doses(behind.outlook, fitted) if each.supplement == product.supplement
    )
    assert asked.before == (() if fit is ChelateFit.SUITED else (water_words(fit),))


def test_that_a_dose_gives_what_the_label_and_the_water_say(means):
    supplement = means.catalogue.supplements["potassium-hydroxide"]
    # 100 g of pure KOH are 1.78 eq and hold 69.7 g K; in 1000 L that lifts K by 70 mg/L.
    assert gives_words(supplement, 100.0, 1000.0) == "K 70 g (+70 mg/L), base 1.8 eq"
    assert gives_words(None, 100.0, 1000.0) == "–"


def test_that_grams_at_once_are_never_rounded_up():
    assert whole_grams(217.9) == 210.0
    assert whole_grams(0.0359) == 0.035


def test_that_a_dose_asked_for_is_put_into_the_plan_once_and_no_larger(behind, water):
    asked = Advised(supplement="potassium-hydroxide", grams=exactly(300.0), at_once_g=217.0, on=TODAY)
    after = applied(behind.outlook.farm, taken_up(asked, behind.outlook, water))
    (new,) = set(after.doses) - set(behind.outlook.farm.doses)
    assert (new.grams, new.on, new.every_days, new.loop) == (210.0, TODAY, 0, water.loop)


def test_that_a_strong_base_carries_its_caution_on_the_page(window, dosed, means, qtbot):
    loop = window.workspace.outlook.farm.loops[0].id
    strong = dose(loop, "potassium-hydroxide", TODAY + DAY)
    assert any("oggles" in each for each in dose_cautions(strong, means.catalogue))
    window.menus.actions["view.water"].trigger()
    panel = window.workspace.shelf.place("water").tab.doses
    assert nameless_controls(panel) == []
    from planner.actions.changing import addition

    window.conduct.act(addition("Dose", strong))
    panel.table.choose(strong.id)
    assert "oggles" in panel.caution.text()
    assert panel.caution.isVisible()


def test_that_one_click_plans_what_is_asked_for_and_undo_takes_it_out(window, dosed, qtbot):
    from planner.actions.changing import addition

    window.menus.actions["view.water"].trigger()
    panel = window.workspace.shelf.place("water").tab.doses
    old = dose(window.workspace.outlook.farm.loops[0].id, "iron-dtpa-11", TODAY - 30 * DAY)
    window.conduct.act(addition("Dose", old))
    before = len(window.workspace.outlook.farm.doses)
    assert panel.table.choose("asked iron-dtpa-11")
    qtbot.mouseClick(panel.take, Qt.MouseButton.LeftButton)
    assert len(window.workspace.outlook.farm.doses) == before + 1
    window.conduct.undo()
    assert len(window.workspace.outlook.farm.doses) == before


def test_that_what_is_asked_for_can_be_asked_why(behind, water):
    asked = advised_doses(behind.outlook, water)
    assert asked
    for each in asked:
        found = behind.why(each.ask)
        values = [found.value, *(child.value for child in found.children)]
        assert any(value == pytest.approx(each.grams.likely) for value in values if value is not None)
