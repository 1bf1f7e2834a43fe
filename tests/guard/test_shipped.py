"""Shipped files are found from a checkout and from a wheel, and nothing outside them is."""

import os
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

from planner.shipped import shipped_path

FIND_FONTS = (
    "from planner.shipped import shipped_path;"
    "print(sorted(p.name for p in shipped_path('resources', 'fonts').glob('*.ttf')))"
)


def test_that_a_checkout_finds_them_beside_the_package(root):
    assert shipped_path("resources", "fonts") == root / "resources" / "fonts"
    assert shipped_path("resources", "fonts", "DejaVuSans.ttf").is_file()


@pytest.mark.parametrize("parts", [(), ("planner",), ("..", "resources"), ("",)])
def test_that_a_folder_that_is_not_shipped_is_refused_by_name(parts):
    with pytest.raises(ValueError, match="is none of resources, sample_data"):
        shipped_path(*parts)


@pytest.mark.parametrize("part", ["..", str(Path(os.sep).resolve())])
def test_that_a_path_cannot_lead_out_of_the_shipped_files(part):
    with pytest.raises(ValueError, match="leads out"):
        shipped_path("resources", part, "secret.txt")


@pytest.fixture(scope="module")
def wheel(tmp_path_factory, request):
    folder = tmp_path_factory.mktemp("wheel")
    root = request.config.rootpath
    command = [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(folder)]
    done = subprocess.run(command, cwd=root, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    (path,) = folder.glob("raftweek-*.whl")
    return path


@pytest.fixture
def unpacked_wheel(wheel, tmp_path):
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(tmp_path)
    return tmp_path


def test_that_an_installed_wheel_finds_them_inside_itself(unpacked_wheel, root):
    environment = {**os.environ, "PYTHONPATH": str(unpacked_wheel)}
    done = subprocess.run(
        [sys.executable, "-c", FIND_FONTS],
        env=environment,
        cwd=unpacked_wheel,
        capture_output=True,
        text=True,
        check=True,
    )
    expected = sorted(path.name for path in (root / "resources" / "fonts").glob("*.ttf"))
    assert len(expected) >= 4
    assert done.stdout.strip() == str(expected)


def test_that_the_wheel_carries_both_licences_and_neither_tests_nor_caches(wheel):
    with zipfile.ZipFile(wheel) as archive:
        names = archive.namelist()
    assert any(name.endswith("licenses/LICENSE") for name in names)
    assert any(name.endswith("LICENCE-DejaVu.txt") for name in names)
    assert [name for name in names if name.startswith("tests") or "__pycache__" in name] == []
