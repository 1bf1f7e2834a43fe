"""From the first start to a printed PDF without a mouse: nothing is done here but pressing keys."""

import pytest
from PySide6.QtCore import QEvent, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFileDialog, QLineEdit

from planner.desk.doors.first import FirstDialog
from planner.desk.newfarm.dialog import NewFarmDialog
from planner.desk.printing import PrintDialog

KEY, MOD = Qt.Key, Qt.KeyboardModifier
LATEST = 40
"""No field of the form is more steps of Tab away."""


@pytest.fixture(autouse=True)
def dialogs_of_the_toolkit():
    """Let files be chosen in the toolkit's own dialog, which a test can press keys in."""
    QApplication.setAttribute(Qt.ApplicationAttribute.AA_DontUseNativeDialogs, on=True)
    yield
    QApplication.setAttribute(Qt.ApplicationAttribute.AA_DontUseNativeDialogs, on=False)


def press(key, modifier=MOD.NoModifier):
    """Press a key where the keyboard is, once windows that came or went have handed it over."""
    QApplication.processEvents()
    QTest.keyClick(QApplication.focusWidget() or QApplication.activeWindow(), key, modifier)


def write(text):
    """Type over what stands in the field that has the keyboard."""
    press(KEY.Key_A, MOD.ControlModifier)
    QTest.keyClicks(QApplication.focusWidget(), text)


def tab_to(name):
    """Go on with Tab until a control has the keyboard whose spoken name begins like this."""
    for _ in range(LATEST):
        if QApplication.focusWidget().accessibleName().startswith(name):
            return
        press(KEY.Key_Tab)
    raise AssertionError(f"no way by Tab to {name}")


@pytest.fixture
def has_come(qtbot):
    """Wait until a dialog of a kind has the keyboard."""

    def wait(kind):
        def there():
            active = QApplication.activeWindow()
            return isinstance(active, kind) and QApplication.focusWidget() is not None

        qtbot.waitUntil(there, timeout=20_000)

    return wait


def fill_in_the_farm():
    write("Key farm")
    tab_to("Water in the fish tank")
    write("1000")
    tab_to("Number of fish")
    write("40")
    tab_to("Mean weight of one fish")
    write("50")
    tab_to("Length")
    write("2.4")
    tab_to("Width")
    write("1.2")
    tab_to("Crop")
    QTest.keyClicks(QApplication.focusWidget(), "Leaf")
    tab_to("Wanted each week")
    write("10")


@pytest.mark.qt_log_ignore("This plugin does not support grabbing the keyboard")  # for names that drop down
def test_that_keys_alone_lead_from_the_first_start_to_a_printed_calendar(
    qtbot, desk_in, rooms, tmp_path, has_come
):
    window = desk_in()
    window.activateWindow()
    press(KEY.Key_N, MOD.ControlModifier)
    has_come(NewFarmDialog)
    fill_in_the_farm()
    press(KEY.Key_Return)
    has_come(QFileDialog)
    assert isinstance(QApplication.focusWidget(), QLineEdit)
    press(KEY.Key_Return)
    has_come(FirstDialog)
    (made,) = [call for call in rooms.calls if call[0] == "new"]
    assert made[2].name == "Key farm"
    press(KEY.Key_Return)
    has_come(PrintDialog)
    press(KEY.Key_D, MOD.AltModifier)
    has_come(QFileDialog)
    write(str(tmp_path / "calendar.pdf"))
    press(KEY.Key_Return)
    qtbot.waitUntil((tmp_path / "calendar.pdf").exists)
    assert (tmp_path / "calendar.pdf").read_bytes().startswith(b"%PDF")
    qtbot.waitUntil(lambda: "calendar.pdf" in window.messages.words)
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    window.activateWindow()
    press(KEY.Key_Escape)
    assert window.messages.words == ""
