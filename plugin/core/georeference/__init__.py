"""Coordinate systems: where the survey lies and in which unit."""
