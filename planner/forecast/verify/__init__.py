"""Recomputes published cases with the shipped figures and holds the results against print.

A case is a row of `resources/verify`; a computation calls the same formulas as the forecast. Must not
know files or screens: tables and farms are handed in.
"""
