"""Raftweek, a planner for small coupled aquaponic loops. This module knows the version and nothing else."""

__version__ = "0.1.0"
