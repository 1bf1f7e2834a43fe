"""Salts that fill a gap of an element, and what else they bring into the water.

Iron has its own module. Must not know fish, beds or dates.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.farm.species import ELEMENTS, Supplement
from planner.forecast.values import LoopForecast, Ruler
from planner.forecast.water.chemistry import Chemistry, chemistry_of, readable_atoms
from planner.forecast.water.spans import Span
from planner.science.compounds import molar_mass

_G_PER_KG: Final = 1000.0
_TINY_G: Final = 1e-9
_IONS: Final = {"sulfate": ("S", "SO4"), "chloride": ("Cl", "Cl"), "sodium": ("Na", "Na")}
"""Ions that come along, by the atom that tells of them and what is weighed."""


@dataclass(frozen=True, slots=True, kw_only=True)
class GapFill:
    """Grams of one product that fill a gap of one element.

    `brings_g` are all elements in the order of `ELEMENTS` for the likely grams, the wanted one included.
    `ions_g` are sulfate, chloride and sodium; None when the formula does not tell.
    """

    supplement: str
    element: str
    grams: Span
    brings_g: tuple[float, ...]
    base_eq: float
    ions_g: Mapping[str, float] | None
    cautions: tuple[str, ...]
    basis: tuple[Figure, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class SaltAdvice:
    """Products chosen for gaps, and the gaps nothing owned fills, in the order of `ELEMENTS`."""

    fills: tuple[GapFill, ...]
    unfilled_g: tuple[float, ...]


def gaps_by_element(found: LoopForecast, ruler: Ruler, *, first_week: int, weeks: int) -> dict[str, float]:
    """Return what crops want beyond supply, mean grams a week over some weeks, by element."""
    last = min(first_week + weeks, ruler.weeks)
    wanted, given = (
        ruler.weekly_sum(values)[:, first_week:last].mean(axis=1)
        for values in (found.demand_g, found.supply_g)
    )
    return {name: max(float(wanted[row] - given[row]), 0.0) for row, name in enumerate(ELEMENTS)}


def fill_gap(
    element: str, gap_g: float, *, owned: Iterable[str], catalogue: Catalogue
) -> tuple[GapFill, ...]:
    """Return every owned way to fill a gap, the one with the fewest side effects first.

    gap_g [g] >= 0 of one of `ELEMENTS`. Raises `KeyError` for a product not in the catalogue.
    """
    if gap_g < 0.0:
        raise ValueError(f"gap of {element} is {gap_g:g} g; it must be at least 0 g")
    chemistry = chemistry_of(catalogue)
    holders = [catalogue.supplements[key] for key in dict.fromkeys(owned)]
    ways = [
        _way(each, element, gap_g, chemistry, catalogue)
        for each in holders
        if float(getattr(each, f"{element}_share")) > 0.0
    ]
    return tuple(sorted(ways, key=_side_effects))


def _way(
    supplement: Supplement, element: str, gap_g: float, chemistry: Chemistry, catalogue: Catalogue
) -> GapFill:
    share = catalogue.figure(f"supplement/{supplement.key}/{element}_share")
    grams = Span(low=gap_g / share.high, likely=gap_g / share.value, high=gap_g / max(share.low, _TINY_G))
    return GapFill(
        supplement=supplement.key,
        element=element,
        grams=grams,
        brings_g=tuple(float(getattr(supplement, f"{each}_share")) * grams.likely for each in ELEMENTS),
        base_eq=supplement.base_eq_per_kg * grams.likely / _G_PER_KG,
        ions_g=_ions(supplement.formula, grams.likely, chemistry),
        cautions=supplement.cautions,
        basis=(share,),
    )


def _ions(formula: str, grams: float, chemistry: Chemistry) -> Mapping[str, float] | None:
    """Return grams of the ions that come with a product (source: iupac-masses); None when not told."""
    atoms = readable_atoms(formula)
    if atoms is None or not set(atoms) <= set(chemistry.atomic_mass):
        return None
    whole = sum(count * chemistry.atomic_mass[symbol] for symbol, count in atoms.items())
    return {
        name: grams * atoms.get(symbol, 0) * molar_mass(weighed, atomic_mass=chemistry.atomic_mass) / whole
        for name, (symbol, weighed) in _IONS.items()
    }


def _side_effects(fill: GapFill) -> tuple[bool, bool, int, float, str]:
    ions = fill.ions_g or {}
    others = sum(
        grams > _TINY_G for name, grams in zip(ELEMENTS, fill.brings_g, strict=True) if name != fill.element
    )
    return (
        ions.get("sodium", 0.0) > 0.0,
        fill.base_eq > 0.0,
        others,
        ions.get("chloride", 0.0),
        fill.supplement,
    )


def salt_advice(gaps_g: Mapping[str, float], *, owned: Iterable[str], catalogue: Catalogue) -> SaltAdvice:
    """Return one product per gap, the one with the fewest side effects; what it brings besides counts too.

    Iron is left out: it is given to a level, not to a gap. Bases are left out: they are given for acid.
    """
    left = {name: max(gaps_g.get(name, 0.0), 0.0) for name in ELEMENTS}
    salts = [key for key in dict.fromkeys(owned) if catalogue.supplements[key].base_eq_per_kg == 0.0]
    fills = []
    for element in ELEMENTS[:-1]:
        if left[element] <= _TINY_G:
            continue
        ways = fill_gap(element, left[element], owned=salts, catalogue=catalogue)
        if ways:
            fills.append(ways[0])
            for name, grams in zip(ELEMENTS, ways[0].brings_g, strict=True):
                left[name] = max(left[name] - grams, 0.0)
    return SaltAdvice(fills=tuple(fills), unfilled_g=tuple(left[name] for name in ELEMENTS))
