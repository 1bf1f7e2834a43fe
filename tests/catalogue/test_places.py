"""The shipped table of countries and zones."""

from datetime import datetime
from zoneinfo import ZoneInfo, available_timezones

from planner.catalogue.places import zone_places


def test_that_every_zone_is_one_the_machine_knows_and_lies_on_the_globe():
    known = available_timezones()
    for place in zone_places():
        assert place.time_zone in known, place
        assert -90 <= place.latitude_deg <= 90
        assert -180 <= place.longitude_deg <= 180
        assert len(place.country_code) == 2


def test_that_zones_lie_where_their_clocks_say():
    # Mean solar time is 4 minutes a degree; no zone of today is further from it than about 3.6 hours.
    for place in zone_places():
        offset = datetime(2027, 1, 1, 12, tzinfo=ZoneInfo(place.time_zone)).utcoffset()
        hours = offset.total_seconds() / 3600 - place.longitude_deg / 15
        hours = (hours + 12) % 24 - 12
        assert abs(hours) < 3.7, place


def test_that_a_country_with_one_zone_stands_there_once():
    philippines = [place for place in zone_places() if place.country_code == "PH"]
    assert [(place.country, place.time_zone, place.city) for place in philippines] == [
        ("Philippines", "Asia/Manila", "Manila")
    ]
