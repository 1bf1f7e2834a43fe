"""Alt and a letter does one thing: no two controls in sight share a letter, in any language of the window."""

import re
from collections import Counter

import pytest
from PySide6.QtWidgets import QAbstractButton, QApplication, QLabel, QTabBar

from planner.desk.languages import Words
from planner.desk.places.listed import LISTED


@pytest.fixture(params=["en", "es", "fil"])
def language(request, qapp):
    words = Words(request.param, qapp) if request.param != "en" else None
    if words is not None:
        qapp.installTranslator(words)
    yield request.param
    if words is not None:
        qapp.removeTranslator(words)


def letters_in_sight(window):
    shown = [each for each in window.findChildren(QAbstractButton) if each.isVisible() and each.isEnabled()]
    named = [each for each in window.findChildren(QLabel) if each.isVisible() and each.buddy() is not None]
    bars = [bar for bar in window.findChildren(QTabBar) if bar.isVisible()]
    texts = [action.text() for action in window.menuBar().actions()]
    texts += [each.text() for each in (*shown, *named)]
    texts += [bar.tabText(at) for bar in bars for at in range(bar.count())]
    found = (re.search(r"&([^&])", text.replace("&&", "")) for text in texts)
    return Counter(match.group(1).lower() for match in found if match is not None)


@pytest.mark.usefixtures("language")
def test_that_no_two_controls_in_sight_share_a_letter_of_alt(window):
    for page in LISTED:
        window.menus.actions[f"view.{page.key}"].trigger()
        QApplication.processEvents()
        letters = letters_in_sight(window)
        assert len(letters) > 5, page.key
        assert {letter for letter, many in letters.items() if many > 1} == set(), page.key
