"""Builds a folder that runs without Python, and tries it: python .ci/bundle.py [--out FOLDER]

Needs the library of the extra `bundle`. The folder holds the program, its resources and sample farms, the
licence texts of everything in it, and for Linux a desktop entry with its icon. The toolkit stays in files of
its own in there, so that they can be replaced, as its licence asks for.
"""

from __future__ import annotations

import argparse
import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from importlib import metadata
from importlib.util import find_spec
from pathlib import Path
from typing import Final

ROOT: Final = Path(__file__).resolve().parent.parent
NAME: Final = "raftweek"
UNWANTED: Final = ("scipy", "ortools", "pytest", "hypothesis", "mypy", "pandas", "tkinter", "PIL", "openpyxl")
LATE: Final = ("keyring.backends", "psycopg", "psycopg_binary", "icalendar", "segno", "xlsxwriter", "highspy")
"""Read in late by name or by a library itself, where no look at the source finds them."""
LICENCES: Final = ("LICEN", "COPYING", "NOTICE", "AUTHORS")
_SMOKE_S: Final = 120


def no_source() -> tuple[Path, ...]:
    """Return the files among the program's modules that are read and not run, such as steps of migration."""
    among = (each for each in (ROOT / "planner").rglob("*") if each.is_file())
    kept = (each for each in among if "__pycache__" not in each.parts and "_shipped" not in each.parts)
    return tuple(sorted(each for each in kept if each.suffix != ".py"))


def build(out: Path, work: Path) -> Path:
    """Build the folder and return it."""
    separator = os.pathsep
    data = [f"{ROOT / name}{separator}planner/_shipped/{name}" for name in ("resources", "sample_data")]
    entry = work / "start.py"
    entry.write_text("import sys\nfrom planner.cli import main\nsys.exit(main())\n", encoding="utf-8")
    command = [sys.executable, "-m", "PyInstaller", "--noconfirm", "--clean", "--onedir", "--name", NAME]
    command += ["--distpath", str(out), "--workpath", str(work / "build"), "--specpath", str(work)]
    command += ["--paths", str(ROOT), "--collect-submodules", "planner"]
    for each in data:
        command += ["--add-data", each]
    for source in no_source():
        command += ["--add-data", f"{source}{separator}{source.parent.relative_to(ROOT).as_posix()}"]
    # The program looks up which release of the toolkit it runs on.
    command += ["--copy-metadata", "PySide6-Essentials"]
    for module in UNWANTED:
        command += ["--exclude-module", module]
    for module in LATE:
        command += ["--hidden-import", module]
    subprocess.run([*command, str(entry)], check=True, cwd=work, stdout=subprocess.DEVNULL)
    return out / NAME


def add_papers(folder: Path) -> int:
    """Put licence texts, changelog and what a desktop wants beside the program; return how many texts."""
    texts = folder / "licences"
    texts.mkdir(exist_ok=True)
    for name in ("LICENSE", "CHANGELOG.md", "README.md"):
        shutil.copy(ROOT / name, folder / name)
    for name in ("raftweek.desktop", "raftweek-mime.xml"):
        shutil.copy(ROOT / "resources" / "bundle" / name, folder / name)
    shutil.copy(ROOT / "resources" / "icons" / "raftweek.svg", folder / "raftweek.svg")
    inside = folder / "_internal"
    count = 0
    for package in metadata.distributions():
        tops = {Path(str(file)).parts[0] for file in package.files or ()}
        if not any((inside / top).exists() for top in tops if not top.endswith(".dist-info")):
            continue
        for file in package.files or ():
            parts = Path(str(file)).parts
            if parts[-1].upper().startswith(LICENCES) or "licenses" in {part.lower() for part in parts[:-1]}:
                source = Path(str(package.locate_file(file)))
                if source.is_file():
                    shutil.copy(source, texts / f"{package.metadata['Name']}-{source.name}")
                    count += 1
    return count


def _tries(sample: str) -> Iterator[list[str]]:
    """Commands that between them read every folder of what ships, and all that is read in late."""
    yield ["check", sample]
    yield ["forecast", sample, "--weeks", "2", "--json"]
    yield ["import", sample, "farm.raftweek"]
    yield ["week", "farm.raftweek", "--date", "2027-04-08"]
    yield ["calendar", sample, "--pdf", "calendar.pdf", "--ics", "calendar.ics"]
    yield ["print", "hand-over", sample, "--second", "spanish", "--out", "booklet.pdf"]
    yield ["labels", sample, "--out", "labels.pdf", "--weeks", "4"]
    yield ["tables", "farm.raftweek", "--xlsx", "tables.xlsx"]
    yield ["plan", "farm.raftweek", "--weeks", "12", "--json"]
    yield ["verify", "--json"]


def smoke(folder: Path) -> None:
    """Run the program of the folder: its commands, and its window until the farm is painted."""
    program = folder / (f"{NAME}.exe" if os.name == "nt" else NAME)
    with tempfile.TemporaryDirectory() as home:
        settings = {"HOME": home, "USERPROFILE": home, "APPDATA": home, "QT_QPA_PLATFORM": "offscreen"}
        kept = {key: os.environ[key] for key in ("PATH", "SYSTEMROOT", "LANG") if key in os.environ}
        where = {**kept, **settings}
        sample = folder / "_internal" / "planner" / "_shipped" / "sample_data" / "backyard.toml"
        for words in _tries(str(sample)):
            done = subprocess.run(
                [program, *words],
                env=where,
                cwd=home,
                stdout=subprocess.DEVNULL,
                timeout=_SMOKE_S,
                check=False,
            )
            # Published cases that miss are told by 1.
            assert done.returncode in ((0, 1) if words[0] == "verify" else (0,)), (words, done.returncode)
        for name in ("calendar.pdf", "booklet.pdf"):
            assert (Path(home) / name).read_bytes().startswith(b"%PDF"), name
        assert (Path(home) / "calendar.ics").read_bytes().startswith(b"BEGIN:VCALENDAR")
        timed = {**where, "RAFTWEEK_TIMING": "1"}
        said = subprocess.run(
            [program], env=timed, capture_output=True, text=True, timeout=_SMOKE_S, check=True
        )
        assert "farm-painted" in said.stderr, said.stderr


def main() -> int:
    """Build, add papers, try; print where the folder is and how large."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawTextHelpFormatter)
    parser.add_argument("--out", type=Path, default=ROOT / "dist")
    parsed = parser.parse_args()
    with tempfile.TemporaryDirectory() as work:
        folder = build(parsed.out.resolve(), Path(work))
    texts = add_papers(folder)
    smoke(folder)
    size = sum(each.lstat().st_size for each in folder.rglob("*") if not each.is_dir())
    for module in LATE:
        if find_spec(module.partition(".")[0]) is None:
            print(f"without {module}, which is not installed here", file=sys.stderr)
    print(f"{folder}: {size / 1e6:.0f} MB, {texts} licence texts, runs")
    return 0


if __name__ == "__main__":
    sys.exit(main())
