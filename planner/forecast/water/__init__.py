"""The water side of a loop: filter and oxygen, what tests say, acid and base, iron and other salts.

Everything here is a value: codes and numbers. Words are made where they are shown.
"""
