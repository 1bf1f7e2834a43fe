"""Light, power and load of new beds, by the figures that were entered; what was not entered is unknown.

Must know nothing of the farm or its forecast.
"""

from __future__ import annotations

from typing import Final

from planner.farm.species import BedKind
from planner.planning.expansion.verdicts import Answer, Limit, Matter, Question, Verdict, worst

_CM_PER_M: Final = 100.0
KG_PER_M3: Final = 1000.0
"""Mass of water: a tonne a cubic metre."""
_CAUTIONS: Final = ("electricity-near-water", "local-codes", "planning-aid")


def surroundings(question: Question) -> Verdict:
    """Return whether light, power and structure do, by the figures that were entered."""
    parts = [_light(question), _power(question), _structure(question)]
    answer = worst(tuple(answer for answer, _ in parts))
    parts.sort(key=lambda part: part[0] is not answer)
    water = water_kg_per_m2(question)
    dry = question.dry_kg_per_m2
    load = None if water is None or dry is None else water + dry
    return Verdict(
        matter=Matter.LIGHT_POWER_STRUCTURE,
        answer=answer,
        limits=tuple(limit for _, limit in parts if limit is not None),
        numbers=(
            ("light that reaches it mol/m²/d", question.light_mol_per_m2_d),
            ("light wanted mol/m²/d", question.light_wanted_mol_per_m2_d),
            ("power wanted W", _wanted_w(question)),
            ("spare power W", question.spare_w),
            ("water kg/m²", water),
            ("water kg", None if water is None else water * question.area_m2),
            ("load kg/m²", load),
            ("load allowed kg/m²", question.load_allowed_kg_per_m2),
        ),
        cautions=_CAUTIONS,
    )


def water_kg_per_m2(question: Question) -> float | None:
    """Return what the water of a new bed weighs [kg/m²] by its depth; gravel is heavier than water.

    None for gravel and where no depth was entered. A tonne a cubic metre: 25 cm are 250 kg/m².
    """
    if question.depth_cm is None or question.kind is not BedKind.RAFT:
        return None
    return question.depth_cm / _CM_PER_M * KG_PER_M3


def _light(question: Question) -> tuple[Answer, Limit | None]:
    light, wanted = question.light_mol_per_m2_d, question.light_wanted_mol_per_m2_d
    if light is None or wanted is None:
        return Answer.UNKNOWN, Limit.NO_LIGHT
    if light >= wanted:
        return Answer.YES, None
    return (Answer.YES_WITH, Limit.LAMPS) if question.lamps_w else (Answer.NO, Limit.LIGHT)


def _wanted_w(question: Question) -> float | None:
    if question.lamps_w is None or question.pump_w is None:
        return None
    return question.lamps_w + question.pump_w


def _power(question: Question) -> tuple[Answer, Limit | None]:
    wanted = _wanted_w(question)
    if wanted is None or question.spare_w is None:
        return Answer.UNKNOWN, Limit.NO_POWER
    return (Answer.YES, None) if wanted <= question.spare_w else (Answer.NO, Limit.POWER)


def _structure(question: Question) -> tuple[Answer, Limit | None]:
    water, allowed = water_kg_per_m2(question), question.load_allowed_kg_per_m2
    if water is None:
        return Answer.UNKNOWN, Limit.NO_DEPTH
    if allowed is None:
        return Answer.UNKNOWN, Limit.NO_STRUCTURE
    if water + (question.dry_kg_per_m2 or 0.0) > allowed:
        return Answer.NO, Limit.STRUCTURE
    # The water alone may be borne, but nobody has said what the rest weighs.
    return (Answer.UNKNOWN, Limit.NO_STRUCTURE) if question.dry_kg_per_m2 is None else (Answer.YES, None)
