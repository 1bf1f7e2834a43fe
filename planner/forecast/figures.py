"""The coefficients the forecast goes by, taken from the catalogue once and handed on by name."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.farm.site import AreaRule
from planner.farm.species import ELEMENTS
from planner.forecast.values import Floats

_PROTEIN_PER_NITROGEN = "coefficient/feed_split/protein_per_nitrogen"
_DISSOLVING = "coefficient/feed_split/dissolving_share_where_gas_was_found"


@dataclass(frozen=True, slots=True, kw_only=True)
class SupplyFigures:
    """How feed turns into what plants can take; shares have one entry per element."""

    protein_per_nitrogen: float
    solids_share: Floats
    gas_loss_share: Floats
    dissolving_share: float
    top_up_share_per_day: float


@dataclass(frozen=True, slots=True, kw_only=True)
class BandFigures:
    """Where supply counts as short, thin or ample, and the published feed-rate bands [g/m²/d].

    `reference_protein_share` is the protein the published leafy and fruiting bands hold for.
    """

    short_below: float
    thin_below: float
    ample_above: float
    fao_leafy: tuple[float, float]
    fao_fruiting: tuple[float, float]
    uvi_raft: tuple[float, float]
    reference_protein_share: float

    def of_rule(self, rule: AreaRule) -> tuple[tuple[float, float], tuple[float, float]]:
        """Return least and most feed for leafy and for fruiting area by a rule [g/m²/d]."""
        if rule is AreaRule.FAO:
            return self.fao_leafy, self.fao_fruiting
        return self.uvi_raft, self.uvi_raft

    def protein_ratio(self, rule: AreaRule, protein_share: Floats) -> Floats:
        """Return how much more protein feed has than the bands of a rule hold for; UVI's names none."""
        known = rule is AreaRule.FAO
        return protein_share / self.reference_protein_share if known else np.ones_like(protein_share)


def supply_figures(catalogue: Catalogue) -> SupplyFigures:
    """Return the figures of supply as the catalogue has them."""
    return SupplyFigures(
        protein_per_nitrogen=catalogue.figure(_PROTEIN_PER_NITROGEN).value,
        solids_share=_by_element(catalogue, "solids_share"),
        gas_loss_share=_by_element(catalogue, "gas_loss_share"),
        dissolving_share=catalogue.figure(_DISSOLVING).value,
        top_up_share_per_day=catalogue.figure("loop/top_up_share_per_day").value,
    )


def _by_element(catalogue: Catalogue, name: str) -> Floats:
    return np.asarray([catalogue.figure(f"element/{element}/{name}").value for element in ELEMENTS])


def band_figures(catalogue: Catalogue) -> BandFigures:
    """Return the bands as the catalogue has them."""
    return BandFigures(
        short_below=catalogue.figure("coefficient/verdict/short_below").value,
        thin_below=catalogue.figure("coefficient/verdict/thin_below").value,
        ample_above=catalogue.figure("coefficient/verdict/ample_above").value,
        fao_leafy=_band(catalogue, "fao_leafy"),
        fao_fruiting=_band(catalogue, "fao_fruiting"),
        uvi_raft=_band(catalogue, "uvi_raft"),
        reference_protein_share=catalogue.figure("coefficient/sizing/ratio_reference_protein_share").value,
    )


def _band(catalogue: Catalogue, name: str) -> tuple[float, float]:
    figure = catalogue.figure(f"feed_rate/{name}")
    return figure.low, figure.high
