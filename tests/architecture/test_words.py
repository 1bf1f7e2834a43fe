"""No file of the project names a place on one person's machine or the address of a package registry."""

import os
import re
import subprocess
from pathlib import Path

import pytest

# Written in pieces, so that this file does not find itself.
MACHINE_PATHS = (
    "/" + "work/",
    "/" + "home/",
    "/" + "root/",
    "/" + "Users/",
    "/" + "tmp/",
    "C:" + "\\\\Users",
)
REGISTRIES = tuple(
    "".join(pieces)
    for pieces in (
        ("pypi", ".org"),
        ("python", "hosted.org"),
        ("npm", "js.org"),
        ("npm", "js.com"),
        ("deb.", "debian.org"),
        ("archive.", "ubuntu.com"),
        ("conda", ".anaconda.org"),
        ("proxy.", "golang.org"),
        ("--extra-", "index-url"),
        ("--", "index-url"),
    )
)
# A machine path begins a word; the same letters inside a longer path are something else.
FORBIDDEN = re.compile(
    "|".join([*(rf"(?<![\w.\]}}~-]){path}\w" for path in MACHINE_PATHS), *map(re.escape, REGISTRIES)])
)
BINARY = {".ttf", ".png", ".pdf", ".raftweek", ".ico", ".qm"}
KEPT_OUT = {"uv.lock", ".venv", "poetry.lock", "Pipfile.lock"}


# What the tools make, for a copy of the project that came without its history.
MADE_BY_TOOLS = re.compile(
    r"^(\.git|\.venv|\..*_cache|\.hypothesis|__pycache__|build|dist|out|.*\.egg-info)$"
)


def tracked_files(root):
    command = ["git", "ls-files", "-z", "--cached"]
    try:
        done = subprocess.run(command, cwd=root, capture_output=True, text=True, check=True)
    except (FileNotFoundError, subprocess.CalledProcessError):
        return all_files(root)
    return [root / name for name in done.stdout.split("\0") if name]


def all_files(root):
    found = []
    for folder, inner, names in os.walk(root):
        inner[:] = sorted(name for name in inner if not MADE_BY_TOOLS.match(name))
        found += [Path(folder, name) for name in sorted(names)]
    return found


def faults(text):
    return [
        f"{number}: {line.strip()}"
        for number, line in enumerate(text.splitlines(), 1)
        if FORBIDDEN.search(line)
    ]


def test_that_no_tracked_file_names_a_machine_or_a_registry(root):
    found = {}
    for path in tracked_files(root):
        if path.suffix in BINARY or not path.is_file():
            continue
        lines = faults(path.read_bytes().decode("utf-8", errors="replace"))
        if lines:
            found[str(path.relative_to(root))] = lines
    assert found == {}


def test_that_no_lock_with_addresses_and_no_environment_is_tracked(root):
    assert [path for path in tracked_files(root) if KEPT_OUT & set(path.parts)] == []


@pytest.mark.parametrize(
    "word", ["see /wor" + "k/main/x", '"/ho' + 'me/ann/x"', "https://py" + "pi.org/simple"]
)
def test_that_a_forbidden_word_is_seen(word):
    assert len(faults(f"fine\n{word}\n")) == 1


@pytest.mark.parametrize(
    "word", ["docs/wo" + "rk/plan.md", "homework/1", "/usr/bin/env", "a / work b", "tests/tm" + "p/x"]
)
def test_that_an_innocent_word_is_let_through(word):
    assert faults(word) == []
