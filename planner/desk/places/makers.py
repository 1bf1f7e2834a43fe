"""Makes each late page of the middle pane; its module is read in with it, not before."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from PySide6.QtWidgets import QWidget

from planner.desk.places.place import Place, PlaceNeeds


def _fish(needs: PlaceNeeds, parent: QWidget) -> Place:
    from planner.desk.fish.place import FishPlace

    return FishPlace(needs, parent)


def _beds(needs: PlaceNeeds, parent: QWidget) -> Place:
    from planner.desk.beds.place import BedsPlace

    return BedsPlace(needs, parent)


def _balance(needs: PlaceNeeds, parent: QWidget) -> Place:
    from planner.desk.balance.place import BalancePlace

    return BalancePlace(needs, parent)


def _water(needs: PlaceNeeds, parent: QWidget) -> Place:
    from planner.desk.water.place import WaterPlace

    return WaterPlace(needs, parent)


def _plan(needs: PlaceNeeds, parent: QWidget) -> Place:
    from planner.desk.plan.page import PlanPlace

    return PlanPlace(needs, parent)


def _records(needs: PlaceNeeds, parent: QWidget) -> Place:
    from planner.desk.records.place import RecordsPlace

    return RecordsPlace(needs, parent)


def _book(needs: PlaceNeeds, parent: QWidget) -> Place:
    from planner.desk.book_page.place import BookPlace

    return BookPlace(needs, parent)


MAKERS: Final[dict[str, Callable[[PlaceNeeds, QWidget], Place]]] = {
    "fish": _fish,
    "beds": _beds,
    "balance": _balance,
    "water": _water,
    "plan": _plan,
    "records": _records,
    "book": _book,
}
"""By the key of the page in the table of pages."""
