"""What is remembered between runs comes back as what it was, and nonsense in the file does no harm."""

from pathlib import Path

import pytest
from PySide6.QtCore import QByteArray

from planner.desk import settings
from planner.desk.settings import MOST_RECENT, Memory, settings_file
from planner.desk.shade import ShadeChoice

SAMPLES = {
    settings.SHADE.key: "dark",
    settings.RECENT.key: ["one"],
    settings.COPIES.key: "{}",
    settings.OPEN.key: ["one"],
    settings.LANGUAGE.key: "es",
    settings.GEOMETRY.key: QByteArray(b"\x00\x01"),
    settings.ARRANGEMENT.key: QByteArray(b"\x02"),
    settings.PAPER.key: "A3",
    settings.CALENDAR_WEEKS.key: 13,
    settings.LABEL_PAPER.key: "Letter",
    settings.LABEL_SHIFT.key: "1x-0.5",
    settings.TRAY_SHEET.key: "3x8 60x30 15x28.5 0x0",
    settings.RAFT_SHEET.key: "2x5 85x55 20x11 0x0",
    settings.MEALS.key: 3,
    settings.SCOOP_G.key: 20.0,
    settings.INITIALS.key: "AB",
    settings.AREA_RULE.key: "uvi",
}


@pytest.mark.parametrize("setting", settings.ALL, ids=lambda setting: setting.key)
def test_that_a_setting_comes_back_from_the_file_with_its_type(tmp_path, setting):
    path = tmp_path / "desk.ini"
    memory = Memory(settings_file(path))
    memory.put(setting, SAMPLES[setting.key])
    memory.save()
    found = Memory(settings_file(path)).get(setting)
    assert found == SAMPLES[setting.key]
    assert isinstance(found, setting.kind)


@pytest.mark.parametrize("setting", settings.ALL, ids=lambda setting: setting.key)
def test_that_an_empty_file_gives_the_default(tmp_path, setting):
    assert Memory(settings_file(tmp_path / "none.ini")).get(setting) == setting.default


def test_that_nonsense_in_the_file_gives_the_system_s_look(tmp_path):
    path = tmp_path / "desk.ini"
    path.write_text("[look]\nshade=purple\n", encoding="utf-8")
    assert Memory(settings_file(path)).shade is ShadeChoice.SYSTEM


def test_that_the_latest_farm_comes_first_and_only_once(tmp_path):
    memory = Memory(settings_file(tmp_path / "desk.ini"))
    for name in ("a", "b", "a"):
        memory.remember(Path(name))
    assert memory.recent == (Path("a"), Path("b"))
    memory.forget(Path("a"))
    assert memory.recent == (Path("b"),)


def test_that_only_so_many_farms_are_remembered(tmp_path):
    memory = Memory(settings_file(tmp_path / "desk.ini"))
    for number in range(MOST_RECENT + 5):
        memory.remember(Path(str(number)))
    assert len(memory.recent) == MOST_RECENT
