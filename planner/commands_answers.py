"""How answers to "why?" are printed: by the command `why`, and by commands of plans with `--why`.

A command of plans names its figures in words, such as "week 2027-W18 basil harvest"; `--why` tells those
whose name holds all the words given, and lists all names without any.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Callable, Iterator, Mapping, Sequence
from difflib import get_close_matches
from typing import TYPE_CHECKING, Any, Final

from planner.cli_shared import WrongUsageError

if TYPE_CHECKING:
    from planner.bootstrap import Means
    from planner.forecast.why.reasons import Reason
    from planner.forecast.why.values import Explanation

Answers = Mapping[str, Callable[[], "Explanation"]]
"""Figures by name, each with what tells why it is what it is."""
MANY_FORMAT: Final = "raftweek.answers/1"
DEPTH: Final = 2
_MOST: Final = 12


def print_answer(
    found: Explanation, means: Means, *, reasons: tuple[Reason, ...] = (), depth: int, as_json: bool
) -> None:
    """Print one answer with the publications behind it."""
    if as_json:
        _print_json(answer_data(found, means, reasons))
        return
    from planner.paper.reasons import explanation_lines, reason_sentence

    for reason in reasons:
        print(f"because: {reason_sentence(reason, beside=found.on)}")
    print("\n".join(explanation_lines(found, depth=depth)))
    _print_sources((found,), means, depth=depth)


def answer_data(found: Explanation, means: Means, reasons: tuple[Reason, ...] = ()) -> dict[str, Any]:
    """Return an answer as plain data, all the way down."""
    from planner.forecast.why.plain import why_data

    return why_data(found, reasons) | {"publications": _publications((found,), means, depth=None)}


def _print_json(data: Mapping[str, Any]) -> None:
    json.dump(data, sys.stdout, indent=2, ensure_ascii=False)
    print()


def _print_sources(found: Sequence[Explanation], means: Means, *, depth: int) -> None:
    sources = _publications(found, means, depth=depth)
    if sources:
        print("\n".join(("sources:", *(f"  {key}: {line}" for key, line in sources.items()))))


def _publications(found: Sequence[Explanation], means: Means, *, depth: int | None) -> dict[str, str]:
    """Return the publications behind the figures of answers by key, each on one line, sorted.

    `depth` is how many levels below the top are looked at, None for all.
    """
    from planner.forecast.verify.run import publication_line

    behind = {source for one in found for source in _sources(one, depth)}
    keys = sorted(behind & set(means.catalogue.publications))
    return {key: publication_line(means.catalogue, key) for key in keys}


def _sources(found: Explanation, depth: int | None) -> Iterator[str]:
    yield from (one.source for one in found.inputs)
    if depth != 0:
        for child in found.children:
            yield from _sources(child, None if depth is None else depth - 1)


# --- commands of plans ---------------------------------------------------------------------------------


def add_why_option(parser: argparse.ArgumentParser) -> None:
    """Add `--why` to a command whose figures can be asked."""
    parser.add_argument(
        "--why",
        nargs="*",
        metavar="WORD",
        help="say how figures came about whose names hold these words; without words, list the names",
    )


def print_answers(answers: Answers, words: Sequence[str], means: Means, *, as_json: bool) -> None:
    """Print the answers of figures whose names hold all words, or the names where there are no words.

    Raises `WrongUsageError` where no name does, or where more do than anybody would read.
    """
    if not words:
        _print_names(answers, as_json=as_json)
        return
    names = named_by(answers, words)
    if as_json:
        data = [{"figure": name, **answer_data(answers[name](), means)} for name in names]
        _print_json({"format": MANY_FORMAT, "answers": data})
        return
    from planner.paper.reasons import explanation_lines

    found = [answers[name]() for name in names]
    for name, one in zip(names, found, strict=True):
        print(f"{name}:")
        print("\n".join(f"  {line}" for line in explanation_lines(one, depth=DEPTH)))
    _print_sources(found, means, depth=DEPTH)


def _print_names(answers: Answers, *, as_json: bool) -> None:
    if as_json:
        _print_json({"format": MANY_FORMAT, "figures": list(answers)})
    else:
        print("\n".join(answers) if answers else "There is no figure to ask about.")


def named_by(answers: Answers, words: Sequence[str]) -> list[str]:
    """Return the names of figures that hold all words, whole, in any case and order; exact ones alone.

    Raises `WrongUsageError` where none does, or more than are read with profit.
    """
    said = [part for word in words for part in word.casefold().split()]
    exact = [name for name in answers if name.casefold() == " ".join(said)]
    found = exact or [name for name in answers if set(said) <= set(name.casefold().split())]
    if not found:
        raise WrongUsageError(f'no figure is called "{" ".join(words)}".{_near(" ".join(said), answers)}')
    if len(found) > _MOST:
        raise WrongUsageError(
            f'{len(found)} figures are called "{" ".join(words)}", {_MOST} at most are told at once; say '
            f'more words, such as "{found[0]}".'
        )
    return found


def _near(said: str, answers: Answers) -> str:
    close = get_close_matches(said, list(answers), n=1)
    return f' Did you mean "{close[0]}"?' if close else " --why without words lists all."
