"""Lays a second language beside the headings of a report; a heading without a word stays as it is.

A caution is told whole in the second language, with the English below it: whoever reads only one of the two
shall have all of it, and nobody relies on words that no native speaker has checked.

Must not know layout, files or single documents.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import Final

from planner.paper.linguist import form_pattern
from planner.paper.report import (
    Caution,
    Cell,
    Line,
    Paragraph,
    Part,
    Report,
    RowGroup,
    Section,
    Table,
    Tone,
)
from planner.paper.words import NO_BREAK

_BESIDE: Final = " · "
_OF: Final = ", "
NOT_REVIEWED: Final = (
    "Second language: {name}, not yet checked by a native speaker. Where in doubt the English counts."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class SecondLanguage:
    """Words of a language by the English heading; `reviewed` when a native speaker has checked them.

    `sentences` are whole texts, such as those of cautions, by the English text. `texts` are lines, units and
    paragraphs; one with blanks in braces stands for all that differ in nothing else. On a sheet that hangs
    on a wall it is `loud`: as large as the English.
    """

    name: str
    reviewed: bool
    words: Mapping[str, str]
    sentences: Mapping[str, str] = field(default_factory=dict)
    texts: Mapping[str, str] = field(default_factory=dict)
    loud: bool = False

    def beside(self, text: str) -> str:
        """Return a heading with its word in the second language beside it.

        Of a heading such as "Harvest, Okra" the first word is told twice; what comes after is a name.
        """
        head, comma, name = (text, "", "") if text in self.words else text.partition(_OF)
        word = self.words.get(head)
        return f"{head}{_BESIDE}{word}{comma}{name}" if word else text

    def told(self, text: str) -> str:
        """Return a line or paragraph in the second language; empty when there is none."""
        plain = text.replace(NO_BREAK, " ")
        if plain in self.texts:
            return self.texts[plain]
        for form, said in self.texts.items():
            match = form_pattern(form).fullmatch(plain) if "{" in form else None
            if match is not None:
                return said.format(**match.groupdict())
        return ""

    def both(self, text: str) -> str:
        """Return a short text with the second language beside it."""
        said = self.told(text)
        return f"{text}{_BESIDE}{said}" if said and said != text else text


def in_two_languages(report: Report, second: SecondLanguage) -> Report:
    """Return a report whose headings are told twice; it says so when nobody has checked the words."""
    second = replace(second, loud=report.large)
    note = () if second.reviewed else (NOT_REVIEWED.format(name=second.name),)
    return replace(
        report,
        title=second.beside(report.title),
        header_lines=(*(line for each in report.header_lines for line in _twice(each, second)), *note),
        sections=tuple(done for section in report.sections for done in _sections(section, second)),
    )


def _sections(section: Section, second: SecondLanguage) -> tuple[Section, ...]:
    """Return a section in both languages, as two where they are told apart."""
    if not section.apart:
        return (_section(section, second),)
    alone = tuple(_alone(part, second) for part in section.parts)
    return (section, replace(section, parts=alone, new_page=True))


def _alone(part: Part, second: SecondLanguage) -> Part:
    """Return a table in the second language; what it has no words for stays English."""
    if not isinstance(part, Table):
        return part
    groups = tuple(
        replace(group, rows=tuple(tuple(_said_in(cell, second) for cell in row) for row in group.rows))
        for group in part.groups
    )
    return replace(part, groups=groups)


def _said_in(cell: Cell, second: SecondLanguage) -> Cell:
    lines = tuple(replace(line, text=second.told(line.text) or line.text) for line in cell.lines)
    return replace(cell, lines=lines)


def _section(section: Section, second: SecondLanguage) -> Section:
    return replace(
        section,
        heading=second.beside(section.heading),
        parts=tuple(part for each in section.parts for part in _parts(each, second)),
    )


def _twice(text: str, second: SecondLanguage) -> tuple[str, ...]:
    """Return a text, and the same in the second language where it has a word for it that differs."""
    said = second.told(text)
    return (text, said) if said and said != text else (text,)


def _parts(part: Part, second: SecondLanguage) -> tuple[Part, ...]:
    """Return a part in both languages; running text is told in two paragraphs."""
    if isinstance(part, Paragraph) and not (part.leads and part.tone is Tone.STRONG):
        return tuple(replace(part, text=text) for text in _twice(part.text, second))
    return (_part(part, second),)


def _part(part: Part, second: SecondLanguage) -> Part:
    if isinstance(part, Caution):
        return replace(part, title=second.beside(part.title), second=second.sentences.get(part.text, ""))
    if isinstance(part, Paragraph):
        return replace(part, text=second.beside(part.text))
    if not isinstance(part, Table):
        return part
    columns = tuple(
        replace(column, second=second.words.get(column.heading, ""), unit=second.both(column.unit))
        for column in part.columns
    )
    return replace(part, columns=columns, groups=tuple(_group(group, second) for group in part.groups))


def _group(group: RowGroup, second: SecondLanguage) -> RowGroup:
    return replace(
        group,
        heading=second.beside(group.heading),
        detail=second.both(group.detail),
        empty=second.both(group.empty),
        rows=tuple(tuple(_cell(cell, second) for cell in row) for row in group.rows),
    )


def _cell(cell: Cell, second: SecondLanguage) -> Cell:
    return replace(cell, lines=tuple(line for each in cell.lines for line in _lines(each, second)))


def _lines(line: Line, second: SecondLanguage) -> tuple[Line, ...]:
    """Return a line, and below it the same in the second language: bold where it is bold."""
    tone = line.tone if second.loud or line.tone is Tone.DETAIL else Tone.STRONG
    english, *more = _twice(line.text, second)
    return (replace(line, text=english), *(Line(text=text, tone=tone) for text in more))
