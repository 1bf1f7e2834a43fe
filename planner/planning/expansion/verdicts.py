"""What is asked when beds are to be added, and what a verdict on it is.

A verdict is unknown where data are absent: nothing is guessed to make it a yes.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from typing import Final

from planner.farm.fields import Id
from planner.farm.species import BedKind, CropGroup
from planner.planning.expansion.pump import PumpCurve


class Answer(Enum):
    """Whether it can be done."""

    YES = "yes"
    YES_WITH = "yes with"
    NO = "no"
    UNKNOWN = "unknown"


_ORDER: Final = (Answer.YES, Answer.YES_WITH, Answer.UNKNOWN, Answer.NO)


def worst(answers: tuple[Answer, ...]) -> Answer:
    """Return the answer that holds for all together: a no decides, then what is unknown.

    >>> worst((Answer.YES, Answer.UNKNOWN, Answer.YES_WITH))
    <Answer.UNKNOWN: 'unknown'>
    """
    return max(answers, key=_ORDER.index, default=Answer.UNKNOWN)


class Matter(Enum):
    """What a verdict is about."""

    NUTRIENTS = "nutrients"
    FLOW = "flow"
    FILTER_AND_OXYGEN = "filter and oxygen"
    LIGHT_POWER_STRUCTURE = "light, power and structure"


class Limit(Enum):
    """What limits, or what has to come with it; words are made from this by whoever shows it."""

    FEED = "feed"
    FEED_IN_SOME_MONTHS = "feed in some months"
    THIN_FEED = "feed at the low end of the band"
    NO_PUMP = "no pump entered"
    NO_HEAD = "head not entered"
    NO_TANK = "no tank"
    HEAD = "head above what the pump lifts"
    FLOW = "flow at that head"
    NO_RESERVE = "flow without reserve"
    CURVE_TOO_SHORT = "pump curve does not reach that head"
    FILTER_SHORT = "filter surface"
    FILTER_TIGHT = "filter surface without reserve"
    FILTER_HIGH = "filter surface for the most that may be needed"
    NO_FILTER_AREA = "filter surface not entered"
    OXYGEN = "oxygen"
    OXYGEN_HIGH = "oxygen for the most that may be asked"
    NO_OXYGEN = "oxygen supply not entered"
    LIGHT = "light"
    LAMPS = "lamps for what light is missing"
    NO_LIGHT = "light there, or the crop that wants it, not entered"
    POWER = "power"
    NO_POWER = "power not entered"
    STRUCTURE = "load on the structure"
    NO_STRUCTURE = "allowed load, or that of frame and rafts, not entered"
    NO_DEPTH = "depth of water not entered"


@dataclass(frozen=True, slots=True, kw_only=True)
class Verdict:
    """One of the four: answer, the limit that decides, everything else that limits, numbers, cautions.

    `numbers` are (name with unit, value), None where not known. `cautions` are keys of the catalogue.
    `basis` are paths of the figures it goes by.
    """

    matter: Matter
    answer: Answer
    limits: tuple[Limit, ...]
    numbers: tuple[tuple[str, float | None], ...]
    cautions: tuple[str, ...] = ()
    basis: tuple[str, ...] = ()

    @property
    def limit(self) -> Limit | None:
        """The limit that decides, None for a plain yes."""
        return self.limits[0] if self.limits else None


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """Beds to be added to a loop; None stands for what was not entered.

    `area_m2` of a kind of bed for a group of crops, `depth_cm` of water or gravel. `head_m` is the height
    the water is lifted to the new beds, `friction_m` the head lost in pipes where it is known. Oxygen
    supply in g an hour for the whole loop. Light in mol/m²/d that reaches the new layer, and the least a
    crop wants; lamps' power and spare power in watts; load in kg/m² that the structure may carry besides
    itself, and `dry_kg_per_m2` of frame, liner and rafts.
    """

    loop: Id
    area_m2: float
    kind: BedKind = BedKind.RAFT
    group: CropGroup = CropGroup.LEAFY
    depth_cm: float | None = None
    head_m: float | None = None
    friction_m: float | None = None
    pump: PumpCurve | None = None
    oxygen_g_per_h: float | None = None
    light_mol_per_m2_d: float | None = None
    light_wanted_mol_per_m2_d: float | None = None
    lamps_w: float | None = None
    pump_w: float | None = None
    spare_w: float | None = None
    load_allowed_kg_per_m2: float | None = None
    dry_kg_per_m2: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Expansion:
    """The four verdicts, and the one for all of them."""

    verdicts: tuple[Verdict, ...]
    area_by_month: tuple[MonthArea, ...]

    @property
    def answer(self) -> Answer:
        """The answer for all four together."""
        return worst(tuple(verdict.answer for verdict in self.verdicts))

    @property
    def limiting(self) -> Verdict | None:
        """The verdict that decides, None when all are a plain yes."""
        return next((one for one in self.verdicts if one.answer is self.answer and one.limits), None)

    @property
    def cautions(self) -> tuple[str, ...]:
        """Keys of all cautions, each once."""
        return tuple(dict.fromkeys(key for verdict in self.verdicts for key in verdict.cautions))


@dataclass(frozen=True, slots=True, kw_only=True)
class MonthArea:
    """The largest extra area that the feed of a month's weeks carries [m²].

    `cautious_m2` at the high end of the feed-rate band, `most_m2` at its low end; 0 where it carries none.
    """

    year: int
    month: int
    cautious_m2: float
    most_m2: float
