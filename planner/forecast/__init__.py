"""What will happen: stage dates, places held, harvest, demand, fish and supply, by day and by week.

Pure computation on a farm and a catalogue; knows no Qt, no storage, no clock and no files.
"""
