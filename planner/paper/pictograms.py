"""Simple pictures that say a thing without words: black lines on white, 20 by 20 millimetres.

Drawn here from a few shapes each, so that they print everywhere. Must not know documents.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from typing import Final

from planner.paper.shapes import Drawing, DrawnLine, DrawnOval, DrawnPath, DrawnRect, Hatch, Shape

SIDE_MM: Final = 20.0
_RULE_PT: Final = 1.6
_HEAVY_PT: Final = 3.0
Shapes = tuple[Shape, ...]


def _line(x1: float, y1: float, x2: float, y2: float, pt: float = _RULE_PT) -> DrawnLine:
    return DrawnLine(x1_mm=x1, y1_mm=y1, x2_mm=x2, y2_mm=y2, rule_pt=pt)


def _path(*points: tuple[float, float], closed: bool = False, solid: bool = False) -> DrawnPath:
    return DrawnPath(points_mm=points, rule_pt=_RULE_PT, closed=closed, solid=solid)


def _oval(x: float, y: float, width: float, height: float, *, solid: bool = False) -> DrawnOval:
    return DrawnOval(x_mm=x, y_mm=y, width_mm=width, height_mm=height, rule_pt=_RULE_PT, solid=solid)


def _curve(centre: tuple[float, float], radii: tuple[float, float], turn: tuple[float, float]) -> DrawnPath:
    """Return a piece of an oval, from one angle to another [°], clockwise from the right."""
    steps = 12
    angles = (math.radians(turn[0] + (turn[1] - turn[0]) * step / steps) for step in range(steps + 1))
    points = tuple((centre[0] + radii[0] * math.cos(a), centre[1] + radii[1] * math.sin(a)) for a in angles)
    return DrawnPath(points_mm=points, rule_pt=_RULE_PT)


def _fish(x: float = 1.0, y: float = 10.0) -> Shapes:
    return (
        _oval(x, y - 3.5, 12.0, 7.0),
        _path((x + 11.5, y), (x + 17.0, y - 4.0), (x + 17.0, y + 4.0), closed=True),
        _oval(x + 2.4, y - 1.6, 1.2, 1.2, solid=True),
    )


def _no_feed() -> Shapes:
    pellets = tuple(_oval(x, y, 1.6, 1.6, solid=True) for x, y in ((6, 3), (9.2, 5), (12.4, 3), (9.2, 1)))
    return (
        *pellets,
        *_fish(1.5, 13.0),
        _line(2, 18.5, 18, 1.5, _HEAVY_PT),
        _line(2, 1.5, 18, 18.5, _HEAVY_PT),
    )


def _bubbles() -> Shapes:
    tank = _path((1, 4), (1, 19), (19, 19), (19, 4))
    rising = tuple(
        _oval(x, y, size, size)
        for x, y, size in ((12, 12, 2.4), (14.5, 8.5, 2.0), (12.5, 5.5, 1.6), (15, 4, 1.2))
    )
    stone = DrawnRect(x_mm=12.0, y_mm=16.0, width_mm=5.0, height_mm=2.4, hatch=Hatch.SOLID)
    fish = (_oval(3, 9.5, 6, 4), _path((8.6, 11.5), (11, 9.6), (11, 13.4), closed=True))
    return (tank, _line(1, 6.5, 19, 6.5, 0.8), *rising, stone, *fish)


def _switch() -> Shapes:
    box = DrawnRect(x_mm=4.0, y_mm=1.0, width_mm=12.0, height_mm=18.0, rule_pt=_RULE_PT)
    bolt = _path(
        (10.8, 2.5), (7.2, 8.2), (9.8, 8.2), (8.8, 12.0), (12.8, 6.4), (10.2, 6.4), closed=True, solid=True
    )
    lever = DrawnRect(x_mm=8.0, y_mm=13.0, width_mm=4.0, height_mm=4.5, hatch=Hatch.SOLID)
    return (box, bolt, lever)


def _phone() -> Shapes:
    body = DrawnRect(x_mm=5.5, y_mm=1.0, width_mm=9.0, height_mm=18.0, rule_pt=_RULE_PT)
    screen = DrawnRect(x_mm=6.8, y_mm=3.4, width_mm=6.4, height_mm=11.4, rule_pt=0.8)
    waves = (_curve((15.0, 6.0), (2.0, 3.0), (-60, 60)), _curve((15.0, 6.0), (4.0, 5.0), (-60, 60)))
    return (body, screen, _oval(9.2, 16, 1.6, 1.6, solid=True), *waves)


def _eye() -> Shapes:
    return (
        _curve((10, 14), (9.5, 9.5), (205, 335)),
        _curve((10, 6), (9.5, 9.5), (25, 155)),
        _oval(7, 7, 6, 6),
        _oval(8.8, 8.8, 2.4, 2.4, solid=True),
    )


def _leaf() -> Shapes:
    """Return the outline of a leaf with its middle vein."""
    left, right = _leaf_edge(-1), _leaf_edge(1)
    return (_path(*left, *reversed(right), closed=True), _line(10, 1.5, 10, 19.5, 1.0))


def _leaf_edge(side: int) -> tuple[tuple[float, float], ...]:
    shares = tuple(step / 10 for step in range(11))
    return tuple((10 + side * 6.8 * math.sin(math.pi * s) ** 0.8, 1.0 + 16.0 * s) for s in shares)


def _veins(*, pt: float = 1.0) -> Shapes:
    return tuple(
        _line(10, y + 2.6, 10 + side * reach, y, pt)
        for y, reach in ((4.5, 4.2), (8.0, 5.6), (11.5, 4.6))
        for side in (-1, 1)
    )


def _dots(*spots: tuple[float, float], size: float = 0.9) -> Shapes:
    return tuple(_oval(x - size / 2, y - size / 2, size, size, solid=True) for x, y in spots)


def _leaf_veins() -> Shapes:
    between = (
        (7.4, 8.2),
        (12.6, 8.2),
        (6.6, 11.4),
        (13.4, 11.4),
        (8, 14.2),
        (12, 14.2),
        (8.2, 5.4),
        (11.8, 5.4),
    )
    return (*_leaf(), *_veins(pt=2.0), *_dots(*between, size=0.6))


def _leaf_edge_burnt() -> Shapes:
    edge = tuple(
        (10 + side * (6.0 * math.sin(math.pi * s) ** 0.8), 1.4 + 16 * s)
        for s in (0.3, 0.4, 0.5, 0.6, 0.7, 0.8)
        for side in (-1, 1)
    )
    return (*_leaf(), *_veins(), *_dots(*edge, size=1.8))


def _leaf_tip() -> Shapes:
    return (*_leaf(), *_dots((10, 2.6), (9.0, 3.6), (11.0, 3.6), (8.0, 4.8), (12.0, 4.8), size=1.8))


def _leaf_dark() -> Shapes:
    left, right = _leaf_edge(-1), _leaf_edge(1)
    return (_path(*left, *reversed(right), closed=True, solid=True), _line(10, 16, 10, 19.5, 1.6))


def _leaf_young() -> Shapes:
    small = (_oval(7.5, 1.0, 5.0, 7.0), _line(10, 1.5, 10, 19, 1.6))
    big = (_curve((5.2, 13.0), (4.2, 3.0), (0, 360)), _curve((14.8, 13.0), (4.2, 3.0), (0, 360)))
    return (
        *small,
        *big,
        _line(8.2, 4.5, 10, 6.0, 1.0),
        _line(11.8, 4.5, 10, 6.0, 1.0),
        *_dots((8.8, 3.0), (11.2, 3.0), size=0.6),
    )


def _seedling() -> Shapes:
    return (
        _line(1, 18.5, 19, 18.5),
        _path((10, 18.5), (10.6, 12.0), (9.4, 6.5), (12.5, 3.0)),
        _oval(12.0, 1.2, 4.0, 2.6),
        _oval(8.4, 1.0, 3.6, 2.4),
    )


def _roots() -> Shapes:
    board = DrawnRect(x_mm=1.0, y_mm=7.0, width_mm=18.0, height_mm=2.6, rule_pt=_RULE_PT)
    hair = tuple(
        _path((10, 9.6), (10 + spread / 2, 13.5), (10 + spread, 19.0))
        for spread in (-5.0, -2.4, 0.0, 2.4, 5.0)
    )
    return (board, *hair, _oval(5.0, 2.0, 4.6, 5.0), _oval(10.4, 2.0, 4.6, 5.0))


def _insect() -> Shapes:
    legs = tuple(
        _line(10 + side * 3, y, 10 + side * 8, y + lean)
        for y, lean in ((8, -3), (11, 0), (14, 3))
        for side in (-1, 1)
    )
    return (_oval(7, 6, 6, 11), _oval(8, 2.4, 4, 3.8, solid=True), *legs, _line(10, 6, 10, 17, 0.8))


def _drop() -> Shapes:
    return (
        _path((10, 1.5), (5.2, 9.5)),
        _path((10, 1.5), (14.8, 9.5)),
        _curve((10, 12.4), (5.6, 5.8), (-30, 210)),
    )


_DRAWN: Final[Mapping[str, tuple[Callable[[], Shapes], str]]] = {
    "no feed": (_no_feed, "a fish and feed, crossed out"),
    "bubbles": (_bubbles, "air bubbles rising in a fish tank"),
    "switch": (_switch, "a safety switch"),
    "phone": (_phone, "a telephone that rings"),
    "eye": (_eye, "an eye that watches"),
    "leaf pale": (_leaf, "a pale leaf"),
    "leaf veins": (_leaf_veins, "a leaf yellow between its veins"),
    "leaf edge": (_leaf_edge_burnt, "a leaf with brown edges"),
    "leaf tip": (_leaf_tip, "a leaf with a dead tip"),
    "leaf dark": (_leaf_dark, "a dark leaf"),
    "leaf young": (_leaf_young, "a plant whose youngest leaf is pale"),
    "seedling": (_seedling, "a long thin seedling"),
    "roots": (_roots, "roots under a raft"),
    "insect": (_insect, "an insect"),
    "drop": (_drop, "a drop of water"),
    "fish": (_fish, "a fish"),
}
NAMES: Final = tuple(_DRAWN)


def pictogram(name: str) -> Drawing:
    """Return a picture by its name; a narrow column sets it smaller.

    Raises:
        KeyError: there is no picture of that name.
    """
    shapes, words = _DRAWN[name]
    return Drawing(width_mm=SIDE_MM, height_mm=SIDE_MM, shapes=shapes(), says=words)
