"""Any number on any page can be asked why: no cell and no fact shows a figure that leads nowhere.

A page is added to `TABLES` (what its tables show) or to `FACTS` (the text beside them). Left out are only
what is no figure: names and codes, ISO weeks, times of day, and what `NO_FIGURES` and `NO_FACTS` name with
their reasons. Every ask that is found is also asked: it must have an answer.
"""

import re
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from datetime import timedelta
from threading import Event

import pytest

from planner.desk.batch_table import batch_columns, batch_rows
from planner.desk.beds.rows import map_columns, map_rows
from planner.desk.beds.stays import Stays
from planner.desk.behind import Behind
from planner.desk.doors.asked import first_facts
from planner.desk.due_rows import due_rows, late_rows
from planner.desk.facts import page_of
from planner.desk.outlook import look_out
from planner.desk.pages import Basis, Fact, Page, Section
from planner.desk.rows import Column, Row
from planner.desk.sureness import sureness_of
from planner.desk.why.answers import answer_of, answer_of_basis
from planner.desk.why.entered import answer_to
from planner.farm.crops import Batch
from planner.farm.farm import KINDS, label_of, things
from planner.forecast.why.values import Explanation
from planner.planning.late import carried_over
from planner.shipped import shipped_path
from tests.desk.helpers import TODAY

WEEK = re.compile(r"\bW\d\d\b( \d{4})?")
TIME = re.compile(r"\b\d\d:\d\d\b")
MARKS = re.compile(r"CaCO₃|NO₃|NH₃")
DIGIT = re.compile(r"\d")

NO_FIGURES = {
    ("beds", "Bed"): "names",
    ("beds", "Raft, block or tray"): "a place has a number as a name",
    ("beds", "Places"): "a place has a number as a name",
    ("beds", "Batch"): "codes",
    ("batches", "Stands in"): "where a batch stands: names and numbers of places",
    ("batches", "Batch"): "codes",
}
"""Columns that show digits but no figures, and why."""

NO_FACTS = {
    "Nursery": "where a batch stands: names and numbers of places",
    "Middle spacing": "where a batch stands: names and numbers of places",
    "Bed": "where a batch stands: names and numbers of places",
}
"""Lines of text that show digits but no figures, by their label, and why."""

MOST_ASKED = 60
"""Of more numbers than about twice as many, only some are asked."""
OWN_WORDS = "Notes"
"""Heading of what the grower wrote, which is told as it was written."""


@dataclass(frozen=True)
class Sheet:
    """One table as it is shown."""

    columns: tuple[Column, ...]
    rows: tuple[Row, ...]


def due(behind: Behind) -> Iterable[Sheet]:
    outlook = behind.outlook
    one = (Column(title="Due"),)
    for week in range(outlook.forecast.ruler.weeks):
        yield Sheet(one, due_rows(outlook, outlook.forecast.ruler.week_start(week)))
    forecaster, last = behind._forecaster, outlook.farm.plan_until - timedelta(days=1)
    yield Sheet(one, late_rows(outlook, carried_over(outlook.farm, forecaster, last)))


def batches(behind: Behind) -> Iterable[Sheet]:
    yield Sheet(batch_columns(), batch_rows(behind.outlook))


def beds(behind: Behind) -> Iterable[Sheet]:
    stays = Stays(behind.outlook)
    for day in range(0, behind.outlook.forecast.ruler.days, 30):
        yield Sheet(map_columns(), map_rows(stays, behind.outlook.farm.beds, day))


TABLES: dict[str, Callable[[Behind], Iterable[Sheet]]] = {"due": due, "batches": batches, "beds": beds}


def of_things(behind: Behind) -> Iterable[Page]:
    """The side panel, with each thing of the farm chosen in turn."""
    farm = behind.outlook.farm
    for kind in KINDS:
        for thing in things(farm, kind.word):
            yield page_of(behind, thing, TODAY)


def of_many(behind: Behind) -> Iterable[Page]:
    """The side panel, with several batches chosen."""
    farm = behind.outlook.farm
    yield page_of(behind, farm.batches[0], TODAY, along=farm.batches[:5])
    yield page_of(behind, farm.batches[0], TODAY, along=farm.batches)


def of_weeks(behind: Behind) -> Iterable[Page]:
    """The side panel, with nothing chosen: every week of the plan."""
    ruler = behind.outlook.forecast.ruler
    for week in range(ruler.weeks):
        yield page_of(behind, None, ruler.week_start(week))


def of_sure(behind: Behind) -> Iterable[Page]:
    """The side panel once it is known how sure the forecast is."""
    *_, sure = sureness_of(behind.outlook.farm, behind.outlook.catalogue, Event())
    known = Behind(behind.outlook, behind._forecaster, TODAY)
    known.sure = behind.sure = sure
    yield from of_weeks(known)


def of_first(behind: Behind) -> Iterable[Page]:
    """The cards of a plan that was just begun."""
    facts = tuple(fact for found in first_facts(behind).values() for fact in found)
    yield Page(title="", subtitle="", sections=(Section(title="", facts=facts),))


FACTS: dict[str, Callable[[Behind], Iterable[Page]]] = {
    "things": of_things,
    "many": of_many,
    "weeks": of_weeks,
    "first": of_first,
    "sure": of_sure,
}


@pytest.fixture(scope="module", params=["backyard", "school-kitchen"])
def behind(request, means):
    farm = means.read(shipped_path("sample_data", f"{request.param}.toml")).farm
    return Behind(look_out(farm, means.forecaster), means.forecaster, TODAY)


@pytest.fixture(scope="module")
def names(behind):
    """Every name and code of the farm and of its catalogue, the longest first."""
    farm, catalogue = behind.outlook.farm, behind.outlook.catalogue
    found = {label_of(thing) for kind in KINDS for thing in things(farm, kind.word) if kind.label}
    found |= {batch.variety for batch in farm.batches}
    for shelf in (catalogue.crops, catalogue.fish, catalogue.feeds, catalogue.supplements):
        found |= {entry.name for entry in shelf.values()}
    return sorted((name for name in found if name), key=len, reverse=True)


def holds_a_number(text: str, names: list[str]) -> bool:
    """Tell whether a text shows a figure, once names, weeks and times are taken out of it."""
    for name in names:
        text = text.replace(name, "")
    for pattern in (WEEK, TIME, MARKS):
        text = pattern.sub("", text)
    return DIGIT.search(text) is not None


def unasked(fact: Fact, names: list[str]) -> bool:
    """Tell whether a line of text shows a figure that cannot be asked."""
    if any(unasked(each, names) for each in fact.more):
        return True
    if fact.ask is not None or fact.label in NO_FACTS:
        return False
    return holds_a_number(fact.value, names) or holds_a_number(fact.note, names)


def answer(behind: Behind, fact: Fact):
    """Return the answer in words, whatever it is that is asked."""
    catalogue = behind.outlook.catalogue
    if isinstance(fact.ask, Basis):
        return answer_of_basis(fact, fact.ask, catalogue)
    found = fact.ask if isinstance(fact.ask, Explanation) else answer_to(behind, fact.ask)
    return answer_of(found, catalogue)


def unasked_cells(page, sheets: Iterable[Sheet], names: list[str], left_out: Mapping[tuple[str, str], str]):
    """Return the cells of a page that show a figure which cannot be asked."""
    return {
        f"{column.title}: {row.texts[at]}"
        for sheet in sheets
        for row in sheet.rows
        for at, column in enumerate(sheet.columns)
        if (page, column.title) not in left_out
        and holds_a_number(row.texts[at], names)
        and (at >= len(row.asks) or row.asks[at] is None)
    }


def unasked_lines(pages: Iterable[Page], names: list[str], left_out: str = "") -> set[str]:
    """Return the lines of texts, but of one heading, that show a figure which cannot be asked."""
    return {
        f"{section.title} / {fact.label}: {fact.value} ({fact.note})"
        for shown in pages
        for section in shown.sections
        if not left_out or section.title != left_out
        for fact in section.facts
        if unasked(fact, names)
    }


def asked_in(sheets: Iterable[Sheet]) -> Iterable[Fact]:
    """Return what the cells of tables ask."""
    for sheet in sheets:
        for row in sheet.rows:
            yield from (
                Fact(label="", value=row.texts[at], ask=ask)
                for at, ask in enumerate(row.asks)
                if ask is not None
            )


def some_of(facts: Iterable[Fact]) -> list[Fact]:
    """Return facts that ask different things; of very many some, from all over."""
    asked = list({fact.ask: fact for fact in facts}.values())
    return asked[:: max(1, len(asked) // MOST_ASKED)]


def see_answered(behind: Behind, facts: list[Fact]) -> None:
    """See that there are facts, and that each has an answer."""
    assert facts
    for fact in facts:
        found = answer(behind, fact)
        assert found.title
        assert found.value


@pytest.mark.parametrize("page", TABLES)
def test_that_every_number_of_a_table_can_be_asked(page, behind, names):
    missing = unasked_cells(page, TABLES[page](behind), names, NO_FIGURES)
    assert not missing, sorted(missing)[:20]


@pytest.mark.parametrize("page", TABLES)
def test_that_every_number_of_a_table_has_an_answer(page, behind):
    see_answered(behind, some_of(asked_in(TABLES[page](behind))))


@pytest.mark.parametrize("page", FACTS)
def test_that_every_number_of_a_text_can_be_asked(page, behind, names):
    missing = unasked_lines(FACTS[page](behind), names, OWN_WORDS)
    assert not missing, sorted(missing)[:20]


@pytest.mark.parametrize("page", FACTS)
def test_that_every_number_of_a_text_has_an_answer(page, behind):
    see_answered(behind, some_of(fact for shown in FACTS[page](behind) for fact in shown.askable))


def test_that_the_exceptions_name_columns_that_are_there(behind):
    for page, title in NO_FIGURES:
        sheets = TABLES[page](behind)
        assert title in {column.title for column in next(iter(sheets)).columns}


def test_that_a_bare_number_would_be_found(behind, names):
    batch: Batch = behind.outlook.farm.batches[0]
    assert not holds_a_number(f"{batch.code} W12 2027", names)
    assert holds_a_number(f"{batch.code} 12 plants", names)
    assert unasked(Fact(label="Plants", value="12"), names)
    assert unasked(Fact(label="Crop", value="Lettuce", note="12 plants"), names)
