"""One figure with everything a grower needs to trust or doubt it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Confidence(StrEnum):
    """How a figure is held."""

    READ = "read"
    MEMORY = "memory"
    COMMON_PRACTICE = "common practice"
    GROWERS_VALUE = "grower's value"


@dataclass(frozen=True, slots=True, kw_only=True)
class Figure:
    """A likely value with its spread, unit, conditions and source.

    `path` says where it stands, such as `crop/basil/bed_days`. `source` is a key of the
    publications, or empty when the figure is common practice, from memory or the grower's own.
    """

    path: str
    value: float
    low: float
    high: float
    unit: str
    conditions: str
    source: str
    confidence: Confidence
    note: str = ""
