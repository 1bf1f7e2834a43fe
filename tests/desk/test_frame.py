"""The panes of the window beside each other: what room they ask for."""

from planner.desk.places.listed import LISTED


def test_that_a_wide_page_seen_before_does_not_widen_the_window_of_a_narrow_one(window):
    tabs, asked = window.workspace.tabs, {}
    for listed in (*LISTED, *LISTED):  # twice, for a page is made when it is seen first
        window.workspace.run(f"view.{listed.key}")
        asked[listed.key] = tabs.minimumSizeHint().width()
    widest = max(asked[listed.key] for listed in LISTED if listed.wide)
    assert all(asked[listed.key] < widest for listed in LISTED if not listed.wide)


def test_that_every_page_fits_a_window_of_1280_by_720(window):
    for listed in LISTED:
        window.workspace.run(f"view.{listed.key}")
        least = window.minimumSizeHint()
        assert least.width() <= 1280, listed.key
        assert least.height() <= 720, listed.key
