"""Every document there is, by key: its title, its paper, and what makes it.

The one list that the command line, the print dialog and the guide go by. Must not know layout or toolkits.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Final

from planner.paper.documents.ask import Ask
from planner.paper.documents.bed_map import bed_map
from planner.paper.documents.cards import emergency_card, solids_card
from planner.paper.documents.feed_sheet import feed_sheet
from planner.paper.documents.food_safety import food_safety
from planner.paper.documents.hand_over import hand_over
from planner.paper.documents.logs import fish_sampling, harvest_record, scouting
from planner.paper.documents.maintenance import maintenance
from planner.paper.documents.monthly_report import monthly_report
from planner.paper.documents.season_plan import season_plan
from planner.paper.documents.shopping import shopping
from planner.paper.documents.symptoms import symptoms
from planner.paper.documents.water_log import water_log
from planner.paper.documents.week_tasks import week_tasks
from planner.paper.documents.year_poster import year_poster
from planner.paper.report import Report
from planner.paper.seeding_calendar import seeding_calendar
from planner.paper.style import A3, A4, A5, ALL_PAPERS, TABLOID, Paper


class UnknownDocumentError(Exception):
    """There is no such document; the message lists those there are."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Document:
    """One kind of document.

    `says` is what it is for, in a line. `weeks` are how many it covers when nobody says. On the paper of a
    wall a document `for_walls` is set large. `landscape` is how it lies. One that
    `looks_back` tells of the weeks before today.
    """

    key: str
    title: str
    says: str
    weeks: int
    make: Callable[[Ask], Report]
    paper: Paper = A4
    landscape: bool = False
    for_walls: bool = False
    looks_back: bool = False

    def is_large_on(self, paper: Paper) -> bool:
        """Tell whether it is set for reading at a step and a half on a paper."""
        return self.for_walls and paper.name in (A3.name, TABLOID.name)

    def begins_on(self, day: date, weeks: int) -> date:
        """Return the first day of a document when nobody says: the day, or so many weeks before it."""
        return day - timedelta(weeks=weeks) if self.looks_back else day

    def lies_on(self, paper: Paper) -> Paper:
        """Return a paper turned the way the document lies."""
        return paper.turned(landscape=self.landscape)


def _seeding_calendar(ask: Ask) -> Report:
    return seeding_calendar(
        ask.farm,
        ask.forecast,
        ask.catalogue,
        from_on=ask.from_on,
        weeks=ask.weeks,
        printed_on=ask.printed_on,
        large=ask.large,
    )


DOCUMENTS: Final = (
    Document(
        key="seeding-calendar",
        title="Seeding calendar",
        says="what to sow week by week, for the nursery wall (A3) or the bench (A4)",
        weeks=9,
        make=_seeding_calendar,
        paper=A3,
        landscape=True,
        for_walls=True,
    ),
    Document(
        key="week-tasks",
        title="Week's tasks",
        says="what is due day by day, with box, initials and time",
        weeks=1,
        make=week_tasks,
    ),
    Document(
        key="bed-map",
        title="Bed map",
        says="every hole of every bed: what stands there, comes, goes, and what is free",
        weeks=1,
        make=bed_map,
    ),
    Document(
        key="feed-sheet",
        title="Daily feed sheet",
        says="feed by day for each tank, planned and given",
        weeks=4,
        make=feed_sheet,
    ),
    Document(
        key="water-log",
        title="Water-test log",
        says="tests, additions and the bands values should keep to, for each loop",
        weeks=4,
        make=water_log,
        landscape=True,
    ),
    Document(
        key="solids-card",
        title="Solids and mineraliser card",
        says="what was taken out, how it is kept, when and where it goes back",
        weeks=4,
        make=solids_card,
        paper=A5,
    ),
    Document(
        key="harvest-record",
        title="Harvest record",
        says="what is due to be picked, and what was picked, for whom",
        weeks=1,
        make=harvest_record,
        landscape=True,
    ),
    Document(
        key="fish-sampling",
        title="Fish sampling sheet",
        says="weighing fish, beside what the plan says they weigh",
        weeks=4,
        make=fish_sampling,
        landscape=True,
    ),
    Document(
        key="scouting",
        title="Scouting sheet",
        says="pests and disease, bed by bed",
        weeks=1,
        make=scouting,
        landscape=True,
    ),
    Document(
        key="maintenance",
        title="Maintenance calendar",
        says="what is looked after every how many weeks, for the wall",
        weeks=8,
        make=maintenance,
        paper=A3,
        landscape=True,
        for_walls=True,
    ),
    Document(
        key="emergency",
        title="Emergency card",
        says="what to do in a power cut; numbers, places, photos",
        weeks=1,
        make=emergency_card,
        paper=A5,
    ),
    Document(
        key="hand-over",
        title="Hand-over booklet",
        says="what was built, the first twelve weeks, whom to call; for the owner",
        weeks=12,
        make=hand_over,
    ),
    Document(
        key="monthly-report",
        title="Owner's monthly report",
        says="harvest, fish and water of the month, in plain sentences with three charts",
        weeks=4,
        make=monthly_report,
        looks_back=True,
    ),
    Document(
        key="season-plan",
        title="Season plan",
        says="all sowings, the balance and the harvest week by week, with assumptions and sources",
        weeks=26,
        make=season_plan,
        paper=A3,
        landscape=True,
    ),
    Document(
        key="year-poster",
        title="Year poster",
        says="what is sown and picked in each week of the year, by codes, for the wall (A3)",
        weeks=52,
        make=year_poster,
        paper=A3,
        for_walls=True,
    ),
    Document(
        key="shopping",
        title="Shopping list",
        says="seed, pots, feed, base and iron, by the month they are used in",
        weeks=13,
        make=shopping,
    ),
    Document(
        key="symptoms",
        title="Signs and first actions",
        says="what leaves and water show, what to note, what to do first",
        weeks=1,
        make=symptoms,
    ),
    Document(
        key="food-safety",
        title="Food-safety pack",
        says="logs an inspector asks for",
        weeks=1,
        make=food_safety,
        landscape=True,
    ),
)
"""All documents, in the order of the guide."""

BY_OTHER_COMMANDS: Final = (
    ("tray-labels", "raftweek labels FILE --kind tray --out OUT", "labels for trays and pots, by the sheet"),
    ("raft-tags", "raftweek labels FILE --kind raft --out OUT", "tags for rafts, by the sheet"),
)
"""What is printed label by label and not page by page: key, command, what it is for."""

PAPER_NAMES: Final = tuple(paper.name for paper in ALL_PAPERS)


def document_named(key: str) -> Document:
    """Return a document by its key.

    Raises:
        UnknownDocumentError: there is none of that key; the message says which there are.
    """
    for document in DOCUMENTS:
        if document.key == key:
            return document
    for other, command, _ in BY_OTHER_COMMANDS:
        if other == key:
            raise UnknownDocumentError(f'{key} are printed by "{command}".')
    known = ", ".join(document.key for document in DOCUMENTS)
    raise UnknownDocumentError(f'there is no document "{key}". There are: {known}.')
