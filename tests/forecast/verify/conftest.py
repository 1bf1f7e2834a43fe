"""Tables of cases as a file would hold them, to be spoiled one way at a time."""

from __future__ import annotations

from typing import Any

import pytest


@pytest.fixture
def case() -> dict[str, Any]:
    """One case: 2 kg of 32 % feed gives 58.9 g of ammonia nitrogen."""
    return {
        "key": "tan",
        "title": "Ammonia nitrogen of feed",
        "formula": "ammonia_of_feed",
        "inputs": {"feed_g": 2000, "protein_share": 0.32},
        "unit": "g/d",
        "published": 58.9,
        "tolerance": 0.05,
        "reason": "rounding of the print",
        "source": "ksu2021",
        "confidence": "read",
    }


@pytest.fixture
def table() -> dict[str, Any]:
    """A printed table of two rows."""
    return {
        "key": "pka",
        "title": "Acidity at {temperature_c} °C",
        "formula": "ammonium_pka",
        "unit": "1",
        "tolerance": 0.00005,
        "reason": "exact arithmetic",
        "source": "emerson1975",
        "confidence": "derived",
        "columns": ["temperature_c", "published"],
        "rows": [[20, 9.4025], [25, 9.2464]],
    }


@pytest.fixture
def lacking() -> dict[str, Any]:
    """A published result that the program cannot work out."""
    return {
        "key": "ph",
        "title": "Lettuce at pH 7 and 5.8",
        "published": "no difference",
        "lacks": "The model has no pH in it.",
        "source": "ksu2021",
        "confidence": "read",
    }
