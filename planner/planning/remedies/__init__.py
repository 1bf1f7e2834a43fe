"""Concrete repairs for what a forecast warns of, each with its effect worked out on the changed farm."""
