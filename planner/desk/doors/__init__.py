"""The first minutes: where to begin, and what a new farm's plan comes to at once."""
