"""The words of the trade with what they mean, and which of them stand in a text.

One table for the glossary, the hover and the key; the words are looked for in the language that is shown.
Must know nothing of widgets.
"""

from __future__ import annotations

import re
import tomllib
from dataclasses import dataclass
from functools import cache
from typing import Final

from planner.desk.say import tr
from planner.shipped import shipped_path

_FILE: Final = ("resources", "help", "terms.toml")
_SHORT: Final = re.compile(r"^(?P<long>.+) \((?P<short>[^)]+)\)$")
_MOST: Final = 3
"""So many words of one text are explained at once."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Term:
    """A word as it is shown, what it means, and every spelling a label may have."""

    word: str
    meaning: str
    spellings: tuple[str, ...]

    @property
    def sentence(self) -> str:
        """The word and its meaning in one line."""
        return f"{self.word}: {self.meaning}"


@dataclass(frozen=True, slots=True, kw_only=True)
class _Words:
    """The words of one language, and what finds them."""

    terms: tuple[Term, ...]
    by_spelling: dict[str, Term]
    pattern: re.Pattern[str]


@cache
def _words_in(_language: str) -> _Words:
    """Return the words of the language that the mark stands for; made once for each.

    Whole words are found, longer ones first, with or without the ending of more than one.
    """
    read = tomllib.loads(shipped_path(*_FILE).read_text("utf-8"))["words"]
    found = (_term(part["heading"], part["paragraphs"][0], tuple(part.get("also", ()))) for part in read)
    terms = tuple(sorted(found, key=_by_word))
    by_spelling = {each.casefold(): term for term in reversed(terms) for each in term.spellings}
    spelled = sorted(by_spelling, key=len, reverse=True)
    pattern = re.compile(rf"(?<!\w)({'|'.join(map(re.escape, spelled))})(?:e?s)?(?!\w)", re.IGNORECASE)
    return _Words(terms=terms, by_spelling=by_spelling, pattern=pattern)


def _words() -> _Words:
    # What "Help" is called tells one language from another.
    return _words_in(tr("Help"))


def terms() -> tuple[Term, ...]:
    """Return every word in the language that is shown, by the alphabet."""
    return _words().terms


def _by_word(term: Term) -> str:
    return term.word.casefold()


def _term(heading: str, meaning: str, also: tuple[str, ...]) -> Term:
    word = tr(heading)
    match = _SHORT.match(word)
    own = (match["long"], match["short"]) if match else (word,)
    return Term(word=word, meaning=tr(meaning), spellings=(*own, *also))


def terms_in(text: str) -> tuple[Term, ...]:
    """Return the words that stand in a text, in its order, each once and no more than a few.

    Abbreviations in capitals, such as EC, count only when they are written so.
    """
    words = _words()
    found: dict[str, Term] = {}
    for match in words.pattern.finditer(text):
        term = words.by_spelling[match[1].casefold()]
        written = next(each for each in term.spellings if each.casefold() == match[1].casefold())
        if not written.isupper() or match[1] == written:
            found.setdefault(term.word, term)
    return tuple(found.values())[:_MOST]


def meaning_of(text: str) -> str:
    """Return what the words in a text mean, a line each; empty when none of them is known."""
    return "\n".join(term.sentence for term in terms_in(text))
