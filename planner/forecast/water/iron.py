"""Iron: grams of chelate for the loop's water, when it is due, and which chelate suits the pH.

Must not know crops or fish.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from enum import Enum
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.figure import Figure
from planner.farm.fields import Id
from planner.farm.species import Supplement
from planner.farm.water import Dose
from planner.forecast.water.spans import Span, span_of
from planner.science.water import dose_for_level_g

_L_PER_M3: Final = 1000.0
_CARE: Final = "coefficient/water_care/"


class Chelate(Enum):
    """What holds the iron; `EDTA` is not liked in fish water."""

    EDDHA = "eddha"
    DTPA = "dtpa"
    EDTA = "edta"


class ChelateFit(Enum):
    """How a chelate suits a pH."""

    SUITED = "suited"
    DOUBTFUL = "doubtful"
    NOT_SUITED = "not suited"
    UNKNOWN = "unknown"


_FIT_ORDER: Final = (ChelateFit.SUITED, ChelateFit.DOUBTFUL, ChelateFit.UNKNOWN, ChelateFit.NOT_SUITED)
_AGENT_ORDER: Final = (Chelate.DTPA, Chelate.EDDHA, None, Chelate.EDTA)
"""Among equals the usual one first, the one that colours the water next, the disliked one last."""


@dataclass(frozen=True, slots=True, kw_only=True)
class IronProduct:
    """One product that would do, with the grams that lift the water to the target."""

    supplement: str
    agent: Chelate | None
    fit: ChelateFit
    grams: Span
    cautions: tuple[str, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class IronAdvice:
    """Iron for a loop: target, interval, products with the best suited first.

    `present_mg_per_l` None: taken as none, as the interval rule does. `due_on` is today when iron was
    never given; `days_late` is negative before the day.
    """

    target_mg_per_l: Span
    present_mg_per_l: float | None
    interval_days: int
    last_on: date | None
    due_on: date
    days_late: int
    products: tuple[IronProduct, ...]
    basis: tuple[Figure, ...]


def chelate_of(supplement: Supplement) -> Chelate | None:
    """Return what holds the iron of a product, told by its formula or key; None when it cannot be told."""
    said = f"{supplement.formula} {supplement.key}".lower()
    return next((agent for agent in Chelate if agent.value in said), None)


def chelate_fit(agent: Chelate | None, *, ph: float | None, catalogue: Catalogue) -> ChelateFit:
    """Return how a chelate suits a pH: doubtful within the spread of its limit."""
    if agent is None or ph is None:
        return ChelateFit.UNKNOWN
    limit = chelate_limit(agent, catalogue)
    if ph <= limit.low:
        return ChelateFit.SUITED
    return ChelateFit.DOUBTFUL if ph <= limit.high else ChelateFit.NOT_SUITED


def chelate_limit(agent: Chelate, catalogue: Catalogue) -> Figure:
    """Return the pH up to which a chelate holds iron."""
    return catalogue.figure(f"{_CARE}chelate_{agent.value}_ph_high")


def iron_grams(
    supplement: str, *, water_l: float, present_mg_per_l: float | None, catalogue: Catalogue
) -> Span:
    """Return grams of a product that lift a loop's water to the iron target (source: uvi-ph-note).

    Raises `ValueError` for a product without iron, `UnknownFigureError` for one not in the catalogue.
    """
    target = catalogue.figure("coefficient/water/iron_target_mg_per_l")
    share = catalogue.figure(f"supplement/{supplement}/fe_share")
    pairs = ((target.low, share.high), (target.value, share.value), (target.high, share.low))
    low, likely, high = (
        dose_for_level_g(
            level, present_mg_per_l=present_mg_per_l or 0.0, volume_m3=water_l / _L_PER_M3, share=held
        )
        for level, held in pairs
    )
    return Span(low=low, likely=likely, high=high)


def iron_advice(
    *,
    loop: Id,
    water_l: float,
    doses: Sequence[Dose],
    owned: Iterable[str],
    ph: float | None,
    present_mg_per_l: float | None,
    today: date,
    catalogue: Catalogue,
) -> IronAdvice:
    """Return what iron to give and when; products are those of the owned ones that hold iron."""
    interval = catalogue.figure("coefficient/water/iron_interval_days")
    last_on = last_iron_on(doses, loop=loop, today=today, catalogue=catalogue)
    due_on = today if last_on is None else last_on + timedelta(days=int(interval.value))
    products = [
        _product(catalogue.supplements[key], water_l, ph, present_mg_per_l, catalogue)
        for key in dict.fromkeys(owned)
        if catalogue.supplements[key].fe_share > 0.0
    ]
    target = catalogue.figure("coefficient/water/iron_target_mg_per_l")
    limits = [chelate_limit(each.agent, catalogue) for each in products if each.agent is not None]
    shares = [catalogue.figure(f"supplement/{each.supplement}/fe_share") for each in products]
    return IronAdvice(
        target_mg_per_l=span_of(target),
        present_mg_per_l=present_mg_per_l,
        interval_days=int(interval.value),
        last_on=last_on,
        due_on=due_on,
        days_late=(today - due_on).days,
        products=tuple(sorted(products, key=_suitability)),
        basis=(target, interval, *shares, *limits),
    )


def _product(
    supplement: Supplement, water_l: float, ph: float | None, present: float | None, catalogue: Catalogue
) -> IronProduct:
    agent = chelate_of(supplement)
    return IronProduct(
        supplement=supplement.key,
        agent=agent,
        fit=chelate_fit(agent, ph=ph, catalogue=catalogue),
        grams=iron_grams(supplement.key, water_l=water_l, present_mg_per_l=present, catalogue=catalogue),
        cautions=supplement.cautions,
    )


def _suitability(product: IronProduct) -> tuple[int, int, str]:
    return _FIT_ORDER.index(product.fit), _AGENT_ORDER.index(product.agent), product.supplement


def last_iron_on(doses: Iterable[Dose], *, loop: Id, today: date, catalogue: Catalogue) -> date | None:
    """Return the last date up to today on which a loop was given iron, None when it never was."""
    given = [
        _last_given(dose, today)
        for dose in doses
        if dose.loop == loop and dose.on <= today and catalogue.supplements[dose.supplement].fe_share > 0.0
    ]
    return max(given) if given else None


def _last_given(dose: Dose, today: date) -> date:
    """Return the last day of a dose, at or before today; it began by then."""
    if dose.every_days == 0:
        return dose.on
    end = today if dose.until_on is None else min(dose.until_on, today)
    times = max((end - dose.on).days, 0) // dose.every_days
    return dose.on + timedelta(days=times * dose.every_days)
