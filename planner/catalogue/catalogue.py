"""The catalogue as one frozen value: entries by key, figures by path.

Must not know where it was read from, nor what is done with it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from planner.catalogue.errors import UnknownFigureError, known_words, near_misses
from planner.catalogue.figure import Confidence, Figure
from planner.farm.species import Crop, Feed, FishSpecies, Supplement


@dataclass(frozen=True, slots=True, kw_only=True)
class Publication:
    """Where a figure was found; `note` says how far it was seen."""

    key: str
    authors: str
    year: int
    title: str
    where: str
    note: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Caution:
    """A warning that is shown and printed where the risk arises."""

    key: str
    topic: str
    text: str
    where: tuple[str, ...]
    basis: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ElementSplit:
    """What becomes of one element of the feed; shares are of the feed's content.

    `mineral_limit_share` of the solids is set free in the end, at `mineral_rate_per_day`.
    """

    key: str
    name: str
    solids_share: float
    gas_loss_share: float
    mineral_limit_share: float
    mineral_rate_per_day: float


@dataclass(frozen=True, slots=True, kw_only=True)
class FeedingTable:
    """Percent of body weight a day: one row per temperature, one column per weight."""

    key: str
    name: str
    species: str
    weights_g: tuple[float, ...]
    temperatures_c: tuple[float, ...]
    percent_per_day: tuple[tuple[float, ...], ...]
    source: str
    confidence: Confidence
    conditions: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Emergence:
    """Days to emergence and percent of normal seedlings as (temperature °C, value) pairs.

    `none_c` are temperatures at which nothing came up.
    """

    key: str
    crops: tuple[str, ...]
    days: tuple[tuple[float, float], ...]
    none_c: tuple[float, ...]
    normal_percent: tuple[tuple[float, float], ...]
    source: str
    confidence: Confidence
    conditions: str


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class Catalogue:
    """Everything that can be looked up. `emergence` is by crop key, all else by own key."""

    crops: Mapping[str, Crop]
    fish: Mapping[str, FishSpecies]
    feeds: Mapping[str, Feed]
    supplements: Mapping[str, Supplement]
    feeding_tables: Mapping[str, FeedingTable]
    emergence: Mapping[str, Emergence]
    elements: Mapping[str, ElementSplit]
    cautions: Mapping[str, Caution]
    publications: Mapping[str, Publication]
    figures: Mapping[str, Figure]

    def figure(self, path: str) -> Figure:
        """Return the figure at a path such as `crop/basil/bed_days`.

        Raises:
            UnknownFigureError: there is none; the message lists the figures beside it.
        """
        found = self.figures.get(path)
        if found is None:
            raise UnknownFigureError(self._nothing_at(path))
        return found

    def _nothing_at(self, path: str) -> str:
        shelf, _, name = path.rpartition("/")
        beside = [other.rpartition("/")[2] for other in self.figures if other.rpartition("/")[0] == shelf]
        if beside:
            return f"no figure {path}. {known_words(name, beside)}"
        near = near_misses(path, self.figures)
        return f"no figure {path}." + (f" Did you mean {' or '.join(near)}?" if near else "")
