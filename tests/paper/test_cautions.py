"""Each caution stands on every sheet on which its risk arises; tasks bring their own."""

from dataclasses import replace
from datetime import timedelta

import pytest

from planner.farm.fish import FishEvent, FishEventKind, FishGroup
from planner.farm.ids import id_from
from planner.farm.water import Dose
from planner.paper.labels import CAUTION_KEY
from planner.paper.registry import document_named
from planner.paper.report import Caution
from planner.paper.trace import trace_of, trace_report
from tests.paper.documents_helpers import looked, sample

WHERE = {
    "electricity-near-water": ("maintenance", "emergency", "hand-over"),
    "tripped-device": ("emergency", "hand-over"),
    "power-cut": ("emergency", "hand-over"),
    "caustic-bases": ("water-log", "shopping", "symptoms", "hand-over"),
    "acids": ("water-log", "symptoms", "hand-over"),
    "water-on-leaves": ("harvest-record", "week-tasks", "seeding-calendar", "food-safety", "hand-over"),
    "solids-as-manure": ("solids-card", "food-safety", "hand-over"),
    "fish-medicine": ("fish-sampling", "feed-sheet", "symptoms", "hand-over"),
    "pesticides": ("scouting", "symptoms", "hand-over"),
    "species-law": ("fish-sampling", "hand-over"),
    "local-codes": ("hand-over",),
    "produce-records": ("harvest-record", "food-safety"),
    "ill-workers": ("week-tasks", "harvest-record", "food-safety", "hand-over"),
    "animals": ("maintenance", "hand-over"),
    "slips-and-drowning": ("maintenance", "week-tasks", "hand-over"),
    "materials": ("shopping", "hand-over"),
    "planning-aid": ("seeding-calendar", "season-plan", "hand-over"),
    "fish-welfare": ("fish-sampling", "feed-sheet", "hand-over"),
    "fish-as-food": ("fish-sampling", "hand-over"),
}
ON_NO_SHEET = {"privacy", "no-analysis"}
"""Said in the window: about the program, and beside water that nobody analysed."""


def told(report):
    return {part.text for section in report.sections for part in section.parts if isinstance(part, Caution)}


@pytest.mark.parametrize(("caution", "key"), [(one, key) for one, keys in WHERE.items() for key in keys])
def test_that_a_caution_stands_where_its_risk_is(caution, key):
    book = sample().ask().catalogue.cautions
    assert book[caution].text in told(sample().report(document_named(key)))


def test_that_every_caution_of_the_catalogue_has_its_row():
    assert set(WHERE) | ON_NO_SHEET == set(sample().ask().catalogue.cautions)


def test_that_labels_and_traces_carry_theirs():
    farm = sample()
    book = farm.ask().catalogue
    assert CAUTION_KEY == "water-on-leaves"
    trace = trace_of(farm.farm, farm.forecast, farm.farm.batches[0].code)
    page = trace_report(trace, farm.farm, book, printed_on=farm.ask().printed_on)
    assert told(page) == {book.cautions[key].text for key in ("produce-records", "water-on-leaves")}


def week_with(**more):
    farm = sample().farm
    return looked(replace(farm, doses=(), fish_events=(), **more)).report(
        document_named("week-tasks"), weeks=1
    )


def test_that_a_week_with_a_strong_base_warns_of_it_and_one_without_does_not():
    farm, book = sample().farm, sample().ask().catalogue
    strong = next(key for key, one in book.supplements.items() if "caustic-bases" in one.cautions)
    mild = next(key for key, one in book.supplements.items() if not one.cautions)
    for key, warns in ((strong, True), (mild, False)):
        dose = Dose(
            id=id_from("d"), loop=farm.loops[0].id, supplement=key, grams=5, on=farm.settings.plan_from
        )
        said = told(looked(replace(farm, doses=(dose,))).report(document_named("week-tasks"), weeks=1))
        assert (book.cautions["caustic-bases"].text in said) is warns


def test_that_a_week_in_which_fish_come_or_go_tells_of_law_welfare_and_eating():
    farm, book = sample().farm, sample().ask().catalogue
    first = farm.settings.plan_from + timedelta(days=2)
    old = farm.fish_groups[0]
    new = FishGroup(
        id=id_from("new"), name="New fish", tank=old.tank, species=old.species, feed=old.feed,
        stocked_on=first, count=20, mean_weight_g=20,
    )  # fmt: skip
    said = told(week_with(fish_groups=(*farm.fish_groups, new)))
    assert book.cautions["species-law"].text in said
    taken = FishEvent(id=id_from("h"), group=old.id, on=first, kind=FishEventKind.HARVEST, count=5)
    said = told(looked(replace(farm, fish_events=(taken,))).report(document_named("week-tasks"), weeks=1))
    assert book.cautions["fish-as-food"].text in said
    assert book.cautions["fish-welfare"].text in said
    assert book.cautions["species-law"].text not in said
