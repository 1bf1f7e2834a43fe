"""What each thing of a farm is called in a list, also those that have no name of their own.

Must know nothing of widgets.
"""

from __future__ import annotations

from planner.catalogue.catalogue import Catalogue
from planner.desk.say import tr
from planner.desk.words import choice_words, day_words, kind_words, number_words
from planner.farm.crops import Target
from planner.farm.farm import Farm, Thing, kind_of, label_of
from planner.farm.fish import FishEvent
from planner.farm.water import Dose, Reading


def thing_words(thing: Thing, farm: Farm, catalogue: Catalogue) -> str:
    """Return what tells a thing from the others of its kind.

    Targets go by crop and amount, doses by supplement and day, readings and fish events by day.
    """
    if isinstance(thing, Target):
        crop = catalogue.crops.get(thing.crop)
        return tr(
            "{crop}, {amount} {unit} a week",
            crop=crop.name if crop else thing.crop,
            amount=number_words(thing.amount_per_week),
            unit=choice_words(thing.unit),
        )
    if isinstance(thing, Dose):
        entry = catalogue.supplements.get(thing.supplement)
        what = tr(
            "{grams} g {name}",
            grams=number_words(thing.grams),
            name=entry.name if entry else thing.supplement,
        )
        return f"{what}, {day_words(thing.on)}"
    if isinstance(thing, Reading):
        return f"{choice_words(thing.quantity)} {number_words(thing.value)}, {day_words(thing.on)}"
    if isinstance(thing, FishEvent):
        group = next((each.name for each in farm.fish_groups if each.id == thing.group), "")
        return f"{choice_words(thing.kind)}, {group}, {day_words(thing.on)}"
    kind = kind_of(thing)
    return label_of(thing) if kind.label else kind_words(kind.word)
