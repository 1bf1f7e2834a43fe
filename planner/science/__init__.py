"""How plants, fish and water behave: formulas on numbers and arrays.

This room knows numpy and nothing else of the program: no farm, no files, no clock, no screen.
Coefficients come in as arguments; their values, with source and conditions, live in
``resources/coefficients``.
"""
