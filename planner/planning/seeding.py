"""How many seeds, pots and trays a sowing takes: each step as a number, so that the rule can be shown."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from math import floor

from planner.science.schedule import filled_up, seeds_by_allowance, seeds_to_sow, whole_units


class LossRule(Enum):
    """How losses are allowed for; the two differ as losses grow, so it is always said which was used."""

    DIVIDE = "plants ÷ (germination × survival)"
    ADD = "plants × allowance ÷ germination"


@dataclass(frozen=True, slots=True, kw_only=True)
class SeedRule:
    """What is known of the seed and its pots, and how losses are allowed for.

    `survival` is the share of seedlings that reach their last place. With `LossRule.ADD` the factor
    `allowance` stands in its stead. `per_tray` 0 means that there are no trays; `fill_trays` fills them.
    """

    germination: float
    survival: float
    rule: LossRule = LossRule.DIVIDE
    allowance: float = 1.0
    per_pot: int = 1
    per_tray: int = 0
    fill_trays: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class SeedWish:
    """How seeds are counted: rule for losses, seeds to a pot, and whether trays are filled."""

    rule: LossRule = LossRule.DIVIDE
    allowance: float = 1.0
    per_pot: int = 1
    fill_trays: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Seeding:
    """A sowing in numbers: seeds needed, then rounded up to whole pots and, if wanted, to full trays.

    `spare_seeds` were added by the rounding; `spare_cells` stay empty in the last tray.
    """

    plants: int
    rule: SeedRule
    seeds_needed: int
    seeds: int
    pots: int
    trays: int
    spare_seeds: int
    spare_cells: int


def seeding_for(plants: int, rule: SeedRule) -> Seeding:
    """Return the seeds, pots and trays for the plants wanted in their last place.

    >>> rule = SeedRule(germination=0.95, survival=0.97, per_pot=4, per_tray=72)
    >>> found = seeding_for(200, rule)
    >>> found.seeds_needed, found.seeds, found.pots, found.trays, found.spare_cells
    (218, 220, 55, 1, 17)
    """
    if rule.rule is LossRule.ADD:
        needed = seeds_by_allowance(plants, allowance_factor=rule.allowance, germination=rule.germination)
    else:
        needed = seeds_to_sow(plants, germination=rule.germination, survival=rule.survival)
    pots = whole_units(needed, per_unit=rule.per_pot)
    trays = cells = 0
    if rule.per_tray:
        trays = whole_units(pots, per_unit=rule.per_tray)
        cells = filled_up(pots, per_unit=rule.per_tray)
        if rule.fill_trays:
            pots = cells
    seeds = pots * rule.per_pot
    return Seeding(
        plants=plants,
        rule=rule,
        seeds_needed=needed,
        seeds=seeds,
        pots=pots,
        trays=trays,
        spare_seeds=seeds - needed,
        spare_cells=max(cells - pots, 0),
    )


def plants_of(seeds: int, rule: SeedRule) -> int:
    """Return the whole plants to expect in their last place from seeds sown.

    >>> plants_of(1200, SeedRule(germination=1.0, survival=0.8))
    960
    """
    share = rule.germination * rule.survival
    if rule.rule is LossRule.ADD:
        share = rule.germination / rule.allowance
    # The product of shares such as 0.8 may fall a hair short of a whole plant.
    return floor(round(seeds * share, 6))
