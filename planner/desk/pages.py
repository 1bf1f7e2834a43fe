"""What a page of the side panel is made of: facts, figures and warnings under headings, as values."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date

from planner.catalogue.figure import Figure
from planner.desk.book import FigureWords
from planner.farm.fields import Id
from planner.forecast.why.values import Explanation, Subject


@dataclass(frozen=True, slots=True, kw_only=True)
class Basis:
    """The figures of the catalogue that a number stands on, where no sum of it is kept."""

    figures: tuple[Figure, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Entered:
    """What the grower typed into a field of a thing of the farm; the answer is found when it is asked."""

    about: Id
    field: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Summed:
    """A sum of numbers that can be asked one by one; `parts` holds what each is asked and how much it is.

    `title` is the English text of a title, as that of an explanation.
    """

    title: str
    unit: str
    parts: tuple[tuple[Subject | Entered, float], ...]
    about: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Shifted:
    """How many days lie between two days; `ask` is why one is what it is, `beside` what comes of it."""

    title: str
    ask: Subject | Entered
    old_on: date
    new_on: date
    beside: tuple[Explanation, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Unsure:
    """How sure a figure is: its range, or the chance of at least so much of it."""

    of: Subject
    at_least: float | None = None


@dataclass(frozen=True, slots=True)
class Later:
    """An answer about a plan by the name of its figure; it is made when it is asked."""

    name: str
    make: Callable[[], Explanation]


LateAsk = Subject | Entered | Summed | Shifted | Unsure
"""What is answered when it is asked."""
Ask = LateAsk | Basis | Explanation | Later
"""What "why?" can be asked about; a ready explanation is shown as it is."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Fact:
    """One line: what, how much, and what more is to be known; `ask` is what "why?" is asked about.

    `more` are numbers that stand below the note in small, each asked by itself.
    """

    label: str
    value: str
    note: str = ""
    ask: Ask | None = None
    more: tuple[Fact, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """Facts under a heading; figures carry their source, warnings stand out, cautions stand below.

    A warning is a fact without a label, so that it can be asked why it is given.
    """

    title: str
    facts: tuple[Fact, ...] = ()
    figures: tuple[FigureWords, ...] = ()
    warnings: tuple[Fact, ...] = ()
    cautions: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Page:
    """Everything the side panel shows."""

    title: str
    subtitle: str
    sections: tuple[Section, ...]

    @property
    def askable(self) -> tuple[Fact, ...]:
        """The facts that can be asked why, in the order they are shown."""
        shown = (fact for section in self.sections for fact in (*section.warnings, *section.facts))
        return tuple(each for fact in shown for each in (fact, *fact.more) if each.ask is not None)
