"""Numbered steps that bring a farm file from one version of its tables to the next.

Steps are written out as statements and never read the mappings, which go on changing after them.
"""
