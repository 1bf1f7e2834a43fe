"""Lays a second language beside the headings of a report; a heading without a word stays as it is.

A caution is told whole in the second language, with the English below it: whoever reads only one of the two
shall have all of it, and nobody relies on words that no native speaker has checked.

Must not know layout, files or single documents.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Final

from planner.paper.report import Caution, Paragraph, Part, Report, RowGroup, Section, Table, Tone

_BESIDE: Final = " · "
_OF: Final = ", "
NOT_REVIEWED: Final = (
    "Second language: {name}, not yet checked by a native speaker. Where in doubt the English counts."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class SecondLanguage:
    """Words of a language by the English heading; `reviewed` when a native speaker has checked them.

    `sentences` are whole texts, such as those of cautions, by the English text.
    """

    name: str
    reviewed: bool
    words: Mapping[str, str]
    sentences: Mapping[str, str] = field(default_factory=dict)

    def beside(self, text: str) -> str:
        """Return a heading with its word in the second language beside it.

        Of a heading such as "Harvest, Okra" the first word is told twice; what comes after is a name.
        """
        head, comma, name = (text, "", "") if text in self.words else text.partition(_OF)
        word = self.words.get(head)
        return f"{head}{_BESIDE}{word}{comma}{name}" if word else text


def in_two_languages(report: Report, second: SecondLanguage) -> Report:
    """Return a report whose headings are told twice; it says so when nobody has checked the words."""
    note = () if second.reviewed else (NOT_REVIEWED.format(name=second.name),)
    return replace(
        report,
        title=second.beside(report.title),
        header_lines=(*report.header_lines, *note),
        sections=tuple(_section(section, second) for section in report.sections),
    )


def _section(section: Section, second: SecondLanguage) -> Section:
    return replace(
        section,
        heading=second.beside(section.heading),
        parts=tuple(_part(part, second) for part in section.parts),
    )


def _part(part: Part, second: SecondLanguage) -> Part:
    if isinstance(part, Caution):
        return replace(part, title=second.beside(part.title), second=second.sentences.get(part.text, ""))
    if isinstance(part, Paragraph) and part.leads and part.tone is Tone.STRONG:
        return replace(part, text=second.beside(part.text))
    if not isinstance(part, Table):
        return part
    columns = tuple(replace(column, second=second.words.get(column.heading, "")) for column in part.columns)
    return replace(part, columns=columns, groups=tuple(_group(group, second) for group in part.groups))


def _group(group: RowGroup, second: SecondLanguage) -> RowGroup:
    return replace(group, heading=second.beside(group.heading))
