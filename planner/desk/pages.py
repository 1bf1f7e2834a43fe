"""What a page of the side panel is made of: facts, figures and warnings under headings, as values."""

from __future__ import annotations

from dataclasses import dataclass

from planner.desk.book import FigureWords


@dataclass(frozen=True, slots=True, kw_only=True)
class Fact:
    """One line: what, how much, and what more is to be known."""

    label: str
    value: str
    note: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Section:
    """Facts under a heading; figures carry their source, warnings stand out."""

    title: str
    facts: tuple[Fact, ...] = ()
    figures: tuple[FigureWords, ...] = ()
    warnings: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Page:
    """Everything the side panel shows."""

    title: str
    subtitle: str
    sections: tuple[Section, ...]
