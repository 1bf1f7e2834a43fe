"""The watch over left-behind windows and threads really sees them."""

import threading

from PySide6.QtWidgets import QWidget

from tests.support.leaks import LeakWatch


def test_that_a_window_left_standing_is_seen_and_named(qapp):
    watch = LeakWatch()
    window = QWidget()
    window.setObjectName("forgotten")
    assert watch.left_behind() == ["window QWidget (forgotten)"]
    window.deleteLater()


def test_that_a_window_put_away_is_not_held_against_the_test(qapp):
    watch = LeakWatch()
    window = QWidget()
    window.show()
    window.close()
    window.deleteLater()
    assert watch.left_behind() == []


def test_that_a_child_is_no_window(qapp):
    window = QWidget()
    watch = LeakWatch()
    QWidget(window)
    assert watch.left_behind() == []
    window.deleteLater()


def test_that_a_running_thread_is_seen_and_named(qapp, monkeypatch):
    monkeypatch.setattr("tests.support.leaks.GRACE_S", 0.0)
    watch = LeakWatch()
    go_on = threading.Event()
    thread = threading.Thread(target=go_on.wait, name="counting")
    thread.start()
    assert watch.left_behind() == ["thread counting"]
    go_on.set()
    thread.join()
    assert watch.left_behind() == []


def test_that_the_two_hash_seeds_really_differ(under_two_hash_seeds):
    first, second = under_two_hash_seeds("print(hash('raft'))")
    assert first != second
