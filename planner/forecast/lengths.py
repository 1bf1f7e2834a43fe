"""What fish of a length weigh, with how little that says: between fish of one length much differs."""

from __future__ import annotations

from dataclasses import dataclass

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.science.fish import weight_from_length


@dataclass(frozen=True, slots=True, kw_only=True)
class LengthWeight:
    """Mean weight [g] of fish of a length [cm], low and high by the spread of the factor, and its row."""

    low_g: float
    likely_g: float
    high_g: float
    factor: Figure


def weight_of_length(catalogue: Catalogue, species: str, *, length_cm: float) -> LengthWeight:
    """Return what fish of a species weigh at a total length [cm]; a weighed sample is always better.

    Raises `UnknownFigureError` for a species that is not in the catalogue, `ValueError` for a length
    that is not above 0 cm, or so long that no series of the species tells of fish as heavy.
    """
    factor = catalogue.figure(f"fish/{species}/length_weight_a")
    exponent = catalogue.figure(f"fish/{species}/length_weight_b").value
    low, likely, high = (
        weight_from_length(length_cm, factor=value, exponent=exponent)
        for value in (factor.low, factor.value, factor.high)
    )
    fish = catalogue.fish[species]
    heaviest_g = max(stage.up_to_g for stage in fish.stages[:-1]) if len(fish.stages) > 1 else likely
    if likely > heaviest_g:
        raise ValueError(
            f"length is {length_cm:g} cm; a {fish.name} as long would weigh {likely:,.0f} g, and the figures "
            f"tell of fish of at most {heaviest_g:,g} g"
        )
    return LengthWeight(low_g=low, likely_g=likely, high_g=high, factor=factor)
