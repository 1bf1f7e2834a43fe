"""Names acts in the language of the window, as they stand in the menus of undo and in the history.

Acts that the desk makes have such names already; those that come ready from the actions are told apart by the
forms of their names. Must know nothing of what an act changes.
"""

from __future__ import annotations

from typing import Final

from planner.desk.say import tr
from planner.desk.why.words import by_form
from planner.desk.words import choice_words
from planner.farm.log import Happening, Unit
from planner.farm.water import Quantity

_LOGGED: Final = ("Log: {what}", "Correct {code}: {what}")
ACT_FORMS: Final = (
    "Lock {many} batches",
    "Unlock {many} batches",
    "Lock {code}",
    "Unlock {code}",
    "Add reading of {quantity}, {on}",
    "Correct reading of {quantity}, {on}",
    "Remove reading of {quantity}, {on}",
    "Adopt the season plan from {on}",
    "Adopt a plan of 1 sowing",
    "Adopt a plan of {count} sowings",
    "Take up {field} of {crop} from the log",
    *_LOGGED,
)
"""Names of acts that come ready, the more special before the more general."""
_CHOSEN: Final = {each.value: each for kind in (Happening, Unit, Quantity) for each in kind}
_BETWEEN: Final = ", "


def act_words(title: str) -> str:
    """Return the name of an act in the language of the window; one that is not known stays as it is.

    >>> act_words("Lock LTB-27W09-A")
    'Lock LTB-27W09-A'
    """
    return by_form(title, ACT_FORMS, part_words=_part_words)


def _part_words(part: str) -> str:
    """Return what a name tells besides: what happened with its amount, and of what; days stay as they are."""
    return _BETWEEN.join(_piece(piece) for piece in part.split(_BETWEEN))


def _piece(piece: str) -> str:
    chosen = _CHOSEN.get(piece)
    if chosen is not None:
        return choice_words(chosen)
    happened = next((each for each in Happening if piece.startswith(f"{each.value} ")), None)
    if happened is not None:
        amount, _, unit = piece.removeprefix(f"{happened.value} ").partition(" ")
        words = choice_words(_CHOSEN[unit]) if unit in _CHOSEN else unit
        return f"{choice_words(happened)} {amount} {words}".rstrip()
    return tr(piece)
