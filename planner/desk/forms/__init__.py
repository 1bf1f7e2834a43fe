"""Forms made from what the farm's values declare about their fields; no limit is written twice.

A form reads, checks and hands on a value; it never changes a farm itself.
"""
