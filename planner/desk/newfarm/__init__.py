"""Begins a farm from a handful of answers: asks, then drafts. The grower refines it afterwards."""
