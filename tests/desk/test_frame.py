"""The panes of the window beside each other: what room they ask for."""

from planner.desk.places.listed import LISTED


def test_that_every_page_fits_a_window_of_1280_by_720(window):
    for listed in LISTED:
        window.workspace.run(f"view.{listed.key}")
        least = window.minimumSizeHint()
        assert least.width() <= 1280, listed.key
        assert least.height() <= 720, listed.key
