"""Molar masses of salts, bases and ions, and what share of one is a nutrient.

A compound is written as chemists write it: ``Ca(OH)2``, ``CaMg(CO3)2``, ``MgSO4.7H2O``.
Atomic masses come in as a table; this module holds none.
"""

from __future__ import annotations

import re
from collections.abc import Mapping

from planner.science.limits import T, require_above, require_at_least, shaped_like

_PART = re.compile(r"(?P<open>\()|(?:(?P<symbol>[A-Z][a-z]?)|(?P<close>\)))(?P<times>\d*)")


def atoms_in(formula: str) -> dict[str, int]:
    """Count of each element in a compound.

    formula: element symbols, counts, brackets, and a dot before waters of crystallisation.

    >>> atoms_in("Ca(OH)2"), atoms_in("MgSO4.7H2O")["O"]
    ({'Ca': 1, 'O': 2, 'H': 2}, 11)
    """
    total: dict[str, int] = {}
    for piece in formula.split("."):
        lead = re.match(r"\d+", piece)
        times = int(lead.group()) if lead else 1
        body = piece[lead.end() :] if lead else piece
        for symbol, count in _count_piece(body, formula).items():
            total[symbol] = total.get(symbol, 0) + times * count
    return total


def molar_mass(formula: str, *, atomic_mass: Mapping[str, float]) -> float:
    """Molar mass of a compound [g/mol]. atomic_mass [g/mol] by symbol. Source: iupac-masses.

    >>> masses = {"Ca": 40.078, "O": 15.999, "H": 1.008}
    >>> round(molar_mass("Ca(OH)2", atomic_mass=masses), 3)
    74.092
    """
    atoms = atoms_in(formula)
    missing = sorted(set(atoms) - set(atomic_mass))
    if missing:
        raise ValueError(f"compound {formula}: no atomic mass for {', '.join(missing)}")
    return sum(count * atomic_mass[symbol] for symbol, count in atoms.items())


def element_share(formula: str, *, element: str, atomic_mass: Mapping[str, float]) -> float:
    """Mass of an element per mass of a pure compound [g/g]; 0 if it holds none. Source: iupac-masses.

    >>> masses = {"K": 39.098, "O": 15.999, "H": 1.008}
    >>> round(element_share("KOH", element="K", atomic_mass=masses), 4)
    0.6969
    """
    count = atoms_in(formula).get(element, 0)
    if count == 0:
        return 0.0
    return count * atomic_mass[element] / molar_mass(formula, atomic_mass=atomic_mass)


def grams_for_element(
    element_g: T, *, formula: str, element: str, purity: float, atomic_mass: Mapping[str, float]
) -> T:
    """Product that brings an amount of an element [g].

    element_g [g] >= 0; purity [g compound/g product] above 0, at most 1. Source: iupac-masses.

    >>> masses = {"K": 39.098, "H": 1.008, "C": 12.011, "O": 15.999}
    >>> grams = grams_for_element(1.0, formula="KHCO3", element="K", purity=1.0, atomic_mass=masses)
    >>> round(grams, 2)
    2.56
    """
    require_at_least(f"{element} wanted", element_g, low=0.0, unit="g")
    require_above("purity", purity, low=0.0)
    share = element_share(formula, element=element, atomic_mass=atomic_mass)
    require_above(f"{element} in {formula}", share, low=0.0, unit="g/g")
    return shaped_like(element_g, element_g / (share * purity))


def conversion_factor(
    from_formula: str, *, to_formula: str, element: str, atomic_mass: Mapping[str, float]
) -> float:
    """Mass of one form per mass of another that holds the same amount of an element [g/g].

    Turns nitrate into nitrate nitrogen, or an oxide on a label into the element. Source: iupac-masses.

    >>> masses = {"P": 30.974, "O": 15.999, "N": 14.007}
    >>> round(conversion_factor("P2O5", to_formula="P", element="P", atomic_mass=masses), 4)
    0.4364
    >>> round(conversion_factor("N", to_formula="NO3", element="N", atomic_mass=masses), 4)
    4.4266
    """
    held = element_share(from_formula, element=element, atomic_mass=atomic_mass)
    wanted = element_share(to_formula, element=element, atomic_mass=atomic_mass)
    require_above(f"{element} in {from_formula}", held, low=0.0, unit="g/g")
    require_above(f"{element} in {to_formula}", wanted, low=0.0, unit="g/g")
    return held / wanted


def _count_piece(body: str, formula: str) -> dict[str, int]:
    """Atoms in one piece of a formula, brackets included."""
    levels: list[dict[str, int]] = [{}]
    position = 0
    while position < len(body):
        part = _PART.match(body, position)
        if part is None or (part.group("close") and (len(levels) == 1 or not levels[-1])):
            raise _unreadable(formula)
        position = part.end()
        if part.group("open"):
            levels.append({})
            continue
        found = {part.group("symbol"): 1} if part.group("symbol") else levels.pop()
        for symbol, count in found.items():
            levels[-1][symbol] = levels[-1].get(symbol, 0) + count * int(part.group("times") or 1)
    if len(levels) != 1 or not levels[0]:
        raise _unreadable(formula)
    return levels[0]


def _unreadable(formula: str) -> ValueError:
    return ValueError(f"compound {formula!r} cannot be read; write it like Ca(OH)2 or MgSO4.7H2O")
