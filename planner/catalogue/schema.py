"""Which figures each shelf holds, beyond those the farm's own classes declare.

Units and limits of crops, fish, feeds and supplements are those of `planner.farm.species`; here
stand the elements and how a loop is run, which no class of the farm carries.
"""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise
from typing import Any, Final

from planner.farm.fields import FieldKind, FieldSpec, specs_of
from planner.farm.species import ELEMENTS, Crop, Feed, FishSpecies, FishStage, Supplement

Owner = type[Crop] | type[FishSpecies] | type[FishStage] | type[Feed] | type[Supplement]


def _number(low: float, high: float, unit: str) -> FieldSpec:
    return FieldSpec(kind=FieldKind.NUMBER, low=low, high=high, unit=unit, needed=True)


ELEMENT_SPECS: Final = {
    "solids_share": _number(0, 1, "g/g"),
    "gas_loss_share": _number(0, 1, "g/g"),
    "mineral_limit_share": _number(0, 1, "g/g"),
    "mineral_rate_per_day": _number(0, 5, "1/d"),
}

LOOP_SPECS: Final = {
    "solids_captured_share": _number(0, 1, "g/g"),
    "top_up_share_per_day": _number(0, 0.5, "1/d"),
    "base_eq_per_kg_feed": _number(0, 10, "eq/kg"),
    "ph_target": _number(4, 10, "pH"),
    "ph_low": _number(4, 10, "pH"),
    "ph_high": _number(4, 10, "pH"),
    "tan_limit_mg_per_l": _number(0, 20, "mg/L"),
    "nitrite_n_limit_mg_per_l": _number(0, 20, "mg/L"),
    "nitrate_n_low_mg_per_l": _number(0, 1000, "mg/L"),
    "nitrate_n_high_mg_per_l": _number(0, 1000, "mg/L"),
    "oxygen_low_mg_per_l": _number(0, 20, "mg/L"),
    "water_low_c": _number(0, 45, "°C"),
    "water_high_c": _number(0, 45, "°C"),
    "ph_step_per_day": _number(0, 3, "pH"),
    "turnover_per_hour": _number(0, 20, "1/h"),
    "tds_per_ec": _number(0.3, 1, "mg/L per µS/cm"),
}

FEED_RATE_SPECS: Final = {
    name: _number(1, 500, "g/m²/d") for name in ("fao_leafy", "fao_fruiting", "uvi_raft")
}

WATER_SPECS: Final = {element: _number(0, 1000, "mg/L") for element in ELEMENTS}
"""Concentration of each element, in make-up water or wanted in the loop."""

WATERS: Final = {"solution": ("leafy", "fruiting"), "make_up": ("tap", "rain")}


_WEIGHT_SPANS: Final = ("for_fish_from_g", "for_fish_to_g", "up_to_g")


def _figures_of(owner: Owner) -> dict[str, FieldSpec]:
    specs = specs_of(owner).items()
    return {name: spec for name, spec in specs if spec.kind is FieldKind.NUMBER and name not in _WEIGHT_SPANS}


def _words_of(owner: Owner) -> dict[str, FieldSpec]:
    return {name: spec for name, spec in specs_of(owner).items() if spec.kind is not FieldKind.NUMBER}


_OWNERS: Final[tuple[Owner, ...]] = (Crop, FishSpecies, FishStage, Feed, Supplement)

FIGURE_SPECS: Final[Mapping[Owner, Mapping[str, FieldSpec]]] = {
    owner: _figures_of(owner) for owner in _OWNERS
}
"""The fields of a class that are figures, but for weight spans, which only sort."""

WORD_SPECS: Final[Mapping[Owner, Mapping[str, FieldSpec]]] = {owner: _words_of(owner) for owner in _OWNERS}
"""The fields of a class that are not figures: names, texts, choices."""

RISING: Final[Mapping[str, tuple[tuple[str, ...], ...]]] = {
    "crop": (
        ("base_c", "optimum_c", "ceiling_c"),
        ("germination_base_c", "germination_optimum_c", "germination_ceiling_c"),
    ),
    "fish": (
        ("lethal_low_c", "base_c", "optimum_c", "ceiling_c", "lethal_high_c"),
        ("ph_low", "ph_high"),
    ),
    "feed": (("for_fish_from_g", "for_fish_to_g"),),
    "supplement": (),
}
"""Figures of an entry that must rise in this order."""


def out_of_order(shelf: str, values: Mapping[str, Any]) -> tuple[str, str] | None:
    """Return the first two figures of an entry that do not rise as they must, or None."""
    for names in RISING[shelf]:
        for lower, upper in pairwise(names):
            if not values[lower] < values[upper]:
                return lower, upper
    return None
