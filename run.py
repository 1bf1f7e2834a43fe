"""Opens Raftweek, or passes its tests, on a machine that has Python and nothing else.

    python3 run.py [ARGUMENTS]             open the planner, or hand a command to it
    python3 run.py test                    style, types and every test
    python3 run.py test [PYTEST ARGUMENTS] only the tests that are named

Only the standard library is used here, and nothing of the planner is imported: this file runs before any of
it can. It makes the folder .venv beside itself, fills it from a lock file with hashes, and fills it again
when the lock changes.
"""

from __future__ import annotations

import ctypes
import hashlib
import importlib.util
import json
import os
import shutil
import subprocess
import sys
import time
from collections.abc import Callable, Iterable, Mapping, Sequence
from contextlib import suppress
from pathlib import Path
from typing import NamedTuple

OLDEST_PYTHON = (3, 11)


def version_refusal(version: Sequence[int]) -> str | None:
    """Return why this Python cannot be used, or None when it can."""
    if tuple(version[:2]) >= OLDEST_PYTHON:
        return None
    have = ".".join(str(part) for part in version[:2])
    need = ".".join(str(part) for part in OLDEST_PYTHON)
    return f"Raftweek needs Python {need} or newer; this is Python {have}."


# Said before the rest of the file is read, which an old Python could stumble over.
if (_refusal := version_refusal(sys.version_info[:2])) is not None:
    sys.exit(_refusal)

ROOT = Path(__file__).resolve().parent
RUNTIME_LOCK = "requirements.lock"
TEST_LOCK = "requirements-test.lock"
STAMP = "raftweek-installed.json"
COMPILED_STAMP = "raftweek-compiled"
FIRST_VIEW_STAMP = "raftweek-first-view"
# A machine on which it takes longer is better off without.
MOST_FIRST_VIEW_S = 60
INTERRUPTED = 130


class SystemPart(NamedTuple):
    """Something of the operating system: the file or command looked for, and its Debian package."""

    name: str
    package: str
    is_command: bool = False


# What Qt opens before it can draw anything at all, even without a screen.
DRAWING_PARTS = (
    SystemPart("libEGL.so.1", "libegl1"),
    SystemPart("libGL.so.1", "libgl1"),
    SystemPart("libxkbcommon.so.0", "libxkbcommon0"),
    SystemPart("libdbus-1.so.3", "libdbus-1-3"),
    SystemPart("libfontconfig.so.1", "libfontconfig1"),
    SystemPart("libglib-2.0.so.0", "libglib2.0-0"),
)
# What it opens besides for a window on an X screen.
WINDOW_PARTS = (
    SystemPart("libxcb-cursor.so.0", "libxcb-cursor0"),
    SystemPart("libxcb-icccm.so.4", "libxcb-icccm4"),
    SystemPart("libxcb-keysyms.so.1", "libxcb-keysyms1"),
    SystemPart("libxcb-shape.so.0", "libxcb-shape0"),
    SystemPart("libxkbcommon-x11.so.0", "libxkbcommon-x11-0"),
)
# What the tests read printed pages and open real windows with.
TEST_PARTS = (
    SystemPart("pdftotext", "poppler-utils", is_command=True),
    SystemPart("pdftoppm", "poppler-utils", is_command=True),
    SystemPart("Xvfb", "xvfb", is_command=True),
    SystemPart("xvfb-run", "xvfb", is_command=True),
    SystemPart("xauth", "xauth", is_command=True),
    SystemPart("pg_ctlcluster", "postgresql", is_command=True),
)
# Packages that were renamed when Debian 13 and Ubuntu 24.04 moved to 64-bit time.
RENAMED_FOR_LONG_TIME = {"libglib2.0-0": "libglib2.0-0t64"}
FIRST_WITH_LONG_TIME = {"debian": 13.0, "ubuntu": 24.04}


class Step(NamedTuple):
    """One check of the test command: its name in the summary, and what is run."""

    name: str
    command: list[str]
    settings: Mapping[str, str]


# --- the operating system ----------------------------------------------------------------------------------


def is_present(part: SystemPart) -> bool:
    """Return whether a command is on the path, or a library can really be opened."""
    if part.is_command:
        return shutil.which(part.name) is not None
    try:
        ctypes.CDLL(part.name)
    except OSError:
        return False
    return True


def missing_parts(
    parts: Iterable[SystemPart], *, present: Callable[[SystemPart], bool]
) -> tuple[SystemPart, ...]:
    """Return the parts that `present` does not find, in their order."""
    return tuple(part for part in parts if not present(part))


def read_release(text: str) -> dict[str, str]:
    """Read the lines NAME=value of an os-release file, quotes taken off."""
    pairs = (line.split("=", 1) for line in text.splitlines() if "=" in line and not line.startswith("#"))
    return {name.strip(): value.strip().strip("\"'") for name, value in pairs}


def is_debian_like(release: Mapping[str, str]) -> bool:
    """Return whether packages of this system come through apt-get under Debian's names."""
    family = {release.get("ID", ""), *release.get("ID_LIKE", "").split()}
    return bool(family & {"debian", "ubuntu"})


def has_long_time(release: Mapping[str, str]) -> bool:
    """Return whether this release carries the package names of the move to 64-bit time."""
    first = FIRST_WITH_LONG_TIME.get(release.get("ID", ""))
    try:
        number = float(release.get("VERSION_ID", ""))
    except ValueError:
        # A rolling release names no number; only Debian's testing and unstable do that here.
        return first is not None
    return first is not None and number >= first


def package_names(parts: Iterable[SystemPart], release: Mapping[str, str]) -> list[str]:
    """Return the packages that hold these parts under this release's names, each once, sorted."""
    wanted = {part.package for part in parts}
    if has_long_time(release):
        wanted = {RENAMED_FOR_LONG_TIME.get(name, name) for name in wanted}
    return sorted(wanted)


def advice(missing: Sequence[SystemPart], release: Mapping[str, str]) -> str:
    """Return the one line that tells a person how to add what is missing."""
    names = ", ".join(part.name for part in missing)
    if is_debian_like(release):
        packages = " ".join(package_names(missing, release))
        return f"Missing from this system: {names}. Add them with: sudo apt-get install -y {packages}"
    return f"Missing from this system: {names}. Add the packages of your system that hold them."


def this_release() -> dict[str, str]:
    """Return what this Linux says about itself; empty where it says nothing."""
    path = Path("/etc/os-release")
    return read_release(path.read_text(encoding="utf-8")) if path.is_file() else {}


def may_install(release: Mapping[str, str]) -> bool:
    """Return whether this process may add system packages by itself."""
    is_root = hasattr(os, "geteuid") and os.geteuid() == 0
    return is_root and is_debian_like(release) and shutil.which("apt-get") is not None


def apt_install(packages: Sequence[str]) -> bool:
    """Add packages without asking; return whether that went well."""
    say(f"Adding system packages: {' '.join(packages)}")
    settings = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    # An old list of packages may still do, so a failed update is not the end.
    subprocess.call(["apt-get", "update", "-qq"], env=settings)
    command = ["apt-get", "install", "-y", "-qq", "--no-install-recommends", *packages]
    return subprocess.call(command, env=settings, stdout=subprocess.DEVNULL) == 0


def see_to_parts(
    parts: Sequence[SystemPart], *, present: Callable[[SystemPart], bool] = is_present
) -> str | None:
    """Add the missing parts where that is allowed; return the advice to print when some stay missing."""
    missing = missing_parts(parts, present=present)
    release = this_release()
    if missing and may_install(release):
        apt_install(package_names(missing, release))
        missing = missing_parts(missing, present=present)
    return advice(missing, release) if missing else None


# --- the folder .venv --------------------------------------------------------------------------------------


def environment_python(environment: Path, *, windows: bool) -> Path:
    """Return where the interpreter of a virtual environment lies."""
    return environment / "Scripts" / "python.exe" if windows else environment / "bin" / "python"


def environment_fits(settings: str, version: Sequence[int]) -> bool:
    """Return whether the text of a pyvenv.cfg is of this very Python, major and minor."""
    found = read_release(settings.replace(" = ", "=")).get("version", "")
    return found.split(".")[:2] == [str(part) for part in version[:2]]


def can_make_environment() -> bool:
    """Return whether this Python can make an environment with pip in it; Debian splits that off."""
    return all(importlib.util.find_spec(name) is not None for name in ("venv", "ensurepip"))


def see_to_environment_maker() -> str | None:
    """Add Debian's half of the venv module where allowed; return advice when it stays missing."""
    major, minor = sys.version_info[:2]
    part = SystemPart("the venv module of Python", f"python{major}.{minor}-venv")

    def present(_part: SystemPart) -> bool:
        importlib.invalidate_caches()
        return can_make_environment()

    return see_to_parts([part], present=present)


def make_environment(environment: Path) -> str | None:
    """Make the environment unless a fitting one is there; return what went wrong, if anything did."""
    settings = environment / "pyvenv.cfg"
    python = environment_python(environment, windows=os.name == "nt")
    is_whole = python.exists() and settings.is_file()
    if is_whole and environment_fits(settings.read_text(encoding="utf-8"), sys.version_info[:2]):
        return None
    problem = see_to_environment_maker()
    if problem is not None:
        return problem
    say(f"Making {environment.name} ...")
    code = subprocess.call([sys.executable, "-m", "venv", "--clear", str(environment)])
    return None if code == 0 else f"The folder {environment} could not be made; see the lines above."


def digest(path: Path) -> str:
    """Return the fingerprint of a file's contents, line ends of any system read alike."""
    return hashlib.sha256(path.read_bytes().replace(b"\r\n", b"\n")).hexdigest()


def is_installed(stamp: Path, lock: Path) -> bool:
    """Return whether the stamp says that this very lock is what the environment holds."""
    try:
        held = json.loads(stamp.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return False
    return isinstance(held, dict) and held.get(lock.name) == digest(lock)


def stamp_text(locks: Iterable[Path]) -> str:
    """Return what the stamp says once these locks are installed."""
    return json.dumps({lock.name: digest(lock) for lock in locks}, indent=1)


def install(environment: Path, *, for_tests: bool) -> str | None:
    """Bring the environment to the lock; return what went wrong, if anything did."""
    lock = ROOT / (TEST_LOCK if for_tests else RUNTIME_LOCK)
    stamp = environment / STAMP
    if is_installed(stamp, lock):
        return None
    say(f"Installing what {lock.name} lists ...")
    python = environment_python(environment, windows=os.name == "nt")
    # Nothing is built here: a build would fetch tools that no hash vouches for.
    options = ["--quiet", "--disable-pip-version-check", "--require-hashes", "--only-binary", ":all:"]
    if subprocess.call([str(python), "-m", "pip", "install", *options, "-r", str(lock)]) != 0:
        return "The libraries could not be installed. Is this machine online? The lines above say more."
    # The test lock holds the runtime lock whole, so it stands for both.
    held = [ROOT / RUNTIME_LOCK, ROOT / TEST_LOCK] if for_tests else [lock]
    stamp.write_text(stamp_text(held), encoding="utf-8")
    return None


def latest_change(folder: Path) -> int:
    """Return when any Python file in a folder was changed last, in nanoseconds; 0 when there is none."""
    return max((each.stat().st_mtime_ns for each in folder.rglob("*.py")), default=0)


def has_screen(settings: Mapping[str, str], *, system: str) -> bool:
    """Return whether a window can come up; only Linux can lack a screen."""
    names = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    return system != "linux" or any(settings.get(name) for name in names)


def compile_ahead(python: Path, folder: Path, stamp: Path) -> None:
    """Compile what has changed since the stamp was set, so that the window comes up sooner.

    Python compiles by itself while it reads in, but does not keep it where it is told not to, and the first
    start would wait for it. Nothing stale is ever run: Python looks at the time of each source itself.
    """
    with suppress(OSError):
        begin = time.time_ns()
        if stamp.exists() and stamp.stat().st_mtime_ns > latest_change(folder):
            return
        subprocess.call([str(python), "-P", "-m", "compileall", "-qq", str(folder)])
        stamp.touch()
        os.utime(stamp, ns=(begin, begin))


def see_to_first_view(python: Path, stamp: Path) -> None:
    """Let the planner take the picture that its very first start shows, once; go on whatever comes of it."""
    if stamp.exists():
        return
    say("Preparing the first view of the sample farm ...")
    with suppress(OSError, subprocess.SubprocessError):
        subprocess.run(
            [str(python), "-P", "-m", "planner.bootstrap_first"],
            env=child_settings({}),
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
            timeout=MOST_FIRST_VIEW_S,
            check=False,
        )
    with suppress(OSError):
        stamp.touch()


# --- the two commands --------------------------------------------------------------------------------------


def say(line: str) -> None:
    """Tell the person at the terminal, apart from what a command prints for a program to read."""
    print(line, file=sys.stderr, flush=True)


def child_settings(settings: Mapping[str, str]) -> dict[str, str]:
    """Return this process's environment with the planner findable from any folder."""
    older = os.environ.get("PYTHONPATH")
    path = os.pathsep.join([str(ROOT), older]) if older else str(ROOT)
    return {**os.environ, "PYTHONPATH": path, "PYTHONUTF8": "1", **settings}


def prepare(*, for_tests: bool) -> str | None:
    """Make and fill the environment; return what went wrong, if anything did."""
    environment = ROOT / ".venv"
    return make_environment(environment) or install(environment, for_tests=for_tests)


def open_planner(arguments: Sequence[str]) -> int:
    """Run the planner with these arguments and return its exit code."""
    if sys.platform == "linux":
        problem = see_to_parts([*DRAWING_PARTS, *WINDOW_PARTS])
        if problem is not None:
            say(problem)
            if not arguments:  # a command may well do without a window; the window cannot
                return 1
    problem = prepare(for_tests=False)
    if problem is not None:
        say(problem)
        return 1
    python = environment_python(ROOT / ".venv", windows=os.name == "nt")
    compile_ahead(python, ROOT / "planner", ROOT / ".venv" / COMPILED_STAMP)
    if not arguments and has_screen(os.environ, system=sys.platform):
        see_to_first_view(python, ROOT / ".venv" / FIRST_VIEW_STAMP)
    # -P: a folder named planner where the person stands must not be taken for ours.
    return subprocess.call([str(python), "-P", "-m", "planner", *arguments], env=child_settings({}))


def test_steps(python: Path, *, has_screen_server: bool) -> list[Step]:
    """Return the checks of the whole test command in their order."""
    run = [str(python), "-m"]
    offscreen = {"QT_QPA_PLATFORM": "offscreen"}
    steps = [
        Step("style", [*run, "ruff", "check", "."], {}),
        Step("format", [*run, "ruff", "format", "--check", "."], {}),
        Step("types", [*run, "mypy"], {}),
    ]
    if has_screen_server:
        command = ["xvfb-run", "-a", *run, "pytest", "-q", "-m", "x11", "tests"]
        steps.append(Step("tests in a real window", command, {"QT_QPA_PLATFORM": "xcb"}))
    steps.append(Step("tests", [*run, "pytest"], offscreen))
    return steps


def summary(results: Sequence[tuple[str, int]]) -> str:
    """Return the one line that says how every step ended."""
    return "; ".join(f"{name}: {'passed' if code == 0 else 'FAILED'}" for name, code in results)


def run_steps(steps: Sequence[Step], *, call: Callable[[Step], int]) -> int:
    """Run every step, also after a failed one; return 0 only if all went well."""
    results = []
    for step in steps:
        say(f"== {step.name}")
        results.append((step.name, call(step)))
    say(summary(results))
    return max((abs(code) for _name, code in results), default=0)


def call_step(step: Step) -> int:
    """Run one step in the root folder and return its exit code."""
    return subprocess.call(step.command, cwd=ROOT, env=child_settings(step.settings))


def run_tests(arguments: Sequence[str]) -> int:
    """Run the whole test command, or only pytest when it is given arguments; return the exit code."""
    on_linux = sys.platform == "linux"
    problem = see_to_parts([*DRAWING_PARTS, *WINDOW_PARTS, *TEST_PARTS]) if on_linux else None
    problem = problem or prepare(for_tests=True)
    if problem is not None:
        say(problem)
        return 1
    python = environment_python(ROOT / ".venv", windows=os.name == "nt")
    if arguments:
        return call_step(Step("tests", [str(python), "-m", "pytest", *arguments], {}))
    return run_steps(test_steps(python, has_screen_server=on_linux), call=call_step)


def main(arguments: Sequence[str]) -> int:
    """Tell the two commands apart."""
    try:
        return run_tests(arguments[1:]) if arguments[:1] == ["test"] else open_planner(arguments)
    except KeyboardInterrupt:
        return INTERRUPTED


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
