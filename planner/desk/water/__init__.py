"""The water tab: readings of a loop, how they run over time, and what to give."""
