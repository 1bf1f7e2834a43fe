"""Feeds broken farm texts and broken farm files to the readers, and counts how they are answered.

    python benchmarks/fuzz_readers.py [--seconds 3600] [--seed 1]

Each text starts from a sample farm, is cut, doubled, shuffled and sprinkled with what readers dislike, and
must be read or refused with faults in words, within a few seconds of the processor. Each file is a sample
file with bytes altered or cut off, and must open or be refused in a sentence. Anything else is printed and
ends the run with 1.
"""

from __future__ import annotations

import argparse
import random
import sys
import tempfile
import time
import traceback
from collections import Counter
from pathlib import Path
from typing import Final

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from planner.bootstrap import Means
from planner.farm.faults import FarmFaultError
from planner.store.errors import StoreError
from planner.store.store import FarmStore
from planner.store.text import read_farm_text

ROOT: Final = Path(__file__).resolve().parent.parent
SAMPLES: Final = tuple(sorted((ROOT / "sample_data").glob("*.toml")))
SLOWEST_S: Final = 10.0
TEXTS_A_FILE: Final = 5
SPRINKLES: Final = (
    *(
        "\x00",
        "\ufeff",
        "\u202e",
        "'",
        '"',
        "[[",
        "]]",
        "[[[[[[[[",
        "{",
        "=",
        "\\u0041",
        "\n",
        "\r",
        "\t",
        "#",
    ),
    *("1e999", "-1", "nan", "0x7f", "9" * 400, "2026-02-30", "24:00", "true", ".", "..", "é", "🐟", "id = "),
)


def wounded_text(text: str, chance: random.Random) -> str:
    """Return a text with a few wounds."""
    for _ in range(chance.randint(1, 6)):
        at, until = sorted(chance.randrange(len(text) + 1) for _ in range(2))
        until = min(until, at + chance.choice((1, 8, 80, 800)))
        part = text[at:until]
        kind = chance.randrange(5)
        if kind == 0:
            text = text[:at] + text[until:]
        elif kind == 1:
            text = text[:at] + part * chance.randint(2, 5) + text[until:]
        elif kind == 2:
            text = text[:at] + "".join(chance.sample(part, len(part))) + text[until:]
        elif kind == 3:
            text = text[:at] + chance.choice(SPRINKLES) * chance.choice((1, 1, 1, 50)) + text[at:]
        else:
            lines = text.split("\n")
            one, other = chance.randrange(len(lines)), chance.randrange(len(lines))
            lines[one], lines[other] = lines[other], lines[one]
            text = "\n".join(lines)
    return text


def wounded_bytes(content: bytes, chance: random.Random) -> bytes:
    """Return the bytes of a file with a few of them altered, or cut short."""
    wounded = bytearray(content)
    for _ in range(chance.choice((1, 1, 4, 40))):
        wounded[chance.randrange(len(wounded))] = chance.randrange(256)
    return bytes(wounded[: chance.randrange(len(wounded))]) if chance.random() < 0.2 else bytes(wounded)


def try_text(text: str, means: Means) -> str:
    """Return how a text was answered."""
    try:
        read_farm_text(text, crop_codes=means.crop_codes, more_faults=means.faults)
    except FarmFaultError as refused:
        return (
            "text refused"
            if all(fault.sentence() for fault in refused.faults)
            else "text refused without words"
        )
    return "text read"


def try_file(content: bytes, path: Path, means: Means) -> str:
    """Return how a file was answered."""
    path.write_bytes(content)
    try:
        with FarmStore.open(path) as store:
            means.faults(store.load())
            store.acts()
    except (StoreError, FarmFaultError) as refused:
        return "file refused" if str(refused) else "file refused without words"
    finally:
        for each in path.parent.iterdir():
            each.unlink()
    return "file opened"


def main() -> int:
    """Run until the time is over; print the counts."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawTextHelpFormatter)
    parser.add_argument("--seconds", type=float, default=3600.0)
    parser.add_argument("--seed", type=int, default=1)
    parsed = parser.parse_args()
    chance, means, counts = random.Random(parsed.seed), Means(), Counter[str]()
    texts = [sample.read_text(encoding="utf-8") for sample in SAMPLES]
    end, slowest = time.monotonic() + parsed.seconds, 0.0
    with tempfile.TemporaryDirectory() as home, tempfile.TemporaryDirectory() as folder:
        whole = Path(home) / "whole.raftweek"
        farm = means.read(SAMPLES[0]).farm
        FarmStore.create(whole, farm, means.holds(farm)).close()
        content = whole.read_bytes()
        while time.monotonic() < end:
            began = time.process_time()
            state = chance.getstate()
            try:
                if sum(counts.values()) % (TEXTS_A_FILE + 1):
                    answer = try_text(wounded_text(chance.choice(texts), chance), means)
                else:
                    answer = try_file(wounded_bytes(content, chance), Path(folder) / "broken.raftweek", means)
            except Exception:  # noqa: BLE001 - that is what is looked for
                traceback.print_exc()
                print(f"after {sum(counts.values())} tries; the state of the dice: {hash(state)}")
                return 1
            counts[answer] += 1
            slowest = max(slowest, time.process_time() - began)
    print(
        f"{sum(counts.values())} tries in {parsed.seconds:.0f} s, slowest {slowest:.2f} s: "
        + ", ".join(f"{count} {what}" for what, count in sorted(counts.items()))
    )
    return 0 if slowest < SLOWEST_S and not any("without words" in what for what in counts) else 1


if __name__ == "__main__":
    sys.exit(main())
