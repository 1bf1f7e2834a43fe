"""What a computation may ask for: the inputs of its case and the shipped figures, both written down.

Inputs that a computation never asks for are a mistake in the case; figures it asked for are shown with
the result.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Final, TypeVar

import numpy as np

from planner.catalogue.catalogue import Catalogue, Emergence, FeedingTable
from planner.catalogue.errors import CatalogueError, UnknownFigureError, known_words
from planner.farm.species import Crop, FishSpecies
from planner.forecast.values import Floats
from planner.forecast.verify.cases import Case, Input

E = TypeVar("E")
MASSES: Final = "coefficient/atomic_masses/atomic_mass_"


def case_error(case: Case, name: str, message: str) -> CatalogueError:
    """Return the error for a field of a case; the caller raises it."""
    return CatalogueError(message, file=f"verify/{case.area}.toml", key=case.key, field=name)


class Inputs:
    """The named values of one case; asking for one that is missing or of another kind is refused."""

    def __init__(self, case: Case) -> None:
        """Take the case the inputs belong to."""
        self._case = case
        self._values: Mapping[str, Input] = dict(case.inputs)
        self._asked: set[str] = set()

    def number(self, name: str) -> float:
        """Return a number."""
        value = self._value(name)
        if not isinstance(value, float):
            raise case_error(self._case, f"inputs.{name}", f"is {value!r}, but must be a number")
        return value

    def has(self, name: str) -> bool:
        """Return whether there is an input of a name."""
        return name in self._values

    def whole(self, name: str) -> int:
        """Return a whole number."""
        value = self.number(name)
        if not value.is_integer():
            raise case_error(self._case, f"inputs.{name}", f"is {value:g}, but must be a whole number")
        return int(value)

    def numbers(self, name: str) -> Floats:
        """Return a list of numbers as an array."""
        value = self._value(name)
        if not isinstance(value, tuple):
            raise case_error(self._case, f"inputs.{name}", f"is {value!r}, but must be a list of numbers")
        return np.asarray(value, dtype=np.float64)

    def text(self, name: str) -> str:
        """Return a text."""
        value = self._value(name)
        if not isinstance(value, str):
            raise case_error(self._case, f"inputs.{name}", f"is {value!r}, but must be text")
        return value

    def pick(self, series: Floats, name: str) -> float:
        """Return the entry of a series whose number, counted from 0, is an input."""
        index = self.whole(name)
        if not 0 <= index < series.size:
            limit = f"0 to {series.size - 1}"
            raise case_error(self._case, f"inputs.{name}", f"is {index}, but must be within {limit}")
        return float(series[index])

    def refuse_unused(self) -> None:
        """Refuse inputs that the computation had no use for."""
        for name in self._values:
            if name not in self._asked:
                words = known_words(name, self._asked)
                raise case_error(
                    self._case, f"inputs.{name}", f"is not used by {self._case.formula}. {words}"
                )

    def _value(self, name: str) -> Input:
        if name not in self._values:
            raise case_error(self._case, f"inputs.{name}", "is missing")
        self._asked.add(name)
        return self._values[name]


@dataclass(frozen=True, slots=True)
class Ledger:
    """The shipped figures; every one that is asked for is written down in `used`, with its source."""

    catalogue: Catalogue
    used: dict[str, str] = field(default_factory=dict)

    def value(self, path: str) -> float:
        """Return the likely value of a figure such as `coefficient/water/carbonic_pk1`."""
        found = self.catalogue.figure(path)
        self._note(path, found.source)
        return found.value

    def note_shelf(self, shelf: str, fields: Collection[str] = ()) -> None:
        """Write down the figures below a path such as `fish/nile-tilapia`, all or those of some fields."""
        for path, figure in self.catalogue.figures.items():
            if path.startswith(f"{shelf}/") and (not fields or path.rpartition("/")[2] in fields):
                self._note(path, figure.source)

    def drawn_from(self, source: str) -> tuple[str, ...]:
        """Return the figures written down that come from a publication."""
        return tuple(path for path, own in self.used.items() if own == source)

    def coefficient(self, name: str) -> float:
        """Return a coefficient such as `water/carbonic_pk1`."""
        return self.value(f"coefficient/{name}")

    def atomic_masses(self) -> Mapping[str, float]:
        """Return atomic masses by symbol [g/mol]; those looked up are used."""
        paths = [path for path in self.catalogue.figures if path.startswith(MASSES)]
        return _Masses(self, {path.removeprefix(MASSES).capitalize(): path for path in paths})

    def crop(self, key: str, *fields: str) -> Crop:
        """Return a crop whose named fields are used."""
        return self._entry(self.catalogue.crops, "crop", key, fields)

    def fish(self, key: str, *fields: str) -> FishSpecies:
        """Return a fish whose named fields are used."""
        return self._entry(self.catalogue.fish, "fish", key, fields)

    def emergence(self, crop: str) -> Emergence:
        """Return the emergence table of a crop."""
        return self._entry(self.catalogue.emergence, "emergence", crop)

    def feeding_table(self, key: str) -> FeedingTable:
        """Return a feeding table."""
        return self._entry(self.catalogue.feeding_tables, "feeding table", key)

    def _entry(self, shelf: Mapping[str, E], word: str, key: str, fields: tuple[str, ...] = ()) -> E:
        if key not in shelf:
            raise UnknownFigureError(f"no {word} {key}. {known_words(key, shelf)}")
        found = shelf[key]
        if not fields:
            self._note(f"{word}/{key}", str(getattr(found, "source", "")))
        for path in (f"{word}/{key}/{name}" for name in fields):
            self._note(path, self.catalogue.figure(path).source)
        return found

    def _note(self, path: str, source: str) -> None:
        self.used.setdefault(path, source)


class _Masses(Mapping[str, float]):
    """Atomic masses that write down which of them are looked up."""

    def __init__(self, ledger: Ledger, paths: Mapping[str, str]) -> None:
        self._ledger = ledger
        self._paths = paths

    def __getitem__(self, symbol: str) -> float:
        return self._ledger.value(self._paths[symbol])

    def __iter__(self) -> Iterator[str]:
        return iter(self._paths)

    def __len__(self) -> int:
        return len(self._paths)


Computation = Callable[[Inputs, Ledger], float]
