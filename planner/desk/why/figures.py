"""The answer for a figure of the catalogue itself: value, range, conditions, publication, what was before.

Must know nothing of widgets.
"""

from __future__ import annotations

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Confidence, Figure
from planner.desk.book import told_words, value_words
from planner.forecast.verify.run import publication_line
from planner.forecast.why.formulas import Formula
from planner.forecast.why.ground import figure_input
from planner.forecast.why.values import Explanation, Note, NoteKind


def figure_answer(catalogue: Catalogue, book: Catalogue, path: str, *, title: str, about: str) -> Explanation:
    """Return what stands behind a figure of a catalogue, own entries and all; `book` has none of those.

    Raises `UnknownFigureError` for a figure that is not there.
    """
    figure, before = catalogue.figure(path), book.figures.get(path)
    own = figure.confidence is Confidence.GROWERS_VALUE
    return Explanation(
        title=title,
        about=about,
        value=figure.value,
        unit=figure.unit,
        formula=Formula.OWN_VALUE if own else Formula.OF_BOOK,
        inputs=(figure_input(catalogue, "value", path),),
        notes=(
            *_published(catalogue, figure),
            *_said(figure),
            *(_before(book, before) if own and before is not None else ()),
        ),
    )


def _published(catalogue: Catalogue, figure: Figure) -> tuple[Note, ...]:
    if figure.source not in catalogue.publications:
        return ()
    return (Note(kind=NoteKind.PUBLISHED, values=(("line", publication_line(catalogue, figure.source)),)),)


def _said(figure: Figure) -> tuple[Note, ...]:
    return (Note(kind=NoteKind.SAID, values=(("words", figure.note),)),) if figure.note else ()


def _before(book: Catalogue, before: Figure) -> tuple[Note, ...]:
    """Return what a figure was before an own value was laid over it, and who says that."""
    told = (
        ("value", value_words(before)),
        ("source", told_words(before.source, before.confidence.value, book)),
    )
    return (Note(kind=NoteKind.BEFORE_OWN, values=told), *_published(book, before))
