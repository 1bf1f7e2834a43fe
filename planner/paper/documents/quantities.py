"""What is measured in the water, in words, and the bands that values should keep to.

Must not know documents.
"""

from __future__ import annotations

from typing import Final

from planner.catalogue.figure import Figure
from planner.farm.water import Quantity
from planner.forecast.water.targets import TargetBand
from planner.paper.words import EN_DASH, NO_BREAK

QUANTITY_NAMES: Final = {
    Quantity.PH: "pH",
    Quantity.WATER_C: "water temperature",
    Quantity.AIR_C: "air temperature",
    Quantity.EC_MS_PER_CM: "conductivity",
    Quantity.TDS_MG_PER_L: "dissolved solids",
    Quantity.TAN_MG_PER_L: "ammonia (TAN)",
    Quantity.NITRITE_N_MG_PER_L: "nitrite",
    Quantity.NITRATE_N_MG_PER_L: "nitrate",
    Quantity.ALKALINITY_MG_PER_L: "alkalinity (KH)",
    Quantity.OXYGEN_MG_PER_L: "oxygen",
    Quantity.P_MG_PER_L: "phosphorus",
    Quantity.K_MG_PER_L: "potassium",
    Quantity.CA_MG_PER_L: "calcium",
    Quantity.MG_MG_PER_L: "magnesium",
    Quantity.FE_MG_PER_L: "iron",
    Quantity.TOP_UP_L: "water topped up",
}
UNITS: Final = {
    Quantity.PH: "",
    Quantity.WATER_C: "°C",
    Quantity.AIR_C: "°C",
    Quantity.EC_MS_PER_CM: "mS/cm",
    Quantity.TAN_MG_PER_L: "mg/L N",
    Quantity.NITRITE_N_MG_PER_L: "mg/L N",
    Quantity.NITRATE_N_MG_PER_L: "mg/L N",
    Quantity.ALKALINITY_MG_PER_L: "mg/L CaCO₃",
    Quantity.TOP_UP_L: "L",
}


def unit_of(quantity: Quantity) -> str:
    """Return the unit a quantity is written in."""
    return UNITS.get(quantity, "mg/L")


def band_words(band: TargetBand | None) -> str:
    """Return a band as it stands in a heading: from – to, at least, or at most."""
    if band is None:
        return ""
    if band.low is None:
        return f"≤{NO_BREAK}{_short(band.high)}"
    if band.high is None:
        return f"≥{NO_BREAK}{_short(band.low)}"
    return f"{_short(band.low)}{EN_DASH}{_short(band.high)}"


def _short(figure: Figure | None) -> str:
    return "" if figure is None else f"{figure.value:g}"
