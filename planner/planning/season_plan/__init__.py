"""Plans a season: how many whole plants of which crop to sow in which week for which kind of bed.

A plan is a proposal with a proven bound beside it. Must know no Qt, no storage, no clock and no files;
whoever asks brings the clock.
"""
