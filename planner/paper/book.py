"""What paper asks of the catalogue: names, cautions, publications and where a figure comes from."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Protocol


class FigureFacts(Protocol):
    """Where one figure comes from and how sure it is."""

    @property
    def source(self) -> str:
        """Key of a publication, or nothing."""

    @property
    def confidence(self) -> object:
        """How the figure is known, a word or an enum of words."""


class CautionFacts(Protocol):
    """A caution in words."""

    @property
    def topic(self) -> str:
        """What it is about."""

    @property
    def text(self) -> str:
        """What to do and not to do."""


class PublicationFacts(Protocol):
    """A publication as it is cited."""

    @property
    def authors(self) -> str:
        """Who wrote it."""

    @property
    def year(self) -> int:
        """When it appeared."""

    @property
    def title(self) -> str:
        """What it is called."""

    @property
    def where(self) -> str:
        """Where it appeared."""


class Book(Protocol):
    """The catalogue as paper reads it."""

    @property
    def cautions(self) -> Mapping[str, CautionFacts]:
        """Cautions by key."""

    @property
    def publications(self) -> Mapping[str, PublicationFacts]:
        """Publications by key."""

    def figure(self, path: str) -> FigureFacts:
        """Return the figure at a path such as crop/basil/bed_days; raises `KeyError` for none."""
