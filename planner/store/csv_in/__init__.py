"""Tables of other programs and of loggers: read, mapped to what a farm holds, and checked row by row."""
