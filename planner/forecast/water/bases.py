"""Which bases, how much of each, and in which doses: gaps of potassium and calcium are filled on the way.

Must not know fish, beds or dates; what the water is like comes in as plain figures.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from enum import Enum
from typing import Final

import numpy as np

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.farm.species import ELEMENTS, Supplement
from planner.forecast.values import Floats
from planner.forecast.water.chemistry import Chemistry, chemistry_of, holds_sodium
from planner.forecast.water.dosing import (
    BaseDose,
    DosePart,
    WaterNow,
    dose_cap_eq,
    dose_figures,
    dose_plan,
)
from planner.forecast.water.mixing import MixProblem, fill_gaps
from planner.forecast.water.spans import Span, basis_of, exactly
from planner.science.nitrification import alkalinity_to_raise_g, base_for_alkalinity_g

_G_PER_KG: Final = 1000.0
_L_PER_M3: Final = 1000.0
_TINY_EQ: Final = 1e-9
_FIRST_GAPS: Final = ("k", "ca")
_MOST_BASES: Final = 8
"""Of more owned bases the gentlest are looked at: nobody keeps nine."""


class BaseKind(Enum):
    """How gentle a base is, the gentlest first."""

    BICARBONATE = "bicarbonate"
    CARBONATE = "carbonate"
    HYDROXIDE = "hydroxide"
    SODIUM = "sodium"


_ORDER: Final = tuple(BaseKind)


class Before(Enum):
    """What to do before any base is given."""

    TEST_AMMONIA = "test ammonia"
    AMMONIA_HIGH = "ammonia high"
    TEST_PH = "test pH"
    PH_HIGH_ENOUGH = "pH high enough"
    TEST_ALKALINITY = "test alkalinity"


@dataclass(frozen=True, slots=True, kw_only=True)
class BaseShare:
    """One base's part of a week.

    `brings_g` are elements in the order of `ELEMENTS` for the likely grams. `slow` hardly dissolves.
    `cap_g` is the most for one dose.
    """

    supplement: str
    kind: BaseKind
    slow: bool
    eq_per_week: Span
    grams_per_week: Span
    brings_g: tuple[float, ...]
    cap_g: float
    cautions: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class BaseAdvice:
    """Base for a week.

    `before` says what to do first; with `AMMONIA_HIGH` or `PH_HIGH_ENOUGH` nothing should be given now.
    `unfilled_g` are the gaps that stay, in the order of `ELEMENTS`. `left_over_eq` did not fit in the
    week's doses. `assumed` names readings that were replaced by a careful assumption.
    """

    need_eq: Span
    before: tuple[Before, ...]
    bases: tuple[BaseShare, ...]
    doses: tuple[BaseDose, ...]
    unfilled_g: tuple[float, ...]
    left_over_eq: float
    assumed: tuple[str, ...]
    basis: tuple[Figure, ...]

    @property
    def unfilled_by_element(self) -> dict[str, float]:
        """The gaps that stay [g/week] by element."""
        return dict(zip(ELEMENTS, self.unfilled_g, strict=True))

    @property
    def hold(self) -> bool:
        """Whether base should wait until the water has been seen to."""
        return bool({Before.AMMONIA_HIGH, Before.PH_HIGH_ENOUGH} & set(self.before))


def base_kind(supplement: Supplement) -> BaseKind:
    """Return how gentle a base is, by its formula; one that cannot be told counts as a hydroxide."""
    formula = supplement.formula
    if holds_sodium(formula):
        return BaseKind.SODIUM
    if "HCO3" in formula:
        return BaseKind.BICARBONATE
    return BaseKind.CARBONATE if "CO3" in formula else BaseKind.HYDROXIDE


def carbon_dioxide_used(supplement: Supplement) -> float:
    """Return the carbon dioxide that an equivalent of a base takes up at once [mol/eq], by stoichiometry."""
    if "HCO3" in supplement.formula:
        return 0.0
    return 1.0 / 2.0 if "CO3" in supplement.formula else 1.0


def owned_bases(owned: Iterable[str], catalogue: Catalogue) -> tuple[Supplement, ...]:
    """Return the bases among what a grower owns, the gentlest first; sodium only when nothing else is.

    Raises `KeyError` for a supplement that is not in the catalogue.
    """
    found = [catalogue.supplements[key] for key in dict.fromkeys(owned)]
    bases = [each for each in found if each.base_eq_per_kg > 0.0]
    without = [each for each in bases if base_kind(each) is not BaseKind.SODIUM]
    return tuple(sorted(without or bases, key=_gentleness))


def _gentleness(supplement: Supplement) -> tuple[int, str]:
    return _ORDER.index(base_kind(supplement)), supplement.key


def base_advice(
    need_eq: Span,
    *,
    owned: Sequence[str],
    gaps_g: Mapping[str, float],
    water: WaterNow,
    catalogue: Catalogue,
) -> BaseAdvice:
    """Return what base to give in a week.

    need_eq [eq/week] >= 0; gaps_g [g/week] by element ("k", "ca", "mg"), what crops want beyond supply.
    Bases that hardly dissolve are left out in water too little acid for them unless nothing else is owned.

    Raises `KeyError` for a supplement that is not in the catalogue.
    """
    figures, chemistry = dose_figures(catalogue), chemistry_of(catalogue)
    bases = _usable(owned_bases(owned, catalogue), water, catalogue)
    aim = need_eq.likely if need_eq.likely > _TINY_EQ else need_eq.high
    grams = _mixed(aim, bases, gaps_g)
    caps = [
        dose_cap_eq(
            water,
            carbon_dioxide_used=carbon_dioxide_used(each),
            figures=figures,
            chemistry=chemistry,
        )
        for each in bases
    ]
    scale = need_eq.times(1.0 / aim) if aim > _TINY_EQ else exactly(0.0)
    shares = tuple(
        _share(each, grams[place] * scale.likely, scale, grams[place], caps[place], catalogue)
        for place, each in enumerate(bases)
        if grams[place] > 0.0
    )
    doses, left_over = dose_plan([_dose_part(share) for share in shares], figures=figures)
    return BaseAdvice(
        need_eq=need_eq,
        before=before_base(water, catalogue),
        bases=shares,
        doses=doses,
        unfilled_g=_unfilled(shares, gaps_g),
        left_over_eq=left_over if bases else need_eq.likely,
        assumed=water.assumed(),
        basis=(*basis_of(figures), *_base_rows(bases, catalogue), *chemistry.of("carbonic_")),
    )


def _usable(bases: tuple[Supplement, ...], water: WaterNow, catalogue: Catalogue) -> tuple[Supplement, ...]:
    """Return the bases that will dissolve in this water, or all when none would."""
    acid_enough = catalogue.figure("coefficient/water_care/slow_base_below_ph").value
    if water.ph is not None and water.ph < acid_enough:
        return bases[:_MOST_BASES]
    quick = tuple(each for each in bases if not is_slow(each, catalogue))
    return (quick or bases)[:_MOST_BASES]


def is_slow(supplement: Supplement, catalogue: Catalogue) -> bool:
    """Tell whether a base hardly dissolves; one whose solubility is not known does."""
    name = supplement.key.replace("-", "_")
    figure = catalogue.figures.get(f"coefficient/water_care/solubility_{name}_g_per_kg")
    least = catalogue.figure("coefficient/water_care/slow_base_solubility_g_per_kg")
    return figure is not None and figure.value < least.value


def _mixed(equivalents: float, bases: Sequence[Supplement], gaps_g: Mapping[str, float]) -> Floats:
    """Return grams of each base for a week's equivalents: gaps first, the rest in equal parts.

    The rest goes to the gentlest base with potassium and the gentlest with calcium, half each; without
    one of them to the other, without both to the gentlest there is.
    """
    eq_per_g = np.asarray([each.base_eq_per_kg / _G_PER_KG for each in bases])
    names = ("k", "ca", "mg")
    problem = MixProblem(
        equivalents=equivalents,
        eq_per_g=eq_per_g,
        harsh=np.asarray([float(base_kind(each) in {BaseKind.HYDROXIDE, BaseKind.SODIUM}) for each in bases]),
        content=np.asarray([[_content(each, name) for each in bases] for name in names]).reshape(
            len(names), len(bases)
        ),
        gap_g=np.asarray([max(gaps_g.get(name, 0.0), 0.0) for name in names]),
        rank=tuple(0 if name in _FIRST_GAPS else 1 for name in names),
    )
    grams = fill_gaps(problem)
    rest = equivalents - float(grams @ eq_per_g)
    takers = _takers(bases)
    for place in takers:
        grams[place] += max(rest, 0.0) / len(takers) / eq_per_g[place]
    return grams


def _content(supplement: Supplement, element: str) -> float:
    return float(getattr(supplement, f"{element}_share"))


def _takers(bases: Sequence[Supplement]) -> list[int]:
    """Return the places of the bases that share what no gap asks for; they come gentlest first."""
    firsts = (
        next((place for place, each in enumerate(bases) if _content(each, name) > 0.0), None)
        for name in _FIRST_GAPS
    )
    found = [place for place in firsts if place is not None]
    return list(dict.fromkeys(found)) or list(range(len(bases)))[:1]


def _share(
    supplement: Supplement, likely_g: float, scale: Span, whole_g: float, cap_eq: float, catalogue: Catalogue
) -> BaseShare:
    grams = scale.times(whole_g)
    per_g = supplement.base_eq_per_kg / _G_PER_KG
    return BaseShare(
        supplement=supplement.key,
        kind=base_kind(supplement),
        slow=is_slow(supplement, catalogue),
        eq_per_week=grams.times(per_g),
        grams_per_week=grams,
        brings_g=tuple(_content(supplement, element) * likely_g for element in ELEMENTS),
        cap_g=cap_eq / per_g,
        cautions=supplement.cautions,
    )


def _dose_part(share: BaseShare) -> DosePart:
    return DosePart(
        supplement=share.supplement,
        eq=share.eq_per_week.likely,
        grams=share.grams_per_week.likely,
        cap_g=share.cap_g,
    )


def _unfilled(shares: Sequence[BaseShare], gaps_g: Mapping[str, float]) -> tuple[float, ...]:
    brought = [sum(share.brings_g[place] for share in shares) for place in range(len(ELEMENTS))]
    return tuple(
        max(gaps_g.get(element, 0.0) - brought[place], 0.0) for place, element in enumerate(ELEMENTS)
    )


def before_base(water: WaterNow, catalogue: Catalogue) -> tuple[Before, ...]:
    """Return what to do before giving base: raising pH turns ammonia harmful."""
    found = []
    if water.tan_mg_per_l is None:
        found.append(Before.TEST_AMMONIA)
    elif water.tan_mg_per_l > catalogue.figure("loop/tan_limit_mg_per_l").value:
        found.append(Before.AMMONIA_HIGH)
    if water.ph is None:
        found.append(Before.TEST_PH)
    elif water.ph >= catalogue.figure("loop/ph_high").value:
        found.append(Before.PH_HIGH_ENOUGH)
    if water.alkalinity_mg_per_l is None:
        found.append(Before.TEST_ALKALINITY)
    return tuple(found)


def _base_rows(bases: Sequence[Supplement], catalogue: Catalogue) -> tuple[Figure, ...]:
    rows = [catalogue.figure(f"supplement/{each.key}/base_eq_per_kg") for each in bases]
    limits = ("loop/tan_limit_mg_per_l", "loop/ph_high", "coefficient/water_care/slow_base_below_ph")
    return (*rows, *(catalogue.figure(path) for path in limits))


def base_to_raise_alkalinity_g(
    rise_mg_per_l: float, *, water_l: float, supplement: Supplement, chemistry: Chemistry
) -> float:
    """Return grams of a base that lift alkalinity by a rise [mg CaCO3/L] (source: iupac-masses).

    Raises `ValueError` for a supplement that is no base.
    """
    if not supplement.base_eq_per_kg > 0.0:
        raise ValueError(f"supplement {supplement.key} holds no base; it cannot raise alkalinity")
    wanted = alkalinity_to_raise_g(rise_mg_per_l, volume_m3=water_l / _L_PER_M3)
    return base_for_alkalinity_g(
        wanted,
        base_g_per_eq=_G_PER_KG / supplement.base_eq_per_kg,
        caco3_g_per_eq=chemistry.caco3_g_per_eq,
    )
