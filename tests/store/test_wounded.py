"""A farm file with bytes that are not what they were: opened whole, or refused in a sentence."""

import random

import pytest

from planner.store.errors import StoreError, told
from planner.store.store import FarmStore
from tests.store.sample import holds_of, sample_farm


def test_that_what_the_database_says_in_broken_letters_is_damage():
    def broken():
        with told("farm.raftweek"):
            b"\xc5(".decode()

    with pytest.raises(StoreError, match="is damaged"):
        broken()


def answer(path):
    """Return the sentence that refuses a file; empty when it opens."""
    try:
        with FarmStore.open(path) as store:
            store.load()
            store.acts()
    except StoreError as refused:
        return str(refused)
    return ""


@pytest.mark.parametrize("seed", range(60))
def test_that_a_file_with_altered_bytes_opens_or_is_refused_in_a_sentence(tmp_path, seed):
    chance = random.Random(seed)
    path = tmp_path / "farm.raftweek"
    FarmStore.create(path, sample_farm(), holds_of(sample_farm())).close()
    content = bytearray(path.read_bytes())
    for _ in range(chance.choice((1, 4, 40))):
        content[chance.randrange(len(content))] = chance.randrange(256)
    path.write_bytes(content)
    assert answer(path) == "" or answer(path).endswith(".")
