"""How much room text takes, and how it is wrapped and set smaller so that nothing is cut.

Measuring asks a `FontMetrics`, so that this can be tested without any toolkit.
"""

from __future__ import annotations

import unicodedata
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from enum import Enum
from typing import Final, Protocol

from planner.paper.errors import GivenUpError
from planner.paper.report import Size
from planner.paper.style import MM_PER_PT

_JOINER: Final = "\u200d"
_SELECTORS: Final = ("\ufe0e", "\ufe0f")
_SKIN_TONES: Final = ("\U0001f3fb", "\U0001f3ff")
_BREAK_AFTER: Final = "-/·\u00a0"
"""Where a word that does not fit a line by itself is broken rather than between any two letters."""


_TURNERS: Final = dict.fromkeys(
    (0x061C, 0x200E, 0x200F, *range(0x202A, 0x202F), *range(0x2066, 0x206A), *range(0x20), 0x7F), None
)
"""Marks nobody sees that would turn round the text beside a name, and control characters."""
for _kept in "\t\n":
    del _TURNERS[ord(_kept)]


def plain_text(text: str) -> str:
    """Return a text without the unseen marks by which a name could turn round what stands beside it.

    >>> plain_text("Basil\u202e 12"), plain_text("\u05d7\u05e1\u05d4")
    ('Basil 12', '\u05d7\u05e1\u05d4')
    """
    return text if text.isascii() and text.isprintable() else text.translate(_TURNERS)


class Face(Enum):
    """The four cuts of the shipped typeface."""

    REGULAR = "regular"
    BOLD = "bold"
    NARROW = "narrow"
    NARROW_BOLD = "narrow bold"

    # Every width is looked up by it: the members are single objects, so the quick hash will do.
    __hash__ = object.__hash__


class FontMetrics(Protocol):
    """Widths and heights of type, as multiples of its size."""

    def width_em(self, text: str, face: Face) -> float:
        """Return the width of one line of text."""

    def shows(self, letter: str) -> bool:
        """Tell whether a letter can be drawn."""

    def ascent_em(self, face: Face) -> float:
        """Return the height above the line that text stands on."""

    def descent_em(self, face: Face) -> float:
        """Return the depth below the line that text stands on."""


class Watched:
    """Measures as others do, as long as the sheet is wanted; `GivenUpError` once it is not."""

    def __init__(self, metrics: FontMetrics, stopped: Callable[[], bool]) -> None:
        """Take who measures, and what tells that the sheet is wanted no longer."""
        self._metrics, self._stopped = metrics, stopped
        self.shows, self.ascent_em, self.descent_em = metrics.shows, metrics.ascent_em, metrics.descent_em

    def width_em(self, text: str, face: Face) -> float:
        """Return the width of one line of text."""
        if self._stopped():
            raise GivenUpError
        return self._metrics.width_em(text, face)


@dataclass(frozen=True, slots=True, kw_only=True)
class Fitted:
    """A text as it is set: its size and its lines."""

    lines: tuple[str, ...]
    face: Face
    pt: float


def width_mm(metrics: FontMetrics, text: str, *, face: Face, pt: float) -> float:
    """Return how wide one line of text is [mm]."""
    return metrics.width_em(text, face) * pt * MM_PER_PT


def clusters(text: str) -> list[str]:
    """Return a text cut only where a reader sees a new letter: marks and joined pictures stay whole.

    >>> len(clusters("e\u0301a")), len(clusters("\U0001f468\u200d\U0001f33e"))
    (2, 1)
    """
    found: list[str] = []
    for letter in text:
        if found and (_belongs_before(letter) or found[-1].endswith(_JOINER)):
            found[-1] += letter
        else:
            found.append(letter)
    return found


def _belongs_before(letter: str) -> bool:
    return (
        unicodedata.category(letter) in ("Mn", "Me", "Mc")
        or letter == _JOINER
        or letter in _SELECTORS
        or _SKIN_TONES[0] <= letter <= _SKIN_TONES[1]
    )


def fit(
    metrics: FontMetrics, text: str, *, face: Face, size: Size, room_mm: float, wrap: int, step_pt: float
) -> Fitted:
    """Set a text in `room_mm`: first wrapped up to `wrap` lines, then smaller, then in more lines.

    Words stay whole while they fit at the least size; the least size is never gone below.
    """
    pt = size.best_pt
    if _is_one_plain_line(text) and width_mm(metrics, text, face=face, pt=pt) <= room_mm:
        return Fitted(lines=(text,), face=face, pt=pt)  # most texts of a table are short
    while True:
        lines = _wrapped_whole(metrics, text, face=face, pt=pt, room_mm=room_mm)
        if lines is not None and len(lines) <= wrap:
            return Fitted(lines=lines, face=face, pt=pt)
        if pt <= size.least_pt:
            break
        pt = max(pt - step_pt, size.least_pt)
    return Fitted(lines=wrapped(metrics, text, face=face, pt=pt, room_mm=room_mm), face=face, pt=pt)


def _is_one_plain_line(text: str) -> bool:
    """Return whether wrapping would leave a text as it is when there is room: no breaks, no spare spaces."""
    return text.isprintable() and text != "" and text == text.strip(" ") and "  " not in text


def _wrapped_whole(
    metrics: FontMetrics, text: str, *, face: Face, pt: float, room_mm: float
) -> tuple[str, ...] | None:
    """Return the wrapped lines, or None when a word does not fit a line by itself."""
    words = _breakable(" ".join(text.splitlines()))
    if any(width_mm(metrics, word, face=face, pt=pt) > room_mm for word in words):
        return None
    return wrapped(metrics, text, face=face, pt=pt, room_mm=room_mm)


def wrapped(metrics: FontMetrics, text: str, *, face: Face, pt: float, room_mm: float) -> tuple[str, ...]:
    """Return a text broken into lines that fit `room_mm`; a word that is too long is broken itself."""
    lines: list[str] = []
    for stretch in text.splitlines():
        lines.extend(_wrapped_line(metrics, stretch, face=face, pt=pt, room_mm=room_mm))
    return tuple(lines)


def _wrapped_line(metrics: FontMetrics, text: str, *, face: Face, pt: float, room_mm: float) -> Iterator[str]:
    words, at = _breakable(text), 0
    while at < len(words):
        count = _words_that_fit(metrics, words[at:], face=face, pt=pt, room_mm=room_mm)
        if count:
            yield " ".join(words[at : at + count])
            at += count
            continue
        *whole, words[at] = _broken_word(metrics, words[at], face=face, pt=pt, room_mm=room_mm) or [""]
        yield from whole
        if (
            not whole
        ):  # one letter that is wider than the room, or nothing but what a break takes the place of
            yield from (words[at],) if words[at] else ()
            at += 1


def _words_that_fit(
    metrics: FontMetrics, words: Sequence[str], *, face: Face, pt: float, room_mm: float
) -> int:
    """Return how many of the first words fit one line; few lengths are measured on the way to it."""

    def fits(count: int) -> bool:
        return width_mm(metrics, " ".join(words[:count]), face=face, pt=pt) <= room_mm

    low, high = 0, 1
    while high <= len(words) and fits(high):
        low, high = high, high * 2
    high = min(high, len(words) + 1)
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (middle, high) if fits(middle) else (low, middle)
    return low


def _breakable(text: str) -> list[str]:
    """Return words, parted at plain spaces only: a no-break space holds its neighbours together."""
    return [word for word in text.replace("\t", " ").split(" ") if word]


def _broken_word(metrics: FontMetrics, word: str, *, face: Face, pt: float, room_mm: float) -> list[str]:
    """Return a word in pieces that fit, broken after a hyphen or the like where there is one.

    Every piece has at least one letter, also when not even that fits; a break takes the place of
    the no-break space it falls on.
    """
    pieces: list[str] = []
    rest = clusters(word)
    while rest:
        count = _letters_that_fit(metrics, rest, face=face, pt=pt, room_mm=room_mm)
        if count < len(rest):
            count = _last_break(rest, count)
        pieces.append("".join(rest[:count]).rstrip("\u00a0"))
        rest = rest[count:]
    return [piece for piece in pieces if piece]


def _letters_that_fit(
    metrics: FontMetrics, letters: list[str], *, face: Face, pt: float, room_mm: float
) -> int:
    low, high = 1, len(letters)
    while low < high:
        middle = (low + high + 1) // 2
        if width_mm(metrics, "".join(letters[:middle]), face=face, pt=pt) <= room_mm:
            low = middle
        else:
            high = middle - 1
    return low


def _last_break(letters: list[str], count: int) -> int:
    for position in range(count, 0, -1):
        if letters[position - 1] in _BREAK_AFTER:
            return position
    return count
